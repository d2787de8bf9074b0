//! How far ahead of the moment a claimed time may lie and still count.

use crate::moment::MINUTE;

/// Clocks of a crew differ by a little; what is claimed from further ahead than this, in milliseconds, counts nowhere
/// and is told as a wrong clock. 10 min: common practice, no source.
pub const AHEAD_MAX_MS: i64 = 10 * MINUTE;

/// Whether what was claimed for `at` counts at `now`.
pub const fn counts(at: i64, now: i64) -> bool {
    at <= now.saturating_add(AHEAD_MAX_MS)
}
