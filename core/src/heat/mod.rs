//! How heat gets into meat and water out of it. Start at [`typical`] and [`Members`](kernel::Members); all equations, ranges
//! and sources are in `docs/heat.md`.
//!
//! ```
//! use slowbend_core::{checks::cuts::Cut, heat::{PIT_VAPOR, kernel::{Boundary, Member, Members}, typical}};
//! // Eight hypotheses about one butt of 4 kg: how wet its surface is.
//! let members = std::array::from_fn(|i| Member { wetness: 0.15 + 0.02 * i as f64, ..typical(Cut::PorkButt, 4_000) });
//! let mut block = Members::raw(&members);
//! // Six hours at 250 °F in steps of two minutes.
//! for _ in 0..180 {
//!     block.step(&Boundary::pit(121.1, PIT_VAPOR), 120.0);
//! }
//! let core = block.state.core();
//! assert!(core.0.iter().all(|celsius| (65.0..85.0).contains(celsius)));
//! // Kept as bytes and back, to the bit.
//! let kept = block.state.to_bytes();
//! let (mut again, mut on) = (block.clone(), block);
//! again.state = slowbend_core::heat::kernel::State::from_bytes(&kept).unwrap();
//! on.step(&Boundary::pit(121.1, PIT_VAPOR), 120.0);
//! again.step(&Boundary::pit(121.1, PIT_VAPOR), 120.0);
//! assert_eq!(again.state.to_bytes(), on.state.to_bytes());
//! ```
//!
//! Nobody puts a stall in: it is where evaporation takes what the pit gives. Hot meat can hold less water; what it cannot hold
//! seeps to the surface, keeps it wet and cools it; when less comes, the surface dries and the meat goes on warming.

pub mod conduct;
pub mod cook;
pub mod food;
pub mod kernel;
mod meat;
mod pit;
mod shape;

pub use meat::{PIT_VAPOR, of_parts, parts, typical, wrap};
pub use pit::{Opened, PitAir};
pub use shape::{Shape, shape};
