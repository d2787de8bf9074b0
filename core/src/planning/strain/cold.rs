//! Pits that read far less than a sheet counts on.

use super::{LATE_MS, Strained, Why, strained};
use crate::{
    cook::{Cook, Known, RunSheet},
    log::{Does, Subject},
    planning::{readings, remaining},
    units::Mk,
};
use std::collections::BTreeMap;

/// A pit that reads so much under what the sheet counts on is cold, °F. Common practice, no source.
const COLD_F: i64 = 50;

/// Pits that are far colder than the sheet counts on by now.
pub(super) fn cold<'a>(
    known: &'a Known<'_>,
    cook: &'a Cook,
    sheet: &'a RunSheet,
    now: i64,
) -> impl Iterator<Item = Strained> + 'a {
    let lit = sheet.plan.jobs.iter().filter(move |job| {
        let light = matches!(job.job.does, Does::Light | Does::Step);
        let up = match job.job.does {
            Does::Light => job.until,
            _ => job.at + LATE_MS,
        };
        let done = cook.job_done(job, now);
        light && up < now && done.is_some_and(|done| !done.skipped)
    });
    let last = lit.fold(BTreeMap::new(), |mut last, job| {
        last.insert(job.job.on, job);
        last
    });
    last.into_values().filter_map(move |job| {
        let Subject::Pit(pit) = job.job.on else {
            return None;
        };
        let out = sheet.plan.jobs.iter().any(|out| {
            let its = out.job.on == job.job.on && out.job.does == Does::LetOut;
            its && (out.at <= now || cook.job_done(out, now).is_some())
        });
        let (_, reads) = readings::fresh(known, pit, now).filter(|_| !out)?;
        let meant = remaining::held(known, cook, pit, now)?;
        let why = Why::Cold { pit, reads, meant };
        let short = Mk::from_f(COLD_F).0 - Mk::from_f(0).0;
        (meant.0 - reads.0 >= short).then(|| strained(job.job, 0, why))
    })
}
