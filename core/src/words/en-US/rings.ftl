# What rings: a verb, on what, and what is said aloud. $what is a list of names, $pit a pit's name.

ring-rub-set = Touch the rub on { $what }
ring-wet = Mop { $what }
ring-spritz = Spritz { $what }
ring-glaze = Glaze { $what }
ring-check = Check { $what }
ring-pull = { $what }: at the pull point
ring-pull-detail = Check it, and take it off when it is ready.
ring-put-away = Put away { $what }
ring-put-away-detail = Within 2 hours of serving, 1 hour above 90 °F (USDA); for the public within 4 hours (FDA Food Code). Follow local rules where they are stricter.
ring-serve = { $what } is on the table at { $time }
ring-fire-round = See to the fire in { $what }
ring-fire-round-detail = No probe watches this pit.
ring-outside = { $what } is at { $temp }
ring-outside-detail = Outside { $low } to { $high } since { $since }.
ring-silent = No word from the probe in { $what }
ring-silent-detail = Last heard at { $since }. See to the fire, then to the probe.
ring-silent-never = It has said nothing yet. See to the fire, then to the probe.
ring-wake-up = Time to get up
ring-missed = { $missed ->
    [one] One was missed.
   *[other] { $missed } were missed.
}
ring-open-slowbend = Open Slowbend
ring-open-slowbend-detail = More is due than this device can hold. Open it to lay the rest.
ring-late = Late: due at { $time }.
ring-elsewhere = { $name } has the watch.
