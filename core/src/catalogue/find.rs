//! From what a person typed to the cuts that it can mean. Start at [`find`].

use super::{
    fold::{distance, fold},
    named::all_names,
};
use crate::checks::Cut;
use std::sync::OnceLock;

/// The longest text that is searched for, in letters: no name is so long, and the rest is left out.
const LETTERS_MAX: usize = 80;

/// The cuts that `text` can mean, the nearest first; all of them where nothing was typed.
///
/// Each word that was typed must be, begin, or nearly be a word of the cut's names, in whichever language. Law: the answer
/// depends on the text alone, holds no cut twice, and where a cut has all words as they were typed, none is in it that
/// has them with a slip only.
///
/// ```
/// use slowbend_core::{catalogue::find, checks::Cut};
/// assert_eq!(find("Boston but"), [Cut::PorkButt]);
/// assert!(find("costillas").contains(&Cut::BabyBackRibs));
/// assert!(find("xylophone").is_empty());
/// ```
pub fn find(text: &str) -> Vec<Cut> {
    let short: String = text.chars().take(LETTERS_MAX).collect();
    let typed = fold(&short);
    let mut found: Vec<(Nearness, Cut)> = names()
        .iter()
        .filter_map(|(cut, names)| Some((nearness(&typed, names)?, *cut)))
        .collect();
    let is_exact = found.iter().any(|(near, _)| near.slips == 0);
    found.retain(|(near, _)| !is_exact || near.slips == 0);
    found.sort_by_key(|(near, cut)| (*near, *cut));
    found.into_iter().map(|(_, cut)| cut).collect()
}

/// How near a cut is to what was typed; less is nearer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Nearness {
    /// Words that are not as typed.
    slips: usize,
    /// Letters in which they differ, and words of which only the beginning was typed.
    far: usize,
}

/// None where a word that was typed is none of the cut's.
fn nearness(typed: &[String], names: &[String]) -> Option<Nearness> {
    let mut near = Nearness { slips: 0, far: 0 };
    for word in typed {
        let far = names.iter().filter_map(|name| distance(word, name)).min()?;
        near.slips += usize::from(far > 1);
        near.far += far;
    }
    Some(near)
}

/// The words of all names of each cut, said once for the life of the process.
fn names() -> &'static [(Cut, Vec<String>)] {
    static NAMES: OnceLock<Vec<(Cut, Vec<String>)>> = OnceLock::new();
    NAMES.get_or_init(|| {
        let of = |cut: &Cut| (*cut, fold(&all_names(*cut).join(" ")));
        Cut::ALL.iter().map(of).collect()
    })
}

#[cfg(test)]
mod tests;
