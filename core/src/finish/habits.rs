//! What earlier cooks taught of a pit and a cut: four numbers and a count. Start at [`habits_after`].
//!
//! After a cook its time is held against what the middle member would have taken in the pit as it was read. What is left over is
//! shared out between the pit (it is hotter or colder where the meat lies than where it is read) and the cut (it takes longer or
//! shorter here), each by how little was known of it, and what is shared out makes both better known. Whole numbers in and out, so that
//! folding the same cooks in the same order comes to the same numbers.

use super::{Follow, NotAForecast, Outlook, Told, told::within};
use crate::moment::MINUTE;
use serde::{Deserialize, Serialize};

/// What a pit may be off by before anything is known, K. Common practice, no source.
const BIAS_K: f64 = 10.0;
/// What a cut may be off by, logarithm. Common practice, no source.
const PACE: f64 = 0.12;
/// What one cook may be off by for itself, logarithm: about what heat leaves open. Tuned on the tuning family.
const COOK: f64 = 0.18;
/// A pit hotter by so many kelvin is faster by the factor e: about what lies between a pit and a plateau. From memory.
const KELVIN: f64 = 50.0;
/// Members that are asked how long it should have taken.
const ASKED: usize = 64;

/// What is known of this pit and this cut before the cook. All nothing: nothing is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Habits {
    /// What the pit is hotter where the meat lies than where it is read, millikelvin.
    pub pit_bias_mk: i64,
    /// How far that may be off, millikelvin; 0 where nothing is known of it.
    pub pit_bias_spread_mk: i64,
    /// How much longer than usual this cut takes here, millionths of the logarithm.
    pub pace_micro: i64,
    /// How far that may be off; 0 where nothing is known of it.
    pub pace_spread_micro: i64,
    /// How many cooks taught it.
    pub cooks: i64,
}

impl Habits {
    pub(super) fn check(&self) -> Result<(), NotAForecast> {
        within(
            "The bias of the pit in millikelvin",
            self.pit_bias_mk,
            -60_000,
            60_000,
        )?;
        within("The spread of that", self.pit_bias_spread_mk, 0, 60_000)?;
        within(
            "The pace of the cut",
            self.pace_micro,
            -1_500_000,
            1_500_000,
        )?;
        within("The spread of that", self.pace_spread_micro, 0, 1_500_000)
    }

    /// After a cook that took so much longer than was thought, logarithm.
    fn after(&self, longer: f64) -> Self {
        let known = |spread: i64, unknown: f64, unit: f64| {
            if spread > 0 {
                spread as f64 / unit
            } else {
                unknown
            }
        };
        let bias = known(self.pit_bias_spread_mk, BIAS_K, 1e3);
        let pace = known(self.pace_spread_micro, PACE, 1e6);
        let (of_bias, of_pace) = (bias * bias / (KELVIN * KELVIN), pace * pace);
        let all = of_bias + of_pace + COOK * COOK;
        let whole = |value: f64| libm::round(value) as i64;
        Self {
            pit_bias_mk: (self.pit_bias_mk - whole(of_bias / all * longer * KELVIN * 1e3))
                .clamp(-60_000, 60_000),
            pit_bias_spread_mk: whole(bias * libm::sqrt(1.0 - of_bias / all) * 1e3).max(1),
            pace_micro: (self.pace_micro + whole(of_pace / all * longer * 1e6))
                .clamp(-1_500_000, 1_500_000),
            pace_spread_micro: whole(pace * libm::sqrt(1.0 - of_pace / all) * 1e6).max(1),
            cooks: self.cooks + 1,
        }
    }
}

/// What is known after a cook that was done at `done_at`. `told` has all of it, and the habits that were known before.
///
/// # Errors
/// Where what is told cannot be, or it was done before it came on.
pub fn habits_after(told: &Told, done_at: i64) -> Result<Habits, NotAForecast> {
    let took = (done_at - told.on_at) as f64 / MINUTE as f64;
    if took <= 0.0 {
        return Err(NotAForecast::NotOn);
    }
    let thought = thought(&Told {
        core: vec![],
        checks: vec![],
        now: done_at,
        ..told.clone()
    })?;
    Ok(told
        .habits
        .after(libm::log(took / thought).clamp(-1.0, 1.0)))
}

/// Minutes that the middle member takes in the pit as it was read, nothing read of the meat itself.
fn thought(told: &Told) -> Result<f64, NotAForecast> {
    let done = told.done();
    let mut follow = Follow::start_with(told, ASKED)?;
    loop {
        let more = follow.work(told);
        if follow.half_is_done(done) {
            return Ok((follow.at() - told.on_at).max(MINUTE) as f64 / MINUTE as f64);
        }
        if !more {
            break;
        }
    }
    let left = Outlook::of(&follow, told).middle_to_go();
    Ok(((follow.at() - told.on_at) as f64 / MINUTE as f64 + left).max(1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cook_that_took_longer_makes_the_pit_colder_and_the_cut_slower_and_both_better_known() {
        let once = Habits::default().after(0.3);
        assert!(
            once.pit_bias_mk < -2_000 && once.pace_micro > 20_000,
            "{once:?}"
        );
        let twice = once.after(0.0);
        assert_eq!(twice.pit_bias_mk, once.pit_bias_mk);
        assert!(
            twice.pit_bias_spread_mk < once.pit_bias_spread_mk
                && twice.pace_spread_micro < once.pace_spread_micro
        );
        assert_eq!(twice.cooks, 2);
    }
}
