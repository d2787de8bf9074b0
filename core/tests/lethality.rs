//! Every published cell of FSIS Revised Appendix A, as printed, at its own row. `published/fsis_2021_*.csv` say where each
//! was read.

use slowbend_core::{
    safety::lethality::{Logs, PasteurizedFood},
    units::Mk,
};

/// The rows of a table: °F, and the numbers of the columns that end in `_s` or begin with `s_`, by name.
fn rows(text: &str) -> Vec<(i64, Vec<(String, f64)>)> {
    let mut lines = text.lines();
    let names: Vec<&str> = lines.next().expect("a heading").split(',').collect();
    let numbers = |line: &str| {
        let cells: Vec<&str> = line.split(',').collect();
        let seconds = |name: &str| name.ends_with("pct_s") || name.starts_with("s_");
        let named = names.iter().zip(&cells).filter(|(name, _)| seconds(name));
        let named = named.map(|(name, cell)| ((*name).to_owned(), cell.parse().expect("seconds")));
        (cells[0].parse().expect("degrees"), named.collect())
    };
    lines.map(numbers).collect()
}

fn check(text: &str, least_cells: usize, of: impl Fn(&str) -> PasteurizedFood) {
    let mut cells = 0;
    for (f, columns) in rows(text) {
        for (name, seconds) in columns {
            let ours = of(&name).seconds(Mk::from_f(f));
            assert_eq!(ours, Some(seconds), "{name} at {f} °F");
            cells += 1;
        }
    }
    assert!(cells >= least_cells, "{cells} cells");
}

fn fat(name: &str) -> Option<i64> {
    name.strip_prefix("fat")?
        .strip_suffix("pct_s")?
        .parse()
        .ok()
}

#[test]
fn fsis_meat() {
    let logs = |name: &str| match name {
        "s_5log" => Logs::Five,
        "s_6.5log" => Logs::SixAndAHalf,
        _ => Logs::Seven,
    };
    let text = include_str!("published/fsis_2021_meat_time_temperature.csv");
    check(text, 93, |name| PasteurizedFood::Meat { logs: logs(name) });
}

#[test]
fn fsis_chicken() {
    let text = include_str!("published/fsis_2021_chicken_7log.csv");
    check(text, 360, |name| PasteurizedFood::Chicken {
        fat_percent: fat(name),
    });
}

#[test]
fn fsis_turkey() {
    let text = include_str!("published/fsis_2021_turkey_7log.csv");
    check(text, 360, |name| PasteurizedFood::Turkey {
        fat_percent: fat(name),
    });
}

/// Page 36: other or mixed poultry takes the longest time of both; page 39: fat above 12 % or not known takes the column of 12.
#[test]
fn fsis_other_poultry_and_unknown_fat() {
    for f in 136..=165 {
        let at = Mk::from_f(f);
        let of = |food: PasteurizedFood| food.seconds(at).expect("a published row");
        for fat_percent in [Some(1), Some(12), Some(0), Some(40), None] {
            let other = of(PasteurizedFood::OtherPoultry { fat_percent });
            let chicken = of(PasteurizedFood::Chicken { fat_percent });
            let turkey = of(PasteurizedFood::Turkey { fat_percent });
            assert_eq!(other, chicken.max(turkey), "{f} °F, {fat_percent:?}");
        }
        let unknown = of(PasteurizedFood::Chicken { fat_percent: None });
        assert_eq!(
            unknown,
            of(PasteurizedFood::Chicken {
                fat_percent: Some(12)
            })
        );
    }
}

/// Food Code 3-401.11(B)(2), whole roasts: its rows are those of 6.5 log.
#[test]
fn food_code_roasts_agree_with_the_table_of_meat() {
    let text = include_str!("published/fda_food_code_roast_holding.csv");
    for line in text.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let f: i64 = cells[1].parse().expect("degrees");
        let printed: f64 = cells[2].parse().expect("seconds");
        let meat = PasteurizedFood::Meat {
            logs: Logs::SixAndAHalf,
        };
        assert_eq!(meat.seconds(Mk::from_f(f)), Some(printed), "{f} °F");
    }
}
