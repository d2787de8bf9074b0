//! A day of readings, one a second, through every sum of safety that follows readings. It has a limit of its own; one reading
//! more must cost the same after a minute as after a day, which the second row holds to.

use crate::harness::{Pair, Result, Row, alone, in_turns};
use slowbend_core::{
    safety::{
        clocks::{Clocks, Kept, Rules},
        cooling::Cooling,
        food_log::TempAt,
        lethality::{Lethality, PasteurizedFood},
    },
    units::Mk,
};
use std::{
    hint::black_box,
    time::{Duration, Instant},
};

const TURNS: usize = 31;
const DAY: i64 = 86_400;
const DAY_MOST: Duration = Duration::from_millis(5);
/// Readings that are timed at the end of a short and of a long log.
const MORE: i64 = 10_000;
/// Constant: a day behind it may not make a reading a quarter dearer.
const FLAT_MOST: f64 = 1.25;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let day = alone(TURNS, || {
        let mut all = All::fresh();
        let start = Instant::now();
        all.follow(0..DAY)?;
        Ok(start.elapsed())
    })?;
    let flat: Pair = in_turns(TURNS, || more_after(DAY), || more_after(60))?;
    Ok(vec![
        Row::within("safety, 86400 readings through all clocks", day, DAY_MOST),
        Row::of(
            "safety, one more after a day to after a minute",
            flat,
            FLAT_MOST,
        ),
    ])
}

fn more_after(seconds: i64) -> Result<Duration> {
    let mut all = All::fresh();
    all.follow(0..seconds)?;
    let start = Instant::now();
    all.follow(seconds..seconds + MORE)?;
    Ok(start.elapsed())
}

/// Everything that follows one probe.
struct All {
    lethality: Lethality,
    clocks: Clocks,
    cooling: Cooling,
}

impl All {
    fn fresh() -> Self {
        let kept = Kept {
            rules: Rules::Consumer,
            hot_air: false,
            intact: false,
            was_hot: false,
        };
        Self {
            lethality: Lethality::of(PasteurizedFood::Chicken { fat_percent: None }),
            clocks: Clocks::of(kept),
            cooling: Cooling::default(),
        }
    }

    fn follow(&mut self, seconds: std::ops::Range<i64>) -> Result<()> {
        for second in seconds {
            let reading = invented(second);
            self.lethality.push(reading)?;
            self.clocks.push(reading)?;
            self.cooling.push(reading)?;
        }
        black_box((self.lethality, self.clocks, self.cooling));
        Ok(())
    }
}

/// An invented day: up and down between 40 and 76 °C in four hours.
fn invented(second: i64) -> TempAt {
    let turn = second % 14_400;
    let up = turn.min(14_400 - turn);
    TempAt {
        at: second * 1000,
        temp: Mk::from_c_milli(40_000 + up * 5),
    }
}
