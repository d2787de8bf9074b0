//! The two families. On [`Family::Tuning`] forecasts and baselines may be tuned; on [`Family::Reporting`] they are scored.
//!
//! They differ in kind, not only in numbers: the tuning family cooks boxes whose skin dries by an exponential law on pits with
//! a thermostat for the most part; the reporting family cooks ellipses whose skin dries by a hyperbolic one over fires for the
//! most part, and each range of what is hidden is another. All ranges are invented ("common practice, no source") but where a
//! line says otherwise.

/// Which invention.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// To tune on.
    Tuning,
    /// To report on.
    Reporting,
}

/// A range of which every value is as likely as any other.
pub type Range = (f64, f64);

/// What a family draws from.
#[derive(Clone, Copy, Debug)]
pub struct Ranges {
    /// Convection at the upper surface, W/(m² K).
    pub convection: Range,
    /// Its share below, on the grate.
    pub below: Range,
    /// Emissivity of the meat.
    pub emissivity: Range,
    /// Vapor in the air of the pit, kg/kg of dry air: outdoor air and what the fire gives.
    pub vapor: Range,
    /// Water that reaches a fresh surface from within, kg/(m² s).
    pub supply: Range,
    /// How much of the water under a surface it can lose until the supply falls off, share of the water above the middle.
    pub stock: Range,
    /// Water that warming drives out, share of all water.
    pub driven_out: Range,
    /// The temperature in the middle of that, °C.
    pub driven_at: Range,
    /// Hours that it takes to reach the surface.
    pub seep_h: Range,
    /// The share of it that drips off.
    pub drips: Range,
    /// Spread of thickness around what the weight says, logarithm.
    pub thickness: f64,
    /// Spread of the conductivity, logarithm.
    pub conductivity: f64,
    /// Spread of the time that becoming tender takes, logarithm.
    pub tender: f64,
    /// Kelvin that make it ten times as fast.
    pub z: Range,
    /// Spread of what the pit's thermometer is off by, K.
    pub pit_bias: f64,
    /// Share of pits that a thermostat holds; the others are fires.
    pub thermostat: f64,
    /// Whether the section is an ellipse, or else a box.
    pub ellipse: bool,
    /// Whether the supply falls off as 1/(1 + x), or else as exp(−x).
    pub hyperbolic: bool,
}

impl Family {
    /// What it draws from.
    pub fn ranges(self) -> Ranges {
        match self {
            Self::Tuning => Ranges {
                convection: (6.0, 14.0),
                below: (0.6, 1.0),
                emissivity: (0.8, 0.95),
                vapor: (0.010, 0.045),
                supply: (1.4e-4, 3.4e-4),
                stock: (0.12, 0.28),
                driven_out: (0.24, 0.42),
                driven_at: (61.0, 69.0),
                seep_h: (0.5, 1.6),
                drips: (0.2, 0.5),
                thickness: 0.11,
                conductivity: 0.05,
                tender: 0.13,
                z: (14.0, 24.0),
                pit_bias: 5.0,
                thermostat: 0.65,
                ellipse: false,
                hyperbolic: false,
            },
            Self::Reporting => Ranges {
                convection: (5.0, 16.0),
                below: (0.5, 1.1),
                emissivity: (0.75, 0.98),
                vapor: (0.008, 0.055),
                supply: (1.2e-4, 3.8e-4),
                stock: (0.10, 0.30),
                driven_out: (0.20, 0.44),
                driven_at: (60.0, 70.0),
                seep_h: (0.4, 2.0),
                drips: (0.15, 0.55),
                thickness: 0.12,
                conductivity: 0.06,
                tender: 0.14,
                z: (13.0, 26.0),
                pit_bias: 6.0,
                thermostat: 0.35,
                ellipse: true,
                hyperbolic: true,
            },
        }
    }
}
