//! The world: a few devices, the true time, and all that the laws are checked against.

use super::{
    STEPS, Told, Trace,
    checkers::{law1, law2, law3},
    clock::Clock,
    device::Device,
    exchange::{self, Way},
    faults::Files,
    inject::Stranger,
    picture::Picture,
    place,
    rng::Rng,
    screens,
};
use serde_json::Value;
use slowbend_core::{
    acts::Act,
    alarms::due,
    log::{Entry, EntryKey},
    moment::{HOUR, MINUTE, SECOND},
};
use std::collections::{BTreeMap, BTreeSet};
use tempfile::TempDir;

/// 2026-06-13 09:00 UTC: a regatta Saturday, four in the morning in Chicago.
const BEGINS: i64 = 1_781_341_200_000;
const DAY: i64 = 24 * HOUR;

/// A copy of a device's files, with what it had been told by then.
#[derive(Clone, Debug)]
pub struct Backup {
    /// The files.
    pub files: Files,
    /// What the device had been told.
    pub acked: BTreeMap<EntryKey, Entry>,
}

/// All there is.
pub struct World {
    /// Chance.
    pub rng: Rng,
    /// The true time.
    pub true_ms: i64,
    /// The devices.
    pub devices: Vec<Device>,
    /// Who writes odd entries.
    pub stranger: Stranger,
    /// Entries that somebody asked to erase.
    pub erased: BTreeSet<EntryKey>,
    /// Whether two may have written under one name.
    pub forked: bool,
    /// A backup of each device, if one was made.
    pub backups: BTreeMap<usize, Backup>,
    /// How many rings sounded.
    pub rings: usize,
    /// The acts on the buttons of the screen that was looked at last, whoever's.
    pub offered: Vec<Act>,
    /// How many acts were taken.
    pub taken: u32,
    trace: Trace,
    _root: TempDir,
}

impl World {
    /// The world of a seed.
    pub fn new(seed: u64) -> Self {
        let mut rng = Rng::new(seed);
        let root = place::fresh();
        let true_ms = BEGINS + rng.from_to(0, 365) * DAY;
        let count = 1 + rng.below(3);
        let device = |name| Device::new(root.path(), name, Clock::right(name, true_ms));
        Self {
            devices: (0..count).map(device).collect(),
            rng,
            true_ms,
            stranger: Stranger::default(),
            erased: BTreeSet::new(),
            forked: false,
            backups: BTreeMap::new(),
            rings: 0,
            offered: vec![],
            taken: 0,
            trace: Trace::default(),
            _root: root,
        }
    }

    /// Lets `steps` things happen, then heals everything and compares.
    ///
    /// # Errors
    /// The law that was broken.
    pub fn live(&mut self, steps: u32) -> Told<()> {
        self.found_crew()?;
        for step in 0..steps {
            let pause = self.pause();
            self.pass(pause);
            let who = self.rng.below(self.devices.len());
            let line = self.happen(who);
            let told = line.as_ref().map_or_else(String::clone, String::clone);
            self.say(step, who, &told);
            line?;
            self.check(who)?;
        }
        self.heal()
    }

    /// Most of the time all devices begin as one crew.
    fn found_crew(&mut self) -> Told<()> {
        let now = self.true_ms;
        let log = self.devices[0]
            .door(now)?
            .log()
            .map_err(|trouble| trouble.to_string())?;
        let together = self.rng.chance(80);
        for device in self.devices.iter_mut().skip(1).filter(|_| together) {
            let moment = device.moment(now);
            let joined = device.door(now)?.join_crew(log, &moment);
            joined.map_err(|trouble| format!("law 1: no joining: {trouble}"))?;
        }
        Ok(())
    }

    fn pause(&mut self) -> i64 {
        match self.rng.below(10) {
            0..=3 => self.rng.from_to(1, 50) * SECOND,
            4..=8 => self.rng.from_to(1, 25) * MINUTE,
            _ => self.rng.from_to(1, 6) * HOUR,
        }
    }

    fn say(&mut self, step: u32, who: usize, told: &str) {
        let moment = self.devices[who].moment(self.true_ms);
        self.trace.say(format!(
            "{step:>3} {} device {who} (shows {} {}) {told}",
            self.true_ms, moment.utc_ms, moment.zone
        ));
    }

    /// The laws that hold for one device at any time.
    fn check(&mut self, who: usize) -> Told<()> {
        let now = self.true_ms;
        let device = &mut self.devices[who];
        let held = device.entries(now)?;
        law1::check(device, &held, &self.erased)?;
        let picture = Picture::of(&held);
        self.check_alarms(who, &picture)?;
        self.check_screen(who, &picture, &held)
    }

    /// One screen of the device, any, against a cold fold.
    fn check_screen(&mut self, who: usize, picture: &Picture, held: &[Entry]) -> Told<()> {
        let now = self.true_ms;
        let all = screens::all(picture);
        let screen = *self.rng.pick(&all).expect("there is always a first one");
        let device = &mut self.devices[who];
        let (viewer, moment) = (device.viewer(now)?, device.moment(now));
        let warm = screens::warm(device, screen, &viewer, &moment, now)?;
        self.offered.clear();
        screens::offered(&warm, &mut self.offered);
        let known = picture.known(&device.heard, viewer.device);
        law3::warm_is_cold(
            screen,
            warm,
            screens::cold(&known, held, screen, &viewer, &moment),
        )
    }

