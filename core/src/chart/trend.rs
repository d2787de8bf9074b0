//! How fast a temperature goes up or down.

use crate::{
    moment::{HOUR, MINUTE},
    readings::Reading,
};

/// How far back a trend looks: the stretch it is told for, milliseconds.
const OVER_MS: i64 = HOUR;
/// What it takes to tell one: so many readings over so long. Common practice, no source.
const READINGS_LEAST: usize = 3;
const SPAN_LEAST_MS: i64 = 10 * MINUTE;

/// Millikelvin an hour by ordinary least squares over the last hour of settled readings, after their last gap; none where
/// they are too few or too near each other. Rounded toward zero.
pub fn per_hour(readings: &[Reading]) -> Option<i64> {
    let last = readings.last()?;
    let since = last.at.saturating_sub(OVER_MS);
    let after_gap = super::gaps(tail(readings, since))
        .last()
        .map_or(since, |gap| gap.to);
    let told = tail(readings, after_gap);
    let long = last.at - told.first()?.at >= SPAN_LEAST_MS;
    (long && told.len() >= READINGS_LEAST)
        .then(|| slope(told))
        .flatten()
}

fn tail(readings: &[Reading], since: i64) -> &[Reading] {
    &readings[readings.partition_point(|reading| reading.at < since)..]
}

/// Least squares in whole numbers: (n Σty − Σt Σy) / (n Σtt − (Σt)²), in millikelvin an hour. Times within a day, 100,000
/// readings and any temperature stay far inside 128 bits.
pub(super) fn slope(readings: &[Reading]) -> Option<i64> {
    let (first, zero) = (readings.first()?.at, readings.first()?.temp.0);
    let (mut n, mut t, mut y, mut tt, mut ty) = (0i128, 0i128, 0i128, 0i128, 0i128);
    for reading in readings {
        let (at, temp) = (
            i128::from(reading.at - first),
            i128::from(reading.temp.0 - zero),
        );
        (n, t, y, tt, ty) = (n + 1, t + at, y + temp, tt + at * at, ty + at * temp);
    }
    let under = n * tt - t * t;
    (under > 0)
        .then(|| i64::try_from((n * ty - t * y) * i128::from(HOUR) / under).ok())
        .flatten()
}
