//! The buttons, each with the act it stands for.

use super::{Button, Tone, glance::Glance};
use crate::{
    acts::Act,
    alarms::Due,
    cook::Dish,
    ids::{CookId, DishId, PieceId, PitId},
    log::{Job, Stage},
    moment::{HOUR, MINUTE},
    words::{Arg, key},
};

/// "In 10 min".
const LATER_MINUTES: i64 = 10;
/// "Did it 5 min ago".
const EARLIER_MS: i64 = 5 * MINUTE;

pub(super) const fn button(label: String, act: Act, tone: Tone) -> Button {
    Button {
        label,
        act,
        tone,
        confirm: None,
    }
}

/// The same button, asked about first.
fn asked(button: Button, question: String) -> Button {
    Button {
        tone: Tone::Grave,
        confirm: Some(question),
        ..button
    }
}

/// What is wetted or glazed in one opening.
pub(super) struct Opening {
    pub pit: Option<PitId>,
    pub wetted: Vec<PieceId>,
    pub glazed: Vec<PieceId>,
}

impl Opening {
    fn act(&self, at: Option<i64>) -> Act {
        Act::Open {
            pit: self.pit,
            wetted: self.wetted.clone(),
            turned: vec![],
            glazed: self.glazed.clone(),
            at,
        }
    }
}

