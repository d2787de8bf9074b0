//! How good forecasts are, on cooks that a simulator of its own invents. Start at [`scores::scores`].
//!
//! `slowbend-score [COOKS [MEMBERS [tuning|reporting]]]`: prints tables; ends with 1 where ours loses to a baseline or its intervals
//! are off. `docs/finish.md` says what the numbers mean and what they cannot show.

mod baselines;
mod invent;
mod learning;
mod measure;
mod moments;
mod oracle;
mod ours;
mod physics;
mod rng;
mod scores;

use invent::family::Family;
use std::process::ExitCode;

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let number = |at: usize, otherwise: usize| match args.get(at).map(|arg| arg.parse()) {
        None => Some(otherwise),
        Some(number) => number.ok(),
    };
    let family = match args.get(2).map(String::as_str) {
        None | Some("reporting") => Some(Family::Reporting),
        Some("tuning") => Some(Family::Tuning),
        Some(_) => None,
    };
    let (Some(cooks), Some(members), Some(family)) = (number(0, 2_000), number(1, 250), family)
    else {
        eprintln!("usage: slowbend-score [COOKS [MEMBERS [tuning|reporting]]]");
        return ExitCode::from(2);
    };
    println!(
        "{cooks} cooks of the family {family:?}, {members} members; baselines taught by as many of the tuning family"
    );
    let columns = scores::scores(family, cooks.max(20), members);
    measure::table::print(&columns);
    scores::print_skill(&columns, family, cooks, members);
    learning::print(family, cooks.div_ceil(10), members);
    let faults = scores::faults(&columns);
    faults.iter().for_each(|fault| println!("short: {fault}"));
    ExitCode::from(u8::from(!faults.is_empty()))
}
