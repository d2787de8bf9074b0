use super::*;
use crate::readings::{
    chunk::{CHUNK_READINGS, decode},
    csv::tests::Pieces,
    numbers::Unit,
    plan::{Delimiter, TempColumn},
    settle::union,
    times::TimeFormat,
    told::Told,
};
use crate::units::Mk;
use proptest::prelude::*;
use std::{collections::BTreeMap, convert::Infallible};

#[derive(Debug, Default, PartialEq)]
struct Kept(BTreeMap<SeriesId, Vec<Encoded>>);

impl Sink for Kept {
    type Error = Infallible;
    fn chunk(&mut self, series: &SeriesId, chunk: Encoded) -> Result<(), Infallible> {
        self.0.entry(series.clone()).or_default().push(chunk);
        Ok(())
    }
}

impl Kept {
    fn readings(&self, sensor: &str) -> Vec<Reading> {
        let chunks = &self.0[&SeriesId::new("drum log", sensor).unwrap()];
        union(chunks.iter().map(|chunk| decode(&chunk.bytes).unwrap()))
    }
}

fn column(column: u32, sensor: &str, unit: Unit) -> TempColumn {
    TempColumn {
        column,
        sensor: sensor.into(),
        unit,
    }
}

fn plan() -> ImportPlan {
    ImportPlan {
        source: "drum log".into(),
        delimiter: Delimiter::Comma,
        skip_rows: 1,
        date_column: None,
        time_column: 0,
        time_format: TimeFormat::Iso,
        zone: "America/Chicago".into(),
        temp_columns: vec![column(1, "grate", Unit::Fahrenheit)],
        latest: None,
    }
}

fn run(text: &str, plan: &ImportPlan) -> Result<(Report, Kept), Stopped<Infallible>> {
    let mut kept = Kept::default();
    import(text.as_bytes(), plan, &mut kept).map(|report| (report, kept))
}

fn fault(text: &str, plan: &ImportPlan) -> String {
    run(text, plan).unwrap_err().to_string()
}

#[test]
fn two_probes_in_two_units_become_two_series() {
    let mut plan = plan();
    plan.delimiter = Delimiter::Semicolon;
    plan.temp_columns.push(column(3, "shoulder", Unit::Celsius));
    let text =
        "t;pit;x;meat\r\n2026-06-13 05:00:00;225,5;;21,25\r\n2026-06-13 05:00:30;225.5 °C;;--\r\n";
    let (report, kept) = run(text, &plan).unwrap();
    let five = 1_781_344_800_000;
    let grate = [
        Reading {
            at: five,
            temp: Mk::from_f_tenths(2_255),
        },
        Reading {
            at: five + 30_000,
            temp: Mk::from_c_milli(225_500),
        },
    ];
    assert_eq!(kept.readings("grate"), grate);
    assert_eq!(
        kept.readings("shoulder"),
        [Reading {
            at: five,
            temp: Mk::from_c_milli(21_250)
        }]
    );
    let expected = Report {
        rows: 2,
        taken: 3,
        blank: 1,
        from: Some(five),
        to: Some(five + 30_000),
        ..Report::default()
    };
    assert_eq!(report, expected);
}

#[test]
fn dates_apart_from_clock_times_are_read_together() {
    let mut plan = plan();
    (plan.date_column, plan.time_column, plan.time_format) = (Some(0), 1, TimeFormat::MonthFirst);
    plan.temp_columns[0].column = 2;
    let (report, _) = run(
        "d,t,pit\n06/13/2026, 5:00:00 AM,225\n13/13/2026,5:00,225\n",
        &plan,
    )
    .unwrap();
    assert_eq!((report.taken, report.from), (1, Some(1_781_344_800_000)));
    assert_eq!(report.first_refusals[0].cell, "13/13/2026 5:00");
}

