//! A small world of devices, run from one number.
//!
//! Start at [`run`]: it makes a [`World`] out of a seed and lets things happen to it, checking the laws in
//! [`checkers`] after each. Nothing here reads a clock or the system's randomness, and no path of a temporary folder
//! reaches the core's answers, so a seed replays exactly:
//!
//! ```text
//! cargo run -p slowbend-tests --bin sim -- 123
//! ```
//!
//! To add something that can happen: a variant of [`step::Happening`] with its weight, and an arm in `step.rs`.

pub mod acts;
pub mod checkers;
pub mod clock;
pub mod device;
pub mod exchange;
pub mod faults;
pub mod heard;
pub mod inject;
pub mod picture;
pub mod place;
pub mod platform;
pub mod rng;
pub mod screens;
pub mod step;
pub mod trace;
pub mod world;

pub use trace::Trace;
pub use world::World;

/// How long a run is, in things that happen.
pub const STEPS: u32 = 40;

/// Why a run stopped: which law was broken, and how.
pub type Told<T> = Result<T, String>;

/// Runs a seed to its end.
///
/// # Errors
/// The law that was broken with all that happened before, and the command that replays it.
pub fn run(seed: u64) -> Result<Trace, String> {
    let mut world = World::new(seed);
    let outcome = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| world.live(STEPS)));
    let broken = match outcome {
        Ok(Ok(())) => return Ok(world.into_trace()),
        Ok(Err(broken)) => broken,
        Err(panic) => format!("core panicked: {}", said(panic.as_ref())),
    };
    let trace = world.into_trace();
    Err(format!(
        "{trace}\nseed {seed}: {broken}\nreplay: cargo run -p slowbend-tests --bin sim -- {seed}"
    ))
}

fn said(panic: &(dyn std::any::Any + Send)) -> &str {
    match (panic.downcast_ref::<&str>(), panic.downcast_ref::<String>()) {
        (Some(text), _) => text,
        (_, Some(text)) => text,
        _ => "without words",
    }
}
