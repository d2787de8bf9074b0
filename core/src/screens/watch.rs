//! Who answers what rings, and who sleeps.

use super::glance::Glance;
use crate::words::Arg;

impl Glance<'_> {
    pub fn watch_lines(&self) -> Vec<String> {
        let crew = self.known.crew;
        let mut lines: Vec<String> = vec![];
        lines.extend(crew.on_watch(self.now).map(|turn| {
            let (name, since) = (
                self.device(turn.device),
                self.say.the_clock_day(turn.when.at, self.now),
            );
            let args = [("name", Arg::Text(&name)), ("since", Arg::Text(&since))];
            let line = Self::begins(&self.say.with("watch-held", &args));
            match turn.note.as_str() {
                "" => line,
                note => {
                    let args = [("line", Arg::Text(&line)), ("note", Arg::Text(note))];
                    self.say.with("watch-note", &args)
                }
            }
        }));
        for (device, person) in &crew.people {
            lines.extend(person.asleep_until(self.now).map(|until| {
                let (name, until) = (
                    self.device(*device),
                    self.say.the_clock_day(until, self.now),
                );
                let args = [("name", Arg::Text(&name)), ("until", Arg::Text(&until))];
                Self::begins(&self.say.with("watch-asleep", &args))
            }));
        }
        lines
    }
}
