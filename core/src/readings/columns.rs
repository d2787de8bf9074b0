//! What a column's header says: a time, a temperature and its unit, or something else. In English and Spanish.
//!
//! Words are compared without case and accents. The word lists are common practice, no source.

use super::numbers::Unit;

/// What a header cell names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Header {
    /// The cell without its unit, for the sensor's name.
    pub name: String,
    /// What its words point to.
    pub kind: Kind,
    /// The unit it carries.
    pub unit: Option<Unit>,
}

/// What the words of a header point to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// An instant, or a clock.
    Time,
    /// Seconds since the start.
    Seconds,
    /// Minutes since the start.
    Minutes,
    /// A measured temperature.
    Temperature,
    /// Known to be no measured temperature: a target, a fan, a battery.
    Aside,
    /// No word that is known.
    Unknown,
}

const TIME: &str = "time timestamp date datetime clock elapsed utc hora fecha tiempo momento \
    transcurrido fechahora";
const SECONDS: &str = "s sec secs second seconds seg segs segundo segundos";
const MINUTES: &str = "m min mins minute minutes minuto minutos";
const TEMPERATURE: &str = "temp temps temperature pit grate meat food probe sensor chamber ambient dome lid \
    oven internal core channel thermocouple tc brisket butt shoulder ribs turkey chicken \
    temperatura parrilla rejilla carne sonda camara ambiente horno tapa interna canal \
    termopar costillas paleta pavo pollo pecho ahumador";
const ASIDE: &str = "target set setpoint goal alarm limit high low max min fan blower battery humidity \
    rssi signal note notes id index row no number percent pressure door objetivo \
    consigna meta alarma limite maxima minima ventilador bateria humedad senal nota \
    notas numero fila presion puerta";

/// Reads a header cell.
pub fn header(cell: &str) -> Header {
    let words = words(cell);
    let unit = words.iter().rev().find_map(|word| unit_word(word, cell));
    let bare = |word: &String| {
        word.trim_end_matches(|c: char| c.is_ascii_digit())
            .to_string()
    };
    let has = |list: &str| words.iter().any(|word| is_in(list, &bare(word)));
    let timed = has(TIME);
    let kind = match () {
        () if timed && has(SECONDS) => Kind::Seconds,
        () if timed && has(MINUTES) => Kind::Minutes,
        () if timed => Kind::Time,
        () if unit.is_none() && only(&words, SECONDS) => Kind::Seconds,
        () if unit.is_none() && only(&words, MINUTES) => Kind::Minutes,
        () if has(ASIDE) || cell.contains('%') => Kind::Aside,
        () if unit.is_some() || has(TEMPERATURE) => Kind::Temperature,
        () => Kind::Unknown,
    };
    Header {
        name: name(cell),
        kind,
        unit,
    }
}

fn only(words: &[String], list: &str) -> bool {
    !words.is_empty() && words.iter().all(|word| is_in(list, word))
}

fn is_in(list: &str, word: &str) -> bool {
    list.split_ascii_whitespace().any(|known| known == word)
}

/// Lower-case words without accents; a degree sign, a bracket, an underscore or a dash parts them.
fn words(cell: &str) -> Vec<String> {
    let plain: String = cell
        .chars()
        .flat_map(char::to_lowercase)
        .map(unaccented)
        .collect();
    plain
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_string)
        .collect()
}

const fn unaccented(c: char) -> char {
    match c {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    }
}

/// A unit spelled out, or its letter. A bare letter counts only as a capital, as in `Probe C` and `(F)`.
fn unit_word(word: &str, cell: &str) -> Option<Unit> {
    let capital = |letter: char| {
        cell.trim_end_matches([')', ']', ' ']).ends_with(letter)
            || cell.contains(['°', 'º', '\u{fffd}'])
    };
    match word {
        "fahrenheit" | "degf" => Some(Unit::Fahrenheit),
        "celsius" | "centigrade" | "centigrados" | "degc" => Some(Unit::Celsius),
        "kelvin" | "kelvins" => Some(Unit::Kelvin),
        "f" if capital('F') => Some(Unit::Fahrenheit),
        "c" if capital('C') => Some(Unit::Celsius),
        "k" if capital('K') => Some(Unit::Kelvin),
        _ => None,
    }
}

/// The cell up to its unit.
fn name(cell: &str) -> String {
    let cut = cell
        .find(['(', '[', '°', 'º', '\u{fffd}'])
        .filter(|at| *at > 0)
        .unwrap_or(cell.len());
    let name = cell[..cut].trim();
    let bare = [" F", " C", " K", "_F", "_C", "_K"]
        .iter()
        .find_map(|unit| name.strip_suffix(unit));
    bare.unwrap_or(name)
        .trim()
        .chars()
        .filter(|c| !c.is_control())
        .take(60)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headers_as_instruments_write_them() {
        use Kind::*;
        use Unit::*;
        for (cell, name, kind, unit) in [
            ("Pit (°F)", "Pit", Temperature, Some(Fahrenheit)),
            ("Probe 2 [C]", "Probe 2", Temperature, Some(Celsius)),
            ("Parrilla ºC", "Parrilla", Temperature, Some(Celsius)),
            ("Cámara", "Cámara", Temperature, None),
            ("sonda1_F", "sonda1", Temperature, Some(Fahrenheit)),
            (
                "Temperature (Kelvin)",
                "Temperature",
                Temperature,
                Some(Kelvin),
            ),
            ("Timestamp", "Timestamp", Time, None),
            ("Fecha y hora", "Fecha y hora", Time, None),
            ("Elapsed time (min)", "Elapsed time", Minutes, None),
            ("Tiempo (seg)", "Tiempo", Seconds, None),
            ("seconds", "seconds", Seconds, None),
            ("Pit target (°F)", "Pit target", Aside, Some(Fahrenheit)),
            ("Fan %", "Fan %", Aside, None),
            ("Batería", "Batería", Aside, None),
            ("Left", "Left", Unknown, None),
            ("Probe C", "Probe", Temperature, Some(Celsius)),
            ("", "", Unknown, None),
        ] {
            assert_eq!(
                header(cell),
                Header {
                    name: name.into(),
                    kind,
                    unit
                },
                "{cell}"
            );
        }
    }
}
