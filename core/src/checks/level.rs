//! How far along a meat is: by one test ([`Level`]), and all told ([`DoneState`]).

use crate::safety::keyed::keyed;

keyed! {
    /// How far along one test, or the feel as a whole, finds the meat. Ordered.
    Level {
        /// A good while yet.
        NotYet = "level-not-yet",
        /// Nearly.
        Close = "level-close",
        /// As it should be.
        Ready = "level-ready",
        /// Past it.
        Over = "level-over",
    }
}

keyed! {
    /// What is said of the meat. Only `Done` and `Overdone` say that it is done, and both need the minimum shown.
    DoneState {
        /// Nothing to go by, or nothing that can be trusted.
        CannotSay = "done-cannot-say",
        /// A good while yet, or colder than its minimum.
        NotYet = "done-not-yet",
        /// Nearly.
        Close = "done-close",
        /// As it should be by feel, but its minimum, or the rest that goes with it, is not shown.
        TenderOnly = "done-tender-only",
        /// Done, and its minimum shown.
        Done = "done-done",
        /// Past its best, and its minimum shown.
        Overdone = "done-overdone",
        /// Somebody recorded what this version cannot read and must not ignore.
        UpdateToJudge = "done-update-to-judge",
    }
}

impl DoneState {
    /// Whether this tells a person that the meat is cooked.
    pub const fn says_done(self) -> bool {
        matches!(self, Self::Done | Self::Overdone)
    }
}
