//! The small parts that typed quantities are made of: numbers with either decimal mark, and unit words.

use super::{Arg, Refused, Words};

/// The longest text that is read as a quantity, in bytes.
const LENGTH_MAX: usize = 60;

/// A number as typed, in thousandths, at most [`WHOLE_MAX`].
pub(super) type Thousandths = i64;

/// Larger numbers are read as this: out of every range, and small enough that no product of it overflows.
const WHOLE_MAX: i64 = 999_999;

/// Why a text is no quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fault {
    /// It is something else.
    Unread,
    /// "1,250": a comma before exactly three digits, which one reader takes for 1.25 and another for 1250.
    Comma {
        /// Digits before the comma, as a number.
        whole: i64,
        /// The three digits after it, as a number.
        thousandths: i64,
    },
}

impl Fault {
    /// The refusal for the viewer. `unread` makes the one of a text that is something else.
    pub(super) fn refused(
        self,
        say: &Words<'_>,
        text: &str,
        unread: impl FnOnce() -> Refused,
    ) -> Refused {
        let Self::Comma { whole, thousandths } = self else {
            return unread();
        };
        let decimal = format!("{whole}.{thousandths:03}");
        let decimal = decimal.trim_end_matches('0').trim_end_matches('.');
        let joined = (whole * 1_000 + thousandths).to_string();
        say.refuse(
            "error-number-comma",
            &[
                ("typed", Arg::Text(&quoted(text))),
                ("decimal", Arg::Text(decimal)),
                ("whole", Arg::Text(&joined)),
            ],
        )
    }
}

/// Lower case, trimmed, with plain spaces, signs and degree marks; empty (which nothing reads) when far too long.
pub(super) fn plain(text: &str) -> String {
    if text.len() > LENGTH_MAX * 4 {
        return String::new();
    }
    let even = |c: char| match c {
        '−' | '–' => '-',
        'º' | '˚' => '°',
        _ if c.is_whitespace() => ' ',
        _ => c,
    };
    let plain: String = text.trim().chars().map(even).collect();
    let plain = plain.to_lowercase();
    if plain.len() > LENGTH_MAX {
        String::new()
    } else {
        plain
    }
}

/// What was typed, fit to stand in a sentence: one line, 40 characters at most.
pub(super) fn quoted(text: &str) -> String {
    let mut clean = text.trim().chars().filter(|c| !super::name::is_hidden(*c));
    let mut shown: String = clean.by_ref().take(40).collect();
    if clean.next().is_some() {
        shown.push('…');
    }
    shown
}

/// Reads a number at the start of `text`: digits, then at most one decimal mark with digits. Digits past the third
/// decimal round it.
pub(super) fn number(text: &str) -> Result<(Thousandths, &str), Fault> {
    let (whole, rest) = digits(text);
    if let Some((part, after)) = fraction(text) {
        return Ok((part, after));
    }
    if whole.is_empty() {
        return Err(Fault::Unread);
    }
    let whole = whole.parse().unwrap_or(i64::MAX).min(WHOLE_MAX);
    if let Some((part, after)) = part_after(rest) {
        return Ok((whole * 1_000 + part, after));
    }
    let mark = rest.chars().next().filter(|c| matches!(c, '.' | ','));
    let (decimals, after) = mark.map_or(("", rest), |_| digits(&rest[1..]));
    if decimals.is_empty() {
        return Ok((whole * 1_000, rest));
    }
    let part = thousandths(decimals);
    if mark == Some(',') && decimals.len() == 3 && !after.starts_with(['.', ',']) {
        return Err(Fault::Comma {
            whole,
            thousandths: part,
        });
    }
    Ok((whole * 1_000 + part, after))
}

/// Reads a unit word at the start of `text`, with a point after it dropped ("lb."), and the spaces around it.
pub(super) fn word(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    let end = text
        .find(|c: char| !c.is_alphabetic() && c != '°')
        .unwrap_or(text.len());
    let (word, rest) = text.split_at(end);
    let rest = if word.is_empty() {
        rest
    } else {
        rest.strip_prefix('.').unwrap_or(rest)
    };
    (word, rest.trim_start())
}

