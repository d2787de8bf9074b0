//! The devices of a story, and what each step does to them.

use super::{
    find, holds,
    story::{
        Alarm, Doing, Heard, Holder, Joining, Pressing, Ringing, Seen, Sent, Step, Story, Undoing,
    },
};
use serde::Serialize;
use serde_json::{Value, json};
use slowbend_core::{
    acts::{Act, Outcome},
    card::CardAsk,
    door::{OpenArgs, SensorReading, Slowbend},
    error::Trouble,
    ids::{CookId, PieceId, PitId},
    log::Subject,
    moment::{MINUTE, Moment},
    probes::{HeardWord, Hearing},
    screens::{PlanTyped, ReadingsOf},
    units::Mk,
    words::Viewer,
};
use std::collections::BTreeMap;
use tempfile::TempDir;

/// How many alarms a phone is asked to keep.
const ALARMS: u32 = 60;

/// How many steps of the slow work are done at once.
const STEPS: u32 = 16;

/// One device and who holds it.
struct Device {
    door: Slowbend,
    viewer: Viewer,
    folder: TempDir,
    seed: u8,
}

/// A story being lived.
pub(super) struct Night {
    now: Moment,
    devices: BTreeMap<String, Device>,
    made: BTreeMap<String, String>,
    outcomes: BTreeMap<String, Outcome>,
}

type Held = Result<(), String>;

impl Night {
    pub(super) fn begin(story: &Story) -> Result<Self, String> {
        let starts = chrono::DateTime::parse_from_rfc3339(&story.starts)
            .map_err(|error| error.to_string())?;
        let now = Moment::at(starts.timestamp_millis(), "America/Chicago");
        let mut devices = BTreeMap::new();
        for (seed, (name, holder)) in (1..).zip(&story.devices) {
            devices.insert(name.clone(), Device::new(seed, holder, &now)?);
        }
        Ok(Self {
            now,
            devices,
            made: BTreeMap::new(),
            outcomes: BTreeMap::new(),
        })
    }

    pub(super) fn live(&mut self, step: &Step) -> Held {
        match step {
            Step::Wait(minutes) => {
                self.now = self.now.plus(minutes * MINUTE);
                Ok(())
            }
            Step::Act(doing) => self.act(doing),
            Step::Undo(undoing) => self.undo(undoing),
            Step::Press(pressing) => self.press(pressing),
            Step::Reading(heard) => self.reading(heard),
            Step::Word(sent) => self.word(sent),
            Step::Screen(seen) => self.screen(seen),
            Step::Alarms(ringing) => self.alarms(ringing),
            Step::Rang(by) => self.rang(by),
            Step::Restart(by) => self.restart(by),
            Step::Forecast(by) => self.forecast(by),
            Step::Join(joining) => self.join(joining),
            Step::Sync(names) => self.sync(names),
        }
    }

    fn device(&mut self, name: &str) -> Result<&mut Device, String> {
        self.devices
            .get_mut(name)
            .ok_or_else(|| format!("nobody is called {name}"))
    }

    fn act(&mut self, doing: &Doing) -> Held {
        let act: Act = self.filled(&doing.what)?;
        let now = self.now.clone();
        let device = self.device(&doing.by)?;
        let answer = match &doing.token {
            Some(token) => device.door.act_once(token, &device.viewer, &act, &now),
            None => device.door.act(&device.viewer, &act, &now),
        };
        match (&doing.refused, answer) {
            (None, Ok(outcome)) => self.taken(doing, outcome),
            (None, Err(trouble)) => Err(format!("was refused: {}", trouble.reason())),
            (Some(part), Err(Trouble::Refused { reason })) if reason.contains(part) => Ok(()),
            (Some(part), answer) => Err(format!(
                "expected a refusal with {part:?}, but got {answer:?}"
            )),
        }
    }

