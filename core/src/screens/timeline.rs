//! What happened in a cook, latest first, with what was taken back still standing there, struck.
//!
//! Law: every entry of the cook is on exactly one page. Pages are cut by claimed time, and what is claimed for one
//! instant is never parted.

use super::{
    Button, Happened, Place, Timeline, Tone,
    buttons::button,
    glance::Glance,
    happened::{Names, kind_and},
    pitside::NEVER_UNDONE,
};
use crate::{
    acts::Act,
    cook::{Cook, Known},
    ids::{CookId, PieceId},
    log::{Body, Entry, EntryKey, Meaning, Payload},
    moment::Moment,
    words::{Arg, Viewer, key},
};
use std::collections::BTreeMap;

/// One entry read.
struct Told<'a> {
    entry: &'a Entry,
    kind: String,
    at: i64,
    meaning: Meaning,
}

/// What the entries of a cook say, to be named where another entry speaks of them.
struct Past<'a> {
    names: Names,
    of: BTreeMap<EntryKey, &'a Told<'a>>,
}

/// A page of what happened: at most `page` entries claimed for before `before`, and those of the last one's instant.
/// `entries` are all of the cook, in whatever order. None where the cook is not known here.
pub fn timeline(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    entries: &[Entry],
    before: Option<i64>,
    page: usize,
    moment: &Moment,
) -> Option<Timeline> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let mut told: Vec<Told<'_>> = entries.iter().map(Told::of).collect();
    told.sort_by_key(|told| std::cmp::Reverse((told.at, told.entry.order())));
    let past = Past {
        names: names(&told),
        of: told.iter().map(|told| (told.entry.key, told)).collect(),
    };
    let voids = last_voids(&told, cook);
    let older: Vec<&Told<'_>> = told
        .iter()
        .filter(|told| before.is_none_or(|before| told.at < before))
        .collect();
    let end = page_end(&older, page);
    let next = older.get(end).map(|_| older[end - 1].at);
    Some(Timeline {
        cook: cook.id,
        title: cook.name.value.clone(),
        lines: older[..end]
            .iter()
            .map(|told| glance.happened(cook, told, &past, &voids))
            .collect(),
        next,
        links: glance.links_to(&[
            (key("card-of-this"), Place::Card { cook: cook.id }),
            (key("link-log"), Place::TempLog { cook: cook.id }),
            (key("begin-again"), Place::Again { cook: cook.id }),
        ]),
        until: glance.until(&[]),
    })
}

