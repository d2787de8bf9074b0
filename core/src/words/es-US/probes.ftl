### Sondas por Bluetooth: lo que no se tomó y qué hacer.

# $characteristic es un número que Bluetooth da a una clase de mensaje, por ejemplo 0x2A1C.
probe-unread = La característica Bluetooth { $characteristic } no es de las que se leen aquí. Usa una sonda que tenga el servicio Health Thermometer o Environmental Sensing.
probe-length = La sonda mandó un mensaje de { $got } bytes en lugar de { $wanted }. Apágala y préndela; si sigue igual, usa otra sonda.
probe-no-such-time = La sonda mandó una hora que no existe en ningún calendario ni reloj. Ajusta el reloj de la sonda o apágala y préndela.
# $time es lo que dijo el reloj de la sonda, por ejemplo 2026-07-04 15:30:00.
probe-clock-off = El reloj de la sonda dice { $time }, que todavía no llega o pasó hace más de un día. Ponlo a la hora de este lugar.
probe-too-hot = La sonda dice más de 1,472 °F (800 °C), a lo que aquí nada llega. Revisa la sonda y su cable.
probe-too-cold = La sonda dice menos de −76 °F (−60 °C), a lo que aquí nada llega. Revisa la sonda y su cable.
probe-not-hex = “{ $typed }” no son bytes en hexadecimal. Escribe dos dígitos por byte, por ejemplo 00 6C 01 00 FF.
probe-not-a-characteristic = “{ $typed }” no es el número de una característica. Escribe sus cuatro dígitos hexadecimales, por ejemplo 2A1C.

## Una sonda que dice que no tiene temperatura.

probe-none-not-a-number = La sonda no tiene lectura. Revisa que la punta esté conectada hasta el fondo.
probe-none-resolution = La sonda no puede escribir lo que lee. Espera su próxima lectura.
probe-none-above = La sonda está más caliente de lo que puede medir. Revisa dónde está la punta.
probe-none-below = La sonda está más fría de lo que puede medir. Revisa dónde está la punta.
probe-none-reserved = La sonda mandó un valor que no significa nada. Espera su próxima lectura; si sigue igual, apágala y préndela.
probe-none-not-known = La sonda todavía no sabe la temperatura. Revisa que la punta esté conectada hasta el fondo y espera.
probe-none-not-carried = Este mensaje de la sonda no trata de una temperatura. No hay que hacer nada.
