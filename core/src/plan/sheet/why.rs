//! Why each job is when it is: one line each.

use super::jobs::Told;
use crate::{
    moment::MINUTE,
    plan::{
        answer::{Said, SaidValue, Step},
        household::Prep,
        said::name,
    },
    words::key,
};

impl Told<'_> {
    fn at(&self, minute: i64) -> SaidValue {
        SaidValue::At(self.household.from_ms + minute * MINUTE)
    }

    fn serving_of(&self, meat: usize) -> SaidValue {
        name(&self.household.servings[self.household.meats[meat].serving].name)
    }
}

pub(super) fn prep(told: &Told<'_>, nr: usize, step: &Prep) -> Said {
    let args = [
        ("least", SaidValue::Minutes(step.then.least_min)),
        ("most", SaidValue::Minutes(step.then.most_min)),
        ("on", told.at(told.meats[nr].on_min)),
    ];
    match step.then.least_min {
        0 => Said::new(key("plan-why-prep-any"), &args[1..]),
        _ => Said::new(key("plan-why-prep"), &args),
    }
}

pub(super) fn put_on(told: &Told<'_>, nr: usize) -> Said {
    let plan = &told.meats[nr];
    let args = [
        (
            "in_hundred",
            SaidValue::Count(told.household.confidence_permille / 10),
        ),
        ("off", told.at(plan.off_late_min)),
        ("serving", told.serving_of(nr)),
        ("at", told.at(plan.serve_min)),
    ];
    match plan.chance_permille >= told.household.confidence_permille {
        true => Said::new(key("plan-why-put-on"), &args),
        false => Said::new(
            key("plan-why-put-on-short"),
            &[
                ("in_hundred", SaidValue::Count(plan.chance_permille / 10)),
                ("serving", told.serving_of(nr)),
                ("at", told.at(plan.serve_min)),
            ],
        ),
    }
}

pub(super) fn check_from(_: &Told<'_>, _: usize) -> Said {
    Said::new(key("plan-why-check-from"), &[])
}

pub(super) fn take_off(told: &Told<'_>, nr: usize) -> Said {
    let plan = &told.meats[nr];
    let args = [
        ("early", told.at(plan.off_early_min)),
        ("late", told.at(plan.off_late_min)),
    ];
    Said::new(key("plan-why-take-off"), &args)
}

pub(super) fn vent(_: &Told<'_>, _: usize) -> Said {
    Said::new(key("plan-why-vent"), &[])
}

pub(super) fn rest(told: &Told<'_>, nr: usize) -> Said {
    let least = told.household.meats[nr].rest.least_min;
    Said::new(
        key("plan-why-rest"),
        &[("least", SaidValue::Minutes(least))],
    )
}

pub(super) fn hold(told: &Told<'_>, nr: usize, place: usize) -> Said {
    let (meat, plan) = (&told.household.meats[nr], &told.meats[nr]);
    let args = [
        ("place", name(&told.household.places[place].name)),
        ("least", SaidValue::Minutes(meat.hold.best_least_min)),
        ("most", SaidValue::Minutes(meat.hold.best_most_min)),
        ("box_from", told.at(plan.box_from_min)),
    ];
    match plan.box_from_min > plan.off_early_min {
        true => Said::new(key("plan-why-hold-not-before"), &args),
        false => Said::new(key("plan-why-hold"), &args[..3]),
    }
}

pub(super) fn probe(_: &Told<'_>, _: usize) -> Said {
    Said::new(key("plan-why-probe"), &[])
}

pub(super) fn cut(told: &Told<'_>, nr: usize) -> Said {
    let args = [
        ("serving", told.serving_of(nr)),
        ("at", told.at(told.meats[nr].serve_min)),
    ];
    Said::new(key("plan-why-cut"), &args)
}

pub(super) fn make(told: &Told<'_>, nr: usize) -> Said {
    let dish = &told.household.dishes[nr];
    let args = [
        ("keeps", SaidValue::Minutes(dish.keeps.most_min)),
        ("serving", name(&told.household.servings[dish.serving].name)),
    ];
    Said::new(key("plan-why-make"), &args)
}

pub(super) fn reheat(told: &Told<'_>, nr: usize) -> Said {
    let serving = told.household.dishes[nr].serving;
    let args = [
        ("serving", name(&told.household.servings[serving].name)),
        ("at", told.at(told.servings[serving])),
    ];
    Said::new(key("plan-why-reheat"), &args)
}

pub(super) fn light(told: &Told<'_>, nr: usize) -> Said {
    Said::new(
        key("plan-why-light"),
        &[(
            "preheat",
            SaidValue::Minutes(told.household.pits[nr].preheat_min),
        )],
    )
}

/// What goes on after the step, or is on then, is happy at the new temperature.
pub(super) fn step(told: &Told<'_>, nr: usize, step: &Step) -> Said {
    let happy = |meat: &usize| {
        let (of, plan) = (&told.household.meats[*meat], &told.meats[*meat]);
        let there = plan.pit == Some(nr) && plan.off_late_min > step.at_min;
        there && of.happy.low_mk <= step.temp && step.temp <= of.happy.high_mk
    };
    match (0..told.meats.len()).find(happy) {
        Some(meat) => Said::new(
            key("plan-why-step-for"),
            &[("meat", name(&told.household.meats[meat].name))],
        ),
        None => Said::new(key("plan-why-step"), &[]),
    }
}

pub(super) fn feed(told: &Told<'_>, nr: usize) -> Said {
    let alone = told.household.pits[nr].alone_min;
    Said::new(
        key("plan-why-feed"),
        &[("alone", SaidValue::Minutes(alone))],
    )
}

pub(super) fn let_out(_: &Told<'_>, _: usize) -> Said {
    Said::new(key("plan-why-let-out"), &[])
}

pub(super) fn serve(told: &Told<'_>, nr: usize) -> Said {
    match told.found.serves[nr] {
        0 => Said::new(key("plan-why-serve"), &[]),
        _ => Said::new(key("plan-why-serve-later"), &[]),
    }
}

pub(super) fn sleep(told: &Told<'_>) -> Said {
    match told.household.watches.first() {
        Some(watch) => Said::new(
            key("plan-why-sleep-watched"),
            &[("name", name(&watch.name))],
        ),
        None => Said::new(key("plan-why-sleep"), &[]),
    }
}
