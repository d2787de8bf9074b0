//! The clock of one device, and what can go wrong with it.
//!
//! The world keeps the true time. A device shows it through a wall clock that may be off, a zone, and a counter since
//! boot that nobody can set.

use super::rng::Rng;
use slowbend_core::moment::{HOUR, MINUTE, Moment, SECOND};

/// Zones that a device may stand in; the last is no zone.
const ZONES: &[&str] = &[
    "America/Chicago",
    "America/New_York",
    "America/Phoenix",
    "Australia/Lord_Howe",
    "Europe/Berlin",
    "UTC",
    "Nowhere/Atoll",
];

/// What a device believes about time.
#[derive(Clone, Debug)]
pub struct Clock {
    name: usize,
    off_ms: i64,
    zone: &'static str,
    boot: u32,
    booted_ms: i64,
}

/// What happens to a clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClockFault {
    /// It is put forward or back by up to three hours.
    Jump,
    /// It is off by up to three seconds: drift.
    Drift,
    /// It says some day of 2099.
    Year2099,
    /// It says the first day of 1970: a device without a battery.
    Year1970,
    /// It is put right.
    Mended,
    /// The device stands in another zone: a flight.
    Flight,
}

impl Clock {
    /// A right clock in Chicago, on device `name`, which booted an hour before `true_ms`.
    pub fn right(name: usize, true_ms: i64) -> Self {
        Self {
            name,
            off_ms: 0,
            zone: ZONES[0],
            boot: 1,
            booted_ms: true_ms - HOUR,
        }
    }

    /// What the device says at the true time `true_ms`.
    pub fn moment(&self, true_ms: i64) -> Moment {
        Moment {
            utc_ms: true_ms + self.off_ms,
            zone: self.zone.into(),
            boot_id: format!("device-{}-boot-{}", self.name, self.boot),
            since_boot_ms: true_ms - self.booted_ms,
        }
    }

    /// Whether it is right to the minute.
    pub fn is_right(&self) -> bool {
        self.off_ms.abs() < MINUTE
    }

    /// The device boots.
    pub fn reboot(&mut self, true_ms: i64) {
        self.boot += 1;
        self.booted_ms = true_ms;
    }

    /// Puts it right, whatever happened to it.
    pub fn mend(&mut self) {
        self.off_ms = 0;
    }

    /// Lets `fault` happen.
    pub fn suffer(&mut self, fault: ClockFault, true_ms: i64, rng: &mut Rng) {
        match fault {
            ClockFault::Jump => self.off_ms += rng.from_to(-180, 180) * MINUTE,
            ClockFault::Drift => self.off_ms += rng.from_to(-3, 3) * SECOND,
            ClockFault::Year2099 => self.off_ms = 4_086_000_000_000 - true_ms,
            ClockFault::Year1970 => self.off_ms = rng.from_to(0, 1000) * SECOND - true_ms,
            ClockFault::Mended => self.mend(),
            ClockFault::Flight => self.zone = rng.pick(ZONES).expect("there are zones"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_jump_moves_the_wall_and_never_the_time_since_boot() {
        let mut clock = Clock::right(0, 1_781_340_000_000);
        let before = clock.moment(1_781_340_060_000);
        clock.suffer(ClockFault::Year2099, 1_781_340_060_000, &mut Rng::new(1));
        let after = clock.moment(1_781_340_060_000);
        assert_eq!(after.since_boot_ms, before.since_boot_ms);
        assert_eq!(after.utc_ms, 4_086_000_000_000);
        clock.reboot(1_781_340_060_000);
        assert_ne!(clock.moment(1_781_340_060_000).boot_id, before.boot_id);
    }
}
