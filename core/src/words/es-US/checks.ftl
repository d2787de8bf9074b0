### Checks: tests of a meat, their outcomes and what they mean.

test-bark-set = Sazonador
test-wrap-call = Color
test-bone-showing = Huesos
test-bend = Doblez
test-probe-feel = Brocheta
test-temperature = Temperatura

how-bark-set = Pasa una vez la yema de un dedo limpio sobre el sazonador.
how-wrap-call = Juzga el color con luz de día o blanca, donde la carne esté más pálida.
how-bone-showing = Ve cuánto se ha retraído la carne en la mayoría de los huesos.
how-bend = Levanta el costillar con pinzas a un tercio de su largo y observa la superficie en el doblez.
how-probe-feel = Mete una brocheta o sonda delgada en lo grueso de la carne, entre huesos, en dos o tres lugares.
how-temperature = Mete la punta de un termómetro limpio y rápido en cada lugar y espera a que se detenga. No toques hueso.

bark-wipes-off = El sazonador se desprende
bark-holds = El dedo sale limpio
wrap-too-pale = Muy pálida
wrap-color-right = Como la quieres
wrap-too-dark = Muy oscura
bone-hidden = No se ve hueso
bone-quarter-inch = Unos 6 mm
bone-half-inch = 13 mm o más
bend-stiff = Queda casi recto
bend-bows = Se arquea, superficie entera
bend-cracks = La superficie se agrieta
bend-comes-apart = Se deshace
probe-tight = Hay que empujar
probe-grabs = Se atora en partes
probe-slides = Entra como en mantequilla

spot-between-bones = entre dos huesos del centro, sin tocarlos
spot-center = centro de la parte más gruesa
spot-near-blade-bone = a un dedo del hueso de la paleta
spot-upper-thick = parte más gruesa, del lado del cuello
spot-lower-thick = parte más gruesa, mitad inferior
spot-inner-breastbone = muy adentro, junto al esternón
spot-stuffing-center = centro del relleno
spot-elsewhere = cualquier otro lugar

level-not-yet = Falta bastante
level-close = Casi
level-ready = En su punto
level-over = Pasada

done-cannot-say = No se puede decir
done-not-yet = Todavía no
done-close = Casi
done-tender-only = Suave, sin mostrar el mínimo
done-done = Lista
done-overdone = Pasada de su punto
done-update-to-judge = Actualiza para juzgarla

meaning-collagen-firm = Sigue dura: dale tiempo.
meaning-collagen-melting = Se está ablandando: casi está.
meaning-tender = Suave.
meaning-past-tender = Muy blanda: puede no sostenerse.
meaning-bone-early = Es temprano: la carne no se ha retraído.
meaning-bone-drawing = Se está retrayendo. El doblez decide.
meaning-bone-try-bend = Retraída como cerca del final: prueba el doblez.
meaning-bark-wet = El sazonador está mojado: no la bañes ni la envuelvas todavía.
meaning-bark-set = El sazonador fijó: se puede bañar o envolver.
meaning-color-needs-time = Más humo antes de envolver.
meaning-color-wrap-now = Envuélvela ahora, si se va a envolver.
meaning-color-shield = Envuélvela o tápala del calor.
meaning-below-minimum = Por debajo del mínimo publicado.
meaning-safe-but-tough = Pasó el mínimo y sigue dura. Puede quedarse horas en una temperatura.
meaning-near-range = Casi donde suele estar lista.
meaning-in-range = Donde suele estar lista.
meaning-past-range = Pasó de donde suele estar lista.
meaning-tells-little = Esto dice poco de este corte.

reason-update-first = Se registró algo que este Slowbend no puede leer. Actualízalo y luego juzga.
reason-below-minimum = El lugar más frío está a { $coldest }; el mínimo publicado es { $minimum }.
reason-rest-needed = La temperatura ya está. Déjala reposar fuera del fuego otros { $left }.
reason-minimum-shown = El lugar más frío está a { $coldest }: se muestra el mínimo publicado.
reason-temperature-not-shown = Ninguna temperatura muestra el mínimo publicado. Mídela a mano.
reason-spots-missing = Falta medir en menos de diez minutos: { $spots }.
reason-read-by-hand = Una sonda que se deja puesta no muestra el mínimo de este corte. Mídelo a mano.
reason-corrected = El termómetro se desvía { $off }; sus lecturas se corrigieron.
reason-too-far-off = El termómetro se desvía { $off }; sus lecturas no cuentan. Usa otro.
reason-unchecked = Termómetro sin revisar en 30 días. Mételo en agua con hielo: debe marcar { $ice }.
reason-found = { $test }: { $meaning }
reason-feels-disagree = Las pruebas al tacto difieren mucho; cuenta la menos avanzada.
reason-feel-ahead-of-temperature = Suave, pero más fría de lo usual cuando está lista: prueba otro lugar.
reason-feel-behind-temperature = Bastante caliente, pero dura al tacto: cuenta el tacto.
reason-wrap-would-smear = El color pide envolver, pero el sazonador se desprende: la envoltura se llevaría la costra.
reason-stale = { $test }: hace { $age }.

refused-temperature-outside = La temperatura dentro de la carne va de { $low } a { $high }. Mídela otra vez.
refused-standing-missing = Falta el termómetro de una lectura. Registra la lectura otra vez.
refused-standing-unasked = Se dio un termómetro donde no se usa. Registra la prueba otra vez.
refused-off-outside = El termómetro se desvía más que cualquiera. Revísalo otra vez en agua con hielo.
refused-instant-outside = Una hora está antes de 2000 o después de 2200. Corrígela.
refused-from-the-future = Un resultado está adelante del reloj. Corrige su hora, o el reloj.
refused-too-many = Más resultados de los que se pueden juzgar a la vez. Deshaz los más viejos.
