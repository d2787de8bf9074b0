//! Readings: a line a series in large letters, their chart, what was done meanwhile, and the same in numbers.

use super::{Page, Sheet, chart, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{Chart, ReadingsScreen, ReadingsTable, SeriesLine};

pub fn page(sheet: &Sheet<'_>, screen: &ReadingsScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        (spans(screen))
        div .readings {
            ol .series { @for (index, line) in screen.series.iter().enumerate() { (series(screen, index, line)) } }
            @if let Some(rest) = &screen.rest { p .rest { (rest) } }
            @if let Some(drawn) = &screen.chart {
                (chart::figure(drawn))
                (legend(drawn))
            }
        }
        p .how { (screen.note) }
        (parts::folded_cautions(sheet, &screen.cautions))
        (table(screen, &screen.table))
        @if !screen.marks.is_empty() {
            details { summary { h2 { (screen.marks_heading) } } ul { @for mark in &screen.marks { li { (mark) } } } }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

/// How much of it is shown.
fn spans(screen: &ReadingsScreen) -> Markup {
    html! {
        @if screen.spans.len() > 1 {
            p .links.spans {
                @for span in &screen.spans {
                    a .button href=(address(screen, span.hours, None)) aria-current=[span.chosen.then_some("true")] { (span.label) }
                }
            }
        }
    }
}

fn address(screen: &ReadingsScreen, hours: Option<u32>, before: Option<i64>) -> String {
    let hours = hours.map(|hours| format!("hours={hours}"));
    let before = before.map(|before| format!("before={before}"));
    let asked: Vec<String> = hours.into_iter().chain(before).collect();
    let path = Page::Readings(screen.of).path();
    match asked.is_empty() {
        true => path,
        false => format!("{path}?{}", asked.join("&")),
    }
}

fn series(screen: &ReadingsScreen, index: usize, line: &SeriesLine) -> Markup {
    let before = screen.series[..index].iter().map(|line| &line.stroke);
    let name = html! { span .name { (line.name) } };
    html! {
        li .serie data-weight=(parts::weight(line.weight)) {
            (chart::sample(line.stroke, chart::nth(before, line.stroke)))
            div {
                @match line.link {
                    Some(place) => a href=(Page::from(place).path()) { (name) },
                    None => (name),
                }
                p .state { (line.state) @if !line.trend.is_empty() { span .trend { (line.trend) } } }
                @if !line.extremes.is_empty() { p .detail { (line.extremes) } }
                @for gap in &line.gaps { p .detail { (gap) } }
                @for doubt in &line.doubts { p .doubt { (doubt) } }
            }
        }
    }
}

/// What is not a curve.
pub fn legend(chart: &Chart) -> Markup {
    html! {
        ul .legend {
            @for area in &chart.areas { li { (chart::area_sample(area.kind)) span { (area.text) } } }
            @for level in &chart.levels { li { (chart::level_sample(level.kind)) span { (level.text) } } }
        }
    }
}

fn table(screen: &ReadingsScreen, table: &ReadingsTable) -> Markup {
    let hours = screen
        .spans
        .iter()
        .find(|span| span.chosen)
        .and_then(|span| span.hours);
    html! {
        @if !table.rows.is_empty() {
            details .numbers {
                summary { h2 { (table.heading) } }
                div .wide tabindex="0" role="region" aria-label=(table.heading) {
                    table {
                        thead { tr { th scope="col" { (table.when) } @for name in &table.columns { th scope="col" { (name) } } } }
                        tbody {
                            @for row in &table.rows {
                                tr {
                                    th scope="row" { time datetime=(parts::instant(row.at)) { (row.when) } }
                                    @for cell in &row.cells { td { (cell) } }
                                }
                            }
                        }
                    }
                }
                @if let Some(before) = table.next { p { a .button href=(address(screen, hours, Some(before))) { (table.earlier) } } }
            }
        }
    }
}
