//! The laws of forecasts, on the butt of a rowing club's regatta lunch.

mod laws;

use super::{CoreAt, Told};
use crate::{
    checks::cuts::Cut,
    moment::MINUTE,
    safety::{Form, food_log::TempAt},
    units::Mk,
};

/// When it came on: an instant of the grid.
pub const ON: i64 = 1_795_000_200_000;

/// A butt of 3.6 kg at 250 °F that was read each five minutes, as if it warmed by ever slower degrees.
pub fn butt(minutes: i64) -> Told {
    let at = |minute: i64| ON + minute * MINUTE;
    let core = |minute: i64| Mk::from_c_milli(5_000 + 78_000 * minute / (minute + 260));
    Told {
        cut: Cut::PorkButt,
        grams: 3_600,
        form: Form::Intact,
        on_at: ON,
        now: at(minutes),
        start: None,
        pit: (0..=minutes)
            .step_by(5)
            .map(|minute| TempAt {
                at: at(minute),
                temp: Mk::from_f(250),
            })
            .collect(),
        pit_set: Some(Mk::from_f(250)),
        core: (5..=minutes)
            .step_by(5)
            .map(|minute| CoreAt {
                at: at(minute),
                temp: core(minute),
                probe: 0,
                by_hand: false,
            })
            .collect(),
        wraps: vec![],
        mops: vec![],
        openings: vec![],
        checks: vec![],
        done_when: None,
        habits: super::Habits::default(),
        key: 7,
    }
}
