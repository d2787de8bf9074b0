//! Turkey breast as a cook would meet it: three places, read by hand, the coldest counts.

use crate::cases::{NOW, RIGHT, by_hand, f, left_in, of, off_f_tenths};
use slowbend_core::{checks::*, moment::MINUTE};

/// A pass by hand through the three places, in °F.
pub fn turkey(upper: i64, lower: i64, inner: i64) -> Vec<DatedResult> {
    vec![
        by_hand(Spot::UpperThick, f(upper), RIGHT, 3),
        by_hand(Spot::LowerThick, f(lower), RIGHT, 2),
        by_hand(Spot::InnerBreastbone, f(inner), RIGHT, 1),
    ]
}

#[test]
fn turkey_passes_on_the_coldest_of_three() {
    assert_eq!(
        of(Cut::TurkeyBreast, turkey(170, 166, 165)).state,
        DoneState::Done
    );
    let cold = of(Cut::TurkeyBreast, turkey(170, 164, 168));
    assert_eq!(
        (cold.state, cold.safety.state),
        (DoneState::Close, SafeState::NotSafe)
    );
    assert_eq!(
        cold.reasons[0],
        Reason::BelowMinimum {
            coldest: f(164),
            minimum: f(165)
        }
    );
    assert_eq!(cold.next_check_minutes, Some(9));
    assert_eq!(
        of(Cut::TurkeyBreast, turkey(185, 182, 181)).state,
        DoneState::Overdone
    );
}

#[test]
fn two_places_or_one_place_thrice_or_a_pass_too_long_never_pass_turkey() {
    let two = of(Cut::TurkeyBreast, turkey(170, 170, 170)[..2].to_vec());
    assert_eq!(
        (two.state, two.safety.state),
        (DoneState::Close, SafeState::Unknown)
    );
    assert!(two.reasons.contains(&Reason::SpotsMissing {
        spots: vec![Spot::InnerBreastbone]
    }));
    let thrice = (0..3)
        .map(|ago| by_hand(Spot::UpperThick, f(170), RIGHT, ago))
        .collect();
    assert_eq!(
        of(Cut::TurkeyBreast, thrice).safety.state,
        SafeState::Unknown
    );
    let mut long = turkey(170, 170, 170);
    long[0].at = NOW - 12 * MINUTE;
    assert_eq!(of(Cut::TurkeyBreast, long).safety.state, SafeState::Unknown);
}

#[test]
fn a_probe_left_in_never_passes_turkey_but_can_fail_it() {
    let probes = turkey(170, 170, 170)
        .into_iter()
        .map(|check| match check.result {
            TestResult::Heat(heat) => left_in(heat.spot, heat.mk, RIGHT, 1),
            _ => check,
        });
    let left = of(Cut::TurkeyBreast, probes.collect());
    assert_eq!(
        (left.state, left.safety.state),
        (DoneState::Close, SafeState::Unknown)
    );
    assert!(left.reasons.contains(&Reason::ReadByHand));
    let mut doubted = turkey(170, 170, 170);
    doubted.push(left_in(Spot::Elsewhere, f(158), RIGHT, 0));
    assert_eq!(
        of(Cut::TurkeyBreast, doubted).safety.state,
        SafeState::NotSafe
    );
}

#[test]
fn the_place_that_was_cold_is_read_again_and_the_later_reading_counts() {
    let mut checks = turkey(170, 160, 168);
    checks.push(by_hand(Spot::LowerThick, f(166), RIGHT, 0));
    assert_eq!(of(Cut::TurkeyBreast, checks).state, DoneState::Done);
}

#[test]
fn a_thermometer_that_reads_hot_is_corrected_before_it_is_believed() {
    let hot = |tenths| {
        turkey(167, 167, 167)
            .into_iter()
            .map(move |check| DatedResult {
                standing: Some(off_f_tenths(tenths)),
                ..check
            })
            .collect::<Vec<_>>()
    };
    assert_eq!(of(Cut::TurkeyBreast, hot(15)).state, DoneState::Done);
    let corrected = of(Cut::TurkeyBreast, hot(30));
    assert_eq!(corrected.safety.state, SafeState::NotSafe);
    assert!(
        corrected
            .reasons
            .contains(&Reason::Corrected { off_mk: 1_666 })
    );
    let useless = of(Cut::TurkeyBreast, hot(60));
    assert_eq!(
        (useless.state, useless.safety.state),
        (DoneState::CannotSay, SafeState::Unknown)
    );
    assert!(
        useless
            .reasons
            .contains(&Reason::TooFarOff { off_mk: 3_333 })
    );
}

#[test]
fn a_hot_reading_that_a_colder_one_contradicts_counts_no_more() {
    let mut checks = turkey(170, 168, 166);
    checks.iter_mut().for_each(|check| check.at -= 17 * MINUTE);
    assert_eq!(of(Cut::TurkeyBreast, checks.clone()).state, DoneState::Done);
    checks.push(by_hand(Spot::LowerThick, f(150), RIGHT, 12));
    checks.push(by_hand(Spot::LowerThick, f(166), RIGHT, 0));
    let verdict = of(Cut::TurkeyBreast, checks);
    assert_eq!(
        (verdict.state, verdict.safety.state),
        (DoneState::Close, SafeState::Unknown),
        "the three places must be read anew, together"
    );
    let others = vec![Spot::UpperThick, Spot::InnerBreastbone];
    assert!(
        verdict
            .reasons
            .contains(&Reason::SpotsMissing { spots: others })
    );
}

#[test]
fn cold_read_elsewhere_is_not_made_good_by_heat_read_elsewhere() {
    let mut checks = turkey(170, 168, 166);
    checks.push(by_hand(Spot::Elsewhere, f(150), RIGHT, 4));
    checks.push(by_hand(Spot::Elsewhere, f(170), RIGHT, 0));
    assert_eq!(
        of(Cut::TurkeyBreast, checks).safety.state,
        SafeState::NotSafe
    );
}
