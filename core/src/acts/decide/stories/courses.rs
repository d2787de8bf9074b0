//! What is served when: said, contradicted, moved by a plan; and a sheet that is kept.

use super::super::testing::*;
use crate::{
    acts::Act,
    cook::story::planned_job,
    log::{AcceptedPlan, Course, Does, OnSheet, PlanAsked, PlannedJob, Serve, Strain, Subject},
    moment::{HOUR, MINUTE},
};

/// Noon after the night.
const NOON: i64 = NIGHT + 14 * HOUR;

fn course(nr: i64, name: &str, at: i64, of: &[Subject]) -> Course {
    Course {
        nr,
        name: name.into(),
        serve: serve(at),
        latest: None,
        window_min: None,
        of: of.to_vec(),
    }
}

fn serve(at: i64) -> Serve {
    Serve {
        at,
        zone: "America/Chicago".into(),
    }
}

fn say(r: &Regatta, courses: Vec<Course>) -> Act {
    Act::PlanCourses {
        cook: r.cook,
        courses,
    }
}

fn ribs(r: &Regatta) -> Vec<Subject> {
    r.ribs.map(Subject::Piece).to_vec()
}

#[test]
fn courses_are_one_entry_and_undoing_it_brings_back_those_before() {
    let (mut night, r) = Night::regatta();
    let first = [course(1, "Ribs", NOON, &ribs(&r))];
    let done = night.does(say(&r, first.to_vec()));
    assert!(done.decision.said.starts_with("One course written down"));
    let both = [
        course(2, "Bird", NOON + HOUR, &[Subject::Piece(r.turkey)]),
        first[0].clone(),
    ];
    let second = night.does(say(&r, both.to_vec()));
    let cook = night.cook(r.cook);
    let order: Vec<i64> = cook.courses.all.iter().map(|course| course.nr).collect();
    assert_eq!(order, [1, 2]);
    let of = |of| cook.course_of(of).map(|course| course.name.as_str());
    assert_eq!(of(Subject::Piece(r.turkey)), Some("Bird"));
    assert_eq!(of(Subject::Piece(r.butt)), None);
    night.does(undo(&second.keys));
    assert_eq!(night.cook(r.cook).courses.all, first);
    let none = night.does(say(&r, vec![]));
    assert_eq!(none.decision.said, "All is served at one time.");
}

#[test]
fn what_contradicts_itself_names_its_course_and_the_nearest_way_out() {
    let (mut night, r) = Night::regatta();
    let of = ribs(&r);
    let plain = course(1, "Ribs", NOON, &of);
    let with = |change: &dyn Fn(&mut Course)| {
        let mut bad = plain.clone();
        change(&mut bad);
        vec![bad]
    };
    let other = course(2, "ribs", NOON, &[]);
    let again = course(2, "Bird", NOON, &of);
    let table: Vec<(Vec<Course>, &str)> = vec![
        (
            with(&|its| its.serve.at = NIGHT - HOUR),
            "“Ribs” was to be at 9:00 PM, and it is 10:00 PM: choose 10:00 PM or later.",
        ),
        (
            with(&|its| its.latest = Some(NOON - HOUR)),
            "may be no later than tomorrow 11:00 AM: make the latest tomorrow 12:00 PM or after",
        ),
        (
            with(&|its| its.latest = Some(NOON + 11 * HOUR)),
            "make it tomorrow 10:00 PM or sooner",
        ),
        (
            with(&|its| its.window_min = Some(30)),
            "0 to 15 minutes before and after",
        ),
        (
            with(&|its| (its.window_min, its.latest) = (Some(5), Some(NOON))),
            "a turn-in waits for nobody",
        ),
        (with(&|its| its.nr = 0), "cannot be read"),
        (with(&|its| its.name = " ".into()), "name"),
        (
            with(&|its| its.of = vec![Subject::Pit(r.drum)]),
            "cannot be read",
        ),
        (with(&|its| its.serve.zone = "Mars".into()), "Mars"),
        (vec![plain.clone(), other], "Two courses are called"),
        (vec![plain.clone(), again], "choose one of them"),
        (vec![plain.clone(), plain.clone()], "cannot be read"),
        (
            (1..=13)
                .map(|nr| course(nr, &nr.to_string(), NOON, &[]))
                .collect(),
            "at most 12 courses",
        ),
    ];
    for (courses, part) in table {
        let told = night.refuses(&say(&r, courses));
        assert!(told.contains(part), "{told}\n{part}");
    }
}

#[test]
fn a_course_that_was_served_may_stay_where_it_was_while_another_is_changed() {
    let (mut night, r) = Night::regatta();
    let soon = course(1, "Ribs", NIGHT + HOUR, &ribs(&r));
    night.does(say(&r, vec![soon.clone()]));
    night.pass(3 * HOUR);
    let bird = course(2, "Bird", NOON, &[Subject::Piece(r.turkey)]);
    night.does(say(&r, vec![soon, bird]));
    let told = night.refuses(&say(&r, vec![course(1, "Ribs", NIGHT + 2 * HOUR, &[])]));
    assert!(told.contains("was to be at"), "{told}");
}

fn plan(r: &Regatta, jobs: Vec<PlannedJob>) -> Act {
    let plan = AcceptedPlan {
        serve: serve(NOON + 2 * HOUR),
        jobs,
        chance_permille: None,
        asked: PlanAsked::default(),
    };
    Act::AcceptPlan { cook: r.cook, plan }
}

#[test]
fn accepting_a_plan_sets_the_hour_of_each_course_and_its_latest_time_goes_along() {
    let (mut night, r) = Night::regatta();
    let latest = Some(NOON + 30 * MINUTE);
    let ribs = Course {
        latest,
        ..course(1, "Ribs", NOON, &ribs(&r))
    };
    night.does(say(&r, vec![ribs]));
    let mut served = planned_job(Does::Serve, Subject::Cook(r.cook), NOON + HOUR, NOON + HOUR);
    served.job = OnSheet {
        nth: 1,
        ..served.job
    };
    let done = night.does(plan(&r, vec![served]));
    let kinds: Vec<&str> = done
        .decision
        .drafts
        .iter()
        .map(|draft| draft.payload.kind())
        .collect();
    assert_eq!(kinds, ["field_set", "courses_planned", "plan_accepted"]);
    let its = night.cook(r.cook).course(1).expect("it is known");
    assert_eq!(
        (its.serve.at, its.latest),
        (NOON + HOUR, latest.map(|at| at + HOUR))
    );
    night.does(undo(&done.keys));
    assert_eq!(
        night.cook(r.cook).course(1).map(|its| its.serve.at),
        Some(NOON)
    );
}

#[test]
fn only_the_accepted_sheet_can_be_kept() {
    let (mut night, r) = Night::regatta();
    let job = planned_job(Does::Light, Subject::Pit(r.drum), NOON - HOUR, NOON);
    let accepted = night.does(plan(&r, vec![job.clone()]));
    let keep = |sheet| Act::KeepSheet {
        cook: r.cook,
        sheet,
        against: vec![Strain {
            job: job.job,
            by_min: 20,
        }],
    };
    let sheet = *accepted.keys.last().expect("it was recorded");
    night.does(keep(sheet));
    assert!(night.cook(r.cook).sheets.kept.is_some());
    night.does(plan(&r, vec![job.clone()]));
    let told = night.refuses(&keep(sheet));
    assert!(told.contains("no longer at hand"), "{told}");
}
