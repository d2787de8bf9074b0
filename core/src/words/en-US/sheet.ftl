# The run sheet: the accepted plan as a list of times and jobs. $what is what a job is done on, $pit a pit's name.

link-sheet = Run sheet
link-plan = Plan it

sheet-does-thaw = Thaw
sheet-does-trim = Trim
sheet-does-brine = Brine
sheet-does-rub = Rub
sheet-does-rest-cold = Into the cold
sheet-does-sleep = Sleep
sheet-does-light = Light
sheet-does-preheat = Bring up
sheet-does-step = Set
sheet-does-feed = Feed
sheet-does-put-on = Put on
sheet-does-wrap = Wrap
sheet-does-check = Check from now
sheet-does-take-off = Take off
sheet-does-take-off-asked = Try it, then off
sheet-does-vent = Let it vent
sheet-does-rest = Let it rest
sheet-does-hold = Hold hot
sheet-does-probe-hold = Probe what is held
sheet-does-dish = Dish
sheet-does-reheat = Reheat
sheet-does-cut = Cut
sheet-does-serve = Serve
sheet-does-let-out = Let it go out

sheet-on-pit = { $what } on { $pit }
sheet-to-temp = { $what } to { $temp }
sheet-in-wrap = { $what }, { $wrap }


sheet-none = There is no run sheet yet. Plan the cook, and accept the plan: its jobs ring then.
sheet-people = For { $count } { $count ->
    [one] person
   *[other] people
}
sheet-chance = Ready by then in { $count } of 100 such cooks
sheet-accepted = Accepted { $time } by { $name }
sheet-done = done { $time }
sheet-over = Done: { $count }
sheet-do = What can be done
sheet-left-out = left out
sheet-other = The other plan
sheet-other-about = Accepted { $time } by { $name }, on the table { $serve }.
sheet-other-take = Take this one
sheet-drop = Go on without a plan
sheet-drop-asked = Its jobs stop ringing. What was done stays.
sheet-change-new = new: { $time }
sheet-change-other = otherwise: { $time }
sheet-change-gone = no longer: { $time }
sheet-change-later = { $from } → { $to }, { $by } later
sheet-change-earlier = { $from } → { $to }, { $by } earlier
sheet-calendar = Calendar file
sheet-calendar-how = Opens in the calendar of a phone or a computer, and rings there too.
sheet-calendar-name = run-sheet.ics
sheet-calendar-title = { $cook }: run sheet
sheet-text = The sheet as words, to send
sheet-print = Printed, it is the sheet alone, on one page.

button-sheet-done = Done

hand-out-title = Class hand-out
hand-out-lead = The same sheet for each student, counted back from their own serving time.
hand-out-students = Students
hand-out-how = One a line: name, time. For example: Ana, 12:30 PM
hand-out-make = Make the sheets
hand-out-serve = On the table { $time }
hand-out-no-sheet = There is no run sheet yet. Plan the cook and accept the plan, then make the hand-out.
hand-out-many = More than { $limit } lines. Make two hand-outs.
hand-out-unread = “{ $line }” is not a name and a time. Write it so: Ana, 12:30 PM

act-plan-accepted = { $count ->
    [one] Plan accepted: one job.
   *[other] Plan accepted: { $count } jobs.
}
act-plan-dropped = Going on without a plan.
error-no-plan = There is no accepted plan. Nothing was changed.
error-plan-gone = That plan is no longer at hand: another was accepted since. Open the run sheet again.
error-plan-count = A plan has 1 to { $limit } jobs. Plan fewer meats, or two cooks.
error-plan-twice = One job is in the plan twice. Plan it again.
error-plan-time = A job at { $time } lies too far off, or ends before it begins. Plan it again.
error-plan-odd = A job of the plan cannot be read. Plan it again.
error-not-on-sheet = That job is no longer on the run sheet. Open it again.
kind-plan-accepted = Accepted a plan
kind-plan-dropped = Dropped the plan

plan-title = Plan the cook
plan-lead = Counted back from the hour of the table. What is known of the cook is taken from it; say the rest, and take one of the plans or none.
plan-no-hour = Say first when it is on the table, under Write down: a plan counts back from there.
plan-over = This cook is over: there is nothing left to plan.
plan-number-unread = “{ $typed }” is not a whole number that fits here.
plan-time-unread = “{ $typed }” is not a time of day. Write it as 22:00, or leave it blank.
plan-first = The plan
plan-other = Another way, { $nr }
plan-not-proven = The search ended before it was shown that nothing better exists.
plan-accept = Accept this plan
plan-hands = Pairs of hands (1 to 3)
plan-sleep-from = Asleep from
plan-sleep-to = Asleep to
plan-watched = Somebody sits up with the fire at night
plan-cooler = There is a cooler to hold meat in
plan-oven = There is an oven to hold meat in
plan-late = Minutes late it may be at the most
plan-go = Make a plan
plan-hour-later = Guests come an hour late
plan-jobs = Its jobs
plan-changes = What it changes
plan-refuse = Leave it as it is
plan-place-cooler = the cooler
plan-place-oven = the oven
plan-watcher = Whoever sits up
