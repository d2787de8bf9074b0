//! From a file to readings the way a person meets it: guess, answer, guess, import, read what is said.

use super::{file_faults::FileFault, refusals::Refused, *};
use crate::{
    ids::DeviceId,
    readings::{numbers::Unit, refusals::Fault, series::BadSeriesName, times::ElapsedUnit},
    units::Mk,
    words::{Locale, Viewer, Words},
};
use std::convert::Infallible;
use uuid::Uuid;

struct Kept(Vec<(String, Encoded)>);

impl Sink for Kept {
    type Error = Infallible;
    fn chunk(&mut self, series: &SeriesId, chunk: Encoded) -> Result<(), Infallible> {
        self.0.push((series.sensor().into(), chunk));
        Ok(())
    }
}

fn viewer(locale: Locale) -> Viewer {
    Viewer {
        locale,
        ..Viewer::default_for(DeviceId(Uuid::nil()))
    }
}

fn plan(text: &str, answers: &Answers) -> ImportPlan {
    match guess(text.as_bytes(), answers).unwrap() {
        Guess::Plan(plan) => plan,
        Guess::Ask(question) => panic!("{}", question.reason()),
    }
}

/// Invented: the drum of the regatta lunch over the night the clocks go back, as its recorder would write it.
#[test]
fn a_night_over_the_clock_change_is_imported_whole() {
    let mut text = "Hora;Parrilla (°C);Paleta (°C)\r\n".to_string();
    let start = 1_793_505_600_000; // 2026-10-31 23:00 in Chicago
    for n in 0..=360 {
        let second = n * 60;
        let wall = 23 * 3_600 + second - if second >= 3 * 3_600 { 3_600 } else { 0 };
        let (day, clock) = (if wall < 86_400 { "31/10" } else { "01/11" }, wall % 86_400);
        text += &format!(
            "{day}/2026 {}:{:02};107,{};{},0\r\n",
            clock / 3_600,
            clock / 60 % 60,
            n % 10,
            20 + n / 10
        );
    }
    let answers = Answers {
        source: "drum".into(),
        zone: "America/Chicago".into(),
        ..Answers::default()
    };
    let mut kept = Kept(vec![]);
    let report = import(text.as_bytes(), &plan(&text, &answers), &mut kept).unwrap();
    let end = start + 360 * 60_000;
    let expected = Report {
        rows: 361,
        taken: 722,
        from: Some(start),
        to: Some(end),
        ..Report::default()
    };
    assert_eq!(report, expected);
    let readings = chunk::decode(&kept.0[1].1.bytes).unwrap();
    assert!(
        readings
            .windows(2)
            .all(|pair| pair[1].at - pair[0].at == 60_000)
    );
    assert_eq!(
        (kept.0[1].0.as_str(), readings[355].temp),
        ("Paleta", Mk::from_c_milli(55_000))
    );
}

#[test]
fn the_same_file_twice_gives_the_same_names() {
    let text = "time,Pit (°F)\n2026-06-13 05:00,225\n2026-06-13 05:01,226\n";
    let answers = Answers {
        source: "drum".into(),
        zone: "America/Chicago".into(),
        ..Answers::default()
    };
    let names = || {
        let mut kept = Kept(vec![]);
        import(text.as_bytes(), &plan(text, &answers), &mut kept).unwrap();
        kept.0
            .into_iter()
            .map(|(_, chunk)| chunk.name)
            .collect::<Vec<_>>()
    };
    assert_eq!(names(), names());
}

#[test]
fn a_refusal_is_said_in_spanish_to_who_reads_spanish() {
    let viewer = viewer(Locale::EsUs);
    let refused = Refused::new(7, Some("Parrilla"), b"9000 \xc2\xb0F", Fault::Absurd);
    let report = Box::new(Report {
        first_refusals: vec![refused],
        ..Report::default()
    });
    assert_eq!(
        FileFault::NothingTaken { report }.said(&Words::of(&viewer)),
        "No se pudo tomar ninguna fila de este archivo. Línea 7, Parrilla: 9000 °F está fuera de −76 °F a 1,472 °F \
         (−60 °C a 800 °C). Revisa el termómetro o la unidad de la columna."
    );
}

fn everything_told() -> Vec<Box<dyn Told>> {
    let faults = [
        Fault::FewColumns,
        Fault::OpenQuote,
        Fault::NoTime,
        Fault::NotATime,
        Fault::NoSuchTime,
        Fault::Year,
        Fault::Future,
        Fault::NotANumber,
        Fault::Absurd,
    ];
    let mut all: Vec<Box<dyn Told>> = Vec::new();
    all.extend(
        faults.map(|fault| Box::new(Refused::new(3, Some("Pit"), b"cell", fault)) as Box<dyn Told>),
    );
    let bad = BadSeriesName { name: "".into() };
    let files = [
        FileFault::Empty,
        FileFault::NotText,
        FileFault::NeverEnds { line: 3 },
        FileFault::Unreadable {
            said: "said".into(),
        },
        FileFault::NoReadings,
        FileFault::UnknownZone {
            zone: "zone".into(),
        },
        FileFault::ColumnTwice { column: 3 },
        FileFault::ColumnFar { column: 3 },
        FileFault::NoTemperature,
        FileFault::NamesAlike { name: "Pit".into() },
        FileFault::BadName(bad.clone()),
        FileFault::NothingTaken {
            report: Box::default(),
        },
    ];
    all.extend(files.map(|fault| Box::new(fault) as Box<dyn Told>));
    let columns = vec![questions::Choice {
        column: 0,
        shows: "Pit".into(),
    }];
    let questions = [
        Question::WhichTime {
            columns: columns.clone(),
        },
        Question::WhichTemperatures { columns },
        Question::WhichUnit {
            column: "Pit".into(),
            example: "225".into(),
        },
        Question::DayOrMonthFirst {
            example: "06/05/2026".into(),
        },
        Question::WhenStarted {
            example: "0:00:10".into(),
        },
        Question::SecondsOrMinutes {
            example: "10".into(),
        },
    ];
    all.extend(questions.map(|question| Box::new(question) as Box<dyn Told>));
    let chunks = [
        chunk::BadChunk::Version { version: 9 },
        chunk::BadChunk::CutShort,
        chunk::BadChunk::Malformed,
    ];
    all.extend(chunks.map(|bad| Box::new(bad) as Box<dyn Told>));
    all.push(Box::new(bad));
    all.push(Box::new(Stopped::Sink(())));
    all
}

#[test]
fn all_that_is_told_is_a_filled_sentence_in_both_languages() {
    for locale in Locale::ALL {
        let viewer = viewer(locale);
        let say = Words::of(&viewer);
        for told in everything_told() {
            let said = told.said(&say);
            assert!(
                !said.contains(['⟨', '{', '$']) && said.ends_with(['.', '?']),
                "{}: {said}",
                told.key()
            );
        }
    }
}

#[test]
fn answers_come_in_as_json_with_what_is_known_and_no_more() {
    let json =
        r#"{"source":"drum","zone":"America/Chicago","unit":"fahrenheit","elapsed":"clock"}"#;
    let expected = Answers {
        source: "drum".into(),
        zone: "America/Chicago".into(),
        unit: Some(Unit::Fahrenheit),
        elapsed: Some(ElapsedUnit::Clock),
        ..Answers::default()
    };
    assert_eq!(serde_json::from_str::<Answers>(json).unwrap(), expected);
}
