### Errors: what was wrong, then what to do instead. $typed is what the person typed.

error-temperature-unread = “{ $typed }” is not a temperature. Type a number such as { $example }.
error-temperature-range = { $typed } is outside what fits here. Type a temperature from { $low } to { $high }.
error-weight-unread = “{ $typed }” is not a weight. Type one such as { $example }.
error-weight-range = { $typed } is outside what fits here. Type a weight from { $low } to { $high }.
error-duration-unread = “{ $typed }” is not a length of time. Type minutes, or { $example }.
error-duration-range = { $typed } is outside what fits here. Type a time from { $low } to { $high }.
error-number-comma = “{ $typed }” can be read in two ways. Type { $decimal } or { $whole }.
error-clock-unread = “{ $typed }” is not a time of day. Type one such as { $example }.
error-clock-half = “{ $typed }” can be morning or afternoon. Type { $morning } or { $afternoon }.
error-datetime-unread = “{ $typed }” is not a date and time. Type one such as { $example }.
error-year-range = The year must be from { $low } to { $high }. Check the date and type it again.
error-name-empty = The name is empty. Type at least one letter.
error-name-long = The name has { $length } characters. Shorten it to { $limit } or fewer.
