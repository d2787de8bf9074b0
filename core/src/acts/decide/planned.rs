//! A cook that begins with its plan: meats with what is meant for them, dishes and notes. Start at [`start`].

use super::{Context, Decision, cooks, pit_heat, rest_minutes};
use crate::{
    acts::{NewDish, NewMeat, PlannedMeat},
    card::{DISHES_MAX, NOTES_MAX},
    error::Refused,
    ids::{CookId, DishId, PieceId},
    log::{DishAdded, Draft, Field, FieldSet, Meant, Noted, Payload, PieceMeant, Serve, Subject},
    words::Arg,
};

/// What a cook is for.
pub(super) struct Occasion<'o> {
    pub name: &'o str,
    pub serve: Option<&'o Serve>,
    pub people: Option<i64>,
}

/// Begins the cook: what [`cooks::start`] records, then what is meant for its meats, its dishes and its notes.
pub(super) fn start(
    context: &mut Context<'_>,
    occasion: &Occasion<'_>,
    meats: &[PlannedMeat],
    dishes: &[NewDish],
    notes: &[String],
) -> Result<Decision, Refused> {
    few(context, dishes.len(), DISHES_MAX)?;
    // One more than a card holds: who wrote it.
    few(context, notes.len(), NOTES_MAX + 1)?;
    let plain: Vec<NewMeat> = meats.iter().map(|planned| planned.meat.clone()).collect();
    let Occasion {
        name,
        serve,
        people,
    } = *occasion;
    let mut begun = cooks::start(context, name, serve, people, &plain, false)?;
    let Some(Subject::Cook(cook)) = begun.made.first().copied() else {
        return Ok(begun);
    };
    let pieces: Vec<PieceId> = begun.made.iter().filter_map(piece).collect();
    for (planned, id) in meats.iter().zip(pieces) {
        let drafts = meant(context, cook, id, planned)?;
        begun.drafts.extend(drafts);
    }
    for dish in dishes {
        let id = DishId(context.new_id());
        let (name, hot) = (context.food_name(&dish.name)?, dish.hot);
        let added = DishAdded {
            dish: id,
            name,
            hot,
        };
        begun.drafts.push(draft(context, cook, added));
        begun.made.push(Subject::Dish(id));
    }
    for text in notes {
        let (about, text) = (Subject::Cook(cook), context.note_text(text)?);
        begun
            .drafts
            .push(draft(context, cook, Noted { about, text }));
    }
    Ok(begun)
}

fn piece(made: &Subject) -> Option<PieceId> {
    match made {
        Subject::Piece(id) => Some(*id),
        _ => None,
    }
}

fn draft(context: &Context<'_>, cook: CookId, fact: impl Into<Payload>) -> Draft {
    Draft {
        cook: Some(cook),
        at: context.now(),
        payload: fact.into(),
    }
}

/// What is meant for one meat; nothing where nothing is.
fn meant(
    context: &Context<'_>,
    cook: CookId,
    id: PieceId,
    planned: &PlannedMeat,
) -> Result<Vec<Draft>, Refused> {
    let (say, cut, form) = (context.say(), planned.meat.cut, planned.meat.form);
    let meant = Meant {
        wrap: planned.wrap,
        rest_min: rest_minutes(&say, cut, form, planned.rest_min)?,
        pit: planned
            .pit_heat
            .map(|heat| pit_heat(&say, heat))
            .transpose()?,
    };
    let pull = context.pull_at(cut, form, planned.pull_at)?;
    let pull = pull.map(|temp| FieldSet {
        of: Subject::Piece(id),
        to: Field::PullAt(Some(temp)),
        saw: None,
    });
    let mut drafts: Vec<Draft> = pull
        .into_iter()
        .map(|set| draft(context, cook, set))
        .collect();
    if meant != Meant::default() {
        drafts.push(draft(context, cook, PieceMeant { piece: id, meant }));
    }
    Ok(drafts)
}

fn few(context: &Context<'_>, many: usize, limit: usize) -> Result<(), Refused> {
    if many <= limit {
        return Ok(());
    }
    let args = [("limit", Arg::Number(limit as i64))];
    Err(context.say().refuse("error-plan-long", &args).into())
}
