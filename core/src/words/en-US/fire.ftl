### The fire: what hands put on and do, when to feed next, smoke in words. Common practice, no source, unless one is named.

# $amount is such as ½, 1 or 1½; $count is 1 up to one of them, else 2.
fuel-split = { $count ->
    [one] { $amount } split
   *[other] { $amount } splits
}
fuel-chunk = { $count ->
    [one] { $amount } chunk
   *[other] { $amount } chunks
}
fuel-chimney = { $count ->
    [one] { $amount } chimney
   *[other] { $amount } chimneys
}
fuel-basket = { $count ->
    [one] { $amount } basket
   *[other] { $amount } baskets
}
fuel-hopper = { $count ->
    [one] { $amount } hopper
   *[other] { $amount } hoppers
}
vent-lower = Lower vent
vent-upper = Upper vent
vent-shut = shut
vent-quarter = ¼ open
vent-half = ½ open
vent-three-quarters = ¾ open
vent-open = open
fire-did-lit = lit
fire-did-coals-ready = burns clear
fire-did-water = water pan filled
fire-did-ash = ash out
fire-did-grease = grease emptied
fire-did-shut-down = shut down
weather-freezing = below { $cold }
weather-between = { $span }
weather-hot = above { $hot }
weather-still = still
weather-breeze = breeze
weather-windy = windy
weather-dry = dry
weather-wet = rain or snow
weather-shade = shade
weather-sunny = full sun
wood-fruit = fruit wood
wood-mild = alder or maple
wood-oak = oak
wood-pecan = pecan
wood-hickory = hickory
wood-mesquite = mesquite
wood-unknown = not known
found-out-until = burned for certain until { $time }
wood-tamed = { $wood }, burnt to coals or mixed with a milder wood
smoke-nothing = no smoke
smoke-thin-blue = thin, bluish
smoke-white = thick, white
smoke-gray = gray or yellow
smoke-black = black
smoke-stings = stings the eyes

act-fed-units = { $pit }: put on { $what }.
act-fire-what = { $pit }: { $what }.
act-weather = Weather: { $what }.
act-wood = { $pit } smokes with { $what }.
act-found-out = { $pit } was found out. It burned for certain until { $time }: see what to do with the food.
act-wood-tamed = { $pit }: { $what }, burnt to coals or mixed with a milder wood.
act-smoke = { $pit }, smoke: { $what }.
act-feed-planned = { $pit } is to be fed at { $time }. It rings then.
act-unit-weighed = { $pit }: { $what } weighs { $weight }.
error-fed-range = Quarters put on at once go from { $low } to { $high }. Choose how much you put on.
error-vent-range = A vent is open by { $low } to { $high } quarters. Choose how far.
error-unit-range = One weighs between { $low } and { $high } g. Weigh one and type that.
error-feed-when = A feed time lies between now and a day from now. Choose another.
error-burned-until = It burned last between a day ago and now. Choose when.
error-fuel-elsewhere = { $what } does not go in { $pit }. Choose what that pit burns.
kind-weather-said = Weather
kind-wood-said = Smoke wood
kind-fire-found-out = Fire found out
kind-wood-tamed = Smoke wood, burnt down or mixed
kind-smoke-watched = Smoke seen
kind-feed-planned = Feed time accepted
kind-unit-weighed = Weighed

