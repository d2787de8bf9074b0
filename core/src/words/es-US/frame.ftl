### El marco de una pantalla nativa: encabezados y botones que no son de ninguna cocción, y lo que contesta un formulario.

frame-meats = Carnes
frame-pits = Asadores
frame-next = Después
frame-watch = La guardia
frame-at-hand = A la mano
frame-facts = Datos
frame-checks = Revisiones hasta ahora
frame-check-next = Próxima revisión:
frame-settings = Ajustes
frame-past = Libro del asador
frame-earlier = Más atrás
frame-cut = Corte
frame-no-meat = Ninguno
frame-no-pit = Aún sin asador
frame-another-meat = Otra carne
frame-serve-how = Una hora, como 2 pm
frame-thermometer = Termómetro
frame-other-thermometer = Uno que no está en la lista
frame-left-in = Leído de una sonda que se queda adentro, no a mano
frame-go-on = Sí, hazlo
frame-leave-it = No, déjalo
frame-back = Volver
frame-again = Intentar otra vez
frame-stopped = No se pudo hacer
frame-hand = La mano para los botones
frame-hand-right = Derecha
frame-hand-left = Izquierda
frame-weight-wake = Atiéndelo ya
frame-weight-call = Toca
frame-weight-soon = Pronto
frame-weight-calm = Bien
frame-weight-faint = Terminado

form-choose = Elige una de las opciones de la pantalla.
form-nothing-tried = No se probó nada. Elige el resultado de al menos una prueba, o escribe una temperatura.
form-unread = Eso no es un número entero. Escribe solo cifras, como 60.
