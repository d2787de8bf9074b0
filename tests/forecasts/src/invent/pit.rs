//! What the air in an invented pit does, minute by minute: a thermostat that cycles or a fire that burns down and is fed, a slow
//! wander, dips when it is opened, and a change of mind now and then.

use super::family::Family;
use crate::rng::Rng;

/// Minutes from when the meat comes on.
type Minute = usize;

/// One pit through one cook.
#[derive(Clone, Debug)]
pub struct Pit {
    /// The air around the meat, °C, each minute.
    pub air: Vec<f64>,
    /// What its thermometer adds, K.
    pub bias: f64,
}

/// What is drawn for one pit.
struct Kind {
    swing: f64,
    every: f64,
    thermostat: bool,
    wander: f64,
}

/// A pit held at `set` °C, opened at `openings`, for `minutes`.
pub fn pit(
    set: f64,
    openings: &[Minute],
    minutes: Minute,
    family: Family,
    bias: f64,
    rng: &mut Rng,
) -> Pit {
    let kind = kind(family, rng);
    let change = rng
        .chance(0.12)
        .then(|| (rng.between(0.3, 0.8), rng.between(8.0, 20.0)));
    let (mut wander, mut dip, mut level) = (0.0, 0.0, set);
    let mut phase = rng.unit() * kind.every;
    let mut air = Vec::with_capacity(minutes);
    for minute in 0..minutes {
        if let Some((share, by)) = change
            && minute == (share * 300.0) as usize + 30
        {
            level += by;
        }
        if phase >= kind.every {
            phase -= kind.every * rng.about(1.0, if kind.thermostat { 0.05 } else { 0.25 });
        }
        if openings.contains(&minute) {
            dip = rng.between(0.25, 0.5) * (level - 25.0);
        }
        wander += -wander / 90.0 + kind.wander * rng.normal();
        dip *= 1.0 - 1.0 / 6.0;
        phase += 1.0;
        air.push(level + wander + swing(&kind, phase / kind.every) - dip);
    }
    Pit { air, bias }
}

fn kind(family: Family, rng: &mut Rng) -> Kind {
    match rng.chance(family.ranges().thermostat) {
        true => Kind {
            swing: rng.between(1.5, 7.0),
            every: rng.between(12.0, 40.0),
            thermostat: true,
            wander: rng.between(0.1, 0.4),
        },
        false => Kind {
            swing: rng.between(6.0, 16.0),
            every: rng.between(35.0, 80.0),
            thermostat: false,
            wander: rng.between(0.3, 0.9),
        },
    }
}

/// A thermostat swings as a sine; a fire is up quickly after a feed and burns down slowly.
fn swing(kind: &Kind, phase: f64) -> f64 {
    let phase = phase.fract();
    kind.swing
        * match kind.thermostat {
            true => (phase * std::f64::consts::TAU).sin(),
            false if phase < 0.2 => -1.0 + phase * 10.0,
            false => 1.0 - (phase - 0.2) * 2.5,
        }
}
