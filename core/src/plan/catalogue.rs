//! A meat as the catalogue knows it, until a forecast or the pit book knows better. Start at [`from_catalogue`].
//!
//! All figures here are common practice, no source, but for what is said at [`SLOWER_TO`].

use super::household::{Happy, Hold, Meat, Prep, PrepKind, Quantiles, Span, TimesAt};
use crate::{
    checks::{
        Cut, CutFacts, cut_facts,
        cuts::{Degrees, Minutes},
    },
    safety::{Form, minimum},
    units::Mk,
    words::key,
};

/// Cooking time is taken to go with 1 / (pit − this): it makes the 82.5 min a pound of pork butt at 250 °F (the middle of what
/// is common) 43 at 350 °F, where FoodSafety.gov's roasting chart of 10 Feb 2023 has 45 (read in a copy, scribd.com 643089196).
/// One pair of values, so an assumption of our own and no law; for ribs it is on the slow side.
const SLOWER_TO: Mk = Mk::from_f(140);
/// A meat is planned at no pit colder than its usual range by more than this, nor hotter by more than three times as much.
const COLDER_BY: i64 = 13_889;

/// A meat of so many grams for a serving, with the times for pits held at these temperatures.
pub fn from_catalogue(
    name: &str,
    cut: Cut,
    form: Form,
    grams: i64,
    serving: usize,
    pit_temps: &[Mk],
) -> Meat {
    let facts = cut_facts(cut);
    let lowest = minimum(cut, form).temp;
    let (best, at_most) = hold(&facts);
    Meat {
        name: name.to_owned(),
        cut,
        form,
        serving,
        area_cm2: area(cut),
        weight_g: grams,
        prep: prep(cut, form),
        times: times(&facts, grams, pit_temps),
        happy: happy(&facts),
        off_mk: facts.done_range.low.max(lowest),
        rest: Span {
            least_min: facts.rest.least,
            most_min: facts.rest.most.min(STANDS_MIN).max(facts.rest.least),
        },
        hold: Hold {
            best_least_min: best.least,
            best_most_min: best.most,
            most_min: at_most,
        },
        vent_min: if facts.wraps.is_empty() {
            0
        } else {
            VENT_MIN.min(facts.rest.least)
        },
        cut_min: cut_minutes(cut),
        cut_early_min: if cut.is_poultry() { 15 } else { 45 },
        on: None,
        off_at_min: None,
    }
}

/// How long a wrapped meat stands without a place to hold it, minutes.
const STANDS_MIN: i64 = 60;
/// How long what was wrapped stands open, so that it stops cooking, minutes.
const VENT_MIN: i64 = 10;

/// The table of a cut: its usual least and most are taken for 10 and 90 of 100 cooks, and a normal law between.
fn times(facts: &CutFacts, grams: i64, pit_temps: &[Mk]) -> Vec<TimesAt> {
    let Minutes { least, most } = facts.cook_time.for_grams(grams.clamp(1, 50_000));
    let usual = (facts.time_at.low.0 + facts.time_at.high.0) / 2;
    let colder = facts.pit.low.0 - COLDER_BY;
    let hotter = facts.pit.high.0 + 3 * COLDER_BY;
    let at = |pit: &Mk| {
        let scaled = |minutes: i64| {
            let (times, over) = (usual - SLOWER_TO.0, pit.0 - SLOWER_TO.0);
            ((minutes * times + over / 2) / over).clamp(5, 2_880)
        };
        let (p10, p90) = (scaled(least), scaled(most));
        let p50 = (p10 + p90) / 2;
        // 657 permille: the normal score of 80 % (0.8416) to that of 90 % (1.2816).
        let p80 = p50 + (p90 - p50) * 657 / 1_000;
        TimesAt {
            pit: *pit,
            minutes: Quantiles { p10, p50, p80, p90 },
        }
    };
    let may = |pit: &&Mk| colder <= pit.0 && pit.0 <= hotter && pit.0 > SLOWER_TO.0 + COLDER_BY;
    pit_temps.iter().filter(may).map(at).collect()
}

/// Poultry wants the heat its usual time is meant for, for its skin; the rest is happy in all its usual range.
fn happy(facts: &CutFacts) -> Happy {
    let Degrees { low, high } = if facts.cut.is_poultry() {
        facts.time_at
    } else {
        facts.pit
    };
    let below = if facts.cut.is_poultry() {
        key("plan-below-skin")
    } else {
        key("plan-below-slow")
    };
    Happy {
        low_mk: low,
        high_mk: high,
        below: Some(below.to_owned()),
        above: Some(key("plan-above-dry").to_owned()),
    }
}

/// The best hold, and the most.
fn hold(facts: &CutFacts) -> (Minutes, i64) {
    let best = match facts.cut {
        Cut::Brisket | Cut::BrisketFlat | Cut::BrisketPoint | Cut::PorkButt | Cut::PorkPicnic => {
            Minutes {
                least: 60,
                most: 240,
            }
        }
        cut if cut.is_pork_ribs() => Minutes {
            least: 15,
            most: 60,
        },
        Cut::PlateRibs | Cut::BeefBackRibs => Minutes {
            least: 30,
            most: 60,
        },
        cut if cut.is_poultry() => Minutes {
            least: facts.rest.least,
            most: 20.max(facts.rest.least),
        },
        _ => facts.rest,
    };
    let most = facts.hold_minutes_max.max(best.most).max(facts.rest.least);
    (best, most)
}

/// Grate one takes, square centimeters.
const fn area(cut: Cut) -> i64 {
    match cut {
        Cut::Brisket | Cut::PlateRibs => 1_300,
        Cut::BrisketFlat | Cut::PorkBelly => 900,
        Cut::SpareRibs | Cut::TurkeyBreast | Cut::LambShoulder | Cut::PorkPicnic => 800,
        Cut::ChickenWhole | Cut::ChickenThighs => 800,
        Cut::SpareRibsTrimmed | Cut::BabyBackRibs | Cut::BeefBackRibs | Cut::BrisketPoint => 650,
        Cut::PorkButt | Cut::PorkLoin | Cut::TriTip => 500,
        Cut::ChickenHalf | Cut::Sausages | Cut::PoultrySausages => 450,
    }
}

/// Cutting or pulling, minutes.
const fn cut_minutes(cut: Cut) -> i64 {
    match cut {
        Cut::Brisket | Cut::PorkButt | Cut::PorkPicnic | Cut::LambShoulder => 15,
        Cut::BrisketFlat | Cut::BrisketPoint | Cut::TurkeyBreast | Cut::ChickenWhole => 10,
        Cut::Sausages | Cut::PoultrySausages | Cut::ChickenThighs => 0,
        _ => 5,
    }
}

/// Trimmed and rubbed; large ones rest in the cold for hours, the night before at the earliest two nights before.
fn prep(cut: Cut, form: Form) -> Vec<Prep> {
    let step = |what, hands_min, least_min, most_min| Prep {
        what,
        hands_min,
        then: Span {
            least_min,
            most_min,
        },
    };
    match cut {
        _ if cut.is_ground() || form == Form::Ground => vec![],
        Cut::Brisket | Cut::PlateRibs => vec![
            step(PrepKind::Trim, 30, 0, 720),
            step(PrepKind::Rub, 10, 60, 1_440),
        ],
        Cut::PorkButt | Cut::PorkPicnic | Cut::LambShoulder | Cut::PorkBelly => {
            vec![step(PrepKind::Rub, 15, 60, 1_440)]
        }
        _ => vec![step(PrepKind::Rub, 10, 30, 1_440)],
    }
}
