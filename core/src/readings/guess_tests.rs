use super::*;
use crate::readings::{
    Delimiter, Told,
    times::{ElapsedUnit, TimeFormat},
};
use proptest::prelude::*;

fn answers() -> Answers {
    Answers {
        source: "drum log".into(),
        zone: "America/Chicago".into(),
        ..Answers::default()
    }
}

fn planned(text: &str, answers: &Answers) -> ImportPlan {
    match guess(text.as_bytes(), answers) {
        Ok(Guess::Plan(plan)) => plan,
        other => panic!("{other:?}"),
    }
}

fn asked(text: &str, answers: &Answers) -> Question {
    match guess(text.as_bytes(), answers) {
        Ok(Guess::Ask(question)) => question,
        other => panic!("{other:?}"),
    }
}

fn temps(plan: &ImportPlan) -> Vec<(u32, &str, Unit)> {
    plan.temp_columns
        .iter()
        .map(|temp| (temp.column, temp.sensor.as_str(), temp.unit))
        .collect()
}

#[test]
fn an_english_file_with_units_in_its_header() {
    let text = "\u{feff}Time,Pit (°F),Pit target (°F),Butt (°F),Fan %\r\n2026-06-13 05:00,225.1,225,38.2,10\r\n";
    let plan = planned(text, &answers());
    assert_eq!(
        (plan.delimiter, plan.skip_rows, plan.time_column),
        (Delimiter::Comma, 1, 0)
    );
    assert_eq!(plan.time_format, TimeFormat::Iso);
    assert_eq!(
        temps(&plan),
        [(1, "Pit", Unit::Fahrenheit), (3, "Butt", Unit::Fahrenheit)]
    );
}

#[test]
fn a_spanish_file_with_decimal_commas_and_dates_apart() {
    let text = "Fecha;Hora;Parrilla (°C);Sonda 1 (°C)\n13/06/2026;05:00:00;107,5;3,5\n13/06/2026;05:01:00;108;3,6\n";
    let plan = planned(text, &answers());
    assert_eq!(
        (plan.delimiter, plan.date_column, plan.time_column),
        (Delimiter::Semicolon, Some(0), 1)
    );
    assert_eq!(plan.time_format, TimeFormat::DayFirst);
    assert_eq!(
        temps(&plan),
        [
            (2, "Parrilla", Unit::Celsius),
            (3, "Sonda 1", Unit::Celsius)
        ]
    );
}

#[test]
fn what_stands_above_the_header_is_skipped() {
    let text = "Recorder 7\nSerial,12345\n\nElapsed time (min)\tProbe\n0\t225\n1\t226\n";
    let text = text.replace("Serial,12345", "Serial\t12345");
    let at = Answers {
        start: Some(1_781_344_800_000),
        unit: Some(Unit::Fahrenheit),
        ..answers()
    };
    let plan = planned(&text, &at);
    assert_eq!((plan.delimiter, plan.skip_rows), (Delimiter::Tab, 3));
    let format = TimeFormat::Elapsed {
        unit: ElapsedUnit::Minutes,
        start: 1_781_344_800_000,
    };
    assert_eq!(
        (plan.time_format, temps(&plan)),
        (format, vec![(1, "Probe", Unit::Fahrenheit)])
    );
}

#[test]
fn numbers_since_1970_are_told_by_their_size() {
    let file = |at: &str| format!("t,Pit (°F),Meat (°F)\n{at},225,40\n");
    assert_eq!(
        planned(&file("1781344800"), &answers()).time_format,
        TimeFormat::EpochSeconds
    );
    assert_eq!(
        planned(&file("1781344800.25"), &answers()).time_format,
        TimeFormat::EpochSeconds
    );
    assert_eq!(
        planned(&file("1781344800000"), &answers()).time_format,
        TimeFormat::EpochMillis
    );
}

#[test]
fn day_or_month_is_taken_from_evidence_or_asked_but_never_guessed() {
    let open = "Time,Pit (°F)\n06/05/2026 5:00 AM,225\n06/05/2026 5:01 AM,226\n";
    let question = asked(open, &answers());
    assert_eq!(
        question,
        Question::DayOrMonthFirst {
            example: "06/05/2026 5:00 AM".into()
        }
    );
    assert_eq!(
        question.reason(),
        "In “06/05/2026 5:00 AM”, does the month come first, or the day?"
    );
    for (day_first, format) in [
        (true, TimeFormat::DayFirst),
        (false, TimeFormat::MonthFirst),
    ] {
        let told = Answers {
            day_first: Some(day_first),
            ..answers()
        };
        assert_eq!(planned(open, &told).time_format, format);
    }
    assert_eq!(
        planned(&format!("{open}06/13/2026 5:00 AM,225\n"), &answers()).time_format,
        TimeFormat::MonthFirst
    );
    assert_eq!(
        planned(&format!("{open}13/06/2026 5:00 AM,225\n"), &answers()).time_format,
        TimeFormat::DayFirst
    );
    let both = format!("{open}13/06/2026 5:00 AM,225\n06/13/2026 5:00 AM,225\n");
    assert!(matches!(
        asked(&both, &answers()),
        Question::DayOrMonthFirst { .. }
    ));
}

