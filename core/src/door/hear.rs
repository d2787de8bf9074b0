//! The screen of readings: each series is read from disk, put into columns and let go, one after the other.

use super::{
    Slowbend,
    screens::{no_cook, seen_by},
};
use crate::{
    cook::Probe,
    error::Trouble,
    ids::CookId,
    moment::Moment,
    readings::{Reading, chunk, settle::settle},
    screens::{
        self, Heard, PROBE_EVERY_MS, ProbeRead, ReadingsOf, ReadingsScreen, Strand, TempLogScreen,
        Wanted,
    },
    units::Mk,
    words::Viewer,
};

impl Slowbend {
    /// Readings with their chart, all of them or those of the last `hours` (1, 3, 6 or 12); `before` is the cursor of a
    /// page of the table.
    ///
    /// What it costs grows with the readings in the stretch that is shown and with nothing else: older ones are not
    /// touched, and no more than one series is held at once.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, meat or pit, or the disk's trouble.
    pub fn readings_of(
        &mut self,
        viewer: &Viewer,
        of: ReadingsOf,
        hours: Option<u32>,
        before: Option<i64>,
        moment: &Moment,
    ) -> Result<ReadingsScreen, Trouble> {
        self.notice_clock(moment);
        match of {
            ReadingsOf::Cook { cook } | ReadingsOf::Pit { cook, .. } => self.want_cook(cook)?,
            ReadingsOf::Piece { piece } => self.want_piece(piece)?,
        };
        let wanted = screens::wanted(&seen_by(self, viewer), of, hours, moment.utc_ms);
        let wanted = wanted.ok_or_else(|| no_cook(viewer))?;
        let strands = wanted.strands.iter();
        let heard: Result<Vec<Heard>, Trouble> =
            strands.map(|strand| self.hear(&wanted, strand)).collect();
        let heard = heard?;
        screens::readings(
            &seen_by(self, viewer),
            viewer,
            &wanted,
            &heard,
            before,
            moment,
        )
        .ok_or_else(|| no_cook(viewer))
    }

    /// The temperature log of a cook.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn temp_log(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<TempLogScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let seats = self.seats_of(cook, moment.utc_ms);
        let (mut read, mut damaged) = (vec![], 0);
        for (series, probe, until) in seats {
            let (from, until) = (probe.since.at, until.min(moment.utc_ms));
            let (readings, unread) = self.readings_between(&series.0, &series.1, from, until)?;
            damaged += unread;
            read.extend(coldest_of(&readings).into_iter().map(|reading| ProbeRead {
                at: reading.at,
                temp: reading.temp,
                place: probe.place.clone(),
                series: series.clone(),
                thermometer: probe.thermometer,
            }));
        }
        screens::temp_log(&seen_by(self, viewer), viewer, cook, &read, damaged, moment)
            .ok_or_else(|| no_cook(viewer))
    }

    /// Where each probe of a cook sat, until when; what was read after the cook ended is not of it.
    fn seats_of(&self, cook: CookId, now: i64) -> Vec<((String, String), Probe, i64)> {
        let Some(cook) = self.cooks.get(&cook) else {
            return vec![];
        };
        let end = cook.finished.map_or(now, |finished| finished.at);
        let sits = cook
            .probes
            .iter()
            .map(|(series, probe)| (series.clone(), probe.clone(), end));
        let sat = cook.probes_before.iter().map(|moved| {
            let until = moved.until.saturating_sub(1).min(end);
            (moved.series.clone(), moved.probe.clone(), until)
        });
        sits.chain(sat).collect()
    }

    fn hear(&mut self, wanted: &Wanted, strand: &Strand) -> Result<Heard, Trouble> {
        let Some((source, sensor)) = &strand.series else {
            let shown = strand
                .by_hand
                .iter()
                .filter(|reading| wanted.span.column(reading.at).is_some());
            return Ok(Heard::of(wanted, &shown.copied().collect::<Vec<_>>(), 0));
        };
        let from = wanted.span.from.max(strand.from);
        let to = (wanted.span.to() - 1).min(strand.until);
        let (readings, damaged) = self.readings_between(source, sensor, from, to)?;
        Ok(Heard::of(wanted, &readings, damaged))
    }

    /// The settled readings of a series from `from` to `to`, both included: sealed, unsealed, and not yet written. Beside
    /// them how many sealed runs could not be read.
    pub(super) fn readings_between(
        &mut self,
        source: &str,
        sensor: &str,
        from: i64,
        to: i64,
    ) -> Result<(Vec<Reading>, u32), Trouble> {
        let mut readings = self.waiting_between(source, sensor, from, to);
        let mut damaged = 0;
        let store = self.store()?;
        for row in store.chunks_between(source, sensor, from, to)? {
            match chunk::decode(&row.bytes) {
                Ok(run) => readings.extend(run.into_iter().filter(|r| (from..=to).contains(&r.at))),
                Err(_) => damaged += 1,
            }
        }
        readings.extend(store.live_between(source, sensor, from, to)?);
        settle(&mut readings);
        Ok((readings, damaged))
    }

    /// Those that are not on disk yet.
    fn waiting_between(&self, source: &str, sensor: &str, from: i64, to: i64) -> Vec<Reading> {
        let rows = self.pending.rows.iter();
        let ours = rows.filter(|row| {
            row.source == source && row.sensor == sensor && (from..=to).contains(&row.at)
        });
        ours.map(|row| Reading {
            at: row.at,
            temp: Mk(row.temp),
        })
        .collect()
    }
}
/// The coldest reading of each stretch of [`PROBE_EVERY_MS`].
fn coldest_of(readings: &[Reading]) -> Vec<Reading> {
    let stretch = |reading: &Reading| reading.at.div_euclid(PROBE_EVERY_MS);
    readings
        .chunk_by(|a, b| stretch(a) == stretch(b))
        .filter_map(|run| run.iter().min_by_key(|reading| reading.temp).copied())
        .collect()
}
