//! One tap each: what is put on, how far vents are open, what the weather is.

use super::{FireGroup, burning::place_of};
use crate::{
    acts::Act,
    alarms::{Due, planned_feed},
    cook::{Cook, Pit, PitCare, Timed, ahead::counts},
    fire::{Ambient, FuelUnit, Rain, Sun, VENT_QUARTERS, Vent, WeatherTap, Wind},
    ids::{CookId, PitId},
    log::{Payload, PitKind},
    screens::{Button, Slip, Tone, buttons::button, check::recorded, glance::Glance, slip::option},
    words::{Arg, WeightUnit, key},
};

/// What is put on such a pit by one tap, in quarters, the usual first. Common practice, no source.
const fn puts_on(kind: PitKind) -> &'static [(FuelUnit, i64)] {
    match kind {
        PitKind::StickBurner => &[
            (FuelUnit::Split, 4),
            (FuelUnit::Split, 8),
            (FuelUnit::Chimney, 2),
        ],
        PitKind::Kettle | PitKind::Drum | PitKind::Ceramic | PitKind::Cabinet => &[
            (FuelUnit::Chimney, 2),
            (FuelUnit::Chimney, 4),
            (FuelUnit::Basket, 4),
            (FuelUnit::Chunk, 4),
        ],
        PitKind::Pellet => &[
            (FuelUnit::Hopper, 1),
            (FuelUnit::Hopper, 2),
            (FuelUnit::Hopper, 4),
        ],
        PitKind::Electric => &[(FuelUnit::Chunk, 4)],
    }
}

