//! `slowbend sum`: the sums of core from a terminal or a script. A new sum is one line in [`SUMS`].

use super::{end::End, out::print};
use clap::Args;
use schemars::{JsonSchema, schema_for};
use serde::{Serialize, de::DeserializeOwned};
use serde_json::{Value, json};
use slowbend_core::{
    air::wet_bulb,
    batch::{brine, mop, portions, rub, shopping},
    cadence::openings::lid_openings,
    calendar::calendar,
    card::check,
    checks::verdict,
    finish::{forecast, next_check},
    fire::{fuel, smoke},
    heat::{conduct::conduction, cook::cook_heat, food::food_properties},
    plan::plan,
    probes::probe_word,
    safety::{clocks::clocks, cooling::cooling, fire_out::fire_out, lethality::lethality},
    words::Locale,
};
use std::{
    fmt::Display,
    fs,
    io::{self, Read},
    path::PathBuf,
};

/// What is asked.
#[derive(Args)]
pub struct Asked {
    /// Which sum; without it, all are listed.
    #[arg(value_name = "NAME")]
    name: Option<String>,
    /// The file with the input; - or nothing is standard input.
    #[arg(value_name = "FILE")]
    input: Option<PathBuf>,
    /// Print the JSON Schemas of the input and the output instead.
    #[arg(long)]
    schema: bool,
    /// The language in which the sums of the kitchen say what is wrong: en-US or es-US.
    #[arg(long, value_name = "TAG", default_value = "en-US")]
    language: String,
}

/// One sum by its name.
struct Sum {
    name: &'static str,
    about: &'static str,
    #[cfg(test)]
    run: fn(&str) -> Result<Value, String>,
    run_in: fn(&str, Locale) -> Result<Value, String>,
    schema: fn() -> Value,
}

macro_rules! sums {
    ($($name:literal $about:literal $sum:path $(=> $said:ident)?,)*) => {
        &[$(Sum {
            name: $name,
            about: $about,
            #[cfg(test)]
            run: |input| answer(input, |input| $sum(input)),
            run_in: |input, locale| answer(input, |input| sums!(@told locale, $sum(input) $(, $said)?)),
            schema: || schema(|input| $sum(input)),
        }),*]
    };
    // A sum whose refusals are kinds, not sentences, is said in the language that was asked for.
    (@told $locale:ident, $answer:expr, in_language) => {
        $answer.map_err(|wrong| wrong.in_language($locale))
    };
    (@told $locale:ident, $answer:expr) => {{
        let _any: Locale = $locale;
        $answer
    }};
}

const SUMS: &[Sum] = sums![
    "lid-openings" "the fewest openings of a pit that keep every meat's window" lid_openings,
    "verdict" "whether a meat is done and safe, and when to check next" verdict,
    "lethality" "what the readings of one probe earn of the published times of pasteurization" lethality,
    "clocks" "how long food was, and may still be, where bacteria grow" clocks,
    "cooling" "whether cooked food gets cold in time, and how long a pan of some depth takes" cooling,
    "fire-out" "what to do with food whose fire went out at a time that nobody knows" fire_out,
    "wet-bulb" "what a wet thermometer shows in humid air, also as hot as a pit's" wet_bulb,
    "fuel" "what a pit loses and burns, in the units that hands count" fuel,
    "smoke" "smoke in words: how strong, whether it burns clean, what to do" smoke,
    "rub" "a rub by weight, and all the salt and sodium that comes to the meat" rub => in_language,
    "brine" "the salt for a brine, by the water, by the brine or by the meat" brine => in_language,
    "mop" "how much mop the hours ahead take, and in which pots" mop => in_language,
    "portions" "how much meat to buy for so many people, and how many what is there feeds" portions => in_language,
    "shopping" "one list for the whole cook, and what a plate costs" shopping => in_language,
    "plan" "when to do what so that all is ready, from a household: run sheet, chance, proof" plan,
    "calendar" "events as a calendar file that other programs read (RFC 5545)" calendar,
    "food-properties" "what a food weighs, holds and conducts, of what it is made of" food_properties,
    "conduction" "how warm a slab, cylinder, sphere or shape between gets, with no water to lose" conduction,
    "cook-heat" "one cook followed: its curve, its stall, what it loses, how it goes on rising" cook_heat,
    "probe-word" "what the bytes of a Bluetooth probe say" probe_word,
    "forecast" "when a meat will be done, from readings and checks, as a distribution" forecast,
    "next-check" "when the next check costs least, given when it may be done" next_check,
    "cook-card" "a cook card as it is read, with what was left out" check,
];

fn answer<I: DeserializeOwned, O: Serialize, E: Display>(
    input: &str,
    sum: impl Fn(&I) -> Result<O, E>,
) -> Result<Value, String> {
    let input = serde_json::from_str(input).map_err(|error| {
        format!("The input is not as this sum takes it: {error}. `slowbend sum NAME --schema` shows its shape.")
    })?;
    let output = sum(&input).map_err(|refused| refused.to_string())?;
    serde_json::to_value(output).map_err(|error| error.to_string())
}

fn schema<I: JsonSchema, O: JsonSchema, E>(_: impl Fn(&I) -> Result<O, E>) -> Value {
    json!({ "input": schema_for!(I), "output": schema_for!(O) })
}

