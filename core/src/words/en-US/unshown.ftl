# A meat off the fire whose published minimum no reading shows. $what is a list of names.

job-read-or-back = Read it by hand, or put it back
ring-read-or-back = { $what }: read it by hand, or put it back
ring-read-or-back-detail = It is off the fire, and no reading shows its published minimum. Food safety comes first; local rules and licensed practice may ask for more.
because-read-or-back = It is off the fire. { $safety }

# What is still open when a cook is finished. $open is one sentence after another.
confirm-finish-open = Still open: { $open } Finish this cook all the same? Nothing rings for it after that. What happened stays in the pit book.
open-on-pit = { $what }: still on the pit.
open-put-away = { $what }: not put away yet.
open-unshown = { $what }: no reading shows the published minimum.

# Why readings do not count, or which thermometers are meant.
reason-elsewhere = { $temp } was read at another place and does not show the minimum: only the places of the check count.
reason-unchecked-named = Not checked in 30 days: { $names }. Hold it in ice water: it must read { $ice }.
unchecked-left-in = the probe in { $spot }
unchecked-by-hand = a thermometer that was not named
