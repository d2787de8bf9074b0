### The frame of a native screen: headings and buttons that belong to no cook, and what a form answers.

frame-meats = Meats
frame-pits = Pits
frame-next = After that
frame-watch = The watch
frame-at-hand = At hand
frame-facts = Facts
frame-checks = Checks so far
frame-check-next = Next check:
frame-settings = Settings
frame-past = Pit book
frame-earlier = Earlier
frame-cut = Cut
frame-no-meat = None
frame-no-pit = No pit yet
frame-another-meat = Another meat
frame-serve-how = A time of day, such as 2 pm
frame-thermometer = Thermometer
frame-other-thermometer = One that is not listed
frame-left-in = Read from a probe that stays in, not by hand
frame-go-on = Yes, do it
frame-leave-it = No, leave it
frame-back = Back
frame-again = Try again
frame-stopped = This could not be done
frame-hand = The hand for the buttons
frame-hand-right = Right
frame-hand-left = Left
frame-weight-wake = See to it now
frame-weight-call = Due
frame-weight-soon = Soon
frame-weight-calm = Well
frame-weight-faint = Over

form-choose = Choose one of the choices on the screen.
form-nothing-tried = Nothing was tried. Choose what came of at least one test, or type a temperature.
form-unread = That is not a whole number. Type digits only, such as 60.
