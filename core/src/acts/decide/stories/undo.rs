//! Taking back and erasing.

use super::super::testing::*;
use crate::{
    acts::Act,
    log::{Draft, EntryKey, ErasedFor, Stage, Voided},
    moment::MINUTE,
};

fn voided(night: &Night, r: &Regatta, targets: &[EntryKey]) -> Draft {
    let mut targets = targets.to_vec();
    targets.sort_unstable();
    Draft {
        cook: Some(r.cook),
        at: night.moment.utc_ms,
        payload: Voided { targets }.into(),
    }
}

#[test]
fn a_stage_is_taken_back_and_restored() {
    let (mut night, r) = Night::on_the_pits();
    let now = night.moment.utc_ms;
    let off = night.does(stage(r.butt, Stage::Off));
    let back = night.does(undo(&off.keys));
    assert_eq!(back.decision.drafts, [voided(&night, &r, &off.keys)]);
    assert_eq!(back.decision.said, "Taken back.");
    assert!(night.piece(r.butt).is_on_pit(now));
    let again = night.does(undo(&back.keys));
    assert_eq!(again.decision.said, "Back as it was.");
    assert!(!night.piece(r.butt).is_on_pit(now));
}

#[test]
fn a_mop_that_two_phones_recorded_is_taken_back_whole() {
    let (mut night, r) = Night::on_the_pits();
    let earlier = night.does(mop(&[r.ribs[0]]));
    night.pass(30 * MINUTE);
    let first = night.does(mop(&[r.ribs[0], r.ribs[1]]));
    night.hand_to(2);
    night.pass(3 * MINUTE);
    let second = night.does(mop(&[r.ribs[0]]));
    let back = night.does(undo(&second.keys));
    let both = [first.keys[0], second.keys[0]];
    assert_eq!(back.decision.drafts, [voided(&night, &r, &both)]);
    assert_eq!(
        back.decision.said,
        "Taken back, on the other devices that recorded it too."
    );
    let left: Vec<EntryKey> = night
        .piece(r.ribs[0])
        .wetted
        .iter()
        .map(|w| w.when.entry)
        .collect();
    assert_eq!(left, earlier.keys, "the mop before it stays");
    night.does(undo(&back.keys));
    assert_eq!(night.piece(r.ribs[0]).wetted.len(), 3);
    assert_eq!(night.piece(r.ribs[1]).wetted.len(), 1);
}

#[test]
fn a_whole_cook_is_taken_back_and_restored_though_it_is_gone_meanwhile() {
    let (mut night, r) = Night::regatta();
    let back = night.does(undo(&r.started));
    assert_eq!(back.decision.drafts.len(), 1);
    assert!(!night.knows(r.cook));
    let refused = night.refuses(&stage(r.butt, Stage::Off));
    assert!(refused.starts_with("That meat was taken back"), "{refused}");
    night.does(undo(&back.keys));
    assert_eq!(night.cook(r.cook).pieces.len(), 4);
}

#[test]
fn what_belongs_to_different_cooks_is_taken_back_in_each() {
    let (mut night, r) = Night::regatta();
    let woke = night.does(Act::WakeUp);
    let trimmed = night.does(stage(r.butt, Stage::Trimmed));
    let both = [woke.keys[0], trimmed.keys[0]];
    let drafts = night.does(undo(&both)).decision.drafts;
    assert_eq!(
        drafts.iter().map(|draft| draft.cook).collect::<Vec<_>>(),
        [None, Some(r.cook)]
    );
    assert!(night.piece(r.butt).stages.is_empty());
    assert!(!night.crew().people.contains_key(&device(1)), "nobody woke");
}

#[test]
fn a_note_is_erased_for_good() {
    let (mut night, r) = Night::regatta();
    let note = night.does(Act::Note {
        cook: r.cook,
        about: crate::log::Subject::Crew,
        text: "A name that should not stand here".into(),
    });
    let targets = note.keys.clone();
    let erased = night.does(Act::Erase { targets });
    let fact = ErasedFor { targets: note.keys };
    let draft = Draft {
        cook: Some(r.cook),
        at: NIGHT,
        payload: fact.into(),
    };
    assert_eq!(erased.decision.drafts, [draft]);
    assert_eq!(erased.decision.said, "Erased one entry for good.");
    assert!(!erased.decision.undoable);
    let refused = night.refuses(&undo(&erased.keys));
    assert!(
        refused.starts_with("That cannot be taken back"),
        "{refused}"
    );
}
