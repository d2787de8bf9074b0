//! Tables of the cuts whose axes follow from their facts.
//!
//! They are sampled so that they stay quick: bark and color are left out, for they decide nothing (a law in `laws.rs`
//! says so), and four thermometers of six stand for all. Every combination that is left also meets the laws.

use crate::{
    cases::{NOW, by_hand, felt, input, left_in},
    table::{Axis, Table, axis, heats, results},
    tables::STANDINGS,
};
use slowbend_core::{
    checks::*,
    moment::MINUTE,
    safety::{Form, minimum},
    units::Mk,
};

/// The thermometers that are tried, by their place in [`STANDINGS`]: right, unchecked, 3 °F hot, 6 °F hot.
const TRIED: [usize; 4] = [0, 1, 3, 5];

fn outcomes(test: Test) -> Vec<TestResult> {
    match test {
        Test::BoneShowing => BoneShowing::ALL
            .iter()
            .map(|one| TestResult::Bone(*one))
            .collect(),
        Test::Bend => Bend::ALL
            .iter()
            .map(|one| TestResult::Lifted(*one))
            .collect(),
        Test::ProbeFeel => ProbeFeel::ALL
            .iter()
            .map(|one| TestResult::Probed(*one))
            .collect(),
        Test::Joint => Joint::ALL
            .iter()
            .map(|one| TestResult::Twisted(*one))
            .collect(),
        Test::BarkSet | Test::WrapCall | Test::Temperature => vec![],
    }
}

/// Just below and at the minimum, where no rest is asked for, nearly done, done, and past it.
fn degrees(facts: &CutFacts) -> Vec<Mk> {
    let minimum = minimum(facts.cut, Form::Intact);
    let mut all = vec![Mk(minimum.temp.0 - 1), minimum.temp, facts.done_range.low];
    if facts.spots.len() < 3 {
        all.extend([minimum.at_once, facts.close_from]);
    }
    all.extend(
        facts
            .over_above
            .map(|over| Mk::from_f(over.f_tenths() / 10 + 1)),
    );
    all.sort_unstable();
    all.dedup();
    all
}

fn name(key: &'static str) -> &'static str {
    key.split_once('-').expect("a key has a dash").1
}

/// The table of one cut.
pub fn table(cut: Cut) -> Table {
    let facts = cut_facts(cut);
    let felt_by: Vec<Vec<TestResult>> = facts
        .tests
        .iter()
        .map(|test| outcomes(*test))
        .filter(|all| !all.is_empty())
        .collect();
    let temps = degrees(&facts);
    let mut axes: Vec<Axis> = felt_by
        .iter()
        .map(|all| results(name(all[0].test().key()), all))
        .collect();
    axes.extend(
        facts
            .spots
            .iter()
            .map(|spot| heats(name(spot.key()), &temps)),
    );
    axes.push(axis("read", ["by hand", "left in"]));
    axes.push(axis("fire", ["on", "off 4 min"]));
    axes.push(axis("thermometer", TRIED.map(|n| STANDINGS[n].0)));
    let make = move |pick: &[usize]| {
        let (feels, rest) = pick.split_at(felt_by.len());
        let (spots, rest) = rest.split_at(facts.spots.len());
        let how = if rest[0] == 0 { by_hand } else { left_in };
        let standing = STANDINGS[TRIED[rest[2]]].1;
        let felt_now = felt_by.iter().zip(feels);
        let felt_now =
            felt_now.filter_map(|(all, choice)| Some(felt(all[choice.checked_sub(1)?], 1)));
        let read = facts.spots.iter().zip(spots);
        let read = read.filter_map(|(spot, choice)| {
            Some(how(*spot, temps[choice.checked_sub(1)?], standing, 5))
        });
        let mut made = input(cut, Form::Intact, felt_now.chain(read).collect());
        made.resting_since = (rest[1] == 1).then_some(NOW - 4 * MINUTE);
        made
    };
    Table {
        cut,
        axes,
        make: Box::new(make),
    }
}
