//! What of a forecast is shown: a range that is as coarse as it is far off, and that stays until it is wrong by more than
//! its rounding. Start at [`settle`].

use super::Forecast;
use crate::moment::{HOUR, MINUTE};
use serde::{Deserialize, Serialize};

/// How finely a time is told. The finer, the nearer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Grain {
    /// To ten minutes: within the hour.
    TenMinutes,
    /// To half an hour: within three hours.
    HalfHour,
    /// As a part of the day, kept to the hour: further out.
    DayPart,
}

impl Grain {
    /// What times are rounded to, milliseconds.
    pub const fn width(self) -> i64 {
        match self {
            Self::TenMinutes => 10 * MINUTE,
            Self::HalfHour => 30 * MINUTE,
            Self::DayPart => HOUR,
        }
    }

    /// Up to how long before the middle of the range it is used, milliseconds.
    const fn reach(self) -> i64 {
        match self {
            Self::TenMinutes => HOUR,
            Self::HalfHour => 3 * HOUR,
            Self::DayPart => i64::MAX,
        }
    }

    const fn of(to_go: i64) -> Self {
        match to_go {
            near if near <= Self::TenMinutes.reach() => Self::TenMinutes,
            near if near <= Self::HalfHour.reach() => Self::HalfHour,
            _ => Self::DayPart,
        }
    }

    /// A finish that moved off by less than the rounding is told as finely as before, so that nothing flickers where two
    /// ways of telling meet.
    fn after(self, to_go: i64) -> Self {
        let stays = to_go <= self.reach().saturating_add(self.width());
        match Self::of(to_go) {
            coarser if coarser > self && stays => self,
            other => other,
        }
    }
}

/// From when to when it will likely be ready: in four of five cases.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Range {
    /// From, a whole number of its rounding, milliseconds since 1970.
    pub from: i64,
    /// To, after `from`.
    pub to: i64,
}

/// What is told of when it will be ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Told {
    /// When it will likely be ready.
    pub ready: Range,
    /// How finely that is told.
    pub grain: Grain,
    /// From when a check is worth its opening; none where that is too far off to be told.
    pub check: Option<i64>,
}

/// What is shown of `forecast`, where `before` was shown of the one before it. None where no finish is in sight.
pub fn settle(before: Option<&Told>, forecast: &Forecast) -> Option<Told> {
    let done = forecast.done?;
    let to_go = done.p50.saturating_sub(forecast.made_for);
    let grain = before.map_or_else(|| Grain::of(to_go), |told| told.grain.after(to_go));
    let kept = before.filter(|told| told.grain == grain);
    let ready = range(kept.map(|told| told.ready), (done.p10, done.p90), grain);
    let check = forecast
        .next_check
        .filter(|_| grain != Grain::DayPart)
        .map(|at| end(kept.and_then(|told| told.check), at, grain));
    Some(Told {
        ready,
        grain,
        check,
    })
}

fn range(before: Option<Range>, (from, to): (i64, i64), grain: Grain) -> Range {
    let range = Range {
        from: end(before.map(|range| range.from), from, grain),
        to: end(before.map(|range| range.to), to, grain),
    };
    match range.from < range.to {
        true => range,
        false => around(from, to, grain.width()),
    }
}

/// One end: where it was, unless the new one lies further from it than the rounding; else the nearest.
fn end(before: Option<i64>, at: i64, grain: Grain) -> i64 {
    let width = grain.width();
    let near = |shown: &i64| at.saturating_sub(*shown).saturating_abs() <= width;
    before.filter(near).unwrap_or_else(|| {
        at.saturating_add(width / 2)
            .div_euclid(width)
            .saturating_mul(width)
    })
}

