//! What earlier cooks taught of a pit and a cut: four numbers and a count. Start at [`habits_after`].
//!
//! Of the pit (it is hotter or colder where the meat lies than where it is read) the second half of a cook teaches: what its readings up
//! to the middle let expect is reckoned for several biases, and those under which it came out count. A brisket that nears a cool pit so teaches
//! much, a chicken in a hot one little. What is then left of the whole cook's time goes to the cut (it takes longer or shorter here), by
//! how little was known of it. Whole numbers in and out, so that folding the same cooks in the same order comes to the same numbers.

use super::{Follow, NotAForecast, Outlook, Told, told::within};
use crate::moment::MINUTE;
use serde::{Deserialize, Serialize};

/// What a pit may be off by before anything is known, K. Common practice, no source.
const BIAS_K: f64 = 15.0;
/// What a cut may be off by, logarithm. Common practice, no source.
const PACE: f64 = 0.12;
/// What one cook may be off by for itself, logarithm: as a whole, and from its middle on. Tuned on the tuning family.
const COOK: f64 = 0.18;
const HALF: f64 = 0.15;
/// Biases of the pit that are tried, in spreads beside its middle.
const TRIED: [f64; 7] = [-2.4, -1.6, -0.8, 0.0, 0.8, 1.6, 2.4];
/// Steps of the sum over them.
const FINE: usize = 96;
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

    /// What is known of the pit after a cook that from its middle on took so much longer than was thought, logarithm, at each of
    /// [`TRIED`] biases, in spreads beside what was known.
    fn with_pit(&self, longer: &[f64; TRIED.len()]) -> Self {
        let (bias, spread) = self.bias();
        let (mut sums, mut before) = ([0.0; 3], [0.0; 2]);
        for i in 0..=FINE {
            let z = TRIED[0] * (1.0 - 2.0 * i as f64 / FINE as f64);
            let off = between(longer, z) / HALF;
            // Single cooks go far wrong for reasons of their own: Student's t with four degrees of freedom, not a normal one.
            let known = libm::exp(-z * z / 2.0);
            let weight = known * libm::pow(1.0 + off * off / 4.0, -2.5);
            for (sum, value) in sums.iter_mut().zip([1.0, z, z * z]) {
                *sum += weight * value;
            }
            before = [before[0] + known, before[1] + known * z * z];
        }
        let (z, zz) = (sums[1] / sums[0], sums[2] / sums[0]);
        // Over what is tried the spread was a little less than one before, too.
        let wide = libm::sqrt((zz - z * z).max(0.0) * before[0] / before[1]).min(1.0);
        Self {
            pit_bias_mk: whole((bias + spread * z) * 1e3).clamp(-60_000, 60_000),
            pit_bias_spread_mk: whole(spread * wide * 1e3).max(1),
            ..*self
        }
    }

    /// What is known of the cut after a cook that as a whole took so much longer than is usual, logarithm.
    fn with_pace(&self, longer: f64) -> Self {
        let (pace, spread) = self.pace();
        let toward = spread * spread / (spread * spread + COOK * COOK);
        Self {
            pace_micro: whole((pace + toward * (longer - pace)) * 1e6).clamp(-1_500_000, 1_500_000),
            pace_spread_micro: whole(spread * libm::sqrt(1.0 - toward) * 1e6).max(1),
            cooks: self.cooks + 1,
            ..*self
        }
    }

    /// Middle and spread of the pit's bias, K.
    fn bias(&self) -> (f64, f64) {
        (
            self.pit_bias_mk as f64 / 1e3,
            known(self.pit_bias_spread_mk, BIAS_K, 1e3),
        )
    }

    /// Middle and spread of the cut's pace, logarithm.
    fn pace(&self) -> (f64, f64) {
        (
            self.pace_micro as f64 / 1e6,
            known(self.pace_spread_micro, PACE, 1e6),
        )
    }
}

fn whole(value: f64) -> i64 {
    libm::round(value) as i64
}

fn known(spread: i64, unknown: f64, unit: f64) -> f64 {
    match spread > 0 {
        true => spread as f64 / unit,
        false => unknown,
    }
}

/// Between the values at [`TRIED`], straight.
fn between(at: &[f64; TRIED.len()], z: f64) -> f64 {
    let above = TRIED
        .iter()
        .position(|tried| *tried > z)
        .unwrap_or(TRIED.len() - 1)
        .max(1);
    let share = (z - TRIED[above - 1]) / (TRIED[above] - TRIED[above - 1]);
    at[above - 1] * (1.0 - share) + at[above] * share
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
    let (middle, spread) = told.habits.bias();
    let mut longer = [0.0; TRIED.len()];
    for (longer, z) in longer.iter_mut().zip(TRIED) {
        let bias = whole((middle + spread * z) * 1e3).clamp(-60_000, 60_000);
        *longer = from_its_middle(told, done_at, bias)?;
    }
    let pit = told.habits.with_pit(&longer);
    let thought = thought(&Told {
        core: vec![],
        checks: vec![],
        now: done_at,
        habits: Habits {
            pace_micro: 0,
            ..pit
        },
        ..told.clone()
    })?;
    Ok(pit.with_pace(libm::log(took / thought).clamp(-1.0, 1.0)))
}

/// How much longer it took from the middle of the cook on than members thought there who had read what was read, in a pit that is
/// hotter by so many millikelvin where the meat lies.
fn from_its_middle(told: &Told, done_at: i64, bias: i64) -> Result<f64, NotAForecast> {
    let there = Told {
        now: told.on_at.midpoint(done_at),
        habits: Habits {
            pit_bias_mk: bias,
            ..told.habits
        },
        ..told.clone()
    };
    let mut follow = Follow::start_with(&there, ASKED)?;
    while follow.work(&there) {}
    let left = (done_at - follow.at()) as f64 / MINUTE as f64;
    let thought = Outlook::of(&follow, &there).middle_to_go();
    Ok(libm::log((left + 5.0) / (thought + 5.0)).clamp(-1.5, 1.5))
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
        // A pit hotter by a spread would have been a fifth faster.
        let longer = TRIED.map(|z| 0.3 + 0.2 * z);
        let once = Habits::default().with_pit(&longer).with_pace(0.3);
        assert!(
            once.pit_bias_mk < -2_000 && once.pace_micro > 20_000,
            "{once:?}"
        );
        let twice = once
            .with_pit(&TRIED.map(|z| 0.1 * z))
            .with_pace(once.pace_micro as f64 / 1e6);
        assert!((twice.pit_bias_mk - once.pit_bias_mk).abs() <= 1);
        assert_eq!(twice.pace_micro, once.pace_micro);
        assert!(
            twice.pit_bias_spread_mk < once.pit_bias_spread_mk
                && twice.pace_spread_micro < once.pace_spread_micro
        );
        assert_eq!(twice.cooks, 2);
    }

    #[test]
    fn a_cook_on_which_the_pit_has_no_bearing_teaches_nothing_of_it() {
        let once = Habits::default().with_pit(&[0.4; TRIED.len()]);
        assert!(once.pit_bias_mk.abs() <= 1, "{once:?}");
        assert!(once.pit_bias_spread_mk > BIAS_K as i64 * 950, "{once:?}");
    }
}
