//! What is done at a fire, applied to a cook.

use super::apply_cook::care;
use crate::{
    cook::{Cook, Timed},
    log::Payload,
};

/// Applies what hands did at a fire; anything else is passed over.
pub(super) fn apply(cook: &mut Cook, when: Timed, payload: &Payload) {
    match payload {
        Payload::FedUnits(fed) => {
            let care = care(cook, fed.pit);
            care.fed.push(when);
            care.fuel.push((when, fed.unit, fed.quarters));
        }
        Payload::VentSet(vent) => {
            let care = care(cook, vent.pit);
            care.vents.push(when);
            care.set.push((when, vent.vent, vent.quarters));
        }
        Payload::FireTended(tended) => {
            let care = care(cook, tended.pit);
            care.seen.push(when);
            care.did.push((when, tended.did));
        }
        Payload::SmokeWatched(watched) => {
            let care = care(cook, watched.pit);
            care.seen.push(when);
            care.smoke.push((when, watched.seen));
        }
        Payload::WoodSaid(said) => care(cook, said.pit).wood.push((when, said.wood)),
        Payload::FireFoundOut(found) => {
            care(cook, found.pit).out.push((when, found.burned_until));
        }
        Payload::WoodTamed(tamed) => care(cook, tamed.pit).tamed.push((when, tamed.wood)),
        Payload::FeedPlanned(plan) => care(cook, plan.pit).planned.push((when, plan.due)),
        _ => {}
    }
}
