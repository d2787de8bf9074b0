//! What can be chosen for each task at each site, made once. Start at [`Shelf::of`].

use crate::plan::{
    choice::{Choice, Site, choices},
    model::{Heat, Model},
};
use std::{cell::RefCell, cmp::Reverse, rc::Rc};

/// For each task and slot of its serving, a row of what was made.
type Rows = Vec<Vec<Vec<Option<Rc<[Choice]>>>>>;

/// Choices by task, slot of its serving, pit and profile; made when they are first asked for.
pub(super) struct Shelf<'a> {
    model: &'a Model,
    /// For each task, the first one alike in everything.
    alike: Vec<usize>,
    /// For each pit, where its profiles begin in a row.
    starts: Vec<usize>,
    rows: RefCell<Rows>,
}

impl<'a> Shelf<'a> {
    pub fn new(model: &'a Model) -> Self {
        let mut starts = vec![0];
        for pit in &model.pits {
            starts.push(starts[starts.len() - 1] + pit.profiles.len());
        }
        let width = starts[starts.len() - 1].max(1);
        let alike = |at: usize| {
            let first = model
                .tasks
                .iter()
                .position(|other| *other == model.tasks[at]);
            first.unwrap_or(at)
        };
        let rows = model
            .tasks
            .iter()
            .map(|task| vec![vec![None; width]; model.servings[task.serving].len()]);
        Self {
            model,
            alike: (0..model.tasks.len()).map(alike).collect(),
            starts,
            rows: RefCell::new(rows.collect()),
        }
    }

    /// The choices for a task at each pit as it runs in a setting, and in the kitchen, that cost less than `limit`.
    pub fn of(&self, task: usize, serve: usize, setting: &[usize], limit: u128) -> Vec<List> {
        let heat = self.model.tasks[task].heat;
        let pits = setting.iter().enumerate().map(|(pit, profile)| match heat {
            Heat::Pit => {
                let site = Site::Pit(pit, &self.model.pits[pit].profiles[*profile]);
                List::below(
                    self.at(task, serve, self.starts[pit] + profile, site),
                    limit,
                )
            }
            Heat::Burner | Heat::None => List::below(Rc::new([]), limit),
        });
        let kitchen = match heat {
            Heat::Pit => List::below(Rc::new([]), limit),
            Heat::Burner | Heat::None => List::below(self.at(task, serve, 0, Site::Kitchen), limit),
        };
        pits.chain([kitchen]).collect()
    }

    fn at(&self, task: usize, serve: usize, column: usize, site: Site<'_>) -> Rc<[Choice]> {
        let task = self.alike[task];
        if let Some(made) = &self.rows.borrow()[task][serve][column] {
            return made.clone();
        }
        let mut made = choices(self.model, &self.model.tasks[task], site, serve);
        made.sort_by_key(rank);
        let made: Rc<[Choice]> = made.into();
        self.rows.borrow_mut()[task][serve][column] = Some(made.clone());
        made
    }
}

/// The choices of one task at one site that may be worth it, the cheapest first, of equal ones the later start.
pub(super) struct List {
    all: Rc<[Choice]>,
    count: usize,
}

impl List {
    fn below(all: Rc<[Choice]>, limit: u128) -> Self {
        let count = all.partition_point(|choice| choice.alone < limit);
        Self { all, count }
    }

    pub fn all(&self) -> &[Choice] {
        &self.all[..self.count]
    }
}

/// The order in which choices are tried: total, so that the same household has the same plan everywhere.
pub(super) fn rank(choice: &Choice) -> (u128, u128, Reverse<i16>, u8, Reverse<i16>, u8) {
    (
        choice.alone,
        choice.least,
        Reverse(choice.on),
        choice.pit,
        Reverse(choice.cut),
        choice.place,
    )
}