/// The least range of whole roundings that holds both, so that none is told as an instant.
fn around(from: i64, to: i64, width: i64) -> Range {
    let from = from.div_euclid(width).saturating_mul(width);
    let to = to.div_euclid(width).saturating_mul(width);
    Range {
        from,
        to: to.max(from).saturating_add(width),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ahead::Spread;
    use proptest::prelude::*;

    const NOON: i64 = 1_781_370_000_000;

    fn forecast(now: i64, from: i64, to: i64) -> Forecast {
        let minutes = |minutes: i64| NOON + minutes * MINUTE;
        let (p10, p90) = (minutes(from), minutes(to));
        let p50 = p10.midpoint(p90);
        Forecast {
            made_for: minutes(now),
            done: Some(Spread {
                p10,
                p25: p10.midpoint(p50),
                p50,
                p75: p50.midpoint(p90),
                p90,
            }),
            fan: vec![],
            stall: None,
            effects: vec![],
            next_check: Some(p10),
            rough: true,
            doubted: vec![],
        }
    }

    fn told(from: i64, to: i64, grain: Grain, check: Option<i64>) -> Told {
        let minutes = |minutes: i64| NOON + minutes * MINUTE;
        Told {
            ready: Range {
                from: minutes(from),
                to: minutes(to),
            },
            grain,
            check: check.map(minutes),
        }
    }

    #[test]
    fn the_nearer_it_is_the_finer_it_is_told() {
        let far = settle(None, &forecast(0, 230, 330)).unwrap();
        assert_eq!(far, told(240, 360, Grain::DayPart, None));
        let nearer = settle(Some(&far), &forecast(160, 236, 332)).unwrap();
        assert_eq!(nearer, told(240, 330, Grain::HalfHour, Some(240)));
        let soon = settle(Some(&nearer), &forecast(240, 264, 301)).unwrap();
        assert_eq!(soon, told(260, 300, Grain::TenMinutes, Some(260)));
    }

    #[test]
    fn a_range_stays_until_an_end_is_off_by_more_than_its_rounding() {
        let first = settle(None, &forecast(0, 60, 130)).unwrap();
        assert_eq!(first, told(60, 120, Grain::HalfHour, Some(60)));
        let drifts = settle(Some(&first), &forecast(5, 88, 150)).unwrap();
        assert_eq!(drifts, first);
        let moves = settle(Some(&first), &forecast(5, 95, 151)).unwrap();
        assert_eq!(moves, told(90, 150, Grain::HalfHour, Some(90)));
    }

    #[test]
    fn where_two_ways_of_telling_meet_nothing_flickers() {
        let soon = settle(None, &forecast(0, 40, 80)).unwrap();
        assert_eq!(soon.grain, Grain::TenMinutes);
        let off = settle(Some(&soon), &forecast(0, 45, 90)).unwrap();
        assert_eq!(off.grain, Grain::TenMinutes);
        let far_off = settle(Some(&soon), &forecast(0, 60, 100)).unwrap();
        assert_eq!(far_off.grain, Grain::HalfHour);
    }

    #[test]
    fn no_instant_is_told_and_no_finish_is_no_range() {
        let sure = settle(None, &forecast(0, 31, 32)).unwrap();
        assert_eq!(sure, told(30, 40, Grain::TenMinutes, Some(30)));
        let none = Forecast {
            done: None,
            ..forecast(0, 1, 2)
        };
        assert_eq!(settle(Some(&sure), &none), None);
    }

    proptest! {
        #[test]
        fn what_is_shown_is_never_off_by_more_than_its_rounding(
            walk in prop::collection::vec((0i64..600, 1i64..200), 1..40),
        ) {
            let mut shown = None;
            for (now, (from, long)) in walk.into_iter().enumerate() {
                let forecast = forecast(5 * now as i64, 5 * now as i64 + from, 5 * now as i64 + from + long);
                let done = forecast.done.unwrap();
                let told = settle(shown.as_ref(), &forecast).unwrap();
                let width = told.grain.width();
                prop_assert!(told.ready.from < told.ready.to);
                prop_assert!((told.ready.from - done.p10).abs() <= width);
                prop_assert!((told.ready.to - done.p90).abs() <= width);
                prop_assert_eq!(told.ready.from % width, 0);
                shown = Some(told);
            }
        }
    }
}
