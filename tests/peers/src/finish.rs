//! What a forecast costs: a crowd of a thousand follows a shoulder of 3.6 kg for eight hours. One more reading, a forecast to the
//! finish with all that could be done, and what is kept between readings have limits of their own. No peer: nothing else follows
//! a thousand members.

use crate::harness::{Result, Row, alone};
use slowbend_core::{
    checks::Cut,
    finish::{CoreAt, Follow, Habits, Told, forecast_of},
    moment::MINUTE,
    safety::{Form, food_log::TempAt},
    units::Mk,
};
use std::{
    hint::black_box,
    time::{Duration, Instant},
};

const TURNS: usize = 15;
const READING_MOST: Duration = Duration::from_millis(5);
const FORECAST_MOST: Duration = Duration::from_millis(60);
const BYTES_MOST: usize = 4_000_000;
/// Minutes on the pit before what is timed.
const BEFORE: i64 = 480;
const ON: i64 = 1_795_000_200_000;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let (early, late) = (told(BEFORE), told(BEFORE + 5));
    let mut so_far = Follow::start(&early)?;
    while so_far.work(&early) {}
    let reading = alone(TURNS, || {
        let mut follow = so_far.clone();
        let start = Instant::now();
        follow.tell(&late);
        black_box(follow.work(&late));
        Ok(start.elapsed())
    })?;
    let forecast = alone(TURNS, || {
        let start = Instant::now();
        black_box(forecast_of(&so_far, &early));
        Ok(start.elapsed())
    })?;
    let kept = so_far.to_bytes().len();
    if kept > BYTES_MOST {
        return Err(format!("{kept} bytes are kept of a crowd, more than {BYTES_MOST}").into());
    }
    Ok(vec![
        Row::within("finish, one reading, 1000 members", reading, READING_MOST),
        Row::within("finish, forecast, 1000 members", forecast, FORECAST_MOST),
        Row::told("finish, bytes kept of a crowd", format!("{kept} B"), "-"),
    ])
}

/// Read each five minutes, warming ever more slowly.
fn told(minutes: i64) -> Told {
    let at = |minute: i64| ON + minute * MINUTE;
    let each = || (0..=minutes).step_by(5);
    let core = |minute: i64| Mk::from_c_milli(5_000 + 95_000 * minute / (minute + 260));
    Told {
        cut: Cut::PorkButt,
        grams: 3_600,
        form: Form::Intact,
        on_at: ON,
        now: at(minutes),
        start: None,
        pit: each()
            .map(|minute| TempAt {
                at: at(minute),
                temp: Mk::from_f(250),
            })
            .collect(),
        pit_set: Some(Mk::from_f(250)),
        core: each()
            .map(|minute| CoreAt {
                at: at(minute),
                temp: core(minute),
                probe: 0,
                by_hand: false,
            })
            .collect(),
        wraps: vec![],
        mops: vec![],
        openings: vec![],
        checks: vec![],
        done_when: None,
        habits: Habits::default(),
        key: 7,
    }
}
