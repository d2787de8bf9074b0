//! What is known of a meat on its way, off the log's state: all but the readings of its probes, which the door fetches.
//! Start at [`asked`]. Nothing claimed for `now` or later is in it, so two devices that hold the same entries ask the same.

use super::{
    facts::{DoneWhen, Facts, Likeness, Tried, Wrapped},
    minutes::{as_one, by_minute, coldest_by_minute},
    stays::{Stay, stays},
};
use crate::{
    alarms::{self, pull_point},
    checks::{
        Level, TestResult, Trust, cut_facts,
        cuts::{CutFacts, Degrees, DoneBy},
    },
    cook::{Cook, Known, Pass, Piece, Probe, verdict_input::standing},
    ids::ThermometerId,
    log::{Stage, Where},
    readings::Reading,
    safety::minimum,
    units::Mk,
};

/// One probe while it sat in one place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sitting {
    /// The instrument and its channel.
    pub series: (String, String),
    /// From when, milliseconds since 1970.
    pub from: i64,
    /// Until when, not included.
    pub until: i64,
    /// What its thermometer's check adds to each reading, millikelvin.
    pub shift: i64,
}

/// What is known of a meat, and which readings are to be fetched for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Asked {
    /// The probes of the pits it was on, while it was there.
    pub pit: Vec<Sitting>,
    /// The probes that sat in it.
    pub inside: Vec<Sitting>,
    facts: Facts,
    pit_by_hand: Vec<Reading>,
    read_by_hand: Vec<Reading>,
}

impl Asked {
    /// The facts, once the readings of [`pit`](Self::pit) and [`inside`](Self::inside) were fetched, in their order. Series
    /// stand in the order in which they began, so that one more that begins later moves none.
    pub fn facts(self, pit: &[Vec<Reading>], inside: &[Vec<Reading>]) -> Facts {
        let thinned = |sat: &[Sitting], read: &[Vec<Reading>]| -> Vec<Vec<Reading>> {
            let both = sat.iter().zip(read);
            both.map(|(sat, read)| by_minute(read, sat.shift)).collect()
        };
        let mut inner = thinned(&self.inside, inside);
        inner.retain(|series| !series.is_empty());
        inner.sort_by_key(|series| series[0].at);
        Facts {
            pit: as_one(&thinned(&self.pit, pit), self.pit_by_hand),
            inside: inner,
            by_hand: self.read_by_hand,
            ..self.facts
        }
    }
}

