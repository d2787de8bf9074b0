//! Which readings a screen asks for. Start at [`wanted`].

use super::ReadingsOf;
use crate::{
    chart::{LONGEST_MS, Span},
    checks::{TestResult, Trust},
    cook::{Cook, Known, Piece, Probe, ahead::counts, verdict_input::standing},
    ids::{CookId, PieceId, PitId, ThermometerId},
    log::Where,
    moment::{HOUR, MINUTE},
    readings::{Reading, settle::settle},
    screens::ahead::fan::fan_of,
    units::Mk,
};

/// How many series a chart has room for. Common practice, no source.
pub const SERIES_MOST: usize = 12;
/// How many columns a chart has at the most: as many as a phone has points across, twice.
const COLUMNS_MOST: u32 = 720;
/// How much may be shown, hours.
pub(super) const HOURS: [u32; 4] = [1, 3, 6, 12];
/// The table has a row for each of these, milliseconds, by how long a stretch is shown at the most.
const ROWS: [(i64, i64); 3] = [
    (4 * HOUR, 10 * MINUTE),
    (26 * HOUR, 30 * MINUTE),
    (i64::MAX, 2 * HOUR),
];

/// What was read at one place, by one probe or by hand.
#[derive(Clone, Debug)]
pub struct Strand {
    /// The probe's instrument and channel; none = by hand.
    pub series: Option<(String, String)>,
    /// From when, milliseconds since 1970.
    pub from: i64,
    /// Until when, included.
    pub until: i64,
    /// What was read by hand, corrected, by time.
    pub by_hand: Vec<Reading>,
    pub(super) at: At,
    pub(super) thermometer: Option<ThermometerId>,
    pub(super) correction: Correction,
}

/// What is made of what a probe reads.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Correction {
    /// Is added to each reading, millikelvin.
    pub shift: i64,
    /// By how much the thermometer is off, where that is said.
    pub said: Option<i64>,
    /// Whether it is off by so much that nothing counts.
    pub too_far: bool,
}

/// Where a strand was read.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum At {
    /// The air of a pit.
    Pit(PitId),
    /// The inside of a meat, at a spot.
    Meat(PieceId, String),
    /// Nobody said where.
    Nowhere,
}

/// All that one screen asks for.
#[derive(Clone, Debug)]
pub struct Wanted {
    /// Of which cook.
    pub cook: CookId,
    /// Whose readings.
    pub of: ReadingsOf,
    /// What is drawn.
    pub span: Span,
    /// The rows of the table.
    pub rows: Span,
    /// The series, in the order of their numbers.
    pub strands: Vec<Strand>,
    pub(super) hours: Option<u32>,
    pub(super) whole_ms: i64,
    pub(super) left_out: usize,
}

/// What is asked for: all of `of`, or its last `hours`. None where it is not known here.
pub fn wanted(known: &Known<'_>, of: ReadingsOf, hours: Option<u32>, now: i64) -> Option<Wanted> {
    let cook = match of {
        ReadingsOf::Cook { cook } | ReadingsOf::Pit { cook, .. } => known.cooks.get(&cook)?,
        ReadingsOf::Piece { piece } => known.piece(piece)?.0,
    };
    if let ReadingsOf::Pit { pit, .. } = of {
        known.crew.pits.get(&pit)?;
    }
    let mut strands = strands(known, cook, of, now);
    let left_out = strands.len().saturating_sub(SERIES_MOST);
    strands.truncate(SERIES_MOST);
    let (from, to) = stretch(cook, of, &strands, now);
    let hours = hours.filter(|hours| HOURS.contains(hours));
    let shown = hours.map_or(from, |hours| from.max(to - i64::from(hours) * HOUR));
    let ahead = fan_of(known, of, now).last();
    let span = Span::over(
        shown,
        ahead.map_or(to, |last| to.max(last.at + 1)),
        COLUMNS_MOST,
    );
    let read_to = ahead.map_or(span.to(), |_| to);
    let row = ROWS
        .into_iter()
        .find(|(most, _)| read_to - span.from <= *most);
    let row = row.map_or(2 * HOUR, |(_, row)| row);
    Some(Wanted {
        cook: cook.id,
        of,
        rows: Span::in_steps(span.from, read_to, row),
        span,
        strands,
        hours,
        whole_ms: to - from,
        left_out,
    })
}

