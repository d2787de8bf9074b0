//! Setting one field of a thing. Start at [`set`].
//!
//! Each thing takes only its own fields, as the fold reads them: an entry that nothing would read is refused here.

use super::{Context, Decision, ranges};
use crate::{
    cook::Piece,
    error::Refused,
    ids::CookId,
    log::{Draft, Field, FieldSet, Stamp, Subject},
    safety::minimum,
    words::Arg,
};

/// Sets one field; `saw` is passed on, so that the fold can say who was overruled.
pub(super) fn set(
    context: &mut Context<'_>,
    of: Subject,
    to: &Field,
    saw: Option<Stamp>,
) -> Result<Decision, Refused> {
    let (cook, to, said) = checked(context, of, to)?;
    let draft = |to, saw| Draft {
        cook,
        at: context.now(),
        payload: FieldSet { of, to, saw }.into(),
    };
    let mut drafts = vec![draft(to.clone(), saw)];
    if let Some(seen) = pull_point_falls(context, of, &to) {
        drafts.push(draft(Field::PullAt(None), Some(seen)));
    }
    Ok(Decision::of(drafts, said))
}

/// The cook of the thing, the field once checked, and what to say.
fn checked(
    context: &Context<'_>,
    of: Subject,
    to: &Field,
) -> Result<(Option<CookId>, Field, String), Refused> {
    let (cook, name, field) = match of {
        Subject::Crew => {
            let saved = context.say().text("act-habit-saved");
            return Ok((None, of_crew(context, to)?, saved));
        }
        Subject::Pit(id) => (None, context.pit_name(id)?, of_pit(context, to)?),
        Subject::Thermometer(id) => {
            let thermometer = context.thermometer(id)?;
            (None, &*thermometer.name.value, name_only(context, to)?)
        }
        Subject::Cook(id) => {
            let cook = context.cook(id)?;
            (Some(id), &*cook.name.value, of_cook(context, to)?)
        }
        Subject::Piece(id) => {
            let (cook, piece) = context.meat(id)?;
            (
                Some(cook.id),
                &*piece.name.value,
                of_piece(context, piece, to)?,
            )
        }
        Subject::Dish(id) => {
            let (cook, dish) = context.dish_anywhere(id)?;
            (Some(cook.id), &*dish.name.value, name_only(context, to)?)
        }
    };
    if let (Subject::Piece(_) | Subject::Dish(_), Field::Name(new)) = (of, &field) {
        context.food_name(new)?;
    }
    let name = match &field {
        Field::Name(new) => new,
        _ => name,
    };
    let said = context
        .say()
        .with("act-saved", &[("name", Arg::Text(name))]);
    Ok((cook, field, said))
}

fn of_crew(context: &Context<'_>, to: &Field) -> Result<Field, Refused> {
    match to {
        Field::MopMinutes(minutes) | Field::SpritzMinutes(minutes) => {
            context.whole(*minutes, &ranges::EVERY_MINUTES)?;
        }
        Field::AltitudeM(meters) => {
            context.whole(*meters, &ranges::ALTITUDE_M)?;
        }
        Field::ForPublic(_) => {}
        _ => return Err(not_its_own(context)),
    }
    Ok(to.clone())
}

fn of_pit(context: &Context<'_>, to: &Field) -> Result<Field, Refused> {
    match to {
        Field::PitKind(_) => {}
        Field::GrateCm2(grate) => {
            context.maybe(*grate, &ranges::GRATE_CM2)?;
        }
        Field::AloneMinutes(minutes) => {
            context.maybe(*minutes, &ranges::ALONE_MINUTES)?;
        }
        Field::Band(band) => {
            context.band(*band)?;
        }
        _ => return name_only(context, to),
    }
    Ok(to.clone())
}

fn of_cook(context: &Context<'_>, to: &Field) -> Result<Field, Refused> {
    match to {
        Field::Serve(serve) => {
            serve
                .as_ref()
                .map(|serve| context.serving(serve))
                .transpose()?;
        }
        Field::People(people) => {
            context.maybe(*people, &ranges::PEOPLE)?;
        }
        Field::HotAir(_) => {}
        _ => return name_only(context, to),
    }
    Ok(to.clone())
}

fn of_piece(context: &Context<'_>, piece: &Piece, to: &Field) -> Result<Field, Refused> {
    match to {
        Field::Form(_) => {}
        Field::WeightG(grams) => {
            context.weight(*grams)?;
        }
        Field::Cadence(cadence) => {
            context.cadence(*cadence)?;
        }
        Field::PullAt(temp) => {
            context.pull_at(piece.cut, piece.form.value, *temp)?;
        }
        _ => return name_only(context, to),
    }
    Ok(to.clone())
}

fn name_only(context: &Context<'_>, to: &Field) -> Result<Field, Refused> {
    match to {
        Field::Name(name) => Ok(Field::Name(context.name(name)?)),
        _ => Err(not_its_own(context)),
    }
}

fn not_its_own(context: &Context<'_>) -> Refused {
    context.say().refuse("error-field-not-its-own", &[]).into()
}

/// The stamp of a pull point that a new form leaves below the published minimum: it goes back to the cut's own.
fn pull_point_falls(context: &Context<'_>, of: Subject, to: &Field) -> Option<Stamp> {
    let (Subject::Piece(id), Field::Form(form)) = (of, to) else {
        return None;
    };
    let (_, piece) = context.known.piece(id)?;
    let least = minimum(piece.cut, *form).temp;
    let pull = &piece.pull_at;
    pull.value
        .is_some_and(|temp| temp < least)
        .then_some(pull.stamp)
}
