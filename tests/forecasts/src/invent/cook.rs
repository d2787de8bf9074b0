//! One invented cook, from a number. Start at [`invent`].
//!
//! | what | how it is drawn |
//! |---|---|
//! | cut | long ones three times as often as those that take an hour or two |
//! | pit | held inside the cut's usual range and up to 6 K beside it; opened for each mop, wrap and check |
//! | mops | half of what is usually mopped, from an hour on, at the cut's usual cadence |
//! | wrap | 4 in 10 of what may be wrapped, at 45 to 70 % of the usual time, paper or foil |
//! | probe | all but half of the slabs of ribs |
//! | done | a temperature inside the cut's range (where feel decides too, half a kelvin beside it), or tender |
//! | checks | of ribs only: from 75 % of the usual time on each 25 min; one in twelve says more or less than is true |

use super::{
    family::Family,
    meat::{Meat, meat},
    pit::{Pit, pit},
    probe::{Probe, Reading},
};
use crate::{
    physics::run::{Done, MOST_MIN, Until, Went, Wrap, run},
    rng::Rng,
};
use slowbend_core::checks::cuts::{Cut, CutFacts, DoneBy, cut_facts};

/// What a check of ribs said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Felt {
    /// Far from it.
    NotYet,
    /// Nearly.
    Close,
}

/// A cook, and when it was done.
#[derive(Clone, Debug)]
pub struct Invented {
    /// What is hidden.
    pub meat: Meat,
    /// The pit.
    pub pit: Pit,
    /// What its thermometer said, each five minutes.
    pub pit_said: Vec<Reading>,
    /// What the probe in the meat said.
    pub core_said: Vec<Reading>,
    /// Mops and wrap.
    pub done: Done,
    /// Minutes at which the pit was open.
    pub openings: Vec<usize>,
    /// What was felt.
    pub checks: Vec<(usize, Felt)>,
    /// The temperature it is to reach, °C; none where it is tender when it is tender.
    pub target: Option<f64>,
    /// What the pit is held at, °C.
    pub set: f64,
    /// What ends it in truth.
    pub until: Until,
    /// The answer: minutes from when it came on.
    pub finished: f64,
}

/// The cook of that number. One that is not done after twenty hours is drawn again.
pub fn invent(family: Family, seed: u64, number: u64) -> Invented {
    invent_with(family, seed, number, None)
}

/// The same on a pit whose thermometer is off by so many kelvin.
pub fn invent_with(family: Family, seed: u64, number: u64, bias: Option<f64>) -> Invented {
    let mut rng = Rng::new(seed, number);
    loop {
        let cut = a_cut(&mut rng);
        if let Some(cook) = one(cut, family, bias, &mut rng) {
            return cook;
        }
    }
}

/// The same of a cut that is given.
pub fn invent_cut(family: Family, seed: u64, number: u64, cut: Cut, bias: f64) -> Invented {
    let mut rng = Rng::new(seed, number);
    loop {
        if let Some(cook) = one(cut, family, Some(bias), &mut rng) {
            return cook;
        }
    }
}

/// Some cut: long ones three times as often.
pub fn a_cut(rng: &mut Rng) -> Cut {
    loop {
        let cut = Cut::ALL[rng.below(Cut::ALL.len())];
        if usual_min(&cut_facts(cut), 2_500.0) > 150.0 || rng.chance(0.33) {
            return cut;
        }
    }
}

fn usual_min(facts: &CutFacts, grams: f64) -> f64 {
    let usual = facts.cook_time.for_grams(grams as i64);
    (usual.least + usual.most) as f64 / 2.0
}

