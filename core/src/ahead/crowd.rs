//! The estimator that forecasts are made by: the crowd of [`finish`](crate::finish), told what the log says.

use super::{DoneWhen, Effect, Estimator, Facts, Forecast, Likeness, Made, Spread, Stall};
use crate::{
    checks::cuts::WrapKind,
    finish::{self, CoreAt, Felt, FeltAt, Follow, Outlook, Told, WrapAt},
    log::Wrap,
    moment::MINUTE,
    readings::Reading,
    safety::food_log::TempAt,
    units::Mk,
};

/// What a meat is taken to weigh where nobody weighed it, and what it may weigh, grams. Common practice, no source.
const USUAL_G: i64 = 2_000;
const WEIGHS_G: (i64, i64) = (50, 20_000);
/// What a pit may be meant to be held at, millikelvin: 100 to 480 °F.
const PITS: (Mk, Mk) = (Mk::from_f(100), Mk::from_f(480));
/// Runs of a few members to their ends that are one step of work: about ten milliseconds.
const RUNS: u32 = 16;

/// Forecasts by the crowd.
pub const CROWD: Made = Made {
    version: 2,
    begin: |facts| Some(Box::new(Crowd::begin(facts)?)),
    read: |bytes, facts| Some(Box::new(Crowd::read(bytes, facts)?)),
    taught: |facts, done_at| finish::habits_after(&told(facts), done_at).ok(),
};

struct Crowd {
    follow: Follow,
    outlook: Option<Outlook>,
}

impl Crowd {
    fn begin(facts: &Facts) -> Option<Self> {
        let follow = Follow::start(&told(facts)).ok()?;
        Some(Self {
            follow,
            outlook: None,
        })
    }

    fn read(bytes: &[u8], facts: &Facts) -> Option<Self> {
        let follow = Follow::resume(bytes, &told(facts))?;
        Some(Self {
            follow,
            outlook: None,
        })
    }
}

impl Estimator for Crowd {
    fn absorb(&mut self, facts: &Facts, steps: u32) -> bool {
        let told = told(facts);
        self.outlook = None;
        self.follow.tell(&told);
        (0..steps).all(|_| self.follow.work(&told))
    }

    fn forecast(&mut self, facts: &Facts, steps: u32) -> Option<Forecast> {
        let told = told(facts);
        let mut outlook = self
            .outlook
            .take()
            .unwrap_or_else(|| Outlook::of(&self.follow, &told));
        let runs = steps.saturating_mul(RUNS);
        if (0..runs).all(|_| outlook.work()) {
            self.outlook = Some(outlook);
            return None;
        }
        Some(said(&outlook.forecast(), facts.now))
    }

    fn to_bytes(&self) -> Vec<u8> {
        self.follow.to_bytes()
    }
}

/// What the log says, as the crowd is told it.
fn told(facts: &Facts) -> Told {
    let temp_at = |reading: &Reading| TempAt {
        at: reading.at,
        temp: reading.temp,
    };
    Told {
        cut: facts.cut,
        grams: facts
            .weight_g
            .unwrap_or(USUAL_G)
            .clamp(WEIGHS_G.0, WEIGHS_G.1),
        form: facts.form,
        on_at: facts.put_on,
        now: facts.now,
        start: None,
        pit: facts.pit.iter().map(temp_at).collect(),
        pit_set: Some(facts.pit_meant.clamp(PITS.0, PITS.1)),
        core: inside(facts),
        wraps: facts
            .wrapped
            .iter()
            .map(|wrapped| WrapAt {
                at: wrapped.at,
                wrap: wrapped.wrap.map(kind_of),
            })
            .collect(),
        mops: facts.wetted.clone(),
        openings: facts.opened.clone(),
        checks: facts
            .tried
            .iter()
            .map(|tried| FeltAt {
                at: tried.at,
                felt: match tried.found {
                    Likeness::Far => Felt::NotYet,
                    Likeness::Near => Felt::Close,
                    Likeness::Done => Felt::Tender,
                },
            })
            .collect(),
        done_when: Some(match facts.done_when {
            DoneWhen::Heat(temp) => finish::DoneWhen::Warm { temp },
            DoneWhen::Tender => finish::DoneWhen::Tender,
        }),
        habits: facts.habits,
        key: facts.key,
    }
}

fn inside(facts: &Facts) -> Vec<CoreAt> {
    let core = |reading: &Reading, probe: u32, by_hand: bool| CoreAt {
        at: reading.at,
        temp: reading.temp,
        probe,
        by_hand,
    };
    let probes = facts.inside.iter().zip(0..);
    let probes =
        probes.flat_map(|(series, probe)| series.iter().map(move |r| core(r, probe, false)));
    let hand = facts.by_hand.iter().map(|r| core(r, 0, true));
    probes.chain(hand).collect()
}

const fn kind_of(wrap: Wrap) -> WrapKind {
    match wrap {
        Wrap::Paper => WrapKind::Paper,
        Wrap::Foil => WrapKind::Foil,
        Wrap::Boat => WrapKind::Boat,
        Wrap::Pan => WrapKind::Pan,
    }
}

/// What the crowd answers, as screens read it.
fn said(forecast: &finish::Forecast, made_for: i64) -> Forecast {
    let done = forecast
        .likely
        .zip(forecast.even)
        .map(|(likely, even)| Spread {
            p10: likely.early,
            p25: even.from,
            p50: likely.middle,
            p75: even.to,
            p90: likely.late,
        });
    Forecast {
        made_for,
        done,
        fan: forecast.fan.clone(),
        stall: forecast.stall.map(|stall| Stall {
            from: stall.from,
            until: stall
                .from
                .max(made_for)
                .saturating_add(stall.minutes.saturating_mul(MINUTE)),
            at: stall.from_temp,
        }),
        effects: done.map_or_else(Vec::new, |done| effects(forecast, done)),
        next_check: forecast.next_check,
        rough: forecast.rough,
        doubted: forecast.doubted.clone(),
    }
}

/// Each choice moves all of the forecast by as much as its middle, and no finish before now.
fn effects(forecast: &finish::Forecast, done: Spread) -> Vec<Effect> {
    let moved = |at: i64, minutes: i64| {
        at.saturating_add(minutes.saturating_mul(MINUTE))
            .max(forecast.at)
    };
    let of = |effect: &finish::Effect| Effect {
        change: effect.choice,
        done: Spread {
            p10: moved(done.p10, effect.minutes),
            p25: moved(done.p25, effect.minutes),
            p50: moved(done.p50, effect.minutes),
            p75: moved(done.p75, effect.minutes),
            p90: moved(done.p90, effect.minutes),
        },
    };
    forecast.effects.iter().map(of).collect()
}
