### Fichas de cocción: lo que llevan, empezar desde una, y lo que se dice de una que no se puede leer.

card-title = Ficha de cocción
card-some-cook = Una cocción
card-some-pit = Un asador
card-people = { $people ->
    [one] Come una persona
   *[other] Comen { $people }
}
card-by-line = Ficha de { $by }
card-note-by = Empezada desde una ficha de cocción de { $by }.
card-serve-at = A la mesa a { $time }
card-serve-after = A la mesa { $after } después de empezar
card-pull = se saca a los { $temp }
card-dishes = Platillos
card-dish-hot = se mantiene caliente
card-dish-cold = se mantiene frío
card-notes = Notas
card-wish = Una ficha es el plan de alguien, no una regla de seguridad. Los mínimos y las precauciones de Slowbend valen diga lo que diga.
card-minimum-of = Mínimo seguro, { $meat }
card-how-scan = Escanéala con la cámara de un teléfono, copia el texto que muestra y pégalo en «Empezar desde una ficha».
card-how-file = Esta ficha es demasiado larga para un código: más de 1,000 bytes. Envía mejor el archivo o el texto de abajo.
card-code = La ficha como código para escanear
card-file = Guardar el archivo
card-print = Para imprimirla usa la orden de imprimir de tu navegador: la página sale como ficha.
card-text = La ficha como texto, para enviar
card-words = El plan en palabras, para enviar
card-for = Lo que va en la ficha
card-by = Quién la escribió (opcional)
card-with-notes = Van también las notas de esta cocción
card-make = Hacer la ficha
card-of-this = Ficha de cocción

### El formulario que empieza una cocción desde una ficha
begin-title-card = Empezar desde esta ficha
begin-title-anew = Empezarla otra vez
begin-lead-anew = Las mismas carnes, nombres y asadores. Di cuándo, pesa las carnes y cambia lo que sea distinto esta vez.
begin-take-title = Empezar desde una ficha
begin-take-lead = Pega el texto de una ficha de cocción o elige su archivo.
begin-take-text = El texto de la ficha
begin-take-file = O su archivo
begin-take = Leer la ficha
begin-serve-how = Como 2 pm, 2 pm mañana o sábado a mediodía
begin-left-out = Dejarla fuera
begin-weight-last = Peso ahora
begin-start = Empezar la cocción
begin-again = Empezarla otra vez
begin-last = Como la última vez
begin-last-lead = Las mismas carnes, nombres y asadores que la cocción anterior.
begin-no-meat = Todas las carnes de la ficha quedan fuera. Deja al menos una o empieza una cocción propia.
begin-add-pit = { $name } ({ $kind }), nuevo aquí
begin-from-card = Desde una ficha
begin-from-card-lead = Un plan que alguien te pasó: pegado, escaneado o en un archivo.

### Lo que se dice de una ficha que no se puede leer
card-no-meats = Esta cocción aún no tiene carnes. Agrega una y luego haz su ficha.
card-empty = No hay nada dentro. Pega todo el texto de la ficha, de la primera llave a la última.
card-long = Es más largo de lo que puede ser una ficha de cocción: { $limit } KB como mucho. Elige la ficha misma.
card-unread = Esto no es una ficha de cocción entera: se corta o falla en la línea { $line }, carácter { $column }. Cópiala toda, de la primera llave a la última.
card-quotes = Sus comillas se volvieron curvas por el camino y no se puede leer. Envíala como archivo o escanea el código.
card-none = Esto no es una ficha de cocción: una ficha empieza con "slowbend_card" y su versión. Elige otro archivo o texto.
card-newer = Esta ficha la escribió un Slowbend más nuevo (versión { $version }; este lee la versión { $known }). Actualiza Slowbend o pide el plan en palabras.
card-field = { $field }: { $reason }
card-missing = Falta { $field }. Agrégalo a la ficha o pide a su autor una entera.
card-unknown = { $field } no es ninguno de los que conoce este Slowbend. Actualiza Slowbend o cámbialo en la ficha.
card-shape = { $field } no tiene la forma que lleva una ficha. Mira docs/cook-card.md o pide a su autor una entera.
card-number = { $field } debe ser un número entero de { $low } a { $high }. Cámbialo en la ficha.
card-text-long = { $field } es demasiado largo: { $limit } caracteres como mucho. Acórtalo en la ficha.
card-list-long = { $field } tiene demasiadas entradas: { $limit } como mucho. Quita algunas.
card-left-out = { $field } no es parte de una ficha de esta versión y quedó fuera.
card-cleaned = { $field } tenía letras que no se ven o que reordenan otras. Se quitaron.
card-pit-cool = Un asador de esta ficha se mantiene por debajo de { $span }, lo que se da para ahumar carne. ({ $source })
error-rest-range = Un reposo dura aquí de { $low } a { $high } minutos: nunca menos que el publicado. ({ $source })
error-pit-meant-range = Un asador se mantiene de { $low } a { $high }, primero la temperatura menor: con menos, la comida ni siquiera se conserva caliente. ({ $source })
error-plan-long = Es más de lo que cabe en un plan: { $limit } como mucho. Quita algunos.

fact-meant-wrap = Envoltura prevista
fact-meant-rest = Reposo previsto
fact-meant-pit = Asador previsto a
kind-piece-meant = Previsto para ella
