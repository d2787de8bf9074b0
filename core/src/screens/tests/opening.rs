//! The opening, the pits, the dishes and the watch of the regatta lunch.

use super::regatta::{moment, told_until, viewer};
use crate::{
    acts::decide::{Context, Owner, decide},
    cook::story::{cook, device, piece, pit},
    forms::{self, OpeningMeatTyped, OpeningTyped},
    ids::{DishId, Names},
    log::{DishAdded, DishReady, EntryKey, PieceMoved},
    screens::{self, OpeningDoes, OpeningScreen, Weight},
    words::Locale,
};
use uuid::Uuid;

fn opening(at: i64, of: u128) -> OpeningScreen {
    let told = told_until(at).told();
    let viewer = viewer(Locale::EnUs);
    screens::opening(&told.known(1), &viewer, cook(1), pit(of), &moment(at)).unwrap()
}

fn chosen(screen: &OpeningScreen) -> Vec<(&str, OpeningDoes)> {
    let all = screen.meats.iter().flat_map(|meat| {
        let chosen = meat.choices.iter().filter(|choice| choice.chosen);
        chosen.map(|choice| (meat.name.as_str(), choice.does))
    });
    all.collect()
}

#[test]
fn what_is_due_is_chosen_already_and_an_answer_never_is() {
    let asked = opening(165, 1);
    assert!(chosen(&asked).is_empty());
    let rub = &asked.meats[0].choices[0];
    assert_eq!((rub.does, rub.chosen), (OpeningDoes::RubSet, false));
    let late = opening(210, 1);
    assert_eq!(
        chosen(&late),
        [("Slab 1", OpeningDoes::Wet), ("Slab 2", OpeningDoes::Wet)]
    );
    assert!(late.lead.contains("this one opening"), "{}", late.lead);
    let told = |step: &String| step.contains("Slab 1 and Slab 2");
    assert!(late.order.iter().any(told), "{:?}", late.order);
}

#[test]
fn a_wrapped_meat_is_not_mopped() {
    let screen = opening(250, 1);
    let slab = screen
        .meats
        .iter()
        .find(|meat| meat.name == "Slab 1")
        .unwrap();
    let does: Vec<OpeningDoes> = slab.choices.iter().map(|choice| choice.does).collect();
    assert_eq!(does, [OpeningDoes::Turn]);
}

/// The law of the screen: what is chosen already may be recorded as it stands.
#[test]
fn what_is_chosen_already_is_taken_as_it_stands() {
    let mut taken = 0;
    for at in (120..470).step_by(7) {
        let told = told_until(at).told();
        let (known, viewer, moment) = (told.known(1), viewer(Locale::EnUs), moment(at));
        for of in [1, 2] {
            let screen = screens::opening(&known, &viewer, cook(1), pit(of), &moment).unwrap();
            if screen.meats.is_empty() {
                continue;
            }
            let meat = |meat: &screens::OpeningMeat| OpeningMeatTyped {
                piece: meat.piece,
                does: meat
                    .choices
                    .iter()
                    .filter(|c| c.chosen)
                    .map(|c| c.does)
                    .collect(),
                chosen: vec![],
                spots: vec![],
                left_in: false,
                note: String::new(),
            };
            let typed = OpeningTyped {
                pit: screen.pit,
                meats: screen.meats.iter().map(meat).collect(),
                thermometer: None,
                at: None,
            };
            let act = forms::opening(&viewer, &typed).unwrap();
            let owner = |_: &EntryKey| None::<Owner>;
            let mut context = Context {
                known,
                viewer: &viewer,
                moment: &moment,
                owner: &owner,
                names: &mut Names::new([1; 32]),
            };
            if let Err(refused) = decide(&mut context, &act) {
                panic!("at {at}: {typed:?}: {refused}");
            }
            taken += 1;
        }
    }
    assert!(taken > 40, "only {taken} openings were tried");
}

#[test]
fn meats_go_one_place_on_once_their_places_are_said() {
    let mut story = told_until(200);
    let pits = |story: &crate::cook::story::Story| {
        let told = story.told();
        screens::pits(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(206)).unwrap()
    };
    let label = |screen: &screens::PitsScreen| screen.pits[0].buttons[0].label.clone();
    assert_eq!(label(&pits(&story)), "Turned all of them");
    for (of, spot) in [(1, "upper"), (2, "lower"), (3, "middle")] {
        let moved = PieceMoved {
            piece: piece(of),
            pit: pit(1),
            spot: spot.into(),
        };
        story.say(1, moment(201).utc_ms, Some(cook(1)), moved);
    }
    let screen = pits(&story);
    assert_eq!(label(&screen), "All one place on");
    let placed: Vec<(&str, &str)> = screen.pits[0]
        .meats
        .iter()
        .map(|meat| (meat.name.as_str(), meat.spot.as_str()))
        .collect();
    assert_eq!(
        placed,
        [("Slab 2", "lower"), ("Butt", "middle"), ("Slab 1", "upper")]
    );
    assert_eq!(screen.pits[0].spots[..3], ["lower", "middle", "upper"]);
}

#[test]
fn a_dish_that_stood_for_two_hours_asks_for_an_eye_and_is_never_called_safe() {
    let mut story = told_until(200);
    let (beans, slaw) = (DishId(Uuid::from_u128(1)), DishId(Uuid::from_u128(2)));
    for (dish, name, hot) in [(beans, "Beans", true), (slaw, "Slaw", false)] {
        let name = name.to_string();
        story.say(
            1,
            moment(201).utc_ms,
            Some(cook(1)),
            DishAdded { dish, name, hot },
        );
    }
    let ready = DishReady {
        dish: beans,
        ready: true,
    };
    story.say(1, moment(210).utc_ms, Some(cook(1)), ready);
    let weights = |at: i64| {
        let told = story.told();
        let screen = screens::dishes(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(at));
        let screen = screen.unwrap();
        for card in &screen.dishes {
            let said = format!("{} {}", card.state, card.detail).to_lowercase();
            assert!(!said.contains("safe"), "{said}");
        }
        let all = screen.dishes.iter();
        all.map(|card| (card.name.clone(), card.weight))
            .collect::<Vec<_>>()
    };
    let told = |beans, slaw| [("Beans".to_string(), beans), ("Slaw".to_string(), slaw)];
    assert_eq!(weights(220), told(Weight::Calm, Weight::Calm));
    assert_eq!(weights(301), told(Weight::Soon, Weight::Calm));
    assert_eq!(weights(330), told(Weight::Call, Weight::Calm));
    // Half an hour before serving, what is not ready is due too.
    assert_eq!(weights(450), told(Weight::Call, Weight::Call));
}

#[test]
fn the_line_of_the_watch_is_written_from_what_is_known_and_fits_an_act() {
    let told = told_until(205).told();
    let shown = |on: u128| {
        let viewer = crate::words::Viewer {
            device: device(on),
            ..viewer(Locale::EnUs)
        };
        screens::watch(&told.known(on), &viewer, cook(1), &moment(205)).unwrap()
    };
    let (mine, other) = (shown(2), shown(1));
    assert!(mine.is_mine && !other.is_mine);
    assert_eq!(other.submit, "I have the watch");
    assert_eq!(mine.submit, "Leave this line");
    assert!(
        other.note.starts_with("Drum 252 °F at 9:25 AM."),
        "{}",
        other.note
    );
    assert!(other.note.contains("Next: Mop"), "{}", other.note);
    assert!(other.note.chars().count() <= 200);
    assert!(other.held[0].contains("steady"), "{:?}", other.held);
}
