//! The run sheet: the accepted plan as a list of times and jobs, ticked by what happened. Start at [`run_sheet`].
//!
//! Laws: nothing here moves a job; a job is ticked by what was recorded and never by its time alone, but for what asks for
//! no act. A meat is never said to be done because its time has come: its line asks to try it.

mod buttons;
mod calendar;
mod changes;
mod courses;
mod fits;
mod hand_out;
mod line;
mod plan;
mod records;
mod text;
mod words;

pub use hand_out::hand_out;
pub use plan::plan;
pub use records::*;

use super::{Button, Place, Tone, buttons::button, glance::Glance};
use crate::{
    acts::Act,
    alarms::{self, Due},
    cook::{Cook, Known, RunSheet},
    ids::CookId,
    moment::Moment,
    safety::Doing,
    words::{Arg, Viewer, key},
};

/// The run sheet of a cook; none where the cook is not known here.
pub fn run_sheet(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<RunSheetScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let sheet = cook.sheets.now.as_ref();
    let title = cook.name.value.clone();
    let about = glance.sheet_about(cook, sheet);
    let lines = sheet.map_or_else(Vec::new, |sheet| glance.sheet_lines(cook, sheet, &dues));
    let next = lines.iter().find(|line| !line.ticked).cloned();
    let days = glance.by_day(lines);
    Some(RunSheetScreen {
        cook: cook.id,
        none: sheet.is_none().then(|| glance.say.text("sheet-none")),
        next,
        fits: glance.fits(cook),
        other: glance.other_plan(cook),
        drop: sheet
            .filter(|_| cook.is_open())
            .map(|_| glance.drop_button(cook.id)),
        text: match sheet {
            Some(_) => text::text(&title, &about, &days),
            None => String::new(),
        },
        calendar: sheet.map_or_else(String::new, |sheet| glance.sheet_calendar(cook, sheet)),
        calendar_name: glance.say.text("sheet-calendar-name"),
        labels: glance.sheet_labels(),
        links: glance.links_to(&[
            (key("link-plan"), Place::Plan { cook: cook.id }),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        cautions: glance.cautions(Doing::Serving),
        until: glance.until(&dues),
        title,
        about,
        days,
    })
}

impl Glance<'_> {
    fn sheet_about(&self, cook: &Cook, sheet: Option<&RunSheet>) -> Vec<String> {
        let mut all = vec![self.serve(cook)];
        let people = cook.people.value;
        all.extend(people.map(|count| {
            self.say
                .with("sheet-people", &[("count", Arg::Number(count))])
        }));
        all.extend(self.course_lines(cook));
        let Some(sheet) = sheet else { return all };
        all.extend(sheet.plan.chance_permille.map(|chance| self.chance(chance)));
        let (who, time) = (
            self.device(sheet.when.entry.device),
            self.say.clock_day(sheet.when.at, self.now),
        );
        let args = [("name", Arg::Text(&who)), ("time", Arg::Text(&time))];
        all.push(self.say.with("sheet-accepted", &args));
        all
    }

    /// "Ready by then in 93 of 100 such cooks": rounded down, so that it never says more than was worked out.
    pub fn chance(&self, permille: i64) -> String {
        let args = [("count", Arg::Number(permille.clamp(0, 1_000) / 10))];
        self.say.with("sheet-chance", &args)
    }

    fn other_plan(&self, cook: &Cook) -> Option<OtherPlan> {
        let before = cook.sheets.before.as_ref().filter(|_| cook.is_open())?;
        let (who, time) = (
            self.device(before.when.entry.device),
            self.say.clock_day(before.when.at, self.now),
        );
        let serve = self.say.clock_day(before.plan.serve.at, self.now);
        let args = [
            ("name", Arg::Text(&who)),
            ("time", Arg::Text(&time)),
            ("serve", Arg::Text(&serve)),
        ];
        let changes = match &cook.sheets.now {
            Some(now) => self.changes(cook, &now.plan, &before.plan),
            None => vec![],
        };
        let again = Act::AcceptAgain {
            cook: cook.id,
            entry: before.when.entry,
        };
        Some(OtherPlan {
            about: self.say.with("sheet-other-about", &args),
            changes,
            take: button(self.say.text("sheet-other-take"), again, Tone::Plain),
        })
    }

    fn drop_button(&self, cook: CookId) -> Button {
        Button {
            confirm: Some(self.say.text("sheet-drop-asked")),
            ..button(
                self.say.text("sheet-drop"),
                Act::DropPlan { cook },
                Tone::Grave,
            )
        }
    }

    fn sheet_labels(&self) -> SheetLabels {
        SheetLabels {
            next: self.say.text("frame-next"),
            other: self.say.text("sheet-other"),
            calendar: self.say.text("sheet-calendar"),
            calendar_how: self.say.text("sheet-calendar-how"),
            text: self.say.text("sheet-text"),
            print: self.say.text("sheet-print"),
            hand_out: self.say.text("hand-out-title"),
            card: self.say.text("card-title"),
            hour_later: self.say.text("plan-hour-later"),
        }
    }
}

/// The line of a ring for jobs of a sheet: "Put on: Butt on Drum".
pub(crate) fn sheet_ring(
    known: &Known<'_>,
    viewer: &Viewer,
    dues: &[&Due],
    moment: &Moment,
) -> String {
    let glance = Glance::of(known, viewer, moment);
    let names: Vec<String> = dues.iter().map(|due| glance.object(due.job)).collect();
    let verb = dues
        .first()
        .map_or_else(String::new, |due| glance.verb(due.job));
    glance.line_job(&verb, &glance.say.list(&names))
}
