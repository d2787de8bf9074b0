//! Cooks' nights, told as files and lived through the one door.
//!
//! Start at [`live`]. The format is described in `tests/stories/README.md`; the same files are lived through the Python
//! binding by `tests/python/run_stories.py`.
//!
//! Law: every step of a story holds, or the test says which step of which file did not, and what was there instead.

mod find;
mod night;
mod story;

pub use find::{find, holds};
pub use story::{Holder, Step, Story};

use night::Night;
use std::path::{Path, PathBuf};

/// Where the story files are.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("stories")
}

/// The names of all story files.
pub fn names() -> Vec<String> {
    let files =
        std::fs::read_dir(folder()).expect("the folder of the stories is in the repository");
    let mut names: Vec<String> = files
        .filter_map(|file| Some(file.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|end| end == "json"))
        .filter_map(|path| Some(path.file_stem()?.to_str()?.to_owned()))
        .collect();
    names.sort();
    names
}

/// Reads the story called `name`.
///
/// # Errors
/// What is wrong with the file.
pub fn read(name: &str) -> Result<Story, String> {
    let path = folder().join(name).with_extension("json");
    let text =
        std::fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
    serde_json::from_str(&text).map_err(|error| format!("{}: {error}", path.display()))
}

/// Lives the story called `name`, in folders that vanish afterwards.
///
/// # Errors
/// The first step that does not hold, what was there instead, and how to see it again.
pub fn live(name: &str) -> Result<(), String> {
    let story = read(name)?;
    let mut night = Night::begin(&story)?;
    for (i, step) in story.steps.iter().enumerate() {
        night.live(step).map_err(|wrong| {
            format!(
                "tests/stories/{name}.json, step {} of {}: {wrong}\nto see it again: \
                 cargo test -p slowbend-tests --test stories {name}",
                i + 1,
                story.steps.len(),
            )
        })?;
    }
    Ok(())
}
