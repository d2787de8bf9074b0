//! What a slip of a greasy hand must not do is asked about first, on every screen and in every shell.

use super::regatta::{moment, told_until, viewer};
use crate::{
    acts::Act,
    cook::story::{cook, piece},
    screens::{self, Button, Tone},
    words::Locale,
};

fn asks(button: &Button) -> bool {
    button
        .confirm
        .as_ref()
        .is_some_and(|question| question.contains('?'))
}

/// The headline's buttons and those of each meat, every five minutes of the regatta lunch.
fn each(locale: Locale, mut see: impl FnMut(bool, &Button)) {
    for at in (-240..640).step_by(5) {
        let told = told_until(at).told();
        let (known, viewer) = (told.known(1), viewer(locale));
        let now = screens::pitside(&known, &viewer, cook(1), &moment(at)).unwrap();
        now.now.buttons.iter().for_each(|button| see(true, button));
        for of in [1, 2, 3, 4] {
            let meat = screens::piece(&known, &viewer, piece(of), &moment(at)).unwrap();
            meat.buttons.iter().for_each(|button| see(false, button));
        }
    }
}

#[test]
fn leaving_out_ending_for_good_and_on_the_propped_phone_a_new_stage_are_asked_about_first() {
    for locale in Locale::ALL {
        let (mut skips, mut stages) = (0, 0);
        each(locale, |propped, button| match button.act {
            Act::Skip { .. } => {
                skips += 1;
                assert!(button.tone == Tone::Grave && asks(button), "{button:?}");
            }
            Act::SetStage { .. } if propped => {
                stages += 1;
                assert!(asks(button), "{button:?}");
            }
            _ => assert_eq!(button.tone == Tone::Grave, asks(button), "{button:?}"),
        });
        assert!(skips > 50 && stages > 0, "{skips} skips, {stages} stages");
    }
}

#[test]
fn each_meat_has_its_brief_and_any_number_left_out_can_be_counted() {
    for at in (-240..640).step_by(30) {
        let told = told_until(at).told();
        let screen = screens::pitside(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(at));
        let screen = screen.unwrap();
        assert_eq!(screen.briefs.len(), screen.meats.len());
        assert!(screen.briefs.iter().all(|brief| !brief.is_empty()));
        assert_eq!(screen.counts.len(), screen.meats.len().saturating_sub(1));
        assert!(
            screen
                .counts
                .iter()
                .skip(1)
                .all(|text| text.contains(char::is_numeric))
        );
    }
}

#[test]
fn a_brief_says_when_then_what_the_checks_say_then_where_it_is() {
    let told = told_until(205).told();
    let screen = screens::pitside(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(205));
    assert_eq!(
        screen.unwrap().briefs,
        ["late", "late", "30 min", "Not started"]
    );
}
