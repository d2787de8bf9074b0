//! In which order an opening goes fastest, in words: dry hands before wet ones, one bowl for all that may share it, poultry
//! at the very end. Common practice, no source; that poultry comes last follows from the caution on mops.

use super::{OpeningDoes, OpeningMeat};
use crate::{
    alarms::Due,
    cook::{Cook, Piece},
    screens::glance::Glance,
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn opening_lead(&self, inside: &[(&Cook, &Piece)], now: &[&Due]) -> String {
        match (inside.is_empty(), i64::try_from(now.len())) {
            (true, _) => self.say.text("opening-empty"),
            (false, Ok(count @ 1..)) => {
                let args = [("count", Arg::Number(count))];
                self.say.with("opening-lead", &args)
            }
            _ => self.say.text("opening-lead-none"),
        }
    }

    /// The steps; none where there is nothing to put in order.
    pub(super) fn opening_order(&self, meats: &[OpeningMeat]) -> Vec<String> {
        let of = |does: OpeningDoes, chosen: bool| {
            let meats = meats.iter().filter(move |meat| {
                let mut choices = meat.choices.iter();
                choices.any(|choice| choice.does == does && (choice.chosen || !chosen))
            });
            self.say
                .list(&meats.map(|meat| &*meat.name).collect::<Vec<_>>())
        };
        let tried = meats.iter().filter(|meat| meat.tests_due);
        let tried = self
            .say
            .list(&tried.map(|meat| &*meat.name).collect::<Vec<_>>());
        let mut all = vec![];
        for (names, step) in [
            (of(OpeningDoes::RubSet, false), key("opening-order-rub")),
            (tried, key("opening-order-check")),
            (of(OpeningDoes::Wet, true), key("opening-order-wet")),
            (of(OpeningDoes::Glaze, true), key("opening-order-glaze")),
            (of(OpeningDoes::WetApart, true), key("opening-order-apart")),
        ] {
            if !names.is_empty() {
                all.push(self.say.with(step, &[("names", Arg::Text(&names))]));
            }
        }
        if !all.is_empty() {
            all.insert(0, self.say.text("opening-order-ready"));
            all.push(self.say.text("opening-order-close"));
        }
        all
    }

    /// What comes next at this pit.
    pub(super) fn opening_after(&self, later: &[&Due]) -> Option<String> {
        let next = later
            .iter()
            .find(|due| due.at > self.now && due.job.piece().is_some())?;
        let (verb, what) = (self.verb(next.job), self.object(next.job));
        let when = self.due(next.at);
        let args = [
            ("verb", Arg::Text(&verb)),
            ("what", Arg::Text(&what)),
            ("when", Arg::Text(&when)),
        ];
        Some(self.say.with("opening-after", &args))
    }
}
