//! The pages. Start at [`Page`], which is an address, and [`show`], which answers it.
//!
//! Core makes the screens; here they become HTML and nothing is decided.

mod ahead;
mod begin;
mod card;
mod chart;
mod check;
mod cuts;
mod dishes;
mod file;
mod fire;
mod fire_out;
mod kitchen;
mod kitchen_form;
mod kitchen_sheet;
mod layout;
mod meat;
mod meat_forms;
mod now;
mod opening;
mod page;
mod parts;
mod phones;
mod pits;
mod plan;
mod readings;
mod settings;
mod sheet;
mod sheet_run;
mod slip;
mod start;
mod taking;
mod temp_log;
mod thermometers;
mod timeline;
mod trouble;
mod wall;
mod watch;
mod write;

pub use cuts::found;
pub use layout::plain;
pub use page::Page;
pub use sheet::Sheet;
pub use taking::taken;

use crate::{home::Home, typed::Typed, viewer::Reader, words::words};
use axum::{
    extract::{Query, State},
    http::{StatusCode, Uri, header},
    response::{IntoResponse, Response},
};
use maud::Markup;
use serde::Deserialize;
use slowbend_core::{
    card::CardAsk,
    door::Slowbend,
    error::Trouble,
    moment::Moment,
    screens::{Line, Place, PlanTyped},
    words::{Viewer, Words},
};
use std::sync::Arc;

/// What an address may carry beside its path.
#[derive(Clone, Debug, Default, Deserialize)]
pub struct Asked {
    /// The number of what was just done.
    pub told: Option<u64>,
    /// The cursor of a list's page.
    pub before: Option<i64>,
    /// What is sought.
    pub find: Option<String>,
    /// Who wrote a card.
    #[serde(default)]
    pub by: String,
    /// Whether a card carries the notes of its cook.
    pub notes: Option<String>,
    /// How many hours of readings are shown; none = all.
    pub hours: Option<u32>,
    /// The students of a class with their serving times, one a line.
    #[serde(default)]
    pub students: String,
    /// Whether a plan is asked for.
    pub go: Option<String>,
    /// How many minutes later the guests come.
    pub later: Option<i64>,
    /// Pairs of hands.
    #[serde(default)]
    pub hands: String,
    /// Asleep from.
    #[serde(default)]
    pub sleep_from: String,
    /// Asleep to.
    #[serde(default)]
    pub sleep_to: String,
    /// Somebody has the watch at night.
    pub watched: Option<String>,
    /// There is a cooler.
    pub cooler: Option<String>,
    /// There is an oven.
    pub oven: Option<String>,
    /// Minutes late at the most.
    #[serde(default)]
    pub late: String,
}

impl Asked {
    /// What is asked for beside the plan of a card.
    pub fn card(&self) -> CardAsk {
        CardAsk {
            by: self.by.clone(),
            notes: self.notes.is_some(),
        }
    }

    /// What is said for a plan.
    fn plan(&self) -> PlanTyped {
        PlanTyped {
            go: self.go.is_some(),
            later_min: self.later.unwrap_or(0),
            hands: self.hands.clone(),
            sleep_from: self.sleep_from.clone(),
            sleep_to: self.sleep_to.clone(),
            watched: self.watched.is_some(),
            cooler: self.cooler.is_some(),
            oven: self.oven.is_some(),
            late: self.late.clone(),
        }
    }
}

/// What a page shows beside its screen.
#[derive(Clone, Debug, Default)]
pub struct Beside {
    /// What was just done.
    pub told: Option<String>,
    /// Why a form was not taken.
    pub refused: Option<String>,
    /// The field it was not taken for, where it is one.
    pub blamed: Option<String>,
    /// What was typed in that form.
    pub typed: Typed,
    /// The cursor of a list's page.
    pub before: Option<i64>,
    /// What is asked for beside the plan of a card.
    pub card: CardAsk,
    /// What is sought.
    pub find: String,
    /// How many hours of readings are shown.
    pub hours: Option<u32>,
    /// The students of a class with their serving times.
    pub students: String,
    /// What is said for a plan.
    pub plan: PlanTyped,
}

