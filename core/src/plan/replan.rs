//! A plan made anew, and what is different. Start at [`replan`].
//!
//! What has happened is told by the household: its beginning is now, meats that are on or off say so, preparation that is done
//! is left out, a pit that burns is hot. Law: what is done does not move, for the search has nothing to choose there.

use super::{
    answer::{Answer, Job, Of, Plan, What},
    household::Household,
    no_plan::NoPlan,
    solve::plan,
};
use crate::moment::MINUTE;
use serde::{Deserialize, Serialize};

/// A new plan beside the one that was.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Replanned {
    /// The new plan.
    pub answer: Answer,
    /// What is different from now on, in order of time.
    pub changes: Vec<Change>,
}

/// One job that is new, gone, or at another time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Change {
    /// The job's name.
    pub id: String,
    /// What.
    pub what: What,
    /// Whose.
    pub of: Of,
    /// When it was to begin, milliseconds since 1970; none where it is new.
    pub was_ms: Option<i64>,
    /// When it is to begin now; none where it is gone.
    pub is_ms: Option<i64>,
}

/// Plans again after something changed.
///
/// # Errors
/// [`NoPlan`] as for a first plan; the one that was stays as it is.
pub fn replan(before: &Plan, household: &Household) -> Result<Replanned, NoPlan> {
    let answer = plan(household)?;
    let changes = changes(before, &answer.plan);
    Ok(Replanned { answer, changes })
}

/// What is different from the beginning of the second plan on.
pub fn changes(before: &Plan, after: &Plan) -> Vec<Change> {
    let now = after.from_ms;
    let at = |plan: &Plan, job: &Job| plan.from_ms + job.start_min * MINUTE;
    let find = |plan: &Plan, id: &str| -> Option<i64> {
        let job = plan.sheet.iter().find(|job| job.id == id && !job.done)?;
        Some(at(plan, job))
    };
    let change = |job: &Job, was_ms, is_ms| Change {
        id: job.id.clone(),
        what: job.what,
        of: job.of,
        was_ms,
        is_ms,
    };
    let done = |id: &str| after.sheet.iter().any(|job| job.id == id && job.done);
    let mut all: Vec<Change> = vec![];
    for job in after.sheet.iter().filter(|job| !job.done) {
        let (was, is) = (find(before, &job.id), at(after, job));
        if was != Some(is) {
            all.push(change(job, was, Some(is)));
        }
    }
    for job in before
        .sheet
        .iter()
        .filter(|job| at(before, job) >= now && !done(&job.id))
    {
        if find(after, &job.id).is_none() {
            all.push(change(job, Some(at(before, job)), None));
        }
    }
    all.sort_by(|a, b| (a.is_ms.or(a.was_ms), &a.id).cmp(&(b.is_ms.or(b.was_ms), &b.id)));
    all
}
