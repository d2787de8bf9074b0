//! What is around the meat during one step, the same for all members but for their own bias.

/// What is around the meat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Boundary {
    /// The pit's air and walls at the end of the step, °C: −20 to 250.
    pub pit_c: f64,
    /// Water vapor in the air, kg a kg of dry air: 0 to 0.5. Outdoor air holds 0.002 to 0.02, a fire adds to it.
    pub vapor: f64,
    /// The air's pressure, pascal: 50,000 to 110,000.
    pub pressure_pa: f64,
    /// The members' convection is multiplied by this: 1 in the pit.
    pub draft: f64,
    /// What lies around the meat.
    pub wrap: Wrap,
    /// What is poured on in this step.
    pub mop: Mop,
}

/// What lies around the meat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wrap {
    /// What it adds to the resistance to heat, m² K/W.
    pub resistance: f64,
    /// The share of the vapor that it lets through.
    pub lets_through: f64,
    /// The share of the radiation that it takes up.
    pub takes_up: f64,
}

/// What is poured on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mop {
    /// Water a surface, kg/m²: 0 to 0.5; what does not stay runs off.
    pub water: f64,
    /// Its temperature, °C.
    pub celsius: f64,
}

impl Wrap {
    /// Nothing.
    pub const BARE: Self = Self {
        resistance: 0.0,
        lets_through: 1.0,
        takes_up: 1.0,
    };
    /// Two layers of foil. From memory, no source: a film of air, folds that leak, and smoke that dulls what shone.
    pub const FOIL: Self = Self {
        resistance: 0.003,
        lets_through: 0.002,
        takes_up: 0.8,
    };
    /// Butcher paper, soaked. From memory, no source.
    pub const PAPER: Self = Self {
        resistance: 0.003,
        lets_through: 0.025,
        takes_up: 1.0,
    };
    /// Foil below and open above: half of both. From memory, no source.
    pub const BOAT: Self = Self {
        resistance: 0.002,
        lets_through: 0.4,
        takes_up: 0.9,
    };
}

impl Mop {
    /// Nothing.
    pub const NONE: Self = Self {
        water: 0.0,
        celsius: 20.0,
    };
}

impl Boundary {
    /// A pit at some temperature, at sea level, with air of some vapor, the meat bare.
    pub const fn pit(pit_c: f64, vapor: f64) -> Self {
        Self {
            pit_c,
            vapor,
            pressure_pa: 101_325.0,
            draft: 1.0,
            wrap: Wrap::BARE,
            mop: Mop::NONE,
        }
    }
}
