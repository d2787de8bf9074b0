//! What is known of one meat in one pit: plain facts. Start at [`Told`].

use super::{Habits, NotAForecast};
use crate::{
    checks::cuts::{Cut, DoneBy, WrapKind, cut_facts},
    ids::{CookId, PieceId},
    moment::HOUR,
    safety::{Form, food_log::TempAt, minimum},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// Cooks are followed for so long, milliseconds.
const LONGEST_MS: i64 = 48 * HOUR;
/// Meat goes on between these, millikelvin: frozen through is another job.
const STARTS: (i64, i64) = (268_150, 313_150);
/// A pit is between these, millikelvin.
const PITS: (i64, i64) = (253_150, 523_150);

/// All that a forecast goes by. What lies at or after the
/// instant of the grid at or before `now` is not looked at, so whoever asks a minute later is told the same.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Told {
    /// Which cut.
    pub cut: Cut,
    /// Its raw weight, grams: 50 to 20,000. Where it is several pieces, of all of them.
    pub grams: i64,
    /// What was done to it.
    #[serde(default = "unsaid")]
    pub form: Form,
    /// When it came on the pit, milliseconds since 1970.
    pub on_at: i64,
    /// When it is, milliseconds since 1970; counted as the instant of the grid before it.
    pub now: i64,
    /// Its temperature when it came on, where somebody read it; else taken from a refrigerator.
    #[serde(default)]
    pub start: Option<Mk>,
    /// Readings of the pit.
    #[serde(default)]
    pub pit: Vec<TempAt>,
    /// What the pit is meant to be held at.
    #[serde(default)]
    pub pit_set: Option<Mk>,
    /// Readings of its inside.
    #[serde(default)]
    pub core: Vec<CoreAt>,
    /// When it was wrapped or unwrapped.
    #[serde(default)]
    pub wraps: Vec<WrapAt>,
    /// When it was mopped or sprayed.
    #[serde(default)]
    pub mops: Vec<i64>,
    /// When the pit was open besides.
    #[serde(default)]
    pub openings: Vec<i64>,
    /// What was felt.
    #[serde(default)]
    pub checks: Vec<FeltAt>,
    /// What it is done by; where nothing is said, what is usual for the cut.
    #[serde(default)]
    pub done_when: Option<DoneWhen>,
    /// What earlier cooks taught of this pit and this cut.
    #[serde(default)]
    pub habits: Habits,
    /// A number of its own for each meat of each cook ([`key_of`]): the same number draws the same members.
    #[serde(default)]
    pub key: u64,
}

const fn unsaid() -> Form {
    Form::Unknown
}

/// How hot its inside was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CoreAt {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// How hot, millikelvin.
    pub temp: Mk,
    /// Which probe, where there are several: the coldest that can be believed is gone by.
    #[serde(default)]
    pub probe: u32,
    /// Whether somebody looked for the coldest place with an instant-read thermometer, or else a probe that stays in.
    #[serde(default)]
    pub by_hand: bool,
}

/// From when on it lies in what.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WrapAt {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// In what; none where it was taken out again.
    pub wrap: Option<WrapKind>,
}

/// How far it felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Felt {
    /// Far from tender.
    NotYet,
    /// Nearly tender.
    Close,
    /// Tender.
    Tender,
}

/// What a check by feel came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FeltAt {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// What.
    pub felt: Felt,
}

/// What done means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "is")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum DoneWhen {
    /// The coldest place is this warm; never taken for less than the published minimum.
    Warm {
        /// Millikelvin.
        temp: Mk,
    },
    /// It is tender, whatever the thermometer says.
    Tender,
}

impl Told {
    /// What done means for it. A temperature below the published minimum is raised to it.
    pub fn done(&self) -> DoneWhen {
        let facts = cut_facts(self.cut);
        let usual = match facts.done_by {
            DoneBy::Feel => DoneWhen::Tender,
            DoneBy::FeelAndTemperature | DoneBy::Temperature => DoneWhen::Warm {
                temp: Mk((facts.done_range.low.0 + facts.done_range.high.0) / 2),
            },
        };
        match self.done_when.unwrap_or(usual) {
            DoneWhen::Warm { temp } => DoneWhen::Warm {
                temp: temp.max(minimum(self.cut, self.form).temp),
            },
            DoneWhen::Tender => DoneWhen::Tender,
        }
    }

    /// Below this nothing is tender, whatever is felt: where the cut can be, and never below its published minimum.
    pub fn tender_from(&self) -> Mk {
        cut_facts(self.cut)
            .tender_from()
            .max(minimum(self.cut, self.form).temp)
    }

    /// Whether all of it can be.
    ///
    /// # Errors
    /// What cannot, and what to give instead.
    pub fn check(&self) -> Result<(), NotAForecast> {
        within("The weight in grams", self.grams, 50, 20_000)?;
        if let Some(start) = self.start {
            within(
                "The temperature at the start in millikelvin",
                start.0,
                STARTS.0,
                STARTS.1,
            )?;
        }
        if let Some(set) = self.pit_set {
            within(
                "What the pit is held at in millikelvin",
                set.0,
                PITS.0,
                PITS.1,
            )?;
        }
        if let DoneWhen::Warm { temp } = self.done() {
            within(
                "The temperature at which it is done in millikelvin",
                temp.0,
                318_150,
                373_150,
            )?;
        }
        self.habits.check()?;
        match self.now - self.on_at {
            ..0 => Err(NotAForecast::NotOn),
            LONGEST_MS.. => Err(NotAForecast::TooLong),
            _ if self.pit_set.is_none() && self.pit.iter().all(|one| one.at >= self.now) => {
                Err(NotAForecast::NoPit)
            }
            _ => Ok(()),
        }
    }
}

/// Refuses what lies outside.
pub(super) fn within(
    what: &'static str,
    value: i64,
    low: i64,
    high: i64,
) -> Result<(), NotAForecast> {
    match (low..=high).contains(&value) {
        true => Ok(()),
        false => Err(NotAForecast::Outside {
            what,
            value,
            low,
            high,
        }),
    }
}

/// The key of one meat of one cook: the first eight bytes of the BLAKE3 of both names.
pub fn key_of(cook: CookId, piece: PieceId) -> u64 {
    let mut hasher = blake3::Hasher::new();
    hasher.update(cook.0.as_bytes()).update(piece.0.as_bytes());
    let bytes = hasher.finalize();
    u64::from_le_bytes(
        bytes.as_bytes()[..8]
            .try_into()
            .expect("a hash has 32 bytes"),
    )
}
