//! Exchanging entries with other devices, whatever carries them; and writing all of them out.

use super::Slowbend;
use crate::{
    error::Trouble,
    ids::{CookId, DeviceId, LogId},
    log::{Body, CrewJoined, Draft, Entry, EntryKey, Payload, Stamp},
    moment::Moment,
    store::{Absorbed, Chunks},
};
use serde::{Deserialize, Serialize};
use std::{collections::BTreeMap, io::Write};

/// The first line of an export.
pub const EXPORT_HEADER: &str = r#"{"slowbend":"entries","v":1}"#;

/// One line of an export: an entry with its bytes as text. `entry` is absent where it was erased.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ExportLine {
    /// The entry's name.
    pub key: EntryKey,
    /// Its stamp.
    pub stamp: Stamp,
    /// Its bytes, which are JSON.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub entry: Option<String>,
}

impl Slowbend {
    /// Takes entries of other devices, in any order, split, repeated: all in one transaction.
    ///
    /// # Errors
    /// The disk's trouble, and then nothing was taken.
    pub fn absorb(&mut self, entries: &[Entry], moment: &Moment) -> Result<Absorbed, Trouble> {
        let taken = self.take_in(entries, moment);
        self.heed(taken)
    }

    fn take_in(&mut self, entries: &[Entry], moment: &Moment) -> Result<Absorbed, Trouble> {
        self.notice_clock(moment);
        self.flush_if_due(moment)?;
        let told = self.store()?.absorb(entries)?;
        self.stamp = self.stamp.seen(told.stamp);
        self.next_n = self.store()?.next_n()?;
        for group in &told.touched {
            self.load((*group).into())?;
            self.ahead.learning.stir();
        }
        let cooks: Vec<CookId> = told.touched.iter().copied().flatten().collect();
        self.refresh_lines(&cooks)?;
        if told.forked > 0 {
            let entries = self.store()?.forks()?;
            self.warnings
                .retain(|warning| !matches!(warning, crate::cook::Warning::Forked { .. }));
            self.warn(crate::cook::Warning::Forked { entries });
        }
        self.notice_stamp(moment);
        self.drop_past();
        Ok(told)
    }

    /// The entries that somebody lacks who has, of each log and device, those up to the number in `have`.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn entries_after(
        &mut self,
        have: &[(LogId, DeviceId, i64)],
    ) -> Result<Vec<Entry>, Trouble> {
        let have: BTreeMap<(LogId, DeviceId), i64> = have
            .iter()
            .map(|(log, device, n)| ((*log, *device), *n))
            .collect();
        let all = self
            .store()?
            .entries_after(|log, device| have.get(&(log, device)).copied().unwrap_or(0));
        self.heed(all.map_err(Trouble::from))
    }

    /// Writes in the crew's log from now on; what was written before stays where it is, and counts.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn join_crew(&mut self, log: LogId, moment: &Moment) -> Result<(), Trouble> {
        self.store()?.set_log(log)?;
        self.next_n = self.store()?.next_n()?;
        let draft = Draft {
            cook: None,
            at: moment.utc_ms,
            payload: Payload::CrewJoined(CrewJoined {}),
        };
        let stamp = self.stamp.tick(moment.utc_ms);
        Ok(self.write(&[draft], &[stamp], None, Chunks::default())?)
    }

    /// Writes all entries as lines of JSON, a header first; answers with how many.
    ///
    /// # Errors
    /// The disk's trouble, reading or writing.
    pub fn export(&mut self, sink: &mut dyn Write) -> Result<u64, Trouble> {
        let entries = self.entries_after(&[])?;
        let lines = entries.iter().map(line);
        let text = std::iter::once(EXPORT_HEADER.to_owned()).chain(lines);
        for line in text {
            writeln!(sink, "{line}")
                .map_err(|error| Trouble::from(crate::store::StoreTrouble::from(error)))?;
        }
        Ok(entries.len() as u64)
    }

    /// Lets past cooks go that absorbing loaded.
    fn drop_past(&mut self) {
        let past: Vec<_> = self
            .cooks
            .values()
            .filter(|cook| !cook.is_open())
            .map(|cook| cook.id)
            .collect();
        for id in past {
            self.let_go(id);
        }
    }
}

fn line(entry: &Entry) -> String {
    let text = match &entry.body {
        Body::Raw(raw) => Some(String::from_utf8_lossy(raw).into_owned()),
        Body::Erased => None,
    };
    serde_json::to_string(&ExportLine {
        key: entry.key,
        stamp: entry.stamp,
        entry: text,
    })
    .expect("a line is a plain record, which JSON always takes")
}
