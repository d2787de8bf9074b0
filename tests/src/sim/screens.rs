//! All screens of a device, from its door and from a cold fold: the two must not differ, and no two devices may.

use super::{
    Told,
    device::Device,
    picture::{Picture, cook_of},
};
use serde_json::{Value, to_value};
use slowbend_core::{
    cook::{Cook, Known},
    ids::{CookId, PieceId, PitId},
    log::Entry,
    moment::Moment,
    screens::{self, StartInput},
    store::CookLine,
    words::Viewer,
};
use std::collections::BTreeMap;

/// How long a page is, in the door.
const PAGE: usize = 50;

/// Which screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Screen {
    /// The first one.
    Start,
    /// Of the propped phone.
    Now(CookId),
    /// Of one meat.
    Piece(PieceId),
    /// Of trying one meat.
    Check(PieceId),
    /// Of what happened.
    Timeline(CookId),
    /// Of pits, thermometers and habits.
    Settings,
    /// Of one opening.
    Opening(CookId, PitId),
    /// Of a fire.
    Fire(CookId, PitId),
    /// Of what to try at a pit.
    Trouble(CookId, PitId),
    /// Of what to do with the food of a pit whose fire went out.
    FireOut(CookId, PitId),
    /// Of what sits where.
    Pits(CookId),
    /// Of what is not meat.
    Dishes(CookId),
    /// Of the kitchen.
    Kitchen(CookId),
    /// Of its sheet.
    Sheet(CookId),
    /// Of the watch.
    Watch(CookId),
    /// Of the run sheet.
    RunSheet(CookId),
}

/// A screen as JSON; null where there is none.
pub type Shown = BTreeMap<Screen, Value>;

/// Which screens there are.
pub fn all(picture: &Picture) -> Vec<Screen> {
    let of_cook = |cook: &Cook| {
        let pieces = cook
            .pieces
            .keys()
            .flat_map(|id| [Screen::Piece(*id), Screen::Check(*id)]);
        let pits = picture.crew.pits.keys().flat_map(|pit| {
            [
                Screen::Opening(cook.id, *pit),
                Screen::Fire(cook.id, *pit),
                Screen::Trouble(cook.id, *pit),
                Screen::FireOut(cook.id, *pit),
            ]
        });
        [
            Screen::Now(cook.id),
            Screen::Timeline(cook.id),
            Screen::Pits(cook.id),
            Screen::Dishes(cook.id),
            Screen::Kitchen(cook.id),
            Screen::Sheet(cook.id),
            Screen::Watch(cook.id),
            Screen::RunSheet(cook.id),
        ]
        .into_iter()
        .chain(pieces)
        .chain(pits)
        .collect::<Vec<_>>()
    };
    let cooks = picture.cooks.values().flat_map(of_cook);
    [Screen::Start, Screen::Settings]
        .into_iter()
        .chain(cooks)
        .collect()
}

/// One screen as the door of `device` shows it.
///
/// # Errors
/// What the door said.
pub fn warm(
    device: &mut Device,
    screen: Screen,
    viewer: &Viewer,
    moment: &Moment,
    true_ms: i64,
) -> Told<Value> {
    let door = device.door(true_ms)?;
    let shown = match screen {
        Screen::Start => door.start(viewer, None, moment).map(json),
        Screen::Now(cook) => door.pitside(viewer, cook, moment).map(json),
        Screen::Piece(piece) => door.piece(viewer, piece, moment).map(json),
        Screen::Check(piece) => door.check(viewer, piece, moment).map(json),
        Screen::Timeline(cook) => door.timeline(viewer, cook, None, moment).map(json),
        Screen::Settings => door.settings(viewer, moment).map(json),
        Screen::Opening(cook, pit) => door.opening(viewer, cook, pit, moment).map(json),
        Screen::Fire(cook, pit) => door.fire(viewer, cook, pit, moment).map(json),
        Screen::Trouble(cook, pit) => door.trouble(viewer, cook, pit, moment).map(json),
        Screen::FireOut(cook, pit) => door.fire_out(viewer, cook, pit, moment).map(json),
        Screen::Pits(cook) => door.pits(viewer, cook, moment).map(json),
        Screen::Dishes(cook) => door.dishes(viewer, cook, moment).map(json),
        Screen::Kitchen(cook) => door.kitchen(viewer, cook, moment).map(json),
        Screen::Sheet(cook) => door.kitchen_sheet(viewer, cook, moment).map(json),
        Screen::Watch(cook) => door.watch(viewer, cook, moment).map(json),
        Screen::RunSheet(cook) => door.run_sheet(viewer, cook, moment).map(json),
    };
    shown.map_err(|trouble| format!("law 3: {screen:?} met {trouble:?}"))
}

