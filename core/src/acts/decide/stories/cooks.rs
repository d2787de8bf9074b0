//! Cooks, what is in them, and jobs answered.

use super::super::testing::*;
use crate::{
    acts::{Act, NewMeat},
    cadence::Cadence,
    checks::Cut,
    ids::DishId,
    log::{
        Answered, CookFinished, CookStarted, DishReady, Draft, Field, FieldSet, Job, Noted,
        Payload, PieceAdded, PieceMoved, PutOff, Serve, Skipped, Subject,
    },
    moment::HOUR,
    safety::Form,
    units::Mk,
};

fn serve_at_two() -> Serve {
    Serve {
        at: NIGHT + 16 * HOUR,
        zone: "America/Chicago".into(),
    }
}

#[test]
fn a_cook_begins_with_its_meats_and_the_pits_they_are_meant_for() {
    let mut night = Night::new();
    let drum = night.pit("Drum", crate::log::PitKind::Drum);
    let ribs = NewMeat {
        weight_g: Some(1_500),
        cadence: Some(Cadence::spritz()),
        ..meat(Cut::SpareRibs, "Ribs", Some(drum))
    };
    let done = night.does(Act::StartCook {
        name: "Regatta lunch".into(),
        serve: Some(serve_at_two()),
        people: Some(14),
        meats: vec![ribs],
        demo: false,
    });
    let [Subject::Cook(id), Subject::Piece(piece)] = done.decision.made[..] else {
        panic!("{done:?}")
    };
    let payloads: Vec<Payload> = vec![
        CookStarted {
            id,
            name: "Regatta lunch".into(),
            serve: Some(serve_at_two()),
            people: Some(14),
            demo: false,
        }
        .into(),
        PieceAdded {
            piece,
            name: "Ribs".into(),
            cut: Cut::SpareRibs,
            form: Form::Intact,
            weight_g: Some(1_500),
            cadence: Cadence::spritz(),
        }
        .into(),
        PieceMoved {
            piece,
            pit: drum,
            spot: String::new(),
        }
        .into(),
    ];
    let draft = |payload| Draft {
        cook: Some(id),
        at: NIGHT,
        payload,
    };
    assert_eq!(
        done.decision.drafts,
        payloads.into_iter().map(draft).collect::<Vec<_>>()
    );
    assert_eq!(done.decision.said, "Regatta lunch has begun.");
    let kept = night.piece(piece);
    assert_eq!(kept.pit(NIGHT), Some((drum, "")));
    assert!(!kept.is_on_pit(NIGHT), "meant for a pit is not on it");
}

#[test]
fn meats_of_one_name_are_told_apart_and_a_nameless_one_is_called_after_its_cut() {
    let (mut night, r) = Night::regatta();
    let names = r.ribs.map(|id| night.piece(id).name.value.clone());
    assert_eq!(names, ["Ribs 1", "Ribs 2"]);
    let done = night.does(Act::AddMeat {
        cook: r.cook,
        meat: meat(Cut::PorkButt, " \u{200b}", None),
    });
    let [Subject::Piece(id)] = done.decision.made[..] else {
        panic!("{done:?}")
    };
    let said = crate::words::Words::of(&night.viewer).text(Cut::PorkButt.key());
    assert_eq!(night.piece(id).name.value, said);
    let third = night.does(Act::AddMeat {
        cook: r.cook,
        meat: meat(Cut::PorkButt, "Butt", None),
    });
    assert_eq!(third.decision.said, "Added Butt 2.");
}

#[test]
fn a_meat_is_wetted_as_its_cut_usually_is_at_the_minutes_the_crew_is_used_to() {
    let (mut night, r) = Night::regatta();
    let cadence = |night: &Night, id| night.piece(id).cadence.value;
    assert_eq!(cadence(&night, r.ribs[0]), Cadence::Mop { every_min: 30 });
    assert_eq!(cadence(&night, r.butt), Cadence::Spritz { every_min: 60 });
    assert_eq!(cadence(&night, r.turkey), Cadence::None);
    for to in [Field::MopMinutes(20), Field::SpritzMinutes(45)] {
        let of = Subject::Crew;
        night.does(Act::SetField { of, to, saw: None });
    }
    let mut add = |cut, cadence| {
        let meat = NewMeat {
            cadence,
            ..meat(cut, "", None)
        };
        let done = night.does(Act::AddMeat { cook: r.cook, meat });
        match &done.decision.drafts[0].payload {
            Payload::PieceAdded(fact) => fact.cadence,
            other => panic!("a meat was added, not {other:?}"),
        }
    };
    assert_eq!(add(Cut::SpareRibs, None), Cadence::Mop { every_min: 20 });
    assert_eq!(add(Cut::PorkButt, None), Cadence::Spritz { every_min: 45 });
    assert_eq!(add(Cut::PorkButt, Some(Cadence::None)), Cadence::None);
}

