//! Pits, places, sleep.

use super::{HORIZON_MIN, of};
use crate::{
    plan::{
        answer::SaidValue,
        household::{Household, Keeps, Pit, Place},
        model::HELD_AT,
        no_plan::NoPlan,
        said::name,
    },
    units::Mk,
    words::key,
};

/// Smoking and roasting: from 130 °F, a smoker that hardly burns, to 700 °F, a kettle that is too hot.
const PIT_MK: std::ops::RangeInclusive<i64> = Mk::from_f(130).0..=Mk::from_f(700).0;

pub(super) fn check(household: &Household) -> Result<(), NoPlan> {
    household.pits.iter().try_for_each(pit)?;
    household.places.iter().try_for_each(place)?;
    let windows = household.sleep.iter().chain(&household.quiet);
    let windows = windows.map(|window| (window.from_min, window.until_min));
    let watches = household
        .watches
        .iter()
        .map(|watch| (watch.from_min, watch.until_min));
    windows.chain(watches).try_for_each(|(from, until)| {
        of("sleep", "from_min", from, -HORIZON_MIN..=HORIZON_MIN)?;
        of("sleep", "until_min", until, -HORIZON_MIN..=HORIZON_MIN)?;
        match from < until {
            true => Ok(()),
            false => Err(NoPlan::new(key("plan-window-empty"), &[])),
        }
    })
}

fn pit(pit: &Pit) -> Result<(), NoPlan> {
    of(&pit.name, "area_cm2", pit.area_cm2, 1..=100_000)?;
    of(&pit.name, "temps", pit.temps.len() as i64, 1..=5)?;
    of(&pit.name, "preheat_min", pit.preheat_min, 0..=240)?;
    of(&pit.name, "light_min", pit.light_min, 0..=120)?;
    of(&pit.name, "alone_min", pit.alone_min, 0..=HORIZON_MIN)?;
    for temp in &pit.temps {
        of(&pit.name, "temp", temp.temp.0, PIT_MK)?;
        of(&pit.name, "fuel_g_per_h", temp.fuel_g_per_h, 0..=20_000)?;
    }
    match pit.temps.is_sorted_by(|a, b| a.temp < b.temp) {
        true => Ok(()),
        false => Err(NoPlan::new(
            key("plan-temps-unsorted"),
            &[("pit", name(&pit.name))],
        )),
    }
}

fn place(place: &Place) -> Result<(), NoPlan> {
    of(&place.name, "room_g", place.room_g, 1..=10_000_000)?;
    match place.keeps {
        Keeps::Heated { at_mk } if at_mk < HELD_AT => {
            let args = [
                ("place", name(&place.name)),
                ("has", SaidValue::Temp(at_mk)),
                ("least", SaidValue::Temp(HELD_AT)),
            ];
            Err(NoPlan::new(key("plan-hold-unsafe"), &args))
        }
        Keeps::Heated { at_mk } => of(&place.name, "at_mk", at_mk.0, HELD_AT.0..=Mk::from_f(300).0),
        Keeps::Insulated {
            loses_permille_per_h,
            around_mk,
        } => {
            of(
                &place.name,
                "loses_permille_per_h",
                loses_permille_per_h,
                1..=900,
            )?;
            of(
                &place.name,
                "around_mk",
                around_mk.0,
                Mk::from_f(-40).0..=Mk::from_f(120).0,
            )
        }
    }
}
