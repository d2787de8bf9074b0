//! How temperatures, weights, times and lists are written for the viewer: methods of [`Words`](super::Words).
//!
//! Start at [`Words::temperature`](super::Words::temperature), [`weight`](super::Words::weight),
//! [`clock`](super::Words::clock), [`duration`](super::Words::duration), [`list`](super::Words::list). All whole
//! numbers: two devices write the same bytes.

mod clock;
mod day;
mod day_part;
mod duration;
mod fire;
mod list;
mod temperature;
mod weight;

pub(super) use weight::POUND_E5_GRAMS;

/// Which way a number goes that does not fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Round {
    /// To the nearest, ties up.
    Nearest,
    /// Up: for a lower limit that is shown, so that what is shown is still allowed.
    Up,
    /// Down: for an upper limit that is shown.
    Down,
}

impl Round {
    /// `number / divisor` rounded this way; `divisor` above 0, `number` within ±9 × 10¹⁸ less `divisor`.
    pub(super) const fn divide(self, number: i64, divisor: i64) -> i64 {
        let lift = match self {
            Self::Nearest => divisor / 2,
            Self::Up => divisor - 1,
            Self::Down => 0,
        };
        number.saturating_add(lift).div_euclid(divisor)
    }
}

/// A number of tenths with its decimal mark: a point in US and Mexican usage.
fn decimal(tenths: i64) -> String {
    let sign = if tenths < 0 { "-" } else { "" };
    let size = tenths.unsigned_abs();
    format!("{sign}{}.{}", size / 10, size % 10)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounding_goes_the_way_it_says_below_zero_too() {
        let all = |n| [Round::Nearest, Round::Up, Round::Down].map(|way| way.divide(n, 10));
        assert_eq!(all(14), [1, 2, 1]);
        assert_eq!(all(15), [2, 2, 1]);
        assert_eq!(all(20), [2, 2, 2]);
        assert_eq!(all(-14), [-1, -1, -2]);
        assert_eq!(decimal(-5), "-0.5");
        assert_eq!(decimal(37), "3.7");
    }
}
