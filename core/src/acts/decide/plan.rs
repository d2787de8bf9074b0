//! Accepting a plan, and going on without one. Start at [`accept`]. It sets the hour of the table and of each course too.
//!
//! A plan comes from core's own search, but by way of a shell or a script: all of it is checked here again.

use super::{Context, Decision, courses, ranges, times};
use crate::{
    cook::JOBS_MAX,
    error::Refused,
    ids::CookId,
    log::{
        AcceptedPlan, Draft, EntryKey, Field, FieldSet, OnSheet, PlanAccepted, PlanAsked,
        PlanDropped, PlannedJob, PlannedWhy, Subject, WhyArg, WhyValue,
    },
    moment::HOUR,
    words::{Arg, Refused as Unsaid},
};
use std::collections::BTreeSet;

/// The longest job: a large bird thaws for the better part of a week in the refrigerator.
const LONGEST_MS: i64 = 7 * 24 * HOUR;
/// So many jobs of one kind are done on one thing.
const NTH_MAX: i64 = 100;
/// So many hands a job takes at the most.
const HANDS_MAX: i64 = 3;
/// So much goes into one sentence.
const WHY_ARGS_MAX: usize = 6;
/// The longest key of a sentence, characters.
const WHY_KEY_MAX: usize = 40;
/// A plan is for tonight and tomorrow, or for the days before a thaw: as far ahead as serving time may be.
const AHEAD_MS: i64 = times::SERVE_AHEAD_MS + 48 * HOUR;

/// Accepts a plan: its jobs ring from now on, and the cook is on the table when the plan says.
pub(super) fn accept(
    context: &mut Context<'_>,
    cook: CookId,
    plan: &AcceptedPlan,
) -> Result<Decision, Refused> {
    let known = context.cook(cook)?;
    let plan = AcceptedPlan {
        serve: context.serving(&plan.serve)?,
        jobs: jobs(context, cook, &plan.jobs)?,
        chance_permille: plan
            .chance_permille
            .filter(|chance| (0..=1_000).contains(chance)),
        asked: asked(&plan.asked),
    };
    let (at, cook) = (context.now(), Some(cook));
    let serve = &known.serve;
    let moved =
        (serve.value.as_ref().map(|serve| serve.at) != Some(plan.serve.at)).then(|| FieldSet {
            of: Subject::Cook(known.id),
            to: Field::Serve(Some(plan.serve.clone())),
            saw: Some(serve.stamp),
        });
    let args = [("count", Arg::Number(plan.jobs.len() as i64))];
    let said = context.say().with("act-plan-accepted", &args);
    let courses = courses::moved(known, &plan);
    let moved = moved.map(|fact| Draft {
        cook,
        at,
        payload: fact.into(),
    });
    let courses = courses.map(|fact| Draft {
        cook,
        at,
        payload: fact.into(),
    });
    let accepted = Draft {
        cook,
        at,
        payload: PlanAccepted { plan }.into(),
    };
    Ok(Decision::of(
        moved.into_iter().chain(courses).chain([accepted]).collect(),
        said,
    ))
}

/// Accepts the plan that was replaced or dropped.
pub(super) fn again(
    context: &mut Context<'_>,
    cook: CookId,
    entry: &EntryKey,
) -> Result<Decision, Refused> {
    let before = context.cook(cook)?.sheets.before.as_ref();
    let Some(sheet) = before.filter(|sheet| sheet.when.entry == *entry) else {
        return Err(context.say().refuse("error-plan-gone", &[]).into());
    };
    accept(context, cook, &sheet.plan)
}

/// Goes on without a plan; none there is refused.
pub(super) fn drop_it(context: &mut Context<'_>, cook: CookId) -> Result<Decision, Refused> {
    let known = context.cook(cook)?;
    let say = context.say();
    match known.sheets.now {
        None => Err(say.refuse("error-no-plan", &[]).into()),
        Some(_) => Ok(Decision::one(
            Some(cook),
            context.now(),
            PlanDropped {},
            say.text("act-plan-dropped"),
        )),
    }
}