/// Answers an address.
pub async fn show(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Query(asked): Query<Asked>,
    uri: Uri,
) -> Response {
    let Some(page) = Page::at(uri.path()) else {
        let missing = words(reader.viewer.locale).no_page;
        return answer(StatusCode::NOT_FOUND, plain(&reader, missing));
    };
    let plan = asked.plan();
    let beside = Beside {
        told: asked.told.and_then(|number| home.told.said(number)),
        before: asked.before,
        card: asked.card(),
        find: asked.find.unwrap_or_default(),
        hours: asked.hours,
        plan,
        students: asked.students,
        ..Beside::default()
    };
    match render(&home, &reader, page, beside).await {
        Ok(markup) => answer(StatusCode::OK, markup),
        Err(trouble) => troubled(&reader, &trouble, StatusCode::NOT_FOUND),
    }
}

/// The page as it is now.
///
/// # Errors
/// What the door answers; for a cook or meat that is not there, a refusal.
pub async fn render(
    home: &Arc<Home>,
    reader: &Reader,
    page: Page,
    beside: Beside,
) -> Result<Markup, Trouble> {
    let reader = crate::demo::reader_of(home, reader);
    let demo = home.sees_demo();
    let lan = home.lan.get().cloned();
    let taking = match page {
        Page::Taking(_, number) => home.takings.of(number),
        _ => None,
    };
    home.ask(move |door, moment| {
        let sheet = Sheet::new(&reader, page, &beside, moment.utc_ms, demo);
        let viewer = &reader.viewer;
        let alarms = door.alarms(viewer, moment, crate::home::ALARMS)?;
        let (head, main) = match page {
            Page::Start => start::page(&sheet, &door.start(viewer, beside.before, moment)?),
            Page::Now(cook) => {
                let screen = door.pitside(viewer, cook, moment)?;
                let links = screen.meats.iter().filter_map(|line| line.link);
                let poultry = poultry(door, viewer, links, moment)?;
                now::page(&sheet, &screen, &poultry)
            }
            Page::Timeline(cook) => {
                timeline::page(&sheet, &door.timeline(viewer, cook, beside.before, moment)?)
            }
            Page::Write(cook) => write::page(&sheet, &door.write_down(viewer, cook, moment)?),
            Page::Meat(piece) => {
                let screen = door.piece(viewer, piece, moment)?;
                let chart = ahead::chart_of(door, viewer, &screen, moment)?;
                meat::page(&sheet, &screen, chart.as_ref())
            }
            Page::Cuts => cuts::all(&door.cuts(viewer, &beside.find, moment)),
            Page::Cut(cut) => cuts::one(&door.cut(viewer, cut, moment)),
            Page::Check(piece) => check::page(&sheet, &door.check(viewer, piece, moment)?),
            Page::Card(cook) => card::page(&sheet, &door.card(viewer, cook, &beside.card, moment)?),
            Page::Again(cook) => match beside.typed.given("card") {
                Some(card) => begin::page(&sheet, &door.read_card(viewer, card, moment)?),
                None => begin::page(&sheet, &door.again(viewer, cook, moment)?),
            },
            Page::Cards => match beside.typed.given("card") {
                Some(card)
                    if beside.refused.is_none() || beside.typed.text("form") == begin::FORM =>
                {
                    begin::page(&sheet, &door.read_card(viewer, card, moment)?)
                }
                _ => begin::take(&sheet),
            },
            Page::Wall => wall::page(&sheet),
            Page::Opening(cook, pit) => {
                opening::page(&sheet, &door.opening(viewer, cook, pit, moment)?)
            }
            Page::Fire(cook, pit) => fire::page(&sheet, &door.fire(viewer, cook, pit, moment)?),
            Page::Trouble(cook, pit) => {
                trouble::page(&sheet, &door.trouble(viewer, cook, pit, moment)?)
            }
            Page::FireOut(cook, pit) => {
                fire_out::page(&sheet, &door.fire_out(viewer, cook, pit, moment)?)
            }
            Page::TempLog(cook) => temp_log::page(&sheet, &door.temp_log(viewer, cook, moment)?),
            Page::Pits(cook) => pits::page(&sheet, &door.pits(viewer, cook, moment)?),
            Page::Dishes(cook) => dishes::page(&sheet, &door.dishes(viewer, cook, moment)?),
            Page::Kitchen(cook) => kitchen::page(&sheet, &door.kitchen(viewer, cook, moment)?),
            Page::KitchenSheet(cook) => {
                kitchen_sheet::page(&sheet, &door.kitchen_sheet(viewer, cook, moment)?)
            }
            Page::RunSheet(cook) => sheet_run::page(&sheet, &door.run_sheet(viewer, cook, moment)?),
            Page::Plan(cook) => plan::page(&sheet, &door.plan(viewer, cook, &beside.plan, moment)?),
            Page::HandOut(cook) => {
                let list = &beside.students;
                sheet_run::hand_out(&sheet, &door.hand_out(viewer, cook, list, moment)?)
            }
            Page::Watch(cook) => watch::page(&sheet, &door.watch(viewer, cook, moment)?),
            Page::Settings => settings::page(&sheet, &door.settings(viewer, moment)?),
            Page::Readings(of) => {
                let (hours, before) = (beside.hours, beside.before);
                readings::page(
                    &sheet,
                    &door.readings_of(viewer, of, hours, before, moment)?,
                )
            }
            Page::Thermometers => thermometers::page(&sheet, &door.thermometers(viewer, moment)?),
            Page::Taking(cook, _) => taking::page(&sheet, cook, taking.as_deref()),
            Page::Phones => phones::page(&sheet, lan.as_deref()),
        };
        let tabs = match head.cook {
            Some(cook) => layout::Tabs::Of(cook),
            None => tabs(&door.start(viewer, None, moment)?.open),
        };
        Ok(layout::whole(&sheet, &head, &tabs, &alarms, main))
    })
    .await
}

