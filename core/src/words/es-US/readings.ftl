### Readings: thermometers, readings by hand and from files.

## Files from other instruments: what was not taken and what to do. $line counts from 1; $cell is what the file holds.

readings-few-columns = La línea { $line } tiene menos columnas que las demás. Completa la fila o quítala.
readings-open-quote = La línea { $line } abre comillas que nada cierra. Ciérralas o quita la fila.
readings-no-time = La línea { $line } no tiene hora. Pónsela o quita la fila.
readings-not-a-time = Línea { $line }: “{ $cell }” no es una hora como las de este archivo. Corrígela o quita la fila.
readings-no-such-time = Línea { $line }: “{ $cell }” no existe en ningún calendario ni reloj. ¿Va el día antes que el mes?
readings-year = Línea { $line }: “{ $cell }” está fuera de los años 2000 a 2100. Ajusta el reloj del instrumento o indica cómo escribe la hora.
readings-future = Línea { $line }: “{ $cell }” todavía no llega. Revisa el reloj del instrumento y la zona horaria.
readings-not-a-number = Línea { $line }, { $sensor }: “{ $cell }” no es un número. Corrígelo o déjalo vacío.
readings-absurd = Línea { $line }, { $sensor }: { $cell } está fuera de −76 °F a 1,472 °F (−60 °C a 800 °C). Revisa el termómetro o la unidad de la columna.
readings-all-empty = Todas las temperaturas están vacías. Elige otras columnas.

readings-file-empty = Este archivo no tiene filas. Guárdalo de nuevo desde el instrumento y vuelve a elegirlo.
readings-file-not-text = Este archivo no es CSV de texto simple. Ábrelo en una hoja de cálculo y guárdalo como “CSV UTF-8”.
readings-file-never-ends = Lo que empieza en la línea { $line } no termina nunca; lo más probable es que falte cerrar unas comillas. Ciérralas e importa el archivo otra vez. No se guardó nada.
readings-file-unreadable = El archivo no se pudo leer hasta el final ({ $said }). Cópialo de nuevo y vuelve a intentar. No se guardó nada.
readings-file-no-readings = Ninguna fila de este archivo tiene hora y temperatura. Expórtalo con una columna para cada una o indica cuáles son.
readings-file-unknown-zone = “{ $zone }” no es una zona horaria. Indica una, por ejemplo America/Chicago.
readings-file-nothing-taken = No se pudo tomar ninguna fila de este archivo. { $first }
readings-not-kept = Las lecturas no se pudieron guardar. Libera espacio e importa el archivo otra vez. No se guardó nada.

readings-column-twice = La columna { $column } está elegida dos veces. Elige cada columna una sola vez.
readings-column-far = Ningún archivo tiene una columna { $column }. Elige las columnas de nuevo.
readings-column-none = No elegiste ninguna columna de temperaturas. Elige al menos una.
readings-names-alike = Dos columnas se llaman “{ $name }”. Dale a cada una su propio nombre.
readings-name-bad = “{ $name }” no sirve como nombre de un instrumento o sensor. Usa de 1 a { $limit } caracteres en una sola línea.

## Stored readings that cannot be read back.

readings-stored-newer = Estas lecturas las escribió un Slowbend más nuevo (formato { $version }). Actualiza para leerlas.
readings-stored-short = Estas lecturas están cortadas. Tráelas de nuevo del dispositivo que las tiene.
readings-stored-damaged = Estas lecturas están dañadas. Tráelas de nuevo del dispositivo que las tiene.

## What a file leaves open. $columns lists columns by number and name.

readings-ask-time = ¿Qué columna es la hora: { $columns }?
readings-ask-temperatures = ¿Qué columnas son temperaturas: { $columns }?
readings-ask-unit = ¿“{ $column }” está en °F o en °C? Empieza con { $example }.
readings-ask-day-first = En “{ $example }”, ¿va primero el mes o el día?
readings-ask-start = Las horas cuentan desde un inicio (“{ $example }”). ¿Cuándo fue?
readings-ask-seconds = ¿Las horas como “{ $example }” son segundos o minutos?
