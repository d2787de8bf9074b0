//! One glance of one viewer at one moment: what every screen is written from. Start at [`Glance::of`].
//!
//! Law: what is shown of a length of time is counted between wall-clock minutes, so a screen changes on the minute, or
//! when something falls due, and at no other instant.

use crate::{
    alarms::{Due, SILENT_MS, is_read_or_back},
    checks::{Refused, Verdict, verdict},
    cook::{Cook, Known, Piece, verdict_input::verdict_input},
    ids::{DeviceId, PieceId, PitId},
    log::Job,
    moment::{MINUTE, Moment},
    words::{Arg, Viewer, Words},
};
use std::collections::BTreeSet;

/// Who sees what, when.
pub(super) struct Glance<'a> {
    pub known: Known<'a>,
    pub viewer: &'a Viewer,
    pub say: Words<'a>,
    pub now: i64,
}

const fn minute(at: i64) -> i64 {
    at.div_euclid(MINUTE).saturating_mul(MINUTE)
}

/// The last instant of the minute of `at`.
pub(super) const fn minute_end(at: i64) -> i64 {
    minute(at).saturating_add(MINUTE - 1)
}

impl<'a> Glance<'a> {
    pub fn of(known: &Known<'a>, viewer: &'a Viewer, moment: &Moment) -> Self {
        Self {
            known: *known,
            viewer,
            say: Words::of(viewer),
            now: moment.utc_ms,
        }
    }

    /// Whole minutes from now to `at`, in milliseconds; below 0 for what is past.
    pub fn ahead(&self, at: i64) -> i64 {
        minute(at).saturating_sub(minute(self.now))
    }

    /// The beginning of this minute.
    pub fn this_minute(&self) -> i64 {
        minute(self.now)
    }

    /// The last instant of this minute: clocks of safety are told as of then, so that they change on the minute and are never
    /// told shorter than they are.
    pub fn minute_end(&self) -> i64 {
        minute_end(self.now)
    }

    /// "12 min ago".
    pub fn ago(&self, at: i64) -> String {
        self.say.ago(self.ahead(at).saturating_neg().max(0))
    }

    /// "1 h 20 min", of what lasts since `at`.
    pub fn lasting(&self, at: i64) -> String {
        self.say.duration(self.ahead(at).min(0))
    }

    /// Whether a probe that spoke last at `at` has gone silent. On the minute, as screens change.
    pub fn is_long_ago(&self, at: i64) -> bool {
        self.ahead(at) <= -SILENT_MS
    }

    /// "in 12 min", "now", "12 min late".
    pub fn due(&self, at: i64) -> String {
        match self.ahead(at) {
            late if late < 0 => {
                let late = self.say.duration(late);
                self.say.with("screen-late", &[("late", Arg::Text(&late))])
            }
            ahead => self.say.until(ahead),
        }
    }

    /// The next minute of the wall clock, or the next of `dues` if that is sooner.
    pub fn until(&self, dues: &[Due]) -> i64 {
        let next = dues.iter().map(|due| due.at).filter(|at| *at > self.now);
        next.fold(minute(self.now) + MINUTE, i64::min)
    }

    /// When a job is for: a serving is called ahead of its time.
    pub fn time_of(&self, due: &Due) -> i64 {
        let cook = self.known.cooks.get(&due.cook);
        match (due.job, cook.and_then(|cook| cook.serve.value.as_ref())) {
            (Job::Serve(_), Some(serve)) => serve.at,
            _ => due.at,
        }
    }

    /// Whether the meat is judged done at this minute.
    pub fn is_done(&self, id: PieceId) -> bool {
        self.known.piece(id).is_some_and(|(cook, piece)| {
            self.verdict(cook, piece)
                .is_ok_and(|verdict| verdict.state.says_done())
        })
    }

    /// Whether a meat came off before its minimum was shown, and that is what this job is about.
    pub fn is_read_or_back(&self, job: Job) -> bool {
        is_read_or_back(&self.known, job, self.now)
    }

    /// A name at the beginning of a sentence.
    pub fn begins(sentence: &str) -> String {
        let mut letters = sentence.chars();
        letters.next().map_or_else(String::new, |first| {
            first.to_uppercase().chain(letters).collect()
        })
    }

    pub fn pit(&self, id: PitId) -> String {
        match self.known.crew.pits.get(&id) {
            Some(pit) => pit.name.value.clone(),
            None => self.say.text("screen-some-pit"),
        }
    }

    pub fn device(&self, id: DeviceId) -> String {
        let person = self.known.crew.people.get(&id);
        match person.and_then(|person| person.name.as_ref()) {
            Some(name) => name.value.clone(),
            None if id == self.viewer.device => self.say.text("screen-this-device"),
            None => self.say.text("screen-other-device"),
        }
    }

    /// The verdict as of this minute. What was done within it counts as done at its beginning, one after another in its
    /// order: what was read last stands, on screens as for alarms. A rest that began within it has not begun, so nothing
    /// is ever said early.
    pub fn verdict(&self, cook: &Cook, piece: &Piece) -> Result<Verdict, Refused> {
        let mut input = verdict_input(&self.known, cook, piece, self.now);
        let began = minute(self.now);
        let within: BTreeSet<i64> = input.checks.iter().map(|check| check.at).collect();
        let within: Vec<i64> = within.into_iter().filter(|at| *at > began).collect();
        let place = |at: i64| within.partition_point(|one| *one <= at) as i64;
        for check in &mut input.checks {
            check.at = check.at.min(began).saturating_add(place(check.at));
        }
        input.now = began.saturating_add(within.len() as i64);
        input.resting_since = input.resting_since.map(|since| since.min(began));
        verdict(&input)
    }
}
