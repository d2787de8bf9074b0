//! What goes on while nobody taps: the slow part of core's work, the demo's readings, and word to open pages when an
//! alarm comes due. Sleeps until the next of them; when no cook is under way it sleeps for an hour.

use crate::{demo, home::Home};
use slowbend_core::{
    door::Slowbend,
    error::Trouble,
    moment::{HOUR, Moment, SECOND},
    words::Viewer,
};
use std::{sync::Arc, time::Duration};
use tokio::{sync::broadcast::error::RecvError, time::Instant};

/// How many steps of work are done before somebody else may use the door, and before what comes due is looked at again: one
/// step of a forecast takes some milliseconds.
const STEPS: u32 = 2;
/// How often the demo's probes are read.
const DEMO_EVERY: i64 = 30 * SECOND;
/// Forecasts are made so long after their instant, so that what was read up to it has come in. Common practice, no source.
const READ_MS: i64 = 10 * SECOND;
/// What comes sooner is waited for this long: no tight loop, whatever a list says.
const AT_LEAST: i64 = SECOND;

/// Watches until the program ends.
pub async fn watch(home: Arc<Home>) {
    let mut changes = home.changes();
    let mut closing = home.closing();
    let mut due = Instant::now() + Duration::from_hours(1);
    loop {
        let turn = turn(&home).await.unwrap_or_else(|trouble| {
            eprintln!("{trouble}");
            Turn::after_trouble()
        });
        let now = Instant::now();
        let next = now + turn.wait;
        due = match due <= now {
            true => {
                home.changed();
                next
            }
            // However long the slow work takes, what was due stays due.
            false => due.min(next),
        };
        tokio::select! {
            () = tokio::time::sleep_until(if turn.more { now } else { due }) => (),
            heard = changes.recv() => if heard == Err(RecvError::Closed) { return },
            _ = closing.wait_for(|closing| *closing) => return,
        }
        // Our own word is not news to us.
        while changes.try_recv().is_ok() {}
    }
}

/// What a turn found.
struct Turn {
    /// How long until something comes due.
    wait: Duration,
    /// Whether there is more slow work to do.
    more: bool,
}

impl Turn {
    const fn after_trouble() -> Self {
        Self {
            wait: Duration::from_mins(1),
            more: false,
        }
    }
}

/// Does some of the slow work and what is due, and says how long to wait.
async fn turn(home: &Arc<Home>) -> Result<Turn, Trouble> {
    let (here, device) = (Arc::clone(home), home.device);
    let more = work(home).await?;
    home.ask(move |door, moment| {
        let demo = match &here.invented {
            Some(it) => demo::go_on(door, it, moment)?,
            None => false,
        };
        let next = next_ring(door, &Viewer::default_for(device), moment)?;
        let next = next.min(next_forecast(door, moment));
        let wait = if demo { next.min(DEMO_EVERY) } else { next };
        let wait = Duration::from_millis(wait.clamp(AT_LEAST, HOUR).unsigned_abs());
        Ok(Turn { wait, more })
    })
    .await
}

/// Does some of the slow work; answers whether there is more. Open pages hear of a forecast that was finished.
async fn work(home: &Arc<Home>) -> Result<bool, Trouble> {
    let step = |door: &mut Slowbend, moment: &Moment| {
        let before = door.forecasts_finished();
        let more = door.work(moment, STEPS)?;
        Ok((more, door.forecasts_finished() > before))
    };
    let (more, finished) = home.ask(step).await?;
    if finished {
        home.changed();
    }
    Ok(more)
}

/// How long until forecasts are made again, milliseconds.
fn next_forecast(door: &Slowbend, moment: &Moment) -> i64 {
    let next = door.works_next(moment);
    next.map_or(HOUR, |at| at - moment.utc_ms + READ_MS)
}

fn next_ring(door: &mut Slowbend, viewer: &Viewer, moment: &Moment) -> Result<i64, Trouble> {
    let list = door.alarms(viewer, moment, crate::home::ALARMS)?;
    let ahead = list
        .alarms
        .iter()
        .map(|alarm| alarm.at)
        .filter(|at| *at > moment.utc_ms);
    let next = ahead
        .chain(list.complete_until)
        .filter(|at| *at > moment.utc_ms)
        .min();
    Ok(next.map_or(HOUR, |at| at - moment.utc_ms))
}
