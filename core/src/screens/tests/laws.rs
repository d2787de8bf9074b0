//! Laws: the same question has the same answer, bytes and all; nothing changes before `until`; no message is missing;
//! every act on a screen is taken; code's words stay off the screens.

use super::regatta::{moment, told_until, viewer};
use crate::{
    acts::{
        Act,
        decide::{Context, Owner, decide},
    },
    card::{self, CardAsk},
    cook::{
        Known,
        story::{Told, cook, piece, pit},
    },
    ids::Names,
    log::{Entry, EntryKey},
    moment::Moment,
    probes::{HeardSource, Hearing, Reach},
    screens::{self, StartInput},
    words::{HourCycle, Locale, TemperatureUnit, Viewer, WeightUnit, Words},
};
use serde_json::Value;

/// Words of the code that a cook never reads.
const NOT_ON_SCREENS: [&str; 7] = [
    "look", "piece", "ledger", "board", "hub", "verdict", "pitside",
];

/// Every screen as JSON.
fn screens(
    known: &Known<'_>,
    entries: &[Entry],
    viewer: &Viewer,
    moment: &Moment,
) -> Vec<(&'static str, Value)> {
    let json = |screen| serde_json::to_value(screen).unwrap();
    let mut all = vec![
        (
            "start",
            serde_json::to_value(screens::start(
                known,
                viewer,
                &StartInput::default(),
                moment,
            ))
            .unwrap(),
        ),
        (
            "settings",
            serde_json::to_value(screens::settings(known, viewer, moment)).unwrap(),
        ),
        (
            "now",
            json(screens::pitside(known, viewer, cook(1), moment).unwrap()),
        ),
        (
            "timeline",
            serde_json::to_value(
                screens::timeline(known, viewer, cook(1), entries, None, 100, moment).unwrap(),
            )
            .unwrap(),
        ),
    ];
    let ask = CardAsk {
        by: "Ann".into(),
        notes: true,
    };
    let card = screens::card(known, viewer, cook(1), &ask, moment).unwrap();
    let read = card::read(&Words::of(viewer), &card.text).unwrap();
    all.push(("card", serde_json::to_value(card).unwrap()));
    for anew in [false, true] {
        let begin = screens::begin(known, viewer, &read, anew, moment);
        all.push(("begin", serde_json::to_value(begin).unwrap()));
    }
    let of_cook = [
        (
            "pits",
            serde_json::to_value(screens::pits(known, viewer, cook(1), moment)),
        ),
        (
            "dishes",
            serde_json::to_value(screens::dishes(known, viewer, cook(1), moment)),
        ),
        (
            "kitchen",
            serde_json::to_value(screens::kitchen(
                known,
                viewer,
                cook(1),
                &screens::LastTime::default(),
                moment,
            )),
        ),
        (
            "sheet",
            serde_json::to_value(screens::kitchen_sheet(known, viewer, cook(1), moment)),
        ),
        (
            "watch",
            serde_json::to_value(screens::watch(known, viewer, cook(1), moment)),
        ),
    ];
    all.extend(of_cook.map(|(name, screen)| (name, screen.unwrap())));
    for of in [1, 2] {
        let opening = screens::opening(known, viewer, cook(1), pit(of), moment).unwrap();
        all.push(("opening", serde_json::to_value(opening).unwrap()));
        let trouble = screens::trouble(known, viewer, cook(1), pit(of), moment).unwrap();
        all.push(("trouble", serde_json::to_value(trouble).unwrap()));
    }
    let slips = screens::write_down(known, viewer, cook(1), moment).unwrap();
    all.push(("write", serde_json::to_value(slips).unwrap()));
    let probes = screens::probes(known, viewer, &kept_probe(), moment);
    all.push(("probes", serde_json::to_value(probes).unwrap()));
    let night = screens::night(known, viewer, moment);
    all.push(("night", serde_json::to_value(night).unwrap()));
    for of in [1, 2, 3, 4] {
        let meat = screens::piece(known, viewer, piece(of), moment).unwrap();
        all.push(("meat", serde_json::to_value(meat).unwrap()));
        let check = screens::check(known, viewer, piece(of), moment).unwrap();
        all.push(("check", serde_json::to_value(check).unwrap()));
    }
    all
}

/// A probe that is kept and sits nowhere yet.
fn kept_probe() -> Hearing {
    let source = HeardSource {
        source: "new".into(),
        name: "Club probe".into(),
        reach: Reach::Linked,
        sensors: vec!["1".into()],
        trouble: None,
    };
    Hearing {
        sources: vec![source],
        ..Hearing::default()
    }
}

fn viewers() -> [Viewer; 3] {
    let metric = Viewer {
        temperature: TemperatureUnit::Celsius,
        weight: WeightUnit::Kilogram,
        hours: HourCycle::TwentyFour,
        ..viewer(Locale::EsUs)
    };
    [viewer(Locale::EnUs), viewer(Locale::EsUs), metric]
}

