//! A regatta lunch through the one door, for tests that need a cook under way. All of it is invented.

use slowbend_core::{
    acts::{Act, NewMeat, Outcome},
    cadence::Cadence,
    checks::Cut,
    door::{OpenArgs, Slowbend},
    ids::{CookId, PieceId, PitId},
    log::{Body, Entry, PitKind, Serve, Stage, Subject},
    moment::{HOUR, Moment},
    safety::Form,
    words::Viewer,
};
use std::path::Path;

/// 2026-06-13 11:00 UTC: six in the morning in Chicago, on the day of the regatta.
pub const SIX: i64 = 1_781_348_400_000;

/// The names of what the lunch begins with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lunch {
    /// The cook.
    pub cook: CookId,
    /// The drum.
    pub pit: PitId,
    /// A slab of ribs on it, mopped.
    pub ribs: PieceId,
}

/// Arguments for opening `folder` as installation `install`, whose name also seeds the ids.
pub fn args(folder: &Path, install: &str) -> OpenArgs {
    OpenArgs {
        place: folder.into(),
        install_id: install.into(),
        entropy: *blake3::hash(install.as_bytes()).as_bytes(),
    }
}

/// Opens `folder` as installation `install`.
///
/// # Panics
/// When it does not open.
pub fn open(folder: &Path, install: &str, now: &Moment) -> Slowbend {
    Slowbend::open(args(folder, install), now).expect("it opens")
}

/// Somebody who reads English in Chicago on the device of `door`.
///
/// # Panics
/// When the door has no device.
pub fn viewer(door: &mut Slowbend) -> Viewer {
    let device = door.device().expect("it is open");
    Viewer {
        zone: "America/Chicago".into(),
        ..Viewer::default_for(device)
    }
}

/// Does `act` at `now`.
///
/// # Panics
/// When it is refused.
pub fn act(door: &mut Slowbend, act: &Act, now: &Moment) -> Outcome {
    let viewer = viewer(door);
    door.act(&viewer, act, now)
        .unwrap_or_else(|trouble| panic!("{act:?}: {trouble}"))
}

/// Six o'clock in Chicago.
pub fn six() -> Moment {
    Moment::at(SIX, "America/Chicago")
}

/// A drum, a slab on it to be mopped each half hour, for two o'clock.
///
/// # Panics
/// When any of it is refused.
pub fn lunch(door: &mut Slowbend, now: &Moment) -> Lunch {
    let drum = Act::AddPit {
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: Some(2_500),
        alone_minutes: None,
    };
    let Subject::Pit(pit) = act(door, &drum, now).made[0] else {
        unreachable!("a pit was added")
    };
    let slab = NewMeat {
        name: "Slab".into(),
        cut: Cut::SpareRibs,
        form: Form::Intact,
        weight_g: Some(1_500),
        cadence: Some(Cadence::mop()),
        pit: Some(pit),
    };
    let start = Act::StartCook {
        name: "Regatta lunch".into(),
        serve: Some(Serve {
            at: now.utc_ms + 8 * HOUR,
            zone: "America/Chicago".into(),
        }),
        people: Some(14),
        meats: vec![slab],
        demo: false,
    };
    let made = act(door, &start, now).made;
    let cook = made.iter().find_map(|made| match made {
        Subject::Cook(id) => Some(*id),
        _ => None,
    });
    let ribs = made.iter().find_map(|made| match made {
        Subject::Piece(id) => Some(*id),
        _ => None,
    });
    let (cook, ribs) = (cook.expect("a cook began"), ribs.expect("with a slab"));
    let on = Act::SetStage {
        piece: ribs,
        stage: Stage::OnPit { pit },
        at: None,
    };
    act(door, &on, now);
    Lunch { cook, pit, ribs }
}

/// All entries of `door`.
///
/// # Panics
/// When they cannot be read.
pub fn entries(door: &mut Slowbend) -> Vec<Entry> {
    door.entries_after(&[]).expect("entries are read")
}

/// What kind of thing an entry says; empty where it was erased.
///
/// # Panics
/// When it is no entry.
pub fn kind(entry: &Entry) -> String {
    match &entry.body {
        Body::Raw(raw) => Entry::head(raw).expect("it is an entry").kind.into_owned(),
        Body::Erased => String::new(),
    }
}
