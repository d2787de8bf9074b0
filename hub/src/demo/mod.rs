//! The demo: an invented cook, played through a door of its own. Start at [`post`].
//!
//! It has a database, a home and addresses of its own (`/demo/...`), so that nothing invented stands beside what is real.
//! Its past is played at once, at past moments; from then on its probes go on by the minute, and everything else is up to
//! whoever watches. Asked for again, it begins anew; when the program ends, it ends.

mod front;
mod script;
mod zone;

use crate::{
    data, forms,
    home::Home,
    pages::{Page, troubled},
    viewer::Reader,
    watch,
};
use axum::{extract::State, http::StatusCode, response::Response};
pub use front::{OUT, PREFIX, front};
use script::{Script, filled};
use serde_json::Value;
use slowbend_core::{
    acts::Act,
    door::{OpenArgs, Slowbend},
    error::Trouble,
    ids::CookId,
    log::Subject,
    moment::{HOUR, MINUTE, Moment},
    words::Viewer,
};
use std::{
    collections::BTreeMap,
    fs,
    path::Path,
    sync::{
        Arc,
        atomic::{AtomicI64, Ordering},
    },
};
pub use zone::reader_of;

/// How the demo is seen from a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Demo {
    /// Nobody asked for it.
    Asleep,
    /// It is under way elsewhere, with this cook.
    UnderWay(CookId),
    /// The page is one of its own.
    Here,
}

/// What a demo plays, and how far its readings have come.
pub struct Invented {
    /// The cook.
    pub cook: CookId,
    /// The zone its pages are read in.
    pub zone: String,
    /// The hour that the script counts back from: the probes go by it.
    serve: i64,
    read_until: AtomicI64,
}

/// Begins the demo, anew where one is under way, and goes to it.
pub async fn post(State(home): State<Arc<Home>>, reader: Reader) -> Response {
    let viewer = reader.viewer.clone();
    let here = Arc::clone(&home);
    let begun = home.ask(move |_, moment| in_its_folder(&here, &viewer, moment));
    match begun.await {
        Ok((demo, cook)) => {
            home.play(Arc::clone(&demo));
            tokio::spawn(watch::watch(Arc::clone(&demo)));
            home.changed();
            front::under(forms::to(Page::Now(cook))).await
        }
        Err(trouble) => troubled(&reader, &trouble, StatusCode::UNPROCESSABLE_ENTITY),
    }
}

/// A demo in a fresh folder beside the real database; what is left of earlier ones is removed where the system lets us.
fn in_its_folder(
    home: &Home,
    viewer: &Viewer,
    moment: &Moment,
) -> Result<(Arc<Home>, CookId), Trouble> {
    let all = home.data.join("demo");
    let _ = fs::remove_dir_all(&all);
    let place = all.join(crate::once::token());
    fs::create_dir_all(&place).map_err(|error| unwritable(&place, &error))?;
    let args = OpenArgs {
        place: place.clone(),
        install_id: crate::once::token(),
        entropy: data::entropy(),
    };
    let mut door = Slowbend::open(args, moment)?;
    door.make_forecasts()?;
    let device = door.device()?;
    let own = Viewer {
        device,
        ..viewer.clone()
    };
    let invented = begin(&mut door, &own, moment)?;
    let cook = invented.cook;
    Ok((home.for_demo(door, device, place, invented), cook))
}

fn unwritable(place: &Path, error: &std::io::Error) -> Trouble {
    Trouble::CannotWrite {
        reason: format!(
            "The demo could not be kept in {} ({error}). Make room, or choose another folder with --data DIR.",
            place.display()
        ),
    }
}

/// Plays the past of the demo, so that it stands at its mid-morning now. All of it is laid around now; only the hour it is
/// served is moved, by half an hour at most, to two o'clock on the demo's own clock.
///
/// # Errors
/// What the door answers; the script itself is refused nowhere, which a test holds.
pub fn begin(door: &mut Slowbend, viewer: &Viewer, moment: &Moment) -> Result<Invented, Trouble> {
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
    Ok(Invented {
        cook,
        zone,
        serve,
        read_until: moment.utc_ms.into(),
    })
}

fn id_of(thing: &Subject) -> Value {
    let json = serde_json::to_value(thing).unwrap_or_default();
    json.get("id").cloned().unwrap_or_default()
}

/// Reads the demo's probes up to now; whether there will be more of them.
///
/// # Errors
/// What the door answers.
pub fn go_on(door: &mut Slowbend, it: &Invented, moment: &Moment) -> Result<bool, Trouble> {
    if moment.utc_ms > it.serve + HOUR {
        return Ok(false);
    }
    let from = it.read_until.load(Ordering::SeqCst);
    let readings = Script::embedded().readings(it.serve, from, moment.utc_ms);
    if !readings.is_empty() {
        door.readings(&readings, moment)?;
        it.read_until.store(moment.utc_ms, Ordering::SeqCst);
    }
    Ok(true)
}
