//! Courses on the screens of a sheet: when what is served, and the slip on which that is said.

use crate::{
    cook::{COURSES_MAX, Cook},
    forms::courses::AROUND,
    ids::PieceId,
    log::{Course, Does, PlannedJob, Subject},
    moment::{HOUR, MINUTE},
    screens::{Slip, SlipField, SlipOption, glance::Glance, slip::option},
    words::{Arg, key},
};

/// So many rows stand blank below the courses that were said.
const BLANK: i64 = 2;
/// A time of day is read as the one nearest to the hour of the table, so this near it needs no day.
const NEAR_MS: i64 = 12 * HOUR;

impl Glance<'_> {
    /// What is served when, a line a course: "Chicken, 12:00 PM: Bird 1, Bird 2". Nothing where all is at one time.
    pub fn course_lines(&self, cook: &Cook) -> Vec<String> {
        let courses = cook.courses.all.iter();
        courses
            .map(|course| self.course_line(cook, course))
            .collect()
    }

    fn course_line(&self, cook: &Cook, course: &Course) -> String {
        let at = course.serve.at;
        let (from, to) = match (course.window_min, course.latest) {
            (Some(min), _) => (at - min * MINUTE, at + min * MINUTE),
            (None, latest) => (at, latest.unwrap_or(at)),
        };
        let time = self.say.clock_day(from, self.now);
        let until = self.say.clock(to);
        let members = self.members(cook, course);
        let args = [
            ("course", Arg::Text(&course.name)),
            ("time", Arg::Text(&time)),
            ("until", Arg::Text(&until)),
            ("members", Arg::Text(&members)),
        ];
        self.say.with(
            match course.window_min {
                Some(_) => key("course-turned-in"),
                None if to > from => key("course-by"),
                None => key("course-at"),
            },
            &args,
        )
    }

    fn members(&self, cook: &Cook, course: &Course) -> String {
        let is_in = |of| cook.course_of(of).is_some_and(|its| its.nr == course.nr);
        let meats = cook.meats().filter(|piece| is_in(Subject::Piece(piece.id)));
        let mut names: Vec<String> = meats.map(|piece| piece.name.value.clone()).collect();
        let dishes = cook.dishes.values();
        let dishes = dishes.filter(|dish| is_in(Subject::Dish(dish.id)));
        names.extend(dishes.map(|dish| dish.name.value.clone()));
        match names.is_empty() {
            true => self.say.text("course-nothing"),
            false => self.say.list(&names),
        }
    }

    /// What the serving of a course is called on a sheet, and until when its table is open.
    pub fn course_object(&self, planned: &PlannedJob) -> Option<String> {
        let (Does::Serve, Subject::Cook(id)) = (planned.job.does, planned.job.on) else {
            return None;
        };
        let cook = self.known.cooks.get(&id);
        let course = cook.and_then(|cook| cook.course(planned.job.nth));
        let name = match course {
            _ if planned.job.nth == 0 => return None,
            Some(course) => course.name.clone(),
            None => planned.what.clone(),
        };
        if planned.until <= planned.at {
            return Some(name);
        }
        let until = self.say.clock(planned.until);
        let args = [("course", Arg::Text(&name)), ("until", Arg::Text(&until))];
        Some(self.say.with("sheet-turn-in", &args))
    }

    /// The slip on which courses are said; none while the cook has no hour of its table, or is over.
    pub fn courses_slip(&self, cook: &Cook) -> Option<Slip> {
        let table = cook.serve.value.as_ref().filter(|_| cook.is_open())?.at;
        let name = cook.name.value.as_str();
        let time = self.say.clock_day(table, self.now);
        let args = [("course", Arg::Text(name)), ("time", Arg::Text(&time))];
        let hour = self.say.with("course-hour", &args);
        let around = vec![option(table.to_string(), hour.clone())];
        let mut fields = vec![self.one_of(AROUND, self.say.text("course-table"), around)];
        let last = cook.courses.all.iter().map(|course| course.nr).max();
        let last = last.unwrap_or(0);
        let mut rows: Vec<(i64, Option<&Course>)> = vec![];
        rows.extend(
            cook.courses
                .all
                .iter()
                .map(|course| (course.nr, Some(course))),
        );
        rows.sort_by_key(|(nr, _)| *nr);
        rows.extend((last + 1..=last + BLANK).map(|nr| (nr, None)));
        rows.truncate(COURSES_MAX);
        for (nr, course) in &rows {
            fields.extend(self.course_row(*nr, *course, table));
        }
        let choices = || {
            let all = rows
                .iter()
                .map(|(nr, course)| option(nr.to_string(), self.row_name(*nr, *course)));
            std::iter::once(option("", hour.clone()))
                .chain(all)
                .collect::<Vec<SlipOption>>()
        };
        let choice = |field: String, name: &str, of: Subject| {
            let usual = cook
                .course_of(of)
                .map_or_else(String::new, |its| its.nr.to_string());
            SlipField {
                usual,
                ..self.one_of(&field, name.to_owned(), choices())
            }
        };
        let open = |id: PieceId| cook.pieces[&id].name.value.as_str();
        let meats = cook.meats().map(|piece| piece.id);
        fields.extend(meats.map(|id| choice(format!("meat-{id}"), open(id), Subject::Piece(id))));
        let dishes = cook.dishes.values();
        fields.extend(dishes.map(|dish| {
            let field = format!("dish-{}", dish.id);
            choice(field, &dish.name.value, Subject::Dish(dish.id))
        }));
        Some(Slip {
            how: self.say.text("course-how"),
            ..self.slip("courses", key("course-heading"), fields)
        })
    }

    fn row_name(&self, nr: i64, course: Option<&Course>) -> String {
        let row = || self.say.with("course-nth", &[("nr", Arg::Number(nr))]);
        course.map_or_else(row, |course| course.name.clone())
    }

    fn course_row(&self, nr: i64, course: Option<&Course>, table: i64) -> [SlipField; 4] {
        let field = |of: &str| format!("course-{nr}-{of}");
        let time = |at: i64| match (at - table).abs() < NEAR_MS {
            true => self.say.clock(at),
            false => self.say.clock_day(at, self.now),
        };
        let filled = |field: SlipField, usual: Option<String>| SlipField {
            usual: usual.unwrap_or_default(),
            ..field
        };
        let nth = self.say.with("course-nth", &[("nr", Arg::Number(nr))]);
        let name = SlipField {
            label: nth,
            ..self.words_field(&field("name"), key("course-name"))
        };
        let window = self.say.text("course-window");
        let minutes = course.and_then(|course| course.window_min);
        [
            filled(name, course.map(|course| course.name.clone())),
            filled(
                self.words_field(&field("at"), key("course-time")),
                course.map(|course| time(course.serve.at)),
            ),
            filled(
                self.words_field(&field("latest"), key("course-latest")),
                course.and_then(|course| course.latest).map(time),
            ),
            filled(
                self.number_field(&field("window"), window),
                minutes.map(|min| min.to_string()),
            ),
        ]
    }
}
