### Safety: cautions, each naming its source and deferring to local rules.

caution-charcoal-never-indoors = El carbón encendido da monóxido de carbono, que no huele y mata. Nunca en una casa, cochera, vehículo o tienda de campaña.
caution-window-is-not-enough = Una ventana abierta o un ventilador no hacen seguro el carbón adentro.
caution-coals-until-out = Las brasas dan monóxido de carbono hasta que se apagan. Deja el asador afuera hasta que estén frías.
caution-raw-poultry-brush = La brocha, la mopa de cocina o el tazón que tocó ave cruda no toca nada más.
caution-raw-marinade = Hierve el adobo que tuvo carne cruda antes de ponerlo en comida cocida.
caution-two-hours = No más de dos horas entre { $cold } y { $hot }; una hora si el aire pasa de { $air }.
caution-hold-hot = Mantén la comida caliente a { $hot } o más.
caution-thaw-first = Descongela bien la carne en el refrigerador antes de ahumarla, nunca al ambiente.
caution-poultry-three-places = Una sonda puesta en un ave muestra un lugar. Mide a mano tres lugares; cuenta el más frío.
caution-local-rules-first = Las reglas locales y la práctica autorizada van antes que lo dicho aquí.

source-usda-chart = USDA FSIS, tabla de temperaturas internas mínimas
source-food-code-raised = Código de Alimentos de la FDA 2022, 3-401.11(A)(2)
source-food-code-stuffed = Código de Alimentos de la FDA 2022, 3-401.11(A)(3)
source-food-code-time = Código de Alimentos de la FDA 2022, 3-501.19(B)
source-food-code-cooling = Código de Alimentos de la FDA 2022, 3-501.14(A)
source-fsis-appendix-a = USDA FSIS, Apéndice A revisado, 2021
source-usda-two-hours = USDA, regla de las dos horas, 2016 y 2017
source-usda-smoking = USDA FSIS, “Smoking Meat and Poultry”
source-usda-marinade = expertos del USDA sobre adobos, citados
source-cpsc-charcoal = CPSC de EE. UU., comunicado 99-051, 1999; 16 CFR 1500.14(b)(6)
source-cpsc-5012 = CPSC de EE. UU., documento 5012
source-usda-sr26 = USDA, tablas de composición SR26, 2013
source-common-practice = práctica común, sin fuente
source-own-caution = sin fuente: precaución nuestra

safe-safe = Ya mostró el mínimo de seguridad
safe-not-safe = No alcanza el mínimo de seguridad
safe-unknown = Ninguna lectura muestra todavía el mínimo de seguridad
safe-far-from-done = Pasó el mínimo publicado, lejos de estar lista
safety-minimum = { $state }: { $minimum } ({ $source }).
safety-minimum-rest = { $state }: { $minimum }, y después { $rest } de reposo ({ $source }).
safety-defers = Las reglas locales y la práctica autorizada van primero.

doing-preparing = Preparar la carne
doing-lighting-charcoal = Encender o alimentar el carbón
doing-putting-pit-away = Guardar el asador
doing-mopping-meat = Bañar carne
doing-mopping-poultry = Bañar aves
doing-checking-meat = Revisar carne
doing-checking-poultry = Revisar aves
doing-serving = Servir

caution-hold-cold = Mantén la comida fría a { $cold } o menos.
caution-smoker-air = Mantén el aire del ahumador a { $smoker }; mide el aire con un termómetro y la comida con otro.
caution-fire-out-counts = Cuánto estuvo o pudo estar cada carne entre { $cold } y { $hot } se cuenta en la página del fuego que se apagó.
caution-wash-thermometer = El termómetro que estuvo en ave cruda se lava con jabón y agua caliente antes de meterlo en otra cosa.
caution-wash-hands-and-phone = Ave cruda: lávate las manos, los cuchillos y donde la cortaste, y limpia este teléfono, antes de tocar otra cosa.
caution-mop-pot-hot = Mantén la olla del baño a { $hot } o más, o hiérvela antes de volver a usarla.
caution-raw-never-above = El ave cruda nunca va encima de otra comida: lo que gotea también está crudo.
caution-smoker-in-the-open = Un ahumador va al aire libre, con buena luz, lejos de árboles, arbustos y casas.
caution-no-sleep-near-coals = Nadie duerme cerca de brasas encendidas: el monóxido de carbono no huele.
caution-cold-ash = Deja la ceniza hasta que esté fría, un día o más; luego a metal con tapa, lejos de las casas.
caution-burnt-outside = Quemada por fuera puede estar cruda por dentro: mídela a mano antes de darla por lista.
caution-extinguisher-powder = La comida que alcanzó polvo de extintor, ceniza o plástico quemado se tira.
caution-thick-smoke = El humo espeso amarga la comida. Qué más hace no se juzga aquí.
caution-grease-fire = Grasa ardiendo: tapa puesta y todo el aire cerrado. Nunca agua: te avienta el fuego.
caution-extinguisher = Ten a la mano un extintor para grasa. El fuego que no se apaga enseguida se deja a los bomberos.
source-usda-smoker-air = USDA y FDA sobre ahumar carne, 2012, en reimpresiones
doing-holding-dishes = Mantener platillos
doing-pit-runs-cold = Devolverle el calor a un asador
doing-pit-runs-hot = Bajarle el calor a un asador
doing-smoke-is-thick = Limpiar el humo
doing-flare-up = Apagar grasa ardiendo
doing-after-flare-up = Después de una llamarada
doing-fire-went-out = Un fuego que se apagó
doing-moving-poultry = Mover ave
doing-going-to-sleep = Irse a dormir

# Lo que no se hace con Slowbend.
refused-cold-smoking = Ahumar en frío no se hace con Slowbend: la comida quedaría donde crecen bacterias, y solo una cura controlada la conserva. Mantén el asador a más de 140 °F, o sigue un proceso con licencia.
refused-jerky = La carne seca no se hace con Slowbend: pide un proceso probado antes. Sigue uno con licencia.
refused-curing = Curar no se hace con Slowbend: la sal y el nitrito se pesan con una receta probada. Sigue un proceso con licencia, y ponle otro nombre a una carne curada en otra parte.
refused-fish-to-keep = Pescado para guardar no se hace con Slowbend: sin un proceso probado puede matar. Sigue uno con licencia.
refused-vacuum = Comida guardada sin aire no se hace con Slowbend: lo que crece ahí no huele. Sigue un proceso con licencia.
