//! The facts laid on the grid: what was around the meat, and what was read and felt, in each five minutes. Start at [`Steps::at`].
//!
//! Whatever order facts were told in, they are taken in the order of time, and of value where times are the same.

use super::{
    GRID_MS, Told,
    prior::{VAPOR, celsius},
    told::{CoreAt, Felt},
};
use crate::{
    checks::cuts::WrapKind,
    heat::{
        kernel::{Boundary, Mop, Wrap},
        wrap,
    },
    safety::food_log::TempAt,
};

/// What stays of a mop, kg/m² of all surface. Common practice, no source.
const MOPPED: f64 = 0.06;
/// A mop's temperature, °C. Common practice, no source.
const MOP_C: f64 = 15.0;
/// What a pit lost by an opening that no reading shows, share of what it is warmer than 20 °C, over five minutes.
const OPENING: f64 = 0.12;

/// Probes beyond so many count as this one.
const PROBES: u32 = 7;

/// All facts in order.
#[derive(Clone, Debug)]
pub struct Steps {
    first: i64,
    pit: Vec<TempAt>,
    set: Option<f64>,
    probes: Vec<Vec<TempAt>>,
    hand: Vec<TempAt>,
    wraps: Vec<(i64, Option<WrapKind>)>,
    mops: Vec<i64>,
    openings: Vec<i64>,
    checks: Vec<(i64, Felt)>,
}

/// One step of five minutes.
#[derive(Clone, Debug)]
pub struct Step {
    /// What was around.
    pub around: Boundary,
    /// Minutes of it that the meat was on.
    pub minutes: f32,
    /// What each probe that spoke said, °C, coldest first.
    pub probes: Vec<(u32, f32)>,
    /// What was read by hand, °C.
    pub hand: Option<f32>,
    /// What was felt.
    pub felt: Vec<Felt>,
}

impl Steps {
    /// Of what is told, up to `told.now`.
    pub fn of(told: &Told) -> Self {
        let end = floor(told.now);
        let mut pit: Vec<TempAt> = told
            .pit
            .iter()
            .filter(|one| one.at < end)
            .copied()
            .collect();
        pit.sort_by_key(|one| (one.at, one.temp));
        let cores = |which: &dyn Fn(&CoreAt) -> bool| {
            let of = told.core.iter().filter(|one| which(one) && one.at < end);
            let mut of: Vec<_> = of
                .map(|one| TempAt {
                    at: one.at,
                    temp: one.temp,
                })
                .collect();
            of.sort_by_key(|one| (one.at, one.temp));
            of
        };
        let last = told
            .core
            .iter()
            .map(|one| one.probe.min(PROBES))
            .max()
            .unwrap_or(0);
        let probes =
            (0..=last).map(|probe| cores(&|one| !one.by_hand && one.probe.min(PROBES) == probe));
        let mut wraps: Vec<_> = told.wraps.iter().map(|one| (one.at, one.wrap)).collect();
        wraps.sort_by_key(|(at, wrap)| (*at, wrap.is_some()));
        let mut checks: Vec<_> = told.checks.iter().map(|one| (one.at, one.felt)).collect();
        checks.sort_by_key(|(at, felt)| (*at, *felt as u8));
        let sorted = |of: &[i64]| {
            let mut of = of.to_vec();
            of.sort_unstable();
            of
        };
        Self {
            first: floor(told.on_at),
            set: told.pit_set.map(celsius),
            mops: sorted(&told.mops),
            openings: sorted(&told.openings),
            pit,
            probes: probes.collect(),
            hand: cores(&|one| one.by_hand),
            wraps,
            checks,
        }
    }

    /// How many whole steps lie before `now`.
    pub fn count(&self, now: i64) -> u64 {
        ((floor(now) - self.first) / GRID_MS).max(0) as u64
    }

    /// The instant at which a step begins.
    pub fn begins(&self, step: u64) -> i64 {
        self.first + step as i64 * GRID_MS
    }

    /// What happened in a step. `on_at` counts in the first.
    pub fn at(&self, step: u64, on_at: i64) -> Step {
        let (from, to) = (self.begins(step), self.begins(step + 1));
        let mops = within(&self.mops, from, to, |at| *at).len();
        let pit = self.pit_in(from, to);
        let mut around = Boundary::pit(pit, VAPOR);
        around.wrap = wrap_of(self.wrap_at(to - 1));
        around.mop = mop(mops as f64);
        Step {
            around,
            minutes: (to - from.max(on_at)) as f32 / 60_000.0,
            probes: self.probes_in(from, to),
            hand: middle(within(&self.hand, from, to, |one| one.at)),
            felt: within(&self.checks, from, to, |one| one.0)
                .iter()
                .map(|one| one.1)
                .collect(),
        }
    }

    fn probes_in(&self, from: i64, to: i64) -> Vec<(u32, f32)> {
        let each = self.probes.iter().zip(0..);
        let mut said: Vec<(u32, f32)> = each
            .filter_map(|(of, probe)| Some((probe, middle(within(of, from, to, |one| one.at))?)))
            .collect();
        said.sort_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
        said
    }

