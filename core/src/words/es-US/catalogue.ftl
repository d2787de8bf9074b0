### Catálogo: la página de cada corte, sus otros nombres y lo que se sabe de él.

cuts-title = Carnes y cortes
cuts-lead = Qué es cada uno, cómo se revisa y cuánto tarda.
cuts-find = Busca un corte por cualquiera de sus nombres
cuts-search = Buscar
cuts-none = Ningún corte responde a «{ $sought }». Busca por el animal o por otro nombre, o mira todos.
cuts-all = Todos los cortes
cuts-about = Sobre este corte
cuts-which = «{ $sought }» puede ser cualquiera de estos: { $cuts }. Elige uno.
cuts-tests = Qué revisar, en orden
cuts-wrong = Lo que sale mal
cuts-made-of = De qué está hecho, crudo, en 100 g

cut-fact-pit = Asador
cut-fact-time = Tiempo
cut-fact-done = Listo
cut-fact-minimum = Mínimo publicado
cut-fact-read = Dónde medir
cut-fact-wet = Baño
cut-fact-wrap = Envoltura
cut-fact-rest = Reposo
cut-fact-hold = Espera en caliente
cut-fact-first-check = Primera revisión
cut-fact-water = Agua
cut-fact-protein = Proteína
cut-fact-fat = Grasa
cut-fact-ash = Cenizas

cut-time-at = { $time } a { $pit }
cut-time-how = Con las aperturas. El peso, el clima y el viento lo mueven más que cualquier tabla.
cut-skin = La piel de un ave se dora a { $crisp } o más. A { $slow } tarda más y la piel queda dura.
cut-minimum = { $minimum }
cut-minimum-rest = { $minimum }, luego { $rest } fuera del fuego
cut-minimum-tough = Llega horas antes de que este corte esté bueno: ahí sigue duro. Por debajo de { $tender } no se le cree al tacto.
cut-minimum-ground = Carne molida: el color no dice nada, y nada que se diga de ella lo baja.
cut-minimum-poultry = El más frío de tres lugares, medidos a mano en menos de diez minutos.
cut-minimum-whole = Solo para músculo entero. Inyectada, con agujas, enrollada o no se sabe: { $raised }.
cut-read-by-hand = A mano. Una sonda que se deja puesta solo dice cuándo.
cut-read-any = A mano o con una sonda que se deja puesta; cuenta el más frío.
cut-wrap-none = No se envuelve
cut-hold-up-to = hasta { $most }
cut-hold-how = Envuelto, y a { $hot } o más todo el tiempo.
cut-first-check = tras { $wait }
cut-first-check-a-weight = tras { $wait } para { $weight }
cut-grams = { $grams } g
cut-row = { $source }, fila { $row }

cut-also-spare-ribs = costillas, costillar, costilla entera, varillar, costillas enteras
cut-about-spare-ribs = Huesos largos del lado de la panza, con puntas y falda. Quita la membrana del lado del hueso. Un costillar pesado y un asador que se abre mucho llevan el tiempo más largo.
cut-wrap-spare-ribs = Muchos las envuelven en el tercio de en medio, con el sazonador ya fijo y el color bien; sin envolver tardan más y la costra queda más firme.
cut-rest-spare-ribs = Apenas tapadas, para que la superficie tome cuerpo antes del cuchillo.
cut-wrong-spare-ribs = Si salen por el reloj quedan duras; si pasan mucho tiempo envueltas la carne se cae en hebras. Un termómetro que toca hueso mide el hueso.

cut-also-spare-ribs-trimmed = costillas, costillar, costillas en cuadro, costillas recortadas, corte st louis
cut-about-spare-ribs-trimmed = Costillas sin puntas ni falda, para que el costillar quede cuadrado y se ase parejo. Los recortes se asan al lado y están antes.
cut-wrap-spare-ribs-trimmed = Como las enteras: muchos las envuelven en el tercio de en medio, con el sazonador ya fijo y el color bien.
cut-rest-spare-ribs-trimmed = Apenas tapadas, para que la superficie tome cuerpo antes del cuchillo.
cut-wrong-spare-ribs-trimmed = La punta delgada se adelanta: voltéala lejos del fuego. Si salen por el reloj quedan duras.

cut-also-baby-back-ribs = costillas, costillar, costillitas, baby back, costillas de lomo
cut-about-baby-back-ribs = Huesos cortos y curvos junto al lomo: más magras y parejas que las de panza, y están antes.
cut-wrap-baby-back-ribs = Una envoltura corta, si acaso: ahí se ablandan rápido.
cut-rest-baby-back-ribs = Apenas tapadas y a la mesa: son magras y se enfrían pronto.
cut-wrong-baby-back-ribs = Una hora de más las seca; una envoltura larga las deshace. El doblez avisa temprano: empieza a revisarlo con tiempo.

