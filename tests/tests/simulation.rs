//! Five hundred small worlds, each from one seed; laws 1, 2, 3 and 7 after each thing that happens.

use slowbend_tests::sim::{run, world::twice};
use std::ops::Range;

/// Runs all seeds of the range, and says of every broken one how to replay it.
fn all_hold(seeds: Range<u64>) {
    let broken: Vec<String> = seeds.filter_map(|seed| run(seed).err()).collect();
    let last = |text: &String| text.lines().rev().take(2).collect::<Vec<_>>().join(" <- ");
    let lines: Vec<String> = broken.iter().map(last).collect();
    assert!(
        broken.is_empty(),
        "{}\n\n{} seeds broke a law:\n{}",
        broken[0],
        broken.len(),
        lines.join("\n")
    );
}

#[test]
fn the_first_half_of_the_seeds() {
    all_hold(0..250);
}

#[test]
fn the_second_half_of_the_seeds() {
    all_hold(250..500);
}

#[test]
fn the_same_seed_is_the_same_run() {
    let otherwise: Vec<String> = (500..520).filter_map(|seed| twice(seed).err()).collect();
    assert_eq!(otherwise, Vec::<String>::new());
}
