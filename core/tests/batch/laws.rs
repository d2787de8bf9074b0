//! Mass is conserved, nothing is negative, and more people never need less meat.

use proptest::{collection::vec, prelude::*};
use slowbend_core::{
    batch::{
        AlsoSalt, Appetite, AtHome, Basis, BrineInput, CountedIn, Extra, Grams, MopInput, MopMeat,
        MopPart, PortionMeat, PortionsInput, RubInput, RubPart, SaltKind, ShoppingInput, Wanted,
        Wetting, brine, cut_yield, mop, portions, rub, shopping,
    },
    checks::Cut,
};

#[test]
fn every_cut_has_a_yield_above_its_bone() {
    for cut in Cut::ALL {
        let of = cut_yield(*cut);
        assert!((0..500).contains(&of.refuse), "{cut:?}");
        assert!(of.low <= of.expected && of.expected <= of.high && of.high < 1000);
        assert!((0..=200).contains(&of.trim), "{cut:?}");
    }
}

fn any_cut() -> impl Strategy<Value = Cut> {
    proptest::sample::select(Cut::ALL)
}

fn any_meat() -> impl Strategy<Value = PortionMeat> {
    let there = proptest::option::of(20..=500_000i64);
    let trim = proptest::option::of(0..=70i64);
    (any_cut(), there, 1..=1_000i64, trim).prop_map(|(cut, there, share, trim_percent)| {
        PortionMeat {
            name: String::new(),
            cut,
            there_g: there.map(Grams),
            share,
            trim_percent,
        }
    })
}

fn any_lunch() -> impl Strategy<Value = PortionsInput> {
    let appetite = prop_oneof![
        Just(Appetite::Light),
        Just(Appetite::Usual),
        Just(Appetite::Hearty)
    ];
    let people = (1..=9_999i64, 0..=9_999i64);
    (people, appetite, vec(any_meat(), 1..8)).prop_map(|((adults, children), appetite, meats)| {
        let named = meats.into_iter().enumerate().map(|(n, mut meat)| {
            meat.name = format!("meat {n}");
            meat
        });
        PortionsInput {
            adults,
            children,
            appetite,
            meats: named.collect(),
        }
    })
}

fn any_part() -> impl Strategy<Value = RubPart> {
    let kind = prop_oneof![
        Just(SaltKind::TableSalt),
        Just(SaltKind::OtherSalt),
        Just(SaltKind::Unsalted),
        (1..=1000i64).prop_map(|salt_permille| SaltKind::Salted { salt_permille }),
    ];
    (1..=10_000i64, kind, 1..=1_000i64).prop_map(|(parts, kind, cup)| RubPart {
        name: String::new(),
        parts,
        kind,
        cup_g: Some(Grams(cup)),
    })
}

fn any_rub() -> impl Strategy<Value = RubInput> {
    let basis = prop_oneof![Just(Basis::Weight), Just(Basis::Volume)];
    let also = (0..=500_000i64, 0..=263i64).prop_map(|(g, salt_permille)| AlsoSalt::Injection {
        g: Grams(g),
        salt_permille,
    });
    let amounts = (20..=500_000i64, 1..=10_000i64, 1..=200i64);
    (amounts, basis, vec(any_part(), 1..12), vec(also, 0..4)).prop_map(
        |((meat, portions, rub_g_per_kg), basis, mut parts, also)| {
            for (n, part) in parts.iter_mut().enumerate() {
                part.name = format!("part {n}");
            }
            RubInput {
                meat_g: Grams(meat),
                portions,
                rub_g_per_kg,
                basis,
                parts,
                also,
            }
        },
    )
}

