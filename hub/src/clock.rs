//! When it is, for core, which never reads a clock itself. Start at [`Clock::moment`].

use slowbend_core::moment::Moment;
#[cfg(test)]
use std::sync::atomic::{AtomicI64, Ordering};
use std::{
    fs,
    time::{Instant, SystemTime, UNIX_EPOCH},
};

/// Where moments come from.
pub enum Clock {
    /// The machine's own clocks.
    Machine {
        /// Changes with each start of the machine.
        boot_id: String,
        /// When this process began, for systems that do not tell how long they have been up.
        began: Instant,
    },
    /// A clock that stands where it was set, milliseconds since 1970.
    #[cfg(test)]
    Standing(AtomicI64),
}

impl Clock {
    /// The machine's clocks. Where Linux's `boot_id` is missing, each start of this program counts as a start of the
    /// machine: a clock that jumps is then noticed only while the program runs.
    pub fn machine() -> Self {
        let boot_id = fs::read_to_string("/proc/sys/kernel/random/boot_id")
            .map(|id| id.trim().to_owned())
            .unwrap_or_else(|_| format!("process-{}-{}", std::process::id(), utc_ms()));
        Self::Machine {
            boot_id,
            began: Instant::now(),
        }
    }

    /// The present moment, in `zone`.
    pub fn moment(&self, zone: &str) -> Moment {
        match self {
            Self::Machine { boot_id, began } => Moment {
                utc_ms: utc_ms(),
                zone: zone.into(),
                boot_id: boot_id.clone(),
                since_boot_ms: uptime_ms().unwrap_or_else(|| began.elapsed().as_millis() as i64),
            },
            #[cfg(test)]
            Self::Standing(at) => Moment::at(at.load(Ordering::SeqCst), zone),
        }
    }
}

fn utc_ms() -> i64 {
    match SystemTime::now().duration_since(UNIX_EPOCH) {
        Ok(since) => since.as_millis() as i64,
        Err(before) => -(before.duration().as_millis() as i64),
    }
}

/// Linux counts sleep in the first number of `/proc/uptime`, in seconds with two decimals (proc(5), from memory).
fn uptime_ms() -> Option<i64> {
    read_uptime(&fs::read_to_string("/proc/uptime").ok()?)
}

fn read_uptime(text: &str) -> Option<i64> {
    let (whole, hundredths) = text.split_whitespace().next()?.split_once('.')?;
    let hundredths: i64 = format!("{hundredths:0<2}").get(..2)?.parse().ok()?;
    Some(whole.parse::<i64>().ok()? * 1_000 + hundredths * 10)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn uptime_is_read_in_milliseconds() {
        assert_eq!(read_uptime("350735.47 234388.90\n"), Some(350_735_470));
        assert_eq!(read_uptime("0.5 0.1"), Some(500));
        for broken in ["", "no", "12", "a.b"] {
            assert_eq!(read_uptime(broken), None, "{broken}");
        }
    }

    #[test]
    fn the_machine_keeps_its_boot_and_never_runs_backward() {
        let clock = Clock::machine();
        let (first, second) = (clock.moment("UTC"), clock.moment("UTC"));
        assert_eq!(first.boot_id, second.boot_id);
        assert!(second.since_boot_ms >= first.since_boot_ms);
    }
}
