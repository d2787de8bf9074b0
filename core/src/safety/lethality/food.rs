//! Which of the published tables counts for a food.

use super::{
    dwell::seconds_at,
    tables::{CHICKEN, MEAT, TURKEY},
};
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// The tenfold reductions of Salmonella that a table of meat gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Logs {
    /// 5 log.
    Five,
    /// 6.5 log, the usual one for whole meat.
    SixAndAHalf,
    /// 7 log.
    Seven,
}

/// A food with a published table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum PasteurizedFood {
    /// Beef, pork, lamb.
    Meat {
        /// How far.
        logs: Logs,
    },
    /// Chicken, 7 log.
    Chicken {
        /// Percent of fat, 1 to 12; anything else, and what is not known, counts as 12.
        fat_percent: Option<i64>,
    },
    /// Turkey, 7 log.
    Turkey {
        /// As for chicken.
        fat_percent: Option<i64>,
    },
    /// Any other bird, or a mixture: the longer of both tables.
    OtherPoultry {
        /// As for chicken.
        fat_percent: Option<i64>,
    },
}

impl PasteurizedFood {
    /// How long it takes at this temperature, seconds; none below the lowest row, where nothing is published.
    pub fn seconds(self, temp: Mk) -> Option<f64> {
        match self {
            Self::Meat { logs } => seconds_at(&MEAT, logs as usize, temp),
            Self::Chicken { fat_percent } => seconds_at(&CHICKEN, column(fat_percent), temp),
            Self::Turkey { fat_percent } => seconds_at(&TURKEY, column(fat_percent), temp),
            Self::OtherPoultry { fat_percent } => {
                let column = column(fat_percent);
                let chicken = seconds_at(&CHICKEN, column, temp)?;
                seconds_at(&TURKEY, column, temp).map(|turkey| turkey.max(chicken))
            }
        }
    }
}

/// Fat that is not known, or not in the table, takes the last column (FSIS Revised Appendix A, page 39).
fn column(fat_percent: Option<i64>) -> usize {
    match fat_percent {
        Some(percent @ 1..=12) => percent as usize - 1,
        _ => 11,
    }
}
