//! The run sheet of the regatta lunch, in both languages, at nine in the morning: the butt is on, the turkey is still to come.

use super::regatta::{ZONE, minute, moment, told_until, viewer};
use crate::{
    cook::story::{Story, cook, piece, pit, planned_job},
    ids::CookId,
    log::*,
    screens::{self, HandOutScreen, RunSheetScreen},
    units::Mk,
    words::Locale,
};

fn job(does: Does, on: Subject, at: i64, minutes: i64, hands: i64) -> PlannedJob {
    PlannedJob {
        hands,
        ..planned_job(does, on, minute(at), minute(at + minutes))
    }
}

fn why(key: &str, args: &[(&str, WhyValue)]) -> Option<PlannedWhy> {
    let args = args.iter().map(|(name, value)| WhyArg {
        name: (*name).into(),
        value: value.clone(),
    });
    Some(PlannedWhy {
        key: key.into(),
        args: args.collect(),
    })
}

pub(in crate::screens) fn plan() -> AcceptedPlan {
    let (butt, turkey) = (Subject::Piece(piece(3)), Subject::Piece(piece(4)));
    let (drum, kettle) = (Subject::Pit(pit(1)), Subject::Pit(pit(2)));
    let put_on = [
        ("off", WhyValue::Time(minute(390))),
        ("in_hundred", WhyValue::Count(90)),
        ("serving", WhyValue::Text("lunch".into())),
        ("at", WhyValue::Time(minute(480))),
    ];
    let hold = [
        ("place", WhyValue::Message("plan-place-cooler".into())),
        ("least", WhyValue::Minutes(60)),
        ("most", WhyValue::Minutes(240)),
    ];
    let jobs = vec![
        PlannedJob {
            temp: Some(Mk::from_f(250)),
            why: why("plan-why-light", &[("preheat", WhyValue::Minutes(45))]),
            ..job(Does::Light, drum, -285, 45, 1)
        },
        PlannedJob {
            pit: Some(pit(1)),
            why: why("plan-why-put-on", &put_on),
            ..job(Does::PutOn, butt, -240, 10, 1)
        },
        PlannedJob {
            why: why("plan-why-sleep", &[]),
            ..job(Does::Sleep, Subject::Crew, -230, 320, 0)
        },
        PlannedJob {
            temp: Some(Mk::from_f(325)),
            ..job(Does::Light, kettle, 270, 30, 1)
        },
        PlannedJob {
            pit: Some(pit(2)),
            why: why("plan-why-no-such-sentence", &[]),
            ..job(Does::PutOn, turkey, 300, 10, 1)
        },
        job(Does::TakeOff, butt, 420, 10, 1),
        PlannedJob {
            what: "plan-place-cooler".into(),
            why: why("plan-why-hold", &hold),
            ..job(Does::Hold, butt, 425, 45, 1)
        },
        job(Does::Serve, Subject::Cook(cook(1)), 480, 0, 1),
    ];
    AcceptedPlan {
        serve: Serve {
            at: minute(480),
            zone: ZONE.into(),
        },
        jobs,
        chance_permille: Some(937),
        asked: PlanAsked::default(),
    }
}

fn story(until: i64) -> Story {
    let mut story = told_until(-245);
    story.say(
        1,
        minute(-244),
        Some(cook(1)),
        PlanAccepted { plan: plan() },
    );
    let mut after = told_until(until).entries;
    after.drain(..told_until(-245).entries.len());
    for entry in after {
        let Body::Raw(raw) = entry.body else { continue };
        let by = entry.key.device.0.as_u128() - 0xd000;
        let at = Entry::head(&raw).unwrap().at;
        story.say_raw(by, at, raw);
    }
    story
}

fn sheet(story: &Story, locale: Locale, at: i64) -> RunSheetScreen {
    let viewer = viewer(locale);
    screens::run_sheet(&story.told().known(1), &viewer, cook(1), &moment(at)).unwrap()
}

fn hand_out(list: &str) -> HandOutScreen {
    let (story, viewer) = (story(180), viewer(Locale::EnUs));
    screens::hand_out(&story.told().known(1), &viewer, cook(1), list, &moment(180)).unwrap()
}

const AT: i64 = 272;

#[test]
fn the_sheet_as_words_in_english() {
    assert_eq!(
        sheet(&story(AT), Locale::EnUs, AT).text,
        "\
Regatta lunch
On the table 2:00 PM, in 3 h 28 min
For 14 people
Ready by then in 93 of 100 such cooks
Accepted 1:56 AM by Ana

Today, Sat, Jun 13
1:15 AM  Light: Drum to 250 °F · 45 min until it is steady and meat goes on. · done 2:00 AM
2:00 AM  Put on: Butt on Drum · Off by 12:30 PM in 90 of 100 cooks, so that lunch is on the table at 2:00 PM. · done 2:00 AM
2:10 AM  Sleep · Nothing burns longer than it may be left alone.
10:30 AM  Light: Kettle to 325 °F
11:00 AM  Put on: Turkey breast on Kettle
1:00 PM  Try it, then off: Butt
1:05 PM  Hold hot: Butt · the cooler · In the cooler; best held for 1 h to 4 h.
2:00 PM  Serve: Regatta lunch
"
    );
}

#[test]
fn the_sheet_as_words_in_spanish() {
    let text = sheet(&story(AT), Locale::EsUs, AT).text;
    for line in [
        "Lista a esa hora en 93 de 100 cocciones así",
        "1:15 a. m.  Encender: Drum a 250 °F · ",
        "1:05 p. m.  Mantener caliente: Butt · la hielera · ",
    ] {
        assert!(text.contains(line), "{line} in\n{text}");
    }
    assert!(!text.contains('⟨'), "{text}");
}

