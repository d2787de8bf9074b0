//! The section of a meat as cells: half of it, from the middle outwards and from the grate up; a box or an ellipse, long or round
//! as seen from above. All lengths in meters; a long one is counted a meter deep, a round one a radian wide.

use crate::invent::meat::Meat;

/// Cells from the middle to the side.
const ACROSS: usize = 7;
/// Cells from the grate to the top.
const UP: usize = 12;

/// Where two cells touch.
#[derive(Clone, Copy, Debug)]
pub struct Face {
    /// One.
    pub a: usize,
    /// The other.
    pub b: usize,
    /// Area over distance, m.
    pub over: f64,
}

/// Where a cell meets the air.
#[derive(Clone, Copy, Debug)]
pub struct Open {
    /// Which cell.
    pub cell: usize,
    /// m².
    pub area: f64,
    /// From the middle of the cell to its surface, m.
    pub deep: f64,
    /// Whether it looks down.
    pub below: bool,
}

/// The cells of one meat.
#[derive(Clone, Debug)]
pub struct Grid {
    /// m³ of each.
    pub volumes: Vec<f64>,
    /// Where they touch.
    pub faces: Vec<Face>,
    /// Where they meet the air.
    pub open: Vec<Open>,
    /// The size of a cell.
    pub size: (f64, f64),
    /// Which cell is at a place of the middle line, from the grate up.
    pub middle: Vec<usize>,
}

impl Grid {
    /// Of a meat.
    pub fn of(meat: &Meat) -> Self {
        let (dx, dy) = (meat.wide / 2.0 / ACROSS as f64, meat.thick / UP as f64);
        let inside = |i: usize, j: usize| {
            let (x, y) = (
                (i as f64 + 0.5) / ACROSS as f64,
                (j as f64 + 0.5) / UP as f64 * 2.0 - 1.0,
            );
            !meat.ellipse || x * x + y * y <= 1.02
        };
        let mut ids = vec![None; ACROSS * UP];
        let mut grid = Self {
            volumes: vec![],
            faces: vec![],
            open: vec![],
            size: (dx, dy),
            middle: vec![],
        };
        let depth = |x: f64| if meat.round { x } else { 1.0 };
        for j in 0..UP {
            for i in 0..ACROSS {
                if inside(i, j) {
                    ids[j * ACROSS + i] = Some(grid.volumes.len());
                    grid.volumes.push(dx * dy * depth((i as f64 + 0.5) * dx));
                }
            }
            grid.middle.extend(ids[j * ACROSS]);
        }
        let id = |i: usize, j: usize| {
            (i < ACROSS && j < UP)
                .then(|| ids[j * ACROSS + i])
                .flatten()
        };
        for j in 0..UP {
            for i in 0..ACROSS {
                let Some(a) = id(i, j) else { continue };
                let side = dy * depth((i as f64 + 1.0) * dx);
                let flat = dx * depth((i as f64 + 0.5) * dx);
                grid.join(a, id(i + 1, j), side, dx, false);
                grid.join(a, id(i, j + 1), flat, dy, false);
                if j == 0 || id(i, j - 1).is_none() {
                    grid.join(a, None, flat, dy, true);
                }
            }
        }
        if meat.ellipse {
            grid.smooth();
        }
        grid
    }

    fn join(&mut self, a: usize, b: Option<usize>, area: f64, apart: f64, below: bool) {
        match b {
            Some(b) => self.faces.push(Face {
                a,
                b,
                over: area / apart,
            }),
            None => self.open.push(Open {
                cell: a,
                area,
                deep: apart / 2.0,
                below,
            }),
        }
    }

    /// Steps around an ellipse are longer than its line: about 4/π where the sides are alike.
    fn smooth(&mut self) {
        for open in &mut self.open {
            open.area *= std::f64::consts::FRAC_PI_4 * 1.08;
        }
    }
}
