//! A plan as a sheet that can be accepted. Start at [`accepted`]. Servings are told by [`servings`](super::servings), wraps are
//! put between by [`wraps`](super::wraps).

use super::{Ask, household::Planned, remaining};
use crate::{
    cook::{Cook, Known},
    log::{AcceptedPlan, Does, OnSheet, PlannedJob, PlannedWhy, Serve, Subject, WhyArg, WhyValue},
    moment::MINUTE,
    plan::{Job, Of, Plan, SaidValue, What, Window},
    words::key,
};
use std::collections::BTreeMap;

/// Hands on to bring a pit to another temperature, minutes. Common practice, no source.
const SET_MIN: i64 = 5;

/// The sheet of a plan: its jobs, and those of the sheet before that are done.
pub(super) fn accepted(
    known: &Known<'_>,
    cook: &Cook,
    planned: &Planned,
    plan: &Plan,
    ask: &Ask,
    now: i64,
) -> AcceptedPlan {
    let mut nth = done_at_pits(cook, now);
    let set = set_anew(known, cook, planned, plan, &mut nth);
    let mut jobs = set.clone();
    for job in plan.sheet.iter().filter(|job| !is_lit(planned, job)) {
        if let Some(served) = planned.servings.job(cook, ask, plan, job) {
            jobs.push(PlannedJob {
                why: Some(why(cook, planned, job)),
                ..served
            });
            continue;
        }
        let (does, on) = (does(job.what), subject(cook, planned, job.of));
        let count = nth.entry((does, on)).or_default();
        let name = OnSheet {
            does,
            on,
            nth: *count,
        };
        *count += 1;
        jobs.push(one(cook, planned, job, name));
    }
    jobs.extend(super::wraps::jobs(cook, planned, plan, &set, now));
    keep_done(cook, &mut jobs, now);
    jobs.sort_by_key(|job| (job.at, job.job));
    AcceptedPlan {
        serve: Serve {
            at: planned.servings.table(plan, ask),
            zone: ask.serve.zone.clone(),
        },
        jobs,
        chance_permille: Some(plan.chance_permille),
        asked: ask.asked.clone(),
    }
}

/// Pits that burn at another temperature than the plan begins with: somebody has to set them.
fn set_anew(
    known: &Known<'_>,
    cook: &Cook,
    planned: &Planned,
    plan: &Plan,
    nth: &mut BTreeMap<(Does, Subject), i64>,
) -> Vec<PlannedJob> {
    let from = plan.from_ms;
    let mut all = vec![];
    for ((pit, made), id) in plan
        .pits
        .iter()
        .zip(&planned.household.pits)
        .zip(&planned.pits)
    {
        let held = remaining::held(known, cook, *id, from);
        if !made.hot || !pit.used || held.is_none_or(|held| held == pit.temp) {
            continue;
        }
        let (does, on) = (Does::Step, Subject::Pit(*id));
        let count = nth.entry((does, on)).or_default();
        let name = OnSheet {
            does,
            on,
            nth: *count,
        };
        *count += 1;
        let until = from + SET_MIN * MINUTE;
        all.push(PlannedJob {
            job: name,
            at: from,
            until,
            hands: 1,
            wakes: false,
            pit: Some(*id),
            temp: Some(pit.temp),
            wrap: None,
            what: String::new(),
            why: Some(PlannedWhy {
                key: key("plan-why-step").to_owned(),
                args: vec![],
            }),
        });
    }
    all
}

/// A pit that is lit and still comes up is not lit again.
fn is_lit(planned: &Planned, job: &Job) -> bool {
    let of = |nr: &usize| job.of == Of::Pit(*nr);
    job.what == What::Light && planned.coming_up.iter().any(of)
}

/// How many times each job of a pit was done on the sheet before: the next one is another.
fn done_at_pits(cook: &Cook, now: i64) -> BTreeMap<(Does, Subject), i64> {
    let mut nth = BTreeMap::new();
    let before = cook.sheets.now.iter().flat_map(|sheet| &sheet.plan.jobs);
    let at_pits = before.filter(|job| matches!(job.job.on, Subject::Pit(_)));
    for old in at_pits.filter(|old| cook.job_done(old, now).is_some()) {
        let OnSheet { does, on, nth: its } = old.job;
        let next = nth.entry((does, on)).or_insert(0);
        *next = its.saturating_add(1).max(*next);
    }
    nth
}

/// What is done stays where it was on the sheet before.
fn keep_done(cook: &Cook, jobs: &mut Vec<PlannedJob>, now: i64) {
    let Some(before) = &cook.sheets.now else {
        return;
    };
    for old in before
        .plan
        .jobs
        .iter()
        .filter(|old| cook.job_done(old, now).is_some())
    {
        jobs.retain(|job| job.job != old.job);
        jobs.push(old.clone());
    }
}

