//! What a good thermometer reads in ice and in boiling water. Start at [`expected_in`].

use crate::{log::Bath, units::Mk};

/// Meters from one row of [`BOILS`] to the next.
const STEP_M: i64 = 500;
/// The altitude of the first row.
const FIRST_M: i64 = -500;

/// Where pure water boils, in millikelvin, each 500 m from −500 to 6,000 m above the sea.
///
/// Computed once from two published equations, both from memory: the pressure of the International Standard Atmosphere
/// (ISO 2533), p = 101,325 Pa × (1 − 2.25577 × 10⁻⁵ h)^5.25588, put into the saturation line of IAPWS SR1-86(1992) (Wagner
/// and Pruß). Between the rows a straight line is within 1 mK of them. Weather moves it more: 10 hPa are 0.3 K.
pub const BOILS: [Mk; 14] = [
    Mk(374_784),
    Mk(373_124),
    Mk(371_462),
    Mk(369_799),
    Mk(368_133),
    Mk(366_465),
    Mk(364_795),
    Mk(363_122),
    Mk(361_447),
    Mk(359_769),
    Mk(358_088),
    Mk(356_405),
    Mk(354_718),
    Mk(353_027),
];

/// What a good thermometer reads in this bath. Altitudes outside the table stand for its ends.
pub fn expected_in(bath: Bath) -> Mk {
    match bath {
        // Crushed ice in water: the ice point, 0 °C to within 0.01 K by definition of the Celsius scale until 1954.
        Bath::Ice => Mk::from_c_milli(0),
        Bath::Boiling { altitude_m } => boils_at(altitude_m),
    }
}

fn boils_at(altitude_m: i64) -> Mk {
    let last = BOILS.len() as i64 - 1;
    let above = altitude_m.clamp(FIRST_M, FIRST_M + last * STEP_M) - FIRST_M;
    let row = (above / STEP_M).min(last - 1);
    let (Mk(low), Mk(high)) = (BOILS[row as usize], BOILS[row as usize + 1]);
    Mk(low + (high - low) * (above - row * STEP_M) / STEP_M)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn boiling(altitude_m: i64) -> i64 {
        expected_in(Bath::Boiling { altitude_m }).c_milli()
    }

    /// 99.97 °C at one atmosphere is the accepted normal boiling point of water; about 95 °C at Denver's mile and 93 °C
    /// in Mexico City are what cooks are taught there (all from memory).
    #[test]
    fn water_boils_where_it_is_known_to() {
        assert_eq!(expected_in(Bath::Ice), Mk(273_150));
        assert_eq!(boiling(0), 99_974);
        assert!((94_400..94_900).contains(&boiling(1_609)));
        assert!((92_300..92_700).contains(&boiling(2_240)));
    }

    #[test]
    fn it_falls_with_each_meter_and_has_no_step_in_it() {
        for meters in -500..6_000 {
            let fall = boiling(meters) - boiling(meters + 1);
            assert!((2..=5).contains(&fall), "{fall} mK at {meters} m");
        }
        assert_eq!(boiling(i64::MIN), boiling(-500));
        assert_eq!(boiling(i64::MAX), boiling(6_000));
    }
}
