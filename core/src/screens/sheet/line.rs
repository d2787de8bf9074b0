//! The lines of a run sheet.

use super::{SheetDay, SheetLine};
use crate::{
    alarms::Due,
    cook::{Cook, RunSheet},
    log::{Does, Job, PlannedJob, Subject},
    moment::{HOUR, MINUTE},
    screens::{Place, Weight, glance::Glance},
    words::Arg,
};

/// What is due within so long can be done from its line, in milliseconds: 1 h. Common practice, no source.
const AT_HAND_MS: i64 = HOUR;
/// What comes within so long is soon.
const SOON_MS: i64 = 15 * MINUTE;

impl Glance<'_> {
    /// The jobs of the sheet, by time.
    pub fn sheet_lines(&self, cook: &Cook, sheet: &RunSheet, dues: &[Due]) -> Vec<SheetLine> {
        let jobs = sheet.plan.jobs.iter();
        jobs.map(|planned| self.sheet_line(cook, sheet, planned, dues))
            .collect()
    }

    fn sheet_line(
        &self,
        cook: &Cook,
        sheet: &RunSheet,
        planned: &PlannedJob,
        dues: &[Due],
    ) -> SheetLine {
        let due = dues.iter().find(|due| due.job == Job::Sheet(planned.job));
        let done = cook.job_done(planned, self.now);
        let over = done.is_some() || (due.is_none() && self.is_over_by_time(sheet, planned));
        let buttons = due.filter(|due| self.ahead(due.at) <= AT_HAND_MS);
        SheetLine {
            at: planned.at,
            time: self.say.clock(planned.at),
            job: self.sheet_job(planned),
            why: self.sheet_why(planned.why.as_ref()),
            state: self.sheet_state(planned, done, due),
            ticked: over,
            weight: match due {
                Some(due) if !over => self.weight(due),
                None if !over && self.ahead(planned.at) <= SOON_MS => Weight::Soon,
                _ if over => Weight::Faint,
                _ => Weight::Calm,
            },
            buttons: buttons.map_or_else(Vec::new, |due| {
                let all = self.buttons_of(due, &[due]);
                all.into_iter()
                    .map(|button| self.stage_asked(button))
                    .collect()
            }),
            link: match planned.job.on {
                Subject::Piece(piece) if planned.job.does == Does::TakeOff => {
                    Some(Place::Check { piece })
                }
                Subject::Piece(piece) => Some(Place::Piece { piece }),
                Subject::Dish(_) => Some(Place::Dishes { cook: cook.id }),
                _ => None,
            },
        }
    }

    /// What asks for no act is over when its time is: sleep, a rest, the serving of the cook.
    fn is_over_by_time(&self, sheet: &RunSheet, planned: &PlannedJob) -> bool {
        sheet.is_history(planned) || self.ahead(planned.until) <= 0
    }

    fn sheet_state(
        &self,
        planned: &PlannedJob,
        done: Option<crate::cook::Done>,
        due: Option<&Due>,
    ) -> String {
        match (done, due) {
            (Some(done), _) if done.skipped => self.say.text("sheet-left-out"),
            (Some(done), _) => {
                let time = self.say.clock_day(done.at, self.now);
                self.say.with("sheet-done", &[("time", Arg::Text(&time))])
            }
            (None, Some(due)) if due.at != planned.at || self.ahead(due.at) <= AT_HAND_MS => {
                self.due(due.at)
            }
            _ => String::new(),
        }
    }

    /// The lines under the days they fall on.
    pub fn by_day(&self, lines: Vec<SheetLine>) -> Vec<SheetDay> {
        let mut days: Vec<SheetDay> = vec![];
        for line in lines {
            let heading = self.say.day_heading(line.at, self.now);
            match days.last_mut() {
                Some(day) if day.heading == heading => day.lines.push(line),
                _ => days.push(SheetDay {
                    heading,
                    lines: vec![line],
                }),
            }
        }
        days
    }
}
