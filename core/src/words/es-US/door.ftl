# Lo que dice la única puerta: del disco y de deshacer.

act-undo = Deshacer
store-in-use = Otro programa está usando esta base de datos. Ciérralo o dale a este una carpeta propia.
store-newer = Una versión más nueva de Slowbend escribió esta base de datos. Actualiza esta; no se cambió nada.
store-read-only = No se puede escribir en la carpeta o en la base de datos. Cambia los permisos o elige otra carpeta. No se guardó nada.
store-full = El disco está lleno. Libera espacio y hazlo otra vez. No se guardó nada.
store-damaged = La base de datos está dañada. Vuelve a abrir Slowbend: aparta el archivo y conserva lo que se pueda leer.
store-other = No se pudo usar la base de datos. No se guardó nada; inténtalo otra vez.
door-no-cook = Esa cocción no está en este dispositivo. Vuelve al inicio y elige una de la lista.
door-no-meat = Esa carne no está en este dispositivo o se deshizo su registro. Vuelve a la cocción.
door-no-answer = Esta respuesta ya no se puede leer. Abre la cocción y hazlo ahí; no se guardó nada.
