//! Chance that is counted, not rolled: the same (key, step, use, member) is the same number on every processor, in any order.
//! SplitMix64's mixing (Steele, Lea, Flood 2014; constants from memory).

/// Something to draw for.
#[derive(Clone, Copy, Debug)]
pub struct Dice(u64);

impl Dice {
    /// For one meat (`key`), step of the grid and use.
    pub fn of(key: u64, step: u64, what: u64) -> Self {
        Self(mixed(
            mixed(key ^ step.wrapping_mul(0x9e37_79b9_7f4a_7c15))
                ^ what.wrapping_mul(0xd134_2543_de82_ef95),
        ))
    }

    /// Around 0 with a spread of 1: four even numbers of 16 bits added up, so never beyond ±3.46.
    pub fn normal(self, member: usize) -> f32 {
        let bits = mixed(
            self.0
                .wrapping_add((member as u64 + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15)),
        );
        let sum = (bits & 0xffff) + (bits >> 16 & 0xffff) + (bits >> 32 & 0xffff) + (bits >> 48);
        // Four uniform numbers have a variance of a third: √3 brings it to 1.
        (sum as f32 / 65_535.0 - 2.0) * 1.732_050_8
    }

    /// From 0 to 1.
    pub fn unit(self, member: usize) -> f64 {
        (mixed(self.0 ^ (member as u64).wrapping_mul(0xbf58_476d_1ce4_e5b9)) >> 11) as f64
            / (1u64 << 53) as f64
    }
}

const fn mixed(number: u64) -> u64 {
    let mut z = number.wrapping_add(0x9e37_79b9_7f4a_7c15);
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_has_the_spread_of_a_normal_number_and_differs_by_member_step_and_use() {
        let dice = Dice::of(7, 1, 2);
        let drawn: Vec<f64> = (0..20_000)
            .map(|member| f64::from(dice.normal(member)))
            .collect();
        let mean = drawn.iter().sum::<f64>() / 2e4;
        let spread = drawn.iter().map(|one| one * one).sum::<f64>() / 2e4;
        assert!(
            mean.abs() < 0.03 && (spread - 1.0).abs() < 0.03,
            "{mean} {spread}"
        );
        let others = [Dice::of(7, 1, 3), Dice::of(7, 2, 2), Dice::of(8, 1, 2)];
        assert!(others.iter().all(|other| other.normal(5) != dice.normal(5)));
        assert_eq!(Dice::of(7, 1, 2).normal(5), dice.normal(5));
    }
}
