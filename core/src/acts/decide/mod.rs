//! What an act records: a pure function of what is known, or a refusal that says what to do instead.

use super::Act;
use crate::{
    cook::Known,
    error::Refused,
    ids::{CookId, Names},
    log::{Draft, EntryKey, Subject},
    moment::Moment,
    words::Viewer,
};

/// What an act is decided on.
pub struct Context<'a> {
    /// What is known.
    pub known: Known<'a>,
    /// Whose language refusals are in.
    pub viewer: &'a Viewer,
    /// When it is.
    pub moment: &'a Moment,
    /// Which cook an entry belongs to and what kind of thing it says; none where it is not here.
    pub owner: &'a dyn Fn(&EntryKey) -> Option<Owner>,
    /// Where new ids come from.
    pub names: &'a mut Names,
}

/// Whose an entry is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Owner {
    /// Its cook, if it belongs to one.
    pub cook: Option<CookId>,
    /// What kind of thing it says; empty where it was erased.
    pub kind: String,
}

/// What is to be recorded, and what to answer once it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// The entries to be written, in order, all or nothing.
    pub drafts: Vec<Draft>,
    /// What was made.
    pub made: Vec<Subject>,
    /// What was done, in a few words, for the screen and the speaker.
    pub said: String,
    /// Whether the answer offers to take it back (the door fills in the entries).
    pub undoable: bool,
}

#[allow(unused_variables, clippy::todo, reason = "being written")]
/// Decides `act`.
///
/// # Errors
/// A sentence in the viewer's language that says what to do instead.
pub fn decide(context: &mut Context<'_>, act: &Act) -> Result<Decision, Refused> {
    Err(Refused::new("not yet"))
}
