# La hoja de tareas: el plan aceptado como lista de horas y tareas. $what es sobre qué se hace, $pit el nombre de un asador.

link-sheet = Hoja de tareas
link-plan = Planear

sheet-does-thaw = Descongelar
sheet-does-trim = Recortar
sheet-does-brine = Salmuera
sheet-does-rub = Adobar
sheet-does-rest-cold = Al frío
sheet-does-sleep = Dormir
sheet-does-light = Encender
sheet-does-preheat = Calentar
sheet-does-step = Ajustar
sheet-does-feed = Alimentar
sheet-does-put-on = Poner
sheet-does-wrap = Envolver
sheet-does-check = Revisar desde ahora
sheet-does-take-off = Sacar
sheet-does-take-off-asked = Probar y luego sacar
sheet-does-vent = Ventilar
sheet-does-rest = Reposar
sheet-does-hold = Mantener caliente
sheet-does-probe-hold = Sonda en lo que se mantiene
sheet-does-dish = Guarnición
sheet-does-reheat = Recalentar
sheet-does-cut = Cortar
sheet-does-serve = Servir
sheet-does-let-out = Dejar apagar

sheet-on-pit = { $what } en { $pit }
sheet-to-temp = { $what } a { $temp }
sheet-in-wrap = { $what }, { $wrap }


sheet-none = Todavía no hay hoja de tareas. Planea la cocción y acepta el plan: entonces suenan sus tareas.
sheet-people = Para { $count } { $count ->
    [one] persona
   *[other] personas
}
sheet-chance = Lista a esa hora en { $count } de 100 cocciones así
sheet-accepted = Aceptado por { $name }, { $time }
sheet-done = hecho { $time }
sheet-over = Hechas: { $count }
sheet-do = Qué se puede hacer
sheet-left-out = se dejó
sheet-other = El otro plan
sheet-other-about = Aceptado por { $name }, { $time }; en la mesa { $serve }.
sheet-other-take = Tomar este
sheet-drop = Seguir sin plan
sheet-drop-asked = Sus tareas dejan de sonar. Lo hecho queda.
sheet-change-new = nueva: { $time }
sheet-change-other = de otro modo: { $time }
sheet-change-gone = ya no: { $time }
sheet-change-later = { $from } → { $to }, { $by } después
sheet-change-earlier = { $from } → { $to }, { $by } antes
sheet-calendar = Archivo de calendario
sheet-calendar-how = Se abre en el calendario de un teléfono o de una computadora, y ahí también suena.
sheet-calendar-name = hoja-de-tareas.ics
sheet-calendar-title = { $cook }: hoja de tareas
sheet-text = La hoja en palabras, para enviar
sheet-print = Impresa, es solo la hoja, en una página.

button-sheet-done = Hecho

hand-out-title = Hojas para la clase
hand-out-lead = La misma hoja para cada estudiante, contada hacia atrás desde su propia hora de servir.
hand-out-students = Estudiantes
hand-out-how = Uno por línea: nombre, hora. Por ejemplo: Ana, 12:30 p. m.
hand-out-make = Hacer las hojas
hand-out-serve = En la mesa { $time }
hand-out-no-sheet = Todavía no hay hoja de tareas. Planea la cocción y acepta el plan; luego haz las hojas.
hand-out-many = Son más de { $limit } líneas. Haz dos tandas.
hand-out-unread = «{ $line }» no es un nombre con una hora. Escríbelo así: Ana, 12:30 p. m.

act-plan-accepted = { $count ->
    [one] Plan aceptado: una tarea.
   *[other] Plan aceptado: { $count } tareas.
}
act-plan-dropped = Se sigue sin plan.
error-no-plan = No hay un plan aceptado. Nada cambió.
error-plan-gone = Ese plan ya no está a la mano: se aceptó otro después. Abre de nuevo la hoja de tareas.
error-plan-count = Un plan tiene de 1 a { $limit } tareas. Planea menos carnes, o dos cocciones.
error-plan-twice = Una tarea está dos veces en el plan. Planea de nuevo.
error-plan-time = Una tarea ({ $time }) queda demasiado lejos, o termina antes de empezar. Planea de nuevo.
error-plan-odd = Una tarea del plan no se puede leer. Planea de nuevo.
error-not-on-sheet = Esa tarea ya no está en la hoja. Ábrela de nuevo.
kind-plan-accepted = Aceptó un plan
kind-plan-dropped = Dejó el plan

plan-title = Planear la cocción
plan-lead = Se cuenta hacia atrás desde la hora de la mesa. Lo que ya se sabe de la cocción se toma de ella; di lo demás y acepta uno de los planes, o ninguno.
plan-no-hour = Di primero a qué hora se sirve, en Anotar: el plan se cuenta hacia atrás desde ahí.
plan-over = Esta cocción terminó: no queda nada por planear.
plan-number-unread = «{ $typed }» no es un número entero que quepa aquí.
plan-time-unread = «{ $typed }» no es una hora del día. Escríbela como 22:00, o déjala en blanco.
plan-first = El plan
plan-other = Otra manera, { $nr }
plan-not-proven = La búsqueda acabó antes de mostrar que no hay nada mejor.
plan-accept = Aceptar este plan
plan-hands = Pares de manos (1 a 3)
plan-sleep-from = Se duerme desde
plan-sleep-to = Se duerme hasta
plan-watched = Alguien vela el fuego de noche
plan-cooler = Hay una hielera para mantener la carne
plan-oven = Hay un horno para mantener la carne
plan-late = Minutos de retraso, a lo más
plan-go = Hacer un plan
plan-hour-later = Los invitados llegan una hora tarde
plan-jobs = Sus tareas
plan-changes = Qué cambia
plan-refuse = Dejarlo como está
plan-place-cooler = la hielera
plan-place-oven = el horno
plan-watcher = Quien vela
