//! The accepted run sheet of a cook, and which of its jobs are done. Start at [`RunSheet`].
//!
//! Laws: the later acceptance wins whole, and the one before it is kept. A job is done by what happened, never by its time:
//! the stage that it leads to, an answer, or fuel and vents at its pit; so that a job done under one plan is done under the
//! next.

use super::{Answered, Cook, PitCare, Timed, ahead::counts};
use crate::{
    ids::PitId,
    log::{AcceptedPlan, Does, EntryKey, Job, OnSheet, PlannedJob, SheetKept, Strain, Subject},
    moment::MINUTE,
};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// So many jobs are on one sheet at the most: sixty meats with eight jobs each, and their pits and dishes.
pub const JOBS_MAX: usize = 600;
/// What is done at a pit so long before its job counts as the job. 45 min: common practice, no source.
const TENDED_BEFORE_MS: i64 = 45 * MINUTE;
/// The same for what is done again and again: fuel, and setting another temperature.
const FED_BEFORE_MS: i64 = 10 * MINUTE;
/// Instants beyond these are another device's nonsense and count as the nearer end: 1970 to the end of 2100.
const INSTANTS: (i64, i64) = (0, 4_133_980_799_999);

/// A plan that was accepted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct RunSheet {
    /// When, and by which entry.
    pub when: Timed,
    /// Its jobs by time, each once.
    pub plan: AcceptedPlan,
}

/// How a job came to be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Done {
    /// When, as claimed.
    pub at: i64,
    /// Not done, and left out on purpose.
    pub skipped: bool,
}

/// The sheets of one cook.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Sheets {
    /// The one that counts.
    pub now: Option<RunSheet>,
    /// The one it replaced, or that was dropped.
    pub before: Option<RunSheet>,
    /// How many were accepted.
    pub accepted: i64,
    /// What a sheet was kept against, said last.
    pub kept: Option<KeptSheet>,
}

/// A sheet that a person keeps although it no longer fits.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct KeptSheet {
    /// When that was said.
    pub when: Timed,
    /// The entry that accepted it.
    pub sheet: EntryKey,
    /// What did not fit then.
    pub against: Vec<Strain>,
}

impl RunSheet {
    /// A plan as it was accepted: what another device wrote is brought into order.
    pub fn of(plan: &AcceptedPlan, when: Timed) -> Self {
        let mut plan = plan.clone();
        plan.jobs.truncate(JOBS_MAX);
        for job in &mut plan.jobs {
            job.at = job.at.clamp(INSTANTS.0, INSTANTS.1);
            job.until = job.until.clamp(job.at, INSTANTS.1);
        }
        plan.jobs.sort_by_key(|job| (job.at, job.job));
        let mut seen = BTreeSet::new();
        plan.jobs.retain(|job| seen.insert(job.job));
        Self { when, plan }
    }

    /// Whether a job was over before the plan was accepted, so that nothing rings for it.
    pub fn is_history(&self, job: &PlannedJob) -> bool {
        job.at < self.when.at && job.until <= self.when.at
    }
}

impl Sheets {
    /// Another plan is accepted.
    pub fn accept(&mut self, sheet: RunSheet) {
        self.before = self.now.replace(sheet).or(self.before.take());
        self.accepted += 1;
    }

    /// The one that counts is kept, whatever no longer fits on it.
    pub fn keep(&mut self, fact: &SheetKept, when: Timed) {
        self.kept = Some(KeptSheet {
            when,
            sheet: fact.sheet,
            against: fact.against.iter().take(JOBS_MAX).copied().collect(),
        });
    }

    /// The cook goes on without one.
    pub fn drop_it(&mut self) {
        self.before = self.now.take().or(self.before.take());
    }
}

impl Cook {
    /// The job of that name on the accepted sheet.
    pub fn planned(&self, job: OnSheet) -> Option<&PlannedJob> {
        let jobs = &self.sheets.now.as_ref()?.plan.jobs;
        jobs.iter().find(|planned| planned.job == job)
    }

