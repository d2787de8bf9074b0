//! What is not meat, and where meat is held. All figures are common practice, no source.

use super::household::Names;
use crate::{
    cook::Cook,
    ids::DishId,
    log::PlanAsked,
    plan::{Dish, DishHeat, Keeps, Place, Span},
    units::Mk,
    words::{Words, key},
};

/// Burners of a kitchen stove.
pub(super) const BURNERS: i64 = 4;
/// How long a dish is worked on, minutes.
const HANDS_MIN: i64 = 15;
/// How long a hot dish is on the fire, minutes.
const COOKS_MIN: i64 = 45;
/// A hot dish is best within so long, and never stands longer: the two hours of USDA's rule.
const HOT: Span = Span {
    least_min: 30,
    most_min: 120,
};
/// A cold dish may be made so long before, in the refrigerator.
const COLD: Span = Span {
    least_min: 240,
    most_min: 1_440,
};
/// What a large cooler, and a kitchen oven, take of meat as bought: grams.
const COOLER_G: i64 = 20_000;
const OVEN_G: i64 = 12_000;
/// What a cooler with towels loses of the difference to the air around in an hour, in thousandths. From memory.
const COOLER_LOSES: i64 = 120;
/// How hot an oven holds meat, °F: above the 140 °F that hot food is held at (USDA).
const OVEN_F: i64 = 150;
/// The air around, °F.
const AROUND_F: i64 = 70;

/// The dishes that are not ready yet.
pub(super) fn dishes(cook: &Cook, names: &mut Names) -> Vec<(DishId, Dish)> {
    let open = cook.dishes.values().filter(|dish| dish.ready.is_none());
    let planned = open.map(|dish| {
        let hot = Dish {
            name: names.own(&dish.name.value),
            serving: 0,
            hands_min: HANDS_MIN,
            cook_min: COOKS_MIN,
            heat: DishHeat::Burner,
            keeps: HOT,
            reheat_min: 0,
        };
        let made = match dish.hot {
            true => hot,
            false => Dish {
                cook_min: HANDS_MIN,
                heat: DishHeat::None,
                keeps: COLD,
                ..hot
            },
        };
        (dish.id, made)
    });
    planned.collect()
}

/// Where meat is held, as far as it was said.
pub(super) fn places(say: &Words<'_>, asked: &PlanAsked) -> Vec<Place> {
    let cooler = asked.cooler.then(|| Place {
        name: say.text(COOLER),
        room_g: COOLER_G,
        keeps: Keeps::Insulated {
            loses_permille_per_h: COOLER_LOSES,
            around_mk: Mk::from_f(AROUND_F),
        },
    });
    let oven = asked.oven.then(|| Place {
        name: say.text(OVEN),
        room_g: OVEN_G,
        keeps: Keeps::Heated {
            at_mk: Mk::from_f(OVEN_F),
        },
    });
    cooler.into_iter().chain(oven).collect()
}

/// What the places are called: entries hold these, so that every reader is told in their own language.
pub(super) const COOLER: &str = key("plan-place-cooler");
/// See [`COOLER`].
pub(super) const OVEN: &str = key("plan-place-oven");
