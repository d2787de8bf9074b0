//! The wrong cook, or the wrong thing.

use super::*;

#[test]
fn nothing_is_recorded_in_the_wrong_cook_or_on_the_wrong_thing() {
    let (mut night, r) = Night::on_the_pits();
    let other = match night.does(start("Class", vec![])).decision.made[..] {
        [Subject::Cook(id)] => id,
        ref other => panic!("one cook was made, not {other:?}"),
    };
    let unused = night.pit("Spare", PitKind::Electric);
    let in_butt = || Where::Piece {
        piece: r.butt,
        spot: String::new(),
    };
    let (elsewhere, es_elsewhere) = ("Butt belongs to another cook.", "Butt es de otra cocción.");
    let (no_job, es_job) = (
        "That is nothing to be done in this cook.",
        "Eso no es tarea de esta cocción.",
    );
    let (not_its, es_not_its) = ("That cannot be set here.", "Eso no se puede poner aquí.");
    let read = Act::Read {
        cook: other,
        place: in_butt(),
        thermometer: None,
        temp: Mk::from_f(200),
        at: None,
    };
    let note = Act::Note {
        cook: other,
        about: Subject::Piece(r.butt),
        text: "x".into(),
    };
    let rows = vec![
        (read, elsewhere, es_elsewhere),
        (note, elsewhere, es_elsewhere),
        (
            Act::Answer {
                cook: other,
                job: Job::Check(r.butt),
            },
            elsewhere,
            es_elsewhere,
        ),
        (
            Act::Answer {
                cook: other,
                job: Job::Serve(r.cook),
            },
            no_job,
            es_job,
        ),
        (
            Act::Skip {
                cook: r.cook,
                jobs: vec![Job::FireRound(unused)],
            },
            no_job,
            es_job,
        ),
        (
            set(Subject::Crew, Field::Name("x".into())),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Pit(r.drum), Field::People(None)),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Cook(r.cook), Field::WeightG(None)),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Piece(r.butt), Field::Serve(None)),
            not_its,
            es_not_its,
        ),
    ];
    refuse_all(&mut night, rows);
    night.does(Act::FinishCook { cook: other });
    let over = vec![(
        Act::FinishCook { cook: other },
        "Class is over already.",
        "Class ya terminó.",
    )];
    refuse_all(&mut night, over);
}
