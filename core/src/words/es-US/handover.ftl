### La guardia: quién la tiene y la línea con que se entrega.

watch-title = La guardia
watch-nobody = Nadie tiene la guardia: suenan todos los dispositivos.
watch-take-lead = Toma la guardia: desde entonces este dispositivo suena primero. Lee la línea, cambia lo que no sea así y tómala.
watch-leave-lead = Tienes la guardia. Deja una línea para quien siga; pasa cuando esa persona la toma en un dispositivo suyo.
watch-line = Una línea sobre los asadores
watch-leave = Dejar esta línea
watch-left = Para quien sigue, { $at }: “{ $note }”
watch-past = Antes
watch-line-pit = { $pit } { $temp }, { $time }
watch-line-unread = { $pit } sin lectura
watch-line-fed = { $line }, alimentado { $time }.
watch-line-end = { $line }.
watch-line-next = Sigue: { $verb }, { $what }, { $when }.
link-watch = La guardia
