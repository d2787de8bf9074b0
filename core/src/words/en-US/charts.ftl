### Charts: readings of a cook, a meat or a pit, their chart, and files that are being taken.

link-readings = Readings
link-readings-all = All readings
link-thermometers = Check a thermometer

chart-title = Readings: { $name }
chart-none = No reading yet. Place a probe, read one by hand, or take a file of readings.
chart-one-place = A curve shows one place. Whether a meat is done and safe is said by its check.
chart-more-series = { $count ->
    [one] One more series has no room here. Open its meat or its pit.
   *[other] { $count } more series have no room here. Open their meats or pits.
}
chart-span-all = All of it
chart-span-hours = Last { $hours } h

# One series. $span is two times, $long how long that is.
chart-series-by-hand = { $name }, by hand
chart-series-sensor = { $name }, { $sensor }
chart-series-loose = { $source }, { $sensor }
chart-no-reading = no reading here
chart-silent = { $temp }, silent since { $since }
chart-rising = rising { $by } an hour
chart-falling = falling { $by } an hour
chart-steady = steady
chart-extremes = Lowest { $low } at { $lowat }, highest { $high } at { $highat }.
chart-gap = No reading { $span }: { $long }.
chart-gaps-more = { $count ->
    [one] And one gap before that.
   *[other] And { $count } gaps before that.
}
chart-loose = Nobody said where this probe sat.
chart-damaged = Some stored readings are damaged and are left out.
chart-elsewhere = These readings are on another device.
chart-corrected-hot = { $name } reads { $off } hot: everything here is corrected by that.
chart-corrected-cold = { $name } reads { $off } cold: everything here is corrected by that.
chart-too-far = { $name } is off by { $off }: this is what it read, and nothing is judged by it.

# The chart.
chart-says = Temperatures of { $names }, { $span }.
chart-band = { $pit } held at { $band }
chart-minimum = Published minimum { $temp }: { $names }
chart-minimum-rest = Published minimum { $temp }, then { $rest } of rest: { $names }
chart-pull = Taken off at { $temp }: { $names }
chart-clock-back = The clocks went back
chart-clock-forward = The clocks went forward
chart-lane-opened = { $count ->
    [one] Opened once
   *[other] Opened { $count } times
}
chart-lane-checked = { $count ->
    [one] Checked once
   *[other] Checked { $count } times
}
chart-lane-staged = { $count ->
    [one] Put on, wrapped or taken off once
   *[other] Put on, wrapped or taken off { $count } times
}
chart-lane-fed = { $count ->
    [one] Fed the fire once
   *[other] Fed the fire { $count } times
}
chart-lane-vent = { $count ->
    [one] Changed a vent once
   *[other] Changed a vent { $count } times
}
chart-marks = What was done meanwhile
chart-mark = { $when } · { $kind }: { $what }
chart-mark-bare = { $when } · { $kind }

chart-table = In numbers, a row each { $each }
chart-table-when = From
chart-table-none = none
chart-table-earlier = Earlier rows

## A file of readings on its way.

taking-title = Taking readings from a file
taking-read = { $percent } % of the file is read.
taking-meanwhile = Everything else works meanwhile, on every page. Nothing of the file is kept before all of it was read.
taking-stop = Stop
taking-begun = The file is being read.
taking-quarter = A quarter of the file is read.
taking-half = Half of the file is read.
taking-most = Three quarters of the file are read.
taking-nothing = Nothing of the file was kept.
taking-stopped = Stopped. Nothing of the file was kept.
taking-unknown = This file is on its way no more: Slowbend was started anew meanwhile, or it is long ago. Where its readings are missing, choose it again. Nothing is kept by half.
taking-still-here = { $file } is still here: answer the question and send it again. Choose a file only to take another.
