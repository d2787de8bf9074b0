//! Published minimums and cautions, each with its source. Start at [`minimum`], then at
//! [`cautions_at`], which says what to tell a person at the moment of the act.
//!
//! The sums over readings follow the food through [`food_log`]: [`lethality`], [`clocks`], [`cooling`], [`fire_out`], [`off_heat`].
//! [`not_here`] says what is not done with Slowbend at all.
//!
//! Nothing here replaces local rules or licensed practice, and every set of cautions says so.

pub mod cautions;
pub mod clocks;
pub mod cooling;
pub mod fire_out;
pub mod food_log;
pub(crate) mod keyed;
pub mod lethality;
pub mod minimums;
pub mod off_heat;
pub mod refusals;
pub mod source;

pub use cautions::{CautionKind, Doing, cautions_at};
pub use minimums::{Form, Minimum, minimum};
pub use refusals::{NotHere, not_here};
pub use source::Source;
