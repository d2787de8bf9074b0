//! What holds of every chart, whatever was read.

use super::*;
use crate::{
    moment::{HOUR, MINUTE, SECOND},
    readings::{Reading, settle::union},
    units::Mk,
    words::TemperatureUnit,
};
use proptest::prelude::*;

fn reading(at: i64, temp: i64) -> Reading {
    Reading { at, temp: Mk(temp) }
}

/// Settled readings within four hours, some of them minutes apart and some half an hour.
fn series() -> impl Strategy<Value = Vec<Reading>> {
    let one = (0i64..4 * HOUR / SECOND, 250_000i64..450_000);
    prop::collection::vec(one.prop_map(|(s, temp)| reading(s * SECOND, temp)), 0..200)
        .prop_map(|readings| union([readings]))
}

fn span() -> impl Strategy<Value = Span> {
    (-HOUR..2 * HOUR, MINUTE..6 * HOUR, 2u32..300)
        .prop_map(|(from, long, most)| Span::over(from, from + long, most))
}

/// The pieces of a curve, each with its points.
fn pieces(points: &Points) -> Vec<Vec<(i32, i32)>> {
    let mut all = points.at.chunks_exact(2).map(|point| (point[0], point[1]));
    points
        .runs
        .iter()
        .map(|run| all.by_ref().take(*run as usize).collect())
        .collect()
}

proptest! {
    #[test]
    fn the_coldest_and_the_hottest_of_any_stretch_of_columns_are_those_of_its_readings(
        readings in series(), span in span(), a in any::<prop::sample::Index>(), b in any::<prop::sample::Index>(),
    ) {
        let columns = Columns::of(span, &readings);
        let (a, b) = (a.index(span.columns as usize) as u32, b.index(span.columns as usize) as u32);
        let (from, to) = (span.start_of(a.min(b)), span.start_of(a.max(b) + 1));
        let within: Vec<Mk> = readings.iter().filter(|r| (from..to).contains(&r.at)).map(|r| r.temp).collect();
        let cells: Vec<Cell> = (a.min(b)..=a.max(b)).filter_map(|column| columns.cell(column)).collect();
        prop_assert_eq!(cells.iter().map(|cell| cell.coldest.temp).min(), within.iter().copied().min());
        prop_assert_eq!(cells.iter().map(|cell| cell.hottest.temp).max(), within.iter().copied().max());
    }

    #[test]
    fn every_spike_is_on_the_curve(readings in series(), span in span()) {
        let columns = Columns::of(span, &readings);
        let Some((low, high)) = columns.range() else { return Ok(()) };
        let scale = Scale::holding(low, high, TemperatureUnit::Fahrenheit);
        let points: Vec<(i32, i32)> = pieces(&curve(&columns, |mk| scale.y(mk))).concat();
        for (x, cell) in columns.filled() {
            let ys: Vec<i32> = points.iter().filter(|point| point.0 == x as i32).map(|point| point.1).collect();
            prop_assert_eq!(ys.iter().max(), Some(&scale.y(cell.hottest.temp)));
            prop_assert_eq!(ys.iter().min(), Some(&scale.y(cell.coldest.temp)));
            prop_assert!(ys.len() <= 4);
        }
    }

    #[test]
    fn no_gap_is_ever_bridged_and_nothing_else_is_broken(readings in series(), span in span()) {
        let inside: Vec<Reading> = readings.into_iter().filter(|r| span.column(r.at).is_some()).collect();
        let columns = Columns::of(span, &inside);
        let Some((low, high)) = columns.range() else { return Ok(()) };
        let scale = Scale::holding(low, high, TemperatureUnit::Celsius);
        let points = curve(&columns, |mk| scale.y(mk));
        prop_assert_eq!(points.runs.len(), gaps(&inside).len() + 1);
        prop_assert_eq!(points.runs.iter().sum::<u32>() as usize * 2, points.at.len());
        for gap in gaps(&inside) {
            let (left, right) = (span.column(gap.from).unwrap(), span.column(gap.to).unwrap());
            for piece in pieces(&points) {
                let (first, last) = (piece[0].0, piece[piece.len() - 1].0);
                prop_assert!(last <= left as i32 || first >= right as i32);
            }
        }
    }

    #[test]
    fn a_series_in_any_parts_and_order_gives_the_same_columns(
        readings in series(), span in span(), mask in prop::collection::vec(0usize..3, 200),
    ) {
        let part = |n: usize| -> Vec<Reading> {
            readings.iter().zip(&mask).filter(|(_, part)| **part == n).map(|(r, _)| *r).rev().collect()
        };
        let mut joined = Columns::of(span, &part(2));
        joined.join(&Columns::of(span, &part(0)));
        joined.join(&Columns::of(span, &part(1)));
        prop_assert_eq!(joined, Columns::of(span, &readings));
    }

    #[test]
    fn a_stretch_has_no_more_columns_than_asked_and_holds_its_ends(from in -HOUR..HOUR, long in 1i64..7 * 24 * HOUR) {
        let span = Span::over(from, from + long, 720);
        prop_assert!(span.columns <= 720 && span.from <= from && span.to() >= from + long);
        prop_assert!(span.width <= GAP_MS, "a gap could hide in a column");
        prop_assert_eq!(span.column(from + long - 1).is_some() && span.column(from).is_some(), true);
    }

    #[test]
    fn every_temperature_that_a_scale_holds_is_on_its_grid(a in 200_000i64..1_200_000, b in 200_000i64..1_200_000) {
        for unit in [TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius] {
            let (low, high) = (Mk(a.min(b)), Mk(a.max(b)));
            let scale = Scale::holding(low, high, unit);
            let lines: Vec<Mk> = scale.lines().collect();
            prop_assert!((2..=6).contains(&lines.len()), "{:?}", scale);
            prop_assert!(lines[0].0 <= low.0 + 1 && lines[lines.len() - 1].0 + 1 >= high.0);
            prop_assert_eq!((scale.y(lines[0]), scale.y(lines[lines.len() - 1])), (0, HEIGHT));
            prop_assert!(scale.y(low) <= scale.y(high));
        }
    }
}

