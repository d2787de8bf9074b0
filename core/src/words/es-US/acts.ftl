### Acts: what each act says when it is done, and its buttons.

act-added = Agregaste { $name }.
act-saved = Guardado para { $name }.
act-habit-saved = Guardado para el equipo.
act-thermometer-right = { $name } marca bien.
act-thermometer-high = { $name } marca { $off } de más.
act-thermometer-low = { $name } marca { $off } de menos.
act-thermometer-corrected = Sus lecturas se corrigen por eso.
act-thermometer-too-far = Nada se juzga por él: usa otro.
act-device-named = Este dispositivo ahora se llama { $name }.
act-dismissed = Listo, ya no se muestra.
act-slept = Te dejamos dormir hasta { $time }.
act-woke = Buenos días.
act-watch-taken = Tienes la guardia.

act-cook-started = Empezó { $name }.
act-cook-finished = Terminó { $name }. Se queda en el libro de fuegos.
act-noted = Anotado.
act-dish-ready = { $name }: ya está listo.
act-dish-not-ready = { $name }: todavía no.

act-split = Cortaste { $name } en { $parts }.
act-joined = { $parts } siguen como { $name }.
act-moved = Moviste { $name } a { $pit }.
act-rub-set = El sazonador ya se fijó en { $name }.
act-rub-not-set = El sazonador todavía no se fija en { $name }.
act-checked = Revisaste { $name }.
act-stage-trimmed = Recortaste { $name }.
act-stage-brined = Pusiste { $name } en salmuera.
act-stage-rubbed = Le pusiste el sazonador a { $name }.
act-stage-resting = Pusiste { $name } a reposar en frío.
act-stage-on-pit = Pusiste { $name } en { $pit }.
act-stage-wrapped-paper = Envolviste { $name } en papel.
act-stage-wrapped-foil = Envolviste { $name } en aluminio.
act-stage-wrapped-boat = Pusiste { $name } en barca de aluminio.
act-stage-wrapped-pan = Tapaste { $name } en una charola.
act-stage-unwrapped = Desenvolviste { $name }.
act-stage-off = Sacaste { $name } del fuego.
act-stage-held = Mantienes { $name } en caliente.
act-stage-cut-up = Cortaste { $name }.
act-stage-served = Serviste { $name }.
act-stage-put-away = Metiste { $name } al refrigerador.
act-stage-reheated = Recalentaste { $name }.

act-mopped = Bañaste { $names }.
act-spritzed = Rociaste { $names }.
act-turned = Volteaste { $names }.
act-glazed = Glaseaste { $names }.
act-opened = Abriste { $pit }.
act-read = { $name }: { $temp }.
act-probe-bound = La sonda { $sensor } está en { $name }.
act-fed = Alimentaste { $pit }.
act-vent-changed = Moviste una ventila de { $pit }.
act-fire-seen = Atendiste el fuego en { $pit }.

act-skipped = Omitido esta vez.
act-put-off = Más tarde: { $time }
act-answered = Respondido.
act-undone = Deshecho.
act-undone-together = Deshecho, también en los otros dispositivos que lo registraron.
act-restored = Todo como estaba.
act-erased = { $count ->
    [one] Borraste un registro para siempre.
   *[other] Borraste { $count } registros para siempre.
}
act-moved-all = Moviste { $names }.
