//! What to try when the fire is not as it should be, for every kind of pit.

use super::regatta::{moment, told_until, viewer};
use crate::{
    cook::story::{Story, cook, pit},
    log::{PitAdded, PitKind},
    screens::{self, TroubleKind, TroubleScreen},
    units::Mk,
    words::Locale,
};

fn trouble(story: &Story, of: u128, at: i64) -> TroubleScreen {
    let told = story.told();
    let viewer = viewer(Locale::EnUs);
    screens::trouble(&told.known(1), &viewer, cook(1), pit(of), &moment(at)).unwrap()
}

fn now(screen: &TroubleScreen) -> Vec<TroubleKind> {
    let cards = screen.troubles.iter().filter(|card| card.is_now);
    cards.map(|card| card.trouble).collect()
}

#[test]
fn what_the_readings_show_stands_first() {
    let mut story = told_until(205);
    assert!(now(&trouble(&story, 1, 205)).is_empty());
    story
        .tails
        .take("box", "1", moment(206).utc_ms, Mk::from_f(236));
    assert_eq!(now(&trouble(&story, 1, 206)), [TroubleKind::Falling]);
    story
        .tails
        .take("box", "1", moment(207).utc_ms, Mk::from_f(170));
    let cold = trouble(&story, 1, 207);
    assert_eq!(now(&cold), [TroubleKind::Cold, TroubleKind::Falling]);
    assert_eq!(cold.troubles[0].trouble, TroubleKind::Cold);
    assert_eq!(now(&trouble(&story, 1, 223)), [TroubleKind::Silent]);
    story
        .tails
        .take("box", "1", moment(224).utc_ms, Mk::from_f(390));
    assert_eq!(now(&trouble(&story, 1, 224)), [TroubleKind::Hot]);
    // Nobody reads the kettle, so nothing is said of it.
    assert!(now(&trouble(&story, 2, 224)).is_empty());
}

const KINDS: [PitKind; 7] = [
    PitKind::StickBurner,
    PitKind::Kettle,
    PitKind::Drum,
    PitKind::Ceramic,
    PitKind::Cabinet,
    PitKind::Pellet,
    PitKind::Electric,
];

#[test]
fn every_kind_of_pit_has_steps_and_says_what_it_means_for_the_food() {
    let mut story = told_until(205);
    for (of, kind) in (10..).zip(KINDS) {
        let added = PitAdded {
            pit: pit(of),
            name: "Another".into(),
            kind,
            grate_cm2: None,
            alone_minutes: None,
        };
        story.say(1, moment(1).utc_ms, None, added);
        let screen = trouble(&story, of, 205);
        assert_eq!(screen.troubles.len(), 7);
        for card in &screen.troubles {
            assert!(card.steps.len() >= 3, "{kind:?} {:?}", card.trouble);
            let last = card.food.last().unwrap();
            assert!(
                last.text.contains("Local rules"),
                "{kind:?} {:?}",
                card.trouble
            );
            let charcoal = card
                .cautions
                .iter()
                .any(|one| one.text.contains("carbon monoxide"));
            let burns = !matches!(kind, PitKind::Pellet | PitKind::Electric);
            assert_eq!(charcoal, burns, "{kind:?} {:?}", card.trouble);
        }
    }
}

#[test]
fn burning_fat_gets_the_lid_first_no_air_and_no_water() {
    let story = told_until(205);
    let screen = trouble(&story, 1, 205);
    let card = screen
        .troubles
        .iter()
        .find(|card| card.trouble == TroubleKind::FlareUp);
    let card = card.unwrap();
    assert!(card.steps[0].starts_with("Lid on"));
    assert!(card.steps[1].starts_with("Shut every vent"));
    assert!(card.steps[2].starts_with("No water"));
    assert!(card.cautions[0].text.contains("Never water"));
    assert_eq!(card.cautions[0].source, "common practice, no source");
}
