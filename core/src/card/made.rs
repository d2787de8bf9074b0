//! A card of any cook, under way or past. Start at [`of_cook`].
//!
//! Law: [`read`](super::read()) passes it. Entries come from other devices too, so that what lies outside a range is left
//! away here and never handed on.

use super::{
    Card, CardDish, CardHeat, CardMeat, CardPit, CardServe, DISHES_MAX, MEATS_MAX, NOTES_MAX,
    PITS_MAX, VERSION, clean, fields::Place,
};
use crate::{
    acts::decide::{PEOPLE_RANGE, pit_heat, pull_at, rest_minutes},
    checks::cuts::Degrees,
    cook::{Cook, Crew, Dish, Piece},
    ids::{PieceId, PitId},
    log::{Stage, Stamp, Subject, Wrap},
    moment::MINUTE,
    words::{
        Locale, Viewer, Words,
        typed::{self, MEAT_GRAMS},
        zone::local,
    },
};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

/// The step that an observed rest is rounded to, minutes.
const REST_STEP_MIN: i64 = 5;

/// What goes on a card beside the plan.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CardAsk {
    /// Who writes it; blanks = nobody is named.
    pub by: String,
    /// Whether the notes of the cook go along. They are its crew's own words, so they do only when that is asked for.
    pub notes: bool,
}

/// The card of `cook`: the meats that came to it, whatever became of them since.
pub fn of_cook(say: &Words<'_>, cook: &Cook, crew: &Crew, ask: &CardAsk, now: i64) -> Card {
    let plain = Place::default();
    let came = cook.pieces.values().filter(|piece| piece.from.is_empty());
    let mut came: Vec<&Piece> = came.collect();
    came.sort_by_key(|piece| added(piece));
    came.truncate(MEATS_MAX);
    let pits = pits_of(crew, &came, now);
    let note = |text: &str| clean::note(say, &plain, text).ok();
    let notes = cook
        .notes
        .iter()
        .filter(|note| note.about == Subject::Cook(cook.id));
    Card {
        slowbend_card: VERSION,
        name: name(say, &cook.name.value).unwrap_or_else(|| say.text("card-some-cook")),
        by: clean::line(say, &plain, &ask.by).ok().flatten(),
        serve: serve(cook),
        people: cook
            .people
            .value
            .filter(|people| PEOPLE_RANGE.contains(people)),
        meats: came
            .iter()
            .map(|piece| meat(say, piece, &pits, now))
            .collect(),
        pits: pits
            .iter()
            .map(|id| pit(say, crew, *id, &came, now))
            .collect(),
        dishes: dishes(say, cook),
        notes: match ask.notes {
            true => notes
                .filter_map(|kept| note(&kept.text))
                .take(NOTES_MAX)
                .collect(),
            false => vec![],
        },
    }
}

fn dishes(say: &Words<'_>, cook: &Cook) -> Vec<CardDish> {
    let mut all: Vec<&Dish> = cook.dishes.values().collect();
    all.sort_by_key(|dish| (dish.name.stamp, dish.id));
    let named = all.into_iter().filter_map(|dish| {
        let name = name(say, &dish.name.value)?;
        Some(CardDish {
            name,
            hot: dish.hot,
        })
    });
    named.take(DISHES_MAX).collect()
}

/// When a meat was added: what nobody has set since still bears that stamp. Ids alone keep no order within one instant.
fn added(piece: &Piece) -> (Stamp, PieceId) {
    let fields = [
        piece.name.stamp,
        piece.form.stamp,
        piece.weight_g.stamp,
        piece.cadence.stamp,
        piece.pull_at.stamp,
    ];
    let first = fields.into_iter().min();
    (first.unwrap_or_default(), piece.id)
}

fn name(say: &Words<'_>, text: &str) -> Option<String> {
    typed::name(say, text).ok()
}

/// The time of day it is on the table, where it was said.
fn serve(cook: &Cook) -> Option<CardServe> {
    let serve = cook.serve.value.as_ref()?;
    let zone = serve.zone.parse().unwrap_or(Tz::UTC);
    let at = local(zone, serve.at).format("%H:%M").to_string();
    Some(CardServe::At(at))
}

