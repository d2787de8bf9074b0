//! Runs members on to their ends. Start at [`Ahead::work`]: one block of members at a time.

use super::{
    DoneWhen, Follow, Told,
    dice::Dice,
    knobs::{self, Knob},
    prior::{self, VAPOR, celsius},
    steps::{mop, wrap_of},
};
use crate::{
    checks::cuts::{DoneBy, WrapKind, cut_facts},
    heat::kernel::{Boundary, LANES, Members},
};

/// Minutes of each step: short ones first, where the answer is near.
const STEPS: [(usize, f32); 3] = [(36, 5.0), (30, 10.0), (48, 20.0)];
/// How far is looked, minutes.
pub const HORIZON: f32 = 36.0 * 5.0 + 30.0 * 10.0 + 48.0 * 20.0;
/// The bark closes in so many steps at a time.
const BARK_EVERY: usize = 6;
/// The pit of the hours ahead is its mean of so many minutes.
const PIT_MINUTES: i64 = 90;
/// And strays from it for good by so much, K, beside a quarter of what it strayed.
const PIT_STRAYS: f64 = 2.0;
/// Where feel decides beside a temperature, done lies about it by so much, K.
const BESIDE: f32 = 0.5;

/// What is done from now on.
#[derive(Clone, Copy, Debug)]
pub struct Plan {
    /// The pit, °C.
    pub pit_c: f64,
    /// How far that strays, K.
    pub strays: f64,
    /// What it lies in.
    pub wrap: Option<WrapKind>,
    /// Minutes between mops, and until the next.
    pub mops: Option<(f32, f32)>,
}

impl Plan {
    /// As it goes now.
    pub fn as_now(follow: &Follow) -> Self {
        let (now, steps) = (follow.at(), follow.steps());
        let (pit_c, swing) = steps.pit_lately(now, PIT_MINUTES);
        let mops = steps.mops_every(now).map(|every| {
            let since = steps
                .last_mop(now)
                .map_or(0.0, |last| (now - last) as f64 / 60_000.0);
            (every as f32, (every - since).max(0.0) as f32)
        });
        Self {
            pit_c,
            strays: PIT_STRAYS + swing / 4.0,
            wrap: steps.wrap_at(now),
            mops,
        }
    }
}

/// What ends it.
#[derive(Clone, Copy, Debug)]
enum End {
    Warm { celsius: f32, beside: f32 },
    Tender { least: f32 },
}

/// Members under way to their ends.
#[derive(Clone, Debug)]
pub struct Ahead {
    plan: Plan,
    /// Every so many blocks one is run.
    every: usize,
    next: usize,
    /// Minutes to each member's end, in the order of the members that were run.
    pub to_go: Vec<f32>,
    /// Core temperature of each of them after each step, °C: first now.
    pub fan: Vec<Vec<f32>>,
}

/// Where all members start from, and what ends them.
#[derive(Clone, Debug)]
pub struct Start {
    /// The crowd as far as it has followed.
    pub follow: Follow,
    end: End,
    key: u64,
    hours: f32,
}

impl Start {
    /// Of a crowd that has followed what is told.
    pub fn of(follow: &Follow, told: &Told) -> Self {
        let end = match told.done() {
            DoneWhen::Tender => End::Tender {
                least: celsius(told.tender_from()) as f32,
            },
            DoneWhen::Warm { temp } => End::Warm {
                celsius: celsius(temp) as f32,
                beside: if cut_facts(told.cut).done_by == DoneBy::Temperature {
                    0.0
                } else {
                    BESIDE
                },
            },
        };
        let hours = (follow.at() - told.on_at).max(0) as f32 / 3.6e6;
        Self {
            follow: follow.clone(),
            end,
            key: told.key,
            hours,
        }
    }
}

impl Ahead {
    /// Every so many blocks of members, under a plan.
    pub const fn with(plan: Plan, every: usize) -> Self {
        Self {
            plan,
            every,
            next: 0,
            to_go: vec![],
            fan: vec![],
        }
    }

    /// Runs one more block of members; false after the last.
    pub fn work(&mut self, from: &Start) -> bool {
        let blocks = from.follow.crowd.blocks.len();
        if self.next < blocks {
            self.run(from, self.next);
            self.next += self.every;
        }
        self.next < blocks
    }

