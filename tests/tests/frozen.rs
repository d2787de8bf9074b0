//! Databases that were shipped open for ever: the schema of each version, frozen with rows of every kind.
//!
//! `fixtures/schema-0001.sql` is a whole database as SQL, written once by `freeze` below and never again; what is in it
//! is invented. A later schema gets a fixture of its own, and this one must still open, be raised to it and mean the same.

#[path = "frozen/later.rs"]
mod later;

use later::LATER;
use slowbend_core::{
    cadence::Cadence,
    checks::{Bend, Cut, TestResult},
    ids::{CookId, DeviceId, DishId, LogId, PieceId, PitId, ThermometerId},
    log::*,
    moment::{HOUR, MINUTE},
    safety::Form,
    store::SCHEMA_VERSION,
    units::Mk,
};
use slowbend_tests::{
    kit,
    sim::{picture::Picture, place},
};
use std::{collections::BTreeSet, fmt::Write, path::Path};
use uuid::Uuid;

const FROZEN: &str = include_str!("fixtures/schema-0001.sql");
/// What the entries of the fixture mean, folded: law 7 says that it is this on every machine. Where the fold was changed
/// on purpose, raise `FOLD_VERSION` of the core and put the hash here that the failing test prints.
const MEANS: &str = "32d82e079ebafe261572c672ff680980280b910a9a717dcca2c7ee77cda07c60";

fn thaw(folder: &Path) {
    let file = rusqlite::Connection::open(folder.join("slowbend.db")).expect("the folder is there");
    file.execute_batch(FROZEN).expect("the fixture is SQL");
    for later in &LATER {
        file.execute_batch(later.sql).expect("the fixture is SQL");
    }
}

fn schema(folder: &Path) -> Vec<(String, String)> {
    let file = rusqlite::Connection::open(folder.join("slowbend.db")).expect("the file is there");
    let mut all = file
        .prepare("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name")
        .expect("SQL");
    let rows = all
        .query_map([], |row| Ok((row.get(0)?, row.get(1)?)))
        .expect("rows");
    rows.collect::<Result<_, _>>().expect("rows")
}

#[test]
fn the_fixture_holds_every_kind_of_its_version() {
    let root = place::fresh();
    thaw(root.path());
    let mut door = kit::open(root.path(), "frozen", &kit::six());
    let found: BTreeSet<String> = kit::entries(&mut door)
        .iter()
        .map(kit::kind)
        .filter(|kind| !kind.is_empty())
        .collect();
    let known = Payload::KINDS.iter().map(|(kind, _)| (*kind).to_owned());
    let lacking: Vec<String> = known.filter(|kind| !found.contains(kind)).collect();
    assert_eq!(
        lacking,
        Vec::<String>::new(),
        "a new kind goes into a new fixture"
    );
}

#[test]
fn a_frozen_database_raised_to_this_schema_is_as_a_fresh_one() {
    let (old, new) = (place::fresh(), place::fresh());
    thaw(old.path());
    drop(kit::open(old.path(), "frozen", &kit::six()));
    drop(kit::open(new.path(), "fresh", &kit::six()));
    assert_eq!(schema(old.path()), schema(new.path()));
    let file =
        rusqlite::Connection::open(old.path().join("slowbend.db")).expect("the file is there");
    let version: i64 = file
        .pragma_query_value(None, "user_version", |row| row.get(0))
        .expect("a version");
    assert_eq!(version, SCHEMA_VERSION);
    let sound: String = file
        .query_row("PRAGMA integrity_check", [], |row| row.get(0))
        .expect("it is checked");
    assert_eq!(sound, "ok");
}

#[test]
fn a_frozen_database_keeps_its_bytes_its_device_and_its_meaning() {
    let root = place::fresh();
    thaw(root.path());
    let mut door = kit::open(root.path(), "frozen", &kit::six());
    assert_eq!(door.device().expect("it is open"), device());
    assert_eq!(door.log().expect("it is open"), log());
    let held = kit::entries(&mut door);
    assert_eq!(held, everything());
    assert_eq!(Picture::of(&held).hash(), MEANS);
}

