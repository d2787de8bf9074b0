//! What differs between two plans, line by line: moved, new, gone. Start at [`Glance::changes`].

use crate::{
    cook::Cook,
    log::{AcceptedPlan, OnSheet, PlannedJob},
    moment::MINUTE,
    screens::{Line, Weight, glance::Glance},
    words::{Arg, key},
};
use std::collections::BTreeMap;

/// What moves by less is not worth a line, milliseconds: the grid of short jobs inside a quarter.
const TOLD_MS: i64 = 5 * MINUTE;

impl Glance<'_> {
    /// What taking `to` in place of `from` changes, by the times of `to`; what is done already is told of neither.
    pub fn changes(&self, cook: &Cook, from: &AcceptedPlan, to: &AcceptedPlan) -> Vec<Line> {
        let open = |plan: &'_ AcceptedPlan| -> BTreeMap<OnSheet, PlannedJob> {
            let jobs = plan
                .jobs
                .iter()
                .filter(|job| cook.job_done(job, self.now).is_none());
            jobs.map(|job| (job.job, job.clone())).collect()
        };
        let (old, new) = (open(from), open(to));
        let mut all: Vec<(i64, Line)> = vec![];
        for (name, job) in &new {
            match old.get(name) {
                None => all.push((
                    job.at,
                    self.change(job, self.at_new(job, key("sheet-change-new"))),
                )),
                Some(before) if (before.at - job.at).abs() >= TOLD_MS => {
                    all.push((job.at, self.change(job, self.moved(before, job))))
                }
                Some(before) if (before.temp, before.pit) != (job.temp, job.pit) => {
                    all.push((
                        job.at,
                        self.change(job, self.at_new(job, key("sheet-change-other"))),
                    ));
                }
                Some(_) => {}
            }
        }
        for (name, job) in &old {
            if !new.contains_key(name) {
                all.push((
                    job.at,
                    self.change(job, self.at_new(job, key("sheet-change-gone"))),
                ));
            }
        }
        all.sort_by(|a, b| (a.0, &a.1.name).cmp(&(b.0, &b.1.name)));
        all.into_iter().map(|(_, line)| line).collect()
    }

    fn change(&self, job: &PlannedJob, state: String) -> Line {
        Line {
            name: self.sheet_job(job),
            state,
            detail: String::new(),
            weight: Weight::Calm,
            link: None,
        }
    }

    fn at_new(&self, job: &PlannedJob, message: &'static str) -> String {
        let time = self.say.clock_day(job.at, self.now);
        self.say.with(message, &[("time", Arg::Text(&time))])
    }

    fn moved(&self, before: &PlannedJob, after: &PlannedJob) -> String {
        let (from, to) = (
            self.say.clock_day(before.at, self.now),
            self.say.clock_day(after.at, self.now),
        );
        let by = self.say.duration(after.at - before.at);
        let args = [
            ("from", Arg::Text(&from)),
            ("to", Arg::Text(&to)),
            ("by", Arg::Text(&by)),
        ];
        match after.at > before.at {
            true => self.say.with("sheet-change-later", &args),
            false => self.say.with("sheet-change-earlier", &args),
        }
    }
}
