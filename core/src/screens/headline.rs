//! The one next thing, huge. Start at [`Glance::headline`].

use super::{Headline, Weight, glance::Glance};
use crate::{
    alarms::{Due, Urgency},
    cadence::share::{Touched, may_share},
    checks::SafeState,
    cook::{Cook, Piece},
    ids::{CookId, PieceId},
    log::{Job, Stage},
    moment::MINUTE,
    safety::Doing,
    words::Arg,
};

impl Glance<'_> {
    /// Of all that is due, soonest first, the one that comes first: what must wake a sleeper before what is merely due.
    pub fn first<'d>(&self, dues: &'d [Due]) -> Option<&'d Due> {
        let due_now = dues.iter().filter(|due| due.at <= self.now);
        due_now
            .min_by_key(|due| (due.urgency, due.at))
            .or(dues.first())
    }

    pub fn headline(&self, cook: CookId, dues: &[Due]) -> Headline {
        let Some(first) = self.first(dues) else {
            return self.nothing_due(cook);
        };
        let together = self.together(first, dues);
        let names: Vec<String> = together.iter().map(|due| self.object(due.job)).collect();
        let (verb, what, when) = (
            self.verb(first.job),
            self.say.list(&names),
            self.due(self.time_of(first)),
        );
        Headline {
            why: self.why(first),
            due: Some(self.time_of(first)),
            weight: self.weight(first),
            buttons: self
                .buttons_of(first, &together)
                .into_iter()
                .map(|button| self.stage_asked(button))
                .collect(),
            link: self.link(first, &together, dues),
            cautions: self.cautions_of(first.job),
            speech: self.speech(&verb, &what, &when),
            verb,
            what,
            when,
        }
    }

    fn nothing_due(&self, cook: CookId) -> Headline {
        let idle = self.known.cooks.get(&cook).is_some_and(|cook| {
            cook.is_open() && !cook.meats().any(|piece| piece.is_on_pit(self.now))
        });
        let all_over = self
            .known
            .cooks
            .get(&cook)
            .filter(|cook| self.is_over(cook));
        if let Some(over) = all_over {
            return self.to_finish(over.id);
        }
        let verb = self.say.text("headline-nothing");
        let why = match idle {
            true => self.say.text("headline-nothing-on"),
            false => self.say.text("headline-nothing-due"),
        };
        Headline {
            speech: format!("{verb}. {why}"),
            verb,
            why,
            what: String::new(),
            when: String::new(),
            due: None,
            weight: Weight::Calm,
            buttons: vec![],
            link: None,
            cautions: vec![],
        }
    }

    /// Whether all of its meats, of which it has some, were served or put away.
    fn is_over(&self, cook: &Cook) -> bool {
        let over = |piece: &Piece| {
            let stage = piece.stage(self.now).map(|passed| passed.stage);
            matches!(
                stage,
                Some(Stage::Served | Stage::PutAway | Stage::ThrownAway)
            )
        };
        cook.is_open() && cook.meats().next().is_some() && cook.meats().all(over)
    }

    fn to_finish(&self, cook: CookId) -> Headline {
        let verb = self.say.text("headline-finish");
        let why = self.say.text("headline-finish-why");
        Headline {
            speech: format!("{verb} {why}"),
            verb,
            why,
            what: String::new(),
            when: String::new(),
            due: None,
            weight: Weight::Calm,
            buttons: vec![self.finish(cook)],
            link: None,
            cautions: match self.has_coals(cook) {
                true => self.cautions(Doing::PuttingPitAway),
                false => vec![],
            },
        }
    }

    fn speech(&self, verb: &str, what: &str, when: &str) -> String {
        let args = [
            ("verb", Arg::Text(verb)),
            ("what", Arg::Text(what)),
            ("when", Arg::Text(when)),
        ];
        match is_asked(verb) {
            true => self.say.with("headline-speech-asked", &args),
            false => self.say.with("headline-speech", &args),
        }
    }

    /// How much something due asks for an eye: what lies ahead is soon within a quarter of an hour.
    pub fn weight(&self, due: &Due) -> Weight {
        match (due.at <= self.now, due.urgency) {
            (true, Urgency::Wake) => Weight::Wake,
            (true, Urgency::Call) => Weight::Call,
            (true, Urgency::Quiet) => Weight::Soon,
            (false, _) if due.at.saturating_sub(self.now) <= 15 * MINUTE => Weight::Soon,
            (false, _) => Weight::Calm,
        }
    }

    /// What is done in the same opening: wettings and glazings at the same pit whose window is open, and that may
    /// share a mop with the first. Rubs of a pit that are due are touched together too.
    pub fn together<'d>(&self, first: &'d Due, dues: &'d [Due]) -> Vec<&'d Due> {
        let mut all = vec![first];
        if matches!(first.job, Job::RubSet(_)) {
            all.extend(dues.iter().filter(|due| {
                let other = matches!(due.job, Job::RubSet(_)) && due.job != first.job;
                let same = due.pit == first.pit && due.cook == first.cook;
                other && same && due.at <= first.at.max(self.now)
            }));
        }
        if let Some(piece) = opened_for(first.job) {
            let others = dues.iter().filter(|due| {
                due.job != first.job
                    && due.pit == first.pit
                    && due.cook == first.cook
                    && opened_for(due.job).is_some_and(|other| self.may_share(piece, other))
                    && due.from <= first.at.max(self.now)
            });
            all.extend(others);
        }
        all
    }

    fn may_share(&self, a: PieceId, b: PieceId) -> bool {
        may_share(self.touched(a), self.touched(b)).is_ok()
    }

    fn touched(&self, id: PieceId) -> Touched {
        let safe = |(cook, piece)| {
            self.verdict(cook, piece)
                .is_ok_and(|verdict| verdict.safety.state == SafeState::Safe)
        };
        let found = self.known.piece(id);
        Touched {
            poultry: found.is_none_or(|(_, piece)| piece.cut.is_poultry()),
            raw: !found.is_some_and(safe),
        }
    }
}

/// The meat that an opening is for.
pub(super) fn opened_for(job: Job) -> Option<PieceId> {
    match job {
        Job::Wet(piece) | Job::Glaze(piece) => Some(piece),
        _ => None,
    }
}

impl Glance<'_> {
    /// "Check: in 20 min", "Has it set? 15 min late".
    pub fn line_due(&self, verb: &str, when: &str) -> String {
        let args = [("verb", Arg::Text(verb)), ("when", Arg::Text(when))];
        match is_asked(verb) {
            true => self.say.with("line-due-asked", &args),
            false => self.say.with("line-due", &args),
        }
    }

    /// "Check: Butt", "Has it set? Slab 1".
    pub fn line_job(&self, verb: &str, what: &str) -> String {
        let args = [("verb", Arg::Text(verb)), ("what", Arg::Text(what))];
        match is_asked(verb) {
            true => self.say.with("line-job-asked", &args),
            false => self.say.with("line-job", &args),
        }
    }
}

/// Whether a verb is a question ("Has it set?"), which takes no colon after it.
fn is_asked(verb: &str) -> bool {
    verb.ends_with('?')
}
