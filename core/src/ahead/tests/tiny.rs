//! An estimator for tests, with no physics: what it says hangs on all that it was shown and on the order in which it was,
//! so that anything that is followed otherwise shows. It takes two steps for each instant, and two for each forecast.

use crate::{
    ahead::{Effect, Estimator, Facts, FanPoint, Forecast, Made, Spread, Stall, WhatIf},
    finish::GRID_MS,
    moment::{HOUR, MINUTE},
    units::Mk,
};
use serde::{Deserialize, Serialize};

pub(crate) const TINY: Made = Made {
    version: 1,
    begin: |facts| Some(Box::new(Tiny::begin(facts))),
    read: |bytes, _| Some(Box::new(rmp_serde::from_slice::<Tiny>(bytes).ok()?)),
    taught: |facts, done_at| {
        let late = done_at - facts.put_on - 5 * HOUR;
        Some(crate::finish::Habits {
            pit_bias_mk: facts.habits.pit_bias_mk - late / 1_000,
            pit_bias_spread_mk: 5_000,
            pace_micro: facts.habits.pace_micro + late / 100,
            pace_spread_micro: 100_000,
            cooks: facts.habits.cooks + 1,
        })
    },
};

#[derive(Clone, Serialize, Deserialize)]
pub(crate) struct Tiny {
    put_on: i64,
    /// A sum over all that was taken in, in its order.
    sum: i64,
    /// What was read last inside.
    last: Mk,
    half: bool,
    until: i64,
}

impl Tiny {
    fn begin(facts: &Facts) -> Self {
        Self {
            put_on: facts.put_on,
            sum: facts.pit_meant.0 + facts.habits.pit_bias_mk,
            last: Mk::from_f(40),
            half: false,
            until: facts.put_on,
        }
    }

    fn take(&mut self, number: i64) {
        self.sum = self.sum.wrapping_mul(31).wrapping_add(number);
    }

    /// Minutes, 0 to 9: a mark of all that was taken in.
    fn mark(&self) -> i64 {
        self.sum.rem_euclid(10) * MINUTE
    }
}

impl Estimator for Tiny {
    fn absorb(&mut self, facts: &Facts, steps: u32) -> bool {
        for _ in 0..steps {
            if !self.half {
                self.half = true;
                continue;
            }
            let since = self.until;
            let new = |at: &i64| *at >= since;
            for series in facts.inside.iter().chain([&facts.pit]) {
                for reading in series.iter().filter(|reading| new(&reading.at)) {
                    self.take(reading.at ^ reading.temp.0);
                }
            }
            for at in facts.opened.iter().filter(|at| new(at)) {
                self.take(*at);
            }
            let read = facts.inside.iter().filter_map(|series| series.last());
            self.last = read.map(|r| r.temp).max().unwrap_or(self.last);
            self.take(facts.now);
            (self.half, self.until) = (false, facts.now);
            return false;
        }
        true
    }

    fn forecast(&mut self, facts: &Facts, steps: u32) -> Option<Forecast> {
        for _ in 0..steps {
            if self.half {
                self.half = false;
                return Some(self.say(facts));
            }
            self.half = true;
        }
        None
    }

    fn to_bytes(&self) -> Vec<u8> {
        rmp_serde::to_vec_named(self).unwrap()
    }
}

impl Tiny {
    fn say(&self, facts: &Facts) -> Forecast {
        let p50 = self.put_on + 6 * HOUR + self.mark();
        let around = |middle: i64| Spread {
            p10: middle - 40 * MINUTE,
            p25: middle - 20 * MINUTE,
            p50: middle,
            p75: middle + 20 * MINUTE,
            p90: middle + 40 * MINUTE,
        };
        let ahead = (1..=6).map(|n| facts.now + n * GRID_MS);
        Forecast {
            made_for: facts.now,
            done: Some(around(p50)),
            fan: ahead
                .map(|at| FanPoint {
                    at,
                    low: Mk(self.last.0 - 2_000),
                    mid: self.last,
                    high: Mk(self.last.0 + 2_000),
                })
                .collect(),
            stall: Some(Stall {
                from: facts.now + HOUR,
                until: facts.now + 3 * HOUR,
                at: Mk::from_f(165),
            }),
            effects: vec![
                Effect {
                    change: WhatIf::HotterPit,
                    done: around(p50 - 30 * MINUTE),
                },
                Effect {
                    change: WhatIf::NoMop,
                    done: around(p50 + 2 * MINUTE),
                },
            ],
            next_check: Some(p50 - 50 * MINUTE),
            rough: true,
            doubted: vec![],
        }
    }
}
