### A screen that is propped up or hangs on a wall: what its own page says and what stands around every page of the home post.

wall-title = This wall screen
wall-lead = What is set here counts for this browser on this device, and for no other.
wall-link = This wall screen: its size, its light, its ringing
wall-prop = Prop it up
wall-leave = Take it in hand
wall-needs-script = Scripts are off. A screen can be propped up, and can ring, only with scripts.

wall-ringing = Ringing
wall-ring-test = Ring now, as a test
wall-ring-speech = This is how it rings.
wall-rang = It rang. If you heard nothing, turn up the volume of this device, end its silent mode, and test again.
wall-silent = This browser did not let the page ring. Tap the page once more and test again; if it stays silent, let this address play sound in the browser's settings.
wall-aloud = Say aloud what is due
wall-no-voice = This browser has no voice of its own for English. Install one in the device's settings for speech; until then it rings without speaking.

wall-awake = Staying awake
wall-awake-yes = While it is propped up this page keeps the screen on. Leave the charger plugged in.
wall-awake-insecure = This page cannot keep the screen on, because its address does not begin with https. In the device's settings set the screen to stay on, or to the longest time there is, and leave the charger plugged in.
wall-awake-unknown = This browser cannot keep the screen on. In the device's settings set the screen to stay on, or to the longest time there is, and leave the charger plugged in.
wall-awake-refused = The device did not let this page keep the screen on. End its power saving, and leave the charger plugged in.

wall-letters = Letters for two meters
wall-letters-how = Hold a bank card upright to the glass, its lower left corner on the corner of the outline, and slide until the outline is as wide as the card. It is needed once on each screen.
wall-card = Width of the card
wall-wider = Wider
wall-narrower = Narrower
wall-card-forget = Forget the size
wall-letters-source = A card is 85.60 × 53.98 mm (ISO/IEC 7810, ID-1, from memory). Capitals of 9.3 mm are seen under 16 minutes of arc from two meters, the least that ISO 9241-303 asks for (from memory); what comes next has 12 mm.
wall-sample-next = Mop
wall-sample-meats = Slab

wall-light = Light
wall-light-device = As the device has it
wall-light-bright = Bright, for the sun
wall-light-dark = Dark, for the night

wall-cautions = { $count ->
    [one] 1 caution
   *[other] { $count } cautions
}
wall-away-title = The home post cannot be reached
wall-away = Nothing is lost: what was written down is kept there. See that the program runs, and that this device is on the same network. Watch the pit by hand until then; this page does not ring.