#[test]
fn done_jobs_are_ticked_the_next_has_its_button_and_the_rest_wait() {
    let screen = sheet(&story(AT), Locale::EnUs, AT);
    let next = screen.next.expect("something is left");
    assert_eq!(
        (next.job.as_str(), next.state.as_str()),
        ("Light: Kettle to 325 °F", "2 min late")
    );
    let labels: Vec<&str> = next
        .buttons
        .iter()
        .map(|button| button.label.as_str())
        .collect();
    assert_eq!(
        labels,
        ["Fed the fire", "Done", "In 10 min", "Not this time"]
    );
    let ticked: Vec<bool> = screen
        .days
        .iter()
        .flat_map(|day| &day.lines)
        .map(|line| line.ticked)
        .collect();
    assert_eq!(
        ticked,
        [true, true, true, false, false, false, false, false]
    );
}

#[test]
fn its_next_job_stands_on_now() {
    let (story, viewer) = (story(AT), viewer(Locale::EnUs));
    let now = screens::pitside(&story.told().known(1), &viewer, cook(1), &moment(AT)).unwrap();
    let all: Vec<&str> = now
        .next
        .iter()
        .map(|line| line.name.as_str())
        .chain([now.now.verb.as_str()])
        .collect();
    assert!(all.iter().any(|line| line.contains("Light")), "{all:?}");
}

#[test]
fn before_a_plan_is_accepted_the_sheet_says_what_to_do() {
    let told = told_until(0);
    let screen = sheet(&told, Locale::EnUs, 0);
    assert!(screen.none.is_some() && screen.days.is_empty() && screen.calendar.is_empty());
}

#[test]
fn the_other_plan_says_what_it_would_change() {
    let mut story = story(AT);
    let mut later = plan();
    later.serve.at += crate::moment::HOUR;
    for job in later.jobs.iter_mut().filter(|job| job.at > minute(AT)) {
        job.at += crate::moment::HOUR;
        job.until += crate::moment::HOUR;
    }
    story.say(2, minute(AT), Some(cook(1)), PlanAccepted { plan: later });
    let other = sheet(&story, Locale::EnUs, AT + 1)
        .other
        .expect("one came before");
    let changes: Vec<String> = other
        .changes
        .iter()
        .map(|line| format!("{}: {}", line.name, line.state))
        .collect();
    assert_eq!(
        changes,
        [
            "Put on: Turkey breast on Kettle: 12:00 PM → 11:00 AM, 1 h earlier",
            "Try it, then off: Butt: 2:00 PM → 1:00 PM, 1 h earlier",
            "Hold hot: Butt · the cooler: 2:05 PM → 1:05 PM, 1 h earlier",
            "Serve: Regatta lunch: 3:00 PM → 2:00 PM, 1 h earlier",
        ]
    );
}

#[test]
fn the_calendar_names_its_events_alike_in_every_plan_and_rings_where_hands_are_needed() {
    let screen = sheet(&story(AT), Locale::EnUs, AT);
    let count = |what: &str| screen.calendar.matches(what).count();
    assert_eq!(
        (
            count("BEGIN:VEVENT"),
            count("BEGIN:VALARM"),
            count("BEGIN:VTIMEZONE")
        ),
        (8, 7, 1)
    );
    assert!(
        screen
            .calendar
            .contains("DTSTART;TZID=America/Chicago:20260613T110000\r\n")
    );
    let uids = |screen: &RunSheetScreen| -> Vec<String> {
        screen
            .calendar
            .lines()
            .filter(|line| line.starts_with("UID:"))
            .map(str::to_owned)
            .collect()
    };
    let mut again = story(AT);
    again.say(1, minute(AT), Some(cook(1)), PlanAccepted { plan: plan() });
    assert_eq!(uids(&screen), uids(&sheet(&again, Locale::EsUs, AT + 5)));
}

#[test]
fn each_student_gets_the_sheet_counted_back_from_their_own_serving() {
    let screen = hand_out("Ana, 12:30 PM\n\nBen, 2 PM");
    assert_eq!(screen.refused, None);
    let lines: Vec<(String, Vec<String>)> = screen
        .sheets
        .iter()
        .map(|sheet| {
            let lines = sheet.days.iter().flat_map(|day| &day.lines);
            (
                sheet.name.clone(),
                lines
                    .map(|line| format!("{} {}", line.time, line.job))
                    .collect(),
            )
        })
        .collect();
    assert_eq!(lines[0].0, "Ana");
    assert_eq!(lines[0].1[0], "11:45 PM Light: Drum to 250 °F");
    assert_eq!(lines[0].1.last().unwrap(), "12:30 PM Serve: Regatta lunch");
    assert_eq!(lines[1].1.last().unwrap(), "2:00 PM Serve: Regatta lunch");
    assert!(!lines[0].1.iter().any(|line| line.contains("Sleep")));
    assert!(
        screen.minimums.iter().any(|line| line.contains("165")),
        "{:?}",
        screen.minimums
    );
}

#[test]
fn a_list_that_cannot_be_read_says_which_line() {
    let screen = hand_out("Ana, 12:30 PM\nBen");
    assert!(screen.refused.unwrap().contains("“Ben”") && screen.sheets.is_empty());
}

#[test]
fn a_cook_that_is_not_here_has_no_sheet() {
    let told = told_until(0).told();
    let nobody = CookId(uuid::Uuid::nil());
    assert!(
        screens::run_sheet(&told.known(1), &viewer(Locale::EnUs), nobody, &moment(0)).is_none()
    );
}
