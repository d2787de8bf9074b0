# Lo que suena: un verbo, sobre qué, y lo que se dice en voz alta.

ring-rub-set = Toca el sazonador de { $what }
ring-wet = Baña { $what }
ring-spritz = Rocía { $what }
ring-glaze = Glasea { $what }
ring-check = Revisa { $what }
ring-pull = { $what }: en su punto de sacar
ring-pull-detail = Revísala y sácala cuando esté lista.
ring-put-away = Guarda { $what }
ring-put-away-detail = Dentro de 2 horas de servido, 1 hora si hace más de 90 °F (USDA); para el público, dentro de 4 horas (FDA Food Code). Sigue las reglas locales si son más estrictas.
ring-serve = { $what } va a la mesa a { $time }
ring-fire-round = Atiende el fuego de { $what }
ring-fire-round-detail = Ninguna sonda vigila este asador.
ring-outside = { $what } está a { $temp }
ring-outside-detail = Fuera de { $low } a { $high } desde { $since }.
ring-silent = La sonda de { $what } no responde
ring-silent-detail = Última lectura a { $since }. Atiende el fuego y luego la sonda.
ring-silent-never = Todavía no ha dicho nada. Atiende el fuego y luego la sonda.
ring-wake-up = Hora de levantarse
ring-missed = { $missed ->
    [one] Se pasó una.
   *[other] Se pasaron { $missed }.
}
ring-open-slowbend = Abre Slowbend
ring-open-slowbend-detail = Hay más por hacer de lo que este dispositivo puede guardar. Ábrelo para poner el resto.
ring-late = Tarde: tocaba a { $time }.
ring-elsewhere = { $name } tiene la guardia.
