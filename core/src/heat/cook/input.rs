//! What a cook is, for its heat: integers, seconds since it went on.

use crate::{
    checks::cuts::{Cut, WrapKind},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// The pit at one time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PitAt {
    /// Seconds since it went on.
    pub at_s: i64,
    /// Millikelvin: 0 to 250 °C.
    pub temp: Mk,
}

/// What lies around it from some time on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WrapAt {
    /// Seconds since it went on.
    pub at_s: i64,
    /// What in; none where it was taken off.
    #[serde(default)]
    pub kind: Option<WrapKind>,
}

/// One wetting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MopAt {
    /// Seconds since it went on.
    pub at_s: i64,
    /// Grams poured on this meat: 0 to 2000; what does not stay runs off.
    pub grams: i64,
    /// Its temperature, millikelvin.
    pub temp: Mk,
}

/// One opening of the pit that its log does not show.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct OpeningAt {
    /// Seconds since the meat went on.
    pub at_s: i64,
    /// For how many seconds: 1 to 3600.
    pub for_s: i64,
}

/// One meat in one pit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CookHeatInput {
    /// What it is.
    pub cut: Cut,
    /// Its weight, grams: 50 to 20,000.
    pub grams: i64,
    /// How thick it is, millimeters: 8 to 250; none where its weight has to say.
    #[serde(default)]
    pub thick_mm: Option<i64>,
    /// All of it when it goes on, millikelvin: 0 to 60 °C.
    pub start: Mk,
    /// The pit, straight between two; at least one, times rising.
    pub pit: Vec<PitAt>,
    /// Vapor in the pit's air, milligrams a kilogram of dry air: 0 to 500,000; none where nobody knows.
    #[serde(default)]
    pub vapor_mg_per_kg: Option<i64>,
    /// The air outside, millikelvin: 0 to 60 °C; it rests in it too.
    pub outside: Mk,
    /// What lay around it, times rising.
    #[serde(default)]
    pub wraps: Vec<WrapAt>,
    /// Wettings, times rising.
    #[serde(default)]
    pub mops: Vec<MopAt>,
    /// Openings, times rising.
    #[serde(default)]
    pub openings: Vec<OpeningAt>,
    /// When it came off, seconds since it went on.
    #[serde(default)]
    pub off_s: Option<i64>,
    /// Its center is asked about, millikelvin.
    #[serde(default)]
    pub until: Option<Mk>,
    /// How long it is followed, seconds: 60 to 172,800.
    pub for_s: i64,
    /// Points of the curve, seconds apart: 60 to 3600.
    pub every_s: i64,
}

/// Why a cook cannot be reckoned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotACook {
    /// A figure is out of range.
    #[error("{0} has to be between {1} and {2}.")]
    Range(&'static str, i64, i64),
    /// No pit.
    #[error("Say how hot the pit is: at least one entry in `pit`.")]
    NoPit,
    /// Times do not rise.
    #[error("The times in `{0}` have to rise, and none may be before the meat went on.")]
    Times(&'static str),
}

impl CookHeatInput {
    pub(super) fn check(&self) -> Result<(), NotACook> {
        let milli_c = |temp: Mk| temp.c_milli();
        range("grams", self.grams, 50, 20_000)?;
        range("thick_mm", self.thick_mm.unwrap_or(8), 8, 250)?;
        range("start in thousandths of °C", milli_c(self.start), 0, 60_000)?;
        range(
            "outside in thousandths of °C",
            milli_c(self.outside),
            0,
            60_000,
        )?;
        range(
            "vapor_mg_per_kg",
            self.vapor_mg_per_kg.unwrap_or(0),
            0,
            500_000,
        )?;
        range("for_s", self.for_s, 60, 172_800)?;
        range("every_s", self.every_s, 60, 3_600)?;
        for pit in &self.pit {
            range(
                "the pit in thousandths of °C",
                milli_c(pit.temp),
                0,
                250_000,
            )?;
        }
        for mop in &self.mops {
            range("grams of a mop", mop.grams, 0, 2_000)?;
            range("a mop in thousandths of °C", milli_c(mop.temp), 0, 100_000)?;
        }
        for opening in &self.openings {
            range("for_s of an opening", opening.for_s, 1, 3_600)?;
        }
        self.times()
    }

    fn times(&self) -> Result<(), NotACook> {
        if self.pit.is_empty() {
            return Err(NotACook::NoPit);
        }
        rise("pit", self.pit.iter().map(|pit| pit.at_s))?;
        rise("wraps", self.wraps.iter().map(|wrap| wrap.at_s))?;
        rise("mops", self.mops.iter().map(|mop| mop.at_s))?;
        rise("openings", self.openings.iter().map(|opening| opening.at_s))
    }
}

fn range(name: &'static str, value: i64, low: i64, high: i64) -> Result<(), NotACook> {
    match (low..=high).contains(&value) {
        true => Ok(()),
        false => Err(NotACook::Range(name, low, high)),
    }
}

fn rise(name: &'static str, times: impl Iterator<Item = i64>) -> Result<(), NotACook> {
    let mut before = -1;
    for time in times {
        if time <= before {
            return Err(NotACook::Times(name));
        }
        before = time;
    }
    Ok(())
}
