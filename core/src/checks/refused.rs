//! What cannot be judged, and what to do about it. Start at `sound`.

use super::{Standing, TestResult, VerdictInput};
use crate::{moment::MINUTE, safety::keyed::keyed, units::Mk};
use std::fmt;

/// A temperature inside a meat is within this, in millikelvin: −20 to 200 °C.
pub const READABLE: std::ops::RangeInclusive<Mk> =
    Mk::from_c_milli(-20_000)..=Mk::from_c_milli(200_000);
/// Instants are within this, in milliseconds since 1970: 2000 to 2200.
pub const INSTANTS: std::ops::RangeInclusive<i64> = 946_684_800_000..=7_258_118_400_000;
/// A result from another device may be this far ahead of `now` (it counts as now), in milliseconds.
pub const AHEAD_MAX_MS: i64 = 5 * MINUTE;
/// A thermometer off by more than this, in millikelvin, was typed wrong.
pub const OFF_MAX_MK: i64 = 100_000;
/// At most so many results in one verdict.
pub const RESULTS_MAX: usize = 1_000;

keyed! {
    /// Why an input cannot be judged.
    Refusal {
        /// A temperature no meat has.
        TemperatureOutside = "refused-temperature-outside",
        /// A temperature, and no word on its thermometer.
        StandingMissing = "refused-standing-missing",
        /// A thermometer with a test that uses none.
        StandingUnasked = "refused-standing-unasked",
        /// A thermometer off by more than any is.
        OffOutside = "refused-off-outside",
        /// An instant before 2000 or after 2200.
        InstantOutside = "refused-instant-outside",
        /// A result, or the start of a rest, that lies ahead.
        FromTheFuture = "refused-from-the-future",
        /// More results than can be judged at once.
        TooMany = "refused-too-many",
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::TemperatureOutside => {
                "A temperature inside a meat is between -20 and 200 \u{b0}C (253150 to 473150 mK): read it again and \
                 give it in millikelvin."
            }
            Self::StandingMissing => {
                "A temperature needs the standing of its thermometer: give \"unchecked\" if nobody checked it."
            }
            Self::StandingUnasked => "Only a temperature has a thermometer: leave the standing out of the other tests.",
            Self::OffOutside => {
                "A thermometer is off by at most 100 K: check it again in ice water and give the difference in \
                 millikelvin."
            }
            Self::InstantOutside => "An instant is between the years 2000 and 2200, in milliseconds since 1970: correct it.",
            Self::FromTheFuture => {
                "A result or a rest lies more than five minutes after now: correct its time, or the clock."
            }
            Self::TooMany => "At most 1000 results are judged at once: leave out the oldest ones.",
        })
    }
}

/// The input cannot be judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{reason}")]
pub struct Refused {
    /// Why, and what to do.
    pub reason: Refusal,
}

/// Whether the input can be judged.
pub(super) fn sound(input: &VerdictInput) -> Result<(), Refused> {
    refuse_if(input.checks.len() > RESULTS_MAX, Refusal::TooMany)?;
    refuse_if(!INSTANTS.contains(&input.now), Refusal::InstantOutside)?;
    for at in input
        .checks
        .iter()
        .map(|check| check.at)
        .chain(input.resting_since)
    {
        refuse_if(!INSTANTS.contains(&at), Refusal::InstantOutside)?;
        refuse_if(at > input.now + AHEAD_MAX_MS, Refusal::FromTheFuture)?;
    }
    input
        .checks
        .iter()
        .try_for_each(|check| sound_result(&check.result, check.standing))
}

fn sound_result(result: &TestResult, standing: Option<Standing>) -> Result<(), Refused> {
    match (result, standing) {
        (TestResult::Heat(_), None) => refuse_if(true, Refusal::StandingMissing),
        (TestResult::Heat(heat), Some(standing)) => {
            refuse_if(!READABLE.contains(&heat.mk), Refusal::TemperatureOutside)?;
            sound_standing(standing)
        }
        (_, standing) => refuse_if(standing.is_some(), Refusal::StandingUnasked),
    }
}

fn sound_standing(standing: Standing) -> Result<(), Refused> {
    let Standing::Checked { off_mk, at } = standing else {
        return Ok(());
    };
    refuse_if(
        !(-OFF_MAX_MK..=OFF_MAX_MK).contains(&off_mk),
        Refusal::OffOutside,
    )?;
    refuse_if(!INSTANTS.contains(&at), Refusal::InstantOutside)
}

fn refuse_if(bad: bool, reason: Refusal) -> Result<(), Refused> {
    if bad { Err(Refused { reason }) } else { Ok(()) }
}