    /// How a planned job was done or left out, if it was by `now`.
    pub fn job_done(&self, planned: &PlannedJob, now: i64) -> Option<Done> {
        let done = |at| Done { at, skipped: false };
        let by_act = match planned.job.on {
            Subject::Piece(_) => self.stage_for(planned, now),
            Subject::Pit(pit) => self.tended_for(planned, pit, now),
            Subject::Dish(_) if planned.job.does == Does::Serve => self.dish_ready(planned, now),
            Subject::Cook(_) if planned.job.does == Does::Serve => {
                self.course_served(planned.job.nth, now)
            }
            _ => None,
        };
        by_act.map(done).or_else(|| self.answered(planned.job, now))
    }

    fn stage_for(&self, planned: &PlannedJob, now: i64) -> Option<i64> {
        let Subject::Piece(id) = planned.job.on else {
            return None;
        };
        let does = planned.job.does;
        let piece = self.pieces.get(&id).filter(|_| planned.job.nth == 0)?;
        let passed = piece.stages.iter().filter(|p| p.stage.completes(does));
        let tried = piece.checks.iter().filter(|_| does == Does::Check);
        let tried = tried.map(|pass| pass.when.at);
        let probed = piece.read.iter().filter(|_| does == Does::ProbeHold);
        let probed = probed
            .map(|read| read.when.at)
            .filter(|at| *at >= planned.at);
        let all = passed.map(|p| p.when.at).chain(tried).chain(probed);
        all.filter(|at| counts(*at, now)).min()
    }

    /// Fuel, a vent, a word on the fire or a reading at the pit, from a while before the job on; a meat on it says that it
    /// was lit.
    fn tended_for(&self, planned: &PlannedJob, pit: PitId, now: i64) -> Option<i64> {
        let before = match planned.job.does {
            Does::Feed | Does::Step => FED_BEFORE_MS,
            _ => TENDED_BEFORE_MS,
        };
        let from = planned.at.saturating_sub(before);
        let lit = matches!(planned.job.does, Does::Light | Does::Preheat);
        let on = self.pieces.values().filter(|_| lit);
        let on =
            on.filter(|piece| piece.is_on_pit(now) && piece.pit(now).is_some_and(|p| p.0 == pit));
        let on = on.filter_map(|piece| piece.on_pit_at(now));
        let out = planned.job.does == Does::LetOut;
        let tended = self
            .pits
            .get(&pit)
            .into_iter()
            .flat_map(|care| care.tended(out));
        let tended = tended.filter(|at| *at >= from);
        on.chain(tended).filter(|at| counts(*at, now)).min()
    }

    fn dish_ready(&self, planned: &PlannedJob, now: i64) -> Option<i64> {
        let Subject::Dish(id) = planned.job.on else {
            return None;
        };
        let ready = self.dishes.get(&id)?.ready?;
        Some(ready.at).filter(|at| counts(*at, now))
    }

    /// Whether somebody said that it is done, or is not to be.
    fn answered(&self, job: OnSheet, now: i64) -> Option<Done> {
        let said = self.answers.iter().filter(|a| a.job == Job::Sheet(job));
        let mut said = said.filter(|a| counts(a.when.at, now));
        let last = said.rfind(|a| !matches!(a.how, Answered::Later(_)))?;
        Some(Done {
            at: last.when.at,
            skipped: last.how == Answered::Skipped,
        })
    }
}

impl PitCare {
    /// When somebody did something for its fire; for letting it go out, only what closes a vent can be that.
    fn tended(&self, out: bool) -> impl Iterator<Item = i64> {
        let fire = [&self.fed, &self.seen].into_iter().filter(move |_| !out);
        let all = fire.chain([&self.vents]).flatten();
        all.map(|when| when.at)
    }
}
