//! The rowing club's regatta lunch, and what is told of input that cannot be meant.

use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use slowbend_core::{
    batch::{
        Cents, Grams, Level, Milligrams, Milliliters, NotABatch, Wanted, brine, mop, portions, rub,
        shopping,
    },
    safety::CautionKind,
};

fn of<T: DeserializeOwned>(input: Value) -> T {
    serde_json::from_value(input).expect("an input")
}

fn half_and_half(basis: &str) -> Value {
    json!({
        "meat_g": 10_000, "portions": 24, "basis": basis,
        "parts": [
            { "name": "salt", "parts": 1, "kind": "table_salt" },
            { "name": "pepper", "parts": 1, "kind": "unsalted", "cup_g": 110 },
        ],
    })
}

#[test]
fn half_and_half_by_volume_is_far_more_salt_than_by_weight() {
    let weight = rub(&of(half_and_half("weight"))).unwrap();
    let volume = rub(&of(half_and_half("volume"))).unwrap();
    assert_eq!(weight.rub_mg, Milligrams(200_000));
    assert_eq!(weight.salt_mg, Milligrams(100_000));
    // 292 of 402 grams.
    assert_eq!(volume.parts[0].mg, Milligrams(145_274));
    assert_eq!(volume.salt_mg_per_kg, Milligrams(14_528));
    assert_eq!(volume.level, Level::Common);
    assert_eq!(volume.sodium_mg, Milligrams(57_147));
    assert_eq!(volume.sodium_mg_a_portion, Milligrams(2_382));
}

#[test]
fn all_salt_of_a_meat_is_added_up() {
    let mut input = half_and_half("weight");
    input["also"] = json!([
        { "label_solution": { "percent": 8, "salt_permille": 20 } },
        { "label_sodium": { "mg_per_100g": 60 } },
        { "brine": { "g": 500, "salt_permille": 50 } },
        { "injection": { "g": 800, "salt_permille": 20 } },
        { "mop": { "g": 400, "salt_permille": 10 } },
    ]);
    let answer = rub(&of(input)).unwrap();
    let mg: Vec<i64> = answer.salt.iter().map(|share| share.mg.0).collect();
    assert_eq!(mg, [100_000, 16_000, 15_253, 25_000, 16_000, 4_000]);
    assert_eq!(answer.salt_mg, Milligrams(176_253));
    assert_eq!(answer.level, Level::Above);
}

#[test]
fn kosher_salt_by_the_cup_is_weighed_or_not_told() {
    let mut input = half_and_half("volume");
    input["parts"][0]["kind"] = json!("other_salt");
    let refused = rub(&of(input.clone())).unwrap_err();
    assert_eq!(
        refused,
        NotABatch::CupNotWeighed {
            name: "salt".into()
        }
    );
    assert!(refused.to_string().contains("Weigh a level cup of yours"));
    input["parts"][0]["cup_g"] = json!(150);
    assert_eq!(rub(&of(input)).unwrap().parts[0].mg, Milligrams(115_385));
}

#[test]
fn a_brine_says_its_strength_both_ways() {
    let wanted = json!({ "of_the_water": { "permille": 100 } });
    let answer = brine(&of(json!({ "water_g": 4_000, "wanted": wanted }))).unwrap();
    assert_eq!(answer.salt_mg, Milligrams(400_000));
    assert_eq!((answer.of_the_water, answer.of_the_brine), (1_000, 909));
    assert!(answer.cautions.contains(&CautionKind::RawMarinade));
    let brine_of = |wanted| {
        brine(&slowbend_core::batch::BrineInput {
            water_g: Grams(20),
            wanted,
        })
    };
    assert!(brine_of(Wanted::OfTheBrine { permille: 263 }).is_ok());
    assert_eq!(
        brine_of(Wanted::OfTheBrine { permille: 264 }),
        Err(NotABatch::Saturated)
    );
    assert_eq!(
        brine_of(Wanted::OfTheWater { permille: 400 }),
        Err(NotABatch::Saturated)
    );
}

fn regatta_mop() -> Value {
    let meat = |name, cut, g, wetting| json!({ "name": name, "cut": cut, "g": g, "wetting": wetting, "every_min": 30, "first_in_min": 30 });
    json!({
        "ahead_min": 120,
        "meats": [
            meat("ribs", "spare_ribs", 1_600, "mop"),
            meat("butt", "pork_butt", 4_000, "spritz"),
            meat("left half", "chicken_half", 700, "mop"),
            meat("right half", "chicken_half", 700, "mop"),
        ],
        "parts": [{ "name": "vinegar", "parts": 2 }, { "name": "water", "parts": 1 }],
    })
}

#[test]
fn raw_poultry_has_a_pot_of_its_own_each_bird() {
    let answer = mop(&of(regatta_mop())).unwrap();
    let names: Vec<Vec<String>> = answer.pots.iter().map(|pot| pot.names.clone()).collect();
    let expected = json!([["ribs", "butt"], ["left half"], ["right half"]]);
    assert_eq!(json!(names), expected);
    // 4 × (48 + 20) ml and a tenth more.
    assert_eq!(answer.pots[0].on_ml, Milliliters(272));
    assert_eq!(answer.pots[0].ml, Milliliters(300));
    assert_eq!(answer.pots[0].parts[0].ml, Milliliters(200));
    assert_eq!(answer.held_at_least.f_tenths(), 1400);
    for caution in [
        CautionKind::RawPoultryBrush,
        CautionKind::RawMarinade,
        CautionKind::HoldHot,
    ] {
        assert!(answer.cautions.contains(&caution), "{caution:?}");
    }
    assert_eq!(answer.cautions.last(), Some(&CautionKind::LocalRulesFirst));
}