/// The pits that the meats are on or meant for, each once, in the order of the meats.
fn pits_of(crew: &Crew, meats: &[&Piece], now: i64) -> Vec<PitId> {
    let mut pits: Vec<PitId> = vec![];
    for (id, _) in meats.iter().filter_map(|piece| piece.pit(now)) {
        if crew.pits.contains_key(&id) && !pits.contains(&id) && pits.len() < PITS_MAX {
            pits.push(id);
        }
    }
    pits
}

fn pit(say: &Words<'_>, crew: &Crew, id: PitId, meats: &[&Piece], now: i64) -> CardPit {
    let known = crew.pits.get(&id);
    let band = known.and_then(|pit| pit.band.value);
    let own = band.map(|band| Degrees {
        low: band.low,
        high: band.high,
    });
    let on_it = meats
        .iter()
        .filter(|piece| piece.pit(now).is_some_and(|(pit, _)| pit == id));
    let meant = on_it.filter_map(|piece| piece.meant?.pit).next();
    let held = own.or(meant).filter(|held| pit_heat(say, *held).is_ok());
    CardPit {
        name: known
            .and_then(|pit| name(say, &pit.name.value))
            .unwrap_or_else(|| say.text("card-some-pit")),
        kind: known.map_or(crate::log::PitKind::Kettle, |pit| pit.kind.value),
        held: held.map(|held| CardHeat {
            low_mk: held.low.0,
            high_mk: held.high.0,
        }),
    }
}

fn meat(say: &Words<'_>, piece: &Piece, pits: &[PitId], now: i64) -> CardMeat {
    let (cut, form) = (piece.cut, piece.form.value);
    let on = piece.pit(now).map(|(pit, _)| pit);
    let pit = on.and_then(|on| pits.iter().position(|pit| *pit == on));
    let cadence = piece.cadence.value;
    let pull = piece.pull_at.value;
    let meant = piece.meant.unwrap_or_default();
    let rest = rest(piece).or(meant.rest_min);
    CardMeat {
        name: own_name(say, piece),
        cut,
        form: (form != cut.form_unsaid()).then_some(form),
        weight_g: piece
            .weight_g
            .value
            .filter(|grams| MEAT_GRAMS.contains(grams)),
        cadence: cadence.check().is_ok().then_some(cadence.into()),
        pit: pit.and_then(|pit| i64::try_from(pit).ok()),
        pull_at_mk: pull
            .filter(|pull| pull_at(say, cut, form, Some(*pull)).is_ok())
            .map(|pull| pull.0),
        wrap: wrap(piece).or(meant.wrap),
        rest_min: rest.filter(|rest| rest_minutes(say, cut, form, Some(*rest)).is_ok()),
    }
}

/// Its name; none where it is called as its cut, so that the card says it in its reader's language.
fn own_name(say: &Words<'_>, piece: &Piece) -> Option<String> {
    let is_cut = |locale| {
        let viewer = Viewer {
            locale,
            ..say.viewer().clone()
        };
        Words::of(&viewer).text(piece.cut.key()) == piece.name.value
    };
    name(say, &piece.name.value).filter(|_| !Locale::ALL.into_iter().any(is_cut))
}

/// What it was wrapped in at last.
fn wrap(piece: &Piece) -> Option<Wrap> {
    let wraps = piece.stages.iter().filter_map(|passed| match passed.stage {
        Stage::Wrapped { wrap } => Some((passed.when.at, wrap)),
        _ => None,
    });
    wraps.max_by_key(|(at, _)| *at).map(|(_, wrap)| wrap)
}

/// How long it stood off the pit before it was cut, to the nearest five minutes.
fn rest(piece: &Piece) -> Option<i64> {
    let first = |is: fn(&Stage) -> bool| {
        let passed = piece.stages.iter().filter(|passed| is(&passed.stage));
        passed.map(|passed| passed.when.at).min()
    };
    let off = first(Stage::is_off)?;
    let cut = first(|stage| matches!(stage, Stage::CutUp))?;
    let minutes = (cut - off) / MINUTE;
    let stepped = (minutes + REST_STEP_MIN / 2) / REST_STEP_MIN * REST_STEP_MIN;
    (stepped > 0).then_some(stepped)
}