/// From the first that is known to this minute, or to the end of the cook and of what was read in it.
fn stretch(cook: &Cook, of: ReadingsOf, strands: &[Strand], now: i64) -> (i64, i64) {
    let saved = || {
        strands
            .iter()
            .filter_map(|strand| cook.saved.get(strand.series.as_ref()?))
    };
    let end = cook.finished.map_or(now, |finished| finished.at.min(now));
    let read = saved()
        .map(|saved| saved.to)
        .chain(strands.iter().filter_map(|s| Some(s.by_hand.last()?.at)));
    let to = read.filter(|at| *at <= now).fold(end, i64::max);
    let to = to
        .div_euclid(MINUTE)
        .saturating_add(1)
        .saturating_mul(MINUTE);
    let on_pit = cook
        .pieces
        .values()
        .filter(|piece| shows(of, piece))
        .filter_map(|piece| piece.on_pit_at(now));
    let began = strands
        .iter()
        .map(|strand| strand.from)
        .chain(on_pit)
        .filter(|at| *at < to);
    let from = began.min().unwrap_or(cook.started_at.min(to - HOUR));
    (from.max(to - LONGEST_MS).min(to - MINUTE), to)
}

/// Whether a meat is among what is asked for.
pub(super) fn shows(of: ReadingsOf, piece: &Piece) -> bool {
    match of {
        ReadingsOf::Cook { .. } => true,
        ReadingsOf::Piece { piece: id } => id == piece.id,
        ReadingsOf::Pit { .. } => false,
    }
}

fn strands(known: &Known<'_>, cook: &Cook, of: ReadingsOf, now: i64) -> Vec<Strand> {
    let sits = cook
        .probes
        .iter()
        .map(|(series, probe)| (series, probe, now));
    let sat = cook.probes_before.iter().map(|moved| {
        let until = moved.until.saturating_sub(1).min(now);
        (&moved.series, &moved.probe, until)
    });
    let placed = sits
        .chain(sat)
        .filter(|(_, probe, until)| counts(probe.since.at, now) && probe.since.at <= *until);
    let mut all: Vec<Strand> = placed
        .map(|(series, probe, until)| of_probe(known, series, probe, until, now))
        .collect();
    all.extend(by_hand(known, cook, now));
    all.extend(nowhere(cook, now));
    all.retain(|strand| is_of(of, &strand.at));
    all.sort_by_cached_key(|strand| {
        (
            place(known, &strand.at),
            strand.series.is_none(),
            strand.from,
            strand.series.clone(),
        )
    });
    all
}

fn is_of(of: ReadingsOf, at: &At) -> bool {
    match (of, at) {
        (ReadingsOf::Cook { .. }, _) => true,
        (ReadingsOf::Piece { piece }, At::Meat(id, _)) => piece == *id,
        (ReadingsOf::Pit { pit, .. }, At::Pit(id)) => pit == *id,
        _ => false,
    }
}

/// Pits before meats before what was read nowhere, each by its name, the spots of a meat together.
fn place(known: &Known<'_>, at: &At) -> (u8, String, At) {
    let (rank, name) = match at {
        At::Pit(pit) => (
            0,
            known.crew.pits.get(pit).map(|pit| pit.name.value.clone()),
        ),
        At::Meat(piece, _) => (
            1,
            known
                .piece(*piece)
                .map(|(_, piece)| piece.name.value.clone()),
        ),
        At::Nowhere => (2, None),
    };
    (rank, name.unwrap_or_default(), at.thing())
}

