//! What every refusal, question and error of an import can do: say itself, and what to do now, in any language.

use crate::{
    ids::DeviceId,
    words::{Arg, Viewer, Words},
};
use uuid::Uuid;

/// Says what is wrong, or asked, and what to do now.
pub trait Told {
    /// Names the message.
    fn key(&self) -> &'static str;

    /// What the message is filled with.
    fn args(&self, say: &Words<'_>) -> Vec<(&'static str, String)>;

    /// The sentence in the viewer's language.
    fn said(&self, say: &Words<'_>) -> String {
        let args = self.args(say);
        let filled: Vec<_> = args
            .iter()
            .map(|(name, text)| (*name, Arg::Text(text)))
            .collect();
        say.with(self.key(), &filled)
    }

    /// The sentence in English (US), for logs and command lines.
    fn reason(&self) -> String {
        let viewer = Viewer::default_for(DeviceId(Uuid::nil()));
        self.said(&Words::of(&viewer))
    }
}
