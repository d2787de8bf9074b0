//! When to feed next, how long it may be left, and what openings cost.

use crate::{
    acts::Act,
    alarms::planned_feed,
    cook::{Cook, Pit, ahead::counts},
    fire::{COST_SHOWN_MIN, FuelInput, OpeningCost, Rhythm, Spread, fuel, opening_cost, rhythm},
    moment::MINUTE,
    screens::{Button, Line, Tone, Weight, buttons::button, glance::Glance},
    words::{Arg, key},
};
use std::cmp::Reverse;

/// So many past cooks teach a fire.
pub const FIRES_PAST: usize = 3;
/// An accepted time is a whole one of so many minutes.
const WHOLE_MS: i64 = 5 * MINUTE;
/// One opening is taken to last so long, seconds. Common practice, no source.
const OPENING_S: i64 = 90;

/// When a fire is to be fed next, milliseconds since 1970.
pub(super) struct NextFeed {
    low: i64,
    likely: i64,
    high: i64,
    basis: String,
}

impl Glance<'_> {
    /// By what was learned; else, where it is known how much was put on, by what is reckoned.
    pub(super) fn next_feed(&self, cook: &Cook, pit: &Pit) -> Option<NextFeed> {
        let weather = self.weather_at(cook, self.now);
        let past: Vec<_> = self
            .fires_past(cook)
            .map(|past| self.feeds_of(past, pit))
            .collect();
        let said = self.is_weather_said(cook);
        let (feeds, loss) = (self.feeds_of(cook, pit), self.loss_w(pit, &weather));
        if let Some(rhythm) = rhythm(&feeds, &past, loss, said) {
            let at = |minutes: i64| minutes.saturating_mul(MINUTE);
            return Some(NextFeed {
                low: at(rhythm.next_min.low),
                likely: at(rhythm.next_min.likely),
                high: at(rhythm.next_min.high),
                basis: self.fire_learned(&rhythm, said),
            });
        }
        let (last, amount) = self.last_feed(cook, pit)?;
        let lasts = self.fire_reckoned(cook, pit, amount?)?;
        let at = |minutes: i64| {
            last.div_euclid(MINUTE)
                .saturating_add(minutes)
                .saturating_mul(MINUTE)
        };
        Some(NextFeed {
            low: at(lasts.low),
            likely: at(lasts.likely),
            high: at(lasts.high),
            basis: self.say.text("fire-reckoned"),
        })
    }

    /// The cooks before this one, the latest first.
    fn fires_past(&self, cook: &Cook) -> impl Iterator<Item = &Cook> {
        let (began, demo) = (cook.started_at, cook.demo);
        let over = self.known.cooks.values();
        let over = over.filter(|past| !past.is_open() && past.started_at < began);
        let mut over: Vec<&Cook> = over.collect();
        over.sort_by_key(|past| (Reverse(past.started_at), past.id));
        over.truncate(FIRES_PAST);
        over.into_iter().filter(move |past| past.demo == demo)
    }

    /// How many minutes that much lasts by the heat balance.
    fn fire_reckoned(
        &self,
        cook: &Cook,
        pit: &Pit,
        (unit, quarters): (crate::fire::FuelUnit, i64),
    ) -> Option<Spread> {
        let meats = self.on_pit(pit.id).into_iter();
        let grams = meats
            .filter_map(|(_, piece)| piece.weight_g.value)
            .sum::<i64>();
        let input = FuelInput {
            pit: pit.kind.value,
            grate_cm2: pit.grate_cm2.value,
            pit_temp: self.pit_held(pit),
            weather: Some(self.weather_at(cook, self.now)),
            air: None,
            fuel: None,
            moisture_permille: None,
            wood_humidity_permille: None,
            meat_g: grams.clamp(0, 500_000),
            minutes: 60,
            unit: Some(unit),
            unit_g: Some(pit.unit_grams(unit)),
        };
        let lasts = fuel(&input).ok()?.minutes_per_unit?;
        let of = |minutes: i64| (minutes * quarters.clamp(1, 400) / 4).max(1);
        Some(Spread::new(of(lasts.low), of(lasts.likely), of(lasts.high)))
    }

    fn fire_learned(&self, rhythm: &Rhythm, weather_said: bool) -> String {
        let (seen, past) = (rhythm.seen as i64, rhythm.past as i64);
        let line = match (seen, past) {
            (_, 0) => self
                .say
                .with("fire-learned", &[("count", Arg::Number(seen))]),
            (0, _) => self
                .say
                .with("fire-only-past", &[("past", Arg::Number(past))]),
            _ => {
                let args = [("count", Arg::Number(seen)), ("past", Arg::Number(past))];
                self.say.with("fire-learned-past", &args)
            }
        };
        match weather_said {
            true => line,
            false => [line, self.say.text("fire-weather-unsaid")].join(" "),
        }
    }

    pub(super) fn fire_lines(&self, cook: &Cook, pit: &Pit, next: Option<&NextFeed>) -> Vec<Line> {
        let mut all = vec![self.feed_line(cook, pit, next)];
        all.extend(self.feed_accepted(cook, pit));
        all.push(self.alone_line(pit, next));
        all.extend(self.openings_line(cook, pit));
        all
    }

    fn feed_line(&self, cook: &Cook, pit: &Pit, next: Option<&NextFeed>) -> Line {
        let line = |state: String, detail: String, weight| Line {
            name: self.say.text("fire-next"),
            state,
            detail,
            weight,
            link: None,
        };
        let Some(next) = next else {
            let why = match self.last_feed(cook, pit) {
                Some(_) => key("fire-untold-detail"),
                None => key("fire-unfed-detail"),
            };
            return line(
                self.say.text("fire-unfed"),
                self.say.text(why),
                Weight::Calm,
            );
        };
        let time = self.say.the_clock_day(next.likely, self.now);
        let about = self.say.with("fire-about", &[("time", Arg::Text(&time))]);
        let (from, to) = (self.say.the_clock(next.low), self.say.the_clock(next.high));
        let args = [("from", Arg::Text(&from)), ("to", Arg::Text(&to))];
        let between = self.say.with("fire-between", &args);
        let weight = match (self.ahead(next.low) <= 0, self.ahead(next.likely) <= 0) {
            _ if !cook.is_open() => Weight::Faint,
            (_, true) => Weight::Call,
            (true, _) => Weight::Soon,
            _ => Weight::Calm,
        };
        let state = [about, self.due(next.likely)].join(" · ");
        line(state, [between, next.basis.clone()].join(" "), weight)
    }

    fn feed_accepted(&self, cook: &Cook, pit: &Pit) -> Option<Line> {
        let plan = planned_feed(&self.known, cook, pit.id, self.now)?;
        let time = self.say.the_clock_day(plan.due, self.now);
        Some(Line {
            name: self.say.text("fire-accepted"),
            state: self
                .say
                .with("fire-accepted-at", &[("time", Arg::Text(&time))]),
            detail: self.due(plan.due),
            weight: match self.ahead(plan.due) <= 0 {
                true => Weight::Call,
                false => Weight::Calm,
            },
            link: None,
        })
    }

    fn alone_line(&self, pit: &Pit, next: Option<&NextFeed>) -> Line {
        let line = self.alone(pit.id);
        let by = next.filter(|next| self.ahead(next.low) > 0).map(|next| {
            let time = self.say.the_clock_day(next.low, self.now);
            self.say
                .with("fire-alone-by", &[("time", Arg::Text(&time))])
        });
        Line {
            name: line.detail,
            detail: by.unwrap_or_default(),
            ..line
        }
    }

    /// Only where they move the finish by more than ten minutes.
    fn openings_line(&self, cook: &Cook, pit: &Pit) -> Option<Line> {
        let opened = &self.care_of(cook, pit)?.opened;
        let openings = opened
            .iter()
            .filter(|when| counts(when.at, self.now))
            .count() as i64;
        let cost = OpeningCost {
            pit: pit.kind.value,
            grate_cm2: pit.grate_cm2.value,
            pit_temp: self.pit_held(pit),
            openings,
            seconds: OPENING_S,
        };
        let minutes = opening_cost(&cost, &self.weather_at(cook, self.now)).likely;
        let duration = self.say.duration(minutes.saturating_mul(MINUTE));
        (minutes > COST_SHOWN_MIN).then(|| Line {
            name: self.say.text("fire-openings"),
            state: self
                .say
                .with("fire-openings-state", &[("count", Arg::Number(openings))]),
            detail: self
                .say
                .with("fire-openings-cost", &[("cost", Arg::Text(&duration))]),
            weight: Weight::Calm,
            link: None,
        })
    }

    /// The likely time, on five minutes; none where it is past, or stands already.
    pub(super) fn accept_feed(
        &self,
        cook: &Cook,
        pit: &Pit,
        next: Option<&NextFeed>,
    ) -> Option<Button> {
        let due = next?.likely.div_euclid(WHOLE_MS) * WHOLE_MS;
        let plan = planned_feed(&self.known, cook, pit.id, self.now);
        let stands = plan.is_some_and(|plan| plan.due == due);
        if !cook.is_open() || stands || self.ahead(due) < MINUTE {
            return None;
        }
        let time = self.say.the_clock_day(due, self.now);
        let label = self.say.with("fire-accept", &[("time", Arg::Text(&time))]);
        let (cook, pit) = (cook.id, pit.id);
        Some(button(label, Act::PlanFeed { cook, pit, due }, Tone::Main))
    }
}
