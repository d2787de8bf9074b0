//! Readings as the door shows them, wherever they lie.

use super::*;
use crate::screens::{ReadingsOf, ReadingsScreen};

/// Half a day of a drum read each 10 s with one spike of 10 s, handed over in batches; `work` after each batch or never.
fn half_a_day(door: &mut Slowbend, seals: bool) -> CookId {
    let (cook, pit, _) = begun(door);
    let bind = Act::BindProbe {
        cook,
        source: "box".into(),
        sensor: "1".into(),
        place: Where::Pit { pit },
        thermometer: None,
    };
    act(door, 2, bind);
    let spike = 3 * HOUR + 10_000;
    let all: Vec<SensorReading> = (3 * MINUTE / 10_000..12 * HOUR / 10_000)
        .map(|n| SensorReading {
            source: "box".into(),
            sensor: "1".into(),
            at: SIX + n * 10_000,
            temp: Mk::from_f(if n * 10_000 == spike {
                390
            } else {
                240 + n % 7
            }),
        })
        .collect();
    for batch in all.chunks(700) {
        let moment = Moment::at(batch[batch.len() - 1].at, "America/Chicago");
        door.readings(batch, &moment).unwrap();
        while seals && door.work(&moment, 4).unwrap() {}
    }
    cook
}

fn screen(door: &mut Slowbend, cook: CookId) -> ReadingsScreen {
    let viewer = viewer(door);
    let of = ReadingsOf::Cook { cook };
    door.readings_of(&viewer, of, None, None, &now(12 * 60))
        .unwrap()
}

#[test]
fn sealed_unsealed_and_waiting_readings_give_one_curve_and_its_spike() {
    let places = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
    let shown = [true, false].map(|seals| {
        let mut door = open(places[usize::from(seals)].path(), "here");
        let cook = half_a_day(&mut door, seals);
        let mut shown = screen(&mut door, cook);
        let mut again = open_again(door, places[usize::from(seals)].path());
        assert_eq!(screen(&mut again, cook), shown, "the same after a restart");
        shown.cook = CookId(uuid::Uuid::nil());
        (
            shown.series.clone(),
            shown.chart.clone(),
            shown.table.clone(),
        )
    });
    assert_eq!(shown[0], shown[1]);
    assert!(
        shown[0].0[0].extremes.contains("highest 390 °F at 9:00 AM"),
        "{:?}",
        shown[0].0
    );
    let chart = shown[0].1.as_ref().unwrap();
    assert!(chart.width <= 720 && chart.curves[0].points.len() <= 720 * 8);
}

fn open_again(mut door: Slowbend, place: &Path) -> Slowbend {
    door.suspend().unwrap();
    drop(door);
    open(place, "here")
}

#[test]
fn a_chart_of_what_is_not_there_is_refused() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    let viewer = viewer(&mut door);
    let nobody = uuid::Uuid::from_u128(9);
    for of in [
        ReadingsOf::Cook {
            cook: CookId(nobody),
        },
        ReadingsOf::Piece {
            piece: crate::ids::PieceId(nobody),
        },
        ReadingsOf::Pit {
            cook,
            pit: crate::ids::PitId(nobody),
        },
    ] {
        let refused = door
            .readings_of(&viewer, of, None, None, &now(1))
            .unwrap_err();
        assert!(matches!(refused, Trouble::Refused { .. }), "{refused:?}");
    }
    let empty = screen(&mut door, cook);
    assert_eq!((empty.chart, empty.series.len()), (None, 0));
}