/// What a forecast of `piece` for the grid's `now` may look at; none where it is not on a pit then.
pub fn asked(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Asked> {
    let before = now.saturating_sub(1);
    let put_on = piece.on_pit_at(before)?;
    if !piece.is_on_pit(before) {
        return None;
    }
    let stays = stays(piece, put_on, now);
    let facts = Facts {
        key: key(cook, piece),
        cut: piece.cut,
        form: piece.form.value,
        weight_g: piece.weight_g.value,
        put_on,
        pit_meant: pit_meant(known, cook, piece, &stays, before),
        pit: vec![],
        inside: vec![],
        by_hand: vec![],
        wrapped: wrapped(piece, now),
        wetted: rising(piece.wetted.iter().map(|wetted| wetted.when.at), now),
        opened: opened(cook, piece, &stays),
        tried: tried(piece, now),
        done_when: done_when(piece),
        habits: known
            .lessons
            .habits(stays.last().map(|stay| stay.pit), piece.cut),
        now,
    };
    Some(Asked {
        pit: pit_probes(known, cook, &stays, before),
        inside: inner_probes(known, cook, piece, (put_on, now)),
        pit_by_hand: pit_by_hand(known, cook, &stays, before),
        read_by_hand: read_by_hand(known, piece, (put_on, now)),
        facts,
    })
}

/// Dice of its own for each meat of each cook, the same on every device.
fn key(cook: &Cook, piece: &Piece) -> u64 {
    let mut hash = blake3::Hasher::new();
    hash.update(cook.id.0.as_bytes());
    hash.update(piece.id.0.as_bytes());
    let mut first = [0; 8];
    first.copy_from_slice(&hash.finalize().as_bytes()[..8]);
    u64::from_le_bytes(first)
}

/// What the pit is set to be held between, else what was meant for the meat, else what its cut is usually cooked at: the
/// middle of it.
fn pit_meant(known: &Known<'_>, cook: &Cook, piece: &Piece, stays: &[Stay], now: i64) -> Mk {
    let middle = |low: Mk, high: Mk| Mk(low.0.midpoint(high.0));
    let pit = stays.last().map(|stay| stay.pit);
    let is_set = pit.and_then(|pit| known.crew.pits.get(&pit)?.band.value);
    let set = is_set.and_then(|_| alarms::band_of(known, cook, pit?, now));
    let meant = piece.meant.and_then(|meant| meant.pit);
    let Degrees { low, high } = meant.unwrap_or(cut_facts(piece.cut).time_at);
    set.map_or(middle(low, high), |band| middle(band.low, band.high))
}

/// What done means: a cut that is done by feel is tender; another reaches where it is taken off, never below its minimum.
fn done_when(piece: &Piece) -> DoneWhen {
    let facts = cut_facts(piece.cut);
    let Degrees { low, high } = facts.done_range;
    let middle = Mk(low.0.midpoint(high.0));
    let least = minimum(piece.cut, piece.form.value).temp;
    match facts.done_by {
        DoneBy::Feel => DoneWhen::Tender,
        DoneBy::FeelAndTemperature if piece.pull_at.value.is_none() => {
            DoneWhen::Heat(middle.max(least))
        }
        DoneBy::FeelAndTemperature | DoneBy::Temperature => DoneWhen::Heat(pull_point(piece)),
    }
}

/// Each wrapping and unwrapping; put on a pit anew, it is bare.
fn wrapped(piece: &Piece, now: i64) -> Vec<Wrapped> {
    let staged = piece.stages.iter().filter_map(|passed| {
        let wrap = match passed.stage {
            Stage::Wrapped { wrap } => Some(wrap),
            Stage::Unwrapped | Stage::OnPit { .. } => None,
            _ => return None,
        };
        let at = passed.when.at;
        Some(Wrapped { at, wrap })
    });
    let mut all: Vec<Wrapped> = staged.filter(|wrapped| wrapped.at < now).collect();
    all.sort_by_key(|wrapped| wrapped.at);
    let mut last = None;
    all.retain(|wrapped| std::mem::replace(&mut last, wrapped.wrap) != wrapped.wrap);
    all
}

fn rising(at: impl Iterator<Item = i64>, now: i64) -> Vec<i64> {
    let mut all: Vec<i64> = at.filter(|at| *at < now).collect();
    all.sort_unstable();
    all.dedup();
    all
}

/// When its pit was open while it was there, whatever for.
fn opened(cook: &Cook, piece: &Piece, stays: &[Stay]) -> Vec<i64> {
    let there = |stay: &Stay, at: &i64| (stay.from..stay.until).contains(at);
    let pits = stays.iter().flat_map(|stay| {
        let care = cook.pits.get(&stay.pit).into_iter();
        let opened = care.flat_map(|care| &care.opened).map(|when| when.at);
        opened.filter(move |at| there(stay, at))
    });
    let on = |at: &i64| stays.iter().any(|stay| there(stay, at));
    let tended = piece.wetted.iter().map(|wetted| wetted.when.at);
    let tended = tended
        .chain(piece.turned.iter().map(|when| when.at))
        .chain(piece.glazed.iter().map(|when| when.at))
        .filter(on);
    rising(pits.chain(tended), i64::MAX)
}

fn tried(piece: &Piece, now: i64) -> Vec<Tried> {
    let facts = cut_facts(piece.cut);
    let mut all: Vec<Tried> = piece
        .checks
        .iter()
        .filter(|pass| pass.when.at < now)
        .filter_map(|pass| {
            let (at, found) = (pass.when.at, likeness(&facts, pass)?);
            Some(Tried { at, found })
        })
        .collect();
    all.sort_by_key(|tried| (tried.at, tried.found));
    all
}

/// When it was first found done by feel, before it came off.
pub(super) fn found_done(piece: &Piece, off: i64) -> Option<i64> {
    let found = tried(piece, off).into_iter();
    let mut done = found.filter(|tried| tried.found == Likeness::Done);
    done.next().map(|tried| tried.at)
}

/// The least done of what decides by feel; where nothing of that was tried, of the hints, which never say done.
fn likeness(facts: &CutFacts, pass: &Pass) -> Option<Likeness> {
    let felt = |decides: bool| {
        let tried = pass.results.iter().filter(move |result| {
            facts.tests.contains(&result.test())
                && facts.feel_by.contains(&result.test()) == decides
        });
        tried.filter_map(TestResult::feel).min()
    };
    Some(match felt(true).or_else(|| felt(false))? {
        Level::NotYet => Likeness::Far,
        Level::Close => Likeness::Near,
        Level::Ready | Level::Over => Likeness::Done,
    })
}

/// Every probe that sits somewhere or sat there, with from when to when, the end not included.
fn placed(cook: &Cook) -> impl Iterator<Item = (&(String, String), &Probe, i64)> {
    let sits = cook
        .probes
        .iter()
        .map(|(series, probe)| (series, probe, i64::MAX));
    let sat = cook
        .probes_before
        .iter()
        .map(|moved| (&moved.series, &moved.probe, moved.until));
    sits.chain(sat)
}

fn sitting(
    known: &Known<'_>,
    (series, probe, until): (&(String, String), &Probe, i64),
    (from, to): (i64, i64),
) -> Option<Sitting> {
    let sitting = Sitting {
        series: series.clone(),
        from: probe.since.at.max(from),
        until: until.min(to),
        shift: corrected(known, probe.thermometer, Mk(0), to - 1)?.0,
    };
    (sitting.from < sitting.until).then_some(sitting)
}

/// A reading as it counts; none where its thermometer is too far off.
fn corrected(
    known: &Known<'_>,
    thermometer: Option<ThermometerId>,
    read: Mk,
    now: i64,
) -> Option<Mk> {
    match standing(known.crew, thermometer, now).trust(read) {
        Trust::Counts(mk) | Trust::Corrected(mk) => Some(mk),
        Trust::TooFarOff => None,
    }
}

fn pit_probes(known: &Known<'_>, cook: &Cook, stays: &[Stay], now: i64) -> Vec<Sitting> {
    let of = |stay: &Stay| {
        let within = (stay.from, stay.until.min(now.saturating_add(1)));
        let there =
            placed(cook).filter(|(_, probe, _)| probe.place == Where::Pit { pit: stay.pit });
        let sat = there.filter_map(move |placed| sitting(known, placed, within));
        sat.collect::<Vec<_>>()
    };
    in_order(stays.iter().flat_map(of).collect())
}

fn inner_probes(known: &Known<'_>, cook: &Cook, piece: &Piece, within: (i64, i64)) -> Vec<Sitting> {
    let inside = |place: &Where| matches!(place, Where::Piece { piece: id, .. } if *id == piece.id);
    let there = placed(cook).filter(|(_, probe, _)| inside(&probe.place));
    in_order(
        there
            .filter_map(|placed| sitting(known, placed, within))
            .collect(),
    )
}

fn in_order(mut all: Vec<Sitting>) -> Vec<Sitting> {
    all.sort_by(|a, b| (a.from, &a.series, a.until).cmp(&(b.from, &b.series, b.until)));
    all
}

fn pit_by_hand(known: &Known<'_>, cook: &Cook, stays: &[Stay], now: i64) -> Vec<Reading> {
    let of = |stay: &Stay| {
        let (from, until) = (stay.from, stay.until);
        let care = cook.pits.get(&stay.pit).into_iter();
        let read = care.flat_map(|care| &care.read);
        let read = read.filter(move |(when, ..)| (from..until).contains(&when.at));
        read.filter_map(|(when, temp, by)| {
            let temp = corrected(known, *by, *temp, now)?;
            Some(Reading { at: when.at, temp })
        })
        .collect::<Vec<_>>()
    };
    coldest_by_minute(stays.iter().flat_map(of))
}

fn read_by_hand(known: &Known<'_>, piece: &Piece, (from, until): (i64, i64)) -> Vec<Reading> {
    let read = piece
        .read
        .iter()
        .map(|read| (read.when.at, read.temp, read.thermometer));
    let passes = piece.checks.iter().flat_map(|pass| {
        pass.results.iter().filter_map(move |result| match result {
            TestResult::Heat(heat) => Some((pass.when.at, heat.mk, heat.thermometer)),
            _ => None,
        })
    });
    let within = |(at, ..): &(i64, Mk, _)| (from..until).contains(at);
    coldest_by_minute(
        read.chain(passes)
            .filter(within)
            .filter_map(|(at, temp, by)| {
                let temp = corrected(known, by, temp, until - 1)?;
                Some(Reading { at, temp })
            }),
    )
}
