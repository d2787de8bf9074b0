//! The program under test, in a process of its own.

use crate::{harness::Result, place};
use std::{
    fs,
    io::{BufRead, BufReader},
    net::SocketAddr,
    path::Path,
    process::{Child, Command, Stdio},
    time::Duration,
};
use tempfile::TempDir;

/// A running home post, ended with the value.
pub struct Program {
    child: Child,
    _own: TempDir,
    /// Where it answers.
    pub at: SocketAddr,
}

impl Program {
    /// Starts it on the database in `data`, on a port that is free. It is built beside this program.
    pub fn start(data: &Path) -> Result<Self> {
        let beside = std::env::current_exe()?.with_file_name("slowbend");
        let own = place::folder()?;
        let mut child = Command::new(&beside)
            .args(["--port", "0", "--data"])
            .arg(data)
            .env("HOME", own.path())
            .env_remove("XDG_STATE_HOME")
            .stdout(Stdio::piped())
            .spawn()
            .map_err(|error| {
                format!(
                    "{}: {error}; build it: cargo build --release",
                    beside.display()
                )
            })?;
        let said = child.stdout.take().ok_or("its words are not heard")?;
        let mut line = String::new();
        BufReader::new(said).read_line(&mut line)?;
        let at = line
            .split_once("http://")
            .and_then(|(_, rest)| rest.split('/').next()?.parse().ok());
        let at = at.ok_or_else(|| format!("it said no address: {line:?}"))?;
        Ok(Self {
            child,
            _own: own,
            at,
        })
    }

    /// The time that processors spent on it since it began; none where the system does not say. A tick is a hundredth of a
    /// second on every Linux (USER_HZ, from memory).
    pub fn processor_time(&self) -> Result<Option<Duration>> {
        let Ok(stat) = fs::read_to_string(format!("/proc/{}/stat", self.child.id())) else {
            return Ok(None);
        };
        let after_name = stat.rsplit_once(')').ok_or("a line of another shape")?.1;
        let ticks: u64 = after_name
            .split_whitespace()
            .skip(11)
            .take(2)
            .filter_map(|ticks| ticks.parse::<u64>().ok())
            .sum();
        Ok(Some(Duration::from_millis(ticks * 10)))
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        // It is gone either way.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
