//! What cannot be forecast, and what to do about it.

/// Why there is no forecast.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAForecast {
    /// A number that no cook has.
    #[error("{what} is {value}: give one from {low} to {high}.")]
    Outside {
        /// What.
        what: &'static str,
        /// What was given.
        value: i64,
        /// The least.
        low: i64,
        /// The most.
        high: i64,
    },
    /// Not on the pit yet.
    #[error("It is not on the pit yet: say since when it is.")]
    NotOn,
    /// Too long.
    #[error("It has been on the pit for more than two days: begin a new cook.")]
    TooLong,
    /// The pit was never read and nobody said what it is held at.
    #[error(
        "Nothing is known of the pit: give a reading of its thermometer or what it is held at."
    )]
    NoPit,
    /// Points that do not rise.
    #[error("The points are not in order: give them by time, the earliest first.")]
    NotInOrder,
}
