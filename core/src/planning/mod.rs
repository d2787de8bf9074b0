//! A cook as a household that can be planned, and a plan as a sheet that can be accepted. Start at [`propose`].
//!
//! What is known of the cook is taken from it: meats with their stages, pits, dishes, the hour of the table. What nobody said
//! is common practice, no source, and stands here by name. Law: what is done keeps its place on the sheet.

mod household;
mod kitchen;
mod night;
mod pits;
mod readings;
mod remaining;
mod servings;
mod sheet;
mod strain;
mod wraps;

pub use strain::{Strained, Why, strains, unsaid};

use household::Planned;

use crate::{
    cook::{Cook, Known},
    log::{AcceptedPlan, Course, Does, PlanAsked, Serve},
    moment::MINUTE,
    plan::{self, Answer, NoPlan, Plan, Said},
    words::Words,
};

/// What is asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ask {
    /// When it is to be on the table.
    pub serve: Serve,
    /// What is served at another time.
    pub courses: Vec<Course>,
    /// What a person says for it.
    pub asked: PlanAsked,
}

/// One plan that can be accepted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proposal {
    /// What it gains and costs beside the first; nothing for the first.
    pub says: Vec<Said>,
    /// The plan.
    pub plan: AcceptedPlan,
}

/// What the search came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proposed {
    /// The plan, then up to three others.
    pub proposals: Vec<Proposal>,
    /// Whether nothing better exists on the grid of the plan.
    pub proven: bool,
}

/// So many nodes are visited where a page waits for the answer: a bounded piece of work, the same on every machine, so that
/// it needs no step of its own in the background.
const PAGE_NODES: i64 = 20_000;

/// Plans what is left of a cook.
///
/// # Errors
/// [`NoPlan`] names what stands against every plan, and each single change that would make one.
pub fn propose(
    known: &Known<'_>,
    cook: &Cook,
    say: &Words<'_>,
    ask: &Ask,
    now: i64,
) -> Result<Proposed, NoPlan> {
    let (planned, answer) = searched(known, cook, say, ask, now)?;
    let sheet = |plan: &Plan| sheet::accepted(known, cook, &planned, plan, ask, now);
    let first = Proposal {
        says: vec![],
        plan: sheet(&answer.plan),
    };
    let others = answer.alternatives.iter().map(|other| Proposal {
        says: other.says.clone(),
        plan: sheet(&other.plan),
    });
    Ok(Proposed {
        proposals: std::iter::once(first).chain(others).collect(),
        proven: matches!(answer.proof, plan::Proof::Optimal),
    })
}

/// Fires that burn stay as they are, unless more is ready, or sooner, where they are set anew; or meats are happier, where the
/// accepted sheet was to set one anyway. Whoever holds a fire at a temperature had a reason.
fn searched(
    known: &Known<'_>,
    cook: &Cook,
    say: &Words<'_>,
    ask: &Ask,
    now: i64,
) -> Result<(Planned, Answer), NoPlan> {
    let free = household::of(known, cook, say, ask, now);
    let steady = free.steady(known, cook, now);
    let answer = plan::plan(&free.household);
    let Some(steady) = steady else {
        return answer.map(|answer| (free, answer));
    };
    let jobs = cook.sheets.now.iter().flat_map(|sheet| &sheet.plan.jobs);
    let mut steps = jobs.filter(|job| job.job.does == Does::Step);
    let sets = steps.any(|job| cook.job_done(job, now).is_none());
    let first = |answer: &Answer| {
        let cost = answer.plan.cost;
        let happy = if sets { cost.temperature_k } else { 0 };
        (cost.not_ready_permille, cost.late_min, happy)
    };
    match (answer, plan::plan(&steady.household)) {
        (Ok(answer), Ok(kept)) if first(&answer) < first(&kept) => Ok((free, answer)),
        (_, Ok(kept)) => Ok((steady, kept)),
        (answer, Err(_)) => answer.map(|answer| (free, answer)),
    }
}

/// The first full quarter of an hour from `now` on: where a plan begins.
const fn begins(now: i64) -> i64 {
    let quarter = plan::GRID_MIN * MINUTE;
    -(-now).div_euclid(quarter) * quarter
}

#[cfg(test)]
mod tests;