/// Those of `places` that are a meat of poultry.
fn poultry(
    door: &mut Slowbend,
    viewer: &Viewer,
    places: impl Iterator<Item = Place>,
    moment: &Moment,
) -> Result<Vec<Place>, Trouble> {
    let mut found = vec![];
    for place in places {
        let Place::Piece { piece } = place else {
            continue;
        };
        if door.piece(viewer, piece, moment)?.cut.is_poultry() {
            found.push(place);
        }
    }
    Ok(found)
}

/// The way back from a page that belongs to no cook: to the one that is under way, or to the list of several.
fn tabs(open: &[Line]) -> layout::Tabs {
    let mut cooks = open.iter().filter_map(|line| match line.link {
        Some(Place::Now { cook }) => Some(cook),
        _ => None,
    });
    match (cooks.next(), cooks.next()) {
        (Some(cook), None) => layout::Tabs::Of(cook),
        (Some(_), Some(_)) => layout::Tabs::Several,
        (None, _) => layout::Tabs::None,
    }
}

/// What a browser keeps to show while the home post cannot be reached.
pub async fn away(reader: Reader) -> Response {
    let say = Words::of(&reader.viewer);
    let page = layout::alone(
        &reader,
        &say.text("wall-away-title"),
        &say.text("wall-away"),
        &say.text("frame-again"),
    );
    answer(StatusCode::OK, page)
}

/// An answer that no cache keeps: a page shown again after "back" must not be yesterday's.
pub fn answer(status: StatusCode, markup: Markup) -> Response {
    (status, [(header::CACHE_CONTROL, "no-store")], markup).into_response()
}

/// What went wrong as a page of its own; `refused` is the status of a refusal.
pub fn troubled(reader: &Reader, trouble: &Trouble, refused: StatusCode) -> Response {
    let status = match trouble {
        Trouble::Refused { .. } => refused,
        Trouble::InUse { .. } | Trouble::CannotWrite { .. } => StatusCode::SERVICE_UNAVAILABLE,
        Trouble::Newer { .. } | Trouble::Unreadable { .. } => StatusCode::INTERNAL_SERVER_ERROR,
    };
    answer(status, plain(reader, trouble.reason()))
}
