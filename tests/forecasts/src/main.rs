//! How good forecasts are, on cooks that a simulator of its own invents. Start at [`scores::scores`].
//!
//! `slowbend-score [COOKS [MEMBERS [tuning|reporting]]]`: prints tables; ends with 1 where ours loses to a baseline or its intervals
//! are off. `slowbend-score learning [PITS …]`: three cooks on one pit. `docs/finish.md` says what the numbers mean and what they cannot show.

mod baselines;
mod invent;
mod learning;
mod measure;
mod moments;
mod oracle;
mod ours;
mod parallel;
mod physics;
mod rng;
mod scores;

use invent::family::Family;
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut args: Vec<String> = std::env::args().skip(1).collect();
    let learns = args.first().is_some_and(|arg| arg == "learning");
    args.drain(..usize::from(learns));
    let number = |at: usize, otherwise: usize| match args.get(at).map(|arg| arg.parse()) {
        None => Some(otherwise),
        Some(number) => number.ok(),
    };
    let family = match args.get(2).map(String::as_str) {
        None | Some("reporting") => Some(Family::Reporting),
        Some("tuning") => Some(Family::Tuning),
        Some(_) => None,
    };
    let most = if learns { 200 } else { 2_000 };
    let (Some(count), Some(members), Some(family)) = (number(0, most), number(1, 250), family)
    else {
        eprintln!("usage: slowbend-score [learning] [COOKS [MEMBERS [tuning|reporting]]]");
        return ExitCode::from(2);
    };
    if learns {
        println!("pits of the family {family:?}, {members} members");
        let short = learning::print(family, count, members);
        short.iter().for_each(|short| println!("short: {short}"));
        return ExitCode::from(u8::from(short.is_some()));
    }
    println!(
        "{count} cooks of the family {family:?}, {members} members; baselines taught by as many of the tuning family"
    );
    let columns = scores::scores(family, count.max(20), members);
    measure::table::print(&columns);
    scores::print_skill(&columns, family, count, members);
    let faults = scores::faults(&columns);
    faults.iter().for_each(|fault| println!("short: {fault}"));
    ExitCode::from(u8::from(!faults.is_empty()))
}
