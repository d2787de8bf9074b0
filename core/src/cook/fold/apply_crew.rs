//! One entry applied to what belongs to no cook.

use super::{Known, fields};
use crate::{
    cook::{Crew, Person, Pit, Reg, Thermometer, ThermometerCheck, Timed, WatchTurn},
    log::{EntryKey, Meaning, Payload},
};
use std::collections::BTreeSet;

/// Applies `known`, which comes after all applied before, unless it is among the `hidden`.
pub fn apply(crew: &mut Crew, known: &Known, hidden: &BTreeSet<EntryKey>) {
    if let Meaning::Known(Payload::Slept(_)) = &known.meaning {
        person(crew, known).nights += 1;
    }
    if hidden.contains(&known.key) {
        return;
    }
    match &known.meaning {
        Meaning::Known(payload) => happen(crew, known, payload),
        Meaning::MustUpdate => crew.must_update = true,
        Meaning::Skipped => {}
    }
}

fn happen(crew: &mut Crew, known: &Known, payload: &Payload) {
    let when = Timed {
        at: known.at,
        entry: known.key,
    };
    match payload {
        Payload::PitAdded(fact) => {
            crew.pits
                .entry(fact.pit)
                .or_insert_with(|| Pit::added(fact.clone(), known.by()));
        }
        Payload::UnitWeighed(fact) => {
            if let Some(pit) = crew.pits.get_mut(&fact.pit) {
                pit.unit_g.insert(fact.unit, fact.grams);
            }
        }
        Payload::ThermometerAdded(fact) => {
            crew.thermometers
                .entry(fact.thermometer)
                .or_insert_with(|| Thermometer {
                    id: fact.thermometer,
                    name: Reg::new(fact.name.clone(), known.by()),
                    checks: vec![],
                });
        }
        Payload::ThermometerChecked(fact) => {
            if let Some(thermometer) = crew.thermometers.get_mut(&fact.thermometer) {
                thermometer.checks.push(ThermometerCheck {
                    when,
                    expected: fact.expected,
                    read: fact.read,
                });
            }
        }
        Payload::FieldSet(set) => fields::set_in_crew(crew, set, known.by()),
        Payload::Dismissed(fact) => {
            crew.dismissed.insert(fact.notice.clone());
        }
        Payload::DeviceNamed(fact) => {
            let person = person(crew, known);
            match &mut person.name {
                Some(name) => name.set(fact.name.clone(), known.by(), None),
                None => person.name = Some(Reg::new(fact.name.clone(), known.by())),
            }
        }
        Payload::Slept(fact) => person(crew, known).slept.push((when, fact.until)),
        Payload::Woke(_) => person(crew, known).woke.push(when),
        Payload::WatchTaken(fact) => {
            crew.watch.push(WatchTurn {
                when,
                device: known.key.device,
                note: fact.note.clone(),
            });
        }
        _ => {}
    }
}

fn person<'a>(crew: &'a mut Crew, known: &Known) -> &'a mut Person {
    crew.people.entry(known.key.device).or_default()
}
