//! A plan held against the rules of docs/plan.md, from its sheet alone: nothing here is the solver's. Start at [`check`].

use slowbend_core::{plan::*, units::Mk};
use std::collections::BTreeSet;

/// Panics with the rule that a plan breaks.
pub fn check(household: &Household, plan: &Plan) {
    servings(household, plan);
    for nr in 0..household.meats.len() {
        meat(household, plan, nr);
        prepared(household, plan, nr);
    }
    hands(household, plan);
    grates(household, plan);
    places(household, plan);
    for nr in 0..household.pits.len() {
        seen_to(household, plan, nr);
    }
    assert_eq!(
        cost(household, plan),
        plan.cost,
        "the cost is what the sheet says"
    );
}

fn minutes(when: &When) -> i64 {
    match when {
        When::Min(minutes) => *minutes,
        When::Wall(wall) => panic!("{wall} is not in minutes"),
    }
}

fn latest(serving: &Serving) -> i64 {
    minutes(serving.latest.as_ref().unwrap_or(&serving.preferred))
}

fn servings(household: &Household, plan: &Plan) {
    for (serving, at) in household.servings.iter().zip(&plan.servings_min) {
        assert!(
            minutes(&serving.preferred) <= *at && *at <= latest(serving),
            "{}",
            serving.name
        );
    }
}

fn meat(household: &Household, plan: &Plan, nr: usize) {
    let (meat, its) = (&household.meats[nr], &plan.meats[nr]);
    let called = &meat.name;
    let hold = its.cut_min - its.off_min;
    assert!(
        meat.rest.least_min <= hold && hold <= meat.hold.most_min,
        "{called} is held {hold}"
    );
    assert!(its.off_min <= its.off_late_min, "{called}");
    assert!(
        its.off_late_min + meat.rest.least_min <= its.cut_min,
        "{called} rests"
    );
    assert!(
        its.cut_min + meat.cut_min <= its.serve_min,
        "{called} is cut in time"
    );
    assert_eq!(its.serve_min, plan.servings_min[meat.serving], "{called}");
    let Some(pit) = its.pit else {
        return assert!(meat.off_at_min.is_some(), "{called} is on no pit");
    };
    let lit = &plan.pits[pit];
    assert!(
        lit.light_min <= its.on_min.max(0) && its.off_late_min <= lit.out_min,
        "{called} on a cold pit"
    );
    if meat.on.is_none() && !household.pits[pit].hot {
        assert!(
            lit.light_min + household.pits[pit].preheat_min <= its.on_min,
            "{called} waits for the pit"
        );
    }
    let needs = needed(household, plan, nr);
    assert!(
        its.on_min.max(0) + needs[1] <= its.off_min,
        "{called} comes off as expected"
    );
}

/// How long a meat takes as its pit runs: 10, 50, 80, 90 %.
fn needed(household: &Household, plan: &Plan, nr: usize) -> [i64; 4] {
    let (meat, its) = (&household.meats[nr], &plan.meats[nr]);
    let pit = &plan.pits[its.pit.expect("it is on a pit")];
    let left = |minutes: i64| match meat.on {
        Some(on) => (minutes * (1_000 - on.over_permille) + 999) / 1_000,
        None => minutes,
    };
    let times = |temp: Mk| {
        let found = meat
            .times
            .iter()
            .find(|times| times.pit == temp)
            .map(|times| times.minutes);
        found.map(|four| [four.p10, four.p50, four.p80, four.p90].map(left))
    };
    let on = its.on_min.max(0);
    let (first, step) = (times(pit.temp), pit.step);
    [0, 1, 2, 3].map(|quantile| match step {
        Some(step) if step.at_min <= on => times(step.temp).expect("a known temperature")[quantile],
        Some(step) => {
            let (before, first) = (
                step.at_min - on,
                first.expect("a known temperature")[quantile],
            );
            match first <= before {
                true => first,
                false => {
                    let second = times(step.temp).expect("a known temperature")[quantile];
                    before + (second * (first - before) + first - 1) / first
                }
            }
        }
        None => first.expect("a known temperature")[quantile],
    })
}

fn prepared(household: &Household, plan: &Plan, nr: usize) {
    let meat = &household.meats[nr];
    if meat.on.is_some() || meat.off_at_min.is_some() {
        return;
    }
    let mut next = plan.meats[nr].on_min;
    for step in meat.prep.iter().rev() {
        let what = match step.what {
            PrepKind::Thaw => What::Thaw,
            PrepKind::Brine => What::Brine,
            PrepKind::Trim => What::Trim,
            PrepKind::Rub => What::Rub,
        };
        let job = plan
            .sheet
            .iter()
            .find(|job| job.what == what && job.of == Of::Meat(nr));
        let job = job.expect("each step of preparation has a job");
        let rests = next - (job.start_min + step.hands_min);
        assert!(job.start_min >= 0, "{} is prepared before now", meat.name);
        assert!(
            rests >= step.then.least_min,
            "{} rests {rests} after {what:?}",
            meat.name
        );
        assert!(
            rests <= step.then.most_min + 2 * GRID_MIN,
            "{} rests {rests} after {what:?}",
            meat.name
        );
        next = job.start_min;
    }
}