    /// All processes end in good order and start again, and all devices have the readings of all.
    fn share_readings(&mut self) -> Told<()> {
        let now = self.true_ms;
        let mut all = Vec::new();
        for device in &mut self.devices {
            device
                .door(now)?
                .suspend()
                .map_err(|trouble| format!("law 1: suspending met {trouble:?}"))?;
            device.stop();
            device.door(now)?;
            all.extend(device.readings_heard());
        }
        for device in &mut self.devices {
            device
                .hear(&all, now)
                .map_err(|trouble| format!("law 1: readings met {trouble:?}"))?;
        }
        Ok(())
    }

    /// Every screen of every device for one viewer: all the same, byte for byte. What came under a name already taken
    /// lies aside on some devices only, and their notices say so.
    fn check_all_screens(&mut self, picture: &Picture) -> Told<()> {
        let now = self.true_ms;
        for reader in 0..self.devices.len().min(2) {
            let viewer = self.devices[reader].viewer(now)?;
            let moment = self.devices[reader].moment(now);
            for screen in screens::all(picture) {
                let shown: Vec<Value> = self
                    .devices
                    .iter_mut()
                    .map(|device| screens::warm(device, screen, &viewer, &moment, now))
                    .collect::<Told<_>>()?;
                let shown: Vec<Value> = match self.forked {
                    true => shown.into_iter().map(screens::without_notices).collect(),
                    false => shown,
                };
                for other in &shown[1..] {
                    law3::same(screen, &shown[0], other, "one device, and not of another")?;
                }
            }
        }
        Ok(())
    }

    fn check_alarms(&mut self, who: usize, picture: &Picture) -> Told<()> {
        let now = self.true_ms;
        let device = &mut self.devices[who];
        let wall = device.moment(now).utc_ms;
        let me = device.viewer(now)?.device;
        let (list, longest) = device.lay_alarms(now)?;
        law2::shape(&list, &longest, device.limit as usize)?;
        let due = due(&picture.known(&device.heard, me), wall);
        law2::nothing_missed(&due, &longest, &device.platform, wall)?;
        if self.erased.is_empty() {
            law2::answered_for_good(&due, &mut device.ordinals)?;
        }
        Ok(())
    }

    /// Lets time pass: what is laid sounds, whether anybody is there or not.
    fn pass(&mut self, ms: i64) {
        self.true_ms += ms;
        for device in &mut self.devices {
            let wall = device.moment(self.true_ms).utc_ms;
            self.rings += device.platform.pass(wall);
        }
    }

    /// All clocks right, everything exchanged: now all must agree.
    fn heal(&mut self) -> Told<()> {
        let now = self.true_ms;
        self.devices
            .iter_mut()
            .for_each(|device| device.clock.mend());
        for _ in 0..2 {
            for to in 0..self.devices.len() {
                for from in 0..self.devices.len() {
                    self.give(from, to, Way::Whole)?;
                }
            }
        }
        let held: Vec<Vec<Entry>> = self
            .devices
            .iter_mut()
            .map(|device| device.entries(now))
            .collect::<Told<_>>()?;
        for (i, entries) in held.iter().enumerate().skip(1) {
            law3::same_entries(&held[0], entries, (0, i))?;
        }
        law3::order_is_nothing(&held[0])?;
        self.share_readings()?;
        self.check_all_screens(&Picture::of(&held[0]))?;
        (0..self.devices.len()).try_for_each(|who| self.check(who))?;
        let state = Picture::of(&held[0]).hash();
        self.trace.say(format!(
            "healed: {} entries, {} acts taken, state {state}",
            held[0].len(),
            self.taken
        ));
        Ok(())
    }

    /// Entries of one device to another; all of them where two wrote under one name, since numbers then say nothing.
    ///
    /// # Errors
    /// A law that was broken.
    pub fn give(&mut self, from: usize, to: usize, way: Way) -> Told<String> {
        let Ok([from, to]) = self.devices.get_disjoint_mut([from, to]) else {
            return Ok("meets nobody".into());
        };
        match (self.forked, way) {
            (true, Way::Whole) => exchange::pour(from, to, self.true_ms),
            _ => exchange::meet(from, to, way, self.true_ms, &mut self.rng),
        }
    }

    /// What happened.
    pub fn into_trace(self) -> Trace {
        self.trace
    }
}

/// Runs a seed twice and compares what happened: law 7.
///
/// # Errors
/// When it was not the same, or a law was broken.
pub fn twice(seed: u64) -> Result<(), String> {
    let (first, second) = (super::run(seed)?, super::run(seed)?);
    let differs = first
        .lines()
        .iter()
        .zip(second.lines())
        .find(|(a, b)| a != b);
    match (differs, first.hash() == second.hash()) {
        (None, true) => Ok(()),
        (lines, _) => Err(format!(
            "law 7: seed {seed} ran otherwise the second time ({STEPS} steps): {lines:?}"
        )),
    }
}
