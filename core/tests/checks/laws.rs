//! The laws, each asked in its own words of the input, without the code that they judge.

use crate::{
    any_input::any_input,
    cases::{NOW, judge},
};
use proptest::{prelude::*, strategy::ValueTree, test_runner::TestRunner};
use slowbend_core::{checks::*, moment::MINUTE, safety::*, units::Mk};

/// A reading, corrected in this file's own way.
struct Seen {
    at: i64,
    spot: Spot,
    mk: i64,
    instant: bool,
}

/// What a reading is worth: exact fractions of a Fahrenheit degree (1 °F = 5000/9 mK), half a millikelvin forgiven.
fn worth(raw: i64, standing: Standing) -> Option<i64> {
    let Standing::Checked { off_mk, .. } = standing else {
        return Some(raw);
    };
    let ninths = off_mk.abs() * 9 - 4;
    match ninths {
        n if n > 25_000 => None,
        n if n > 10_000 => Some(raw - off_mk),
        _ => Some(raw.min(raw - off_mk)),
    }
}

fn readings(input: &VerdictInput) -> Vec<Seen> {
    let read = |check: &DatedResult| match check.result {
        TestResult::Heat(heat) => Some(Seen {
            at: check.at,
            spot: heat.spot,
            mk: worth(heat.mk.0, check.standing?)?,
            instant: heat.instant_read,
        }),
        _ => None,
    };
    input.checks.iter().filter_map(read).collect()
}

/// Places of the cut, how many are needed, and whether by hand: as the trade and the design state them.
fn places(cut: Cut) -> (&'static [Spot], usize, bool) {
    use Spot::*;
    match cut {
        Cut::SpareRibs | Cut::SpareRibsTrimmed | Cut::BabyBackRibs | Cut::BeefBackRibs => {
            (&[BetweenBones], 1, true)
        }
        Cut::PorkButt | Cut::LambShoulder => (&[Center, NearBladeBone], 1, false),
        Cut::PorkPicnic => (&[Center, NearBone], 1, false),
        Cut::PorkBelly | Cut::PorkLoin | Cut::TriTip => (&[Center], 1, false),
        Cut::Brisket => (&[FlatThick, PointThick], 1, false),
        Cut::BrisketFlat => (&[FlatThick], 1, false),
        Cut::BrisketPoint => (&[PointThick], 1, false),
        Cut::PlateRibs => (&[OverBone, BetweenBones], 1, false),
        Cut::ChickenWhole | Cut::ChickenHalf => (&[BreastThick, ThighInner, WingInner], 3, true),
        Cut::TurkeyBreast => (&[UpperThick, LowerThick, InnerBreastbone], 3, true),
        Cut::ChickenThighs | Cut::Sausages | Cut::PoultrySausages => {
            (&[ThickestOne, CoolSideOne, MiddleOne], 3, true)
        }
    }
}

/// The published minimum in °F, its rest in seconds, and from where on none is needed, restated by hand.
fn restated(cut: Cut, form: Form) -> (i64, i64, i64) {
    match (cut, form) {
        (
            Cut::TurkeyBreast
            | Cut::ChickenWhole
            | Cut::ChickenHalf
            | Cut::ChickenThighs
            | Cut::PoultrySausages,
            _,
        )
        | (_, Form::Stuffed) => (165, 0, 165),
        (_, Form::Ground) | (Cut::Sausages, _) => (160, 0, 160),
        (_, Form::Intact) => (145, 180, 158),
        (_, Form::Injected | Form::Tenderised | Form::Rolled | Form::Unknown) => (155, 17, 158),
    }
}

/// Ribs, shoulder, belly and brisket: tough at their minimum, done far above it.
fn is_tough_at_minimum(cut: Cut) -> bool {
    !matches!(cut, Cut::PorkLoin | Cut::TriTip | Cut::Sausages) && places(cut).1 == 1
}

/// By brute force: some set of enough places, read hot within ten minutes, each not cold since, and rested.
fn shown(input: &VerdictInput) -> bool {
    let all = readings(input);
    let (spots, needed, hand) = places(input.cut);
    let (temp, rest_s, at_once) = restated(input.cut, input.form);
    let mk = |f| Mk::from_f(f).0;
    let good: Vec<&Seen> = all
        .iter()
        .filter(|r| r.mk >= mk(temp) && (r.instant || !hand))
        .filter(|r| {
            !all.iter()
                .any(|o| o.spot == r.spot && o.at >= r.at && o.mk < mk(temp))
        })
        .collect();
    good.iter().any(|first| {
        let pass: Vec<_> = good
            .iter()
            .filter(|r| (first.at..=first.at + 10 * MINUTE).contains(&r.at))
            .collect();
        let read = |spot: &Spot| pass.iter().any(|r| r.spot == *spot);
        let enough = spots.iter().filter(|spot| read(spot)).count() >= needed;
        let stuffing = input.form != Form::Stuffed || read(&Spot::StuffingCenter);
        let hot = spots.iter().all(|s| {
            pass.iter()
                .filter(|r| r.spot == *s)
                .all(|r| r.mk >= mk(at_once))
        });
        let rested = input
            .resting_since
            .is_some_and(|since| input.now - since.max(first.at) >= rest_s * 1000);
        enough && stuffing && (hot || rested || rest_s == 0)
    })
}

