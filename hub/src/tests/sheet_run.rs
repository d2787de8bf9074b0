//! The run sheet as a page, a calendar file, and the hand-out of a class.

use super::{NOW, cook, get, get_in, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use slowbend_core::{
    acts::Act,
    ids::{CookId, DeviceId, PieceId},
    log::{AcceptedPlan, Does, OnSheet, PlanAsked, PlannedJob, Serve, Subject},
    moment::{HOUR, MINUTE},
    words::Viewer,
};
use std::sync::Arc;

fn id(path: &str) -> uuid::Uuid {
    path.rsplit('/').next().unwrap().parse().unwrap()
}

fn job(does: Does, on: Subject, at: i64) -> PlannedJob {
    PlannedJob {
        job: OnSheet { does, on, nth: 0 },
        at,
        until: at + 10 * MINUTE,
        hands: 1,
        wakes: false,
        pit: None,
        temp: None,
        wrap: None,
        what: String::new(),
        why: None,
    }
}

/// The slab's rub now, then it comes off in four hours; the address of its cook.
async fn planned(home: &Arc<Home>) -> String {
    let now = cook(home, "Regatta lunch").await;
    let page = get(home, &now).await.body;
    let piece = Subject::Piece(PieceId(id(&links(&page, "/meat/").remove(0))));
    let plan = AcceptedPlan {
        serve: Serve {
            at: NOW + 6 * HOUR,
            zone: "America/Chicago".into(),
        },
        jobs: vec![
            job(Does::Rub, piece, NOW),
            job(Does::TakeOff, piece, NOW + 4 * HOUR),
        ],
        chance_permille: Some(930),
        asked: PlanAsked::default(),
    };
    let act = Act::AcceptPlan {
        cook: CookId(id(&now)),
        plan,
    };
    let viewer = Viewer::default_for(DeviceId(uuid::Uuid::nil()));
    home.ask_here(|door, moment| door.act(&viewer, &act, moment))
        .unwrap();
    now
}

#[tokio::test]
async fn a_job_is_crossed_off_from_the_sheet_itself() {
    let (_folder, home) = home();
    let now = planned(&home).await;
    let sheet = format!("{now}/sheet");
    let page = get(&home, &sheet).await.body;
    assert!(
        page.contains("Rub: ") && page.contains("93 of 100"),
        "{page}"
    );
    assert!(!page.contains("data-ticked"), "{page}");
    let act = page
        .split("name=\"act\" value=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .find(|act| act.contains("&quot;answer&quot;"))
        .unwrap()
        .replace("&quot;", "\"");
    let fields = [("token", &*token()), ("back", &sheet), ("act", &act)];
    let done = post(&home, "/act", &fields).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let page = get(&home, &sheet).await.body;
    assert!(page.contains("data-ticked"), "{page}");
}

#[tokio::test]
async fn now_leads_to_the_sheet_and_without_a_plan_it_says_what_to_do() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let sheet = format!("{now}/sheet");
    assert!(links(&get(&home, &now).await.body, &now).contains(&sheet));
    let page = get_in(&home, &sheet, "es-US").await.body;
    assert!(page.contains("Todavía no hay hoja de tareas"), "{page}");
    let none = get(&home, &format!("{sheet}.ics")).await;
    assert_eq!(none.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn the_calendar_file_is_handed_out_as_one() {
    let (_folder, home) = home();
    let now = planned(&home).await;
    let file = get(&home, &format!("{now}/sheet.ics")).await;
    assert_eq!(file.status, StatusCode::OK);
    assert!(
        file.body.starts_with("BEGIN:VCALENDAR\r\n"),
        "{}",
        file.body
    );
    assert_eq!(file.body.matches("BEGIN:VEVENT").count(), 2);
}

#[tokio::test]
async fn a_class_gets_a_sheet_each_and_a_line_that_cannot_be_read_is_told() {
    let (_folder, home) = home();
    let now = planned(&home).await;
    let page = get(
        &home,
        &format!("{now}/hand-out?students=Ana%2C+12%3A30+PM%0ABen%2C+1+PM"),
    )
    .await
    .body;
    assert_eq!(page.matches("class=\"student\"").count(), 2, "{page}");
    let page = get(&home, &format!("{now}/hand-out?students=%3Cb%3EAna"))
        .await
        .body;
    assert!(page.contains("“&lt;b&gt;Ana”"), "{page}");
}

#[tokio::test]
async fn a_plan_is_asked_for_by_address_and_accepted_by_its_button() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let plan = format!("{now}/plan");
    let form = get(&home, &plan).await.body;
    assert!(
        form.contains("name=\"sleep_from\" value=\"22:00\""),
        "{form}"
    );
    let bad = get(&home, &format!("{plan}?go=on&hands=many")).await.body;
    assert!(bad.contains("“many” is not a whole number"), "{bad}");
    let asked = format!("{plan}?go=on&later=600&hands=1&late=60&cooler=on");
    let shown = get(&home, &asked).await.body;
    let act = shown
        .split("name=\"act\" value=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .find(|act| act.contains("accept_plan"))
        .unwrap_or_else(|| panic!("{shown}"))
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
    let fields = [("token", &*token()), ("back", &plan), ("act", &act)];
    let done = post(&home, "/act", &fields).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let to = done.to.unwrap();
    assert!(to.starts_with(&format!("{now}/sheet")), "{to}");
    let sheet = get(&home, &to).await.body;
    assert!(
        sheet.contains("Put on: ") && sheet.contains("later=60"),
        "{sheet}"
    );
    let later = get(&home, &format!("{plan}?later=60")).await.body;
    assert!(later.contains("1 h later"), "{later}");
}

/// What stands in the hidden field that names the hour of the table.
fn around(page: &str) -> String {
    let rest = page.split("name=\"around\" value=\"").nth(1).unwrap();
    rest.split('"').next().unwrap().to_owned()
}

#[tokio::test]
async fn courses_are_said_on_the_plan_page_and_what_contradicts_itself_comes_back() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let plan = format!("{now}/plan");
    let page = get(&home, &plan).await.body;
    assert!(page.contains("Not all at one time"), "{page}");
    let meat = format!(
        "meat-{}",
        id(&links(&get(&home, &now).await.body, "/meat/").remove(0))
    );
    let (around, send) = (around(&page), format!("{now}/courses"));
    let (once, again) = (token(), token());
    let mut fields = vec![
        ("token", &*once),
        ("form", "courses"),
        ("back", &plan),
        ("around", &around),
        ("course-1-name", "Ribs"),
        ("course-1-at", "1:30 pm"),
        ("course-1-latest", "1 pm"),
        (&meat, "1"),
    ];
    let refused = post(&home, &send, &fields).await;
    assert!(
        refused.body.contains("may be no later than"),
        "{}",
        refused.body
    );
    assert!(
        refused.body.contains("value=\"1:30 pm\""),
        "{}",
        refused.body
    );
    fields[0] = ("token", &*again);
    fields[6] = ("course-1-latest", "2 pm");
    let done = post(&home, &send, &fields).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let page = get(&home, &done.to.unwrap()).await.body;
    assert!(
        page.contains("Ribs, 1:30") && page.contains("at the latest: "),
        "{page}"
    );
}

#[tokio::test]
async fn a_sheet_that_no_longer_fits_leads_to_a_new_one_and_can_be_kept() {
    let (_folder, home) = home();
    let now = planned(&home).await;
    let sheet = format!("{now}/sheet");
    assert!(!get(&home, &sheet).await.body.contains("no longer fits"));
    let cook = CookId(id(&now));
    let serve = Serve {
        at: NOW + 8 * HOUR,
        zone: "America/Chicago".into(),
    };
    let act = Act::SetField {
        of: Subject::Cook(cook),
        to: slowbend_core::log::Field::Serve(Some(serve)),
        saw: None,
    };
    let viewer = Viewer::default_for(DeviceId(uuid::Uuid::nil()));
    home.ask_here(|door, moment| door.act(&viewer, &act, moment))
        .unwrap();
    let page = get(&home, &sheet).await.body;
    assert!(page.contains("is now on the table 2 h later."), "{page}");
    let new = get(&home, &format!("{now}/plan")).await.body;
    assert!(
        new.contains("accept_plan") && new.contains("keep_sheet"),
        "{new}"
    );
    let pressed = page
        .split("name=\"act\" value=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .find(|act| act.contains("keep_sheet"))
        .unwrap()
        .replace("&quot;", "\"");
    let plan = format!("{now}/plan");
    let fields = [("token", &*token()), ("back", &plan), ("act", &pressed)];
    let done = post(&home, "/act", &fields).await;
    assert!(done.to.unwrap().starts_with(&sheet), "{}", done.body);
    assert!(!get(&home, &sheet).await.body.contains("no longer fits"));
}
