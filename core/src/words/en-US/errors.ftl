### Errors: what was wrong, then what to do instead. $typed is what the person typed.

error-temperature-unread = “{ $typed }” is not a temperature. Type a number such as { $example }.
error-temperature-range = { $typed } is outside what fits here. Type a temperature from { $low } to { $high }.
error-weight-unread = “{ $typed }” is not a weight. Type one such as { $example }.
error-weight-range = { $typed } is outside what fits here. Type a weight from { $low } to { $high }.
error-duration-unread = “{ $typed }” is not a length of time. Type minutes, or { $example }.
error-duration-range = { $typed } is outside what fits here. Type a time from { $low } to { $high }.
error-measure = Type a number from { $low } to { $high } { $unit }.
error-number-comma = “{ $typed }” can be read in two ways. Type { $decimal } or { $whole }.
error-clock-unread = “{ $typed }” is not a time of day. Type one such as { $example }.
error-clock-half = “{ $typed }” can be morning or afternoon. Type it with { $morning } or { $afternoon }.
error-datetime-unread = “{ $typed }” is not a date and time. Type one such as { $example }.
error-year-range = The year must be from { $low } to { $high }. Check the date and type it again.
error-name-empty = The name is empty. Type at least one letter.
error-name-long = The name has { $length } characters. Shorten it to { $limit } or fewer.

## Acts that are not possible. What is said first is wrong; what comes next can be done now.
error-cook-unknown = That cook was taken back or is not on this device yet. Go to the start screen and choose a cook.
error-meat-unknown = That meat was taken back or is not on this device yet. Go back and choose one of the meats shown.
error-meat-became = { $name } goes on as { $heirs } now. Record it there.
error-meat-elsewhere = { $name } belongs to another cook. Open that cook and record it there.
error-pit-unknown = That pit was taken back or is not on this device yet. Choose one of the pits shown, or add it in settings.
error-thermometer-unknown = That thermometer was taken back or is not on this device yet. Choose one of those shown, or none.
error-dish-unknown = That dish was taken back or is not on this device yet. Choose one of the dishes shown.
error-job-elsewhere = That is nothing to be done in this cook. Open the cook it belongs to.
error-cook-over = { $name } is over already. To go on with it, take back its end.

error-clock-unset = The clock of this device says { $time }, which cannot be right. Set its date and time, then try again.
error-at-long-ago = { $time } is too long ago to be recorded. Give a time after { $first }, or write it down as a note.
error-at-ahead = { $time } has not come yet. Give the time when it happened, or leave the time empty for now.
error-sleep-range = Sleep ends after { $first } and before { $last } at the latest. Choose a time in between.
error-serve-range = { $time } is no serving time for this cook. Choose one from now until { $last }.
error-serve-zone = The time zone “{ $zone }” is not known here. Choose a zone in settings and set the serving time again.

error-people-range = How many eat goes from { $low } to { $high }. Correct the number, or leave it empty.
error-alone-range = A pit may be left alone for { $low } to { $high } minutes. Correct the number, or leave it empty.
error-grate-range = A grate has { $low } to { $high } square centimeters. Measure it again, or leave it empty.
error-cadence-range = A meat is mopped or spritzed every { $low } to { $high } minutes. Choose a number in between, or none.
error-band-minutes-range = A pit rings after { $low } to { $high } minutes outside its temperatures. Choose a number in between.
error-band-order = The lower temperature must be below the higher one. Set them again.
error-later-range = A job can wait { $low } to { $high } minutes. Choose a number in between, or leave it out this time.
error-altitude-range = Altitude goes from { $low } to { $high } meters. Find it on a map and correct it.
error-pit-heat-range = A pit stands between { $low } and { $high }. Read the thermometer again and correct the number.
error-meat-heat-range = The inside of a meat is between { $low } and { $high }. Read the thermometer again and correct the number.
error-meat-row = Row { $row }, { $cut }: { $reason }
error-meat-weight = That cannot be the weight of one meat. Weigh it again, or leave it empty; what weighs more than { $high } goes in as several meats.
# $source names who published the minimum.
error-pull-range = Take it off between { $low } and { $high }. The lower one is its safe minimum ({ $source }); local rules come first. Choose a temperature in between, or leave it empty.
error-text-long = That has { $length } characters. Shorten it to { $limit } or fewer.
error-note-empty = The note is empty. Write at least one letter.
# What an instrument or one of its channels is called.
error-label = “{ $label }” cannot name a probe. Type its name as the instrument shows it, without spaces around it.
error-meats-many = At most { $limit } meats can be added at once. Add the others afterward.
error-field-not-its-own = That cannot be set here. Go back to settings and open the thing that it belongs to.

error-parts-range = Give { $low } to { $high } different parts.
error-join-cuts = Only meats of one cut can go on as one, because each cut has its own tests and minimum. Choose meats of one cut.
error-wrap-before-pit = { $name } has not been on a pit yet. Say first when it went on, then that it was wrapped or unwrapped.
error-check-count = A check has one to { $limit } results. Try at least one test, or go back without a check.
error-test-not-its-own = That test is not for { $name }. Choose one of the tests shown for it.
error-spot-not-its-own = { $name } has no such place. Choose one of the places shown for it, or “elsewhere”.
error-not-ice = { $read } is too far from { $right } for crushed ice in water. Fill a glass with ice, add water, stir, keep the tip off the glass, wait, and read again; a thermometer that still says so is broken.
error-not-boiling = { $read } is too far from { $right }, where water boils at that altitude. Bring it to a rolling boil, check the altitude, keep the tip off the pot, and read again; a thermometer that still says so is broken.

error-open-nothing = Nothing was chosen. Choose a meat or a pit.
error-open-empty-pit = Nothing is on { $pit } as far as is known. Say first which meat went on.
error-open-off-pit = { $name } is not on a pit as far as is known. Say first when it went on.
error-open-other-pit = { $name } is on { $pit }, not on { $other }. Move it first, or leave it out here.
error-wet-wrapped = { $name } is wrapped. Unwrap it first, or leave it out here; wrapped meat needs no mop.
# $first and $second are the two meats.
error-mop-raw-poultry = One mop must not touch both { $first } and { $second }: raw poultry gets a mop, brush and bowl of its own (USDA FSIS; local rules come first). Use a second one, and record each alone.
error-mop-raw-on-cooked = One brush must not touch both { $first } and { $second }: what touched raw meat must not touch cooked food (USDA FSIS; local rules come first). Use a clean one, and record each alone.

error-targets-count = Choose one to { $limit } entries.
error-target-unknown = That entry is not on this device. Open the timeline again and choose one that is shown.
error-undo-never = That cannot be taken back: it says that a device joined, or that something was erased for good. Choose another entry.
error-erase-never = That cannot be erased, because the rest would be misread without it. Take it back instead.
error-erase-cooks = Those entries belong to several cooks. Erase them one cook at a time.
error-no-job = Nothing was chosen. Choose what to leave out or put off.
error-opening-rub = The rub on { $name } has not set: a mop would carry it off. Leave the mop out, or say that it has set.
error-opening-twice = { $name } is in this opening twice. Say once what was done to it.
error-move-nothing = Nothing was moved. Choose another level, spot or pit for at least one meat.
