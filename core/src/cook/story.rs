//! For tests: what several devices record is told line by line and folded as the store would fold it.

use super::{Cook, Crew, Known, fold};
use crate::{
    ids::{CookId, DeviceId, LogId, PieceId, PitId, ThermometerId},
    log::{Does, Draft, Entry, EntryKey, OnSheet, Payload, PlannedJob, Stamp, Subject},
    readings::Tails,
};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Saturday 2026-06-13 06:00 in Chicago (UTC−5).
pub(crate) const SIX: i64 = 1_781_348_400_000;

/// What was recorded so far.
#[derive(Clone, Default)]
pub(crate) struct Story {
    pub(crate) entries: Vec<Entry>,
    pub(crate) tails: Tails,
    last: Stamp,
    n: BTreeMap<DeviceId, i64>,
}

/// What it folds to.
pub(crate) struct Told {
    crew: Crew,
    cooks: BTreeMap<CookId, Cook>,
    tails: Tails,
    pub(crate) ahead: crate::ahead::Forecasts,
    pub(crate) lessons: crate::ahead::Lessons,
    pub(crate) warnings: Vec<super::Warning>,
}

pub(crate) fn device(number: u128) -> DeviceId {
    DeviceId(Uuid::from_u128(0xd000 + number))
}

pub(crate) fn cook(number: u128) -> CookId {
    CookId(Uuid::from_u128(0xc000 + number))
}

pub(crate) fn piece(number: u128) -> PieceId {
    PieceId(Uuid::from_u128(0xa000 + number))
}

pub(crate) fn pit(number: u128) -> PitId {
    PitId(Uuid::from_u128(0xb000 + number))
}

pub(crate) fn thermometer(number: u128) -> ThermometerId {
    ThermometerId(Uuid::from_u128(0xe000 + number))
}

/// A job of a plan for one pair of hands that wakes nobody.
pub(crate) fn planned_job(does: Does, on: Subject, at: i64, until: i64) -> PlannedJob {
    PlannedJob {
        job: OnSheet { does, on, nth: 0 },
        at,
        until,
        hands: 1,
        wakes: false,
        pit: None,
        temp: None,
        wrap: None,
        what: String::new(),
        why: None,
    }
}

impl Story {
    /// `device` records `payload`, claimed for `at`, in `cook` or in none.
    pub(crate) fn say(
        &mut self,
        by: u128,
        at: i64,
        cook: Option<CookId>,
        payload: impl Into<Payload>,
    ) -> EntryKey {
        let draft = Draft {
            cook,
            at,
            payload: payload.into(),
        };
        self.say_raw(by, at, draft.raw())
    }

    /// The same for bytes of any kind.
    pub(crate) fn say_raw(&mut self, by: u128, at: i64, raw: Vec<u8>) -> EntryKey {
        let device = device(by);
        let n = self.n.entry(device).or_default();
        *n += 1;
        self.last = self.last.tick(at.min(SIX + 48 * crate::moment::HOUR));
        let key = EntryKey {
            log: LogId(Uuid::from_u128(1)),
            device,
            n: *n,
        };
        self.entries.push(Entry {
            key,
            stamp: self.last,
            body: crate::log::Body::Raw(raw),
        });
        key
    }

    /// Folds it all.
    pub(crate) fn told(&self) -> Told {
        let mut of_crew = vec![];
        let mut of_cooks: BTreeMap<CookId, Vec<fold::Known>> = BTreeMap::new();
        for entry in &self.entries {
            let crate::log::Body::Raw(raw) = &entry.body else {
                continue;
            };
            let known = fold::Known::of(entry);
            match Entry::head(raw).unwrap().cook {
                Some(cook) => of_cooks.entry(cook).or_default().push(known),
                None => of_crew.push(known),
            }
        }
        let cooks = of_cooks
            .into_iter()
            .filter_map(|(id, mut entries)| Some((id, fold::cook(id, &mut entries)?)));
        Told {
            crew: fold::crew(&mut of_crew),
            cooks: cooks.collect(),
            tails: self.tails.clone(),
            ahead: crate::ahead::Forecasts::new(),
            lessons: crate::ahead::Lessons::default(),
            warnings: vec![],
        }
    }
}

impl Told {
    /// What is known of it on the device `on`.
    pub(crate) fn known(&self, on: u128) -> Known<'_> {
        Known {
            crew: &self.crew,
            cooks: &self.cooks,
            tails: &self.tails,
            ahead: &self.ahead,
            lessons: &self.lessons,
            warnings: &self.warnings,
            device: device(on),
        }
    }
}
