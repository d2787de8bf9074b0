//! The clocks of one meat in lines.

use crate::{
    cook::{
        Cook, Piece,
        safety_facts::{ComingUp, coming_up, is_intact, kept, standing_off},
    },
    safety::{clocks::Clock, off_heat::StandsOff},
    screens::{Line, Weight, glance::Glance},
    words::{Arg, key},
};

impl Glance<'_> {
    /// Coming up while it is on a pit, standing once it is off.
    pub(super) fn clock_lines(&self, cook: &Cook, piece: &Piece) -> Vec<Line> {
        let mut all = vec![];
        if piece.is_on_pit(self.now) {
            let up = coming_up(&self.known, cook, piece, self.minute_end());
            all.extend(up.map(|up| self.up_line(cook, piece, &up)));
        }
        if let Some(stands) = standing_off(&self.known, cook, piece, self.minute_end()) {
            all.push(self.off_line(&stands));
            all.extend(self.below_line(cook, piece, &stands));
        }
        all
    }

    /// "1 h 20 min of 4 h".
    fn of_limit(&self, clock: &Clock) -> String {
        let [spent, limit] =
            [clock.spent_ms, clock.limit_ms].map(|ms| self.say.duration(whole_minutes(ms)));
        let args = [("spent", Arg::Text(&spent)), ("limit", Arg::Text(&limit))];
        match clock.is_over {
            true => self.say.with("safety-clock-over", &args),
            false => self.say.with("safety-clock", &args),
        }
    }

    fn source_of(&self, clock: &Clock) -> String {
        self.say.text(clock.source.key())
    }

    fn up_line(&self, cook: &Cook, piece: &Piece, up: &ComingUp) -> Line {
        let kept = kept(&self.known, cook, piece);
        let (low, high) = kept.come_up_range();
        let span = self.say.temperature_span(low, high);
        let span = [("span", Arg::Text(&span))];
        let mut told = vec![self.say.with("safety-up-span", &span)];
        told.extend(match (up.was_hot, up.is_read) {
            (true, _) => Some(self.say.text("safety-up-hot")),
            (false, false) => Some(self.say.text("safety-up-unread")),
            (false, true) => None,
        });
        told.extend(is_intact(piece).then(|| self.say.text("safety-up-intact")));
        told.push(self.source_of(&up.clock));
        let asks = !is_intact(piece) && !up.was_hot && up.clock.is_over;
        Line {
            weight: match asks {
                true => Weight::Call,
                false => Weight::Calm,
            },
            ..self.fact(
                key("safety-line-up"),
                self.of_limit(&up.clock),
                told.join(" · "),
            )
        }
    }

    fn off_line(&self, stands: &StandsOff) -> Line {
        let hot = self.say.clock_day(stands.hot_at, self.now);
        let hot = [("time", Arg::Text(&hot))];
        let told = [
            match stands.last {
                Some(_) => self.say.with("safety-off-hot-at", &hot),
                None => self.say.with("safety-off-unread", &hot),
            },
            self.source_of(&stands.clock),
        ];
        Line {
            weight: match stands.clock.is_over {
                true => Weight::Call,
                false => Weight::Calm,
            },
            ..self.fact(
                key("safety-line-off"),
                self.of_limit(&stands.clock),
                told.join(" · "),
            )
        }
    }

    /// Held food that was read below the hot limit: what to do now.
    fn below_line(&self, cook: &Cook, piece: &Piece, stands: &StandsOff) -> Option<Line> {
        stands.below_since?;
        let temp = self.say.temperature(stands.last?.temp);
        let hot = self.say.temperature(kept(&self.known, cook, piece).hot());
        let args = [("temp", Arg::Text(&temp)), ("hot", Arg::Text(&hot))];
        Some(Line {
            weight: Weight::Call,
            ..self.fact(
                key("safety-line-below"),
                self.say.with("safety-below", &args),
                self.below_advice(stands),
            )
        })
    }

    /// Heat it, serve it or chill it by then; or throw it away.
    pub(super) fn below_advice(&self, stands: &StandsOff) -> String {
        below_said(&self.say, stands, self.now)
    }
}

/// The same for any words.
pub(super) fn below_said(say: &crate::words::Words<'_>, stands: &StandsOff, now: i64) -> String {
    let reheat = say.temperature(super::why::REHEAT);
    match stands.clock.runs_out_at {
        Some(by) => {
            let time = say.clock_day(by, now);
            let args = [("time", Arg::Text(&time)), ("reheat", Arg::Text(&reheat))];
            say.with("safety-below-by", &args)
        }
        None => say.text("safety-below-over"),
    }
}

/// Clocks are told in whole minutes, what has begun of one counted in full.
const fn whole_minutes(ms: i64) -> i64 {
    use crate::moment::MINUTE;
    (ms + MINUTE - 1) / MINUTE * MINUTE
}
