//! How long ago something was done, for acts whose time is still open.

use crate::{
    acts::Act,
    moment::{MINUTE, Moment},
};

/// How long ago something may be said to have been done by one choice, minutes: what a cook remembers. Common practice,
/// no source.
pub const AGO_MINUTES: [i64; 10] = [0, 5, 10, 20, 30, 60, 120, 180, 240, 360];
/// The longest that is read, minutes: 48 h, as far back as an act may lie.
const LONGEST: i64 = 48 * 60;

/// When it was, so many minutes before the moment; none = now, also where the number is no length of time.
pub fn ago(minutes: i64, moment: &Moment) -> Option<i64> {
    (1..=LONGEST)
        .contains(&minutes)
        .then(|| moment.utc_ms - minutes * MINUTE)
}

/// The same act, done so many minutes ago. One that says its own time, or has none, stays as it is.
pub fn done_ago(act: &Act, minutes: i64, moment: &Moment) -> Act {
    let mut act = act.clone();
    if let Some(at @ None) = act.at_mut() {
        *at = ago(minutes, moment);
    }
    act
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ids::PieceId;

    const NOW: i64 = 1_795_000_000_000;

    fn done(at: Option<i64>, minutes: i64) -> Act {
        let piece = PieceId(uuid::Uuid::nil());
        let act = Act::AnswerRub {
            piece,
            set: true,
            at,
        };
        done_ago(&act, minutes, &Moment::at(NOW, "UTC"))
    }

    fn at(act: Act) -> Option<i64> {
        match act {
            Act::AnswerRub { at, .. } => at,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn an_act_is_dated_back_where_its_time_is_open() {
        assert_eq!(at(done(None, 5)), Some(NOW - 5 * MINUTE));
        assert_eq!(at(done(None, 0)), None);
        for hours in [2, 3, 4, 6] {
            let minutes = hours * 60;
            assert!(AGO_MINUTES.contains(&minutes), "{hours} h");
            assert_eq!(at(done(None, minutes)), Some(NOW - minutes * MINUTE));
        }
        assert_eq!(at(done(None, -5)), None);
        assert_eq!(at(done(None, LONGEST + 1)), None);
        assert_eq!(at(done(Some(7), 5)), Some(7));
        let up = done_ago(&Act::WakeUp, 5, &Moment::at(NOW, "UTC"));
        assert_eq!(up, Act::WakeUp);
    }
}
