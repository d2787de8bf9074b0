//! A word of a probe as a person writes it down: the sum `probe-word`.

use super::{NotAWord, ProbeWord, decode};
use serde::{Deserialize, Serialize};

/// What a probe sent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WordInHex {
    /// The characteristic's 16-bit number in hexadecimal: `2A1C`, `2A1D`, `2A1E`, `2A21` or `2A6E`; `0x` may stand before.
    pub characteristic: String,
    /// Its bytes in hexadecimal, in the order in which they were sent, two digits each, blanks between bytes or none.
    pub hex: String,
}

/// What a probe says.
///
/// ```
/// use slowbend_core::{probes::{WordInHex, probe_word}, units::Mk};
/// let sent = WordInHex { characteristic: "2A6E".into(), hex: "E3 29".into() };
/// assert_eq!(probe_word(&sent).unwrap().temp, Some(Mk::from_c_milli(107_230)));
/// ```
///
/// # Errors
/// [`NotAWord`] where the texts are not hexadecimal, and as [`decode`].
pub fn probe_word(input: &WordInHex) -> Result<ProbeWord, NotAWord> {
    let characteristic = number(&input.characteristic)
        .ok_or_else(|| NotAWord::not_a_number(&input.characteristic))?;
    let bytes = bytes(&input.hex).ok_or_else(|| NotAWord::not_hex(&input.hex))?;
    decode(characteristic, &bytes)
}

fn number(text: &str) -> Option<u16> {
    let text = text.trim();
    let digits = text.strip_prefix("0x").unwrap_or(text);
    let sound = digits.len() == 4 && digits.bytes().all(|digit| digit.is_ascii_hexdigit());
    sound.then(|| u16::from_str_radix(digits, 16).ok())?
}

fn bytes(text: &str) -> Option<Vec<u8>> {
    text.split_whitespace().try_fold(vec![], |mut all, run| {
        let digits: Option<Vec<u8>> = run.chars().map(digit).collect();
        let (pairs, odd) = digits.as_deref()?.as_chunks::<2>();
        all.extend(pairs.iter().map(|[high, low]| high << 4 | low));
        odd.is_empty().then_some(all)
    })
}

fn digit(c: char) -> Option<u8> {
    c.to_digit(16).map(|digit| digit as u8)
}
