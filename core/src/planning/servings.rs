//! The servings of a cook: the hour of its table, and its courses. Start at [`Servings::of`].
//!
//! Laws: what is in no course is for the hour of the table; a serving that nothing is for is not planned. A time that the plan
//! keeps to the quarter is kept to the minute on the sheet.

use super::{Ask, household::Names};
use crate::{
    cook::Cook,
    log::{Course, Does, OnSheet, PlannedJob, Subject},
    moment::MINUTE,
    plan::{self, Of, Plan, Serving, What, When},
};
use std::collections::BTreeSet;

/// The servings of a plan, as listed: the hour of the table, if something is for it, then the courses by their time.
#[derive(Clone)]
pub(super) struct Servings {
    courses: Vec<Course>,
    table: bool,
}

impl Servings {
    pub(super) fn of(cook: &Cook, ask: &Ask, members: &[Subject]) -> Self {
        let of = |of: &Subject| cook.course_of(*of).map(|course| course.nr);
        let nrs: BTreeSet<Option<i64>> = members.iter().map(of).collect();
        let mut courses = ask.courses.clone();
        courses.retain(|course| nrs.contains(&Some(course.nr)));
        let known = |nr: &Option<i64>| courses.iter().any(|course| Some(course.nr) == *nr);
        Self {
            table: nrs.is_empty() || nrs.iter().any(|nr| !known(nr)),
            courses,
        }
    }

    /// The place in the list of the serving that something is for.
    pub(super) fn place(&self, cook: &Cook, of: Subject) -> usize {
        let nr = cook.course_of(of).map(|course| course.nr);
        let mut courses = self.courses.iter();
        let course = courses.position(|course| Some(course.nr) == nr);
        course.map_or(0, |course| course + usize::from(self.table))
    }

    /// The servings with their times, minutes from `from` on.
    pub(super) fn listed(
        &self,
        cook: &Cook,
        ask: &Ask,
        names: &mut Names,
        from: i64,
    ) -> Vec<Serving> {
        let minute = |at: i64| (at - from).div_euclid(MINUTE);
        let late = ask.asked.late_min;
        let listed = (0..self.courses.len() + usize::from(self.table)).map(|place| {
            let course = self.course(place);
            let preferred = minute(course.map_or(ask.serve.at, |course| course.serve.at));
            let turn_in = course.and_then(|course| course.window_min);
            let said = course.and_then(|course| course.latest).map(minute);
            let latest = said.or(late.map(|late| preferred + late));
            Serving {
                name: names.own(course.map_or(&cook.name.value, |course| &course.name)),
                preferred: When::Min(preferred),
                latest: latest.filter(|_| turn_in.is_none()).map(When::Min),
                turn_in_min: turn_in,
            }
        });
        listed.collect()
    }

    /// What the serving of that place is called.
    pub(super) fn called(&self, cook: &Cook, place: usize) -> String {
        let course = self.course(place);
        course.map_or_else(|| cook.name.value.clone(), |course| course.name.clone())
    }

    fn course(&self, place: usize) -> Option<&Course> {
        self.courses
            .get(place.checked_sub(usize::from(self.table))?)
    }

    /// When the plan has the serving of that place on the table.
    fn at(&self, plan: &Plan, place: usize, ask: &Ask) -> i64 {
        let wanted = self
            .course(place)
            .map_or(ask.serve.at, |course| course.serve.at);
        let quarter = plan::GRID_MIN * MINUTE;
        let planned = plan.servings_min.get(place);
        match planned.map(|minutes| plan.from_ms + minutes * MINUTE) {
            Some(at) if at != wanted.div_euclid(quarter) * quarter => at,
            _ => wanted,
        }
    }

    /// When the cook is on the table by the plan; where all of it is in courses, as it was asked.
    pub(super) fn table(&self, plan: &Plan, ask: &Ask) -> i64 {
        match self.table {
            true => self.at(plan, 0, ask),
            false => ask.serve.at,
        }
    }

    /// The job of serving, where `job` is one. A course takes hands, so that it rings; the hour of the table rings by its own
    /// rule.
    pub(super) fn job(
        &self,
        cook: &Cook,
        ask: &Ask,
        plan: &Plan,
        job: &plan::Job,
    ) -> Option<PlannedJob> {
        let (What::Serve, Of::Serving(place)) = (job.what, job.of) else {
            return None;
        };
        let (course, at) = (self.course(place), self.at(plan, place, ask));
        let half = course.and_then(|course| course.window_min).unwrap_or(0) * MINUTE;
        Some(PlannedJob {
            job: OnSheet {
                does: Does::Serve,
                on: Subject::Cook(cook.id),
                nth: course.map_or(0, |course| course.nr),
            },
            at: at - half,
            until: at + half,
            hands: i64::from(course.is_some()),
            wakes: false,
            pit: None,
            temp: None,
            wrap: None,
            what: course.map_or_else(String::new, |course| course.name.clone()),
            why: None,
        })
    }
}
