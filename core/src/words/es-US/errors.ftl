### Errors: what was wrong, then what to do instead. $typed is what the person typed.

error-temperature-unread = “{ $typed }” no es una temperatura. Escribe un número, por ejemplo { $example }.
error-temperature-range = { $typed } está fuera de lo que cabe aquí. Escribe una temperatura de { $low } a { $high }.
error-weight-unread = “{ $typed }” no es un peso. Escribe uno, por ejemplo { $example }.
error-weight-range = { $typed } está fuera de lo que cabe aquí. Escribe un peso de { $low } a { $high }.
error-duration-unread = “{ $typed }” no es un tiempo. Escribe minutos, o { $example }.
error-duration-range = { $typed } está fuera de lo que cabe aquí. Escribe un tiempo de { $low } a { $high }.
error-number-comma = “{ $typed }” se puede leer de dos maneras. Escribe { $decimal } o { $whole }.
error-clock-unread = “{ $typed }” no es una hora. Escribe una, por ejemplo { $example }.
error-clock-half = “{ $typed }” puede ser de la mañana o de la tarde. Escribe { $morning } o { $afternoon }.
error-datetime-unread = “{ $typed }” no es una fecha con hora. Escribe una, por ejemplo { $example }.
error-year-range = El año debe estar entre { $low } y { $high }. Revisa la fecha y escríbela otra vez.
error-name-empty = El nombre está vacío. Escribe al menos una letra.
error-name-long = El nombre tiene { $length } caracteres. Acórtalo a { $limit } o menos.
