//! Laying the openings of a pit: absolute times to be read, and two meats against trying every set of minutes.
//!
//! The typical pit has four meats with mixed rhythms and looks six hours ahead. The peer tries every set of minutes of a
//! half-hour horizon for two meats and counts the fewest that keep each window: the plainest way there is, exact, and
//! hopeless beyond this size. Both have to find the same number of openings.

use crate::harness::{Result, Row, alone, in_turns, time};
use slowbend_core::cadence::openings::{LidOpenings, Need, lid_openings};
use std::{
    hint::black_box,
    time::{Duration, Instant},
};

const TURNS: usize = 15;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let typical = pit(360, &[(-5, 30), (-12, 30), (-40, 60), (-20, 45)]);
    let small = pit(20, &[(-6, 10), (-3, 12)]);
    let four = alone(TURNS, || plan(&typical).map(|(_, took)| took))?;
    let fewest = plan(&small)?.0;
    let pair = in_turns(
        TURNS,
        || plan(&small).map(|(_, took)| took),
        || {
            let start = Instant::now();
            let found = every_set(black_box(&small));
            assert_eq!(found, fewest, "both find the fewest openings");
            Ok(start.elapsed())
        },
    )?;
    let two = Row::told(
        "openings, 2 meats, 20 min",
        time(pair.ours),
        time(pair.peer),
    );
    Ok(vec![
        Row::told("openings, 4 meats, 6 h", time(four), "-"),
        Row {
            ratio: Some(pair.ratio()),
            ..two
        },
    ])
}

fn pit(horizon_min: i64, meats: &[(i64, i64)]) -> LidOpenings {
    let need = |(number, (last_min, every_min)): (usize, &(i64, i64))| Need {
        name: format!("meat {number}"),
        last_min: *last_min,
        every_min: *every_min,
        early_min: every_min / 4,
        late_min: every_min / 4,
        until_min: None,
    };
    LidOpenings {
        from_min: 0,
        horizon_min,
        needs: meats.iter().enumerate().map(need).collect(),
        fixed_min: vec![],
    }
}

fn plan(pit: &LidOpenings) -> Result<(i64, Duration)> {
    let start = Instant::now();
    let plan = lid_openings(black_box(pit)).map_err(|refused| format!("{refused:?}"))?;
    Ok((plan.count, start.elapsed()))
}

/// The fewest minutes at which opening keeps every window, by trying each set of them.
fn every_set(pit: &LidOpenings) -> i64 {
    let fits = |set: &u32| pit.needs.iter().all(|need| keeps(pit, need, *set));
    let counts = (0..1u32 << pit.horizon_min)
        .filter(fits)
        .map(u32::count_ones);
    counts.min().map_or(-1, i64::from)
}

/// Whether some choice of the minutes in `set` keeps the windows of one meat from the last wetting to the horizon.
fn keeps(pit: &LidOpenings, need: &Need, set: u32) -> bool {
    let mut reached = vec![need.last_min];
    while let Some(last) = reached.pop() {
        let (from, to) = (
            last + need.every_min - need.early_min,
            last + need.every_min + need.late_min,
        );
        if to >= pit.horizon_min {
            return true;
        }
        reached.extend((from.max(0)..=to).filter(|at| set >> at & 1 == 1));
    }
    false
}