/// Every half hour of the cook, and the minutes at which something happens.
fn moments() -> impl Iterator<Item = i64> {
    let halves = (-240..600).step_by(30);
    halves.chain([90, 120, 166, 168, 170, 205, 432, 456, 460, 462])
}

fn at_each(mut see: impl FnMut(i64, &Told, &[Entry])) {
    for at in moments() {
        let story = told_until(at);
        see(at, &story.told(), &story.entries);
    }
}

/// All text that a person reads, acts and ids left out.
fn texts<'v>(value: &'v Value, out: &mut Vec<&'v str>) {
    const NOT_READ: [&str; 18] = [
        "act", "place", "link", "field", "spot", "value", "id", "saw", "of", "kind", "cut",
        "entry", "weight", "tone", "piece", "pit", "does", "trouble",
    ];
    match value {
        Value::String(text) => out.push(text),
        Value::Array(all) => all.iter().for_each(|one| texts(one, out)),
        Value::Object(fields) => {
            let read = fields.iter().filter(|(name, one)| {
                !NOT_READ.contains(&name.as_str())
                    || (*name == "link" && one.get("label").is_some())
            });
            read.for_each(|(_, one)| texts(one, out));
        }
        _ => {}
    }
}

#[test]
fn no_message_is_missing_and_no_word_of_the_code_is_read() {
    at_each(|at, told, entries| {
        for viewer in viewers() {
            for (name, screen) in screens(&told.known(1), entries, &viewer, &moment(at)) {
                let mut all = vec![];
                texts(&screen, &mut all);
                assert!(all.len() > 5);
                for text in all {
                    assert!(!text.contains('⟨'), "{name} at {at}: {text}");
                    let mut words = text.split(|c: char| !c.is_alphanumeric());
                    let code = words.find(|w| NOT_ON_SCREENS.contains(&&*w.to_lowercase()));
                    let english = viewer.locale == Locale::EnUs;
                    assert!(!english || code.is_none(), "{name} at {at}: {text}");
                }
            }
        }
    });
}

#[test]
fn the_same_question_has_the_same_answer() {
    at_each(|at, told, entries| {
        let [english, ..] = viewers();
        let ask = || screens(&told.known(1), entries, &english, &moment(at));
        assert_eq!(ask(), ask());
    });
}

#[test]
fn nothing_on_a_screen_changes_before_its_until() {
    at_each(|at, told, entries| {
        let [english, ..] = viewers();
        let odd = moment(at).plus(17_250);
        for (i, (name, first)) in screens(&told.known(1), entries, &english, &odd)
            .into_iter()
            .enumerate()
        {
            let until = first["until"].as_i64().unwrap();
            assert!(until > odd.utc_ms && until <= odd.utc_ms + 60_000);
            let last = odd.plus(until - 1 - odd.utc_ms);
            let (_, later) = screens(&told.known(1), entries, &english, &last).swap_remove(i);
            assert_eq!(first, later, "{name} at {at}");
        }
    });
}

/// Every act in a screen.
fn acts(value: &Value, out: &mut Vec<Act>) {
    match value {
        Value::Array(all) => all.iter().for_each(|one| acts(one, out)),
        Value::Object(fields) => fields.iter().for_each(|(name, one)| match name.as_str() {
            "act" => out.push(serde_json::from_value(one.clone()).unwrap()),
            _ => acts(one, out),
        }),
        _ => {}
    }
}

#[test]
fn every_act_on_a_screen_is_taken() {
    let mut taken = 0;
    at_each(|at, told, entries| {
        let [english, ..] = viewers();
        let moment = moment(at);
        let known = told.known(1);
        let mut all = vec![];
        for (_, screen) in screens(&known, entries, &english, &moment) {
            acts(&screen, &mut all);
        }
        let owner = |key: &EntryKey| {
            let entry = entries.iter().find(|entry| entry.key == *key)?;
            let crate::log::Body::Raw(raw) = &entry.body else {
                return None;
            };
            let head = Entry::head(raw).ok()?;
            let (cook, kind) = (head.cook, head.kind.to_string());
            Some(Owner { cook, kind })
        };
        for act in all {
            let mut context = Context {
                known,
                viewer: &english,
                moment: &moment,
                owner: &owner,
                names: &mut Names::new([1; 32]),
            };
            if let Err(refused) = decide(&mut context, &act) {
                panic!("at {at}: {act:?}: {refused}");
            }
            taken += 1;
        }
    });
    assert!(taken > 500, "only {taken} acts were tried");
}

#[test]
fn every_message_that_checks_and_safety_ask_for_is_there() {
    for viewer in viewers() {
        let say = crate::words::Words::of(&viewer);
        let ids = crate::checks::message_ids();
        let missing: Vec<_> = ids.iter().filter(|id| say.text(id).contains('⟨')).collect();
        assert!(missing.is_empty(), "{missing:?}");
    }
}
