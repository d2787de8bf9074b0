//! Nights and watches of a plan: times of day where the food is served, as minutes from the beginning of the plan.

use super::Ask;
use crate::{
    log::PlanAsked,
    moment::{HOUR, MINUTE},
    plan::{Watch, Window},
    words::{
        Words, key,
        zone::{instant_of, local},
    },
};
use chrono::{Duration, NaiveDate};
use chrono_tz::Tz;

/// So many nights are planned at the most.
const NIGHTS_MAX: i64 = 4;

/// The sleep of each night from the beginning to the serving. A night that has begun counts from the beginning on.
pub(super) fn windows(ask: &Ask, from: i64) -> Vec<Window> {
    let (Some(down), Some(up)) = (ask.asked.sleep_from_min, ask.asked.sleep_to_min) else {
        return vec![];
    };
    let zone: Tz = ask.serve.zone.parse().unwrap_or(Tz::UTC);
    let first = local(zone, from - 24 * HOUR).date();
    let nights =
        (0..=NIGHTS_MAX).filter_map(|night| first.checked_add_signed(Duration::days(night)));
    let sleep = |day: NaiveDate| {
        let wake = if up <= down { day.succ_opt()? } else { day };
        let (down, up) = (at(zone, day, down)?, at(zone, wake, up)?);
        let window = Window {
            from_min: ((down - from) / MINUTE).max(0),
            until_min: (up - from) / MINUTE,
        };
        let ahead = window.until_min > window.from_min && down < ask.serve.at;
        ahead.then_some(window)
    };
    nights.filter_map(sleep).take(NIGHTS_MAX as usize).collect()
}

fn at(zone: Tz, day: NaiveDate, minutes: i64) -> Option<i64> {
    let wall = day.and_hms_opt(0, 0, 0)? + Duration::minutes(minutes);
    Some(instant_of(zone, wall))
}

/// Somebody sits up while the others sleep, where that was said.
pub(super) fn watches(say: &Words<'_>, asked: &PlanAsked, sleep: &[Window]) -> Vec<Watch> {
    let watch = |window: &Window| Watch {
        name: say.text(WATCHER),
        from_min: window.from_min,
        until_min: window.until_min,
    };
    let nights = sleep.iter().filter(|_| asked.watched);
    nights.map(watch).collect()
}

/// Who has the watch in a plan.
pub(super) const WATCHER: &str = key("plan-watcher");
