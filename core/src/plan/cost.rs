//! The objective as one integer. Start at [`Order`].
//!
//! Each level has bits of its own in a `u128`, the gravest level highest, so that comparing two sums compares level by level
//! and adding adds level by level. No level can spill over: the checks of the household keep every sum within its bits.

use super::answer::{Cost, First};

/// A level of the objective, the gravest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Level {
    NotReady,
    Late,
    Temperature,
    Night,
    Hold,
    Openings,
    Fuel,
}

/// Bits of each level: 60 meats of 500 permille, 60 servings of 1,000 min, 100 tasks of 400 K, 128 quarters, 100 tasks of a
/// week of minutes, 1,000 openings, 6 pits of a week at 20 kg/h.
const BITS: [(Level, u32); 7] = [
    (Level::NotReady, 16),
    (Level::Late, 16),
    (Level::Temperature, 16),
    (Level::Night, 8),
    (Level::Hold, 21),
    (Level::Openings, 10),
    (Level::Fuel, 27),
];

/// In which order the levels count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Order {
    shift: [u32; 7],
}

impl Order {
    /// The order in which `first` comes before all others; being ready comes first of itself.
    pub fn of(first: First) -> Self {
        let lifted: &[Level] = match first {
            First::Ready => &[],
            First::Temperature => &[Level::NotReady, Level::Temperature],
            First::Sleep => &[Level::NotReady, Level::Night],
            First::Hold => &[Level::NotReady, Level::Hold],
            First::Openings => &[Level::NotReady, Level::Openings],
            First::Fuel => &[Level::NotReady, Level::Fuel],
        };
        let rest = BITS.iter().map(|(level, _)| *level);
        let rest = rest.filter(|level| !lifted.contains(level));
        let levels: Vec<Level> = lifted.iter().copied().chain(rest).collect();
        let (mut shift, mut at) = ([0; 7], 0);
        for level in levels.iter().rev() {
            shift[*level as usize] = at;
            at += BITS[*level as usize].1;
        }
        Self { shift }
    }

    /// So much of one level.
    pub fn of_level(&self, level: Level, amount: i64) -> u128 {
        (amount as u128) << self.shift[level as usize]
    }

    /// The levels of a sum.
    pub fn unpack(&self, sum: u128) -> Cost {
        let level = |level: Level| {
            let (shift, bits) = (self.shift[level as usize], BITS[level as usize].1);
            (sum >> shift & ((1 << bits) - 1)) as i64
        };
        Cost {
            not_ready_permille: level(Level::NotReady),
            late_min: level(Level::Late),
            temperature_k: level(Level::Temperature),
            night_quarters: level(Level::Night),
            hold_min: level(Level::Hold),
            openings: level(Level::Openings),
            fuel_quarter_g: level(Level::Fuel),
        }
    }

    /// All levels of a cost as one sum.
    #[cfg(test)]
    pub fn pack(&self, cost: &Cost) -> u128 {
        let levels = [
            (Level::NotReady, cost.not_ready_permille),
            (Level::Late, cost.late_min),
            (Level::Temperature, cost.temperature_k),
            (Level::Night, cost.night_quarters),
            (Level::Hold, cost.hold_min),
            (Level::Openings, cost.openings),
            (Level::Fuel, cost.fuel_quarter_g),
        ];
        levels
            .iter()
            .map(|(level, amount)| self.of_level(*level, *amount))
            .sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_of_an_earlier_level_outweighs_all_of_the_later_ones() {
        let order = Order::of(First::Ready);
        for pair in BITS.windows(2) {
            let one = order.of_level(pair[0].0, 1);
            let most = order.of_level(pair[1].0, (1 << pair[1].1) - 1);
            assert!(one > most, "{pair:?}");
        }
        let total: u32 = BITS.iter().map(|(_, bits)| bits).sum();
        assert!(total <= 128);
    }

    #[test]
    fn what_is_packed_comes_back_in_every_order() {
        let cost = Cost {
            not_ready_permille: 1,
            late_min: 2,
            temperature_k: 3,
            night_quarters: 4,
            hold_min: 5,
            openings: 6,
            fuel_quarter_g: 7,
        };
        for first in [
            First::Ready,
            First::Temperature,
            First::Sleep,
            First::Hold,
            First::Fuel,
        ] {
            let order = Order::of(first);
            assert_eq!(order.unpack(order.pack(&cost)), cost, "{first:?}");
        }
    }
}
