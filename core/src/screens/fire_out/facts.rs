//! What is known of one meat over a fire, as the sum [`fire_out`](crate::safety::fire_out) asks for it.

use super::fire::Fire;
use crate::{
    cook::{
        Cook, Known, Piece,
        safety_facts::{heats, kept, was_hot},
    },
    safety::{
        Minimum,
        clocks::Kept,
        fire_out::{FireOutAnswer, FireOutInput, Outage, fire_out},
        food_log::{GAP_MS, TempAt},
        minimum,
    },
    units::Mk,
};

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
    fire: &Fire,
    now: i64,
) -> Option<Found> {
    let over = Over {
        on: piece.on_pit_at(now)?,
        kept: kept(known, cook, piece),
        minimum: minimum(piece.cut, piece.form.value),
        now,
    };
    let places = heats(known, cook, piece, now);
    let mut all: Vec<Found> = places
        .values()
        .filter_map(|readings| over.place(fire, readings))
        .collect();
    if all.is_empty() {
        all.extend(over.place(fire, &[]));
    }
    all.into_iter().min_by_key(|one| {
        let unread = one.since.is_none();
        (one.answer.clock.left_ms, !unread)
    })
}

/// A meat over a fire.
struct Over {
    on: i64,
    kept: Kept,
    minimum: Minimum,
    now: i64,
}

/// Since when nobody knows of the fire, and when it was out before that.
struct Silence {
    sign: i64,
    outages: Vec<Outage>,
}

impl Over {
    /// An outage is over for a place once that was read over the fire that burned again; until then nothing is known since.
    fn silence(&self, fire: &Fire, readings: &[TempAt]) -> Silence {
        let sign = fire.sign.filter(|at| *at >= self.on).unwrap_or(self.on);
        let mut silence = Silence {
            sign,
            outages: vec![],
        };
        for out in fire.outages.iter().filter(|out| out.back > self.on) {
            let from = out.from.max(self.on);
            let Some(read) = readings.iter().find(|reading| reading.at >= out.back) else {
                silence.sign = silence.sign.min(from);
                break;
            };
            let back = read.at;
            silence.outages.push(Outage { from, back });
        }
        silence
    }

    fn place(&self, fire: &Fire, readings: &[TempAt]) -> Option<Found> {
        let readings: Vec<TempAt> = readings
            .iter()
            .copied()
            .filter(|reading| reading.at >= self.on)
            .collect();
        let Silence { sign, outages } = self.silence(fire, &readings);
        let began = outages.first().map_or(sign, |out| out.from.min(sign));
        let until = |end: i64| readings.partition_point(|reading| reading.at <= end);
        let (before, after) = readings.split_at(until(began));
        let kept = Kept {
            was_hot: was_hot(self.kept, self.on, before, began),
            ..self.kept
        };
        let low = Mk(kept.cold().0 + 1);
        let held = |at: i64| TempAt {
            at,
            temp: readings[..until(at)].last().map_or(low, |last| last.temp),
        };
        // Over a fire that burns food does not get colder: what it last read holds up to the last sign of fire. What was never
        // hot has all its time on the way up counted; what was hot has spent nothing.
        let mut all = vec![];
        if !kept.was_hot {
            all.push(TempAt {
                at: self.on,
                temp: low.min(held(began).temp),
            });
            all.extend(before);
        }
        all.extend(after);
        let burned = outages.iter().map(|out| out.from).chain([sign]);
        all.extend(burned.filter(|at| *at >= began).map(held));
        all.sort_by_key(|reading| reading.at);
        let (before, since) = readings.split_at(until(sign));
        let since = since.last().copied();
        let is_fresh = |at: i64| self.now - at <= GAP_MS;
        let fresh = since.map(|last| last.at).filter(|at| is_fresh(*at));
        // Over a fire that burns again, a place that was read since is read: its minutes stay spent.
        let over_it = outages.last().map(|out| out.back);
        let over_it = over_it.filter(|_| is_fresh(sign));
        let answer = fire_out(&FireOutInput {
            kept,
            minimum: self.minimum,
            readings: held_hot(&all, kept.hot(), sign, &outages),
            burned_until: Some(sign),
            outages,
            found_at: fresh.or(over_it).unwrap_or(self.now),
            now: self.now,
        });
        Some(Found {
            answer: answer.ok()?,
            before: before.last().copied(),
            since,
        })
    }
}

/// The same readings, and between two of them, where the first was hot and the fire burned, the first again: food over a fire
/// that burns stays hot though nobody reads it.
fn held_hot(readings: &[TempAt], hot: Mk, sign: i64, outages: &[Outage]) -> Vec<TempAt> {
    let burned = |from: i64, to: i64| {
        let mut out = outages.iter();
        to <= sign && !out.any(|out| out.from < to && from < out.back)
    };
    let step = usize::try_from(GAP_MS).expect("ten minutes fit");
    let mut all = vec![];
    for pair in readings.windows(2) {
        all.push(pair[0]);
        if pair[0].temp >= hot && burned(pair[0].at, pair[1].at) {
            let held = (pair[0].at..pair[1].at).step_by(step).skip(1);
            all.extend(held.map(|at| TempAt { at, ..pair[0] }));
        }
    }
    all.extend(readings.last());
    all
}
