//! One million CSV readings: our import against the csv crate's parse plus an fsynced write of the same bytes.
//!
//! Both read the file from disk. The peer splits every row into cells (`ByteRecord`, reused), looks at no cell, and
//! writes the bytes of the file to another one, fsynced. Ours does the whole job: finds the plan, reads times in a zone
//! and temperatures, checks them, encodes and names chunks, and writes them to a file, fsynced. The invented rows are
//! local times without an offset, one a second, over a clock change, with one temperature in tenths of °F.
//!
//! Peak memory is the high-water mark (`VmHWM`) of a process that makes one import and nothing else, all that it holds
//! counted. Where Linux does not give it, it is said to be not measured.

use crate::{
    harness::{Reach, Result, Row, in_turns, time},
    place,
};
use slowbend_core::readings::{
    Answers, Encoded, Guess, ImportPlan, Report, SeriesId, Sink, guess, import,
};
use std::{
    fs::{self, File},
    io::{self, BufWriter, Read, Write},
    path::Path,
    process::Command,
    time::{Duration, Instant},
};

/// Readings in the file.
pub const READINGS: u64 = 1_000_000;
/// Least share of the peer's speed that is good enough, and most memory, bytes.
pub const LEAST_SPEED: f64 = 0.5;
/// See [`LEAST_SPEED`].
pub const MOST_MEMORY: u64 = 64 << 20;
const TURNS: usize = 7;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let folder = place::folder()?;
    let file = folder.path().join("readings.csv");
    write_file(&file)?;
    let (to_ours, to_peer) = (folder.path().join("ours"), folder.path().join("peer"));
    let pair = in_turns(
        TURNS,
        || timed(|| run_ours(&file, &to_ours)),
        || timed(|| run_peer(&file, &to_peer)),
    )?;
    let speed = Row {
        ratio: Some(1.0 / pair.ratio()),
        reach: Reach::AtLeast(LEAST_SPEED),
        ..Row::told(
            &format!("csv, {READINGS} readings, share of speed"),
            time(pair.ours),
            time(pair.peer),
        )
    };
    Ok(vec![speed, memory(peak_of_its_own(&file, &to_ours)?)])
}

/// Imports in a process that does nothing else, which answers with its peak.
fn peak_of_its_own(file: &Path, to: &Path) -> Result<Option<u64>> {
    let mut program = Command::new(std::env::current_exe()?);
    let run = program.arg("--import").args([file, to]).output()?;
    if !run.status.success() {
        return Err(String::from_utf8_lossy(&run.stderr).into());
    }
    Ok(String::from_utf8(run.stdout)?.trim().parse().ok())
}

/// Imports one file and prints the peak of this process in bytes; nothing where Linux does not give it.
pub fn only(file: &Path, to: &Path) -> Result<()> {
    run_ours(file, to)?;
    println!(
        "{}",
        peak_bytes().map_or(String::new(), |bytes| bytes.to_string())
    );
    Ok(())
}

fn memory(peak: Option<u64>) -> Row {
    let limit = format!("limit {:.1} MB", MOST_MEMORY as f64 / 1e6);
    match peak {
        Some(bytes) => Row {
            ratio: Some(bytes as f64 / MOST_MEMORY as f64),
            reach: Reach::AtMost(1.0),
            ..Row::told(
                "csv, peak memory",
                format!("{:.1} MB", bytes as f64 / 1e6),
                limit,
            )
        },
        None => Row::told("csv, peak memory", "not measured here", limit),
    }
}

fn timed(run: impl FnOnce() -> io::Result<()>) -> Result<Duration> {
    let start = Instant::now();
    run()?;
    Ok(start.elapsed())
}

struct ToFile(BufWriter<File>);

impl Sink for ToFile {
    type Error = io::Error;
    fn chunk(&mut self, _: &SeriesId, chunk: Encoded) -> io::Result<()> {
        self.0.write_all(&chunk.bytes)
    }
}

fn run_ours(file: &Path, to: &Path) -> io::Result<()> {
    let plan = plan(file)?;
    let mut sink = ToFile(BufWriter::new(File::create(to)?));
    let report: Report = import(File::open(file)?, &plan, &mut sink).map_err(io::Error::other)?;
    assert_eq!(
        (report.rows, report.taken, report.out_of_order),
        (READINGS, READINGS, 0),
        "nothing is lost"
    );
    sink.0.into_inner()?.sync_all()
}

fn plan(file: &Path) -> io::Result<ImportPlan> {
    let mut head = Vec::new();
    File::open(file)?.take(64 * 1024).read_to_end(&mut head)?;
    let answers = Answers {
        source: "drum log".into(),
        zone: "America/Chicago".into(),
        ..Answers::default()
    };
    match guess(&head, &answers).map_err(io::Error::other)? {
        Guess::Plan(plan) => Ok(plan),
        Guess::Ask(question) => Err(io::Error::other(format!("{question:?}"))),
    }
}

fn run_peer(file: &Path, to: &Path) -> io::Result<()> {
    let mut reader = csv::Reader::from_path(file)?;
    let (mut record, mut rows) = (csv::ByteRecord::new(), 0);
    while reader.read_byte_record(&mut record)? {
        rows += 1;
    }
    assert_eq!(rows, READINGS);
    let mut copy = File::create(to)?;
    io::copy(&mut File::open(file)?, &mut copy)?;
    copy.sync_all()
}

/// Invented: from the evening before clocks go back in Chicago, so that an hour comes twice.
fn write_file(file: &Path) -> io::Result<()> {
    let mut out = BufWriter::new(File::create(file)?);
    writeln!(out, "Time,Pit (°F)")?;
    let (start, change) = (1_793_480_400i64, 1_793_516_400i64);
    for n in 0..READINGS as i64 {
        let at = start + n;
        let wall = at - if at < change { 5 } else { 6 } * 3_600;
        writeln!(out, "{},{}.{}", written(wall), 220 + n * 7_919 % 13, n % 10)?;
    }
    out.into_inner()?.sync_all()
}

/// A wall clock in October or November 2026, written year first.
fn written(wall: i64) -> String {
    let day = (wall - 1_790_812_800) / 86_400;
    let (month, day) = if day < 31 {
        (10, day + 1)
    } else {
        (11, day - 30)
    };
    let second = wall % 86_400;
    format!(
        "2026-{month:02}-{day:02} {:02}:{:02}:{:02}",
        second / 3_600,
        second / 60 % 60,
        second % 60
    )
}

fn peak_bytes() -> Option<u64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|line| line.starts_with("VmHWM:"))?;
    let kilobytes: u64 = line.split_whitespace().nth(1)?.parse().ok()?;
    Some(kilobytes * 1_024)
}
