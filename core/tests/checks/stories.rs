//! Verdicts as a cook would meet them.

use crate::{
    cases::{NOW, RIGHT, by_hand, f, felt, input, judge, left_in, of},
    turkey::turkey,
};
use slowbend_core::{checks::*, moment::MINUTE, safety::*};

const CRACKS: TestResult = TestResult::Lifted(Bend::Cracks);
const SLIDES: TestResult = TestResult::Probed(ProbeFeel::Slides);

#[test]
fn ribs_that_crack_are_tender_until_a_reading_between_the_bones_shows_the_minimum() {
    let felt_only = of(Cut::SpareRibs, vec![felt(CRACKS, 1)]);
    assert_eq!(
        (felt_only.state, felt_only.safety.state),
        (DoneState::TenderOnly, SafeState::Unknown)
    );
    assert_eq!(felt_only.next_check_minutes, Some(0));
    assert!(felt_only.reasons.contains(&Reason::TemperatureNotShown));
    assert!(felt_only.reasons.contains(&Reason::SpotsMissing {
        spots: vec![Spot::BetweenBones]
    }));
    let read = of(
        Cut::SpareRibs,
        vec![
            felt(CRACKS, 1),
            by_hand(Spot::BetweenBones, f(199), RIGHT, 0),
        ],
    );
    assert_eq!(
        (read.state, read.safety.state),
        (DoneState::Done, SafeState::Safe)
    );
    let probe = of(
        Cut::SpareRibs,
        vec![
            felt(CRACKS, 1),
            left_in(Spot::BetweenBones, f(199), RIGHT, 0),
        ],
    );
    assert_eq!(probe.state, DoneState::TenderOnly);
    assert!(probe.reasons.contains(&Reason::ReadByHand));
}

/// Ribs, shoulder and brisket are done far above 145 °F: whatever the feel and the rest, that is no word of theirs.
#[test]
fn at_145_and_a_rest_nothing_that_is_done_by_feel_is_called_done() {
    for cut in Cut::ALL {
        let facts = cut_facts(*cut);
        if !facts.is_done_far_above() {
            continue;
        }
        let read = facts
            .spots
            .iter()
            .map(|spot| by_hand(*spot, f(145), RIGHT, 5));
        let checks = [felt(CRACKS, 1), felt(SLIDES, 1)].into_iter().chain(read);
        let mut meat = input(*cut, Form::Intact, checks.collect());
        meat.resting_since = Some(NOW - 4 * MINUTE);
        let verdict = judge(&meat);
        assert!(!verdict.state.says_done(), "{cut:?} {verdict:?}");
        let says = |reason: Reason| verdict.reasons.contains(&reason);
        assert!(
            says(Reason::ToughAtMinimum { coldest: f(145) }),
            "{verdict:?}"
        );
        assert!(says(Reason::FeelAheadOfTemperature), "{verdict:?}");
        assert!(
            !says(Reason::MinimumShown { coldest: f(145) }),
            "{verdict:?}"
        );
    }
}

#[test]
fn a_butt_is_done_by_feel_inside_its_range_and_over_beyond_it() {
    let at = |degrees, feel| {
        of(
            Cut::PorkButt,
            vec![
                felt(TestResult::Probed(feel), 1),
                left_in(Spot::Center, f(degrees), RIGHT, 1),
            ],
        )
    };
    assert_eq!(at(199, ProbeFeel::Slides).state, DoneState::Done);
    assert_eq!(at(199, ProbeFeel::Grabs).state, DoneState::Close);
    assert_eq!(at(199, ProbeFeel::Tight).state, DoneState::NotYet);
    assert!(
        at(199, ProbeFeel::Tight)
            .reasons
            .contains(&Reason::FeelBehindTemperature)
    );
    assert_eq!(at(188, ProbeFeel::Slides).state, DoneState::Close);
    assert!(
        at(188, ProbeFeel::Slides)
            .reasons
            .contains(&Reason::FeelAheadOfTemperature)
    );
    assert_eq!(at(212, ProbeFeel::Slides).state, DoneState::Overdone);
    assert_eq!(at(140, ProbeFeel::Slides).state, DoneState::NotYet);
}

