### Screens: headings, labels and lines of the screens.

screen-late = { $late } de retraso
screen-seconds = { $seconds } s
screen-some-pit = el asador
screen-some-meat = una carne
screen-some-cook = una cocción
screen-some-dish = un platillo
screen-some-thermometer = un termómetro
screen-the-crew = el equipo
screen-this-device = este dispositivo
screen-other-device = otro dispositivo
screen-more-meats = { $count ->
    [one] y una carne más
   *[other] y { $count } carnes más
}
screen-serve = En la mesa: { $time }, { $when }
screen-no-serve = Sin hora de servir
screen-over = Terminó: { $when }
screen-demo = { $name } (demostración, inventada)
screen-check-now = Revisa ahora.
screen-check-in = Revisa otra vez en { $wait }.

headline-nothing = Nada por ahora
headline-nothing-on = No hay carne en ningún asador. Toca una carne para decir cuándo entra.
headline-nothing-due = No toca nada.
headline-finish = ¿Terminar la cocción?
headline-finish-why = Todas sus carnes ya están servidas o guardadas.
headline-speech = { $verb }: { $what }, { $when }.
headline-speech-asked = { $verb } { $what }, { $when }.

job-rub-set = ¿Ya se fijó?
job-mop = Baña
job-spritz = Rocía
job-glaze = Glasea
job-check = Revisa
job-pull = Saca
job-pull-check = En su punto de sacar: revísala
job-put-away = Guarda
job-serve = Sirve
job-fire-round = Atiende el fuego
job-outside = Recupera el calor
job-silent = Atiende la sonda
job-wake-up = Levántate

because-rub-set = Toca el sazonador: si el dedo sale limpio, ya se fijó. Si no, se pregunta otra vez en { $again }.
because-wet = { $every }. El último, { $last }.
because-wet-first = { $every }. El primero.
because-missed = { $line } { $count ->
    [one] Faltó uno.
   *[other] Faltaron { $count }.
}
because-glaze = El último tramo: glasea para que se fije antes de sacarla.
because-check-first = La primera revisión.
because-check = { $state } en la última revisión.
because-pull = Una sonda marca la temperatura en que se saca. Revísala antes de sacarla.
because-pull-done = La última revisión la encontró lista.
because-put-away = Ya estuvo afuera lo que puede: ahora al refrigerador, o mantenla caliente.
because-put-away-by = Guárdala antes de: { $time }. Al refrigerador, o mantenla caliente.
because-serve = En la mesa: { $time }.
because-fire-round = Ninguna sonda vigila este fuego.
because-wake-up = Querías estar en pie a esa hora.

line-due = { $verb }: { $when }
line-due-asked = { $verb } { $when }
brief-late = tarde
brief-hours = { $hours } h { $minutes }
line-stage = { $stage }, { $lasting }
line-job = { $verb }: { $what }
line-job-asked = { $verb } { $what }
line-found = { $test }: { $found }
line-temp-at = { $temp }, { $spot }
line-temp-left-in = { $temp }, { $spot }, por la sonda que se deja puesta
line-spot-left-in = { $spot }, por la sonda que se deja puesta
line-happened = { $kind }: { $what }
line-unchecked = termómetro sin revisar
line-no-mop = Sin baño

pit-reads = { $temp }, { $age }
pit-silent = En silencio desde { $since }
pit-unread = Sin lecturas todavía
pit-band = Se mantiene a { $band }
pit-outside = Fuera de { $band }

watch-held = { $name } tiene la guardia desde { $since }.
watch-note = { $line } “{ $note }”
watch-asleep = { $name } duerme hasta { $until }.

