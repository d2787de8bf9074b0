//! A verdict in words.

use super::{VerdictText, Weight, glance::Glance};
use crate::{
    alarms::Due,
    checks::{Cut, DoneState, Reason, Refused, SafeState, Safety, Test, Verdict, cut_facts},
    cook::{Cook, Piece},
    log::Job,
    moment::MINUTE,
    safety::Minimum,
    units::Mk,
    words::{Arg, key},
};

/// How much a verdict asks for an eye.
pub(super) const fn weight_of(state: DoneState) -> Weight {
    match state {
        DoneState::UpdateToJudge => Weight::Wake,
        DoneState::Done | DoneState::Overdone | DoneState::TenderOnly => Weight::Call,
        DoneState::Close | DoneState::CannotSay => Weight::Soon,
        DoneState::NotYet => Weight::Calm,
    }
}

impl Glance<'_> {
    pub fn verdict_text(&self, cook: &Cook, piece: &Piece) -> VerdictText {
        match self.verdict(cook, piece) {
            Ok(mut verdict) => {
                let past = self.is_past_wrapping(piece);
                verdict.reasons.retain(|one| !past || !is_of_wrapping(one));
                verdict
                    .reasons
                    .retain(|one| !is_ahead(one, &verdict.safety));
                let mut text = self.judged(piece.cut, &verdict);
                text.reasons
                    .extend(self.read_elsewhere(cook, piece, &verdict.safety));
                self.name_unchecked(cook, piece, &verdict, &mut text);
                text
            }
            Err(refused) => self.not_judged(refused),
        }
    }

    /// In place of "thermometer not checked", which one.
    fn name_unchecked(
        &self,
        cook: &Cook,
        piece: &Piece,
        verdict: &Verdict,
        text: &mut VerdictText,
    ) {
        let doubts = verdict.reasons.iter().filter(|reason| is_doubt(reason));
        for (reason, said) in doubts.zip(&mut text.doubts) {
            if matches!(reason, Reason::Unchecked) {
                *said = self.unchecked_by_name(cook, piece);
            }
        }
    }

    /// Wrapped, or off the fire: what its bark and color said of wrapping and wetting is spent.
    fn is_past_wrapping(&self, piece: &Piece) -> bool {
        piece.wrapped(self.now).is_some() || piece.resting_since(self.now).is_some()
    }

    /// The same, its next check that of the job which asks for it; before the meat is on a pit there is none.
    pub fn verdict_with_job(&self, cook: &Cook, piece: &Piece, dues: &[Due]) -> VerdictText {
        let text = self.verdict_text(cook, piece);
        let job = |job| dues.iter().find(|due| due.job == job);
        let next = match job(Job::Check(piece.id)) {
            _ if piece.on_pit_at(self.now).is_none() => None,
            Some(check) => text
                .next
                .map(|_| self.next(self.ahead(check.at).max(0) / MINUTE)),
            None if job(Job::Pull(piece.id)).is_some() => None,
            None => text.next,
        };
        VerdictText { next, ..text }
    }

    fn not_judged(&self, Refused { reason }: Refused) -> VerdictText {
        let [low, high] = [-20_000, 200_000].map(|c| self.say.temperature(Mk::from_c_milli(c)));
        let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
        VerdictText {
            headline: self.say.text(DoneState::CannotSay.key()),
            reasons: vec![self.say.with(reason.key(), &args)],
            safety: self.say.text(SafeState::Unknown.key()),
            next: None,
            weight: Weight::Call,
            doubts: vec![],
        }
    }

    fn judged(&self, cut: Cut, verdict: &Verdict) -> VerdictText {
        let reasons = verdict.reasons.iter();
        VerdictText {
            headline: self.say.text(verdict.state.key()),
            reasons: reasons
                .clone()
                .filter(|reason| !is_doubt(reason))
                .map(|reason| self.reason(reason))
                .collect(),
            safety: self.safety(cut, &verdict.safety),
            next: verdict.next_check_minutes.map(|minutes| self.next(minutes)),
            weight: weight_of(verdict.state),
            doubts: reasons
                .filter(|reason| is_doubt(reason))
                .map(|reason| self.reason(reason))
                .collect(),
        }
    }

    fn safety(&self, cut: Cut, safety: &Safety) -> String {
        let state = self.say.text(self.safe_key(cut, safety));
        self.minimum(&state, &safety.minimum)
    }

    /// A minimum with its rest and who says so, after `state`.
    pub fn minimum(&self, state: &str, least: &Minimum) -> String {
        let minimum = self.say.temperature(least.temp);
        let source = self.say.text(least.source.key());
        let (state, minimum, source) = (
            ("state", Arg::Text(state)),
            ("minimum", Arg::Text(&minimum)),
            ("source", Arg::Text(&source)),
        );
        if least.rest_ms == 0 {
            return self.say.with("safety-minimum", &[state, minimum, source]);
        }
        let rest = self.seconds_or_more(least.rest_ms);
        let args = [state, minimum, source, ("rest", Arg::Text(&rest))];
        self.say.with("safety-minimum-rest", &args)
    }

    /// What reaches its minimum and is done far above it is said to be past it, never to be safe as it is.
    fn safe_key(&self, cut: Cut, safety: &Safety) -> &'static str {
        let facts = cut_facts(cut);
        let is_tough = |coldest| facts.is_done_far_above() && coldest < facts.close_from;
        match safety.rest_left_ms.and(safety.coldest) {
            Some(coldest) if is_tough(coldest) => key("safe-far-from-done"),
            _ => safety.state.key(),
        }
    }

    /// A rest below a minute in seconds.
    pub fn seconds_or_more(&self, ms: i64) -> String {
        if ms >= MINUTE {
            return self.say.duration(ms);
        }
        let seconds = ms / crate::moment::SECOND;
        self.say
            .with("screen-seconds", &[("seconds", Arg::Number(seconds))])
    }

    fn next(&self, minutes: i64) -> String {
        match minutes {
            0 => self.say.text("screen-check-now"),
            _ => {
                let wait = self.say.duration(minutes * MINUTE);
                self.say
                    .with("screen-check-in", &[("wait", Arg::Text(&wait))])
            }
        }
    }

    /// One reason as a sentence.
    pub fn reason(&self, reason: &Reason) -> String {
        let fine = |mk: Mk| self.say.temperature_fine(mk);
        let with = |args: &[(&str, &str)]| {
            let args: Vec<_> = args.iter().map(|(n, t)| (*n, Arg::Text(t))).collect();
            self.say.with(reason.key(), &args)
        };
        match reason {
            Reason::BelowMinimum { coldest, minimum } => with(&[
                ("coldest", &fine(*coldest)),
                ("minimum", &self.say.temperature(*minimum)),
            ]),
            Reason::MinimumShown { coldest } | Reason::ToughAtMinimum { coldest } => {
                with(&[("coldest", &fine(*coldest))])
            }
            Reason::RestNeeded { left_ms } => {
                let whole = (left_ms + MINUTE - 1) / MINUTE * MINUTE;
                with(&[("left", &self.say.duration(whole))])
            }
            Reason::SpotsMissing { spots } => {
                let spots: Vec<String> =
                    spots.iter().map(|spot| self.say.text(spot.key())).collect();
                with(&[("spots", &self.say.list_apart(&spots))])
            }
            Reason::Corrected { off_mk } | Reason::TooFarOff { off_mk } => {
                with(&[("off", &self.say.temperature_difference(Mk(*off_mk)))])
            }
            Reason::Unchecked => with(&[("ice", &self.say.temperature(Mk::from_f(32)))]),
            Reason::Found { test, meaning } => with(&[
                ("test", &self.say.text(test.key())),
                ("meaning", &self.say.text(meaning.key())),
            ]),
            Reason::Stale { test, minutes } => with(&[
                ("test", &self.say.text(test.key())),
                ("age", &self.say.duration(minutes * MINUTE)),
            ]),
            _ => self.say.text(reason.key()),
        }
    }
}

/// What a temperature means beyond the minimum, while nothing shows the minimum.
fn is_ahead(reason: &Reason, safety: &Safety) -> bool {
    let past = safety
        .coldest
        .is_some_and(|coldest| coldest >= safety.minimum.temp);
    let warmth = matches!(
        reason,
        Reason::Found {
            test: Test::Temperature,
            ..
        }
    );
    warmth && past && safety.rest_left_ms.is_none()
}

/// What is said of the bark, of the color and of when to wrap.
const fn is_of_wrapping(reason: &Reason) -> bool {
    use Test::{BarkSet, WrapCall};
    matches!(
        reason,
        Reason::WrapWouldSmear
            | Reason::Found {
                test: BarkSet | WrapCall,
                ..
            }
            | Reason::Stale {
                test: BarkSet | WrapCall,
                ..
            }
    )
}

/// What was not checked, or cannot be read here.
const fn is_doubt(reason: &Reason) -> bool {
    matches!(
        reason,
        Reason::UpdateFirst | Reason::Unchecked | Reason::TooFarOff { .. }
    )
}
