//! What a leave-in probe says: off the middle, noisy, drifting, sometimes silent, moved, or in the fire.

use crate::rng::Rng;

/// A reading, minutes from when the meat came on and °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Minute.
    pub minute: usize,
    /// °C.
    pub celsius: f64,
}

/// How one probe sits and fails.
#[derive(Clone, Debug)]
pub struct Probe {
    /// How far from the coldest place towards the surface, share of the half thickness.
    pub off: f64,
    noise: f64,
    drift: f64,
    gap: Option<(usize, usize)>,
    moved: Option<(usize, f64)>,
    in_fire: Option<(usize, usize)>,
    wild: f64,
}

impl Probe {
    /// Draws one for a cook that takes about so many minutes.
    pub fn drawn(about: f64, rng: &mut Rng) -> Self {
        let off = if rng.chance(0.5) {
            0.0
        } else {
            rng.between(0.0, 0.45)
        };
        let mut stretch = |share: f64, least: f64, most: f64| {
            let from = rng.between(0.1, 0.9) * about;
            let long = rng.between(least, most);
            rng.chance(share)
                .then_some((from as usize, (from + long) as usize))
        };
        let (gap, in_fire, moves) = (
            stretch(0.2, 15.0, 75.0),
            stretch(0.03, 5.0, 25.0),
            stretch(0.12, 0.0, 1.0),
        );
        Self {
            off,
            noise: rng.between(0.1, 0.5),
            drift: rng.between(0.0, 0.08),
            gap,
            moved: moves.map(|(at, _)| (at, rng.between(0.0, 0.45))),
            in_fire,
            wild: if rng.chance(0.2) { 0.02 } else { 0.002 },
        }
    }

    /// Where it is at a minute.
    pub fn place(&self, minute: usize) -> f64 {
        match self.moved {
            Some((at, to)) if minute >= at => to,
            _ => self.off,
        }
    }

    /// What it says each five minutes. `at(minute, off)` is the meat's own temperature at a place.
    pub fn read(
        &self,
        minutes: usize,
        air: &[f64],
        at: impl Fn(usize, f64) -> f64,
        rng: &mut Rng,
    ) -> Vec<Reading> {
        let mut drift = 0.0;
        let mut said = vec![];
        for minute in (0..minutes).step_by(5) {
            drift += self.drift * rng.normal();
            let noise = self.noise * rng.normal();
            let within = |stretch: &Option<(usize, usize)>| {
                stretch.is_some_and(|(from, to)| (from..to).contains(&minute))
            };
            let wild = rng.chance(self.wild).then(|| rng.between(-40.0, 60.0));
            if within(&self.gap) {
                continue;
            }
            let celsius = match within(&self.in_fire) {
                true => air[minute] + rng.between(-10.0, 20.0),
                false => at(minute, self.place(minute)) + drift + noise + wild.unwrap_or(0.0),
            };
            said.push(Reading { minute, celsius });
        }
        said
    }
}
