//! A chart as SVG. Its field is stretched to the page; what is written in it is not, so that letters keep their size on a
//! phone and on a wall. Curves are told apart by dashes, width and number, never by color. Start at [`figure`].

use maud::{Markup, html};
use slowbend_core::screens::{AreaKind, Chart, Curve, LevelKind, Stroke, Tick};
use std::fmt::Write;

/// Labels nearer to each other than this, thousandths of the height, are pushed apart: those of lines across, and numbers.
const LABELS_APART: i64 = 50;
const NUMBERS_APART: i64 = 75;

/// The chart with its hours and lanes.
pub fn figure(chart: &Chart) -> Markup {
    html! {
        figure .chart {
            svg .plot role="img" aria-label=(chart.says) {
                (field(chart))
                @for tick in &chart.degrees { text .degree x="0" y=(up(chart, tick.at)) dy="-.3em" { (tick.text) } }
                @for (at, label) in levels(chart) { text .across x="30%" y=(at) dy="-.3em" { (label) } }
                @for (x, at, number) in numbers(chart) { text .number x=(x) y=(at) dy="-.25em" text-anchor="end" { (number) } }
            }
            svg .hours aria-hidden="true" { @for tick in &chart.hours { (hour(chart, tick)) } }
            @for lane in &chart.lanes {
                div .lane {
                    p { (lane.name) }
                    svg aria-hidden="true" viewBox=(format!("0 0 {} 10", chart.width)) preserveAspectRatio="none" {
                        path d=(notches(&lane.at)) {}
                    }
                }
            }
        }
    }
}

fn field(chart: &Chart) -> Markup {
    let view = format!("0 0 {} {}", chart.width, chart.height);
    let strong = |tick: &Tick| tick.strong.then_some("strong");
    html! {
        svg .field viewBox=(view) preserveAspectRatio="none" aria-hidden="true" {
            @for area in &chart.areas { polygon .area data-kind=(shaded(area.kind)) points=(outline(chart, &area.upper, &area.lower)) {} }
            @for tick in &chart.degrees { path .grid d=(format!("M0 {}H{}", down(chart, tick.at), chart.width)) {} }
            @for tick in &chart.hours { path .grid data-tick=[strong(tick)] d=(format!("M{} 0V{}", tick.at, chart.height)) {} }
            @for level in &chart.levels {
                path .level data-kind=(kind(level.kind)) d=(format!("M0 {}H{}", down_i(chart, level.y), chart.width)) {}
            }
            @for (curve, nth) in with_nth(&chart.curves) {
                path .curve data-stroke=(stroke(curve.stroke)) data-nth=(nth) d=(path(chart, curve)) {}
            }
        }
    }
}

/// How a series is drawn, beside its words.
pub fn sample(drawn: Stroke, nth: usize) -> Markup {
    html! {
        svg .sample viewBox="0 0 60 12" preserveAspectRatio="none" aria-hidden="true" {
            @match drawn {
                Stroke::Hand => path .curve data-stroke="hand" data-nth=(nth) d="M10 6h.01M30 6h.01M50 6h.01" {},
                other => path .curve data-stroke=(stroke(other)) data-nth=(nth) d="M0 6H60" {},
            }
        }
    }
}

/// How a line across is drawn, beside its words.
pub fn level_sample(of: LevelKind) -> Markup {
    html! { svg .sample viewBox="0 0 60 12" preserveAspectRatio="none" aria-hidden="true" { path .level data-kind=(kind(of)) d="M0 6H60" {} } }
}

/// How an area is drawn, beside its words.
pub fn area_sample(of: AreaKind) -> Markup {
    html! { svg .sample viewBox="0 0 60 12" preserveAspectRatio="none" aria-hidden="true" { rect .area data-kind=(shaded(of)) width="60" height="12" {} } }
}

/// Which of its kind a stroke is, counted from 0 in four ways of drawing.
pub fn nth<'a>(strokes: impl Iterator<Item = &'a Stroke>, of: Stroke) -> usize {
    strokes.filter(|stroke| **stroke == of).count() % 4
}

fn with_nth(curves: &[Curve]) -> impl Iterator<Item = (&Curve, usize)> {
    let before = |index: usize| curves[..index].iter().map(|curve| &curve.stroke);
    curves
        .iter()
        .enumerate()
        .map(move |(index, curve)| (curve, nth(before(index), curve.stroke)))
}

/// Each unbroken piece begins anew; one of a single point is a dot.
fn path(chart: &Chart, curve: &Curve) -> String {
    let mut out = String::new();
    let mut points = curve.points.chunks_exact(2);
    for run in &curve.runs {
        let piece = points.by_ref().take(*run as usize);
        for (index, point) in piece.enumerate() {
            let letter = if index == 0 { 'M' } else { 'L' };
            let _ = write!(out, "{letter}{} {}", point[0], down_i(chart, point[1]));
        }
        if *run == 1 {
            out.push_str("h.01");
        }
    }
    out
}

