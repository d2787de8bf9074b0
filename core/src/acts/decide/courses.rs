//! What is served when, and keeping a sheet that no longer fits. Start at [`plan`].
//!
//! What contradicts itself is refused with the course that it is about and the nearest way out; whether all of it can be
//! cooked is the plan's to say. A course that was said before may lie in the past: its chicken is eaten.

use super::{Context, Decision};
use crate::{
    cook::{COURSES_MAX, Cook, JOBS_MAX, LATEST_MS, NRS, WINDOW_MIN},
    error::Refused,
    ids::CookId,
    log::{AcceptedPlan, Course, CoursesPlanned, Does, EntryKey, SheetKept, Strain, Subject},
    moment::MINUTE,
    words::Arg,
};
use std::collections::BTreeSet;

/// The minutes that a plan lies on.
const QUARTER_MS: i64 = 15 * MINUTE;

/// Says what is served when, whole.
pub(super) fn plan(
    context: &mut Context<'_>,
    cook: CookId,
    courses: &[Course],
) -> Result<Decision, Refused> {
    let known = context.cook(cook)?;
    if courses.len() > COURSES_MAX {
        let args = [("limit", Arg::Number(COURSES_MAX as i64))];
        return Err(context.say().refuse("error-course-count", &args).into());
    }
    let (mut nrs, mut names, mut members) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    let mut all = vec![];
    for course in courses {
        let course = one(context, known, course)?;
        if !NRS.contains(&course.nr) || !nrs.insert(course.nr) {
            return Err(context.say().refuse("error-course-odd", &[]).into());
        }
        if !names.insert(course.name.to_lowercase()) {
            return Err(about(context, "error-course-name-twice", &course, &[]));
        }
        if course.of.iter().any(|of| !members.insert(*of)) {
            return Err(about(context, "error-course-member-twice", &course, &[]));
        }
        all.push(course);
    }
    all.sort_by_key(|course| (course.serve.at, course.nr));
    let args = [("count", Arg::Number(all.len() as i64))];
    let said = context.say().with("act-courses-planned", &args);
    let fact = CoursesPlanned { courses: all };
    Ok(Decision::one(Some(cook), context.now(), fact, said))
}

fn one(context: &Context<'_>, known: &Cook, course: &Course) -> Result<Course, Refused> {
    let course = Course {
        name: context.name(&course.name)?,
        ..course.clone()
    };
    times(context, known, &course)?;
    for of in &course.of {
        let there = match of {
            Subject::Piece(id) => context.meat_of(known.id, *id).map(|_| ()),
            Subject::Dish(id) => context.dish(known.id, *id).map(|_| ()),
            _ => Err(context.say().refuse("error-course-odd", &[]).into()),
        };
        there?;
    }
    let serve = match is_said(known, &course) {
        true => course.serve.clone(),
        false => context.serving(&course.serve)?,
    };
    Ok(Course { serve, ..course })
}

/// Whether it stood at that time before.
fn is_said(known: &Cook, course: &Course) -> bool {
    let before = known.course(course.nr);
    before.is_some_and(|before| before.serve == course.serve)
}

fn times(context: &Context<'_>, known: &Cook, course: &Course) -> Result<(), Refused> {
    let (say, now, at) = (context.say(), context.now(), course.serve.at);
    let clock = |at: i64| say.clock_day(at, now);
    if at < now && !is_said(known, course) {
        let next = -(-now).div_euclid(QUARTER_MS) * QUARTER_MS;
        let (time, present, next) = (clock(at), say.clock(now), clock(next));
        let args = [
            ("time", Arg::Text(&time)),
            ("now", Arg::Text(&present)),
            ("next", Arg::Text(&next)),
        ];
        return Err(about(context, "error-course-past", course, &args));
    }
    if course.window_min.is_some() && course.latest.is_some() {
        return Err(about(context, "error-course-both", course, &[]));
    }
    if course
        .window_min
        .is_some_and(|min| !WINDOW_MIN.contains(&min))
    {
        let args = [("most", Arg::Number(*WINDOW_MIN.end()))];
        return Err(about(context, "error-course-window", course, &args));
    }
    let Some(latest) = course.latest else {
        return Ok(());
    };
    let (time, late) = (clock(at), clock(latest));
    let last = clock(at.saturating_add(LATEST_MS));
    let args = [
        ("time", Arg::Text(&time)),
        ("latest", Arg::Text(&late)),
        ("last", Arg::Text(&last)),
    ];
    match latest.saturating_sub(at) {
        0..=LATEST_MS => Ok(()),
        i64::MIN..0 => Err(about(context, "error-course-latest", course, &args)),
        _ => Err(about(context, "error-course-latest-far", course, &args)),
    }
}

fn about(context: &Context<'_>, key: &str, course: &Course, more: &[(&str, Arg<'_>)]) -> Refused {
    let mut args = vec![("course", Arg::Text(&course.name))];
    args.extend(more.iter().map(|(name, arg)| (*name, *arg)));
    context.say().refuse(key, &args).into()
}

/// The courses as an accepted plan has them on the table; none where it moves none. A latest time goes along where the course
/// would pass it.
pub(super) fn moved(known: &Cook, plan: &AcceptedPlan) -> Option<CoursesPlanned> {
    let mut courses = known.courses.all.clone();
    for course in &mut courses {
        let its = |job: &&crate::log::PlannedJob| {
            let name = job.job;
            (name.does, name.on, name.nth) == (Does::Serve, Subject::Cook(known.id), course.nr)
        };
        let Some(job) = plan.jobs.iter().find(its) else {
            continue;
        };
        let at = job.at.midpoint(job.until);
        let by = at - course.serve.at;
        course.serve.at = at;
        let latest = course.latest;
        course.latest = latest.map(|latest| if latest < at { latest + by } else { latest });
    }
    courses.sort_by_key(|course| (course.serve.at, course.nr));
    (courses != known.courses.all).then_some(CoursesPlanned { courses })
}

/// Keeps the accepted sheet, whatever no longer fits on it.
pub(super) fn keep_sheet(
    context: &mut Context<'_>,
    cook: CookId,
    sheet: &EntryKey,
    against: &[Strain],
) -> Result<Decision, Refused> {
    let now = context.cook(cook)?.sheets.now.as_ref();
    if now.is_none_or(|now| now.when.entry != *sheet) || against.len() > JOBS_MAX {
        return Err(context.say().refuse("error-plan-gone", &[]).into());
    }
    let fact = SheetKept {
        sheet: *sheet,
        against: against.to_vec(),
    };
    let said = context.say().text("act-sheet-kept");
    Ok(Decision::one(Some(cook), context.now(), fact, said))
}
