//! Who is there: names of devices, sleep, the watch, and notices that were read.

use super::{Context, Decision};
use crate::{
    error::Refused,
    log::{DeviceNamed, Dismissed, Slept, WatchTaken, Woke},
    words::Arg,
};

/// Names this device.
pub(super) fn name_device(context: &mut Context<'_>, name: &str) -> Result<Decision, Refused> {
    let name = context.name(name)?;
    let said = context
        .say()
        .with("act-device-named", &[("name", Arg::Text(&name))]);
    Ok(Decision::one(
        None,
        context.now(),
        DeviceNamed { name },
        said,
    ))
}

/// A notice was read. Reading cannot be taken back.
pub(super) fn dismiss(context: &mut Context<'_>, notice: &str) -> Result<Decision, Refused> {
    let notice = context.label(notice)?;
    let said = context.say().text("act-dismissed");
    Ok(Decision::one(None, context.now(), Dismissed { notice }, said).for_good())
}

/// Sleep until then.
pub(super) fn sleep(context: &mut Context<'_>, until: i64) -> Result<Decision, Refused> {
    let until = context.sleep_end(until)?;
    let time = context.say().the_clock_day(until, context.now());
    let said = context
        .say()
        .with("act-slept", &[("time", Arg::Text(&time))]);
    Ok(Decision::one(None, context.now(), Slept { until }, said))
}

/// Be up. Harmless where nobody slept.
pub(super) fn wake_up(context: &mut Context<'_>) -> Result<Decision, Refused> {
    let said = context.say().text("act-woke");
    Ok(Decision::one(None, context.now(), Woke {}, said))
}

/// Answer what rings from now on.
pub(super) fn take_watch(context: &mut Context<'_>, note: &str) -> Result<Decision, Refused> {
    let note = context.line(note)?;
    let said = context.say().text("act-watch-taken");
    Ok(Decision::one(
        None,
        context.now(),
        WatchTaken { note },
        said,
    ))
}