/// Prints the answer, the schemas, or the list.
///
/// # Errors
/// An unknown name, an input that cannot be read, or the sum's own refusal.
pub fn run(asked: &Asked) -> Result<(), End> {
    let Some(name) = &asked.name else {
        return Ok(print(&list())?);
    };
    let sum = find(name)?;
    let output = match asked.schema {
        true => (sum.schema)(),
        false => {
            let locale = Locale::from_tag(&asked.language);
            (sum.run_in)(&input(asked)?, locale).map_err(End::Refused)?
        }
    };
    Ok(print(&format!("{output:#}\n"))?)
}

fn list() -> String {
    SUMS.iter()
        .map(|sum| format!("{:<16} {}\n", sum.name, sum.about))
        .collect()
}

fn find(name: &str) -> Result<&'static Sum, End> {
    let found = SUMS.iter().find(|sum| sum.name == name);
    found.ok_or_else(|| {
        End::refused(format!(
            "There is no sum called “{name}”. These are there:\n{}",
            list().trim_end()
        ))
    })
}

fn input(asked: &Asked) -> Result<String, End> {
    let file = asked.input.as_ref().filter(|file| file.as_os_str() != "-");
    let read = match file {
        Some(file) => fs::read_to_string(file),
        None => {
            let mut text = String::new();
            io::stdin().read_to_string(&mut text).map(|_| text)
        }
    };
    read.map_err(|error| {
        End::refused(format!(
            "The input cannot be read ({error}). Give a file, or JSON on standard input."
        ))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ask(name: &str, input: Value) -> Value {
        (find(name).unwrap().run)(&input.to_string()).unwrap()
    }

    #[test]
    fn two_meats_that_can_share_an_opening_do() {
        let need = |name, last, every| json!({ "name": name, "last_min": last, "every_min": every, "early_min": 0, "late_min": 0 });
        let input = json!({ "from_min": 0, "horizon_min": 70, "needs": [need("ribs", 0, 30), need("butt", 0, 60)] });
        let opening = |at, names: &[&str]| json!({ "at_min": at, "names": names, "fixed": false });
        let output = json!({
            "openings": [opening(30, &["ribs"]), opening(60, &["butt", "ribs"])],
            "count": 2, "deviation_min": 0, "overdue": [], "exact": true, "at_least": 2,
        });
        assert_eq!(ask("lid-openings", input), output);
    }

    #[test]
    fn a_breast_read_in_one_place_is_not_called_done() {
        let heat = json!({ "temperature": { "mk": 347_039, "spot": "upper_thick", "instant_read": true } });
        let input = json!({
            "cut": "turkey_breast", "form": "intact", "now": 1_795_000_000_000i64,
            "checks": [{ "result": heat, "at": 1_795_000_000_000i64, "standing": "unchecked" }],
        });
        let output = ask("verdict", input);
        assert_ne!(output["state"], "done");
        assert_ne!(output["safety"]["state"], "safe");
    }

    #[test]
    fn the_bytes_of_a_probe_are_a_temperature_or_a_reason() {
        let sent = |hex| json!({ "characteristic": "2A1C", "hex": hex });
        let said = json!({ "temp": 380_372, "why_not": null, "claimed_at": null, "place": null, "every_s": null });
        assert_eq!(ask("probe-word", sent("01 E1 00 00 00")), said);
        let none = ask("probe-word", sent("00 FF FF 7F 00"));
        assert_eq!(none["why_not"], "not_a_number");
        let short = (find("probe-word").unwrap().run)(&sent("01 E1").to_string()).unwrap_err();
        assert!(short.contains("2 bytes instead of 5"), "{short}");
    }

    #[test]
    fn a_kitchen_sum_answers_or_says_what_is_wrong() {
        let lunch = |adults| json!({ "adults": adults, "meats": [{ "name": "ribs", "cut": "spare_ribs" }] });
        let answer = ask("portions", lunch(12));
        assert_eq!(answer["wanted_g"], 1_800);
        assert_eq!(answer["enough"], false);
        let refused = (find("portions").unwrap().run)(&lunch(0).to_string()).unwrap_err();
        assert!(refused.starts_with("Nobody is to eat"), "{refused}");
        let spanish = (find("portions").unwrap().run_in)(&lunch(0).to_string(), Locale::EsUs);
        assert!(spanish.unwrap_err().starts_with("Nadie va a comer"));
    }

    #[test]
    fn a_fire_is_reckoned_and_degrees_for_millikelvin_are_told() {
        let drum = |temp: i64| json!({ "pit": "drum", "pit_temp": temp, "minutes": 60 });
        let answer = ask("fuel", drum(394_261));
        assert_eq!(answer["unit"], "chimney");
        let refused = (find("fuel").unwrap().run)(&drum(250).to_string()).unwrap_err();
        assert!(refused.contains("it looks like degrees"), "{refused}");
        let smoke = ask("smoke", json!({ "from": "chunks", "wood": "fruit" }));
        assert_eq!(smoke["advice"], json!(["one_more_chunk"]));
    }

    #[test]
    fn every_sum_shows_the_shape_of_both_its_sides() {
        for sum in SUMS {
            let schema = (sum.schema)();
            for side in ["input", "output"] {
                assert_eq!(schema[side]["type"], "object", "{} {side}", sum.name);
                assert!(
                    schema[side]["properties"]
                        .as_object()
                        .is_some_and(|fields| !fields.is_empty())
                );
            }
        }
    }

    #[test]
    fn a_wrong_name_or_input_is_told_with_what_to_do() {
        assert!(
            find("openings")
                .err()
                .unwrap()
                .reason()
                .contains("lid-openings")
        );
        let refused = (find("verdict").unwrap().run)("{}").unwrap_err();
        assert!(refused.contains("--schema"), "{refused}");
    }
}