/// The same out of a cold fold.
pub fn cold(
    known: &Known<'_>,
    entries: &[Entry],
    screen: Screen,
    viewer: &Viewer,
    moment: &Moment,
) -> Value {
    match screen {
        Screen::Start => json(screens::start(known, viewer, &past(known), moment)),
        Screen::Now(cook) => json(screens::pitside(known, viewer, cook, moment)),
        Screen::Piece(piece) => json(screens::piece(known, viewer, piece, moment)),
        Screen::Check(piece) => json(screens::check(known, viewer, piece, moment)),
        Screen::Timeline(cook) => {
            let mut of_cook: Vec<Entry> = entries
                .iter()
                .filter(|entry| cook_of(entry) == Some(cook))
                .cloned()
                .collect();
            of_cook.reverse();
            json(screens::timeline(
                known, viewer, cook, &of_cook, None, PAGE, moment,
            ))
        }
        Screen::Settings => json(screens::settings(known, viewer, moment)),
        Screen::Opening(cook, pit) => json(screens::opening(known, viewer, cook, pit, moment)),
        Screen::Fire(cook, pit) => json(screens::fire(known, viewer, cook, pit, moment)),
        Screen::Trouble(cook, pit) => json(screens::trouble(known, viewer, cook, pit, moment)),
        Screen::FireOut(cook, pit) => {
            json(screens::fire_out_screen(known, viewer, cook, pit, moment))
        }
        Screen::Pits(cook) => json(screens::pits(known, viewer, cook, moment)),
        Screen::Dishes(cook) => json(screens::dishes(known, viewer, cook, moment)),
        Screen::Kitchen(cook) => {
            let of = known.cooks.get(&cook);
            let last = of.map(|of| screens::last_time(known.cooks.values(), of));
            let last = last.unwrap_or_default();
            json(screens::kitchen(known, viewer, cook, &last, moment))
        }
        Screen::Sheet(cook) => json(screens::kitchen_sheet(known, viewer, cook, moment)),
        Screen::Watch(cook) => json(screens::watch(known, viewer, cook, moment)),
        Screen::RunSheet(cook) => json(screens::run_sheet(known, viewer, cook, moment)),
    }
}

fn past(known: &Known<'_>) -> StartInput {
    let line = |cook: &Cook| CookLine {
        cook: cook.id,
        name: cook.name.value.clone(),
        started: cook.started_at,
        finished: cook.finished.map(|when| when.at),
        demo: cook.demo,
    };
    let mut past: Vec<CookLine> = known
        .cooks
        .values()
        .filter(|cook| !cook.is_open())
        .map(line)
        .collect();
    past.sort_by_key(|line| (std::cmp::Reverse(line.started), line.cook));
    StartInput {
        past,
        past_next: None,
    }
}

fn json(screen: impl serde::Serialize) -> Value {
    to_value(screen).expect("screens are plain records, which JSON always takes")
}

/// A screen without what happened to the device that shows it: moved clocks, set-aside files.
pub fn without_notices(mut screen: Value) -> Value {
    if let Value::Object(fields) = &mut screen {
        fields.remove("notices");
    }
    screen
}

/// Every act that a button of the screen stands for.
pub fn offered(screen: &Value, into: &mut Vec<slowbend_core::acts::Act>) {
    match screen {
        Value::Object(fields) => {
            let act = fields
                .get("act")
                .cloned()
                .and_then(|act| serde_json::from_value(act).ok());
            into.extend(act);
            fields.values().for_each(|value| offered(value, into));
        }
        Value::Array(values) => values.iter().for_each(|value| offered(value, into)),
        _ => {}
    }
}
