//! The demo: an invented cook, played through the same door as a real one. Start at [`begin`].
//!
//! Its past is played at once, at past moments; from then on its probes go on by the minute, and everything else is up to
//! whoever watches.

mod script;
mod zone;

use crate::{
    forms,
    home::Home,
    pages::{Page, troubled},
    typed::Typed,
    viewer::Reader,
    words::words,
};
use axum::{Form, extract::State, http::StatusCode, response::Response};
use script::{Script, filled};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use slowbend_core::{
    acts::Act,
    door::Slowbend,
    error::Trouble,
    ids::CookId,
    log::Subject,
    moment::{HOUR, MINUTE, Moment},
    words::Viewer,
};
use std::{
    collections::BTreeMap,
    fs,
    path::{Path, PathBuf},
    sync::Arc,
};
pub use zone::{in_its_zone, reader_of};

/// Which cook is the demo and how far its readings have come, kept beside the database.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Kept {
    /// The cook.
    pub cook: CookId,
    /// Demos that were watched before.
    #[serde(default)]
    pub past: Vec<CookId>,
    /// The zone that each demo's pages are read in.
    #[serde(default)]
    pub zones: BTreeMap<CookId, String>,
    /// The hour that the script counts back from: the probes go by it.
    serve: i64,
    read_until: i64,
}

/// Starts the demo, or goes to the one under way.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let _ = Typed(fields);
    let (data, viewer) = (home.data.clone(), reader.viewer.clone());
    let begun = home.ask(
        move |door, moment| match under_way(door, &data, &viewer, moment) {
            Some(cook) => Ok(cook),
            None => begin(door, &data, &viewer, moment),
        },
    );
    match begun.await {
        Ok(cook) => {
            home.changed();
            forms::on_saying(&home, Page::Now(cook), words(reader.viewer.locale).invented)
        }
        Err(trouble) => troubled(&reader, &trouble, StatusCode::UNPROCESSABLE_ENTITY),
    }
}

impl Kept {
    /// Whether `cook` was invented.
    pub fn invented(&self, cook: CookId) -> bool {
        self.cook == cook || self.past.contains(&cook)
    }
}

/// The demo that is kept in the folder `data`, if one was started.
pub fn kept(data: &Path) -> Option<Kept> {
    serde_json::from_slice(&fs::read(file(data)).ok()?).ok()
}

fn file(data: &Path) -> PathBuf {
    data.join("demo.json")
}

fn keep(data: &Path, kept: &Kept) -> Result<(), Trouble> {
    let told = |error: std::io::Error| Trouble::CannotWrite {
        reason: format!(
            "The demo could not be kept ({error}). Make room, or choose another folder with --data DIR."
        ),
    };
    let json = serde_json::to_vec(kept).expect("an id and two numbers");
    let fresh = data.join("demo.json.new");
    fs::write(&fresh, json).map_err(told)?;
    fs::rename(&fresh, file(data)).map_err(told)
}

/// The demo's cook, while it is one of the cooks under way.
fn under_way(door: &mut Slowbend, data: &Path, viewer: &Viewer, moment: &Moment) -> Option<CookId> {
    let kept = kept(data)?;
    let start = door.start(viewer, None, moment).ok()?;
    let is_open = start
        .open
        .iter()
        .any(|line| line.link.map(Page::from) == Some(Page::Now(kept.cook)));
    is_open.then_some(kept.cook)
}

/// Plays the past of the demo, so that it stands at its mid-morning now. All of it is laid around now; only the hour it is
/// served is moved, by half an hour at most, to two o'clock on the demo's own clock.
///
/// # Errors
/// What the door answers; the script itself is refused nowhere, which a test holds.
pub fn begin(
    door: &mut Slowbend,
    data: &Path,
    viewer: &Viewer,
    moment: &Moment,
) -> Result<CookId, Trouble> {
    let script = Script::embedded();
    let serve = moment.utc_ms.div_euclid(MINUTE) * MINUTE + script.watched_from * MINUTE;
    let (at_two, zone) = zone::at_two(serve);
    let mut names = BTreeMap::from([
        ("serve".to_owned(), Value::from(at_two)),
        ("zone".to_owned(), Value::from(zone.clone())),
    ]);
    names.extend(script.texts(viewer.locale));
    let mut read = i64::MIN;
    for step in &script.acts {
        let at = serve - step.before * MINUTE;
        let then = moment.plus(at - moment.utc_ms);
        door.readings(&script.readings(serve, read, at), &then)?;
        read = at;
        let act: Act = serde_json::from_value(filled(&step.act, &names))
            .expect("a test reads each act of the script");
        let outcome = door.act(viewer, &act, &then)?;
        names.extend(
            step.makes
                .iter()
                .cloned()
                .zip(outcome.made.iter().map(id_of)),
        );
    }
    door.readings(&script.readings(serve, read, moment.utc_ms), moment)?;
    let cook: CookId = serde_json::from_value(names.remove("cook").unwrap_or_default())
        .expect("the script starts a cook");
    let (past, mut zones) = kept(data).map_or_else(Default::default, |before| {
        ([before.past, vec![before.cook]].concat(), before.zones)
    });
    zones.insert(cook, zone);
    keep(
        data,
        &Kept {
            cook,
            past,
            zones,
            serve,
            read_until: moment.utc_ms,
        },
    )?;
    Ok(cook)
}

fn id_of(thing: &Subject) -> Value {
    let json = serde_json::to_value(thing).unwrap_or_default();
    json.get("id").cloned().unwrap_or_default()
}

/// Reads the demo's probes up to now; whether there will be more of them.
///
/// # Errors
/// What the door answers.
pub fn go_on(door: &mut Slowbend, data: &Path, moment: &Moment) -> Result<bool, Trouble> {
    let Some(mut kept) = kept(data) else {
        return Ok(false);
    };
    if moment.utc_ms > kept.serve + HOUR {
        return Ok(false);
    }
    let readings = Script::embedded().readings(kept.serve, kept.read_until, moment.utc_ms);
    if !readings.is_empty() {
        door.readings(&readings, moment)?;
        kept.read_until = moment.utc_ms;
        keep(data, &kept)?;
    }
    Ok(true)
}