    fn taken(&mut self, doing: &Doing, outcome: Outcome) -> Held {
        let as_told = doing
            .said
            .as_ref()
            .is_none_or(|said| holds(&json!(outcome.said), said));
        if !as_told
            || doing
                .repeated
                .is_some_and(|repeated| repeated != outcome.repeated)
        {
            return Err(format!("came out as {outcome:?}"));
        }
        if doing.makes.len() > outcome.made.len() {
            return Err(format!("made only {:?}", outcome.made));
        }
        for (name, made) in doing.makes.iter().zip(&outcome.made) {
            self.made.insert(name.clone(), id_of(*made));
        }
        self.call(&doing.called, outcome);
        Ok(())
    }

    fn call(&mut self, called: &Option<String>, outcome: Outcome) {
        if let Some(name) = called {
            self.outcomes.insert(name.clone(), outcome);
        }
    }

    fn undo(&mut self, undoing: &Undoing) -> Held {
        let outcome = self
            .outcomes
            .get(&undoing.of)
            .ok_or("nothing was called so")?;
        let undo = outcome.undo.clone().ok_or("it offers no taking back")?;
        self.perform(&undoing.by, &undo.act, &undoing.called)
    }

    fn press(&mut self, pressing: &Pressing) -> Held {
        let screen = self.look(&pressing.by, &pressing.see, [&pressing.of, &pressing.at])?;
        let act = &find(&screen, &pressing.button)["act"];
        let act: Act = serde_json::from_value(act.clone())
            .map_err(|_| format!("no such button on {screen:#}"))?;
        self.perform(&pressing.by, &act, &pressing.called)
    }

    fn perform(&mut self, by: &str, act: &Act, called: &Option<String>) -> Held {
        let now = self.now.clone();
        let device = self.device(by)?;
        let outcome = device.door.act(&device.viewer, act, &now).map_err(reason)?;
        self.call(called, outcome);
        Ok(())
    }

    fn reading(&mut self, heard: &Heard) -> Held {
        let now = self.now.clone();
        let reading = SensorReading {
            source: heard.source.clone(),
            sensor: heard.sensor.clone(),
            at: now.utc_ms,
            temp: Mk::from_f(heard.f),
        };
        self.device(&heard.by)?
            .door
            .readings(&[reading], &now)
            .map_err(reason)
    }

    fn word(&mut self, sent: &Sent) -> Held {
        let now = self.now.clone();
        let word = HeardWord {
            source: sent.source.clone(),
            sensor: sent.sensor.clone(),
            characteristic: u16::from_str_radix(&sent.characteristic, 16)
                .map_err(|_| "a characteristic is four hexadecimal digits")?,
            bytes: bytes(&sent.hex)?,
            heard: now.clone(),
        };
        let device = self.device(&sent.by)?;
        let words = device.door.probe_words(&device.viewer, &[word], &now);
        let taken = words.map_err(reason)?.remove(0);
        let why = json!(taken.why_none.unwrap_or_default());
        match holds(&why, sent.why_none.as_ref().unwrap_or(&json!(""))) {
            true => Ok(()),
            false => Err(format!("why there is no reading: {why}")),
        }
    }

    fn screen(&mut self, seen: &Seen) -> Held {
        let screen = self.look(&seen.by, &seen.see, [&seen.of, &seen.at])?;
        for (path, told) in &seen.shows {
            let found = find(&screen, path);
            if !holds(found, told) {
                return Err(format!(
                    "{path} should be {told}, but is {found}, on {screen:#}"
                ));
            }
        }
        Ok(())
    }

