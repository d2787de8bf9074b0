//! Walks a time cell from left to right. Each step takes what it names or refuses the cell.

use super::refusals::Fault;
use crate::moment::{HOUR, MINUTE, SECOND};

/// What is left of the cell.
pub struct Cursor<'a>(pub &'a [u8]);

impl Cursor<'_> {
    /// A whole number of `min` to `max` digits (at most 18).
    #[inline]
    pub fn digits(&mut self, min: usize, max: usize) -> Result<i64, Fault> {
        let (mut value, mut len) = (0i64, 0);
        while let Some(byte) = self.0.get(len)
            && byte.is_ascii_digit()
            && len < max
        {
            value = value * 10 + i64::from(byte - b'0');
            len += 1;
        }
        self.0 = &self.0[len..];
        if len < min {
            Err(Fault::NotATime)
        } else {
            Ok(value)
        }
    }

    /// One of `marks`, and which.
    #[inline]
    pub fn one_of(&mut self, marks: &[u8]) -> Result<u8, Fault> {
        match self.0 {
            [mark, rest @ ..] if marks.contains(mark) => {
                self.0 = rest;
                Ok(*mark)
            }
            _ => Err(Fault::NotATime),
        }
    }

    /// This byte.
    #[inline]
    pub fn exactly(&mut self, byte: u8) -> Result<(), Fault> {
        self.eat(byte).then_some(()).ok_or(Fault::NotATime)
    }

    /// Nothing more.
    #[inline]
    pub fn end(&self) -> Result<(), Fault> {
        self.0.is_empty().then_some(()).ok_or(Fault::NotATime)
    }

    /// A year of four digits, or two that mean 2000 to 2099.
    pub fn year(&mut self) -> Result<i64, Fault> {
        let before = self.0.len();
        let year = self.digits(2, 4)?;
        match before - self.0.len() {
            2 => Ok(2000 + year),
            4 => Ok(year),
            _ => Err(Fault::NotATime),
        }
    }

    /// What stands between a date and a clock: `T`, or blanks, or a comma and blanks.
    #[inline]
    pub fn between(&mut self) -> Result<(), Fault> {
        if self.eat(b'T') || self.eat(b't') {
            return Ok(());
        }
        let comma = self.eat(b',');
        (self.blanks() || comma)
            .then_some(())
            .ok_or(Fault::NotATime)
    }

    /// `H:MM`, seconds and their decimals if there, AM or PM if there; ms since midnight.
    #[inline]
    pub fn clock(&mut self) -> Result<i64, Fault> {
        let hour = self.digits(1, 2)?;
        self.exactly(b':')?;
        let minute = self.digits(2, 2)?;
        let second = if self.eat(b':') {
            self.digits(2, 2)?
        } else {
            0
        };
        let thousandths = self.thousandths()?;
        let hour = match self.half()? {
            None => hour,
            Some(_) if hour == 0 || hour > 12 => return Err(Fault::NoSuchTime),
            Some(half) => hour % 12 + half,
        };
        match hour < 24 && minute < 60 && second < 60 {
            true => Ok(hour * HOUR + minute * MINUTE + second * SECOND + thousandths),
            false => Err(Fault::NoSuchTime),
        }
    }

    /// Decimals of a second in ms; digits beyond three are dropped.
    #[inline]
    pub fn thousandths(&mut self) -> Result<i64, Fault> {
        if !(self.eat(b'.') || self.eat(b',')) {
            return Ok(0);
        }
        let before = self.0.len();
        let kept = self.digits(1, 3)?;
        let scale = [100, 10, 1][before - self.0.len() - 1];
        self.digits(0, 18)?;
        Ok(kept * scale)
    }

    /// `Z`, `UTC`, `+HH:MM`, `-HHMM` or `+HH`, in ms; none when the cell ends.
    #[inline]
    pub fn offset(&mut self) -> Result<Option<i64>, Fault> {
        if self.0.is_empty() {
            return Ok(None);
        }
        self.blanks();
        if [&b"Z"[..], b"z", b"UTC", b"GMT"].contains(&self.0) {
            self.0 = &[];
            return Ok(Some(0));
        }
        let sign = if self.one_of(b"+-")? == b'-' { -1 } else { 1 };
        let hours = self.digits(2, 2)?;
        let colon = self.eat(b':');
        let minutes = self.digits(if colon { 2 } else { 0 }, 2)?;
        match hours <= 14 && minutes < 60 {
            true => Ok(Some(sign * (hours * HOUR + minutes * MINUTE))),
            false => Err(Fault::NoSuchTime),
        }
    }

    /// `AM`, `p.m.`, `a. m.` and the like: 0 or 12 hours to add.
    #[inline]
    fn half(&mut self) -> Result<Option<i64>, Fault> {
        let skipped = self
            .0
            .iter()
            .position(|byte| !matches!(byte, b' ' | 0xc2 | 0xa0))
            .unwrap_or(0);
        let half = match self.0.get(skipped) {
            Some(b'A' | b'a') => 0,
            Some(b'P' | b'p') => 12,
            _ => return Ok(None),
        };
        self.0 = &self.0[skipped + 1..];
        self.eat(b'.');
        self.blanks();
        self.one_of(b"Mm")?;
        self.eat(b'.');
        Ok(Some(half))
    }

    #[inline]
    fn eat(&mut self, byte: u8) -> bool {
        match self.0 {
            [first, rest @ ..] if *first == byte => {
                self.0 = rest;
                true
            }
            _ => false,
        }
    }

    /// Skips spaces and no-break spaces; false when there were none.
    #[inline]
    fn blanks(&mut self) -> bool {
        let before = self.0.len();
        while let [b' ', rest @ ..] | [0xc2, 0xa0, rest @ ..] = self.0 {
            self.0 = rest;
        }
        before > self.0.len()
    }
}
