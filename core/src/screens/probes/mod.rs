//! Probes: which are known, where they sit, what they said last, and how to find more. Start at [`probes()`].
//!
//! A sensor is known because a cook says where it sits, or because the shell keeps its instrument. Nothing is guessed: a
//! sensor that nobody placed counts for no pit and no meat.

mod cards;
mod notice;
mod places;
mod radio;
mod records;
mod sitting;

pub(super) use places::spots_of;
pub use records::*;

use super::glance::Glance;
use crate::{
    cook::Known,
    moment::Moment,
    probes::{Hearing, Reach},
    words::{Viewer, key},
};

/// The screen of probes, from what the shell knows of its radio.
pub fn probes(
    known: &Known<'_>,
    viewer: &Viewer,
    hearing: &Hearing,
    moment: &Moment,
) -> ProbesScreen {
    let glance = Glance::of(known, viewer, moment);
    let trouble = glance.radio_trouble(hearing);
    let nearby = glance.nearby(hearing);
    let silent_at = glance.sittings().map(|one| one.silent_at());
    ProbesScreen {
        title: glance.say.text("hearing-title"),
        lead: glance.say.text("hearing-lead"),
        look: glance.say.text(match hearing.looking {
            true => key("hearing-stop"),
            false => key("hearing-look"),
        }),
        probes: glance.cards(hearing),
        nearby_heading: glance.say.text("hearing-nearby"),
        nearby_none: (hearing.looking && nearby.is_empty())
            .then(|| glance.say.text("hearing-none-yet")),
        nearby,
        notice: glance.probes_notice(hearing, trouble.as_ref()),
        trouble,
        listen: known.open_cooks().next().is_some(),
        silent_at: silent_at.filter(|at| *at > moment.utc_ms).min(),
        until: glance.until(&[]),
    }
}

impl Glance<'_> {
    /// What was found and is not kept, those that say their name first.
    fn nearby(&self, hearing: &Hearing) -> Vec<NearbyProbe> {
        let found = hearing.sources.iter();
        let mut found: Vec<_> = found.filter(|one| one.reach == Reach::Nearby).collect();
        found.sort_by_key(|one| (one.name.is_empty(), &one.name, &one.source));
        found
            .into_iter()
            .map(|one| NearbyProbe {
                source: one.source.clone(),
                name: self.called(one),
                detail: one.source.clone(),
                keep: self.say.text("hearing-keep"),
            })
            .collect()
    }
}
