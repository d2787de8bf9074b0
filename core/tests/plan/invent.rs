//! Households out of a number: the same number, the same household.

use slowbend_core::{checks::Cut, plan::*, safety::Form, units::Mk};

/// SplitMix64 (Steele, Lea, Flood 2014; from memory).
pub struct Dice(pub u64);

impl Dice {
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    pub fn below(&mut self, count: u64) -> i64 {
        (self.bits() % count) as i64
    }

    pub fn of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len() as u64) as usize]
    }
}

/// Saturday 6 June 2026, 12:00 UTC: the day before the regatta.
pub const FROM_MS: i64 = 1_780_747_200_000;

const CUTS: [(Cut, i64, u64); 10] = [
    (Cut::Brisket, 5_000, 1_500),
    (Cut::PorkButt, 3_200, 1_000),
    (Cut::SpareRibs, 1_500, 400),
    (Cut::SpareRibsTrimmed, 1_200, 300),
    (Cut::ChickenHalf, 800, 300),
    (Cut::TurkeyBreast, 2_500, 800),
    (Cut::PorkLoin, 1_800, 600),
    (Cut::BabyBackRibs, 1_000, 300),
    (Cut::ChickenWhole, 1_700, 400),
    (Cut::TriTip, 1_000, 300),
];

pub fn temps() -> Vec<Mk> {
    [225, 275, 325].map(Mk::from_f).into()
}

/// So many meats on so many pits, for one or two servings a day or so ahead.
pub fn household(seed: u64, meats: usize, pits: usize) -> Household {
    let mut dice = Dice(seed);
    let servings = 1 + dice.below(2);
    let serve = (24 + dice.below(10)) * 60;
    let meats = (0..meats)
        .map(|number| meat(&mut dice, number, servings))
        .collect();
    let pits = (0..pits).map(|number| pit(&mut dice, number)).collect();
    let serving = |number: i64, later: i64| Serving {
        name: format!("serving {number}"),
        preferred: When::Min(serve + 60 * number),
        latest: Some(When::Min(serve + 60 * number + later)),
        turn_in_min: None,
    };
    Household {
        from_ms: FROM_MS,
        zone: None,
        confidence_permille: dice.of(&[800, 900, 900]),
        shared_permille: 500,
        hands: 1 + dice.below(2),
        meats,
        dishes: vec![beans()]
            .into_iter()
            .take(dice.below(2) as usize)
            .collect(),
        pits,
        places: vec![cooler()],
        burners: 1,
        servings: (0..servings)
            .map(|number| serving(number, dice.of(&[0, 30, 60])))
            .collect(),
        sleep: vec![Window {
            from_min: serve - 14 * 60,
            until_min: serve - 7 * 60,
        }],
        quiet: vec![],
        watches: vec![],
        alternatives: 0,
        budget_nodes: 20_000,
    }
}

fn meat(dice: &mut Dice, number: usize, servings: i64) -> Meat {
    let (cut, least, more) = dice.of(&CUTS);
    let grams = least + dice.below(more);
    let serving = dice.below(servings as u64) as usize;
    from_catalogue(
        &format!("{cut:?} {number}"),
        cut,
        Form::Intact,
        grams,
        serving,
        &temps(),
    )
}

fn pit(dice: &mut Dice, number: usize) -> Pit {
    let fuels = [500, 700, 1_000].map(|fuel| fuel + 100 * number as i64);
    let temp = |(temp, fuel_g_per_h)| PitTemp { temp, fuel_g_per_h };
    Pit {
        name: format!("pit {number}"),
        area_cm2: 2_400 + 600 * dice.below(4),
        temps: temps().into_iter().zip(fuels).map(temp).collect(),
        preheat_min: 30 + 15 * dice.below(3),
        light_min: 10,
        alone_min: dice.of(&[60, 120, 300, 600]),
        poultry_apart: dice.below(2) == 0,
        may_step: true,
        hot: false,
    }
}

pub fn cooler() -> Place {
    let keeps = Keeps::Insulated {
        loses_permille_per_h: 80,
        around_mk: Mk::from_f(70),
    };
    Place {
        name: "cooler".into(),
        room_g: 25_000,
        keeps,
    }
}

pub fn beans() -> Dish {
    Dish {
        name: "beans".into(),
        serving: 0,
        hands_min: 10,
        cook_min: 90,
        heat: DishHeat::Burner,
        keeps: Span {
            least_min: 60,
            most_min: 240,
        },
        reheat_min: 15,
    }
}
