//! What is known of a fire and of one meat over it, as the sum [`fire_out`](crate::safety::fire_out) asks for it.

use crate::{
    alarms::band_of,
    cook::{
        Cook, Known, Piece,
        ahead::counts,
        safety_facts::{SMOKER_LEAST, heats, kept, was_hot},
    },
    ids::PitId,
    log::Where,
    safety::{
        clocks::Kept,
        fire_out::{FireOutAnswer, FireOutInput, fire_out},
        food_log::{GAP_MS, TempAt},
        minimum,
    },
    units::Mk,
};

/// The last sign that the fire of a pit burned: fuel, a hand that saw to it, or air within what the pit is held at.
pub(super) fn last_sign(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Option<i64> {
    let low =
        band_of(known, cook, pit, now).map_or(SMOKER_LEAST, |band| band.low.min(SMOKER_LEAST));
    let care = cook.pits.get(&pit);
    let hands = care
        .into_iter()
        .flat_map(|care| care.fed.iter().chain(&care.seen).map(|when| when.at));
    // Reading the air counts as seeing to the fire; that it read cold is no sign of one.
    let cold: Vec<i64> = care
        .into_iter()
        .flat_map(|care| &care.read)
        .filter(|(_, temp, _)| *temp < low)
        .map(|(when, ..)| when.at)
        .collect();
    let probes = cook
        .probes
        .iter()
        .filter(|(_, probe)| probe.place == Where::Pit { pit });
    let read = probes.filter_map(|((source, sensor), _)| {
        let mut tail = known.tails.of(source, sensor, now).rev();
        tail.find(|(_, temp)| *temp >= low).map(|(at, _)| at)
    });
    let hands = hands.filter(|at| counts(*at, now) && !cold.contains(at));
    hands.chain(read).filter(|at| *at <= now).max()
}

/// What is known of one meat.
pub(super) struct Found {
    /// The answer of the sum.
    pub answer: FireOutAnswer,
    /// The last that was read of it before the fire was last seen, and after.
    pub before: Option<TempAt>,
    /// What was read since.
    pub since: Option<TempAt>,
}

/// What to do with one meat, of the place that was read coldest last.
pub(super) fn found(
    known: &Known<'_>,
    cook: &Cook,
    piece: &Piece,
    sign: Option<i64>,
    now: i64,
) -> Option<Found> {
    let on = piece.on_pit_at(now)?;
    let sign = sign.filter(|at| *at >= on).unwrap_or(on);
    let kept = kept(known, cook, piece);
    let places = heats(known, cook, piece, now);
    let of_place = |readings: &Vec<TempAt>| {
        one_place(
            kept,
            minimum(piece.cut, piece.form.value),
            on,
            sign,
            readings,
            now,
        )
    };
    let mut all: Vec<Found> = places.values().filter_map(of_place).collect();
    if all.is_empty() {
        all.extend(of_place(&vec![]));
    }
    all.into_iter().min_by_key(|one| {
        let unread = one.since.is_none();
        (one.answer.clock.left_ms, !unread)
    })
}

fn one_place(
    kept: Kept,
    minimum: crate::safety::Minimum,
    on: i64,
    sign: i64,
    readings: &[TempAt],
    now: i64,
) -> Option<Found> {
    let (before, since): (Vec<TempAt>, Vec<TempAt>) = readings
        .iter()
        .copied()
        .filter(|reading| reading.at >= on)
        .partition(|reading| reading.at <= sign);
    let last = before.last().copied();
    let kept = Kept {
        was_hot: was_hot(kept, on, &before, sign),
        ..kept
    };
    let start = TempAt {
        at: sign,
        temp: last.map_or(Mk(kept.cold().0 + 1), |last| last.temp),
    };
    // Over a fire that burns food does not get colder: what it last read holds up to the last sign of fire. What was never
    // hot has all its time on the way up counted; what was hot has spent nothing.
    let mut all = vec![];
    if !kept.was_hot {
        all.push(TempAt {
            at: on,
            temp: Mk(kept.cold().0 + 1).min(start.temp),
        });
        all.extend(before);
    }
    all.push(start);
    all.extend(&since);
    let fresh = since.last().filter(|last| now - last.at <= GAP_MS);
    let answer = fire_out(&FireOutInput {
        kept,
        minimum,
        readings: all,
        burned_until: Some(sign),
        found_at: fresh.map_or(now, |last| last.at),
        now,
    });
    Some(Found {
        answer: answer.ok()?,
        before: last,
        since: since.last().copied(),
    })
}
