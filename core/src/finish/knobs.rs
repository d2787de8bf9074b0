//! What a member may differ in, each as a number around 0 with a spread of 1, and what that comes to. Start at [`Knob`].
//!
//! The middles and spreads are ours ("common practice, no source") where no line says otherwise; they were tuned on the tuning
//! family of invented cooks and by nothing else.

use crate::heat::kernel::Real;

/// What a member may differ in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Knob {
    /// How thick it is.
    Thick,
    /// How the air moves.
    Draft,
    /// How wet its surface is.
    Wet,
    /// How fast juice seeps.
    Seep,
    /// How much juice it lets go.
    LetsGo,
    /// What the pit is hotter where the meat lies.
    PitBias,
    /// How it conducts.
    Conducts,
    /// Where the probe sits.
    Place,
    /// How long it takes to become tender.
    Tender,
    /// How much faster that is when it is hotter.
    Z,
    /// How fast bark closes the surface.
    Bark,
    /// What the model and the probe are wrong by just now.
    Slip,
}

/// How many there are.
pub const KNOBS: usize = Knob::Slip as usize + 1;

/// Spread of thickness, logarithm.
pub const THICK: f32 = 0.2;
/// Spread of convection, logarithm.
pub const DRAFT: f32 = 0.45;
/// Spread of how wet the surface is, logit.
pub const WET: f32 = 0.8;
/// Spread of seeping, logarithm.
pub const SEEP: f32 = 1.2;
/// Spread of what is let go.
pub const LETS_GO: f32 = 0.2;
/// Spread of the pit's bias in a pit that nothing is known of, K.
pub const PIT_BIAS: f32 = 2.5;
/// Spread of conduction, logarithm.
pub const CONDUCTS: f32 = 0.07;
/// Spread of the time that becoming tender takes, logarithm.
pub const TENDER: f32 = 0.2;
/// Kelvin that make it ten times as fast: the middle. Common practice, no source.
pub const Z_MIDDLE: f32 = 18.0;
/// Its spread, logarithm.
pub const Z_SPREAD: f32 = 0.2;
/// Over the usual time of the cut seeping falls by this, logarithm: bark closes the surface. Invented.
pub const BARK: f32 = 1.8;
/// Its spread, logarithm.
pub const BARK_SPREAD: f32 = 0.8;
/// The wet share of the surface falls by so much of that, logit.
pub const BARK_DRIES: f32 = 0.25;
/// Spread of the slip, K.
pub const SLIP: f32 = 0.8;
/// The slip forgets in so many minutes.
pub const SLIP_MINUTES: f32 = 90.0;

/// e to this.
pub fn exp(x: f32) -> f32 {
    Real::exp(x)
}

/// Where the probe sits: 0 the coldest place, 1 the surface; half of them within a tenth of the way.
pub fn place(z: f32) -> f32 {
    0.5 / (1.0 + exp(1.3 - 1.4 * z))
}

/// Kelvin for a factor of ten.
pub fn z_kelvin(z: f32) -> f32 {
    Z_MIDDLE * exp(Z_SPREAD * z)
}
