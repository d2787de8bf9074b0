//! Which instants are taken. Start at [`Context::claimed`].
//!
//! What a person claims is range-checked; which device's clock is right is not decided here: a phone set to 2099 may
//! record, and screens warn of it. A clock that was never set, or set past all use, may not: all that it would record
//! would lie decades from the cook.

use super::Context;
use crate::{
    error::Refused,
    log::Serve,
    moment::{HOUR, MINUTE},
    words::Arg,
};
use chrono_tz::Tz;
use std::ops::RangeInclusive;

/// The clocks that may record, milliseconds since 1970: 2020 to the end of 2100, the years that may be typed.
pub const CLOCK: RangeInclusive<i64> = 1_577_836_800_000..=4_133_980_799_999;
/// How far back a claim may lie: 48 hours, longer than any cook. Common practice, no source.
pub const BACK_MS: i64 = 48 * HOUR;
/// How far ahead a claim may lie: 10 minutes, for phones whose clocks differ. Common practice, no source.
pub const AHEAD_MS: i64 = 10 * MINUTE;
/// How far ahead a sleep may end.
pub const SLEEP_MS: i64 = 24 * HOUR;
/// How long ago serving time may be when it is set: a lunch that is late.
pub const SERVE_BACK_MS: i64 = HOUR;
/// How far ahead serving time may be: a fortnight, so that a slip in the month is seen. Common practice, no source.
pub const SERVE_AHEAD_MS: i64 = 14 * 24 * HOUR;

impl Context<'_> {
    /// Refuses to record anything by a clock outside [`CLOCK`].
    pub(super) fn sound_clock(&self) -> Result<(), Refused> {
        let say = self.say();
        if CLOCK.contains(&self.now()) {
            return Ok(());
        }
        // Told from the far end of the range, so that the year is written out.
        let shown = say.clock_day(self.now(), *CLOCK.start() - 1);
        Err(say
            .refuse("error-clock-unset", &[("time", Arg::Text(&shown))])
            .into())
    }

    /// When something happened, as claimed; none = now.
    pub(super) fn claimed(&self, at: Option<i64>) -> Result<i64, Refused> {
        let (now, say) = (self.now(), self.say());
        let at = at.unwrap_or(now);
        if (now - BACK_MS..=now + AHEAD_MS).contains(&at) {
            return Ok(at);
        }
        let shown = say.clock_day(at, now);
        if at > now {
            let args = [("time", Arg::Text(&shown))];
            return Err(say.refuse("error-at-ahead", &args).into());
        }
        let first = say.clock_day(now - BACK_MS, now);
        let args = [("time", Arg::Text(&shown)), ("first", Arg::Text(&first))];
        Err(say.refuse("error-at-long-ago", &args).into())
    }

    /// Until when somebody means to sleep.
    pub(super) fn sleep_end(&self, until: i64) -> Result<i64, Refused> {
        let (now, say) = (self.now(), self.say());
        if until > now && until <= now + SLEEP_MS {
            return Ok(until);
        }
        let (first, last) = (say.clock(now), say.clock_day(now + SLEEP_MS, now));
        let args = [("first", Arg::Text(&first)), ("last", Arg::Text(&last))];
        Err(say.refuse("error-sleep-range", &args).into())
    }

    /// When food is to be on the table.
    pub(super) fn serving(&self, serve: &Serve) -> Result<Serve, Refused> {
        let (now, say) = (self.now(), self.say());
        if serve.zone.parse::<Tz>().is_err() {
            let zone = super::texts::quoted(&serve.zone);
            let args = [("zone", Arg::Text(&zone))];
            return Err(say.refuse("error-serve-zone", &args).into());
        }
        if (now - SERVE_BACK_MS..=now + SERVE_AHEAD_MS).contains(&serve.at) {
            return Ok(serve.clone());
        }
        let time = say.clock_day(serve.at, now);
        let last = say.day(now + SERVE_AHEAD_MS, now);
        let args = [("time", Arg::Text(&time)), ("last", Arg::Text(&last))];
        Err(say.refuse("error-serve-range", &args).into())
    }
}