/// No moment has more jobs with hands on than hands.
fn hands(household: &Household, plan: &Plan) {
    let jobs = || {
        plan.sheet
            .iter()
            .filter(|job| !job.done && job.hands_min > 0)
    };
    for job in jobs() {
        let at_once = jobs().filter(|other| {
            other.start_min <= job.start_min && job.start_min < other.start_min + other.hands_min
        });
        let ids: Vec<&str> = at_once.map(|job| job.id.as_str()).collect();
        assert!(
            ids.len() as i64 <= household.hands,
            "at {}: {ids:?}",
            job.start_min
        );
    }
}

fn grates(household: &Household, plan: &Plan) {
    for (nr, pit) in household.pits.iter().enumerate() {
        let there: Vec<usize> = (0..plan.meats.len())
            .filter(|at| plan.meats[*at].pit == Some(nr))
            .collect();
        for one in &there {
            let at = plan.meats[*one].on_min.max(0);
            let on = |other: &&usize| {
                let other = &plan.meats[**other];
                other.on_min <= at && at < other.off_late_min
            };
            let area: i64 = there
                .iter()
                .filter(on)
                .map(|other| household.meats[*other].area_cm2)
                .sum();
            assert!(area <= pit.area_cm2, "{area} on {} at {at}", pit.name);
            let poultry: BTreeSet<bool> = there
                .iter()
                .filter(on)
                .map(|other| household.meats[*other].cut.is_poultry())
                .collect();
            assert!(
                pit.poultry_apart || poultry.len() <= 1,
                "raw poultry beside other meat at {at} on {}",
                pit.name
            );
        }
    }
}

/// Nothing is held longer than it stays at 140 °F, and no place holds more than it takes.
fn places(household: &Household, plan: &Plan) {
    for (meat, its) in household.meats.iter().zip(&plan.meats) {
        let hold = its.cut_min - its.off_min;
        let Some(place) = its.place else {
            assert!(
                hold <= meat.rest.most_min,
                "{} stands for {hold}",
                meat.name
            );
            continue;
        };
        if let Keeps::Insulated {
            loses_permille_per_h,
            around_mk,
        } = household.places[place].keeps
        {
            let hours = hold as f64 / 60.0;
            let keeps = 1.0 - loses_permille_per_h as f64 / 1_000.0;
            let at_the_knife =
                around_mk.0 as f64 + (meat.off_mk.0 - around_mk.0) as f64 * libm::pow(keeps, hours);
            assert!(
                at_the_knife >= Mk::from_f(140).0 as f64,
                "{} is at {at_the_knife} mK",
                meat.name
            );
        }
        let there = plan
            .meats
            .iter()
            .zip(&household.meats)
            .filter(|(other, _)| {
                other.place == Some(place)
                    && other.off_min <= its.off_min
                    && its.off_min < other.cut_min
            });
        let weight: i64 = there.map(|(_, meat)| meat.weight_g).sum();
        assert!(
            weight <= household.places[place].room_g,
            "{weight} g in {place}"
        );
    }
}

/// While the cook sleeps and nobody watches, somebody sees to a burning pit as often as it needs.
fn seen_to(household: &Household, plan: &Plan, nr: usize) {
    let (pit, its) = (&household.pits[nr], &plan.pits[nr]);
    let watched = |at: i64| {
        household
            .watches
            .iter()
            .any(|watch| watch.from_min <= at && at < watch.until_min)
    };
    for sleep in &household.sleep {
        let from = sleep.from_min.max(its.light_min);
        let mut seen = from;
        for at in from..sleep.until_min.min(its.out_min) {
            let fed = plan
                .sheet
                .iter()
                .any(|job| job.what == What::Feed && job.of == Of::Pit(nr) && job.start_min == at);
            if fed || watched(at) {
                seen = at;
            }
            assert!(
                at - seen <= pit.alone_min.max(GRID_MIN),
                "{} burns alone from {seen} to {at}",
                pit.name
            );
        }
    }
}

