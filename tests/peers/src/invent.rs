//! An invented log: cooks of four meats on two pits, kept by three devices, with the kinds of entries that a cook makes
//! in the share that a cook makes them.
//!
//! Start at [`log`]. The same arguments give the same entries. All but the last cook are over.

use slowbend_core::{
    cadence::Cadence,
    checks::{Bend, BoneShowing, Cut, ProbeFeel, TestResult},
    ids::{CookId, DeviceId, LogId, Names, PieceId, PitId},
    log::*,
    moment::{HOUR, MINUTE},
    safety::Form,
    units::Mk,
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

    /// One thing after another, in the share that a cook makes them: in 20, eight openings, three series of a probe,
    /// three for the fire, three readings by hand, one check, one note, one job put off; each fortieth is taken back.
    fn step(&mut self, at: i64, step: usize) {
        let cook = Some(self.cook);
        let by = step % 3;
        let (pit, piece) = (self.pits[step % 2], self.pieces[step % 4]);
        let key = match step % 20 {
            0 | 3 | 5 | 8 | 10 | 13 | 15 | 18 => self.opening(at, by, step),
            1 | 7 | 14 => self.say(by, at, cook, series(at, step)),
            2 | 12 => self.say(
                by,
                at,
                cook,
                Fed {
                    pit,
                    what: "half a chimney".into(),
                },
            ),
            4 => self.say(
                by,
                at,
                cook,
                VentChanged {
                    pit,
                    how: "bottom a finger wider".into(),
                },
            ),
            6 | 16 => self.say(
                by,
                at,
                cook,
                Read {
                    place: Where::Pit { pit },
                    thermometer: None,
                    temp: Mk::from_f(250),
                },
            ),
            9 => self.say(by, at, cook, in_meat(piece)),
            11 => self.say(by, at, cook, check(piece)),
            17 => self.say(
                by,
                at,
                cook,
                Noted {
                    about: Subject::Piece(piece),
                    text: "Color like mahogany.".into(),
                },
            ),
            _ => self.say(
                by,
                at,
                cook,
                PutOff {
                    job: Job::Wet(piece),
                    minutes: 10,
                },
            ),
        };
        if step % 40 == 25 {
            self.say(by, at, cook, Voided { targets: vec![key] });
        }
    }

    fn opening(&mut self, at: i64, by: usize, step: usize) -> EntryKey {
        let wetted = self.pieces[..2 + step % 2].to_vec();
        let turned = if step.is_multiple_of(4) {
            vec![self.pieces[0]]
        } else {
            vec![]
        };
        let opened = Opened {
            pit: Some(self.pits[0]),
            wetted,
            turned,
            glazed: vec![],
        };
        self.say(by, at, Some(self.cook), opened)
    }
}

fn series(at: i64, step: usize) -> SeriesSaved {
    SeriesSaved {
        source: "drum log".into(),
        sensor: format!("probe {}", step % 3),
        from: at - HOUR,
        to: at,
        count: 360,
        hash: format!("{:064x}", step * 0x9e37_79b9),
    }
}

fn in_meat(piece: PieceId) -> Read {
    let place = Where::Piece {
        piece,
        spot: "center".into(),
    };
    Read {
        place,
        thermometer: None,
        temp: Mk::from_f(162),
    }
}

fn check(piece: PieceId) -> Checked {
    let results = vec![
        TestResult::Lifted(Bend::Stiff),
        TestResult::Probed(ProbeFeel::Tight),
        TestResult::Bone(BoneShowing::Hidden),
    ];
    Checked { piece, results }
}
