# A meat off the fire whose published minimum no reading shows. $what is a list of names.

job-read-or-back = Read it by hand, or put it back
ring-read-or-back = { $what }: read it by hand, or put it back
ring-read-or-back-detail = It is off the fire, and no reading shows its published minimum. Food safety comes first; local rules and licensed practice may ask for more.
because-read-or-back = It is off the fire. { $safety }
