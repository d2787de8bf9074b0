//! Cooks a meat until it is done. Start at [`run`].

use super::{
    food::Food,
    grid::Grid,
    skin::{Around, Skin},
};
use crate::invent::meat::Meat;

/// Minutes after which a cook is given up.
pub const MOST_MIN: usize = 20 * 60;

/// What a wrap is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wrap {
    /// Paper lets a third of the vapor through.
    Paper,
    /// Foil a fiftieth.
    Foil,
}

/// What is done to it.
#[derive(Clone, Debug, Default)]
pub struct Done {
    /// Minutes of the mops.
    pub mops: Vec<usize>,
    /// When it is wrapped, and in what.
    pub wrap: Option<(usize, Wrap)>,
}

/// When a meat is done.
#[derive(Clone, Copy, Debug)]
pub enum Until {
    /// Its coldest place is this warm, °C.
    Celsius(f64),
    /// It is tender.
    Tender,
}

/// A cook as it went.
#[derive(Clone, Debug)]
pub struct Went {
    /// °C each minute at the middle line from the coldest place outwards, six places a tenth of the half thickness apart.
    pub places: Vec<[f64; 6]>,
    /// How tender, 1 is done, each minute.
    pub tender: Vec<f64>,
    /// When it was done, minutes.
    pub done_min: Option<f64>,
}

/// Cooks on until it is done, and an hour more so that no curve ends at the answer.
pub fn run(meat: &Meat, air: &[f64], done: &Done, until: Until) -> Went {
    let mut body = Body::of(meat);
    let mut went = Went {
        places: vec![],
        tender: vec![],
        done_min: None,
    };
    let mut tender = 0.0;
    let mut before = 0.0;
    for (minute, air) in air.iter().enumerate() {
        went.places.push(body.places());
        went.tender.push(tender);
        if done.mops.contains(&minute) {
            body.mop(0.08);
        }
        let wrap = done
            .wrap
            .filter(|(at, _)| minute >= *at)
            .map(|(_, wrap)| wrap);
        body.minute(meat, *air, wrap);
        let coldest = body.coldest();
        if meat.tender_min > 0.0 {
            tender += 10f64.powf((body.mean().min(98.0) - 88.0) / meat.z) / meat.tender_min;
        }
        let (now, at) = match until {
            Until::Celsius(at) => (coldest, at),
            Until::Tender => (tender, 1.0),
        };
        if now >= at && went.done_min.is_none() {
            went.done_min = Some(minute as f64 + (at - before) / (now - before).max(1e-9));
        }
        before = now;
        if went.done_min.is_some_and(|at| minute as f64 > at + 60.0) {
            break;
        }
    }
    went
}

/// A meat under way.
struct Body {
    food: Food,
    grid: Grid,
    cells: Vec<f64>,
    /// Share of the water that each cell has given, which never goes back.
    given: Vec<f64>,
    skins: Vec<Skin>,
    flows: Vec<f64>,
    /// kg driven out and still within.
    within: f64,
    area: f64,
}

impl Body {
    fn of(meat: &Meat) -> Self {
        let (food, grid) = (Food::of(meat.made_of, meat.conducts), Grid::of(meat));
        let skin = Skin {
            celsius: meat.starts_at,
            film: 0.05,
            dried: 0.0,
        };
        Self {
            cells: vec![meat.starts_at; grid.volumes.len()],
            given: vec![0.0; grid.volumes.len()],
            flows: vec![0.0; grid.volumes.len()],
            skins: vec![skin; grid.open.len()],
            within: 0.0,
            area: grid.open.iter().map(|open| open.area).sum(),
            food,
            grid,
        }
    }

