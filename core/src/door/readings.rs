//! Probe readings: into the tails at once, on disk within a minute, sealed in chunks by `work`.

use super::Slowbend;
use crate::{
    error::{Refused, Trouble},
    log::{Draft, SeriesSaved},
    moment::{HOUR, MINUTE, Moment, SECOND},
    readings::{Encoded, Reading, SeriesId, Tails, chunk, tails::TAIL_MS},
    store::{ChunkRow, Chunks, TailReading},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// Readings wait at most this long before they are written.
const FLUSH_MS: i64 = 30 * SECOND;
/// A batch larger than this is not taken at once.
const BATCH_MAX: usize = 100_000;
/// Readings are sealed once the oldest of a series is this old against its newest, or once there are this many.
const SEAL_MS: i64 = HOUR;
const SEAL_COUNT: usize = 512;
/// What a probe can show: −60 to 800 °C. Common practice, no source.
const SHOWN: std::ops::RangeInclusive<i64> = 213_150..=1_073_150;

/// One reading of a probe.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct SensorReading {
    /// The instrument, 1 to 80 characters.
    pub source: String,
    /// Its channel, 1 to 80 characters.
    pub sensor: String,
    /// When, milliseconds since 1970: not more than 10 minutes ahead.
    pub at: i64,
    /// How hot: −60 to 800 °C.
    pub temp: Mk,
}

/// Readings that are not on disk yet.
#[derive(Clone, Debug, Default)]
pub(super) struct Pending {
    pub(super) rows: Vec<TailReading>,
    /// When the oldest of them came, since boot.
    since_boot: Option<i64>,
}

impl Slowbend {
    /// Takes readings of probes: all of the batch or, where one of them cannot be, none.
    ///
    /// They are on disk within 60 s as long as this verb, an act, an absorbing or work follows within 30 s; a shell whose probes fall
    /// silent calls [`work`](Self::work) once more.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where a reading is absurd, or the disk's trouble.
    pub fn readings(&mut self, batch: &[SensorReading], moment: &Moment) -> Result<(), Trouble> {
        self.store()?;
        self.notice_clock(moment);
        sound(batch, moment)?;
        self.ahead.heard(batch);
        for reading in batch {
            self.tails
                .forget_after(&reading.source, &reading.sensor, self.latest());
            self.tails
                .take(&reading.source, &reading.sensor, reading.at, reading.temp);
            self.pending.rows.push(TailReading {
                source: reading.source.clone(),
                sensor: reading.sensor.clone(),
                at: reading.at,
                temp: reading.temp.0,
            });
        }
        self.pending.since_boot.get_or_insert(moment.since_boot_ms);
        self.flush_if_due(moment)
    }

    /// Writes waiting readings once the oldest has waited long enough; every verb that writes does.
    pub(super) fn flush_if_due(&mut self, moment: &Moment) -> Result<(), Trouble> {
        let due = |since: i64| (moment.since_boot_ms - since).abs() >= FLUSH_MS;
        if self.pending.since_boot.is_some_and(due) || self.pending.rows.len() >= BATCH_MAX {
            self.flush_readings()?;
        }
        Ok(())
    }

    /// Writes waiting readings. Where that fails they go on waiting.
    pub(super) fn flush_readings(&mut self) -> Result<(), Trouble> {
        if !self.pending.rows.is_empty() {
            let rows = std::mem::take(&mut self.pending.rows);
            if let Err(trouble) = self.store()?.put_live(&rows) {
                self.pending.rows = rows;
                return Err(trouble.into());
            }
        }
        self.pending.since_boot = None;
        Ok(())
    }

    /// The latest time that a tail may reach to: half its length ahead of the clock. What was taken by a clock that has
    /// been put back since would else push all that is read now out of it: nothing would be seen outside its band, or
    /// ready.
    fn latest(&self) -> i64 {
        self.utc_ms.saturating_add(TAIL_MS / 2)
    }

    /// Fills the tails with the unsealed readings on disk.
    pub(super) fn load_tails(&mut self) -> Result<(), Trouble> {
        let latest = self.latest();
        for row in self.store()?.live()? {
            if row.at > latest {
                continue;
            }
            self.tails
                .take(&row.source, &row.sensor, row.at, Mk(row.temp));
        }
        Ok(())
    }

