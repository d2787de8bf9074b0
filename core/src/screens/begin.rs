//! Beginning a cook from a card: all of it is filled in, and what differs this time is changed. Start at [`begin`].

use super::{Caution, Line, PitChoice, glance::Glance};
use crate::{
    card::{Card, CardPit, CardRead, CardServe},
    cook::{Known, Pit},
    ids::PitId,
    log::PitKind,
    moment::{HOUR, MINUTE, Moment},
    safety::Doing,
    words::{
        Arg, Viewer,
        typed::{Seek, time_field},
    },
};
use serde::{Deserialize, Serialize};

/// How far off the serving time that is offered lies at least: a day's slow cook. Common practice, no source.
const AHEAD: i64 = 5 * HOUR;

/// The form that begins a cook from a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BeginScreen {
    /// Heading.
    pub title: String,
    /// What the card is from, and what to change.
    pub lead: String,
    /// Who wrote the card, if somebody is named.
    pub by: Option<String>,
    /// What was left out of the card, or taken out of it.
    pub told: Vec<String>,
    /// The card, to be handed back with the form.
    pub card: String,
    /// What the cook is called.
    pub name: String,
    /// When it is on the table, as it may be typed.
    pub serve: String,
    /// How many eat, as it may be typed.
    pub people: String,
    /// The meats.
    pub meats: Vec<BeginMeat>,
    /// The pits that are known here.
    pub pits: Vec<PitChoice>,
    /// The pits of the card that are not known here, to be added if they are chosen.
    pub new_pits: Vec<NewPit>,
    /// What is not meat.
    pub dishes: Vec<Line>,
    /// What is to be remembered.
    pub notes: Vec<String>,
    /// Cautions.
    pub cautions: Vec<Caution>,
    /// The labels of the form.
    pub labels: BeginLabels,
    /// Until when this is true.
    pub until: i64,
}

/// The labels of the form that begins a cook from a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BeginLabels {
    /// Label of the name.
    pub name: String,
    /// Label of the serving time.
    pub serve: String,
    /// How it is typed.
    pub serve_how: String,
    /// Label of how many eat.
    pub people: String,
    /// Heading of the meats.
    pub meats: String,
    /// Label of a meat's weight, with the unit.
    pub weight: String,
    /// Label of the pit.
    pub pit: String,
    /// Label of the switch that leaves a meat out.
    pub left_out: String,
    /// Heading of the dishes.
    pub dishes: String,
    /// Heading of the notes.
    pub notes: String,
    /// The button.
    pub start: String,
}

/// A meat of a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BeginMeat {
    /// What it is called.
    pub name: String,
    /// What it is, and what is meant for it.
    pub detail: String,
    /// Its weight as it may be typed; empty where it is asked anew.
    pub weight: String,
    /// The pit that fits, of those that are known here.
    pub pit: Option<PitId>,
    /// Else the new pit that was meant: `NewPit::place`.
    pub new_pit: Option<u32>,
}

/// A pit of a card that is not known here.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct NewPit {
    /// Which of the card's pits it is, counted from 0.
    pub place: u32,
    /// What it is called.
    pub name: String,
    /// What it is.
    pub kind: PitKind,
    /// The same in words.
    pub detail: String,
    /// How it is offered: that it is new here.
    pub label: String,
}

/// The form for a card. `anew`: the cook is one of one's own, begun once more.
pub fn begin(
    known: &Known<'_>,
    viewer: &Viewer,
    read: &CardRead,
    anew: bool,
    moment: &Moment,
) -> BeginScreen {
    let glance = Glance::of(known, viewer, moment);
    let card = &read.card;
    BeginScreen {
        title: match anew {
            true => glance.say.text("begin-title-anew"),
            false => glance.say.text("begin-title-card"),
        },
        lead: match anew {
            true => glance.say.text("begin-lead-anew"),
            false => glance.say.text("card-wish"),
        },
        by: glance.card_by(card),
        told: read.told.clone(),
        card: card.compact(),
        name: card.name.clone(),
        serve: glance.serve_to_type(card.serve.as_ref()),
        people: card
            .people
            .map_or(String::new(), |people| people.to_string()),
        meats: glance.begin_meats(card),
        pits: known
            .crew
            .pits
            .values()
            .map(|pit| PitChoice {
                pit: pit.id,
                name: pit.name.value.clone(),
                detail: glance.pit_kind(pit.kind.value),
            })
            .collect(),
        new_pits: (0..)
            .zip(&card.pits)
            .filter(|(_, pit)| glance.fitting(pit).is_none())
            .map(|(place, pit)| NewPit {
                place,
                name: pit.name.clone(),
                kind: pit.kind,
                detail: glance.pit_kind(pit.kind),
                label: glance.new_pit(pit),
            })
            .collect(),
        dishes: glance.card_dishes(&card.dishes),
        notes: card.notes.clone(),
        cautions: glance.cautions(Doing::Preparing),
        labels: glance.begin_labels(),
        until: glance.until(&[]),
    }
}

impl Glance<'_> {
    fn begin_labels(&self) -> BeginLabels {
        let form = self.start_form();
        BeginLabels {
            name: form.name,
            serve: form.serve,
            serve_how: self.say.text("begin-serve-how"),
            people: form.people,
            meats: form.meats,
            weight: form.weight,
            pit: form.pit,
            left_out: self.say.text("begin-left-out"),
            dishes: self.say.text("card-dishes"),
            notes: self.say.text("card-notes"),
            start: self.say.text("begin-start"),
        }
    }

    fn new_pit(&self, pit: &CardPit) -> String {
        let kind = self.pit_kind(pit.kind);
        let args = [("name", Arg::Text(&pit.name)), ("kind", Arg::Text(&kind))];
        self.say.with("begin-add-pit", &args)
    }

    /// The pit here that stands for one of a card: of the same kind, and of the same name where there are several.
    fn fitting(&self, wished: &CardPit) -> Option<&Pit> {
        let same = || {
            let pits = self.known.crew.pits.values();
            pits.filter(|pit| pit.kind.value == wished.kind)
        };
        let named = same().find(|pit| pit.name.value == wished.name);
        named.or_else(|| same().next())
    }

    /// The next time of that hour that leaves time for a slow cook.
    fn serve_to_type(&self, serve: Option<&CardServe>) -> String {
        let at = serve.and_then(|serve| match serve {
            CardServe::At(at) => time_field(&self.say, at, self.now + AHEAD, Seek::Next).ok(),
            CardServe::AfterMin(minutes) => Some(self.this_minute() + minutes * MINUTE),
        });
        at.map_or(String::new(), |at| self.say.clock_day(at, self.now))
    }

    fn begin_meats(&self, card: &Card) -> Vec<BeginMeat> {
        let lines = self.card_meats(card);
        let each = card.meats.iter().zip(lines);
        each.map(|(meat, line)| {
            let place = meat.pit.and_then(|pit| u32::try_from(pit).ok());
            let wished = place.and_then(|place| card.pits.get(place as usize));
            let fits = wished.and_then(|wished| self.fitting(wished));
            let detail = [line.state, line.detail];
            let detail: Vec<&str> = detail
                .iter()
                .map(String::as_str)
                .filter(|part| !part.is_empty())
                .collect();
            BeginMeat {
                name: line.name,
                detail: detail.join(" · "),
                weight: meat
                    .weight_g
                    .map_or(String::new(), |grams| self.say.weight(grams)),
                pit: fits.map(|pit| pit.id),
                new_pit: place.filter(|_| wished.is_some() && fits.is_none()),
            }
        })
        .collect()
    }
}