/// Reads a whole text as numbers, each with its unit word, which may be empty.
pub(super) fn quantities(text: &str) -> Result<Vec<(Thousandths, &str)>, Fault> {
    let mut parts = Vec::new();
    let mut rest = text;
    while !rest.is_empty() || parts.is_empty() {
        let (size, after) = number(rest)?;
        let (unit, after) = word(after);
        parts.push((size, unit));
        rest = after;
    }
    Ok(parts)
}

/// A part after a whole number: "3 1/2", "3½", "3 y media", "3 and a half".
fn part_after(rest: &str) -> Option<(Thousandths, &str)> {
    let spaced = rest.trim_start();
    let apart = spaced.len() < rest.len();
    let is_close = spaced.starts_with(|c| sign(c).is_some());
    if let Some(found) = fraction(spaced).filter(|_| apart || is_close) {
        return Some(found);
    }
    let halves = ["and a half", "y media", "y medio"];
    let after = halves.iter().find_map(|half| spaced.strip_prefix(half))?;
    (apart && !after.starts_with(char::is_alphabetic)).then_some((500, after))
}

/// A fraction at the start of a text, less than one: "1/2", "3/4", "½".
fn fraction(text: &str) -> Option<(Thousandths, &str)> {
    let mut letters = text.chars();
    if let Some(part) = letters.next().and_then(sign) {
        return Some((part, letters.as_str()));
    }
    let (over, rest) = digits(text);
    let (under, after) = digits(rest.strip_prefix('/')?);
    let (over, under) = (over.parse::<i64>().ok()?, under.parse::<i64>().ok()?);
    let is_part = (1..=16).contains(&under) && (1..under).contains(&over);
    let is_over = !after.starts_with(['/', '.', ',']);
    (is_part && is_over).then(|| ((over * 1_000 + under / 2) / under, after))
}

/// A fraction of one sign, in thousandths.
const fn sign(c: char) -> Option<Thousandths> {
    Some(match c {
        '½' => 500,
        '¼' => 250,
        '¾' => 750,
        '⅓' => 333,
        '⅔' => 667,
        '⅛' => 125,
        '⅜' => 375,
        '⅝' => 625,
        '⅞' => 875,
        _ => return None,
    })
}

fn digits(text: &str) -> (&str, &str) {
    text.split_at(
        text.find(|c: char| !c.is_ascii_digit())
            .unwrap_or(text.len()),
    )
}

fn thousandths(decimals: &str) -> i64 {
    let digit =
        |place: usize| i64::from(decimals.as_bytes().get(place).map_or(0, |byte| byte - b'0'));
    digit(0) * 100 + digit(1) * 10 + digit(2) + i64::from(digit(3) >= 5)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_take_either_decimal_mark_and_a_doubtful_comma_is_refused() {
        assert_eq!(number("8.25 lb"), Ok((8_250, " lb")));
        assert_eq!(number("3,7kg"), Ok((3_700, "kg")));
        assert_eq!(number("3.7005"), Ok((3_701, "")));
        assert_eq!(number("99999999999999999999"), Ok((999_999_000, "")));
        assert_eq!(
            number("1,250"),
            Err(Fault::Comma {
                whole: 1,
                thousandths: 250
            })
        );
        assert_eq!(number(".5"), Err(Fault::Unread));
    }

    #[test]
    fn fractions_are_read_as_people_write_them() {
        for (text, size, rest) in [
            ("3 1/2", 3_500, ""),
            ("3½ lb", 3_500, " lb"),
            ("1/2 lb", 500, " lb"),
            ("3 ¾", 3_750, ""),
            ("4 and a half lb", 4_500, " lb"),
            ("3 y media", 3_500, ""),
            ("2 1/3kg", 2_333, "kg"),
        ] {
            assert_eq!(number(text), Ok((size, rest)), "{text}");
        }
        for text in ["3 3/2", "3 1/0", "3 1/2/3", "31/2", "1/99", "3 y mediados"] {
            let whole = number(text).is_ok_and(|(_, rest)| rest.is_empty());
            assert!(!whole, "{text}");
        }
    }

    #[test]
    fn quantities_come_with_their_units() {
        assert_eq!(
            quantities("8 lb. 4oz"),
            Ok(vec![(8_000, "lb"), (4_000, "oz")])
        );
        assert_eq!(quantities("90"), Ok(vec![(90_000, "")]));
        for text in ["", "lb", "1.2.3", "8 lb - 4 oz", "8 lb,"] {
            assert_eq!(quantities(text), Err(Fault::Unread), "{text}");
        }
    }
}
