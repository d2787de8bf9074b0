//! Folded state survives its cache, whatever entries it was folded from.

use super::*;
use crate::fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap, Wind};
use crate::{
    batch::{Batch, BrinePlan, BrineWay, Grams, MopPart, MopPlan},
    cadence::Cadence,
    checks::{Bend, Spot, Temperature, TestResult},
    cook::{
        fold,
        story::{Story, cook, device, piece, pit, thermometer},
    },
    ids::{DeviceId, DishId, LogId, PieceId, PitId},
    log::*,
};

/// One fact of every kind and every stage, so that a kind that is added has to be told here too.
fn everything() -> Story {
    let mut story = Story::default();
    let mut at = SIX;
    for payload in of_crew() {
        at += MINUTE;
        story.say(1, at, None, payload);
    }
    for payload in of_cook() {
        at += MINUTE;
        story.say(1 + (at / MINUTE) as u128 % 2, at, Some(cook(1)), payload);
    }
    let first = story.entries[story.entries.len() - 3].key;
    let targets = vec![first];
    story.say(
        2,
        at,
        Some(cook(1)),
        Voided {
            targets: targets.clone(),
        },
    );
    story.say(2, at, Some(cook(1)), ErasedFor { targets });
    story
}

fn of_crew() -> Vec<Payload> {
    let (pit, thermometer) = (pit(1), thermometer(1));
    let name = || "Ana".to_owned();
    let blind = |to| FieldSet {
        of: Subject::Pit(pit),
        to,
        saw: None,
    };
    let band = Band {
        low: Mk::from_f(225),
        high: Mk::from_f(275),
        minutes: 10,
    };
    vec![
        CrewJoined {}.into(),
        DeviceNamed { name: name() }.into(),
        PitAdded {
            pit,
            name: name(),
            kind: PitKind::Drum,
            grate_cm2: Some(2_000),
            alone_minutes: None,
        }
        .into(),
        ThermometerAdded {
            thermometer,
            name: name(),
        }
        .into(),
        ThermometerChecked {
            thermometer,
            against: Bath::Boiling { altitude_m: 180 },
            expected: Mk(373_000),
            read: Mk(373_400),
        }
        .into(),
        blind(Field::Band(band)).into(),
        blind(Field::Name("Kettle".into())).into(),
        FieldSet {
            of: Subject::Crew,
            to: Field::MopMinutes(40),
            saw: None,
        }
        .into(),
        UnitWeighed {
            pit,
            unit: FuelUnit::Basket,
            grams: 4_000,
        }
        .into(),
        Dismissed {
            notice: "a notice".into(),
        }
        .into(),
        SaltWeighed { cup_g: Some(146) }.into(),
        Slept { until: SIX + HOUR }.into(),
        Woke {}.into(),
        WatchTaken {
            note: "steady".into(),
        }
        .into(),
    ]
}

