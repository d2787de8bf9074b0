//! What an act said, kept for the page that follows it: the address carries only a number, so that no link can put words
//! on a page.

use std::{
    collections::VecDeque,
    sync::{Mutex, PoisonError},
};

/// How many are kept: the pages that may still be on their way to a browser.
const KEPT: usize = 64;

/// The last sentences, each under its number.
#[derive(Default)]
pub struct Told(Mutex<(u64, VecDeque<(u64, String)>)>);

impl Told {
    /// Keeps `said` and gives its number.
    pub fn keep(&self, said: String) -> u64 {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.0 += 1;
        let number = kept.0;
        kept.1.push_back((number, said));
        if kept.1.len() > KEPT {
            kept.1.pop_front();
        }
        number
    }

    /// The sentence of that number, if it is still kept.
    pub fn said(&self, number: u64) -> Option<String> {
        let kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let found = kept.1.iter().find(|(known, _)| *known == number)?;
        Some(found.1.clone())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_sentences_are_kept_and_older_ones_let_go() {
        let told = Told::default();
        let first = told.keep("mopped".into());
        assert_eq!(told.said(first).as_deref(), Some("mopped"));
        for _ in 0..KEPT {
            told.keep("again".into());
        }
        assert_eq!(told.said(first), None);
    }
}
