//! The rowing club's regatta lunch: fourteen people at two o'clock, one kettle and one drum.

use super::{
    checker,
    invent::{FROM_MS, beans, cooler, temps},
};
use slowbend_core::{
    checks::Cut,
    ids::DeviceId,
    plan::*,
    safety::{CautionKind, Form},
    units::Mk,
    words::{Locale, Viewer, Words},
};

const HOUR: i64 = 60;

fn pit(name: &str, area_cm2: i64, alone_min: i64) -> Pit {
    let temp = |(temp, fuel_g_per_h)| PitTemp { temp, fuel_g_per_h };
    Pit {
        name: name.into(),
        area_cm2,
        temps: temps().into_iter().zip([450, 600, 900]).map(temp).collect(),
        preheat_min: 45,
        light_min: 10,
        alone_min,
        poultry_apart: true,
        may_step: true,
        hot: false,
    }
}

/// Saturday noon; lunch is on Sunday at two, 26 hours ahead; the cook sleeps from eleven to six.
fn regatta() -> Household {
    let meat = |name: &str, cut, grams| from_catalogue(name, cut, Form::Intact, grams, 0, &temps());
    Household {
        from_ms: FROM_MS,
        zone: Some("UTC".into()),
        confidence_permille: 900,
        shared_permille: 500,
        hands: 1,
        meats: vec![
            meat("Butt", Cut::PorkButt, 3_400),
            meat("Ribs", Cut::SpareRibs, 1_600),
            meat("Chicken", Cut::ChickenHalf, 900),
        ],
        dishes: vec![beans()],
        pits: vec![pit("Drum", 2_600, 5 * HOUR)],
        places: vec![cooler()],
        burners: 1,
        servings: vec![Serving {
            name: "lunch".into(),
            preferred: When::Wall("2026-06-07T14:00".into()),
            latest: Some(When::Wall("2026-06-07T15:00".into())),
            turn_in_min: None,
        }],
        sleep: vec![Window {
            from_min: 11 * HOUR,
            until_min: 18 * HOUR,
        }],
        quiet: vec![],
        watches: vec![],
        alternatives: 3,
        budget_nodes: 100_000,
    }
}

fn in_minutes(mut household: Household) -> Household {
    household.servings[0].preferred = When::Min(26 * HOUR);
    household.servings[0].latest = Some(When::Min(27 * HOUR));
    household
}

fn job<'a>(plan: &'a Plan, id: &str) -> &'a Job {
    let ids = || {
        plan.sheet
            .iter()
            .map(|job| job.id.as_str())
            .collect::<Vec<_>>()
    };
    plan.sheet
        .iter()
        .find(|job| job.id == id)
        .unwrap_or_else(|| panic!("no {id} in {:?}", ids()))
}

#[test]
fn lunch_is_ready_at_two_and_each_line_says_why() {
    let household = regatta();
    let answer = plan(&household).unwrap();
    checker::check(&in_minutes(household), &answer.plan);
    assert_eq!(answer.proof, Proof::Optimal);
    assert_eq!(answer.plan.servings_min, [26 * HOUR]);
    assert_eq!(answer.plan.cost.not_ready_permille, 0);
    for locale in Locale::ALL {
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
        };
        let say = Words::of(&viewer);
        for job in &answer.plan.sheet {
            let why = job.why.say(&say);
            assert!(
                !why.contains('⟨') && !why.contains('{') && why.len() > 10,
                "{}: {why}",
                job.id
            );
        }
        for said in answer.alternatives.iter().flat_map(|other| &other.says) {
            let said = said.say(&say);
            assert!(!said.contains('⟨') && !said.contains('{'), "{said}");
        }
    }
    assert_eq!(answer.cautions.last(), Some(&CautionKind::LocalRulesFirst));
    assert!(answer.cautions.contains(&CautionKind::PoultryThreePlaces));
}

