//! Which numbers are taken. Start at [`Whole`] and [`Heat`].
//!
//! All limits are plausibility, wide of any cook: common practice, no source, unless one is named.

use super::Context;
use crate::{
    cadence::{Cadence, EVERY_MIN_MAX, EVERY_MIN_MIN},
    checks::{Cut, cuts::Degrees, refused::READABLE},
    error::Refused,
    log::Band,
    moment::MINUTE,
    safety::{Form, NotHere, Source, minimum, refusals::COLD_SMOKE_UP_TO},
    units::Mk,
    words::{Arg, Measure, Words, key, typed::MEAT_GRAMS},
};
use std::ops::RangeInclusive;

/// A whole number with its limits, both included, and the key of what is said outside them.
pub(super) struct Whole {
    range: RangeInclusive<i64>,
    refusal: &'static str,
}

/// How many may eat.
pub(crate) const PEOPLE_RANGE: RangeInclusive<i64> = 1..=5_000;
/// How many eat.
pub(super) const PEOPLE: Whole = Whole {
    range: PEOPLE_RANGE,
    refusal: key("error-people-range"),
};
/// How many minutes a pit may be left alone, up to a day.
pub(super) const ALONE_MINUTES: Whole = Whole {
    range: 0..=1_440,
    refusal: key("error-alone-range"),
};
/// Square centimeters of grate.
pub(super) const GRATE_CM2: Whole = Whole {
    range: Measure::Grate.range(),
    refusal: key("error-grate-range"),
};
/// Minutes between two wettings.
pub(super) const EVERY_MINUTES: Whole = Whole {
    range: EVERY_MIN_MIN..=EVERY_MIN_MAX,
    refusal: key("error-cadence-range"),
};
/// Minutes outside a pit's band before it rings.
pub(super) const BAND_MINUTES: Whole = Whole {
    range: 1..=120,
    refusal: key("error-band-minutes-range"),
};
/// Minutes that a job is put off.
pub(super) const LATER_MINUTES: Whole = Whole {
    range: 1..=240,
    refusal: key("error-later-range"),
};
/// Quarters of a unit of fuel put on at once.
pub(super) const FED: Whole = Whole {
    range: crate::fire::FED_QUARTERS,
    refusal: key("error-fed-range"),
};
/// Quarters that a vent is open.
pub(super) const VENT: Whole = Whole {
    range: crate::fire::VENT_QUARTERS,
    refusal: key("error-vent-range"),
};
/// Grams of one unit of fuel.
pub(super) const UNIT_GRAMS: Whole = Whole {
    range: crate::fire::UNIT_GRAMS,
    refusal: key("error-unit-range"),
};
/// Meters above the sea.
pub(super) const ALTITUDE_M: Whole = Whole {
    range: Measure::Altitude.range(),
    refusal: key("error-altitude-range"),
};

/// A temperature with its limits, both included, and the key of what is said outside them.
pub(super) struct Heat {
    range: RangeInclusive<Mk>,
    refusal: &'static str,
}

/// The air of a pit: a winter night to the hottest fire, −40 to 500 °C (932 °F).
pub(super) const PIT_AIR: Heat = Heat {
    range: Mk::from_c_milli(-40_000)..=Mk::from_c_milli(500_000),
    refusal: key("error-pit-heat-range"),
};
/// The inside of a meat: the range that can be judged, −20 to 200 °C.
pub(super) const MEAT: Heat = Heat {
    range: *READABLE.start()..=*READABLE.end(),
    refusal: key("error-meat-heat-range"),
};
/// The least that hot food is held at, 140 °F. USDA, as [`Source::UsdaTwoHours`] says.
const HOT_HELD: Mk = Mk::from_f(140);
/// The longest that a meat is meant to rest, minutes: a day.
const REST_MINUTES_MAX: i64 = 1_440;
/// The hottest inside of a meat that anybody takes it off at: where its water boils.
const PULL_MAX: Mk = Mk::from_c_milli(100_000);

