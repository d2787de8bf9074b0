//! How a ring is answered where it rings, without opening Slowbend.

use serde::{Deserialize, Serialize};

/// One answer to a ring, such as "Did it".
///
/// The act is text, so that a shell can keep it where this core is not open yet, such as before the first unlock of a
/// phone, and give it back later: see [`Slowbend::answer`](crate::door::Slowbend::answer).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Answer {
    /// What the button says.
    pub label: String,
    /// The act that it stands for, as JSON of [`Act`](crate::acts::Act).
    pub act: String,
    /// So many minutes after this answer it rings again; none = not for this.
    pub again_minutes: Option<i64>,
}
