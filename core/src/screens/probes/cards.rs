//! One card for each known sensor.

use super::{ProbeCard, sitting::Sitting};
use crate::{
    probes::{HeardSource, Hearing, Reach},
    screens::{Line, Weight, glance::Glance},
    words::{Arg, key},
};
use std::collections::BTreeMap;

/// A sensor, where it sits if it does, and its instrument as the shell knows it if it does.
#[derive(Default)]
struct Sensor<'a> {
    sits: Option<Sitting<'a>>,
    heard: Option<&'a HeardSource>,
}

impl Glance<'_> {
    /// Those that ask for an eye first, then those without a place, then by name.
    pub fn cards(&self, hearing: &Hearing) -> Vec<ProbeCard> {
        let mut cards: Vec<_> = self
            .sensors(hearing)
            .into_iter()
            .map(|((source, sensor), one)| (one.sits.is_some(), self.card(source, sensor, &one)))
            .collect();
        cards.sort_by(|(sits, a), (other, b)| {
            let key = |sits: bool, card: &ProbeCard| (card.line.weight, sits);
            let first = key(*sits, a).cmp(&key(*other, b));
            first.then_with(|| {
                (&a.line.name, &a.source, &a.sensor).cmp(&(&b.line.name, &b.source, &b.sensor))
            })
        });
        cards.into_iter().map(|(_, card)| card).collect()
    }

    fn sensors<'a>(&'a self, hearing: &'a Hearing) -> BTreeMap<(String, String), Sensor<'a>> {
        let mut all: BTreeMap<(String, String), Sensor<'a>> = BTreeMap::new();
        for one in self.sittings() {
            let series = (one.source.to_owned(), one.sensor.to_owned());
            all.entry(series).or_default().sits = Some(one);
        }
        for heard in &hearing.sources {
            let placed = all
                .iter_mut()
                .filter(|((source, _), _)| *source == heard.source);
            let placed = placed.map(|(_, one)| one.heard = Some(heard)).count();
            if heard.reach == Reach::Nearby {
                continue;
            }
            let unreached = placed == 0 && heard.sensors.is_empty();
            let sensors = heard
                .sensors
                .iter()
                .cloned()
                .chain(unreached.then(String::new));
            for sensor in sensors {
                all.entry((heard.source.clone(), sensor)).or_default().heard = Some(heard);
            }
        }
        all
    }

    fn card(&self, source: String, sensor: String, one: &Sensor<'_>) -> ProbeCard {
        let kept = one.heard.filter(|heard| heard.reach != Reach::Nearby);
        let placeable = !sensor.is_empty();
        ProbeCard {
            line: self.card_line(&source, &sensor, one),
            ask: self.say.text("hearing-where"),
            places: match placeable {
                true => self.places(&source, &sensor),
                false => vec![],
            },
            forget: kept.map(|_| self.say.text("hearing-forget")),
            source,
            sensor,
        }
    }

    fn card_line(&self, source: &str, sensor: &str, one: &Sensor<'_>) -> Line {
        let called = match one.heard {
            Some(heard) => self.called(heard),
            None => source.to_owned(),
        };
        let called = self.with_channel(&called, sensor);
        let mut detail = vec![];
        let mut line = match &one.sits {
            Some(sits) => {
                detail.push(called);
                self.sitting_line(sits)
            }
            None => self.unplaced(called, source, sensor),
        };
        if let Some(heard) = one.heard {
            detail.push(self.say.text(reach_key(heard.reach)));
            detail.extend(heard.trouble.clone());
            if heard.reach == Reach::Foreign || heard.trouble.is_some() {
                line.weight = line.weight.min(Weight::Call);
            }
        } else {
            detail.push(self.say.text("hearing-elsewhere"));
        }
        line.detail = detail.join(" · ");
        line
    }

    /// A sensor that nobody said the place of counts nowhere; what it says is shown so that it can be told from others.
    fn unplaced(&self, name: String, source: &str, sensor: &str) -> Line {
        let last = self.known.tails.last(source, sensor, self.now);
        let state = last.map(|(at, temp)| {
            let (temp, age) = (self.say.temperature(temp), self.ago(at));
            let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
            self.say.with("hearing-unplaced-reads", &args)
        });
        Line {
            name,
            state: state.unwrap_or_else(|| self.say.text("hearing-unplaced")),
            detail: String::new(),
            weight: Weight::Soon,
            link: None,
        }
    }

    fn with_channel(&self, called: &str, sensor: &str) -> String {
        match sensor {
            "" => called.to_owned(),
            _ => {
                let args = [("name", Arg::Text(called)), ("sensor", Arg::Text(sensor))];
                self.say.with("hearing-channel", &args)
            }
        }
    }

    /// What it calls itself; else its name in readings.
    pub fn called(&self, heard: &HeardSource) -> String {
        match heard.name.trim() {
            "" => heard.source.clone(),
            name => name.to_owned(),
        }
    }
}

const fn reach_key(reach: Reach) -> &'static str {
    match reach {
        Reach::Nearby => key("hearing-link-nearby"),
        Reach::Reaching => key("hearing-link-reaching"),
        Reach::Linked => key("hearing-link-linked"),
        Reach::Foreign => key("hearing-link-foreign"),
    }
}
