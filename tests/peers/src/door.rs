//! A door with an invented history behind it, as a phone would have.

use crate::{
    harness::Result,
    invent::{self, Invented},
};
use slowbend_core::{
    acts::Act,
    door::{OpenArgs, Slowbend},
    moment::{MINUTE, Moment},
    words::Viewer,
};
use std::path::Path;

/// Opens the database in `folder` as the same installation each time.
pub fn open(folder: &Path, moment: &Moment) -> Result<Slowbend> {
    let args = OpenArgs {
        place: folder.into(),
        install_id: "bench".into(),
        entropy: [3; 32],
    };
    Ok(Slowbend::open(args, moment)?)
}

/// A new database in `folder` that holds the invented log, its background work done.
pub fn filled(folder: &Path, log: &Invented) -> Result<Slowbend> {
    let moment = after(log, 0);
    let mut door = open(folder, &moment)?;
    let told = door.absorb(&log.entries, &moment)?;
    assert_eq!(
        told.fresh,
        log.entries.len() as u64,
        "every entry was taken"
    );
    while door.work(&moment, 100)? {}
    Ok(door)
}

/// So many minutes after the last entry of the log.
pub fn after(log: &Invented, minutes: i64) -> Moment {
    Moment::at(log.until + minutes * MINUTE, "America/Chicago")
}

/// The tap at the pit: one slab was mopped.
pub fn mop(log: &Invented) -> Act {
    Act::Open {
        pit: Some(log.pits[0]),
        wetted: vec![log.pieces[0]],
        turned: vec![],
        glazed: vec![],
        at: None,
    }
}

/// Somebody in Chicago.
pub fn viewer(door: &mut Slowbend) -> Result<Viewer> {
    Ok(Viewer {
        zone: "America/Chicago".into(),
        ..Viewer::default_for(door.device()?)
    })
}

/// An invented log as large as 20,000 entries.
pub fn usual_log() -> Invented {
    invent::log(crate::fold::COOKS, crate::fold::EACH)
}