#[test]
fn nobody_sleeps_longer_than_the_drum_may_be_left() {
    let mut household = regatta();
    household.meats[0] = from_catalogue(
        "Brisket",
        Cut::Brisket,
        Form::Intact,
        6_000,
        0,
        &[Mk::from_f(225)],
    );
    household.meats.pop();
    household.pits[0].alone_min = 2 * HOUR;
    let broken = plan(&household).unwrap().plan;
    checker::check(&in_minutes(household.clone()), &broken);
    assert_eq!(
        broken
            .sheet
            .iter()
            .filter(|job| job.what == What::Feed)
            .count(),
        3
    );
    assert_eq!(job(&broken, "feed/Drum/1").start_min, 13 * HOUR);
    household.watches = vec![Watch {
        name: "Ana".into(),
        from_min: 11 * HOUR,
        until_min: 18 * HOUR,
    }];
    let watched = plan(&household).unwrap().plan;
    checker::check(&in_minutes(household), &watched);
    assert_eq!(
        watched
            .sheet
            .iter()
            .filter(|job| job.what == What::Feed)
            .count(),
        0
    );
    assert_eq!(watched.cost.night_quarters, 0);
}

#[test]
fn guests_an_hour_late_move_what_is_ahead_and_nothing_that_is_done() {
    let household = regatta();
    let before = plan(&household).unwrap().plan;
    // The butt went on as planned; it is now the next quarter of an hour after that.
    let now = job(&before, "put_on/Butt").start_min.div_euclid(15) * 15 + 15;
    let mut later = household;
    later.from_ms += now * 60_000;
    later.zone = None;
    let ahead = |minute: i64| When::Min(minute - now);
    later.servings[0].preferred = ahead(27 * HOUR);
    later.servings[0].latest = Some(ahead(28 * HOUR));
    later.sleep[0] = Window {
        from_min: 11 * HOUR - now,
        until_min: 18 * HOUR - now,
    };
    later.meats[0].prep.clear();
    later.meats[0].on = Some(OnPit {
        pit: 0,
        since_min: -15,
        over_permille: 20,
    });
    later.pits[0].hot = true;
    let made = replan(&before, &later).unwrap();
    checker::check(&later, &made.answer.plan);
    assert_eq!(made.answer.plan.servings_min, [27 * HOUR - now]);
    let on = job(&made.answer.plan, "put_on/Butt");
    assert!(on.done && on.start_min == -15);
    assert!(
        made.changes.iter().all(|change| change.id != "put_on/Butt"),
        "{:?}",
        made.changes
    );
    let serve = made
        .changes
        .iter()
        .find(|change| change.id == "serve/lunch")
        .unwrap();
    assert_eq!(serve.is_ms.unwrap() - serve.was_ms.unwrap(), 3_600_000);
    assert!(made.changes.iter().any(|change| change.id == "put_on/Ribs"));
}

#[test]
fn a_cold_pit_pushes_what_is_not_on_yet() {
    let mut household = in_minutes(regatta());
    let before = plan(&household).unwrap().plan;
    household.pits[0].preheat_min = 90;
    let made = replan(&before, &household).unwrap();
    checker::check(&household, &made.answer.plan);
    let lit = &made.answer.plan.pits[0];
    let first = made
        .answer
        .plan
        .meats
        .iter()
        .map(|meat| meat.on_min)
        .min()
        .unwrap();
    assert!(lit.light_min + 90 <= first);
    assert!(made.changes.iter().any(|change| change.id == "light/Drum"));
}

#[test]
fn a_turn_in_has_its_table_open_five_minutes_either_way() {
    let mut household = in_minutes(regatta());
    household.servings[0].latest = None;
    household.servings[0].turn_in_min = Some(5);
    let made = plan(&household).unwrap().plan;
    let turn_in = job(&made, "serve/lunch");
    assert_eq!(
        (turn_in.start_min, turn_in.end_min),
        (26 * HOUR - 5, 26 * HOUR + 5)
    );
    checker::check(&household, &made);
}

/// Chicken at 225 °F is safe and its skin tough; at 325 °F it is not, where the pit may be changed.
#[test]
fn chicken_gets_its_heat_when_the_pit_may_be_raised() {
    let mut household = in_minutes(regatta());
    household.meats.remove(0);
    household.meats[0]
        .times
        .retain(|times| times.pit <= Mk::from_f(275));
    household.pits[0].may_step = false;
    let held = plan(&household).unwrap().plan;
    household.pits[0].may_step = true;
    let raised = plan(&household).unwrap().plan;
    checker::check(&household, &raised);
    assert!(raised.cost.temperature_k <= held.cost.temperature_k);
    assert!(
        held.cost.temperature_k > 0,
        "one temperature cannot suit both"
    );
}
