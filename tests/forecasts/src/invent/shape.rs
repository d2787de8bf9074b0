//! How big a cut of some weight is, and how long it takes to become tender. All of it common practice, no source: sections of
//! ordinary cuts, measured by nobody.

use slowbend_core::checks::cuts::Cut;

/// A cut as the simulator has it.
#[derive(Clone, Copy, Debug)]
pub struct Shape {
    /// Grams, from and to.
    pub grams: (f64, f64),
    /// Thickness in mm of a piece of the middle weight.
    pub thick_mm: f64,
    /// Width over thickness.
    pub wide: f64,
    /// Whether it is round as seen from above, or else long.
    pub round: bool,
    /// Minutes at 88 °C until it is tender, where feel alone decides.
    pub tender_min: f64,
}

const fn shape(grams: (f64, f64), thick_mm: f64, wide: f64, round: bool, tender_min: f64) -> Shape {
    Shape {
        grams,
        thick_mm,
        wide,
        round,
        tender_min,
    }
}

/// The cut's.
pub const fn shape_of(cut: Cut) -> Shape {
    match cut {
        Cut::SpareRibs => shape((1_300.0, 2_100.0), 32.0, 5.0, false, 420.0),
        Cut::SpareRibsTrimmed => shape((1_000.0, 1_500.0), 29.0, 4.5, false, 370.0),
        Cut::BabyBackRibs => shape((800.0, 1_300.0), 29.0, 3.5, false, 230.0),
        Cut::BeefBackRibs => shape((1_300.0, 2_200.0), 36.0, 4.0, false, 260.0),
        Cut::PlateRibs => shape((1_800.0, 3_000.0), 66.0, 3.2, false, 0.0),
        Cut::PorkButt => shape((2_700.0, 4_500.0), 118.0, 1.45, true, 0.0),
        Cut::PorkPicnic => shape((2_700.0, 4_500.0), 116.0, 1.45, true, 0.0),
        Cut::PorkBelly => shape((1_800.0, 4_000.0), 54.0, 5.0, false, 0.0),
        Cut::PorkLoin => shape((1_200.0, 2_500.0), 70.0, 1.3, false, 0.0),
        Cut::Brisket => shape((4_500.0, 7_000.0), 78.0, 3.2, false, 0.0),
        Cut::BrisketFlat => shape((2_200.0, 3_600.0), 58.0, 3.4, false, 0.0),
        Cut::BrisketPoint => shape((2_000.0, 3_400.0), 72.0, 2.3, false, 0.0),
        Cut::TriTip => shape((800.0, 1_300.0), 43.0, 2.4, false, 0.0),
        Cut::ChickenWhole => shape((1_400.0, 2_300.0), 79.0, 1.5, true, 0.0),
        Cut::ChickenHalf => shape((700.0, 1_100.0), 49.0, 2.6, false, 0.0),
        Cut::ChickenThighs => shape((800.0, 1_600.0), 38.0, 2.2, false, 0.0),
        Cut::TurkeyBreast => shape((2_000.0, 3_500.0), 90.0, 1.4, true, 0.0),
        Cut::LambShoulder => shape((1_800.0, 3_000.0), 96.0, 1.5, true, 0.0),
        Cut::Sausages | Cut::PoultrySausages => shape((800.0, 1_500.0), 32.0, 1.0, false, 0.0),
    }
}