fn one(cook: &Cook, planned: &Planned, job: &Job, name: OnSheet) -> PlannedJob {
    let household = &planned.household;
    let at = |minutes: i64| household.from_ms + minutes * MINUTE;
    let asleep =
        |window: &Window| job.start_min < window.until_min && window.from_min <= job.start_min;
    let hands = i64::from(job.hands_min > 0 || name.does == Does::Hold);
    let place = job.place.and_then(|place| household.places.get(place));
    PlannedJob {
        job: name,
        at: at(job.start_min),
        until: at(job.end_min.max(job.start_min)),
        hands,
        wakes: hands > 0 && household.sleep.iter().any(asleep),
        pit: job.pit.and_then(|pit| planned.pits.get(pit)).copied(),
        temp: job.temp,
        wrap: None,
        what: place.map_or_else(String::new, |place| match message(planned, &place.name) {
            Some(message) => message.to_owned(),
            None => place.name.clone(),
        }),
        why: Some(why(cook, planned, job)),
    }
}

const fn does(what: What) -> Does {
    match what {
        What::Thaw => Does::Thaw,
        What::Brine => Does::Brine,
        What::Trim => Does::Trim,
        What::Rub => Does::Rub,
        What::Light => Does::Light,
        What::Feed => Does::Feed,
        What::Step => Does::Step,
        What::PutOn => Does::PutOn,
        What::CheckFrom => Does::Check,
        What::TakeOff => Does::TakeOff,
        What::Vent => Does::Vent,
        What::Rest => Does::Rest,
        What::Hold => Does::Hold,
        What::ProbeHold => Does::ProbeHold,
        What::Cut => Does::Cut,
        What::Make => Does::Dish,
        What::Reheat => Does::Reheat,
        What::LetOut => Does::LetOut,
        What::Serve => Does::Serve,
        What::Sleep => Does::Sleep,
    }
}

fn subject(cook: &Cook, planned: &Planned, of: Of) -> Subject {
    let found = match of {
        Of::Meat(nr) => planned.pieces.get(nr).map(|id| Subject::Piece(*id)),
        Of::Dish(nr) => planned.dishes.get(nr).map(|id| Subject::Dish(*id)),
        Of::Pit(nr) => planned.pits.get(nr).map(|id| Subject::Pit(*id)),
        Of::Serving(_) => None,
        Of::Cook => Some(Subject::Crew),
    };
    found.unwrap_or(Subject::Cook(cook.id))
}

/// The reason, with the things of the cook in place of their names, so that a new name is said too.
fn why(cook: &Cook, planned: &Planned, job: &Job) -> PlannedWhy {
    let args = job.why.args.iter().map(|arg| WhyArg {
        name: arg.name.clone(),
        value: match &arg.value {
            SaidValue::Name(name) => named(cook, planned, name),
            SaidValue::Count(count) => WhyValue::Count(*count),
            SaidValue::At(at) => WhyValue::Time(*at),
            SaidValue::Minutes(minutes) => WhyValue::Minutes(*minutes),
            SaidValue::Temp(temp) => WhyValue::Temp(*temp),
            said => spoken(said),
        },
    });
    PlannedWhy {
        key: job.why.key.clone(),
        args: args.collect(),
    }
}

/// What is a message of its own; anything else is said by no reason of a job.
fn spoken(said: &SaidValue) -> WhyValue {
    match said {
        SaidValue::Message(key) => WhyValue::Message(key.clone()),
        _ => WhyValue::Text(String::new()),
    }
}

fn named(cook: &Cook, planned: &Planned, name: &str) -> WhyValue {
    let household = &planned.household;
    let meat = household.meats.iter().position(|meat| meat.name == name);
    let pit = household.pits.iter().position(|pit| pit.name == name);
    match (
        meat.and_then(|nr| planned.pieces.get(nr)),
        pit.and_then(|nr| planned.pits.get(nr)),
    ) {
        (Some(piece), _) => WhyValue::Piece(*piece),
        (_, Some(pit)) => WhyValue::Pit(*pit),
        _ => match message(planned, name) {
            Some(message) => WhyValue::Message(message.to_owned()),
            None => match household
                .servings
                .iter()
                .position(|serving| serving.name == name)
            {
                Some(nr) => WhyValue::Text(planned.servings.called(cook, nr)),
                None => WhyValue::Text(name.to_owned()),
            },
        },
    }
}

/// The message that says a place or a person in any language.
fn message(planned: &Planned, name: &str) -> Option<&'static str> {
    let found = planned.words.iter().find(|(said, _)| said == name);
    found.map(|(_, message)| *message)
}
