//! Contrast of the pages' colors, measured by the formula of WCAG 2.2 and never judged by eye.
//!
//! The bounds are those of its success criteria 1.4.6 (text, level AAA: 7:1), 1.4.3 (level AA: 4.5:1) and 1.4.11 (what is
//! not text: 3:1); from memory. The formula itself is held to a table that was computed elsewhere.

use std::collections::BTreeMap;

use crate::assets::{CSS, PAPER};

const TABLE: &str = include_str!("published/wcag_contrast.csv");

/// Which color stands on which, and at least how clearly. All text has 7:1, the softer text too: it is read in the sun.
const PAIRS: [(&str, &str, f64); 13] = [
    ("ink", "ground", 7.0),
    ("ink", "raised", 7.0),
    ("soft", "ground", 7.0),
    ("soft", "raised", 7.0),
    ("soon", "ground", 7.0),
    ("main-ink", "main-ground", 7.0),
    ("call-ink", "call-ground", 7.0),
    ("wake-ink", "wake-ground", 7.0),
    ("rule", "ground", 3.0),
    ("rule", "raised", 3.0),
    ("main-ground", "ground", 3.0),
    ("call-ground", "ground", 3.0),
    ("wake-ground", "ground", 3.0),
];

type Colors = BTreeMap<String, [u8; 3]>;

fn color(hex: &str) -> Option<[u8; 3]> {
    let digits = hex.trim().strip_prefix('#').filter(|hex| hex.len() == 6)?;
    let byte = |at: usize| u8::from_str_radix(digits.get(at..at + 2)?, 16).ok();
    Some([byte(0)?, byte(2)?, byte(4)?])
}

/// Relative luminance of an sRGB color.
fn luminance(color: [u8; 3]) -> f64 {
    let linear = color.map(|byte| {
        let c = f64::from(byte) / 255.0;
        if c <= 0.04045 {
            c / 12.92
        } else {
            ((c + 0.055) / 1.055).powf(2.4)
        }
    });
    0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
}

fn contrast(one: [u8; 3], other: [u8; 3]) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// The rules for the root element, each with what it selects and what it sets.
fn roots() -> impl Iterator<Item = (&'static str, &'static str)> {
    let rules = CSS.split(":root").skip(1);
    rules.filter_map(|rule| {
        let (selector, rest) = rule.split_once('{')?;
        Some((selector.trim(), rest.split('}').next()?))
    })
}

/// The custom properties that are colors, in each rule that sets them for screens: the day, the night that the device asks
/// for, the night that was chosen.
fn blocks() -> Vec<Colors> {
    let properties = |block: &str| {
        let pairs = block
            .split(';')
            .filter_map(|line| line.trim().strip_prefix("--")?.split_once(':'));
        pairs
            .filter_map(|(name, value)| Some((name.to_owned(), color(value)?)))
            .collect()
    };
    let screens = roots().filter(|(selector, _)| {
        ["", ":not([data-inks=bright])", "[data-inks=dark]"].contains(selector)
    });
    let all: Vec<Colors> = screens.map(|(_, block)| properties(block)).collect();
    all.into_iter()
        .filter(|colors| !colors.is_empty())
        .collect()
}

#[test]
fn the_formula_is_that_of_the_table() {
    let rows: Vec<Vec<&str>> = TABLE
        .lines()
        .skip(1)
        .map(|row| row.split(',').collect())
        .collect();
    assert_eq!(rows.len(), 13);
    for row in rows {
        let found = contrast(color(row[0]).unwrap(), color(row[1]).unwrap());
        let told: f64 = row[2].parse().unwrap();
        assert!((found - told).abs() < 0.000_051, "{row:?}: {found}");
        for (bound, passes) in [(4.5, row[3]), (3.0, row[4]), (7.0, row[5])] {
            assert_eq!(found >= bound, passes == "True", "{row:?}");
        }
    }
}

#[test]
fn every_pair_is_clear_by_day_and_by_night() {
    let blocks = blocks();
    assert_eq!(blocks.len(), 3, "one for the day, two for the night");
    assert!(
        blocks[0].keys().eq(blocks[1].keys()),
        "both set every color"
    );
    assert_eq!(blocks[1], blocks[2], "the night is one, however it came");
    for (colors, when) in blocks.iter().zip(["day", "night"]) {
        for (text, ground, least) in PAIRS {
            let found = contrast(colors[text], colors[ground]);
            assert!(
                found >= least,
                "{when}: {text} on {ground} is {found:.2}:1, not {least}:1"
            );
        }
    }
}

#[test]
fn no_color_stands_outside_the_pairs() {
    let plain = CSS
        .split(['{', '}', ';'])
        .chain(PAPER.split(['{', '}', ';']))
        .filter_map(|line| line.split_once(':'));
    let used = plain.filter(|(name, _)| {
        let name = name.trim();
        name.contains("color")
            || name.starts_with("background")
            || (name.starts_with("border") && name != "border-radius")
            || name == "box-shadow"
    });
    for (name, value) in used {
        assert!(
            !value.contains('#'),
            "{name}: {value} is no color of the list"
        );
        for part in value.split("var(--").skip(1) {
            let known = part.split(')').next().unwrap_or_default();
            assert!(
                PAIRS
                    .iter()
                    .any(|(one, other, _)| known == *one || known == *other),
                "{known} is in no pair"
            );
        }
    }
}
