//! Short ways to write an input.

use slowbend_core::{
    checks::{
        Cut, DatedResult, Spot, Standing, Temperature, TestResult, Verdict, VerdictInput, verdict,
    },
    moment::MINUTE,
    safety::Form,
    units::Mk,
};

/// Two o'clock at an invented regatta.
pub const NOW: i64 = 1_795_000_000_000;

/// A thermometer checked a day ago and found right.
pub const RIGHT: Standing = off_f_tenths(0);

/// A thermometer checked a day ago that reads so many tenths of a degree Fahrenheit too hot.
pub const fn off_f_tenths(tenths: i64) -> Standing {
    Standing::Checked {
        off_mk: tenths * 500 / 9,
        at: NOW - 24 * 60 * MINUTE,
    }
}

/// A result of a test without a thermometer, so many minutes ago.
pub const fn felt(result: TestResult, minutes_ago: i64) -> DatedResult {
    DatedResult {
        result,
        at: NOW - minutes_ago * MINUTE,
        standing: None,
    }
}

/// A reading by hand, so many minutes ago.
pub const fn by_hand(spot: Spot, mk: Mk, standing: Standing, minutes_ago: i64) -> DatedResult {
    read(spot, mk, standing, minutes_ago, true)
}

/// A reading by a probe that is left in, so many minutes ago.
pub const fn left_in(spot: Spot, mk: Mk, standing: Standing, minutes_ago: i64) -> DatedResult {
    read(spot, mk, standing, minutes_ago, false)
}

const fn read(
    spot: Spot,
    mk: Mk,
    standing: Standing,
    minutes_ago: i64,
    instant_read: bool,
) -> DatedResult {
    let heat = Temperature {
        mk,
        spot,
        thermometer: None,
        instant_read,
    };
    DatedResult {
        result: TestResult::Heat(heat),
        at: NOW - minutes_ago * MINUTE,
        standing: Some(standing),
    }
}

/// An input at [`NOW`], on the fire.
pub fn input(cut: Cut, form: Form, checks: Vec<DatedResult>) -> VerdictInput {
    VerdictInput {
        cut,
        form,
        checks,
        now: NOW,
        resting_since: None,
        unknown_must_understand: false,
    }
}

/// The verdict on a sound input.
pub fn judge(input: &VerdictInput) -> Verdict {
    verdict(input).unwrap_or_else(|refused| panic!("{refused}: {input:?}"))
}

/// Whole degrees Fahrenheit.
pub const fn f(degrees: i64) -> Mk {
    Mk::from_f(degrees)
}

/// The verdict at [`NOW`] on an intact meat on the fire.
pub fn of(cut: Cut, checks: Vec<DatedResult>) -> Verdict {
    judge(&input(cut, Form::Intact, checks))
}
