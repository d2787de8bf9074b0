//! The watch: who has it, and the line with which it is handed over. Start at [`watch`].
//!
//! The watch passes when whoever takes it says so on a device of theirs: given away, it could lie with a phone that is out
//! of reach, and nobody would answer. Who has it can leave a line; whoever takes it finds one written from what is known.

mod records;

pub use records::*;

use super::{Line, Place, Weight, glance::Glance, pitside::to_do};
use crate::{
    alarms::{self, Due},
    cook::{Cook, Known, WatchTurn, ahead::counts},
    ids::{CookId, PitId},
    log::Subject,
    moment::Moment,
    words::{Arg, Viewer, key},
};

/// The most characters of the line: what an act takes.
const LINE_CHARS: usize = 200;
/// So many turns before are shown.
const PAST_SHOWN: usize = 6;

/// Who has the watch; none where the cook is not known here.
pub fn watch(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<WatchScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let turn = known.crew.on_watch(moment.utc_ms);
    let is_mine = turn.is_some_and(|turn| turn.device == viewer.device);
    let pits = glance.pits_of(cook);
    let text = |mine: &'static str, other: &'static str| {
        glance.say.text(if is_mine { mine } else { other })
    };
    Some(WatchScreen {
        cook: cook.id,
        title: glance.say.text("watch-title"),
        held: glance.held(cook, turn),
        is_mine,
        lead: text(key("watch-leave-lead"), key("watch-take-lead")),
        label: glance.say.text("watch-line"),
        note: glance.state_line(cook, &pits, &to_do(&dues, moment.utc_ms)),
        submit: text(key("watch-leave"), key("button-watch")),
        buttons: glance.sleeping(),
        pits: pits
            .iter()
            .map(|pit| glance.pit_line_to(cook, *pit))
            .collect(),
        past: glance.past_turns(turn),
        past_heading: glance.say.text("watch-past"),
        links: glance.links_to(&[(key("link-now"), Place::Now { cook: cook.id })]),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    /// Who has it and who sleeps; what whoever has it left for the next.
    fn held(&self, cook: &Cook, turn: Option<&WatchTurn>) -> Vec<String> {
        let mut lines = match turn {
            Some(_) => vec![],
            None => vec![self.say.text("watch-nobody")],
        };
        lines.extend(self.watch_lines());
        let left = cook.notes.iter().rev().find(|note| {
            let of_turn = turn.is_some_and(|turn| {
                note.when.entry.device == turn.device && note.when.at >= turn.when.at
            });
            note.about == Subject::Crew && of_turn && counts(note.when.at, self.now)
        });
        lines.extend(left.map(|note| {
            let at = self.say.clock_day(note.when.at, self.now);
            let args = [("at", Arg::Text(&at)), ("note", Arg::Text(&note.text))];
            self.say.with("watch-left", &args)
        }));
        lines
    }

    /// "Drum 252 °F at 11:05 AM, fed 9:10 AM. Next: Mop Slab 1 at 11:15 AM." Hours of the clock, for it is read later.
    fn state_line(&self, cook: &Cook, pits: &[PitId], dues: &[Due]) -> String {
        let mut parts: Vec<String> = pits
            .iter()
            .map(|pit| self.pit_in_line(cook, *pit))
            .collect();
        parts.extend(self.first(dues).map(|due| {
            let (verb, what) = (self.verb(due.job), self.object(due.job));
            let when = self.say.clock_day(self.time_of(due), self.now);
            let args = [
                ("verb", Arg::Text(&verb)),
                ("what", Arg::Text(&what)),
                ("when", Arg::Text(&when)),
            ];
            self.say.with("watch-line-next", &args)
        }));
        parts.join(" ").chars().take(LINE_CHARS).collect()
    }

    fn pit_in_line(&self, cook: &Cook, pit: PitId) -> String {
        let name = self.pit(pit);
        let reads = match self.last_of_pit(pit) {
            Some(last) => {
                let (temp, time) = (
                    self.say.temperature(last.temp),
                    self.say.clock_day(last.at, self.now),
                );
                let args = [
                    ("pit", Arg::Text(&name)),
                    ("temp", Arg::Text(&temp)),
                    ("time", Arg::Text(&time)),
                ];
                self.say.with("watch-line-pit", &args)
            }
            None => self
                .say
                .with("watch-line-unread", &[("pit", Arg::Text(&name))]),
        };
        let fed = cook.pits.get(&pit).into_iter().flat_map(|care| &care.fed);
        let fed = fed
            .map(|when| when.at)
            .filter(|at| counts(*at, self.now))
            .max();
        match fed {
            Some(at) => {
                let time = self.say.clock_day(at, self.now);
                let args = [("line", Arg::Text(&reads)), ("time", Arg::Text(&time))];
                self.say.with("watch-line-fed", &args)
            }
            None => self
                .say
                .with("watch-line-end", &[("line", Arg::Text(&reads))]),
        }
    }

    fn past_turns(&self, present: Option<&WatchTurn>) -> Vec<Line> {
        let mut turns: Vec<&WatchTurn> = self.known.crew.watch.iter().collect();
        turns.retain(|turn| Some(*turn) != present && turn.when.at <= self.now);
        turns.sort_by_key(|turn| std::cmp::Reverse((turn.when.at, turn.when.entry)));
        let line = |turn: &WatchTurn| Line {
            name: self.device(turn.device),
            state: self.say.clock_day(turn.when.at, self.now),
            detail: turn.note.clone(),
            weight: Weight::Faint,
            link: None,
        };
        turns.into_iter().take(PAST_SHOWN).map(line).collect()
    }
}
