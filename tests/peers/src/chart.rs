//! What a night's chart costs: 24 hours of a probe read each second, all of it on one screen, and how long the door is shut
//! to everybody else while a file of a million readings is kept.
//!
//! Both have limits in milliseconds rather than a peer. The history grows from one night to thirty of the same probe while
//! the night that is shown stays the same, so its chart has to take the same time: the ratio is the last row but one.

use crate::{
    door::{open, viewer},
    harness::{Pair, Result, Row, alone, in_turns},
    place,
};
use slowbend_core::{
    acts::Act,
    door::{Gathered, Slowbend},
    ids::CookId,
    log::{PitKind, Subject, Where},
    moment::{HOUR, Moment, SECOND},
    readings::{Answers, Guess, ImportPlan, guess},
    screens::ReadingsOf,
    words::Viewer,
};
use std::{
    fmt::Write,
    hint::black_box,
    time::{Duration, Instant},
};

const TURNS: usize = 15;
/// Saturday 2026-06-13, midnight UTC.
const FIRST: i64 = 1_781_308_800_000;
const NIGHT: i64 = 24 * HOUR;
const CHART_MOST: Duration = Duration::from_millis(20);
const KEEP_MOST: Duration = Duration::from_millis(100);
const FLAT_MOST: f64 = 1.5;
const MILLION: i64 = 1_000_000;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let (mut one, mut thirty) = (Nights::of(1)?, Nights::of(30)?);
    let flat: Pair = in_turns(TURNS, || thirty.chart(), || one.chart())?;
    let mut keeping = Nights::of(1)?;
    let kept = alone(5, || keeping.keep_a_million())?;
    Ok(vec![
        Row::within("chart of 86400 readings, one night", flat.peer, CHART_MOST),
        Row::within(
            "chart of 86400 readings, thirty nights",
            flat.ours,
            CHART_MOST,
        ),
        Row::of("chart, thirty nights to one", flat, FLAT_MOST),
        Row::within("door shut for 1000000 readings", kept, KEEP_MOST),
    ])
}

/// A door behind which a probe was read for so many nights, each a cook of its own.
struct Nights {
    _folder: tempfile::TempDir,
    door: Slowbend,
    viewer: Viewer,
    cook: CookId,
    now: Moment,
    plan: ImportPlan,
}

impl Nights {
    fn of(nights: i64) -> Result<Self> {
        let folder = place::folder()?;
        let start = Moment::at(FIRST, "UTC");
        let mut door = open(folder.path(), &start)?;
        let viewer = viewer(&mut door)?;
        let mut cook = None;
        let plan = plan(&rows_of(FIRST, 10))?;
        for night in 0..nights {
            let from = FIRST + night * NIGHT;
            cook = Some(cook_of(&mut door, &viewer, &Moment::at(from, "UTC"))?);
            let night = rows_of(from, NIGHT / SECOND);
            door.import_readings(
                night.as_bytes(),
                &plan,
                cook,
                &Moment::at(from + NIGHT, "UTC"),
            )?;
        }
        Ok(Self {
            _folder: folder,
            door,
            viewer,
            cook: cook.ok_or("at least one night")?,
            now: Moment::at(FIRST + nights * NIGHT - 1, "UTC"),
            plan,
        })
    }

    fn chart(&mut self) -> Result<Duration> {
        let of = ReadingsOf::Cook { cook: self.cook };
        let start = Instant::now();
        let screen = black_box(
            self.door
                .readings_of(&self.viewer, of, None, None, &self.now)?,
        );
        let took = start.elapsed();
        let chart = screen.chart.ok_or("a night has a chart")?;
        assert!(
            chart.width >= 700,
            "all of the night is drawn: {}",
            chart.width
        );
        Ok(took)
    }

    fn keep_a_million(&mut self) -> Result<Duration> {
        self.now = self.now.plus(SECOND);
        let rows = rows_of(self.now.utc_ms - MILLION * SECOND, MILLION);
        let gathered = Gathered::read(rows.as_bytes(), &self.plan)?;
        let start = Instant::now();
        self.door
            .take_gathered(gathered, Some(self.cook), &self.now)?;
        Ok(start.elapsed())
    }
}

fn cook_of(door: &mut Slowbend, viewer: &Viewer, moment: &Moment) -> Result<CookId> {
    let pit = Act::AddPit {
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    let Some(Subject::Pit(pit)) = door.act(viewer, &pit, moment)?.made.first().copied() else {
        return Err("a pit is made".into());
    };
    let start = Act::StartCook {
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        meats: vec![],
        demo: false,
    };
    let Some(Subject::Cook(cook)) = door.act(viewer, &start, moment)?.made.first().copied() else {
        return Err("a cook is made".into());
    };
    let bind = Act::BindProbe {
        cook,
        source: "box".into(),
        sensor: "grate".into(),
        place: Where::Pit { pit },
        thermometer: None,
    };
    door.act(viewer, &bind, moment)?;
    Ok(cook)
}

/// A file of so many readings, one a second.
fn rows_of(from: i64, count: i64) -> String {
    let mut text = String::from("time,grate (°C)\n");
    for n in 0..count {
        let _ = writeln!(text, "{},{}.{}", from / 1_000 + n, 110 + n % 13, n % 10);
    }
    text
}

fn plan(head: &str) -> Result<ImportPlan> {
    let answers = Answers {
        source: "box".into(),
        zone: "UTC".into(),
        ..Answers::default()
    };
    match guess(head.as_bytes(), &answers)? {
        Guess::Plan(plan) => Ok(plan),
        Guess::Ask(question) => Err(format!("{question:?}").into()),
    }
}
