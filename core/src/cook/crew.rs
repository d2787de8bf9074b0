//! What belongs to no cook: pits, thermometers, habits, people and who has the watch.

use super::{Reg, Timed, fold::By};
use crate::{
    fire::FuelUnit,
    ids::{DeviceId, PitId, ThermometerId},
    log::{Band, EntryKey, PitAdded, PitKind, Stamp, Subject},
    moment::HOUR,
    units::Mk,
};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// A pit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Pit {
    /// Its id.
    pub id: PitId,
    /// What it is called.
    pub name: Reg<String>,
    /// What it is.
    pub kind: Reg<PitKind>,
    /// Square centimeters of grate.
    pub grate_cm2: Reg<Option<i64>>,
    /// How many minutes it may be left alone.
    pub alone_minutes: Reg<Option<i64>>,
    /// What it is held between.
    pub band: Reg<Option<Band>>,
    /// What one of a unit of fuel weighs there, grams, where somebody weighed one.
    pub unit_g: BTreeMap<FuelUnit, i64>,
}

/// A thermometer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Thermometer {
    /// Its id.
    pub id: ThermometerId,
    /// What it is called.
    pub name: Reg<String>,
    /// Its checks.
    pub checks: Vec<ThermometerCheck>,
}

/// A thermometer was held in ice or boiling water.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ThermometerCheck {
    /// When.
    pub when: Timed,
    /// What it ought to have read.
    pub expected: Mk,
    /// What it read.
    pub read: Mk,
}

/// A sleep lasts at most so long: what another device claims beyond it counts as this, and no call waits for longer.
const SLEEP_MAX_MS: i64 = 24 * HOUR;

/// A watch is for one night: who took it longer ago has it no more, or a phone of last month's cook would keep all
/// others silent. 24 h: common practice, no source.
pub const WATCH_MAX_MS: i64 = 24 * HOUR;

/// Who holds a device.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Person {
    /// What the device is called.
    pub name: Option<Reg<String>>,
    /// How often the person went to sleep, what was taken back counted too: it only rises, and numbers the wakings.
    pub nights: i64,
    /// When sleep began and until when it was meant to last.
    pub slept: Vec<(Timed, i64)>,
    /// When the sleeper was up.
    pub woke: Vec<Timed>,
}

/// Somebody took the watch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct WatchTurn {
    /// When.
    pub when: Timed,
    /// Who.
    pub device: DeviceId,
    /// One line on the pit's state.
    pub note: String,
}

/// Two set one field without knowing of each other, and one was overruled.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Overruling {
    /// What the notice is called when it is dismissed.
    pub notice: String,
    /// Of what.
    pub of: Subject,
    /// Which field, as its kind is named in the log.
    pub field: String,
    /// Who lost.
    pub loser: DeviceId,
    /// Who won.
    pub winner: DeviceId,
}

/// What belongs to no cook.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Crew {
    /// The pits.
    pub pits: BTreeMap<PitId, Pit>,
    /// The thermometers.
    pub thermometers: BTreeMap<ThermometerId, Thermometer>,
    /// The people, by device.
    pub people: BTreeMap<DeviceId, Person>,
    /// Turns of the watch.
    pub watch: Vec<WatchTurn>,
    /// Default minutes between mops; none = the trade's.
    pub mop_minutes: Option<Reg<i64>>,
    /// Default minutes between spritzes.
    pub spritz_minutes: Option<Reg<i64>>,
    /// Meters above the sea.
    pub altitude_m: Option<Reg<i64>>,
    /// Whether it cooks for the public.
    pub for_public: Option<Reg<bool>>,
    /// Notices that were read.
    pub dismissed: BTreeSet<String>,
    /// Entries taken back.
    pub hidden: BTreeSet<EntryKey>,
    /// Whether an entry must be understood that this version does not know.
    pub must_update: bool,
    /// How many entries it was folded from.
    pub entries: i64,
}

impl Pit {
    /// What one of a unit weighs there, grams: as weighed, else as is common.
    pub fn unit_grams(&self, unit: FuelUnit) -> i64 {
        self.unit_g.get(&unit).copied().unwrap_or(unit.usual_g())
    }

    /// A pit as it was added.
    pub fn added(fact: PitAdded, by: By) -> Self {
        Self {
            id: fact.pit,
            name: Reg::new(fact.name, by),
            kind: Reg::new(fact.kind, by),
            grate_cm2: Reg::new(fact.grate_cm2, by),
            alone_minutes: Reg::new(fact.alone_minutes, by),
            band: Reg::new(None, by),
            unit_g: BTreeMap::new(),
        }
    }

    /// What its fields lost to a setting that did not know of them.
    pub fn overrulings(&self) -> Vec<Overruling> {
        let of = Subject::Pit(self.id);
        [
            overruling(of, "name", &self.name),
            overruling(of, "pit_kind", &self.kind),
            overruling(of, "grate_cm2", &self.grate_cm2),
            overruling(of, "alone_minutes", &self.alone_minutes),
            overruling(of, "band", &self.band),
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}

/// The overruling that a field holds, if one.
pub(crate) fn overruling<T>(of: Subject, field: &str, reg: &Reg<T>) -> Option<Overruling> {
    let (_, loser) = reg.overruled.as_ref()?;
    let Stamp(stamp) = reg.stamp;
    Some(Overruling {
        notice: format!("overruled/{field}/{stamp}/{}", reg.device),
        of,
        field: field.into(),
        loser: *loser,
        winner: reg.device,
    })
}

fn until_of(slept: &Timed, until: i64) -> i64 {
    until.clamp(slept.at, slept.at.saturating_add(SLEEP_MAX_MS))
}

impl Person {
    /// Until when the person sleeps, if asleep at `now`: the last sleep by claimed time that no waking followed.
    pub fn asleep_until(&self, now: i64) -> Option<i64> {
        self.meant_to_wake(now).filter(|until| *until > now)
    }

    /// When the person meant to be up, if nobody said yet that they are.
    pub fn meant_to_wake(&self, now: i64) -> Option<i64> {
        let (slept, until) = self
            .slept
            .iter()
            .filter(|(when, _)| when.at <= now)
            .max_by_key(|(when, _)| when.at)?;
        let up = self
            .woke
            .iter()
            .any(|when| when.at >= slept.at && when.at <= now);
        (!up).then_some(until_of(slept, *until))
    }

    /// The spans that the person slept or means to sleep, cut where the person was up, in order of time.
    pub fn sleeps(&self) -> Vec<(i64, i64)> {
        let mut spans: Vec<(i64, i64)> = self
            .slept
            .iter()
            .map(|(when, until)| {
                let up = self
                    .woke
                    .iter()
                    .map(|w| w.at)
                    .filter(|at| *at >= when.at)
                    .min();
                let until = until_of(when, *until);
                (when.at, up.map_or(until, |at| at.min(until)))
            })
            .filter(|(from, to)| from < to)
            .collect();
        spans.sort_unstable();
        spans
    }
}

impl Crew {
    /// Who has the watch at `now`: the last who took it, by claimed time, not longer than `WATCH_MAX_MS` ago.
    pub fn on_watch(&self, now: i64) -> Option<&WatchTurn> {
        let since = now.saturating_sub(WATCH_MAX_MS);
        self.watch
            .iter()
            .filter(|turn| turn.when.at <= now)
            .max_by_key(|turn| turn.when.at)
            .filter(|turn| turn.when.at > since)
    }
}
