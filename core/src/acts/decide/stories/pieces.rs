//! What happens to one meat.

use super::super::testing::*;
use crate::{
    acts::Act,
    checks::{Bend, Spot, Temperature, TestResult},
    log::{
        Checked, Draft, Part, Payload, PieceMoved, PieceSplit, PiecesJoined, RubAnswered, Stage,
        StageSet, Subject, Wrap,
    },
    moment::{HOUR, MINUTE},
    units::Mk,
};

#[test]
fn every_stage_is_recorded_and_said() {
    let (mut night, r) = Night::regatta();
    let table = [
        (Stage::Trimmed, "Trimmed Butt."),
        (Stage::Brined, "Brined Butt."),
        (Stage::Rubbed, "Rubbed Butt."),
        (Stage::Resting, "Butt rests in the cold."),
        (Stage::OnPit { pit: r.drum }, "Put Butt on Drum."),
        (
            Stage::Wrapped { wrap: Wrap::Paper },
            "Wrapped Butt in paper.",
        ),
        (Stage::Wrapped { wrap: Wrap::Foil }, "Wrapped Butt in foil."),
        (
            Stage::Wrapped { wrap: Wrap::Boat },
            "Put Butt in a foil boat.",
        ),
        (Stage::Wrapped { wrap: Wrap::Pan }, "Covered Butt in a pan."),
        (Stage::Unwrapped, "Unwrapped Butt."),
        (Stage::Off, "Took Butt off."),
        (Stage::Held, "Butt is held hot."),
        (Stage::CutUp, "Cut up Butt."),
        (Stage::Served, "Served Butt."),
        (Stage::PutAway, "Put Butt in the refrigerator."),
        (Stage::Reheated, "Reheated Butt."),
        (Stage::Trimmed, "Trimmed Butt."),
    ];
    for (at, said) in table {
        let decision = night.does(stage(r.butt, at)).decision;
        let fact = StageSet {
            piece: r.butt,
            stage: at,
        };
        let draft = Draft {
            cook: Some(r.cook),
            at: NIGHT,
            payload: fact.into(),
        };
        assert_eq!(
            (decision.drafts, decision.said.as_str()),
            (vec![draft], said)
        );
    }
    assert_eq!(
        night.piece(r.butt).stage(NIGHT).map(|p| p.stage),
        Some(Stage::Trimmed)
    );
}

#[test]
fn the_pit_it_went_on_counts_even_when_it_is_told_late() {
    let (mut night, r) = Night::regatta();
    let act = Act::SetStage {
        piece: r.butt,
        stage: Stage::OnPit { pit: r.kettle },
        at: Some(NIGHT - 30 * MINUTE),
    };
    let drafts = night.does(act).decision.drafts;
    assert_eq!(drafts[0].at, NIGHT - 30 * MINUTE);
    let moved = PieceMoved {
        piece: r.butt,
        pit: r.kettle,
        spot: String::new(),
    };
    assert_eq!(drafts[1].payload, Payload::from(moved));
    assert_eq!(night.piece(r.butt).pit(NIGHT), Some((r.kettle, "")));
    let told = Act::SetStage {
        piece: r.turkey,
        stage: Stage::OnPit { pit: r.kettle },
        at: Some(NIGHT - 30 * MINUTE),
    };
    assert_eq!(
        night.does(told).decision.drafts.len(),
        1,
        "it was meant for the kettle"
    );
}

#[test]
fn a_meat_moves_to_another_pit_and_spot() {
    let (mut night, r) = Night::on_the_pits();
    let at = night.moment.utc_ms - 5 * MINUTE;
    let done = night.does(Act::Move {
        piece: r.butt,
        pit: r.kettle,
        spot: "  left,  low ".into(),
        at: Some(at),
    });
    assert_eq!(done.decision.said, "Moved Butt to Kettle.");
    assert_eq!(done.decision.drafts[0].at, at);
    assert_eq!(night.piece(r.butt).pit(at), Some((r.kettle, "left, low")));
}

