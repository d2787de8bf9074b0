//! Durations: between quantiles, and across a change of the pit's temperature. Start at [`across`].

use super::household::{GRID_MIN, Quantiles};

/// Minutes 10, 50, 80 and 90 of 100 cooks take.
pub(super) type Four = [i64; 4];

pub(super) const fn four(minutes: Quantiles) -> Four {
    [minutes.p10, minutes.p50, minutes.p80, minutes.p90]
}

/// Whole slots that hold so many minutes.
pub(super) const fn up(minutes: i64) -> i64 {
    -(-minutes).div_euclid(GRID_MIN)
}

/// Whole slots within so many minutes.
pub(super) const fn down(minutes: i64) -> i64 {
    minutes.div_euclid(GRID_MIN)
}

/// Minutes until it is done where the pit changes `before` minutes after it went on: it takes `a` minutes at the first
/// temperature and `b` at the second. What was done of it at the first counts in proportion; rounded up.
///
/// None where it would need a temperature for which nothing is known.
pub(super) fn across(before: i64, a: Option<i64>, b: Option<i64>) -> Option<i64> {
    if before <= 0 {
        return b;
    }
    let a = a?;
    if a <= before {
        return Some(a);
    }
    let b = b?;
    Some(before + (b * (a - before) + a - 1) / a)
}

/// The chance that it is done within `minutes`, permille, rounded down: straight between the four quantiles, and below the
/// first as steep as after it. From the last on it is 900: more is not known.
pub(super) fn chance(times: &Four, minutes: i64) -> i64 {
    let [p10, p50, p80, p90] = *times;
    let between = |low: i64, high: i64, from: i64, rise: i64| match high > low {
        true => from + rise * (minutes - low) / (high - low),
        false => from + rise,
    };
    if minutes >= p90 {
        900
    } else if minutes >= p80 {
        between(p80, p90, 800, 100)
    } else if minutes >= p50 {
        between(p50, p80, 500, 300)
    } else if minutes >= p10 {
        between(p10, p50, 100, 400)
    } else {
        0.max(100 - 400 * (p10 - minutes) / 1.max(p50 - p10))
    }
}

/// Minutes within which it is done with so much confidence, 500 to 900 permille, rounded up.
pub(super) fn within(times: &Four, permille: i64) -> i64 {
    let [_, p50, p80, p90] = *times;
    let (low, high, from, rise) = match permille <= 800 {
        true => (p50, p80, 500, 300),
        false => (p80, p90, 800, 100),
    };
    low + ((permille - from) * (high - low) + rise - 1) / rise
}

#[cfg(test)]
mod tests {
    use super::*;

    const RIBS: Four = [240, 300, 345, 360];

    #[test]
    fn half_at_one_temperature_leaves_half_at_the_other() {
        assert_eq!(across(150, Some(300), Some(200)), Some(250));
        assert_eq!(across(0, Some(300), Some(200)), Some(200));
        assert_eq!(across(300, Some(300), None), Some(300));
        assert_eq!(across(299, Some(300), None), None);
        assert_eq!(across(10, None, Some(200)), None);
    }

    #[test]
    fn a_chance_and_its_minutes_belong_together() {
        for permille in 500..=900 {
            let minutes = within(&RIBS, permille);
            assert!(chance(&RIBS, minutes) >= permille, "{permille}");
            assert!(chance(&RIBS, minutes - 1) < permille, "{permille}");
        }
        assert_eq!(chance(&RIBS, 240), 100);
        assert_eq!(chance(&RIBS, 225), 0);
    }
}
