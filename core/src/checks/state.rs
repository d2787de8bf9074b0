//! From the feel, the temperature and the minimum to one state. Start at [`state`].

use super::{
    CutFacts, DoneState, Level, SafeState, Safety, cuts::DoneBy, meaning::by_warmth, seen::Seen,
};

/// What is said of the meat. Only the last arms say done, and only with the minimum shown.
pub(super) fn state(facts: &CutFacts, seen: &Seen, safety: &Safety) -> DoneState {
    let Some(level) = level(facts, seen, safety) else {
        return DoneState::CannotSay;
    };
    let by_temperature = facts.done_by == DoneBy::Temperature;
    let cold = safety.state == SafeState::NotSafe && safety.rest_left_ms.is_none();
    match (safety.state, level) {
        (_, Level::NotYet) => DoneState::NotYet,
        (_, _) if cold && !by_temperature => DoneState::NotYet,
        (_, Level::Close) => DoneState::Close,
        (SafeState::Safe, Level::Ready) => DoneState::Done,
        (SafeState::Safe, Level::Over) => DoneState::Overdone,
        (_, _) if by_temperature => DoneState::Close,
        (_, _) => DoneState::TenderOnly,
    }
}

/// How far along, safety apart. A tender feel is not believed where the reading says that the collagen cannot have
/// melted: ribs that crack at 145 °F were read in the wrong place, or felt so.
fn level(facts: &CutFacts, seen: &Seen, safety: &Safety) -> Option<Level> {
    let warmth = safety.coldest.map(|mk| by_warmth(facts, mk));
    match (facts.done_by, seen.feel(facts), warmth) {
        (DoneBy::Temperature, _, Some(warmth)) => Some(warmth),
        (DoneBy::Temperature, _, None) => seen.hint(facts).map(|hint| hint.min(Level::Close)),
        (DoneBy::Feel, Some(feel), Some(Level::NotYet)) => Some(feel.min(Level::Close)),
        (DoneBy::Feel, Some(feel), _) => Some(feel),
        (DoneBy::FeelAndTemperature, Some(feel), Some(warmth)) => Some(both(feel, warmth)),
        (DoneBy::FeelAndTemperature, Some(feel), None) => Some(feel),
        (_, None, warmth) => warmth
            .or(seen.hint(facts))
            .map(|warmth| warmth.min(Level::Close)),
    }
}

/// The less done of the two; tender and too hot is over.
fn both(feel: Level, warmth: Level) -> Level {
    if feel >= Level::Ready {
        warmth
    } else {
        feel.min(warmth)
    }
}
