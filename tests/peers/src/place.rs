//! Where benches write: a folder beside the program, so on the disk that holds the build, and never in memory.

use crate::harness::Result;
use std::fs;
use tempfile::TempDir;

/// A folder that goes away with the value.
pub fn folder() -> Result<TempDir> {
    let program = std::env::current_exe()?;
    let beside = program.parent().ok_or("the program lies in no folder")?;
    Ok(tempfile::tempdir_in(beside)?)
}

/// The kind of file system that it is on, as the system's own table of mounts says; none where there is no such table.
pub fn file_system() -> Option<String> {
    let beside = std::env::current_exe().ok()?.parent()?.to_owned();
    let mounts = fs::read_to_string("/proc/self/mounts").ok()?;
    let of_line = |line: &str| {
        let mut words = line.split(' ').skip(1);
        let (at, kind) = (words.next()?.to_owned(), words.next()?.to_owned());
        beside.starts_with(&at).then_some((at.len(), kind))
    };
    mounts
        .lines()
        .filter_map(of_line)
        .max()
        .map(|(_, kind)| kind)
}