/// Writes the fixture: `cargo test -p slowbend-tests --test frozen -- --ignored freeze`. Only for a schema that was never
/// shipped.
#[test]
#[ignore = "writes a fixture that must not change"]
fn freeze() {
    let root = place::fresh();
    drop(kit::open(root.path(), "frozen", &kit::six()));
    let mut sql = String::from(
        "-- Every kind of entry under the first schema. Invented. Frozen: do not change.\n",
    );
    for (_, statement) in schema(root.path())
        .iter()
        .filter(|(name, _)| !name.starts_with("sqlite_"))
    {
        writeln!(sql, "{statement};").expect("text");
    }
    for (name, value) in [
        ("device", device().to_string()),
        ("log", log().to_string()),
        ("install", "frozen".into()),
    ] {
        writeln!(
            sql,
            "INSERT INTO meta (name, value) VALUES ('{name}', CAST('{value}' AS BLOB));"
        )
        .expect("text");
    }
    let all = everything();
    for entry in &all[..all.len() - later::all().len()] {
        writeln!(sql, "{}", row(entry)).expect("text");
    }
    writeln!(
        sql,
        "INSERT INTO erased VALUES ({}, {}, 14);",
        blob(log().0),
        blob(device().0)
    )
    .expect("text");
    writeln!(
        sql,
        "INSERT INTO rung VALUES (x'{}', {}, 1);",
        "07".repeat(16),
        kit::SIX
    )
    .expect("text");
    writeln!(
        sql,
        "INSERT INTO live VALUES ('drum probe', 'grate', {}, {});",
        kit::SIX,
        Mk::from_f(250).0
    )
    .expect("text");
    writeln!(sql, "PRAGMA user_version = 1;").expect("text");
    std::fs::write(
        concat!(
            env!("CARGO_MANIFEST_DIR"),
            "/tests/fixtures/schema-0001.sql"
        ),
        sql,
    )
    .expect("it is written");
}

/// Writes what came later, one file a version: `cargo test -p slowbend-tests --test frozen -- --ignored freeze_later`. Only for
/// what was never shipped: the files of the others come out as they were, or must be put back.
#[test]
#[ignore = "writes fixtures that must not change"]
fn freeze_later() {
    let entries = everything();
    let mut rest = &entries[entries.len() - later::all().len()..];
    for later in &LATER {
        let (these, those) = rest.split_at((later.payloads)().len());
        rest = those;
        let mut sql = format!("-- {} Invented. Frozen: do not change.\n", later.about);
        for entry in these {
            writeln!(sql, "{}", row(entry)).expect("text");
        }
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/fixtures");
        std::fs::write(format!("{folder}/schema-0001-{}.sql", later.name), sql)
            .expect("it is written");
    }
}

/// An entry as a row of the database.
fn row(entry: &Entry) -> String {
    let raw = match &entry.body {
        Body::Raw(raw) => format!(
            "CAST('{}' AS BLOB)",
            String::from_utf8_lossy(raw).replace('\'', "''")
        ),
        Body::Erased => "NULL".into(),
    };
    let cook =
        slowbend_tests::sim::picture::cook_of(entry).map_or("NULL".into(), |cook| blob(cook.0));
    let (log, device) = (blob(entry.key.log.0), blob(entry.key.device.0));
    let (n, stamp) = (entry.key.n, entry.stamp.0);
    format!(
        "INSERT INTO entries (log, device, n, stamp, cook, raw) VALUES ({log}, {device}, {n}, {stamp}, {cook}, {raw});"
    )
}

fn blob(id: Uuid) -> String {
    format!("x'{}'", id.simple())
}

fn id(kind: u128, number: u128) -> Uuid {
    Uuid::from_u128(0x019e_c0a3_7b80_7000_8000_0000_0000_0000 + (kind << 16) + number)
}

fn device() -> DeviceId {
    DeviceId(id(1, 1))
}

fn log() -> LogId {
    LogId(id(2, 1))
}

/// One entry of every kind, and one that was erased.
fn everything() -> Vec<Entry> {
    let cook = Some(CookId(id(3, 1)));
    let of_crew = crew().into_iter().map(|payload| (None, payload));
    let of_cook = lunch().into_iter().chain(later::all());
    let all = of_crew.chain(of_cook.map(|payload| match payload {
        Payload::SaltWeighed(_) | Payload::UnitWeighed(_) => (None, payload),
        _ => (cook, payload),
    }));
    (1..)
        .zip(all)
        .map(|(n, (cook, payload))| entry(n, cook, payload))
        .collect()
}

fn key(n: i64) -> EntryKey {
    EntryKey {
        log: log(),
        device: device(),
        n,
    }
}

fn entry(n: i64, cook: Option<CookId>, payload: Payload) -> Entry {
    let at = kit::SIX + n * MINUTE;
    let stamp = Stamp::default().tick(at);
    match n {
        14 => Entry {
            key: key(n),
            stamp,
            body: Body::Erased,
        },
        _ => Entry {
            key: key(n),
            stamp,
            body: Body::Raw(Draft { cook, at, payload }.raw()),
        },
    }
}

