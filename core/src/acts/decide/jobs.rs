//! Answers to jobs other than doing them.

use super::{Context, Decision, ranges};
use crate::{
    cook::Cook,
    error::Refused,
    ids::{CookId, PitId},
    log::{Answered, Job, PutOff, Skipped, Where},
    moment::MINUTE,
    words::Arg,
};

/// Leaves a job out this time.
pub(super) fn skip(context: &mut Context<'_>, cook: CookId, job: Job) -> Result<Decision, Refused> {
    belongs(context, cook, job)?;
    let said = context.say().text("act-skipped");
    Ok(Decision::one(
        Some(cook),
        context.now(),
        Skipped { job },
        said,
    ))
}

/// Does a job later.
pub(super) fn later(
    context: &mut Context<'_>,
    cook: CookId,
    job: Job,
    minutes: i64,
) -> Result<Decision, Refused> {
    belongs(context, cook, job)?;
    let minutes = context.whole(minutes, &ranges::LATER_MINUTES)?;
    let time = context.say().clock(context.now() + minutes * MINUTE);
    let said = context
        .say()
        .with("act-put-off", &[("time", Arg::Text(&time))]);
    Ok(Decision::one(
        Some(cook),
        context.now(),
        PutOff { job, minutes },
        said,
    ))
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
    match job {
        Job::RubSet(piece)
        | Job::Wet(piece)
        | Job::Glaze(piece)
        | Job::Check(piece)
        | Job::Pull(piece)
        | Job::PutAway(piece) => context.meat_of(cook, piece).map(|_| ()),
        Job::Serve(its) | Job::WakeUp(its) if its == cook => Ok(()),
        Job::FireRound(pit) | Job::Outside(pit) | Job::Silent(pit)
            if uses(known, context.pit(pit)?.id) =>
        {
            Ok(())
        }
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
