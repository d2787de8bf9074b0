//! What was read of a pit, by its probes and by hand.

use crate::{
    cook::{Known, ahead::counts},
    ids::PitId,
    log::Where,
    moment::MINUTE,
    units::Mk,
};

/// A reading is fresh for so long. Common practice, no source.
const FRESH_MS: i64 = 30 * MINUTE;

/// All that was read of a pit up to `now`, by time; of two at one moment the colder counts.
fn all(known: &Known<'_>, pit: PitId, now: i64) -> Vec<(i64, Mk)> {
    let mut read: Vec<(i64, Mk)> = vec![];
    for cook in known.open_cooks() {
        let by_hand = cook.pits.get(&pit).into_iter().flat_map(|care| &care.read);
        let by_hand = by_hand.filter(|(when, ..)| counts(when.at, now));
        read.extend(by_hand.map(|(when, temp, _)| (when.at.min(now), *temp)));
        for ((source, sensor), probe) in &cook.probes {
            if probe.place == (Where::Pit { pit }) {
                let since = |(at, _): &(i64, Mk)| *at >= probe.since.at;
                read.extend(known.tails.of(source, sensor, now).filter(since));
            }
        }
    }
    read.sort_unstable_by_key(|(at, temp)| (*at, temp.0));
    read.dedup_by_key(|(at, _)| *at);
    read
}

/// The last reading of a pit, while it is fresh.
pub(super) fn fresh(known: &Known<'_>, pit: PitId, now: i64) -> Option<(i64, Mk)> {
    let last = all(known, pit, now).last().copied();
    last.filter(|(at, _)| now - at <= FRESH_MS)
}

/// What a pit was at on average from `since` on, each reading counted until the next; none where nothing fresh was read.
pub(super) fn mean(known: &Known<'_>, pit: PitId, since: i64, now: i64) -> Option<Mk> {
    fresh(known, pit, now)?;
    let read = all(known, pit, now);
    let held = read.iter().enumerate().filter_map(|(nr, (at, temp))| {
        let next = read.get(nr + 1).map_or(now, |(at, _)| *at);
        let long = next - (*at).max(since);
        (long > 0).then_some((i128::from(long), i128::from(temp.0)))
    });
    let (long, sum) = held.fold((0, 0), |(long, sum), (ms, temp)| {
        (long + ms, sum + ms * temp)
    });
    (long > 0).then(|| Mk((sum / long) as i64))
}
