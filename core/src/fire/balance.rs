//! The heat balance of a pit: what it loses is what it burns.

use super::{
    Fuel, FuelAnswer, FuelInput, FuelUnit, NotAFire, PitLoss, Spread, Weather, heat_kj_per_kg,
    loss::{WIDE, celsius as degrees},
    moisture_permille,
    refused::{celsius, within},
    value::{PELLETS_PERMILLE, SEASONED_PERMILLE},
    wet_basis_permille,
};
use crate::log::PitKind;

/// What meat takes up, W a raw kilogram: a butt that loses a third of its weight and warms by 80 K in ten hours (computed).
const MEAT_W_PER_KG: f64 = 30.0;
/// Heat of air, kJ a kilogram and kelvin.
const AIR_CP: f64 = 1.006;
/// Air that a kilogram needs to burn: charcoal of 80 % carbon, and dry wood of 50 % carbon, 6 % hydrogen and 43 % oxygen
/// (computed from the masses of atoms and the 23.2 % of oxygen in air; the compositions from memory).
const AIR_OF_CHARCOAL: f64 = 9.2;
const AIR_OF_WOOD: f64 = 5.9;
const BASIS: &str = "Rough. Heating values are published; what a pit loses and what a unit weighs are common practice, no \
                     source. What this pit took on other nights goes before it.";

/// What a pit burns.
///
/// ```
/// use slowbend_core::{fire::{FuelInput, fuel}, log::PitKind, units::Mk};
/// let drum: FuelInput = serde_json::from_value(serde_json::json!({
///     "pit": "drum", "pit_temp": Mk::from_f(250).0, "minutes": 60,
/// })).unwrap();
/// let night = fuel(&drum).unwrap();
/// assert_eq!(night.g_per_hour.unwrap().likely, 264); // about a seventh of a chimney
/// assert_eq!(night.minutes_per_unit.unwrap().likely, 408);
/// ```
///
/// # Errors
/// Numbers out of range, degrees where millikelvin are asked, a fuel that does not go with the pit, wood too wet.
pub fn fuel(input: &FuelInput) -> Result<FuelAnswer, NotAFire> {
    let wanted = Wanted::read(input)?;
    let Some(burns) = wanted.burns else {
        return Ok(wanted.answer(None, None, None));
    };
    let gives = heat_kj_per_kg(burns, Some(wanted.moisture))?;
    let smoke = wanted.smoke_kj_per_kg(burns);
    let burnt = |need: f64, gives: i64| {
        let kept = gives as f64 - smoke;
        (kept > 0.0).then(|| need * 3_600.0 / kept)
    };
    let likely = burnt(wanted.need_w(), gives.likely);
    let (Some(likely), Some(high)) = (likely, burnt(wanted.need_w() * WIDE, gives.low)) else {
        return Err(NotAFire::TooWet {
            permille: wanted.moisture,
        });
    };
    let low = burnt(wanted.need_w() / WIDE, gives.high).unwrap_or(likely);
    Ok(wanted.answer(Some(gives), Some([low, likely, high]), Some(smoke)))
}

/// What such a pit takes to hold `pit` °C in that weather, W: for shares of one pit in two weathers, at least 1.
pub fn power_w(kind: PitKind, grate_cm2: Option<i64>, pit: f64, weather: &Weather) -> i64 {
    let walls = PitLoss::of(kind, grate_cm2).walls_w(pit, weather);
    (libm::round(walls) as i64).max(1)
}

/// The input once it was found sound.
struct Wanted<'a> {
    input: &'a FuelInput,
    loss: PitLoss,
    /// °C of pit and air.
    pit: f64,
    air: f64,
    walls: f64,
    meat: f64,
    moisture: i64,
    burns: Option<Fuel>,
    unit: Option<FuelUnit>,
    unit_g: i64,
}

impl<'a> Wanted<'a> {
    fn read(input: &'a FuelInput) -> Result<Self, NotAFire> {
        let pit = celsius("pit_temp, millikelvin,", input.pit_temp, 40_000, 400_000)?;
        let weather = input.weather.unwrap_or(Weather::FAIR);
        let air = match input.air {
            Some(air) => celsius("air, millikelvin,", air, -40_000, 55_000)?,
            None => degrees(weather.ambient.temp()),
        };
        if let Some(grate) = input.grate_cm2 {
            within("grate_cm2", grate, 100, 200_000)?;
        }
        within("minutes", input.minutes, 1, 2_880)?;
        within("meat_g", input.meat_g, 0, 500_000)?;
        let (burns, unit) = goes_with(input)?;
        let usual_g = unit.map_or(0, FuelUnit::usual_g);
        let unit_g = match input.unit_g {
            Some(grams) => within("unit_g", grams, 10, 50_000)?,
            None => usual_g,
        };
        let loss = PitLoss::of(input.pit, input.grate_cm2);
        let walls = loss.walls_at(pit, air, &weather);
        if pit <= air || walls <= 0.0 {
            return Err(NotAFire::NoFire);
        }
        Ok(Self {
            meat: input.meat_g as f64 / 1_000.0 * MEAT_W_PER_KG,
            moisture: moisture(input, burns)?,
            input,
            loss,
            pit,
            air,
            walls,
            burns,
            unit,
            unit_g,
        })
    }

