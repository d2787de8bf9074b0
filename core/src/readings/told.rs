//! What every refusal, question and error of an import can do: say itself in English, and hand a key and arguments to
//! whoever says it in another language.

/// Says what is wrong and what to do now.
pub trait Told {
    /// Names the sentence for translation, such as `readings-not-a-time`.
    fn key(&self) -> &'static str;
    /// What the sentence is filled with: names and values.
    fn args(&self) -> Vec<(&'static str, String)>;
    /// The sentence in English (US).
    fn reason(&self) -> String;
}