fn of_cook() -> Vec<Payload> {
    let (id, pit, one, two) = (cook(1), pit(1), piece(1), piece(2));
    let part = |number, name: &str| Part {
        piece: piece(number),
        name: name.into(),
        weight_g: None,
    };
    let added = |piece, cadence| PieceAdded {
        piece,
        name: "Slab".into(),
        cut: Cut::SpareRibs,
        form: Form::Injected,
        weight_g: Some(1_800),
        cadence,
    };
    let heat = Temperature {
        mk: Mk::from_f(165),
        spot: Spot::Center,
        thermometer: Some(thermometer(1)),
        instant_read: true,
    };
    let serve = Some(Serve {
        at: SIX + 8 * HOUR,
        zone: "America/Chicago".into(),
    });
    let spot = || Where::Piece {
        piece: one,
        spot: "center".into(),
    };
    let (source, sensor) = (|| "drum log".to_owned(), || "2".to_owned());
    let dish = DishId(uuid::Uuid::from_u128(7));
    let job = Job::Wet(one);
    let mut all: Vec<Payload> = vec![
        CookStarted {
            id,
            name: "Lunch".into(),
            serve,
            people: Some(14),
            demo: false,
        }
        .into(),
        added(one, Cadence::mop()).into(),
        added(two, Cadence::None).into(),
        PieceSplit {
            piece: two,
            into: vec![part(3, "Left"), part(4, "Right")],
        }
        .into(),
        PiecesJoined {
            pieces: vec![piece(3), piece(4)],
            into: part(5, "Both"),
        }
        .into(),
        PieceMoved {
            piece: one,
            pit,
            spot: "low".into(),
        }
        .into(),
        RubAnswered {
            piece: one,
            set: true,
        }
        .into(),
        Opened {
            pit: Some(pit),
            wetted: vec![one],
            turned: vec![one],
            glazed: vec![one],
        }
        .into(),
        Checked {
            piece: one,
            results: vec![TestResult::Lifted(Bend::Bows), TestResult::Heat(heat)],
        }
        .into(),
        Read {
            place: spot(),
            thermometer: Some(thermometer(1)),
            temp: Mk::from_f(160),
        }
        .into(),
        Read {
            place: Where::Pit { pit },
            thermometer: None,
            temp: Mk::from_f(250),
        }
        .into(),
        ProbeBound {
            source: source(),
            sensor: sensor(),
            place: spot(),
            thermometer: None,
        }
        .into(),
        SeriesSaved {
            source: source(),
            sensor: sensor(),
            from: SIX,
            to: SIX + HOUR,
            count: 60,
            hash: "00".into(),
        }
        .into(),
        Fed {
            pit,
            what: "a chimney".into(),
        }
        .into(),
        VentChanged {
            pit,
            how: "wider".into(),
        }
        .into(),
        FireSeen { pit }.into(),
        FedUnits {
            pit,
            unit: FuelUnit::Basket,
            quarters: 4,
            what: String::new(),
        }
        .into(),
        VentSet {
            pit,
            vent: Vent::Lower,
            quarters: 2,
            how: String::new(),
        }
        .into(),
        FireTended {
            pit,
            did: FireDid::Ash,
        }
        .into(),
        WeatherSaid {
            said: WeatherTap::Blows(Wind::Breeze),
        }
        .into(),
        WoodSaid {
            pit,
            wood: SmokeWood::Oak,
        }
        .into(),
        WoodTamed {
            pit,
            wood: SmokeWood::Mesquite,
        }
        .into(),
        FireFoundOut {
            pit,
            burned_until: MINUTE,
        }
        .into(),
        SmokeWatched {
            pit,
            seen: SmokeSeen::White,
        }
        .into(),
        FeedPlanned {
            pit,
            due: SIX + 2 * HOUR,
        }
        .into(),
        Skipped { job }.into(),
        PutOff { job, minutes: 10 }.into(),
        Answered {
            job: Job::WakeUp(id),
        }
        .into(),
        WentPast {
            piece: one,
            caveat: Caveat::CoolPit,
        }
        .into(),
        Noted {
            about: Subject::Piece(one),
            text: "Dark.".into(),
        }
        .into(),
        DishAdded {
            dish,
            name: "Beans".into(),
            hot: true,
        }
        .into(),
        DishReady { dish, ready: true }.into(),
        BatchPlanned {
            batch: Batch::Mop(MopPlan {
                parts: vec![MopPart {
                    name: "Cider vinegar".into(),
                    parts: 2,
                }],
                spare_percent: 10,
                wet_min: None,
            }),
        }
        .into(),
        BatchPlanned {
            batch: Batch::Brine(BrinePlan {
                pieces: vec![one],
                water_g: Grams(3_785),
                way: BrineWay::OfTheBrine,
                permille: 60,
            }),
        }
        .into(),
        TrimmingsKept {
            piece: Some(one),
            g: 320,
            what: "for stock".into(),
        }
        .into(),
        PlanDropped {}.into(),
        plan(one, pit).into(),
        PieceMeant {
            piece: one,
            meant: Meant {
                wrap: Some(Wrap::Foil),
                rest_min: Some(30),
                pit: None,
            },
        }
        .into(),
        CoursesPlanned {
            courses: vec![Course {
                nr: 1,
                name: "Ribs".into(),
                serve: plan(one, pit).plan.serve,
                latest: None,
                window_min: Some(5),
                of: vec![Subject::Piece(one)],
            }],
        }
        .into(),
        SheetKept {
            sheet: EntryKey {
                log: LogId(uuid::Uuid::from_u128(1)),
                device: DeviceId(uuid::Uuid::from_u128(2)),
                n: 3,
            },
            against: vec![Strain {
                job: plan(one, pit).plan.jobs[0].job,
                by_min: 45,
            }],
        }
        .into(),
        CookFinished {}.into(),
    ];
    let stages = [
        Stage::Rubbed,
        Stage::OnPit { pit },
        Stage::Wrapped { wrap: Wrap::Paper },
        Stage::Off,
    ];
    all.splice(
        4..4,
        stages.map(|stage| StageSet { piece: one, stage }.into()),
    );
    all
}