    /// A cold splash: water stays, and what it takes to warm it comes off the surface cells.
    fn mop(&mut self, kg_m2: f64) {
        for (open, skin) in self.grid.open.iter().zip(&mut self.skins) {
            if !open.below {
                skin.film += kg_m2;
                let warm = kg_m2 * 4_180.0 * (self.cells[open.cell] - 15.0) * open.area;
                self.cells[open.cell] -=
                    warm / (self.food.capacity(60.0) * self.grid.volumes[open.cell]);
            }
        }
    }

    fn minute(&mut self, meat: &Meat, air: f64, wrap: Option<Wrap>) {
        let steps = (60.0 / self.food.step(self.grid.size.0, self.grid.size.1))
            .ceil()
            .max(4.0);
        for _ in 0..steps as usize {
            self.step(meat, air, wrap, 60.0 / steps);
        }
        for cell in 0..self.cells.len() {
            let warm = 1.0 / (1.0 + (-(self.cells[cell] - meat.driven_at) / 3.5).exp());
            let more = (warm * meat.driven_out - self.given[cell]).max(0.0);
            self.given[cell] += more;
            let kg = more * self.food.water * self.food.density * self.grid.volumes[cell];
            self.within += kg * (1.0 - meat.drips);
        }
    }

    fn step(&mut self, meat: &Meat, air: f64, wrap: Option<Wrap>, dt: f64) {
        self.flows.fill(0.0);
        for face in &self.grid.faces {
            let (a, b) = (self.cells[face.a], self.cells[face.b]);
            let flow = self.food.conductivity((a + b) / 2.0) * face.over * (b - a);
            self.flows[face.a] += flow;
            self.flows[face.b] -= flow;
        }
        let seeps = self.within / meat.seep_s / self.area;
        self.within -= seeps * self.area * dt;
        let (open_to, air_gap, shine) = match wrap {
            None => (1.0, 1.0, 1.0),
            Some(Wrap::Paper) => (0.33, 0.8, 0.8),
            Some(Wrap::Foil) => (0.02, 0.7, 0.35),
        };
        let vapor = 101_325.0 * meat.vapor / (0.622 + meat.vapor);
        for (open, skin) in self.grid.open.iter().zip(&mut self.skins) {
            let share = if open.below { meat.below } else { 1.0 };
            let around = Around {
                air,
                convection: meat.convection * share * air_gap,
                emissivity: meat.emissivity * shine,
                open: open_to,
                vapor_pa: vapor,
            };
            let inside = self.cells[open.cell];
            let conducts = self.food.conductivity(inside) / open.deep;
            let heat = skin.go(meat, &around, inside, conducts, seeps, dt);
            self.flows[open.cell] += heat * open.area;
        }
        for ((celsius, flow), volume) in self
            .cells
            .iter_mut()
            .zip(&self.flows)
            .zip(&self.grid.volumes)
        {
            *celsius += flow * dt / (self.food.capacity(*celsius) * volume);
        }
    }

    fn coldest(&self) -> f64 {
        self.grid
            .middle
            .iter()
            .map(|cell| self.cells[*cell])
            .fold(f64::INFINITY, f64::min)
    }

    fn mean(&self) -> f64 {
        let all: f64 = self.grid.volumes.iter().sum();
        self.cells
            .iter()
            .zip(&self.grid.volumes)
            .map(|(c, v)| c * v)
            .sum::<f64>()
            / all
    }

    /// From the coldest place of the middle line up, a tenth of the half thickness at a time.
    fn places(&self) -> [f64; 6] {
        let line = &self.grid.middle;
        let coldest = (0..line.len())
            .min_by(|a, b| self.cells[line[*a]].total_cmp(&self.cells[line[*b]]))
            .unwrap_or(0);
        let step = line.len() as f64 / 2.0 / 10.0;
        std::array::from_fn(|tenth| {
            let at = (coldest as f64 + tenth as f64 * step).min(line.len() as f64 - 1.001);
            let (low, part) = (at as usize, at.fract());
            self.cells[line[low]] * (1.0 - part) + self.cells[line[low + 1]] * part
        })
    }
}
