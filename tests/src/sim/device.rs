//! One device of the world: a folder, a clock, and an open door or none.

use super::{Told, checkers::law2::Ordinals, clock::Clock, heard, platform::Platform};
use slowbend_core::{
    alarms::AlarmList,
    door::{OpenArgs, SensorReading, Slowbend},
    error::Trouble,
    log::{Entry, EntryKey},
    moment::Moment,
    readings::Tails,
    words::{Locale, Viewer},
};
use std::{
    collections::BTreeMap,
    path::{Path, PathBuf},
};

/// The probe of the world.
pub const PROBE: &str = "drum probe";
/// Its sensors.
pub const SENSORS: [&str; 2] = ["grate", "meat"];

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
    /// What rings, and rang.
    pub platform: Platform,
    /// How many alarms its platform takes.
    pub limit: u32,
    /// How often each job was answered, as far as it ever knew.
    pub ordinals: Ordinals,
    /// What its probes said: what is on disk, and since the process began.
    pub heard: Tails,
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
            platform: Platform::default(),
            limit: [60, 4, 1][name % 3],
            ordinals: Ordinals::new(),
            heard: Tails::default(),
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
            self.heard = heard::on_disk(&self.file())?;
            self.door = Some(opened.map_err(|trouble| {
                format!("law 1: device {} does not open: {trouble}", self.name)
            })?);
        }
        Ok(self.door.as_mut().expect("it was opened above"))
    }

    /// Takes readings, as the door does.
    ///
    /// # Errors
    /// What the door said.
    pub fn hear(&mut self, batch: &[SensorReading], true_ms: i64) -> Result<(), Trouble> {
        let moment = self.moment(true_ms);
        let door = self
            .door
            .as_mut()
            .expect("the door is open before its probes speak");
        door.readings(batch, &moment)?;
        for reading in batch {
            self.heard
                .take(&reading.source, &reading.sensor, reading.at, reading.temp);
        }
        Ok(())
    }

    /// The last hours of what the probes of the world said here.
    pub fn readings_heard(&self) -> Vec<SensorReading> {
        let of = |sensor: &'static str| {
            self.heard
                .of(PROBE, sensor, i64::MAX)
                .map(move |(at, temp)| SensorReading {
                    source: PROBE.into(),
                    sensor: sensor.into(),
                    at,
                    temp,
                })
        };
        SENSORS.into_iter().flat_map(of).collect()
    }

    /// Does what a shell does after each call: tells what sounded, asks what must ring, and lays it. Answers with the
    /// longest list.
    ///
    /// # Errors
    /// What the door said.
    pub fn lay_alarms(&mut self, true_ms: i64) -> Told<(AlarmList, AlarmList)> {
        let (viewer, moment, limit) = (self.viewer(true_ms)?, self.moment(true_ms), self.limit);
        let untold = self.platform.take_untold(moment.utc_ms);
        let door = self.door(true_ms)?;
        let met = |trouble: Trouble| format!("law 2: alarms met {trouble:?}");
        if !untold.is_empty() {
            door.rang(&untold, &moment).map_err(met)?;
        }
        let list = door.alarms(&viewer, &moment, limit).map_err(met)?;
        let longest = door.alarms(&viewer, &moment, 60).map_err(met)?;
        self.platform.lay(&list);
        Ok((list, longest))
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
