use super::*;
use crate::{
    acts::Act,
    checks::{Bend, Cut, Spot, TestResult},
    ids::{DeviceId, PieceId, PitId},
    log::{Field, Subject},
    moment::{HOUR, Moment},
    words::{Locale, Viewer},
};
use uuid::Uuid;

mod courses;

/// Saturday 2026-06-13 09:00 in Chicago (UTC−5).
const MORNING: i64 = 1_781_359_200_000;

fn viewer(locale: Locale) -> Viewer {
    Viewer {
        locale,
        zone: "America/Chicago".into(),
        ..Viewer::default_for(DeviceId(Uuid::nil()))
    }
}

fn pass(chosen: &[&str], spots: &[(&str, &str)]) -> CheckTyped {
    let spot = |(spot, text): &(&str, &str)| SpotTyped {
        spot: (*spot).into(),
        text: (*text).into(),
    };
    CheckTyped {
        piece: PieceId(Uuid::nil()),
        chosen: chosen.iter().map(|one| (*one).into()).collect(),
        spots: spots.iter().map(spot).collect(),
        thermometer: None,
        left_in: false,
    }
}

#[test]
fn a_pass_is_what_was_chosen_and_what_was_read() {
    let typed = pass(
        &[r#"{"bend":"cracks"}"#],
        &[("between_bones", " 198 "), ("elsewhere", " ")],
    );
    let Ok(Act::Check { results, .. }) = check(&viewer(Locale::EnUs), &typed) else {
        panic!("not read");
    };
    assert_eq!(results.len(), 2);
    assert_eq!(results[0], TestResult::Lifted(Bend::Cracks));
    let TestResult::Heat(heat) = results[1] else {
        panic!("no reading");
    };
    assert_eq!((heat.spot, heat.instant_read), (Spot::BetweenBones, true));
    assert!((365_000..366_000).contains(&heat.mk.0), "{:?}", heat.mk);
}

#[test]
fn a_pass_of_nothing_and_one_that_cannot_be_read_are_told() {
    for (typed, says) in [
        (pass(&[], &[("center", "")]), "No se probó nada"),
        (pass(&["{}"], &[]), "Elige una"),
        (pass(&[], &[("center", "hot")]), "hot"),
        (pass(&[], &[("nowhere", "98 °C")]), "Elige una"),
    ] {
        let reason = check(&viewer(Locale::EsUs), &typed).unwrap_err().reason;
        assert!(reason.contains(says), "{reason}");
    }
}

#[test]
fn a_cook_is_served_at_the_next_such_hour() {
    let typed = StartTyped {
        name: " Regatta lunch ".into(),
        serve: "2 pm".into(),
        people: "14".into(),
        meats: vec![MeatTyped {
            cut: Cut::SpareRibs,
            weight: "3.5".into(),
            pit: Some(PitId(Uuid::nil())),
        }],
    };
    let moment = Moment::at(MORNING, "America/Chicago");
    let act = start(&viewer(Locale::EnUs), &typed, &moment);
    let Ok(Act::StartCook {
        name,
        serve: Some(serve),
        people,
        meats,
        demo: false,
    }) = act
    else {
        panic!("{act:?}");
    };
    assert_eq!(
        (name.as_str(), serve.at, people),
        ("Regatta lunch", MORNING + 5 * HOUR, Some(14))
    );
    assert_eq!(serve.zone, "America/Chicago");
    assert_eq!(meats[0].weight_g, Some(1588));
    let broken = StartTyped {
        people: "many".into(),
        ..typed.clone()
    };
    assert!(start(&viewer(Locale::EnUs), &broken, &moment).is_err());
    let mut heavy = typed.clone();
    heavy.meats.push(MeatTyped {
        cut: Cut::TurkeyBreast,
        weight: "many".into(),
        pit: None,
    });
    let refused = start(&viewer(Locale::EnUs), &heavy, &moment).unwrap_err();
    let says = "Row 2, Turkey breast: “many” is not a weight.";
    assert!(refused.reason.starts_with(says), "{}", refused.reason);
    let nameless = StartTyped {
        name: " ".into(),
        ..typed
    };
    let act = start(&viewer(Locale::EsUs), &nameless, &moment);
    assert!(
        matches!(act, Ok(Act::StartCook { name, .. }) if name == "Costillas de cerdo"),
        "named by its first meat"
    );
    let empty = StartTyped {
        meats: vec![],
        ..nameless
    };
    assert!(start(&viewer(Locale::EnUs), &empty, &moment).is_err());
}

#[test]
fn a_field_is_read_by_its_name() {
    let set = |field: &str, value: &str| {
        let typed = FieldTyped {
            of: Subject::Crew,
            field: field.into(),
            value: value.into(),
            saw: None,
        };
        super::field(&viewer(Locale::EnUs), &typed).map(|act| match act {
            Act::SetField { to, .. } => to,
            other => panic!("{other:?}"),
        })
    };
    assert_eq!(set("mop_minutes", "45"), Ok(Field::MopMinutes(45)));
    assert_eq!(set("alone_minutes", ""), Ok(Field::AloneMinutes(None)));
    assert_eq!(set("altitude_m", "5280 ft"), Ok(Field::AltitudeM(1609)));
    assert_eq!(set("grate_cm2", "400"), Ok(Field::GrateCm2(Some(2581))));
    assert_eq!(set("name", " Drum "), Ok(Field::Name("Drum".into())));
    for (field, value) in [("mop_minutes", ""), ("altitude_m", "high"), ("demo", "1")] {
        assert!(set(field, value).is_err(), "{field}");
    }
}

#[test]
fn a_band_and_a_bath_are_read_in_the_viewers_scale() {
    let typed = BandTyped {
        of: Subject::Pit(PitId(Uuid::nil())),
        low: "225".into(),
        high: "275".into(),
        minutes: "15".into(),
        saw: None,
    };
    let act = band(&viewer(Locale::EnUs), &typed);
    let Ok(Act::SetField {
        to: Field::Band(band),
        ..
    }) = act
    else {
        panic!("{act:?}");
    };
    assert_eq!(
        (band.low.0 / 1000, band.high.0 / 1000, band.minutes),
        (380, 408, 15)
    );
    let typed = BathTyped {
        thermometer: crate::ids::ThermometerId(Uuid::nil()),
        boiling_at: None,
        read: "33".into(),
    };
    assert!(matches!(
        bath(&viewer(Locale::EnUs), &typed),
        Ok(Act::CheckThermometer {
            against: crate::log::Bath::Ice,
            ..
        })
    ));
}
