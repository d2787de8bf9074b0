//! Opening the database of this installation.

use super::end::End;
use crate::{clock::Clock, data, zone};
use slowbend_core::{
    door::{OpenArgs, Slowbend},
    ids::DeviceId,
    moment::Moment,
    words::{Locale, Viewer},
};
use std::{env, path::PathBuf};

/// An open door with what belongs to it.
pub struct Opened {
    /// The door.
    pub door: Slowbend,
    /// This machine's clocks.
    pub clock: Clock,
    /// This machine's zone.
    pub zone: String,
    /// The folders of this installation.
    pub folders: data::Folders,
}

/// Opens the database in `data`, or in the usual folder.
///
/// # Errors
/// In use, newer, read-only, full.
pub fn open(data: Option<PathBuf>) -> Result<Opened, End> {
    let folders = data::folders(data).map_err(End::Refused)?;
    let install_id = data::install_id(&folders).map_err(End::Refused)?;
    let (clock, zone) = (Clock::machine(), zone::of_machine());
    let args = OpenArgs {
        place: folders.data.clone(),
        install_id,
        entropy: data::entropy(),
    };
    let mut door = Slowbend::open(args, &clock.moment(&zone))?;
    door.make_forecasts()?;
    Ok(Opened {
        door,
        clock,
        zone,
        folders,
    })
}

impl Opened {
    /// When it is.
    pub fn moment(&self) -> Moment {
        self.clock.moment(&self.zone)
    }

    /// Who reads the terminal: its language, this machine's zone.
    pub fn viewer(&mut self) -> Result<Viewer, End> {
        let device: DeviceId = self.door.device()?;
        Ok(Viewer {
            locale: locale(),
            zone: self.zone.clone(),
            ..Viewer::default_for(device)
        })
    }
}

/// The language of the terminal, by the first of LC_ALL, LC_MESSAGES and LANG that is set (POSIX, from memory).
pub fn locale() -> Locale {
    let set = |name| env::var(name).ok().filter(|value| !value.is_empty());
    let tag = set("LC_ALL")
        .or_else(|| set("LC_MESSAGES"))
        .or_else(|| set("LANG"));
    Locale::from_tag(&tag.unwrap_or_default())
}
