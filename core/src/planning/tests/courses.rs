//! Courses and a turn-in, planned with what is on the table at its own hour.

use super::*;

fn course(nr: i64, name: &str, minutes: i64, of: u128) -> Course {
    Course {
        nr,
        name: name.into(),
        serve: Serve {
            at: SIX + minutes * MINUTE,
            zone: "America/Chicago".into(),
        },
        latest: None,
        window_min: None,
        of: vec![Subject::Piece(piece(of))],
    }
}

fn with(courses: &[Course]) -> Story {
    let mut story = begun(Some(600));
    let courses = courses.to_vec();
    story.say(1, EIGHT, Some(cook(1)), CoursesPlanned { courses });
    story
}

fn planned(courses: &[Course]) -> AcceptedPlan {
    let ask = Ask {
        courses: courses.to_vec(),
        ..ask(8, None)
    };
    let all = proposed(&with(courses), &ask, EIGHT).expect("it can be planned");
    all.proposals[0].plan.clone()
}

fn serving(plan: &AcceptedPlan, nth: i64) -> PlannedJob {
    let on = Subject::Cook(cook(1));
    let does = Does::Serve;
    let mut jobs = plan.jobs.iter();
    let found = jobs.find(|job| job.job == OnSheet { does, on, nth });
    found.expect("it is served").clone()
}

#[test]
fn ribs_an_hour_before_the_table_are_cut_and_ring_for_their_own_hour() {
    let plan = planned(&[course(1, "Ribs", 420, 1)]);
    let ribs = serving(&plan, 1);
    assert_eq!((ribs.at, ribs.hands), (SIX + 7 * HOUR, 1));
    assert_eq!(
        (serving(&plan, 0).at, plan.serve.at),
        (SIX + 8 * HOUR, SIX + 8 * HOUR)
    );
    let cut = |of| find(&plan, Does::Cut, of).expect("it is cut").at;
    assert!(
        cut(1) < SIX + 7 * HOUR && cut(2) > SIX + 7 * HOUR,
        "{} {}",
        cut(1),
        cut(2)
    );
    let why = find(&plan, Does::PutOn, 1).and_then(|job| job.why.clone());
    let named = |arg: &WhyArg| arg.name == "serving" && arg.value == WhyValue::Text("Ribs".into());
    assert!(why.expect("it says why").args.iter().any(named));
}

#[test]
fn a_turn_in_is_open_to_the_minute_and_is_not_moved() {
    let window_min = Some(5);
    let turn_in = Course {
        window_min,
        ..course(1, "Ribs", 370, 1)
    };
    let ribs = serving(&planned(&[turn_in]), 1);
    let at = |minutes: i64| SIX + minutes * MINUTE;
    assert_eq!((ribs.at, ribs.until), (at(365), at(375)));
}

#[test]
fn where_all_is_in_courses_the_hour_of_the_table_is_served_nothing_and_stays() {
    let plan = planned(&[course(1, "Ribs", 420, 1), course(2, "Pork", 450, 2)]);
    assert_eq!(plan.serve.at, serve(8).at);
    let servings = plan.jobs.iter().filter(|job| job.job.does == Does::Serve);
    let nths: Vec<i64> = servings.map(|job| job.job.nth).collect();
    assert_eq!(nths, [1, 2]);
}

#[test]
fn an_hour_that_lies_off_the_quarter_is_kept_to_the_minute() {
    let mut asked = ask(8, None);
    asked.serve.at += 10 * MINUTE;
    let all = proposed(&begun(Some(600)), &asked, EIGHT).expect("it can be planned");
    assert_eq!(all.proposals[0].plan.serve.at, asked.serve.at);
}

#[test]
fn a_course_that_is_past_names_itself_and_when_it_was() {
    let courses = [course(1, "Ribs", 420, 1)];
    let asked = Ask {
        courses: courses.to_vec(),
        ..ask(8, None)
    };
    let late = SIX + 7 * HOUR + 20 * MINUTE;
    let none = proposed(&with(&courses), &asked, late).expect_err("it is past");
    assert!(none.to_string().contains("“Ribs” was to be at"), "{none}");
}
