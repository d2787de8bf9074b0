use super::{super::*, *};
use crate::{
    acts::{
        Act,
        decide::testing::{Night, stage},
    },
    cook::Cook,
    ids::{CookId, PieceId},
    log::{Band, Field, PitKind, Stage, Subject, Wrap},
    moment::MINUTE,
    units::Mk,
};

/// The regatta's card, begun on a drum of one's own.
fn begun() -> (Night, CookId, Vec<PieceId>) {
    let mut night = Night::new();
    let drum = night.pit("Drum", PitKind::Drum);
    let card = taken(&regatta()).card;
    let meats = card.meats.iter();
    let begun = Begun {
        name: "Club lunch".into(),
        serve: None,
        people: Some(20),
        meats: meats
            .map(|_| {
                Some(BegunMeat {
                    weight_g: Some(1_700),
                    pit: Some(drum),
                })
            })
            .collect(),
    };
    let viewer = viewer(Locale::EnUs);
    let made = night
        .does(plan(&Words::of(&viewer), &card, &begun))
        .decision
        .made;
    let pieces = made.iter().filter_map(|made| match made {
        Subject::Piece(id) => Some(*id),
        _ => None,
    });
    let pieces = pieces.collect();
    match made[0] {
        Subject::Cook(cook) => (night, cook, pieces),
        other => panic!("a cook was made, not {other:?}"),
    }
}

fn card_of(night: &Night, cook: &Cook, ask: &CardAsk) -> Card {
    let viewer = viewer(Locale::EnUs);
    of_cook(
        &Words::of(&viewer),
        cook,
        night.crew(),
        ask,
        night.moment.utc_ms,
    )
}

#[test]
fn a_card_begins_a_cook_with_all_that_was_meant() {
    let (night, cook, pieces) = begun();
    let cook = night.cook(cook);
    assert_eq!(
        (cook.name.value.as_str(), cook.people.value),
        ("Club lunch", Some(20))
    );
    let names: Vec<&str> = cook
        .meats()
        .map(|piece| piece.name.value.as_str())
        .collect();
    assert_eq!(names, ["Slab one", "Pork butt", "Turkey breast"]);
    let slab = night.piece(pieces[0]);
    let meant = slab.meant.unwrap();
    assert_eq!((meant.wrap, meant.rest_min), (Some(Wrap::Paper), Some(20)));
    assert_eq!(meant.pit.map(|held| held.low), Some(Mk(380_372)));
    assert_eq!(night.piece(pieces[1]).pull_at.value, Some(Mk(368_150)));
    assert_eq!(night.piece(pieces[2]).meant, None);
    let dishes: Vec<&str> = cook
        .dishes
        .values()
        .map(|dish| dish.name.value.as_str())
        .collect();
    assert_eq!(dishes, ["Slaw"]);
    let notes: Vec<&str> = cook.notes.iter().map(|note| note.text.as_str()).collect();
    assert_eq!(
        notes[1],
        "Begun from a cook card by Ann of the rowing club."
    );
}

#[test]
fn one_undo_takes_the_whole_beginning_back() {
    let (mut night, cook, _) = begun();
    let last = night.cook(cook).last_acts.values().next().unwrap().clone();
    night.does(Act::Undo {
        targets: last.entries,
    });
    assert!(!night.knows(cook));
}

#[test]
fn the_card_of_a_cook_reads_back_as_itself() {
    let (night, cook, _) = begun();
    let cook = night.cook(cook);
    let ask = CardAsk {
        by: "  Ben\u{202e} ".into(),
        notes: true,
    };
    let card = card_of(&night, cook, &ask);
    assert_eq!(card.by.as_deref(), Some("Ben"));
    assert_eq!(card.notes.len(), 2);
    assert_eq!(card.pits[0].name, "Drum");
    assert_eq!(
        card.pits[0].held.as_ref().map(|held| held.low_mk),
        Some(380_372)
    );
    let wished = &taken(&regatta()).card.meats;
    for (made, wished) in card.meats.iter().zip(wished) {
        let plan = |meat: &CardMeat| {
            (
                meat.cut,
                meat.form,
                meat.cadence,
                meat.pull_at_mk,
                meat.wrap,
                meat.rest_min,
            )
        };
        assert_eq!(plan(made), plan(wished));
    }
    let text = card.compact();
    let read = taken(&serde_json::from_str(&text).unwrap());
    assert_eq!((read.card, read.told), (card, vec![]));
}

#[test]
fn notes_and_their_author_stay_at_home_unless_asked_for() {
    let (night, cook, _) = begun();
    let card = card_of(&night, night.cook(cook), &CardAsk::default());
    assert_eq!((card.by, card.notes), (None, vec![]));
}

#[test]
fn what_was_done_goes_on_the_card_before_what_was_meant() {
    let (mut night, cook, pieces) = begun();
    let slab = pieces[0];
    let band = Band {
        low: Mk::from_f(250),
        high: Mk::from_f(300),
        minutes: 15,
    };
    let pit = night.piece(slab).pit(night.moment.utc_ms).unwrap().0;
    night.does(Act::SetField {
        of: Subject::Pit(pit),
        to: Field::Band(band),
        saw: None,
    });
    for (minutes, to) in [
        (1, Stage::OnPit { pit }),
        (240, Stage::Wrapped { wrap: Wrap::Foil }),
        (60, Stage::Off),
        (33, Stage::CutUp),
    ] {
        night.pass(minutes * MINUTE);
        night.does(stage(slab, to));
    }
    let card = card_of(&night, night.cook(cook), &CardAsk::default());
    assert_eq!(
        (card.meats[0].wrap, card.meats[0].rest_min),
        (Some(Wrap::Foil), Some(35))
    );
    assert_eq!(
        card.pits[0].held.as_ref().map(|held| Mk(held.low_mk)),
        Some(Mk::from_f(250))
    );
}

#[test]
fn a_meat_that_was_cut_in_parts_is_on_the_card_as_it_came() {
    let (mut night, cook, pieces) = begun();
    night.does(Act::Split {
        piece: pieces[1],
        names: vec!["Flat".into(), "Point".into()],
    });
    let card = card_of(&night, night.cook(cook), &CardAsk::default());
    let names: Vec<_> = card.meats.iter().map(|meat| meat.name.as_deref()).collect();
    assert_eq!(names, [Some("Slab one"), None, None]);
}
