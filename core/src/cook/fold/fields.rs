//! Fields that are set one by one.

use super::By;
use crate::{
    cook::{Cook, Crew, Reg},
    log::{Field, FieldSet, Subject},
};

/// Sets a field of a cook, a meat or a dish.
pub fn set_in_cook(cook: &mut Cook, set: &FieldSet, by: By) {
    let saw = set.saw;
    match (set.of, &set.to) {
        (Subject::Cook(id), to) if id == cook.id => match to {
            Field::Name(name) => cook.name.set(name.clone(), by, saw),
            Field::Serve(serve) => cook.serve.set(serve.clone(), by, saw),
            Field::People(people) => cook.people.set(*people, by, saw),
            Field::HotAir(hot) => cook.hot_air.set(*hot, by, saw),
            _ => {}
        },
        (Subject::Piece(id), to) => {
            let Some(piece) = cook.pieces.get_mut(&id) else {
                return;
            };
            match to {
                Field::Name(name) => piece.name.set(name.clone(), by, saw),
                Field::WeightG(weight) => piece.weight_g.set(*weight, by, saw),
                Field::Cadence(cadence) => piece.cadence.set(*cadence, by, saw),
                Field::Form(form) => piece.form.set(*form, by, saw),
                Field::PullAt(temp) => piece.pull_at.set(*temp, by, saw),
                _ => {}
            }
        }
        (Subject::Dish(id), Field::Name(name)) => {
            if let Some(dish) = cook.dishes.get_mut(&id) {
                dish.name.set(name.clone(), by, saw);
            }
        }
        _ => {}
    }
}

/// Sets a field of a pit, a thermometer or the crew.
pub fn set_in_crew(crew: &mut Crew, set: &FieldSet, by: By) {
    let saw = set.saw;
    match (set.of, &set.to) {
        (Subject::Pit(id), to) => {
            let Some(pit) = crew.pits.get_mut(&id) else {
                return;
            };
            match to {
                Field::Name(name) => pit.name.set(name.clone(), by, saw),
                Field::PitKind(kind) => pit.kind.set(*kind, by, saw),
                Field::GrateCm2(grate) => pit.grate_cm2.set(*grate, by, saw),
                Field::AloneMinutes(minutes) => pit.alone_minutes.set(*minutes, by, saw),
                Field::Band(band) => pit.band.set(Some(*band), by, saw),
                _ => {}
            }
        }
        (Subject::Thermometer(id), Field::Name(name)) => {
            if let Some(thermometer) = crew.thermometers.get_mut(&id) {
                thermometer.name.set(name.clone(), by, saw);
            }
        }
        (Subject::Crew, Field::MopMinutes(minutes)) => {
            set_or_new(&mut crew.mop_minutes, *minutes, by, set)
        }
        (Subject::Crew, Field::SpritzMinutes(minutes)) => {
            set_or_new(&mut crew.spritz_minutes, *minutes, by, set)
        }
        (Subject::Crew, Field::AltitudeM(meters)) => {
            set_or_new(&mut crew.altitude_m, *meters, by, set)
        }
        (Subject::Crew, Field::ForPublic(public)) => {
            set_or_new(&mut crew.for_public, *public, by, set)
        }
        _ => {}
    }
}

fn set_or_new<T: Clone + PartialEq>(field: &mut Option<Reg<T>>, value: T, by: By, set: &FieldSet) {
    match field {
        Some(reg) => reg.set(value, by, set.saw),
        None => *field = Some(Reg::new(value, by)),
    }
}
