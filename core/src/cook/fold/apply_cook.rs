//! One entry applied to a cook.

use super::{Known, fields, fires, pieces};
use crate::{
    cook::{
        Answer, Answered, Cook, Courses, Dish, HandReading, Kept, LastAct, Moved, Note, Pass,
        PitCare, Probe, Reg, RunSheet, Saved, Timed, Trimmings,
    },
    ids::{CookId, PitId},
    log::{EntryKey, Job, Meaning, Payload, Where},
};
use std::collections::BTreeSet;

/// Applies `known`, which comes after all applied before, unless it is among the `hidden`. The first that counts is the
/// beginning of the cook: what comes before it is passed over.
pub fn apply(id: CookId, cook: &mut Option<Cook>, known: &Known, hidden: &BTreeSet<EntryKey>) {
    match (cook.as_mut(), &known.meaning) {
        (Some(cook), _) => apply_to(cook, known, hidden),
        (None, Meaning::Known(Payload::CookStarted(fact)))
            if fact.id == id && !hidden.contains(&known.key) =>
        {
            let mut begun = Cook::started(fact.clone(), known.at, known.by());
            remember(&mut begun, known, &Payload::CookStarted(fact.clone()));
            *cook = Some(begun);
        }
        _ => {}
    }
}

/// Applies `known` to a cook that has begun.
pub fn apply_to(cook: &mut Cook, known: &Known, hidden: &BTreeSet<EntryKey>) {
    if let Meaning::Known(payload) = &known.meaning {
        for job in payload.answers() {
            *cook.ordinals.entry(job).or_default() += 1;
        }
    }
    if hidden.contains(&known.key) {
        return;
    }
    match &known.meaning {
        Meaning::Known(payload) => {
            happen(cook, known, payload);
            remember(cook, known, payload);
        }
        Meaning::MustUpdate => cook.must_update = true,
        Meaning::Skipped => {}
    }
}

fn happen(cook: &mut Cook, known: &Known, payload: &Payload) {
    let when = Timed {
        at: known.at,
        entry: known.key,
    };
    match payload {
        Payload::CookFinished(_) => cook.finished = Some(when),
        Payload::FieldSet(set) => fields::set_in_cook(cook, set, known.by()),
        Payload::PieceAdded(_)
        | Payload::PieceMeant(_)
        | Payload::PieceSplit(_)
        | Payload::PiecesJoined(_)
        | Payload::StageSet(_)
        | Payload::PieceMoved(_)
        | Payload::RubAnswered(_) => pieces::apply(cook, known, payload),
        Payload::Opened(opened) => open(cook, known, opened),
        Payload::Checked(checked) => {
            if let Some(piece) = cook.pieces.get_mut(&checked.piece) {
                piece.checks.push(Pass {
                    when,
                    results: checked.results.clone(),
                });
            }
        }
        Payload::WentPast(past) => {
            if let Some(piece) = cook.pieces.get_mut(&past.piece) {
                piece.went_past.push((when, past.caveat));
            }
        }
        Payload::Read(read) => take_reading(cook, when, read),
        Payload::ProbeBound(bound) => {
            let probe = Probe {
                place: bound.place.clone(),
                thermometer: bound.thermometer,
                since: when,
            };
            let series = (bound.source.clone(), bound.sensor.clone());
            let before = cook.probes.insert(series.clone(), probe);
            cook.probes_before.extend(before.map(|probe| Moved {
                series,
                probe,
                until: when.at,
            }));
        }
        Payload::SeriesSaved(saved) => save(cook, saved),
        Payload::Fed(fed) => care(cook, fed.pit).fed.push(when),
        Payload::VentChanged(vent) => care(cook, vent.pit).vents.push(when),
        Payload::FireSeen(seen) => care(cook, seen.pit).seen.push(when),
        Payload::FedUnits(_)
        | Payload::VentSet(_)
        | Payload::FireTended(_)
        | Payload::WoodSaid(_)
        | Payload::WoodTamed(_)
        | Payload::FireFoundOut(_)
        | Payload::SmokeWatched(_)
        | Payload::FeedPlanned(_) => fires::apply(cook, when, payload),
        Payload::WeatherSaid(said) => cook.weather.push((when, said.said)),
        Payload::Skipped(skipped) => answer(cook, skipped.job, Answered::Skipped, when),
        Payload::PutOff(put_off) => {
            answer(cook, put_off.job, Answered::Later(put_off.minutes), when)
        }
        Payload::Answered(answered) => answer(cook, answered.job, Answered::Seen, when),
        Payload::Noted(noted) => cook.notes.push(Note {
            when,
            about: noted.about,
            text: noted.text.clone(),
        }),
        Payload::DishAdded(added) => {
            let name = Reg::new(added.name.clone(), known.by());
            cook.dishes.insert(
                added.dish,
                Dish {
                    id: added.dish,
                    name,
                    hot: added.hot,
                    ready: None,
                },
            );
        }
        Payload::BatchPlanned(fact) => {
            let batch = fact.batch.clone();
            cook.batches.insert(batch.kind(), Kept { when, batch });
        }
        Payload::TrimmingsKept(fact) => cook.trimmings.push(Trimmings {
            when,
            piece: fact.piece,
            g: fact.g,
            what: fact.what.clone(),
        }),
        Payload::PlanAccepted(fact) => cook.sheets.accept(RunSheet::of(&fact.plan, when)),
        Payload::PlanDropped(_) => cook.sheets.drop_it(),
        Payload::CoursesPlanned(fact) => cook.courses = Courses::of(&fact.courses, when),
        Payload::SheetKept(fact) => cook.sheets.keep(fact, when),
        Payload::DishReady(ready) => {
            if let Some(dish) = cook.dishes.get_mut(&ready.dish) {
                dish.ready = ready.ready.then_some(when);
            }
        }
        _ => {}
    }
}

