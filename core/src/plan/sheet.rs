//! The plan as jobs in order of time. Start at [`plan`].

mod jobs;
mod lanes;
mod why;

use super::{
    answer::{MeatPlan, PitPlan, Plan, Step},
    chance,
    choice::{Choice, NONE},
    household::{GRID_MIN, Household},
    model::{Model, Profile},
    search::Found,
    times::Four,
};

/// What the search found, in the words of the household.
pub(super) fn plan(household: &Household, at: &[(i64, i64)], model: &Model, found: &Found) -> Plan {
    let servings_min: Vec<i64> = (0..at.len())
        .map(|serving| served(at, model, found, serving))
        .collect();
    let meats: Vec<MeatPlan> = (0..household.meats.len())
        .map(|meat| meat_plan(household, model, found, &servings_min, meat))
        .collect();
    let pits: Vec<PitPlan> = (0..household.pits.len())
        .map(|pit| pit_plan(household, model, found, pit))
        .collect();
    Plan {
        from_ms: household.from_ms,
        sheet: jobs::all(&jobs::Told {
            household,
            model,
            found,
            meats: &meats,
            pits: &pits,
            servings: &servings_min,
        }),
        chance_permille: chance::of_all(household, &meats, &ready_times(household, model, found)),
        meats,
        pits,
        servings_min,
        cost: model.order.unpack(found.cost),
    }
}

/// The preferred time to the minute; a later one on the grid.
fn served(at: &[(i64, i64)], model: &Model, found: &Found, serving: usize) -> i64 {
    match found.serves[serving] {
        0 => at[serving].0,
        later => model.servings[serving][later] * GRID_MIN,
    }
}

fn profile(model: &Model, found: &Found, pit: usize) -> Profile {
    model.pits[pit].profiles[found.setting[pit]]
}

/// How long a meat takes as it is planned; none where it is off.
fn cooks(model: &Model, found: &Found, meat: usize) -> Option<Four> {
    let (task, choice) = (&model.tasks[meat], &found.choices[meat]);
    if choice.pit == NONE {
        return None;
    }
    let pit = choice.pit as usize;
    let profile = profile(model, found, pit);
    let before = (profile.at - i64::from(choice.on)) * GRID_MIN;
    task.times_in(pit, &profile, before)
}

/// For each meat its times and the minutes it has; none where it is off.
fn ready_times(household: &Household, model: &Model, found: &Found) -> Vec<Option<(Four, i64)>> {
    let has = |meat: usize| {
        let choice = &found.choices[meat];
        i64::from(choice.cut - choice.on) * GRID_MIN - household.meats[meat].rest.least_min
    };
    (0..household.meats.len())
        .map(|meat| cooks(model, found, meat).map(|times| (times, has(meat))))
        .collect()
}

fn meat_plan(
    household: &Household,
    model: &Model,
    found: &Found,
    servings: &[i64],
    nr: usize,
) -> MeatPlan {
    let (meat, choice) = (&household.meats[nr], &found.choices[nr]);
    let at = |slot: i16| i64::from(slot) * GRID_MIN;
    let on_min = match meat.on {
        Some(on) => on.since_min,
        None => at(choice.on),
    };
    let cut = at(choice.cut);
    let times = cooks(model, found, nr);
    let early = times.map_or(at(choice.off), |times| at(choice.on) + times[0]);
    let place = (choice.place != NONE).then_some(choice.place as usize);
    let safe = place.map(|place| model.tasks[nr].safe[place] * GRID_MIN);
    MeatPlan {
        pit: (choice.pit != NONE).then_some(choice.pit as usize),
        on_min,
        off_early_min: early,
        off_min: meat.off_at_min.unwrap_or(at(choice.off)),
        off_late_min: meat.off_at_min.unwrap_or(at(choice.late)),
        place,
        box_from_min: safe.map_or(at(choice.off), |safe| early.max(cut - safe)),
        cut_min: cut,
        serve_min: servings[meat.serving],
        chance_permille: chance::of_one(
            times.as_ref(),
            at(choice.cut) - at(choice.on) - meat.rest.least_min,
        ),
    }
}

fn pit_plan(household: &Household, model: &Model, found: &Found, nr: usize) -> PitPlan {
    let pit = &household.pits[nr];
    let on: Vec<&Choice> = found
        .choices
        .iter()
        .filter(|choice| choice.pit as usize == nr)
        .collect();
    let profile = profile(model, found, nr);
    let from = on.iter().map(|choice| choice.burning(model).0).min();
    let from = if pit.hot { Some(0) } else { from };
    let until = on.iter().map(|choice| choice.burning(model).1).max();
    let (from, until) = match (from, until) {
        (Some(from), Some(until)) => (from, until),
        _ => (0, 0),
    };
    let inside = profile.steps() && from < profile.at && profile.at < until;
    PitPlan {
        used: until > from,
        light_min: from * GRID_MIN,
        out_min: until * GRID_MIN,
        temp: pit.temps[if profile.at <= from {
            profile.b
        } else {
            profile.a
        }]
        .temp,
        step: inside.then(|| Step {
            at_min: profile.at * GRID_MIN,
            temp: pit.temps[profile.b].temp,
        }),
        fuel_g: if until > from {
            model.pits[nr].burns(&profile, from, until) / 4
        } else {
            0
        },
    }
}
