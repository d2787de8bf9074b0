//! Courses and a sheet that no longer fits, on the screens: in both languages, and for who looks from far.

use super::regatta::{minute, moment, told_until, viewer};
use crate::{
    acts::Act,
    cook::story::{Story, cook, piece},
    log::*,
    screens::{self, RunSheetScreen, SlipKind},
    words::Locale,
};

/// The butt as a turn-in at half past one, the turkey at one with half an hour to spare.
fn courses() -> Vec<Course> {
    let course = |nr, name: &str, at, of| Course {
        nr,
        name: name.into(),
        serve: Serve {
            at: minute(at),
            zone: super::regatta::ZONE.into(),
        },
        latest: None,
        window_min: None,
        of: vec![Subject::Piece(piece(of))],
    };
    vec![
        Course {
            latest: Some(minute(450)),
            ..course(1, "Turkey", 420, 4)
        },
        Course {
            window_min: Some(5),
            ..course(2, "Pork", 450, 3)
        },
    ]
}

fn story() -> Story {
    let mut story = told_until(-245);
    let courses = courses();
    story.say(1, minute(-244), Some(cook(1)), CoursesPlanned { courses });
    let mut plan = super::sheet::plan();
    plan.jobs.push(PlannedJob {
        job: OnSheet {
            does: Does::Serve,
            on: Subject::Cook(cook(1)),
            nth: 2,
        },
        at: minute(445),
        until: minute(455),
        hands: 1,
        wakes: false,
        pit: None,
        temp: None,
        wrap: None,
        what: "As it was called".into(),
        why: None,
    });
    story.say(1, minute(-244), Some(cook(1)), PlanAccepted { plan });
    story
}

fn sheet(story: &Story, locale: Locale, at: i64) -> RunSheetScreen {
    let viewer = viewer(locale);
    screens::run_sheet(&story.told().known(1), &viewer, cook(1), &moment(at)).unwrap()
}

#[test]
fn the_sheet_says_what_is_served_when_and_a_turn_in_until_when() {
    let screen = sheet(&story(), Locale::EnUs, -240);
    for line in [
        "Turkey, 1:00 PM, by 1:30 PM at the latest: Turkey breast",
        "Pork, handed in 1:25 PM to 1:35 PM: Butt",
    ] {
        assert!(
            screen.about.contains(&line.to_owned()),
            "{:?}",
            screen.about
        );
    }
    assert!(
        screen
            .text
            .contains("1:25 PM  Serve: Pork, open until 1:35 PM"),
        "{}",
        screen.text
    );
    assert!(
        screen
            .calendar
            .contains("DTSTART;TZID=America/Chicago:20260613T132500")
    );
    let spanish = sheet(&story(), Locale::EsUs, -240).text;
    assert!(
        spanish.contains("Servir: Pork, abierta hasta 1:35 p. m."),
        "{spanish}"
    );
    assert!(!spanish.contains('⟨'), "{spanish}");
}

#[test]
fn a_student_s_turn_in_is_open_by_the_student_s_own_hour() {
    let (told, viewer) = (story().told(), viewer(Locale::EnUs));
    let list = "Ana, 12:30 PM";
    let screen = screens::hand_out(&told.known(1), &viewer, cook(1), list, &moment(0)).unwrap();
    let lines = screen.sheets[0].days.iter().flat_map(|day| &day.lines);
    let all: Vec<String> = lines
        .map(|line| format!("{} {}", line.time, line.job))
        .collect();
    let own = "11:55 AM Serve: Pork, open until 12:05 PM".to_owned();
    assert!(all.contains(&own), "{all:?}");
}

#[test]
fn the_form_of_courses_shows_what_was_said_and_is_read_back_as_the_same() {
    let (told, viewer) = (story().told(), viewer(Locale::EnUs));
    let typed = screens::PlanTyped::default();
    let screen = screens::plan(&told.known(1), &viewer, cook(1), &typed, &moment(-240)).unwrap();
    let slip = screen.courses.expect("the hour is known");
    assert!(slip.fields.iter().all(|field| field.kind != SlipKind::Some));
    let filled: Vec<crate::forms::FieldFilled> = slip
        .fields
        .iter()
        .map(|field| crate::forms::FieldFilled {
            field: field.field.clone(),
            text: field.usual.clone(),
        })
        .collect();
    let act = crate::forms::cook_slip(&viewer, cook(1), "courses", &filled, &moment(-240));
    let all = courses();
    assert_eq!(
        act,
        Ok(Act::PlanCourses {
            cook: cook(1),
            courses: all
        })
    );
}

#[test]
fn what_no_longer_fits_is_told_on_now_and_the_sheet_with_both_ways_out() {
    let mut story = story();
    let later = Field::Serve(Some(Serve {
        at: minute(540),
        zone: super::regatta::ZONE.into(),
    }));
    let set = FieldSet {
        of: Subject::Cook(cook(1)),
        to: later,
        saw: None,
    };
    // The slabs are for the hour of the table.
    story.say(1, minute(-243), Some(cook(1)), set);
    let fits = sheet(&story, Locale::EnUs, -242)
        .fits
        .expect("it does not fit");
    let moved = "Regatta lunch is now on the table 1 h later.".to_owned();
    assert!(fits.says.contains(&moved), "{:?}", fits.says);
    assert!(matches!(fits.keep.act, Act::KeepSheet { .. }));
    let (told, viewer) = (story.told(), viewer(Locale::EsUs));
    let now = screens::pitside(&told.known(1), &viewer, cook(1), &moment(-242)).unwrap();
    assert!(
        now.notices[0].text.starts_with("La hoja ya no cuadra. "),
        "{:?}",
        now.notices
    );
    assert_eq!(now.links[0].label, "Ver una hoja nueva");
}