impl Glance<'_> {
    pub fn main(&self, label: &'static str, act: Act) -> Button {
        button(self.say.text(label), act, Tone::Main)
    }

    pub fn plain(&self, label: &'static str, act: Act) -> Button {
        button(self.say.text(label), act, Tone::Plain)
    }

    /// Did it, did it a while ago, later, and not this time, for all of the opening; and for each meat of several, not
    /// that one.
    pub fn opening_buttons(&self, opening: &Opening, together: &[&Due]) -> Vec<Button> {
        let mut all = vec![
            self.main("button-did-it", opening.act(None)),
            self.plain(
                "button-did-it-ago",
                opening.act(Some(self.this_minute() - EARLIER_MS)),
            ),
        ];
        all.push(self.later(together));
        all.push(self.skip(together));
        if together.len() > 1 {
            all.extend(together.iter().map(|due| self.skip_one(due)));
        }
        all
    }

    /// All of these in ten minutes.
    pub fn later(&self, dues: &[&Due]) -> Button {
        let (cook, jobs) = jobs_of(dues);
        let minutes = LATER_MINUTES;
        self.plain(
            "button-later",
            Act::Later {
                cook,
                jobs,
                minutes,
            },
        )
    }

    /// None of these this time; asked about first, for what is left out rings no more.
    pub fn skip(&self, dues: &[&Due]) -> Button {
        let names: Vec<String> = dues.iter().map(|due| self.object(due.job)).collect();
        self.skipping(self.say.text("button-skip"), dues, &self.say.list(&names))
    }

    /// One of several not this time.
    fn skip_one(&self, due: &Due) -> Button {
        let label = self.labelled(Some(due.job), "button-skip");
        self.skipping(label, &[due], &self.object(due.job))
    }

    fn skipping(&self, label: String, dues: &[&Due], what: &str) -> Button {
        let (cook, jobs) = jobs_of(dues);
        let verb = dues.first().map_or(String::new(), |due| self.verb(due.job));
        let args = [("verb", Arg::Text(&verb)), ("what", Arg::Text(what))];
        asked(
            button(label, Act::Skip { cook, jobs }, Tone::Plain),
            self.say.with("confirm-skip", &args),
        )
    }

    /// An answer that ends a job for good, asked about first.
    pub fn answer_for_good(
        &self,
        label: &'static str,
        question: &'static str,
        due: &Due,
    ) -> Button {
        let what = self.object(due.job);
        let question = self.say.with(question, &[("what", Arg::Text(&what))]);
        asked(self.answer(label, due, Tone::Plain), question)
    }

    /// On the propped phone a slip of a greasy hand changes no stage: it is asked about there.
    pub fn stage_asked(&self, button: Button) -> Button {
        let Act::SetStage { piece, .. } = button.act else {
            return button;
        };
        let name = self.piece_name(piece);
        let args = [
            ("name", Arg::Text(&name)),
            ("does", Arg::Text(&button.label)),
        ];
        let question = self.say.with("confirm-stage", &args);
        let confirm = button.confirm.or(Some(question));
        Button { confirm, ..button }
    }

    pub fn answer(&self, label: &'static str, due: &Due, tone: Tone) -> Button {
        let (cook, job) = (due.cook, due.job);
        button(self.say.text(label), Act::Answer { cook, job }, tone)
    }

    /// A label, with what it is about where several are.
    fn labelled(&self, named: Option<Job>, label: &str) -> String {
        let plain = self.say.text(label);
        let Some(job) = named else { return plain };
        let name = self.object(job);
        let args = [("name", Arg::Text(&name)), ("does", Arg::Text(&plain))];
        self.say.with("button-named", &args)
    }

    pub fn stage_button(&self, piece: PieceId, stage: Stage, tone: Tone) -> Button {
        let label = self.stage_label(stage);
        let at = None;
        button(label, Act::SetStage { piece, stage, at }, tone)
    }

    fn stage_label(&self, stage: Stage) -> String {
        match stage {
            Stage::OnPit { pit } => {
                let pit = self.pit(pit);
                self.say.with("button-on-pit", &[("pit", Arg::Text(&pit))])
            }
            Stage::Wrapped { wrap } => {
                let wrap = self.wrap(wrap);
                self.say.with("button-wrap", &[("wrap", Arg::Text(&wrap))])
            }
            Stage::Trimmed => self.say.text("button-trimmed"),
            Stage::Brined => self.say.text("button-brined"),
            Stage::Rubbed => self.say.text("button-rubbed"),
            Stage::Resting => self.say.text("button-resting"),
            Stage::Unwrapped => self.say.text("button-unwrap"),
            Stage::Off => self.say.text("button-off"),
            Stage::Held => self.say.text("button-hold"),
            Stage::CutUp => self.say.text("button-cut-up"),
            Stage::Served => self.say.text("button-serve"),
            Stage::PutAway => self.say.text("button-put-away"),
            Stage::Reheated => self.say.text("button-reheat"),
            Stage::ThrownAway => self.say.text("button-throw-away"),
        }
    }

    /// Acts that are always at hand at the pits of a cook.
    pub fn always(&self, cook: CookId, pits: &[PitId]) -> Vec<Button> {
        let mut all = vec![];
        for pit in pits.iter().copied() {
            let feed = self.usual_feed(cook, pit);
            all.extend(feed.map(|(what, act)| self.named_at(&what, pit, act)));
            all.push(self.at_pit("button-vent", pit, self.vent(cook, pit)));
            if self.holds_meat(cook, pit) {
                let opening = Opening {
                    pit: Some(pit),
                    wetted: vec![],
                    glazed: vec![],
                };
                all.push(self.at_pit("button-opened", pit, opening.act(None)));
            }
        }
        all.extend(self.dishes(cook));
        all.extend(self.of_the_night());
        all.push(self.finish(cook));
        all
    }

    /// The end of a cook, asked about first.
    pub fn finish(&self, cook: CookId) -> Button {
        Button {
            label: self.say.text("button-finish"),
            act: Act::FinishCook { cook },
            tone: Tone::Grave,
            confirm: self
                .known
                .cooks
                .get(&cook)
                .map(|cook| self.finish_question(cook)),
        }
    }

    /// Each dish is ready, or not after all.
    fn dishes(&self, cook: CookId) -> Vec<Button> {
        let dishes = self.known.cooks.get(&cook).map(|cook| &cook.dishes);
        let button_of = |(dish, one): (&DishId, &Dish)| {
            let (dish, ready) = (*dish, one.ready.is_none());
            let does = self.say.text(match ready {
                true => key("dish-is-ready"),
                false => key("dish-not-ready"),
            });
            let args = [
                ("name", Arg::Text(&one.name.value)),
                ("does", Arg::Text(&does)),
            ];
            let act = Act::ReadyDish { cook, dish, ready };
            button(self.say.with("button-named", &args), act, Tone::Plain)
        };
        dishes.into_iter().flatten().map(button_of).collect()
    }

    /// Whether a meat of that cook is on the pit: an opening of an empty one tells nothing.
    pub fn holds_meat(&self, cook: CookId, pit: PitId) -> bool {
        self.on_pit(pit).iter().any(|(its, _)| its.id == cook)
    }

    pub fn feed(&self, cook: CookId, pit: PitId) -> Act {
        Act::Feed {
            cook,
            pit,
            what: String::new(),
            at: None,
        }
    }

    pub fn vent(&self, cook: CookId, pit: PitId) -> Act {
        Act::ChangeVent {
            cook,
            pit,
            how: String::new(),
            at: None,
        }
    }

    fn at_pit(&self, label: &'static str, pit: PitId, act: Act) -> Button {
        self.named_at(&self.say.text(label), pit, act)
    }

    fn named_at(&self, does: &str, pit: PitId, act: Act) -> Button {
        let name = self.pit(pit);
        let args = [("name", Arg::Text(&name)), ("does", Arg::Text(does))];
        button(self.say.with("button-named", &args), act, Tone::Plain)
    }

    /// Sleep, waking and the watch, as far as they make sense for this viewer.
    fn of_the_night(&self) -> Vec<Button> {
        let watch = self.known.crew.on_watch(self.now).map(|turn| turn.device);
        let mut all = self.sleeping();
        if watch != Some(self.viewer.device) {
            let note = String::new();
            all.push(self.plain("button-watch", Act::TakeWatch { note }));
        }
        all
    }

    /// Sleep, or being up, whichever makes sense for this viewer.
    pub fn sleeping(&self) -> Vec<Button> {
        let me = self.known.crew.people.get(&self.viewer.device);
        match me.and_then(|me| me.asleep_until(self.now)) {
            Some(_) => vec![self.plain("button-up", Act::WakeUp)],
            None => [90 * MINUTE, 4 * HOUR].map(|for_| self.sleep(for_)).into(),
        }
    }

    /// Sleep about so long, to the next quarter of an hour.
    fn sleep(&self, for_: i64) -> Button {
        let quarter = 15 * MINUTE;
        let until = (self.this_minute() + for_ + quarter - 1).div_euclid(quarter) * quarter;
        let time = self.say.the_clock(until);
        let label = self.say.with("button-sleep", &[("time", Arg::Text(&time))]);
        let sleep = button(label, Act::Sleep { until }, Tone::Plain);
        match self.sleep_question() {
            Some(question) => asked(sleep, question),
            None => sleep,
        }
    }
}

/// The cook of what is due together, and the jobs.
fn jobs_of(dues: &[&Due]) -> (CookId, Vec<Job>) {
    let first = dues.first().expect("buttons are made of what is due");
    (first.cook, dues.iter().map(|due| due.job).collect())
}