    /// Fills the tails anew: they were read as far as a clock reached that has been put right since. Where the disk gives
    /// nothing now, they stay as they are.
    pub(super) fn reload_tails(&mut self) {
        let (tails, tailed) = (self.tails.clone(), self.tailed.clone());
        self.tails = Tails::default();
        self.tailed.clear();
        for row in self.pending.rows.clone() {
            self.tails
                .take(&row.source, &row.sensor, row.at, Mk(row.temp));
        }
        let read = self.load_tails().and_then(|()| self.want_tails());
        if read.is_err() {
            (self.tails, self.tailed) = (tails, tailed);
        }
    }

    /// Fills the tails from the chunks of each series that a loaded cook has, once for each.
    pub(super) fn want_tails(&mut self) -> Result<(), Trouble> {
        let series = self.cooks.values().flat_map(|cook| cook.probes.keys());
        let new: Vec<_> = series
            .filter(|series| !self.tailed.contains(*series))
            .cloned()
            .collect();
        let latest = self.latest();
        for (source, sensor) in new {
            for row in self.store()?.last_chunks(&source, &sensor, latest)? {
                let readings = chunk::decode(&row.bytes).unwrap_or_default();
                for reading in readings.into_iter().filter(|reading| reading.at <= latest) {
                    self.tails.take(&source, &sensor, reading.at, reading.temp);
                }
            }
            self.tailed.insert((source, sensor));
        }
        Ok(())
    }

    /// Seals the first series that has enough, announcing it in the cook its probe sits in. Answers whether one was.
    pub(super) fn seal_one(&mut self, moment: &Moment) -> Result<bool, Trouble> {
        let rows = self.store()?.live()?;
        let mut runs = rows.chunk_by(|a, b| a.source == b.source && a.sensor == b.sensor);
        let Some(run) = runs.find(|run| is_full(run)) else {
            return Ok(false);
        };
        let readings: Vec<Reading> = run
            .iter()
            .map(|row| Reading {
                at: row.at,
                temp: Mk(row.temp),
            })
            .collect();
        let (source, sensor) = (run[0].source.clone(), run[0].sensor.clone());
        let Some(encoded) = Encoded::of(&readings) else {
            return Ok(false);
        };
        let cook = self
            .known()
            .cooks
            .values()
            .find(|c| c.probes.contains_key(&(source.clone(), sensor.clone())));
        let cook = cook.map(|cook| cook.id);
        let row = chunk_row(&source, &sensor, encoded);
        let draft = announce(cook, &row, moment);
        let stamp = self.stamp.tick(moment.utc_ms);
        let chunks = Chunks {
            rows: &[row],
            instead_of: run,
        };
        self.write(&[draft], &[stamp], None, chunks)?;
        Ok(true)
    }
}

fn is_full(run: &[TailReading]) -> bool {
    let age = run.last().map_or(0, |last| last.at - run[0].at);
    run.len() >= SEAL_COUNT || age >= SEAL_MS
}

/// A chunk as it is kept.
pub(super) fn chunk_row(source: &str, sensor: &str, encoded: Encoded) -> ChunkRow {
    ChunkRow {
        hash: encoded.name.0,
        source: source.into(),
        sensor: sensor.into(),
        first: encoded.from,
        last: encoded.to,
        count: encoded.count as i64,
        bytes: encoded.bytes,
    }
}

/// The entry that announces a chunk.
pub(super) fn announce(cook: Option<crate::ids::CookId>, row: &ChunkRow, moment: &Moment) -> Draft {
    let hash = row.hash.iter().map(|byte| format!("{byte:02x}")).collect();
    let saved = SeriesSaved {
        source: row.source.clone(),
        sensor: row.sensor.clone(),
        from: row.first,
        to: row.last,
        count: row.count,
        hash,
    };
    Draft {
        cook,
        at: moment.utc_ms,
        payload: saved.into(),
    }
}

fn sound(batch: &[SensorReading], moment: &Moment) -> Result<(), Refused> {
    let refuse = |reason: String| Err(Refused { reason });
    if batch.len() > BATCH_MAX {
        return refuse(format!(
            "send at most {BATCH_MAX} readings at once, not {}",
            batch.len()
        ));
    }
    for reading in batch {
        if let Err(bad) = SeriesId::new(&reading.source, &reading.sensor) {
            return refuse(bad.to_string());
        }
        if !SHOWN.contains(&reading.temp.0) {
            return refuse(format!(
                "{} mK is nothing a probe shows: −60 to 800 °C; check the probe",
                reading.temp.0
            ));
        }
        if reading.at > moment.utc_ms + 10 * MINUTE || reading.at < 946_684_800_000 {
            return refuse(
                "a reading's time is ahead of this device's clock, or before 2000: set both clocks"
                    .into(),
            );
        }
    }
    Ok(())
}
