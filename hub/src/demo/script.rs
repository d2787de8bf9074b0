//! The demo's script, and what it says at each moment. Start at [`Script::embedded`].

use serde::Deserialize;
use serde_json::Value;
use slowbend_core::{door::SensorReading, moment::MINUTE, units::Mk, words::Locale};
use std::collections::BTreeMap;

/// The instrument that the demo's probes belong to.
pub const SOURCE: &str = "demo";

/// A cook that was invented: acts and probe readings, each so many minutes before serving.
#[derive(Deserialize)]
pub struct Script {
    /// How many minutes before serving it is watched from.
    pub watched_from: i64,
    /// Names and notes by what the acts call them, then by language.
    texts: BTreeMap<String, BTreeMap<String, String>>,
    /// The acts, in order.
    pub acts: Vec<Step>,
    /// The probes.
    pub probes: Vec<Probe>,
}

/// One act of the script.
#[derive(Deserialize)]
pub struct Step {
    /// Minutes before serving.
    pub before: i64,
    /// The act, with `$name` where a thing that the script made is meant.
    pub act: Value,
    /// The names of what it makes, in order.
    #[serde(default)]
    pub makes: Vec<String>,
}

/// One probe's course: minutes before serving, tenths of a degree Fahrenheit; straight between.
#[derive(Deserialize)]
pub struct Probe {
    /// Its channel.
    pub sensor: String,
    /// Points in order of time.
    pub points: Vec<(i64, i64)>,
}

impl Script {
    /// The regatta lunch.
    pub fn embedded() -> Self {
        serde_json::from_str(include_str!("regatta.json"))
            .expect("the script is embedded, and a test reads it")
    }

    /// Names and notes in the language of whoever starts it.
    pub fn texts(&self, locale: Locale) -> impl Iterator<Item = (String, Value)> + '_ {
        let text = move |languages: &BTreeMap<String, String>| languages.get(locale.tag()).cloned();
        self.texts
            .iter()
            .map(move |(name, languages)| (name.clone(), text(languages).into()))
    }

    /// The readings of all probes, one a minute, later than `after` and not later than `until`, for a cook served at
    /// `serve`; all milliseconds since 1970.
    pub fn readings(&self, serve: i64, after: i64, until: i64) -> Vec<SensorReading> {
        self.probes
            .iter()
            .flat_map(|probe| probe.readings(serve, after, until))
            .collect()
    }
}

impl Probe {
    fn readings(
        &self,
        serve: i64,
        after: i64,
        until: i64,
    ) -> impl Iterator<Item = SensorReading> + '_ {
        let first = self.points.first().map_or(0, |point| point.0);
        let last = self.points.last().map_or(0, |point| point.0);
        (last..=first).rev().filter_map(move |before| {
            let at = serve - before * MINUTE;
            let wanted = at > after && at <= until;
            wanted.then(|| SensorReading {
                source: SOURCE.into(),
                sensor: self.sensor.clone(),
                at,
                temp: Mk::from_f_tenths(self.tenths(before)),
            })
        })
    }

    /// The temperature so many minutes before serving.
    fn tenths(&self, before: i64) -> i64 {
        let span = self
            .points
            .windows(2)
            .find(|span| span[1].0 <= before && before <= span[0].0);
        span.map_or(0, |span| {
            let ((from, low), (to, high)) = (span[0], span[1]);
            low + (high - low) * (from - before) / (from - to).max(1)
        })
    }
}

/// Puts what `$name` stands for in its place, all through a script's act.
pub fn filled(act: &Value, names: &BTreeMap<String, Value>) -> Value {
    match act {
        Value::String(text) => match text.strip_prefix('$').and_then(|name| names.get(name)) {
            Some(value) => value.clone(),
            None => act.clone(),
        },
        Value::Array(items) => items.iter().map(|item| filled(item, names)).collect(),
        Value::Object(fields) => {
            let fields = fields
                .iter()
                .map(|(name, value)| (name.clone(), filled(value, names)));
            Value::Object(fields.collect())
        }
        other => other.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_script_runs_forward_and_stands_mid_morning() {
        let script = Script::embedded();
        assert!(
            script
                .acts
                .windows(2)
                .all(|pair| pair[0].before >= pair[1].before)
        );
        assert!(
            script
                .acts
                .iter()
                .all(|step| step.before >= script.watched_from)
        );
        for probe in &script.probes {
            assert!(
                probe.points.windows(2).all(|pair| pair[0].0 > pair[1].0),
                "{}",
                probe.sensor
            );
        }
    }

    #[test]
    fn each_name_and_note_is_there_in_both_languages_and_is_used() {
        let acts = serde_json::to_string(
            &Script::embedded()
                .acts
                .iter()
                .map(|step| &step.act)
                .collect::<Vec<_>>(),
        )
        .unwrap();
        let (english, spanish): (Vec<_>, Vec<_>) = (
            Script::embedded().texts(Locale::EnUs).collect(),
            Script::embedded().texts(Locale::EsUs).collect(),
        );
        for ((name, in_english), (_, in_spanish)) in english.iter().zip(&spanish) {
            assert!(
                in_english.is_string() && in_spanish.is_string() && in_english != in_spanish,
                "{name}"
            );
            assert!(acts.contains(&format!("\"${name}\"")), "{name}");
        }
    }

    #[test]
    fn a_probe_reads_straight_between_its_points() {
        let probe = Probe {
            sensor: "drum".into(),
            points: vec![(10, 2000), (0, 2500)],
        };
        let all: Vec<_> = probe
            .readings(0, i64::MIN, 0)
            .map(|reading| (reading.at, reading.temp))
            .collect();
        assert_eq!(all.len(), 11);
        assert_eq!(all[0], (-10 * MINUTE, Mk::from_f(200)));
        assert_eq!(all[5], (-5 * MINUTE, Mk::from_f(225)));
        assert_eq!(probe.readings(0, -5 * MINUTE, -4 * MINUTE).count(), 1);
    }

    #[test]
    fn names_are_filled_in_wherever_they_stand() {
        let names = BTreeMap::from([("drum".to_owned(), Value::from("id-1"))]);
        let act = serde_json::json!({ "pit": "$drum", "list": ["$drum", "$other", 3] });
        assert_eq!(
            filled(&act, &names),
            serde_json::json!({ "pit": "id-1", "list": ["id-1", "$other", 3] })
        );
    }
}