fn jobs(
    context: &Context<'_>,
    cook: CookId,
    jobs: &[PlannedJob],
) -> Result<Vec<PlannedJob>, Refused> {
    if jobs.is_empty() || jobs.len() > JOBS_MAX {
        let args = [("limit", Arg::Number(JOBS_MAX as i64))];
        return Err(context.say().refuse("error-plan-count", &args).into());
    }
    let mut seen = BTreeSet::new();
    let mut all: Vec<PlannedJob> = vec![];
    for planned in jobs {
        if !seen.insert(planned.job) {
            return Err(context.say().refuse("error-plan-twice", &[]).into());
        }
        all.push(job(context, cook, planned)?);
    }
    all.sort_by_key(|planned| (planned.at, planned.job));
    Ok(all)
}

fn job(context: &Context<'_>, cook: CookId, planned: &PlannedJob) -> Result<PlannedJob, Refused> {
    let OnSheet { does, on, nth } = planned.job;
    let on = match context.about(cook, on)? {
        Subject::Cook(other) if other != cook => {
            return Err(context.say().refuse("error-job-elsewhere", &[]).into());
        }
        on => on,
    };
    in_time(context, planned)?;
    let odd = !(0..NTH_MAX).contains(&nth) || !(0..=HANDS_MAX).contains(&planned.hands);
    if odd {
        return Err(odd_job(context).into());
    }
    Ok(PlannedJob {
        job: OnSheet { does, on, nth },
        pit: planned
            .pit
            .map(|pit| context.pit(pit).map(|pit| pit.id))
            .transpose()?,
        temp: planned
            .temp
            .map(|temp| context.heat(temp, &ranges::PIT_AIR))
            .transpose()?,
        what: context.line(&planned.what)?,
        why: planned
            .why
            .as_ref()
            .map(|why| self::why(context, why))
            .transpose()?,
        ..planned.clone()
    })
}

/// Refuses a job that lies days off, ends before it begins, or never ends.
fn in_time(context: &Context<'_>, planned: &PlannedJob) -> Result<(), Refused> {
    let now = context.now();
    let (at, until) = (planned.at, planned.until);
    let near = (now - LONGEST_MS..=now + AHEAD_MS).contains(&at);
    if near && (at..=at + LONGEST_MS).contains(&until) {
        return Ok(());
    }
    let time = context.say().clock_day(at, now);
    let args = [("time", Arg::Text(&time))];
    Err(context.say().refuse("error-plan-time", &args).into())
}

fn why(context: &Context<'_>, why: &PlannedWhy) -> Result<PlannedWhy, Refused> {
    let plain = |text: &str| {
        let plain = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
        (1..=WHY_KEY_MAX).contains(&text.len()) && text.chars().all(plain)
    };
    let names = why.args.iter().all(|arg| plain(&arg.name));
    if !plain(&why.key) || !names || why.args.len() > WHY_ARGS_MAX {
        return Err(odd_job(context).into());
    }
    let args = why.args.iter().map(|arg| {
        let value = match &arg.value {
            WhyValue::Text(text) => WhyValue::Text(context.line(text)?),
            other => other.clone(),
        };
        Ok(WhyArg {
            name: arg.name.clone(),
            value,
        })
    });
    Ok(PlannedWhy {
        key: why.key.clone(),
        args: args.collect::<Result<_, Refused>>()?,
    })
}

fn odd_job(context: &Context<'_>) -> Unsaid {
    context.say().refuse("error-plan-odd", &[])
}

/// What was said for the plan, each number brought into its range: nothing rings by it.
fn asked(asked: &PlanAsked) -> PlanAsked {
    let of_day = |minutes: Option<i64>| minutes.filter(|at| (0..24 * 60).contains(at));
    let (from, to) = (of_day(asked.sleep_from_min), of_day(asked.sleep_to_min));
    let night = from.zip(to).filter(|(from, to)| from != to);
    PlanAsked {
        hands: asked.hands.clamp(1, HANDS_MAX),
        sleep_from_min: night.map(|(from, _)| from),
        sleep_to_min: night.map(|(_, to)| to),
        watched: asked.watched,
        not_before: asked.not_before,
        late_min: asked.late_min.filter(|late| (0..=24 * 60).contains(late)),
        cooler: asked.cooler,
        oven: asked.oven,
    }
}
