//! What is known of a fire: its signs, and when it was out.
//!
//! Law: a hand that lights or feeds a fire again is a sign that it burns now and none that it burned before.

use crate::{
    alarms::band_of,
    cook::{Cook, Known, PitCare, ahead::counts, safety_facts::SMOKER_LEAST},
    fire::FireDid,
    ids::PitId,
    log::Where,
    moment::MINUTE,
    safety::fire_out::Outage,
};

/// A pit that read too cold between two signs as far apart as this was out, milliseconds; sooner a lid was off. Common
/// practice, no source.
const OUT_MS: i64 = 30 * MINUTE;

/// What is known of a fire.
pub(super) struct Fire {
    /// The last sign that it burned: fuel, a hand that saw to it, or air within what the pit is held at.
    pub sign: Option<i64>,
    /// When it was out, oldest first, none touching another.
    pub outages: Vec<Outage>,
}

/// The fire of a pit up to `now`.
pub(super) fn fire(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Fire {
    let signs = Signs::of(known, cook, pit, now);
    let outages = signs.outages();
    Fire {
        sign: signs.all.last().copied(),
        outages: joined(outages),
    }
}

/// Instants, each list rising.
struct Signs {
    /// That it burned.
    all: Vec<i64>,
    /// Of these, air that was read within what the pit is held at.
    hot: Vec<i64>,
    /// Air that was read too cold.
    cold: Vec<i64>,
    /// That it was lit.
    lit: Vec<i64>,
    /// What a person said.
    said: Vec<Outage>,
}

impl Signs {
    fn of(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Self {
        let band = band_of(known, cook, pit, now);
        let low = band.map_or(SMOKER_LEAST, |band| band.low.min(SMOKER_LEAST));
        let none = PitCare::default();
        let care = cook.pits.get(&pit).unwrap_or(&none);
        let probes = cook
            .probes
            .iter()
            .filter(|(_, probe)| probe.place == Where::Pit { pit });
        let heard = probes.flat_map(|((source, sensor), _)| known.tails.of(source, sensor, now));
        let by_hand = care.read.iter().map(|(when, temp, _)| (when.at, *temp));
        let read = heard.chain(by_hand);
        let read = read.filter(|(at, _)| *at <= now && counts(*at, now));
        let (hot, cold): (Vec<_>, Vec<_>) = read.partition(|(_, temp)| *temp >= low);
        let [hot, cold] = [hot, cold].map(|all| rising(all.into_iter().map(|(at, _)| at)));
        // Reading the air counts as seeing to the fire; that it read cold is no sign of one.
        let no_sign = |at: i64| {
            let mut read = care.read.iter();
            read.any(|(when, temp, _)| when.at == at && *temp < low)
        };
        let hands = care.fed.iter().chain(&care.seen).map(|when| when.at);
        let hands = hands.filter(|at| *at <= now && counts(*at, now) && !no_sign(*at));
        let lit = care.did.iter().filter(|(_, did)| *did == FireDid::Lit);
        let lit = lit.map(|(when, _)| when.at);
        let lit = lit.filter(|at| *at <= now && counts(*at, now));
        let said = care.out.iter();
        let said = said.filter(|(when, _)| when.at <= now && counts(when.at, now));
        Self {
            all: rising(hands.chain(hot.iter().copied())),
            lit: rising(lit),
            said: said
                .map(|(when, until)| Outage {
                    from: (*until).min(when.at),
                    back: when.at,
                })
                .collect(),
            hot,
            cold,
        }
    }

    /// What was said; what was lit again; what read too cold for long between two signs, the first of them a reading.
    fn outages(&self) -> Vec<Outage> {
        let lit = self.lit.iter().filter_map(|back| {
            let before = self.all.partition_point(|at| at < back);
            let from = *self.all.get(before.checked_sub(1)?)?;
            Some(Outage { from, back: *back })
        });
        let cold = self.all.windows(2).filter_map(|pair| {
            let [from, back] = [pair[0], pair[1]];
            let first = self.cold.partition_point(|at| *at <= from);
            let was_cold = self.cold.get(first).is_some_and(|at| *at < back);
            let is_long = back - from >= OUT_MS && self.hot.binary_search(&from).is_ok();
            (was_cold && is_long).then_some(Outage { from, back })
        });
        self.said.iter().copied().chain(lit).chain(cold).collect()
    }
}

fn rising(all: impl Iterator<Item = i64>) -> Vec<i64> {
    let mut all: Vec<i64> = all.collect();
    all.sort_unstable();
    all.dedup();
    all
}

/// One for each stretch of them that overlap or touch.
fn joined(mut all: Vec<Outage>) -> Vec<Outage> {
    all.sort_by_key(|out| (out.from, out.back));
    let mut joined: Vec<Outage> = vec![];
    for out in all {
        match joined.last_mut() {
            Some(last) if out.from <= last.back => last.back = last.back.max(out.back),
            _ => joined.push(out),
        }
    }
    joined
}
