### Readings: thermometers, readings by hand and from files.

## Files from other instruments: what was not taken and what to do. $line counts from 1; $cell is what the file holds.

readings-few-columns = Line { $line } has fewer columns than the others. Complete the row or leave it out.
readings-open-quote = Line { $line } opens a quote that nothing closes. Close it or leave the row out.
readings-no-time = Line { $line } has no time. Give it one or leave it out.
readings-not-a-time = Line { $line }: “{ $cell }” is no time of the kind this file has. Correct it or leave it out.
readings-no-such-time = Line { $line }: “{ $cell }” does not exist on any calendar or clock. Does the day come before the month?
readings-year = Line { $line }: “{ $cell }” is outside the years 2000 to 2100. Set the instrument's clock, or tell how its times are written.
readings-future = Line { $line }: “{ $cell }” is still to come. Check the instrument's clock and the time zone.
readings-not-a-number = Line { $line }, { $sensor }: “{ $cell }” is no number. Correct it or leave it empty.
readings-absurd = Line { $line }, { $sensor }: { $cell } is outside −76 °F to 1,472 °F (−60 °C to 800 °C). Check the thermometer, or the unit of the column.
readings-all-empty = Every temperature is empty. Choose other columns.

readings-file-empty = This file has no rows. Save it again from the instrument and choose it anew.
readings-file-not-text = This is no CSV file in plain text. Open it in a spreadsheet and save it as “CSV UTF-8”.
readings-file-never-ends = What begins on line { $line } never ends; most likely a quote is opened and not closed. Close it and import the file again. Nothing was taken.
readings-file-unreadable = The file could not be read to its end ({ $said }). Copy it again and retry. Nothing was taken.
readings-file-no-readings = No row of this file has both a time and a temperature. Export it with a column for each, or tell which columns they are.
readings-file-unknown-zone = “{ $zone }” is no time zone. Give one such as America/Chicago.
readings-file-nothing-taken = No row of this file could be taken. { $first }
readings-not-kept = The readings could not be kept. Free some space and import the file again. Nothing was taken.

readings-column-twice = Column { $column } is chosen twice. Choose each column once.
readings-column-far = No file has a column { $column }. Choose the columns again.
readings-column-none = No column of temperatures is chosen. Choose at least one.
readings-names-alike = Two columns are named “{ $name }”. Give each its own name.
readings-name-bad = “{ $name }” cannot name an instrument or a sensor. Give it 1 to { $limit } characters on one line.

## Stored readings that cannot be read back.

readings-stored-newer = These readings were written by a newer Slowbend (format { $version }). Update to read them.
readings-stored-short = These readings are cut short. Fetch them again from the device that has them.
readings-stored-damaged = These readings are damaged. Fetch them again from the device that has them.

## What a file leaves open. $columns lists columns by number and name.

readings-ask-time = Which column is the time: { $columns }?
readings-ask-temperatures = Which columns are temperatures: { $columns }?
readings-ask-unit = Is “{ $column }” in °F or °C? It begins with { $example }.
readings-ask-day-first = In “{ $example }”, does the month come first, or the day?
readings-ask-start = The times count from a start (“{ $example }”). When was that?
readings-ask-seconds = Are times such as “{ $example }” seconds or minutes?
