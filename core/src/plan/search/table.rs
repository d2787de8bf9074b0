//! The least that each task can cost at each site. Start at [`Table::of`].

use crate::plan::{
    choice::{Choice, Site, each, each_of},
    model::{Fixed, Heat, Model, PitModel, Profile, Task},
    times::up,
};

/// What nothing can be done for.
pub(super) const NEVER: u128 = u128::MAX >> 4;

/// The least of one task at one site for one slot of its serving.
#[derive(Clone, Copy, Debug)]
pub(super) struct Least {
    /// Of what it costs whatever else is chosen, but for waiting cut.
    pub alone: u128,
    /// With its openings and fuel, where nothing else is on its pit.
    pub fires: u128,
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
        fires: NEVER,
        least: NEVER,
        early: NEVER,
        late: NEVER,
    };

    /// Of one choice, with a pit that burns for it before and after.
    fn of(choice: &Choice) -> Self {
        let alone = choice.alone - choice.waits;
        Self {
            alone,
            fires: choice.fires - choice.waits,
            least: choice.least - choice.waits,
            early: alone,
            late: alone,
        }
    }

    /// Where its pit burns for it only before the change.
    const fn early(self) -> Self {
        Self {
            late: NEVER,
            ..self
        }
    }

    /// Only after.
    const fn late(self) -> Self {
        Self {
            early: NEVER,
            ..self
        }
    }

    /// The less of both, each by itself.
    pub fn or(self, other: Self) -> Self {
        Self {
            alone: self.alone.min(other.alone),
            fires: self.fires.min(other.fires),
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
                    .map(|serve| row(model, task, serve))
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

/// The least at each site; at each pit, of each of its profiles.
fn row(model: &Model, task: &Task, serve: usize) -> Vec<Least> {
    if task.heat != Heat::Pit {
        return vec![least(model, task, Site::Kitchen, serve)];
    }
    let pits = model.pits.iter().enumerate();
    pits.flat_map(|(at, pit)| of_pit(model, task, serve, at, pit))
        .collect()
}

/// The least of each profile. What is over before a change costs what it costs without one, and so does what begins after it:
/// only what is on while the pit changes is tried for each change.
fn of_pit(model: &Model, task: &Task, serve: usize, at: usize, pit: &PitModel) -> Vec<Least> {
    if task.fixed != Fixed::Nothing {
        let profiles = pit.profiles.iter();
        return profiles
            .map(|profile| least(model, task, Site::Pit(at, profile), serve))
            .collect();
    }
    let singles = pit.profiles.iter().filter(|profile| !profile.steps());
    let singles: Vec<(usize, Single)> = singles
        .map(|profile| {
            let site = Site::Pit(at, profile);
            (profile.a, Single::of(model, task, site, serve))
        })
        .collect();
    let none = Single::none();
    let single = |temp: usize| {
        let found = singles.iter().find(|(of, _)| *of == temp);
        found.map_or(&none, |(_, single)| single)
    };
    let of = |profile: &Profile| {
        if !profile.steps() {
            return single(profile.a).all;
        }
        let longest = task.times[at][profile.a].map_or(1, |four| four[3].max(1));
        let (over, after) = (profile.at - up(longest), profile.at + pit.preheat);
        let among = (over + 1, after - 1);
        let site = Site::Pit(at, profile);
        least_of(model, task, site, serve, among)
            .or(single(profile.a).until(over).early())
            .or(single(profile.b).from(after).late())
    };
    pit.profiles.iter().map(of).collect()
}

/// The least without a change, by the slot in which it goes on.
struct Single {
    first: i64,
    /// Of all that go on until then, and from then on.
    until: Vec<Least>,
    from: Vec<Least>,
    all: Least,
}

impl Single {
    const fn none() -> Self {
        Self {
            first: 0,
            until: vec![],
            from: vec![],
            all: Least::NONE,
        }
    }

    fn of(model: &Model, task: &Task, site: Site<'_>, serve: usize) -> Self {
        let (mut first, mut by_slot) = (0, Vec::<Least>::new());
        each(model, task, site, serve, |choice| {
            let on = i64::from(choice.on);
            if by_slot.is_empty() {
                first = on;
            }
            by_slot.resize(by_slot.len().max((on - first) as usize + 1), Least::NONE);
            let slot = &mut by_slot[(on - first) as usize];
            *slot = slot.or(Least::of(&choice));
        });
        let sum = |least: &mut Least, other: &Least| {
            *least = least.or(*other);
            Some(*least)
        };
        let until: Vec<Least> = by_slot.iter().scan(Least::NONE, sum).collect();
        let mut from: Vec<Least> = by_slot.iter().rev().scan(Least::NONE, sum).collect();
        from.reverse();
        Self {
            first,
            all: until.last().copied().unwrap_or(Least::NONE),
            until,
            from,
        }
    }

    fn until(&self, slot: i64) -> Least {
        let last = self.until.len() as i64 - 1;
        match slot < self.first || last < 0 {
            true => Least::NONE,
            false => self.until[(slot - self.first).min(last) as usize],
        }
    }

    fn from(&self, slot: i64) -> Least {
        let at = (slot - self.first).max(0) as usize;
        self.from.get(at).copied().unwrap_or(Least::NONE)
    }
}

fn least(model: &Model, task: &Task, site: Site<'_>, serve: usize) -> Least {
    least_of(model, task, site, serve, (i64::MIN, i64::MAX))
}

/// The least of what goes on in these slots.
fn least_of(model: &Model, task: &Task, site: Site<'_>, serve: usize, among: (i64, i64)) -> Least {
    let changes = match site {
        Site::Pit(_, profile) if profile.steps() => Some(profile.at),
        _ => None,
    };
    let mut least = Least::NONE;
    each_of(model, task, site, serve, among, |choice| {
        let its = Least::of(&choice);
        let Some(at) = changes else {
            least = least.or(its);
            return;
        };
        let (from, until) = choice.burning(model);
        let early = if from < at { its.early } else { NEVER };
        let late = if at < until { its.late } else { NEVER };
        least = least.or(Least { early, late, ..its });
    });
    least
}
