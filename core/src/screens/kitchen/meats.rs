//! Which meats a sum is about, and what they weigh.

use super::super::glance::Glance;
use crate::{
    batch::{Grams, PortionsPlan},
    cook::{Cook, Piece},
    ids::PieceId,
    words::Arg,
};
use std::collections::BTreeSet;

/// Meats of a cook, those with a weight and those without.
pub(super) struct Weighed<'a> {
    pub with: Vec<(&'a Piece, i64)>,
    pub without: Vec<&'a Piece>,
}

impl Weighed<'_> {
    pub fn all(&self) -> Grams {
        Grams(self.with.iter().map(|(_, g)| g).sum())
    }
}

/// Those of `chosen`, or all where none is, which are still there.
pub(super) fn weighed<'a>(cook: &'a Cook, chosen: &[PieceId]) -> Weighed<'a> {
    let is_chosen = |piece: &&Piece| chosen.is_empty() || chosen.contains(&piece.id);
    let mut found = Weighed {
        with: vec![],
        without: vec![],
    };
    for piece in cook.meats().filter(is_chosen) {
        match piece.weight_g.value {
            Some(g) => found.with.push((piece, g)),
            None => found.without.push(piece),
        }
    }
    found
}

/// Names of meats, two of one name told apart: a list has each name once.
pub(super) fn distinct<'a>(pieces: impl Iterator<Item = &'a Piece>) -> Vec<(&'a Piece, String)> {
    let mut seen = BTreeSet::new();
    let mut named = vec![];
    for piece in pieces {
        let own = &piece.name.value;
        let mut name = own.clone();
        let mut number = 2;
        while !seen.insert(name.clone()) {
            name = format!("{own} {number}");
            number += 1;
        }
        named.push((piece, name));
    }
    named
}

/// How many eat, by what was written down or by what the cook says.
pub(super) fn eaters(cook: &Cook) -> Option<i64> {
    let planned: Option<&PortionsPlan> = super::planned!(cook, Portions);
    planned
        .map(|plan| plan.adults + plan.children)
        .or(cook.people.value)
}

impl Glance<'_> {
    /// "For 5.6 kg: Slab 1 and Slab 2."
    pub(super) fn for_meats(&self, found: &Weighed<'_>) -> String {
        let names: Vec<&str> = found
            .with
            .iter()
            .map(|(p, _)| p.name.value.as_str())
            .collect();
        if names.is_empty() {
            return self.say.text("kitchen-no-weight");
        }
        let (weight, meats) = (self.say.weight(found.all().0), self.say.list(&names));
        let args = [("weight", Arg::Text(&weight)), ("meats", Arg::Text(&meats))];
        self.say.with("kitchen-for", &args)
    }

    /// Which of them were left out, if some were.
    pub(super) fn left_out(&self, found: &Weighed<'_>) -> Option<String> {
        let names: Vec<&str> = found
            .without
            .iter()
            .map(|p| p.name.value.as_str())
            .collect();
        let some = !names.is_empty() && !found.with.is_empty();
        let list = self.say.list(&names);
        some.then(|| {
            self.say
                .with("kitchen-left-out", &[("meats", Arg::Text(&list))])
        })
    }
}
