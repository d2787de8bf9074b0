//! Entries going from one device to another: split, in any order, repeated, some lost on the way and sent again later.

use super::{Told, device::Device, picture::have, rng::Rng};
use slowbend_core::log::Entry;

/// How entries travel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// As sent.
    Whole,
    /// Split, in any order, repeated, some lost.
    Rough,
}

/// What was taken in one meeting, as a line of the trace.
///
/// # Errors
/// A law that was broken.
pub fn meet(
    from: &mut Device,
    to: &mut Device,
    way: Way,
    true_ms: i64,
    rng: &mut Rng,
) -> Told<String> {
    let held = have(&to.entries(true_ms)?);
    let sent = from
        .door(true_ms)?
        .entries_after(&held)
        .map_err(|trouble| format!("law 1: nothing to send: {trouble}"))?;
    let parcels = match way {
        Way::Whole => vec![sent],
        Way::Rough => parcels(sent, rng),
    };
    take(to, &parcels, true_ms)
}

/// Everything that one holds, to the other: the cure where two wrote under one name.
///
/// # Errors
/// A law that was broken.
pub fn pour(from: &mut Device, to: &mut Device, true_ms: i64) -> Told<String> {
    let sent = from.entries(true_ms)?;
    take(to, &[sent], true_ms)
}

fn take(to: &mut Device, parcels: &[Vec<Entry>], true_ms: i64) -> Told<String> {
    let (moment, name) = (to.moment(true_ms), to.name);
    let (mut fresh, mut forked) = (0, 0);
    for parcel in parcels {
        let told = to
            .door(true_ms)?
            .absorb(parcel, &moment)
            .map_err(|trouble| format!("law 1: device {name} does not absorb: {trouble}"))?;
        fresh += told.fresh;
        forked += told.forked;
        if told.refused > 0 {
            return Err(format!(
                "law 3: device {name} refuses {} of a peer's entries",
                told.refused
            ));
        }
        for entry in parcel {
            to.acked.entry(entry.key).or_insert_with(|| entry.clone());
        }
    }
    Ok(format!(
        "takes {fresh} entries in {} parcels, {forked} forked",
        parcels.len()
    ))
}

fn parcels(mut sent: Vec<Entry>, rng: &mut Rng) -> Vec<Vec<Entry>> {
    if rng.chance(30) {
        let kept = rng.below(sent.len() + 1);
        sent.truncate(kept);
    }
    if rng.chance(60) {
        rng.shuffle(&mut sent);
    }
    if rng.chance(30) {
        sent.retain(|_| rng.chance(70));
    }
    let mut parcels = Vec::new();
    while !sent.is_empty() {
        let size = 1 + rng.below(sent.len());
        parcels.push(sent.drain(..size).collect::<Vec<_>>());
    }
    if rng.chance(50) {
        parcels.extend(rng.pick(&parcels).cloned());
    }
    parcels
}
