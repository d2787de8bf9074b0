//! What can be chosen for each task at each site, made once. Start at [`Shelf::of`].

use crate::plan::{
    choice::{Choice, NONE, Site, choices, night},
    model::{Heat, Model, Task},
};
use std::{cell::RefCell, cmp::Reverse, rc::Rc};

/// For each task and slot of its serving, a row of what was made.
type Rows = Vec<Vec<Vec<Option<Rc<Listed>>>>>;

/// All choices of one task at one site, and what holds for all of them.
struct Listed {
    choices: Vec<Choice>,
    /// Of the first so many: when the pit burns at the soonest, and from where to where all of them are on.
    soonest: Vec<i64>,
    sure: Vec<(i64, i64)>,
}

impl Listed {
    fn of(model: &Model, choices: Vec<Choice>) -> Self {
        let (mut soonest, mut sure) = (vec![], vec![]);
        let (mut first, mut both) = (i64::MAX, (i64::MIN, i64::MAX));
        for choice in &choices {
            if choice.pit != NONE {
                first = first.min(choice.burning(model).0);
            }
            let (on, late) = (i64::from(choice.on.max(0)), i64::from(choice.late));
            both = (both.0.max(on), both.1.min(late));
            soonest.push(first);
            sure.push(both);
        }
        Self {
            choices,
            soonest,
            sure,
        }
    }
}

/// The same without cutting, waiting and places to hold: of those that are on at the same time the one that costs the least.
fn loosened(model: &Model, choices: &[Choice]) -> Vec<Choice> {
    let loosen = |choice: &Choice| {
        let [on, off, _] = choice.jobs;
        let jobs = [on, off, (off.0, 0)];
        Choice {
            place: NONE,
            alone: choice.alone - choice.waits,
            waits: 0,
            night: night(model, &jobs),
            jobs,
            ..*choice
        }
    };
    let mut all: Vec<Choice> = choices.iter().map(loosen).collect();
    let when = |choice: &Choice| (choice.on, choice.off, choice.late);
    all.sort_by_key(|choice| (when(choice), choice.alone));
    all.dedup_by_key(|choice| when(choice));
    all.sort_by_key(rank);
    all
}

/// Choices by task, slot of its serving, pit and profile; made when they are first asked for.
pub(super) struct Shelf<'a> {
    model: &'a Model,
    /// For each task, the first one alike in everything.
    alike: Vec<usize>,
    /// For each pit, where its profiles begin in a row.
    starts: Vec<usize>,
    /// As they are, and loosened.
    rows: RefCell<[Rows; 2]>,
    /// Where there is nothing to choose.
    none: Rc<Listed>,
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
        let rows = || -> Rows {
            let tasks = model.tasks.iter();
            let row = |task: &Task| vec![vec![None; width]; model.servings[task.serving].len()];
            tasks.map(row).collect()
        };
        Self {
            model,
            alike: (0..model.tasks.len()).map(alike).collect(),
            starts,
            rows: RefCell::new([rows(), rows()]),
            none: Rc::new(Listed::of(model, vec![])),
        }
    }

    /// The choices for a task at each pit as it runs in a setting, and in the kitchen, that cost less than `limit`.
    pub fn of(&self, task: usize, serve: usize, setting: &[usize], limit: u128) -> Vec<List> {
        let heat = self.model.tasks[task].heat;
        let none = || List {
            of: self.none.clone(),
            count: 0,
        };
        let pits = setting.iter().enumerate().map(|(pit, profile)| match heat {
            Heat::Pit => List::below(self.at(task, serve, pit, *profile, false), limit),
            Heat::Burner | Heat::None => none(),
        });
        let kitchen = match heat {
            Heat::Pit => none(),
            Heat::Burner | Heat::None => {
                List::below(self.at(task, serve, self.model.pits.len(), 0, false), limit)
            }
        };
        pits.chain([kitchen]).collect()
    }

    /// The choices for a task at a site that runs so, which cost less than `limit`.
    pub fn at_site(
        &self,
        task: usize,
        serve: usize,
        (site, profile): (usize, usize),
        loose: bool,
        limit: u128,
    ) -> List {
        List::below(self.at(task, serve, site, profile, loose), limit)
    }

    fn at(
        &self,
        task: usize,
        serve: usize,
        site: usize,
        profile: usize,
        loose: bool,
    ) -> Rc<Listed> {
        let task = self.alike[task];
        let (column, way) = match self.model.pits.get(site) {
            Some(pit) => (self.starts[site] + profile, Some(&pit.profiles[profile])),
            None => (0, None),
        };
        let row = usize::from(loose);
        if let Some(made) = &self.rows.borrow()[row][task][serve][column] {
            return made.clone();
        }
        let its = way.map_or(Site::Kitchen, |way| Site::Pit(site, way));
        let choices = match loose {
            true => loosened(
                self.model,
                self.at(task, serve, site, profile, false)
                    .choices
                    .as_slice(),
            ),
            false => {
                let mut choices = choices(self.model, &self.model.tasks[task], its, serve);
                choices.sort_by_key(rank);
                choices
            }
        };
        let made = Rc::new(Listed::of(self.model, choices));
        self.rows.borrow_mut()[row][task][serve][column] = Some(made.clone());
        made
    }
}

/// The choices of one task at one site that may be worth it, the cheapest first, of equal ones the later start.
pub(super) struct List {
    of: Rc<Listed>,
    count: usize,
}

impl List {
    fn below(of: Rc<Listed>, limit: u128) -> Self {
        let count = of.choices.partition_point(|choice| choice.alone < limit);
        Self { of, count }
    }

    pub fn all(&self) -> &[Choice] {
        &self.of.choices[..self.count]
    }

    /// When the pit burns at the soonest for one of them.
    pub fn soonest(&self) -> i64 {
        let last = self.count.checked_sub(1);
        last.map_or(i64::MAX, |last| self.of.soonest[last])
    }

    /// From where to where all of them are on.
    pub fn sure(&self) -> (i64, i64) {
        let last = self.count.checked_sub(1);
        last.map_or((i64::MIN, i64::MAX), |last| self.of.sure[last])
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
