### Plan: por qué cada tarea va a su hora, qué cuestan otros planes y qué impide un plan.

## Lo que sale mal fuera de las temperaturas que le gustan a una carne.
plan-below-skin = es seguro, pero la piel queda dura
plan-below-slow = va lento y pasa mucho tiempo en el humo
plan-above-dry = por fuera se seca antes de ablandarse por dentro

## Por qué una tarea va a esa hora.
plan-why-prep = Reposa en frío de { $least } a { $most } antes de lo siguiente; va al fuego a la hora { $on }.
plan-why-prep-any = En cualquier momento de las { $most } antes de lo siguiente; va al fuego a la hora { $on }.
plan-why-put-on = Sale a más tardar a la hora { $off } en { $in_hundred } de 100 veces, para que { $serving } esté en la mesa a la hora { $at }.
plan-why-put-on-short = Lista para { $serving } a la hora { $at } en solo { $in_hundred } de 100 veces: no se puede empezar antes.
plan-why-check-from = Una de cada diez veces ya está a esta hora.
plan-why-take-off = Se espera ahora; entre { $early } y { $late } en 8 de 10 veces. Deciden las pruebas, no el reloj.
plan-why-vent = Abierta, para que deje de cocerse antes de guardarla.
plan-why-rest = Al menos { $least }, para que guarde su jugo y alcance su mínimo.
plan-why-hold = En { $place }; lo mejor es guardarla de { $least } a { $most }.
plan-why-hold-not-before = No la pases a { $place } antes de { $box_from }: no seguiría a 140 °F (60 °C) hasta el corte. Hasta entonces, mantenla caliente donde se coció. Lo mejor es guardarla de { $least } a { $most }.
plan-why-probe = Guardada más de dos horas: una sonda en lo más grueso muestra que sigue a 140 °F (60 °C) o más (USDA).
plan-why-cut = Se corta al final, para que { $serving } siga caliente a la hora { $at }.
plan-why-make = Se conserva { $keeps }; lista para { $serving }.
plan-why-reheat = Caliente otra vez para { $serving } a la hora { $at }.
plan-why-light = { $preheat } hasta que se estabiliza y entra la carne.
plan-why-step-for = A { $meat } le va mejor esta temperatura.
plan-why-step = Lo que sigue dentro acaba a tiempo con esta temperatura.
plan-why-feed = Este asador puede arder solo { $alone } y no más.
plan-why-let-out = Ya salió la última carne.
plan-why-serve = A la hora que querías.
plan-why-serve-later = Más tarde de lo que querías: antes no estaría todo listo.
plan-why-sleep = Nada arde más tiempo del que puede quedarse solo.
plan-why-sleep-watched = { $name } tiene la guardia.

## Lo que impide un plan.
plan-no-hands = No hay nadie que haga nada: planea con al menos un par de manos.
plan-nothing = No hay nada que cocinar: nombra una carne o un plato.
plan-off-grid = El plan tiene que empezar en un cuarto de hora exacto: da from_ms como múltiplo de 900,000.
plan-number = { $what } es { $value }: tiene que estar entre { $low } y { $high }.
plan-no-name = Algo no tiene nombre: dale uno a cada carne, plato, asador, sitio y comida.
plan-name-twice = “{ $name }” aparece dos veces: dale a cada cosa su propio nombre.
plan-no-serving = “{ $name }” no tiene comida asignada: elige una de la lista.
plan-least-above-most = En “{ $name }” lo mínimo ({ $least }) es más que lo máximo ({ $most }): baja lo mínimo o sube lo máximo.
plan-window-empty = Un sueño, un rato de silencio o una guardia acaba antes de empezar: invierte sus horas.
plan-temps-unsorted = Las temperaturas de “{ $pit }” van una vez cada una, la más fría primero.
plan-hold-unsafe = “{ $place }” mantiene la carne a { $has }, y la comida caliente se guarda a { $least } o más (USDA): súbelo, o no guardes nada ahí.
plan-off-unsafe = “{ $meat }” saldría a { $has }, y su mínimo publicado es { $least } ({ $source }): no la saques antes.
plan-no-temperature = “{ $meat }” no tiene tiempo de cocción a ninguna temperatura de un asador: añade una al asador, o da su tiempo.
plan-fits-no-pit = “{ $name }” necesita { $needs } cm² de parrilla, y el asador más grande, “{ $pit }”, tiene { $has } cm²: córtala en dos, o usa uno más grande.
plan-no-burner = “{ $dish }” necesita una hornilla y no hay ninguna: cuenta las hornillas de la estufa, o hazlo frío.
plan-serving-past = “{ $serving }” iba a ser a la hora { $at }, y ahora es { $now }: elige una hora que aún no haya pasado.
plan-latest-before = “{ $serving }” puede ser a más tardar a la hora { $latest }, y se quiere a la hora { $preferred }: retrasa la última hora o adelanta la deseada.
plan-turn-in-waits-not = “{ $serving }” se entrega, así que su última hora no puede ser posterior a su hora: quita la última hora.
plan-zone = La zona horaria “{ $zone }” no se conoce aquí: nombra una, por ejemplo America/Chicago.
plan-wall-unread = “{ $typed }” no es una hora para “{ $serving }”: escríbela como 2026-06-07T14:00.
plan-wall-skipped = “{ $serving }”: esa noche el reloj se salta las { $typed }. La hora más cercana que existe son las { $nearest }.
plan-night-too-long = Hay más de 32 horas de sueño y silencio por delante: planea cuatro noches como mucho.
plan-none = No hay plan con el que todo esté listo y sea seguro.
plan-none-found = No se encontró un plan dentro de los límites de la búsqueda; puede que exista.

## Lo que haría posible un plan.
plan-way-later = Funciona { $by } más tarde: “{ $serving }” a la hora { $at }.
plan-way-earlier = Habría funcionado empezando { $by } antes.
plan-way-pit = Funciona con un segundo asador como “{ $pit }”.
plan-way-less = Funciona sin “{ $meat }”.
plan-way-hands = Funciona con un par de manos más.
plan-way-temperature = Funciona con “{ $pit }” a { $temp }.
plan-way-place = Funciona con un sitio más donde guardar la carne, mantenido a { $temp }.

## Lo que otro plan gana y cuesta al lado de este.
plan-gain-ready = Más seguro de estar listo: { $permille } de 1,000 en vez de { $before }.
plan-cost-ready = Menos seguro de estar listo: { $permille } de 1,000 en vez de { $before }.
plan-gain-late = En la mesa { $by } antes.
plan-cost-late = En la mesa { $by } más tarde.
plan-gain-temperature = { $meat } se cuece a una temperatura que le gusta: si no, { $wrong }.
plan-cost-temperature = { $meat } se cuece fuera de las temperaturas que le gustan: { $wrong }.
plan-gain-night = { $by } menos en pie de noche.
plan-cost-night = { $by } más en pie de noche.
plan-gain-hold = { $by } más cerca del mejor reposo, en total.
plan-cost-hold = { $by } más lejos del mejor reposo, en total.
plan-gain-openings = { $count ->
    [one] Una apertura menos.
   *[other] { $count } aperturas menos.
}
plan-cost-openings = { $count ->
    [one] Una apertura más.
   *[other] { $count } aperturas más.
}
plan-gain-fuel = { $weight } menos de combustible.
plan-cost-fuel = { $weight } más de combustible.
