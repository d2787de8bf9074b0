//! Law 2 with a platform that obeys: whatever is done, however often the process dies, what is due sounds.

use slowbend_core::{
    acts::Act,
    alarms::{AlarmId, due},
    door::SensorReading,
    ids::DeviceId,
    log::{EntryKey, Job, Where},
    moment::{HOUR, MINUTE},
    units::Mk,
};
use slowbend_tests::{
    kit::{self, Lunch},
    sim::{
        acts::Making,
        checkers::law2,
        clock::{Clock, ClockFault},
        device::{Device, PROBE},
        picture::Picture,
        place,
        rng::Rng,
    },
};
use tempfile::TempDir;

/// A phone by the drum, and the time.
struct Night {
    phone: Device,
    lunch: Lunch,
    now: i64,
    _root: TempDir,
}

impl Night {
    fn new(limit: u32) -> Self {
        let (root, now) = (place::fresh(), kit::SIX);
        let mut phone = Device::new(root.path(), 0, Clock::right(0, now));
        phone.limit = limit;
        let moment = phone.moment(now);
        let lunch = kit::lunch(phone.door(now).expect("it opens"), &moment);
        Self {
            phone,
            lunch,
            now,
            _root: root,
        }
    }

    fn act(&mut self, act: &Act) {
        let moment = self.phone.moment(self.now);
        kit::act(self.phone.door(self.now).expect("it opens"), act, &moment);
    }

    fn bind_probe(&mut self) {
        let (cook, pit) = (self.lunch.cook, self.lunch.pit);
        self.act(&Act::BindProbe {
            cook,
            source: PROBE.into(),
            sensor: "grate".into(),
            place: Where::Pit { pit },
            thermometer: None,
        });
    }

    fn reads(&mut self) {
        let reading = SensorReading {
            source: PROBE.into(),
            sensor: "grate".into(),
            at: self.now,
            temp: Mk::from_f(250),
        };
        self.phone.door(self.now).expect("it opens");
        self.phone.hear(&[reading], self.now).expect("it is taken");
    }

    fn lay(&mut self) {
        self.phone.lay_alarms(self.now).expect("alarms are laid");
    }

    fn pass(&mut self, ms: i64) -> usize {
        self.now += ms;
        let wall = self.phone.moment(self.now).utc_ms;
        self.phone.platform.pass(wall)
    }

    /// When a job first sounded, under the name of its `ordinal`-th time, rings again counted.
    fn sounded(&self, job: Job, ordinal: i64) -> Option<i64> {
        let names = (0..9).map(|nag| AlarmId::of(self.lunch.cook, job, ordinal, nag));
        names
            .filter_map(|id| self.phone.platform.sounded(&id).first().copied())
            .min()
    }

    /// Nobody acts for so long; who hears "open Slowbend" opens it.
    fn sleeps_for(&mut self, ms: i64) {
        for _ in 0..ms / MINUTE {
            let opened = self.phone.platform.sounded(&AlarmId::OPEN_SLOWBEND).len();
            self.pass(MINUTE);
            if self.phone.platform.sounded(&AlarmId::OPEN_SLOWBEND).len() > opened {
                self.lay();
                self.phone.stop();
            }
        }
    }

    fn device(&mut self) -> DeviceId {
        self.phone.viewer(self.now).expect("it opens").device
    }
}

#[test]
fn a_probe_that_goes_silent_rings_even_where_the_process_is_dead() {
    let mut night = Night::new(60);
    night.bind_probe();
    night.reads();
    night.lay();
    night.phone.stop();
    night.pass(14 * MINUTE);
    assert_eq!(night.sounded(Job::Silent(night.lunch.pit), 0), None);
    night.pass(MINUTE);
    assert_eq!(
        night.sounded(Job::Silent(night.lunch.pit), 0),
        Some(kit::SIX + 15 * MINUTE)
    );
}

#[test]
fn each_reading_pushes_the_silence_on_under_the_same_name() {
    let mut night = Night::new(60);
    night.bind_probe();
    for _ in 0..30 {
        night.reads();
        night.lay();
        night.pass(MINUTE);
    }
    assert_eq!(night.sounded(Job::Silent(night.lunch.pit), 0), None);
    night.pass(14 * MINUTE);
    assert_eq!(
        night.sounded(Job::Silent(night.lunch.pit), 0),
        Some(night.now)
    );
}

