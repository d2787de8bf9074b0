//! The records of the screen of readings.

use crate::{
    ids::{CookId, PieceId, PitId},
    screens::{Caution, Link, Place, Weight, records::records},
};
use serde::{Deserialize, Serialize};

/// Whose readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "whose")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum ReadingsOf {
    /// All of a cook.
    Cook {
        /// Which one.
        cook: CookId,
    },
    /// One meat.
    Piece {
        /// Which one.
        piece: PieceId,
    },
    /// One pit during a cook.
    Pit {
        /// During which.
        cook: CookId,
        /// Which one.
        pit: PitId,
    },
}

/// How a curve is drawn, so that no two are told apart by color alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Stroke {
    /// A pit: a broken line.
    Pit,
    /// A meat: a whole line.
    Meat,
    /// Read by hand: dots that nothing joins.
    Hand,
    /// A probe of which nobody said where it sits, or a thermometer that cannot be believed: a dotted line.
    Doubtful,
    /// What was not read but is forecast: short dashes.
    Ahead,
}

/// What is shaded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum AreaKind {
    /// Where a pit is held.
    Band,
    /// Where the inside of a meat will likely be.
    Ahead,
}

/// What a line across a chart stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum LevelKind {
    /// The published minimum of a meat.
    Minimum,
    /// Where a meat is taken off.
    Pull,
}

records! {
    /// Readings of a cook, a meat or a pit, with their chart.
    ReadingsScreen {
        /** Its cook. */ cook: CookId,
        /** Whose they are. */ of: ReadingsOf,
        /** Heading. */ title: String,
        /** What cannot be told from a curve, or that there is none yet. */ note: String,
        /** One line a series, in the order of their numbers. */ series: Vec<SeriesLine>,
        /** The series that found no room, counted. */ rest: Option<String>,
        /** The chart, where there is anything to draw. */ chart: Option<Chart>,
        /** How much of it may be shown. */ spans: Vec<SpanChoice>,
        /** The same in numbers. */ table: ReadingsTable,
        /** What was done meanwhile, latest first. */ marks: Vec<String>,
        /** Heading of what was done. */ marks_heading: String,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One series in words.
    SeriesLine {
        /** Its number in the chart, from 1. */ number: u32,
        /** What it was read of. */ name: String,
        /** The last reading and how old it is, or that it is silent. */ state: String,
        /** Up or down an hour. */ trend: String,
        /** The lowest and the highest, with their times. */ extremes: String,
        /** Where nothing was read. */ gaps: Vec<String>,
        /** What was made of an inexact thermometer, or what is amiss. */ doubts: Vec<String>,
        /** How it is drawn. */ stroke: Stroke,
        /** How much it asks for an eye. */ weight: Weight,
        /** Where a tap on it leads. */ link: Option<Place>,
    }
    /// A chart on a grid of `width` columns and `height` steps; 0, 0 is left and low.
    Chart {
        /** All of it in one sentence, for who hears it. */ says: String,
        /** How many columns. */ width: u32,
        /** How many steps. */ height: u32,
        /** The lines of the hours. */ hours: Vec<Tick>,
        /** The lines of the degrees. */ degrees: Vec<Tick>,
        /** What is shaded between two lines: where a pit is held, where a meat will likely be. */ areas: Vec<Area>,
        /** Lines across. */ levels: Vec<LevelLine>,
        /** The curves. */ curves: Vec<Curve>,
        /** What was done meanwhile, a lane for each kind of thing. */ lanes: Vec<Lane>,
    }
    /// One line of the grid.
    Tick {
        /** Where: a column, or a step. */ at: u32,
        /** What stands at it. */ text: String,
        /** Whether a day begins here, or the clocks change. */ strong: bool,
    }
    /// One curve as one value.
    Curve {
        /** Whose: the number of the series; 0 = of none. */ number: u32,
        /** How it is drawn. */ stroke: Stroke,
        /** x, y, x, y… */ points: Vec<i32>,
        /** How many points each unbroken piece has; between two there is a gap. */ runs: Vec<u32>,
    }
    /// What is shaded: between two lines of points.
    Area {
        /** What it is. */ text: String,
        /** What it stands for. */ kind: AreaKind,
        /** The upper line: x, y, x, y… */ upper: Vec<i32>,
        /** The lower line. */ lower: Vec<i32>,
    }
    /// A line across the chart.
    LevelLine {
        /** How high. */ y: i32,
        /** What stands at it: the temperature. */ label: String,
        /** What it is. */ text: String,
        /** What it stands for. */ kind: LevelKind,
    }
    /// What was done of one kind, at which columns.
    Lane {
        /** Which kind, counted. */ name: String,
        /** The columns, from the left, each once. */ at: Vec<i32>,
    }
    /// How much is shown.
    SpanChoice {
        /** The last so many hours; none = all. */ hours: Option<u32>,
        /** What it says. */ label: String,
        /** Whether it is the present one. */ chosen: bool,
    }
    /// Readings in numbers, latest first, one page.
    ReadingsTable {
        /** Heading. */ heading: String,
        /** Heading of the times. */ when: String,
        /** Headings of the series. */ columns: Vec<String>,
        /** The rows. */ rows: Vec<TableRow>,
        /** The cursor of the next page. */ next: Option<i64>,
        /** The label of the way to it. */ earlier: String,
    }
    /// What was read within one stretch of time.
    TableRow {
        /** When it began. */ when: String,
        /** The same, milliseconds since 1970. */ at: i64,
        /** What each series read: one temperature, a span, or that there is none. */ cells: Vec<String>,
    }
}
