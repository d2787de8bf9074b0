//! Published minimums and cautions, each with its source. Start at [`minimum`], then at
//! [`cautions_at`], which says what to tell a person at the moment of the act.
//!
//! Nothing here replaces local rules or licensed practice, and every set of cautions says so.

pub mod cautions;
pub(crate) mod keyed;
pub mod minimums;
pub mod source;

pub use cautions::{CautionKind, Doing, cautions_at};
pub use minimums::{Form, Minimum, minimum};
pub use source::Source;
