//! What is done at a fire, in what hands count.

use super::{Context, Decision, ranges};
use crate::{
    error::Refused,
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap},
    ids::{CookId, PitId},
    log::{
        FedUnits, FeedPlanned, FireFoundOut, FireTended, Payload, SmokeWatched, UnitWeighed,
        VentSet, WeatherSaid, WoodSaid, WoodTamed,
    },
    moment::HOUR,
    words::{Arg, key},
};

/// A feed is planned at most a day ahead.
const AHEAD_MAX_MS: i64 = 24 * HOUR;

/// Where: in which cook, at which pit.
type At = (CookId, PitId);

/// Fuel was put on. Not every unit goes in every pit.
pub(super) fn feed(
    context: &mut Context<'_>,
    place: At,
    unit: FuelUnit,
    quarters: i64,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let quarters = context.whole(quarters, &ranges::FED)?;
    goes_with(context, place.1, unit)?;
    let amount = context.say().fuel(unit, quarters);
    let fact = FedUnits {
        pit: place.1,
        unit,
        quarters,
        what: String::new(),
    };
    let args = [("what", Arg::Text(&amount))];
    done(context, place, at, key("act-fed-units"), &args, fact)
}

/// A vent was set.
pub(super) fn set_vent(
    context: &mut Context<'_>,
    place: At,
    vent: Vent,
    quarters: i64,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let quarters = context.whole(quarters, &ranges::VENT)?;
    let say = context.say();
    let what = [say.vent(vent), say.open_by(quarters)].join(": ");
    let fact = VentSet {
        pit: place.1,
        vent,
        quarters,
        how: String::new(),
    };
    let args = [("what", Arg::Text(&what))];
    done(context, place, at, key("act-fire-what"), &args, fact)
}

/// Something was done at the fire.
pub(super) fn tend(
    context: &mut Context<'_>,
    place: At,
    did: FireDid,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let what = context.say().fire_did(did);
    let fact = FireTended { pit: place.1, did };
    let args = [("what", Arg::Text(&what))];
    done(context, place, at, key("act-fire-what"), &args, fact)
}

/// What the weather is from now on.
pub(super) fn say_weather(
    context: &mut Context<'_>,
    cook: CookId,
    tap: WeatherTap,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let what = context.say().weather_tap(tap);
    let said = context
        .say()
        .with("act-weather", &[("what", Arg::Text(&what))]);
    let (now, fact) = (context.now(), WeatherSaid { said: tap });
    Ok(Decision::one(Some(cook), now, fact, said))
}

/// What wood smokes from now on.
pub(super) fn say_wood(
    context: &mut Context<'_>,
    place: At,
    wood: SmokeWood,
) -> Result<Decision, Refused> {
    let what = context.say().wood(wood);
    let fact = WoodSaid { pit: place.1, wood };
    let args = [("what", Arg::Text(&what))];
    done(context, place, None, key("act-wood"), &args, fact)
}

/// That wood is burnt to coals first, or mixed with a milder one, from now on.
pub(super) fn tame_wood(
    context: &mut Context<'_>,
    place: At,
    wood: SmokeWood,
) -> Result<Decision, Refused> {
    let what = context.say().wood(wood);
    let fact = WoodTamed { pit: place.1, wood };
    let args = [("what", Arg::Text(&what))];
    done(context, place, None, key("act-wood-tamed"), &args, fact)
}

/// The fire was found out. It cannot have burned until later than now, nor is more than a day remembered.
pub(super) fn find_out(
    context: &mut Context<'_>,
    place: At,
    burned_until: i64,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let (now, say) = (context.now(), context.say());
    if burned_until > now || burned_until < now.saturating_sub(AHEAD_MAX_MS) {
        return Err(say.refuse("error-burned-until", &[]).into());
    }
    let time = say.clock_day(burned_until, now);
    let fact = FireFoundOut {
        pit: place.1,
        burned_until,
    };
    let args = [("time", Arg::Text(&time))];
    done(context, place, at, key("act-found-out"), &args, fact)
}

/// Somebody saw or smelled the smoke.
pub(super) fn watch_smoke(
    context: &mut Context<'_>,
    place: At,
    seen: SmokeSeen,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let what = context.say().smoke_seen(seen);
    let fact = SmokeWatched { pit: place.1, seen };
    let args = [("what", Arg::Text(&what))];
    done(context, place, at, key("act-smoke"), &args, fact)
}

/// A time to feed next was accepted.
pub(super) fn plan_feed(
    context: &mut Context<'_>,
    place: At,
    due: i64,
) -> Result<Decision, Refused> {
    let (now, say) = (context.now(), context.say());
    if due <= now || due > now + AHEAD_MAX_MS {
        return Err(say.refuse("error-feed-when", &[]).into());
    }
    let time = say.the_clock_day(due, now);
    let fact = FeedPlanned { pit: place.1, due };
    let args = [("time", Arg::Text(&time))];
    done(context, place, None, key("act-feed-planned"), &args, fact)
}

/// What one of a unit weighs at a pit.
pub(super) fn weigh(
    context: &mut Context<'_>,
    pit: PitId,
    unit: FuelUnit,
    grams: i64,
) -> Result<Decision, Refused> {
    let grams = context.whole(grams, &ranges::UNIT_GRAMS)?;
    goes_with(context, pit, unit)?;
    let (what, weight) = (context.say().fuel(unit, 4), context.say().weight(grams));
    let args = [
        ("pit", Arg::Text(context.pit_name(pit)?)),
        ("what", Arg::Text(&what)),
        ("weight", Arg::Text(&weight)),
    ];
    let said = context.say().with("act-unit-weighed", &args);
    let fact = UnitWeighed { pit, unit, grams };
    Ok(Decision::one(None, context.now(), fact, said))
}

fn goes_with(context: &Context<'_>, pit: PitId, unit: FuelUnit) -> Result<(), Refused> {
    let kind = context.pit(pit)?.kind.value;
    if FuelUnit::of_pit(kind).contains(&unit) {
        return Ok(());
    }
    let (name, what) = (context.pit_name(pit)?, context.say().fuel(unit, 4));
    let args = [("pit", Arg::Text(name)), ("what", Arg::Text(&what))];
    Err(context.say().refuse("error-fuel-elsewhere", &args).into())
}

/// One entry at a pit in a cook; `args` of what is said, to which the pit is added.
fn done(
    context: &Context<'_>,
    (cook, pit): At,
    at: Option<i64>,
    said: &'static str,
    args: &[(&str, Arg<'_>)],
    fact: impl Into<Payload>,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let at = context.claimed(at)?;
    let mut all = vec![("pit", Arg::Text(context.pit_name(pit)?))];
    all.extend_from_slice(args);
    let said = context.say().with(said, &all);
    Ok(Decision::one(Some(cook), at, fact, said))
}
