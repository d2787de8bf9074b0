//! The sum `conduction`: a textbook's case in integers.

use super::Solid;
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// A solid of one temperature that is put somewhere hotter or colder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ConductionInput {
    /// From the center to the surface, micrometers: 500 to 1,000,000.
    pub half_thickness_um: i64,
    /// Thousandths: 0 a slab, 1000 a cylinder, 2000 a sphere, and between.
    pub shape_permille: i64,
    /// Microwatts a meter and kelvin: 10,000 to 500,000,000.
    pub conducts_uw_per_m_k: i64,
    /// Joules a cubic meter and kelvin (density times heat): 100,000 to 10,000,000.
    pub holds_j_per_m3_k: i64,
    /// Milliwatts a square meter and kelvin, at the surface: 100 to 10,000,000.
    pub surface_mw_per_m2_k: i64,
    /// All of it at first, millikelvin.
    pub start: Mk,
    /// What is around, millikelvin.
    pub around: Mk,
    /// When it is asked about, seconds: 1 to 50 times that rise, none above 1,000,000.
    pub at_s: Vec<i64>,
}

/// How warm it is at one time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ConductionAt {
    /// Seconds.
    pub at_s: i64,
    /// The center, millikelvin.
    pub core: Mk,
    /// The surface, millikelvin.
    pub surface: Mk,
    /// On the average, millikelvin.
    pub mean: Mk,
}

/// How warm it is at each time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ConductionAnswer {
    /// In the order of the times.
    pub at: Vec<ConductionAt>,
    /// Half thickness × surface / conductivity, thousandths.
    pub biot_permille: i64,
}

/// Why something is no solid that can be reckoned with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotASolid {
    /// A figure is out of range.
    #[error("{0} has to be between {1} and {2}.")]
    Range(&'static str, i64, i64),
    /// The times are none.
    #[error("Give 1 to 50 times in seconds, each above the one before, none above 1000000.")]
    Times,
}

/// How warm a solid gets with no water to lose.
///
/// # Errors
/// A figure out of its range, which is said.
pub fn conduction(input: &ConductionInput) -> Result<ConductionAnswer, NotASolid> {
    check(input)?;
    let solid = Solid {
        half_thickness: input.half_thickness_um as f64 * 1e-6,
        shape: input.shape_permille as f64 * 1e-3,
        conducts: input.conducts_uw_per_m_k as f64 * 1e-6,
        holds: input.holds_j_per_m3_k as f64,
        surface: input.surface_mw_per_m2_k as f64 * 1e-3,
    };
    let times: Vec<f64> = input.at_s.iter().map(|at| *at as f64).collect();
    let difference = (input.start.0 - input.around.0) as f64;
    let temp = |left: f64| Mk(input.around.0 + libm::round(left * difference) as i64);
    let at = input.at_s.iter().zip(solid.warm(&times, 200));
    Ok(ConductionAnswer {
        at: at
            .map(|(at_s, left)| ConductionAt {
                at_s: *at_s,
                core: temp(left.core()),
                surface: temp(left.surface(&solid)),
                mean: temp(left.mean(&solid)),
            })
            .collect(),
        biot_permille: libm::round(solid.half_thickness * solid.surface / solid.conducts * 1e3)
            as i64,
    })
}

fn check(input: &ConductionInput) -> Result<(), NotASolid> {
    let ranges = [
        ("half_thickness_um", input.half_thickness_um, 500, 1_000_000),
        ("shape_permille", input.shape_permille, 0, 2_000),
        (
            "conducts_uw_per_m_k",
            input.conducts_uw_per_m_k,
            10_000,
            500_000_000,
        ),
        (
            "holds_j_per_m3_k",
            input.holds_j_per_m3_k,
            100_000,
            10_000_000,
        ),
        (
            "surface_mw_per_m2_k",
            input.surface_mw_per_m2_k,
            100,
            10_000_000,
        ),
        ("start", input.start.0, 100_000, 2_000_000),
        ("around", input.around.0, 100_000, 2_000_000),
    ];
    for (name, value, low, high) in ranges {
        if !(low..=high).contains(&value) {
            return Err(NotASolid::Range(name, low, high));
        }
    }
    let mut before = 0;
    let rise = input.at_s.iter().all(|at| {
        let rises = *at > before && *at <= 1_000_000;
        before = *at;
        rises
    });
    match rise && (1..=50).contains(&input.at_s.len()) {
        true => Ok(()),
        false => Err(NotASolid::Times),
    }
}
