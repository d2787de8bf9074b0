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
source-usda-two-hours = USDA, regla de las dos horas
source-usda-smoking = USDA FSIS, “Smoking Meat and Poultry”
source-usda-marinade = expertos del USDA sobre adobos, citados
source-cpsc-charcoal = CPSC de EE. UU., comunicado 99-051; 16 CFR 1500.14(b)(6)
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
caution-no-zone-clock = Slowbend no cuenta cuánto estuvo una carne entre { $cold } y { $hot }. Cuéntalo tú, con las lecturas.
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
