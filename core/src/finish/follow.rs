//! Follows the facts step by step. Start at [`Follow::work`].
//!
//! What is kept between steps does not grow with the cook; as bytes it comes back to the same bytes, and is taken only for the same
//! facts. A fact that comes late lies in a step that is over: then [`Follow::resume`] answers nothing, and all begins anew.

use super::{
    DoneWhen, GRID_MS, MEMBERS, NotAForecast, Told,
    crowd::Crowd,
    dice::Dice,
    felt::weigh,
    knobs::{KNOBS, Knob},
    prior::{Prior, celsius},
    pull::pull,
    steps::{Step, Steps},
};
use crate::heat::kernel::{LANES, State};

/// Spread of one reading of a probe that stays in, K.
const PROBE: f32 = 0.6;
/// Spread of one by hand, K: another hand finds another place.
const HAND: f32 = 1.2;
/// So many spreads away, and so many kelvin, a reading is strange.
const STRANGE: (f32, f32) = (4.0, 3.0);
/// After so many strange ones that agree with each other the probe was moved.
const MOVED: usize = 3;
/// Strange ones agree within this, K.
const AGREE: f32 = 3.0;
/// Says which shape kept bytes have.
const SHAPE: u32 = 1;

/// A crowd and how far it has come.
#[derive(Clone, Debug)]
pub struct Follow {
    /// What was thought before.
    pub(super) prior: Prior,
    /// The members.
    pub(super) crowd: Crowd,
    /// The next step.
    pub(super) step: u64,
    /// Strange readings in a row, latest last.
    strange: Vec<f32>,
    /// Probes that were passed over in the last step that any spoke in.
    doubted: Vec<u32>,
    /// All facts so far.
    digest: [u8; 32],
    steps: Steps,
}

impl Follow {
    /// Before anything is read.
    ///
    /// # Errors
    /// Where what is told cannot be.
    pub fn start(told: &Told) -> Result<Self, NotAForecast> {
        Self::start_with(told, MEMBERS)
    }

    /// The same with fewer members: for tests and for many cooks at once.
    ///
    /// # Errors
    /// Where what is told cannot be.
    pub fn start_with(told: &Told, members: usize) -> Result<Self, NotAForecast> {
        told.check()?;
        let prior = Prior::of(told);
        Ok(Self {
            crowd: Crowd::drawn(&prior, told.key, members),
            steps: Steps::of(told),
            prior,
            step: 0,
            strange: vec![],
            doubted: vec![],
            digest: [0; 32],
        })
    }

    /// Goes on by one step of the grid, which takes milliseconds; false where all facts are taken.
    pub fn work(&mut self, told: &Told) -> bool {
        if self.step >= self.steps.count(told.now) {
            return false;
        }
        let step = self.steps.at(self.step, told.on_at);
        self.digest = chained(&self.digest, &self.steps.digest(self.step, told.on_at));
        self.take(&step, told.key);
        self.step += 1;
        self.step < self.steps.count(told.now)
    }

    /// Takes what is told by now; false where something came late, in a step that is over: then all has to begin anew.
    pub fn tell(&mut self, told: &Told) -> bool {
        let steps = Steps::of(told);
        let same =
            self.step <= steps.count(told.now) && digest_of(&steps, told, self.step) == self.digest;
        self.steps = steps;
        same
    }

    /// The instant it has come to.
    pub fn at(&self) -> i64 {
        self.steps.begins(self.step)
    }

    /// Whether half of the members are done.
    pub(super) fn half_is_done(&self, done: DoneWhen) -> bool {
        let there = match done {
            DoneWhen::Tender => self.crowd.dose.iter().filter(|dose| **dose >= 1.0).count(),
            DoneWhen::Warm { temp } => self
                .crowd
                .cores()
                .iter()
                .filter(|core| **core >= celsius(temp) as f32)
                .count(),
        };
        there * 2 >= self.crowd.len()
    }

    /// Hours on the pit at the end of this step.
    fn hours(&self) -> f32 {
        self.hours_at(self.step)
    }

    fn hours_at(&self, step: u64) -> f32 {
        (step + 1) as f32 * (GRID_MS as f32 / 3.6e6)
    }

    pub(super) fn doubted(&self) -> Vec<u32> {
        let mut doubted = self.doubted.clone();
        doubted.sort_unstable();
        doubted
    }

    pub(super) fn steps(&self) -> &Steps {
        &self.steps
    }

    fn take(&mut self, step: &Step, key: u64) {
        self.crowd.step(&self.prior, &step.around, step.minutes);
        self.crowd.wander(key, self.step + 1);
        if !step.probes.is_empty() {
            self.probe(step, key);
        }
        if let Some(hand) = step.hand {
            let said = self.crowd.said(true);
            pull(&mut self.crowd, &said, hand, HAND);
        }
        for felt in &step.felt {
            weigh(&mut self.crowd, *felt, key, self.step + 1);
        }
        self.crowd.apply(&self.prior, self.hours());
    }

