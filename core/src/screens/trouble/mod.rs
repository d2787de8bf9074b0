//! When the fire is not as it should be: what to try first, for the kind of pit, with the cautions where the act happens.
//! Start at [`trouble`].
//!
//! The steps are common practice, no source, and the screen says so; the cautions name theirs. Law: every trouble says what
//! it means for the food, and ends by deferring to local rules.

mod records;
mod signs;
mod steps;

pub use records::*;

use super::Tone;
use super::{Button, Caution, Place, glance::Glance};
use crate::{
    acts::Act,
    alarms::{self, Due},
    cook::{Cook, Known},
    ids::{CookId, PitId},
    log::Job,
    moment::Moment,
    safety::{CautionKind, Doing, cautions_at},
    words::{Arg, Viewer, key},
};

/// What to try at a pit; none where the cook or the pit is not known here.
pub fn trouble(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    pit: PitId,
    moment: &Moment,
) -> Option<TroubleScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    known.crew.pits.get(&pit)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let shown = glance.signs(pit);
    let mut troubles: Vec<TroubleCard> = steps::ALL
        .iter()
        .map(|kind| glance.trouble_card(pit, *kind, shown.contains(kind)))
        .collect();
    troubles.sort_by_key(|card| !card.is_now);
    let name = glance.pit(pit);
    Some(TroubleScreen {
        cook: cook.id,
        pit,
        title: glance
            .say
            .with("trouble-title", &[("pit", Arg::Text(&name))]),
        state: glance.pit_line_of(pit),
        lead: match shown.is_empty() {
            true => glance.say.text("trouble-lead-none"),
            false => glance.say.text("trouble-lead-now"),
        },
        troubles,
        source: glance.say.text("trouble-source"),
        food: glance.say.text("trouble-food"),
        did: glance.say.text("trouble-did"),
        buttons: glance.trouble_buttons(cook, pit, &dues),
        links: glance.links_to(&[
            (key("link-fire-out"), Place::FireOut { cook: cook.id, pit }),
            (key("link-fire"), Place::Fire { cook: cook.id, pit }),
            (key("link-pits"), Place::Pits { cook: cook.id }),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    fn trouble_card(&self, pit: PitId, trouble: TroubleKind, is_now: bool) -> TroubleCard {
        TroubleCard {
            trouble,
            name: self.trouble_name(trouble),
            is_now,
            steps: self.trouble_steps(pit, trouble),
            cautions: self.trouble_cautions(pit, trouble),
            food: self.cautions(match trouble {
                TroubleKind::FlareUp => Doing::AfterFlareUp,
                TroubleKind::Hot => Doing::PitRunsHot,
                TroubleKind::Smoke => Doing::SmokeIsThick,
                _ => Doing::PitRunsCold,
            }),
        }
    }

    fn trouble_name(&self, trouble: TroubleKind) -> String {
        self.say.text(match trouble {
            TroubleKind::FlareUp => key("trouble-flare-up"),
            TroubleKind::Cold => key("trouble-cold"),
            TroubleKind::Hot => key("trouble-hot"),
            TroubleKind::Falling => key("trouble-falling"),
            TroubleKind::Silent => key("trouble-silent"),
            TroubleKind::Smoke => key("trouble-smoke"),
            TroubleKind::Rain => key("trouble-rain"),
        })
    }

    /// Fire first, then what burning charcoal gives off.
    fn trouble_cautions(&self, pit: PitId, trouble: TroubleKind) -> Vec<Caution> {
        let mut kinds = match trouble {
            TroubleKind::FlareUp | TroubleKind::Hot => cautions_at(Doing::FlareUp),
            _ => vec![],
        };
        if self.burns_charcoal(pit) {
            kinds.extend(cautions_at(Doing::LightingCharcoal));
        }
        kinds.retain(|kind| *kind != CautionKind::LocalRulesFirst);
        if !kinds.is_empty() {
            kinds.push(CautionKind::LocalRulesFirst);
        }
        self.caution_texts(&kinds)
    }

    fn trouble_buttons(&self, cook: &Cook, pit: PitId, dues: &[Due]) -> Vec<Button> {
        if !cook.is_open() {
            return vec![];
        }
        let cook = cook.id;
        let mut all = vec![
            self.plain("button-fed", self.feed(cook, pit)),
            self.plain("button-vent", self.vent(cook, pit)),
            self.plain(
                "button-fire-seen",
                Act::SeeFire {
                    cook,
                    pit,
                    at: None,
                },
            ),
        ];
        let rings = dues.iter().filter(|due| {
            due.at <= self.now && matches!(due.job, Job::Outside(of) | Job::Silent(of) if of == pit)
        });
        all.extend(rings.map(|due| self.answer("button-seen", due, Tone::Plain)));
        all
    }
}
