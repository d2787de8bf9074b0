//! Benches: our speed as a ratio against a peer in the same run, one file each. Start at [`harness`].
//!
//! Without arguments all of them run; with names (`tap fold screens pages safety absorb chart csv openings plan crdt heat
//! drawn finish`) those. Prints one table and ends with 1 where a row is short of its reach.

mod absorb;
mod chart;
mod crdt;
mod csv_import;
mod door;
mod drawn;
mod finish;
mod fold;
mod harness;
mod heat;
mod invent;
mod openings;
mod pages;
mod place;
mod plan;
mod safety;
mod screens;
mod syncs;
mod tap;

use harness::{Result, Row, table};
use std::process::ExitCode;

type Bench = fn() -> Result<Vec<Row>>;

const BENCHES: [(&str, Bench); 14] = [
    ("tap", tap::rows),
    ("fold", fold::rows),
    ("screens", screens::rows),
    ("pages", pages::rows),
    ("safety", safety::rows),
    ("absorb", absorb::rows),
    ("chart", chart::rows),
    ("csv", csv_import::rows),
    ("openings", openings::rows),
    ("plan", plan::rows),
    ("crdt", crdt::rows),
    ("heat", heat::rows),
    ("drawn", drawn::rows),
    ("finish", finish::rows),
];

fn main() -> Result<ExitCode> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["--taps", side, taps] => {
            return tap::only(side, taps.parse()?).map(|()| ExitCode::SUCCESS);
        }
        ["--import", file, to] => {
            return csv_import::only(file.as_ref(), to.as_ref()).map(|()| ExitCode::SUCCESS);
        }
        _ => {}
    }
    if let Some(unknown) = args
        .iter()
        .find(|arg| BENCHES.iter().all(|(name, _)| name != arg))
    {
        let names = BENCHES.map(|(name, _)| name).join(" ");
        return Err(format!("there is no bench '{unknown}'; there are: {names}").into());
    }
    let rows = run(&args)?;
    println!("{}", table(&rows));
    let short = rows.iter().filter(|row| !row.is_ok()).count();
    let judged = rows
        .iter()
        .filter(|row| row.reach != harness::Reach::Told)
        .count();
    let disk = place::file_system().unwrap_or_else(|| "not known".into());
    println!(
        "\n{} of {judged} in reach, {short} short; file system: {disk}",
        judged - short
    );
    Ok(ExitCode::from(u8::from(short > 0)))
}

fn run(names: &[String]) -> Result<Vec<Row>> {
    let mut rows = vec![];
    for (name, bench) in BENCHES {
        if names.is_empty() || names.iter().any(|wanted| wanted == name) {
            eprintln!("{name}…");
            rows.extend(bench()?);
        }
    }
    Ok(rows)
}
