//! The section of the hours ahead on the screen of one meat.

use super::{AheadCard, AheadChoice};
use crate::{
    acts::Act,
    ahead::{Ahead, Effect, Forecast, Spread, Stall, WhatIf, settle},
    alarms::Due,
    cook::{Cook, Piece},
    log::Job,
    moment::{HOUR, MINUTE},
    screens::{Button, Tone, glance::Glance},
    units::Mk,
    words::Arg,
};

/// What "hotter" means: 25 °F, as a difference in millikelvin.
const HOTTER: Mk = Mk(13_889);
/// A finish that moves by less than this does not move, milliseconds. Common practice, no source.
const NO_CHANGE_MS: i64 = 5 * MINUTE;
/// How far ahead a check may be put, minutes: as far as any job is put off.
const PUT_OFF_MINUTES: std::ops::RangeInclusive<i64> = 1..=240;

impl Glance<'_> {
    /// None where nothing is forecast.
    pub fn ahead_card(&self, cook: &Cook, piece: &Piece, dues: &[Due]) -> Option<AheadCard> {
        let ahead = self.ahead_of(cook, piece)?;
        let Ahead { forecast, told } = ahead;
        let ready = match told {
            Some(told) => Self::begins(&self.ready_line(told, forecast.rough)),
            None => self.say.text("ahead-none-in-sight"),
        };
        let check = told.and_then(|told| self.check_line(piece, &told, dues));
        Some(AheadCard {
            heading: self.say.text("ahead-heading"),
            ready,
            check: check.as_deref().map(Self::begins),
            accept: told
                .and_then(|told| told.check)
                .and_then(|at| self.accept(cook, piece, at, dues)),
            stall: forecast.stall.map(|stall| self.stall(&stall)),
            choices_heading: self.say.text("ahead-choices"),
            choices: self.choices(forecast),
            notes: self.ahead_notes(ahead),
        })
    }

    /// Puts the next check where it pays, where it would ring before. What rings then is the job that was put off.
    fn accept(&self, cook: &Cook, piece: &Piece, at: i64, dues: &[Due]) -> Option<Button> {
        let at = self.opening_near(piece, at, dues).unwrap_or(at);
        let job = Job::Check(piece.id);
        let due = dues.iter().find(|due| due.job == job)?;
        let minutes = self.ahead(at) / MINUTE;
        let sooner = due.at < at && PUT_OFF_MINUTES.contains(&minutes);
        let when = self.say.the_clock_day(at, self.now);
        sooner.then(|| Button {
            label: self.say.with("ahead-accept", &[("when", Arg::Text(&when))]),
            act: Act::Later {
                cook: cook.id,
                jobs: vec![job],
                minutes,
            },
            tone: Tone::Plain,
            confirm: None,
        })
    }

    /// To the half hour, as far as it is known at all.
    fn stall(&self, stall: &Stall) -> String {
        let round = |at: i64, to: i64| at.saturating_add(to / 2).div_euclid(to).saturating_mul(to);
        let half = HOUR / 2;
        let until = self.say.the_clock_day(round(stall.until, half), self.now);
        let until = ("until", Arg::Text(&until));
        if stall.from <= self.now {
            return self.say.with("ahead-stall-now", &[until]);
        }
        let long = round(stall.until.saturating_sub(stall.from), half).max(half);
        let (temp, long) = (self.say.temperature(stall.at), self.say.duration(long));
        let args = [
            ("temp", Arg::Text(&temp)),
            ("long", Arg::Text(&long)),
            until,
        ];
        self.say.with("ahead-stall", &args)
    }

    fn choices(&self, forecast: &Forecast) -> Vec<AheadChoice> {
        let effects = forecast.effects.iter();
        effects
            .filter_map(|effect| self.choice(forecast, effect))
            .collect()
    }

    fn choice(&self, forecast: &Forecast, effect: &Effect) -> Option<AheadChoice> {
        let then = Forecast {
            done: Some(effect.done),
            ..forecast.clone()
        };
        let ready = self.ready_line(&settle(None, &then)?, forecast.rough);
        Some(AheadChoice {
            label: match effect.change {
                WhatIf::HotterPit => {
                    let by = self.say.temperature_difference(HOTTER);
                    self.say.with("ahead-hotter", &[("by", Arg::Text(&by))])
                }
                WhatIf::WrapNow => self.say.text("ahead-wrap"),
                WhatIf::NoMop => self.say.text("ahead-stop-wetting"),
            },
            ready: self
                .say
                .with("ahead-would-be", &[("ready", Arg::Text(&ready))]),
            shift: forecast
                .done
                .map_or_else(String::new, |now| self.shift(now, effect.done)),
        })
    }

    /// By how much the middle of it moves, to ten minutes.
    fn shift(&self, now: Spread, then: Spread) -> String {
        let by = then.p50.saturating_sub(now.p50);
        if by.saturating_abs() < NO_CHANGE_MS {
            return self.say.text("ahead-no-change");
        }
        let ten = 10 * MINUTE;
        let round = by
            .saturating_abs()
            .saturating_add(ten / 2)
            .div_euclid(ten)
            .max(1)
            * ten;
        let long = self.say.duration(round);
        let args = [("by", Arg::Text(&long))];
        match by < 0 {
            true => self.say.with("ahead-sooner", &args),
            false => self.say.with("ahead-later", &args),
        }
    }

    fn ahead_notes(&self, ahead: &Ahead) -> Vec<String> {
        let doubted = i64::try_from(ahead.forecast.doubted.len()).unwrap_or(i64::MAX);
        let doubted = (doubted > 0).then(|| {
            self.say
                .with("ahead-doubted", &[("count", Arg::Number(doubted))])
        });
        let rough = (ahead.forecast.rough).then(|| self.say.text("ahead-rough"));
        let no_check = self.say.text("ahead-is-no-check");
        let aged = self.is_aged(ahead).then(|| {
            let when = self.say.the_clock_day(ahead.forecast.made_for, self.now);
            self.say.with("ahead-as-of", &[("when", Arg::Text(&when))])
        });
        [aged, doubted, rough, Some(no_check)]
            .into_iter()
            .flatten()
            .collect()
    }
}
