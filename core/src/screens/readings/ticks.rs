//! The lines of the hours, by the viewer's wall clock, and where that clock was changed.

use super::Tick;
use crate::{
    chart::Span,
    moment::MINUTE,
    screens::glance::Glance,
    words::{key, zone::local},
};
use chrono::{TimeDelta, Timelike};
use chrono_tz::Tz;

/// So many lines at the most. Common practice, no source.
const LINES_MOST: i64 = 6;
/// From one line to the next, minutes of the wall clock.
const STEPS: [i64; 11] = [1, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1_440];
/// Clocks are changed on a quarter of an hour (every change since 1970), so their hours are found by looking at each.
const QUARTER: i64 = 15 * MINUTE;

impl Glance<'_> {
    fn zone(&self) -> Tz {
        self.viewer.zone.parse().unwrap_or(Tz::UTC)
    }

    /// At round hours of the wall clock: an hour that comes twice has two lines, one that is left out has none.
    pub(super) fn hour_ticks(&self, span: &Span) -> Vec<Tick> {
        let (long, zone) = (span.to() - span.from, self.zone());
        let step = STEPS
            .into_iter()
            .find(|step| long / (step * MINUTE) <= LINES_MOST);
        let step = step.unwrap_or(STEPS[STEPS.len() - 1]);
        instants(span, (step * MINUTE).min(QUARTER))
            .filter_map(|at| {
                let wall = local(zone, at);
                let of_day = i64::from(wall.hour() * 60 + wall.minute());
                (of_day % step == 0).then(|| self.hour_tick(span, at, of_day == 0))
            })
            .collect()
    }

    fn hour_tick(&self, span: &Span, at: i64, midnight: bool) -> Tick {
        Tick {
            at: span.column(at).unwrap_or(0),
            text: match midnight {
                true => self.say.day(at, self.now),
                false => self.say.hour(at),
            },
            strong: midnight,
        }
    }

    /// Where the wall clock jumps within the span, and what is said of it.
    pub(super) fn clock_changes(&self, span: &Span) -> Vec<(i64, &'static str)> {
        let zone = self.zone();
        let jumped =
            |at: &i64| local(zone, *at) - local(zone, at - QUARTER) - TimeDelta::minutes(15);
        let all = instants(span, QUARTER).map(|at| (at, jumped(&at)));
        all.filter(|(at, by)| *at > span.from && !by.is_zero())
            .map(|(at, by)| match by < TimeDelta::zero() {
                true => (at, key("chart-clock-back")),
                false => (at, key("chart-clock-forward")),
            })
            .collect()
    }
}

/// The whole multiples of `step` in a span.
fn instants(span: &Span, step: i64) -> impl Iterator<Item = i64> + use<> {
    let (first, to) = ((span.from + step - 1).div_euclid(step) * step, span.to());
    (0..)
        .map(move |n| first + n * step)
        .take_while(move |at| *at < to)
}
