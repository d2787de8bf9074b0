//! Where it will hang. Start at [`stall`]: nothing is put in by hand, it is read off the members' way.

use super::{
    Follow,
    ahead::{Ahead, minute_of},
    answer::Stall,
};
use crate::{moment::MINUTE, units::Mk};

/// Slower than this it hangs, K an hour. Our own word for it, no source.
const SLOW: f32 = 6.0;
/// It does so between these, °C: below it has not begun, above it only nears the pit.
const RANGE: (f32, f32) = (55.0, 85.0);
/// A shorter stretch is not spoken of, minutes.
const SHORT: f32 = 40.0;

/// The longest slow stretch of the middle member ahead.
pub(super) fn stall(follow: &Follow, ahead: &Ahead) -> Option<Stall> {
    let middle: Vec<f32> = ahead.fan.iter().map(|cores| middle(cores)).collect();
    let slow = |step: usize| {
        let (hours, here) = ((minute_of(step + 1) - minute_of(step)) / 60.0, middle[step]);
        (RANGE.0..RANGE.1).contains(&here) && (middle[step + 1] - here) / hours < SLOW
    };
    let last = middle.len().checked_sub(1)?;
    let from = (0..last).find(|step| slow(*step))?;
    let to = (from..last).find(|step| !slow(*step)).unwrap_or(last);
    let minutes = minute_of(to) - minute_of(from);
    (minutes >= SHORT).then(|| Stall {
        from_temp: Mk((f64::from(middle[from]) * 1e3) as i64 + 273_150),
        from: follow.at() + minute_of(from) as i64 * MINUTE,
        minutes: minutes as i64,
    })
}

fn middle(cores: &[f32]) -> f32 {
    let mut sorted = cores.to_vec();
    sorted.sort_by(f32::total_cmp);
    sorted.get(sorted.len() / 2).copied().unwrap_or(0.0)
}
