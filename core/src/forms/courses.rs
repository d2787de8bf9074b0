//! What is served when: the rows of courses, and the course of each meat and dish. What cannot be read is refused at its
//! own field.

use super::{filled::Fields, kitchen_rows::rows, refused};
use crate::{
    acts::Act,
    error::Refused,
    ids::CookId,
    log::{Course, Serve, Subject},
    words::{
        Arg, key,
        typed::{Seek, clock_there},
    },
};

/// The field that carries the hour of the table: a time of day is the one nearest to it.
pub(crate) const AROUND: &str = "around";

pub(super) fn courses(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let around = fields.filled.field(AROUND).parse();
    let around: i64 = around.map_err(|_| fields.unknown())?;
    let members = members(fields)?;
    let filled = rows(fields, "course", &["name", "at", "latest", "window"]);
    let read = filled
        .iter()
        .map(|row| course(fields, *row, around, &members));
    let courses = read.collect::<Result<Vec<Course>, Refused>>()?;
    let lost = members
        .iter()
        .find(|(nr, _)| !courses.iter().any(|course| course.nr == *nr));
    match lost {
        Some((nr, _)) => {
            let args = [("nr", Arg::Number(*nr))];
            Err(fields.say.refuse("form-course-blank", &args).into())
        }
        None => Ok(Act::PlanCourses { cook, courses }),
    }
}

fn course(
    fields: &Fields<'_>,
    row: usize,
    around: i64,
    members: &[(i64, Subject)],
) -> Result<Course, Refused> {
    let nr = i64::try_from(row).map_err(|_| fields.unknown())?;
    let field = |of: &str| format!("course-{row}-{of}");
    let time = |text| clock_there(&fields.say, text, around, Seek::Nearest);
    let at = time(fields.needed(&field("at"))?)?;
    let latest = fields.given(&field("latest")).map(time).transpose()?;
    let window_min = fields.ranged(&field("window"), &crate::cook::WINDOW_MIN)?;
    let given = fields.given(&field("name")).is_some();
    let name = match given {
        true => fields.row_name("course", row)?,
        false => {
            let args = [("nr", Arg::Number(nr))];
            fields.say.with(key("course-nth"), &args)
        }
    };
    let zone = fields.say.viewer().zone.clone();
    let of = members.iter().filter(|(its, _)| *its == nr);
    Ok(Course {
        nr,
        name,
        serve: Serve { at, zone },
        latest,
        window_min,
        of: of.map(|(_, of)| *of).collect(),
    })
}

/// What is in a course, with its number: fields named `meat-…` and `dish-…`; blank is for the hour of the table.
fn members(fields: &Fields<'_>) -> Result<Vec<(i64, Subject)>, Refused> {
    let mut all = vec![];
    for (name, text) in fields.filled.pairs() {
        let of = match name.split_once('-') {
            Some(("meat", id)) => id.parse().ok().map(Subject::Piece),
            Some(("dish", id)) => id.parse().ok().map(Subject::Dish),
            _ => None,
        };
        let (Some(of), Some(nr)) = (of, Some(text.trim()).filter(|text| !text.is_empty())) else {
            continue;
        };
        let nr = nr
            .parse()
            .map_err(|_| refused(&fields.say, key("form-choose")))?;
        all.push((nr, of));
    }
    Ok(all)
}
