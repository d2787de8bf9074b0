### Plan: why each job is when it is, what other plans cost, and what stands against a plan.

## What goes wrong outside a meat's happy range.
plan-below-skin = safe, but the skin gets tough
plan-below-slow = slow, and long in the smoke
plan-above-dry = the outside is dry before the inside is tender

## Why a job is then.
plan-why-prep = It rests in the cold for { $least } to { $most } before the next job; on the fire at { $on }.
plan-why-prep-any = Any time in the { $most } before the next job; on the fire at { $on }.
plan-why-put-on = Off by { $off } in { $in_hundred } of 100 cooks, so that { $serving } is on the table at { $at }.
plan-why-put-on-short = Ready for { $serving } at { $at } in only { $in_hundred } of 100 cooks: nothing earlier is possible.
plan-why-check-from = One cook in ten is done by now.
plan-why-take-off = Expected now; between { $early } and { $late } in 8 of 10 cooks. The checks decide, not the clock.
plan-why-vent = Open, so that it stops cooking before it is boxed.
plan-why-rest = At least { $least }, so that it keeps its juice and its minimum is reached.
plan-why-hold = In { $place }; best held for { $least } to { $most }.
plan-why-hold-not-before = Not into { $place } before { $box_from }: it would not stay at 140 °F (60 °C) until the knife. Keep it hot where it cooked until then. Best held for { $least } to { $most }.
plan-why-probe = Held for more than two hours: a probe in the thickest place shows that it stays at 140 °F (60 °C) or above (USDA).
plan-why-cut = Cut last, so that { $serving } is still hot at { $at }.
plan-why-make = Keeps for { $keeps }; ready for { $serving }.
plan-why-reheat = Warm again for { $serving } at { $at }.
plan-why-light = { $preheat } until it is steady and meat goes on.
plan-why-step-for = { $meat } is better at this temperature.
plan-why-step = What is still on gets done in time at this temperature.
plan-why-feed = This pit may burn alone for { $alone } and no longer.
plan-why-let-out = The last meat is off.
plan-why-serve = At the time you wanted.
plan-why-serve-later = Later than you wanted: sooner, not everything would be ready.
plan-why-sleep = Nothing burns longer than it may be left alone.
plan-why-sleep-watched = { $name } has the watch.

## What stands against a plan.
plan-no-hands = Nobody is there to do anything: plan with at least one pair of hands.
plan-nothing = There is nothing to cook: name a meat or a dish.
plan-off-grid = The plan has to begin on a full quarter of an hour: give from_ms as a multiple of 900,000.
plan-number = { $what } is { $value }: it has to be { $low } to { $high }.
plan-no-name = Something has no name: give each meat, dish, pit, place and serving one.
plan-name-twice = “{ $name }” is there twice: give each a name of its own.
plan-no-serving = “{ $name }” has no serving: choose one that is on the list.
plan-least-above-most = Of “{ $name }” the least ({ $least }) is more than the most ({ $most }): make the least smaller or the most larger.
plan-window-empty = A sleep, a quiet time or a watch ends before it begins: turn its times around.
plan-temps-unsorted = The temperatures of “{ $pit }” have to be listed once each, the coldest first.
plan-hold-unsafe = “{ $place }” keeps meat at { $has }, and hot food is held at { $least } or above (USDA): set it higher, or hold nothing in it.
plan-off-unsafe = “{ $meat }” is to come off at { $has }, and its published minimum is { $least } ({ $source }): take it off no sooner.
plan-no-temperature = “{ $meat }” has no cooking time at any temperature that a pit is held at: add one to the pit, or give its time.
plan-fits-no-pit = “{ $name }” needs { $needs } cm² of grate, and the largest pit, “{ $pit }”, has { $has } cm²: cut it in two, or use a larger pit.
plan-no-burner = “{ $dish }” needs a burner, and there is none: count the burners of the stove, or make it cold.
plan-serving-past = “{ $serving }” was to be at { $at }, and it is { $now }: choose a time that is still to come.
plan-latest-before = “{ $serving }” may be no later than { $latest }, and is wanted at { $preferred }: make the latest time later, or the wanted one sooner.
plan-turn-in-waits-not = “{ $serving }” is handed in, so its latest time cannot be later than its time: leave the latest time out.
plan-zone = The time zone “{ $zone }” is not known here: name one, for example America/Chicago.
plan-wall-unread = “{ $typed }” is not a time for “{ $serving }”: write it as 2026-06-07T14:00.
plan-wall-skipped = “{ $serving }”: on that night the clock skips { $typed }. The nearest time there is is { $nearest }.
plan-night-too-long = More than 32 hours of sleep and quiet lie ahead: plan at most four nights.
plan-none = Nothing can be planned so that everything is ready and safe.
plan-none-found = No plan was found within the search's limits; there may be one.

## What would make a plan.
plan-way-later = It works { $by } later: “{ $serving }” at { $at }.
plan-way-earlier = It would have worked with a start { $by } sooner.
plan-way-pit = It works with a second pit like “{ $pit }”.
plan-way-less = It works without “{ $meat }”.
plan-way-hands = It works with one more pair of hands.
plan-way-temperature = It works with “{ $pit }” held at { $temp }.
plan-way-place = It works with one more place to hold meat, kept at { $temp }.

## What another plan gains and costs beside the plan.
plan-gain-ready = Surer to be ready: { $permille } of 1,000 instead of { $before }.
plan-cost-ready = Less sure to be ready: { $permille } of 1,000 instead of { $before }.
plan-gain-late = On the table { $by } sooner.
plan-cost-late = On the table { $by } later.
plan-gain-temperature = { $meat } cooks at a temperature that it is happy in: otherwise { $wrong }.
plan-cost-temperature = { $meat } cooks outside its happy temperatures: { $wrong }.
plan-gain-night = { $by } less up at night.
plan-cost-night = { $by } more up at night.
plan-gain-hold = { $by } closer to the best hold, all together.
plan-cost-hold = { $by } farther from the best hold, all together.
plan-gain-openings = { $count ->
    [one] One opening less.
   *[other] { $count } openings less.
}
plan-cost-openings = { $count ->
    [one] One opening more.
   *[other] { $count } openings more.
}
plan-gain-fuel = { $weight } less fuel.
plan-cost-fuel = { $weight } more fuel.
