//! Days of the proleptic Gregorian calendar as numbers, with integers only: no allocation, no library call a row.

/// First instant an import takes: 2000-01-01T00:00Z, ms. Kitchen instruments that write earlier years have lost their
/// clock. Common practice, no source.
pub const EARLIEST: i64 = 946_684_800_000;

/// First instant an import no longer takes: 2101-01-01T00:00Z, ms. Common practice, no source.
pub const LATEST: i64 = 4_133_980_800_000;

/// Days from 1970-01-01 to this date; none when the calendar has no such date. Years 0 to 9999.
///
/// The year is counted from March, so that the leap day is its last and months are 30.6 days on average; 719 468 is the
/// number of days from 0000-03-01 to 1970-01-01.
#[inline]
pub fn days(year: i64, month: i64, day: i64) -> Option<i64> {
    if !(1..=12).contains(&month) || day < 1 || day > month_days(year, month) {
        return None;
    }
    let (march_year, march_month) = if month > 2 {
        (year, month - 3)
    } else {
        (year - 1, month + 9)
    };
    let leaps = march_year.div_euclid(4) - march_year.div_euclid(100) + march_year.div_euclid(400);
    Some(march_year * 365 + leaps + (march_month * 306 + 5) / 10 + day - 1 - 719_468)
}

const fn month_days(year: i64, month: i64) -> i64 {
    match month {
        4 | 6 | 9 | 11 => 30,
        2 if year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) => 29,
        2 => 28,
        _ => 31,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::moment::HOUR;
    use chrono::{Datelike, NaiveDate};

    #[test]
    fn every_date_of_two_centuries_agrees_with_chrono() {
        let first = NaiveDate::from_ymd_opt(1950, 1, 1).unwrap();
        let epoch = NaiveDate::from_ymd_opt(1970, 1, 1).unwrap();
        for date in first.iter_days().take(73_500) {
            let ours = days(
                i64::from(date.year()),
                i64::from(date.month()),
                i64::from(date.day()),
            )
            .unwrap();
            assert_eq!(ours, (date - epoch).num_days(), "{date}");
        }
    }

    #[test]
    fn dates_that_do_not_exist_are_none() {
        for (y, m, d) in [
            (2026, 2, 29),
            (2100, 2, 29),
            (2026, 13, 1),
            (2026, 0, 1),
            (2026, 4, 31),
            (2026, 1, 0),
        ] {
            assert_eq!(days(y, m, d), None, "{y}-{m}-{d}");
        }
        assert_eq!(days(2000, 1, 1).unwrap() * 24 * HOUR, EARLIEST);
        assert_eq!(days(2101, 1, 1).unwrap() * 24 * HOUR, LATEST);
    }
}
