### Acts: what each act says when it is done, and its buttons.

# $name and $names are what meats, pits, thermometers, dishes or cooks are called.
act-added = Added { $name }.
act-saved = Saved for { $name }.
act-habit-saved = Saved for the crew.
act-thermometer-right = { $name } reads right.
act-thermometer-high = { $name } reads { $off } high.
act-thermometer-low = { $name } reads { $off } low.
act-thermometer-corrected = Its readings are corrected by that.
act-thermometer-too-far = Nothing is judged by it: use another one.
act-device-named = This device is now called { $name }.
act-dismissed = Put away.
act-slept = Sleep well until { $time }.
act-woke = Good morning.
act-watch-taken = You have the watch.

act-cook-started = { $name } has begun.
act-cook-finished = { $name } is over. It stays in the pit book.
act-noted = Written down.
act-dish-ready = { $name } is ready.
act-dish-not-ready = { $name } is not ready yet.

act-split = Cut { $name } in { $parts }.
act-joined = { $parts } go on as { $name }.
act-moved = Moved { $name } to { $pit }.
act-rub-set = The rub on { $name } has set.
act-rub-not-set = The rub on { $name } has not set yet.
act-checked = Checked { $name }.
act-stage-trimmed = Trimmed { $name }.
act-stage-brined = Brined { $name }.
act-stage-rubbed = Rubbed { $name }.
act-stage-resting = { $name } rests in the cold.
act-stage-on-pit = Put { $name } on { $pit }.
act-stage-wrapped-paper = Wrapped { $name } in paper.
act-stage-wrapped-foil = Wrapped { $name } in foil.
act-stage-wrapped-boat = Put { $name } in a foil boat.
act-stage-wrapped-pan = Covered { $name } in a pan.
act-stage-unwrapped = Unwrapped { $name }.
act-stage-off = Took { $name } off.
act-stage-held = { $name } is held hot.
act-stage-cut-up = Cut up { $name }.
act-stage-served = Served { $name }.
act-stage-put-away = Put { $name } in the refrigerator.
act-stage-reheated = Reheated { $name }.

act-mopped = Mopped { $names }.
act-spritzed = Spritzed { $names }.
act-turned = Turned { $names }.
act-glazed = Glazed { $names }.
act-opened = Opened { $pit }.
act-read = { $name }: { $temp }.
# $sensor is the channel of the instrument.
act-probe-bound = Probe { $sensor } is in { $name }.
act-fed = Fed { $pit }.
act-vent-changed = Changed a vent of { $pit }.
act-fire-seen = Saw to the fire in { $pit }.

act-skipped = Left out this time.
act-put-off = Later, at { $time }.
act-answered = Answered.
act-undone = Taken back.
act-undone-together = Taken back, on the other devices that recorded it too.
act-restored = Back as it was.
act-erased = { $count ->
    [one] Erased one entry for good.
   *[other] Erased { $count } entries for good.
}
act-moved-all = Moved { $names }.
