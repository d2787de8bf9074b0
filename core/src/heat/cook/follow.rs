//! The cook, minute by minute.

use super::{CookHeatInput, HeatAt, MopAt, OpeningAt, Stall, mk, permille};
use crate::{
    checks::cuts::cut_facts,
    heat::{
        Opened, PIT_VAPOR, PitAir, Shape,
        kernel::{Block, Boundary, Mop, Wrap},
        of_parts, parts, shape, wrap,
    },
    units::Mk,
};

/// Seconds of a step.
const STEP: i64 = 60;
/// Off the pit: the vapor of a room, kg/kg (20 °C, half of what it can hold).
const ROOM_VAPOR: f64 = 0.007;
/// Where a stall is looked for, °C, and how slow it is, K/s: 7 °F an hour.
const STALLS: std::ops::Range<f64> = 54.4..90.6;
const SLOW: f64 = 7.0 / 1.8 / 3600.0;

/// One meat, twice as fine as the members of an ensemble.
type Meat = Block<f64, 24, 1>;

/// A cook as it is followed.
pub(super) struct Follow<'a> {
    input: &'a CookHeatInput,
    air: PitAir,
    meat: Meat,
    /// What its surface is, m², and what a square meter of it weighs, kg, and holds of water, kg.
    area: f64,
    weight: f64,
    raw: f64,
    at_s: i64,
    slow: Option<Stall>,
    pub curve: Vec<HeatAt>,
    pub reached_s: Option<i64>,
    pub warmest: f64,
    pub stall: Option<Stall>,
    pub evaporated: f64,
    pub ran_off: f64,
}

impl<'a> Follow<'a> {
    /// All of it.
    pub fn all(input: &'a CookHeatInput) -> Self {
        let mut follow = Self::raw(input);
        follow.point();
        while follow.at_s < input.for_s {
            follow.step(STEP.min(input.for_s - follow.at_s));
        }
        follow
    }

    fn raw(input: &'a CookHeatInput) -> Self {
        let meat = meat(input);
        let raw = meat.state.inside(&meat.params).0[0];
        // Water has the same share of a square meter's weight as of the whole.
        let weight = raw / parts(&cut_facts(input.cut).composition).water();
        Self {
            input,
            air: pit(input),
            area: input.grams as f64 / 1000.0 / weight,
            weight,
            raw,
            at_s: 0,
            slow: None,
            curve: vec![],
            reached_s: None,
            warmest: meat.state.core().0[0],
            stall: None,
            evaporated: 0.0,
            ran_off: 0.0,
            meat,
        }
    }

    fn step(&mut self, seconds: i64) {
        let before = self.meat.state.core().0[0];
        let from_s = self.at_s;
        self.at_s += seconds;
        let flow = self.meat.step(&self.around(), seconds as f64);
        let core = self.meat.state.core().0[0];
        self.evaporated += flow.evaporated.0[0] / self.weight;
        self.ran_off += flow.dripped.0[0] / self.weight;
        self.warmest = self.warmest.max(core);
        self.reach(from_s, before, core);
        self.stall(from_s, before, core);
        if self.at_s % self.input.every_s < seconds || self.at_s == self.input.for_s {
            self.point();
        }
    }

    fn reach(&mut self, from_s: i64, before: f64, core: f64) {
        let Some(until) = self.input.until.filter(|until| mk(core) >= *until) else {
            return;
        };
        let left = (core - until.c_milli() as f64 / 1000.0) / (core - before);
        let left = if core > before {
            left.clamp(0.0, 1.0)
        } else {
            1.0
        };
        let back = libm::round(left * (self.at_s - from_s) as f64) as i64;
        self.reached_s.get_or_insert(self.at_s - back);
    }

    fn stall(&mut self, from_s: i64, before: f64, core: f64) {
        let is_on = self.input.off_s.is_none_or(|off| self.at_s <= off);
        let rose = core - before;
        let is_slow = STALLS.contains(&core) && rose < SLOW * (self.at_s - from_s) as f64;
        let began = self.slow.unwrap_or(Stall {
            from_s,
            to_s: from_s,
            from: mk(before),
            to: mk(before),
        });
        self.slow = (is_on && is_slow).then(|| Stall {
            to_s: self.at_s,
            to: mk(core),
            ..began
        });
        let long = |stall: Option<Stall>| stall.map_or(0, |stall| stall.to_s - stall.from_s);
        if long(self.slow) > long(self.stall) {
            self.stall = self.slow;
        }
    }

    fn point(&mut self) {
        let state = &self.meat.state;
        let lost = self.raw - state.inside(&self.meat.params).0[0];
        let point = HeatAt {
            at_s: self.at_s,
            core: mk(state.core().0[0]),
            surface: mk(state.skin.0[0]),
            pit: mk(self.around().pit_c),
            lost_permille: permille(lost / self.weight),
        };
        self.curve.push(point);
    }

    /// What is around it in the step that ends now.
    fn around(&self) -> Boundary {
        let input = self.input;
        let vapor = input
            .vapor_mg_per_kg
            .map_or(PIT_VAPOR, |mg| mg as f64 / 1e6);
        let mut around = match input.off_s.is_some_and(|off| self.at_s > off) {
            true => Boundary::pit(self.air.outside_c, ROOM_VAPOR),
            false => Boundary::pit(self.air.at(self.at_s as f64), vapor),
        };
        let wrapped = input.wraps.iter().rfind(|wrap| wrap.at_s < self.at_s);
        let kind = wrapped.and_then(|wrapped| wrapped.kind);
        around.wrap = kind.map_or(Wrap::BARE, wrap);
        around.mop = self.mop();
        around
    }

    /// All that was poured on in the step that ends now.
    fn mop(&self) -> Mop {
        let poured = |mop: &&MopAt| (self.at_s - STEP..self.at_s).contains(&mop.at_s);
        self.input
            .mops
            .iter()
            .find(poured)
            .map_or(Mop::NONE, |mop| Mop {
                water: mop.grams as f64 / 1000.0 / self.area,
                celsius: celsius(mop.temp),
            })
    }
}

fn celsius(temp: Mk) -> f64 {
    temp.c_milli() as f64 / 1000.0
}

fn meat(input: &CookHeatInput) -> Meat {
    let usual = shape(input.cut, input.grams);
    let thick = |mm: i64| mm as f64 / 2000.0;
    let shape = Shape {
        half_thickness: input.thick_mm.map_or(usual.half_thickness, thick),
        ..usual
    };
    let mut member = of_parts(parts(&cut_facts(input.cut).composition), shape);
    member.start_c = celsius(input.start);
    Meat::raw(&[member])
}

fn pit(input: &CookHeatInput) -> PitAir {
    let opened = |opening: &OpeningAt| Opened {
        at_s: opening.at_s as f64,
        for_s: opening.for_s as f64,
    };
    let logged = input.pit.iter();
    PitAir {
        logged: logged
            .map(|pit| (pit.at_s as f64, celsius(pit.temp)))
            .collect(),
        opened: input.openings.iter().map(opened).collect(),
        outside_c: celsius(input.outside),
    }
}
