//! The pit in minutes from now, and what one meat costs alone. Start with [`Pit`].

use super::{LidOpenings, Need};

/// One opening, in the one number that plans are compared by: count, then deviation, then minutes. The parts cannot
/// run into each other: within a day at most 288 openings (minutes sum to less than 2^19) and, for 12 meats, less than
/// 2^15 minutes of deviation.
pub(super) const OPENING: u64 = 1 << 44;
/// One minute of deviation of one meat.
pub(super) const DEVIATION: u64 = 1 << 22;

/// Meats that are due together with the same rhythm. Minutes count from `from_min`.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Meat {
    /// When it is due first; never so early that its window has passed.
    pub due: i32,
    /// Minutes from one wetting to the next due one.
    pub every: i32,
    /// Minutes it may be early.
    pub early: i32,
    /// Minutes it may be late.
    pub late: i32,
    /// The due minute from which on nothing is owed: the window reaches past the end.
    pub done: i32,
    /// What one minute of deviation costs, of all of them.
    pub stray: u64,
    /// Which of the input's meats these are.
    pub needs: Vec<usize>,
}

impl Meat {
    fn of(need: &Need, index: usize, input: &LidOpenings) -> Self {
        let end = need.until_min.map_or(input.horizon_min, |until| {
            input.horizon_min.min(until - input.from_min)
        });
        let done = end.max(0) - need.late_min;
        let due = need.last_min + need.every_min - input.from_min;
        Self {
            due: due.max(-need.late_min).min(done) as i32,
            every: need.every_min as i32,
            early: need.early_min as i32,
            late: need.late_min as i32,
            done: done as i32,
            stray: DEVIATION,
            needs: vec![index],
        }
    }

    /// All that decides its costs but when it is due first.
    pub fn rhythm(&self) -> (i32, i32, i32, i32, u64) {
        (self.every, self.early, self.late, self.done, self.stray)
    }

    fn is_one_with(&self, other: &Self) -> bool {
        let rhythm = |meat: &Self| (meat.due, meat.every, meat.early, meat.late, meat.done);
        rhythm(self) == rhythm(other)
    }

    fn join(&mut self, other: Self) {
        self.needs.extend(other.needs);
        self.stray += other.stray;
    }

    /// Whether nothing is owed to a meat that is due at `due`.
    pub fn is_done(&self, due: i32) -> bool {
        due >= self.done
    }

    /// The first minute of the window of a meat that is due at `due`.
    pub fn opens(&self, due: i32) -> i32 {
        (due - self.early).max(0)
    }

    /// The last minute of the window.
    pub fn closes(&self, due: i32) -> i32 {
        due + self.late
    }

    /// When it is due next, if wetted at `at`.
    pub fn after(&self, at: i32) -> i32 {
        (at + self.every).min(self.done)
    }

    /// What the deviation costs, if wetted at `at`.
    pub fn strays(&self, at: i32, due: i32) -> u64 {
        u64::from(at.abs_diff(due)) * self.stray
    }

    /// What it will cost at least in deviation: a due minute before now is already missed by so much.
    pub fn strays_at_least(&self, due: i32) -> u64 {
        if due < 0 && !self.is_done(due) {
            self.strays(0, due)
        } else {
            0
        }
    }
}

/// One pit: its meats, and what an opening costs at each minute.
pub(super) struct Pit {
    /// The meats, in an order that does not depend on the input's.
    pub meats: Vec<Meat>,
    /// What opening at each minute of the horizon costs; nothing where it is opened anyway.
    pub price: Vec<u64>,
}

impl Pit {
    /// The pit that a checked input describes.
    pub fn of(input: &LidOpenings) -> Self {
        let mut all: Vec<_> = input
            .needs
            .iter()
            .enumerate()
            .map(|(i, need)| Meat::of(need, i, input))
            .collect();
        all.retain(|meat| !meat.is_done(meat.due));
        all.sort_unstable_by(|a, b| (a.every, a).cmp(&(b.every, b)));
        let mut meats: Vec<Meat> = Vec::new();
        for meat in all {
            match meats.last_mut() {
                Some(last) if last.is_one_with(&meat) => last.join(meat),
                _ => meats.push(meat),
            }
        }
        Self {
            meats,
            price: prices(input),
        }
    }
}

fn prices(input: &LidOpenings) -> Vec<u64> {
    let mut price: Vec<u64> = (0..input.horizon_min as u64)
        .map(|at| OPENING + at)
        .collect();
    for at in input
        .fixed_min
        .iter()
        .map(|at| at - input.from_min)
        .filter(|at| (0..input.horizon_min).contains(at))
    {
        price[at as usize] = 0;
    }
    price
}

/// What each due minute of one meat costs until the end, were it alone in the pit.
pub(super) struct Alone {
    late: i32,
    cost: Vec<u64>,
}

impl Alone {
    /// The table of `meat`, filled from the end.
    pub fn of(meat: &Meat, price: &[u64]) -> Self {
        let mut alone = Self {
            late: meat.late,
            cost: vec![0; (meat.done + meat.late + 1).max(1) as usize],
        };
        for due in (-meat.late..meat.done).rev() {
            let costs = (meat.opens(due)..=meat.closes(due))
                .map(|at| price[at as usize] + meat.strays(at, due) + alone.cost(meat.after(at)));
            let least = costs
                .min()
                .expect("a window is never empty: it closes no earlier than now");
            alone.cost[(due + meat.late) as usize] = least;
        }
        alone
    }

    /// What is left to pay for a meat due at `due`.
    pub fn cost(&self, due: i32) -> u64 {
        self.cost[(due + self.late) as usize]
    }
}
