//! What a cook reads of readings.

use super::*;
use crate::{
    cook::story::{Story, cook, piece, pit, thermometer},
    ids::CookId,
    log::*,
    moment::HOUR,
    screens::{
        Weight,
        tests::regatta::{minute, moment, told_until, viewer},
    },
    units::Mk,
    words::{Locale, TemperatureUnit},
};

const ALL: ReadingsOf = ReadingsOf::Cook {
    cook: CookId(uuid::Uuid::from_u128(0xc001)),
};

/// The screen as it is `at` minutes after six, of what the tails of the story hold.
fn shown(
    story: &Story,
    viewer: &Viewer,
    of: ReadingsOf,
    hours: Option<u32>,
    at: i64,
) -> ReadingsScreen {
    let told = story.told();
    let known = told.known(1);
    let wanted = wanted(&known, of, hours, minute(at)).unwrap();
    let heard: Vec<Heard> = wanted
        .strands
        .iter()
        .map(|strand| hear(&known, &wanted, strand))
        .collect();
    readings(&known, viewer, &wanted, &heard, None, &moment(at)).unwrap()
}

fn hear(known: &Known<'_>, wanted: &Wanted, strand: &Strand) -> Heard {
    let Some((source, sensor)) = &strand.series else {
        return Heard::of(wanted, &strand.by_hand, 0);
    };
    let (from, to) = (
        strand.from.max(wanted.span.from),
        strand.until.min(wanted.span.to() - 1),
    );
    let tail = known
        .tails
        .of(source, sensor, to)
        .filter(|(at, _)| *at >= from);
    Heard::of(
        wanted,
        &tail
            .map(|(at, temp)| Reading { at, temp })
            .collect::<Vec<_>>(),
        0,
    )
}

fn bind(story: &mut Story, sensor: &str, place: Where, by: Option<u128>) {
    let bound = ProbeBound {
        source: "box".into(),
        sensor: sensor.into(),
        place,
        thermometer: by.map(thermometer),
    };
    story.say(1, minute(-250), Some(cook(1)), bound);
}

fn checked(story: &mut Story, read_f: i64) {
    let fact = ThermometerChecked {
        thermometer: thermometer(1),
        against: Bath::Ice,
        expected: Mk::from_f(32),
        read: Mk::from_f(read_f),
    };
    story.say(1, minute(-290), None, fact);
}

#[test]
fn a_cook_reads_pit_and_meat_by_probe_and_by_hand() {
    let screen = shown(&told_until(200), &viewer(Locale::EnUs), ALL, None, 200);
    let names: Vec<&str> = screen
        .series
        .iter()
        .map(|line| line.name.as_str())
        .collect();
    assert_eq!(names, ["Drum", "Butt", "Butt, by hand"]);
    let butt = &screen.series[1];
    assert_eq!(butt.state, "150 °F, just now");
    assert_eq!(butt.trend, "rising 15 °F an hour");
    assert!(
        butt.extremes
            .starts_with("Lowest 60 °F at 3:20 AM, highest 150 °F"),
        "{}",
        butt.extremes
    );
    let chart = screen.chart.unwrap();
    let levels: Vec<&str> = chart
        .levels
        .iter()
        .map(|level| level.text.as_str())
        .collect();
    assert_eq!(
        levels,
        ["Published minimum 145 °F, then 3 min of rest: Butt"]
    );
    assert_eq!(chart.areas[0].text, "Drum held at 200–300 °F");
    let lanes: Vec<&str> = chart.lanes.iter().map(|lane| lane.name.as_str()).collect();
    assert_eq!(
        lanes,
        [
            "Opened 2 times",
            "Checked once",
            "Put on, wrapped or taken off 3 times"
        ]
    );
    assert_eq!(screen.marks[0], "8:55 AM · Checked: Butt");
    assert!(
        screen
            .marks
            .iter()
            .any(|mark| mark.ends_with("Opened: Drum · wetted Slab 1 and Slab 2")),
        "{:?}",
        screen.marks
    );
}