#[test]
fn each_refusal_says_its_line_and_what_to_do() {
    let text = "time,pit\n2026-06-13 05:00,225\n2026-06-13 05:01,9000\nsoon,225\n2026-02-30 05:00,225\n\
        1970-01-01 00:00,225\n2200-01-01 00:00,225\n2026-06-13 05:02,hot\n,225\n2026-06-13 05:03\n\
        2026-06-13 05:04,-80\n2026-06-13 05:05,801 °C\n2031-06-13 05:05,225\n2026-06-13 05:06,225\n2026-06-13 05:07,\"2";
    let plan = ImportPlan {
        latest: Some(1_800_000_000_000),
        ..plan()
    };
    let (report, kept) = run(text, &plan).unwrap();
    let told: Vec<String> = report.first_refusals.iter().map(Told::reason).collect();
    let range = "is outside −76 °F to 1,472 °F (−60 °C to 800 °C). Check the thermometer, or the unit of the column.";
    let years = "is outside the years 2000 to 2100. Set the instrument's clock, or tell how its times are written.";
    assert_eq!(
        told,
        [
            format!("Line 3, grate: 9000 °F {range}"),
            "Line 4: “soon” is no time of the kind this file has. Correct it or leave it out.".into(),
            "Line 5: “2026-02-30 05:00” does not exist on any calendar or clock. Does the day come before the month?".into(),
            format!("Line 6: “1970-01-01 00:00” {years}"),
            format!("Line 7: “2200-01-01 00:00” {years}"),
            "Line 8, grate: “hot” is no number. Correct it or leave it empty.".into(),
            "Line 9 has no time. Give it one or leave it out.".into(),
            "Line 10 has fewer columns than the others. Complete the row or leave it out.".into(),
            format!("Line 11, grate: -80 °F {range}"),
            format!("Line 12, grate: 801 °C {range}"),
        ]
    );
    assert_eq!((report.rows, report.taken, report.refused), (14, 2, 12));
    assert_eq!(kept.readings("grate").len(), 2);
}

#[test]
fn a_reading_still_to_come_and_a_quote_left_open_are_told() {
    let plan = ImportPlan {
        latest: Some(1_800_000_000_000),
        ..plan()
    };
    let (report, _) = run(
        "time,pit\n2026-06-13 05:00,225\n2031-06-13 05:05,225\n2026-06-13 05:07,\"2",
        &plan,
    )
    .unwrap();
    let told: Vec<String> = report.first_refusals.iter().map(Told::reason).collect();
    assert_eq!(
        told,
        [
            "Line 3: “2031-06-13 05:05” is still to come. Check the instrument's clock and the time zone.",
            "Line 4 opens a quote that nothing closes. Close it or leave the row out.",
        ]
    );
}

#[test]
fn a_jump_is_kept_and_told_and_order_and_doubles_are_counted() {
    let text = "time,pit\n2026-06-13 05:00:00,225\n2026-06-13 05:00:10,400\n2026-06-13 05:00:05,400\n\
        2026-06-13 05:01:00,225\n2026-06-13 05:01:00,225\n2026-06-13 05:01:00,224\n";
    let (report, kept) = run(text, &plan()).unwrap();
    assert_eq!(
        (
            report.jumps,
            report.out_of_order,
            report.taken,
            report.doubled
        ),
        (1, 1, 4, 2)
    );
    assert_eq!(
        (
            report.first_jumps[0].line,
            report.first_jumps[0].before.temp
        ),
        (3, Mk::from_f(225))
    );
    assert_eq!(kept.readings("grate").last().unwrap().temp, Mk::from_f(224));
}

#[test]
fn a_file_that_is_wholly_wrong_says_what_to_do() {
    let bad_zone = ImportPlan {
        zone: "Regatta/Lake".into(),
        ..plan()
    };
    let no_temps = ImportPlan {
        temp_columns: vec![],
        ..plan()
    };
    let twice = ImportPlan {
        temp_columns: vec![column(0, "grate", Unit::Celsius)],
        ..plan()
    };
    for (text, plan, says) in [
        ("", plan(), "This file has no rows. Save it again"),
        ("PK\x03\x04", plan(), "save it as “CSV UTF-8”"),
        ("time,pit\n", plan(), "Export it with a column for each"),
        (
            "time,pit\n2026-06-13 05:00,\n",
            plan(),
            "No row of this file could be taken. Every temperature is empty. Choose",
        ),
        (
            "time,pit\n13/06/2026 05:00,225\n",
            plan(),
            "No row of this file could be taken. Line 2: “13/06/2026 05:00” is no time",
        ),
        (
            "time,pit\n\"2026-06-13 05:00,225\n2026-06-13 05:01,225\n",
            plan(),
            "What begins on line 2 never ends",
        ),
        (
            "time,pit\n2026-06-13 05:00,225\n",
            bad_zone,
            "“Regatta/Lake” is no time zone. Give one such as",
        ),
        (
            "time,pit\n2026-06-13 05:00,225\n",
            no_temps,
            "No column of temperatures is chosen. Choose at least one.",
        ),
        (
            "time,pit\n2026-06-13 05:00,225\n",
            twice,
            "Column 1 is chosen twice. Choose each column once.",
        ),
    ] {
        let told = fault(text, &plan);
        assert!(told.contains(says), "{told}");
    }
}

