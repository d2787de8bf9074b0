# Una carne fuera del fuego de la que ninguna lectura muestra el mínimo publicado. $what es una lista de nombres.

job-read-or-back = Mídela a mano o regrésala al fuego
ring-read-or-back = { $what }: mide a mano o regresa al fuego
ring-read-or-back-detail = Está fuera del fuego y ninguna lectura muestra su mínimo publicado. La seguridad va primero; las reglas locales y la práctica con licencia pueden pedir más.
because-read-or-back = Está fuera del fuego. { $safety }

# Lo que queda abierto al terminar una cocción. $open es una frase tras otra.
confirm-finish-open = Queda abierto: { $open } ¿Terminar esta cocción de todos modos? Después ya no suena nada por ella. Lo que pasó queda en el libro de fuegos.
open-on-pit = { $what }: sigue en el fuego.
open-put-away = { $what }: sin guardar todavía.
open-unshown = { $what }: ninguna lectura muestra el mínimo publicado.

# Por qué no cuentan lecturas, o de qué termómetros se trata.
reason-elsewhere = { $temp } se midió en otro punto y no muestra el mínimo: solo cuentan los puntos de la revisión.
reason-unchecked-named = Sin revisar en 30 días: { $names }. Mételo en agua con hielo: debe marcar { $ice }.
unchecked-left-in = la sonda en { $spot }
unchecked-by-hand = un termómetro sin nombre
