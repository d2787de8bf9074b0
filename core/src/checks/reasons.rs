//! The reasons of a verdict, in the order to be read: safety, the thermometer, what was found, what is old.

use super::{
    CutFacts, DoneState, Level, Reason, SafeState, Safety, Test, TestResult, WrapCall,
    cuts::DoneBy,
    meaning::{Means, by_warmth, meaning, means_warmth},
    seen::Seen,
    shown::Shown,
};
use crate::{checks::BarkSet, moment::MINUTE, units::Mk};

/// Results older than this are said to be, in milliseconds: 30 min. Common practice, no source.
pub const STALE_AFTER_MS: i64 = 30 * MINUTE;

/// Why the verdict is what it is.
pub(super) fn reasons(
    facts: &CutFacts,
    seen: &Seen,
    shown: &Shown,
    state: DoneState,
) -> Vec<Reason> {
    let mut all = of_safety(facts, seen, shown);
    all.extend(of_thermometers(seen));
    all.extend(of_results(seen, &shown.safety));
    all.extend(of_feel(facts, seen, &shown.safety, state));
    all.extend(of_age(facts, seen));
    all
}

fn of_safety(facts: &CutFacts, seen: &Seen, shown: &Shown) -> Vec<Reason> {
    let Safety {
        state,
        minimum,
        coldest,
        rest_left_ms,
    } = shown.safety;
    let mut all = vec![];
    match (state, coldest, rest_left_ms) {
        (_, Some(coldest), Some(_)) if tough_at(facts, coldest) => {
            all.push(Reason::ToughAtMinimum { coldest });
        }
        (SafeState::Safe, Some(coldest), _) => all.push(Reason::MinimumShown { coldest }),
        (SafeState::NotSafe, _, Some(left_ms)) => all.push(Reason::RestNeeded { left_ms }),
        (SafeState::NotSafe, Some(coldest), _) => all.push(Reason::BelowMinimum {
            coldest,
            minimum: minimum.temp,
        }),
        _ => all.push(Reason::TemperatureNotShown),
    }
    if !shown.missing.is_empty() {
        all.push(Reason::SpotsMissing {
            spots: shown.missing.clone(),
        });
    }
    let by_probe = state != SafeState::Safe && seen.readings.iter().any(|reading| !reading.instant);
    all.extend((facts.by_hand && by_probe).then_some(Reason::ReadByHand));
    all
}

/// Whether a cut that is done far above its minimum cannot be tender yet at this.
fn tough_at(facts: &CutFacts, coldest: Mk) -> bool {
    facts.is_done_far_above() && coldest < facts.close_from
}

fn of_thermometers(seen: &Seen) -> Vec<Reason> {
    let too_far = seen
        .too_far_off
        .iter()
        .map(|off_mk| Reason::TooFarOff { off_mk: *off_mk });
    let corrected = seen
        .corrected
        .iter()
        .map(|off_mk| Reason::Corrected { off_mk: *off_mk });
    too_far
        .chain(corrected)
        .chain(seen.unchecked.then_some(Reason::Unchecked))
        .collect()
}

fn of_results(seen: &Seen, safety: &Safety) -> Vec<Reason> {
    let found = |test, Means { meaning, .. }: Means| Reason::Found { test, meaning };
    let felt = seen
        .latest
        .iter()
        .filter(|(test, _)| **test != Test::Temperature);
    let felt = felt.map(|(test, (_, result))| found(*test, meaning(seen.cut, seen.form, result)));
    let warm = safety
        .coldest
        .map(|mk| found(Test::Temperature, means_warmth(seen.cut, seen.form, mk)));
    felt.chain(warm).collect()
}

fn of_feel(facts: &CutFacts, seen: &Seen, safety: &Safety, state: DoneState) -> Vec<Reason> {
    let feels: Vec<Level> = seen.feels(facts).collect();
    let apart = feels.contains(&Level::NotYet) && feels.iter().any(|feel| *feel >= Level::Ready)
        || feels.contains(&Level::Close) && feels.contains(&Level::Over);
    let mut all = vec![];
    all.extend(apart.then_some(Reason::FeelsDisagree));
    all.extend(feel_and_warmth(facts, seen, safety).filter(|_| !state.says_done()));
    all.extend(smears(facts, seen).then_some(Reason::WrapWouldSmear));
    all
}

fn feel_and_warmth(facts: &CutFacts, seen: &Seen, safety: &Safety) -> Option<Reason> {
    let tender = seen.feel(facts)? >= Level::Ready;
    let coldest = safety.coldest?;
    let hot = by_warmth(facts, coldest) >= Level::Ready;
    let both = facts.done_by == DoneBy::FeelAndTemperature;
    match tender {
        true if coldest < facts.tender_from() => Some(Reason::FeelAheadOfTemperature),
        false if both && hot => Some(Reason::FeelBehindTemperature),
        _ => None,
    }
}

fn smears(facts: &CutFacts, seen: &Seen) -> bool {
    let latest = |test| seen.latest.get(&test).map(|(_, result)| *result);
    let wet = latest(Test::BarkSet) == Some(TestResult::Bark(BarkSet::WipesOff));
    let wrap = matches!(
        latest(Test::WrapCall),
        Some(TestResult::Color(WrapCall::ColorRight | WrapCall::TooDark))
    );
    wet && wrap && !facts.wraps.is_empty()
}

fn of_age(facts: &CutFacts, seen: &Seen) -> Vec<Reason> {
    let old = |(test, (at, _)): (&Test, &(i64, TestResult))| {
        let age = seen.now - at;
        let tells = facts.tests.contains(test) && age > STALE_AFTER_MS;
        tells.then_some(Reason::Stale {
            test: *test,
            minutes: age / MINUTE,
        })
    };
    seen.latest.iter().filter_map(old).collect()
}
