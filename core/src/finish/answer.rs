//! What a forecast answers.

use super::{
    Follow, GRID_MS, Told,
    ahead::{Ahead, HORIZON, Plan, Start, minute_of},
    blend,
    effects::{choices, effects},
    next::{NextCheck, Prices, next_check},
    stall::stall,
    told::DoneWhen,
};
use crate::{moment::MINUTE, units::Mk};
use serde::{Deserialize, Serialize};

/// When it will be done, and how the way there looks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Forecast {
    /// The instant of the grid that it was made for, milliseconds since 1970.
    pub at: i64,
    /// When it is done at 10, 50 and 90 %, milliseconds since 1970; none where one of them lies more than a day ahead.
    pub likely: Option<Likely>,
    /// It is as likely as not done between these, milliseconds since 1970.
    pub even: Option<Even>,
    /// Forty instants in order, each as likely as any other, milliseconds since 1970; what lies more than a day ahead stands there.
    pub points: Vec<i64>,
    /// The core ahead, for a chart: from now to where nine in ten are done.
    pub fan: Vec<FanPoint>,
    /// Where it will hang, if it will.
    pub stall: Option<Stall>,
    /// What each choice would change.
    pub effects: Vec<Effect>,
    /// When to check next, at the usual prices; none where its end is told by a probe.
    pub next_check: Option<i64>,
    /// Whether nothing but the cut and its weight speaks yet: no reading of its inside and no check.
    pub bare: bool,
    /// Probes whose last reading was passed over as strange.
    pub doubted: Vec<u32>,
    /// True until it was scored on real cooks: whoever shows it says "rough".
    pub rough: bool,
}

/// Three instants in order, milliseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Likely {
    /// One in ten are done before.
    pub early: i64,
    /// Half of them are.
    pub middle: i64,
    /// Nine in ten are.
    pub late: i64,
}

/// Two instants in order, milliseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Even {
    /// One in four are done before.
    pub from: i64,
    /// Three in four are.
    pub to: i64,
}

/// The core at one instant ahead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FanPoint {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// One in ten are colder, millikelvin.
    pub low: Mk,
    /// Half of them are.
    pub mid: Mk,
    /// Nine in ten are.
    pub high: Mk,
}

/// A stretch in which it hardly warms.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Stall {
    /// The core where it begins, millikelvin.
    pub from_temp: Mk,
    /// When that is, milliseconds since 1970; in the past where it is in it.
    pub from: i64,
    /// How long it lasts from there or from now on, minutes.
    pub minutes: i64,
}

/// Something that can be done now.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum WhatIf {
    /// Hold the pit 25 °F hotter.
    HotterPit,
    /// Wrap it in foil.
    WrapNow,
    /// Mop no more.
    NoMop,
}

/// What one choice would change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Effect {
    /// The choice.
    pub choice: WhatIf,
    /// The middle of the forecast moves by so many minutes; less than nothing is sooner.
    pub minutes: i64,
}

/// A forecast on its way, in steps that can be stopped between any two. Start at [`Outlook::of`].
#[derive(Clone, Debug)]
pub struct Outlook {
    told: Told,
    from: Start,
    now: Ahead,
    choices: Vec<(WhatIf, Ahead)>,
}

impl Outlook {
    /// Of a crowd that has followed what is told.
    pub fn of(follow: &Follow, told: &Told) -> Self {
        Self {
            told: told.clone(),
            from: Start::of(follow, told),
            now: Ahead::with(Plan::as_now(follow), 1),
            choices: choices(follow, told),
        }
    }

    /// Runs eight more members to their ends, about half a millisecond; false where all are there.
    pub fn work(&mut self) -> bool {
        let from = &self.from;
        self.now.work(from) || self.choices.iter_mut().any(|(_, ahead)| ahead.work(from))
    }

    /// Minutes that the middle member has to go as it goes now; all that is not done yet is done first.
    pub(super) fn middle_to_go(mut self) -> f64 {
        while self.now.work(&self.from) {}
        let mut to_go: Vec<f64> = self.now.to_go.iter().map(|one| f64::from(*one)).collect();
        to_go.sort_by(f64::total_cmp);
        blend::quantile(&to_go, 0.5)
    }

    /// The forecast; all that is not done yet is done first.
    pub fn forecast(mut self) -> Forecast {
        while self.work() {}
        answer(&self.from.follow, &self, &self.told)
    }
}

/// The answer of a crowd that has run to its end.
fn answer(follow: &Follow, outlook: &Outlook, told: &Told) -> Forecast {
    let (at, ahead) = (follow.at(), &outlook.now);
    let points = blend::points(follow, ahead, told);
    let instant = |minutes: f64| at + libm::round(minutes * MINUTE as f64) as i64;
    let quantile = |share: f64| blend::quantile(&points, share);
    let seen = |share: f64| {
        Some(quantile(share))
            .filter(|minutes| *minutes < f64::from(HORIZON) - 1.0)
            .map(instant)
    };
    let likely = || {
        Some(Likely {
            early: seen(0.1)?,
            middle: seen(0.5)?,
            late: seen(0.9)?,
        })
    };
    let even = || {
        Some(Even {
            from: seen(0.25)?,
            to: seen(0.75)?,
        })
    };
    let instants: Vec<i64> = points.iter().map(|minutes| instant(*minutes)).collect();
    let by_feel = told.done() == DoneWhen::Tender;
    let asks = NextCheck {
        now: at,
        points: instants.clone(),
        due: vec![],
        prices: Prices::default(),
        soonest: None,
    };
    Forecast {
        at,
        likely: likely(),
        even: even(),
        fan: fan(at, ahead, quantile(0.9)),
        stall: stall(follow, ahead),
        effects: effects(ahead, &outlook.choices),
        next_check: by_feel
            .then(|| next_check(&asks).ok().map(|next| next.at))
            .flatten(),
        points: instants,
        bare: told.core.iter().all(|one| one.at >= at)
            && told.checks.iter().all(|one| one.at >= at),
        doubted: follow.doubted(),
        rough: true,
    }
}

fn fan(at: i64, ahead: &Ahead, until: f64) -> Vec<FanPoint> {
    let mut fan = vec![];
    for (step, cores) in ahead.fan.iter().enumerate() {
        let mut sorted = cores.clone();
        sorted.sort_by(f32::total_cmp);
        let of = |share: f32| {
            Mk(
                (f64::from(sorted[((sorted.len() - 1) as f32 * share) as usize]) * 1e3) as i64
                    + 273_150,
            )
        };
        let minute = minute_of(step);
        fan.push(FanPoint {
            at: at + (minute / 5.0) as i64 * GRID_MS,
            low: of(0.1),
            mid: of(0.5),
            high: of(0.9),
        });
        if f64::from(minute) >= until {
            break;
        }
    }
    fan
}