fn crew() -> Vec<Payload> {
    let (pit, thermometer) = (PitId(id(4, 1)), ThermometerId(id(5, 1)));
    let band = Band {
        low: Mk::from_f(225),
        high: Mk::from_f(275),
        minutes: 15,
    };
    vec![
        CrewJoined {}.into(),
        DeviceNamed {
            name: "Phone by the drum".into(),
        }
        .into(),
        PitAdded {
            pit,
            name: "Drum".into(),
            kind: PitKind::Drum,
            grate_cm2: Some(2_500),
            alone_minutes: Some(45),
        }
        .into(),
        ThermometerAdded {
            thermometer,
            name: "Dial".into(),
        }
        .into(),
        ThermometerChecked {
            thermometer,
            against: Bath::Ice,
            expected: Mk::from_f(32),
            read: Mk::from_f(33),
        }
        .into(),
        FieldSet {
            of: Subject::Pit(pit),
            to: Field::Band(band),
            saw: None,
        }
        .into(),
        Dismissed {
            notice: "cloned".into(),
        }
        .into(),
        Slept {
            until: kit::SIX + 3 * HOUR,
        }
        .into(),
        Woke {}.into(),
        WatchTaken {
            note: "Holding at two fifty".into(),
        }
        .into(),
    ]
}

fn lunch() -> Vec<Payload> {
    let (pit, ribs, butt) = (PitId(id(4, 1)), PieceId(id(6, 1)), PieceId(id(6, 2)));
    let (half, rest, both) = (PieceId(id(6, 3)), PieceId(id(6, 4)), PieceId(id(6, 5)));
    let (cook, dish) = (CookId(id(3, 1)), DishId(id(7, 1)));
    let serve = Serve {
        at: kit::SIX + 8 * HOUR,
        zone: "America/Chicago".into(),
    };
    let part = |piece, name: &str| Part {
        piece,
        name: name.into(),
        weight_g: None,
    };
    let meat = |piece, cut, cadence| PieceAdded {
        piece,
        name: String::new(),
        cut,
        form: Form::Intact,
        weight_g: Some(1_500),
        cadence,
    };
    let (source, sensor) = ("drum probe".to_owned(), "grate".to_owned());
    let job = Job::Wet(ribs);
    vec![
        CookStarted {
            id: cook,
            name: "Regatta lunch".into(),
            serve: Some(serve),
            people: Some(14),
            demo: false,
        }
        .into(),
        meat(ribs, Cut::SpareRibs, Cadence::mop()).into(),
        meat(butt, Cut::PorkButt, Cadence::spritz()).into(),
        Noted {
            about: Subject::Cook(cook),
            text: "erased".into(),
        }
        .into(),
        StageSet {
            piece: ribs,
            stage: Stage::OnPit { pit },
        }
        .into(),
        StageSet {
            piece: butt,
            stage: Stage::OnPit { pit },
        }
        .into(),
        PieceMoved {
            piece: butt,
            pit,
            spot: "upper".into(),
        }
        .into(),
        RubAnswered {
            piece: ribs,
            set: true,
        }
        .into(),
        Opened {
            pit: Some(pit),
            wetted: vec![ribs, butt],
            turned: vec![ribs],
            glazed: vec![],
        }
        .into(),
        Checked {
            piece: ribs,
            results: vec![TestResult::Lifted(Bend::Bows)],
        }
        .into(),
        Read {
            place: Where::Pit { pit },
            thermometer: None,
            temp: Mk::from_f(250),
        }
        .into(),
        ProbeBound {
            source: source.clone(),
            sensor: sensor.clone(),
            place: Where::Pit { pit },
            thermometer: None,
        }
        .into(),
        SeriesSaved {
            source,
            sensor,
            from: kit::SIX,
            to: kit::SIX + HOUR,
            count: 3_600,
            hash: "00".repeat(32),
        }
        .into(),
        Fed {
            pit,
            what: "half a chimney".into(),
        }
        .into(),
        VentChanged {
            pit,
            how: "bottom, a quarter open".into(),
        }
        .into(),
        FireSeen { pit }.into(),
        Skipped { job }.into(),
        PutOff { job, minutes: 10 }.into(),
        Answered {
            job: Job::Serve(cook),
        }
        .into(),
        Noted {
            about: Subject::Piece(butt),
            text: "Wind from the lake, 'north'".into(),
        }
        .into(),
        DishAdded {
            dish,
            name: "Beans".into(),
            hot: true,
        }
        .into(),
        DishReady { dish, ready: true }.into(),
        PieceSplit {
            piece: butt,
            into: vec![part(half, "Half"), part(rest, "Rest")],
        }
        .into(),
        PiecesJoined {
            pieces: vec![half, rest],
            into: part(both, "Both"),
        }
        .into(),
        Voided {
            targets: vec![key(27)],
        }
        .into(),
        ErasedFor {
            targets: vec![key(14)],
        }
        .into(),
        CookFinished {}.into(),
    ]
}
