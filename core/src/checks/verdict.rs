//! Whether a meat is done, and whether it is safe. Start at [`verdict`]. This is `slowbend sum verdict`.

use super::{
    Cut, CutFacts, DoneState, Reason, Refused, Standing, TestResult,
    next::next_check,
    reasons::reasons,
    refused::sound,
    seen::Seen,
    shown::{Shown, judge},
    state::state,
};
use crate::{
    checks::cut_facts,
    safety::{CautionKind, Doing, Form, Minimum, cautions_at, keyed::keyed},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// One result with its time and, if it is a temperature, its thermometer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct DatedResult {
    /// What came of the test.
    pub result: TestResult,
    /// When it was done, in milliseconds since 1970 (2000 to 2200, at most 5 minutes after now).
    pub at: i64,
    /// How its thermometer stands: asked for with a temperature, refused with any other test.
    #[serde(default)]
    pub standing: Option<Standing>,
}

/// All that a verdict is made of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct VerdictInput {
    /// Which cut.
    pub cut: Cut,
    /// What was done to it before the fire.
    pub form: Form,
    /// Every result so far, in any order, at most 1,000. Cold is believed whenever it is read: leave out what was read
    /// while the meat cooled in its hold, after it was done.
    pub checks: Vec<DatedResult>,
    /// When it is, in milliseconds since 1970.
    pub now: i64,
    /// Since when it is off the fire, in milliseconds since 1970; none while it is on.
    #[serde(default)]
    pub resting_since: Option<i64>,
    /// Whether something was recorded of this meat that this version cannot read and must not ignore.
    #[serde(default)]
    pub unknown_must_understand: bool,
}

keyed! {
    /// Whether the published minimum is shown.
    SafeState {
        /// It is, and so is the rest that goes with it.
        Safe = "safe-safe",
        /// Something is colder than it, or the rest is not over.
        NotSafe = "safe-not-safe",
        /// Nothing shows it.
        Unknown = "safe-unknown",
    }
}

/// How the meat stands to its published minimum.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Safety {
    /// Whether it is shown.
    pub state: SafeState,
    /// The minimum, and who says so.
    pub minimum: Minimum,
    /// The coldest place in the ten minutes up to the newest reading, corrected, in millikelvin.
    pub coldest: Option<Mk>,
    /// Once the temperature is shown: milliseconds of rest still to go, 0 when over.
    pub rest_left_ms: Option<i64>,
}

/// What is said of the meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Verdict {
    /// How far along it is.
    pub state: DoneState,
    /// Whether it is safe.
    pub safety: Safety,
    /// Why, in the order to be read.
    pub reasons: Vec<Reason>,
    /// What to heed now; the last defers to local rules and licensed practice.
    pub cautions: Vec<CautionKind>,
    /// Minutes from now until the next check pays; 0 = now; none = no more checks.
    pub next_check_minutes: Option<i64>,
    /// Whether a thermometer that nobody checked had a part in this: say so beside the verdict.
    pub say_unchecked: bool,
}

/// Judges a meat. Law: [`DoneState::says_done`] only when `safety.state` is [`SafeState::Safe`].
///
/// ```
/// use slowbend_core::{checks::*, safety::Form, units::Mk};
/// let now = 1_795_000_000_000;
/// let heat = Temperature { mk: Mk::from_f(201), spot: Spot::Center, thermometer: None, instant_read: true };
/// let result = |result, standing| DatedResult { result, at: now, standing };
/// let checks = vec![
///     result(TestResult::Probed(ProbeFeel::Slides), None),
///     result(TestResult::Heat(heat), Some(Standing::Unchecked)),
/// ];
/// let input = VerdictInput {
///     cut: Cut::PorkButt, form: Form::Intact, checks, now, resting_since: None, unknown_must_understand: false,
/// };
/// let verdict = verdict(&input).unwrap();
/// assert_eq!(verdict.state, DoneState::Done);
/// assert!(verdict.say_unchecked);
/// ```
///
/// # Errors
/// [`Refused`] when a number lies outside what it can be; its text says what to do.
pub fn verdict(input: &VerdictInput) -> Result<Verdict, Refused> {
    sound(input)?;
    let facts = cut_facts(input.cut);
    let seen = Seen::of(input);
    let shown = judge(
        input.cut,
        input.form,
        &seen.readings,
        input.now,
        input.resting_since,
    );
    Ok(if input.unknown_must_understand {
        not_judged(&facts, &seen, shown)
    } else {
        judged(&facts, &seen, shown)
    })
}

fn judged(facts: &CutFacts, seen: &Seen, shown: Shown) -> Verdict {
    let state = state(facts, seen, &shown.safety);
    Verdict {
        state,
        safety: shown.safety,
        reasons: reasons(facts, seen, &shown, state),
        cautions: cautions(facts, state),
        next_check_minutes: next_check(facts, seen, &shown.safety, state),
        say_unchecked: seen.unchecked,
    }
}

fn not_judged(facts: &CutFacts, seen: &Seen, shown: Shown) -> Verdict {
    let mut reasons = vec![Reason::UpdateFirst];
    reasons.extend(seen.unchecked.then_some(Reason::Unchecked));
    Verdict {
        state: DoneState::UpdateToJudge,
        safety: Safety {
            state: SafeState::Unknown,
            coldest: None,
            rest_left_ms: None,
            ..shown.safety
        },
        reasons,
        cautions: cautions(facts, DoneState::UpdateToJudge),
        next_check_minutes: None,
        say_unchecked: seen.unchecked,
    }
}

fn cautions(facts: &CutFacts, state: DoneState) -> Vec<CautionKind> {
    cautions_at(match state {
        done if done.says_done() => Doing::Serving,
        _ if facts.cut.is_poultry() => Doing::CheckingPoultry,
        _ => Doing::CheckingMeat,
    })
}