#[test]
fn a_reader_or_a_sink_that_fails_stops_the_import() {
    struct Broken;
    impl Read for Broken {
        fn read(&mut self, _: &mut [u8]) -> std::io::Result<usize> {
            Err(std::io::Error::other("the card was pulled"))
        }
    }
    struct Full;
    impl Sink for Full {
        type Error = &'static str;
        fn chunk(&mut self, _: &SeriesId, _: Encoded) -> Result<(), &'static str> {
            Err("disk full")
        }
    }
    let told = import(Broken, &plan(), &mut Full).unwrap_err().to_string();
    assert_eq!(
        told,
        "The file could not be read to its end (the card was pulled). Copy it again and retry. Nothing was taken."
    );
    let text = "time,pit\n2026-06-13 05:00,225\n";
    assert_eq!(
        import(text.as_bytes(), &plan(), &mut Full),
        Err(Stopped::Sink("disk full"))
    );
}

#[test]
fn long_files_come_in_chunks_and_nothing_is_lost_between_them() {
    let rows = 3 * CHUNK_READINGS as i64 + 17;
    let text: String = (0..rows)
        .map(|n| {
            format!(
                "{}{:03},{}.{}\n",
                1_781_344_800 + n / 1_000,
                n % 1_000,
                200 + n % 50,
                n % 10
            )
        })
        .collect();
    let plan = ImportPlan {
        skip_rows: 0,
        time_format: TimeFormat::EpochMillis,
        ..plan()
    };
    let (report, kept) = run(&text, &plan).unwrap();
    let expected: Vec<_> = (0..rows)
        .map(|n| Reading {
            at: 1_781_344_800_000 + n,
            temp: Mk::from_f_tenths((200 + n % 50) * 10 + n % 10),
        })
        .collect();
    assert_eq!(kept.readings("grate"), expected);
    assert_eq!(
        (kept.0.values().next().unwrap().len(), report.taken),
        (4, rows as u64)
    );
}

fn messy_cell() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => (0i64..3_000).prop_map(|n| format!("2026-06-13 05:{:02}:{:02}", n / 60 % 60, n % 60)),
        4 => (-900i64..9_900).prop_map(|n| format!("{}.{}", n / 10, n.abs() % 10)),
        1 => Just("\"a, b\"".to_string()),
        1 => "[ -~]{0,8}",
    ]
}

proptest! {
    #[test]
    fn every_row_is_counted_once(rows in prop::collection::vec((messy_cell(), messy_cell()), 0..40)) {
        let text: String = rows.iter().map(|(time, temp)| format!("{time},{temp}\r\n")).collect();
        match run(&text, &ImportPlan { skip_rows: 0, ..plan() }) {
            Ok((report, kept)) => {
                prop_assert_eq!(report.rows, report.taken + report.doubled + report.refused + report.blank);
                prop_assert_eq!(kept.readings("grate").len() as u64, report.taken);
            }
            Err(Stopped::File(FileFault::NothingTaken { report })) => prop_assert_eq!(report.rows, report.refused + report.blank),
            Err(_) => {}
        }
    }

    #[test]
    fn how_the_bytes_are_cut_does_not_show(
        rows in prop::collection::vec((messy_cell(), messy_cell()), 1..40),
        mut sizes in prop::collection::vec(0usize..9, 1..8),
    ) {
        sizes.push(1);
        let text: String = rows.iter().map(|(time, temp)| format!("{time},{temp}\r\n")).collect();
        let mut kept = Kept::default();
        let pieces = Pieces { rest: text.as_bytes(), sizes: sizes.into_iter().cycle() };
        let plan = ImportPlan { skip_rows: 0, ..plan() };
        let report = import(pieces, &plan, &mut kept);
        prop_assert_eq!(report.map(|report| (report, kept)), run(&text, &plan));
    }

    #[test]
    fn any_bytes_are_taken_or_told(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let _ = import(&bytes[..], &plan(), &mut Kept::default());
    }
}