button-did-it = Ya lo hice
button-did-it-ago = Lo hice hace 5 min
button-later = En 10 min
button-skip = Esta vez no
button-named = { $name }: { $does }
button-rub-yes = Sí, ya se fijó
button-rub-not-yet = Todavía no
button-rub-all = Ya se fijó en todas
button-leave-on = Déjala puesta
button-none-left = No sobró
button-on-table = En la mesa
button-fire-seen = Ya lo atendí
button-fed = Alimenté el fuego
button-vent = Moví una ventila
button-opened = Abrí
button-seen = Enterado
button-up = Ya me levanté
button-watch = Tengo la guardia
button-sleep = Duermo hasta { $time }
button-dismiss = Quitar
button-undo = Deshacer
button-undo-what = Deshacer: { $what }
button-restore = Restaurar
button-record = Registrar la revisión
button-on-pit = Poner en { $pit }
button-wrap = Envolver: { $wrap }
button-trimmed = Recortada
button-brined = En salmuera
button-rubbed = Ya lleva sazonador
button-resting = Reposar en frío
button-unwrap = Quitar la envoltura
button-off = Sacar
button-hold = Mantener caliente
button-cut-up = Cortar
button-serve = Servir
button-put-away = Guardar
button-reheat = Recalentar
button-finish = Terminar la cocción
confirm-skip = { $verb }: { $what }. ¿Omitirlo esta vez? Nada suena por eso hasta la próxima.
confirm-leave-on = ¿Dejar { $what } puesta más allá de su punto de sacar? Nada vuelve a sonar por eso.
confirm-none-left = ¿No queda nada de { $what } por guardar? Nada vuelve a sonar por eso.
confirm-stage = ¿{ $does }: { $name }?
confirm-serve = Nada muestra que esta carne llegó a su mínimo publicado. Mídela a mano primero. ¿Registrarla como servida de todos modos?
confirm-finish = ¿Terminar esta cocción? Después ya no suena nada por ella. Lo que pasó queda en el libro de fuegos.

link-check = Revísala
link-meat = La carne
link-now = Ahora
link-write = Anotar
link-timeline = Lo que pasó
link-settings = Ajustes
link-start = Todas las cocciones

notice-update = Un Slowbend más nuevo registró algo. Actualiza este; mientras tanto no se juzga ninguna carne.
notice-overruled = { $winner } y { $loser } cambiaron { $field } de { $of } sin saber uno del otro. Queda lo de { $winner }.
notice-wrong-clock = Un reloj está mal: { $name } registró algo para { $time }. No cuenta hasta entonces. Corrige ese reloj.
notice-odd-clock = El reloj de { $name } marca { $time }. Corrígelo; no cambia nada más.
notice-set-aside = La base de datos no se pudo leer. Se guardó como { $file }. { $count ->
    [one] Se recuperó un registro.
   *[other] Se recuperaron { $count } registros.
}
notice-cloned = Esta es una copia de la base de datos de otro dispositivo. Este sigue con un nombre propio.
notice-clock-forward = El reloj de este dispositivo se adelantó { $by }. Los avisos se pusieron de nuevo.
notice-clock-back = El reloj de este dispositivo se atrasó { $by }. Los avisos se pusieron de nuevo.
notice-forked = { $count ->
    [one] Un registro llegó con un nombre ya usado. Se guardó aparte.
   *[other] { $count } registros llegaron con nombres ya usados. Se guardaron aparte.
}

fact-probe = Sonda
fact-pit = Asador
fact-temperature = Temperatura
fact-cadence = Baño
fact-wetted = Último baño
fact-pull = Se saca a
fact-usual = Suele estar lista a

check-title = Revisar { $name }
thermometer-unchecked = Sin revisar: mételo en agua con hielo.
thermometer-lapsed = Revisado { $ago }: hace demasiado, mételo en agua con hielo.
thermometer-right = Revisado { $ago }: marca bien.
thermometer-hot = Revisado { $ago }: marca { $off } de más.
thermometer-cold = Revisado { $ago }: marca { $off } de menos.
bath-ice = Agua con hielo
bath-boiling = Agua hirviendo

cut-time = { $least } a { $most }
cut-per-pound = { $span } por libra
cut-per-kilogram = { $span } por kilo
cut-detail = Asador a { $pit }; por lo común { $time }. Práctica común, sin fuente.

