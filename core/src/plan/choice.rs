//! What can be chosen for one task: where, when, how long held, where held. Start at [`choices`].

use super::{
    cost::Level,
    household::GRID_MIN,
    model::{Fixed, Heat, Model, Profile, Task},
    times::{Four, chance, down, up, within},
};

/// No pit, no place.
pub(super) const NONE: u8 = u8::MAX;

/// One way to do one task. Slots count from the beginning; those before it have happened.
#[derive(Clone, Copy, Debug)]
pub(super) struct Choice {
    /// The pit, or [`NONE`].
    pub pit: u8,
    /// The place it is held in, or [`NONE`].
    pub place: u8,
    /// Which of its serving's slots.
    pub serve: u8,
    /// On, or begun.
    pub on: i16,
    /// Off as expected.
    pub off: i16,
    /// Off at the latest.
    pub late: i16,
    /// Cut from; where nothing is cut, served or reheated from.
    pub cut: i16,
    /// What it costs whatever else is chosen.
    pub alone: u128,
    /// What of that is for waiting cut.
    pub waits: u128,
    /// The same with the openings and the fuel of its pit, where nothing else is in it.
    pub fires: u128,
    /// The same with its nights, where nothing else is chosen: no plan with it costs less.
    pub least: u128,
    /// The night slots in which it has hands on.
    pub night: u128,
    /// Hands on: slot, minutes as they count.
    pub jobs: [(i16, u8); 3],
    /// Whether no two of them are at the same time.
    pub apart: bool,
}

impl Choice {
    /// What identifies it among the choices of equal tasks.
    pub const fn rank(&self) -> (u8, i16, i16, u8) {
        (self.pit, self.on, self.cut, self.place)
    }

    /// When the pit burns for it.
    pub fn burning(&self, model: &Model) -> (i64, i64) {
        let preheat = model.pits[self.pit as usize].preheat;
        let from = i64::from(self.on) - preheat;
        (from.max(0), i64::from(self.late))
    }
}

/// Where a task could be heated, and how the pit's temperature runs.
#[derive(Clone, Copy)]
pub(super) enum Site<'a> {
    /// On no pit.
    Kitchen,
    /// On a pit.
    Pit(usize, &'a Profile),
}

/// Every choice for a task at a site, to be served at the `serve`-th slot of its serving.
pub(super) fn choices(model: &Model, task: &Task, site: Site<'_>, serve: usize) -> Vec<Choice> {
    let mut found = vec![];
    each(model, task, site, serve, |choice| found.push(choice));
    found
}

/// Calls `take` with each choice.
pub(super) fn each(
    model: &Model,
    task: &Task,
    site: Site<'_>,
    serve: usize,
    take: impl FnMut(Choice),
) {
    each_of(model, task, site, serve, (i64::MIN, i64::MAX), take);
}

/// Calls `take` with each choice that begins in these slots, the last among them.
pub(super) fn each_of(
    model: &Model,
    task: &Task,
    site: Site<'_>,
    serve: usize,
    among: (i64, i64),
    mut take: impl FnMut(Choice),
) {
    if !allowed(task, site) {
        return;
    }
    let served = model.servings[task.serving][serve];
    let (first, last) = starts(model, task, site, served);
    for on in first.max(among.0)..=last.min(among.1) {
        let Some(cook) = cook(model, task, site, on) else {
            continue;
        };
        for wait in 0..=task.cut.1 {
            let cut = served - up(i64::from(task.cut.0)).max(task.reheat) - wait;
            if let Some(ready) = ready(model, task, &cook, cut) {
                held(model, task, site, &ready, wait, |mut choice| {
                    choice.serve = serve as u8;
                    take(choice);
                });
            }
        }
    }
}

fn allowed(task: &Task, site: Site<'_>) -> bool {
    match (task.heat, site, task.fixed) {
        (Heat::Pit, Site::Pit(pit, _), Fixed::On { pit: on, .. }) => pit == on,
        (Heat::Pit, Site::Pit(..), _) => true,
        (Heat::Burner | Heat::None, Site::Kitchen, _) => true,
        _ => false,
    }
}

/// The first and the last slot to begin in: outside, it could not go on yet, would be held too long, or be ready too late.
fn starts(model: &Model, task: &Task, site: Site<'_>, served: i64) -> (i64, i64) {
    match task.fixed {
        Fixed::On { .. } => return (0, 0),
        Fixed::Off { at } => return (at, at),
        Fixed::Nothing => {}
    }
    let (preheat, halves) = match site {
        Site::Pit(pit, profile) => {
            let half = |temp: usize| task.times[pit][temp].map(|times| times[1]);
            (model.pits[pit].preheat, [half(profile.a), half(profile.b)])
        }
        Site::Kitchen => (
            0,
            [
                task.times
                    .first()
                    .and_then(|pit| pit[0])
                    .map(|times| times[1]),
                None,
            ],
        ),
    };
    let halves = || halves.into_iter().flatten();
    let cut = served - up(i64::from(task.cut.0)).max(task.reheat);
    let first = cut - task.cut.1 - up(task.hold.2) - up(halves().max().unwrap_or(0));
    let last = cut - down(task.rest_least) - down(halves().min().unwrap_or(0));
    (first.max(task.earliest()).max(preheat), last)
}

/// A task begun in a slot.
struct Cook {
    on: i64,
    times: Four,
    outside: i64,
}

