//! What cannot be done to a meat.

use super::*;

#[test]
fn nothing_is_done_to_a_meat_that_cannot_be() {
    let (mut night, r) = Night::on_the_pits();
    let add = Act::AddMeat {
        cook: r.cook,
        meat: meat(Cut::PorkButt, "Late butt", None),
    };
    let late = match night.does(add).decision.made[..] {
        [Subject::Piece(id)] => id,
        ref other => panic!("one meat was made, not {other:?}"),
    };
    let wrap = Wrap::Paper;
    night.does(stage(r.ribs[1], Stage::Wrapped { wrap }));
    let check = |piece, result| Act::Check {
        piece,
        results: vec![result],
        at: None,
    };
    let nothing = Act::Check {
        piece: r.butt,
        results: vec![],
        at: None,
    };
    let names = |n: usize| vec![String::new(); n];
    let split = |n| Act::Split {
        piece: r.butt,
        names: names(n),
    };
    let join = |pieces: &[PieceId]| Act::Join {
        pieces: pieces.to_vec(),
        name: "All".into(),
    };
    let (parts, es_parts) = (
        "Give 2 to 20 different parts.",
        "Da de 2 a 20 partes distintas.",
    );
    let kettle = Some(r.kettle);
    let rows = vec![
        (split(1), parts, es_parts),
        (split(21), parts, es_parts),
        (join(&[r.butt, r.butt]), parts, es_parts),
        (
            join(&[r.butt, r.turkey]),
            "Only meats of one cut",
            "Solo carnes del mismo corte",
        ),
        (
            stage(late, Stage::Wrapped { wrap }),
            "Late butt has not been on a pit yet.",
            "Late butt todavía no ha estado",
        ),
        (
            stage(late, Stage::Unwrapped),
            "Late butt has not been on a pit yet.",
            "Late butt todavía no ha estado",
        ),
        (
            nothing,
            "A check has one to 40 results.",
            "Una revisión tiene de uno a 40",
        ),
        (
            check(r.turkey, TestResult::Bone(BoneShowing::HalfInch)),
            "That test is not for Turkey.",
            "Esa prueba no es para Turkey.",
        ),
        (
            check(r.butt, heat(Mk::from_f(195), Spot::BetweenBones, None)),
            "Butt has no such place.",
            "Butt no tiene ese lugar.",
        ),
        (
            check(r.butt, heat(Mk::from_f(900), Spot::Center, None)),
            "The inside of a meat is between",
            "El interior de una carne está",
        ),
        (
            open(None, &[], &[], &[]),
            "Nothing was chosen.",
            "No elegiste nada.",
        ),
        (
            mop(&[late]),
            "Late butt is not on a pit",
            "Que se sepa, Late butt no está",
        ),
        (
            open(None, &[], &[late], &[]),
            "Late butt is not on a pit",
            "Que se sepa, Late butt no está",
        ),
        (
            open(kettle, &[r.butt], &[], &[]),
            "Butt is on Drum, not on Kettle.",
            "Butt está en Drum, no en Kettle.",
        ),
        (
            mop(&[r.ribs[1]]),
            "Ribs 2 is wrapped.",
            "Ribs 2 está en su envoltura.",
        ),
        (
            open(None, &[], &[], &[r.ribs[1]]),
            "Ribs 2 is wrapped.",
            "Ribs 2 está en su envoltura.",
        ),
        (
            mop(&[r.ribs[0], r.turkey]),
            "One mop must not touch both",
            "Una misma brocha no debe tocar",
        ),
        (
            open(None, &[], &[], &[r.butt, r.turkey]),
            "One mop must not touch both",
            "Una misma brocha no debe tocar",
        ),
    ];
    refuse_all(&mut night, rows);
    night.does(stage(r.turkey, Stage::Off));
    let empty = vec![(
        open(kettle, &[], &[], &[]),
        "Nothing is on Kettle",
        "Que se sepa, no hay nada en Kettle",
    )];
    refuse_all(&mut night, empty);
}
