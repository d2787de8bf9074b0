//! What is taken in each slot: hands, grates, places, burners. Start at [`Room::takes`].

use crate::plan::{
    choice::{Choice, NONE},
    household::GRID_MIN,
    model::{Heat, Model, Task},
    times::up,
};

/// What is taken, by slot.
pub(in crate::plan) struct Room<'a> {
    model: &'a Model,
    /// Hands-on minutes.
    minutes: Vec<u8>,
    /// Jobs of more than five minutes: one pair of hands does no two of them in a slot.
    long: Vec<u8>,
    /// Of each pit, whether what goes on it could be too much for it, and whether poultry and other meat could meet.
    watched: Vec<(bool, bool)>,
    /// Grate taken on each pit.
    area: Vec<Vec<i64>>,
    /// Raw poultry, and other tasks, on each pit.
    poultry: Vec<Vec<[u8; 2]>>,
    /// Room taken in each place.
    held: Vec<Vec<i64>>,
    /// Burners taken.
    burners: Vec<u8>,
    /// How many put on or take off at each pit.
    lids: Vec<Vec<u8>>,
}

impl<'a> Room<'a> {
    /// All is free, but for the changes of the pits' temperatures.
    pub fn new(model: &'a Model) -> Self {
        let slots = model.slots as usize + 1;
        Self {
            model,
            minutes: vec![0; slots],
            long: vec![0; slots],
            watched: model
                .pits
                .iter()
                .map(|pit| (pit.tight, pit.parted))
                .collect(),
            area: vec![vec![0; slots]; model.pits.len()],
            poultry: vec![vec![[0; 2]; slots]; model.pits.len()],
            held: vec![vec![0; slots]; model.places.len()],
            burners: vec![0; slots],
            lids: vec![vec![0; slots]; model.pits.len()],
        }
    }

    /// Says which task is done where, so that what cannot be too much is not watched.
    pub fn watch(&mut self, sites: &[usize]) {
        for (at, pit) in self.model.pits.iter().enumerate() {
            let there = || {
                self.model
                    .tasks
                    .iter()
                    .zip(sites)
                    .filter(|(_, site)| **site == at)
            };
            let area: i64 = there().map(|(task, _)| task.area).sum();
            let meet =
                there().any(|(task, _)| task.poultry) && there().any(|(task, _)| !task.poultry);
            self.watched[at] = (area > pit.area, pit.parted && meet);
        }
    }

    /// Whether hands are free for a job.
    pub fn hands_free(&self, slot: i64, minutes: u8) -> bool {
        let (count, each) = spread(minutes);
        (slot..slot + count).all(|slot| self.slot_free(slot, u32::from(each), u8::from(each > 5)))
    }

    fn slot_free(&self, slot: i64, minutes: u32, long: u8) -> bool {
        let Some(at) = usize::try_from(slot)
            .ok()
            .filter(|at| *at < self.minutes.len())
        else {
            return false;
        };
        let hands = u32::from(self.model.hands);
        u32::from(self.minutes[at]) + minutes <= hands * GRID_MIN as u32
            && u32::from(self.long[at] + long) <= hands
    }

    /// Takes or frees hands.
    pub fn hands(&mut self, slot: i64, minutes: u8, free: bool) {
        let (count, each) = spread(minutes);
        for at in slot as usize..(slot + count) as usize {
            change(&mut self.minutes[at], each, free);
            change(&mut self.long[at], u8::from(each > 5), free);
        }
    }

    /// Whether a choice fits beside all that was taken.
    pub fn takes(&self, task: &Task, choice: &Choice) -> bool {
        self.jobs_free(choice)
            && self.grate_free(task, choice)
            && self.place_free(task, choice)
            && (self.model.tasks.is_empty() || self.burner_free(task, choice))
    }

