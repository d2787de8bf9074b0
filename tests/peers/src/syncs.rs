//! How often a tap makes the disk write through: counted by `strace`, where there is one, in processes of their own, so
//! that the counting slows down nothing that is timed.
//!
//! Each side runs twice, with few taps and with many; the difference is what the taps cost, whatever opening costs.

use crate::harness::Result;
use std::{fs, process::Command};

const FEW: usize = 10;
/// Taps of the longer run.
pub const MANY: usize = 110;

/// Calls of fsync and fdatasync per tap of that side, in words.
pub fn per_act(side: &str) -> Result<String> {
    let (Some(few), Some(many)) = (count(side, FEW)?, count(side, MANY)?) else {
        return Ok("not counted: no strace".into());
    };
    Ok(format!("{:.2}", (many - few) as f64 / (MANY - FEW) as f64))
}

fn count(side: &str, taps: usize) -> Result<Option<i64>> {
    let folder = crate::place::folder()?;
    let told = folder.path().join("calls");
    let run = Command::new("strace")
        .args(["-f", "-e", "trace=fsync,fdatasync,sync_file_range", "-o"])
        .arg(&told)
        .arg(std::env::current_exe()?)
        .args(["--taps", side, &taps.to_string()])
        .status();
    match run {
        Ok(status) if status.success() => {}
        _ => return Ok(None),
    }
    let is_call = |line: &&str| line.contains("sync(") || line.contains("sync_file_range(");
    let calls = fs::read_to_string(told)?.lines().filter(is_call).count();
    Ok(Some(calls as i64))
}