#[test]
fn numbers_stand_beside_the_curve_and_are_paged_without_losing_a_row() {
    let told = told_until(200).told();
    let (known, viewer) = (told.known(1), viewer(Locale::EnUs));
    let wanted = wanted(&known, ALL, None, minute(200)).unwrap();
    let heard: Vec<Heard> = wanted
        .strands
        .iter()
        .map(|strand| hear(&known, &wanted, strand))
        .collect();
    let (mut before, mut rows) = (None, vec![]);
    loop {
        let screen = readings(&known, &viewer, &wanted, &heard, before, &moment(200)).unwrap();
        rows.extend(screen.table.rows);
        before = screen.table.next;
        if before.is_none() {
            break;
        }
    }
    let filled =
        (0..wanted.rows.columns).filter(|row| heard.iter().any(|h| h.table.cell(*row).is_some()));
    assert_eq!(rows.len(), filled.count());
    assert!(rows.windows(2).all(|pair| pair[0].at > pair[1].at));
    assert_eq!(rows[0].cells, ["251–256 °F", "145–150 °F", "none"]);
}

/// Law 4: what a thermometer is off by is taken off the curve as it is taken off in a check, and is said.
#[test]
fn a_thermometer_that_is_off_is_corrected_and_one_far_off_counts_for_nothing() {
    let reads = |off: i64| {
        let mut story = told_until(200);
        bind(
            &mut story,
            "2",
            Where::Piece {
                piece: piece(3),
                spot: "center".into(),
            },
            Some(1),
        );
        checked(&mut story, 32 + off);
        let screen = shown(
            &story,
            &viewer(Locale::EnUs),
            ReadingsOf::Piece { piece: piece(3) },
            None,
            200,
        );
        let butt = screen
            .series
            .into_iter()
            .find(|line| line.name == "Butt")
            .unwrap();
        (butt.state, butt.doubts, butt.stroke)
    };
    // The later check of the story's own thermometer was right; the one here is later still in the log.
    let (state, doubts, stroke) = reads(4);
    assert_eq!((state.as_str(), stroke), ("146 °F, just now", Stroke::Meat));
    assert_eq!(
        doubts,
        ["Pen reads 4 °F hot: everything here is corrected by that."]
    );
    let (state, doubts, stroke) = reads(-4);
    assert_eq!((state.as_str(), stroke), ("154 °F, just now", Stroke::Meat));
    assert_eq!(
        doubts,
        ["Pen reads 4 °F cold: everything here is corrected by that."]
    );
    let (state, doubts, stroke) = reads(6);
    assert_eq!(
        (state.as_str(), stroke),
        ("150 °F, just now", Stroke::Doubtful)
    );
    assert_eq!(
        doubts,
        ["Pen is off by 6 °F: this is what it read, and nothing is judged by it."]
    );
    assert_eq!(reads(1).1, [""; 0]);
    assert_eq!(reads(1).0, "149 °F, just now");
}

#[test]
fn a_probe_that_falls_silent_is_told_and_its_gap_stays_open() {
    let mut story = told_until(440);
    story.tails.take("box", "1", minute(500), Mk::from_f(240));
    let of = ReadingsOf::Pit {
        cook: cook(1),
        pit: pit(1),
    };
    let at = |at| shown(&story, &viewer(Locale::EnUs), of, Some(3), at);
    let silent = &at(499).series[0];
    assert_eq!((silent.weight, silent.trend.as_str()), (Weight::Call, ""));
    assert!(
        silent.state.contains("silent since 1:20 PM"),
        "{}",
        silent.state
    );
    let heard = at(501);
    assert_eq!(heard.series[0].gaps, ["No reading 1:20 PM–2:20 PM: 1 h."]);
    assert_eq!(heard.chart.unwrap().curves[0].runs.len(), 2);
}