    fn look(
        &mut self,
        by: &str,
        see: &str,
        [of, at]: [&Option<String>; 2],
    ) -> Result<Value, String> {
        let id = |name: &Option<String>| name.as_deref().map(|name| self.id(name)).transpose();
        let of = match see {
            "cuts" | "cut" => of.clone(),
            _ => id(of)?,
        };
        // The class of a hand-out is given as it is.
        let at = match see {
            "hand_out" => at.clone(),
            _ => id(at)?,
        };
        let now = self.now.clone();
        let device = self.device(by)?;
        let (door, viewer) = (&mut device.door, &device.viewer);
        if let ("hand_out", Some(of), class) = (see, &of, &at) {
            let class = class.as_deref().unwrap_or_default();
            return shown(door.hand_out(viewer, parsed::<CookId>(of)?, class, &now));
        }
        if let (Some(of), Some(at)) = (&of, &at) {
            let (cook, pit) = (parsed::<CookId>(of)?, parsed::<PitId>(at)?);
            return match see {
                "opening" => shown(door.opening(viewer, cook, pit, &now)),
                "fire" => shown(door.fire(viewer, cook, pit, &now)),
                "trouble" => shown(door.trouble(viewer, cook, pit, &now)),
                "fire_out" => shown(door.fire_out(viewer, cook, pit, &now)),
                _ => Err(format!("there is no screen {see} of a pit")),
            };
        }
        match (see, of) {
            ("cuts", of) => Ok(json!(door.cuts(viewer, &of.unwrap_or_default(), &now))),
            ("cut", Some(of)) => {
                let cut =
                    serde_json::from_value(json!(of)).map_err(|_| format!("{of} is no cut"))?;
                Ok(json!(door.cut(viewer, cut, &now)))
            }
            ("temp_log", Some(of)) => shown(door.temp_log(viewer, parsed::<CookId>(&of)?, &now)),
            ("pits", Some(of)) => shown(door.pits(viewer, parsed::<CookId>(&of)?, &now)),
            ("dishes", Some(of)) => shown(door.dishes(viewer, parsed::<CookId>(&of)?, &now)),
            ("kitchen", Some(of)) => shown(door.kitchen(viewer, parsed::<CookId>(&of)?, &now)),
            ("kitchen_sheet", Some(of)) => {
                shown(door.kitchen_sheet(viewer, parsed::<CookId>(&of)?, &now))
            }
            ("run_sheet", Some(of)) => shown(door.run_sheet(viewer, parsed::<CookId>(&of)?, &now)),
            ("plan", Some(of)) => {
                let asked = PlanTyped {
                    go: true,
                    ..PlanTyped::default()
                };
                shown(door.plan(viewer, parsed::<CookId>(&of)?, &asked, &now))
            }
            ("watch", Some(of)) => shown(door.watch(viewer, parsed::<CookId>(&of)?, &now)),
            ("start", None) => shown(door.start(viewer, None, &now)),
            ("probes", None) => shown(door.probes(viewer, &heard_by_itself(), &now)),
            ("settings", None) => shown(door.settings(viewer, &now)),
            ("pitside", Some(of)) => shown(door.pitside(viewer, parsed::<CookId>(&of)?, &now)),
            ("timeline", Some(of)) => {
                shown(door.timeline(viewer, parsed::<CookId>(&of)?, None, &now))
            }
            ("card", Some(of)) => {
                let (of, ask) = (parsed::<CookId>(&of)?, CardAsk::default());
                shown(door.card(viewer, of, &ask, &now))
            }
            ("again", Some(of)) => shown(door.again(viewer, parsed::<CookId>(&of)?, &now)),
            ("write_down", Some(of)) => {
                shown(door.write_down(viewer, parsed::<CookId>(&of)?, &now))
            }
            ("piece", Some(of)) => shown(door.piece(viewer, parsed::<PieceId>(&of)?, &now)),
            ("check", Some(of)) => shown(door.check(viewer, parsed::<PieceId>(&of)?, &now)),
            ("thermometers", None) => shown(door.thermometers(viewer, &now)),
            ("readings_of", Some(of)) => {
                let of = ReadingsOf::Cook { cook: parsed(&of)? };
                shown(door.readings_of(viewer, of, None, None, &now))
            }
            _ => Err(format!("there is no screen {see}, or it lacks of what")),
        }
    }

