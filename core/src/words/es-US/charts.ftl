### Gráficas: lecturas de una cocción, una carne o un asador, su gráfica, y archivos que se están guardando.

link-readings = Lecturas
link-readings-all = Todas las lecturas
link-thermometers = Revisar un termómetro

chart-title = Lecturas: { $name }
chart-none = Aún no hay lecturas. Coloca una sonda, mide a mano o usa un archivo de lecturas.
chart-one-place = Una curva muestra un solo lugar. Si una carne está lista y es segura lo dice su revisión.
chart-more-series = { $count ->
    [one] Aquí no cabe una serie más. Abre su carne o su asador.
   *[other] Aquí no caben { $count } series más. Abre sus carnes o asadores.
}
chart-span-all = Todo
chart-span-hours = Últimas { $hours } h

# Una serie. $span son dos horas, $long cuánto dura eso.
chart-series-by-hand = { $name }, a mano
chart-series-sensor = { $name }, { $sensor }
chart-series-loose = { $source }, { $sensor }
chart-no-reading = sin lectura aquí
chart-silent = { $temp }, en silencio desde { $since }
chart-rising = sube { $by } por hora
chart-falling = baja { $by } por hora
chart-steady = estable
chart-extremes = La más baja { $low }, { $lowat }; la más alta { $high }, { $highat }.
chart-gap = Sin lecturas { $span }: { $long }.
chart-gaps-more = { $count ->
    [one] Y un hueco antes de ese.
   *[other] Y { $count } huecos antes de ese.
}
chart-loose = Nadie dijo dónde estaba esta sonda.
chart-damaged = Algunas lecturas guardadas están dañadas y se omiten.
chart-elsewhere = Estas lecturas están en otro dispositivo.
chart-corrected-hot = { $name } marca { $off } de más: todo lo de aquí está corregido por eso.
chart-corrected-cold = { $name } marca { $off } de menos: todo lo de aquí está corregido por eso.
chart-too-far = { $name } se desvía { $off }: esto es lo que marcó y nada se juzga por ello.

# La gráfica.
chart-says = Temperaturas de { $names }, { $span }.
chart-band = { $pit } se mantiene a { $band }
chart-minimum = Mínimo publicado { $temp }: { $names }
chart-minimum-rest = Mínimo publicado { $temp }, luego { $rest } de reposo: { $names }
chart-pull = Se retira a { $temp }: { $names }
chart-clock-back = Los relojes se atrasaron
chart-clock-forward = Los relojes se adelantaron
chart-lane-opened = { $count ->
    [one] Abierto una vez
   *[other] Abierto { $count } veces
}
chart-lane-checked = { $count ->
    [one] Revisado una vez
   *[other] Revisado { $count } veces
}
chart-lane-staged = { $count ->
    [one] Puesto, envuelto o retirado una vez
   *[other] Puesto, envuelto o retirado { $count } veces
}
chart-lane-fed = { $count ->
    [one] Fuego alimentado una vez
   *[other] Fuego alimentado { $count } veces
}
chart-lane-vent = { $count ->
    [one] Ventila movida una vez
   *[other] Ventila movida { $count } veces
}
chart-marks = Lo que se hizo mientras tanto
chart-mark = { $when } · { $kind }: { $what }
chart-mark-bare = { $when } · { $kind }

chart-table = En números, una fila cada { $each }
chart-table-when = Desde
chart-table-none = ninguna
chart-table-earlier = Filas anteriores

## Un archivo de lecturas en camino.

taking-title = Guardar lecturas de un archivo
taking-read = Se ha leído { $percent } % del archivo.
taking-meanwhile = Mientras tanto funciona todo lo demás, en cada página. Nada del archivo se guarda antes de leerlo entero.
taking-stop = Detener
taking-begun = Se está leyendo el archivo.
taking-quarter = Se ha leído un cuarto del archivo.
taking-half = Se ha leído la mitad del archivo.
taking-most = Se han leído tres cuartos del archivo.
taking-nothing = No se guardó nada del archivo.
taking-stopped = Detenido. No se guardó nada del archivo.
taking-unknown = Este archivo ya no está en camino: Slowbend se reinició mientras tanto, o fue hace mucho. Si faltan sus lecturas, elígelo otra vez. Nada se guarda a medias.
taking-still-here = { $file } sigue aquí: responde a la pregunta y envíalo otra vez. Elige un archivo solo para usar otro.
