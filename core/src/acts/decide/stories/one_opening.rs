//! One opening as one act, and several meats moved at once.

use super::super::testing::*;
use crate::{
    acts::{Act, InOpening, MeatMove},
    cadence::Cadence,
    checks::{BarkSet, TestResult},
    log::{Field, Payload, Stage, Subject},
    moment::MINUTE,
};

fn opening(meats: Vec<InOpening>) -> Act {
    Act::DoOpening {
        pit: None,
        meats,
        at: None,
    }
}

fn kinds(done: &Done) -> Vec<&'static str> {
    let drafts = done.decision.drafts.iter();
    drafts.map(|draft| draft.payload.kind()).collect()
}

#[test]
fn all_of_an_opening_is_one_act_for_one_instant_and_is_taken_back_as_one() {
    let (mut night, r) = Night::on_the_pits();
    let before = night.cook(r.cook).clone();
    let at = night.moment.utc_ms - 5 * MINUTE;
    let done = night.does(Act::DoOpening {
        pit: Some(r.drum),
        meats: vec![
            InOpening {
                wetted: true,
                rub_set: Some(true),
                ..InOpening::of(r.ribs[0])
            },
            InOpening {
                turned: true,
                results: vec![TestResult::Bark(BarkSet::Holds)],
                note: "Fat side up.".into(),
                ..InOpening::of(r.butt)
            },
            InOpening::of(r.ribs[1]),
        ],
        at: Some(at),
    });
    assert_eq!(kinds(&done), ["opened", "rub_answered", "checked", "noted"]);
    assert!(done.decision.drafts.iter().all(|draft| draft.at == at));
    assert_eq!(
        done.decision.said,
        "Mopped Ribs 1. Turned Butt. The rub on Ribs 1 has set. Checked Butt. Written down."
    );
    let last = &night.cook(r.cook).last_acts[&device(1)];
    assert_eq!(last.entries, done.keys);
    night.does(undo(&done.keys));
    let after = night.cook(r.cook);
    assert_eq!(
        (&after.pieces, &after.notes),
        (&before.pieces, &before.notes)
    );
    assert!(
        after
            .pits
            .get(&r.drum)
            .is_none_or(|care| care.opened.is_empty())
    );
}

#[test]
fn a_check_alone_opens_the_pit_too_so_that_its_heat_is_not_rung_for() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(opening(vec![InOpening {
        results: vec![TestResult::Bark(BarkSet::Holds)],
        ..InOpening::of(r.butt)
    }]));
    assert_eq!(kinds(&done), ["opened", "checked"]);
    assert_eq!(done.decision.said, "Checked Butt.");
    assert_eq!(night.cook(r.cook).pits[&r.drum].opened.len(), 1);
}

#[test]
fn meats_on_two_pits_open_both() {
    let (mut night, r) = Night::on_the_pits();
    let turned = |piece| InOpening {
        turned: true,
        ..InOpening::of(piece)
    };
    let done = night.does(opening(vec![turned(r.butt), turned(r.turkey)]));
    assert_eq!(kinds(&done), ["opened", "opened"]);
}

#[test]
fn an_opening_in_which_nothing_was_done_is_an_opening_of_its_pit() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(Act::DoOpening {
        pit: Some(r.drum),
        meats: vec![InOpening::of(r.butt)],
        at: None,
    });
    assert_eq!(done.decision.said, "Opened Drum.");
    let reason = night.refuses(&opening(vec![]));
    assert!(reason.contains("Choose a meat or a pit"), "{reason}");
}

#[test]
fn raw_poultry_is_mopped_in_the_same_opening_only_with_a_mop_of_its_own() {
    let (mut night, r) = Night::on_the_pits();
    night.does(Act::SetField {
        of: Subject::Piece(r.turkey),
        to: Field::Cadence(Cadence::mop()),
        saw: None,
    });
    night.does(stage(r.turkey, Stage::OnPit { pit: r.drum }));
    let both = |own_mop| {
        let wetted = |piece, own_mop| InOpening {
            wetted: true,
            own_mop,
            ..InOpening::of(piece)
        };
        opening(vec![wetted(r.ribs[0], false), wetted(r.turkey, own_mop)])
    };
    let reason = night.refuses(&both(false));
    assert!(reason.contains("raw poultry"), "{reason}");
    let done = night.does(both(true));
    let Payload::Opened(opened) = &done.decision.drafts[0].payload else {
        panic!("not opened: {done:?}");
    };
    assert_eq!(opened.wetted.len(), 2);
}

#[test]
fn what_one_part_would_refuse_refuses_the_whole() {
    let (mut night, r) = Night::on_the_pits();
    let fine = InOpening {
        turned: true,
        ..InOpening::of(r.butt)
    };
    let rub = InOpening {
        wetted: true,
        rub_set: Some(false),
        ..InOpening::of(r.ribs[0])
    };
    let other_test = InOpening {
        results: vec![TestResult::Bark(BarkSet::Holds); 41],
        ..InOpening::of(r.ribs[0])
    };
    for (part, says) in [
        (rub, "has not set"),
        (other_test, "results"),
        (fine.clone(), "twice"),
    ] {
        let reason = night.refuses(&opening(vec![fine.clone(), part]));
        assert!(reason.contains(says), "{reason}");
    }
}

#[test]
fn meats_moved_one_place_on_open_the_pits_they_left_and_came_to() {
    let (mut night, r) = Night::on_the_pits();
    let to = |piece, pit, spot: &str| MeatMove {
        piece,
        pit,
        spot: spot.into(),
    };
    let moves = vec![
        to(r.ribs[0], r.drum, "upper"),
        to(r.ribs[1], r.kettle, "over the coals"),
    ];
    let act = Act::MoveMeats { moves, at: None };
    let done = night.does(act.clone());
    assert_eq!(done.decision.said, "Moved Ribs 1 and Ribs 2.");
    assert_eq!(
        kinds(&done),
        ["piece_moved", "piece_moved", "opened", "opened"]
    );
    let now = night.moment.utc_ms;
    assert_eq!(
        night.piece(r.ribs[1]).pit(now),
        Some((r.kettle, "over the coals"))
    );
    let reason = night.refuses(&act);
    assert!(reason.contains("Nothing was moved"), "{reason}");
}
