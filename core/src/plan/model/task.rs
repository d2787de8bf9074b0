//! Meats and dishes alike as tasks. Start at [`all`].

use super::{Model, Profile};
use crate::plan::{
    household::{Dish, DishHeat, Household, Meat, OnPit},
    times::{Four, across, down, four, up},
};

/// Something that is made ready for a serving.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::plan) struct Task {
    /// Its serving.
    pub serving: usize,
    /// What it is heated on.
    pub heat: Heat,
    /// Minutes it takes at each temperature of each pit; for a dish the same everywhere.
    pub times: Vec<Vec<Option<Four>>>,
    /// Kelvin outside its happy range, at each temperature of each pit.
    pub outside: Vec<Vec<i64>>,
    /// Grate.
    pub area: i64,
    /// Room where it is held, grams; 0 needs no place.
    pub weight: i64,
    /// Whether it is raw poultry.
    pub poultry: bool,
    /// Minutes from ready to the knife, at least.
    pub rest_least: i64,
    /// The same without a place to hold it, at most.
    pub rest_most: i64,
    /// Best hold from, to, and the most, minutes.
    pub hold: (i64, i64, i64),
    /// Whole slots that each place keeps it safe.
    pub safe: Vec<i64>,
    /// Hands on at its beginning, and when it comes off, minutes as they count.
    pub hands: (u8, u8),
    /// Cutting, minutes as they count, and how many slots it may be over before the serving.
    pub cut: (u8, i64),
    /// Reheating, slots.
    pub reheat: i64,
    /// What has to be done before, first to last.
    pub prep: Vec<PrepStep>,
    /// What of it has happened.
    pub fixed: Fixed,
}

/// What a task is heated on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) enum Heat {
    Pit,
    Burner,
    None,
}

/// What of a task has happened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) enum Fixed {
    Nothing,
    /// On a pit since a slot, with so much over, permille.
    On {
        pit: usize,
        since: i64,
        over: i64,
    },
    /// Off since a slot.
    Off {
        at: i64,
    },
}

/// One thing before the fire.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) struct PrepStep {
    /// Hands on, minutes as they count.
    pub hands: u8,
    /// Slots it takes.
    pub slots: i64,
    /// From its end to the next, slots.
    pub then: (i64, i64),
}

impl Task {
    /// How long it takes in a pit run by `profile`, `before` minutes of it ahead of the change; what is on already has so much less to
    /// go. None where it would need a temperature for which nothing is known.
    pub fn times_in(&self, pit: usize, profile: &Profile, before: i64) -> Option<Four> {
        let left = |times: Four| match self.fixed {
            Fixed::On { over, .. } => times.map(|time| (time * (1_000 - over) + 999) / 1_000),
            _ => times,
        };
        let (a, b) = (
            self.times[pit][profile.a].map(left),
            self.times[pit][profile.b].map(left),
        );
        let mut times = [0; 4];
        for (i, time) in times.iter_mut().enumerate() {
            *time = across(before, a.map(|a| a[i]), b.map(|b| b[i]))?;
        }
        Some(times)
    }

    /// Slots that must pass before it can go on.
    pub fn earliest(&self) -> i64 {
        self.prep.iter().map(|step| step.slots + step.then.0).sum()
    }
}

/// Put on and take off, minutes each: common practice, no source.
const LIFT_MIN: i64 = 5;

/// All tasks: meats, then dishes.
pub(in crate::plan) fn all(household: &Household) -> Vec<Task> {
    let meats = household.meats.iter().map(|meat| of_meat(household, meat));
    let dishes = household.dishes.iter().map(|dish| of_dish(household, dish));
    meats.chain(dishes).collect()
}

fn of_meat(household: &Household, meat: &Meat) -> Task {
    let outside = |temp: i64| {
        let short = (meat.happy.low_mk.0 - temp).max(temp - meat.happy.high_mk.0);
        (short.max(0) + 999) / 1000
    };
    let time = |temp| meat.times.iter().find(|times| times.pit == temp);
    let times = |temp| time(temp).map(|times| four(times.minutes));
    let off = meat.off_at_min.map(|at| Fixed::Off { at: down(at) });
    let on = meat.on.map(|on: OnPit| Fixed::On {
        pit: on.pit,
        since: down(on.since_min),
        over: on.over_permille,
    });
    Task {
        serving: meat.serving,
        heat: if off.is_some() { Heat::None } else { Heat::Pit },
        times: by_pit(household, times),
        outside: by_pit(household, |temp| outside(temp.0)),
        area: meat.area_cm2,
        weight: meat.weight_g,
        poultry: meat.cut.is_poultry(),
        rest_least: meat.rest.least_min,
        rest_most: meat.rest.most_min,
        hold: (
            meat.hold.best_least_min,
            meat.hold.best_most_min,
            meat.hold.most_min,
        ),
        safe: super::pits::safe(household, meat.off_mk),
        hands: (Model::hands_on(LIFT_MIN), Model::hands_on(LIFT_MIN)),
        cut: (Model::hands_on(meat.cut_min), down(meat.cut_early_min)),
        reheat: 0,
        prep: match meat.on.is_some() || meat.off_at_min.is_some() {
            true => vec![],
            false => prep(meat),
        },
        fixed: off.or(on).unwrap_or(Fixed::Nothing),
    }
}

fn prep(meat: &Meat) -> Vec<PrepStep> {
    let step = |prep: &crate::plan::household::Prep| PrepStep {
        hands: Model::hands_on(prep.hands_min),
        slots: up(prep.hands_min),
        then: (up(prep.then.least_min), down(prep.then.most_min)),
    };
    meat.prep.iter().map(step).collect()
}

fn of_dish(household: &Household, dish: &Dish) -> Task {
    let minutes = dish.cook_min.max(dish.hands_min);
    let (heat, area) = match dish.heat {
        DishHeat::None => (Heat::None, 0),
        DishHeat::Burner => (Heat::Burner, 0),
        DishHeat::Pit { area_cm2 } => (Heat::Pit, area_cm2),
    };
    Task {
        serving: dish.serving,
        heat,
        times: by_pit(household, |_| Some([minutes; 4])),
        outside: by_pit(household, |_| 0),
        area,
        weight: 0,
        poultry: false,
        rest_least: dish.reheat_min,
        rest_most: dish.keeps.most_min,
        hold: (0, dish.keeps.least_min, dish.keeps.most_min),
        safe: vec![],
        hands: (Model::hands_on(dish.hands_min), 0),
        cut: (0, 0),
        reheat: up(dish.reheat_min),
        prep: vec![],
        fixed: Fixed::Nothing,
    }
}

fn by_pit<T>(household: &Household, at: impl Fn(crate::units::Mk) -> T) -> Vec<Vec<T>> {
    let pits = household.pits.iter();
    pits.map(|pit| pit.temps.iter().map(|temp| at(temp.temp)).collect())
        .collect()
}
