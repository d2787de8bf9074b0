//! One series in words.

use super::{Heard, ReadingsOf, SeriesLine, Strand, Stroke, Wanted, strands::At};
use crate::{
    alarms::SILENT_MS,
    cook::Cook,
    readings::Reading,
    screens::{Place, Weight, glance::Glance},
    units::Mk,
    words::Arg,
};

/// So many gaps are told, the latest; the chart shows all.
const GAPS_TOLD: usize = 3;

impl Glance<'_> {
    pub(super) fn series_lines(
        &self,
        cook: &Cook,
        wanted: &Wanted,
        heard: &[Heard],
    ) -> Vec<SeriesLine> {
        let both = wanted.strands.iter().zip(heard).zip(1..);
        both.map(|((strand, heard), number)| self.series_line(cook, wanted, strand, heard, number))
            .collect()
    }

    fn series_line(
        &self,
        cook: &Cook,
        wanted: &Wanted,
        strand: &Strand,
        heard: &Heard,
        number: u32,
    ) -> SeriesLine {
        let last = self.last_of(strand, heard);
        let silent = last.is_some_and(|last| self.is_silent(cook, strand, last));
        SeriesLine {
            number,
            name: self.series_name(wanted, strand),
            state: self.series_state(strand, last, silent),
            trend: self.trend(cook, strand, heard, last).unwrap_or_default(),
            extremes: self.extremes(strand, heard).unwrap_or_default(),
            gaps: self.gap_lines(strand, heard),
            doubts: self.series_doubts(cook, wanted, strand, heard),
            stroke: stroke(strand),
            weight: match silent {
                true => Weight::Call,
                false => Weight::Calm,
            },
            link: self.series_link(cook, wanted.of, strand),
        }
    }

    /// "Drum", "Butt, by hand"; with its channel where two probes sit in one thing.
    pub(super) fn series_name(&self, wanted: &Wanted, strand: &Strand) -> String {
        let name = match &strand.at {
            At::Pit(pit) => self.pit(*pit),
            At::Meat(piece, _) => self.piece_name(*piece),
            At::Nowhere => {
                let Some((source, sensor)) = &strand.series else {
                    return String::new();
                };
                let args = [("source", Arg::Text(source)), ("sensor", Arg::Text(sensor))];
                return self.say.with("chart-series-loose", &args);
            }
        };
        let Some((_, sensor)) = &strand.series else {
            return self
                .say
                .with("chart-series-by-hand", &[("name", Arg::Text(&name))]);
        };
        let same =
            |other: &&Strand| other.series.is_some() && other.at.thing() == strand.at.thing();
        match wanted.strands.iter().filter(same).count() {
            0 | 1 => name,
            _ => {
                let args = [("name", Arg::Text(&name)), ("sensor", Arg::Text(sensor))];
                self.say.with("chart-series-sensor", &args)
            }
        }
    }

    /// The last reading, corrected; where none is in the stretch that is shown, the last before it.
    fn last_of(&self, strand: &Strand, heard: &Heard) -> Option<Reading> {
        let before = || {
            let (source, sensor) = strand.series.as_ref()?;
            let last = self
                .known
                .tails
                .last(source, sensor, strand.until.min(self.now));
            last.map(|(at, temp)| Reading { at, temp })
                .filter(|last| last.at >= strand.from)
        };
        let last = heard.last.or_else(before)?;
        Some(Reading {
            temp: shifted(strand, last.temp),
            ..last
        })
    }

    /// A probe that still sits there and says nothing while the cook is under way.
    fn is_silent(&self, cook: &Cook, strand: &Strand, last: Reading) -> bool {
        let sits = strand
            .series
            .as_ref()
            .is_some_and(|series| cook.probes.contains_key(series));
        let here = strand.until >= self.now && cook.is_open() && sits;
        here && self.now.saturating_sub(last.at) >= SILENT_MS
    }

    fn series_state(&self, strand: &Strand, last: Option<Reading>, silent: bool) -> String {
        let Some(last) = last else {
            return self.say.text("chart-no-reading");
        };
        let temp = self.say.temperature(last.temp);
        if silent {
            let since = self.say.the_clock_day(last.at, self.now);
            let args = [("temp", Arg::Text(&temp)), ("since", Arg::Text(&since))];
            return self.say.with("chart-silent", &args);
        }
        let age = match strand.until < self.now {
            true => self.say.clock_day(last.at, self.now),
            false => self.ago(last.at),
        };
        let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
        self.say.with("pit-reads", &args)
    }

    /// "Rising 6 °F an hour", of what is read now.
    fn trend(
        &self,
        cook: &Cook,
        strand: &Strand,
        heard: &Heard,
        last: Option<Reading>,
    ) -> Option<String> {
        let fresh = self.now.saturating_sub(last?.at) < SILENT_MS
            && cook.is_open()
            && strand.series.is_some();
        let rate = heard
            .trend
            .filter(|_| fresh && !strand.correction.too_far)?;
        let by = self.say.temperature_difference(Mk(rate.saturating_abs()));
        let args = [("by", Arg::Text(&by))];
        Some(match rate {
            _ if by == self.say.temperature_difference(Mk(0)) => self.say.text("chart-steady"),
            rate if rate > 0 => self.say.with("chart-rising", &args),
            _ => self.say.with("chart-falling", &args),
        })
    }

    fn extremes(&self, strand: &Strand, heard: &Heard) -> Option<String> {
        let whole = heard
            .chart
            .whole()
            .filter(|whole| whole.first != whole.last)?;
        let [low, high] = [whole.coldest, whole.hottest];
        let temps = [low, high].map(|r| self.say.temperature(shifted(strand, r.temp)));
        let times = [low, high].map(|r| self.say.clock_day(r.at, self.now));
        let args = [
            ("low", Arg::Text(&temps[0])),
            ("lowat", Arg::Text(&times[0])),
            ("high", Arg::Text(&temps[1])),
            ("highat", Arg::Text(&times[1])),
        ];
        Some(self.say.with("chart-extremes", &args))
    }

    fn gap_lines(&self, strand: &Strand, heard: &Heard) -> Vec<String> {
        if strand.series.is_none() {
            return vec![];
        }
        let told = heard.gaps.iter().rev().take(GAPS_TOLD);
        let mut lines: Vec<String> = told
            .map(|gap| {
                let span = self.say.clock_span(gap.from, gap.to, self.now);
                let long = self.say.duration(gap.to - gap.from);
                let args = [("span", Arg::Text(&span)), ("long", Arg::Text(&long))];
                self.say.with("chart-gap", &args)
            })
            .collect();
        let more = i64::try_from(heard.gaps.len().saturating_sub(GAPS_TOLD)).unwrap_or(i64::MAX);
        if more > 0 {
            lines.push(
                self.say
                    .with("chart-gaps-more", &[("count", Arg::Number(more))]),
            );
        }
        lines
    }

    /// What was corrected, and what is amiss.
    fn series_doubts(
        &self,
        cook: &Cook,
        wanted: &Wanted,
        strand: &Strand,
        heard: &Heard,
    ) -> Vec<String> {
        let mut doubts: Vec<String> = self.corrected(strand).into_iter().collect();
        if strand.at == At::Nowhere {
            doubts.push(self.say.text("chart-loose"));
        }
        if heard.damaged > 0 {
            doubts.push(self.say.text("chart-damaged"));
        }
        let saved = strand
            .series
            .as_ref()
            .and_then(|series| cook.saved.get(series));
        let (from, to) = (
            wanted.span.from.max(strand.from),
            wanted.span.to().min(strand.until),
        );
        let announced = saved.is_some_and(|saved| saved.from <= to && saved.to >= from);
        if announced && heard.last.is_none() {
            doubts.push(self.say.text("chart-elsewhere"));
        }
        doubts
    }

    fn corrected(&self, strand: &Strand) -> Option<String> {
        let off_mk = strand.correction.said?;
        let thermometer = self.known.crew.thermometers.get(&strand.thermometer?)?;
        let off = self.say.temperature_difference(Mk(off_mk.abs()));
        let args = [
            ("name", Arg::Text(&thermometer.name.value)),
            ("off", Arg::Text(&off)),
        ];
        Some(match off_mk {
            _ if strand.correction.too_far => self.say.with("chart-too-far", &args),
            0.. => self.say.with("chart-corrected-hot", &args),
            _ => self.say.with("chart-corrected-cold", &args),
        })
    }

    fn series_link(&self, cook: &Cook, of: ReadingsOf, strand: &Strand) -> Option<Place> {
        let of = match (of, &strand.at) {
            (ReadingsOf::Cook { .. }, At::Pit(pit)) => ReadingsOf::Pit {
                cook: cook.id,
                pit: *pit,
            },
            (ReadingsOf::Cook { .. }, At::Meat(piece, _)) => ReadingsOf::Piece { piece: *piece },
            _ => return None,
        };
        Some(Place::Readings { of })
    }
}

/// A reading as it counts.
pub(super) fn shifted(strand: &Strand, temp: Mk) -> Mk {
    Mk(temp.0.saturating_add(strand.correction.shift))
}

/// How a strand is drawn.
pub(super) fn stroke(strand: &Strand) -> Stroke {
    match (&strand.at, &strand.series) {
        (_, None) => Stroke::Hand,
        (At::Nowhere, _) => Stroke::Doubtful,
        _ if strand.correction.too_far => Stroke::Doubtful,
        (At::Pit(_), _) => Stroke::Pit,
        (At::Meat(..), _) => Stroke::Meat,
    }
}
