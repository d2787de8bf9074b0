//! Entries that no device of this version writes: from a newer version, from a broken one, from nobody.

use super::{picture::Picture, rng::Rng};
use slowbend_core::{
    ids::{CookId, DeviceId, LogId},
    log::{Body, Draft, Entry, EntryKey, Stamp, Voided},
};
use uuid::Uuid;

/// A device outside the world that writes odd entries, each with a number of its own.
#[derive(Clone, Debug)]
pub struct Stranger {
    log: LogId,
    device: DeviceId,
    n: i64,
}

impl Default for Stranger {
    fn default() -> Self {
        Self {
            log: LogId(Uuid::from_u128(0x109)),
            device: DeviceId(Uuid::from_u128(0x0dd)),
            n: 0,
        }
    }
}

/// An odd entry, and whether it must be taken in.
#[derive(Clone, Debug)]
pub struct Odd {
    /// The entry.
    pub entry: Entry,
    /// Whether it is an entry at all.
    pub sound: bool,
    /// What is odd about it.
    pub what: &'static str,
}

impl Stranger {
    /// Something odd, written at `true_ms`.
    pub fn write(
        &mut self,
        picture: &Picture,
        keys: &[EntryKey],
        true_ms: i64,
        rng: &mut Rng,
    ) -> Odd {
        let cooks: Vec<CookId> = picture.cooks.keys().copied().collect();
        let cook = rng.pick(&cooks).copied().filter(|_| rng.chance(70));
        let stamp = Stamp::default().tick(true_ms - rng.from_to(0, 3_600_000));
        match rng.below(8) {
            0 => self.sound("an unknown kind", stamp, unknown(cook, true_ms, false)),
            1 => self.sound(
                "an unknown kind that must be understood",
                stamp,
                unknown(cook, true_ms, true),
            ),
            2 => self.sound(
                "a known kind of another shape",
                stamp,
                misshapen(cook, true_ms),
            ),
            3 => self.sound(
                "a void of what is not there yet",
                stamp,
                void(cook, ahead(keys, rng), true_ms),
            ),
            4 => self.sound(
                "an unknown kind stamped 2099",
                Stamp::default().tick(4_086_000_000_000),
                unknown(cook, true_ms, false),
            ),
            5 => self.unsound(
                "bytes that are no JSON",
                stamp,
                b"{\"kind\":\"noted".to_vec(),
            ),
            6 => self.unsound(
                "a stamp of nothing",
                Stamp(0),
                unknown(cook, true_ms, false),
            ),
            _ => self.unsound("more bytes than any entry has", stamp, vec![b' '; 300_000]),
        }
    }

    fn sound(&mut self, what: &'static str, stamp: Stamp, raw: Vec<u8>) -> Odd {
        self.n += 1;
        Odd {
            entry: self.entry(self.n, stamp, raw),
            sound: true,
            what,
        }
    }

    fn unsound(&self, what: &'static str, stamp: Stamp, raw: Vec<u8>) -> Odd {
        Odd {
            entry: self.entry(self.n + 1, stamp, raw),
            sound: false,
            what,
        }
    }

    fn entry(&self, n: i64, stamp: Stamp, raw: Vec<u8>) -> Entry {
        let key = EntryKey {
            log: self.log,
            device: self.device,
            n,
        };
        Entry {
            key,
            stamp,
            body: Body::Raw(raw),
        }
    }
}

/// The next entry of a device that is known: a void of it comes before it does.
fn ahead(keys: &[EntryKey], rng: &mut Rng) -> Vec<EntryKey> {
    let of = rng.pick(keys).copied();
    let next = |of: EntryKey| {
        let last = keys
            .iter()
            .filter(|key| (key.log, key.device) == (of.log, of.device))
            .map(|key| key.n)
            .max();
        EntryKey {
            n: last.unwrap_or(0) + 1,
            ..of
        }
    };
    of.map(next).into_iter().collect()
}

fn unknown(cook: Option<CookId>, at: i64, must_understand: bool) -> Vec<u8> {
    let cook = serde_json::to_string(&cook).expect("an id is JSON");
    format!(r#"{{ "kind": "smoke_signal", "v": 3, "must_understand": {must_understand}, "cook": {cook}, "at": {at}, "body": {{"puffs": 2}} }}"#).into_bytes()
}

fn misshapen(cook: Option<CookId>, at: i64) -> Vec<u8> {
    let cook = serde_json::to_string(&cook).expect("an id is JSON");
    format!(r#"{{"kind":"checked","v":1,"must_understand":true,"cook":{cook},"at":{at},"body":{{"piece":7}}}}"#).into_bytes()
}

fn void(cook: Option<CookId>, targets: Vec<EntryKey>, at: i64) -> Vec<u8> {
    Draft {
        cook,
        at,
        payload: Voided { targets }.into(),
    }
    .raw()
}
