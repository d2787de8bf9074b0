//! When to feed next, learned from the log: how long what was put on has lasted at this pit.
//!
//! Law: with the same amounts and the same weather the likely interval is one that was seen, and between the shortest and the
//! longest; more loss never makes it longer.

use super::Spread;

/// The last so many intervals count: a fire of this morning says little of tonight's.
const INTERVALS: usize = 7;
/// Two feeds within so many minutes are one.
const ONE_FEED_MIN: i64 = 4;
/// Nothing lasts longer than a day.
const LONGEST_MIN: i64 = 24 * 60;
/// From fewer intervals than this no quartile is taken, and the ends lie by [`FEW_PERCENT`] further out.
const FEW: usize = 4;
const FEW_PERCENT: i64 = 25;
/// What nobody's word on the weather adds to the ends.
const UNSAID_PERCENT: i64 = 10;

/// Fuel was put on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Feed {
    /// When, minutes.
    pub at_min: i64,
    /// What it gives, kJ; none where nobody said how much.
    pub kj: Option<i64>,
    /// What the pit loses in the weather of then, W; the same for all where nobody said.
    pub loss_w: i64,
}

/// When to feed next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rhythm {
    /// How long what was put on last lasts, minutes.
    pub lasts_min: Spread,
    /// When it is over, in the minutes of [`Feed::at_min`].
    pub next_min: Spread,
    /// Intervals of this cook that it rests on.
    pub seen: usize,
    /// Intervals of past cooks that it rests on.
    pub past: usize,
}

/// When to feed next: this cook's last intervals first, filled up with those of past cooks, latest first; their median and
/// quartiles. None where there is no feed yet or no interval at all. Where one amount is not known, none counts.
pub fn rhythm(
    feeds: &[Feed],
    past: &[Vec<Feed>],
    loss_now_w: i64,
    weather_said: bool,
) -> Option<Rhythm> {
    let feeds = joined(feeds);
    let last = *feeds.last()?;
    let past: Vec<Vec<Feed>> = past.iter().map(|cook| joined(cook)).collect();
    let own: Vec<(Feed, i64)> = intervals(&feeds).rev().take(INTERVALS).collect();
    let older = past.iter().flat_map(|cook| intervals(cook).rev());
    let older: Vec<(Feed, i64)> = older.take(INTERVALS - own.len()).collect();
    let all = || own.iter().chain(&older);
    let weighed = last.kj.is_some() && all().all(|(feed, _)| feed.kj.is_some());
    let share = |feed: &Feed| {
        if weighed {
            feed.kj.unwrap_or(1).max(1)
        } else {
            1
        }
    };
    let lasts = |(feed, minutes): &(Feed, i64)| {
        let now = i128::from(share(&last)) * i128::from(feed.loss_w.max(1));
        let then = i128::from(share(feed)) * i128::from(loss_now_w.max(1));
        let scaled = (i128::from(*minutes) * now + then / 2) / then;
        i64::try_from(scaled)
            .unwrap_or(LONGEST_MIN)
            .clamp(1, LONGEST_MIN)
    };
    let mut lasting: Vec<i64> = all().map(lasts).collect();
    lasting.sort_unstable();
    let lasts_min = ends(&lasting, weather_said)?;
    let next = |minutes: i64| last.at_min.saturating_add(minutes);
    Some(Rhythm {
        lasts_min,
        next_min: Spread::new(
            next(lasts_min.low),
            next(lasts_min.likely),
            next(lasts_min.high),
        ),
        seen: own.len(),
        past: older.len(),
    })
}

/// Feeds in order, those of one breath joined.
fn joined(feeds: &[Feed]) -> Vec<Feed> {
    let mut sorted = feeds.to_vec();
    sorted.sort_by_key(|feed| feed.at_min);
    let mut all: Vec<Feed> = vec![];
    for feed in sorted {
        match all.last_mut() {
            Some(before) if feed.at_min.saturating_sub(before.at_min) < ONE_FEED_MIN => {
                before.kj = before.kj.zip(feed.kj).map(|(a, b)| a.saturating_add(b));
            }
            _ => all.push(feed),
        }
    }
    all
}

fn intervals(feeds: &[Feed]) -> impl DoubleEndedIterator<Item = (Feed, i64)> + '_ {
    feeds.windows(2).filter_map(|pair| {
        let minutes = pair[1].at_min.saturating_sub(pair[0].at_min);
        (minutes <= LONGEST_MIN).then_some((pair[0], minutes))
    })
}

/// Quartiles and median, each one of what was seen; of few the ends, further out.
fn ends(sorted: &[i64], weather_said: bool) -> Option<Spread> {
    let last = sorted.len().checked_sub(1)?;
    let likely = sorted[last / 2];
    let (low, high) = match sorted.len() < FEW {
        true => (sorted[0], sorted[last]),
        false => (sorted[last / 4], sorted[last - last / 4]),
    };
    let mut wider = if sorted.len() < FEW { FEW_PERCENT } else { 0 };
    wider += if weather_said { 0 } else { UNSAID_PERCENT };
    Some(Spread::new(
        (low * (100 - wider) / 100).max(1),
        likely,
        high * (100 + wider) / 100,
    ))
}
