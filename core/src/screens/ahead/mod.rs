//! When a meat will likely be ready: one line for Now, a section for the meat's own screen, a fan for its chart.
//!
//! All of it is read off the last forecast that was finished; nothing is computed here. A meat that is done or off shows
//! none, and neither does one whose forecast has run out: what stands now is then all that is said.

mod card;
pub(super) mod fan;
mod learned;
mod records;
#[cfg(test)]
mod tests;

pub use records::{AheadCard, AheadChoice};

use super::glance::Glance;
use crate::{
    ahead::{Ahead, Grain, Range, Told},
    alarms::Due,
    cook::{Cook, Known, Piece},
    finish::GRID_MS,
    log::Job,
    moment::MINUTE,
    words::{Arg, key},
};

/// A forecast older than this says its age, milliseconds: one that is made at each instant of the grid is never so old.
const AGED_MS: i64 = 2 * GRID_MS;
/// An opening that is due no further than this from when a check pays takes the check along. Common practice, no source.
const TOGETHER_MS: i64 = 15 * MINUTE;

/// The forecast of a meat that is under way; none where it is over, off the pit, or the forecast has run out.
pub(super) fn forecast_of<'a>(
    known: &Known<'a>,
    cook: &Cook,
    piece: &Piece,
    now: i64,
) -> Option<&'a Ahead> {
    let ahead = known.ahead.get(&piece.id)?;
    let under_way = cook.is_open() && piece.is_itself() && piece.is_on_pit(now);
    let holds = ahead.told.is_none_or(|told| told.ready.to > now);
    (under_way && holds).then_some(ahead)
}

impl Glance<'_> {
    /// The same, and none once the meat is judged done.
    pub(super) fn ahead_of(&self, cook: &Cook, piece: &Piece) -> Option<&Ahead> {
        forecast_of(&self.known, cook, piece, self.now).filter(|_| !self.is_done(piece.id))
    }

    /// "Check from 12:30; likely ready 12:45–1:45 (4 in 5)".
    pub(super) fn ahead_line(&self, cook: &Cook, piece: &Piece, dues: &[Due]) -> Option<String> {
        let ahead = self.ahead_of(cook, piece)?;
        let told = ahead.told?;
        let ready = self.ready_line(&told, ahead.forecast.rough);
        let said = match self.check_line(piece, &told, dues) {
            Some(check) => {
                let args = [("check", Arg::Text(&check)), ("ready", Arg::Text(&ready))];
                self.say.with("ahead-both", &args)
            }
            None => ready,
        };
        Some(match self.is_aged(ahead) {
            true => self.aged(&said, ahead.forecast.made_for),
            false => said,
        })
    }

    fn is_aged(&self, ahead: &Ahead) -> bool {
        self.ahead(ahead.forecast.made_for) <= -AGED_MS
    }

    fn aged(&self, said: &str, made_for: i64) -> String {
        let when = self.say.the_clock_day(made_for, self.now);
        let args = [("said", Arg::Text(said)), ("when", Arg::Text(&when))];
        self.say.with("ahead-aged", &args)
    }

    /// When it will be ready, with how sure that is.
    fn ready_line(&self, told: &Told, rough: bool) -> String {
        let Range { from, to } = told.ready;
        let by = from <= self.now;
        let when = match (told.grain, by) {
            (Grain::DayPart, true) => self.say.day_part(to, self.now),
            (Grain::DayPart, false) => self.say.day_parts(from, to, self.now),
            (_, true) => self.say.the_clock_day(to, self.now),
            (_, false) => self.say.clock_span(from, to, self.now),
        };
        let said = match (by, rough) {
            (true, true) => key("ahead-ready-by-rough"),
            (true, false) => key("ahead-ready-by"),
            (false, true) => key("ahead-ready-rough"),
            (false, false) => key("ahead-ready"),
        };
        self.say.with(said, &[("when", Arg::Text(&when))])
    }

    /// From when a check pays, or at which opening that is due about then anyway.
    fn check_line(&self, piece: &Piece, told: &Told, dues: &[Due]) -> Option<String> {
        let at = told.check?;
        if at <= self.now {
            return Some(self.say.text("ahead-check-now"));
        }
        let opening = self.opening_near(piece, at, dues);
        let said = match opening {
            Some(_) => key("ahead-check-opening"),
            None => key("ahead-check-from"),
        };
        let when = self.say.the_clock_day(opening.unwrap_or(at), self.now);
        Some(self.say.with(said, &[("when", Arg::Text(&when))]))
    }

    /// When its pit is opened anyway, nearest to `at`.
    fn opening_near(&self, piece: &Piece, at: i64, dues: &[Due]) -> Option<i64> {
        let pit = piece.pit(self.now).map(|(pit, _)| pit)?;
        let opens = |due: &&Due| {
            due.pit == Some(pit) && matches!(due.job, Job::Wet(_) | Job::Glaze(_) | Job::RubSet(_))
        };
        let near = dues.iter().filter(opens).map(|due| due.at);
        near.filter(|due| *due > self.now && due.abs_diff(at) <= TOGETHER_MS.unsigned_abs())
            .min_by_key(|due| due.abs_diff(at))
    }
}
