//! Nights at the fire, told by what hands count.

use serde_json::{Value, json};
use slowbend_core::{fire::*, log::PitKind, units::Mk};

fn ask(input: Value) -> Result<FuelAnswer, NotAFire> {
    fuel(&serde_json::from_value(input).expect("the shape of the sum"))
}

fn at(pit: &str, f: i64, more: Value) -> Value {
    let mut input = json!({ "pit": pit, "pit_temp": Mk::from_f(f).0, "minutes": 60 });
    let fields = input.as_object_mut().expect("an object");
    fields.extend(more.as_object().expect("an object").clone());
    input
}

/// A drum with a basket: a night on one basket, as crews count on.
#[test]
fn a_basket_carries_a_drum_through_the_night() {
    let night = ask(at(
        "drum",
        250,
        json!({ "unit": "basket", "meat_g": 8_000, "minutes": 720 }),
    ))
    .unwrap();
    let lasts = night.minutes_per_unit.unwrap();
    assert!((9 * 60..=20 * 60).contains(&lasts.likely), "{lasts:?}");
    assert!(night.quarters.unwrap().likely <= 6, "{night:?}");
}

/// A stick burner: a split about every three quarters of an hour.
#[test]
fn a_stick_burner_asks_for_a_split_within_the_hour() {
    let burner = ask(at("stick_burner", 265, json!({ "meat_g": 12_000 }))).unwrap();
    assert_eq!(burner.unit, Some(FuelUnit::Split));
    let lasts = burner.minutes_per_unit.unwrap();
    assert!((20..=60).contains(&lasts.likely), "{lasts:?}");
}

/// A hopper of pellets outlasts a night's sleep.
#[test]
fn a_hopper_outlasts_the_sleep_and_in_the_rain_it_lasts_less_long() {
    let dry = ask(at("pellet", 250, json!({})))
        .unwrap()
        .minutes_per_unit
        .unwrap();
    let storm = json!({ "ambient": "cold", "wind": "windy", "rain": "wet", "sun": "shade" });
    let wet = ask(at("pellet", 250, json!({ "weather": storm })))
        .unwrap()
        .minutes_per_unit
        .unwrap();
    assert!(dry.likely >= 8 * 60, "{dry:?}");
    assert!(wet.likely * 3 < dry.likely * 2, "{wet:?} {dry:?}");
}

#[test]
fn an_electric_pit_needs_power_and_no_fuel() {
    let box_ = ask(at("electric", 225, json!({}))).unwrap();
    assert_eq!((box_.g_per_hour, box_.unit, box_.smoke_w), (None, None, 0));
    assert!(box_.need_w.likely > 100, "{box_:?}");
}

#[test]
fn a_pits_own_split_goes_before_the_usual_one() {
    let usual = ask(at("stick_burner", 265, json!({}))).unwrap();
    let own = ask(at("stick_burner", 265, json!({ "unit_g": 1_600 }))).unwrap();
    assert_eq!(usual.unit_g, Some(800));
    let (twice, once) = (
        own.minutes_per_unit.unwrap().likely,
        usual.minutes_per_unit.unwrap().likely,
    );
    assert!((twice - 2 * once).abs() <= 1, "{twice} {once}");
}

#[test]
fn wood_from_damp_air_burns_faster_and_wet_wood_is_told() {
    let of = |humidity| {
        ask(at(
            "stick_burner",
            265,
            json!({ "wood_humidity_permille": humidity }),
        ))
    };
    let (dry, damp) = (of(300).unwrap(), of(900).unwrap());
    assert!(damp.g_per_hour.unwrap().likely > dry.g_per_hour.unwrap().likely);
    let green = ask(at("stick_burner", 745, json!({ "moisture_permille": 500 }))).unwrap_err();
    assert_eq!(green, NotAFire::TooWet { permille: 500 });
}

