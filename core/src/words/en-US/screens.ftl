### Screens: headings, labels and lines of the screens.

screen-late = { $late } late
screen-seconds = { $seconds } s
screen-some-pit = the pit
screen-some-meat = a meat
screen-some-cook = a cook
screen-some-dish = a dish
screen-some-thermometer = a thermometer
screen-the-crew = the crew
screen-this-device = this device
screen-other-device = another device
screen-more-meats = { $count ->
    [one] and one more meat
   *[other] and { $count } more meats
}
screen-serve = On the table { $time }, { $when }
screen-no-serve = No serving time
screen-over = Over since { $when }
screen-demo = { $name } (demo, invented)
screen-check-now = Check now.
screen-check-in = Check again in { $wait }.

headline-nothing = Nothing now
headline-nothing-on = No meat is on a pit. Tap a meat to say when one goes on.
headline-nothing-due = Nothing is due.
headline-finish = Finish the cook?
headline-finish-why = All of its meats are served or put away.
headline-speech = { $verb }: { $what }, { $when }.
headline-speech-asked = { $verb } { $what }, { $when }.

job-rub-set = Has it set?
job-mop = Mop
job-spritz = Spritz
job-glaze = Glaze
job-check = Check
job-pull = Take off
job-pull-check = At the pull point: check it
job-put-away = Put away
job-serve = Serve
job-fire-round = See to the fire
job-outside = Bring the heat back
job-silent = See to the probe
job-wake-up = Get up

because-rub-set = Touch the rub: a clean fingertip means it has set. If not, asked again in { $again }.
because-wet = { $every }. Last { $last }.
because-wet-first = { $every }. The first one.
because-missed = { $line } { $count ->
    [one] One was missed.
   *[other] { $count } were missed.
}
because-glaze = The last stretch: glaze so that it sets before it comes off.
because-check-first = The first check.
because-check = { $state } at the last check.
because-pull = A probe shows the temperature to take it off at. Check it before it comes off.
because-pull-done = The last check found it done.
because-put-away = It has stood out as long as it may: now into the refrigerator, or hold it hot.
because-put-away-by = Put away by { $time }: into the refrigerator, or hold it hot.
because-serve = On the table { $time }.
because-fire-round = No probe watches this fire.
because-wake-up = You meant to be up then.

line-due = { $verb }: { $when }
# The same of a verb that is a question.
line-due-asked = { $verb } { $when }
brief-late = late
brief-hours = { $hours } h { $minutes }
line-stage = { $stage }, { $lasting }
line-job = { $verb }: { $what }
line-job-asked = { $verb } { $what }
line-found = { $test }: { $found }
line-temp-at = { $temp }, { $spot }
line-temp-left-in = { $temp }, { $spot }, by the probe left in
line-spot-left-in = { $spot }, by the probe left in
line-happened = { $kind }: { $what }
line-unchecked = thermometer not checked
line-no-mop = No mop

pit-reads = { $temp }, { $age }
pit-silent = Silent since { $since }
pit-unread = No reading yet
pit-band = Held at { $band }
pit-outside = Outside { $band }

watch-held = { $name } has the watch since { $since }.
watch-note = { $line } “{ $note }”
watch-asleep = { $name } sleeps until { $until }.

button-did-it = Did it
button-did-it-ago = Did it 5 min ago
button-later = In 10 min
button-skip = Not this time
button-named = { $name }: { $does }
button-rub-yes = Yes, it has set
button-rub-not-yet = Not yet
button-rub-all = All have set
button-leave-on = Leave it on
button-none-left = None left
button-on-table = On the table
button-fire-seen = Seen to it
button-fed = Fed the fire
button-vent = Changed a vent
button-opened = Opened
button-seen = Seen
button-up = I am up
button-watch = I have the watch
button-sleep = I sleep until { $time }
button-dismiss = Put away
button-undo = Undo
button-undo-what = Undo: { $what }
button-restore = Restore
button-record = Record the check
button-on-pit = Put on { $pit }
button-wrap = Wrap: { $wrap }
button-trimmed = Trimmed
button-brined = In brine
button-rubbed = Rub is on
button-resting = Rest in the cold
button-unwrap = Unwrap
button-off = Take off
button-hold = Hold hot
button-cut-up = Cut
button-serve = Serve
button-put-away = Put away
button-reheat = Reheat
button-finish = Finish the cook
confirm-skip = { $verb }: { $what }. Leave it out this time? Nothing rings for it before the next one.
confirm-leave-on = Leave { $what } on past its pull point? Nothing rings for that any more.
confirm-none-left = Is nothing of { $what } left to put away? Nothing rings for it any more.
confirm-stage = { $does }: { $name }?
confirm-serve = Nothing shows that this meat reached its published minimum. Read it by hand first. Record it as served anyway?
confirm-finish = Finish this cook? Nothing rings for it after that. What happened stays in the pit book.

link-check = Check it
link-meat = The meat
link-now = Now
link-write = Write down
link-timeline = What happened
link-settings = Settings
link-start = All cooks

