//! Openings of a pit.

use super::super::testing::*;
use crate::{
    acts::Act,
    cadence::Cadence,
    checks::{Spot, Temperature, TestResult},
    ids::PieceId,
    log::{Draft, Field, Opened, Stage, Subject, Wrap},
    moment::MINUTE,
    units::Mk,
};

fn opened(night: &Night, r: &Regatta, fact: Opened) -> Draft {
    Draft {
        cook: Some(r.cook),
        at: night.moment.utc_ms,
        payload: fact.into(),
    }
}

fn sorted(ids: &[PieceId]) -> Vec<PieceId> {
    let mut ids = ids.to_vec();
    ids.sort_unstable();
    ids
}

#[test]
fn one_opening_holds_all_that_was_done_at_that_pit() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(Act::Open {
        pit: Some(r.drum),
        wetted: vec![r.ribs[1], r.ribs[0], r.butt, r.butt],
        turned: vec![r.butt],
        glazed: vec![r.ribs[0]],
        at: None,
    });
    let fact = Opened {
        pit: Some(r.drum),
        wetted: sorted(&[r.ribs[0], r.ribs[1], r.butt]),
        turned: vec![r.butt],
        glazed: vec![r.ribs[0]],
    };
    assert_eq!(done.decision.drafts, [opened(&night, &r, fact)]);
    assert_eq!(
        done.decision.said,
        "Mopped Ribs 1 and Ribs 2. Spritzed Butt. Turned Butt. Glazed Ribs 1."
    );
    assert_eq!(night.cook(r.cook).pits[&r.drum].opened.len(), 1);
}

#[test]
fn meats_of_two_pits_are_two_openings() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(Act::Open {
        pit: None,
        wetted: vec![],
        turned: vec![r.turkey, r.butt],
        glazed: vec![],
        at: None,
    });
    let of = |pit, piece| Opened {
        pit: Some(pit),
        wetted: vec![],
        turned: vec![piece],
        glazed: vec![],
    };
    let mut expected = vec![
        opened(&night, &r, of(r.drum, r.butt)),
        opened(&night, &r, of(r.kettle, r.turkey)),
    ];
    if r.kettle < r.drum {
        expected.reverse();
    }
    assert_eq!(done.decision.drafts, expected);
}

#[test]
fn a_lid_that_was_only_lifted_is_an_opening_too() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(Act::Open {
        pit: Some(r.kettle),
        wetted: vec![],
        turned: vec![],
        glazed: vec![],
        at: None,
    });
    let fact = Opened {
        pit: Some(r.kettle),
        wetted: vec![],
        turned: vec![],
        glazed: vec![],
    };
    assert_eq!(done.decision.drafts, [opened(&night, &r, fact)]);
    assert_eq!(done.decision.said, "Opened Kettle.");
}

#[test]
fn what_was_done_five_minutes_ago_is_judged_by_how_it_stood_then() {
    let (mut night, r) = Night::on_the_pits();
    let wrap = Wrap::Foil;
    night.does(stage(r.butt, Stage::Wrapped { wrap }));
    let at = |minutes: i64, night: &Night| Act::Open {
        pit: None,
        wetted: vec![r.butt],
        turned: vec![],
        glazed: vec![],
        at: Some(night.moment.utc_ms - minutes * MINUTE),
    };
    assert_eq!(night.does(at(5, &night)).decision.said, "Spritzed Butt.");
    let refused = night.refuses(&at(0, &night));
    assert!(refused.starts_with("Butt is wrapped."), "{refused}");
    let turned = Act::Open {
        pit: None,
        wetted: vec![],
        turned: vec![r.butt],
        glazed: vec![],
        at: None,
    };
    assert_eq!(night.does(turned).decision.said, "Turned Butt.");
}

#[test]
fn glaze_goes_on_in_a_boat_and_a_mop_does_not() {
    let (mut night, r) = Night::on_the_pits();
    let wrap = Wrap::Boat;
    night.does(stage(r.butt, Stage::Wrapped { wrap }));
    let glaze = Act::Open {
        pit: None,
        wetted: vec![],
        turned: vec![],
        glazed: vec![r.butt],
        at: None,
    };
    assert_eq!(night.does(glaze).decision.said, "Glazed Butt.");
    night.refuses(&mop(&[r.butt]));
}

#[test]
fn raw_poultry_shares_a_spray_and_never_a_mop() {
    let (mut night, r) = Night::on_the_pits();
    let both = mop(&[r.turkey, r.ribs[0]]);
    let english = night.refuses(&both);
    assert!(
        english.contains("USDA FSIS; local rules come first"),
        "{english}"
    );
    assert_eq!(night.does(mop(&[r.turkey])).decision.said, "Mopped Turkey.");
    for piece in [r.turkey, r.ribs[0]] {
        night.does(Act::SetField {
            of: Subject::Piece(piece),
            to: Field::Cadence(Cadence::spritz()),
            saw: None,
        });
    }
    assert_eq!(night.does(both).decision.drafts.len(), 2);
    let glaze = Act::Open {
        pit: None,
        wetted: vec![],
        turned: vec![],
        glazed: vec![r.turkey, r.ribs[0]],
        at: None,
    };
    night.refuses(&glaze);
}

#[test]
fn a_bird_that_is_shown_to_be_safe_shares_a_mop_with_what_is_too() {
    let (mut night, r) = Night::on_the_pits();
    let read = |piece, spots: &[Spot]| {
        let heat = |spot: &Spot| {
            TestResult::Heat(Temperature {
                mk: Mk::from_f(195),
                spot: *spot,
                thermometer: None,
                instant_read: true,
            })
        };
        let results = spots.iter().map(heat).collect();
        let at = None;
        Act::Check { piece, results, at }
    };
    night.does(read(
        r.turkey,
        &[Spot::UpperThick, Spot::LowerThick, Spot::InnerBreastbone],
    ));
    let both = mop(&[r.turkey, r.ribs[0]]);
    let refused = night.refuses(&both);
    assert!(
        refused.starts_with("One brush must not touch both"),
        "{refused}"
    );
    night.does(read(r.ribs[0], &[Spot::BetweenBones]));
    assert_eq!(night.does(both).decision.drafts.len(), 2);
}