fn save(cook: &mut Cook, run: &crate::log::SeriesSaved) {
    let (from, to) = (run.from.min(run.to), run.to.max(run.from));
    let series = (run.source.clone(), run.sensor.clone());
    let saved = cook.saved.entry(series).or_insert(Saved { from, to });
    *saved = Saved {
        from: saved.from.min(from),
        to: saved.to.max(to),
    };
}

fn open(cook: &mut Cook, known: &Known, opened: &crate::log::Opened) {
    let when = Timed {
        at: known.at,
        entry: known.key,
    };
    if let Some(pit) = opened.pit {
        care(cook, pit).opened.push(when);
    }
    for id in &opened.wetted {
        if let Some(piece) = cook.pieces.get_mut(id) {
            piece.wetted.push(crate::cook::Wetted {
                when,
                device: known.key.device,
            });
        }
    }
    for id in &opened.turned {
        if let Some(piece) = cook.pieces.get_mut(id) {
            piece.turned.push(when);
        }
    }
    for id in &opened.glazed {
        if let Some(piece) = cook.pieces.get_mut(id) {
            piece.glazed.push(when);
        }
    }
}

fn take_reading(cook: &mut Cook, when: Timed, read: &crate::log::Read) {
    match &read.place {
        Where::Pit { pit } => {
            let care = care(cook, *pit);
            care.seen.push(when);
            care.read.push((when, read.temp, read.thermometer));
        }
        Where::Piece { piece, spot } => {
            if let Some(piece) = cook.pieces.get_mut(piece) {
                let spot = spot.clone();
                piece.read.push(HandReading {
                    when,
                    spot,
                    temp: read.temp,
                    thermometer: read.thermometer,
                });
            }
        }
    }
}

pub(super) fn care(cook: &mut Cook, pit: PitId) -> &mut PitCare {
    cook.pits.entry(pit).or_default()
}

fn answer(cook: &mut Cook, job: Job, how: Answered, when: Timed) {
    cook.answers.push(Answer { job, how, when });
}

/// Entries that one device recorded in one breath are one act: same claim, same instant of its clock.
fn remember(cook: &mut Cook, known: &Known, payload: &Payload) {
    if matches!(
        payload,
        Payload::Voided(_) | Payload::ErasedFor(_) | Payload::SeriesSaved(_)
    ) {
        return;
    }
    let (at, recorded) = (known.at, known.stamp.wall_ms());
    match cook.last_acts.get_mut(&known.key.device) {
        Some(last) if last.at == at && last.recorded == recorded => last.entries.push(known.key),
        _ => {
            let (entries, kind) = (vec![known.key], payload.kind().into());
            let last = LastAct {
                entries,
                at,
                recorded,
                kind,
            };
            cook.last_acts.insert(known.key.device, last);
        }
    }
}