fn outline(chart: &Chart, upper: &[i32], lower: &[i32]) -> String {
    let points = |line: &[i32]| -> Vec<String> {
        line.chunks_exact(2)
            .map(|point| format!("{},{}", point[0], down_i(chart, point[1])))
            .collect()
    };
    let (there, mut back) = (points(upper), points(lower));
    back.reverse();
    [there, back].concat().join(" ")
}

fn notches(at: &[i32]) -> String {
    at.iter().map(|x| format!("M{x} 0V10")).collect()
}

fn down(chart: &Chart, at: u32) -> u32 {
    chart.height.saturating_sub(at)
}

fn down_i(chart: &Chart, y: i32) -> i64 {
    i64::from(chart.height) - i64::from(y)
}

/// So many thousandths as a percentage.
fn percent(thousandths: i64) -> String {
    format!("{}.{}%", thousandths / 10, thousandths % 10)
}

fn thousandths(part: i64, whole: u32) -> i64 {
    (part * 1_000 / i64::from(whole.max(1))).clamp(0, 1_000)
}

fn up(chart: &Chart, at: u32) -> String {
    percent(thousandths(i64::from(down(chart, at)), chart.height))
}

fn levels(chart: &Chart) -> Vec<(String, &str)> {
    let at: Vec<i64> = chart
        .levels
        .iter()
        .map(|level| thousandths(down_i(chart, level.y), chart.height))
        .collect();
    let labels = chart.levels.iter().map(|level| level.label.as_str());
    apart(&at, LABELS_APART)
        .into_iter()
        .map(percent)
        .zip(labels)
        .collect()
}

/// The number of each curve at its last point.
fn numbers(chart: &Chart) -> Vec<(String, String, u32)> {
    let ends: Vec<(&Curve, i64, i64)> = chart
        .curves
        .iter()
        .filter(|curve| curve.number > 0)
        .filter_map(|curve| {
            let [.., x, y] = curve.points[..] else {
                return None;
            };
            let x = thousandths(i64::from(x), chart.width);
            Some((curve, x, thousandths(down_i(chart, y), chart.height)))
        })
        .collect();
    let heights: Vec<i64> = ends.iter().map(|(.., y)| *y).collect();
    let heights = apart(&heights, NUMBERS_APART);
    let placed = ends.iter().zip(heights);
    placed
        .map(|((curve, x, _), y)| (percent((*x).max(30)), percent(y), curve.number))
        .collect()
}

/// The same heights, pushed down or up until none is too near to another.
fn apart(at: &[i64], by: i64) -> Vec<i64> {
    let mut order: Vec<usize> = (0..at.len()).collect();
    order.sort_by_key(|index| (at[*index], *index));
    let mut placed = at.to_vec();
    let mut least = by;
    for index in &order {
        placed[*index] = placed[*index].max(least);
        least = placed[*index] + by;
    }
    let mut most = 1_000;
    for index in order.iter().rev() {
        placed[*index] = placed[*index].min(most).max(0);
        most = placed[*index] - by;
    }
    placed
}

fn hour(chart: &Chart, tick: &Tick) -> Markup {
    let at = thousandths(i64::from(tick.at), chart.width);
    let anchor = match at {
        ..80 => "start",
        921.. => "end",
        _ => "middle",
    };
    html! { text data-tick=[tick.strong.then_some("strong")] x=(percent(at)) y="1em" text-anchor=(anchor) { (tick.text) } }
}

const fn stroke(stroke: Stroke) -> &'static str {
    match stroke {
        Stroke::Pit => "pit",
        Stroke::Meat => "meat",
        Stroke::Hand => "hand",
        Stroke::Doubtful => "doubtful",
        Stroke::Ahead => "ahead",
    }
}

const fn shaded(kind: AreaKind) -> &'static str {
    match kind {
        AreaKind::Band => "band",
        AreaKind::Ahead => "ahead",
    }
}

const fn kind(kind: LevelKind) -> &'static str {
    match kind {
        LevelKind::Minimum => "minimum",
        LevelKind::Pull => "pull",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_are_pushed_apart_and_stay_within_the_chart() {
        assert_eq!(apart(&[500, 510, 100], 75), [500, 575, 100]);
        assert_eq!(apart(&[1_000, 990], 75), [1_000, 925]);
        assert_eq!(apart(&[], 75), [0; 0]);
    }

    #[test]
    fn a_gap_begins_a_new_piece_and_a_lone_reading_is_a_dot() {
        let chart = Chart {
            says: String::new(),
            width: 10,
            height: 1_000,
            hours: vec![],
            degrees: vec![],
            areas: vec![],
            levels: vec![],
            curves: vec![],
            lanes: vec![],
        };
        let curve = Curve {
            number: 1,
            stroke: Stroke::Pit,
            points: vec![0, 0, 1, 1_000, 5, 500],
            runs: vec![2, 1],
        };
        assert_eq!(path(&chart, &curve), "M0 1000L1 0M5 500h.01");
    }
}
