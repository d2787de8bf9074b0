//! One device of the world: a folder, a clock, and an open door or none.

use super::{Told, clock::Clock};
use slowbend_core::{
    door::{OpenArgs, Slowbend},
    log::{Entry, EntryKey},
    moment::Moment,
    words::{Locale, Viewer},
};
use std::{
    collections::BTreeMap,
    path::{Path, PathBuf},
};

/// A device.
pub struct Device {
    /// Its place among the devices.
    pub name: usize,
    /// Its clock.
    pub clock: Clock,
    /// Every entry that it was told is recorded, by its own acts or by absorbing.
    pub acked: BTreeMap<EntryKey, Entry>,
    /// The installation, kept outside backups.
    pub install: String,
    root: PathBuf,
    generation: u32,
    opens: u32,
    door: Option<Slowbend>,
}

impl Device {
    /// A device that was never opened, its folders under `root`.
    pub fn new(root: &Path, name: usize, clock: Clock) -> Self {
        Self {
            name,
            clock,
            acked: BTreeMap::new(),
            install: format!("install-{name}"),
            root: root.into(),
            generation: 0,
            opens: 0,
            door: None,
        }
    }

    /// Where its database is.
    pub fn folder(&self) -> PathBuf {
        self.root
            .join(format!("device-{}-{}", self.name, self.generation))
    }

    /// Its database.
    pub fn file(&self) -> PathBuf {
        self.folder().join("slowbend.db")
    }

    /// Lets the process end and goes on in an empty folder, as what `fill` puts there.
    pub fn move_house(&mut self, fill: impl FnOnce(&Path)) {
        self.door = None;
        let old = self.folder();
        self.generation += 1;
        std::fs::create_dir_all(self.folder()).expect("a folder can be made");
        fill(&self.folder());
        let _ = std::fs::remove_dir_all(old);
    }

    /// When it is, for this device.
    pub fn moment(&self, true_ms: i64) -> Moment {
        self.clock.moment(true_ms)
    }

    /// The door, opened if it is not.
    ///
    /// # Errors
    /// What the opening said.
    pub fn door(&mut self, true_ms: i64) -> Told<&mut Slowbend> {
        if self.door.is_none() {
            self.opens += 1;
            let entropy = blake3::hash(format!("{} {}", self.name, self.opens).as_bytes());
            let args = OpenArgs {
                place: self.folder(),
                install_id: self.install.clone(),
                entropy: *entropy.as_bytes(),
            };
            let moment = self.moment(true_ms);
            let opened = Slowbend::open(args, &moment);
            self.door = Some(opened.map_err(|trouble| {
                format!("law 1: device {} does not open: {trouble}", self.name)
            })?);
        }
        Ok(self.door.as_mut().expect("it was opened above"))
    }

    /// Whether its process runs.
    pub fn is_running(&self) -> bool {
        self.door.is_some()
    }

    /// Ends the process in good order.
    pub fn stop(&mut self) {
        self.door = None;
    }

    /// All entries it holds, in order of arrival.
    ///
    /// # Errors
    /// What the door said.
    pub fn entries(&mut self, true_ms: i64) -> Told<Vec<Entry>> {
        let name = self.name;
        self.door(true_ms)?
            .entries_after(&[])
            .map_err(|trouble| format!("law 1: device {name} does not give its entries: {trouble}"))
    }

    /// Who looks at its screen: every second one reads Spanish.
    ///
    /// # Errors
    /// What the door said.
    pub fn viewer(&mut self, true_ms: i64) -> Told<Viewer> {
        let device = self
            .door(true_ms)?
            .device()
            .map_err(|trouble| trouble.to_string())?;
        Ok(Viewer {
            locale: Locale::ALL[self.name % 2],
            zone: self.moment(true_ms).zone,
            ..Viewer::default_for(device)
        })
    }
}
