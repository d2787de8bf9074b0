//! Readings of a cook, a meat or a pit: a line a series, their chart, and the same in numbers.
//!
//! Two steps, so that no more than one series is in memory at once: [`wanted`] says which readings are asked for, each is
//! made a [`Heard`] and let go, and [`readings`] writes the screen. Work is bound by the readings in the stretch that is
//! shown, at most [`LONGEST_MS`](crate::chart::LONGEST_MS) long and [`SERIES_MOST`] wide, and by nothing before it.

mod drawing;
mod lanes;
mod lines;
mod records;
mod strands;
mod table;
#[cfg(test)]
mod tests;
mod ticks;

pub use records::*;
pub use strands::{SERIES_MOST, Strand, Wanted, wanted};

use super::{Link, Place, glance::Glance};
use crate::{
    chart::{Columns, Gap, gaps, per_hour},
    cook::{Cook, Known},
    moment::Moment,
    readings::Reading,
    safety::Doing,
    words::{Arg, Viewer},
};

/// What is left of one series once it was read.
#[derive(Clone, Debug)]
pub struct Heard {
    /// In columns of the chart.
    pub(super) chart: Columns,
    /// In rows of the table.
    pub(super) table: Columns,
    pub(super) last: Option<Reading>,
    pub(super) trend: Option<i64>,
    pub(super) gaps: Vec<Gap>,
    /// How many stored runs could not be read.
    pub(super) damaged: u32,
}

impl Heard {
    /// Of the settled readings of one strand within the stretch of `wanted`.
    pub fn of(wanted: &Wanted, readings: &[Reading], damaged: u32) -> Self {
        Self {
            chart: Columns::of(wanted.span, readings),
            table: Columns::of(wanted.rows, readings),
            last: readings.last().copied(),
            trend: per_hour(readings),
            gaps: gaps(readings),
            damaged,
        }
    }
}

/// The screen of the readings that were `wanted`, of each strand what was `heard`; `before` is the cursor of a page of the
/// table. None where the cook is not known here.
pub fn readings(
    known: &Known<'_>,
    viewer: &Viewer,
    wanted: &Wanted,
    heard: &[Heard],
    before: Option<i64>,
    moment: &Moment,
) -> Option<ReadingsScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&wanted.cook)?;
    let chart = glance.chart(cook, wanted, heard);
    Some(ReadingsScreen {
        cook: cook.id,
        of: wanted.of,
        title: glance.readings_title(cook, wanted.of),
        note: match chart {
            Some(_) => glance.say.text("chart-one-place"),
            None => glance.say.text("chart-none"),
        },
        series: glance.series_lines(cook, wanted, heard),
        rest: glance.series_left_out(wanted.left_out),
        chart,
        spans: glance.span_choices(wanted),
        table: glance.readings_table(wanted, heard, before),
        marks: glance.mark_lines(cook, wanted),
        marks_heading: glance.say.text("chart-marks"),
        links: glance.readings_links(cook, wanted),
        cautions: match cook.meats().any(|piece| piece.cut.is_poultry()) {
            true => glance.cautions(Doing::CheckingPoultry),
            false => glance.cautions(Doing::CheckingMeat),
        },
        until: glance.until(&[]),
    })
}

impl Glance<'_> {
    fn readings_title(&self, cook: &Cook, of: ReadingsOf) -> String {
        let name = match of {
            ReadingsOf::Cook { .. } => cook.name.value.clone(),
            ReadingsOf::Piece { piece } => self.piece_name(piece),
            ReadingsOf::Pit { pit, .. } => self.pit(pit),
        };
        self.say.with("chart-title", &[("name", Arg::Text(&name))])
    }

    fn series_left_out(&self, count: usize) -> Option<String> {
        let count = i64::try_from(count).ok().filter(|count| *count > 0)?;
        Some(
            self.say
                .with("chart-more-series", &[("count", Arg::Number(count))]),
        )
    }

    /// Stretches that are shorter than all of it.
    fn span_choices(&self, wanted: &Wanted) -> Vec<SpanChoice> {
        let all = SpanChoice {
            hours: None,
            label: self.say.text("chart-span-all"),
            chosen: wanted.hours.is_none(),
        };
        let hours = strands::HOURS.into_iter().filter(|hours| {
            wanted.hours == Some(*hours)
                || i64::from(*hours) * crate::moment::HOUR < wanted.whole_ms
        });
        let shorter = hours.map(|hours| SpanChoice {
            hours: Some(hours),
            label: self.say.with(
                "chart-span-hours",
                &[("hours", Arg::Number(i64::from(hours)))],
            ),
            chosen: wanted.hours == Some(hours),
        });
        std::iter::once(all).chain(shorter).collect()
    }

    fn readings_links(&self, cook: &Cook, wanted: &Wanted) -> Vec<Link> {
        let link = |label: &'static str, place| Link {
            label: self.say.text(label),
            place,
        };
        let mut links = match wanted.of {
            ReadingsOf::Piece { piece } => vec![link("link-meat", Place::Piece { piece })],
            _ => vec![],
        };
        if !matches!(wanted.of, ReadingsOf::Cook { .. }) {
            let of = ReadingsOf::Cook { cook: cook.id };
            links.push(link("link-readings-all", Place::Readings { of }));
        }
        links.push(link("link-thermometers", Place::Thermometers));
        links.push(link("link-now", Place::Now { cook: cook.id }));
        links
    }
}
