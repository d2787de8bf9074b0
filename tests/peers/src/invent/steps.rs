//! What happens between the beginning of a cook and its end.

use super::Invented;
use slowbend_core::{
    checks::{Bend, BoneShowing, ProbeFeel, TestResult},
    ids::PieceId,
    log::*,
    moment::HOUR,
    units::Mk,
};

impl Invented {
    /// One thing after another, in the share that a cook makes them: in 20, eight openings, three series of a probe,
    /// three for the fire, three readings by hand, one check, one note, one job put off; each fortieth is taken back.
    pub(super) fn step(&mut self, at: i64, step: usize) {
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
