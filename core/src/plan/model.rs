//! The household on the grid: slots, tasks, pits with the ways their temperature may run. Start at [`Model::of`].

mod night;
mod pits;
mod task;

pub(super) use night::Night;
pub(super) use pits::{HELD_AT, PitModel, PlaceModel, Profile};
pub(super) use task::{Fixed, Heat, Task};

use super::{
    cost::Order,
    household::{GRID_MIN, Household},
    times::{down, up},
};

/// Everything that the search asks, in slots.
pub(super) struct Model {
    /// Slots from the beginning to the last serving.
    pub slots: i64,
    /// Pairs of hands.
    pub hands: u8,
    /// The slots in which somebody sleeps or nothing should ring.
    pub night: Night,
    /// The pits.
    pub pits: Vec<PitModel>,
    /// The places to hold in.
    pub places: Vec<PlaceModel>,
    /// Burners.
    pub burners: u8,
    /// Slots at which each serving may be, the preferred first.
    pub servings: Vec<Vec<i64>>,
    /// Meats, then dishes.
    pub tasks: Vec<Task>,
    /// The chosen confidence, permille.
    pub confidence: i64,
    /// In which order the levels of the objective count.
    pub order: Order,
}

impl Model {
    /// The household on the grid; `at` holds the minutes, preferred and latest, of each serving. The household is sound.
    pub fn of(household: &Household, at: &[(i64, i64)], order: Order) -> Self {
        let servings: Vec<Vec<i64>> = at
            .iter()
            .map(|(preferred, latest)| (down(*preferred)..=down(*latest)).collect())
            .collect();
        let last = servings.iter().filter_map(|slots| slots.last()).max();
        let slots = last.copied().unwrap_or(0).max(1);
        let tasks = task::all(household);
        let night = Night::of(household, slots);
        Self {
            slots,
            hands: household.hands as u8,
            pits: pits::all(household, &tasks, slots, &servings, &night),
            night,
            places: pits::places(household, &tasks),
            burners: household.burners as u8,
            servings,
            tasks,
            confidence: household.confidence_permille,
            order,
        }
    }

    /// Hands-on minutes as they count: up to a quarter of an hour in steps of five, then in whole quarters.
    pub const fn hands_on(minutes: i64) -> u8 {
        match minutes <= GRID_MIN {
            true => ((minutes + 4) / 5 * 5) as u8,
            false => (up(minutes) * GRID_MIN) as u8,
        }
    }
}
