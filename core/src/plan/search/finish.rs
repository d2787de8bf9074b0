//! What is left when all tasks are chosen: what is done to meats before the fire. Start at [`finish`].

use super::room::Room;
use crate::plan::{
    choice::{Choice, night},
    cost::Level,
    model::Model,
};

/// The most steps tried to place the preparations of one plan.
const TRIES: i64 = 2_000;

/// The preparations of a plan and the night slots of everything.
pub(super) struct Finished {
    /// When each step of each task's preparation begins.
    pub preps: Vec<Vec<i64>>,
    /// All night slots taken.
    pub night: u128,
}

/// Places all preparation with the fewest night slots, where so many are `allowed`.
pub(super) fn finish(
    model: &Model,
    room: &mut Room<'_>,
    choices: &[Choice],
    taken: u128,
    allowed: impl Fn(u32) -> bool,
) -> Option<Finished> {
    let preps = model.tasks.iter().map(|task| vec![0; task.prep.len()]);
    let mut placing = Placing {
        model,
        choices,
        preps: preps.collect(),
        best: None,
        tries: TRIES,
    };
    placing.place(room, 0, None, taken, &allowed);
    placing.best
}

struct Placing<'a> {
    model: &'a Model,
    choices: &'a [Choice],
    preps: Vec<Vec<i64>>,
    best: Option<Finished>,
    tries: i64,
}

impl Placing<'_> {
    /// Places the steps of tasks from `task` on, each task's from the last to the first; `next` is the step to be placed.
    fn place(
        &mut self,
        room: &mut Room<'_>,
        task: usize,
        next: Option<usize>,
        night_of_all: u128,
        allowed: &impl Fn(u32) -> bool,
    ) {
        self.tries -= 1;
        let better = self
            .best
            .as_ref()
            .is_none_or(|best| night_of_all.count_ones() < best.night.count_ones());
        if self.tries < 0 || !better || !allowed(night_of_all.count_ones()) {
            return;
        }
        let Some(of) = self.model.tasks.get(task) else {
            self.best = Some(Finished {
                preps: self.preps.clone(),
                night: night_of_all,
            });
            return;
        };
        let Some(step) = next.or_else(|| of.prep.len().checked_sub(1)) else {
            return self.place(room, task + 1, None, night_of_all, allowed);
        };
        let prep = of.prep[step];
        let before = match self.preps[task].get(step + 1) {
            Some(then) => *then,
            None => i64::from(self.choices[task].on),
        };
        let earlier: i64 = of.prep[..step]
            .iter()
            .map(|step| step.slots + step.then.0)
            .sum();
        let last = before - prep.then.0 - prep.slots;
        let first = (before - prep.then.1 - prep.slots).max(earlier);
        let mut starts: Vec<(u32, i64)> = (first..=last)
            .map(|at| {
                (
                    (night(self.model, &[(at as i16, prep.hands)]) & !night_of_all).count_ones(),
                    last - at,
                )
            })
            .collect();
        starts.sort_unstable();
        for (_, back) in starts {
            let at = last - back;
            if prep.hands > 0 && !room.hands_free(at, prep.hands) {
                continue;
            }
            room.hands(at, prep.hands, false);
            self.preps[task][step] = at;
            let taken = night_of_all | night(self.model, &[(at as i16, prep.hands)]);
            let (task, next) = match step {
                0 => (task + 1, None),
                _ => (task, Some(step - 1)),
            };
            self.place(room, task, next, taken, allowed);
            room.hands(at, prep.hands, true);
            if self.tries < 0
                || self
                    .best
                    .as_ref()
                    .is_some_and(|best| best.night == night_of_all)
            {
                return;
            }
        }
    }
}

/// The cost of so many night slots.
pub(super) fn night_cost(model: &Model, night: u128) -> u128 {
    model
        .order
        .of_level(Level::Night, i64::from(night.count_ones()))
}
