### Errors: what was wrong, then what to do instead. $typed is what the person typed.

error-temperature-unread = “{ $typed }” no es una temperatura. Escribe un número, por ejemplo { $example }.
error-temperature-range = { $typed } está fuera de lo que cabe aquí. Escribe una temperatura de { $low } a { $high }.
error-weight-unread = “{ $typed }” no es un peso. Escribe uno, por ejemplo { $example }.
error-weight-range = { $typed } está fuera de lo que cabe aquí. Escribe un peso de { $low } a { $high }.
error-duration-unread = “{ $typed }” no es un tiempo. Escribe minutos, o { $example }.
error-duration-range = { $typed } está fuera de lo que cabe aquí. Escribe un tiempo de { $low } a { $high }.
error-measure = Escribe un número de { $low } a { $high } { $unit }.
error-number-comma = “{ $typed }” se puede leer de dos maneras. Escribe { $decimal } o { $whole }.
error-clock-unread = “{ $typed }” no es una hora. Escribe una, por ejemplo { $example }.
error-clock-half = “{ $typed }” puede ser de la mañana o de la tarde. Escríbela con { $morning } o { $afternoon }.
error-datetime-unread = “{ $typed }” no es una fecha con hora. Escribe una, por ejemplo { $example }.
error-year-range = El año debe estar entre { $low } y { $high }. Revisa la fecha y escríbela otra vez.
error-name-empty = El nombre está vacío. Escribe al menos una letra.
error-name-long = El nombre tiene { $length } caracteres. Acórtalo a { $limit } o menos.

## Acts that are not possible.
error-cook-unknown = Esa cocción se deshizo o todavía no está en este dispositivo. Ve al inicio y elige una.
error-meat-unknown = Esa carne se deshizo o todavía no está en este dispositivo. Regresa y elige una de las que se muestran.
error-meat-became = { $name } ahora sigue como { $heirs }. Regístralo ahí.
error-meat-elsewhere = { $name } es de otra cocción. Ábrela y regístralo ahí.
error-pit-unknown = Ese asador se deshizo o todavía no está en este dispositivo. Elige uno de los que se muestran, o agrégalo en ajustes.
error-thermometer-unknown = Ese termómetro se deshizo o todavía no está en este dispositivo. Elige uno de los que se muestran, o ninguno.
error-dish-unknown = Ese platillo se deshizo o todavía no está en este dispositivo. Elige uno de los que se muestran.
error-job-elsewhere = Eso no es tarea de esta cocción. Abre la cocción a la que pertenece.
error-cook-over = { $name } ya terminó. Para seguir, deshaz su final.

error-clock-unset = El reloj de este dispositivo marca { $time }, y eso no puede ser. Pon la fecha y la hora, y vuelve a intentar.
error-at-long-ago = { $time }: hace demasiado tiempo para registrarlo. Da una hora después de { $first }, o escríbelo como nota.
error-at-ahead = { $time }: esa hora todavía no llega. Da la hora en que pasó, o déjala vacía si fue ahora.
error-sleep-range = El descanso termina después de { $first } y antes de { $last } a más tardar. Elige una hora entre las dos.
error-serve-range = { $time }: esa hora de servir no es para esta cocción. Elige una desde ahora hasta { $last }.
error-serve-zone = La zona horaria “{ $zone }” no se conoce aquí. Elige una zona en ajustes y vuelve a poner la hora de servir.

