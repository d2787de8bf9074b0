//! The least internal temperature, and the rest that goes with it. Start at [`minimum`].
//!
//! Law: what was done to the meat can only raise its minimum, never lower it, and no cut is without one.

use super::{Source, keyed::keyed};
use crate::{
    checks::Cut,
    moment::{MINUTE, SECOND},
    units::Mk,
};
use serde::{Deserialize, Serialize};

keyed! {
    /// What was done to the meat before the fire: whatever carries the outside inside raises the minimum.
    Form {
        /// Whole muscle, nothing pushed into it.
        Intact = "form-intact",
        /// Brine or marinade was injected; also meat sold as "enhanced" with a solution.
        Injected = "form-injected",
        /// Needled or bladed.
        Tenderised = "form-tenderised",
        /// Ground or chopped.
        Ground = "form-ground",
        /// Rolled and tied: what was outside is now inside.
        Rolled = "form-rolled",
        /// With a stuffing, which must reach the minimum too.
        Stuffed = "form-stuffed",
        /// Nobody said, or nobody knows: not taken for whole muscle.
        Unknown = "form-unknown",
    }
}

/// Whole-muscle pork, beef and lamb, with [`CHART_REST_MS`]. USDA Safe Minimum Internal Temperature Chart.
pub const MEAT_INTACT: Mk = Mk::from_f(145);
/// The rest that goes with [`MEAT_INTACT`]: off the fire, at least 3 min. Same chart.
pub const CHART_REST_MS: i64 = 3 * MINUTE;
/// Injected or mechanically tenderized meat, with [`RAISED_HOLD_MS`]. FDA Food Code 2022, 3-401.11(A)(2).
pub const MEAT_RAISED: Mk = Mk::from_f(155);
/// How long meat must stay at [`MEAT_RAISED`]: 17 s (2017 and 2022 editions; 15 s before).
pub const RAISED_HOLD_MS: i64 = 17 * SECOND;
/// Ground meat, at once. USDA chart; above the 155 °F for 17 s of the Food Code.
pub const GROUND: Mk = Mk::from_f(160);
/// All poultry, and whatever is stuffed, at once. USDA chart; Food Code 3-401.11(A)(3).
pub const POULTRY_OR_STUFFED: Mk = Mk::from_f(165);
/// Meat other than poultry needs no time at this temperature: the Food Code chart says under 1 s, FSIS Revised Appendix A
/// Tables 2 and 6 say 0 s.
pub const MEAT_AT_ONCE: Mk = Mk::from_f(158);
/// The Food Code's other steps for injected or tenderized meat: (temperature, milliseconds held). They are here to be
/// read and checked; no answer uses them, because a thermometer in the hand does not show that every part of a meat on
/// the fire stayed there so long.
pub const FOOD_CODE_OTHER_STEPS: [(Mk, i64); 2] =
    [(Mk::from_f(145), 3 * MINUTE), (Mk::from_f(150), MINUTE)];

/// The published minimum of one meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Minimum {
    /// The coldest part must reach this, in millikelvin.
    pub temp: Mk,
    /// And then rest off the fire this long, in milliseconds; 0 where none is asked for.
    pub rest_ms: i64,
    /// Who says so.
    pub source: Source,
    /// From this temperature on no rest is asked for, in millikelvin. Never below `temp`.
    pub at_once: Mk,
    /// Who says that.
    pub at_once_source: Source,
}

impl Minimum {
    const fn at_once(temp: Mk, source: Source) -> Self {
        Self {
            temp,
            rest_ms: 0,
            source,
            at_once: temp,
            at_once_source: source,
        }
    }

    const fn with_rest(temp: Mk, rest_ms: i64, source: Source, at_once_source: Source) -> Self {
        Self {
            temp,
            rest_ms,
            source,
            at_once: MEAT_AT_ONCE,
            at_once_source,
        }
    }
}

/// The published minimum for this cut in this form.
///
/// ```
/// use slowbend_core::{checks::Cut, safety::{Form, minimum}, units::Mk};
/// assert_eq!(minimum(Cut::PorkButt, Form::Intact).temp, Mk::from_f(145));
/// assert_eq!(minimum(Cut::PorkButt, Form::Injected).temp, Mk::from_f(155));
/// assert_eq!(minimum(Cut::PorkLoin, Form::Unknown).temp, Mk::from_f(155));
/// assert_eq!(minimum(Cut::Sausages, Form::Intact).temp, Mk::from_f(160));
/// assert_eq!(minimum(Cut::TurkeyBreast, Form::Intact).temp, Mk::from_f(165));
/// ```
pub const fn minimum(cut: Cut, form: Form) -> Minimum {
    if cut.is_poultry() {
        return Minimum::at_once(POULTRY_OR_STUFFED, Source::UsdaChart);
    }
    match form {
        Form::Stuffed => Minimum::at_once(POULTRY_OR_STUFFED, Source::FoodCodeStuffed),
        Form::Ground => Minimum::at_once(GROUND, Source::UsdaChart),
        _ if cut.is_ground() => Minimum::at_once(GROUND, Source::UsdaChart),
        Form::Intact => Minimum::with_rest(
            MEAT_INTACT,
            CHART_REST_MS,
            Source::UsdaChart,
            Source::FsisAppendixA,
        ),
        Form::Injected | Form::Tenderised => raised(Source::FoodCodeRaised),
        // No value is published for rolled meat, nor for what nobody knows of: taken as if it had been tenderized.
        Form::Rolled | Form::Unknown => raised(Source::OwnCaution),
    }
}

const fn raised(source: Source) -> Minimum {
    Minimum::with_rest(MEAT_RAISED, RAISED_HOLD_MS, source, Source::FoodCodeRaised)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_form_never_lowers_the_minimum_of_the_whole_muscle() {
        for cut in Cut::ALL {
            let whole = minimum(*cut, Form::Intact);
            for form in Form::ALL {
                let this = minimum(*cut, *form);
                assert!(this.temp >= whole.temp, "{cut:?} {form:?}");
                assert!(this.at_once >= this.temp, "{cut:?} {form:?}");
                assert!(
                    this.rest_ms == 0 || this.at_once > this.temp,
                    "{cut:?} {form:?}"
                );
            }
        }
    }

    #[test]
    fn only_rolled_meat_and_what_nobody_knows_lack_a_published_value_and_say_so() {
        for cut in Cut::ALL {
            for form in Form::ALL {
                let own = matches!(form, Form::Rolled | Form::Unknown)
                    && !cut.is_poultry()
                    && !cut.is_ground();
                assert_eq!(
                    minimum(*cut, *form).source.is_published(),
                    !own,
                    "{cut:?} {form:?}"
                );
            }
        }
    }
}
