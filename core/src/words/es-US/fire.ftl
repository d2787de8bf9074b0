### El fuego: lo que ponen y hacen las manos, cuándo alimentar otra vez, el humo en palabras. Práctica común, sin fuente.

fuel-split = { $count ->
    [one] { $amount } raja
   *[other] { $amount } rajas
}
fuel-chunk = { $count ->
    [one] { $amount } trozo
   *[other] { $amount } trozos
}
fuel-chimney = { $count ->
    [one] { $amount } chimenea
   *[other] { $amount } chimeneas
}
fuel-basket = { $count ->
    [one] { $amount } canasta
   *[other] { $amount } canastas
}
fuel-hopper = { $count ->
    [one] { $amount } tolva
   *[other] { $amount } tolvas
}
vent-lower = Ventila de abajo
vent-upper = Ventila de arriba
vent-shut = cerrada
vent-quarter = ¼ abierta
vent-half = ½ abierta
vent-three-quarters = ¾ abierta
vent-open = abierta
fire-did-lit = encendido
fire-did-coals-ready = arde limpio
fire-did-water = charola de agua llena
fire-did-ash = ceniza fuera
fire-did-grease = grasa vaciada
fire-did-shut-down = apagado
weather-freezing = menos de { $cold }
weather-between = { $span }
weather-hot = más de { $hot }
weather-still = sin viento
weather-breeze = brisa
weather-windy = mucho viento
weather-dry = seco
weather-wet = lluvia o nieve
weather-shade = sombra
weather-sunny = pleno sol
wood-fruit = leña de frutal
wood-mild = aliso o arce
wood-oak = encino
wood-pecan = nogal pecanero
wood-hickory = nogal americano
wood-mesquite = mezquite
wood-unknown = no se sabe
found-out-until = ardía con seguridad hasta { $time }
wood-tamed = { $wood }, hecho brasa o mezclado con leña más suave
smoke-nothing = sin humo
smoke-thin-blue = delgado, azulado
smoke-white = espeso, blanco
smoke-gray = gris o amarillo
smoke-black = negro
smoke-stings = pica en los ojos

act-fed-units = { $pit }: pusiste { $what }.
act-fire-what = { $pit }: { $what }.
act-weather = Clima: { $what }.
act-wood = { $pit } ahúma con { $what }.
act-found-out = { $pit } se encontró sin fuego. Ardía con seguridad hasta { $time }: mira qué hacer con la comida.
act-wood-tamed = { $pit }: { $what }, hecho brasa o mezclado con leña más suave.
act-smoke = { $pit }, humo: { $what }.
act-feed-planned = { $pit } se alimenta a { $time }. Entonces suena.
act-unit-weighed = { $pit }: { $what } pesa { $weight }.
error-fed-range = De una vez se ponen de { $low } a { $high } cuartos. Elige cuánto pusiste.
error-vent-range = Una ventila se abre de { $low } a { $high } cuartos. Elige cuánto.
error-unit-range = Una pesa entre { $low } y { $high } g. Pesa una y escríbelo.
error-feed-when = La hora de alimentar va de ahora a un día. Elige otra.
error-burned-until = Ardió por última vez entre hace un día y ahora. Elige cuándo.
error-fuel-elsewhere = { $what } no va en { $pit }. Elige lo que quema ese asador.
kind-weather-said = Clima
kind-wood-said = Leña para humo
kind-fire-found-out = Fuego apagado
kind-wood-tamed = Leña para humo, hecha brasa o mezclada
kind-smoke-watched = Humo visto
kind-feed-planned = Hora de alimentar aceptada
kind-unit-weighed = Pesado

