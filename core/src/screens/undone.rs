//! What the last act was, so that its undo says what it takes back.

use super::{glance::Glance, happened::kind_and};
use crate::{
    cook::{Cook, LastAct, Piece, PitCare},
    log::EntryKey,
    words::key,
};

/// What is asked of each meat.
type Asked<'a> = &'a dyn Fn(&Piece) -> bool;

impl Glance<'_> {
    /// "Slab 1 and Slab 2: Off, resting" of a stage; "wetted Slab 1" of an opening; "Fed the fire: Drum", "Checked:
    /// Butt" of anything else; the kind alone where it was about no meat and no pit.
    pub(super) fn done_last(&self, cook: &Cook, last: &LastAct) -> String {
        let ours = |entry: EntryKey| last.entries.contains(&entry);
        let meats: Vec<&Piece> = cook.pieces.values().filter(|p| is_in(p, ours)).collect();
        let names: Vec<&str> = meats.iter().map(|p| p.name.value.as_str()).collect();
        let names = self.say.list(&names);
        let mut stages = meats.iter().flat_map(|p| &p.stages);
        let staged = stages.find(|passed| ours(passed.when.entry));
        let opened = self.opened_last(cook, ours);
        match staged {
            Some(passed) if last.kind == "stage_set" => {
                self.named_stage(&names, &self.stage(Some(passed.stage)))
            }
            _ if last.kind == "opened" && !opened.is_empty() => opened,
            _ if names.is_empty() => {
                let cared = cook.pits.iter().filter(|(_, care)| cares(care, ours));
                let pits: Vec<String> = cared.map(|(pit, _)| self.pit(*pit)).collect();
                kind_and(&self.say, &last.kind, &self.say.list(&pits))
            }
            _ => kind_and(&self.say, &last.kind, &names),
        }
    }

    /// "wetted Slab 1 · turned Slab 2": what was done in an opening; empty where it was only opened.
    fn opened_last(&self, cook: &Cook, ours: impl Fn(EntryKey) -> bool) -> String {
        let wetted = |p: &Piece| p.wetted.iter().any(|done| ours(done.when.entry));
        let turned = |p: &Piece| p.turned.iter().any(|done| ours(done.entry));
        let glazed = |p: &Piece| p.glazed.iter().any(|done| ours(done.entry));
        let done: [(&str, Asked<'_>); 3] = [
            (key("opened-wetted"), &wetted),
            (key("opened-turned"), &turned),
            (key("opened-glazed"), &glazed),
        ];
        let line = |(key, is_done): (&str, Asked<'_>)| {
            let meats = cook.pieces.values().filter(|piece| is_done(piece));
            let names: Vec<&str> = meats.map(|piece| piece.name.value.as_str()).collect();
            let list = self.say.list(&names);
            (!names.is_empty()).then(|| self.say.with(key, &[("names", list.as_str().into())]))
        };
        let lines: Vec<String> = done.into_iter().filter_map(line).collect();
        lines.join(" · ")
    }

    fn named_stage(&self, names: &str, stage: &str) -> String {
        let args = [("kind", names.into()), ("what", stage.into())];
        self.say.with("line-happened", &args)
    }
}

/// Whether one of these entries was about the meat.
fn is_in(piece: &Piece, ours: impl Fn(EntryKey) -> bool) -> bool {
    let stages = piece.stages.iter().map(|passed| passed.when);
    let moves = piece.moves.iter().map(|(when, ..)| *when);
    let rub = piece.rub.iter().map(|(when, _)| *when);
    let wetted = piece.wetted.iter().map(|wetted| wetted.when);
    let done = piece.turned.iter().chain(&piece.glazed).copied();
    let checks = piece.checks.iter().map(|pass| pass.when);
    let read = piece.read.iter().map(|reading| reading.when);
    let facts = stages.chain(moves).chain(rub).chain(wetted);
    let mut all = facts.chain(done).chain(checks).chain(read);
    all.any(|when| ours(when.entry))
}

/// Whether one of these entries was about the pit.
fn cares(care: &PitCare, ours: impl Fn(EntryKey) -> bool) -> bool {
    let done = [&care.opened, &care.fed, &care.vents, &care.seen];
    let read = care.read.iter().map(|(when, ..)| when);
    let said = care.wood.iter().map(|(when, _)| when);
    let planned = care.planned.iter().map(|(when, _)| when);
    let read = read.chain(said).chain(planned);
    let mut all = done.into_iter().flatten().chain(read);
    all.any(|when| ours(when.entry))
}