notice-update = Something was recorded by a newer Slowbend. Update this one; until then no meat is judged.
notice-overruled = { $winner } and { $loser } set { $field } of { $of } without knowing of each other. What { $winner } set stands.
notice-wrong-clock = A clock is wrong: { $name } recorded something for { $time }. It does not count until then. Correct that clock.
notice-odd-clock = The clock of { $name } says { $time }. Correct it; nothing else is changed by it.
notice-set-aside = The database could not be read. It is kept as { $file }. { $count ->
    [one] One entry was taken over.
   *[other] { $count } entries were taken over.
}
notice-cloned = This is a copy of another device's database. This device goes on under a name of its own.
notice-clock-forward = This device's clock was moved forward by { $by }. Reminders were laid again.
notice-clock-back = This device's clock was moved back by { $by }. Reminders were laid again.
notice-forked = { $count ->
    [one] One entry came under a name that was taken. It is kept aside.
   *[other] { $count } entries came under names that were taken. They are kept aside.
}

fact-probe = Probe
fact-pit = Pit
fact-temperature = Temperature
fact-cadence = Wetting
fact-wetted = Last wetted
fact-pull = Taken off at
fact-usual = Usually done at

check-title = Check { $name }
thermometer-unchecked = Not checked: hold it in ice water.
thermometer-lapsed = Checked { $ago }: too long ago, hold it in ice water.
thermometer-right = Checked { $ago }: reads right.
thermometer-hot = Checked { $ago }: reads { $off } hot.
thermometer-cold = Checked { $ago }: reads { $off } cold.
bath-ice = Ice water
bath-boiling = Boiling water

cut-time = { $least } to { $most }
cut-per-pound = { $span } a pound
cut-per-kilogram = { $span } a kilogram
cut-detail = Pit at { $pit }; usually { $time }. Common practice, no source.

start-title = Slowbend
start-lead = Say when the food must be on the table and what is on the pit. Slowbend says what to do next, and remembers.
start-heading = Start a cook
start-name = What is the occasion?
start-serve = On the table at
start-people = How many eat?
start-meats = Meats
start-weight-pounds = Weight (lb)
start-weight-kilograms = Weight (kg)
start-pit = Pit
start-start = Start the cook
start-demo = Watch the demo
start-demo-lead = A rowing club's regatta lunch for fourteen at two o'clock. All of its data is invented.

settings-title = Settings
settings-pits = Pits
settings-thermometers = Thermometers
settings-habits = Habits
settings-habits-detail = What a new meat gets unless told otherwise.
settings-viewer = On this device
settings-add-pit = Add a pit
settings-add-thermometer = Add a thermometer
settings-save = Save
settings-check = Check a thermometer
settings-read = It read

field-name = Name
field-pit-kind = Kind
field-grate = Grate
field-alone = May be left alone for
night-not-alone = Not left alone
field-band = Held between
field-band-low = Held from
field-band-high = Held up to
field-band-minutes = Rings when outside for
field-serve = Serving time
field-people = How many eat
field-weight = Weight
field-cadence = Wetting
field-form = Form
field-pull-at = Taken off at
field-mop-minutes = Mop every
field-spritz-minutes = Spritz every
field-altitude = Height above the sea
field-other = a setting
unit-minutes = min
label-unit = { $label } ({ $unit })

viewer-language = Language
viewer-temperature = Temperatures
viewer-weight = Weights
viewer-hours = Clock
language-en = English
language-es = Español
hours-twelve = 2:05 PM
hours-twenty-four = 14:05

about-version = Slowbend { $version }
about-device = This device is { $name }.
about-device-unnamed = This device has no name yet.

# What an entry says: the kind, then what it is about.
kind-crew-joined = Joined the crew
kind-device-named = Named this device
kind-pit-added = Added a pit
kind-thermometer-added = Added a thermometer
kind-thermometer-checked = Checked a thermometer
kind-field-set = Changed
kind-dismissed = Put a notice away
kind-slept = Sleep until
kind-woke = Got up
kind-watch-taken = Took the watch
kind-cook-started = Started the cook
kind-cook-finished = Ended the cook
kind-piece-added = Added a meat
kind-piece-split = Cut in parts
kind-pieces-joined = Joined
kind-stage-set = Came to a stage
kind-piece-moved = Moved
kind-rub-answered = Touched the rub
kind-opened = Opened
kind-checked = Checked
kind-read = Read by hand
kind-probe-bound = Placed a probe
kind-series-saved = Saved readings
kind-fed = Fed the fire
kind-vent-changed = Changed a vent
kind-fire-seen = Saw to the fire
kind-skipped = Not this time
kind-put-off = Put off
kind-answered = Answered
kind-noted = Note
kind-dish-added = Added a dish
kind-dish-ready = Dish
kind-voided = Took back
kind-erased = Erased for good
kind-unknown = Something from a newer Slowbend
happened-voided = Took back: { $what }
happened-restored = Restored: { $what }
happened-meant = Meant for { $pit }: { $name }
rub-has-set = it has set
rub-not-yet = not yet
dish-is-ready = ready
dish-not-ready = not ready
opened-wetted = wetted { $names }
opened-turned = turned { $names }
opened-glazed = glazed { $names }

standing-taken-back = Taken back
standing-orphan = Belongs to something taken back
standing-erased = Erased
standing-newer = Not read by this version
standing-must-update = Update to judge this
