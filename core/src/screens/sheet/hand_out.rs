//! One sheet for each student of a class, counted back from each one's own serving time. Start at [`hand_out`].
//!
//! The sheet of the cook is moved as a whole: what a student does at their own pit takes as long as at the teacher's. It is
//! paper: nothing is recorded and nothing rings.

use super::{HandOutScreen, SheetLine, StudentSheet};
use crate::{
    cook::{Cook, Known, RunSheet},
    error::Refused,
    ids::CookId,
    log::{Does, PlannedJob},
    moment::{HOUR, Moment},
    safety::{Doing, minimum},
    screens::{Place, Weight, glance::Glance},
    words::{Arg, Viewer, key, typed},
};

/// So many students are in a class at the most. Common practice, no source.
const STUDENTS_MAX: usize = 60;
/// A time of day is the one within so long before the cook's own serving, or after it.
const EARLIER_MS: i64 = 12 * HOUR;

/// A line of the list, read.
struct Student {
    name: String,
    serve: i64,
}

/// The sheets for the students that `list` names, one a line: "Ana, 12:30 PM". None where the cook is not known here.
pub fn hand_out(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    list: &str,
    moment: &Moment,
) -> Option<HandOutScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let sheet = cook.sheets.now.as_ref();
    let read = match sheet {
        Some(sheet) => glance.students(sheet, list),
        None => Err(glance.say.refuse("hand-out-no-sheet", &[]).into()),
    };
    let (students, refused) = match read {
        Ok(students) => (students, None),
        Err(refused) => (vec![], Some(refused.reason)),
    };
    let sheets = sheet.into_iter().flat_map(|sheet| {
        let of = |student: &Student| glance.student_sheet(sheet, student);
        students.iter().map(of).collect::<Vec<_>>()
    });
    Some(HandOutScreen {
        cook: cook.id,
        title: cook.name.value.clone(),
        lead: glance.say.text("hand-out-lead"),
        label: glance.say.text("hand-out-students"),
        how: glance.say.text("hand-out-how"),
        make: glance.say.text("hand-out-make"),
        typed: list.to_owned(),
        refused,
        sheets: sheets.collect(),
        minimums: glance.least(cook),
        cautions: glance.cautions(Doing::Serving),
        links: glance.links_to(&[(key("link-sheet"), Place::RunSheet { cook: cook.id })]),
        until: glance.until(&[]),
    })
}

impl Glance<'_> {
    fn students(&self, sheet: &RunSheet, list: &str) -> Result<Vec<Student>, Refused> {
        let lines = list.lines().map(str::trim).filter(|line| !line.is_empty());
        let lines: Vec<&str> = lines.collect();
        if lines.len() > STUDENTS_MAX {
            let args = [("limit", Arg::Number(STUDENTS_MAX as i64))];
            return Err(self.say.refuse("hand-out-many", &args).into());
        }
        lines.iter().map(|line| self.student(sheet, line)).collect()
    }

    fn student(&self, sheet: &RunSheet, line: &str) -> Result<Student, Refused> {
        let unread = || {
            Refused::from(
                self.say
                    .refuse("hand-out-unread", &[("line", Arg::Text(line))]),
            )
        };
        let (name, time) = line.rsplit_once(',').ok_or_else(unread)?;
        let base = sheet.plan.serve.at.saturating_sub(EARLIER_MS);
        let serve = typed::when(&self.say, time.trim(), base).map_err(|_| unread())?;
        let name = typed::name(&self.say, name).map_err(|_| unread())?;
        Ok(Student { name, serve })
    }

    fn student_sheet(&self, sheet: &RunSheet, student: &Student) -> StudentSheet {
        let by = student.serve.saturating_sub(sheet.plan.serve.at);
        let jobs = sheet
            .plan
            .jobs
            .iter()
            .filter(|job| job.job.does != Does::Sleep);
        let lines = jobs.map(|planned| {
            let (at, until) = (
                planned.at.saturating_add(by),
                planned.until.saturating_add(by),
            );
            let moved = PlannedJob {
                at,
                until,
                ..planned.clone()
            };
            SheetLine {
                at,
                time: self.say.clock(at),
                job: self.sheet_job(&moved),
                why: String::new(),
                state: String::new(),
                ticked: false,
                weight: Weight::Calm,
                buttons: vec![],
                link: None,
            }
        });
        let time = self.say.clock_day(student.serve, self.now);
        StudentSheet {
            name: student.name.clone(),
            serve: self
                .say
                .with("hand-out-serve", &[("time", Arg::Text(&time))]),
            days: self.by_day(lines.collect()),
        }
    }

    /// The published minimum of each cut in its form, with who says so.
    fn least(&self, cook: &Cook) -> Vec<String> {
        let mut all: Vec<String> = vec![];
        for piece in cook.meats() {
            let form = piece.form.value;
            let kinds = [self.say.text(piece.cut.key()), self.say.text(form.key())];
            let args = [("meat", Arg::Text(&kinds.join(", ")))];
            let of = self.say.with("card-minimum-of", &args);
            let told = self.minimum(&of, &minimum(piece.cut, form));
            if !all.contains(&told) {
                all.push(told);
            }
        }
        all
    }
}
