//! The end of a sleep.

use super::{Due, Urgency};
use crate::{
    cook::{Cook, Known},
    log::Job,
};

/// The waking of the person who holds this device, in the first cook under way.
pub(super) fn due(known: &Known<'_>, cook: &Cook, now: i64) -> Option<Due> {
    let first = known
        .open_cooks()
        .map(|cook| (cook.started_at, cook.id))
        .min()?;
    let person = known
        .crew
        .people
        .get(&known.device)
        .filter(|_| first.1 == cook.id)?;
    let until = person.meant_to_wake(now)?;
    let ordinal = person.nights;
    Some(Due {
        ordinal,
        ..Due::new(cook, Job::WakeUp(cook.id), until, Urgency::Wake)
    })
}
