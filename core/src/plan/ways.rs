//! Which single change would make a plan, tried one by one. Start at [`all`].

use super::{
    answer::{First, Said, SaidValue},
    household::{Household, Keeps, Place, Window},
    said::name,
    solve::solve,
};
use crate::{moment::MINUTE, units::Mk, words::key};

/// Nodes for each change.
const BUDGET: i64 = 20_000;
/// How much later, or sooner, is tried, minutes.
const SHIFTS: [i64; 6] = [60, 120, 240, 480, 960, 1_440];
/// The place that is tried: hot enough by ten degrees.
const PLACE_AT: Mk = Mk::from_f(150);
/// With more meats than this, leaving one out is not tried.
const MEATS_MAX: usize = 12;

/// Every change that is enough, the nearest first.
pub(super) fn all(household: &Household, at: &[(i64, i64)]) -> Vec<Said> {
    let changes = [later, earlier, hands, place, pit, temperature, less];
    changes
        .iter()
        .filter_map(|change| change(household, at))
        .collect()
}

fn works(household: &Household, at: &[(i64, i64)]) -> bool {
    solve(household, at, First::Ready, BUDGET).0.is_some()
}

fn shifted(at: &[(i64, i64)], by: i64) -> Vec<(i64, i64)> {
    at.iter()
        .map(|(preferred, latest)| (preferred + by, latest + by))
        .collect()
}

fn later(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let by = SHIFTS
        .into_iter()
        .find(|by| works(household, &shifted(at, *by)))?;
    let args = [
        ("by", SaidValue::Minutes(by)),
        ("serving", name(&household.servings[0].name)),
        (
            "at",
            SaidValue::At(household.from_ms + (at[0].0 + by) * MINUTE),
        ),
    ];
    Some(Said::new(key("plan-way-later"), &args))
}

/// Beginning sooner is as if all that is ahead were later, the nights too. It makes no sense where something has begun.
fn earlier(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    if household
        .meats
        .iter()
        .any(|meat| meat.on.is_some() || meat.off_at_min.is_some())
    {
        return None;
    }
    let by = SHIFTS.into_iter().find(|by| {
        let mut other = household.clone();
        let moved = |window: &mut Window| {
            window.from_min += by;
            window.until_min += by;
        };
        other.from_ms -= by * MINUTE;
        other.sleep.iter_mut().for_each(moved);
        other.quiet.iter_mut().for_each(moved);
        for watch in &mut other.watches {
            watch.from_min += by;
            watch.until_min += by;
        }
        works(&other, &shifted(at, *by))
    })?;
    Some(Said::new(
        key("plan-way-earlier"),
        &[("by", SaidValue::Minutes(by))],
    ))
}

fn hands(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let other = Household {
        hands: household.hands + 1,
        ..household.clone()
    };
    (other.hands <= 3 && works(&other, at)).then(|| Said::new(key("plan-way-hands"), &[]))
}

fn place(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let mut other = household.clone();
    other.places.push(Place {
        name: String::new(),
        room_g: 10_000_000,
        keeps: Keeps::Heated { at_mk: PLACE_AT },
    });
    works(&other, at).then(|| {
        Said::new(
            key("plan-way-place"),
            &[("temp", SaidValue::Temp(PLACE_AT))],
        )
    })
}

fn pit(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let largest = household.pits.iter().max_by_key(|pit| pit.area_cm2)?;
    let mut other = household.clone();
    other.pits.push(super::household::Pit {
        hot: false,
        ..largest.clone()
    });
    (other.pits.len() <= 6 && works(&other, at))
        .then(|| Said::new(key("plan-way-pit"), &[("pit", name(&largest.name))]))
}

/// A temperature for which some meat has a time, at a pit that is not held at it.
fn temperature(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let mut temps: Vec<Mk> = household
        .meats
        .iter()
        .flat_map(|meat| meat.times.iter().map(|times| times.pit))
        .collect();
    temps.sort_unstable();
    temps.dedup();
    for (nr, pit) in household.pits.iter().enumerate() {
        let new = |temp: &&Mk| pit.temps.iter().all(|has| has.temp != **temp);
        for temp in temps.iter().filter(new) {
            let mut other = household.clone();
            let fuel = pit
                .temps
                .iter()
                .map(|temp| temp.fuel_g_per_h)
                .max()
                .unwrap_or(0);
            let added = super::household::PitTemp {
                temp: *temp,
                fuel_g_per_h: fuel,
            };
            other.pits[nr].temps.push(added);
            other.pits[nr].temps.sort_by_key(|temp| temp.temp);
            if works(&other, at) {
                let args = [("pit", name(&pit.name)), ("temp", SaidValue::Temp(*temp))];
                return Some(Said::new(key("plan-way-temperature"), &args));
            }
        }
    }
    None
}

/// The lightest meat without which it works.
fn less(household: &Household, at: &[(i64, i64)]) -> Option<Said> {
    let meats = &household.meats;
    let tried = || (0..meats.len()).filter(|_| (2..=MEATS_MAX).contains(&meats.len()));
    let mut order: Vec<usize> = tried().collect();
    order.sort_by_key(|nr| (meats[*nr].weight_g, *nr));
    let left_out = order.into_iter().find(|nr| {
        let mut other = household.clone();
        other.meats.remove(*nr);
        works(&other, at)
    })?;
    Some(Said::new(
        key("plan-way-less"),
        &[("meat", name(&meats[left_out].name))],
    ))
}