#[test]
fn one_question_after_the_other_until_there_is_a_plan() {
    let text = "elapsed,left,right\n0,225,40\n10,226,41\n";
    let mut told = answers();
    assert_eq!(
        asked(text, &told),
        Question::SecondsOrMinutes {
            example: "0".into()
        }
    );
    told.elapsed = Some(ElapsedUnit::Seconds);
    assert_eq!(
        asked(text, &told),
        Question::WhenStarted {
            example: "0".into()
        }
    );
    told.start = Some(1_781_344_800_000);
    assert_eq!(
        asked(text, &told).reason(),
        "Which columns are temperatures: 2 “left”, 3 “right”?"
    );
    told.temp_columns = vec![2];
    assert_eq!(
        asked(text, &told).reason(),
        "Is “right” in °F or °C? It begins with 40."
    );
    told.unit = Some(Unit::Celsius);
    assert_eq!(temps(&planned(text, &told)), [(2, "right", Unit::Celsius)]);
}

#[test]
fn without_a_header_the_columns_are_asked_for_unless_their_cells_say_it() {
    let bare = "2026-06-13 05:00,225,40\n2026-06-13 05:01,226,41\n";
    assert_eq!(
        asked(bare, &answers()).reason(),
        "Which columns are temperatures: 2 “225”, 3 “40”?"
    );
    let plan = planned(
        "2026-06-13 05:00,225 °F,4.5C\n2026-06-13 05:01,226 °F,4.6C\n",
        &answers(),
    );
    assert_eq!(
        (plan.skip_rows, temps(&plan)),
        (0, vec![(1, "2", Unit::Fahrenheit), (2, "3", Unit::Celsius)])
    );
}

#[test]
fn two_columns_that_could_be_the_time_are_asked_about() {
    let text = "a,b,Pit (°F)\n2026-06-13 05:00,2026-06-13 10:00,225\n";
    assert_eq!(
        asked(text, &answers()).reason(),
        "Which column is the time: 1 “a”, 2 “b”, 3 “Pit”?"
    );
    let told = Answers {
        time_column: Some(1),
        ..answers()
    };
    assert_eq!(planned(text, &told).time_column, 1);
    let named = text.replace("a,b", "start,time");
    assert_eq!(planned(&named, &answers()).time_column, 1);
}

#[test]
fn columns_of_one_name_are_numbered() {
    let plan = planned(
        "time,Probe (°F),Probe (°F)\n2026-06-13 05:00,225,40\n",
        &answers(),
    );
    assert_eq!(
        temps(&plan),
        [
            (1, "Probe", Unit::Fahrenheit),
            (2, "Probe 2", Unit::Fahrenheit)
        ]
    );
}

#[test]
fn what_cannot_be_planned_says_what_to_do() {
    for (text, says) in [
        ("", "This file has no rows"),
        ("PK\u{3}\u{4}", "save it as “CSV UTF-8”"),
        ("just words\nand more\n", "Export it with a column for each"),
        ("time,pit\n", "Export it with a column for each"),
        (
            "time,note\n2026-06-13 05:00,lit\n",
            "Export it with a column for each",
        ),
        (
            "time,pit\n2026-06-13 05:00,\"225\n",
            "What begins on line 2 never ends",
        ),
    ] {
        let told = guess(text.as_bytes(), &answers()).unwrap_err().to_string();
        assert!(told.contains(says), "{text:?}: {told}");
    }
    let nowhere = Answers {
        zone: "Regatta/Lake".into(),
        ..answers()
    };
    let told = guess(b"time,Pit F\n2026-06-13 05:00,225\n", &nowhere)
        .unwrap_err()
        .to_string();
    assert!(
        told.starts_with("“Regatta/Lake” is no time zone."),
        "{told}"
    );
}

#[test]
fn a_head_cut_inside_a_row_is_read_up_to_it() {
    let mut text = "time,Pit (°F)\n".to_string();
    while text.len() < 70_000 {
        text.push_str("2026-06-13 05:00,225\n");
    }
    assert_eq!(
        planned(&text[..65_536], &answers()),
        planned(&text, &answers())
    );
}

proptest! {
    #[test]
    fn any_bytes_are_planned_asked_about_or_told(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let _ = guess(&bytes, &answers());
    }

    #[test]
    fn almost_files_are_planned_asked_about_or_told(
        text in "((time|Pit F|fecha|min|225|05:00:00|13/06/2026|2026-06-13 05:00|\"|[ -~]{0,4})[,;\t\n]){0,40}",
        columns in prop::collection::vec(any::<u32>(), 0..3),
        time in prop::option::of(0u32..5),
    ) {
        let told = Answers { temp_columns: columns, time_column: time, unit: Some(Unit::Kelvin), start: Some(0), ..answers() };
        let _ = guess(text.as_bytes(), &told);
    }
}