#[test]
fn the_rub_is_asked_once_for_each_answer() {
    let (mut night, r) = Night::on_the_pits();
    for (set, said) in [
        (false, "The rub on Butt has not set yet."),
        (true, "The rub on Butt has set."),
    ] {
        let act = Act::AnswerRub {
            piece: r.butt,
            set,
            at: None,
        };
        let decision = night.does(act).decision;
        let fact = RubAnswered { piece: r.butt, set };
        assert_eq!(decision.drafts[0].payload, Payload::from(fact));
        assert_eq!(decision.said, said);
    }
    assert_eq!(night.piece(r.butt).rub.len(), 2);
}

#[test]
fn the_rubs_of_several_meats_are_answered_at_once_and_of_none_not_at_all() {
    let (mut night, r) = Night::on_the_pits();
    let act = |pieces| Act::AnswerRubs {
        pieces,
        set: true,
        at: None,
    };
    let decision = night.does(act(vec![r.butt, r.butt])).decision;
    assert_eq!(decision.drafts.len(), 1);
    assert_eq!(decision.said, "The rub on Butt has set.");
    assert!(night.refuses(&act(vec![])).starts_with("Nothing"));
}

#[test]
fn a_meat_is_cut_in_parts_that_go_on() {
    let (mut night, r) = Night::on_the_pits();
    let names = vec!["Flat".to_owned(), String::new(), String::new()];
    let done = night.does(Act::Split {
        piece: r.butt,
        names,
    });
    let ids: Vec<_> = done.decision.made.iter().collect();
    let part = |i: usize, name: &str| match ids[i] {
        Subject::Piece(piece) => Part {
            piece: *piece,
            name: name.into(),
            weight_g: None,
        },
        other => panic!("a meat was made, not {other:?}"),
    };
    let fact = PieceSplit {
        piece: r.butt,
        into: vec![part(0, "Flat"), part(1, "Butt 1"), part(2, "Butt 2")],
    };
    assert_eq!(done.decision.drafts[0].payload, Payload::from(fact));
    assert_eq!(done.decision.said, "Cut Butt in Flat, Butt 1 and Butt 2.");
    let refused = night.refuses(&stage(r.butt, Stage::Off));
    assert_eq!(
        refused,
        "Butt goes on as Flat, Butt 1 and Butt 2 now. Record it there."
    );
}

#[test]
fn meats_of_one_cut_go_on_as_one() {
    let (mut night, r) = Night::on_the_pits();
    let done = night.does(Act::Join {
        pieces: vec![r.ribs[0], r.ribs[1], r.ribs[0]],
        name: "All ribs".into(),
    });
    let [Subject::Piece(piece)] = done.decision.made[..] else {
        panic!("{done:?}")
    };
    let mut pieces = r.ribs.to_vec();
    pieces.sort_unstable();
    let into = Part {
        piece,
        name: "All ribs".into(),
        weight_g: None,
    };
    assert_eq!(
        done.decision.drafts[0].payload,
        Payload::from(PiecesJoined { pieces, into })
    );
    assert_eq!(done.decision.said, "Ribs 1 and Ribs 2 go on as All ribs.");
    assert!(night.piece(piece).is_on_pit(night.moment.utc_ms));
}

#[test]
fn a_check_keeps_every_result() {
    let (mut night, r) = Night::on_the_pits();
    night.pass(4 * HOUR);
    let results = vec![
        TestResult::Lifted(Bend::Bows),
        TestResult::Heat(Temperature {
            mk: Mk::from_f(190),
            spot: Spot::BetweenBones,
            thermometer: None,
            instant_read: true,
        }),
        TestResult::Heat(Temperature {
            mk: Mk::from_f(150),
            spot: Spot::Elsewhere,
            thermometer: None,
            instant_read: false,
        }),
    ];
    let piece = r.ribs[0];
    let done = night.does(Act::Check {
        piece,
        results: results.clone(),
        at: None,
    });
    let fact = Checked {
        piece,
        results: results.clone(),
    };
    assert_eq!(done.decision.drafts[0].payload, Payload::from(fact));
    assert_eq!(done.decision.said, "Checked Ribs 1.");
    assert_eq!(night.piece(piece).checks[0].results, results);
}
