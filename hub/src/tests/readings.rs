//! Readings and thermometers on their pages.

use super::{NOW, cook, get, get_in, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use slowbend_core::{
    acts::Act,
    door::SensorReading,
    ids::{CookId, PieceId, PitId},
    log::{Stage, Where},
    moment::MINUTE,
    units::Mk,
    words::Viewer,
};
use std::sync::Arc;

struct Lunch {
    now: String,
    meat: String,
    pit: String,
}

/// A slab on a drum, both read for two hours, with a silence of half an hour in the drum.
async fn lunch(home: &Arc<Home>) -> Lunch {
    let now = cook(home, "Regatta lunch").await;
    let meat = links(&get(home, &now).await.body, "/meat/").remove(0);
    let write = get(home, &format!("{now}/write")).await.body;
    let pit = write
        .split("value=\"pit:")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap()
        .to_owned();
    let ids: (CookId, PieceId, PitId) = (
        now[6..].parse().unwrap(),
        meat[6..].parse().unwrap(),
        pit.parse().unwrap(),
    );
    home.ask_here(|door, moment| {
        let viewer = Viewer::default_for(home.device);
        let stage = Act::SetStage {
            piece: ids.1,
            stage: Stage::OnPit { pit: ids.2 },
            at: None,
        };
        door.act(&viewer, &stage, moment)?;
        for (sensor, place) in [
            ("grate", Where::Pit { pit: ids.2 }),
            (
                "slab",
                Where::Piece {
                    piece: ids.1,
                    spot: "between_bones".into(),
                },
            ),
        ] {
            let bind = Act::BindProbe {
                cook: ids.0,
                source: "box".into(),
                sensor: sensor.into(),
                place,
                thermometer: None,
            };
            door.act(&viewer, &bind, moment)?;
        }
        Ok(())
    })
    .unwrap();
    home.set_clock(NOW + 120 * MINUTE);
    home.ask_here(|door, moment| {
        let reading = |sensor: &str, minute: i64, f: i64| SensorReading {
            source: "box".into(),
            sensor: sensor.into(),
            at: NOW + minute * MINUTE,
            temp: Mk::from_f(f),
        };
        let drum = (0..=120)
            .filter(|minute| !(40..70).contains(minute))
            .map(|m| reading("grate", m, 240 + m % 9));
        let slab = (0..=120).map(|m| reading("slab", m, 40 + m));
        door.readings(&drum.chain(slab).collect::<Vec<_>>(), moment)
    })
    .unwrap();
    Lunch { now, meat, pit }
}

#[tokio::test]
async fn readings_of_a_cook_a_meat_and_a_pit_are_drawn_said_and_listed_in_both_languages() {
    let (_folder, home) = home();
    let lunch = lunch(&home).await;
    let paths = [
        format!("{}/readings", lunch.now),
        format!("{}/readings", lunch.meat),
        format!("{}/pit/{}/readings", lunch.now, lunch.pit),
        format!("{}/readings?hours=1", lunch.now),
    ];
    for path in &paths {
        for language in ["en-US", "es-US"] {
            let page = get_in(&home, path, language).await;
            assert_eq!(page.status, StatusCode::OK, "{path}: {}", page.body);
            assert!(!page.body.contains('⟨'), "{path}: {}", page.body);
            for there in [
                "role=\"img\" aria-label=",
                "class=\"curve\"",
                "<table>",
                "<time datetime=",
            ] {
                assert!(page.body.contains(there), "{path} lacks {there}");
            }
            assert!(
                !page.body.contains("style="),
                "{path}: the policy forbids inline style"
            );
        }
    }
    let page = get(&home, &paths[0]).await.body;
    for told in ["No reading", "rising", "Published minimum ", "160 °F"] {
        assert!(page.contains(told), "{told}: {page}");
    }
    assert_eq!(
        page.matches("data-stroke=\"pit\"").count(),
        2,
        "a curve and its sample"
    );
    let drum = page
        .split("class=\"curve\" data-stroke=\"pit\"")
        .nth(2)
        .unwrap()
        .split('"')
        .nth(3)
        .unwrap();
    assert_eq!(drum.matches('M').count(), 2, "the silence is a gap: {drum}");
}

#[tokio::test]
async fn readings_are_reached_from_the_meat_and_from_the_cook_and_load_themselves_without_scripts()
{
    let (_folder, home) = home();
    let lunch = lunch(&home).await;
    for (from, to) in [(&lunch.now, &lunch.now), (&lunch.meat, &lunch.meat)] {
        let body = get(&home, from).await.body;
        assert!(body.contains(&format!("href=\"{to}/readings\"")), "{from}");
    }
    let page = get(&home, &format!("{}/readings", lunch.now)).await.body;
    assert!(page.contains("<noscript><meta http-equiv=\"refresh\" content=\"60\">"));
    let id = "01936f1e-0000-7000-8000-0000000000ff";
    for path in [
        format!("/cook/{id}/readings"),
        format!("/meat/{id}/readings"),
        format!("{}/pit/{id}/readings", lunch.now),
    ] {
        assert_eq!(
            get(&home, &path).await.status,
            StatusCode::NOT_FOUND,
            "{path}"
        );
    }
}

#[tokio::test]
async fn a_thermometer_is_checked_on_its_page_and_what_is_made_of_it_is_said() {
    let (_folder, home) = home();
    let page = get(&home, "/thermometers").await.body;
    assert!(
        page.contains("32 °F")
            && page.contains("212 °F")
            && page.contains("No thermometer is known yet"),
        "{page}"
    );
    let fresh = token();
    let add = [
        ("token", &*fresh),
        ("form", "add-thermometer"),
        ("back", "/thermometers"),
        ("name", "Pen"),
    ];
    let added = post(&home, "/settings/thermometer", &add).await;
    assert!(added.to.unwrap().starts_with("/thermometers?told="));
    let page = get(&home, "/thermometers").await.body;
    let of = page
        .split("value=\"{")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap()
        .replace("&quot;", "\"");
    let of = format!("{{{of}");
    let check = |against: &'static str, read: &'static str, altitude: &'static str| {
        let (home, of, fresh) = (home.clone(), of.clone(), token());
        async move {
            let fields = [
                ("token", &*fresh),
                ("form", "bath"),
                ("back", "/thermometers"),
                ("of", &*of),
                ("against", against),
                ("read", read),
                ("altitude", altitude),
            ];
            post(&home, "/settings/bath", &fields).await
        }
    };
    for (against, read, altitude, said) in [
        ("ice", "33", "", "Its readings count."),
        ("ice", "36", "", "Its readings are corrected by that."),
        (
            "boiling",
            "195",
            "5280",
            "Nothing is judged by it. Use another one.",
        ),
    ] {
        let done = check(against, read, altitude).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
        let page = get(&home, &done.to.unwrap()).await.body;
        assert!(page.contains(said), "{said}: {page}");
    }
    let page = get(&home, "/thermometers").await.body;
    assert_eq!(page.matches("right is").count(), 3, "each check is listed");
    let unsaid = check("boiling", "212", "").await;
    assert_eq!(unsaid.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        unsaid.body.contains("give your height above the sea")
            && unsaid.body.contains("value=\"212\""),
        "{}",
        unsaid.body
    );
    let spanish = get_in(&home, "/thermometers", "es-US").await.body;
    assert!(!spanish.contains('⟨') && spanish.contains("Revisar un termómetro"));
}

#[tokio::test]
async fn the_thermometer_page_is_reached_from_settings_and_from_a_check() {
    let (_folder, home) = home();
    let lunch = lunch(&home).await;
    for from in [
        "/settings".to_owned(),
        format!("{}/check", lunch.meat),
        format!("{}/readings", lunch.meat),
    ] {
        let body = get(&home, &from).await.body;
        assert!(body.contains("href=\"/thermometers\""), "{from}");
    }
}

#[tokio::test]
async fn what_happened_stands_under_its_day_with_its_instant() {
    let (_folder, home) = home();
    let lunch = lunch(&home).await;
    let page = get(&home, &format!("{}/timeline", lunch.now)).await.body;
    assert!(page.contains("<h2>Today, Sat, Jun 13</h2>"), "{page}");
    assert!(
        page.contains("datetime=\"2026-06-13T16:05:00Z\">11:05 AM</time>"),
        "{page}"
    );
}