#[test]
fn a_form_that_raises_the_minimum_takes_a_lower_pull_point_back() {
    let (mut night, r) = Night::regatta();
    let of = Subject::Piece(r.butt);
    let set = |to| Act::SetField { of, to, saw: None };
    night.does(set(Field::PullAt(Some(Mk::from_f(150)))));
    let seen = night.piece(r.butt).pull_at.stamp;
    let done = night.does(set(Field::Form(Form::Stuffed)));
    let facts = [
        (Field::Form(Form::Stuffed), None),
        (Field::PullAt(None), Some(seen)),
    ];
    let drafts = facts.map(|(to, saw)| Draft {
        cook: Some(r.cook),
        at: NIGHT,
        payload: FieldSet { of, to, saw }.into(),
    });
    assert_eq!(done.decision.drafts, drafts);
    assert_eq!(night.piece(r.butt).pull_at.value, None);
}

#[test]
fn a_cook_has_dishes_and_notes_and_ends() {
    let (mut night, r) = Night::regatta();
    let cook = r.cook;
    let beans = night.does(Act::AddDish {
        cook,
        name: "Beans".into(),
        hot: true,
    });
    let [Subject::Dish(dish)] = beans.decision.made[..] else {
        panic!("{beans:?}")
    };
    let about = Subject::Dish(dish);
    let text = "Two pots,\nless salt".to_owned();
    let table: Vec<(Act, Payload, &str)> = vec![
        (
            Act::ReadyDish {
                cook,
                dish,
                ready: true,
            },
            DishReady { dish, ready: true }.into(),
            "Beans is ready.",
        ),
        (
            Act::ReadyDish {
                cook,
                dish,
                ready: false,
            },
            DishReady { dish, ready: false }.into(),
            "Beans is not ready yet.",
        ),
        (
            Act::Note {
                cook,
                about,
                text: format!("{text}\u{7} "),
            },
            Noted { about, text }.into(),
            "Written down.",
        ),
        (
            Act::FinishCook { cook },
            CookFinished {}.into(),
            "Regatta is over. It stays in the pit book.",
        ),
    ];
    for (act, payload, said) in table {
        let decision = night.does(act).decision;
        let draft = Draft {
            cook: Some(cook),
            at: NIGHT,
            payload,
        };
        assert_eq!(
            (decision.drafts, decision.said.as_str()),
            (vec![draft], said)
        );
    }
    assert!(!night.cook(cook).is_open());
    assert_eq!(night.cook(cook).dishes[&DishId(dish.0)].ready, None);
}

#[test]
fn a_job_is_skipped_put_off_or_answered() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, at) = (r.cook, night.moment.utc_ms);
    let jobs = [
        Job::Wet(r.butt),
        Job::Serve(cook),
        Job::Silent(r.drum),
        Job::PutAway(r.turkey),
    ];
    for job in jobs {
        let table: [(Act, Payload, &str); 3] = [
            (
                Act::Skip {
                    cook,
                    jobs: vec![job],
                },
                Skipped { job }.into(),
                "Left out this time.",
            ),
            (
                Act::Later {
                    cook,
                    jobs: vec![job],
                    minutes: 15,
                },
                PutOff { job, minutes: 15 }.into(),
                "Later, at 11:15 PM.",
            ),
            (
                Act::Answer { cook, job },
                Answered { job }.into(),
                "Answered.",
            ),
        ];
        for (act, payload, said) in table {
            let decision = night.does(act).decision;
            let draft = Draft {
                cook: Some(cook),
                at,
                payload,
            };
            assert_eq!(
                (decision.drafts, decision.said.as_str()),
                (vec![draft], said)
            );
        }
    }
    assert_eq!(night.cook(cook).answers.len(), 12);
}
