# What is served when, and a run sheet that no longer fits. $course is what a course is called, $what a meat, a dish or a cook.

course-heading = Not all at one time
course-how = Leave it as it is where all is served at one time. A course may have a latest time; a turn-in has the minutes that its table is open before and after.
course-table = The hour of the table
course-hour = { $course }, { $time }
course-nth = Course { $nr }
course-name = What it is called
course-time = Time
course-latest = At the latest
course-window = Turn-in: ± minutes
course-at = { $course }, { $time }: { $members }
course-by = { $course }, { $time }, by { $until } at the latest: { $members }
course-turned-in = { $course }, handed in { $time } to { $until }: { $members }
course-nothing = nothing yet
form-course-blank = Something is in course { $nr }, and that row is blank: give it a time, or choose another for what is in it.
sheet-turn-in = { $course }, open until { $until }
plan-why-wrap = About when it is usually ready for it. Wrap once the bark has set and you like its color: that decides, not the clock.

act-courses-planned = { $count ->
    [0] All is served at one time.
    [one] One course written down. Plan again, so that the sheet has it.
   *[other] { $count } courses written down. Plan again, so that the sheet has them.
}
act-sheet-kept = The sheet stays as it is. You are told again when something further no longer fits.
error-course-count = A cook has at most { $limit } courses. Put two of them together.
error-course-odd = A course cannot be read. Open the plan again and write it down anew.
error-course-name-twice = Two courses are called “{ $course }”: give each a name of its own.
error-course-member-twice = Something in “{ $course }” is in another course too: choose one of them for it.
error-course-past = “{ $course }” was to be at { $time }, and it is { $now }: choose { $next } or later.
error-course-both = “{ $course }” has a latest time and a turn-in: a turn-in waits for nobody. Leave one of them blank.
error-course-window = The table for “{ $course }” is open 0 to { $most } minutes before and after its time: for a longer wait, give a latest time.
error-course-latest = “{ $course }” is wanted at { $time } and may be no later than { $latest }: make the latest { $time } or after, or leave it blank.
error-course-latest-far = “{ $course }” may be as late as { $latest }, which no plan waits for: make it { $last } or sooner.
error-clock-skipped = On that night the clock skips “{ $typed }”. The nearest time there is is { $nearest }.
kind-courses-planned = Said what is served when
kind-sheet-kept = Kept the sheet

fits-no-longer = The sheet no longer fits
fits-notice = { $heading }. { $why }
fits-see = See a new sheet
fits-keep = Keep the sheet
fits-late = { $job } was to begin at { $time }, { $by } ago.
fits-forecast-later = { $what } is likely { $by } later than the sheet says.
fits-forecast-sooner = { $what } is likely { $by } sooner than the sheet says.
fits-moved-later = { $what } is now on the table { $by } later.
fits-moved-sooner = { $what } is now on the table { $by } sooner.
fits-missing = { $what } is not on it.
fits-courses = What is served when was said anew.
fits-cold = { $pit } reads { $reads }, and the sheet counts on { $meant }.