/// A plan with all that a job can say.
fn plan(piece: PieceId, pit: PitId) -> PlanAccepted {
    let value = [
        WhyValue::Time(SIX),
        WhyValue::Minutes(90),
        WhyValue::Temp(Mk::from_f(250)),
        WhyValue::Count(2),
        WhyValue::Piece(piece),
        WhyValue::Text("low".into()),
    ];
    let args = value.into_iter().map(|value| WhyArg {
        name: "what".into(),
        value,
    });
    let job = PlannedJob {
        job: OnSheet {
            does: Does::PutOn,
            on: Subject::Piece(piece),
            nth: 0,
        },
        at: SIX + HOUR,
        until: SIX + 2 * HOUR,
        hands: 1,
        wakes: true,
        pit: Some(pit),
        temp: Some(Mk::from_f(250)),
        wrap: Some(Wrap::Foil),
        what: "low".into(),
        why: Some(PlannedWhy {
            key: "plan-why-cooks-for".into(),
            args: args.collect(),
        }),
    };
    PlanAccepted {
        plan: AcceptedPlan {
            serve: Serve {
                at: SIX + 8 * HOUR,
                zone: "America/Chicago".into(),
            },
            jobs: vec![job],
            chance_permille: Some(930),
            asked: PlanAsked {
                hands: 1,
                sleep_from_min: Some(22 * 60),
                sleep_to_min: Some(6 * 60),
                watched: false,
                not_before: Some(SIX),
                late_min: Some(30),
                cooler: true,
                oven: false,
            },
        },
    }
}

#[test]
fn every_kind_of_entry_is_among_those_told() {
    let mut told: Vec<String> = vec![];
    for entry in everything().entries {
        let Body::Raw(raw) = &entry.body else {
            panic!("nothing is erased in a story")
        };
        told.push(Entry::head(raw).unwrap().kind.into_owned());
    }
    for (kind, _) in Payload::KINDS {
        assert!(told.iter().any(|found| found == kind), "{kind} is not told");
    }
}

#[test]
fn what_was_just_recorded_is_known_as_it_reads_back() {
    for payload in of_crew().into_iter().chain(of_cook()) {
        let draft = Draft {
            cook: Some(cook(1)),
            at: SIX,
            payload,
        };
        let entry = Entry {
            key: EntryKey {
                log: crate::ids::LogId(uuid::Uuid::from_u128(1)),
                device: device(1),
                n: 7,
            },
            stamp: Stamp(9),
            body: Body::Raw(draft.raw()),
        };
        let (recorded, read) = (
            fold::Known::recorded(&entry, &draft),
            fold::Known::of(&entry),
        );
        assert_eq!(recorded, read, "{}", draft.payload.kind());
    }
}

#[test]
fn what_is_too_large_to_be_read_back_means_nothing_from_the_start() {
    let (about, text) = (Subject::Crew, "x".repeat(MAX_ENTRY_BYTES));
    let draft = Draft {
        cook: None,
        at: SIX,
        payload: Noted { about, text }.into(),
    };
    let key = Story::default().say(1, SIX, None, Woke {});
    let (stamp, body) = (Stamp(9), Body::Raw(draft.raw()));
    let entry = Entry { key, stamp, body };
    assert_eq!(
        fold::Known::recorded(&entry, &draft),
        fold::Known::of(&entry)
    );
    assert_eq!(fold::Known::of(&entry).meaning, Meaning::Skipped);
}

#[test]
fn what_is_cached_reads_back_as_it_was_folded() {
    let told = everything().told();
    let known = told.known(1);
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let store = door.store().unwrap();
    let order: Option<Order> = Some((Stamp(5), device(1), 9, store.log));
    let (group, cook) = (Group::Cook(cook(1)), &known.cooks[&cook(1)]);
    assert!(cook.pieces.len() == 5 && !cook.probes.is_empty() && !cook.hidden.is_empty());
    store.put_cached(group, 9, &(cook, order)).unwrap();
    store
        .put_cached(Group::Crew, 4, &(known.crew, order))
        .unwrap();
    let ((cook_back, order_back), seq) = store
        .cached::<(Cook, Option<Order>)>(group)
        .unwrap()
        .unwrap();
    assert_eq!((&cook_back, order_back, seq), (cook, order, 9));
    let ((crew_back, _), _) = store
        .cached::<(Crew, Option<Order>)>(Group::Crew)
        .unwrap()
        .unwrap();
    assert_eq!(&crew_back, known.crew);
}
