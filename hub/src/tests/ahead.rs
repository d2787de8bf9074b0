//! The hours ahead on a meat's page and on Now, by the sums that ship.

use super::{NOW, cook, get, get_in, home, links};
use slowbend_core::{
    acts::Act,
    door::SensorReading,
    ids::{CookId, PieceId, PitId},
    log::{Stage, Where},
    moment::MINUTE,
    units::Mk,
    words::Viewer,
};

#[tokio::test]
async fn a_meat_shows_when_it_will_likely_be_ready_and_what_would_change_that() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = links(&get(&home, &now).await.body, "/meat/").remove(0);
    let write = get(&home, &format!("{now}/write")).await.body;
    let pit = write.split("value=\"pit:").nth(1).unwrap();
    let pit: PitId = pit.split('"').next().unwrap().parse().unwrap();
    let (cook, piece): (CookId, PieceId) = (now[6..].parse().unwrap(), meat[6..].parse().unwrap());
    home.ask_here(|door, moment| {
        let viewer = Viewer::default_for(home.device);
        let stage = Act::SetStage {
            piece,
            stage: Stage::OnPit { pit },
            at: None,
        };
        door.act(&viewer, &stage, moment)?;
        let bind = Act::BindProbe {
            cook,
            source: "box".into(),
            sensor: "slab".into(),
            place: Where::Piece {
                piece,
                spot: "between_bones".into(),
            },
            thermometer: None,
        };
        door.act(&viewer, &bind, moment)?;
        door.make_forecasts()
    })
    .unwrap();
    assert!(!get(&home, &meat).await.body.contains("The hours ahead"));
    home.set_clock(NOW + 6 * MINUTE);
    home.ask_here(|door, moment| {
        let reading = |minute: i64| SensorReading {
            source: "box".into(),
            sensor: "slab".into(),
            at: NOW + minute * MINUTE,
            temp: Mk::from_f(42 + minute),
        };
        door.readings(&(1..6).map(reading).collect::<Vec<_>>(), moment)?;
        while door.work(moment, 9)? {}
        assert_eq!(door.works_next(moment), Some(NOW + 10 * MINUTE));
        Ok(())
    })
    .unwrap();
    let page = get(&home, &meat).await.body;
    for part in [
        "The hours ahead",
        "(4 in 5, rough)",
        "Pit 25 °F hotter",
        "A forecast is no check",
        "<polygon class=\"area\" data-kind=\"ahead\"",
        "data-stroke=\"ahead\"",
    ] {
        assert!(page.contains(part), "{part} is missing in {page}");
    }
    assert!(get(&home, &now).await.body.contains("likely ready"));
    let spanish = get_in(&home, &meat, "es-US").await.body;
    assert!(spanish.contains("Las próximas horas") && spanish.contains("4 de 5, aproximado"));
    let readings = get(&home, &format!("{meat}/readings")).await.body;
    assert!(readings.contains("Where its inside will likely be (4 in 5)"));
}
