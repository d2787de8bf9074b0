//! What the fold must not let through, however it got into the log.

use crate::{
    cadence::Cadence,
    checks::Cut,
    cook::story::{SIX, Story, cook, piece},
    ids::CookId,
    log::{CookStarted, Part, PieceAdded, PiecesJoined},
    safety::Form,
};

fn begins(story: &mut Story, within: CookId, id: CookId) {
    let fact = CookStarted {
        id,
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        demo: false,
    };
    story.say(1, SIX, Some(within), fact);
}

#[test]
fn a_cook_does_not_begin_with_the_beginning_of_another() {
    let mut story = Story::default();
    begins(&mut story, cook(1), cook(1));
    begins(&mut story, cook(2), cook(1));
    let told = story.told();
    let ids: Vec<CookId> = told.known(1).open_cooks().map(|cook| cook.id).collect();
    assert_eq!(ids, [cook(1)]);
}

fn joined(parts: &[(Cut, Form)]) -> (Cut, Form) {
    let mut story = Story::default();
    begins(&mut story, cook(1), cook(1));
    for (number, (cut, form)) in (1..).zip(parts) {
        let fact = PieceAdded {
            piece: piece(number),
            name: "Part".into(),
            cut: *cut,
            form: *form,
            weight_g: None,
            cadence: Cadence::None,
        };
        story.say(1, SIX, Some(cook(1)), fact);
    }
    let into = Part {
        piece: piece(9),
        name: "All".into(),
        weight_g: None,
    };
    let pieces = (1..=parts.len() as u128).map(piece).collect();
    story.say(1, SIX, Some(cook(1)), PiecesJoined { pieces, into });
    let told = story.told();
    let (_, all) = told.known(1).piece(piece(9)).unwrap();
    (all.cut, all.form.value)
}

#[test]
fn what_is_joined_is_judged_by_the_strictest_of_its_parts() {
    let (turkey, butt) = (Cut::TurkeyBreast, Cut::PorkButt);
    let stuffed = (turkey, Form::Stuffed);
    assert_eq!(joined(&[stuffed, (turkey, Form::Intact)]), stuffed);
    assert_eq!(joined(&[(turkey, Form::Intact), stuffed]), stuffed);
    let mixed = [(butt, Form::Intact), (turkey, Form::Intact)];
    assert_eq!(joined(&mixed), mixed[1]);
    let raised = (butt, Form::Injected);
    assert_eq!(joined(&[raised, (butt, Form::Intact)]), raised);
}