error-people-range = Los comensales van de { $low } a { $high }. Corrige el número, o déjalo vacío.
error-alone-range = Un asador se puede dejar solo de { $low } a { $high } minutos. Corrige el número, o déjalo vacío.
error-grate-range = Una parrilla tiene de { $low } a { $high } centímetros cuadrados. Mídela otra vez, o déjalo vacío.
error-cadence-range = Una carne se baña o se rocía cada { $low } a { $high } minutos. Elige un número en ese rango, o ninguno.
error-band-minutes-range = Un asador avisa tras { $low } a { $high } minutos fuera de sus temperaturas. Elige un número en ese rango.
error-band-order = La temperatura baja debe ser menor que la alta. Ponlas otra vez.
error-later-range = Una tarea puede esperar de { $low } a { $high } minutos. Elige un número en ese rango, u omítela esta vez.
error-altitude-range = La altitud va de { $low } a { $high } metros. Búscala en un mapa y corrígela.
error-pit-heat-range = Un asador está entre { $low } y { $high }. Lee otra vez el termómetro y corrige el número.
error-meat-heat-range = El interior de una carne está entre { $low } y { $high }. Lee otra vez el termómetro y corrige el número.
error-meat-row = Línea { $row }, { $cut }: { $reason }
error-meat-weight = Ese no puede ser el peso de una sola carne. Pésala otra vez, o déjalo vacío; lo que pese más de { $high } va como varias carnes.
error-pull-range = Sácala entre { $low } y { $high }. La menor es su mínimo seguro ({ $source }); las reglas locales van primero. Elige una temperatura en ese rango, o déjalo vacío.
error-text-long = Eso tiene { $length } caracteres. Acórtalo a { $limit } o menos.
error-note-empty = La nota está vacía. Escribe al menos una letra.
error-label = “{ $label }” no puede ser el nombre de una sonda. Escríbelo como lo muestra el instrumento, sin espacios alrededor.
error-meats-many = Se pueden agregar a lo más { $limit } carnes a la vez. Agrega las otras después.
error-field-not-its-own = Eso no se puede poner aquí. Regresa a ajustes y abre aquello a lo que pertenece.

error-parts-range = Da de { $low } a { $high } partes distintas.
error-join-cuts = Solo carnes del mismo corte pueden seguir como una, porque cada corte tiene sus pruebas y su mínimo. Elige carnes de un solo corte.
error-wrap-before-pit = { $name } todavía no ha estado en un asador. Di primero cuándo entró, y luego que se envolvió o desenvolvió.
error-check-count = Una revisión tiene de uno a { $limit } resultados. Haz al menos uno, o regresa sin registrar nada.
error-test-not-its-own = Esa prueba no es para { $name }. Elige una de las que se muestran.
error-spot-not-its-own = { $name } no tiene ese lugar. Elige uno de los que se muestran, u “otro lugar”.
error-not-ice = { $read } está muy lejos de { $right } para hielo picado en agua. Llena un vaso con hielo, agrega agua, revuelve, no toques el vidrio con la punta, espera y lee otra vez; si sigue marcando eso, el termómetro está descompuesto.
error-not-boiling = { $read } está muy lejos de { $right }, donde hierve el agua a esa altitud. Haz que hierva a borbotones, revisa la altitud, no toques la olla con la punta y lee otra vez; si sigue marcando eso, el termómetro está descompuesto.

error-open-nothing = No elegiste nada. Elige una carne o un asador.
error-open-empty-pit = Que se sepa, no hay nada en { $pit }. Di primero qué carne entró.
error-open-off-pit = Que se sepa, { $name } no está en un asador. Di primero cuándo entró.
error-open-other-pit = { $name } está en { $pit }, no en { $other }. Primero di que cambió de lugar, o no la incluyas aquí.
error-wet-wrapped = { $name } está en su envoltura. Primero desenvuélvela, o no la incluyas aquí; la carne envuelta no se baña.
error-mop-raw-poultry = Una misma brocha no debe tocar { $first } y { $second }: las aves crudas llevan su propia brocha y su propio tazón (USDA FSIS; las reglas locales van primero). Usa otra, y registra cada carne aparte.
error-mop-raw-on-cooked = Una misma brocha no debe tocar { $first } y { $second }: lo que tocó carne cruda no debe tocar comida cocida (USDA FSIS; las reglas locales van primero). Usa una limpia, y registra cada carne aparte.

error-targets-count = Elige de uno a { $limit } registros.
error-target-unknown = Ese registro no está en este dispositivo. Abre otra vez la cronología y elige uno de los que se muestran.
error-undo-never = Eso no se puede deshacer: dice que un dispositivo se unió, o que algo se borró para siempre. Elige otro registro.
error-erase-never = Eso no se puede borrar, porque sin ello lo demás se leería mal. Deshazlo en su lugar.
error-erase-cooks = Esos registros son de varias cocciones. Bórralos una cocción a la vez.
error-no-job = No elegiste nada. Elige qué dejar de hacer o para después.
error-opening-rub = El sazonador de { $name } todavía no se fija: bañarla se lo llevaría. No la bañes, o di que ya se fijó.
error-opening-twice = { $name } está dos veces en esta apertura. Di una sola vez qué se le hizo.
error-move-nothing = No se movió nada. Elige otro nivel, lugar o asador para al menos una carne.
