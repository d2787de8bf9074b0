//! Chicken as a cook would meet it: three places by hand, the coldest counts, and no joint or color speaks for them.

use crate::cases::{RIGHT, by_hand, f, felt, left_in, of};
use slowbend_core::checks::*;

const LOOSE: TestResult = TestResult::Twisted(Joint::Loose);

fn bird(breast: i64, thigh: i64, wing: i64) -> Vec<DatedResult> {
    vec![
        by_hand(Spot::BreastThick, f(breast), RIGHT, 3),
        by_hand(Spot::ThighInner, f(thigh), RIGHT, 2),
        by_hand(Spot::WingInner, f(wing), RIGHT, 1),
    ]
}

#[test]
fn half_a_bird_passes_on_the_coldest_of_three_places() {
    for cut in [Cut::ChickenHalf, Cut::ChickenWhole] {
        assert_eq!(of(cut, bird(166, 172, 168)).state, DoneState::Done);
        let cold = of(cut, bird(166, 164, 175));
        assert_eq!(
            (cold.state, cold.safety.state),
            (DoneState::Close, SafeState::NotSafe)
        );
        let two = of(cut, bird(170, 175, 172)[..2].to_vec());
        assert_eq!(two.safety.state, SafeState::Unknown);
        let wing = vec![Spot::WingInner];
        assert!(two.reasons.contains(&Reason::SpotsMissing { spots: wing }));
    }
}

#[test]
fn a_loose_joint_says_when_to_read_and_never_that_it_is_done() {
    let turned = |joint| of(Cut::ChickenHalf, vec![felt(TestResult::Twisted(joint), 0)]);
    let (stiff, gives, loose) = (
        turned(Joint::Stiff),
        turned(Joint::Gives),
        turned(Joint::Loose),
    );
    assert_eq!(
        (stiff.state, stiff.next_check_minutes),
        (DoneState::NotYet, Some(15))
    );
    assert_eq!(
        (gives.state, gives.next_check_minutes),
        (DoneState::Close, Some(10))
    );
    assert_eq!(
        (loose.state, loose.next_check_minutes),
        (DoneState::Close, Some(0))
    );
    assert_eq!(loose.safety.state, SafeState::Unknown);
    let mut cold = bird(150, 150, 150);
    cold.push(felt(LOOSE, 0));
    assert!(!of(Cut::ChickenHalf, cold).state.says_done());
    let ribs = of(Cut::SpareRibs, vec![felt(LOOSE, 0)]);
    assert_eq!(ribs.state, DoneState::CannotSay, "it tells little of ribs");
}

#[test]
fn thighs_are_safe_at_165_and_good_at_175() {
    let thighs = |degrees| {
        [Spot::ThickestOne, Spot::CoolSideOne, Spot::MiddleOne]
            .map(|spot| by_hand(spot, f(degrees), RIGHT, 1))
            .to_vec()
    };
    let at = |degrees| {
        let verdict = of(Cut::ChickenThighs, thighs(degrees));
        (verdict.state, verdict.safety.state)
    };
    assert_eq!(at(164), (DoneState::NotYet, SafeState::NotSafe));
    assert_eq!(at(166), (DoneState::Close, SafeState::Safe));
    assert_eq!(at(178), (DoneState::Done, SafeState::Safe));
    let probes = thighs(178).into_iter().map(|read| match read.result {
        TestResult::Heat(heat) => left_in(heat.spot, heat.mk, RIGHT, 1),
        _ => read,
    });
    let left = of(Cut::ChickenThighs, probes.collect());
    assert_eq!(left.safety.state, SafeState::Unknown);
}
