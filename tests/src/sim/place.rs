//! A folder for a run: in memory where the system has such a place, since nothing here is kept.

use std::path::Path;
use tempfile::TempDir;

/// A fresh folder that goes away with the value.
///
/// # Panics
/// When no folder can be made: then nothing can be tested.
pub fn fresh() -> TempDir {
    let memory = Path::new("/dev/shm");
    let mut builder = tempfile::Builder::new();
    builder.prefix("slowbend-sim-");
    let made = if memory.is_dir() {
        builder.tempdir_in(memory)
    } else {
        builder.tempdir()
    };
    made.expect("a temporary folder can be made")
}
