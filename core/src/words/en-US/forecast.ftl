### Forecasts: when a meat will be ready, what would change that, when a check is worth it.

## Parts of the day, for what is hours off.

day-part-small-hours = the small hours
day-part-early-morning = early morning
day-part-late-morning = late morning
day-part-midday = midday
day-part-early-afternoon = early afternoon
day-part-late-afternoon = late afternoon
day-part-evening = evening
day-part-late-evening = late evening
day-part-on-day = { $day }, { $part }
day-part-span = { $from } to { $to }

## One line. $when is a time, a range of times or parts of a day; "rough" = not yet scored on real cooks.

ahead-ready = likely ready { $when } (4 in 5)
ahead-ready-rough = likely ready { $when } (4 in 5, rough)
# The early end is now: only the late one is told, and one in ten is later still.
ahead-ready-by = likely ready by { $when } (9 in 10)
ahead-ready-by-rough = likely ready by { $when } (9 in 10, rough)
ahead-check-from = check from { $when }
ahead-check-now = worth a check now
ahead-check-opening = check at the opening due at { $when }
ahead-both = { $check }; { $ready }
ahead-aged = { $said }, as of { $when }

## The section of one meat.

ahead-heading = The hours ahead
ahead-none-in-sight = No finish in sight within a day as it goes now.
ahead-as-of = Reckoned at { $when }; what came since is not in it.
ahead-is-no-check = A forecast is no check: whether it is done and safe, only its check says.
ahead-rough = Rough: these forecasts have not been scored on real cooks yet.
ahead-stall = Stall: likely from { $temp }, about { $long }, until about { $until }
ahead-stall-now = In the stall: likely until about { $until }
ahead-choices = What would change it
ahead-hotter = Pit { $by } hotter
ahead-wrap = Wrap it now
ahead-stop-wetting = Stop mopping
ahead-would-be = Then it is { $ready }.
ahead-sooner = About { $by } sooner.
ahead-later = About { $by } later.
ahead-no-change = That changes next to nothing.
ahead-accept = Next check at { $when }
ahead-doubted = { $count ->
    [one] What one probe in it says is left out: it may sit in fat, on bone or in the air.
   *[other] What { $count } probes in it say is left out: they may sit in fat, on bone or in the air.
}
ahead-fan = Where its inside will likely be (4 in 5): { $name }

## What past cooks taught.

lesson-heading = What past cooks taught
lesson-name = Learned
lesson-pit-hotter = about { $by } hotter at the meat than it reads
lesson-pit-colder = about { $by } colder at the meat than it reads
lesson-pit-true = as hot at the meat as it reads
lesson-cut-longer = takes about { $percent } % longer here than usual
lesson-cut-shorter = takes about { $percent } % less time here than usual
lesson-cut-usual = takes as long here as usual
lesson-from = { $count ->
    [one] from one meat
   *[other] from { $count } meats
}
