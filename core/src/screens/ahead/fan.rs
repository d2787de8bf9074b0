//! The fan of a meat on its chart: where its inside will likely be, from the last forecast on.

use super::forecast_of;
use crate::{
    ahead::FanPoint,
    chart::{Scale, Span},
    cook::Known,
    screens::{Area, AreaKind, Curve, ReadingsOf, Stroke, glance::Glance},
    units::Mk,
    words::Arg,
};

/// The fan that goes on the chart `of` one meat; empty for any other, and where nothing is forecast.
pub(in crate::screens) fn fan_of<'a>(
    known: &Known<'a>,
    of: ReadingsOf,
    now: i64,
) -> &'a [FanPoint] {
    let ReadingsOf::Piece { piece } = of else {
        return &[];
    };
    let ahead = known
        .piece(piece)
        .and_then(|(cook, piece)| forecast_of(known, cook, piece, now));
    ahead.map_or(&[], |ahead| &ahead.forecast.fan)
}

/// What the fan adds to the range of the chart.
pub(in crate::screens) fn temps(fan: &[FanPoint]) -> impl Iterator<Item = Mk> + '_ {
    fan.iter().flat_map(|point| [point.low, point.high])
}

impl Glance<'_> {
    /// The fan as an area, four in five of it.
    pub(in crate::screens) fn fan_area(
        &self,
        of: ReadingsOf,
        span: &Span,
        scale: &Scale,
    ) -> Option<Area> {
        let fan = fan_of(&self.known, of, self.now);
        let line = |temp: fn(&FanPoint) -> Mk| points(fan, span, scale, temp);
        let upper = line(|point| point.high);
        let name = self.fan_name(of)?;
        (upper.len() > 2).then(|| Area {
            text: self.say.with("ahead-fan", &[("name", Arg::Text(&name))]),
            kind: AreaKind::Ahead,
            upper,
            lower: line(|point| point.low),
        })
    }

    /// The middle of the fan, as a curve that belongs to no series.
    pub(in crate::screens) fn fan_middle(
        &self,
        of: ReadingsOf,
        span: &Span,
        scale: &Scale,
    ) -> Option<Curve> {
        let fan = fan_of(&self.known, of, self.now);
        let points = points(fan, span, scale, |point| point.mid);
        let count = u32::try_from(points.len() / 2).unwrap_or(u32::MAX);
        (count > 1).then(|| Curve {
            number: 0,
            stroke: Stroke::Ahead,
            points,
            runs: vec![count],
        })
    }

    /// The meat whose fan there is.
    pub(in crate::screens) fn fan_name(&self, of: ReadingsOf) -> Option<String> {
        match of {
            ReadingsOf::Piece { piece } if !fan_of(&self.known, of, self.now).is_empty() => {
                Some(self.piece_name(piece))
            }
            _ => None,
        }
    }
}

/// x, y, x, y… of one line of the fan, as far as it lies on the chart.
fn points(
    fan: &[FanPoint],
    span: &Span,
    scale: &Scale,
    temp: impl Fn(&FanPoint) -> Mk,
) -> Vec<i32> {
    let on = fan.iter().filter_map(|point| {
        let x = i32::try_from(span.column(point.at)?).ok()?;
        Some([x, scale.y(temp(point))])
    });
    on.flatten().collect()
}
