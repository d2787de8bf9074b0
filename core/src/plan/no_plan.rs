//! Why there is no plan, and what would make one. Start at [`NoPlan`].

use super::answer::{Said, SaidValue};
use crate::{
    ids::DeviceId,
    words::{Viewer, Words},
};
use serde::{Deserialize, Serialize};
use std::fmt;

/// No plan: the conflict, and each single change that would make one, the nearest first.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct NoPlan {
    /// What stands against it, and what to do where that is plain.
    pub conflict: Said,
    /// Changes, each of which would be enough; they were tried.
    pub ways: Vec<Said>,
}

impl NoPlan {
    pub(super) fn new(key: &str, args: &[(&str, SaidValue)]) -> Self {
        Self {
            conflict: Said::new(key, args),
            ways: vec![],
        }
    }

    /// All of it in the words of a viewer.
    pub fn say(&self, say: &Words<'_>) -> String {
        let all = std::iter::once(&self.conflict).chain(&self.ways);
        all.map(|said| said.say(say)).collect::<Vec<_>>().join(" ")
    }
}

impl fmt::Display for NoPlan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let viewer = Viewer::default_for(DeviceId(uuid::Uuid::nil()));
        f.write_str(&self.say(&Words::of(&viewer)))
    }
}

impl std::error::Error for NoPlan {}
