//! Why a meat is to be read now, in one sentence, for a ring and for the screen.

use super::clocks::below_said;
use crate::{
    alarms::Due,
    cook::{
        Known,
        safety_facts::{coming_up, kept, standing_off},
    },
    log::{Caveat, Job},
    screens::glance::minute_end,
    units::Mk,
    words::{Arg, Words, key},
};

/// What is warmed again to be eaten hot: 165 °F, USDA chart (leftovers) and FDA Food Code 3-403.11(A), read in state adoptions.
pub(super) const REHEAT: Mk = Mk::from_f(165);

/// Why a job of this kind is due; none for any other.
pub(crate) fn zone_why(known: &Known<'_>, say: &Words<'_>, due: &Due, now: i64) -> Option<String> {
    let (cook, piece) = known.piece(due.job.piece()?)?;
    let hot = say.temperature(kept(known, cook, piece).hot());
    let now = minute_end(now);
    match due.job {
        Job::ComeUp(_) => {
            let up = coming_up(known, cook, piece, now)?;
            let by = up.since.saturating_add(up.clock.limit_ms);
            let time = say.clock_day(by, now);
            let args = [("hot", Arg::Text(&hot)), ("time", Arg::Text(&time))];
            let key = match (by > now, up.is_read) {
                (true, false) => key("because-come-up-unread"),
                (true, true) => key("because-come-up"),
                (false, _) => key("because-come-up-over"),
            };
            Some(say.with(key, &args))
        }
        Job::KeepHot(_) => {
            let stands = standing_off(known, cook, piece, now)?;
            let time = say.clock_day(stands.hot_at, now);
            let args = [("hot", Arg::Text(&hot)), ("time", Arg::Text(&time))];
            Some(match stands.below_since {
                Some(_) => {
                    let under = say.with("because-below", &args);
                    format!("{under} {}", below_said(say, &stands, now))
                }
                None => say.with("because-keep-hot", &args),
            })
        }
        _ => None,
    }
}

/// What was gone past.
pub(in crate::screens) const fn caveat_key(caveat: Caveat) -> &'static str {
    match caveat {
        Caveat::CoolPit => key("caveat-cool-pit"),
        Caveat::PastClock => key("caveat-past-clock"),
    }
}