#[test]
fn lines_stand_on_round_degrees_of_the_viewers_scale() {
    let (low, high) = (Mk::from_f(227), Mk::from_f(274));
    let lines = |unit| -> Vec<Mk> { Scale::holding(low, high, unit).lines().collect() };
    let f = [220, 230, 240, 250, 260, 270, 280].map(Mk::from_f);
    assert_ne!(
        lines(TemperatureUnit::Fahrenheit),
        f,
        "seven lines are too many"
    );
    assert_eq!(
        lines(TemperatureUnit::Fahrenheit),
        [220, 240, 260, 280].map(Mk::from_f)
    );
    assert_eq!(
        lines(TemperatureUnit::Celsius),
        [100, 110, 120, 130, 140].map(|c| Mk::from_c_milli(c * 1_000))
    );
}

/// Law: a straight rise is told as it is, whatever the readings' rhythm; a jump before a gap tells nothing.
#[test]
fn a_trend_is_told_an_hour_and_only_of_what_came_after_the_last_gap() {
    let rise: Vec<Reading> = (0..=60)
        .map(|m| reading(m * MINUTE, 300_000 + m * 100))
        .collect();
    assert_eq!(per_hour(&rise), Some(6_000));
    let mut broken = vec![reading(0, 400_000)];
    broken.extend(rise.iter().map(|r| reading(r.at + HOUR, r.temp.0)));
    assert_eq!(per_hour(&broken), Some(6_000));
    assert_eq!(per_hour(&rise[..10]), None, "nine minutes are too short");
    assert_eq!(
        per_hour(&[rise[0], rise[15]]),
        None,
        "two readings are too few"
    );
    assert_eq!(per_hour(&[]), None);
}

/// NIST StRD "Norris": the certified slope, see the file. x in tenths taken for minutes, y for millikelvin: a slope of 1 is
/// 60,000 mK an hour by a thousand to keep its digits.
#[test]
fn the_slope_is_the_certified_one() {
    let text = include_str!("../../tests/published/nist_norris.csv");
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    let tenths = |cell: &str| cell.replace('.', "").parse::<i64>().unwrap();
    let readings: Vec<Reading> = rows
        .map(|row| {
            let cells: Vec<&str> = row.split(',').collect();
            reading(tenths(cells[1]) * MINUTE, tenths(cells[0]) * 1_000_000)
        })
        .collect();
    assert_eq!(readings.len(), 36);
    // 1.00211681802045 × 1,000,000 × 60, cut to whole.
    assert_eq!(trend::slope(&readings), Some(60_127_009));
}
