### One opening of a pit: what is due, in which order, and what can be chosen for each meat.

opening-title = Open { $pit }
opening-lead = { $count ->
    [one] One thing is due. Do it, then confirm once.
   *[other] { $count } things are due. Do them in this one opening, then confirm once.
}
opening-lead-none = Nothing is due. Choose what you do all the same, then confirm once.
opening-empty = No meat is on this pit as far as is known.
opening-order = In this order the lid is off for the shortest time
opening-order-ready = Before the lid comes off: thermometer, mop and clean plate within reach.
opening-order-rub = Touch the rub with a dry finger: { $names }.
opening-order-check = Try it before it gets wet: { $names }.
opening-order-wet = Turn what is to be turned, then wet these in one go: { $names }.
opening-order-glaze = Glaze after the mop, so that nothing washes it off: { $names }.
opening-order-apart = At the very end, with a mop and bowl of its own: { $names }.
opening-order-close = Lid on first. Then write it down here.
opening-after = Next at this pit: { $verb }, { $what }, { $when }.
opening-rub-set = The rub has set
opening-rub-not-yet = The rub has not set yet
opening-mop-apart = Mop, with a mop and bowl of its own
opening-turn = Turn
opening-tests = Check it
opening-note = A note on it
opening-submit = All of this is done
link-opening = Open { $pit }
