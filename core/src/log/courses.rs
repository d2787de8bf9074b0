//! The shapes of courses, and of what no longer fits on a run sheet.

use super::{OnSheet, Serve, Subject};
use serde::{Deserialize, Serialize};

/// One time at which something of a cook is served or handed in, beside the hour of its table. All times are milliseconds
/// since 1970.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Course {
    /// Which of the cook's courses, 1 to 99: its serving on a sheet is named by it, whatever it is called and whenever it is.
    pub nr: i64,
    /// What it is called.
    pub name: String,
    /// When it is wanted.
    pub serve: Serve,
    /// The latest it may be; none = as late as the table of the cook may be.
    #[serde(default)]
    pub latest: Option<i64>,
    /// Where it is handed in: so many minutes before and after its time the table is open, 0 to 15. It has no latest then.
    #[serde(default)]
    pub window_min: Option<i64>,
    /// The meats and dishes of it.
    pub of: Vec<Subject>,
}

/// One thing by which an accepted sheet no longer fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Strain {
    /// The job that it is about.
    pub job: OnSheet,
    /// How many minutes later than the sheet says; less than 0 is sooner, 0 where it is no matter of time.
    pub by_min: i64,
}
