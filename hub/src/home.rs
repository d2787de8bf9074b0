//! The one door, shared by all pages: a lock, a clock, and word of each change. Start at [`Home::ask`].

use crate::{
    clock::Clock,
    demo::{Demo, Invented},
    incoming::Waiting,
    lan::Lan,
    taking::Takings,
    told::Told,
};
use slowbend_core::{door::Slowbend, error::Trouble, ids::DeviceId, moment::Moment};
use std::{
    path::PathBuf,
    sync::{Arc, Mutex, OnceLock, PoisonError},
};
use tokio::sync::{broadcast, watch};

/// How many alarms are asked for: as many as core gives.
pub const ALARMS: u32 = 60;

/// What every handler is given.
pub struct Home {
    door: Mutex<Slowbend>,
    clock: Arc<Clock>,
    /// The machine's zone, for viewers who chose none.
    pub zone: String,
    /// This device.
    pub device: DeviceId,
    /// The port it is served on.
    pub port: u16,
    /// The data folder.
    pub data: PathBuf,
    /// What was just done, to be told on the next page.
    pub told: Told,
    /// Files of readings that are being taken.
    pub takings: Takings,
    /// Files whose form came back with a question.
    pub waiting: Waiting,
    changes: broadcast::Sender<()>,
    closing: watch::Sender<bool>,
    /// What this home plays, where it is the demo's.
    pub invented: Option<Invented>,
    demo: Mutex<Option<Arc<Self>>>,
    /// What is served on the home's network, where anything is.
    pub lan: OnceLock<Arc<Lan>>,
}

impl Home {
    /// A home around an open door.
    pub fn new(
        door: Slowbend,
        device: DeviceId,
        clock: Clock,
        zone: String,
        data: PathBuf,
        port: u16,
    ) -> Arc<Self> {
        Self::around(door, device, Arc::new(clock), zone, data, port, None)
    }

    fn around(
        door: Slowbend,
        device: DeviceId,
        clock: Arc<Clock>,
        zone: String,
        data: PathBuf,
        port: u16,
        invented: Option<Invented>,
    ) -> Arc<Self> {
        Arc::new(Self {
            device,
            door: Mutex::new(door),
            clock,
            invented,
            demo: Mutex::default(),
            lan: OnceLock::new(),
            zone,
            port,
            data,
            told: Told::default(),
            takings: Takings::default(),
            waiting: Waiting::default(),
            changes: broadcast::channel(64).0,
            closing: watch::channel(false).0,
        })
    }

    /// A home for the demo, by the same clock and on the same port, around a door of its own.
    pub fn for_demo(
        &self,
        door: Slowbend,
        device: DeviceId,
        data: PathBuf,
        it: Invented,
    ) -> Arc<Self> {
        let (clock, zone) = (Arc::clone(&self.clock), it.zone.clone());
        Self::around(door, device, clock, zone, data, self.port, Some(it))
    }

    /// The demo that is under way, if one was asked for.
    pub fn demo(&self) -> Option<Arc<Self>> {
        self.demo
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// Puts a demo in the place of the one before, which is let go.
    pub fn play(&self, demo: Arc<Self>) {
        let mut kept = self.demo.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(before) = kept.replace(demo) {
            before.close();
        }
    }

    /// How the demo is seen from here.
    pub fn sees_demo(&self) -> Demo {
        let under_way = || {
            self.demo()
                .and_then(|demo| Some(demo.invented.as_ref()?.cook))
        };
        match &self.invented {
            Some(_) => Demo::Here,
            None => under_way().map_or(Demo::Asleep, Demo::UnderWay),
        }
    }

    /// When it is.
    pub fn moment(&self) -> Moment {
        self.clock.moment(&self.zone)
    }

    /// Asks the door on a thread that may wait for the disk.
    ///
    /// # Errors
    /// What the door answers.
    pub async fn ask<T: Send + 'static>(
        self: &Arc<Self>,
        question: impl FnOnce(&mut Slowbend, &Moment) -> Result<T, Trouble> + Send + 'static,
    ) -> Result<T, Trouble> {
        let home = Arc::clone(self);
        let asked = tokio::task::spawn_blocking(move || home.ask_here(question)).await;
        asked.unwrap_or_else(|stopped| std::panic::resume_unwind(stopped.into_panic()))
    }

    /// Asks the door on this thread.
    ///
    /// # Errors
    /// What the door answers.
    pub fn ask_here<T>(
        &self,
        question: impl FnOnce(&mut Slowbend, &Moment) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        let mut door = self.door.lock().unwrap_or_else(PoisonError::into_inner);
        question(&mut door, &self.moment())
    }

    /// Tells every open page that something is not as it was.
    pub fn changed(&self) {
        // Nobody listening is well.
        let _ = self.changes.send(());
    }

    /// Hears of changes from now on.
    pub fn changes(&self) -> broadcast::Receiver<()> {
        self.changes.subscribe()
    }

    /// Hears when the program is about to end.
    pub fn closing(&self) -> watch::Receiver<bool> {
        self.closing.subscribe()
    }

    /// Lets every open page go.
    pub fn close(&self) {
        if let Some(demo) = self.demo() {
            demo.close();
        }
        self.closing.send_replace(true);
    }

    /// Sets a standing clock; a machine's clock cannot be set from here.
    #[cfg(test)]
    pub fn set_clock(&self, utc_ms: i64) {
        if let Clock::Standing(at) = &*self.clock {
            at.store(utc_ms, std::sync::atomic::Ordering::SeqCst);
        }
    }
}
