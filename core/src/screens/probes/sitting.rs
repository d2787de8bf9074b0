//! Where each sensor sits, what it said last there, and whether it has gone silent.

use crate::{
    alarms::SILENT_MS,
    cook::{Cook, Piece, Probe},
    ids::PitId,
    log::Where,
    moment::MINUTE,
    screens::{Line, Weight, glance::Glance},
    units::Mk,
    words::Arg,
};

/// A sensor where it sits.
#[derive(Clone, Copy)]
pub(in crate::screens) struct Sitting<'a> {
    pub cook: &'a Cook,
    pub source: &'a str,
    pub sensor: &'a str,
    pub probe: &'a Probe,
    /// What it said last since it sits there.
    pub last: Option<(i64, Mk)>,
}

impl Sitting<'_> {
    /// When it spoke last; before its first word, since when it sits there.
    pub fn last_word(&self) -> i64 {
        self.last.map_or(self.probe.since.at, |(at, _)| at)
    }

    /// When it will have been silent for too long if it says nothing more. On the minute, as screens change.
    pub fn silent_at(&self) -> i64 {
        let minute = self.last_word().div_euclid(MINUTE).saturating_mul(MINUTE);
        minute.saturating_add(SILENT_MS)
    }
}

impl<'a> Glance<'a> {
    /// The sensors of all cooks under way.
    pub fn sittings(&self) -> impl Iterator<Item = Sitting<'a>> {
        let (tails, now) = (self.known.tails, self.now);
        let cooks = self.known.open_cooks();
        let all = cooks.flat_map(|cook| cook.probes.iter().map(move |one| (cook, one)));
        all.map(move |(cook, ((source, sensor), probe))| Sitting {
            cook,
            source,
            sensor,
            probe,
            last: tails
                .last(source, sensor, now)
                .filter(|(at, _)| *at >= probe.since.at),
        })
    }

    pub fn fell_silent(&self, one: &Sitting<'_>) -> bool {
        self.is_long_ago(one.last_word())
    }

    /// Whether somebody waits for what it says: it sits in a pit, or in a meat that is on one.
    pub fn is_wanted(&self, one: &Sitting<'_>) -> bool {
        match &one.probe.place {
            Where::Pit { .. } => true,
            Where::Piece { piece, .. } => {
                let piece = one.cook.pieces.get(piece);
                piece.is_some_and(|piece| piece.is_itself() && piece.is_on_pit(self.now))
            }
        }
    }

    /// "A probe in it is silent since 4:10 AM", for each that is.
    pub fn gaps(&self, here: impl Fn(&Where) -> bool) -> Vec<String> {
        let ours = self.sittings().filter(|one| here(&one.probe.place));
        let silent = ours.filter(|one| self.is_wanted(one) && self.fell_silent(one));
        silent
            .map(|one| {
                let since = self.say.the_clock_day(one.last_word(), self.now);
                let args = [("since", Arg::Text(&since))];
                self.say.with("hearing-gap", &args)
            })
            .collect()
    }

    pub fn gaps_of_meat(&self, meat: &Piece) -> Vec<String> {
        self.gaps(|place| matches!(place, Where::Piece { piece, .. } if *piece == meat.id))
    }

    pub fn gaps_of_pit(&self, of: PitId) -> Vec<String> {
        self.gaps(|place| matches!(place, Where::Pit { pit } if *pit == of))
    }

    /// "Drum", "Butt · in the middle of the thickest part".
    pub fn seat(&self, place: &Where) -> String {
        match place {
            Where::Pit { pit } => self.pit(*pit),
            Where::Piece { piece, spot } => {
                format!("{} · {}", self.piece_name(*piece), self.spot(spot))
            }
        }
    }

    /// A spot in words; one in a cook's own words as it was written.
    fn spot(&self, spot: &str) -> String {
        match crate::cook::verdict_input::spot_word(spot) {
            Some(known) => self.say.text(known.key()),
            None => spot.to_owned(),
        }
    }

    /// "231 °F, 2 min ago", "Silent since 4:10 AM", "Nothing said yet".
    pub fn last_said(&self, one: &Sitting<'_>) -> String {
        match one.last {
            _ if self.fell_silent(one) => {
                let since = self.say.the_clock_day(one.last_word(), self.now);
                self.say.with("pit-silent", &[("since", Arg::Text(&since))])
            }
            Some((at, temp)) => {
                let (temp, age) = (self.say.temperature(temp), self.ago(at));
                let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
                self.say.with("pit-reads", &args)
            }
            None => self.say.text("pit-unread"),
        }
    }

    /// The same in one line.
    pub fn sitting_line(&self, one: &Sitting<'_>) -> Line {
        Line {
            name: self.seat(&one.probe.place),
            state: self.last_said(one),
            detail: String::new(),
            weight: match self.is_wanted(one) && self.fell_silent(one) {
                true => Weight::Call,
                false => Weight::Calm,
            },
            link: None,
        }
    }
}