cut-also-pork-butt = paleta, paleta de cerdo, hombro, aguja, carne deshebrada, pulled pork
cut-about-pork-butt = Lo alto del hombro, entreverado y lleno de colágeno; el corte que más perdona. Puede quedarse horas en una temperatura mientras suelta su agua.
cut-wrap-pork-butt = Papel o aluminio cuando el color está bien acorta la espera; sin envolver tarda más y hace más costra.
cut-rest-pork-butt = Deja que suelte vapor unos minutos y guárdala envuelta; con un reposo largo se deshebra mejor.
cut-wrong-pork-butt = Si sale en la primera parte blanda queda dura junto al hueso. Con prisa al final queda apretada: deja una hora de sobra antes de la mesa.

cut-also-pork-picnic = paleta, paleta de cerdo, brazuelo, hombro, picnic, carne deshebrada
cut-about-pork-picnic = Lo bajo del hombro, con el hueso del brazo y a menudo la piel: más magra y con más nervio que la cabeza de lomo.
cut-wrap-pork-picnic = Como la cabeza de lomo; el aluminio o la charola tapada ayudan a su lado magro.
cut-rest-pork-picnic = Envuelta, tanto como la cabeza de lomo; quita antes la piel y dórala aparte.
cut-wrong-pork-picnic = Con la piel no entran humo ni sazonador: córtala en cuadros o quítala. Junto al hueso del brazo se atrasa: mide también ahí.

cut-also-pork-belly = panza, panceta, tocino fresco, barriga, burnt ends
cut-about-pork-belly = Una tabla con la mitad de grasa, sin piel. Se rebana cuando está suave, o se corta en cubos que vuelven con un glaseado.
cut-wrap-pork-belly = Los cubos van en charola tapada la última hora; la tabla para rebanar suele quedar sin envolver.
cut-rest-pork-belly = Déjala reposar plana, para que las capas no se separen con el cuchillo.
cut-wrong-pork-belly = Si sale con la grasa aún firme parece hule. Con el glaseado temprano se quema el azúcar.

cut-also-pork-loin = lomo, caña de lomo, asado de lomo
cut-about-pork-loin = Magro por completo: no tiene colágeno que ablandar con horas. Está en su mínimo publicado más un reposo, y nada más.
cut-rest-pork-loin = Fuera del fuego, apenas tapado: el reposo es parte de su mínimo publicado.
cut-wrong-pork-loin = Asado como una cabeza de lomo queda como gis. La carne que se vende con solución no es músculo entero: dilo, su mínimo es más alto.

cut-also-brisket = pecho, brisket, falda, pecho entero, packer
cut-about-brisket = Dos músculos: una parte plana y magra y una punta con grasa encima. La plana decide cuándo sale. Puede quedarse horas en una temperatura.
cut-wrap-brisket = El papel mantiene seca la costra, el aluminio es más rápido y suave; casi todos envuelven con el color bien y el sazonador fijo.
cut-rest-brisket = Deja que suelte vapor hasta que pare de cocerse y guárdalo envuelto y caliente: un reposo largo hace tanto como la última hora de fuego.
cut-wrong-brisket = Rebanado enseguida se seca; si sale cuando la plana aún se atora, queda chicloso. La orilla delgada se adelanta: voltéala lejos del fuego.

cut-also-brisket-flat = pecho, plana, brisket, pecho magro
cut-about-brisket-flat = La mitad magra sola: rebanadas parejas y poca grasa que ayude.
cut-wrap-brisket-flat = Papel o aluminio más bien temprano; una cucharada de caldo en el aluminio ayuda.
cut-rest-brisket-flat = Envuelta y por un buen rato: después las rebanadas guardan mejor su jugo.
cut-wrong-brisket-flat = Una hora de más y se desmorona. Comprada sin nada de grasa se seca arriba: envuélvela antes.

cut-also-brisket-point = punta, pecho, brisket, burnt ends
cut-about-brisket-point = La mitad con grasa sola: difícil de secar, buena para rebanadas gruesas o cubos que vuelven al asador.
cut-wrap-brisket-point = Como quieras: tiene grasa de sobra para ir sin envoltura.
cut-rest-brisket-point = Envuelta; los cubos que vuelven al asador se cortan tras un reposo corto.
cut-wrong-brisket-point = Si sale con el punto de la plana aún tiene grasa dura. Los cubos que se pasan quedan grasosos.

cut-also-plate-ribs = costillas, costillas de res, costillar, costilla cargada, costilla corta, short ribs, asado de tira
cut-about-plate-ribs = Tres o cuatro huesos largos bajo carne gruesa y entreverada: un pecho con hueso.
cut-wrap-plate-ribs = A menudo sin envolver; papel ya tarde, si el color se adelanta.
cut-rest-plate-ribs = Envueltas hasta que el jugo deje de correr; luego un hueso por persona.
cut-wrong-plate-ribs = La carne sobre el hueso se ablanda antes que la de en medio: revisa las dos. Las orillas se secan: tápalas con aluminio.

