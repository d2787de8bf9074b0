//! Answers to jobs other than doing them.

use super::{Context, Decision, ranges};
use crate::{
    cook::Cook,
    error::Refused,
    ids::{CookId, PitId},
    log::{Answered, Draft, Job, Payload, PutOff, Skipped, Subject, Where},
    moment::MINUTE,
    words::Arg,
};
use std::collections::BTreeSet;

/// Leaves jobs out this time.
pub(super) fn skip(
    context: &mut Context<'_>,
    cook: CookId,
    jobs: &[Job],
) -> Result<Decision, Refused> {
    let said = context.say().text("act-skipped");
    each(context, cook, jobs, said, |job| Skipped { job }.into())
}

/// Does jobs later.
pub(super) fn later(
    context: &mut Context<'_>,
    cook: CookId,
    jobs: &[Job],
    minutes: i64,
) -> Result<Decision, Refused> {
    let minutes = context.whole(minutes, &ranges::LATER_MINUTES)?;
    let time = context.say().clock(context.now() + minutes * MINUTE);
    let args = [("time", Arg::Text(&time))];
    let said = context.say().with("act-put-off", &args);
    each(context, cook, jobs, said, |job| {
        PutOff { job, minutes }.into()
    })
}

/// One entry a job, each job once.
fn each(
    context: &Context<'_>,
    cook: CookId,
    jobs: &[Job],
    said: String,
    fact: impl Fn(Job) -> Payload,
) -> Result<Decision, Refused> {
    let jobs: BTreeSet<Job> = jobs.iter().copied().collect();
    if jobs.is_empty() {
        return Err(context.say().refuse("error-no-job", &[]).into());
    }
    jobs.iter()
        .try_for_each(|job| belongs(context, cook, *job))?;
    let (cook, at) = (Some(cook), context.now());
    let drafts = jobs.into_iter().map(|job| Draft {
        cook,
        at,
        payload: fact(job),
    });
    Ok(Decision::of(drafts.collect(), said))
}

/// Answers a ring that no other act answers.
pub(super) fn answer(
    context: &mut Context<'_>,
    cook: CookId,
    job: Job,
) -> Result<Decision, Refused> {
    belongs(context, cook, job)?;
    let said = context.say().text("act-answered");
    Ok(Decision::one(
        Some(cook),
        context.now(),
        Answered { job },
        said,
    ))
}

/// Refuses a job whose meat or pit is not in that cook, or that is another cook's.
fn belongs(context: &Context<'_>, cook: CookId, job: Job) -> Result<(), Refused> {
    let known = context.cook(cook)?;
    if let Job::Sheet(planned) = job {
        return match known.planned(planned) {
            Some(_) => Ok(()),
            None => Err(context.say().refuse("error-not-on-sheet", &[]).into()),
        };
    }
    match job.object() {
        Subject::Piece(piece) => context.meat_of(cook, piece).map(|_| ()),
        Subject::Cook(its) if its == cook => Ok(()),
        Subject::Pit(pit) if uses(known, context.pit(pit)?.id) => Ok(()),
        _ => Err(context.say().refuse("error-job-elsewhere", &[]).into()),
    }
}

/// Whether anything in the cook was ever on that pit, meant for it, done for it or read in it.
fn uses(cook: &Cook, pit: PitId) -> bool {
    let probed = cook
        .probes
        .values()
        .any(|probe| probe.place == Where::Pit { pit });
    let on_it = |stage| stage == crate::log::Stage::OnPit { pit };
    let meats = cook.pieces.values().any(|piece| {
        piece.stages.iter().any(|passed| on_it(passed.stage))
            || piece.moves.iter().any(|(_, its, _)| *its == pit)
    });
    probed || meats || cook.pits.contains_key(&pit)
}