fire-title = { $pit }: fire
link-fire-of = { $pit }: fire
link-fire = The fire
fire-next = Feed next
fire-about = about { $time }
fire-late = { $late } late
fire-between = Between { $from } and { $to }.
fire-learned = Learned from { $count ->
    [one] one interval
   *[other] { $count } intervals
} of this cook.
fire-learned-past = Learned from { $count ->
    [one] one interval
   *[other] { $count } intervals
} of this cook and { $past } of past ones.
fire-only-past = Learned from { $past ->
    [one] one interval
   *[other] { $past } intervals
} of past cooks.
fire-reckoned = Reckoned from what such a pit loses, not learned: rough. The second feed of this cook begins to teach it.
fire-unfed = not known yet
fire-unfed-detail = Nothing was put on yet: tap what you put on.
fire-untold-detail = Tap how much you put on, and it is reckoned; after the second feed it is learned.
fire-weather-unsaid = Nobody said the weather: wider by a tenth.
fire-accept = Call me at { $time }
fire-accepted = Feed time accepted
fire-accepted-at = rings at { $time }
fire-never-rings = What is learned or reckoned never rings by itself. Only a time that you accept does.
fire-openings = Openings so far
fire-openings-state = { $count ->
    [one] one opening
   *[other] { $count } openings
}
fire-openings-cost = They move the finish by about { $cost }: rough, reckoned with a minute and a half each.
fire-alone-by = By what was burnt, see to it by { $time }.
fire-put-on = Put on
fire-vents = Vents
fire-vent-unsaid = not said
fire-jobs = From lighting to shutdown
fire-job-light = Light it
fire-job-switch-on = Switch it on
fire-job-coals-ready = Wait until it burns clear
fire-job-feed = Feed it
fire-job-water = Fill the water pan
fire-job-ash = Take out the ash
fire-job-grease = Empty the grease
fire-job-shut-down = Shut it down
fire-job-next = next
fire-job-done = done { $ago }
fire-job-is-done = done
fire-job-later = later
fire-job-again = again when it is needed
fire-did-it = Did it
fire-feed-above = Tap above what you put on.
fire-how-light = Vents open. Charcoal in a chimney, never with gasoline; wait until it is gray at the edges.
fire-how-switch-on = Cord and plug dry, lid open while it starts.
fire-how-coals-ready = Put nothing on the grate until the smoke runs thin.
fire-how-water = Hot water, so that the fire need not warm it. Do not let it run dry.
fire-how-ash = Into a metal bucket with a lid, outdoors, away from walls. Ash glows inside for days.
fire-how-grease = Let it cool first. Never pour it on coals.
fire-how-shut-down = Shut all vents. Leave the pit outdoors until it is cold.
fire-how-shut-down-plug = Let it run down as its maker says, then unplug it.
fire-smoke = Smoke
fire-smoke-wood = Wood
fire-smoke-strength = Strength
fire-smoke-light = light
fire-smoke-medium = medium
fire-smoke-strong = strong
fire-smoke-now = Seen
fire-smoke-clean = clean
fire-smoke-catching = catching fire
fire-smoke-dirty = dirty
fire-smoke-none = none
fire-smoke-unseen = not said yet
fire-smoke-look = What do you see or smell?
fire-smoke-which = Which wood smokes?
fire-smoke-tamed = Burnt to coals first, or mixed with milder wood
fire-smoke-tell = Clean smoke is thin, bluish and smells sweet. Dirty smoke is thick, white, gray or black, and stings. No smoke is no harm.
smoke-clear-it = It is dirty: give it air, take out with tongs what only smolders, and put no meat on until it runs thin.
smoke-let-it-catch = Fresh fuel: wait until it burns clear.
smoke-mesquite = Mesquite is strong: not raw for a long cook. Burn it down to coals first, or mix one part with three of oak.
smoke-known-wood = Burn no wood that nobody knows: none that is painted or treated, no softwood.
smoke-small-hot = Small, dry, warmed splits, and flames. Never smoldering logs.
smoke-no-more-chunks = No more chunks: the bark is set or has had its hours. From here on it is heat alone.
smoke-one-more-chunk = One more chunk can go on, beside the coals that glow.
smoke-wrapped = What is wrapped takes no smoke: feed for heat alone.
smoke-enough = It has enough: no more chunks for a while.
fire-weather = Weather, in four taps
fire-weather-lead = It scales what was learned, and widens it where nobody says.
fire-weather-air = Air
fire-weather-wind = Wind
fire-weather-rain = Rain
fire-weather-sun = Sun
fire-weather-unknown = not said
fire-weigh = What one weighs here
fire-weigh-how = Weigh one of yours, and what is reckoned goes by it. Usual: { $usual }. Common practice, no source.
fire-weigh-unit = One
fire-weigh-weight-pounds = Weight (lb)
fire-weigh-weight-kilograms = Weight (kg)
fire-source = Order of jobs, strength of smoke, weights and losses: common practice, no source. Heating values are published. The maker's instructions come before all of it.
ring-feed-planned-detail = The feed time that you accepted.
because-feed-planned = You accepted this time to feed it.
