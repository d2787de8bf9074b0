//! The temperature log of a cook: what was read, when, with what, by whom, and what was done about it. Start at [`temp_log`].
//!
//! Laws: every temperature that counts in the cook is on it, corrected by nothing; what was taken back is not. Of a probe the
//! coldest reading of each half hour stands for the rest, and the log says so.

mod csv;
mod records;
mod rows;

pub use records::*;

use super::{Place, glance::Glance};
use crate::{
    cook::Known,
    ids::{CookId, ThermometerId},
    log::Where,
    moment::Moment,
    units::Mk,
    words::{Arg, Viewer, key},
};

/// Of a probe one reading in so long stands in the log, milliseconds: half an hour. Common practice, no source.
pub const PROBE_EVERY_MS: i64 = 30 * crate::moment::MINUTE;

/// A reading of a probe for the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProbeRead {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// How hot.
    pub temp: Mk,
    /// Where the probe sat.
    pub place: Where,
    /// What it is called: its instrument and channel.
    pub series: (String, String),
    /// Which thermometer it is, if one that is known.
    pub thermometer: Option<ThermometerId>,
}

/// The log of a cook with what its probes read, of which so many stored runs could not be read; none where the cook is not known here.
pub fn temp_log(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    probes: &[ProbeRead],
    damaged: u32,
    moment: &Moment,
) -> Option<TempLogScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let rows = glance.log_rows(cook, probes);
    let say = &glance.say;
    let columns: Vec<String> = [
        "log-time",
        "log-item",
        "log-temperature",
        "log-thermometer",
        "log-who",
        "log-action",
    ]
    .map(|column| say.text(column))
    .into();
    let name = [("name", Arg::Text(&cook.name.value))];
    let day = say.day_heading(cook.started_at, glance.now);
    let public = known.crew.for_public.as_ref().is_some_and(|reg| reg.value);
    Some(TempLogScreen {
        cook: cook.id,
        title: say.with("log-title", &name),
        about: [
            say.with("log-day", &[("day", Arg::Text(&day))]),
            match public {
                true => say.text("log-rules-public"),
                false => say.text("log-rules-home"),
            },
            say.text("log-probes"),
            say.text("safety-defers"),
        ]
        .into_iter()
        .chain((damaged > 0).then(|| say.text("chart-damaged")))
        .collect(),
        none: match rows.is_empty() {
            true => say.text("log-none"),
            false => String::new(),
        },
        sign: vec![say.text("log-sign-kept"), say.text("log-sign-seen")],
        print: say.text("log-print"),
        download: say.text("log-download"),
        file_name: csv::file_name(&cook.name.value),
        csv: csv::text(&columns, &rows),
        columns,
        rows,
        links: glance.links_to(&[
            (key("link-timeline"), Place::Timeline { cook: cook.id }),
            (key("link-thermometers"), Place::Thermometers),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        until: glance.until(&[]),
    })
}