#[test]
fn injected_meat_needs_more_and_stuffed_meat_needs_its_stuffing_read() {
    let checks = vec![by_hand(Spot::Center, f(150), RIGHT, 5)];
    let mut loin = input(Cut::PorkLoin, Form::Injected, checks);
    loin.resting_since = Some(NOW - 4 * MINUTE);
    for form in [Form::Injected, Form::Unknown] {
        loin.form = form;
        assert_eq!(judge(&loin).safety.state, SafeState::NotSafe);
    }
    loin.form = Form::Intact;
    assert_eq!(judge(&loin).state, DoneState::Done);
    let mut stuffed = input(Cut::TurkeyBreast, Form::Stuffed, turkey(170, 170, 170));
    assert_eq!(judge(&stuffed).safety.state, SafeState::Unknown);
    assert!(judge(&stuffed).reasons.contains(&Reason::SpotsMissing {
        spots: vec![Spot::StuffingCenter]
    }));
    stuffed
        .checks
        .push(by_hand(Spot::StuffingCenter, f(165), RIGHT, 0));
    assert_eq!(judge(&stuffed).safety.state, SafeState::Safe);
}

#[test]
fn old_results_disagreeing_feels_and_wet_bark_are_said() {
    let checks = vec![
        felt(CRACKS, 31),
        felt(TestResult::Probed(ProbeFeel::Tight), 2),
        felt(TestResult::Bark(BarkSet::WipesOff), 2),
        felt(TestResult::Color(WrapCall::ColorRight), 2),
    ];
    let verdict = of(Cut::SpareRibs, checks);
    assert_eq!(verdict.state, DoneState::NotYet);
    for said in [
        Reason::Stale {
            test: Test::Bend,
            minutes: 31,
        },
        Reason::FeelsDisagree,
        Reason::WrapWouldSmear,
    ] {
        assert!(verdict.reasons.contains(&said), "{said:?} in {verdict:?}");
    }
}

#[test]
fn what_cannot_be_read_and_must_not_be_ignored_stops_the_verdict() {
    let mut butt = input(
        Cut::PorkButt,
        Form::Intact,
        vec![
            felt(SLIDES, 1),
            left_in(Spot::Center, f(200), Standing::Unchecked, 1),
        ],
    );
    butt.unknown_must_understand = true;
    let verdict = judge(&butt);
    assert_eq!(
        (verdict.state, verdict.safety.state),
        (DoneState::UpdateToJudge, SafeState::Unknown)
    );
    assert_eq!(verdict.reasons, [Reason::UpdateFirst, Reason::Unchecked]);
    assert!(verdict.say_unchecked);
}

#[test]
fn with_nothing_tried_nothing_is_said_but_to_check_now() {
    for cut in Cut::ALL {
        let verdict = of(*cut, vec![]);
        assert_eq!(
            (verdict.state, verdict.next_check_minutes),
            (DoneState::CannotSay, Some(0))
        );
        assert!(!verdict.say_unchecked);
    }
}

#[test]
fn of_two_results_at_one_instant_the_less_done_counts_and_else_the_later() {
    let lifted = |bend, ago| felt(TestResult::Lifted(bend), ago);
    let heat = by_hand(Spot::BetweenBones, f(199), RIGHT, 0);
    let state = |first, second| of(Cut::SpareRibs, vec![first, second, heat]).state;
    assert_eq!(
        state(lifted(Bend::Cracks, 1), lifted(Bend::Stiff, 1)),
        DoneState::NotYet
    );
    assert_eq!(
        state(lifted(Bend::Stiff, 1), lifted(Bend::Cracks, 1)),
        DoneState::NotYet
    );
    assert_eq!(
        state(lifted(Bend::Cracks, 1), lifted(Bend::Stiff, 2)),
        DoneState::Done
    );
    assert_eq!(
        state(lifted(Bend::Cracks, 2), lifted(Bend::Stiff, 1)),
        DoneState::NotYet
    );
}

/// 155 °F, ten minutes later 158 °F, and 155 °F again a minute after: the last word is not hot enough to skip the rest.
#[test]
fn a_colder_reading_right_after_a_hot_one_asks_for_the_rest_again() {
    let read = |degrees, minutes_ago| by_hand(Spot::BetweenBones, f(degrees), RIGHT, minutes_ago);
    let judged = |checks| of(Cut::SpareRibs, checks).safety.state;
    assert_eq!(judged(vec![read(158, 1)]), SafeState::Safe);
    let cooler = vec![read(158, 1), read(155, 0)];
    assert_eq!(judged(cooler), SafeState::NotSafe);
    let risen = vec![read(155, 11), read(158, 1), read(155, 0)];
    assert_eq!(judged(risen), SafeState::NotSafe);
}
