//! Where an accepted sheet no longer fits what happened. Start at [`strains`].
//!
//! Laws: nothing here rings, moves a job or records anything: it is told, and a new sheet is a proposal like any other. What
//! a person kept the sheet against is not told again until something further no longer fits.

mod cold;
mod missing;

use super::household::is_open;
use crate::{
    ahead::Grain,
    cook::{Cook, Known, Piece, RunSheet},
    ids::PitId,
    log::{Does, OnSheet, PlannedJob, Strain, Subject},
    moment::MINUTE,
    units::Mk,
};

/// A job that should have begun longer ago than this is late: the plan's own quarter.
const LATE_MS: i64 = 15 * MINUTE;
/// A forecast that is off the sheet by no more is no change, milliseconds: half an hour, or its rounding where that is more.
const OFF_MS: i64 = 30 * MINUTE;
/// What was kept is told again once it is off by so much more, minutes. Common practice, no source.
const FURTHER_MIN: i64 = 30;

/// One thing by which a sheet no longer fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strained {
    /// What, as it is recorded.
    pub strain: Strain,
    /// Why.
    pub why: Why,
}

/// Why a sheet no longer fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The job should have begun then.
    Late {
        /// When, milliseconds since 1970.
        at: i64,
    },
    /// The forecast has the meat done at another time.
    Forecast,
    /// It is wanted at another time.
    Moved,
    /// A pit is far colder than the sheet counts on.
    Cold {
        /// Which pit.
        pit: PitId,
        /// What it reads.
        reads: Mk,
        /// What the sheet counts on.
        meant: Mk,
    },
    /// It is in the cook and not on the sheet.
    Missing,
    /// What is served when was said anew.
    Courses,
}

/// All by which the accepted sheet of a cook no longer fits, the soonest job first; nothing where there is no sheet.
pub fn strains(known: &Known<'_>, cook: &Cook, now: i64) -> Vec<Strained> {
    let Some(sheet) = cook.sheets.now.as_ref().filter(|_| cook.is_open()) else {
        return vec![];
    };
    let mut all = moved(cook, sheet, now);
    all.extend(
        sheet
            .plan
            .jobs
            .iter()
            .filter_map(|job| late(cook, sheet, job, now)),
    );
    all.extend(
        sheet
            .plan
            .jobs
            .iter()
            .filter_map(|job| forecast(known, cook, job, now)),
    );
    all.extend(cold::cold(known, cook, sheet, now));
    all.extend(missing::missing(cook, sheet, now));
    all
}

/// Those of them that the person was not told of when the sheet was kept.
pub fn unsaid(cook: &Cook, all: &[Strained]) -> Vec<Strained> {
    let sheet = cook.sheets.now.as_ref().map(|sheet| sheet.when.entry);
    let kept = cook.sheets.kept.as_ref();
    let kept = kept.filter(|kept| Some(kept.sheet) == sheet);
    let is_new = |strained: &&Strained| {
        let Strain { job, by_min } = strained.strain;
        let mut against = kept.iter().flat_map(|kept| &kept.against);
        !against.any(|was| was.job == job && (was.by_min - by_min).abs() < FURTHER_MIN)
    };
    all.iter().filter(is_new).copied().collect()
}

fn strained(job: OnSheet, by_ms: i64, why: Why) -> Strained {
    let strain = Strain {
        job,
        by_min: by_ms / MINUTE,
    };
    Strained { strain, why }
}

/// The hour of the table or of a course is another, or what is in them is.
fn moved(cook: &Cook, sheet: &RunSheet, now: i64) -> Vec<Strained> {
    let serve = |nth| OnSheet {
        does: Does::Serve,
        on: Subject::Cook(cook.id),
        nth,
    };
    let open = open(cook, now);
    let courses = cook.courses.when;
    if courses.is_some_and(|when| when.at > sheet.when.at) {
        return vec![strained(serve(0), 0, Why::Courses)];
    }
    let mut all = vec![];
    let for_table = open.iter().any(|of| cook.course_of(*of).is_none());
    let table = cook.serve.value.as_ref().filter(|_| for_table);
    let by = table.map_or(0, |table| table.at - sheet.plan.serve.at);
    all.extend((by.abs() >= MINUTE).then(|| strained(serve(0), by, Why::Moved)));
    all
}

/// A job that should have begun, and holds up what comes after it.
fn late(cook: &Cook, sheet: &RunSheet, job: &PlannedJob, now: i64) -> Option<Strained> {
    if sheet.is_history(job) || cook.job_done(job, now).is_some() {
        return None;
    }
    let long = job.until - job.at;
    let next = || {
        let mut later = sheet.plan.jobs.iter().filter(|next| next.at > job.at);
        let next = later.find(|next| next.job.on == job.job.on && next.hands > 0);
        next.map(|next| next.at - long)
    };
    let should = match (job.job.does, job.job.on) {
        (Does::Light, _) | (Does::PutOn | Does::Cut, Subject::Piece(_)) => job.at,
        (Does::TakeOff, Subject::Piece(_)) => job.until,
        // What may still begin later holds nothing up.
        (Does::Thaw | Does::Brine | Does::Trim | Does::Rub, _) => next()?.max(job.at),
        (Does::Dish, of) => table(cook, sheet, of) - long,
        _ => return None,
    };
    let by = now - should;
    (by > LATE_MS).then(|| strained(job.job, now - job.at, Why::Late { at: job.at }))
}

/// When something is on the table.
fn table(cook: &Cook, sheet: &RunSheet, of: Subject) -> i64 {
    let course = cook.course_of(of);
    course.map_or(sheet.plan.serve.at, |course| course.serve.at)
}

fn forecast(known: &Known<'_>, cook: &Cook, job: &PlannedJob, now: i64) -> Option<Strained> {
    let (Does::TakeOff, Subject::Piece(id)) = (job.job.does, job.job.on) else {
        return None;
    };
    let ahead = known.ahead.get(&id)?;
    let on = cook.pieces.get(&id)?.is_on_pit(now);
    let done = ahead.forecast.done.filter(|_| on)?;
    let grain = ahead.told.map_or(0, |told| Grain::width(told.grain));
    let by = done.p50 - job.at;
    (by.abs() > OFF_MS.max(grain)).then(|| strained(job.job, by, Why::Forecast))
}

/// The meats and dishes that are still to be made ready.
fn open(cook: &Cook, now: i64) -> Vec<Subject> {
    let meats = cook.meats().filter(|piece| is_open(piece, now));
    let meats = meats.map(|piece: &Piece| Subject::Piece(piece.id));
    let dishes = cook.dishes.values().filter(|dish| dish.ready.is_none());
    meats
        .chain(dishes.map(|dish| Subject::Dish(dish.id)))
        .collect()
}