    /// Hands-on minutes, and hands for jobs of more than five, that are free in each slot from a serving back.
    pub fn free_back_from(&self, served: i64) -> impl Iterator<Item = (i64, i64)> + '_ {
        let hands = i64::from(self.model.hands);
        (0..served as usize).rev().map(move |slot| {
            let (minutes, long) = (i64::from(self.minutes[slot]), i64::from(self.long[slot]));
            (hands * GRID_MIN - minutes, hands - long)
        })
    }

    fn jobs_free(&self, choice: &Choice) -> bool {
        let jobs = &choice.jobs;
        if choice.apart {
            let mut jobs = jobs.iter().filter(|(_, minutes)| *minutes > 0);
            return jobs.all(|(slot, minutes)| self.hands_free(i64::from(*slot), *minutes));
        }
        jobs.iter().enumerate().all(|(nr, (slot, minutes))| {
            let (count, each) = spread(*minutes);
            let from = i64::from(*slot);
            (from..from + count).all(|at| {
                let (mut all, mut long) = (u32::from(each), u8::from(each > 5));
                for (other, minutes) in &jobs[..nr] {
                    let (count, each) = spread(*minutes);
                    let other = i64::from(*other);
                    if other <= at && at < other + count {
                        all += u32::from(each);
                        long += u8::from(each > 5);
                    }
                }
                self.slot_free(at, all, long)
            })
        })
    }

    fn grate_free(&self, task: &Task, choice: &Choice) -> bool {
        if choice.pit == NONE {
            return true;
        }
        let nr = choice.pit as usize;
        let pit = &self.model.pits[nr];
        let mut slots = choice.on.max(0) as usize..choice.late as usize;
        if self.watched[nr].0
            && slots
                .clone()
                .any(|at| self.area[nr][at] + task.area > pit.area)
        {
            return false;
        }
        let other = usize::from(!task.poultry);
        !self.watched[nr].1 || slots.all(|at| self.poultry[nr][at][1 - other] == 0)
    }

    fn place_free(&self, task: &Task, choice: &Choice) -> bool {
        if choice.place == NONE {
            return true;
        }
        let nr = choice.place as usize;
        let place = &self.model.places[nr];
        !place.tight
            || (choice.off.max(0) as usize..choice.cut as usize)
                .all(|at| self.held[nr][at] + task.weight <= place.room)
    }

    fn burner_free(&self, task: &Task, choice: &Choice) -> bool {
        let mut slots = burning(task, choice);
        slots.all(|at| self.burners[at] < self.model.burners)
    }

    /// How many openings of its pit a choice adds.
    pub fn openings(&self, task: &Task, choice: &Choice) -> u32 {
        if choice.pit == NONE {
            return 0;
        }
        let lids = &self.lids[choice.pit as usize];
        let on = choice.on_now(task) && lids[choice.on as usize] == 0;
        u32::from(on) + u32::from(lids[choice.off as usize] == 0)
    }

    /// How many openings there are.
    pub fn lids_opened(&self) -> u32 {
        let lids = self.lids.iter().flatten();
        lids.filter(|lifts| **lifts > 0).count() as u32
    }

    /// Takes what a choice needs, or frees it.
    pub fn put(&mut self, task: &Task, choice: &Choice, free: bool) {
        for (slot, minutes) in choice.jobs.iter().filter(|(_, minutes)| *minutes > 0) {
            self.hands(i64::from(*slot), *minutes, free);
        }
        if choice.pit != NONE {
            let nr = choice.pit as usize;
            for at in choice.on.max(0) as usize..choice.late as usize {
                self.area[nr][at] += if free { -task.area } else { task.area };
                change(
                    &mut self.poultry[nr][at][usize::from(!task.poultry)],
                    1,
                    free,
                );
            }
            if choice.on_now(task) {
                change(&mut self.lids[nr][choice.on as usize], 1, free);
            }
            change(&mut self.lids[nr][choice.off as usize], 1, free);
        }
        if choice.place != NONE {
            for at in choice.off.max(0) as usize..choice.cut as usize {
                let held = &mut self.held[choice.place as usize][at];
                *held += if free { -task.weight } else { task.weight };
            }
        }
        for at in burning(task, choice) {
            change(&mut self.burners[at], 1, free);
        }
    }
}

/// The slots in which a dish has a burner: while it cooks, and while it is warmed again.
fn burning(task: &Task, choice: &Choice) -> impl Iterator<Item = usize> + use<> {
    let cooks = match task.heat {
        Heat::Burner => choice.on as usize..choice.late as usize,
        _ => 0..0,
    };
    let again = match task.reheat {
        0 => 0..0,
        slots => choice.cut as usize..choice.cut as usize + slots as usize,
    };
    cooks.chain(again)
}

/// A job's slots, and its minutes in each.
fn spread(minutes: u8) -> (i64, u8) {
    match i64::from(minutes) {
        0 => (0, 0),
        short if short <= GRID_MIN => (1, minutes),
        long => (up(long), GRID_MIN as u8),
    }
}

fn change(value: &mut u8, by: u8, free: bool) {
    match free {
        true => *value -= by,
        false => *value += by,
    }
}