    fn alarms(&mut self, ringing: &Ringing) -> Held {
        let now = self.now.clone();
        let device = self.device(&ringing.by)?;
        let list = shown(device.door.alarms(&device.viewer, &now, ALARMS))?;
        let alarms = list["alarms"]
            .as_array()
            .expect("a list of alarms holds a list");
        let fits = |told: &Alarm| alarms.iter().any(|alarm| told.fits(alarm, now.utc_ms));
        match (
            ringing.rings.iter().find(|told| !fits(told)),
            ringing.silent.iter().find(|told| fits(told)),
        ) {
            (Some(told), _) => Err(format!(
                "nothing rings as {told:?} among:\n{}",
                told_short(alarms, now.utc_ms)
            )),
            (_, Some(told)) => Err(format!(
                "something rings as {told:?} among:\n{}",
                told_short(alarms, now.utc_ms)
            )),
            _ => Ok(()),
        }
    }

    fn rang(&mut self, by: &str) -> Held {
        let now = self.now.clone();
        let device = self.device(by)?;
        let list = device
            .door
            .alarms(&device.viewer, &now, ALARMS)
            .map_err(reason)?;
        let due: Vec<_> = list
            .alarms
            .iter()
            .filter(|alarm| alarm.at <= now.utc_ms)
            .map(|alarm| alarm.id)
            .collect();
        device.door.rang(&due, &now).map_err(reason)
    }

    fn forecast(&mut self, by: &str) -> Held {
        let now = self.now.clone();
        let device = self.device(by)?;
        device.door.make_forecasts().map_err(reason)?;
        while device.door.work(&now, STEPS).map_err(reason)? {}
        Ok(())
    }

    fn restart(&mut self, by: &str) -> Held {
        let now = self.now.clone();
        let mut device = self
            .devices
            .remove(by)
            .ok_or_else(|| format!("nobody is called {by}"))?;
        device.seed += 100;
        let Device {
            mut door,
            viewer,
            folder,
            seed,
        } = device;
        door.suspend().map_err(reason)?;
        drop(door);
        let door = open(&folder, seed, &now)?;
        self.devices.insert(
            by.into(),
            Device {
                door,
                viewer,
                folder,
                seed,
            },
        );
        Ok(())
    }

    fn join(&mut self, joining: &Joining) -> Held {
        let now = self.now.clone();
        let log = self.device(&joining.of)?.door.log().map_err(reason)?;
        self.device(&joining.by)?
            .door
            .join_crew(log, &now)
            .map_err(reason)
    }

    fn sync(&mut self, names: &[String]) -> Held {
        let now = self.now.clone();
        let mut all = vec![];
        for name in names {
            all.extend(self.device(name)?.door.entries_after(&[]).map_err(reason)?);
        }
        for name in names {
            self.device(name)?.door.absorb(&all, &now).map_err(reason)?;
        }
        Ok(())
    }

    fn id(&self, name: &str) -> Result<String, String> {
        let name = name.trim_start_matches('$');
        self.made
            .get(name)
            .cloned()
            .ok_or_else(|| format!("nothing was made that is called ${name}"))
    }

    fn filled<T: serde::de::DeserializeOwned>(&self, told: &Value) -> Result<T, String> {
        let mut told = told.clone();
        self.fill(&mut told)?;
        serde_json::from_value(told.clone()).map_err(|error| format!("{told} is no act: {error}"))
    }

    fn fill(&self, told: &mut Value) -> Held {
        match told {
            Value::String(text) if text.starts_with('$') => *text = self.id(text)?,
            Value::String(text) => {
                if let Some(number) = instant(text).or_else(|| millikelvin(text)) {
                    *told = number.into();
                }
            }
            Value::Array(list) => list.iter_mut().try_for_each(|one| self.fill(one))?,
            Value::Object(fields) => fields.values_mut().try_for_each(|one| self.fill(one))?,
            _ => {}
        }
        Ok(())
    }
}

