//! Two general libraries for shared documents on the same edits: not peers, for they promise other things, but what
//! somebody would otherwise reach for. Rows to be read.
//!
//! Each of the 20,000 entries is one edit: a map of its name, order and head as scalars and its body as text, appended
//! to a list in a transaction of its own. Told are the time to make all edits in memory, the time to load the saved
//! document and read every entry's body out of it again, and the saved size. Ours: the time to absorb the entries into a
//! database, durably, the time to read them back from it and fold them to state, and the size of its file, indices and
//! all.

use crate::{
    fold,
    harness::{Result, Row, alone, time},
    invent, place,
};
use automerge::{AutoCommit, ObjType, ROOT, ReadDoc, transaction::Transactable};
use loro::{ExportMode, LoroDoc, LoroMap};
use slowbend_core::log::{Body, Entry};
use std::time::{Duration, Instant};

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let entries = invent::log(fold::COOKS, fold::EACH).entries;
    let edits: Vec<Edit> = entries.iter().map(edit).collect::<Result<_>>()?;
    let ours = words("absorb", ours(&entries)?);
    let row = |name: &str, told: Told| {
        let name = format!("{name}, the same {} edits", edits.len());
        Row::told(&name, &*ours, words("edit", told))
    };
    Ok(vec![
        row("automerge", automerge(&edits)?),
        row("loro", loro(&edits)?),
    ])
}

/// Time to make the edits, time to load and read them, bytes when saved.
type Told = (Duration, Duration, usize);

fn words(make: &str, (made, loaded, size): Told) -> String {
    let (made, loaded, size) = (time(made), time(loaded), size as f64 / 1e6);
    format!("{make} {made}, load {loaded}, {size:.1} MB")
}

fn ours(entries: &[Entry]) -> Result<Told> {
    let folder = place::folder()?;
    let start = Instant::now();
    let store = fold::filled(folder.path(), entries)?;
    let made = start.elapsed();
    let loaded = alone(3, || fold::ours(&store, entries.len()))?;
    let size = std::fs::metadata(store.path())?.len();
    Ok((made, loaded, size as usize))
}

/// One entry as named scalars.
struct Edit {
    texts: [(&'static str, String); 4],
    numbers: [(&'static str, i64); 3],
}

fn edit(entry: &Entry) -> Result<Edit> {
    let head = Entry::head(raw(entry))?;
    Ok(Edit {
        texts: [
            ("device", entry.key.device.to_string()),
            ("kind", head.kind.to_string()),
            (
                "cook",
                head.cook.map(|cook| cook.to_string()).unwrap_or_default(),
            ),
            ("body", head.body.get().to_owned()),
        ],
        numbers: [
            ("n", entry.key.n),
            ("stamp", entry.stamp.0),
            ("at", head.at),
        ],
    })
}

fn raw(entry: &Entry) -> &[u8] {
    match &entry.body {
        Body::Raw(raw) => raw,
        Body::Erased => &[],
    }
}

fn automerge(edits: &[Edit]) -> Result<Told> {
    let start = Instant::now();
    let mut doc = AutoCommit::new();
    let list = doc.put_object(ROOT, "entries", ObjType::List)?;
    for (i, edit) in edits.iter().enumerate() {
        let map = doc.insert_object(&list, i, ObjType::Map)?;
        for (name, text) in &edit.texts {
            doc.put(&map, *name, text.as_str())?;
        }
        for (name, number) in &edit.numbers {
            doc.put(&map, *name, *number)?;
        }
        doc.commit();
    }
    let made = start.elapsed();
    let saved = doc.save();
    let loaded = alone(3, || {
        let start = Instant::now();
        assert_eq!(
            read_automerge(&saved)?,
            body_bytes(edits),
            "nothing is lost"
        );
        Ok(start.elapsed())
    })?;
    Ok((made, loaded, saved.len()))
}

fn read_automerge(saved: &[u8]) -> Result<usize> {
    let doc = AutoCommit::load(saved)?;
    let (_, list) = doc.get(ROOT, "entries")?.ok_or("no list")?;
    let mut bytes = 0;
    for i in 0..doc.length(&list) {
        let (_, map) = doc.get(&list, i)?.ok_or("no entry")?;
        let (body, _) = doc.get(&map, "body")?.ok_or("no body")?;
        bytes += body.as_str().ok_or("no text")?.len();
    }
    Ok(bytes)
}

fn loro(edits: &[Edit]) -> Result<Told> {
    let start = Instant::now();
    let doc = LoroDoc::new();
    let list = doc.get_list("entries");
    for edit in edits {
        let map = list.push_container(LoroMap::new())?;
        for (name, text) in &edit.texts {
            map.insert(name, text.as_str())?;
        }
        for (name, number) in &edit.numbers {
            map.insert(name, *number)?;
        }
        doc.commit();
    }
    let made = start.elapsed();
    let saved = doc.export(ExportMode::Snapshot)?;
    let loaded = alone(3, || {
        let start = Instant::now();
        assert_eq!(read_loro(&saved)?, body_bytes(edits), "nothing is lost");
        Ok(start.elapsed())
    })?;
    Ok((made, loaded, saved.len()))
}

fn read_loro(saved: &[u8]) -> Result<usize> {
    let doc = LoroDoc::new();
    doc.import(saved)?;
    let value = doc.get_deep_value();
    let entries = value
        .as_map()
        .and_then(|map| map.get("entries"))
        .and_then(|list| list.as_list())
        .ok_or("no list")?;
    let body = |entry: &loro::LoroValue| Some(entry.as_map()?.get("body")?.as_string()?.len());
    Ok(entries.iter().filter_map(body).sum())
}

fn body_bytes(edits: &[Edit]) -> usize {
    edits.iter().map(|edit| edit.texts[3].1.len()).sum()
}
