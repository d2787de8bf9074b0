//! What is thought of a meat before anything is read. Start at [`Prior::of`].
//!
//! The catalogue says how long a cut takes at its usual pit temperature (common practice); a cut done by temperature is taken for as
//! thick as it must be for the middle member to take that long, and a cut done by feel has a usual thickness and a time to become
//! tender that comes out at the same. So the rule of thumb is where every forecast begins.

use super::{
    DoneWhen, Told,
    knobs::{self, KNOBS, Knob},
};
use crate::{
    checks::cuts::cut_facts,
    heat::{
        PIT_VAPOR,
        kernel::{Boundary, LANES, Member, Members},
        typical,
    },
    units::Mk,
};

/// Vapor in the pit's air, kg/kg: outdoor air and what a fire gives. Common practice, no source.
pub const VAPOR: f64 = PIT_VAPOR;
/// A refrigerator's meat, °C, when it goes on after lying out a while.
const STARTS_C: f64 = 7.0;
/// The middle of how wet a fresh surface is, of how fast juice seeps to it, m²/s, and of convection, W/(m² K): before bark closes
/// it. Tuned on the tuning family.
const WETNESS: f64 = 0.42;
const SEEP: f64 = 1e-7;
const CONVECTION: f64 = 6.0;
/// Minutes of a step of the prior's own run.
const STEP_MIN: f64 = 5.0;
/// Steps of that run at most.
const STEPS: usize = 24 * 12;
/// Around here the time to become tender is counted, °C.
pub const TENDER_C: f32 = 88.0;

/// The middle member of one meat.
#[derive(Clone, Copy, Debug)]
pub struct Prior {
    middle: Member,
    bias_k: f32,
    bias_spread: f32,
    /// Minutes at 88 °C until it is tender.
    tender_min: f32,
    /// What is usual for the cut, hours.
    usual_h: f32,
}

impl Prior {
    /// Of what is told.
    pub fn of(told: &Told) -> Self {
        let habits = &told.habits;
        let mut prior = Self {
            middle: middle(told),
            bias_k: habits.pit_bias_mk as f32 / 1e3,
            bias_spread: knobs::PIT_BIAS,
            tender_min: 0.0,
            usual_h: 1.0,
        };
        let facts = cut_facts(told.cut);
        let usual = facts.cook_time.for_grams(told.grams);
        let usual = usual.least.max(1) as f64 * usual.most.max(1) as f64;
        let minutes = libm::sqrt(usual) * libm::exp(habits.pace_micro as f64 / 1e6);
        prior.usual_h = (minutes / 60.0) as f32;
        let pit = (celsius(facts.time_at.low) + celsius(facts.time_at.high)) / 2.0;
        match told.done() {
            DoneWhen::Warm { temp } => prior.fit_thickness(pit, celsius(temp), minutes),
            DoneWhen::Tender => prior.tender_min = prior.run(pit, minutes).2,
        }
        prior
    }

    /// The member that knobs of those values mean, after so many hours on the pit.
    pub fn member(&self, knobs: &[f32; KNOBS], hours: f32) -> Member {
        let of = |knob: Knob| knobs[knob as usize];
        let times =
            |spread: f32, knob: Knob| f64::from(knobs::exp((spread * of(knob)).clamp(-2.0, 2.0)));
        let bark = self.bark(of(Knob::Bark), hours);
        let wet =
            logit(self.middle.wetness) + knobs::WET * of(Knob::Wet) - knobs::BARK_DRIES * bark;
        Member {
            half_thickness: (self.middle.half_thickness * times(knobs::THICK, Knob::Thick))
                .clamp(0.004, 0.15),
            convection: (self.middle.convection * times(knobs::DRAFT, Knob::Draft))
                .clamp(2.0, 40.0),
            wetness: f64::from(1.0 / (1.0 + knobs::exp(-wet))).clamp(0.03, 0.92),
            seep: self.middle.seep * times(knobs::SEEP, Knob::Seep) * f64::from(knobs::exp(-bark)),
            lets_go: (self.middle.lets_go + f64::from(knobs::LETS_GO * of(Knob::LetsGo)))
                .clamp(0.1, 1.2),
            pit_bias: f64::from(self.bias_k + self.bias_spread * of(Knob::PitBias)),
            conducts: self.middle.conducts * times(knobs::CONDUCTS, Knob::Conducts),
            ..self.middle
        }
    }