impl At {
    /// The pit or the meat, whatever the spot.
    pub(super) fn thing(&self) -> Self {
        match self {
            Self::Meat(piece, _) => Self::Meat(*piece, String::new()),
            other => other.clone(),
        }
    }
}

fn of_probe(
    known: &Known<'_>,
    series: &(String, String),
    probe: &Probe,
    until: i64,
    now: i64,
) -> Strand {
    Strand {
        series: Some(series.clone()),
        from: probe.since.at,
        until,
        by_hand: vec![],
        at: match &probe.place {
            Where::Pit { pit } => At::Pit(*pit),
            Where::Piece { piece, spot } => At::Meat(*piece, spot.clone()),
        },
        thermometer: probe.thermometer,
        correction: correction(known, probe.thermometer, now),
    }
}

/// The same as a verdict makes of it: see [`Standing::trust`](crate::checks::Standing::trust).
fn correction(known: &Known<'_>, thermometer: Option<ThermometerId>, now: i64) -> Correction {
    let standing = standing(known.crew, thermometer, now);
    match standing.trust(Mk(0)) {
        Trust::Counts(Mk(shift)) => Correction {
            shift,
            ..Correction::default()
        },
        Trust::Corrected(Mk(shift)) => Correction {
            shift,
            said: Some(standing.off_mk()),
            too_far: false,
        },
        Trust::TooFarOff => Correction {
            shift: 0,
            said: Some(standing.off_mk()),
            too_far: true,
        },
    }
}

/// A series of a file that nobody gave a place.
fn nowhere(cook: &Cook, now: i64) -> impl Iterator<Item = Strand> + '_ {
    let placed = |series: &(String, String)| {
        cook.probes.contains_key(series)
            || cook
                .probes_before
                .iter()
                .any(|moved| moved.series == *series)
    };
    cook.saved
        .iter()
        .filter(move |(series, saved)| !placed(series) && saved.from <= now)
        .map(move |(series, saved)| Strand {
            series: Some(series.clone()),
            from: saved.from,
            until: saved.to.min(now),
            by_hand: vec![],
            at: At::Nowhere,
            thermometer: None,
            correction: Correction::default(),
        })
}

/// What was read by hand, of each pit and each meat: one strand, in whatever spot. A thermometer that is too far off is
/// left out, as it is when a meat is judged.
fn by_hand(known: &Known<'_>, cook: &Cook, now: i64) -> Vec<Strand> {
    let taken = |at: i64, temp: Mk, thermometer| {
        let trusted = standing(known.crew, thermometer, now).trust(temp);
        match trusted {
            Trust::Counts(temp) | Trust::Corrected(temp) if counts(at, now) => Some(Reading {
                at: at.min(now),
                temp,
            }),
            _ => None,
        }
    };
    let pits = cook.pits.iter().map(|(pit, care)| {
        let read = care
            .read
            .iter()
            .filter_map(|(when, temp, by)| taken(when.at, *temp, *by));
        hand_strand(At::Pit(*pit), read.collect(), now)
    });
    let meats = cook.pieces.values().map(|piece| {
        let passes = piece
            .checks
            .iter()
            .flat_map(|pass| pass.results.iter().map(|result| (pass.when.at, result)));
        let tried = passes.filter_map(|(at, result)| match result {
            TestResult::Heat(heat) => taken(at, heat.mk, heat.thermometer),
            _ => None,
        });
        let read = piece
            .read
            .iter()
            .filter_map(|read| taken(read.when.at, read.temp, read.thermometer));
        hand_strand(
            At::Meat(piece.id, String::new()),
            read.chain(tried).collect(),
            now,
        )
    });
    pits.chain(meats).flatten().collect()
}

fn hand_strand(at: At, mut by_hand: Vec<Reading>, until: i64) -> Option<Strand> {
    settle(&mut by_hand);
    Some(Strand {
        series: None,
        from: by_hand.first()?.at,
        until,
        by_hand,
        at,
        thermometer: None,
        correction: Correction::default(),
    })
}
