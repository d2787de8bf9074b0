//! The command line. Start at [`run`]; each command has a file.

mod card;
mod end;
mod export;
mod import;
mod open;
mod out;
mod plan;
mod sum;

use clap::{Args, Parser, Subcommand};
pub use end::End;
pub use open::Opened;
use std::{net::IpAddr, path::PathBuf, process::ExitCode};

/// The port that is served on unless another is chosen: one that no registered service has taken so far as we know; from
/// memory, no source.
const PORT: u16 = 7410;

/// The hand at the pit: plans the cook, rings, and remembers.
#[derive(Parser)]
#[command(name = "slowbend", version, after_help = end::CODES)]
struct Cli {
    #[command(flatten)]
    shared: Shared,
    #[command(flatten)]
    at: At,
    #[command(subcommand)]
    command: Option<Command>,
}

/// What every command takes.
#[derive(Args)]
struct Shared {
    /// The folder of the database; the usual one of this system unless given.
    #[arg(long, global = true, value_name = "DIR")]
    data: Option<PathBuf>,
}

/// Where the pages are served.
#[derive(Args, Clone, Copy)]
struct At {
    /// The port to serve on; 7410 unless given.
    #[arg(long, value_name = "N", value_parser = port)]
    port: Option<u16>,
    /// Serve on the home's network too, encrypted, for who scans the code of the page "Other phones"; ADDRESS where this
    /// machine has several.
    #[arg(long, value_name = "ADDRESS", num_args = 0..=1, require_equals = true)]
    lan: Option<Option<IpAddr>>,
}

impl At {
    /// What stands here, else what stands in `before` the command.
    fn or(self, before: Self) -> Self {
        Self {
            port: self.port.or(before.port),
            lan: self.lan.or(before.lan),
        }
    }

    const fn is_given(self) -> bool {
        self.port.is_some() || self.lan.is_some()
    }
}

#[derive(Subcommand)]
enum Command {
    /// Serve the pages on this machine (what happens without a command).
    Serve(At),
    /// Readings of thermometers.
    #[command(subcommand)]
    Readings(Readings),
    /// Write every entry as JSON lines, to a file or to standard output.
    Export {
        /// The file to write, which must not be there yet; - or nothing is standard output.
        #[arg(value_name = "FILE")]
        to: Option<PathBuf>,
    },
    /// Cook cards: a plan that another person can start from.
    #[command(subcommand)]
    Card(card::Asked),
    /// Plan a cook card and print its run sheet; nothing is recorded.
    Plan(plan::Asked),
    /// Do one of the sums: JSON in, JSON out. Without a name, list them.
    Sum(sum::Asked),
}

#[derive(Subcommand)]
enum Readings {
    /// Take the readings of a CSV file into a cook.
    Import(import::Asked),
}

/// A port as typed; 0 is any that is free.
fn port(text: &str) -> Result<u16, String> {
    let unread = |_| format!("a port is a number up to 65535, such as {PORT}");
    text.parse().map_err(unread)
}

/// Does what the command line asks.
pub fn run() -> ExitCode {
    let cli = Cli::parse();
    let done = match cli.command {
        None => serve(cli.shared, cli.at),
        Some(Command::Serve(at)) => serve(cli.shared, at.or(cli.at)),
        Some(_) if cli.at.is_given() => Err(End::refused(
            "Only serving takes --port and --lan. Leave them away, or use: slowbend serve --port N",
        )),
        Some(Command::Readings(Readings::Import(asked))) => import::run(cli.shared.data, &asked),
        Some(Command::Export { to }) => export::run(cli.shared.data, to),
        Some(Command::Card(asked)) => card::run(cli.shared.data, &asked),
        Some(Command::Plan(asked)) => plan::run(&asked),
        Some(Command::Sum(asked)) => sum::run(&asked),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(end) => {
            eprintln!("{}", end.reason());
            end.code()
        }
    }
}

fn serve(shared: Shared, at: At) -> Result<(), End> {
    let lan = at.lan.map(crate::lan::address::choose).transpose()?;
    let opened = open::open(shared.data)?;
    crate::serve::serve(opened, at.port.unwrap_or(PORT), lan)
}

#[cfg(test)]
mod tests {
    use super::*;
    use clap::CommandFactory;

    #[test]
    fn the_command_line_is_sound() {
        Cli::command().debug_assert();
        let cli = Cli::parse_from(["slowbend", "serve", "--port", "8000"]);
        assert!(matches!(
            cli.command,
            Some(Command::Serve(At {
                port: Some(8000),
                lan: None
            }))
        ));
        assert!(Cli::try_parse_from(["slowbend", "export", "--port", "8000"]).is_err());
        let usual = Cli::parse_from(["slowbend"]);
        assert!(usual.command.is_none() && !usual.at.is_given());
    }

    #[test]
    fn the_network_is_served_only_when_asked_for() {
        let lan = |args: &[&str]| Cli::try_parse_from(args).map(|cli| cli.at.lan).ok();
        assert_eq!(lan(&["slowbend"]), Some(None));
        assert_eq!(lan(&["slowbend", "--lan"]), Some(Some(None)));
        let asked = "192.168.1.20".parse().ok();
        assert_eq!(lan(&["slowbend", "--lan=192.168.1.20"]), Some(Some(asked)));
        assert_eq!(lan(&["slowbend", "--lan=everywhere"]), None);
    }
}
