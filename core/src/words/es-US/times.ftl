### Times: clocks, days, durations.

# $half is "am" or "pm"; $minute has two digits.
clock-twelve = { $hour }:{ $minute } { $half ->
    [am] a. m.
   *[pm] p. m.
}
clock-twenty-four = { $hour }:{ $minute }
clock-hour = { $hour } { $half ->
    [am] a. m.
   *[pm] p. m.
}
clock-the = { $hour ->
    [1] la { $time }
   *[other] las { $time }
}
clock-the-day = { $day } a { $time }
clock-on-day = { $day } { $time }
clock-on-date = { $day }, { $time }
clock-span = { $from }–{ $to }
clock-span-days = { $from } a { $to }

day-today = hoy
day-tomorrow = mañana
day-yesterday = ayer
day-date = { $day } { $month }
day-date-year = { $day } { $month } { $year }
day-heading = { $weekday }, { $date }
day-heading-near = { $near }, { $day }
day-heading-today = Hoy
day-heading-yesterday = Ayer
day-heading-tomorrow = Mañana
weekday-1 = lun
weekday-2 = mar
weekday-3 = mié
weekday-4 = jue
weekday-5 = vie
weekday-6 = sáb
weekday-7 = dom
month-1 = ene
month-2 = feb
month-3 = mar
month-4 = abr
month-5 = may
month-6 = jun
month-7 = jul
month-8 = ago
month-9 = sep
month-10 = oct
month-11 = nov
month-12 = dic

duration-none = menos de 1 min
duration-minutes = { $minutes } min
duration-hours = { $hours } h
duration-hours-minutes = { $hours } h { $minutes } min
duration-days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
duration-days-hours = { $days ->
    [one] { $days } día { $hours } h
   *[other] { $days } días { $hours } h
}
relative-now = ahora
relative-past-now = hace un momento
relative-in = en { $duration }
relative-ago = hace { $duration }
