//! The one door, behind a lock, for callers that share it between threads.
//!
//! Each method hands over to the method of the same name of [`Door`] and returns what it returns; the law of each is told
//! there. A caller keeps one object for the life of the app and calls it from one background thread: a call may write to disk.

use slowbend_core::{
    acts::{Act, Outcome},
    alarms::{AlarmId, AlarmList},
    door::{OpenArgs, SensorReading, Slowbend as Door, WordTaken},
    error::Trouble,
    ids::{CookId, DeviceId, LogId},
    log::{Entry, EntryKey},
    moment::Moment,
    probes::{self, HeardWord},
    readings::{ImportPlan, Report},
    store::StoreTrouble,
    words::Viewer,
};
use std::{
    fs::File,
    sync::{Arc, Mutex, MutexGuard, PoisonError},
};

/// The whole job of Slowbend on one device.
#[derive(uniffi::Object)]
pub struct Slowbend {
    door: Mutex<Door>,
}

impl Slowbend {
    /// Around a door that is open already.
    pub(crate) fn over(door: Door) -> Arc<Self> {
        Arc::new(Self {
            door: Mutex::new(door),
        })
    }

    /// The door, also after a call that panicked: what returned is on disk, and each verb writes all or nothing, so a
    /// bug in one call must not lock the cook out of every later one.
    pub(crate) fn door(&self) -> MutexGuard<'_, Door> {
        self.door.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// 32 bytes from the platform: the only randomness there is, and the only place where it is read.
fn entropy() -> Result<[u8; 32], Trouble> {
    let mut bytes = [0; 32];
    getrandom::fill(&mut bytes).map_err(|error| StoreTrouble::Other(error.to_string()))?;
    Ok(bytes)
}

#[uniffi::export]
impl Slowbend {
    /// Opens or creates the database in the folder `place`. `install_id` names this installation and is kept outside
    /// backups, so that a copied database is noticed.
    #[uniffi::constructor]
    pub fn open(place: String, install_id: String, moment: &Moment) -> Result<Arc<Self>, Trouble> {
        let args = OpenArgs {
            place: place.into(),
            install_id,
            entropy: entropy()?,
        };
        Ok(Self::over(Door::open(args, moment)?))
    }

    /// This device.
    pub fn device(&self) -> Result<DeviceId, Trouble> {
        self.door().device()
    }

    /// The log that this device writes in.
    pub fn log(&self) -> Result<LogId, Trouble> {
        self.door().log()
    }

    /// Records what was done; on disk when it returns.
    pub fn act(&self, viewer: &Viewer, act: &Act, moment: &Moment) -> Result<Outcome, Trouble> {
        self.door().act(viewer, act, moment)
    }

    /// Records what was done, once for each `token`: the same token again answers as the first time.
    pub fn act_once(
        &self,
        token: &str,
        viewer: &Viewer,
        act: &Act,
        moment: &Moment,
    ) -> Result<Outcome, Trouble> {
        self.door().act_once(token, viewer, act, moment)
    }

    /// Takes probe readings; durable within a minute.
    pub fn readings(&self, batch: Vec<SensorReading>, moment: &Moment) -> Result<(), Trouble> {
        self.door().readings(&batch, moment)
    }

    /// Takes what a Bluetooth probe sent: the value `bytes` of a characteristic. Answers the reading taken of it; none
    /// where the probe says no temperature.
    pub fn probe_word(
        &self,
        source: &str,
        sensor: &str,
        characteristic: u16,
        bytes: Vec<u8>,
        moment: &Moment,
    ) -> Result<Option<SensorReading>, Trouble> {
        self.door()
            .probe_word(source, sensor, characteristic, &bytes, moment)
    }

    /// Takes many words of probes, each as heard at its own moment; answers what became of each.
    pub fn probe_words(
        &self,
        viewer: &Viewer,
        words: Vec<HeardWord>,
        moment: &Moment,
    ) -> Result<Vec<WordTaken>, Trouble> {
        self.door().probe_words(viewer, &words, moment)
    }

    /// Why there is no reading in what a Bluetooth probe sent and what can be done, in the viewer's language; none where
    /// there is one.
    pub fn why_no_reading(
        &self,
        viewer: &Viewer,
        characteristic: u16,
        bytes: Vec<u8>,
        moment: &Moment,
    ) -> Option<String> {
        probes::why_none(viewer, characteristic, &bytes, moment)
    }

    /// Takes the file of readings `path` of another instrument, by `plan`: all of it or, where it is no such file, nothing.
    pub fn import_readings(
        &self,
        path: String,
        plan: &ImportPlan,
        cook: Option<CookId>,
        moment: &Moment,
    ) -> Result<Report, Trouble> {
        let file = File::open(path).map_err(StoreTrouble::from)?;
        self.door().import_readings(file, plan, cook, moment)
    }

    /// Takes entries of other devices, in any order, split, repeated; answers how many were not here before.
    pub fn absorb(&self, entries: Vec<Entry>, moment: &Moment) -> Result<u64, Trouble> {
        Ok(self.door().absorb(&entries, moment)?.fresh)
    }

    /// The entries that a device lacks that has, of each log and device, those up to the named one.
    pub fn entries_after(&self, have: Vec<EntryKey>) -> Result<Vec<Entry>, Trouble> {
        let have: Vec<_> = have
            .iter()
            .map(|last| (last.log, last.device, last.n))
            .collect();
        self.door().entries_after(&have)
    }

    /// Writes in the crew's log `log` from now on.
    pub fn join_crew(&self, log: LogId, moment: &Moment) -> Result<(), Trouble> {
        self.door().join_crew(log, moment)
    }

    /// The ordered list of what must ring, at most `limit`: make the platform's list equal to it.
    pub fn alarms(
        &self,
        viewer: &Viewer,
        moment: &Moment,
        limit: u32,
    ) -> Result<AlarmList, Trouble> {
        self.door().alarms(viewer, moment, limit)
    }

    /// Of these names, those whose ring still stands.
    pub fn standing(&self, ids: Vec<AlarmId>, moment: &Moment) -> Result<Vec<AlarmId>, Trouble> {
        self.door().standing(&ids, moment)
    }

    /// Records the act of an alarm's answer, once for each `token`.
    pub fn answer(
        &self,
        token: &str,
        viewer: &Viewer,
        act: &str,
        moment: &Moment,
    ) -> Result<Outcome, Trouble> {
        self.door().answer(token, viewer, act, moment)
    }

    /// Remembers that these rang on this device.
    pub fn rang(&self, ids: Vec<AlarmId>, moment: &Moment) -> Result<(), Trouble> {
        self.door().rang(&ids, moment)
    }

    /// Does up to `steps` steps of the slow part, on the caller's background thread; answers whether there is more.
    pub fn work(&self, moment: &Moment, steps: u32) -> Result<bool, Trouble> {
        self.door().work(moment, steps)
    }

    /// Makes forecasts from now on, in [`work`](Self::work): a shell that shows them asks for it once, at open.
    pub fn make_forecasts(&self) -> Result<(), Trouble> {
        self.door().make_forecasts()
    }

    /// Lets go of files and locks before the platform freezes the process.
    pub fn suspend(&self) -> Result<(), Trouble> {
        self.door().suspend()
    }

    /// Writes all entries to the new file `path`, a line of JSON each; answers how many.
    pub fn export(&self, path: String) -> Result<u64, Trouble> {
        let mut file = File::create_new(path).map_err(StoreTrouble::from)?;
        self.door().export(&mut file)
    }
}