#[test]
fn a_meat_shows_its_own_and_what_was_done_for_its_pit() {
    let screen = shown(
        &told_until(200),
        &viewer(Locale::EnUs),
        ReadingsOf::Piece { piece: piece(3) },
        None,
        200,
    );
    assert_eq!(screen.title, "Readings: Butt");
    assert!(
        screen
            .series
            .iter()
            .all(|line| line.name.starts_with("Butt"))
    );
    assert!(screen.chart.unwrap().areas.is_empty());
    assert!(
        screen.marks.iter().all(|mark| !mark.contains("Slab")),
        "{:?}",
        screen.marks
    );
    assert!(
        screen
            .links
            .iter()
            .any(|link| link.place == Place::Thermometers)
    );
}

/// The nights of 2026 on which Chicago changes its clocks (tzdata 2026.6, see core/tests/published/dst_overnight_cooks.csv).
#[test]
fn the_hours_of_a_chart_are_those_of_the_wall_over_a_change_of_the_clocks() {
    let hours = |from: i64| -> (Vec<String>, Vec<String>) {
        let told = told_until(0).told();
        let (known, viewer) = (told.known(1), viewer(Locale::EnUs));
        let glance = Glance::of(
            &known,
            &viewer,
            &crate::moment::Moment::at(from + 12 * HOUR, "America/Chicago"),
        );
        let span = crate::chart::Span::over(from, from + 6 * HOUR, 720);
        let ticks = glance
            .hour_ticks(&span)
            .into_iter()
            .map(|tick| tick.text)
            .collect();
        let changes = glance
            .clock_changes(&span)
            .into_iter()
            .map(|(_, said)| said.into())
            .collect();
        (ticks, changes)
    };
    // 2026-10-31 22:30 and 2026-03-07 22:30 in Chicago.
    let (back, said) = hours(1_793_503_800_000);
    assert_eq!(
        back,
        ["11 PM", "yesterday", "1 AM", "1 AM", "2 AM", "3 AM"]
            .map(|t| t.replace("yesterday", "today"))
    );
    assert_eq!(said, ["chart-clock-back"]);
    let (forward, said) = hours(1_772_944_200_000);
    assert_eq!(forward, ["11 PM", "today", "1 AM", "3 AM", "4 AM", "5 AM"]);
    assert_eq!(said, ["chart-clock-forward"]);
}

#[test]
fn every_word_is_there_in_both_languages_and_scales() {
    let mut story = told_until(470);
    checked(&mut story, 37);
    for locale in Locale::ALL {
        for temperature in [TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius] {
            let viewer = Viewer {
                temperature,
                ..viewer(locale)
            };
            for of in [
                ALL,
                ReadingsOf::Piece { piece: piece(4) },
                ReadingsOf::Pit {
                    cook: cook(1),
                    pit: pit(2),
                },
            ] {
                let json =
                    serde_json::to_string(&shown(&story, &viewer, of, Some(6), 470)).unwrap();
                assert!(!json.contains('⟨'), "{json}");
            }
        }
    }
}

#[test]
fn a_file_that_nobody_placed_is_a_series_of_the_cook_and_says_where_it_lies() {
    let mut story = told_until(200);
    let saved = SeriesSaved {
        source: "old box".into(),
        sensor: "left".into(),
        from: minute(-100),
        to: minute(-40),
        count: 61,
        hash: "00".into(),
    };
    story.say(1, minute(199), Some(cook(1)), saved);
    let screen = shown(&story, &viewer(Locale::EnUs), ALL, None, 200);
    let loose = screen
        .series
        .iter()
        .find(|line| line.name == "old box, left")
        .unwrap();
    assert_eq!(
        loose.doubts,
        [
            "Nobody said where this probe sat.",
            "These readings are on another device."
        ]
    );
    assert_eq!(loose.stroke, Stroke::Doubtful);
    let mut before = told_until(-245);
    before.tails = Default::default();
    let none = shown(&before, &viewer(Locale::EnUs), ALL, None, -245);
    assert_eq!(
        (none.chart, none.note.as_str()),
        (
            None,
            "No reading yet. Place a probe, read one by hand, or take a file of readings."
        )
    );
}
