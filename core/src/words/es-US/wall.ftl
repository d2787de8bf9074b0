### Una pantalla apoyada o colgada en la pared: lo que dice su propia página y lo que rodea a todas las del puesto de casa.

wall-title = Esta pantalla de pared
wall-lead = Lo que se ajusta aquí vale para este navegador en este dispositivo, y para ningún otro.
wall-link = Esta pantalla de pared: su tamaño, su luz, su sonido
wall-prop = Dejarla a la vista
wall-leave = Volver a tomarla
wall-needs-script = Los scripts están desactivados. Una pantalla se puede dejar a la vista, y puede sonar, solo con scripts.

wall-ringing = Sonido
wall-ring-test = Sonar ahora, de prueba
wall-ring-speech = Así es como suena.
wall-rang = Sonó. Si no oíste nada, sube el volumen de este dispositivo, quita su modo silencioso y prueba otra vez.
wall-silent = Este navegador no dejó sonar la página. Toca la página una vez más y prueba de nuevo; si sigue muda, permite el sonido para esta dirección en los ajustes del navegador.
wall-aloud = Decir en voz alta lo que toca
wall-no-voice = Este navegador no tiene voz propia en español. Instala una en los ajustes de voz del dispositivo; hasta entonces suena sin hablar.

wall-awake = Seguir despierta
wall-awake-yes = Mientras está a la vista, esta página mantiene la pantalla encendida. Déjala conectada al cargador.
wall-awake-insecure = Esta página no puede mantener la pantalla encendida, porque su dirección no empieza con https. En los ajustes del dispositivo pon que la pantalla no se apague, o el tiempo más largo que haya, y déjala conectada al cargador.
wall-awake-unknown = Este navegador no puede mantener la pantalla encendida. En los ajustes del dispositivo pon que la pantalla no se apague, o el tiempo más largo que haya, y déjala conectada al cargador.
wall-awake-refused = El dispositivo no dejó que esta página mantuviera la pantalla encendida. Quita su ahorro de energía y déjala conectada al cargador.

wall-letters = Letras para dos metros
wall-letters-how = Pon una tarjeta de banco de pie sobre el vidrio, con su esquina inferior izquierda en la esquina del contorno, y desliza hasta que el contorno sea tan ancho como la tarjeta. Hace falta una sola vez en cada pantalla.
wall-card = Ancho de la tarjeta
wall-wider = Más ancho
wall-narrower = Más angosto
wall-card-forget = Olvidar el tamaño
wall-letters-source = Una tarjeta mide 85.60 × 53.98 mm (ISO/IEC 7810, ID-1, de memoria). Mayúsculas de 9.3 mm se ven desde dos metros bajo 16 minutos de arco, lo menos que pide ISO 9241-303 (de memoria); lo que sigue tiene 12 mm.
wall-sample-next = Baña
wall-sample-meats = Costillar

wall-light = Luz
wall-light-device = Como la tenga el dispositivo
wall-light-bright = Clara, para el sol
wall-light-dark = Oscura, para la noche

wall-cautions = { $count ->
    [one] 1 precaución
   *[other] { $count } precauciones
}
wall-away-title = No se alcanza el puesto de casa
wall-away = No se perdió nada: lo anotado está guardado ahí. Mira que el programa siga corriendo y que este dispositivo esté en la misma red. Mientras tanto, cuida el asador a mano; esta página no suena.
