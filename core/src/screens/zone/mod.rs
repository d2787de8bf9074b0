//! What is shown of the safety of one meat: the rule, what a probe's readings come to, the clocks, what was gone past, and
//! who says so. Start at [`Glance::safety_lines`].
//!
//! Laws: the rule is never called safe; what a probe adds up to is for information and says what it lacks; a clock names its
//! limit and its source; local rules come first, last.

mod buttons;
mod clocks;
mod cooling;
mod why;

pub(super) use why::caveat_key;
pub(crate) use why::zone_why;

use super::{Line, Weight, glance::Glance};
use crate::{
    checks::{Cut, cut_facts},
    cook::{Cook, Piece, ahead::counts, safety_facts::heats},
    safety::{
        Minimum, Source,
        lethality::{Lethality, LethalityAnswer, Logs, PasteurizedFood},
        minimum,
    },
    words::{Arg, key},
};

impl Glance<'_> {
    /// The safety of one meat, line by line.
    pub fn safety_lines(&self, cook: &Cook, piece: &Piece) -> Vec<Line> {
        let mut all = vec![self.rule_line(piece)];
        all.extend(self.pasteurized_line(cook, piece));
        all.extend(self.clock_lines(cook, piece));
        all.extend(self.cooling_lines(cook, piece));
        all.extend(self.caveat_lines(piece));
        all
    }

    /// What must be reached, and what it is not.
    fn rule_line(&self, piece: &Piece) -> Line {
        let least = minimum(piece.cut, piece.form.value);
        let facts = cut_facts(piece.cut);
        let tender = self.say.temperature(facts.tender_from());
        let not = match facts.is_done_far_above() {
            true => self
                .say
                .with("cut-minimum-tough", &[("tender", Arg::Text(&tender))]),
            false => String::new(),
        };
        let source = self.say.text(least.source.key());
        let told = [not, source].into_iter().filter(|part| !part.is_empty());
        let told: Vec<String> = told.collect();
        self.fact(
            key("safety-line-rule"),
            self.minimum_said(&least),
            told.join(" · "),
        )
    }

    fn minimum_said(&self, least: &Minimum) -> String {
        let temp = self.say.temperature(least.temp);
        match least.rest_ms {
            0 => self
                .say
                .with("cut-minimum", &[("minimum", Arg::Text(&temp))]),
            rest => {
                let rest = self.say.duration(rest);
                let args = [("minimum", Arg::Text(&temp)), ("rest", Arg::Text(&rest))];
                self.say.with("cut-minimum-rest", &args)
            }
        }
    }

    /// What the readings of the place that earned least come to, against the published times.
    fn pasteurized_line(&self, cook: &Cook, piece: &Piece) -> Option<Line> {
        let food = food_of(piece.cut);
        let answers = heats(&self.known, cook, piece, self.now)
            .into_values()
            .filter(|readings| readings.len() > 1)
            .map(|readings| {
                let mut so_far = Lethality::of(food);
                for reading in readings {
                    so_far.push(reading).ok();
                }
                so_far.answer(vec![])
            });
        let least = answers.min_by_key(|answer| answer.credit_permille)?;
        Some(self.pasteurized_said(&least))
    }

    fn pasteurized_said(&self, least: &LethalityAnswer) -> Line {
        let percent = [("percent", Arg::Number(least.credit_permille / 10))];
        let [hours, low, high] = [
            self.say.duration(crate::safety::lethality::COME_UP_MS),
            self.say.temperature(crate::safety::lethality::COME_UP_FROM),
            self.say.temperature(crate::safety::lethality::COME_UP_TO),
        ];
        let args = [
            ("hours", Arg::Text(&hours)),
            ("low", Arg::Text(&low)),
            ("high", Arg::Text(&high)),
        ];
        let up = match least.come_up_within {
            true => self.say.with("safety-came-up-within", &args),
            false => self.say.with("safety-came-up-longer", &args),
        };
        let told = [
            self.say.text("safety-for-information"),
            up,
            self.say.text(Source::FsisAppendixA.key()),
        ];
        self.fact(
            key("safety-line-pasteurized"),
            self.say.with("safety-percent", &percent),
            told.join(" "),
        )
    }

    /// What somebody went on past, by whom and when.
    fn caveat_lines(&self, piece: &Piece) -> Vec<Line> {
        let past = piece.went_past.iter();
        let past = past.filter(|(when, _)| counts(when.at, self.now));
        past.map(|(when, caveat)| Line {
            name: self.say.text("safety-line-past"),
            state: self.say.text(caveat_key(*caveat)),
            detail: format!(
                "{} · {}",
                self.say.clock_day(when.at, self.now),
                self.device(when.entry.device)
            ),
            weight: Weight::Soon,
            link: None,
        })
        .collect()
    }
}

/// The published table that holds for a cut; fat is not known.
const fn food_of(cut: Cut) -> PasteurizedFood {
    let fat_percent = None;
    match cut {
        Cut::TurkeyBreast => PasteurizedFood::Turkey { fat_percent },
        cut if cut.is_poultry() => PasteurizedFood::OtherPoultry { fat_percent },
        _ => PasteurizedFood::Meat {
            logs: Logs::SixAndAHalf,
        },
    }
}
