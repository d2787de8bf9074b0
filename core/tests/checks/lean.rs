//! Loin, tri-tip and sausages: done by temperature alone, at their minimum and the rest that goes with it.

use crate::cases::{NOW, RIGHT, by_hand, f, input, judge, left_in, of};
use slowbend_core::{checks::*, moment::MINUTE, safety::*};

#[test]
fn at_145_the_rest_off_the_fire_must_be_over() {
    for cut in [Cut::PorkLoin, Cut::TriTip] {
        let read = vec![by_hand(Spot::Center, f(145), RIGHT, 2)];
        let mut roast = input(cut, Form::Intact, read);
        let on_the_fire = judge(&roast);
        assert_eq!(on_the_fire.safety.rest_left_ms, Some(3 * MINUTE));
        assert_eq!(
            (on_the_fire.state, on_the_fire.safety.state),
            (DoneState::Close, SafeState::NotSafe)
        );
        assert_eq!(on_the_fire.next_check_minutes, Some(3));
        roast.resting_since = Some(NOW - 3 * MINUTE);
        assert_eq!(
            judge(&roast).safety.rest_left_ms,
            Some(MINUTE),
            "counted from the reading, for that came later"
        );
        roast.now += MINUTE;
        assert_eq!(judge(&roast).state, DoneState::Done);
    }
}

#[test]
fn a_tri_tip_taken_off_at_130_is_not_called_done() {
    let mut rosy = input(
        Cut::TriTip,
        Form::Intact,
        vec![by_hand(Spot::Center, f(130), RIGHT, 20)],
    );
    rosy.resting_since = Some(NOW - 20 * MINUTE);
    let verdict = judge(&rosy);
    assert_eq!(
        (verdict.state, verdict.safety.state),
        (DoneState::NotYet, SafeState::NotSafe)
    );
    let below = Reason::BelowMinimum {
        coldest: f(130),
        minimum: f(145),
    };
    assert_eq!(verdict.reasons[0], below);
}

#[test]
fn fresh_sausages_are_ground_meat_whatever_is_said_of_them() {
    let links = |coldest| {
        vec![
            by_hand(Spot::ThickestOne, f(172), RIGHT, 3),
            by_hand(Spot::CoolSideOne, f(coldest), RIGHT, 2),
            by_hand(Spot::MiddleOne, f(170), RIGHT, 1),
        ]
    };
    for form in [Form::Intact, Form::Unknown, Form::Ground] {
        let judged = |cut, coldest| judge(&input(cut, form, links(coldest))).safety.state;
        assert_eq!(judged(Cut::Sausages, 159), SafeState::NotSafe, "{form:?}");
        assert_eq!(judged(Cut::Sausages, 160), SafeState::Safe, "{form:?}");
        assert_eq!(
            judged(Cut::PoultrySausages, 164),
            SafeState::NotSafe,
            "{form:?}"
        );
        assert_eq!(
            judged(Cut::PoultrySausages, 165),
            SafeState::Safe,
            "{form:?}"
        );
    }
    assert_eq!(of(Cut::Sausages, links(160)).state, DoneState::Done);
    let probe = left_in(Spot::ThickestOne, f(172), RIGHT, 1);
    assert_eq!(
        of(Cut::Sausages, vec![probe]).safety.state,
        SafeState::Unknown
    );
}
