//! What of a cook is served when, beside the hour of its table. Start at [`Courses`].
//!
//! Laws: what is in no course is for the hour of the table, so a cook without courses needs nothing said; what a meat was
//! cut from or joined of says its course too.

use super::{Cook, Timed, ahead::counts};
use crate::{
    ids::PieceId,
    log::{Course, Stage, Subject},
    moment::MINUTE,
};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// So many courses a cook has at the most: a day of turn-ins has four. Common practice, no source.
pub const COURSES_MAX: usize = 12;
/// The numbers a course may have.
pub(crate) const NRS: std::ops::RangeInclusive<i64> = 1..=99;
/// A table is open so long before and after its time at the most, minutes.
pub(crate) const WINDOW_MIN: std::ops::RangeInclusive<i64> = 0..=15;
/// The latest is so long after the time that is wanted at the most, milliseconds: as far as a plan waits.
pub(crate) const LATEST_MS: i64 = 600 * MINUTE;

/// The courses of a cook, as they were said last.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Courses {
    /// When; none where nobody ever said.
    pub when: Option<Timed>,
    /// All of them, by their time.
    pub all: Vec<Course>,
}

impl Courses {
    /// Courses as they were said: what another device wrote is brought into its range.
    pub fn of(said: &[Course], when: Timed) -> Self {
        let (mut nrs, mut members) = (BTreeSet::new(), BTreeSet::new());
        let sound = said
            .iter()
            .filter(|course| NRS.contains(&course.nr) && nrs.insert(course.nr))
            .map(|course| sound(course, &mut members));
        let mut all: Vec<Course> = sound.take(COURSES_MAX).collect();
        all.sort_by_key(|course| (course.serve.at, course.nr));
        Self {
            when: Some(when),
            all,
        }
    }
}

/// A course in its range; each thing is in the first course that names it.
fn sound(course: &Course, members: &mut BTreeSet<Subject>) -> Course {
    let mut course = course.clone();
    let at = course.serve.at.clamp(0, 4_133_980_799_999);
    course.serve.at = at;
    let window = course.window_min;
    course.window_min = window.map(|min| min.clamp(*WINDOW_MIN.start(), *WINDOW_MIN.end()));
    let latest = course.latest.filter(|_| window.is_none());
    course.latest = latest.map(|latest| latest.clamp(at, at + LATEST_MS));
    course.of.retain(|of| members.insert(*of));
    course
}

impl Cook {
    /// The course of that number.
    pub fn course(&self, nr: i64) -> Option<&Course> {
        self.courses.all.iter().find(|course| course.nr == nr)
    }

    /// The course of a meat or a dish; none where it is for the hour of the table.
    pub fn course_of(&self, of: Subject) -> Option<&Course> {
        let own = self
            .courses
            .all
            .iter()
            .find(|course| course.of.contains(&of));
        own.or_else(|| match of {
            Subject::Piece(id) => self.course_of_ancestor(id),
            _ => None,
        })
    }

    fn course_of_ancestor(&self, id: PieceId) -> Option<&Course> {
        let mut seen = BTreeSet::from([id]);
        let mut next = self.pieces.get(&id)?.from.clone();
        while let Some(id) = next.pop() {
            if !seen.insert(id) {
                continue;
            }
            let of = Subject::Piece(id);
            let found = self
                .courses
                .all
                .iter()
                .find(|course| course.of.contains(&of));
            if found.is_some() {
                return found;
            }
            next.extend(
                self.pieces
                    .get(&id)
                    .into_iter()
                    .flat_map(|piece| &piece.from),
            );
        }
        None
    }

    /// When all that is in a course was served, if it was.
    pub(super) fn course_served(&self, nr: i64, now: i64) -> Option<i64> {
        let course = self.course(nr)?;
        let is_in = |of| self.course_of(of).is_some_and(|its| its.nr == course.nr);
        let pieces = self.meats().filter(|piece| is_in(Subject::Piece(piece.id)));
        let served = pieces.map(|piece| {
            let over =
                |stage: Stage| matches!(stage, Stage::Served | Stage::PutAway | Stage::ThrownAway);
            let passed = piece.stages.iter().filter(|passed| over(passed.stage));
            passed
                .map(|passed| passed.when.at)
                .filter(|at| counts(*at, now))
                .min()
        });
        let served: Option<Vec<i64>> = served.collect();
        served?.into_iter().max()
    }
}
