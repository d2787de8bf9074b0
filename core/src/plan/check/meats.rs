//! Meats and dishes.

use super::{HORIZON_MIN, of, span};
use crate::{
    plan::{
        answer::SaidValue,
        household::{Dish, DishHeat, Household, Meat},
        no_plan::NoPlan,
        said::name,
    },
    safety::minimum,
    units::Mk,
    words::key,
};

pub(super) fn check(household: &Household) -> Result<(), NoPlan> {
    household.meats.iter().try_for_each(|meat| {
        serving(household, &meat.name, meat.serving)?;
        numbers(meat)?;
        times(household, meat)?;
        safe(meat)?;
        fits(household, &meat.name, meat.area_cm2)
    })?;
    household.dishes.iter().try_for_each(|dish| {
        serving(household, &dish.name, dish.serving)?;
        dish_numbers(household, dish)
    })
}

fn serving(household: &Household, called: &str, serving: usize) -> Result<(), NoPlan> {
    match serving < household.servings.len() {
        true => Ok(()),
        false => Err(NoPlan::new(
            key("plan-no-serving"),
            &[("name", name(called))],
        )),
    }
}

fn numbers(meat: &Meat) -> Result<(), NoPlan> {
    let of = |what, value, range| of(&meat.name, what, value, range);
    of("area_cm2", meat.area_cm2, 0..=100_000)?;
    of("weight_g", meat.weight_g, 1..=500_000)?;
    of("rest.least_min", meat.rest.least_min, 0..=1_440)?;
    of("rest.most_min", meat.rest.most_min, 0..=120)?;
    of("hold.best_least_min", meat.hold.best_least_min, 0..=1_440)?;
    of("hold.most_min", meat.hold.most_min, 0..=1_440)?;
    of("vent_min", meat.vent_min, 0..=60)?;
    of("cut_min", meat.cut_min, 0..=120)?;
    of("cut_early_min", meat.cut_early_min, 0..=60)?;
    of("prep", meat.prep.len() as i64, 0..=4)?;
    span(
        &meat.name,
        meat.hold.best_least_min,
        meat.hold.best_most_min,
    )?;
    span(&meat.name, meat.hold.best_most_min, meat.hold.most_min)?;
    span(&meat.name, meat.rest.least_min, meat.hold.most_min)?;
    for prep in &meat.prep {
        of("prep.hands_min", prep.hands_min, 0..=120)?;
        of("prep.then.least_min", prep.then.least_min, 0..=HORIZON_MIN)?;
        of(
            "prep.then.most_min",
            prep.then.most_min,
            0..=2 * HORIZON_MIN,
        )?;
        span(
            &meat.name,
            (prep.then.least_min + 14) / 15 * 15,
            prep.then.most_min,
        )?;
    }
    if let Some(on) = meat.on {
        of("on.since_min", on.since_min, -HORIZON_MIN..=0)?;
        of("on.over_permille", on.over_permille, 0..=999)?;
    }
    match meat.off_at_min {
        Some(off) => of("off_at_min", off, -HORIZON_MIN..=0),
        None => Ok(()),
    }
}

/// Its times are in order, some pit has one of its temperatures, and the pit it is on has one.
fn times(household: &Household, meat: &Meat) -> Result<(), NoPlan> {
    for times in &meat.times {
        let minutes = times.minutes;
        of(&meat.name, "minutes.p10", minutes.p10, 5..=2_880)?;
        of(&meat.name, "minutes.p90", minutes.p90, 5..=2_880)?;
        span(&meat.name, minutes.p10, minutes.p50)?;
        span(&meat.name, minutes.p50, minutes.p80)?;
        span(&meat.name, minutes.p80, minutes.p90)?;
    }
    let known = |pit: &crate::plan::household::Pit| {
        pit.temps
            .iter()
            .any(|temp| meat.times.iter().any(|times| times.pit == temp.temp))
    };
    let there = match meat.on {
        Some(on) => household.pits.get(on.pit).is_some_and(known),
        None => meat.off_at_min.is_some() || household.pits.iter().any(known),
    };
    match there {
        true => Ok(()),
        false => Err(NoPlan::new(
            key("plan-no-temperature"),
            &[("meat", name(&meat.name))],
        )),
    }
}

/// Never taken off below the published minimum.
fn safe(meat: &Meat) -> Result<(), NoPlan> {
    let minimum = minimum(meat.cut, meat.form);
    if meat.off_mk >= minimum.temp {
        return of(&meat.name, "off_mk", meat.off_mk.0, 0..=Mk::from_f(212).0);
    }
    let args = [
        ("meat", name(&meat.name)),
        ("has", SaidValue::Temp(meat.off_mk)),
        ("least", SaidValue::Temp(minimum.temp)),
        (
            "source",
            SaidValue::Message(minimum.source.key().to_owned()),
        ),
    ];
    Err(NoPlan::new(key("plan-off-unsafe"), &args))
}

fn fits(household: &Household, called: &str, area: i64) -> Result<(), NoPlan> {
    let largest = household.pits.iter().max_by_key(|pit| pit.area_cm2);
    match largest {
        Some(pit) if pit.area_cm2 < area => {
            let args = [
                ("name", name(called)),
                ("needs", SaidValue::Count(area)),
                ("pit", name(&pit.name)),
                ("has", SaidValue::Count(pit.area_cm2)),
            ];
            Err(NoPlan::new(key("plan-fits-no-pit"), &args))
        }
        _ => Ok(()),
    }
}

fn dish_numbers(household: &Household, dish: &Dish) -> Result<(), NoPlan> {
    let of = |what, value, range| of(&dish.name, what, value, range);
    of("hands_min", dish.hands_min, 0..=120)?;
    of("cook_min", dish.cook_min, 0..=1_440)?;
    of("keeps.least_min", dish.keeps.least_min, 0..=2_880)?;
    of("keeps.most_min", dish.keeps.most_min, 0..=2_880)?;
    of("reheat_min", dish.reheat_min, 0..=240)?;
    span(&dish.name, dish.keeps.least_min, dish.keeps.most_min)?;
    let burner = dish.heat == DishHeat::Burner || dish.reheat_min > 0;
    if burner && household.burners == 0 {
        return Err(NoPlan::new(
            key("plan-no-burner"),
            &[("dish", name(&dish.name))],
        ));
    }
    match dish.heat {
        DishHeat::Pit { area_cm2 } => fits(household, &dish.name, area_cm2),
        _ => Ok(()),
    }
}
