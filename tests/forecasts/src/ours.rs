//! What Slowbend says of an invented cook, told only what a cook would know then.

use crate::invent::{cook::Felt as Said, cook::Invented, probe::Reading};
use crate::physics::run::Wrap;
use slowbend_core::{
    checks::cuts::WrapKind,
    finish::{CoreAt, DoneWhen, Felt, FeltAt, Follow, Forecast, Habits, Told, WrapAt, forecast_of},
    safety::{Form, food_log::TempAt},
    units::Mk,
};

/// When invented meat comes on, milliseconds since 1970: an instant of the grid.
const ON: i64 = 1_795_000_200_000;

/// Follows one cook.
pub struct Ours<'a> {
    cook: &'a Invented,
    follow: Option<Follow>,
    habits: Habits,
    key: u64,
    members: usize,
}

impl<'a> Ours<'a> {
    /// With so many members.
    pub fn of(cook: &'a Invented, key: u64, habits: Habits, members: usize) -> Self {
        Self {
            cook,
            follow: None,
            habits,
            key,
            members,
        }
    }

    /// What is known then, as it is told.
    pub fn told(&self, now: usize) -> Told {
        let cook = self.cook;
        Told {
            cut: cook.meat.cut,
            grams: cook.meat.grams as i64,
            form: Form::Intact,
            on_at: ON,
            now: at(now),
            start: None,
            pit: temps(&cook.pit_said, now).collect(),
            pit_set: None,
            core: temps(&cook.core_said, now)
                .map(|one| CoreAt {
                    at: one.at,
                    temp: one.temp,
                    probe: 0,
                    by_hand: false,
                })
                .collect(),
            wraps: cook
                .done
                .wrap
                .iter()
                .filter(|wrap| wrap.0 <= now)
                .map(wrapped)
                .collect(),
            mops: cook
                .done
                .mops
                .iter()
                .filter(|mop| **mop <= now)
                .map(|mop| before(*mop))
                .collect(),
            openings: cook
                .openings
                .iter()
                .filter(|one| **one <= now)
                .map(|one| before(*one))
                .collect(),
            checks: cook
                .checks
                .iter()
                .filter(|check| check.0 <= now)
                .map(felt)
                .collect(),
            done_when: Some(
                cook.target
                    .map_or(DoneWhen::Tender, |target| DoneWhen::Warm {
                        temp: mk(target),
                    }),
            ),
            habits: self.habits,
            key: self.key,
        }
    }

    /// The forecast then; moments have to rise.
    ///
    /// # Panics
    /// Where an invented cook is none.
    pub fn forecast(&mut self, now: usize) -> Forecast {
        let told = self.told(now);
        let mut follow = self.follow.take().unwrap_or_else(|| {
            Follow::start_with(&told, self.members).expect("an invented cook can be")
        });
        assert!(follow.tell(&told), "facts are told in order");
        while follow.work(&told) {}
        let forecast = forecast_of(&follow, &told);
        self.follow = Some(follow);
        forecast
    }

    /// Minutes to go, points in order.
    pub fn points(&mut self, now: usize) -> Vec<f64> {
        let points = self.forecast(now).points;
        points
            .iter()
            .map(|point| (point - at(now)) as f64 / 60_000.0)
            .collect()
    }
}

/// An instant of a cook.
fn at(minute: usize) -> i64 {
    ON + minute as i64 * 60_000
}

/// Just before it: what happened by then is known then.
fn before(minute: usize) -> i64 {
    at(minute) - 1
}

fn mk(celsius: f64) -> Mk {
    Mk::from_c_milli((celsius * 1e3) as i64)
}

fn temps(said: &[Reading], now: usize) -> impl Iterator<Item = TempAt> + '_ {
    said.iter()
        .filter(move |one| one.minute <= now)
        .map(|one| TempAt {
            at: before(one.minute),
            temp: mk(one.celsius),
        })
}

fn wrapped((minute, wrap): &(usize, Wrap)) -> WrapAt {
    let wrap = match wrap {
        Wrap::Paper => WrapKind::Paper,
        Wrap::Foil => WrapKind::Foil,
    };
    WrapAt {
        at: before(*minute),
        wrap: Some(wrap),
    }
}

fn felt((minute, felt): &(usize, Said)) -> FeltAt {
    let felt = match felt {
        Said::NotYet => Felt::NotYet,
        Said::Close => Felt::Close,
    };
    FeltAt {
        at: before(*minute),
        felt,
    }
}