    /// The mean of the pit's readings in a step, or the last one before, or what it is held at.
    fn pit_in(&self, from: i64, to: i64) -> f64 {
        let here = within(&self.pit, from, to, |one| one.at);
        if !here.is_empty() {
            return mean(here);
        }
        let before = self.pit.partition_point(|one| one.at < from);
        let first = self.pit.first();
        let last = before
            .checked_sub(1)
            .and_then(|at| self.pit.get(at))
            .or(first)
            .map(|one| celsius(one.temp));
        let level = last.or(self.set).unwrap_or(120.0);
        match within(&self.openings, from, to, |at| *at).is_empty() {
            true => level,
            false => level - OPENING * (level - 20.0),
        }
    }

    /// The mean of the pit over the last so many minutes, and how far five-minute means stray from it, °C.
    pub fn pit_lately(&self, now: i64, minutes: i64) -> (f64, f64) {
        let from = now - minutes * 60_000;
        let here = within(&self.pit, from, now, |one| one.at);
        match (here.len(), self.set) {
            (0, set) => (set.unwrap_or_else(|| self.pit_in(now - GRID_MS, now)), 5.0),
            (1..4, Some(set)) => ((mean(here) + set) / 2.0, 5.0),
            _ => {
                let mean = mean(here);
                let off = here
                    .iter()
                    .map(|one| (celsius(one.temp) - mean) * (celsius(one.temp) - mean));
                (mean, libm::sqrt(off.sum::<f64>() / here.len() as f64))
            }
        }
    }

    /// The probe's readings of the last so many minutes: minutes before `now` (negative) and °C.
    pub fn probe_lately(&self, now: i64, minutes: i64) -> Vec<(f64, f64)> {
        let lately =
            |of: &Vec<TempAt>| within(of, now - minutes * 60_000, now, |one| one.at).to_vec();
        let most = self
            .probes
            .iter()
            .map(lately)
            .reduce(|most, of| if of.len() > most.len() { of } else { most });
        most.unwrap_or_default()
            .iter()
            .map(|one| ((one.at - now) as f64 / 60_000.0, celsius(one.temp)))
            .collect()
    }

    /// What it lies in at an instant.
    pub fn wrap_at(&self, at: i64) -> Option<WrapKind> {
        let before = self.wraps.partition_point(|one| one.0 <= at);
        before.checked_sub(1).and_then(|last| self.wraps[last].1)
    }

    /// Minutes between mops, where it is still being mopped at an instant.
    pub fn mops_every(&self, now: i64) -> Option<f64> {
        let before = &self.mops[..self.mops.partition_point(|at| *at <= now)];
        let [.., one, last] = before else { return None };
        let every = (last - one).max(GRID_MS);
        (now - last <= every * 3 / 2 && self.wrap_at(now).is_none())
            .then(|| every as f64 / 60_000.0)
    }

    /// When it was mopped last.
    pub fn last_mop(&self, now: i64) -> Option<i64> {
        self.mops[..self.mops.partition_point(|at| *at <= now)]
            .last()
            .copied()
    }

    /// A number of all facts that count in a step, so that a kept state is known to have been made of the same ones.
    pub fn digest(&self, step: u64, on_at: i64) -> [u8; 32] {
        let (from, to) = (self.begins(step), self.begins(step + 1));
        let of = self.at(step, on_at);
        let mut hasher = blake3::Hasher::new();
        let mut put = |number: i64| {
            hasher.update(&number.to_le_bytes());
        };
        put(from);
        put((of.around.pit_c * 1e6) as i64);
        put(i64::from(
            self.wrap_at(to - 1).map_or(0, |wrap| wrap as u8 + 1),
        ));
        put((of.around.mop.water * 1e6) as i64);
        put((of.minutes * 6e4) as i64);
        for (probe, said) in &of.probes {
            put(i64::from(*probe));
            put(i64::from(said.to_bits()));
        }
        put(of.hand.map_or(i64::MIN, |one| i64::from(one.to_bits())));
        of.felt.iter().for_each(|felt| put(*felt as i64));
        *hasher.finalize().as_bytes()
    }
}

/// That many mops within one step.
pub fn mop(mops: f64) -> Mop {
    match mops > 0.0 {
        true => Mop {
            water: MOPPED * mops.min(3.0),
            celsius: MOP_C,
        },
        false => Mop::NONE,
    }
}

/// What that wrap is to the heat.
pub fn wrap_of(kind: Option<WrapKind>) -> Wrap {
    kind.map_or(Wrap::BARE, wrap)
}

/// The instant of the grid at or before.
pub const fn floor(at: i64) -> i64 {
    at.div_euclid(GRID_MS) * GRID_MS
}

fn within<T>(of: &[T], from: i64, to: i64, at: impl Fn(&T) -> i64) -> &[T] {
    let first = of.partition_point(|one| at(one) < from);
    let end = of.partition_point(|one| at(one) < to);
    &of[first..end.max(first)]
}

fn mean(of: &[TempAt]) -> f64 {
    of.iter().map(|one| celsius(one.temp)).sum::<f64>() / of.len() as f64
}

/// The middle one, so that one wild reading among three is not believed.
fn middle(of: &[TempAt]) -> Option<f32> {
    let mut all: Vec<_> = of.iter().map(|one| one.temp).collect();
    all.sort_unstable();
    all.get(all.len() / 2).map(|temp| celsius(*temp) as f32)
}
