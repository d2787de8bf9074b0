//! The one door, shared by all pages: a lock, a clock, and word of each change. Start at [`Home::ask`].

use crate::{clock::Clock, told::Told};
use slowbend_core::{door::Slowbend, error::Trouble, ids::DeviceId, moment::Moment};
use std::{
    path::PathBuf,
    sync::{Arc, Mutex, PoisonError},
};
use tokio::sync::{broadcast, watch};

/// How many alarms are asked for: as many as core gives.
pub const ALARMS: u32 = 60;

/// What every handler is given.
pub struct Home {
    door: Mutex<Slowbend>,
    clock: Clock,
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
    changes: broadcast::Sender<()>,
    closing: watch::Sender<bool>,
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
        Arc::new(Self {
            device,
            door: Mutex::new(door),
            clock,
            zone,
            port,
            data,
            told: Told::default(),
            changes: broadcast::channel(64).0,
            closing: watch::channel(false).0,
        })
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
        self.closing.send_replace(true);
    }

    /// Sets a standing clock; a machine's clock cannot be set from here.
    #[cfg(test)]
    pub fn set_clock(&self, utc_ms: i64) {
        if let Clock::Standing(at) = &self.clock {
            at.store(utc_ms, std::sync::atomic::Ordering::SeqCst);
        }
    }
}
