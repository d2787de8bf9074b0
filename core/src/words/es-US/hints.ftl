### Pistas: para qué sirve un campo de los ajustes, en una frase.

hint-pit-kind = Decide qué intentar cuando el fuego no está como debe, y qué precauciones se muestran ahí.
hint-grate = Cuánto cabe en él.
hint-alone = Ese tiempo no despierta a quien duerme para atender el fuego. Déjalo vacío si nunca se queda solo.
hint-band = Fuera de estas, suena. Sin ellas decide lo que esté en el asador.
hint-wetting = Lo que lleva una carne nueva si no dices otra cosa.
hint-altitude = Decide a qué temperatura hierve el agua cuando se revisa un termómetro en ella.
