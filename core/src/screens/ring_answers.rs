//! What a ring can be answered with where it rings: on a lock screen, with one touch.
//!
//! Law: one touch never changes a stage. Who takes a meat off, or puts food away, does so on its own screen.

use super::{Button, Tone, glance::Glance};
use crate::{
    acts::Act,
    alarms::{Answer, Due},
    cadence::rhythm::RUB_ASKED_AGAIN_MIN,
    cook::Known,
    log::Job,
    moment::Moment,
    words::{Arg, Viewer},
};

/// The answers to a ring for `dues`, first the one it is named for.
pub(crate) fn ring_answers(
    known: &Known<'_>,
    viewer: &Viewer,
    dues: &[Due],
    moment: &Moment,
) -> Vec<Answer> {
    let glance = Glance::of(known, viewer, moment);
    let buttons = dues.first().map(|first| glance.at_ring(first, dues));
    let answers = buttons.into_iter().flatten().map(answer);
    answers.collect()
}

fn answer(button: Button) -> Answer {
    Answer {
        again_minutes: again_minutes(&button.act),
        act: serde_json::to_string(&button.act).expect("an act is plain data"),
        label: button.label,
    }
}

fn again_minutes(act: &Act) -> Option<i64> {
    match act {
        Act::Later { minutes, .. } => Some(*minutes),
        Act::AnswerRub { set: false, .. } => Some(RUB_ASKED_AGAIN_MIN),
        _ => None,
    }
}

impl Glance<'_> {
    /// What is meant first, named where it does not answer all; then, of all that belongs to the same cook, later.
    fn at_ring(&self, first: &Due, dues: &[Due]) -> Vec<Button> {
        let together = self.together(first, dues);
        let named = (together.len() < dues.len()).then_some(first.job);
        let of_cook: Vec<&Due> = dues.iter().filter(|due| due.cook == first.cook).collect();
        let (later, others): (Vec<Button>, Vec<Button>) = self
            .buttons_of(first, &together)
            .into_iter()
            .partition(|button| matches!(button.act, Act::Later { .. }));
        let mut all: Vec<Button> = others
            .into_iter()
            .filter(|button| {
                button.tone == Tone::Main && !matches!(button.act, Act::SetStage { .. })
            })
            .map(|button| self.named(button, named))
            .collect();
        all.extend(later.first().map(|_| self.later(&of_cook)));
        all
    }

    fn named(&self, button: Button, job: Option<Job>) -> Button {
        let Some(job) = job else { return button };
        let name = self.object(job);
        let args = [
            ("name", Arg::Text(&name)),
            ("does", Arg::Text(&button.label)),
        ];
        let label = self.say.with("button-named", &args);
        Button { label, ..button }
    }
}