/// The cost, reckoned anew from what the sheet says.
pub fn cost(household: &Household, plan: &Plan) -> Cost {
    let mut cost = Cost {
        night_quarters: nights(household, plan),
        openings: openings(plan),
        late_min: late(household, plan),
        ..Cost::default()
    };
    for (nr, meat) in household.meats.iter().enumerate() {
        let its = &plan.meats[nr];
        let hold = its.cut_min - its.off_min;
        let away = (meat.hold.best_least_min - hold)
            .max(hold - meat.hold.best_most_min)
            .max(0);
        let slots = (meat.cut_min + GRID_MIN - 1) / GRID_MIN;
        let served = its.serve_min.div_euclid(GRID_MIN) * GRID_MIN;
        cost.hold_min += away + served - slots * GRID_MIN - its.cut_min;
        if its.pit.is_some() {
            cost.not_ready_permille += short(household, plan, nr);
            cost.temperature_k += outside(household, plan, nr);
        }
    }
    for (nr, dish) in household.dishes.iter().enumerate() {
        let of = |what| {
            plan.sheet
                .iter()
                .find(move |job| job.what == what && job.of == Of::Dish(nr))
        };
        let made = of(What::Make).expect("each dish is made");
        let slot = |minute: i64| minute.div_euclid(GRID_MIN) * GRID_MIN;
        let again = of(What::Reheat).map_or(slot(plan.servings_min[dish.serving]), |job| {
            slot(job.start_min)
        });
        let cooked = (dish.cook_min.max(dish.hands_min) + GRID_MIN - 1) / GRID_MIN * GRID_MIN;
        cost.hold_min += (again - slot(made.start_min) - cooked - dish.keeps.least_min).max(0);
    }
    for (pit, its) in household.pits.iter().zip(&plan.pits) {
        let rate = |temp: Mk| {
            pit.temps
                .iter()
                .find(|has| has.temp == temp)
                .expect("its own temperature")
                .fuel_g_per_h
        };
        for at in (its.light_min..its.out_min)
            .step_by(GRID_MIN as usize)
            .filter(|_| its.used)
        {
            let temp = its
                .step
                .filter(|step| step.at_min <= at)
                .map_or(its.temp, |step| step.temp);
            cost.fuel_quarter_g += rate(temp);
        }
    }
    cost
}

fn late(household: &Household, plan: &Plan) -> i64 {
    let quarter = |minute: i64| minute.div_euclid(GRID_MIN) * GRID_MIN;
    let servings = household.servings.iter().zip(&plan.servings_min);
    servings
        .map(|(serving, at)| quarter(*at) - quarter(minutes(&serving.preferred)))
        .sum()
}

fn nights(household: &Household, plan: &Plan) -> i64 {
    let watched = |at: i64| {
        household
            .watches
            .iter()
            .any(|watch| watch.from_min <= at && at < watch.until_min)
    };
    let within = |windows: &[Window], at: i64| {
        windows
            .iter()
            .any(|window| window.from_min <= at && at < window.until_min)
    };
    let mut up = BTreeSet::new();
    for job in plan
        .sheet
        .iter()
        .filter(|job| !job.done && (job.hands_min > 0 || job.what == What::Feed))
    {
        let quarters = job.start_min.div_euclid(GRID_MIN)
            ..=(job.start_min + job.hands_min.max(1) - 1).div_euclid(GRID_MIN);
        up.extend(quarters.filter(|quarter| {
            let at = quarter * GRID_MIN;
            within(&household.quiet, at) || within(&household.sleep, at) && !watched(at)
        }));
    }
    up.len() as i64
}

fn openings(plan: &Plan) -> i64 {
    let lids = plan
        .sheet
        .iter()
        .filter(|job| !job.done && matches!(job.what, What::PutOn | What::TakeOff));
    let lids: BTreeSet<_> = lids
        .filter_map(|job| Some((job.pit?, job.start_min.div_euclid(GRID_MIN))))
        .collect();
    (lids.len() + plan.pits.iter().filter(|pit| pit.step.is_some()).count()) as i64
}

/// Permille below the chosen confidence, straight between the quantiles.
fn short(household: &Household, plan: &Plan, nr: usize) -> i64 {
    let (meat, its) = (&household.meats[nr], &plan.meats[nr]);
    let [p10, p50, p80, p90] = needed(household, plan, nr);
    let has = its.cut_min - its.on_min.max(0) - meat.rest.least_min;
    let between =
        |low: i64, high: i64, from: i64, rise: i64| from + rise * (has - low) / (high - low).max(1);
    let chance = match has {
        _ if has >= p90 => 900,
        _ if has >= p80 => between(p80, p90, 800, 100),
        _ if has >= p50 => between(p50, p80, 500, 300),
        _ => between(p10, p50, 100, 400),
    };
    (household.confidence_permille - chance).max(0)
}

fn outside(household: &Household, plan: &Plan, nr: usize) -> i64 {
    let (meat, its) = (&household.meats[nr], &plan.meats[nr]);
    let pit = &plan.pits[its.pit.expect("it is on a pit")];
    let [_, p50, p80, p90] = needed(household, plan, nr);
    let permille = household.confidence_permille;
    let (low, high, from, rise) = if permille <= 800 {
        (p50, p80, 500, 300)
    } else {
        (p80, p90, 800, 100)
    };
    let wanted = low + ((permille - from) * (high - low) + rise - 1) / rise;
    let on = its.on_min.max(0);
    let mut seen = vec![];
    match pit.step {
        Some(step) => {
            seen.extend((on < step.at_min).then_some(pit.temp));
            seen.extend((on + wanted > step.at_min).then_some(step.temp));
        }
        None => seen.push(pit.temp),
    }
    let kelvin = |temp: Mk| {
        let away = (meat.happy.low_mk.0 - temp.0)
            .max(temp.0 - meat.happy.high_mk.0)
            .max(0);
        (away + 999) / 1_000
    };
    seen.into_iter().map(kelvin).max().unwrap_or(0)
}