    fn bark(&self, knob: f32, hours: f32) -> f32 {
        (knobs::BARK * knobs::exp(knobs::BARK_SPREAD * knob) * hours / self.usual_h).min(6.0)
    }

    /// Minutes at 88 °C until such a member is tender; 0 where that does not decide.
    pub fn tender_min(&self, knobs: &[f32; KNOBS]) -> f32 {
        self.tender_min
            * knobs::exp((knobs::TENDER * knobs[Knob::Tender as usize]).clamp(-1.5, 1.5))
    }

    /// Eight thicknesses at once, and between the two that it lies between.
    fn fit_thickness(&mut self, pit: f64, target: f64, minutes: f64) {
        let tried: [f64; LANES] = std::array::from_fn(|lane| {
            self.middle.half_thickness * libm::exp((lane as f64 - 3.5) * 0.2)
        });
        let thick = |hours: f32, half_thickness: f64| Member {
            half_thickness,
            ..self.member(&[0.0; KNOBS], hours)
        };
        let mut block = Members::raw(&tried.map(|half| thick(0.0, half)));
        let around = Boundary::pit(pit, VAPOR);
        let mut done = [STEPS as f64 * STEP_MIN * 2.0; LANES];
        let mut before = block.state.core();
        for step in 0..STEPS {
            go_on(&mut block, &around, STEP_MIN);
            let core = block.state.core();
            let hours = (step as f64 * STEP_MIN / 60.0) as f32;
            for (lane, half) in tried.iter().enumerate() {
                block.params.set(lane, &thick(hours, *half));
            }
            for (lane, done) in done.iter_mut().enumerate() {
                let (was, is) = (f64::from(before.0[lane]), f64::from(core.0[lane]));
                if was < target && is >= target && *done > STEPS as f64 * STEP_MIN {
                    *done = (step as f64 + (target - was) / (is - was)) * STEP_MIN;
                }
            }
            before = core;
        }
        let above = done
            .iter()
            .position(|done| *done >= minutes)
            .unwrap_or(LANES - 1)
            .max(1);
        let (low, high) = (done[above - 1], done[above]);
        let share = ((minutes - low) / (high - low)).clamp(-1.0, 1.0);
        self.middle.half_thickness = tried[above - 1] * libm::exp(share * 0.2);
    }

    /// The middle member for so many minutes: core and mean in °C, and the minutes at 88 °C that it got.
    fn run(&self, pit: f64, minutes: f64) -> (f32, f32, f32) {
        let mut block = Members::raw(&[self.middle; LANES]);
        let around = Boundary::pit(pit, VAPOR);
        let mut dose = 0.0;
        for step in 0..(minutes / STEP_MIN) as usize {
            go_on(&mut block, &around, STEP_MIN);
            let hours = (step as f64 * STEP_MIN / 60.0) as f32;
            block.params.set(0, &self.member(&[0.0; KNOBS], hours));
            dose += STEP_MIN as f32 * pace(mean_c(&block).0[0], knobs::Z_MIDDLE);
        }
        (block.state.core().0[0], mean_c(&block).0[0], dose)
    }
}

/// A block goes on by so many minutes. Where juice seeps much faster than the kernel's range, a long step can draw more back from
/// the surface than lies on it, and a film of less than nothing ends in numbers that are none: such a member is left dry instead.
pub fn go_on(block: &mut Members, around: &Boundary, minutes: f64) {
    block.step(around, minutes * 60.0);
    for film in &mut block.state.film.0 {
        *film = film.max(0.0);
    }
}

/// How much faster than at 88 °C it becomes tender.
pub fn pace(celsius: f32, z: f32) -> f32 {
    knobs::exp((celsius.min(98.0) - TENDER_C) / z * std::f32::consts::LN_10)
}

/// About the mean temperature of each member: a place six tenths of the way out.
pub fn mean_c(block: &Members) -> crate::heat::kernel::Lanes<f32, LANES> {
    block.state.at(crate::heat::kernel::Lanes::all(0.58))
}

fn logit(share: f64) -> f32 {
    libm::log(share / (1.0 - share)) as f32
}

/// °C.
pub fn celsius(temp: Mk) -> f64 {
    temp.c_milli() as f64 / 1e3
}

fn middle(told: &Told) -> Member {
    let typical = typical(told.cut, told.grams);
    Member {
        start_c: told.start.map_or(STARTS_C, celsius),
        wetness: WETNESS,
        seep: SEEP,
        convection: CONVECTION,
        pit_bias: 0.0,
        ..typical
    }
}
