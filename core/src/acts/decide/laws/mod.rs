//! Laws of every act, whatever it is made of.

mod stuff;

use super::{testing::*, times};
use crate::{
    acts::Act,
    log::{Entry, MAX_ENTRY_BYTES, Meaning},
    words::Locale,
};
use proptest::prelude::*;
use stuff::{Ids, Stuff, acts, stuff};

/// The law: an act is refused with a sentence, or its drafts are small, dated within what may be claimed, and read back
/// as what they were; its words exist; and it folds.
fn keeps_the_law(night: &mut Night, act: Act) -> Result<(), TestCaseError> {
    let now = night.moment.utc_ms;
    let decision = match night.decide(&act) {
        Ok(decision) => decision,
        Err(refused) => {
            prop_assert!(refused.reason.contains('.'), "{}", refused.reason);
            prop_assert!(!refused.reason.contains("⟨error"), "{}", refused.reason);
            return Ok(());
        }
    };
    prop_assert!(!decision.drafts.is_empty());
    prop_assert!(!decision.said.is_empty() && !decision.said.contains("⟨act"));
    for draft in &decision.drafts {
        let window = now - times::BACK_MS..=now + times::AHEAD_MS;
        prop_assert!(window.contains(&draft.at), "{}", draft.at);
        let raw = draft.raw();
        prop_assert!(raw.len() <= MAX_ENTRY_BYTES);
        prop_assert_eq!(Entry::meaning(&raw), Meaning::Known(draft.payload.clone()));
    }
    night.does(act);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn whatever_is_handed_in_is_recorded_soundly_or_refused_with_a_sentence(
        all in prop::collection::vec((stuff(), 0usize..64), 1..8),
        spanish in any::<bool>(),
    ) {
        let (mut night, r) = Night::on_the_pits();
        night.viewer.locale = if spanish { Locale::EsUs } else { Locale::EnUs };
        let ids = Ids::of(&r);
        for (stuff, kind) in all {
            let acts = acts(&ids, &stuff);
            keeps_the_law(&mut night, acts[kind % acts.len()].clone())?;
        }
    }

    #[test]
    fn every_kind_of_act_keeps_the_law(stuff in stuff(), utc_ms in prop::option::of(any::<i64>())) {
        let (mut night, r) = Night::on_the_pits();
        night.moment.utc_ms = utc_ms.unwrap_or(night.moment.utc_ms);
        for act in acts(&Ids::of(&r), &stuff) {
            let (mut fresh, _) = Night::on_the_pits();
            fresh.moment = night.moment.clone();
            keeps_the_law(&mut fresh, act)?;
        }
    }
}

#[test]
fn the_same_night_gives_the_same_decision() {
    let stuff = Stuff {
        numbers: [30, 60, 10, 5],
        texts: ["Butt".into(), "America/Chicago".into()],
        picks: [0, 2, 0, 1],
        at: None,
    };
    let run = || {
        let (mut night, r) = Night::on_the_pits();
        let acts = acts(&Ids::of(&r), &stuff);
        acts.iter().map(|act| night.decide(act)).collect::<Vec<_>>()
    };
    let first = run();
    assert_eq!(first, run());
    assert!(first.iter().filter(|decided| decided.is_ok()).count() > 12);
}
