//! The fire of one pit: one tap logs what hands do, and what was logged says when to feed next. Start at [`fire`].
//!
//! Law: nothing here rings but a time that a person accepted; what is reckoned is called rough.

mod burning;
mod jobs;
mod next;
mod records;
mod smoke;
mod taps;

pub use next::FIRES_PAST;
pub use records::*;

use super::{Link, Place, glance::Glance};
use crate::{
    alarms,
    cook::{Cook, Known, Pit},
    ids::{CookId, PitId},
    moment::Moment,
    safety::Doing,
    words::{Arg, Viewer, key},
};

/// The fire of a pit; none where the cook or the pit is not known here.
pub fn fire(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    pit: PitId,
    moment: &Moment,
) -> Option<FireScreen> {
    let glance = Glance::of(known, viewer, moment);
    let (cook, pit) = (known.cooks.get(&cook)?, known.crew.pits.get(&pit)?);
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let next = glance.next_feed(cook, pit);
    let smoke = glance.smoke_of(cook, pit);
    let undo = glance.undo(cook);
    let shown = undo
        .iter()
        .map(|undo| undo.until)
        .filter(|until| *until > glance.now);
    let (say, name) = (glance.say, glance.pit(pit.id));
    Some(FireScreen {
        cook: cook.id,
        pit: pit.id,
        title: say.with("fire-title", &[("pit", Arg::Text(&name))]),
        state: glance.pit_line_of(pit.id),
        accept: glance.accept_feed(cook, pit, next.as_ref()),
        next: glance.fire_lines(cook, pit, next.as_ref()),
        rings: say.text("fire-never-rings"),
        feed: glance.feed_group(cook, pit),
        undo: undo.clone(),
        vents: glance.vent_groups(cook, pit),
        vents_title: say.text("fire-vents"),
        jobs_title: say.text("fire-jobs"),
        jobs: glance.fire_steps(cook, pit),
        smoke_title: say.text("fire-smoke"),
        smoke: smoke.lines,
        smoke_advice: smoke.advice,
        smoke_tell: say.text("fire-smoke-tell"),
        smoke_taps: glance.smoke_taps(cook, pit),
        weather_title: say.text("fire-weather"),
        weather_lead: say.text("fire-weather-lead"),
        weather: glance.weather_groups(cook),
        weigh: glance.weigh_slip(cook, pit),
        source: say.text("fire-source"),
        cautions: match glance.burns_charcoal(pit.id) {
            true => glance.cautions(Doing::LightingCharcoal),
            false => vec![],
        },
        links: glance.fire_links(cook, pit),
        until: shown.fold(glance.until(&dues), i64::min),
    })
}

impl Glance<'_> {
    fn fire_links(&self, cook: &Cook, pit: &Pit) -> Vec<Link> {
        let (cook, pit) = (cook.id, pit.id);
        self.links_to(&[
            (key("link-trouble"), Place::Trouble { cook, pit }),
            (key("link-pits"), Place::Pits { cook }),
            (key("link-now"), Place::Now { cook }),
        ])
    }
}
