//! Readings of one series as bytes: start at [`Encoded::of`].
//!
//! Layout, all numbers as in `varint`: version (one byte, 1), count, then for each reading the change
//! of the time step and the change of temperature, zigzagged; the first of each counts from zero. Sums wrap at 64 bits,
//! so every instant and temperature can be written. A probe read every second costs two to three bytes a reading.
//!
//! Law: one set of readings has one spelling, so the BLAKE3 of the bytes names the readings:
//! `decode(encode(r)) = settle(r)`, and bytes that decode encode to themselves.

use super::{series::Reading, settle, told::Told, varint};
use crate::{
    units::Mk,
    words::{Words, key},
};
use std::{borrow::Cow, fmt};

/// First byte of every chunk.
pub const VERSION: u8 = 1;

/// How many readings an import gathers in one chunk: about an hour of one a second, 10 kB. Common practice, no source.
pub const CHUNK_READINGS: usize = 4096;

/// The BLAKE3 of a chunk's bytes.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ChunkName(pub [u8; 32]);

impl ChunkName {
    /// The name of `bytes`.
    pub fn of(bytes: &[u8]) -> Self {
        Self(*blake3::hash(bytes).as_bytes())
    }
}

impl fmt::Display for ChunkName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for ChunkName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "ChunkName({self})")
    }
}

/// A chunk with what an entry announces of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Encoded {
    /// What is stored.
    pub bytes: Vec<u8>,
    /// Its name.
    pub name: ChunkName,
    /// First instant, ms UTC.
    pub from: i64,
    /// Last instant, ms UTC.
    pub to: i64,
    /// How many readings are in it.
    pub count: u64,
}

impl Encoded {
    /// Settles and encodes; none for no readings.
    pub fn of(readings: &[Reading]) -> Option<Self> {
        let settled = settled(readings);
        let (first, last) = (settled.first()?, settled.last()?);
        let bytes = write(&settled);
        let (name, count) = (ChunkName::of(&bytes), settled.len() as u64);
        Some(Self {
            name,
            from: first.at,
            to: last.at,
            count,
            bytes,
        })
    }
}

/// The bytes of `readings`, settled first (see [`settle`]).
pub fn encode(readings: &[Reading]) -> Vec<u8> {
    write(&settled(readings))
}

/// What the bytes hold, times strictly rising.
pub fn decode(bytes: &[u8]) -> Result<Vec<Reading>, BadChunk> {
    let (&version, mut rest) = bytes.split_first().ok_or(BadChunk::CutShort)?;
    if version != VERSION {
        return Err(BadChunk::Version { version });
    }
    let count = varint::take(&mut rest).ok_or(BadChunk::CutShort)?;
    if count > rest.len() as u64 / 2 {
        return Err(BadChunk::CutShort);
    }
    let readings = read(&mut rest, count)?;
    match rest.is_empty() {
        true => Ok(readings),
        false => Err(BadChunk::Malformed),
    }
}

/// Bytes that are no chunk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{}", self.reason())]
pub enum BadChunk {
    /// Written by a later version.
    Version {
        /// The first byte.
        version: u8,
    },
    /// Fewer bytes than its count asks for.
    CutShort,
    /// Times that do not rise, a number misspelt, or bytes left over.
    Malformed,
}

impl Told for BadChunk {
    fn key(&self) -> &'static str {
        match self {
            Self::Version { .. } => key("readings-stored-newer"),
            Self::CutShort => key("readings-stored-short"),
            Self::Malformed => key("readings-stored-damaged"),
        }
    }

    fn args(&self, _: &Words<'_>) -> Vec<(&'static str, String)> {
        match self {
            Self::Version { version } => vec![("version", version.to_string())],
            Self::CutShort | Self::Malformed => vec![],
        }
    }
}

fn settled(readings: &[Reading]) -> Cow<'_, [Reading]> {
    match settle::is_settled(readings) {
        true => Cow::Borrowed(readings),
        false => Cow::Owned(settle::union([readings.to_vec()])),
    }
}

fn write(settled: &[Reading]) -> Vec<u8> {
    let mut out = Vec::with_capacity(16 + 4 * settled.len());
    out.push(VERSION);
    varint::put(&mut out, settled.len() as u64);
    let (mut at, mut step, mut temp) = (0i64, 0i64, 0i64);
    for reading in settled {
        let next_step = reading.at.wrapping_sub(at);
        varint::put(&mut out, varint::zigzag(next_step.wrapping_sub(step)));
        varint::put(&mut out, varint::zigzag(reading.temp.0.wrapping_sub(temp)));
        (at, step, temp) = (reading.at, next_step, reading.temp.0);
    }
    out
}

fn read(rest: &mut &[u8], count: u64) -> Result<Vec<Reading>, BadChunk> {
    let mut readings: Vec<Reading> = Vec::with_capacity(count as usize);
    let (mut at, mut step, mut temp) = (0i64, 0i64, 0i64);
    for _ in 0..count {
        step = step.wrapping_add(signed(rest)?);
        at = at.wrapping_add(step);
        temp = temp.wrapping_add(signed(rest)?);
        if readings.last().is_some_and(|last| last.at >= at) {
            return Err(BadChunk::Malformed);
        }
        readings.push(Reading { at, temp: Mk(temp) });
    }
    Ok(readings)
}

fn signed(rest: &mut &[u8]) -> Result<i64, BadChunk> {
    varint::take(rest)
        .map(varint::unzigzag)
        .ok_or(match rest.is_empty() {
            true => BadChunk::CutShort,
            false => BadChunk::Malformed,
        })
}

#[cfg(test)]
#[path = "chunk_tests.rs"]
mod tests;
