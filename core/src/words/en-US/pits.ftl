### Pits: kinds of pit and what is said of them.

pit-kind-stick-burner = Stick burner
pit-kind-kettle = Kettle
pit-kind-drum = Drum
pit-kind-ceramic = Ceramic
pit-kind-cabinet = Cabinet
pit-kind-pellet = Pellet
pit-kind-electric = Electric

# What sits where on each pit.
pits-title = Pits
pits-none = No meat, fire or probe belongs to a pit of this cook yet.
pits-where = What sits where
pits-where-lead = Say the level or spot of each meat. What you leave as it is stays.
pits-spot = Level or spot
pits-no-spot = spot not said
pits-submit = So they sit now
pits-fed = Fed
pits-vent = Vent changed
pits-opened = Opened
pits-seen = Fire seen to
spot-near-fire = near the fire
spot-middle = middle
spot-far-from-fire = far from the fire
spot-over-coals = over the coals
spot-away-from-coals = away from the coals
spot-upper = upper level
spot-middle-level = middle level
spot-lower = lower level
spot-front = front
spot-back = back
button-turn-all = Turned all of them
button-one-place-on = All one place on
link-pits = Pits
