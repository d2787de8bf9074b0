### Times: clocks, days, durations.

# $half is "am" or "pm"; $minute has two digits.
clock-twelve = { $hour }:{ $minute } { $half ->
    [am] AM
   *[pm] PM
}
clock-twenty-four = { $hour }:{ $minute }
clock-hour = { $hour } { $half ->
    [am] AM
   *[pm] PM
}
# A time of day after "since", "until", "at": $hour counts from 1 to 12, or from 0 to 23.
clock-the = { $hour ->
   *[other] { $time }
}
clock-the-day = { $day } { $time }
clock-on-day = { $day } { $time }
clock-on-date = { $day }, { $time }
clock-span = { $from }–{ $to }
# The ends carry their days, so they hold spaces.
clock-span-days = { $from } to { $to }

day-today = today
day-tomorrow = tomorrow
day-yesterday = yesterday
day-date = { $month } { $day }
day-date-year = { $month } { $day }, { $year }
day-heading = { $weekday }, { $date }
day-heading-near = { $near }, { $day }
day-heading-today = Today
day-heading-yesterday = Yesterday
day-heading-tomorrow = Tomorrow
weekday-1 = Mon
weekday-2 = Tue
weekday-3 = Wed
weekday-4 = Thu
weekday-5 = Fri
weekday-6 = Sat
weekday-7 = Sun
month-1 = Jan
month-2 = Feb
month-3 = Mar
month-4 = Apr
month-5 = May
month-6 = Jun
month-7 = Jul
month-8 = Aug
month-9 = Sep
month-10 = Oct
month-11 = Nov
month-12 = Dec

duration-none = under 1 min
duration-minutes = { $minutes } min
duration-hours = { $hours } h
duration-hours-minutes = { $hours } h { $minutes } min
duration-days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
duration-days-hours = { $days ->
    [one] { $days } day { $hours } h
   *[other] { $days } days { $hours } h
}
relative-now = now
relative-past-now = just now
relative-in = in { $duration }
relative-ago = { $duration } ago
