# Qué se sirve cuándo, y una hoja de tareas que ya no cuadra. $course es el nombre de un tiempo, $what una carne, una guarnición o una cocción.

course-heading = No todo a la misma hora
course-how = Déjalo así si todo se sirve a la misma hora. Un tiempo puede tener hora límite; una entrega tiene los minutos que su mesa está abierta antes y después.
course-table = La hora de la mesa
course-hour = { $course }, { $time }
course-nth = Tiempo { $nr }
course-name = Cómo se llama
course-time = Hora
course-latest = A más tardar
course-window = Entrega: ± minutos
course-at = { $course }, { $time }: { $members }
course-by = { $course }, { $time }, a más tardar { $until }: { $members }
course-turned-in = { $course }, se entrega de { $time } a { $until }: { $members }
course-nothing = nada todavía
form-course-blank = Algo está en el tiempo { $nr } y esa fila está vacía: dale una hora, o elige otro para lo que lleva.
sheet-turn-in = { $course }, abierta hasta { $until }
plan-why-wrap = Más o menos cuando suele estar lista para eso. Envuelve cuando la corteza esté firme y te guste el color: eso decide, no el reloj.

act-courses-planned = { $count ->
    [0] Todo se sirve a la misma hora.
    [one] Un tiempo anotado. Planea otra vez, para que la hoja lo tenga.
   *[other] { $count } tiempos anotados. Planea otra vez, para que la hoja los tenga.
}
act-sheet-kept = La hoja queda como está. Se te avisa otra vez cuando algo más deje de cuadrar.
error-course-count = Una cocción tiene a lo más { $limit } tiempos. Junta dos de ellos.
error-course-odd = Un tiempo no se puede leer. Abre el plan otra vez y anótalo de nuevo.
error-course-name-twice = Dos tiempos se llaman “{ $course }”: dale a cada uno su nombre.
error-course-member-twice = Algo de “{ $course }” está también en otro tiempo: elige uno de los dos.
error-course-past = “{ $course }” era a la hora { $time }, y ya es la hora { $now }: elige la hora { $next } o una posterior.
error-course-both = “{ $course }” tiene hora límite y entrega: una entrega no espera a nadie. Deja vacía una de las dos.
error-course-window = La mesa de “{ $course }” está abierta de 0 a { $most } minutos antes y después de su hora: para esperar más, pon una hora límite.
error-course-latest = “{ $course }” se quiere a la hora { $time } y no puede ser después de la hora { $latest }: pon el límite a la hora { $time } o después, o déjalo vacío.
error-course-latest-far = “{ $course }” puede tardar hasta la hora { $latest }, y ningún plan espera tanto: que sea a la hora { $last } o antes.
error-clock-skipped = Esa noche el reloj se salta “{ $typed }”. La hora más cercana que hay es { $nearest }.
kind-courses-planned = Dijo qué se sirve cuándo
kind-sheet-kept = Se quedó con la hoja

fits-no-longer = La hoja ya no cuadra
fits-notice = { $heading }. { $why }
fits-see = Ver una hoja nueva
fits-keep = Dejar la hoja así
fits-late = { $job }: iba a empezar a la hora { $time }, hace { $by }.
fits-forecast-later = { $what }: probablemente { $by } más tarde de lo que dice la hoja.
fits-forecast-sooner = { $what }: probablemente { $by } antes de lo que dice la hoja.
fits-moved-later = { $what } está en la mesa { $by } más tarde.
fits-moved-sooner = { $what } está en la mesa { $by } antes.
fits-missing = { $what } no está en ella.
fits-courses = Se dijo de nuevo qué se sirve cuándo.
fits-cold = { $pit } marca { $reads }, y la hoja cuenta con { $meant }.
