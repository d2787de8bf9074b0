//! One meat in one line: what is next for it, where it is, how warm it was last.

use super::{Line, Place, Weight, glance::Glance, verdict_text::weight_of};
use crate::{
    alarms::Due,
    checks::{PASS_MS, Spot, TestResult, Trust},
    cook::{Cook, Piece, verdict_input::verdict_input},
    log::Stage,
    moment::MINUTE,
    units::Mk,
    words::Arg,
};
use std::collections::BTreeMap;

/// At most so many meats on the screen of a propped phone; the rest are counted.
pub(super) const MEATS_SHOWN: usize = 12;

impl Glance<'_> {
    /// The meats of a cook, what asks most for an eye first, then what is due soonest, then by name; each also in brief.
    pub fn meat_lines(&self, cook: &Cook, dues: &[Due]) -> (Vec<Line>, Vec<String>) {
        let mut lines: Vec<_> = cook
            .meats()
            .map(|piece| {
                let ours: Vec<Due> = dues
                    .iter()
                    .filter(|due| due.job.piece() == Some(piece.id))
                    .cloned()
                    .collect();
                let due = self.first(&ours);
                let line = self.meat_line(cook, piece, due, dues);
                let at = due.map_or(i64::MAX, |due| due.at);
                let order = (line.weight, at, line.name.clone(), piece.id);
                (order, (line, self.brief(cook, piece, due)))
            })
            .collect();
        lines.sort_by(|a, b| a.0.cmp(&b.0));
        lines.into_iter().map(|(_, shown)| shown).unzip()
    }

    /// When something is due of it, else what its checks say, else where it is: "14 min", "late", "Done".
    fn brief(&self, cook: &Cook, piece: &Piece, due: Option<&Due>) -> String {
        if let Some(due) = due {
            return match self.ahead(due.at) {
                late if late < 0 => self.say.text("brief-late"),
                0 => self.say.text("relative-now"),
                ahead => self.brief_time(ahead / MINUTE),
            };
        }
        let stage = piece.stage(self.now).map(|passed| passed.stage);
        let tried = piece.is_on_pit(self.now) && !piece.checks.is_empty();
        match self.verdict(cook, piece) {
            Ok(verdict) if tried => self.say.text(verdict.state.key()),
            _ => self.stage(stage),
        }
    }

    /// "14 min", "2 h 10": hours leave out the word for minutes.
    fn brief_time(&self, minutes: i64) -> String {
        let (hours, rest) = (minutes / 60, minutes % 60);
        if hours == 0 || rest == 0 {
            return self.say.duration(minutes * MINUTE);
        }
        let args = [
            ("hours", Arg::Number(hours)),
            ("minutes", Arg::Number(rest)),
        ];
        self.say.with("brief-hours", &args)
    }

    fn meat_line(&self, cook: &Cook, piece: &Piece, due: Option<&Due>, dues: &[Due]) -> Line {
        let stage = self.where_it_is(piece);
        let over = matches!(
            piece.stage(self.now).map(|passed| passed.stage),
            Some(Stage::Served | Stage::PutAway | Stage::ThrownAway)
        );
        let mut rest = vec![];
        let (mut state, mut weight) = match due {
            Some(due) => {
                rest.push(stage);
                let (verb, when) = (self.verb(due.job), self.due(due.at));
                (self.line_due(&verb, &when), self.weight(due))
            }
            None if over => (stage, Weight::Faint),
            None => (stage, Weight::Calm),
        };
        for gap in self.gaps_of_meat(piece) {
            match weight > Weight::Call {
                true => rest.insert(0, std::mem::replace(&mut state, gap)),
                false => rest.push(gap),
            }
            weight = weight.min(Weight::Call);
        }
        rest.extend(self.ahead_line(cook, piece, dues));
        rest.extend(self.last_temperature(cook, piece));
        let judged = self.verdict(cook, piece).ok().filter(|_| !over);
        let tried = judged.filter(|_| !piece.checks.is_empty());
        rest.extend(tried.as_ref().map(|v| self.say.text(v.state.key())));
        let unchecked = tried.as_ref().is_some_and(|v| v.say_unchecked);
        rest.extend(unchecked.then(|| self.say.text("line-unchecked")));
        let asks = tried
            .filter(|_| piece.is_on_pit(self.now))
            .map_or(Weight::Calm, |verdict| weight_of(verdict.state));
        Line {
            name: piece.name.value.clone(),
            state,
            detail: rest.join(" · "),
            weight: if over { weight } else { weight.min(asks) },
            link: Some(Place::Piece { piece: piece.id }),
        }
    }

    /// "On Drum, 1 h 20 min".
    pub fn where_it_is(&self, piece: &Piece) -> String {
        let passed = piece.stage(self.now);
        let stage = self.stage(passed.map(|passed| passed.stage));
        match passed {
            Some(passed) => {
                let lasting = self.lasting(passed.when.at);
                let args = [
                    ("stage", Arg::Text(&stage)),
                    ("lasting", Arg::Text(&lasting)),
                ];
                self.say.with("line-stage", &args)
            }
            None => stage,
        }
    }

    /// "162 °F 3 min ago", by hand or by a probe: of the places read in the last ten minutes of readings the coldest, as
    /// its thermometer's check corrects it.
    pub fn last_temperature(&self, cook: &Cook, piece: &Piece) -> Option<String> {
        let input = verdict_input(&self.known, cook, piece, self.now);
        let mut last: BTreeMap<Spot, (i64, Mk)> = BTreeMap::new();
        for dated in &input.checks {
            let (TestResult::Heat(heat), Some(standing)) = (dated.result, dated.standing) else {
                continue;
            };
            let mk = match standing.trust(heat.mk) {
                Trust::Counts(mk) | Trust::Corrected(mk) => mk,
                Trust::TooFarOff => continue,
            };
            let kept = last.entry(heat.spot).or_insert((dated.at, mk));
            if (dated.at, -mk.0) > (kept.0, -kept.1.0) {
                *kept = (dated.at, mk);
            }
        }
        let newest = last.values().map(|(at, _)| *at).max()?;
        let recent = last.into_values().filter(|(at, _)| *at >= newest - PASS_MS);
        let (at, mk) = recent.min_by_key(|(at, mk)| (*mk, std::cmp::Reverse(*at)))?;
        let (temp, age) = (self.say.temperature(mk), self.ago(at));
        let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
        Some(self.say.with("pit-reads", &args))
    }
}