impl Device {
    fn new(seed: u8, holder: &Holder, now: &Moment) -> Result<Self, String> {
        let folder = TempDir::new().map_err(|error| error.to_string())?;
        let mut door = open(&folder, seed, now)?;
        let viewer = Viewer {
            zone: now.zone.clone(),
            ..Viewer::default_for(door.device().map_err(reason)?)
        };
        Ok(Self {
            viewer: holder.held(viewer)?,
            door,
            folder,
            seed,
        })
    }
}

impl Holder {
    fn held(&self, viewer: Viewer) -> Result<Viewer, String> {
        let mut json = json!(viewer);
        let told = [
            ("locale", &self.locale),
            ("temperature", &self.temperature),
            ("weight", &self.weight),
            ("hours", &self.hours),
        ];
        for (field, value) in told {
            if let Some(value) = value {
                json[field] = value.clone();
            }
        }
        serde_json::from_value(json).map_err(|error| error.to_string())
    }
}

impl Alarm {
    fn fits(&self, alarm: &Value, now: i64) -> bool {
        let is = |field: &str, told: &Option<Value>| {
            told.as_ref().is_none_or(|told| holds(&alarm[field], told))
        };
        let in_ms = alarm["at"].as_i64().expect("an alarm has a time") - now;
        is("title", &self.title)
            && is("urgency", &self.urgency)
            && self
                .minutes
                .is_none_or(|(from, to)| (from * MINUTE..=to * MINUTE).contains(&in_ms))
    }
}

/// `@2026-06-13T14:00:00-05:00` in milliseconds since 1970.
fn instant(text: &str) -> Option<i64> {
    let instant = chrono::DateTime::parse_from_rfc3339(text.strip_prefix('@')?).ok()?;
    Some(instant.timestamp_millis())
}

/// `203 °F`, whole degrees, in millikelvin.
fn millikelvin(text: &str) -> Option<i64> {
    let degrees = text.strip_suffix(" °F")?.parse().ok()?;
    Some(Mk::from_f(degrees).0)
}

/// A line for each alarm, for who reads why a step did not hold.
fn told_short(alarms: &[Value], now: i64) -> String {
    let line = |alarm: &Value| {
        let minutes = (alarm["at"].as_i64().unwrap_or(now) - now) / MINUTE;
        format!(
            "  in {minutes} min, {}: {}",
            alarm["urgency"], alarm["title"]
        )
    };
    alarms.iter().map(line).collect::<Vec<_>>().join("\n")
}

fn open(folder: &TempDir, seed: u8, now: &Moment) -> Result<Slowbend, String> {
    let place = folder.path().to_path_buf();
    let args = OpenArgs {
        place,
        install_id: "story".into(),
        entropy: [seed; 32],
    };
    Slowbend::open(args, now).map_err(reason)
}

fn id_of(made: Subject) -> String {
    match made {
        Subject::Crew => String::new(),
        Subject::Cook(id) => id.to_string(),
        Subject::Pit(id) => id.to_string(),
        Subject::Piece(id) => id.to_string(),
        Subject::Dish(id) => id.to_string(),
        Subject::Thermometer(id) => id.to_string(),
    }
}

fn reason(trouble: Trouble) -> String {
    trouble.reason().to_owned()
}

fn shown(screen: Result<impl Serialize, Trouble>) -> Result<Value, String> {
    screen.map(|screen| json!(screen)).map_err(reason)
}

fn parsed<T: std::str::FromStr>(text: &str) -> Result<T, String> {
    text.parse().map_err(|_| format!("{text} is no id"))
}

/// A radio that is ready and keeps no probe: what a cook knows of probes is shown.
fn heard_by_itself() -> Hearing {
    Hearing::default()
}

fn bytes(hex: &str) -> Result<Vec<u8>, String> {
    let pairs = hex.split_whitespace();
    let pair = |two| u8::from_str_radix(two, 16).map_err(|_| format!("{two} is no byte"));
    pairs.map(pair).collect()
}
