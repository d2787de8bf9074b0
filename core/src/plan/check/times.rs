//! When people eat: wall times become minutes.

use super::{HORIZON_MIN, of};
use crate::{
    moment::MINUTE,
    plan::{
        answer::SaidValue,
        household::{Household, Serving, When},
        no_plan::NoPlan,
        said::name,
    },
    words::{
        key,
        zone::{instant_of, local},
    },
};
use chrono::NaiveDateTime;
use chrono_tz::Tz;

/// The preferred and the latest minute of each serving.
pub(super) fn check(household: &Household) -> Result<Vec<(i64, i64)>, NoPlan> {
    household
        .servings
        .iter()
        .map(|serving| times(household, serving))
        .collect()
}

fn times(household: &Household, serving: &Serving) -> Result<(i64, i64), NoPlan> {
    let preferred = minute(household, serving, &serving.preferred)?;
    let latest = match &serving.latest {
        Some(latest) => minute(household, serving, latest)?,
        None => preferred,
    };
    let at = |minute: i64| SaidValue::At(household.from_ms + minute * MINUTE);
    let called = ("serving", name(&serving.name));
    if preferred < 0 {
        let args = [called, ("at", at(preferred)), ("now", at(0))];
        return Err(NoPlan::new(key("plan-serving-past"), &args));
    }
    if latest < preferred {
        let args = [called, ("latest", at(latest)), ("preferred", at(preferred))];
        return Err(NoPlan::new(key("plan-latest-before"), &args));
    }
    of(&serving.name, "preferred", preferred, 0..=HORIZON_MIN)?;
    of(&serving.name, "latest", latest, preferred..=preferred + 600)?;
    match serving.turn_in_min {
        Some(_) if latest > preferred => Err(NoPlan::new(key("plan-turn-in-waits-not"), &[called])),
        Some(minutes) => {
            of(&serving.name, "turn_in_min", minutes, 0..=15).map(|()| (preferred, latest))
        }
        None => Ok((preferred, latest)),
    }
}

fn minute(household: &Household, serving: &Serving, when: &When) -> Result<i64, NoPlan> {
    let text = match when {
        When::Min(minute) => return Ok(*minute),
        When::Wall(text) => text,
    };
    let zone = household.zone.as_deref().unwrap_or_default();
    let Ok(zone) = zone.parse::<Tz>() else {
        return Err(NoPlan::new(key("plan-zone"), &[("zone", name(zone))]));
    };
    let Ok(wall) = NaiveDateTime::parse_from_str(text, "%Y-%m-%dT%H:%M") else {
        let args = [("serving", name(&serving.name)), ("typed", name(text))];
        return Err(NoPlan::new(key("plan-wall-unread"), &args));
    };
    let instant = instant_of(zone, wall);
    let shows = local(zone, instant);
    if shows != wall {
        let args = [
            ("serving", name(&serving.name)),
            ("typed", name(&wall.format("%H:%M").to_string())),
            ("nearest", name(&shows.format("%H:%M").to_string())),
        ];
        return Err(NoPlan::new(key("plan-wall-skipped"), &args));
    }
    Ok((instant - household.from_ms).div_euclid(MINUTE))
}