impl Context<'_> {
    /// `value`, if it lies within `whole`.
    pub(super) fn whole(&self, value: i64, whole: &Whole) -> Result<i64, Refused> {
        if whole.range.contains(&value) {
            return Ok(value);
        }
        let args = [
            ("low", Arg::Number(*whole.range.start())),
            ("high", Arg::Number(*whole.range.end())),
        ];
        Err(self.say().refuse(whole.refusal, &args).into())
    }

    /// The same where it may be left out.
    pub(super) fn maybe(&self, value: Option<i64>, whole: &Whole) -> Result<Option<i64>, Refused> {
        value.map(|value| self.whole(value, whole)).transpose()
    }

    /// `temp`, if it lies within `heat`.
    pub(super) fn heat(&self, temp: Mk, heat: &Heat) -> Result<Mk, Refused> {
        if heat.range.contains(&temp) {
            return Ok(temp);
        }
        let say = self.say();
        let ends = [heat.range.start(), heat.range.end()].map(|end| say.temperature(*end));
        let args = [("low", Arg::Text(&ends[0])), ("high", Arg::Text(&ends[1]))];
        Err(say.refuse(heat.refusal, &args).into())
    }

    /// What one meat weighs.
    pub(super) fn weight(&self, grams: Option<i64>) -> Result<Option<i64>, Refused> {
        if grams.is_none_or(|grams| MEAT_GRAMS.contains(&grams)) {
            return Ok(grams);
        }
        let say = self.say();
        let high = say.weight(*MEAT_GRAMS.end());
        Err(say
            .refuse("error-meat-weight", &[("high", Arg::Text(&high))])
            .into())
    }

    /// How often a meat is wetted.
    pub(super) fn cadence(&self, cadence: Cadence) -> Result<Cadence, Refused> {
        self.maybe(cadence.every_min(), &EVERY_MINUTES)?;
        Ok(cadence)
    }

    /// What a pit is held between.
    pub(super) fn band(&self, band: Band) -> Result<Band, Refused> {
        self.heat(band.low, &PIT_AIR)?;
        self.heat(band.high, &PIT_AIR)?;
        self.whole(band.minutes, &BAND_MINUTES)?;
        if band.high <= COLD_SMOKE_UP_TO {
            let refusal = NotHere::ColdSmoking.key();
            return Err(self.say().refuse(refusal, &[]).into());
        }
        if band.low < band.high {
            return Ok(band);
        }
        Err(self.say().refuse("error-band-order", &[]).into())
    }

    /// When a meat is taken off: never below the published minimum of its cut and form, so that no ring asks for it.
    pub(super) fn pull_at(
        &self,
        cut: Cut,
        form: Form,
        temp: Option<Mk>,
    ) -> Result<Option<Mk>, Refused> {
        pull_at(&self.say(), cut, form, temp)
    }
}

/// When a meat is taken off, for whoever reads `say`: never below the published minimum of its cut and form.
pub(crate) fn pull_at(
    say: &Words<'_>,
    cut: Cut,
    form: Form,
    temp: Option<Mk>,
) -> Result<Option<Mk>, Refused> {
    let least = minimum(cut, form);
    if temp.is_none_or(|temp| (least.temp..=PULL_MAX).contains(&temp)) {
        return Ok(temp);
    }
    let (low, high) = (say.temperature(least.temp), say.temperature(PULL_MAX));
    let source = say.text(least.source.key());
    let args = [
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
        ("source", Arg::Text(&source)),
    ];
    Err(say.refuse("error-pull-range", &args).into())
}

/// How long a meat is meant to rest, minutes: never shorter than the rest that goes with its published minimum.
pub(crate) fn rest_minutes(
    say: &Words<'_>,
    cut: Cut,
    form: Form,
    minutes: Option<i64>,
) -> Result<Option<i64>, Refused> {
    let least = minimum(cut, form);
    let low = (least.rest_ms + MINUTE - 1) / MINUTE;
    if minutes.is_none_or(|minutes| (low..=REST_MINUTES_MAX).contains(&minutes)) {
        return Ok(minutes);
    }
    let source = say.text(least.source.key());
    let args = [
        ("low", Arg::Number(low)),
        ("high", Arg::Number(REST_MINUTES_MAX)),
        ("source", Arg::Text(&source)),
    ];
    Err(say.refuse("error-rest-range", &args).into())
}

/// What the air of a pit is meant to be held between: nothing cooks where food would not even be held hot.
pub(crate) fn pit_heat(say: &Words<'_>, heat: Degrees) -> Result<Degrees, Refused> {
    let range = HOT_HELD..=*PIT_AIR.range.end();
    if range.contains(&heat.low) && range.contains(&heat.high) && heat.low < heat.high {
        return Ok(heat);
    }
    let (low, high) = (say.temperature(HOT_HELD), say.temperature(*range.end()));
    let source = say.text(Source::UsdaTwoHours.key());
    let args = [
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
        ("source", Arg::Text(&source)),
    ];
    Err(say.refuse("error-pit-meant-range", &args).into())
}
