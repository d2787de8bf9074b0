### Checks: tests of a meat, their outcomes and what they mean.

test-bark-set = Rub
test-wrap-call = Color
test-bone-showing = Bones
test-bend = Bend
test-probe-feel = Skewer
test-temperature = Temperature

how-bark-set = Draw a clean fingertip over the rub once.
how-wrap-call = Judge the color in daylight or white light, where the meat is palest.
how-bone-showing = See how far the meat has drawn back along most of the bones.
how-bend = Lift the slab with tongs, a third of the way in, and watch the surface over the bend.
how-probe-feel = Push a skewer or thin probe into the thick of the meat, between bones, in two or three places.
how-temperature = Push the tip of a clean, fast thermometer into each place and wait until it stands. Touch no bone.

bark-wipes-off = Rub comes off
bark-holds = Fingertip stays clean
wrap-too-pale = Too pale
wrap-color-right = As you want it
wrap-too-dark = Too dark
bone-hidden = No bone showing
bone-quarter-inch = About ¼ inch
bone-half-inch = ½ inch or more
bend-stiff = Stays nearly straight
bend-bows = Bows, surface whole
bend-cracks = Surface cracks
bend-comes-apart = Comes apart
probe-tight = Has to be pushed
probe-grabs = Drags in places
probe-slides = Slides like butter

spot-between-bones = between two middle bones, touching neither
spot-center = middle of the thickest part
spot-near-blade-bone = a finger from the blade bone
spot-upper-thick = thickest part, neck end
spot-lower-thick = thickest part, lower half
spot-inner-breastbone = deep inside, along the breastbone
spot-stuffing-center = middle of the stuffing
spot-elsewhere = any other place

level-not-yet = A good while yet
level-close = Nearly
level-ready = Ready
level-over = Past it

done-cannot-say = Cannot say
done-not-yet = Not yet
done-close = Nearly
done-tender-only = Tender, minimum not shown
done-done = Done
done-overdone = Past its best
done-update-to-judge = Update to judge this

meaning-collagen-firm = Still tough: give it time.
meaning-collagen-melting = Getting tender: nearly there.
meaning-tender = Tender.
meaning-past-tender = Very soft: it may not hold together.
meaning-bone-early = Early: the meat has not drawn back.
meaning-bone-drawing = Drawing back. The bend decides.
meaning-bone-try-bend = Drawn back as near the end: try the bend.
meaning-bark-wet = The rub is wet: no mop, no wrap yet.
meaning-bark-set = The rub has set: it may be mopped or wrapped.
meaning-color-needs-time = More smoke before any wrap.
meaning-color-wrap-now = Wrap now, if it is to be wrapped.
meaning-color-shield = Wrap it, or shield it.
meaning-below-minimum = Below the published minimum.
meaning-safe-but-tough = Past the minimum and still tough. It may stand at one temperature for hours.
meaning-near-range = Nearly where it usually is done.
meaning-in-range = Where it usually is done.
meaning-past-range = Past where it usually is done.
meaning-tells-little = This tells little about this cut.

reason-update-first = Something was recorded that this Slowbend cannot read. Update it, then judge.
reason-below-minimum = The coldest place is { $coldest }; the published minimum is { $minimum }.
reason-rest-needed = The temperature is there. Rest it off the fire for another { $left }.
reason-minimum-shown = The coldest place is { $coldest }: the published minimum is shown.
reason-temperature-not-shown = No temperature shows the published minimum. Read it by hand.
reason-spots-missing = Still to read within ten minutes: { $spots }.
reason-read-by-hand = A probe that is left in does not show this cut's minimum. Read it by hand.
reason-corrected = The thermometer is off by { $off }; its readings were corrected.
reason-too-far-off = The thermometer is off by { $off }; its readings do not count. Use another one.
reason-unchecked = Thermometer not checked in 30 days. Hold it in ice water: it must read { $ice }.
reason-found = { $test }: { $meaning }
reason-feels-disagree = The tests by feel are far apart; the less done one counts.
reason-feel-ahead-of-temperature = Tender, but cooler than this cut usually is when done: try another place.
reason-feel-behind-temperature = Hot enough, but tough by feel: the feel counts.
reason-wrap-would-smear = The color says wrap, but the rub still wipes off: a wrap would take the bark.
reason-stale = { $test }: { $age } old.

refused-temperature-outside = A temperature inside a meat is from { $low } to { $high }. Read it again.
refused-standing-missing = The thermometer of a reading is missing. Record the reading again.
refused-standing-unasked = A thermometer was given where none is used. Record the check again.
refused-off-outside = The thermometer is off by more than any is. Check it again in ice water.
refused-instant-outside = A time lies before 2000 or after 2200. Correct it.
refused-from-the-future = A result lies ahead of the clock. Correct its time, or the clock.
refused-too-many = More results than can be judged at once. Take the oldest back.
