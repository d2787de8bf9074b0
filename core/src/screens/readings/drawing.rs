//! The chart: curves, lines across, and what is shaded.

use super::{
    Area, AreaKind, Chart, Curve, Heard, LevelKind, LevelLine, Tick, Wanted,
    lines::{shifted, stroke},
    strands::At,
};
use crate::{
    alarms::band_of,
    chart::{HEIGHT, Points, Scale, curve, dots},
    cook::{Cook, Piece},
    ids::PitId,
    log::Band,
    safety::minimum,
    screens::{ahead::fan, glance::Glance},
    units::Mk,
    words::Arg,
};
use std::collections::{BTreeMap, BTreeSet};

/// A line across, before it has a height.
struct Across {
    temp: Mk,
    text: String,
    kind: LevelKind,
}

impl Glance<'_> {
    /// None where there is nothing to draw.
    pub(super) fn chart(&self, cook: &Cook, wanted: &Wanted, heard: &[Heard]) -> Option<Chart> {
        let drawn = wanted.strands.iter().zip(heard);
        let ranges = drawn.filter_map(|(strand, heard)| {
            let (low, high) = heard.chart.range()?;
            Some([shifted(strand, low), shifted(strand, high)])
        });
        let ahead = fan::temps(fan::fan_of(&self.known, wanted.of, self.now));
        let mut temps: Vec<Mk> = ranges.flatten().chain(ahead).collect();
        if temps.is_empty() {
            return None;
        }
        let (across, bands) = (self.across(wanted), self.bands(cook, wanted));
        temps.extend(across.iter().map(|line| line.temp));
        temps.extend(bands.iter().flat_map(|(_, band)| [band.low, band.high]));
        let (low, high) = (temps.iter().min()?, temps.iter().max()?);
        let scale = Scale::holding(*low, *high, self.viewer.temperature);
        Some(Chart {
            says: self.chart_says(wanted),
            width: wanted.span.columns,
            height: HEIGHT.unsigned_abs(),
            hours: self.hour_ticks(&wanted.span),
            degrees: scale
                .lines()
                .map(|temp| self.degree_tick(&scale, temp))
                .collect(),
            areas: bands
                .iter()
                .map(|(pit, band)| self.area(wanted, &scale, *pit, band))
                .chain(self.fan_area(wanted.of, &wanted.span, &scale))
                .collect(),
            levels: across
                .into_iter()
                .map(|line| self.level(&scale, line))
                .collect(),
            curves: curves(wanted, heard, &scale)
                .into_iter()
                .chain(self.fan_middle(wanted.of, &wanted.span, &scale))
                .collect(),
            lanes: self.lanes(cook, wanted),
        })
    }

    fn chart_says(&self, wanted: &Wanted) -> String {
        let names: BTreeSet<String> = wanted
            .strands
            .iter()
            .map(|s| self.series_name(wanted, s))
            .chain(self.fan_name(wanted.of))
            .collect();
        let names: Vec<String> = names.into_iter().collect();
        let names = self.say.list(&names);
        let span = self
            .say
            .clock_span(wanted.span.from, wanted.span.to().min(self.now), self.now);
        self.say.with(
            "chart-says",
            &[("names", Arg::Text(&names)), ("span", Arg::Text(&span))],
        )
    }

    fn degree_tick(&self, scale: &Scale, temp: Mk) -> Tick {
        Tick {
            at: scale.y(temp).unsigned_abs(),
            text: self.say.temperature(temp),
            strong: false,
        }
    }

    /// Published minimums and pull points of the meats that are drawn, those of one temperature together.
    fn across(&self, wanted: &Wanted) -> Vec<Across> {
        let mut minimums: BTreeMap<Mk, Vec<&Piece>> = BTreeMap::new();
        let mut pulls: BTreeMap<Mk, Vec<&Piece>> = BTreeMap::new();
        for piece in self.meats_drawn(wanted) {
            minimums
                .entry(minimum(piece.cut, piece.form.value).temp)
                .or_default()
                .push(piece);
            if let Some(pull) = piece.pull_at.value {
                pulls.entry(pull).or_default().push(piece);
            }
        }
        let minimums = minimums
            .into_iter()
            .map(|(temp, of)| self.minimum_line(temp, &of));
        let pulls = pulls
            .into_iter()
            .map(|(temp, of)| self.pull_line(temp, &of));
        minimums.chain(pulls).collect()
    }

    fn meats_drawn(&self, wanted: &Wanted) -> Vec<&Piece> {
        let ids = wanted.strands.iter().filter_map(|strand| match &strand.at {
            At::Meat(piece, _) => Some(*piece),
            _ => None,
        });
        let ids: BTreeSet<_> = ids.collect();
        ids.into_iter()
            .filter_map(|id| Some(self.known.piece(id)?.1))
            .collect()
    }

    /// The rest that goes with the temperature is said with it.
    fn minimum_line(&self, temp: Mk, of: &[&Piece]) -> Across {
        let rest = of
            .iter()
            .map(|piece| minimum(piece.cut, piece.form.value).rest_ms)
            .max()
            .unwrap_or(0);
        let (shown, names) = (self.say.temperature(temp), self.names_of(of));
        let (shown, names) = (("temp", Arg::Text(&shown)), ("names", Arg::Text(&names)));
        let text = match rest {
            0 => self.say.with("chart-minimum", &[shown, names]),
            rest => {
                let rest = self.seconds_or_more(rest);
                let args = [shown, names, ("rest", Arg::Text(&rest))];
                self.say.with("chart-minimum-rest", &args)
            }
        };
        Across {
            temp,
            text,
            kind: LevelKind::Minimum,
        }
    }

    fn pull_line(&self, temp: Mk, of: &[&Piece]) -> Across {
        let (shown, names) = (self.say.temperature(temp), self.names_of(of));
        let args = [("temp", Arg::Text(&shown)), ("names", Arg::Text(&names))];
        Across {
            temp,
            text: self.say.with("chart-pull", &args),
            kind: LevelKind::Pull,
        }
    }

    fn level(&self, scale: &Scale, line: Across) -> LevelLine {
        LevelLine {
            y: scale.y(line.temp),
            label: self.say.temperature(line.temp),
            text: line.text,
            kind: line.kind,
        }
    }

    fn names_of(&self, of: &[&Piece]) -> String {
        let names: Vec<&str> = of.iter().map(|piece| piece.name.value.as_str()).collect();
        self.say.list(&names)
    }

    /// Where the pits that are drawn are held.
    fn bands(&self, cook: &Cook, wanted: &Wanted) -> Vec<(PitId, Band)> {
        let pits = wanted.strands.iter().filter_map(|strand| match strand.at {
            At::Pit(pit) => Some(pit),
            _ => None,
        });
        let pits: BTreeSet<PitId> = pits.collect();
        pits.into_iter()
            .filter_map(|pit| Some((pit, band_of(&self.known, cook, pit, self.now)?)))
            .collect()
    }

    fn area(&self, wanted: &Wanted, scale: &Scale, pit: PitId, band: &Band) -> Area {
        let right = i32::try_from(wanted.span.columns).unwrap_or(i32::MAX);
        let across = |temp: Mk| vec![0, scale.y(temp), right, scale.y(temp)];
        let (name, held) = (
            self.pit(pit),
            self.say.temperature_span(band.low, band.high),
        );
        let args = [("pit", Arg::Text(&name)), ("band", Arg::Text(&held))];
        Area {
            text: self.say.with("chart-band", &args),
            kind: AreaKind::Band,
            upper: across(band.high),
            lower: across(band.low),
        }
    }
}

fn curves(wanted: &Wanted, heard: &[Heard], scale: &Scale) -> Vec<Curve> {
    let all = wanted.strands.iter().zip(heard).zip(1..);
    all.map(|((strand, heard), number)| {
        let y = |temp: Mk| scale.y(shifted(strand, temp));
        let Points { at, runs } = match &strand.series {
            Some(_) => curve(&heard.chart, y),
            None => dots(&wanted.span, &strand.by_hand, y),
        };
        Curve {
            number,
            stroke: stroke(strand),
            points: at,
            runs,
        }
    })
    .filter(|curve| !curve.runs.is_empty())
    .collect()
}