    fn need_w(&self) -> f64 {
        self.walls + self.meat
    }

    /// What the smoke of a kilogram carries off, kJ: its air and itself, as hot as the pit.
    fn smoke_kj_per_kg(&self, burns: Fuel) -> f64 {
        let dry = 1.0 - self.moisture as f64 / 1_000.0;
        let air = match burns {
            Fuel::Lump | Fuel::Briquettes => AIR_OF_CHARCOAL,
            Fuel::Wood | Fuel::Pellets => AIR_OF_WOOD * dry,
        };
        (air * self.loss.excess + 1.0) * AIR_CP * (self.pit - self.air)
    }

    fn answer(
        &self,
        gives: Option<Spread>,
        burnt: Option<[f64; 3]>,
        smoke: Option<f64>,
    ) -> FuelAnswer {
        let whole = |value: f64| libm::round(value) as i64;
        let spread = |by: &dyn Fn(f64) -> f64| {
            burnt.map(|[low, likely, high]| {
                Spread::new(whole(by(low)), whole(by(likely)), whole(by(high)))
            })
        };
        let hours = self.input.minutes as f64 / 60.0;
        let unit_g = self.unit_g as f64;
        let lasts = burnt
            .filter(|_| self.unit.is_some())
            .map(|[low, likely, high]| {
                let of = |g_per_hour: f64| whole(unit_g * 60.0 / g_per_hour);
                Spread::new(of(high), of(likely), of(low))
            });
        let smoke_w = burnt
            .zip(smoke)
            .map_or(0.0, |([_, likely, _], kj)| likely * kj / 3_600.0);
        FuelAnswer {
            need_w: Spread::new(
                whole(self.need_w() / WIDE),
                whole(self.need_w()),
                whole(self.need_w() * WIDE),
            ),
            walls_w: whole(self.walls),
            meat_w: whole(self.meat),
            smoke_w: whole(smoke_w),
            heat_kj_per_kg: gives,
            g_per_hour: spread(&|g| g),
            g: spread(&|g| g * hours),
            quarters: lasts.and(spread(&|g| g * hours / unit_g * 4.0)),
            minutes_per_unit: lasts,
            unit: self.unit,
            unit_g: self.unit.map(|_| self.unit_g),
            basis: BASIS.into(),
        }
    }
}

/// What burns in the pit and what hands count there.
fn goes_with(input: &FuelInput) -> Result<(Option<Fuel>, Option<FuelUnit>), NotAFire> {
    if input.pit == PitKind::Electric {
        return match (input.fuel, input.unit) {
            (None, None) => Ok((None, None)),
            _ => Err(NotAFire::DoesNotGo {
                what: "A fuel",
                instead: "an electric pit burns none; leave fuel and unit out",
            }),
        };
    }
    let usual = FuelUnit::of_pit(input.pit)[0];
    let unit = match (input.unit, input.fuel) {
        (Some(unit), _) => unit,
        (None, None) => usual,
        (None, Some(fuel)) => [usual, FuelUnit::Split, FuelUnit::Chimney, FuelUnit::Hopper]
            .into_iter()
            .find(|unit| holds(*unit, fuel))
            .unwrap_or(usual),
    };
    let fuel = input.fuel.unwrap_or(unit.fuel());
    let pellets = fuel == Fuel::Pellets;
    if !holds(unit, fuel) {
        return Err(NotAFire::DoesNotGo {
            what: "The unit",
            instead: "splits and chunks are wood, chimneys and baskets charcoal, hoppers pellets",
        });
    }
    if pellets != (input.pit == PitKind::Pellet) {
        return Err(NotAFire::DoesNotGo {
            what: "The fuel",
            instead: "a pellet pit burns pellets, and no other does",
        });
    }
    Ok((Some(fuel), Some(unit)))
}

fn holds(unit: FuelUnit, fuel: Fuel) -> bool {
    let is_charcoal = |fuel| matches!(fuel, Fuel::Lump | Fuel::Briquettes);
    unit.fuel() == fuel || is_charcoal(unit.fuel()) && is_charcoal(fuel)
}

/// Water in the fuel, thousandths of the wet mass.
fn moisture(input: &FuelInput, burns: Option<Fuel>) -> Result<i64, NotAFire> {
    let usual = match burns {
        Some(Fuel::Wood) => SEASONED_PERMILLE,
        Some(Fuel::Pellets) => PELLETS_PERMILLE,
        _ => 0,
    };
    match (input.moisture_permille, input.wood_humidity_permille) {
        (Some(_), Some(_)) => Err(NotAFire::MoistureTwice),
        (None, Some(humidity)) => {
            let weather = input.weather.unwrap_or(Weather::FAIR);
            let air = input.air.unwrap_or(weather.ambient.temp());
            Ok(wet_basis_permille(moisture_permille(air, humidity)?))
        }
        (given, None) => within("moisture_permille", given.unwrap_or(usual), 0, 500),
    }
}
