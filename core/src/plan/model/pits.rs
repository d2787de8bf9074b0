//! Pits and places on the grid. Start at [`all`].

use super::{Night, Task, task::Heat};
use crate::{
    plan::{
        household::{GRID_MIN, Household, Keeps, Pit},
        times::{down, up},
    },
    units::Mk,
};

/// Hot food is held at 140 °F or above (USDA, read in foodmate.com reprints of its releases of 2016 and 2017).
pub(in crate::plan) const HELD_AT: Mk = Mk::from_f(140);

/// A pit.
pub(in crate::plan) struct PitModel {
    /// Grate.
    pub area: i64,
    /// Whether all that may go on it at once can be too much for it.
    pub tight: bool,
    /// Whether raw poultry and other meat have to be kept apart in time.
    pub parted: bool,
    /// Slots from lighting to meat on; 0 where it is hot.
    pub preheat: i64,
    /// Hands on while lighting it, minutes as they count; 0 where it is hot.
    pub light: u8,
    /// Whether it burns already.
    pub hot: bool,
    /// The night slots in which it has to be seen to, if it burns all night.
    pub feeds: u128,
    /// Quarters of a gram a slot, at each temperature.
    pub fuel: Vec<i64>,
    /// The ways its temperature may run, those without a change first.
    pub profiles: Vec<Profile>,
}

/// One way a pit's temperature may run: `a` before the slot `at`, `b` from then on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) struct Profile {
    /// The first temperature's place in the pit's list.
    pub a: usize,
    /// The second's; the same where there is no change.
    pub b: usize,
    /// When it changes; far ahead where it does not.
    pub at: i64,
}

impl Profile {
    /// When a pit changes that never does.
    pub const NEVER: i64 = i32::MAX as i64;

    /// Whether there is a change.
    pub const fn steps(&self) -> bool {
        self.at != Self::NEVER
    }
}

impl PitModel {
    /// Fuel from one slot to another, quarters of a gram.
    pub fn burns(&self, profile: &Profile, from: i64, until: i64) -> i64 {
        let first = (until.min(profile.at) - from).max(0);
        let second = (until - from.max(profile.at)).max(0);
        self.fuel[profile.a] * first + self.fuel[profile.b] * second
    }
}

/// Somewhere to hold.
pub(in crate::plan) struct PlaceModel {
    /// Room, grams.
    pub room: i64,
    /// Whether all of it could be too much.
    pub tight: bool,
}

/// All pits.
pub(super) fn all(
    household: &Household,
    tasks: &[Task],
    slots: i64,
    servings: &[Vec<i64>],
    night: &Night,
) -> Vec<PitModel> {
    let on_pits = || tasks.iter().filter(|task| task.heat == Heat::Pit);
    let area: i64 = on_pits().map(|task| task.area).sum();
    let both = on_pits().any(|task| task.poultry) && on_pits().any(|task| !task.poultry);
    let from = on_pits().map(|task| first_start(task, servings)).min();
    let pit = |(at, pit): (usize, &Pit)| {
        let used = |temp: &usize| tasks.iter().any(|task| task.times[at][*temp].is_some());
        let mut temps: Vec<usize> = (0..pit.temps.len()).filter(used).collect();
        // A pit that nothing can be cooked on stays cold at whatever temperature.
        if temps.is_empty() {
            temps.push(0);
        }
        PitModel {
            area: pit.area_cm2,
            tight: area > pit.area_cm2,
            parted: both && !pit.poultry_apart,
            preheat: if pit.hot { 0 } else { up(pit.preheat_min) },
            light: if pit.hot {
                0
            } else {
                super::Model::hands_on(pit.light_min)
            },
            hot: pit.hot,
            feeds: night.feeds(down(pit.alone_min)),
            fuel: pit.temps.iter().map(|temp| temp.fuel_g_per_h).collect(),
            profiles: profiles(
                pit,
                &temps,
                (from.unwrap_or(0), slots),
                household.from_ms,
                night,
            ),
        }
    };
    household.pits.iter().enumerate().map(pit).collect()
}

/// No plan puts it on before.
fn first_start(task: &Task, servings: &[Vec<i64>]) -> i64 {
    let longest = task
        .times
        .iter()
        .flatten()
        .flatten()
        .map(|four| four[3])
        .max();
    let first = servings[task.serving].first().copied().unwrap_or(0);
    first - up(longest.unwrap_or(0)) - up(task.hold.2) - up(i64::from(task.cut.0)) - task.cut.1
}

/// One temperature throughout, or two with a change on a full hour of the day, while nobody sleeps and all may ring.
fn profiles(
    pit: &Pit,
    temps: &[usize],
    slots: (i64, i64),
    from_ms: i64,
    night: &Night,
) -> Vec<Profile> {
    let single = |a: &usize| Profile {
        a: *a,
        b: *a,
        at: Profile::NEVER,
    };
    let mut all: Vec<Profile> = temps.iter().map(single).collect();
    if !pit.may_step {
        return all;
    }
    let quarter = |slot: i64| from_ms.div_euclid(GRID_MIN * 60_000) + slot;
    let full = |slot: &i64| quarter(*slot).rem_euclid(4) == 0 && night.mark(*slot) == 0;
    for at in (slots.0.max(1)..slots.1).filter(full) {
        let pairs = temps
            .iter()
            .flat_map(|a| temps.iter().map(move |b| (*a, *b)));
        all.extend(
            pairs
                .filter(|(a, b)| a != b)
                .map(|(a, b)| Profile { a, b, at }),
        );
    }
    all
}

/// All places.
pub(super) fn places(household: &Household, tasks: &[Task]) -> Vec<PlaceModel> {
    let weight: i64 = tasks.iter().map(|task| task.weight).sum();
    let place = |place: &crate::plan::household::Place| PlaceModel {
        room: place.room_g,
        tight: weight > place.room_g,
    };
    household.places.iter().map(place).collect()
}

/// Whole slots that each place keeps a meat of this temperature at 140 °F or above.
pub(super) fn safe(household: &Household, off: Mk) -> Vec<i64> {
    let of = |place: &crate::plan::household::Place| match place.keeps {
        Keeps::Heated { at_mk } => {
            if at_mk >= HELD_AT {
                4 * 24
            } else {
                0
            }
        }
        Keeps::Insulated {
            loses_permille_per_h,
            around_mk,
        } => keeps_for(off, around_mk, loses_permille_per_h),
    };
    household.places.iter().map(of).collect()
}

/// Newton's law of cooling in quarters of an hour, at most a day. A quarter loses r / (4 − 3r) of the difference where the hour
/// loses r: four of those lose a little more than r (ln is concave), so the time is a little short and never too long.
fn keeps_for(off: Mk, around: Mk, loses_permille_per_h: i64) -> i64 {
    let mut temp = off.0;
    let mut slots = 0;
    while slots < 4 * 24 {
        let part = 4_000 - 3 * loses_permille_per_h;
        temp -= ((temp - around.0).max(0) * loses_permille_per_h + part - 1) / part;
        if temp < HELD_AT.0 {
            break;
        }
        slots += 1;
    }
    slots
}