/// Where a page ends that holds `page` entries and the rest of the last one's instant.
fn page_end(older: &[&Told<'_>], page: usize) -> usize {
    let page = page.max(1);
    let Some(last) = older.get(page - 1) else {
        return older.len();
    };
    page + older[page..].iter().take_while(|t| t.at == last.at).count()
}

impl<'a> Told<'a> {
    /// An entry whose claimed time is gone or unreadable stands where its stamp does.
    fn of(entry: &'a Entry) -> Self {
        let head = match &entry.body {
            Body::Raw(raw) => Entry::head(raw).ok(),
            Body::Erased => None,
        };
        Self {
            entry,
            at: head.as_ref().map_or(entry.stamp.wall_ms(), |head| head.at),
            kind: head
                .as_ref()
                .map_or_else(String::new, |h| h.kind.to_string()),
            meaning: head.map_or(Meaning::Skipped, |head| Payload::read(&head)),
        }
    }

    fn is_erased(&self) -> bool {
        self.entry.body == Body::Erased
    }
}

/// What meats are or were called, from the entries that made them.
fn names(told: &[Told<'_>]) -> Names {
    let mut names = Names::new();
    for told in told {
        match &told.meaning {
            Meaning::Known(Payload::PieceAdded(fact)) => {
                names.insert(fact.piece, fact.name.clone());
            }
            Meaning::Known(Payload::PieceSplit(fact)) => {
                names.extend(fact.into.iter().map(|p| (p.piece, p.name.clone())));
            }
            Meaning::Known(Payload::PiecesJoined(fact)) => {
                names.insert(fact.into.piece, fact.into.name.clone());
            }
            _ => {}
        }
    }
    names
}

/// For each entry taken back, the last standing void of it.
fn last_voids(told: &[Told<'_>], cook: &Cook) -> BTreeMap<EntryKey, EntryKey> {
    let mut voids: Vec<&Told<'_>> = told
        .iter()
        .filter(|told| !cook.hidden.contains(&told.entry.key))
        .collect();
    voids.sort_by_key(|told| told.entry.order());
    let mut last = BTreeMap::new();
    for told in voids {
        if let Meaning::Known(Payload::Voided(fact)) = &told.meaning {
            last.extend(fact.targets.iter().map(|target| (*target, told.entry.key)));
        }
    }
    last
}

impl Glance<'_> {
    fn happened(
        &self,
        cook: &Cook,
        told: &Told<'_>,
        past: &Past<'_>,
        voids: &BTreeMap<EntryKey, EntryKey>,
    ) -> Happened {
        let entry = told.entry.key;
        let hidden = cook.hidden.contains(&entry);
        let by = (entry.device != self.viewer.device).then(|| self.device(entry.device));
        Happened {
            entry,
            at: told.at,
            day: self.say.day_heading(told.at, self.now),
            clock: self.say.clock(told.at),
            when: self.say.clock_day(told.at, self.now),
            what: self.what(cook, told, past),
            who: by.unwrap_or_default(),
            standing: self.entry_standing(cook, told),
            undo: match hidden {
                true => voids.get(&entry).map(|void| {
                    let label = self.say.text("button-restore");
                    undo(label, *void)
                }),
                false => can_undo(told)
                    .then(|| undo(self.say.text("button-undo"), entry))
                    .or_else(|| self.restore(told)),
            },
        }
    }

    /// A taking-back that stands offers to restore what it took.
    fn restore(&self, told: &Told<'_>) -> Option<Button> {
        let takes_back = matches!(told.meaning, Meaning::Known(Payload::Voided(_)));
        takes_back.then(|| undo(self.say.text("button-restore"), told.entry.key))
    }

    fn what(&self, cook: &Cook, told: &Told<'_>, past: &Past<'_>) -> String {
        match &told.meaning {
            Meaning::Known(Payload::Voided(fact)) => self.took_back(cook, &fact.targets, past),
            Meaning::Known(Payload::PieceMoved(fact)) if !was_on(cook, fact.piece, told.at) => {
                let name = past.names.get(&fact.piece).cloned();
                let name = name.unwrap_or_else(|| self.piece_name(fact.piece));
                let pit = self.pit(fact.pit);
                let args = [("pit", Arg::Text(&pit)), ("name", Arg::Text(&name))];
                self.say.with("happened-meant", &args)
            }
            Meaning::Known(payload) => self.sentence(&past.names, payload),
            _ if told.is_erased() => kind_and(&self.say, "erased", ""),
            _ => kind_and(&self.say, "", ""),
        }
    }

    /// What was taken back, each in its own words; of a taking-back, what was restored. A chain of them ends, for each
    /// takes back only what came before it.
    fn took_back(&self, cook: &Cook, targets: &[EntryKey], past: &Past<'_>) -> String {
        let held: Vec<&Told<'_>> = targets
            .iter()
            .filter_map(|key| past.of.get(key).copied())
            .collect();
        let void = |told: &&Told<'_>| match &told.meaning {
            Meaning::Known(Payload::Voided(fact)) => Some(fact.targets.clone()),
            _ => None,
        };
        let restored: Vec<EntryKey> = held.iter().filter_map(void).flatten().collect();
        let (key, shown) = match restored.is_empty() {
            true => ("happened-voided", held),
            false => {
                let shown = restored.iter().filter_map(|key| past.of.get(key).copied());
                ("happened-restored", shown.collect())
            }
        };
        let what: Vec<String> = shown
            .into_iter()
            .map(|told| match &told.meaning {
                Meaning::Known(Payload::Voided(_)) => kind_and(&self.say, "voided", ""),
                _ => self.what(cook, told, past),
            })
            .collect();
        match what.is_empty() {
            true => kind_and(&self.say, "voided", ""),
            false => self
                .say
                .with(key, &[("what", Arg::Text(&what.join(" · ")))]),
        }
    }

    /// Why an entry does not count, if it does not.
    fn entry_standing(&self, cook: &Cook, told: &Told<'_>) -> String {
        let key = match &told.meaning {
            _ if told.is_erased() => key("standing-erased"),
            _ if cook.hidden.contains(&told.entry.key) => key("standing-taken-back"),
            Meaning::Known(payload) if self.is_orphan(cook, payload) => key("standing-orphan"),
            Meaning::Known(_) => return String::new(),
            Meaning::Skipped => key("standing-newer"),
            Meaning::MustUpdate => key("standing-must-update"),
        };
        self.say.text(key)
    }
}

/// Whether the meat had been on a pit by then: before, a move says which pit it is meant for.
fn was_on(cook: &Cook, piece: PieceId, at: i64) -> bool {
    let piece = cook.pieces.get(&piece);
    piece.is_none_or(|piece| {
        let on = piece
            .stages
            .iter()
            .filter(|passed| passed.stage.is_on_pit());
        on.into_iter().any(|passed| passed.when.at <= at)
    })
}

fn undo(label: String, target: EntryKey) -> Button {
    let act = Act::Undo {
        targets: vec![target],
    };
    button(label, act, Tone::Plain)
}

fn can_undo(told: &Told<'_>) -> bool {
    !told.is_erased()
        && !told.kind.is_empty()
        && told.kind != "voided"
        && !NEVER_UNDONE.contains(&told.kind.as_str())
}
