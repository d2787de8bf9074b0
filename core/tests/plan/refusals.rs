//! Bad input is told with the way out, in both languages.

use super::invent::household;
use slowbend_core::{
    ids::DeviceId,
    plan::*,
    safety::Form,
    units::Mk,
    words::{Locale, Viewer, Words},
};

fn refused(change: impl Fn(&mut Household)) -> NoPlan {
    let mut household = Household {
        budget_nodes: 5_000,
        ..household(1, 3, 2)
    };
    change(&mut household);
    let refused = plan(&household).expect_err("it cannot be planned");
    for locale in Locale::ALL {
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
        };
        let said = refused.say(&Words::of(&viewer));
        assert!(
            !said.contains('⟨') && !said.contains('{') && said.len() > 20,
            "{said}"
        );
    }
    refused
}

fn key(change: impl Fn(&mut Household)) -> String {
    refused(change).conflict.key
}

#[test]
fn what_cannot_be_is_named() {
    assert_eq!(key(|all| all.hands = 0), "plan-no-hands");
    assert_eq!(
        key(|all| all.servings[0].preferred = When::Min(-20)),
        "plan-serving-past"
    );
    assert_eq!(key(|all| all.meats[0].area_cm2 = 9_000), "plan-fits-no-pit");
    assert_eq!(
        key(|all| all.places[0].keeps = Keeps::Heated {
            at_mk: Mk::from_f(130)
        }),
        "plan-hold-unsafe"
    );
    assert_eq!(
        key(|all| all.servings[0].latest = Some(When::Min(5))),
        "plan-latest-before"
    );
    assert_eq!(
        key(|all| all.meats[0].hold.best_most_min = 5_000),
        "plan-least-above-most"
    );
    assert_eq!(
        key(|all| all.sleep[0].until_min = all.sleep[0].from_min),
        "plan-window-empty"
    );
    assert_eq!(
        key(|all| all.meats[1].name = all.meats[0].name.clone()),
        "plan-name-twice"
    );
    assert_eq!(key(|all| all.meats[0].serving = 7), "plan-no-serving");
    assert_eq!(key(|all| all.meats[0].times.clear()), "plan-no-temperature");
    assert_eq!(
        key(|all| all.pits[0].temps.reverse()),
        "plan-temps-unsorted"
    );
    assert_eq!(key(|all| all.from_ms += 1), "plan-off-grid");
    assert_eq!(key(|all| all.meats[0].weight_g = 0), "plan-number");
    assert_eq!(
        key(|all| (all.burners, all.dishes) = (0, vec![super::invent::beans()])),
        "plan-no-burner"
    );
}

/// No pull temperature below the published minimum of the cut in its form is planned.
#[test]
fn coming_off_below_the_minimum_is_refused() {
    let below = |all: &mut Household| {
        all.meats[0].cut = slowbend_core::checks::Cut::ChickenWhole;
        all.meats[0].form = Form::Intact;
        all.meats[0].off_mk = Mk(Mk::from_f(165).0 - 1);
    };
    assert_eq!(key(below), "plan-off-unsafe");
    assert!(refused(below).to_string().contains("165"));
}

/// On 29 March 2026 the clock in Madrid goes from 2 to 3 at night (tzdata 2026.6).
#[test]
fn a_time_that_the_clock_skips_is_told_with_the_nearest_one() {
    let skipped = |all: &mut Household| {
        all.zone = Some("Europe/Madrid".into());
        all.from_ms = 1_774_699_200_000;
        all.servings[0].preferred = When::Wall("2026-03-29T02:30".into());
        all.servings[0].latest = None;
    };
    let refused = refused(skipped);
    assert_eq!(refused.conflict.key, "plan-wall-skipped");
    assert!(refused.to_string().contains("03:30"), "{refused}");
    assert_eq!(
        key(|all| all.servings[0].preferred = When::Wall("tomorrow".into())),
        "plan-zone"
    );
}

/// Nothing works with an hour to go; each way out that is told was tried and is enough.
#[test]
fn where_nothing_works_the_single_changes_that_would_are_told() {
    let soon = |all: &mut Household| {
        for serving in &mut all.servings {
            (serving.preferred, serving.latest) = (When::Min(60), None);
        }
        all.sleep.clear();
    };
    let refused = refused(soon);
    assert_eq!(refused.conflict.key, "plan-none");
    let keys: Vec<&str> = refused.ways.iter().map(|way| way.key.as_str()).collect();
    assert!(
        keys.contains(&"plan-way-later") || keys.contains(&"plan-way-earlier"),
        "{keys:?}"
    );
}
