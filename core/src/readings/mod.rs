//! Probe readings: series, chunks, and files from other instruments. No storage and no files: bytes come in through
//! `std::io::Read`, chunks go out through a [`Sink`].
//!
//! Where to start: [`series`] says what a reading is, [`chunk::Encoded`] how readings become bytes, and
//! [`import::import`] takes a CSV file by an [`ImportPlan`], which [`guess::guess`] makes from the
//! file's first 64 kB or asks about.

pub mod chunk;
pub mod csv;
pub mod file_faults;
pub mod guess;
pub mod import;
pub mod numbers;
pub mod plan;
pub mod questions;
pub mod refusals;
pub mod report;
pub mod series;
pub mod settle;
pub mod tails;
pub mod times;
pub mod told;
pub mod zones;

mod civil;
mod columns;
mod cursor;
mod gather;
mod guess_time;
mod lines;
mod sample;
mod time_shape;
mod varint;

pub use chunk::{ChunkName, Encoded};
pub use guess::{Guess, guess};
pub use import::{Sink, Stopped, import};
pub use plan::{Delimiter, ImportPlan, TempColumn};
pub use questions::{Answers, Question};
pub use report::Report;
pub use series::{Reading, SeriesId};
pub use tails::Tails;
pub use told::Told;

#[cfg(test)]
mod story_tests;
