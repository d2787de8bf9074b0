//! From a card to the act that begins a cook. Start at [`plan`].

use super::{Card, CardCadence, CardMeat};
use crate::{
    acts::{Act, NewDish, NewMeat, PlannedMeat},
    cadence::Cadence,
    checks::cuts::Degrees,
    ids::PitId,
    log::Serve,
    units::Mk,
    words::{Arg, Words},
};

/// What whoever starts says about a card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Begun {
    /// What the cook is called.
    pub name: String,
    /// When it is on the table.
    pub serve: Option<Serve>,
    /// How many eat.
    pub people: Option<i64>,
    /// For each meat of the card, in order: what it is now; none = it is left out.
    pub meats: Vec<Option<BegunMeat>>,
}

/// One meat, as whoever starts has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BegunMeat {
    /// Grams.
    pub weight_g: Option<i64>,
    /// The pit it will cook in.
    pub pit: Option<PitId>,
}

/// The act that begins a cook from `card`: its meats, what is meant for them, its dishes and its notes, all or nothing.
/// Who wrote the card is written down as a note.
pub fn plan(say: &Words<'_>, card: &Card, begun: &Begun) -> Act {
    let kept = card.meats.iter().zip(&begun.meats);
    let from = card.by.as_ref().map(|by| {
        let args = [("by", Arg::Text(by))];
        say.with("card-note-by", &args)
    });
    Act::StartPlanned {
        name: begun.name.clone(),
        serve: begun.serve.clone(),
        people: begun.people,
        meats: kept
            .filter_map(|(meat, begun)| Some(planned(card, meat, begun.as_ref()?)))
            .collect(),
        dishes: card
            .dishes
            .iter()
            .map(|dish| NewDish {
                name: dish.name.clone(),
                hot: dish.hot,
            })
            .collect(),
        notes: card.notes.iter().cloned().chain(from).collect(),
    }
}

fn planned(card: &Card, meat: &CardMeat, begun: &BegunMeat) -> PlannedMeat {
    let pit = meat.pit.and_then(|pit| usize::try_from(pit).ok());
    let held = pit.and_then(|pit| card.pits.get(pit)?.held.as_ref());
    PlannedMeat {
        meat: NewMeat {
            name: meat.name.clone().unwrap_or_default(),
            cut: meat.cut,
            form: meat.done(),
            weight_g: begun.weight_g,
            cadence: meat.cadence.map(Cadence::from),
            pit: begun.pit,
        },
        pull_at: meat.pull_at_mk.map(Mk),
        wrap: meat.wrap,
        rest_min: meat.rest_min,
        pit_heat: held.map(|held| Degrees {
            low: Mk(held.low_mk),
            high: Mk(held.high_mk),
        }),
    }
}

impl From<CardCadence> for Cadence {
    fn from(cadence: CardCadence) -> Self {
        match cadence {
            CardCadence::None => Self::None,
            CardCadence::Mop(every_min) => Self::Mop { every_min },
            CardCadence::Spritz(every_min) => Self::Spritz { every_min },
        }
    }
}

impl From<Cadence> for CardCadence {
    fn from(cadence: Cadence) -> Self {
        match cadence {
            Cadence::None => Self::None,
            Cadence::Mop { every_min } => Self::Mop(every_min),
            Cadence::Spritz { every_min } => Self::Spritz(every_min),
        }
    }
}
