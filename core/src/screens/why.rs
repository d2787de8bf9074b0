//! Why something is due, in one line.

use super::{glance::Glance, zone::zone_why};
use crate::{
    alarms::{Due, put_away_limit},
    cadence::{Cadence, rhythm::RUB_ASKED_AGAIN_MIN},
    cook::rhythm_facts::rhythm_facts,
    ids::{PieceId, PitId},
    log::Job,
    moment::MINUTE,
    words::{Arg, key},
};

impl Glance<'_> {
    pub fn why(&self, due: &Due) -> String {
        match due.job {
            Job::RubSet(_) => {
                let again = self.say.duration(RUB_ASKED_AGAIN_MIN * MINUTE);
                self.say
                    .with("because-rub-set", &[("again", Arg::Text(&again))])
            }
            Job::Wet(piece) => self.why_wet(piece, due),
            Job::Check(piece) if self.is_read_or_back(due.job) => self.why_read_or_back(piece),
            Job::Check(piece) => self.why_check(piece),
            Job::Serve(cook) => self.why_serve(cook),
            Job::PutAway(piece) => self.why_put_away(piece),
            Job::ComeUp(_) | Job::KeepHot(_) => {
                zone_why(&self.known, &self.say, due, self.now).unwrap_or_default()
            }
            Job::Outside(pit) | Job::Silent(pit) => self.why_pit(pit),
            Job::FireRound(pit) if self.is_feed(due, pit) => self.say.text("because-feed-planned"),
            job => self.say.text(match job {
                Job::Glaze(_) => key("because-glaze"),
                Job::Pull(piece) if self.is_done(piece) => key("because-pull-done"),
                Job::Pull(_) => key("because-pull"),
                Job::WakeUp(_) => key("because-wake-up"),
                _ => key("because-fire-round"),
            }),
        }
    }

    fn why_wet(&self, id: PieceId, due: &Due) -> String {
        let Some((cook, piece)) = self.known.piece(id) else {
            return String::new();
        };
        let facts = rhythm_facts(cook, piece, self.known.crew, self.viewer.device, self.now);
        let last = facts.wet_at.iter().max().map(|at| self.ago(*at));
        let every = self.cadence(piece.cadence.value);
        let line = match &last {
            Some(last) => {
                let args = [("every", Arg::Text(&every)), ("last", Arg::Text(last))];
                self.say.with("because-wet", &args)
            }
            None => self
                .say
                .with("because-wet-first", &[("every", Arg::Text(&every))]),
        };
        match (due.missed, piece.cadence.value) {
            (0, _) | (_, Cadence::None) => line,
            (missed, _) => {
                let args = [("line", Arg::Text(&line)), ("count", Arg::Number(missed))];
                self.say.with("because-missed", &args)
            }
        }
    }

    /// By when it must be away, and once that is past, that it is.
    fn why_put_away(&self, id: PieceId) -> String {
        let by = self.known.piece(id).and_then(|(cook, piece)| {
            let served = piece.stage(self.now)?.when.at;
            let limit = put_away_limit(&self.known, cook, piece, served, self.now);
            Some(served.saturating_add(limit))
        });
        let by = by.unwrap_or(self.now);
        match self.ahead(by) > 0 {
            true => {
                let time = self.say.clock_day(by, self.now);
                self.say
                    .with("because-put-away-by", &[("time", Arg::Text(&time))])
            }
            false => self.say.text("because-put-away"),
        }
    }

    fn why_check(&self, id: PieceId) -> String {
        let Some((cook, piece)) = self.known.piece(id) else {
            return String::new();
        };
        if piece.checks.is_empty() {
            return self.say.text("because-check-first");
        }
        let headline = self.verdict_text(cook, piece).headline;
        self.say
            .with("because-check", &[("state", Arg::Text(&headline))])
    }

    fn why_read_or_back(&self, id: PieceId) -> String {
        let Some((cook, piece)) = self.known.piece(id) else {
            return String::new();
        };
        let safety = self.verdict_text(cook, piece).safety;
        self.say
            .with("because-read-or-back", &[("safety", Arg::Text(&safety))])
    }

    fn why_serve(&self, id: crate::ids::CookId) -> String {
        let cook = self.known.cooks.get(&id);
        match cook.and_then(|cook| cook.serve.value.as_ref()) {
            Some(serve) => {
                let time = self.say.clock_day(serve.at, self.now);
                self.say
                    .with("because-serve", &[("time", Arg::Text(&time))])
            }
            None => String::new(),
        }
    }

    fn why_pit(&self, pit: PitId) -> String {
        let line = self.pit_line_of(pit);
        let parts = [line.state, line.detail];
        let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        said.join(" · ")
    }
}
