//! Stories of a night with alarms. The regatta lunch: a slab and a butt on the drum since six, for two o'clock.

mod calls;
mod extremes;
mod feeds;
mod once_more;
mod pits;
mod unshown;
mod wakes;
mod zone;

use super::*;
use crate::{
    cadence::Cadence,
    checks::Cut,
    cook::story::{SIX, Story, cook, piece, pit},
    log::*,
    moment::{HOUR, MINUTE},
    safety::Form,
    units::Mk,
};

pub(super) fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

pub(super) struct Night {
    pub story: Story,
    pub rung: Rung,
}

impl Night {
    /// Ribs (mop) and a butt (spritz) on the drum since six.
    pub fn begun() -> Self {
        let mut night = Self {
            story: Story::default(),
            rung: Rung::new(),
        };
        let zone = "America/Chicago".to_owned();
        let serve = Some(Serve {
            at: SIX + 8 * HOUR,
            zone,
        });
        let name = "Regatta lunch".to_owned();
        night.crew(
            0,
            PitAdded {
                pit: pit(1),
                name: "Drum".into(),
                kind: PitKind::Drum,
                grate_cm2: None,
                alone_minutes: None,
            },
        );
        night.say(
            0,
            CookStarted {
                id: cook(1),
                name,
                serve,
                people: Some(14),
                demo: false,
            },
        );
        night.meat(1, "Slab", Cut::SpareRibs, Cadence::mop());
        night.meat(2, "Butt", Cut::PorkButt, Cadence::spritz());
        night
    }

    pub fn meat(&mut self, number: u128, name: &str, cut: Cut, cadence: Cadence) {
        let (piece, name) = (piece(number), name.to_owned());
        self.say(
            0,
            PieceAdded {
                piece,
                name,
                cut,
                form: Form::Intact,
                weight_g: Some(1_500),
                cadence,
            },
        );
        self.say(
            0,
            StageSet {
                piece,
                stage: Stage::OnPit { pit: pit(1) },
            },
        );
    }

    pub fn say(&mut self, at: i64, fact: impl Into<Payload>) -> EntryKey {
        self.story.say(1, minute(at), Some(cook(1)), fact)
    }

    pub fn crew(&mut self, at: i64, fact: impl Into<Payload>) -> EntryKey {
        self.story.say(1, minute(at), None, fact)
    }

    pub fn set_rubs(&mut self, at: i64) {
        for number in [1, 2] {
            self.say(
                at,
                RubAnswered {
                    piece: piece(number),
                    set: true,
                },
            );
        }
    }

    pub fn wet(&mut self, at: i64, numbers: &[u128]) -> EntryKey {
        let wetted = numbers.iter().map(|number| piece(*number)).collect();
        self.say(
            at,
            Opened {
                pit: Some(pit(1)),
                wetted,
                turned: vec![],
                glazed: vec![],
            },
        )
    }

    pub fn probe(&mut self, at: i64) {
        let place = Where::Pit { pit: pit(1) };
        self.say(
            at,
            ProbeBound {
                source: "box".into(),
                sensor: "1".into(),
                place,
                thermometer: None,
            },
        );
    }

    pub fn reads(&mut self, at: i64, fahrenheit: i64) {
        self.story
            .tails
            .take("box", "1", minute(at), Mk::from_f(fahrenheit));
    }

    pub fn due(&self, at: i64) -> Vec<Due> {
        due(&self.story.told().known(1), minute(at))
    }

    pub fn job(&self, at: i64, job: Job) -> Option<Due> {
        self.due(at).into_iter().find(|due| due.job == job)
    }

    pub fn rings_on(&self, device: u128, at: i64, limit: usize) -> Rings {
        rings(
            &self.story.told().known(device),
            &self.rung,
            minute(at),
            limit,
        )
    }

    pub fn rings(&self, at: i64) -> Vec<Ring> {
        self.rings_on(1, at, 60).rings
    }

    /// Lets all ring that is due by then, as a platform would.
    pub fn ring_until(&mut self, at: i64) -> Vec<Ring> {
        let due: Vec<Ring> = self
            .rings(at)
            .into_iter()
            .filter(|ring| ring.at <= minute(at))
            .collect();
        for ring in &due {
            for id in &ring.covers {
                self.rung
                    .insert(*id, (minute(at), ring.urgency == Urgency::Call));
            }
        }
        due
    }
}

pub(super) fn minutes(rings: &[Ring]) -> Vec<i64> {
    rings.iter().map(|ring| (ring.at - SIX) / MINUTE).collect()
}

#[test]
fn the_name_of_an_alarm_does_not_know_its_time() {
    let mut night = Night::begun();
    night.set_rubs(50);
    let before = night.job(51, Job::Wet(piece(1))).unwrap();
    let ids = |night: &Night, at| {
        night
            .rings(at)
            .iter()
            .map(|ring| ring.id)
            .collect::<Vec<_>>()
    };
    assert_eq!(ids(&night, 51), ids(&night, 52));
    night.say(
        51,
        PutOff {
            job: Job::Wet(piece(2)),
            minutes: 40,
        },
    );
    assert_eq!(
        night.job(52, Job::Wet(piece(1))).unwrap().ordinal,
        before.ordinal,
        "another meat's answer changes nothing"
    );
}
