//! The surface: heat by convection and radiation, water that lies on it, dries off, comes from within, is mopped on.

use crate::invent::meat::Meat;

/// Heat of evaporation near 70 °C, J/kg (from memory).
const LATENT: f64 = 2.33e6;
/// W/(m² K⁴) (CODATA; from memory).
const STEFAN: f64 = 5.670_374e-8;
/// Water on a surface that is half wet, kg/m². Invented.
const HALF_WET: f64 = 0.03;
/// More than this runs off, kg/m². Invented.
const FULL: f64 = 0.25;

/// What is around a surface.
#[derive(Clone, Copy, Debug)]
pub struct Around {
    /// °C of the air and the walls.
    pub air: f64,
    /// W/(m² K).
    pub convection: f64,
    /// Emissivity, seen through a wrap.
    pub emissivity: f64,
    /// What a wrap lets through of the vapor, 0 to 1.
    pub open: f64,
    /// Pa of vapor in the air.
    pub vapor_pa: f64,
}

/// One bit of surface.
#[derive(Clone, Copy, Debug)]
pub struct Skin {
    /// °C.
    pub celsius: f64,
    /// kg/m² of water that lies on it.
    pub film: f64,
    /// kg/m² that came from within and dried off.
    pub dried: f64,
}

/// Vapor over water, Pa: Antoine's equation with the usual constants for 1 to 100 °C and mmHg (from memory).
pub fn vapor_pa(celsius: f64) -> f64 {
    133.322
        * (std::f64::consts::LN_10 * (8.071_31 - 1_730.63 / (233.426 + celsius.clamp(0.0, 130.0))))
            .exp()
}

impl Skin {
    /// Goes on by `dt` seconds over a cell at `inside` °C with `conducts` W/(m² K) up to the surface; `seeps` kg/(m² s) come from
    /// within. Gives the heat into the cell, W/m².
    pub fn go(
        &mut self,
        meat: &Meat,
        around: &Around,
        inside: f64,
        conducts: f64,
        seeps: f64,
        dt: f64,
    ) -> f64 {
        let left = self.dried / meat.stock;
        let supply = meat.supply
            * if meat.hyperbolic {
                1.0 / (1.0 + left * left)
            } else {
                (-left).exp()
            };
        let wet = self.film / (self.film + HALF_WET);
        let transfer = around.convection * 0.622 / (1_007.0 * 0.9 * 101_325.0) * around.open;
        let most = self.film / dt + supply + seeps;
        let dries = |ts: f64| (transfer * wet * (vapor_pa(ts) - around.vapor_pa)).clamp(0.0, most);
        let kelvin = |c: f64| c + 273.15;
        let gains = |ts: f64| {
            let shines =
                around.emissivity * STEFAN * (kelvin(around.air).powi(4) - kelvin(ts).powi(4));
            around.convection * (around.air - ts) + shines - LATENT * dries(ts)
        };
        // Two steps of the secant rule from where it was: the surface itself holds no heat.
        for _ in 0..2 {
            let off = gains(self.celsius) - conducts * (self.celsius - inside);
            let warmer = self.celsius + 0.05;
            let slope = (gains(warmer) - conducts * (warmer - inside) - off) / 0.05;
            self.celsius = (self.celsius - (off / slope).clamp(-15.0, 15.0))
                .clamp(0.0, around.air.max(inside) + 1.0);
        }
        let off = dries(self.celsius);
        let from_within = supply * (1.0 - (self.film / FULL).min(1.0));
        self.film = (self.film + (from_within + seeps - off) * dt).clamp(0.0, FULL);
        self.dried += from_within * dt;
        conducts * (self.celsius - inside)
    }
}