#[test]
fn a_clock_that_ran_ahead_and_was_put_back_silences_nothing() {
    let mut night = Night::new(60);
    night.bind_probe();
    night.reads();
    let (mut rng, pit) = (Rng::new(1), night.lunch.pit);
    night
        .phone
        .clock
        .suffer(ClockFault::Year2099, night.now, &mut rng);
    night.lay();
    assert!(night.pass(MINUTE) > 0, "by that clock all is late");
    night.lay();
    night.phone.clock.mend();
    night.reads();
    night.lay();
    night.pass(15 * MINUTE);
    let silent = AlarmId::of(night.lunch.cook, Job::Silent(pit), 0, 0);
    assert_eq!(
        night.phone.platform.sounded(&silent).last(),
        Some(&night.now)
    );
    let (list, _) = night.phone.lay_alarms(night.now).expect("alarms are laid");
    assert!(
        list.alarms
            .iter()
            .all(|alarm| alarm.at < night.now + 24 * HOUR),
        "held back for years: {list:#?}"
    );
}

#[test]
fn what_was_left_out_never_rings_again_by_that_name() {
    let mut night = Night::new(60);
    let job = Job::RubSet(night.lunch.ribs);
    let (list, _) = night.phone.lay_alarms(night.now).expect("alarms are laid");
    let id = AlarmId::of(night.lunch.cook, job, 0, 0);
    assert!(
        list.alarms.iter().any(|alarm| alarm.covers.contains(&id)),
        "{list:#?}"
    );
    night.act(&Act::AnswerRub {
        piece: night.lunch.ribs,
        set: true,
        at: None,
    });
    for _ in 0..48 {
        let (_, longest) = night.phone.lay_alarms(night.now).expect("alarms are laid");
        assert!(
            longest
                .alarms
                .iter()
                .all(|alarm| !alarm.covers.contains(&id))
        );
        night.pass(30 * MINUTE);
        night.phone.stop();
    }
    assert_eq!(night.phone.platform.sounded(&id), [] as [i64; 0]);
}

#[test]
fn a_list_of_any_length_says_how_far_it_is_whole() {
    let mut night = Night::new(60);
    night.bind_probe();
    night.reads();
    for limit in 1..=60 {
        night.phone.limit = limit;
        let (list, longest) = night.phone.lay_alarms(night.now).expect("alarms are laid");
        law2::shape(&list, &longest, limit as usize).expect("the law");
    }
}

/// Random acts, each followed by a death of the process as often as not; then nobody acts for a day.
fn random_night(seed: u64) -> Result<(), String> {
    let mut rng = Rng::new(seed);
    let mut night = Night::new([2, 3, 5, 60][seed as usize % 4]);
    night.bind_probe();
    for _ in 0..20 {
        let held = night.phone.entries(night.now)?;
        let keys: Vec<EntryKey> = held.iter().map(|entry| entry.key).collect();
        let picture = Picture::of(&held);
        let act = Making {
            rng: &mut rng,
            picture: &picture,
            keys: &keys,
            now: night.now,
        }
        .act();
        let (viewer, moment) = (
            night.phone.viewer(night.now)?,
            night.phone.moment(night.now),
        );
        let _ = night.phone.door(night.now)?.act(&viewer, &act, &moment);
        if rng.chance(30) {
            night.reads();
        }
        night.lay();
        if rng.chance(50) {
            night
                .phone
                .door(night.now)?
                .suspend()
                .map_err(|trouble| trouble.to_string())?;
            night.phone.stop();
        }
        night.pass(rng.from_to(0, 40) * MINUTE);
    }
    night.lay();
    night.phone.stop();
    night.sleeps_for(24 * HOUR);
    let me = night.device();
    let held = night.phone.entries(night.now)?;
    let picture = Picture::of(&held);
    let all = due(&picture.known(&night.phone.heard, me), night.now);
    // At the end of a day of nobody, everything that must wake and is long past has sounded.
    let past = all.iter().filter(|due| {
        due.at < night.now - 2 * HOUR && due.urgency == slowbend_core::alarms::Urgency::Wake
    });
    for due in past {
        if !law2::names(due).any(|id| !night.phone.platform.sounded(&id).is_empty()) {
            return Err(format!("seed {seed}: law 2: nobody heard {due:?}"));
        }
    }
    let (_, longest) = night.phone.lay_alarms(night.now)?;
    law2::nothing_missed(&all, &longest, &night.phone.platform, night.now)
}

#[test]
fn after_any_acts_and_deaths_a_day_of_nobody_leaves_nothing_unheard() {
    let broken: Vec<String> = (0..40)
        .filter_map(|seed| random_night(seed).err())
        .collect();
    assert_eq!(broken, Vec::<String>::new());
}
