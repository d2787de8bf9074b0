//! Files that are being taken, each on a thread of its own: the door is asked only once a file was read to its end, so no
//! page waits for one. Start at [`Takings::begin`].
//!
//! Law: a file is taken whole or not at all. Until it was read nothing of it is kept anywhere but in memory, so that one
//! that is stopped, or whose program ends, leaves nothing behind.

use crate::{home::Home, once};
use slowbend_core::{
    door::Gathered,
    ids::CookId,
    readings::{ImportPlan, Report, Told as _},
    words::{Viewer, Words},
};
use std::{
    collections::VecDeque,
    io::{self, Read},
    sync::{
        Arc, Mutex, PoisonError,
        atomic::{AtomicBool, AtomicU64, Ordering},
    },
};

/// How many are remembered: those whose page somebody may still have open.
const KEPT: usize = 16;

/// How far one has come.
#[derive(Clone, Debug)]
pub enum State {
    /// It is being read.
    Reading,
    /// It was read and is being kept.
    Keeping,
    /// It was taken.
    Taken(Report),
    /// It was not, and why.
    Refused(String),
    /// Somebody stopped it.
    Stopped,
}

/// One file on its way.
pub struct Taking {
    /// Its number, as its address has it.
    pub number: u128,
    /// The form that brought it.
    token: String,
    /// The cook that it is for.
    pub cook: CookId,
    /// How long it is, bytes.
    pub bytes: u64,
    read: AtomicU64,
    stop: AtomicBool,
    state: Mutex<State>,
}

/// All that are on their way or were.
#[derive(Default)]
pub struct Takings(Mutex<VecDeque<Arc<Taking>>>);

impl Takings {
    /// The one of that number.
    pub fn of(&self, number: u128) -> Option<Arc<Taking>> {
        self.find(|taking| taking.number == number)
    }

    /// The one that a form brought before: a form sent twice is one.
    pub fn of_form(&self, token: &str) -> Option<Arc<Taking>> {
        self.find(|taking| once::is_token(token) && taking.token == token)
    }

    fn find(&self, is: impl Fn(&Taking) -> bool) -> Option<Arc<Taking>> {
        let kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.iter().find(|taking| is(taking)).cloned()
    }

    fn keep(&self, taking: &Arc<Taking>) {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.push_back(Arc::clone(taking));
        if kept.len() > KEPT {
            kept.pop_front();
        }
    }

    /// Begins to take `file`, `bytes` long, into `cook`.
    pub fn begin(
        home: &Arc<Home>,
        viewer: &Viewer,
        (cook, token): (CookId, &str),
        (file, bytes): (impl Read + Send + 'static, u64),
        plan: ImportPlan,
    ) -> Arc<Taking> {
        let taking = Arc::new(Taking {
            number: u128::from_str_radix(&once::token(), 16).unwrap_or_default(),
            token: token.to_owned(),
            cook,
            bytes,
            read: AtomicU64::default(),
            stop: AtomicBool::default(),
            state: Mutex::new(State::Reading),
        });
        home.takings.keep(&taking);
        let (home, viewer, ours) = (Arc::clone(home), viewer.clone(), Arc::clone(&taking));
        tokio::task::spawn_blocking(move || {
            let file = Watched {
                file,
                taking: &ours,
                home: &home,
            };
            ours.now(State::Reading);
            let end = match Gathered::read(file, &plan) {
                _ if ours.is_stopped() => State::Stopped,
                Err(fault) => State::Refused(fault.said(&Words::of(&viewer))),
                Ok(gathered) => ours.keep(&home, gathered),
            };
            ours.now(end);
            home.changed();
        });
        taking
    }
}

impl Taking {
    /// How far it has come.
    pub fn state(&self) -> State {
        self.state
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// How much was read, in percent.
    pub fn percent(&self) -> u64 {
        let read = self.read.load(Ordering::Relaxed).min(self.bytes);
        read.saturating_mul(100)
            .checked_div(self.bytes)
            .unwrap_or(100)
    }

    /// Stops it, if it is not being kept already.
    pub fn stop(&self) {
        self.stop.store(true, Ordering::SeqCst);
    }

    fn is_stopped(&self) -> bool {
        self.stop.load(Ordering::SeqCst)
    }

    fn now(&self, state: State) {
        *self.state.lock().unwrap_or_else(PoisonError::into_inner) = state;
    }

    fn keep(&self, home: &Home, gathered: Gathered) -> State {
        self.now(State::Keeping);
        let cook = Some(self.cook);
        match home.ask_here(|door, moment| door.take_gathered(gathered, cook, moment)) {
            Ok(report) => State::Taken(report),
            Err(trouble) => State::Refused(trouble.reason().to_owned()),
        }
    }
}

/// A file that counts what is read of it, and ends in an error once it is stopped or the program ends.
struct Watched<'a, R> {
    file: R,
    taking: &'a Taking,
    home: &'a Home,
}

impl<R: Read> Read for Watched<'_, R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        self.goes_on()?;
        let read = self.file.read(into)?;
        self.taking.read.fetch_add(read as u64, Ordering::Relaxed);
        // A read can take long: the program may have begun to end during the last one.
        self.goes_on()?;
        Ok(read)
    }
}

impl<R> Watched<'_, R> {
    /// An error once the file is stopped or the program ends.
    fn goes_on(&self) -> io::Result<()> {
        if *self.home.closing().borrow() {
            self.taking.stop();
        }
        match self.taking.is_stopped() {
            true => Err(io::Error::other("stopped")),
            false => Ok(()),
        }
    }
}