fn cook(model: &Model, task: &Task, site: Site<'_>, on: i64) -> Option<Cook> {
    if let Fixed::Off { .. } = task.fixed {
        return Some(Cook {
            on,
            times: [0; 4],
            outside: 0,
        });
    }
    let Site::Pit(pit, profile) = site else {
        let times = task.times.first()?.first().copied()??;
        return Some(Cook {
            on,
            times,
            outside: 0,
        });
    };
    let before = (profile.at - on) * GRID_MIN;
    let times = task.times_in(pit, profile, before)?;
    let mut outside = 0;
    if before > 0 {
        outside = task.outside[pit][profile.a];
    }
    if within(&times, model.confidence) > before {
        outside = outside.max(task.outside[pit][profile.b]);
    }
    Some(Cook { on, times, outside })
}

/// A task that is ready for a cut.
struct Ready {
    on: i64,
    off: i64,
    late: i64,
    cut: i64,
    hold: i64,
    short: i64,
    outside: i64,
}

/// None where it cannot even be expected to be ready, or would be held too long.
fn ready(model: &Model, task: &Task, cook: &Cook, cut: i64) -> Option<Ready> {
    let off = cook.on + up(cook.times[1]);
    let hold = (cut - off) * GRID_MIN;
    if hold < task.rest_least || hold > task.hold.2 {
        return None;
    }
    if matches!(task.fixed, Fixed::Off { .. }) {
        return Some(Ready {
            on: cook.on,
            off,
            late: off,
            cut,
            hold,
            short: 0,
            outside: 0,
        });
    }
    let has = (cut - cook.on) * GRID_MIN - task.rest_least;
    let wanted = up(within(&cook.times, model.confidence));
    Some(Ready {
        on: cook.on,
        off,
        late: off.max(cook.on + wanted.min(down(has))),
        cut,
        hold,
        short: 0.max(model.confidence - chance(&cook.times, has)),
        outside: cook.outside,
    })
}

/// One choice for each place it may be held in, or one without.
fn held(
    model: &Model,
    task: &Task,
    site: Site<'_>,
    ready: &Ready,
    wait: i64,
    mut take: impl FnMut(Choice),
) {
    if ready.hold <= task.rest_most {
        return take(choice(model, task, site, ready, wait, NONE));
    }
    for (place, safe) in task.safe.iter().enumerate() {
        if ready.hold <= safe * GRID_MIN && task.weight <= model.places[place].room {
            take(choice(model, task, site, ready, wait, place as u8));
        }
    }
}

fn choice(
    model: &Model,
    task: &Task,
    site: Site<'_>,
    ready: &Ready,
    wait: i64,
    place: u8,
) -> Choice {
    let order = &model.order;
    let away = (task.hold.0 - ready.hold)
        .max(ready.hold - task.hold.1)
        .max(0);
    let waits = order.of_level(Level::Hold, wait * GRID_MIN);
    let alone = order.of_level(Level::NotReady, ready.short)
        + order.of_level(Level::Temperature, ready.outside)
        + order.of_level(Level::Hold, away)
        + waits;
    let jobs = jobs(task, ready);
    let night = night(model, &jobs);
    let mut choice = Choice {
        pit: NONE,
        place,
        serve: 0,
        on: ready.on as i16,
        off: ready.off as i16,
        late: ready.late as i16,
        cut: ready.cut as i16,
        alone,
        waits,
        fires: alone,
        least: alone,
        night,
        jobs,
        apart: apart(&jobs),
    };
    let Site::Pit(pit, profile) = site else {
        choice.least += order.of_level(Level::Night, i64::from(night.count_ones()));
        return choice;
    };
    choice.pit = pit as u8;
    let (from, until) = choice.burning(model);
    let pit = &model.pits[pit];
    let night = night | pit.feeds & model.night.between(from, until);
    let openings = 1 + i64::from(choice.on_now(task));
    choice.fires += order.of_level(Level::Openings, openings)
        + order.of_level(Level::Fuel, pit.burns(profile, from, until));
    choice.least = choice.fires + order.of_level(Level::Night, i64::from(night.count_ones()));
    choice
}

impl Choice {
    /// Whether putting it on is still to come.
    pub const fn on_now(&self, task: &Task) -> bool {
        matches!(task.fixed, Fixed::Nothing)
    }
}

fn jobs(task: &Task, ready: &Ready) -> [(i16, u8); 3] {
    let begins = if matches!(task.fixed, Fixed::Nothing) {
        task.hands.0
    } else {
        0
    };
    let ends = if matches!(task.fixed, Fixed::Off { .. }) {
        0
    } else {
        task.hands.1
    };
    let cut = if task.reheat > 0 {
        REHEAT_HANDS
    } else {
        task.cut.0
    };
    [
        (ready.on as i16, begins),
        (ready.off as i16, ends),
        (ready.cut as i16, cut),
    ]
}

fn apart(jobs: &[(i16, u8); 3]) -> bool {
    let mut until = i64::MIN;
    jobs.iter()
        .filter(|(_, minutes)| *minutes > 0)
        .all(|(slot, minutes)| {
            let from = i64::from(*slot);
            let after = from >= until;
            until = from + up(i64::from(*minutes));
            after
        })
}

/// Hands on when a dish is put back on the fire, minutes as they count.
pub(super) const REHEAT_HANDS: u8 = 5;

/// The night slots of some jobs.
pub(super) fn night(model: &Model, jobs: &[(i16, u8)]) -> u128 {
    jobs.iter()
        .filter(|(_, minutes)| *minutes > 0)
        .fold(0, |all, (slot, minutes)| {
            let from = i64::from(*slot);
            all | model.night.between(from, from + up(i64::from(*minutes)))
        })
}
