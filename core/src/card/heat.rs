//! The air of a pit as a card may wish for it.

use super::{CardHeat, fields::Fields};
use crate::{
    acts::decide::pit_heat, checks::cuts::Degrees, error::Refused, safety::Source, units::Mk,
    words::Arg,
};

/// The lower end of the air that USDA FSIS gives for smoking meat, 225 °F: "Smoking Meat and Poultry", as read in the copy
/// that [`Source::UsdaSmoking`] names. Below it a card is taken, and that is told.
pub(super) const SMOKING_FROM: Mk = Mk::from_f(225);
/// Its upper end, 300 °F. Same source.
const SMOKING_TO: Mk = Mk::from_f(300);

/// What the air is held between.
pub(super) fn held(fields: &mut Fields<'_>) -> Result<CardHeat, Refused> {
    let mut end = |name: &str| {
        let mk = fields.whole(name, 0..=2_000_000)?;
        mk.ok_or_else(|| fields.missing(name))
    };
    let (low_mk, high_mk) = (end("low_mk")?, end("high_mk")?);
    let wished = Degrees {
        low: Mk(low_mk),
        high: Mk(high_mk),
    };
    pit_heat(&fields.say, wished)
        .map_err(|refused| fields.place.refused(&fields.say, &refused.reason))?;
    if wished.low < SMOKING_FROM {
        let span = fields.say.temperature_span(SMOKING_FROM, SMOKING_TO);
        let source = fields.say.text(Source::UsdaSmoking.key());
        let args = [("span", Arg::Text(&span)), ("source", Arg::Text(&source))];
        let told = fields.say.with("card-pit-cool", &args);
        fields.tell(told);
    }
    Ok(CardHeat { low_mk, high_mk })
}
