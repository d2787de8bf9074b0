//! Why something is no air that can be reckoned with.

use super::Air;
use crate::units::Mk;

/// What is wrong with it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAir {
    /// The dry bulb is out of range.
    #[error("The dry bulb has to be between 0 and 200 °C (273150 to 473150 millikelvin).")]
    DryBulb,
    /// The vapor is out of range.
    #[error("Vapor has to be between 0 and 1000000 mg a kg of dry air.")]
    Vapor,
    /// The pressure is out of range.
    #[error("The pressure has to be between 50000 and 110000 Pa.")]
    Pressure,
    /// It holds more vapor than it can.
    #[error(
        "Air of this temperature cannot hold so much vapor: part of it would be fog. Give less vapor or a higher dry bulb."
    )]
    Fog,
    /// A wet thermometer would freeze in it.
    #[error("A wet thermometer would freeze in this air, which these equations do not cover.")]
    Freezes,
}

pub(super) fn check(air: &Air) -> Result<(), NotAir> {
    if !(Mk::from_c_milli(0)..=Mk::from_c_milli(200_000)).contains(&air.dry_bulb) {
        return Err(NotAir::DryBulb);
    }
    if !(0..=1_000_000).contains(&air.vapor_mg_per_kg) {
        return Err(NotAir::Vapor);
    }
    match air.pressure_pa {
        50_000..=110_000 => Ok(()),
        _ => Err(NotAir::Pressure),
    }
}
