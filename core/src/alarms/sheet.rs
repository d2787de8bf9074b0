//! What the accepted run sheet asks for.
//!
//! Laws: a job that is done, or was over before the plan was accepted, asks for nothing. Neither does what takes no hands
//! (sleep, rests), nor what rings by its own rule anyway: the first check of a meat, and the serving of the cook. A call waits
//! for the end of a sleep like any other, unless the plan put the job into the night on purpose.

use super::{Due, Urgency, meats::put_off};
use crate::{
    cook::{Cook, RunSheet},
    log::{Does, Job, PlannedJob, Subject},
};

/// The jobs of the sheet that are still to be done.
pub(super) fn due(cook: &Cook, now: i64) -> Vec<Due> {
    let Some(sheet) = &cook.sheets.now else {
        return vec![];
    };
    let asks = |job: &&PlannedJob| {
        rings(cook, job) && !sheet.is_history(job) && cook.job_done(job, now).is_none()
    };
    let jobs = sheet.plan.jobs.iter().filter(asks);
    jobs.map(|job| of_job(cook, sheet, job, now)).collect()
}

fn of_job(cook: &Cook, sheet: &RunSheet, planned: &PlannedJob, now: i64) -> Due {
    let job = Job::Sheet(planned.job);
    // Before the plan was accepted nobody could be called for it.
    let at = planned.at.max(sheet.when.at.min(planned.until));
    let at = put_off(cook, job, at, i64::MIN, now);
    let urgency = match planned.wakes {
        true => Urgency::Wake,
        false => Urgency::Call,
    };
    Due::new(cook, job, at, urgency)
}

fn rings(cook: &Cook, planned: &PlannedJob) -> bool {
    let of_cook = planned.job.on == Subject::Cook(cook.id);
    planned.hands > 0
        && match planned.job.does {
            Does::Vent | Does::Rest | Does::Sleep | Does::Check => false,
            Does::Serve => !(of_cook && planned.job.nth == 0 && cook.serve.value.is_some()),
            _ => true,
        }
}
