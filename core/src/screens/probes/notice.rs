//! The notice that a shell keeps in sight while it listens: which probe sits where, and when it spoke last;
//! the silent ones first.

use super::{ProbesNotice, RadioTrouble, sitting::Sitting};
use crate::{
    probes::{Hearing, Reach},
    screens::glance::Glance,
    words::Arg,
};

impl Glance<'_> {
    pub fn probes_notice(&self, hearing: &Hearing, trouble: Option<&RadioTrouble>) -> ProbesNotice {
        let tells = |one: &Sitting<'_>| self.is_wanted(one) && self.fell_silent(one);
        let mut sitting: Vec<_> = self.sittings().collect();
        sitting.sort_by_key(|one| !tells(one));
        let silent = sitting.iter().filter(|one| tells(one)).count();
        let kept = hearing
            .sources
            .iter()
            .filter(|one| one.reach != Reach::Nearby);
        let placed = |source: &str| sitting.iter().any(|one| one.source == source);
        let unplaced = kept.filter(|one| !placed(&one.source));
        let unplaced = unplaced.map(|one| {
            let name = self.called(one);
            self.say
                .with("hearing-notice-unplaced", &[("name", Arg::Text(&name))])
        });
        let mut lines: Vec<String> = trouble
            .map(|trouble| trouble.text.clone())
            .into_iter()
            .collect();
        lines.extend(sitting.iter().map(|one| self.notice_line(one)));
        lines.extend(unplaced);
        ProbesNotice {
            title: self.notice_title(silent),
            lines,
        }
    }

    fn notice_title(&self, silent: usize) -> String {
        match i64::try_from(silent) {
            Ok(silent @ 1..) => self
                .say
                .with("hearing-notice-silent", &[("count", Arg::Number(silent))]),
            _ => self.say.text("hearing-notice"),
        }
    }

    /// "Drum: 231 °F at 4:10 AM".
    fn notice_line(&self, one: &Sitting<'_>) -> String {
        let said = match one.last {
            Some((at, temp)) if !self.fell_silent(one) => {
                let (temp, at) = (self.say.temperature(temp), self.say.the_clock(at));
                let args = [("temp", Arg::Text(&temp)), ("at", Arg::Text(&at))];
                self.say.with("hearing-notice-read", &args)
            }
            _ => self.last_said(one),
        };
        let place = self.seat(&one.probe.place);
        let args = [("place", Arg::Text(&place)), ("said", Arg::Text(&said))];
        self.say.with("hearing-notice-line", &args)
    }
}
