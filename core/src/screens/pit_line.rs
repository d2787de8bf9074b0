//! One pit in one line: its last temperature, how old that is, its band, and since when a probe is silent.

use super::{Line, Weight, glance::Glance};
use crate::{
    alarms::band_of,
    cook::{Cook, ahead::counts},
    ids::PitId,
    log::Where,
    units::Mk,
    words::Arg,
};
use std::collections::BTreeSet;

/// The last that is known of a pit's temperature.
pub(super) struct LastReading {
    pub at: i64,
    pub temp: Mk,
    pub by_probe: bool,
}

impl Glance<'_> {
    /// The pits of a cook: where its meats are or go, what was tended, where probes sit.
    pub fn pits_of(&self, cook: &Cook) -> Vec<PitId> {
        let meats = cook.meats().filter(|piece| piece.is_on_pit(self.now));
        let of_meats = meats.filter_map(|piece| piece.pit(self.now).map(|(pit, _)| pit));
        let of_probes = cook.probes.values().filter_map(|probe| match probe.place {
            Where::Pit { pit } => Some(pit),
            Where::Piece { .. } => None,
        });
        let all: BTreeSet<PitId> = cook
            .pits
            .keys()
            .copied()
            .chain(of_meats)
            .chain(of_probes)
            .filter(|pit| self.known.crew.pits.contains_key(pit))
            .collect();
        all.into_iter().collect()
    }

    pub fn pit_line_of(&self, pit: PitId) -> Line {
        let band = self
            .known
            .open_cooks()
            .find_map(|cook| band_of(&self.known, cook, pit, self.now));
        let last = self.last_of_pit(pit);
        let silent = last
            .as_ref()
            .filter(|last| last.by_probe && self.is_long_ago(last.at));
        let outside = |mk: Mk| band.is_some_and(|band| mk < band.low || mk > band.high);
        let gaps = match silent {
            Some(_) => vec![],
            None => self.gaps_of_pit(pit),
        };
        let weight = match (&last, &silent) {
            (_, Some(_)) => Weight::Call,
            _ if !gaps.is_empty() => Weight::Call,
            (Some(last), _) if outside(last.temp) => Weight::Call,
            _ => Weight::Calm,
        };
        let state = match (&last, silent) {
            (_, Some(last)) => {
                let since = self.say.the_clock_day(last.at, self.now);
                self.say.with("pit-silent", &[("since", Arg::Text(&since))])
            }
            (Some(last), None) => {
                let (temp, age) = (self.say.temperature(last.temp), self.ago(last.at));
                let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
                self.say.with("pit-reads", &args)
            }
            (None, None) => self.say.text("pit-unread"),
        };
        let detail = band.map_or_else(String::new, |band| {
            let span = self.say.temperature_span(band.low, band.high);
            let args = [("band", Arg::Text(&span))];
            match last.as_ref().is_some_and(|last| outside(last.temp)) {
                true => self.say.with("pit-outside", &args),
                false => self.say.with("pit-band", &args),
            }
        });
        let told = [detail].into_iter().chain(gaps);
        let told: Vec<String> = told.filter(|part| !part.is_empty()).collect();
        Line {
            name: self.pit(pit),
            state,
            detail: told.join(" · "),
            weight,
            link: None,
        }
    }

    pub fn last_of_pit(&self, pit: PitId) -> Option<LastReading> {
        let cooks = || self.known.open_cooks();
        let by_hand = cooks()
            .filter_map(|cook| cook.pits.get(&pit))
            .flat_map(|care| &care.read)
            .filter(|(when, ..)| counts(when.at, self.now))
            .map(|(when, temp, _)| LastReading {
                at: when.at.min(self.now),
                temp: *temp,
                by_probe: false,
            });
        let by_probe = cooks()
            .flat_map(|cook| &cook.probes)
            .filter(|(_, probe)| probe.place == Where::Pit { pit })
            .filter_map(|((source, sensor), _)| {
                let (at, temp) = self.known.tails.last(source, sensor, self.now)?;
                let by_probe = true;
                Some(LastReading { at, temp, by_probe })
            });
        by_hand
            .chain(by_probe)
            .max_by_key(|last| (last.at, last.temp))
    }
}
