### Platillos: lo que no es carne.

dishes-title = Platillos
dishes-none = Todavía no hay platillos. Agrega lo que no es carne: frijoles, ensalada, salsa.
dishes-add = Otro platillo
dishes-held = Se mantiene
dishes-hot = Caliente
dishes-cold = Frío
dishes-note = Una nota sobre él
dishes-write = Anotarlo
dish-state-not-ready = Todavía no está listo
dish-state-ready = Listo desde { $time }, { $lasting }
dish-held-hot = Se mantiene caliente: mídelo de vez en cuando, { $hot } o más.
dish-held-cold = Se mantiene frío: mídelo de vez en cuando, { $cold } o menos.
dish-two-hours = Lleva dos horas listo: lo que no se mantuvo todo ese tiempo fuera de { $cold } a { $hot } se tira.
button-dish-ready = Ya está listo
button-dish-not-ready = No está listo todavía
link-dishes = Platillos
