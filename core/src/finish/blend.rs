//! From members' ends to a distribution. Start at [`points`].
//!
//! Three things are done with what the members say, all in the logarithm of the minutes to go. It is drawn together with Newton's law and
//! with what is usual for the cut, by weights for how far off the end is ([`ROWS`]). It is moved by what the heat of meat leaves out
//! ([`LEFT_OUT`], [`Known`]). And where little was read its spread is made wider. All numbers were fitted on the tuning family of invented
//! cooks, by least absolute errors and without the moments that were picked for their time to go, and by nothing else. Between two rows it
//! goes straight, so nothing jumps.

use super::{DoneWhen, Follow, Told, ahead::Ahead, newton};
use crate::{
    checks::cuts::{WrapKind, cut_facts},
    moment::MINUTE,
};

/// Points of a forecast, each as likely as any other.
pub const POINTS: usize = 40;
/// Added to minutes before their logarithm is taken.
const PLUS: f64 = 5.0;
/// Where most of a cook is still ahead, little was read: members are then wider apart by up to half of this. Set so that on the tuning
/// family the interval of 80 % holds 80 % in the first tenths too.
const EARLY: f64 = 0.5;
/// No point lies further ahead, minutes.
const MOST: f64 = super::ahead::HORIZON as f64;
/// Who says something else than the members is believed less the further off, and never beyond this, logarithm.
const NEWTON_MOST: f64 = 0.5;
const USUAL_MOST: f64 = 0.7;

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
}

const fn row(at: f64, newton: f64, usual: f64, plus: f64) -> Row {
    Row {
        at,
        newton,
        usual,
        plus,
    }
}

/// By how far ahead the members' middle lies.
const ROWS: [Row; 7] = [
    row(8.0, 0.384, 0.121, 0.240),
    row(20.0, 0.102, -0.097, 0.029),
    row(45.0, 0.381, -0.090, 0.001),
    row(90.0, 0.186, 0.081, -0.056),
    row(170.0, 0.079, 0.021, 0.015),
    row(320.0, 0.136, -0.027, 0.000),
    row(600.0, 0.323, 0.528, -0.088),
];

/// What is added by the temperature of the core, °C and logarithm, where a temperature decides: as protein and collagen change they take
/// up heat that the kernel leaves out, so what is still to warm through 40 to 65 °C takes longer than the members think, and what is
/// beyond less.
const LEFT_OUT: [(f64, f64); 7] = [
    (15.0, -0.025),
    (35.0, 0.130),
    (48.0, 0.191),
    (57.0, 0.139),
    (66.0, -0.006),
    (78.0, -0.124),
    (90.0, -0.040),
];

/// What is added for what else is known, logarithm.
mod added {
    /// In foil, or a pan: what a wrap does to heat is invented in the kernel.
    pub const FOIL: f64 = 0.188;
    /// In paper, or a boat.
    pub const PAPER: f64 = -0.026;
    /// Done when it is tender, with a probe in it and without.
    pub const FELT_PROBED: f64 = -0.035;
    pub const FELT_BARE: f64 = -0.089;
    /// For each unit of how lopsided the members lie, of how wide, and of the share of the cook that is over.
    pub const LOPSIDED: f64 = 0.242;
    pub const WIDE: f64 = -0.127;
    pub const OVER: f64 = 0.163;
}

/// Minutes to go, in order.
pub(super) fn points(follow: &Follow, ahead: &Ahead, told: &Told) -> Vec<f64> {
    let members = raw(&ahead.to_go);
    let minutes = quantile(&members, 0.5);
    let middle = log(minutes);
    let row = row_at(minutes);
    let toward = |said: f64, most: f64| most * libm::tanh((log(said) - middle) / most);
    let newton = newton::to_go(follow, told).map_or(0.0, |said| toward(said, NEWTON_MOST));
    let over = over(follow, told, minutes);
    let to = middle
        + row.plus
        + row.newton * newton
        + row.usual * toward(usual(follow, told), USUAL_MOST)
        + moved(follow, told, &members)
        + added::OVER * over;
    let wide = 1.0 + EARLY * (0.5 - over).max(0.0);
    let moved =
        |minutes: &f64| (libm::exp(to + wide * (log(*minutes) - middle)) - PLUS).clamp(0.0, MOST);
    members.iter().map(moved).collect()
}

/// By what the kernel leaves out, and by how the members lie.
fn moved(follow: &Follow, told: &Told, members: &[f64]) -> f64 {
    let [low, middle, high] = [LOW, POINTS / 2, HIGH].map(|at| log(members[at]));
    let middle = (middle + log(members[POINTS / 2 - 1])) / 2.0;
    let lies = added::LOPSIDED * (high + low - 2.0 * middle) + added::WIDE * (high - low);
    let wrap = match follow.steps().wrap_at(follow.at()) {
        Some(WrapKind::Foil | WrapKind::Pan) => added::FOIL,
        Some(WrapKind::Paper | WrapKind::Boat) => added::PAPER,
        None => 0.0,
    };
    let probed = told
        .core
        .iter()
        .any(|one| !one.by_hand && one.at < follow.at());
    lies + wrap
        + match (told.done(), probed) {
            (DoneWhen::Warm { .. }, _) => left_out(follow.core_c()),
            (DoneWhen::Tender, true) => added::FELT_PROBED,
            (DoneWhen::Tender, false) => added::FELT_BARE,
        }
}

/// The points at about 11 and 89 %.
const LOW: usize = 4;
const HIGH: usize = 35;

/// Straight between the two that it lies between.
fn left_out(core_c: f64) -> f64 {
    let last = LEFT_OUT.len() - 1;
    let core = core_c.clamp(LEFT_OUT[0].0, LEFT_OUT[last].0);
    let above = LEFT_OUT
        .iter()
        .position(|(at, _)| *at >= core)
        .unwrap_or(last)
        .max(1);
    let (low, high) = (LEFT_OUT[above - 1], LEFT_OUT[above]);
    low.1 + (high.1 - low.1) * (core - low.0) / (high.0 - low.0)
}

/// The share of the cook that is over.
fn over(follow: &Follow, told: &Told, to_go: f64) -> f64 {
    let over = (follow.at() - told.on_at).max(0) as f64 / MINUTE as f64;
    over / (to_go + over).max(1.0)
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

/// The row between the two rows around, straight in the logarithm.
fn row_at(minutes: f64) -> Row {
    let last = ROWS.len() - 1;
    let minutes = minutes.clamp(ROWS[0].at, ROWS[last].at);
    let above = ROWS
        .iter()
        .position(|row| row.at >= minutes)
        .unwrap_or(last)
        .max(1);
    let (low, high) = (ROWS[above - 1], ROWS[above]);
    let share = libm::log(minutes / low.at) / libm::log(high.at / low.at);
    let between = |of: fn(&Row) -> f64| of(&low) * (1.0 - share) + of(&high) * share;
    row(
        minutes,
        between(|row| row.newton),
        between(|row| row.usual),
        between(|row| row.plus),
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
