//! An invented log: cooks of four meats on two pits, kept by three devices, with the kinds of entries that a cook makes
//! in the share that a cook makes them.
//!
//! Start at [`log`]. The same arguments give the same entries. All but the last cook are over.

mod steps;

use slowbend_core::{
    cadence::Cadence,
    checks::Cut,
    ids::{CookId, DeviceId, LogId, Names, PieceId, PitId},
    log::*,
    moment::{HOUR, MINUTE},
    safety::Form,
};

/// When the first cook began: Saturday 2026-06-13 06:00 in Chicago.
pub const FIRST: i64 = 1_781_348_400_000;
/// From one cook to the next: a week.
const WEEK: i64 = 7 * 24 * HOUR;
/// From one entry of a cook to the next: 400 of them are 13 hours.
const STEP: i64 = 2 * MINUTE;

/// A log and what its last cook is made of.
pub struct Invented {
    /// The entries in the order in which they were recorded.
    pub entries: Vec<Entry>,
    /// The last cook, under way.
    pub cook: CookId,
    /// Its meats: two slabs, a butt, a breast.
    pub pieces: Vec<PieceId>,
    /// The pits: a drum, a kettle.
    pub pits: Vec<PitId>,
    /// When its last entry was recorded.
    pub until: i64,
    log: LogId,
    devices: Vec<DeviceId>,
    n: Vec<i64>,
    stamp: Stamp,
}

/// `cooks` cooks of `each` entries, after the two pits.
pub fn log(cooks: usize, each: usize) -> Invented {
    let mut names = Names::new([7; 32]);
    let mut log = empty(&mut names);
    for (number, pit) in log.pits.clone().into_iter().enumerate() {
        let kind = [PitKind::Drum, PitKind::Kettle][number];
        let fact = PitAdded {
            pit,
            name: format!("Pit {number}"),
            kind,
            grate_cm2: Some(2_000),
            alone_minutes: None,
        };
        log.say(0, FIRST, None, fact);
    }
    for number in 0..cooks {
        log.cook(&mut names, number, each, number + 1 == cooks);
    }
    log
}

fn empty(names: &mut Names) -> Invented {
    Invented {
        entries: vec![],
        cook: CookId(names.next(FIRST)),
        pieces: vec![],
        pits: (0..2).map(|_| PitId(names.next(FIRST))).collect(),
        until: FIRST,
        log: LogId(names.next(FIRST)),
        devices: (0..3).map(|_| DeviceId(names.next(FIRST))).collect(),
        n: vec![0; 3],
        stamp: Stamp::default(),
    }
}

impl Invented {
    fn say(
        &mut self,
        by: usize,
        at: i64,
        cook: Option<CookId>,
        fact: impl Into<Payload>,
    ) -> EntryKey {
        self.n[by] += 1;
        self.stamp = self.stamp.tick(at);
        self.until = self.until.max(at);
        let key = EntryKey {
            log: self.log,
            device: self.devices[by],
            n: self.n[by],
        };
        let draft = Draft {
            cook,
            at,
            payload: fact.into(),
        };
        self.entries.push(Entry {
            key,
            stamp: self.stamp,
            body: Body::Raw(draft.raw()),
        });
        key
    }

    fn cook(&mut self, names: &mut Names, number: usize, each: usize, open: bool) {
        let start = FIRST + number as i64 * WEEK;
        let begin = self.entries.len();
        let id = CookId(names.next(start));
        self.cook = id;
        let serve = Some(Serve {
            at: start + 8 * HOUR,
            zone: "America/Chicago".into(),
        });
        let name = format!("Regatta lunch {number}");
        self.say(
            0,
            start,
            Some(id),
            CookStarted {
                id,
                name,
                serve,
                people: Some(14),
                demo: false,
            },
        );
        self.meats(names, start);
        self.probes(start);
        let end = begin + each - usize::from(!open);
        let mut step = 0;
        while self.entries.len() < end {
            self.step(start + step as i64 * STEP, step);
            step += 1;
        }
        if !open {
            self.say(0, start + step as i64 * STEP, Some(id), CookFinished {});
        }
    }

    fn meats(&mut self, names: &mut Names, at: i64) {
        let meats = [
            (Cut::SpareRibs, Cadence::mop()),
            (Cut::SpareRibs, Cadence::mop()),
            (Cut::PorkButt, Cadence::spritz()),
            (Cut::TurkeyBreast, Cadence::None),
        ];
        self.pieces = meats.iter().map(|_| PieceId(names.next(at))).collect();
        for (number, (cut, cadence)) in meats.into_iter().enumerate() {
            let (piece, pit) = (self.pieces[number], self.pits[number / 3]);
            let (name, form, weight_g) = (format!("Meat {number}"), Form::Intact, Some(1_800));
            let cook = Some(self.cook);
            self.say(
                0,
                at,
                cook,
                PieceAdded {
                    piece,
                    name,
                    cut,
                    form,
                    weight_g,
                    cadence,
                },
            );
            self.say(
                0,
                at,
                cook,
                StageSet {
                    piece,
                    stage: Stage::Rubbed,
                },
            );
            self.say(
                0,
                at,
                cook,
                StageSet {
                    piece,
                    stage: Stage::OnPit { pit },
                },
            );
            self.say(0, at, cook, RubAnswered { piece, set: true });
        }
    }

    fn probes(&mut self, at: i64) {
        let places = [
            Where::Pit { pit: self.pits[0] },
            Where::Pit { pit: self.pits[1] },
            Where::Piece {
                piece: self.pieces[2],
                spot: "center".into(),
            },
        ];
        for (number, place) in places.into_iter().enumerate() {
            let (source, sensor) = ("drum log".into(), format!("probe {number}"));
            let bound = ProbeBound {
                source,
                sensor,
                place,
                thermometer: None,
            };
            self.say(0, at, Some(self.cook), bound);
        }
    }
}
