//! Before you sleep: what the core knows of the night ahead. What the platform knows, such as its volume, the shell adds.

use super::{Line, NightScreen, Weight, glance::Glance, pitside::to_do};
use crate::{
    alarms::{Urgency, due},
    cook::Known,
    ids::PitId,
    moment::{MINUTE, Moment},
    words::Viewer,
};
use std::collections::BTreeSet;

/// The night of all cooks under way.
pub fn night(known: &Known<'_>, viewer: &Viewer, moment: &Moment) -> NightScreen {
    let glance = Glance::of(known, viewer, moment);
    let dues = due(known, moment.utc_ms);
    let pits: BTreeSet<PitId> = known
        .open_cooks()
        .flat_map(|cook| glance.pits_of(cook))
        .collect();
    let wakes = to_do(&dues, moment.utc_ms);
    let wakes = wakes.iter().filter(|due| due.urgency == Urgency::Wake);
    NightScreen {
        pits: pits.iter().map(|pit| glance.pit_line_of(*pit)).collect(),
        probes: glance
            .sittings()
            .map(|one| glance.sitting_line(&one))
            .collect(),
        wakes: wakes.map(|due| glance.due_line(due)).collect(),
        alone: pits.iter().map(|pit| glance.alone(*pit)).collect(),
        until: glance.until(&dues),
    }
}

impl Glance<'_> {
    /// How long a pit may be left, as its crew says.
    pub fn alone(&self, pit: PitId) -> Line {
        let known = self.known.crew.pits.get(&pit);
        let minutes = known.and_then(|pit| pit.alone_minutes.value).unwrap_or(0);
        let state = match minutes {
            1.. => self.say.duration(minutes.saturating_mul(MINUTE)),
            _ => self.say.text("night-not-alone"),
        };
        Line {
            name: self.pit(pit),
            state,
            detail: self.say.text("field-alone"),
            weight: Weight::Calm,
            link: None,
        }
    }
}