impl Glance<'_> {
    /// Whether this round is for a feed time that somebody accepted.
    pub(in crate::screens) fn is_feed(&self, due: &Due, pit: PitId) -> bool {
        let cook = self.known.cooks.get(&due.cook);
        let plan = cook.and_then(|cook| planned_feed(&self.known, cook, pit, self.now));
        plan.is_some_and(|plan| plan.due <= due.at)
    }

    /// The usual of such a pit put on by one tap; none where nothing burns in it.
    pub(in crate::screens) fn usual_feed(&self, cook: CookId, pit: PitId) -> Option<(String, Act)> {
        let kind = self.known.crew.pits.get(&pit)?.kind.value;
        let (unit, quarters) = *puts_on(kind).iter().find(|(unit, _)| unit.feeds(kind))?;
        let act = Act::FeedUnits {
            cook,
            pit,
            unit,
            quarters,
            at: None,
        };
        Some((self.say.fuel(unit, quarters), act))
    }

    /// What is put on, and that the fire was seen to.
    pub(in crate::screens) fn feed_taps(&self, cook: CookId, pit: PitId) -> Vec<Button> {
        let kind = self.known.crew.pits.get(&pit).map(|pit| pit.kind.value);
        let amounts = kind.map_or(&[][..], puts_on);
        let tap = |(index, (unit, quarters)): (usize, &(FuelUnit, i64))| {
            let act = Act::FeedUnits {
                cook,
                pit,
                unit: *unit,
                quarters: *quarters,
                at: None,
            };
            let tone = if index == 0 { Tone::Main } else { Tone::Plain };
            button(self.say.fuel(*unit, *quarters), act, tone)
        };
        let mut all: Vec<Button> = amounts.iter().enumerate().map(tap).collect();
        let at = None;
        all.push(self.plain("button-fire-seen", Act::SeeFire { cook, pit, at }));
        all
    }

    pub(super) fn feed_group(&self, cook: &Cook, pit: &Pit) -> FireGroup {
        let care = self.care_of(cook, pit);
        let last = care.into_iter().flat_map(|care| &care.fed);
        let last = last
            .filter(|when| counts(when.at, self.now))
            .max_by_key(|when| when.at);
        let what = |when: &Timed| {
            let fuel = care.into_iter().flat_map(|care| &care.fuel);
            let mut what = fuel.filter(|(its, ..)| its.entry == when.entry);
            what.next()
                .map(|(_, unit, quarters)| self.say.fuel(*unit, *quarters))
        };
        let state = last.map(|when| {
            let ago = self.ago(when.at);
            what(when).map_or(ago.clone(), |what| format!("{what} · {ago}"))
        });
        FireGroup {
            heading: self.say.text("fire-put-on"),
            state: state.unwrap_or_else(|| self.say.text("fire-unfed-detail")),
            buttons: match cook.is_open() {
                true => self.feed_taps(cook.id, pit.id),
                false => vec![],
            },
        }
    }

    pub(super) fn vent_groups(&self, cook: &Cook, pit: &Pit) -> Vec<FireGroup> {
        let has_vents = !matches!(pit.kind.value, PitKind::Pellet | PitKind::Electric);
        let vents = Vent::ALL.iter().filter(|_| has_vents);
        vents
            .map(|vent| self.vent_group(cook, pit, *vent))
            .collect()
    }

    fn vent_group(&self, cook: &Cook, pit: &Pit, vent: Vent) -> FireGroup {
        let set = self
            .care_of(cook, pit)
            .into_iter()
            .flat_map(|care| &care.set);
        let set = set.filter(|(when, its, _)| *its == vent && counts(when.at, self.now));
        let last = set
            .max_by_key(|(when, ..)| when.at)
            .map(|(_, _, quarters)| *quarters);
        let tap = |quarters| {
            let act = Act::SetVent {
                cook: cook.id,
                pit: pit.id,
                vent,
                quarters,
                at: None,
            };
            button(self.say.open_by(quarters), act, Tone::Plain)
        };
        let others = VENT_QUARTERS.filter(|quarters| Some(*quarters) != last);
        FireGroup {
            heading: self.say.vent(vent),
            state: match last {
                Some(quarters) => self.say.open_by(quarters),
                None => self.say.text("fire-vent-unsaid"),
            },
            buttons: if cook.is_open() {
                others.map(tap).collect()
            } else {
                vec![]
            },
        }
    }

    pub(super) fn weather_groups(&self, cook: &Cook) -> Vec<FireGroup> {
        let taps: [(&'static str, Vec<WeatherTap>); 4] = [
            (key("fire-weather-air"), each(Ambient::ALL, WeatherTap::Air)),
            (key("fire-weather-wind"), each(Wind::ALL, WeatherTap::Blows)),
            (key("fire-weather-rain"), each(Rain::ALL, WeatherTap::Falls)),
            (key("fire-weather-sun"), each(Sun::ALL, WeatherTap::Shines)),
        ];
        let group = |(heading, taps): (&'static str, Vec<WeatherTap>)| {
            let is_of_it = |tap: WeatherTap| taps.iter().any(|one| place_of(*one) == place_of(tap));
            let said = cook
                .weather
                .iter()
                .filter(|(when, _)| counts(when.at, self.now));
            let said = said
                .filter(|(_, tap)| is_of_it(*tap))
                .max_by_key(|(when, _)| when.at);
            let last = said.map(|(_, tap)| *tap);
            let others = taps.iter().filter(|tap| Some(**tap) != last);
            let others = others.map(|tap| {
                let (cook, said) = (cook.id, *tap);
                button(
                    self.say.weather_tap(*tap),
                    Act::SayWeather { cook, said },
                    Tone::Plain,
                )
            });
            FireGroup {
                heading: self.say.text(heading),
                state: match last {
                    Some(tap) => self.say.weather_tap(tap),
                    None => self.say.text("fire-weather-unknown"),
                },
                buttons: if cook.is_open() {
                    others.collect()
                } else {
                    vec![]
                },
            }
        };
        taps.into_iter().map(group).collect()
    }

    /// What one of a unit weighs here.
    pub(super) fn weigh_slip(&self, cook: &Cook, pit: &Pit) -> Option<Slip> {
        let units = FuelUnit::of_pit(pit.kind.value).iter();
        let units = units.filter(|unit| unit.feeds(pit.kind.value));
        let units: Vec<FuelUnit> = units.copied().collect();
        if units.is_empty() || !cook.is_open() {
            return None;
        }
        let weighs = |unit: &FuelUnit| {
            let weight = self.say.weight(pit.unit_grams(*unit));
            format!("{} {weight}", self.say.fuel(*unit, 4))
        };
        let usual: Vec<String> = units.iter().map(weighs).collect();
        let usual = usual.join(", ");
        let options = units.iter().map(|unit| {
            let value = format!("{} {}", pit.id, recorded(unit));
            option(value, self.say.fuel(*unit, 4))
        });
        let fields = vec![
            self.one_of("unit", self.say.text("fire-weigh-unit"), options.collect()),
            self.number_field(
                "weight",
                self.say.text(match self.viewer.weight {
                    WeightUnit::Pound => key("fire-weigh-weight-pounds"),
                    WeightUnit::Kilogram => key("fire-weigh-weight-kilograms"),
                }),
            ),
        ];
        Some(Slip {
            how: self
                .say
                .with("fire-weigh-how", &[("usual", Arg::Text(&usual))]),
            ..self.slip("weigh", "fire-weigh", fields)
        })
    }

    /// What was done at a fire, for the timeline.
    pub(in crate::screens) fn at_fire(&self, payload: &Payload) -> String {
        let say = self.say;
        let (pit, what) = match payload {
            Payload::FedUnits(fact) => (fact.pit, say.fuel(fact.unit, fact.quarters)),
            Payload::VentSet(fact) => (
                fact.pit,
                format!("{} {}", say.vent(fact.vent), say.open_by(fact.quarters)),
            ),
            Payload::FireTended(fact) => (fact.pit, say.fire_did(fact.did)),
            Payload::WoodSaid(fact) => (fact.pit, say.wood(fact.wood)),
            Payload::FireFoundOut(fact) => {
                let time = say.clock_day(fact.burned_until, self.now);
                (
                    fact.pit,
                    say.with("found-out-until", &[("time", Arg::Text(&time))]),
                )
            }
            Payload::WoodTamed(fact) => {
                let wood = say.wood(fact.wood);
                (
                    fact.pit,
                    say.with("wood-tamed", &[("wood", Arg::Text(&wood))]),
                )
            }
            Payload::SmokeWatched(fact) => (fact.pit, say.smoke_seen(fact.seen)),
            Payload::FeedPlanned(fact) => (fact.pit, say.clock(fact.due)),
            Payload::UnitWeighed(fact) => (
                fact.pit,
                format!("{} {}", say.fuel(fact.unit, 4), say.weight(fact.grams)),
            ),
            Payload::WeatherSaid(fact) => return say.weather_tap(fact.said),
            _ => return String::new(),
        };
        self.at_pit_what(pit, &what)
    }
}

fn each<T: Copy>(all: &[T], tap: impl Fn(T) -> WeatherTap) -> Vec<WeatherTap> {
    all.iter().map(|one| tap(*one)).collect()
}

/// The last of what was said that counts.
pub(super) fn last_of<T: Copy>(
    care: Option<&PitCare>,
    of: impl Fn(&PitCare) -> &Vec<(Timed, T)>,
    now: i64,
) -> Option<(i64, T)> {
    let said = care.into_iter().flat_map(|care| of(care).clone());
    let said = said.filter(|(when, _)| counts(when.at, now));
    said.max_by_key(|(when, _)| when.at)
        .map(|(when, what)| (when.at, what))
}
