//! What is done for a pit, and temperatures.

use super::{Context, Decision, ranges};
use crate::{
    error::Refused,
    ids::{CookId, PitId, ThermometerId},
    log::{Fed, FireSeen, ProbeBound, Read, VentChanged, Where},
    units::Mk,
    words::Arg,
};

/// A temperature read by a person.
pub(super) fn read(
    context: &mut Context<'_>,
    cook: CookId,
    place: &Where,
    thermometer: Option<ThermometerId>,
    temp: Mk,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let at = context.claimed(at)?;
    let place = context.place(cook, place)?;
    let heat = match place {
        Where::Pit { .. } => &ranges::PIT_AIR,
        Where::Piece { .. } => &ranges::MEAT,
    };
    let fact = Read {
        thermometer: context.maybe_thermometer(thermometer)?,
        temp: context.heat(temp, heat)?,
        place,
    };
    let temp = context.say().temperature(temp);
    let name = place_name(context, &fact.place)?;
    let args = [("name", Arg::Text(&name)), ("temp", Arg::Text(&temp))];
    let said = context.say().with("act-read", &args);
    Ok(Decision::one(Some(cook), at, fact, said))
}

/// Says where a probe sits from now on. Its instrument and channel are named as `[source, sensor]`.
pub(super) fn bind(
    context: &mut Context<'_>,
    cook: CookId,
    [source, sensor]: [&str; 2],
    place: &Where,
    thermometer: Option<ThermometerId>,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let fact = ProbeBound {
        source: context.label(source)?,
        sensor: context.label(sensor)?,
        place: context.place(cook, place)?,
        thermometer: context.maybe_thermometer(thermometer)?,
    };
    let name = place_name(context, &fact.place)?;
    let args = [
        ("sensor", Arg::Text(&fact.sensor)),
        ("name", Arg::Text(&name)),
    ];
    let said = context.say().with("act-probe-bound", &args);
    Ok(Decision::one(Some(cook), context.now(), fact, said))
}

fn place_name(context: &Context<'_>, place: &Where) -> Result<String, Refused> {
    match place {
        Where::Pit { pit } => Ok(context.pit_name(*pit)?.to_owned()),
        Where::Piece { piece, .. } => Ok(context.meat(*piece)?.1.name.value.clone()),
    }
}

/// Fuel was put on; what and how much may be left out.
pub(super) fn feed(
    context: &mut Context<'_>,
    cook: CookId,
    pit: PitId,
    what: &str,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let (at, name) = tended(context, cook, pit, at)?;
    let what = context.line(what)?;
    let said = context.say().with("act-fed", &[("pit", Arg::Text(name))]);
    Ok(Decision::one(Some(cook), at, Fed { pit, what }, said))
}

/// A vent was changed; how may be left out.
pub(super) fn vent(
    context: &mut Context<'_>,
    cook: CookId,
    pit: PitId,
    how: &str,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let (at, name) = tended(context, cook, pit, at)?;
    let how = context.line(how)?;
    let said = context
        .say()
        .with("act-vent-changed", &[("pit", Arg::Text(name))]);
    Ok(Decision::one(
        Some(cook),
        at,
        VentChanged { pit, how },
        said,
    ))
}

/// The fire was seen to.
pub(super) fn see_fire(
    context: &mut Context<'_>,
    cook: CookId,
    pit: PitId,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let (at, name) = tended(context, cook, pit, at)?;
    let said = context
        .say()
        .with("act-fire-seen", &[("pit", Arg::Text(name))]);
    Ok(Decision::one(Some(cook), at, FireSeen { pit }, said))
}

/// When a pit was tended in a cook, and what the pit is called.
fn tended<'a>(
    context: &Context<'a>,
    cook: CookId,
    pit: PitId,
    at: Option<i64>,
) -> Result<(i64, &'a str), Refused> {
    context.cook(cook)?;
    Ok((context.claimed(at)?, context.pit_name(pit)?))
}
