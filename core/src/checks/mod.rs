//! What to try on a meat, what each result means, and whether it is done. Start at [`verdict()`](verdict::verdict), then
//! at [`Cut`] for what is known of a cut.
//!
//! Laws: nothing is called done below its published minimum; poultry passes only on the coldest of three places read by
//! hand; a thermometer that nobody checked is said on each verdict.

pub mod cuts;
pub mod level;
pub mod meaning;
pub mod message_ids;
mod next;
mod reading;
pub mod reason;
mod reasons;
pub mod refused;
mod seen;
mod shown;
pub mod standing;
mod state;
pub mod test_result;
pub mod verdict;

pub use cuts::{Cut, CutFacts, cut_facts};
pub use level::{DoneState, Level};
pub use meaning::{Meaning, Means, meaning};
pub use message_ids::message_ids;
pub use reason::Reason;
pub use reasons::STALE_AFTER_MS;
pub use refused::{Refusal, Refused};
pub use shown::PASS_MS;
pub use standing::{Standing, Trust};
pub use test_result::{
    BarkSet, Bend, BoneShowing, Joint, ProbeFeel, Spot, Temperature, Test, TestResult, WrapCall,
};
pub use verdict::{DatedResult, SafeState, Safety, Verdict, VerdictInput, verdict};
