//! What is served when, as it is typed.

use super::*;
use crate::{
    error::Refused,
    ids::{CookId, DishId},
    log::Course,
};

/// Two o'clock on the same Saturday.
const TABLE: i64 = MORNING + 5 * HOUR;

fn typed(fields: &[(&str, &str)], around: i64) -> Result<Vec<Course>, Refused> {
    let around = around.to_string();
    let all = [("around", around.as_str())]
        .into_iter()
        .chain(fields.iter().copied());
    let filled: Vec<FieldFilled> = all
        .map(|(field, text)| FieldFilled {
            field: field.into(),
            text: text.into(),
        })
        .collect();
    let moment = Moment::at(MORNING, "America/Chicago");
    let cook = CookId(Uuid::nil());
    match cook_slip(&viewer(Locale::EnUs), cook, "courses", &filled, &moment)? {
        Act::PlanCourses { courses, .. } => Ok(courses),
        other => panic!("{other:?}"),
    }
}

#[test]
fn rows_and_choices_become_courses_around_the_hour_of_the_table() {
    let (bird, slab) = (Uuid::from_u128(1), Uuid::from_u128(2));
    let (of_bird, of_slab) = (format!("meat-{bird}"), format!("meat-{slab}"));
    let beans = format!("dish-{bird}");
    let read = typed(
        &[
            ("course-1-name", "Chicken"),
            ("course-1-at", "12:00"),
            ("course-1-window", "5"),
            ("course-2-name", ""),
            ("course-2-at", "12:30 pm"),
            ("course-2-latest", "1"),
            ("course-3-name", ""),
            (&of_bird, "1"),
            (&of_slab, "2"),
            (&beans, ""),
        ],
        TABLE,
    )
    .expect("it can be read");
    let noon = MORNING + 3 * HOUR;
    let [chicken, second] = read.as_slice() else {
        panic!("{read:?}")
    };
    assert_eq!(
        (chicken.serve.at, chicken.window_min, chicken.latest),
        (noon, Some(5), None)
    );
    assert_eq!(chicken.of, [Subject::Piece(PieceId(bird))]);
    assert_eq!(
        (second.name.as_str(), second.serve.at),
        ("Course 2", noon + HOUR / 2)
    );
    assert_eq!(second.latest, Some(noon + HOUR));
    // A week later, "12:30" is that day's.
    let week = 7 * 24 * HOUR;
    let read = typed(&[("course-1-at", "12:30")], TABLE + week).expect("it can be read");
    assert_eq!(read[0].serve.at, noon + HOUR / 2 + week);
    let dish = format!("dish-{}", DishId(bird));
    let read = typed(&[("course-1-at", "12:30"), (&dish, "1")], TABLE).expect("it can be read");
    assert_eq!(read[0].of, [Subject::Dish(DishId(bird))]);
}

#[test]
fn nothing_filled_in_is_one_time_for_all() {
    assert_eq!(typed(&[("course-1-name", " ")], TABLE), Ok(vec![]));
}

#[test]
fn what_cannot_be_read_says_what_to_do() {
    let slab = format!("meat-{}", Uuid::from_u128(2));
    // 2026-03-08 in Chicago: the clock goes from 2 to 3.
    let spring = 1_772_956_800_000;
    for (fields, around, part) in [
        (vec![("course-1-name", "Ribs")], TABLE, "This is missing"),
        (vec![("course-1-at", "soon")], TABLE, "“soon”"),
        (
            vec![("course-1-at", "12"), ("course-1-window", "40")],
            TABLE,
            "15",
        ),
        (
            vec![(slab.as_str(), "2")],
            TABLE,
            "course 2, and that row is blank",
        ),
        (
            vec![("course-1-at", "2:30 am")],
            spring,
            "nearest time there is is 3:30",
        ),
    ] {
        let told = typed(&fields, around)
            .expect_err("it cannot be read")
            .reason;
        assert!(told.contains(part), "{told}\n{part}");
    }
}