#[test]
fn what_cannot_be_is_told_with_what_to_give_instead() {
    let told = |input: Value| ask(input).unwrap_err().to_string();
    let fahrenheit = told(json!({ "pit": "drum", "pit_temp": 250, "minutes": 60 }));
    assert!(fahrenheit.contains("250 °F are 394261"), "{fahrenheit}");
    let celsius = told(at("drum", 250, json!({ "air": 20 })));
    assert!(celsius.contains("20 °C are 293150"), "{celsius}");
    for (more, says) in [
        (json!({ "minutes": 0 }), "minutes is 0"),
        (json!({ "minutes": 1_000_000 }), "has to be 1 to 2880"),
        (json!({ "meat_g": -1 }), "meat_g is -1"),
        (json!({ "grate_cm2": 0 }), "grate_cm2 is 0"),
        (json!({ "unit_g": 0 }), "unit_g is 0"),
        (json!({ "moisture_permille": 900 }), "0 to 500"),
        (
            json!({ "moisture_permille": 100, "wood_humidity_permille": 500, "unit": "split" }),
            "twice",
        ),
        (json!({ "fuel": "pellets" }), "does not go with this pit"),
        (
            json!({ "unit": "split", "fuel": "lump" }),
            "splits and chunks are wood",
        ),
        (
            json!({ "air": Mk::from_f(249).0, "weather": { "ambient": "hot", "wind": "still", "rain": "dry", "sun": "sunny" } }),
            "air, millikelvin",
        ),
    ] {
        let said = told(at("drum", 250, more.clone()));
        assert!(said.contains(says), "{more}: {said}");
    }
    let electric = told(at("electric", 225, json!({ "fuel": "wood" })));
    assert!(electric.contains("burns none"), "{electric}");
    let cold = told(at("drum", 110, json!({ "air": Mk::from_f(120).0 })));
    assert!(cold.contains("not hotter"), "{cold}");
    let mixed =
        serde_json::from_value::<FuelInput>(json!({ "pit": "drum", "pit_f": 250, "minutes": 60 }));
    assert!(mixed.unwrap_err().to_string().contains("pit_f"));
}

fn feed(at_min: i64, kj: i64) -> Feed {
    Feed {
        at_min,
        kj: Some(kj),
        loss_w: 1_000,
    }
}

/// The regatta's stick burner: a split at 10, 52, 100, 141, 190.
#[test]
fn after_four_intervals_the_next_split_is_told_by_their_middle() {
    let feeds: Vec<Feed> = [10, 52, 100, 141, 190].map(|at| feed(at, 12_000)).into();
    let next = rhythm(&feeds, &[], 1_000, true).unwrap();
    assert_eq!((next.seen, next.past), (4, 0));
    assert_eq!(next.lasts_min, Spread::new(41, 42, 49));
    assert_eq!(next.next_min, Spread::new(231, 232, 239));
}

#[test]
fn two_splits_at_once_last_twice_as_long_and_one_slip_of_the_clock_is_no_rhythm() {
    let mut feeds: Vec<Feed> = [0, 40, 80, 120, 160].map(|at| feed(at, 12_000)).into();
    feeds.push(feed(200, 12_000));
    feeds.push(feed(202, 12_000));
    assert_eq!(
        rhythm(&feeds, &[], 1_000, true).unwrap().lasts_min.likely,
        80
    );
    // Somebody forgot to tap for two splits: one long interval moves the middle by nothing.
    let gap: Vec<Feed> = [0, 40, 80, 200, 240, 280].map(|at| feed(at, 12_000)).into();
    assert_eq!(rhythm(&gap, &[], 1_000, true).unwrap().lasts_min.likely, 40);
}

#[test]
fn the_first_feed_of_a_night_goes_by_past_nights_and_a_new_pit_by_none() {
    let past = vec![[0, 90, 185].map(|at| feed(at, 50_000)).to_vec()];
    let first = rhythm(&[feed(1_000, 50_000)], &past, 1_000, true).unwrap();
    assert_eq!((first.seen, first.past), (0, 2));
    assert_eq!(first.next_min.likely, 1_090);
    assert_eq!(rhythm(&[feed(1_000, 50_000)], &[], 1_000, true), None);
    assert_eq!(rhythm(&[], &past, 1_000, true), None);
}

#[test]
fn a_gale_shortens_what_was_learned_in_a_calm() {
    let feeds: Vec<Feed> = [0, 60, 120, 180, 240].map(|at| feed(at, 12_000)).into();
    let calm = rhythm(&feeds, &[], 1_000, true).unwrap();
    let gale = rhythm(&feeds, &[], 1_500, true).unwrap();
    assert_eq!((calm.lasts_min.likely, gale.lasts_min.likely), (60, 40));
    let unsaid = rhythm(&feeds, &[], 1_000, false).unwrap();
    assert!(
        unsaid.lasts_min.low < calm.lasts_min.low && unsaid.lasts_min.high > calm.lasts_min.high
    );
}

/// A mop a half hour costs less than what is worth a word; a whole morning of it is said.
#[test]
fn one_opening_moves_the_finish_by_a_few_minutes_and_many_by_more_than_ten() {
    let of = |openings, seconds| {
        let cost = OpeningCost {
            pit: PitKind::Drum,
            grate_cm2: None,
            pit_temp: Mk::from_f(250),
            openings,
            seconds,
        };
        opening_cost(&cost, &Weather::FAIR).likely
    };
    assert!((1..=6).contains(&of(1, 60)), "{}", of(1, 60));
    assert!(of(1, 60) <= COST_SHOWN_MIN && of(8, 90) > COST_SHOWN_MIN);
    assert_eq!(of(0, 60), 0);
}