cut-also-beef-back-ribs = costillas, costillas de res, costillar, costillas de lomo de res
cut-about-beef-back-ribs = Los huesos del lomo alto con la carne de en medio; cuánta traen cambia de un costillar a otro.
cut-wrap-beef-back-ribs = Un rato en aluminio ablanda la carne delgada.
cut-rest-beef-back-ribs = Un rato corto y tapadas: poca carne las mantiene calientes.
cut-wrong-beef-back-ribs = Un costillar delgado se seca antes de ablandarse: elige huesos con carne y envuelve antes. El doblez dice poco: los huesos son tiesos.

cut-also-tri-tip = tri-tip, tritip, colita de cuadril, empuje, sirloin
cut-about-tri-tip = Un asado magro de tres puntas, con la fibra en dos direcciones. Primero lento, luego un minuto fuerte por lado para la costra.
cut-rest-tri-tip = Fuera del fuego, apenas tapada; luego gira el cuchillo donde gira la fibra.
cut-wrong-tri-tip = Muchos la sacan más roja que su mínimo publicado; eso queda por debajo y Slowbend no la da por lista ahí. Rebanada con la fibra queda dura.

cut-also-chicken-whole = ave, pollo, pollo abierto, mariposa
cut-about-chicken-whole = Abierto y plano se asa parejo y un tercio antes. Pide un asador fuerte para su piel, y poco humo.
cut-rest-chicken-whole = Sin tapar, para que la piel siga crujiente.
cut-wrong-chicken-whole = La pechuga se seca mientras el muslo frío llega: pon las piernas hacia el fuego. El rosa junto al hueso o el jugo claro no dicen nada: solo los tres lugares.

cut-also-chicken-half = ave, pollo, mitad, mitades, pollo partido
cut-about-chicken-half = Partido por espalda y pechuga queda plano, se asa parejo y se sirve tal cual.
cut-rest-chicken-half = Sin tapar, para que la piel siga crujiente.
cut-wrong-chicken-half = Cada mitad es distinta: mide cada una. La brocha que lo tocó crudo no toca nada más. El azúcar de la salsa se quema sobre brasa directa: salsa al final.

cut-also-chicken-thighs = ave, pollo, muslo, pierna, pierna y muslo, carne oscura
cut-about-chicken-thighs = Carne oscura con algo de colágeno: en el mínimo de las aves ya es segura, unos grados más caliente es mejor, y cuesta secarla.
cut-rest-chicken-thighs = Un rato corto y sin tapar.
cut-wrong-chicken-thighs = En el puro mínimo son seguros pero gomosos. Varían de tamaño: mide el más grueso, uno del lado más frío y uno de en medio.

cut-also-turkey-breast = ave, pavo, guajolote, pechuga
cut-about-turkey-breast = Magra: cada grado después de su mínimo cuesta jugo. La salmuera, si la hay, va antes del sazonador, que entonces no lleva sal.
cut-rest-turkey-breast = Apenas tapada; el centro sigue subiendo unos minutos.
cut-wrong-turkey-breast = Confiar en una sola sonda: muestra un solo lugar. Con el asador bajo y mucho tiempo, la piel queda como cuero.

cut-also-lamb-shoulder = cordero, paleta, borrego, espaldilla de cordero, carnero, barbacoa
cut-about-lamb-shoulder = Colágeno como en la cabeza de lomo, en un corte más chico y de sabor más fuerte; con poco humo.
cut-wrap-lamb-shoulder = Charola tapada o aluminio con un poco de caldo en el último tercio.
cut-rest-lamb-shoulder = Envuelta, hasta que se deshebre con la mano.
cut-wrong-lamb-shoulder = Su grasa se endurece al enfriarse: sírvela caliente, en platos tibios. La carne enrollada y atada lleva adentro lo de afuera: dilo, su mínimo es más alto.

cut-also-sausages = chorizo, salchicha, longaniza, embutido, molida, chistorra
cut-about-sausages = Carne molida en tripa: lo de afuera está por todas partes, así que el color no dice nada. Para las frescas; las ahumadas que se venden cocidas solo se calientan.
cut-rest-sausages = Unos minutos, para que no salpiquen.
cut-wrong-sausages = Con el fuego muy fuerte se revienta la tripa y se va la grasa. No piques ninguna. Mide a lo largo, desde la punta.

cut-also-poultry-sausages = salchicha, embutido, longaniza de pollo, chorizo de pavo, molida, ave
cut-about-poultry-sausages = Ave molida en tripa: el mínimo de las aves, sea cual sea el color. Magras, así que fuego suave.
cut-rest-poultry-sausages = Unos minutos, para que no salpiquen.
cut-wrong-poultry-sausages = Si se toman por salchichas de cerdo salen muy frías. Las magras se secan pronto pasado su mínimo.