start-title = Slowbend
start-lead = Di cuándo debe estar la comida en la mesa y qué hay en el asador. Slowbend dice qué sigue, y recuerda.
start-heading = Empezar una cocción
start-name = ¿Cuál es la ocasión?
start-serve = En la mesa a las
start-people = ¿Cuántos comen?
start-meats = Carnes
start-weight-pounds = Peso (lb)
start-weight-kilograms = Peso (kg)
start-pit = Asador
start-start = Empezar la cocción
start-demo = Ver la demostración
start-demo-lead = La comida de regata de un club de remo, para catorce a las dos. Todos sus datos son inventados.

settings-title = Ajustes
settings-pits = Asadores
settings-thermometers = Termómetros
settings-habits = Costumbres
settings-habits-detail = Lo que recibe una carne nueva si no se dice otra cosa.
settings-viewer = En este dispositivo
settings-add-pit = Agregar un asador
settings-add-thermometer = Agregar un termómetro
settings-save = Guardar
settings-check = Revisar un termómetro
settings-read = Marcó

field-name = Nombre
field-pit-kind = Tipo
field-grate = Parrilla
field-alone = Se puede dejar solo
night-not-alone = No se deja sin vigilar
field-band = Se mantiene entre
field-band-low = Se mantiene desde
field-band-high = Se mantiene hasta
field-band-minutes = Suena si está fuera por
field-serve = Hora de servir
field-people = Cuántos comen
field-weight = Peso
field-cadence = Baño
field-form = Forma
field-pull-at = Se saca a
field-mop-minutes = Baño cada
field-spritz-minutes = Rocío cada
field-altitude = Altitud sobre el mar
field-other = un ajuste
unit-minutes = min
label-unit = { $label } ({ $unit })

viewer-language = Idioma
viewer-temperature = Temperaturas
viewer-weight = Pesos
viewer-hours = Reloj
language-en = English
language-es = Español
hours-twelve = 2:05 p. m.
hours-twenty-four = 14:05

about-version = Slowbend { $version }
about-device = Este dispositivo es { $name }.
about-device-unnamed = Este dispositivo todavía no tiene nombre.

kind-crew-joined = Se unió al equipo
kind-device-named = Nombró este dispositivo
kind-pit-added = Agregó un asador
kind-thermometer-added = Agregó un termómetro
kind-thermometer-checked = Revisó un termómetro
kind-field-set = Cambió
kind-dismissed = Quitó un aviso
kind-slept = Dormir hasta
kind-woke = Se levantó
kind-watch-taken = Tomó la guardia
kind-cook-started = Empezó la cocción
kind-cook-finished = Terminó la cocción
kind-piece-added = Agregó una carne
kind-piece-split = Cortó en partes
kind-pieces-joined = Juntó
kind-stage-set = Cambió de etapa
kind-piece-moved = Movió
kind-rub-answered = Tocó el sazonador
kind-opened = Abrió
kind-checked = Revisó
kind-read = Midió a mano
kind-probe-bound = Puso una sonda
kind-series-saved = Guardó lecturas
kind-fed = Alimentó el fuego
kind-vent-changed = Movió una ventila
kind-fire-seen = Atendió el fuego
kind-skipped = Esta vez no
kind-put-off = Aplazó
kind-answered = Respondió
kind-noted = Nota
kind-dish-added = Agregó un platillo
kind-dish-ready = Platillo
kind-voided = Deshizo
kind-erased = Borrado para siempre
kind-unknown = Algo de un Slowbend más nuevo
happened-voided = Deshizo: { $what }
happened-restored = Restauró: { $what }
happened-meant = Es para { $pit }: { $name }
rub-has-set = ya se fijó
rub-not-yet = todavía no
dish-is-ready = listo
dish-not-ready = no está listo
opened-wetted = bañó { $names }
opened-turned = volteó { $names }
opened-glazed = glaseó { $names }

standing-taken-back = Deshecho
standing-orphan = Pertenece a algo deshecho
standing-erased = Borrado
standing-newer = Esta versión no lo lee
standing-must-update = Actualiza para juzgar esto