/// All laws, on one input.
pub fn hold(input: &VerdictInput) {
    let verdict = judge(input);
    let done = matches!(verdict.state, DoneState::Done | DoneState::Overdone);
    let safe = verdict.safety.state == SafeState::Safe;
    let case = || format!("{input:#?}\n{verdict:#?}");
    assert!(!done || safe, "done and not safe\n{}", case());
    assert!(!safe || shown(input), "safe and not shown\n{}", case());
    let early = verdict.safety.coldest.is_none_or(|mk| mk < Mk::from_f(180));
    assert!(
        !(done && early && is_tough_at_minimum(input.cut)),
        "done where it is tough still\n{}",
        case()
    );
    let newest = readings(input).iter().map(|r| (r.at, -r.mk)).max();
    let cold = |(_, mk): (i64, i64)| -mk < Mk::from_f(restated(input.cut, input.form).0).0;
    assert!(
        !(safe && newest.is_none_or(cold)),
        "safe, and the newest reading is cold\n{}",
        case()
    );
    let unchecked = input
        .checks
        .iter()
        .any(|check| check.standing == Some(Standing::Unchecked));
    assert!(
        !unchecked || verdict.say_unchecked,
        "an unchecked thermometer is not said\n{}",
        case()
    );
    assert_eq!(
        verdict.say_unchecked,
        verdict.reasons.contains(&Reason::Unchecked),
        "{}",
        case()
    );
    assert_eq!(
        verdict.cautions.last(),
        Some(&CautionKind::LocalRulesFirst),
        "{}",
        case()
    );
    assert!(
        !verdict.reasons.is_empty(),
        "no reason is given\n{}",
        case()
    );
    let update = verdict.state == DoneState::UpdateToJudge;
    assert_eq!(update, input.unknown_must_understand, "{}", case());
    assert_eq!(
        verdict.next_check_minutes.is_none(),
        done || update,
        "{}",
        case()
    );
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_path_breaks_a_law(input in any_input()) {
        hold(&input);
    }

    #[test]
    fn the_order_in_which_results_arrive_changes_nothing(input in any_input(), turn in 0usize..14) {
        let mut turned = input.clone();
        turned.checks.reverse();
        let middle = turn.min(turned.checks.len());
        turned.checks.rotate_left(middle);
        prop_assert_eq!(judge(&input), judge(&turned));
    }

    #[test]
    fn a_colder_newest_reading_never_makes_a_meat_safe(input in any_input()) {
        let mut colder = input.clone();
        let heat = Temperature { mk: Mk::from_f(120), spot: Spot::Elsewhere, thermometer: None, instant_read: false };
        colder.checks.push(DatedResult { result: TestResult::Heat(heat), at: NOW, standing: Some(Standing::Unchecked) });
        prop_assert!(!judge(&colder).state.says_done());
        prop_assert!(judge(&colder).safety.state != SafeState::Safe);
    }

    #[test]
    fn bark_and_color_change_neither_state_nor_safety(input in any_input()) {
        let mut fewer = input.clone();
        fewer.checks.retain(|check| !matches!(check.result, TestResult::Bark(_) | TestResult::Color(_)));
        let (all, few) = (judge(&input), judge(&fewer));
        prop_assert_eq!((all.state, all.safety, all.next_check_minutes), (few.state, few.safety, few.next_check_minutes));
    }

    #[test]
    fn tests_that_tell_little_about_a_cut_change_neither_state_nor_safety(input in any_input()) {
        let facts = cut_facts(input.cut);
        let mut fewer = input.clone();
        fewer.checks.retain(|check| facts.tests.contains(&check.result.test()));
        let (all, few) = (judge(&input), judge(&fewer));
        prop_assert_eq!((all.state, all.safety, all.next_check_minutes), (few.state, few.safety, few.next_check_minutes));
    }
}

#[test]
fn the_inputs_that_are_tried_reach_done_for_each_cut_and_every_state() {
    let mut runner = TestRunner::deterministic();
    let mut seen = std::collections::BTreeSet::new();
    for _ in 0..20_000 {
        let input = any_input()
            .new_tree(&mut runner)
            .expect("an input can be made")
            .current();
        seen.insert((input.cut, judge(&input).state));
    }
    for cut in Cut::ALL {
        assert!(
            seen.contains(&(*cut, DoneState::Done)),
            "{cut:?} is never done"
        );
    }
    let states: std::collections::BTreeSet<_> = seen.iter().map(|(_, state)| *state).collect();
    assert_eq!(states.into_iter().collect::<Vec<_>>(), DoneState::ALL);
}