fire-title = { $pit }: fuego
link-fire-of = { $pit }: fuego
link-fire = El fuego
fire-next = Alimentar otra vez
fire-about = como a { $time }
fire-late = { $late } tarde
fire-between = Entre { $from } y { $to }.
fire-learned = Aprendido de { $count ->
    [one] un intervalo
   *[other] { $count } intervalos
} de esta cocción.
fire-learned-past = Aprendido de { $count ->
    [one] un intervalo
   *[other] { $count } intervalos
} de esta cocción y { $past } de otras.
fire-only-past = Aprendido de { $past ->
    [one] un intervalo
   *[other] { $past } intervalos
} de cocciones pasadas.
fire-reckoned = Calculado de lo que pierde un asador así, no aprendido: aproximado. Se aprende desde la segunda carga de esta cocción.
fire-unfed = todavía no se sabe
fire-unfed-detail = Todavía no se ha puesto nada: toca lo que pusiste.
fire-untold-detail = Toca cuánto pusiste y se calcula; desde la segunda carga se aprende.
fire-weather-unsaid = Nadie dijo el clima: un décimo más ancho.
fire-accept = Avísame a { $time }
fire-accepted = Hora de alimentar aceptada
fire-accepted-at = suena a { $time }
fire-never-rings = Lo aprendido o calculado nunca suena solo. Solo suena la hora que tú aceptas.
fire-openings = Veces abierto
fire-openings-state = { $count ->
    [one] una vez
   *[other] { $count } veces
}
fire-openings-cost = Retrasan el final unos { $cost }: aproximado, calculado con minuto y medio cada vez.
fire-alone-by = Por lo que quemó, atiéndelo a más tardar a { $time }.
fire-put-on = Poner
fire-vents = Ventilas
fire-vent-unsaid = no se ha dicho
fire-jobs = De encender a apagar
fire-job-light = Encenderlo
fire-job-switch-on = Prenderlo
fire-job-coals-ready = Esperar a que arda limpio
fire-job-feed = Alimentarlo
fire-job-water = Llenar la charola de agua
fire-job-ash = Sacar la ceniza
fire-job-grease = Vaciar la grasa
fire-job-shut-down = Apagarlo
fire-job-next = sigue
fire-job-done = hecho { $ago }
fire-job-is-done = hecho
fire-job-later = después
fire-job-again = otra vez cuando haga falta
fire-did-it = Ya lo hice
fire-feed-above = Toca arriba lo que pusiste.
fire-how-light = Ventilas abiertas. El carbón en chimenea, nunca con gasolina; espera a que la orilla se ponga gris.
fire-how-switch-on = Cable y clavija secos, la tapa abierta mientras arranca.
fire-how-coals-ready = No pongas nada en la parrilla hasta que el humo salga delgado.
fire-how-water = Agua caliente, para que el fuego no la tenga que calentar. Que no se seque.
fire-how-ash = A una cubeta de metal con tapa, afuera, lejos de las paredes. La ceniza guarda brasa por días.
fire-how-grease = Deja que se enfríe primero. Nunca la eches a las brasas.
fire-how-shut-down = Cierra todas las ventilas. Deja el asador afuera hasta que esté frío.
fire-how-shut-down-plug = Deja que se apague como dice el fabricante y luego desconéctalo.
fire-smoke = Humo
fire-smoke-wood = Leña
fire-smoke-strength = Fuerza
fire-smoke-light = suave
fire-smoke-medium = medio
fire-smoke-strong = fuerte
fire-smoke-now = Visto
fire-smoke-clean = limpio
fire-smoke-catching = prendiendo
fire-smoke-dirty = sucio
fire-smoke-none = ninguno
fire-smoke-unseen = todavía no se ha dicho
fire-smoke-look = ¿Qué ves o hueles?
fire-smoke-which = ¿Qué leña ahúma?
fire-smoke-tamed = Antes hecho brasa, o mezclado con leña más suave
fire-smoke-tell = El humo limpio es delgado, azulado y huele dulce. El sucio es espeso, blanco, gris o negro, y pica. Sin humo no pasa nada.
smoke-clear-it = Está sucio: dale aire, saca con pinzas lo que solo humea y no pongas carne hasta que salga delgado.
smoke-let-it-catch = Combustible nuevo: espera a que arda limpio.
smoke-mesquite = El mezquite es fuerte: crudo no, en una cocción larga. Quémalo antes hasta brasa, o mezcla una parte con tres de encino.
smoke-known-wood = No quemes leña que nadie conoce: nada pintado ni tratado, nada de madera blanda.
smoke-small-hot = Rajas chicas, secas y tibias, y llama. Nunca leños que solo humean.
smoke-no-more-chunks = No más trozos: el sazonador ya se fijó o ya tuvo sus horas. De aquí en adelante, solo calor.
smoke-one-more-chunk = Puede ir otro trozo, junto a las brasas vivas.
smoke-wrapped = Lo envuelto no toma humo: alimenta solo para el calor.
smoke-enough = Ya tiene bastante: no más trozos por un rato.
fire-weather = El clima, en cuatro toques
fire-weather-lead = Ajusta lo aprendido, y lo ensancha si nadie lo dice.
fire-weather-air = Aire
fire-weather-wind = Viento
fire-weather-rain = Lluvia
fire-weather-sun = Sol
fire-weather-unknown = no se ha dicho
fire-weigh = Cuánto pesa una aquí
fire-weigh-how = Pesa una de las tuyas y se calcula con eso. Lo usual: { $usual }. Práctica común, sin fuente.
fire-weigh-unit = Una
fire-weigh-weight-pounds = Peso (lb)
fire-weigh-weight-kilograms = Peso (kg)
fire-source = Orden de los pasos, fuerza del humo, pesos y pérdidas: práctica común, sin fuente. Los valores de calor están publicados. Las instrucciones del fabricante van antes que todo.
ring-feed-planned-detail = La hora de alimentar que aceptaste.
because-feed-planned = Aceptaste esta hora para alimentarlo.