fn any_mop() -> impl Strategy<Value = MopInput> {
    let wetting = prop_oneof![Just(Wetting::Mop), Just(Wetting::Spritz)];
    let meat = (
        any_cut(),
        20..=500_000i64,
        wetting,
        10..=240i64,
        0..=2_880i64,
    );
    let parts = vec(1..=10_000i64, 0..5);
    (1..=2_880i64, vec(meat, 1..8), 0..=100i64, parts).prop_map(
        |(ahead_min, meats, spare_percent, parts)| {
            let meats = meats.into_iter().enumerate();
            let parts = parts.into_iter().enumerate();
            MopInput {
                ahead_min,
                meats: meats
                    .map(|(n, (cut, g, wetting, every_min, first_in_min))| MopMeat {
                        name: format!("meat {n}"),
                        cut,
                        g: Grams(g),
                        wetting,
                        every_min,
                        first_in_min,
                        ml: None,
                    })
                    .collect(),
                spare_percent,
                parts: parts
                    .map(|(n, parts)| MopPart {
                        name: format!("part {n}"),
                        parts,
                    })
                    .collect(),
            }
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_meat_is_trimmed_cooked_away_bone_or_eaten(lunch in any_lunch()) {
        for meat in portions(&lunch).unwrap().meats {
            let parts = [meat.trimmed_g, meat.cooked_away_g, meat.refuse_g, meat.eaten_g.expected];
            prop_assert_eq!(parts.into_iter().sum::<Grams>(), meat.there_g);
            prop_assert!(parts.iter().all(|part| part.0 >= 0), "{:?}", meat);
            prop_assert!(Grams(0) <= meat.eaten_g.low && meat.eaten_g.low <= meat.eaten_g.expected);
            prop_assert!(meat.eaten_g.expected <= meat.eaten_g.high && meat.cooked_g.high <= meat.there_g);
            prop_assert!(meat.buy_g.0 >= 0 && meat.likely_buy_g.0 >= 0);
            prop_assert!(meat.likely_g <= meat.need_g && meat.likely_buy_g <= meat.buy_g);
        }
    }

    /// Lunches that would take more of one meat than may be weighed at once are left out.
    #[test]
    fn what_is_to_be_bought_is_enough(mut lunch in any_lunch()) {
        (lunch.adults, lunch.children) = (lunch.adults % 100 + 1, lunch.children % 100);
        let needed = portions(&lunch).unwrap().meats;
        for (meat, needed) in lunch.meats.iter_mut().zip(needed) {
            prop_assume!(needed.need_g.0 <= 500_000);
            meat.there_g = Some(needed.need_g.max(Grams(20)));
        }
        let bought = portions(&lunch).unwrap();
        prop_assert!(bought.enough, "{:?}", bought);
        prop_assert!(bought.meats.iter().all(|meat| meat.buy_g == Grams(0)));
    }

    #[test]
    fn more_people_never_need_less_meat(lunch in any_lunch(), more in 0..2i64) {
        let mut larger = lunch.clone();
        larger.adults += more;
        larger.children += 1 - more;
        let (few, many) = (portions(&lunch).unwrap(), portions(&larger).unwrap());
        prop_assert!(few.wanted_g < many.wanted_g);
        for (few, many) in few.meats.iter().zip(&many.meats) {
            prop_assert!(few.need_g <= many.need_g && few.buy_g <= many.buy_g);
        }
    }

    #[test]
    fn a_rub_is_its_parts_and_its_salt_where_it_comes_from(input in any_rub()) {
        let answer = rub(&input).unwrap();
        prop_assert_eq!(answer.parts.iter().map(|part| part.mg.0).sum::<i64>(), answer.rub_mg.0);
        prop_assert_eq!(answer.salt.iter().map(|share| share.mg.0).sum::<i64>(), answer.salt_mg.0);
        prop_assert!(answer.parts.iter().all(|part| part.mg.0 >= 0));
        prop_assert!(0 <= answer.salt[0].mg.0 && answer.salt[0].mg <= answer.rub_mg);
        prop_assert!(answer.sodium_mg <= answer.salt_mg);
        prop_assert!(answer.sodium_mg_a_portion.0 * input.portions >= answer.sodium_mg.0);
    }

    #[test]
    fn a_mop_is_its_pots_and_a_pot_its_parts(input in any_mop()) {
        let answer = mop(&input).unwrap();
        prop_assert_eq!(answer.pots.iter().map(|pot| pot.ml.0).sum::<i64>(), answer.ml.0);
        for pot in &answer.pots {
            prop_assert!(0 < pot.on_ml.0 && pot.on_ml <= pot.ml);
            let mixed: i64 = pot.parts.iter().map(|part| part.ml.0).sum();
            prop_assert!(input.parts.is_empty() || mixed == pot.ml.0);
            prop_assert!(pot.parts.iter().all(|part| part.ml.0 >= 0));
            let of = |name: &String| input.meats.iter().find(|meat| meat.name == *name).unwrap();
            prop_assert!(pot.names.iter().all(|name| of(name).cut.is_poultry() == pot.poultry));
            prop_assert!(!pot.poultry || pot.names.len() == 1);
        }
    }

    #[test]
    fn more_water_or_more_meat_never_takes_less_salt(
        (water, meat) in (20..=400_000i64, 20..=400_000i64), more in 0..=1_000i64, permille in 1..=50i64,
    ) {
        let of = |water, meat| {
            let wanted = Wanted::InTheMeat { meat_g: Grams(meat), permille };
            brine(&BrineInput { water_g: Grams(water), wanted })
        };
        if let (Ok(less), Ok(of_water), Ok(of_meat)) = (of(water, meat), of(water + more, meat), of(water, meat + more)) {
            prop_assert!(less.salt_mg <= of_water.salt_mg && less.salt_mg <= of_meat.salt_mg);
            // In the end, salt is that share of all three together, to the milligram.
            let all = (water + meat) * 1000 + less.salt_mg.0;
            prop_assert!((less.salt_mg.0 * 1000 - all * permille).abs() < 1000);
            prop_assert!(less.of_the_brine < less.of_the_water || less.of_the_water < 100);
        }
    }

    #[test]
    fn a_list_buys_what_is_needed_less_what_is_at_home(
        lunch in any_lunch(), rub in any_rub(), home in 0..=1_000_000i64, extra in 1..=1_000i64,
    ) {
        let name = "part 0".to_owned();
        let weighed = slowbend_core::batch::rub(&rub).unwrap().parts[0].mg.0;
        let list = ShoppingInput {
            portions: Some(lunch),
            rub: Some(rub),
            mop: None,
            extras: vec![Extra { name: name.clone(), amount: extra, unit: CountedIn::G }],
            at_home: vec![AtHome { name: name.clone(), amount: home, unit: CountedIn::G }],
            prices: vec![],
        };
        let answer = shopping(&list).unwrap();
        let line = answer.lines.iter().find(|line| line.name == name).unwrap();
        prop_assert!(line.need * 1000 >= weighed + extra * 1000);
        prop_assert!((line.need - extra) * 1000 < weighed + 1000);
        for line in &answer.lines {
            prop_assert_eq!(line.buy, (line.need - line.at_home).max(0));
            prop_assert!(line.need >= 0 && line.there >= 0);
            prop_assert!(line.cents <= line.all_cents);
        }
    }
}
