//! From members' ends to a distribution. Start at [`points`].
//!
//! What the members say, what Newton's law says and what is usual for the cut are drawn together in the logarithm of the minutes to go,
//! with weights for how far off the end is, and the members' spread is made wider or narrower: [`ROWS`], fitted on the tuning family of
//! invented cooks by least squares and by nothing else. Between two rows it goes straight, so nothing jumps.

use super::{Follow, Told, ahead::Ahead, newton};
use crate::{checks::cuts::cut_facts, moment::MINUTE};

/// Points of a forecast, each as likely as any other.
pub const POINTS: usize = 40;
/// Added to minutes before their logarithm is taken.
const PLUS: f64 = 5.0;
/// Where most of a cook is still ahead, little was read: members are then wider apart by up to half of this. Set so that on the tuning
/// family the interval of 80 % holds 80 % in the first tenths too.
const EARLY: f64 = 0.5;
/// No point lies further ahead, minutes.
const MOST: f64 = super::ahead::HORIZON as f64;

/// What is done with members whose middle lies so far ahead.
#[derive(Clone, Copy, Debug)]
struct Row {
    /// Minutes to go by the members.
    at: f64,
    /// Weight of Newton's law, where it says anything.
    newton: f64,
    /// Weight of what is usual for the cut.
    usual: f64,
    /// Added, logarithm.
    plus: f64,
    /// The spread is multiplied by this.
    wide: f64,
}

const fn row(at: f64, newton: f64, usual: f64, plus: f64, wide: f64) -> Row {
    Row {
        at,
        newton,
        usual,
        plus,
        wide,
    }
}

/// By how far ahead the members' middle lies.
const ROWS: [Row; 8] = [
    row(5.0, 0.312, 0.052, 0.315, 1.000),
    row(15.0, -0.058, -0.078, 0.120, 1.000),
    row(30.0, 0.219, -0.089, 0.086, 1.000),
    row(60.0, 0.128, -0.037, 0.037, 1.075),
    row(120.0, 0.029, 0.012, -0.063, 1.000),
    row(240.0, 0.060, 0.050, 0.012, 1.000),
    row(400.0, 0.051, 0.073, -0.032, 1.000),
    row(700.0, 0.090, 0.430, -0.039, 1.000),
];

/// Minutes to go, in order.
pub(super) fn points(follow: &Follow, ahead: &Ahead, told: &Told) -> Vec<f64> {
    let members = raw(&ahead.to_go);
    let middle = log(quantile(&members, 0.5));
    let row = row_at(quantile(&members, 0.5));
    let toward = |weight: f64, said: Option<f64>| weight * (said.map_or(middle, log) - middle);
    let to = middle
        + row.plus
        + toward(row.newton, newton::to_go(follow, told))
        + toward(row.usual, Some(usual(follow, told)));
    let wide = row.wide * early(follow, told, quantile(&members, 0.5));
    let moved =
        |minutes: &f64| (libm::exp(to + wide * (log(*minutes) - middle)) - PLUS).clamp(0.0, MOST);
    members.iter().map(moved).collect()
}

/// How much wider they are for how little of it is over.
fn early(follow: &Follow, told: &Told, to_go: f64) -> f64 {
    let over = (follow.at() - told.on_at).max(0) as f64 / MINUTE as f64;
    let ahead = to_go / (to_go + over).max(1.0);
    1.0 + EARLY * (ahead - 0.5).max(0.0)
}

fn log(minutes: f64) -> f64 {
    libm::log(minutes.clamp(0.0, MOST) + PLUS)
}

/// What is left of the usual time of the cut, minutes, and never less than five.
fn usual(follow: &Follow, told: &Told) -> f64 {
    let usual = cut_facts(told.cut).cook_time.for_grams(told.grams);
    let over = (follow.at() - told.on_at) as f64 / MINUTE as f64;
    ((usual.least + usual.most) as f64 / 2.0 - over).max(5.0)
}

/// The row between the two rows around.
fn row_at(minutes: f64) -> Row {
    let above = ROWS.iter().position(|row| row.at > minutes);
    let (low, high) = match above {
        Some(0) => (ROWS[0], ROWS[0]),
        Some(above) => (ROWS[above - 1], ROWS[above]),
        None => (ROWS[ROWS.len() - 1], ROWS[ROWS.len() - 1]),
    };
    let share = if high.at > low.at {
        (minutes - low.at) / (high.at - low.at)
    } else {
        0.0
    };
    let between = |of: fn(&Row) -> f64| of(&low) * (1.0 - share) + of(&high) * share;
    row(
        minutes,
        between(|row| row.newton),
        between(|row| row.usual),
        between(|row| row.plus),
        between(|row| row.wide),
    )
}

/// The members' own distribution.
fn raw(to_go: &[f32]) -> Vec<f64> {
    let mut sorted: Vec<f64> = to_go.iter().map(|one| f64::from(*one)).collect();
    sorted.sort_by(f64::total_cmp);
    (0..POINTS)
        .map(|i| quantile(&sorted, (i as f64 + 0.5) / POINTS as f64))
        .collect()
}

/// A quantile of values in order, straight between them; each stands in the middle of its share.
pub fn quantile(sorted: &[f64], share: f64) -> f64 {
    let last = sorted.len().saturating_sub(1);
    let at = (share * sorted.len() as f64 - 0.5).clamp(0.0, last as f64);
    let low = at as usize;
    let part = at - low as f64;
    sorted[low] * (1.0 - part) + sorted[(low + 1).min(last)] * part
}
