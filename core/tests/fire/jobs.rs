//! The jobs of a fire, told as a night.

use proptest::prelude::*;
use slowbend_core::{
    fire::{FireJob, FireJobState, FireStands, fire_jobs},
    log::PitKind,
};

fn next(kind: PitKind, stands: &FireStands) -> Option<FireJob> {
    let all = fire_jobs(kind, stands).into_iter();
    all.filter(|(_, state)| *state == FireJobState::Next)
        .map(|(job, _)| job)
        .next()
}

/// A drum with baskets, from the match to the lid shut.
#[test]
fn a_drum_is_lit_glows_is_fed_cleared_of_ash_and_shut_down() {
    let drum = |stands: &FireStands| next(PitKind::Drum, stands);
    let mut night = FireStands::default();
    assert_eq!(drum(&night), Some(FireJob::Light));
    (night.lit, night.burns) = (Some(5), Some(5));
    assert_eq!(drum(&night), Some(FireJob::CoalsReady));
    night.ready = Some(1);
    assert_eq!(drum(&night), Some(FireJob::Feed));
    (night.has_meat, night.burns, night.water) = (true, Some(200), Some(185));
    assert_eq!(drum(&night), Some(FireJob::Water));
    (night.water, night.burns) = (Some(10), Some(400));
    assert_eq!(drum(&night), Some(FireJob::Ash));
    night.ash = Some(3);
    assert_eq!(drum(&night), Some(FireJob::Feed));
    (night.has_meat, night.had_meat) = (false, true);
    assert_eq!(drum(&night), Some(FireJob::ShutDown));
    night.is_shut = true;
    assert_eq!(drum(&night), None);
}

#[test]
fn nobody_has_to_say_what_a_meat_on_the_pit_says_already() {
    let night = FireStands {
        burns: Some(90),
        has_meat: true,
        ..FireStands::default()
    };
    assert_eq!(next(PitKind::StickBurner, &night), Some(FireJob::Feed));
    let jobs = fire_jobs(PitKind::StickBurner, &night);
    assert_eq!(
        jobs[..2],
        [
            (FireJob::Light, FireJobState::Done),
            (FireJob::CoalsReady, FireJobState::Done)
        ]
    );
}

#[test]
fn a_pellet_pit_has_no_coals_and_an_electric_one_no_ash() {
    let of = |kind| FireJob::of_pit(kind);
    assert!(!of(PitKind::Pellet).contains(&FireJob::CoalsReady));
    assert!(
        !of(PitKind::Electric).contains(&FireJob::Ash)
            && !of(PitKind::Electric).contains(&FireJob::Feed)
    );
    let night = FireStands {
        burns: Some(1_000),
        has_meat: true,
        ash: Some(1),
        grease: Some(1),
        ..FireStands::default()
    };
    assert_eq!(next(PitKind::Electric, &night), Some(FireJob::ShutDown));
}

prop_compose! {
    fn stands()(minutes in prop::collection::vec(prop::option::of(0i64..2_000), 7), flags in any::<[bool; 3]>()) -> FireStands {
        FireStands {
            lit: minutes[0], ready: minutes[1], fed: minutes[2], water: minutes[3], ash: minutes[4], grease: minutes[5],
            burns: minutes[6], has_meat: flags[0], had_meat: flags[1], is_shut: flags[2],
        }
    }
}

proptest! {
    #[test]
    fn until_it_is_shut_down_exactly_one_job_is_next(stands in stands(), kind in proptest::sample::select(&[
        PitKind::StickBurner, PitKind::Kettle, PitKind::Drum, PitKind::Ceramic, PitKind::Cabinet, PitKind::Pellet, PitKind::Electric,
    ])) {
        let jobs = fire_jobs(kind, &stands);
        let next = jobs.iter().filter(|(_, state)| *state == FireJobState::Next).count();
        prop_assert_eq!(next, usize::from(!stands.is_shut));
        prop_assert_eq!(jobs.len(), FireJob::of_pit(kind).len());
    }
}
