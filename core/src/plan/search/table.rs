//! The least that each task can cost at each site. Start at [`Table::of`].

use crate::plan::{
    choice::{Site, each},
    model::{Heat, Model, Task},
};

/// What nothing can be done for.
pub(super) const NEVER: u128 = u128::MAX >> 4;

/// The least of one task at one site for one slot of its serving.
#[derive(Clone, Copy, Debug)]
pub(super) struct Least {
    /// Of what it costs whatever else is chosen, but for waiting cut.
    pub alone: u128,
    /// With what it costs where nothing else is chosen.
    pub least: u128,
    /// By itself, where its pit burns for it before its temperature changes; where it never does, always.
    pub early: u128,
    /// By itself, where its pit burns for it after that.
    pub late: u128,
}

impl Least {
    pub const NONE: Self = Self {
        alone: NEVER,
        least: NEVER,
        early: NEVER,
        late: NEVER,
    };

    /// The less of both, each by itself.
    pub fn or(self, other: Self) -> Self {
        Self {
            alone: self.alone.min(other.alone),
            least: self.least.min(other.least),
            early: self.early.min(other.early),
            late: self.late.min(other.late),
        }
    }
}

/// All of them.
pub(super) struct Table {
    /// For each pit, where its profiles begin in a row.
    starts: Vec<usize>,
    /// For each task, and each slot of its serving, a row: profiles of all pits, or a single entry.
    rows: Vec<Vec<Vec<Least>>>,
}

impl Table {
    /// Tries every choice once.
    pub fn of(model: &Model) -> Self {
        let mut starts = vec![0];
        for pit in &model.pits {
            starts.push(starts[starts.len() - 1] + pit.profiles.len());
        }
        let rows = model.tasks.iter().enumerate();
        let rows = rows.map(|(at, task)| {
            // Tasks alike in everything have rows alike.
            let twin = model.tasks[..at].iter().position(|other| other == task);
            (twin, task)
        });
        let mut made: Vec<Vec<Vec<Least>>> = vec![];
        for (twin, task) in rows {
            let row = match twin {
                Some(twin) => made[twin].clone(),
                None => (0..model.servings[task.serving].len())
                    .map(|serve| {
                        sites(model, task.heat)
                            .map(|site| least(model, task, site, serve))
                            .collect()
                    })
                    .collect(),
            };
            made.push(row);
        }
        Self { starts, rows: made }
    }

    /// The least of a task at a pit that runs so.
    pub fn at(&self, task: usize, serve: usize, pit: usize, profile: usize) -> Least {
        match self.rows[task][serve].as_slice() {
            [only] => *only,
            row => row[self.starts[pit] + profile],
        }
    }

    /// The least of a task over all ways a pit may run.
    pub fn anyhow(&self, task: usize, serve: usize, pit: usize) -> Least {
        match self.rows[task][serve].as_slice() {
            [only] => *only,
            row => row[self.starts[pit]..self.starts[pit + 1]]
                .iter()
                .fold(Least::NONE, |least, other| least.or(*other)),
        }
    }
}

fn sites(model: &Model, heat: Heat) -> Box<dyn Iterator<Item = Site<'_>> + '_> {
    match heat {
        Heat::Pit => Box::new(model.pits.iter().enumerate().flat_map(|(at, pit)| {
            pit.profiles
                .iter()
                .map(move |profile| Site::Pit(at, profile))
        })),
        Heat::Burner | Heat::None => Box::new(std::iter::once(Site::Kitchen)),
    }
}

fn least(model: &Model, task: &Task, site: Site<'_>, serve: usize) -> Least {
    let changes = match site {
        Site::Pit(_, profile) if profile.steps() => Some(profile.at),
        _ => None,
    };
    let mut least = Least::NONE;
    each(model, task, site, serve, |choice| {
        let alone = choice.alone - choice.waits;
        let (from, until) = match changes {
            Some(_) => choice.burning(model),
            None => (i64::MIN, i64::MAX),
        };
        let only = |holds: bool| if holds { alone } else { NEVER };
        least = least.or(Least {
            alone,
            least: choice.least - choice.waits,
            early: only(changes.is_none_or(|at| from < at)),
            late: only(changes.is_none_or(|at| until > at)),
        });
    });
    least
}
