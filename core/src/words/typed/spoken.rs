//! Times of day as they are said: "two", "half past six", "a las dos y media de la tarde", "6 in the morning", rewritten to
//! figures ("2", "6:30", "a las 2:30 pm", "6 am"). What is not known here stays as it is, and is then read or refused.

/// A part of the day: its words, the hours they are said of, whether those are after noon, and whether twelve is noon.
struct Part(&'static [&'static str], &'static [u32], bool, bool);

/// Which hours the words of a part are said of; common usage, no source. An hour outside is refused, never guessed at.
const PARTS: [Part; 5] = [
    Part(&["de la madrugada"], &[12, 1, 2, 3, 4, 5, 6], false, false),
    Part(
        &[
            "de la mañana",
            "de la manana",
            "por la mañana",
            "por la manana",
            "in the morning",
            "this morning",
        ],
        &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11],
        false,
        false,
    ),
    Part(
        &["del mediodía", "del mediodia"],
        &[12, 1, 2, 3],
        true,
        true,
    ),
    Part(
        &[
            "de la tarde",
            "por la tarde",
            "esta tarde",
            "in the afternoon",
            "this afternoon",
        ],
        &[12, 1, 2, 3, 4, 5, 6, 7, 8],
        true,
        true,
    ),
    Part(
        &[
            "de la noche",
            "por la noche",
            "esta noche",
            "in the evening",
            "this evening",
            "at night",
            "tonight",
        ],
        &[12, 5, 6, 7, 8, 9, 10, 11],
        true,
        false,
    ),
];

const HOURS: [(&str, &str, &str); 12] = [
    ("one", "una", "1"),
    ("two", "dos", "2"),
    ("three", "tres", "3"),
    ("four", "cuatro", "4"),
    ("five", "cinco", "5"),
    ("six", "seis", "6"),
    ("seven", "siete", "7"),
    ("eight", "ocho", "8"),
    ("nine", "nueve", "9"),
    ("ten", "diez", "10"),
    ("eleven", "once", "11"),
    ("twelve", "doce", "12"),
];

/// The text with what is said of the time in figures.
pub(super) fn in_figures(text: &str) -> String {
    let found = PARTS
        .iter()
        .find_map(|part| Some((part, without(text, part)?)));
    let Some((part, rest)) = found else {
        return figures(text).0;
    };
    let (said, hour) = figures(&rest);
    match hour.filter(|(hour, _)| part.1.contains(hour)) {
        Some((hour, time)) => {
            let half = match (hour, part.2) {
                (12, _) if part.3 => "pm",
                (12, _) | (_, false) => "am",
                (_, true) => "pm",
            };
            said.replacen(&time, &format!("{time} {half}"), 1)
        }
        None => text.to_owned(),
    }
}

/// The text without the words of that part of the day; none where they are not in it.
fn without(text: &str, part: &Part) -> Option<String> {
    let framed = format!(" {text} ");
    let words = part
        .0
        .iter()
        .find(|words| framed.contains(&format!(" {words} ")))?;
    Some(
        framed
            .replacen(&format!(" {words} "), " ", 1)
            .trim()
            .to_owned(),
    )
}

/// The text with its words of hours and quarters in figures, the hour that stands in it, and how it stands there.
fn figures(text: &str) -> (String, Option<(u32, String)>) {
    let words: Vec<&str> = text.split(' ').filter(|word| !word.is_empty()).collect();
    let words = match words.as_slice() {
        ["el" | "este" | "this", rest @ ..] => rest,
        all => all,
    };
    for at in 0..words.len() {
        if let Some((time, hour, length)) = time_at(&words[at..]) {
            let said = [&words[..at], &[time.as_str()], &words[at + length..]].concat();
            return (said.join(" "), Some((hour, time)));
        }
    }
    (words.join(" "), None)
}

/// The time that these words begin with: in figures, its hour, and how many words it takes.
fn time_at(words: &[&str]) -> Option<(String, u32, usize)> {
    let (past, length) = match words {
        [half, "past", hour, ..] if *half == "half" => (Some((hour, 30)), 3),
        ["quarter", "past", hour, ..] => (Some((hour, 15)), 3),
        ["quarter", "to", hour, ..] => (Some((hour, -15)), 3),
        [hour, "y", "media" | "treinta", ..] | [hour, "thirty", ..] => {
            (Some((hour, 30)), if words[1] == "y" { 3 } else { 2 })
        }
        [hour, "y", "cuarto" | "quince", ..] => (Some((hour, 15)), 3),
        [hour, "fifteen", ..] => (Some((hour, 15)), 2),
        [hour, "menos", "cuarto", ..] => (Some((hour, -15)), 3),
        [hour, "en", "punto", ..] => (Some((hour, 0)), 3),
        [hour, "o'clock" | "o’clock", ..] => (Some((hour, 0)), 2),
        _ => (None, 0),
    };
    if let Some((hour, minutes)) = past {
        let hour: u32 = hour_of(hour)?.parse().ok()?;
        let hour = if minutes < 0 {
            (hour + 10) % 12 + 1
        } else {
            hour
        };
        let time = match minutes {
            0 => hour.to_string(),
            30 => format!("{hour}:30"),
            15 => format!("{hour}:15"),
            _ => format!("{hour}:45"),
        };
        return Some((time, hour, length));
    }
    let first = words.first()?;
    let figures = hour_of(first).unwrap_or_else(|| (*first).to_owned());
    let hour: String = figures.chars().take_while(char::is_ascii_digit).collect();
    Some((figures, hour.parse().ok()?, 1))
}

/// The hour that a word says, 1 to 12, in figures.
fn hour_of(word: &str) -> Option<String> {
    let known = |(en, es, figures): &&(&str, &str, &str)| [*en, *es, *figures].contains(&word);
    HOURS
        .iter()
        .find(known)
        .map(|(_, _, figures)| (*figures).to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_said_is_put_in_figures() {
        for (said, figures) in [
            ("two", "2"),
            ("doce", "12"),
            ("a las dos de la tarde", "a las 2 pm"),
            ("tomorrow at two", "tomorrow at 2"),
            ("mañana a las dos", "mañana a las 2"),
            ("6 in the morning tomorrow", "6 am tomorrow"),
            ("mañana a las 6 de la mañana", "mañana a las 6 am"),
            ("mañana por la mañana a las 6:15", "mañana a las 6:15 am"),
            ("half past six", "6:30"),
            ("quarter to one", "12:45"),
            ("las dos y media de la tarde", "las 2:30 pm"),
            ("la una menos cuarto", "la 12:45"),
            ("12 de la noche", "12 am"),
            ("doce del mediodía", "12 pm"),
            ("a la una en punto de la tarde", "a la 1 pm"),
            ("el sábado a las dos de la tarde", "sábado a las 2 pm"),
            ("two o'clock", "2"),
            ("tonight at eight", "at 8 pm"),
        ] {
            assert_eq!(in_figures(said), figures, "{said}");
        }
    }

    #[test]
    fn what_is_said_of_no_such_hour_stays_as_it_is() {
        for said in [
            "1 de la noche",
            "9 de la madrugada",
            "12 de la mañana",
            "14:00 in the morning",
            "soon",
        ] {
            assert_eq!(in_figures(said), said);
        }
    }
}