    /// The coldest probe that can be believed is pulled at; where none can, they are passed over as strange, until they agree for
    /// so long that they were moved.
    fn probe(&mut self, step: &Step, key: u64) {
        let said = self.crowd.said(false);
        let (mean, spread) = spread_of(&said);
        let wide = libm::sqrtf(spread * spread + PROBE * PROBE);
        let food = |reading: f32| {
            (-10.0..=110.0).contains(&reading) && reading < step.around.pit_c as f32 - 8.0
        };
        let strange = |reading: f32| {
            !food(reading) || (reading - mean).abs() > (STRANGE.0 * wide).max(STRANGE.1)
        };
        self.doubted = step
            .probes
            .iter()
            .filter(|one| strange(one.1))
            .map(|one| one.0)
            .collect();
        if let Some((_, reading)) = step.probes.iter().find(|one| !strange(one.1)) {
            self.strange.clear();
            // Further out than two spreads a reading counts for less, so that no single one drags the crowd.
            let off = (reading - mean).abs();
            pull(
                &mut self.crowd,
                &said,
                *reading,
                PROBE * (off / (2.0 * wide)).max(1.0),
            );
            return;
        }
        let Some((_, reading)) = step.probes.iter().find(|one| food(one.1)) else {
            self.strange.clear();
            return;
        };
        if self
            .strange
            .last()
            .is_some_and(|last| (last - reading).abs() >= AGREE)
        {
            self.strange.clear();
        }
        self.strange.push(*reading);
        if self.strange.len() >= MOVED {
            self.strange.clear();
            self.doubted.clear();
            self.sits_anywhere(key);
            let said = self.crowd.said(false);
            pull(&mut self.crowd, &said, *reading, 2.0 * PROBE);
        }
    }

    /// Nothing is known any more of where the probe sits.
    fn sits_anywhere(&mut self, key: u64) {
        for (knob, wider) in [(Knob::Place, 1.5), (Knob::Slip, 3.0)] {
            let dice = Dice::of(key, self.step + 1, 96 + knob as u64);
            for (member, knobs) in self.crowd.knobs.iter_mut().enumerate() {
                knobs[knob as usize] = wider * dice.normal(member);
            }
        }
    }

    /// All that has to be kept to go on, as bytes.
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut bytes = vec![];
        bytes.extend_from_slice(&SHAPE.to_le_bytes());
        bytes.extend_from_slice(&(self.crowd.len() as u32).to_le_bytes());
        bytes.extend_from_slice(&self.step.to_le_bytes());
        bytes.extend_from_slice(&self.digest);
        bytes.extend_from_slice(&(self.strange.len() as u32).to_le_bytes());
        bytes.extend_from_slice(
            &self
                .doubted
                .iter()
                .fold(0u32, |bits, probe| bits | 1 << probe)
                .to_le_bytes(),
        );
        let knobs = self.crowd.knobs.iter().flatten();
        for number in self.strange.iter().chain(knobs).chain(&self.crowd.dose) {
            bytes.extend_from_slice(&number.to_le_bytes());
        }
        for block in &self.crowd.blocks {
            bytes.extend(block.state.to_bytes());
        }
        bytes
    }

    /// Goes on from kept bytes; none where they are of another shape, or were made of other facts than are told now.
    pub fn resume(bytes: &[u8], told: &Told) -> Option<Self> {
        let mut rest = bytes;
        let mut word = |n: usize| {
            let (head, tail) = rest.split_at_checked(n)?;
            rest = tail;
            Some(head)
        };
        let number = |bytes: &[u8]| Some(u32::from_le_bytes(bytes.try_into().ok()?));
        if number(word(4)?)? != SHAPE {
            return None;
        }
        let members = number(word(4)?)? as usize;
        let step = u64::from_le_bytes(word(8)?.try_into().ok()?);
        let digest: [u8; 32] = word(32)?.try_into().ok()?;
        let strange = number(word(4)?)? as usize;
        let doubted = number(word(4)?)?;
        if strange > MOVED || members > 100_000 || !members.is_multiple_of(LANES) {
            return None;
        }
        let floats = strange + members * (KNOBS + 1);
        let floats: Vec<f32> = word(floats * 4)?
            .chunks_exact(4)
            .map(|four| f32::from_le_bytes(four.try_into().expect("four bytes")))
            .collect();
        let mut follow = Self::start_with(told, members).ok()?;
        if step > follow.steps.count(told.now) {
            return None;
        }
        if digest_of(&follow.steps, told, step) != digest {
            return None;
        }
        follow.digest = digest;
        follow.step = step;
        follow.doubted = (0..32).filter(|probe| doubted >> probe & 1 == 1).collect();
        follow.strange = floats[..strange].to_vec();
        for (member, knobs) in follow.crowd.knobs.iter_mut().enumerate() {
            knobs.copy_from_slice(&floats[strange + member * KNOBS..][..KNOBS]);
        }
        follow.crowd.dose = floats[strange + members * KNOBS..].to_vec();
        let one = rest.len() / follow.crowd.blocks.len().max(1);
        if one == 0 || rest.len() != one * follow.crowd.blocks.len() {
            return None;
        }
        for (block, bytes) in follow.crowd.blocks.iter_mut().zip(rest.chunks_exact(one)) {
            block.state = State::from_bytes(bytes)?;
        }
        follow
            .crowd
            .apply(&follow.prior, follow.hours_at(step.saturating_sub(1)));
        Some(follow)
    }
}

/// Of all facts in the steps before `step`.
fn digest_of(steps: &Steps, told: &Told, step: u64) -> [u8; 32] {
    (0..step).fold([0; 32], |digest, past| {
        chained(&digest, &steps.digest(past, told.on_at))
    })
}

fn chained(before: &[u8; 32], here: &[u8; 32]) -> [u8; 32] {
    let mut hasher = blake3::Hasher::new();
    hasher.update(before).update(here);
    *hasher.finalize().as_bytes()
}

fn spread_of(said: &[f32]) -> (f32, f32) {
    let n = said.len() as f64;
    let mean = said.iter().map(|one| f64::from(*one)).sum::<f64>() / n;
    let wide = said
        .iter()
        .map(|one| (f64::from(*one) - mean) * (f64::from(*one) - mean))
        .sum::<f64>()
        / (n - 1.0);
    (mean as f32, libm::sqrt(wide) as f32)
}
