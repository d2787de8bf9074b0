//! What is not meat.

use super::{Context, Decision};
use crate::{
    error::Refused,
    ids::{CookId, DishId},
    log::{DishAdded, DishReady, Subject},
    words::Arg,
};

/// Adds a dish.
pub(super) fn add(
    context: &mut Context<'_>,
    cook: CookId,
    name: &str,
    hot: bool,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let name = context.food_name(name)?;
    let said = context
        .say()
        .with("act-added", &[("name", Arg::Text(&name))]);
    let dish = DishId(context.new_id());
    let made = vec![Subject::Dish(dish)];
    let fact = DishAdded { dish, name, hot };
    Ok(Decision::one(Some(cook), context.now(), fact, said).making(made))
}

/// A dish is ready, or not after all.
pub(super) fn ready(
    context: &mut Context<'_>,
    cook: CookId,
    dish: DishId,
    ready: bool,
) -> Result<Decision, Refused> {
    let name = &context.dish(cook, dish)?.name.value;
    let args = [("name", Arg::Text(name))];
    let said = if ready {
        context.say().with("act-dish-ready", &args)
    } else {
        context.say().with("act-dish-not-ready", &args)
    };
    let fact = DishReady { dish, ready };
    Ok(Decision::one(Some(cook), context.now(), fact, said))
}