fn one(cut: Cut, family: Family, bias: Option<f64>, rng: &mut Rng) -> Option<Invented> {
    let facts = cut_facts(cut);
    let meat = meat(cut, family, rng);
    let usual = usual_min(&facts, meat.grams);
    let celsius = |mk: i64| mk as f64 / 1e3 - 273.15;
    let set = rng.between(
        celsius(facts.time_at.low.0) - 6.0,
        celsius(facts.time_at.high.0) + 6.0,
    );
    let (done, mut openings) = what_is_done(&facts, usual, rng);
    let felt = facts.done_by == DoneBy::Feel;
    let tries: Vec<usize> = match felt {
        true => (0..20).map(|n| (usual * 0.75) as usize + n * 25).collect(),
        false => vec![],
    };
    openings.extend(&tries);
    let bias = bias.unwrap_or(family.ranges().pit_bias * rng.normal());
    let pit = pit(set, &openings, MOST_MIN, family, bias, rng);
    let (low, high) = (facts.done_range.low.0, facts.done_range.high.0);
    let target = (!felt).then(|| celsius(low) + (celsius(high) - celsius(low)) * rng.unit());
    let beside = if facts.done_by == DoneBy::Temperature {
        0.0
    } else {
        0.5 * rng.normal()
    };
    let until = target.map_or(Until::Tender, |target| Until::Celsius(target + beside));
    let went = run(&meat, &pit.air, &done, until);
    let finished = went.done_min?;
    let probe = Probe::drawn(usual, rng);
    let has_probe = !felt || rng.chance(0.5);
    let minutes = finished as usize + 1;
    let core_said = match has_probe {
        true => probe.read(
            minutes,
            &pit.air,
            |minute, off| at_place(&went, minute, off),
            rng,
        ),
        false => vec![],
    };
    let checks = felt_at(&tries, &went, minutes, rng);
    Some(Invented {
        pit_said: said_of(&pit, minutes, rng),
        core_said,
        done,
        openings,
        checks,
        target,
        set,
        until,
        finished,
        meat,
        pit,
    })
}

fn what_is_done(facts: &CutFacts, usual: f64, rng: &mut Rng) -> (Done, Vec<usize>) {
    use slowbend_core::checks::cuts::{BastingHint, WrapKind};
    let wrap = (!facts.wraps.is_empty() && rng.chance(0.4)).then(|| {
        let kind = if rng.chance(0.5) && facts.wraps.contains(&WrapKind::Paper) {
            Wrap::Paper
        } else {
            Wrap::Foil
        };
        ((rng.between(0.45, 0.7) * usual) as usize, kind)
    });
    let every = match facts.basting {
        BastingHint::Dry => None,
        BastingHint::Mop { every_minutes } | BastingHint::Spritz { every_minutes } => {
            Some(every_minutes as usize)
        }
    };
    let last = wrap.map_or(MOST_MIN, |(at, _)| at);
    let mops: Vec<usize> = match every.filter(|_| rng.chance(0.5)) {
        Some(every) => (60..last).step_by(every).collect(),
        None => vec![],
    };
    let openings = mops.iter().copied().chain(wrap.map(|(at, _)| at)).collect();
    (Done { mops, wrap }, openings)
}

fn at_place(went: &Went, minute: usize, off: f64) -> f64 {
    let places = went.places[minute.min(went.places.len() - 1)];
    let (low, part) = ((off * 10.0) as usize, (off * 10.0).fract());
    places[low.min(5)] * (1.0 - part) + places[(low + 1).min(5)] * part
}

fn said_of(pit: &Pit, minutes: usize, rng: &mut Rng) -> Vec<Reading> {
    (0..minutes)
        .step_by(5)
        .map(|minute| Reading {
            minute,
            celsius: pit.air[minute] + pit.bias + rng.normal(),
        })
        .collect()
}

fn felt_at(tries: &[usize], went: &Went, minutes: usize, rng: &mut Rng) -> Vec<(usize, Felt)> {
    let mut felt = vec![];
    for at in tries.iter().filter(|at| **at < minutes) {
        let wrong = if rng.chance(1.0 / 12.0) {
            rng.between(-0.3, 0.3)
        } else {
            0.0
        };
        let seems = went.tender[*at] + 0.05 * rng.normal() + wrong;
        felt.push((
            *at,
            if seems < 0.82 {
                Felt::NotYet
            } else {
                Felt::Close
            },
        ));
    }
    felt
}
