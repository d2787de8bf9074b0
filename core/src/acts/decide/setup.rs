//! Pits and thermometers of the crew.

use super::{Context, Decision, expected_in, ranges};
use crate::{
    checks::{Standing, Trust},
    error::Refused,
    ids::{PitId, ThermometerId},
    log::{Bath, PitAdded, PitKind, Subject, ThermometerAdded, ThermometerChecked},
    units::Mk,
    words::Arg,
};

/// A thermometer further off than this is not believed to stand in its bath: 15 K (27 °F). Common practice, no source.
const OFF_MAX_MK: i64 = 15_000;
/// Nearer than this it is called right: half a degree Fahrenheit, which is less than hand thermometers show.
const RIGHT_MK: i64 = 278;

/// Makes a pit known.
pub(super) fn add_pit(
    context: &mut Context<'_>,
    name: &str,
    kind: PitKind,
    grate_cm2: Option<i64>,
    alone_minutes: Option<i64>,
) -> Result<Decision, Refused> {
    let name = context.name(name)?;
    let said = added(context, &name);
    let fact = PitAdded {
        name,
        kind,
        grate_cm2: context.maybe(grate_cm2, &ranges::GRATE_CM2)?,
        alone_minutes: context.maybe(alone_minutes, &ranges::ALONE_MINUTES)?,
        pit: PitId(context.new_id()),
    };
    let made = vec![Subject::Pit(fact.pit)];
    Ok(Decision::one(None, context.now(), fact, said).making(made))
}

/// Makes a thermometer known.
pub(super) fn add_thermometer(context: &mut Context<'_>, name: &str) -> Result<Decision, Refused> {
    let name = context.name(name)?;
    let said = added(context, &name);
    let thermometer = ThermometerId(context.new_id());
    let fact = ThermometerAdded { thermometer, name };
    let made = vec![Subject::Thermometer(thermometer)];
    Ok(Decision::one(None, context.now(), fact, said).making(made))
}

fn added(context: &Context<'_>, name: &str) -> String {
    context
        .say()
        .with("act-added", &[("name", Arg::Text(name))])
}

/// Records how far a thermometer is off.
pub(super) fn check_thermometer(
    context: &mut Context<'_>,
    id: ThermometerId,
    against: Bath,
    read: Mk,
) -> Result<Decision, Refused> {
    let name = &context.thermometer(id)?.name.value;
    if let Bath::Boiling { altitude_m } = against {
        context.whole(altitude_m, &ranges::ALTITUDE_M)?;
    }
    let expected = expected_in(against);
    let off = Mk(read.0.saturating_sub(expected.0));
    if off.0.unsigned_abs() > OFF_MAX_MK.unsigned_abs() {
        return Err(not_in_its_bath(context, against, read));
    }
    let said = judged(context, name, off);
    let fact = ThermometerChecked {
        thermometer: id,
        against,
        expected,
        read,
    };
    Ok(Decision::one(None, context.now(), fact, said))
}

fn not_in_its_bath(context: &Context<'_>, against: Bath, read: Mk) -> Refused {
    let say = context.say();
    let (read, right) = (say.temperature(read), say.temperature(expected_in(against)));
    let args = [("read", Arg::Text(&read)), ("right", Arg::Text(&right))];
    match against {
        Bath::Ice => say.refuse("error-not-ice", &args).into(),
        Bath::Boiling { .. } => say.refuse("error-not-boiling", &args).into(),
    }
}

/// How far off it is, and what is made of its readings from now on.
fn judged(context: &Context<'_>, name: &str, off: Mk) -> String {
    let said = how_far(context, name, off);
    let standing = Standing::Checked {
        off_mk: off.0,
        at: context.now(),
    };
    let then = match standing.trust(Mk(0)) {
        Trust::Counts(_) => return said,
        Trust::Corrected(_) => context.say().text("act-thermometer-corrected"),
        Trust::TooFarOff => context.say().text("act-thermometer-too-far"),
    };
    format!("{said} {then}")
}

fn how_far(context: &Context<'_>, name: &str, off: Mk) -> String {
    let say = context.say();
    let size = say.temperature_difference(Mk(off.0.abs()));
    let args = [("name", Arg::Text(name)), ("off", Arg::Text(&size))];
    match off.0 {
        milli if milli.abs() <= RIGHT_MK => {
            say.with("act-thermometer-right", &[("name", Arg::Text(name))])
        }
        0.. => say.with("act-thermometer-high", &args),
        _ => say.with("act-thermometer-low", &args),
    }
}
