//! Opening, letting go, and opening again.

use super::{ClockWatch, OpenArgs, Slowbend};
use crate::{
    cook::{Crew, Warning},
    error::Trouble,
    ids::{DeviceId, LogId, Names},
    log::Stamp,
    moment::{HOUR, Moment},
    readings::Tails,
    store::{Group, Opened, Store, mark_damaged},
};
use std::collections::{BTreeMap, BTreeSet};

/// A stamp further ahead of the wall than this is told as an odd clock. Common practice, no source.
const ODD_CLOCK_MS: i64 = 24 * HOUR;

impl Slowbend {
    /// Opens or creates the database in `args.place`.
    ///
    /// # Errors
    /// [`Trouble::InUse`], [`Trouble::Newer`], [`Trouble::CannotWrite`]. A damaged database is no error: it is set
    /// aside, what is readable in it is taken over, and the screens say so.
    pub fn open(args: OpenArgs, moment: &Moment) -> Result<Self, Trouble> {
        let names = Names::new(args.entropy);
        let mut door = Self {
            store: None,
            args,
            names,
            stamp: Stamp::default(),
            next_n: 1,
            crew: Crew::default(),
            cooks: BTreeMap::new(),
            marks: BTreeMap::new(),
            tails: Tails::default(),
            tailed: BTreeSet::new(),
            pending: Default::default(),
            ahead: Default::default(),
            warnings: vec![],
            clock: ClockWatch::default(),
            utc_ms: moment.utc_ms,
        };
        door.open_store(moment.utc_ms)?;
        door.notice_clock(moment);
        door.notice_stamp(moment);
        Ok(door)
    }

    /// Opens the files; where damage is met in reading them, once more, with the damaged one set aside.
    fn open_store(&mut self, utc_ms: i64) -> Result<(), Trouble> {
        let opened = self.open_files(utc_ms)?;
        match self.take_store(opened) {
            Err(Trouble::Unreadable { .. }) => {
                self.store = None;
                (self.cooks, self.marks) = Default::default();
                mark_damaged(&self.args.place)?;
                let opened = self.open_files(utc_ms)?;
                self.take_store(opened)
            }
            other => other,
        }
    }

    fn open_files(&mut self, utc_ms: i64) -> Result<Opened, Trouble> {
        let (place, install) = (&self.args.place, &self.args.install_id);
        Ok(Store::open(place, install, &mut self.names, utc_ms)?)
    }

    /// Passes `result` on. Where damage was met, what is promised with it is kept: the next opening sets the file aside.
    pub(super) fn heed<T>(&self, result: Result<T, Trouble>) -> Result<T, Trouble> {
        if let Err(Trouble::Unreadable { .. }) = &result {
            mark_damaged(&self.args.place)?;
        }
        result
    }

    fn take_store(&mut self, opened: Opened) -> Result<(), Trouble> {
        if let Some((file, entries)) = opened.set_aside {
            let file = file
                .file_name()
                .unwrap_or_default()
                .to_string_lossy()
                .into_owned();
            self.warn(Warning::SetAside { file, entries });
        }
        if opened.cloned {
            self.warn(Warning::Cloned);
        }
        let store = opened.store;
        self.next_n = store.next_n()?;
        self.stamp = store
            .heads()?
            .iter()
            .map(|(.., stamp)| *stamp)
            .max()
            .unwrap_or_default();
        let forks = store.forks()?;
        if forks > 0 {
            self.warn(Warning::Forked { entries: forks });
        }
        self.store = Some(store);
        self.tailed.clear();
        // While the files were let go another program may have written to them: nothing folded before counts.
        self.cooks.clear();
        self.marks.clear();
        self.load(Group::Crew)?;
        self.load_open_cooks()?;
        self.load_tails()?;
        self.load_forecasts()
    }

    /// Lets go of files and locks. The next call opens them again.
    ///
    /// # Errors
    /// When readings that were not yet written cannot be.
    pub fn suspend(&mut self) -> Result<(), Trouble> {
        self.flush_readings()?;
        self.store = None;
        Ok(())
    }

    /// The store, opened again if it was let go.
    pub(super) fn store(&mut self) -> Result<&mut Store, Trouble> {
        if self.store.is_none() {
            self.open_store(0)?;
        }
        Ok(self.store.as_mut().expect("it was opened above"))
    }

    /// This device.
    ///
    /// # Errors
    /// As for opening, when the files had been let go.
    pub fn device(&mut self) -> Result<DeviceId, Trouble> {
        Ok(self.store()?.device)
    }

    /// The log that this device writes in.
    ///
    /// # Errors
    /// As for opening, when the files had been let go.
    pub fn log(&mut self) -> Result<LogId, Trouble> {
        Ok(self.store()?.log)
    }

    pub(super) fn warn(&mut self, warning: Warning) {
        if !self.warnings.contains(&warning) {
            self.warnings.push(warning);
        }
    }

    /// Says so where the stamps run far ahead of the wall: some device's clock is, or was, wrong.
    pub(super) fn notice_stamp(&mut self, moment: &Moment) {
        if self.stamp.wall_ms() <= moment.utc_ms + ODD_CLOCK_MS {
            return;
        }
        let heads = self
            .store
            .as_ref()
            .and_then(|store| store.heads().ok())
            .unwrap_or_default();
        for (_, device, _, stamp) in heads {
            if stamp.wall_ms() > moment.utc_ms + ODD_CLOCK_MS && stamp == self.stamp {
                self.warn(Warning::OddClock {
                    device,
                    stamp_ms: stamp.wall_ms(),
                });
            }
        }
    }
}
