//! The home post: Slowbend in any browser, from one binary, and its command line. Start at [`app::app_behind`] for the pages,
//! at [`cli`] for the commands.

mod app;
mod assets;
mod cli;
mod clock;
mod data;
mod demo;
mod forms;
mod guard;
mod home;
mod incoming;
mod lan;
mod live;
mod once;
mod pages;
mod qr;
mod serve;
mod size;
mod taking;
#[cfg(test)]
mod tests;
mod told;
mod typed;
mod viewer;
mod watch;
mod words;
mod zone;

use std::process::ExitCode;

fn main() -> ExitCode {
    cli::run()
}