#[test]
fn what_is_first_wetted_later_takes_no_mop() {
    let mut input = regatta_mop();
    input["meats"][0]["first_in_min"] = json!(121);
    let answer = mop(&of(input)).unwrap();
    assert_eq!(answer.pots[0].names, ["butt"]);
}

fn lunch() -> Value {
    json!({
        "adults": 10, "children": 4,
        "meats": [
            { "name": "brisket", "cut": "brisket", "there_g": 5_500, "share": 2 },
            { "name": "ribs", "cut": "spare_ribs", "there_g": 1_400 },
        ],
    })
}

#[test]
fn a_dozen_at_lunch_and_what_is_still_to_be_bought() {
    let answer = portions(&of(lunch())).unwrap();
    assert_eq!(answer.wanted_g, Grams(1_800));
    let brisket = &answer.meats[0];
    assert_eq!(
        (brisket.trimmed_g, brisket.refuse_g),
        (Grams(825), Grams(27))
    );
    assert_eq!(brisket.cooked_g.expected, Grams(2_618));
    assert_eq!(brisket.eaten_g.low, Grams(2_313));
    assert_eq!(brisket.buy_g, Grams(0));
    let ribs = &answer.meats[1];
    assert_eq!((ribs.need_g, ribs.buy_g), (Grams(1_499), Grams(99)));
    // Where they yield what is expected, what is there is enough.
    assert_eq!((ribs.likely_g, ribs.likely_buy_g), (Grams(1_342), Grams(0)));
    assert_eq!(answer.feeds.low, 19);
    assert!(answer.enough);
    assert_eq!(answer.trimmings_g, Grams(895));
    assert!(answer.cautions.contains(&CautionKind::HoldHot));
}

#[test]
fn one_list_with_what_a_plate_costs() {
    let list = json!({
        "portions": lunch(), "rub": half_and_half("weight"), "mop": regatta_mop(),
        "extras": [{ "name": "charcoal", "amount": 2, "unit": "each" }, { "name": "salt", "amount": 50, "unit": "g" }],
        "at_home": [{ "name": "salt", "amount": 500, "unit": "g" }, { "name": "pepper", "amount": 40, "unit": "g" }],
        "prices": [
            { "name": "charcoal", "cents": 1_899, "per": 1, "unit": "each" },
            { "name": "ribs", "cents": 990, "per": 1_000, "unit": "g" },
        ],
    });
    let answer = shopping(&of(list)).unwrap();
    let line = |name: &str| answer.lines.iter().find(|line| line.name == name).unwrap();
    assert_eq!((line("salt").need, line("salt").buy), (150, 0));
    assert_eq!((line("pepper").need, line("pepper").buy), (100, 60));
    assert_eq!(line("ribs").cents, Some(Cents(99)));
    // 1,400 g are there and 99 g are bought.
    assert_eq!(line("ribs").all_cents, Some(Cents(1_485)));
    assert_eq!(answer.cost, Cents(2 * 1_899 + 99));
    assert_eq!(answer.cost_a_plate, Some(Cents(279)));
    assert_eq!(answer.worth_a_plate, Some(Cents(378)));
    assert_eq!(answer.without_price, ["pepper", "vinegar", "water"]);
}

#[test]
fn one_thing_in_two_units_is_told() {
    let list = json!({
        "mop": regatta_mop(),
        "prices": [{ "name": "vinegar", "cents": 300, "per": 1_000, "unit": "g" }],
    });
    let refused = shopping(&of(list)).unwrap_err();
    assert_eq!(
        refused,
        NotABatch::MixedUnits {
            name: "vinegar".into()
        }
    );
    let pounds =
        json!({ "adults": 2, "meats": [{ "name": "ribs", "cut": "spare_ribs", "there_lb": 3 }] });
    let unread = serde_json::from_value::<slowbend_core::batch::PortionsInput>(pounds);
    assert!(unread.unwrap_err().to_string().contains("there_lb"));
}

#[test]
fn what_cannot_be_meant_is_told_in_a_sentence() {
    let told = |change: &dyn Fn(&mut Value)| {
        let mut input = lunch();
        change(&mut input);
        portions(&of(input)).unwrap_err().to_string()
    };
    let nobody = told(&|lunch| {
        lunch["adults"] = json!(0);
        lunch["children"] = json!(0);
    });
    assert!(nobody.starts_with("Nobody is to eat"), "{nobody}");
    let negative = told(&|lunch| lunch["adults"] = json!(-3));
    assert_eq!(negative, "Adults: -3 does not fit. Give 0 to 10000.");
    let absurd = told(&|lunch| lunch["meats"][0]["there_g"] = json!(i64::MAX));
    assert!(absurd.starts_with("Meat in grams, “brisket”: "), "{absurd}");
    let twice = told(&|lunch| lunch["meats"][1]["name"] = json!("brisket"));
    assert!(
        twice.starts_with("“brisket” stands twice among the meats."),
        "{twice}"
    );
    let none = told(&|lunch| lunch["meats"] = json!([]));
    assert_eq!(none, "0 among the meats does not fit. Give 1 to 200.");
    assert_eq!(shopping(&of(json!({}))), Err(NotABatch::Nothing));
}
