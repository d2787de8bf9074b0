//! What happened to this device, told to a person.

use super::{Notice, glance::Glance};
use crate::{cook::Warning, words::Arg};

impl Glance<'_> {
    pub fn warning(&self, warning: &Warning) -> Option<Notice> {
        match warning {
            Warning::SetAside { file, entries } => {
                let count = i64::try_from(*entries).unwrap_or(i64::MAX);
                let args = [("file", Arg::Text(file)), ("count", Arg::Number(count))];
                let text = self.say.with("notice-set-aside", &args);
                self.dismissible(format!("set_aside/{file}"), text)
            }
            Warning::Cloned => {
                let text = self.say.text("notice-cloned");
                self.dismissible(format!("cloned/{}", self.known.device), text)
            }
            Warning::ClockMoved { by_ms, at } => {
                let by = self.say.duration(*by_ms);
                let args = [("by", Arg::Text(&by))];
                let text = match *by_ms < 0 {
                    true => self.say.with("notice-clock-back", &args),
                    false => self.say.with("notice-clock-forward", &args),
                };
                self.dismissible(format!("clock_moved/{at}"), text)
            }
            Warning::Forked { entries } => {
                let text = self
                    .say
                    .with("notice-forked", &[("count", Arg::Number(*entries))]);
                self.dismissible(format!("forked/{entries}"), text)
            }
            Warning::OddClock { device, stamp_ms } => {
                let (name, time) = (
                    self.device(*device),
                    self.say.clock_day(*stamp_ms, self.now),
                );
                let args = [("name", Arg::Text(&name)), ("time", Arg::Text(&time))];
                let text = self.say.with("notice-odd-clock", &args);
                self.dismissible(format!("odd_clock/{device}/{stamp_ms}"), text)
            }
        }
    }
}
