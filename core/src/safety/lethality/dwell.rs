//! How long at a temperature, between the published rows.

use super::tables::Row;
use crate::units::Mk;

/// Seconds at `temp` by one column of a table whose rows rise by temperature; none below the first row.
///
/// At a row it is the printed time. Between two rows the logarithm of the time is taken as a straight line, which is how heat
/// kills bacteria; towards a row that asks for no time, the time of the row before holds until that row is reached. From the
/// first such row on it is 0.
pub(super) fn seconds_at<const N: usize>(rows: &[Row<N>], column: usize, temp: Mk) -> Option<f64> {
    let above = rows.partition_point(|(f, _)| Mk::from_f(*f) <= temp);
    let (f, times) = rows.get(above.checked_sub(1)?)?;
    let low = f64::from(times[column]) / 10.0;
    let Some((next_f, next)) = rows.get(above) else {
        return Some(low);
    };
    let (from, to) = (Mk::from_f(*f), Mk::from_f(*next_f));
    let high = f64::from(next[column]) / 10.0;
    if temp == from || high == 0.0 {
        return Some(low);
    }
    let share = (temp.0 - from.0) as f64 / (to.0 - from.0) as f64;
    let (low, high) = (libm::log10(low), libm::log10(high));
    Some(libm::exp10(low + share * (high - low)))
}
