### Pronósticos: cuándo estará lista una carne, qué lo cambiaría, cuándo vale la pena revisarla.

## Partes del día, para lo que tarda horas.

day-part-small-hours = madrugada
day-part-early-morning = primeras horas de la mañana
day-part-late-morning = media mañana
day-part-midday = mediodía
day-part-early-afternoon = primeras horas de la tarde
day-part-late-afternoon = final de la tarde
day-part-evening = noche
day-part-late-evening = final de la noche
day-part-on-day = { $day }, { $part }
day-part-span = de { $from } a { $to }

## Una línea.

ahead-ready = lista, lo más probable: { $when } (4 de 5)
ahead-ready-rough = lista, lo más probable: { $when } (4 de 5, aproximado)
ahead-ready-by = lista, lo más probable, antes de { $when } (9 de 10)
ahead-ready-by-rough = lista, lo más probable, antes de { $when } (9 de 10, aproximado)
ahead-check-from = revisar desde { $when }
ahead-check-now = vale la pena revisar ya
ahead-check-opening = revisar en la apertura de { $when }
ahead-both = { $check }; { $ready }
ahead-aged = { $said }, calculado a { $when }

## La sección de una carne.

ahead-heading = Las próximas horas
ahead-none-in-sight = Como va ahora, no se ve el final dentro de un día.
ahead-as-of = Calculado a { $when }; lo que llegó después no está incluido.
ahead-is-no-check = Un pronóstico no es una revisión: si está lista y es segura, solo lo dice su revisión.
ahead-rough = Aproximado: estos pronósticos aún no se han medido con cocciones reales.
ahead-stall = Meseta: probable desde { $temp }, unas { $long }, hasta cerca de { $until }
ahead-stall-now = En la meseta: probable hasta cerca de { $until }
ahead-choices = Qué lo cambiaría
ahead-hotter = El asador { $by } más caliente
ahead-wrap = Envolverla ahora
ahead-stop-wetting = Dejar de bañarla
ahead-would-be = Entonces: { $ready }.
ahead-sooner = Unos { $by } antes.
ahead-later = Unos { $by } después.
ahead-no-change = Eso no cambia casi nada.
ahead-accept = Próxima revisión a { $when }
ahead-doubted = { $count ->
    [one] Lo que dice una de sus sondas se omite: puede estar en grasa, en hueso o al aire.
   *[other] Lo que dicen { $count } de sus sondas se omite: pueden estar en grasa, en hueso o al aire.
}
ahead-fan = Donde estará probablemente por dentro (4 de 5): { $name }

## Lo que enseñaron cocciones pasadas.

lesson-heading = Lo que enseñaron las cocciones
lesson-name = Aprendido
lesson-pit-hotter = junto a la carne, unos { $by } más caliente de lo que marca
lesson-pit-colder = junto a la carne, unos { $by } más frío de lo que marca
lesson-pit-true = junto a la carne, tan caliente como marca
lesson-cut-longer = aquí tarda cerca de { $percent } % más de lo usual
lesson-cut-shorter = aquí tarda cerca de { $percent } % menos de lo usual
lesson-cut-usual = aquí tarda lo usual
lesson-from = { $count ->
    [one] de una carne
   *[other] de { $count } carnes
}
