//! What sits where on each pit, how each pit stands, and how long it may be left. Start at [`pits`].

mod records;
mod spots;

pub use records::*;

use super::{Button, Caution, Line, Link, Place, Tone, Weight, buttons::button, glance::Glance};
use crate::{
    acts::{Act, MeatMove},
    alarms,
    cook::{Cook, Known, PitCare, Timed, ahead::counts},
    ids::{CookId, PitId},
    moment::Moment,
    safety::{CautionKind, Doing, cautions_at},
    words::{Arg, Viewer, key},
};
use std::collections::BTreeSet;

/// The pits of a cook; none where it is not known here.
pub fn pits(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<PitsScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let pits = glance.pits_of(cook);
    let charcoal = pits.iter().any(|pit| glance.burns_charcoal(*pit));
    let all = known.crew.pits.values();
    Some(PitsScreen {
        cook: cook.id,
        title: glance.say.text("pits-title"),
        pits: pits.iter().map(|pit| glance.pit_card(cook, *pit)).collect(),
        none: glance.say.text("pits-none"),
        choices: all.map(|pit| glance.pit_choice(pit)).collect(),
        labels: glance.pits_labels(),
        links: glance.links_to(&[
            (key("link-now"), Place::Now { cook: cook.id }),
            (key("link-settings"), Place::Settings),
        ]),
        cautions: glance.pits_cautions(cook, charcoal),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    /// What charcoal gives off; and where poultry that may be raw shares a pit with other food, that it never sits above.
    fn pits_cautions(&self, cook: &Cook, charcoal: bool) -> Vec<Caution> {
        let on = |poultry: bool| {
            let meats = cook.meats().filter(move |piece| {
                piece.is_on_pit(self.now) && piece.cut.is_poultry() == poultry
            });
            meats.filter_map(|piece| piece.pit(self.now).map(|(pit, _)| pit))
        };
        let others: BTreeSet<PitId> = on(false).collect();
        let shares = on(true).any(|pit| others.contains(&pit));
        let mut kinds = match shares {
            true => cautions_at(Doing::MovingPoultry),
            false => vec![],
        };
        if charcoal {
            kinds.extend(cautions_at(Doing::LightingCharcoal));
        }
        kinds.retain(|kind| *kind != CautionKind::LocalRulesFirst);
        if !kinds.is_empty() {
            kinds.push(CautionKind::LocalRulesFirst);
        }
        self.caution_texts(&kinds)
    }

    fn pit_card(&self, cook: &Cook, pit: PitId) -> PitCard {
        let meats = self.placed(pit);
        PitCard {
            pit,
            line: self.pit_line_of(pit),
            facts: self.pit_facts(pit),
            spots: self.spots_of(pit, &meats),
            buttons: match cook.is_open() {
                true => self.pit_buttons(cook.id, pit, &meats),
                false => vec![],
            },
            links: self.pit_links(cook, pit),
            meats,
        }
    }

    /// A pit in one line that leads to its troubles while it is not as it should be, and else to its fire.
    pub fn pit_line_to(&self, cook: &Cook, pit: PitId) -> Line {
        let line = self.pit_line_of(pit);
        let cook = cook.id;
        let link = match line.weight {
            Weight::Wake | Weight::Call => Place::Trouble { cook, pit },
            _ => Place::Fire { cook, pit },
        };
        Line {
            link: Some(link),
            ..line
        }
    }

    fn pit_facts(&self, pit: PitId) -> Vec<Line> {
        let last = |of: fn(&PitCare) -> &Vec<Timed>| {
            let cares = self
                .known
                .open_cooks()
                .filter_map(|cook| cook.pits.get(&pit));
            let times = cares.flat_map(|care| of(care).iter().map(|when| when.at));
            times.filter(|at| counts(*at, self.now)).max()
        };
        let mut all = vec![self.alone_fact(pit)];
        all.extend(self.pit_learned(pit));
        for (name, at) in [
            (key("pits-fed"), last(|care| &care.fed)),
            (key("pits-vent"), last(|care| &care.vents)),
            (key("pits-opened"), last(|care| &care.opened)),
            (key("pits-seen"), last(|care| &care.seen)),
        ] {
            all.extend(at.map(|at| Line {
                name: self.say.text(name),
                state: self.ago(at),
                detail: self.say.clock_day(at, self.now),
                weight: Weight::Calm,
                link: None,
            }));
        }
        all
    }

    fn alone_fact(&self, pit: PitId) -> Line {
        let line = self.alone(pit);
        Line {
            name: line.detail,
            detail: String::new(),
            ..line
        }
    }

    fn pit_buttons(&self, cook: CookId, pit: PitId, meats: &[PlacedMeat]) -> Vec<Button> {
        let mut all = vec![];
        all.extend(self.one_place_on(pit, meats));
        if !meats.is_empty() {
            let act = Act::Open {
                pit: Some(pit),
                wetted: vec![],
                turned: meats.iter().map(|meat| meat.piece).collect(),
                glazed: vec![],
                at: None,
            };
            all.push(self.plain("button-turn-all", act));
        }
        all.push(self.plain("button-fed", self.feed(cook, pit)));
        all.push(self.plain("button-vent", self.vent(cook, pit)));
        all.push(self.plain(
            "button-fire-seen",
            Act::SeeFire {
                cook,
                pit,
                at: None,
            },
        ));
        all
    }

    /// Each meat goes to the next spot, the last to the first; only where spots were said that differ.
    fn one_place_on(&self, pit: PitId, meats: &[PlacedMeat]) -> Option<Button> {
        let spots: BTreeSet<&str> = meats.iter().map(|meat| meat.spot.as_str()).collect();
        if spots.len() < 2 || spots.contains("") {
            return None;
        }
        let next = meats.iter().cycle().skip(1);
        let moves = meats.iter().zip(next).map(|(meat, next)| MeatMove {
            piece: meat.piece,
            pit,
            spot: next.spot.clone(),
        });
        let act = Act::MoveMeats {
            moves: moves.collect(),
            at: None,
        };
        Some(button(
            self.say.text("button-one-place-on"),
            act,
            Tone::Plain,
        ))
    }

    fn pit_links(&self, cook: &Cook, pit: PitId) -> Vec<Link> {
        let open = cook.is_open() && !self.on_pit(pit).is_empty();
        let mut all: Vec<Link> = open
            .then(|| self.opening_link(cook.id, pit))
            .into_iter()
            .collect();
        let name = self.pit(pit);
        all.push(Link {
            label: self.say.with("link-fire-of", &[("pit", Arg::Text(&name))]),
            place: Place::Fire { cook: cook.id, pit },
        });
        all.push(Link {
            label: self
                .say
                .with("link-trouble-of", &[("pit", Arg::Text(&name))]),
            place: Place::Trouble { cook: cook.id, pit },
        });
        all.extend(open.then(|| {
            Link {
                label: self
                    .say
                    .with("link-fire-out-of", &[("pit", Arg::Text(&name))]),
                place: Place::FireOut { cook: cook.id, pit },
            }
        }));
        all
    }

    fn pits_labels(&self) -> PitsLabels {
        PitsLabels {
            heading: self.say.text("pits-where"),
            lead: self.say.text("pits-where-lead"),
            pit: self.say.text("fact-pit"),
            spot: self.say.text("pits-spot"),
            submit: self.say.text("pits-submit"),
        }
    }
}