    fn run(&mut self, from: &Start, index: usize) {
        let mut block = from.follow.crowd.blocks[index].clone();
        let first = index * LANES;
        let beside = Dice::of(from.key, from.follow.step, 81);
        let aims: [f32; LANES] = std::array::from_fn(|lane| match from.end {
            End::Warm {
                celsius,
                beside: wide,
            } => celsius + wide * beside.normal(first + lane),
            End::Tender { .. } => 1.0,
        });
        let mut so_far = SoFar::of(from, &block, first);
        let (mut minute, mut mop_in) = (0.0, self.plan.mops.map(|(_, first)| first));
        let mut last = 0;
        self.keep(last, &block);
        for (step, minutes) in STEPS
            .iter()
            .flat_map(|(count, minutes)| std::iter::repeat_n(*minutes, *count))
            .enumerate()
        {
            if so_far.all_done(&aims) {
                break;
            }
            let mut around = Boundary::pit(self.plan.pit_c, VAPOR);
            around.wrap = wrap_of(self.plan.wrap);
            around.mop = mop(self.mops_in(&mut mop_in, minutes));
            if step % BARK_EVERY == 0 {
                self.make(from, index, &mut block, minute);
            }
            prior::go_on(&mut block, &around, f64::from(minutes));
            minute += minutes;
            so_far.take(from, &block, first, minute, minutes, &aims);
            last = step + 1;
            self.keep(last, &block);
        }
        for later in last + 1..self.fan.len() {
            self.put(later, block.state.core().0);
        }
        self.to_go
            .extend(so_far.ends.map(|end| end.unwrap_or(HORIZON)));
    }

    /// Makes a block's members what they are after so many minutes more, each in its own pit of the hours ahead.
    fn make(&self, from: &Start, index: usize, block: &mut Members, minute: f32) {
        let (crowd, prior) = (&from.follow.crowd, &from.follow.prior);
        let strays = Dice::of(from.key, from.follow.step, 80);
        for lane in 0..LANES {
            let member = index * LANES + lane;
            let mut drawn = prior.member(&crowd.knobs[member], from.hours + minute / 60.0);
            drawn.pit_bias += self.plan.strays * f64::from(strays.normal(member));
            block.params.set(lane, &drawn);
        }
    }

    fn mops_in(&self, due: &mut Option<f32>, minutes: f32) -> f64 {
        let (Some((every, _)), Some(due)) = (self.plan.mops, due.as_mut()) else {
            return 0.0;
        };
        let mut mops = 0.0;
        *due -= minutes;
        while *due <= 0.0 {
            *due += every.max(5.0);
            mops += 1.0;
        }
        mops
    }

    /// Keeps the cores after a step.
    fn keep(&mut self, step: usize, block: &Members) {
        if self.fan.len() <= step {
            // Blocks that ended before stay at what they had.
            let before = self.fan.last().cloned().unwrap_or_default();
            self.fan.push(before);
        }
        self.put(step, block.state.core().0);
    }

    fn put(&mut self, step: usize, cores: [f32; LANES]) {
        let at = self.to_go.len();
        self.fan[step].truncate(at);
        self.fan[step].extend(cores);
    }
}

/// The minute of each step of [`Ahead::fan`].
pub fn minute_of(step: usize) -> f32 {
    let mut left = step;
    STEPS.iter().fold(0.0, |minute, (count, minutes)| {
        let here = left.min(*count);
        left -= here;
        minute + here as f32 * minutes
    })
}

/// How far each member of a block is on its way.
struct SoFar {
    now: [f32; LANES],
    ends: [Option<f32>; LANES],
}

impl SoFar {
    fn of(from: &Start, block: &Members, first: usize) -> Self {
        let now = match from.end {
            End::Warm { .. } => block.state.core().0,
            End::Tender { .. } => std::array::from_fn(|lane| from.follow.crowd.dose[first + lane]),
        };
        Self {
            now,
            ends: [None; LANES],
        }
    }

    /// Whether all are at their ends; one that is there from the start ends at once.
    fn all_done(&mut self, aims: &[f32; LANES]) -> bool {
        let lanes = self.now.iter().zip(aims).zip(&mut self.ends);
        for ((now, aim), end) in lanes {
            if end.is_none() && now >= aim {
                *end = Some(0.0);
            }
        }
        self.ends.iter().all(Option::is_some)
    }

    fn take(
        &mut self,
        from: &Start,
        block: &Members,
        first: usize,
        minute: f32,
        minutes: f32,
        aims: &[f32; LANES],
    ) {
        let after: [f32; LANES] = match from.end {
            End::Warm { .. } => block.state.core().0,
            End::Tender { least } => {
                let (mean, core) = (prior::mean_c(block), block.state.core());
                std::array::from_fn(|lane| {
                    let knobs = &from.follow.crowd.knobs[first + lane];
                    let z = knobs::z_kelvin(knobs[Knob::Z as usize]);
                    let more = minutes * prior::pace(mean.0[lane], z)
                        / from.follow.prior.tender_min(knobs).max(1e-3);
                    // Nothing is tender before its coldest place is warm enough for it.
                    let most = if core.0[lane] < least {
                        0.999
                    } else {
                        f32::MAX
                    };
                    (self.now[lane] + more).min(most)
                })
            }
        };
        let lanes = after.iter().zip(aims).zip(&self.now).zip(&mut self.ends);
        for (((after, aim), now), end) in lanes {
            if end.is_none() && after >= aim {
                let share = (aim - now) / (after - now).max(1e-6);
                *end = Some(minute - minutes * (1.0 - share.clamp(0.0, 1.0)));
            }
        }
        self.now = after;
    }
}
