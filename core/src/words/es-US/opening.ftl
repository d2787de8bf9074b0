### Una apertura de un asador: qué toca, en qué orden y qué se puede elegir para cada carne.

opening-title = Abre { $pit }
opening-lead = { $count ->
    [one] Toca una cosa. Hazla y confírmala una vez.
   *[other] Tocan { $count } cosas. Hazlas en esta sola apertura y confírmalas una vez.
}
opening-lead-none = No toca nada. Elige lo que hagas de todos modos y confírmalo una vez.
opening-empty = Que se sepa, no hay carne en este asador.
opening-order = En este orden la tapa queda abierta el menor tiempo
opening-order-ready = Antes de quitar la tapa: termómetro, brocha y plato limpio a la mano.
opening-order-rub = Toca el sazonador con el dedo seco: { $names }.
opening-order-check = Revisa antes de bañar: { $names }.
opening-order-wet = Voltea lo que haya que voltear y luego baña de una vez: { $names }.
opening-order-glaze = Glasea después de bañar, para que nada lo lave: { $names }.
opening-order-apart = Hasta el final, con brocha y tazón propios: { $names }.
opening-order-close = Primero pon la tapa. Después anótalo aquí.
opening-after = Lo que sigue en este asador: { $verb }, { $what }, { $when }.
opening-rub-set = El sazonador ya se fijó
opening-rub-not-yet = El sazonador todavía no se fija
opening-mop-apart = Baña, con brocha y tazón propios
opening-turn = Voltea
opening-tests = Revísala
opening-note = Una nota sobre ella
opening-submit = Todo esto está hecho
link-opening = Abre { $pit }
