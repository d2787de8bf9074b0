//! Three devices record, take back and meet in any order: what they know in the end depends on the entries alone.

#![allow(clippy::unwrap_used, reason = "helpers of tests")]

use proptest::prelude::*;
use slowbend_core::{
    acts::Act,
    cadence::cluster::{Wetting, clusters},
    door::Slowbend,
    log::{Entry, EntryKey},
    moment::{HOUR, MINUTE, Moment, SECOND},
};
use slowbend_tests::{
    kit::{self, Lunch},
    sim::{
        picture::{Picture, have},
        place,
    },
};
use std::collections::BTreeSet;
use tempfile::TempDir;

/// What one of the three does.
#[derive(Clone, Debug)]
enum Step {
    /// Mopped the slab, so many minutes after six.
    Mop { who: usize, minute: i64 },
    /// Takes back, or restores, the n-th of what it knows that can be.
    Undo { who: usize, nth: usize },
    /// Gives what the other lacks, from the back or from the front, in parcels of so many, the first one twice.
    Give {
        from: usize,
        to: usize,
        backwards: bool,
        size: usize,
    },
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        4 => (0..3usize, 0..40i64).prop_map(|(who, minute)| Step::Mop { who, minute }),
        3 => (0..3usize, 0..30usize).prop_map(|(who, nth)| Step::Undo { who, nth }),
        3 => (0..3usize, 0..3usize, any::<bool>(), 1..6usize)
            .prop_map(|(from, to, backwards, size)| Step::Give { from, to, backwards, size }),
    ]
}

/// Three devices of one crew that all know of the lunch.
struct Trio {
    doors: Vec<Slowbend>,
    lunch: Lunch,
    now: Moment,
    root: TempDir,
}

impl Trio {
    fn new() -> Self {
        let (root, now) = (place::fresh(), kit::six());
        let open = |i: usize| {
            kit::open(
                &root.path().join(i.to_string()),
                &format!("phone {i}"),
                &now,
            )
        };
        let mut doors: Vec<Slowbend> = (0..3).map(open).collect();
        let log = doors[0].log().expect("the door does as told");
        let lunch = kit::lunch(&mut doors[0], &now);
        for door in &mut doors[1..] {
            door.join_crew(log, &now).expect("the door does as told");
        }
        let mut trio = Self {
            doors,
            lunch,
            now: now.plus(2 * HOUR),
            root,
        };
        trio.meet_all();
        trio
    }

    fn take(&mut self, step: &Step) {
        self.now = self.now.plus(SECOND);
        match *step {
            Step::Mop { who, minute } => self.mop(who, minute),
            Step::Undo { who, nth } => self.undo_nth(who, nth),
            Step::Give {
                from,
                to,
                backwards,
                size,
            } => self.give(from, to, backwards, size),
        }
    }

    fn mop(&mut self, who: usize, minute: i64) {
        let wetted = vec![self.lunch.ribs];
        let at = Some(kit::SIX + minute * MINUTE);
        let mop = Act::Open {
            pit: Some(self.lunch.pit),
            wetted,
            turned: vec![],
            glazed: vec![],
            at,
        };
        kit::act(&mut self.doors[who], &mop, &self.now);
    }

    fn undo(&mut self, who: usize, key: EntryKey) {
        kit::act(
            &mut self.doors[who],
            &Act::Undo { targets: vec![key] },
            &self.now,
        );
    }

    /// Undoes an opening or a void; of an opening the whole cluster is gone at once.
    fn undo_nth(&mut self, who: usize, nth: usize) {
        let held = kit::entries(&mut self.doors[who]);
        let can: Vec<&Entry> = held
            .iter()
            .filter(|entry| ["opened", "voided"].contains(&kit::kind(entry).as_str()))
            .collect();
        let Some(entry) = can.get(nth % can.len().max(1)) else {
            return;
        };
        let together = self
            .clusters(&held)
            .into_iter()
            .find(|cluster| cluster.contains(&entry.key));
        self.undo(who, entry.key);
        let hidden = Picture::of(&kit::entries(&mut self.doors[who])).cooks[&self.lunch.cook]
            .hidden
            .clone();
        for key in together.unwrap_or_default() {
            assert!(
                hidden.contains(&key),
                "{key} stays behind of a mop that was taken back"
            );
        }
    }

    fn give(&mut self, from: usize, to: usize, backwards: bool, size: usize) {
        let held = have(&kit::entries(&mut self.doors[to]));
        let mut sent = self.doors[from]
            .entries_after(&held)
            .expect("the door does as told");
        if backwards {
            sent.reverse();
        }
        for parcel in sent.chunks(size).chain(sent.chunks(size).take(1)) {
            self.doors[to]
                .absorb(parcel, &self.now)
                .expect("the door does as told");
        }
    }

    fn meet_all(&mut self) {
        for (from, to) in [(0, 1), (1, 2), (2, 0), (0, 1), (2, 1), (1, 0)] {
            self.give(from, to, from > to, 3);
        }
    }

    /// The mops of the slab, each with the entries that recorded it.
    fn clusters(&self, held: &[Entry]) -> Vec<BTreeSet<EntryKey>> {
        let picture = Picture::of(held);
        let slab = &picture.cooks[&self.lunch.cook].pieces[&self.lunch.ribs];
        let wetting = |(entry, wet): (u64, &slowbend_core::cook::Wetted)| Wetting {
            at: wet.when.at,
            device: wet.device,
            entry,
        };
        let wettings: Vec<Wetting> = (0..).zip(&slab.wetted).map(wetting).collect();
        let told = clusters(&wettings, slab.cadence.value);
        let keys = |cluster: &slowbend_core::cadence::cluster::Cluster| -> BTreeSet<EntryKey> {
            cluster
                .members
                .iter()
                .map(|member| slab.wetted[member.entry as usize].when.entry)
                .collect()
        };
        told.iter().map(keys).collect()
    }

    /// What a fresh device knows that gets these entries one by one.
    fn told_one_by_one(&self, held: &[Entry], name: &str) -> Vec<Entry> {
        let mut door = kit::open(&self.root.path().join(name), name, &self.now);
        for entry in held {
            door.absorb(std::slice::from_ref(entry), &self.now)
                .expect("the door does as told");
        }
        kit::entries(&mut door)
    }

    /// The alarms and the first screen of the cook on a device, for one and the same viewer: what it keeps folded, shown.
    fn shown(&mut self, who: usize) -> String {
        let viewer = kit::viewer(&mut self.doors[0]);
        let door = &mut self.doors[who];
        let alarms = door
            .alarms(&viewer, &self.now, 60)
            .expect("alarms are told");
        let now = door
            .pitside(&viewer, self.lunch.cook, &self.now)
            .expect("the cook is shown");
        serde_json::to_string(&(alarms, now)).expect("screens are JSON")
    }
}

fn by_key(mut held: Vec<Entry>) -> Vec<Entry> {
    held.sort_by_key(|entry| entry.key);
    held
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn any_order_of_meeting_ends_in_one_state(
        steps in prop::collection::vec(step(), 1..24),
        shuffle in any::<prop::sample::Index>(),
    ) {
        let mut trio = Trio::new();
        steps.iter().for_each(|step| trio.take(step));
        trio.meet_all();
        let held: Vec<Vec<Entry>> = (0..3).map(|i| by_key(kit::entries(&mut trio.doors[i]))).collect();
        prop_assert_eq!(&held[0], &held[1]);
        prop_assert_eq!(&held[0], &held[2]);
        let mut turned = held[0].clone();
        let middle = shuffle.index(turned.len());
        turned.rotate_left(middle);
        let alone = trio.told_one_by_one(&turned, "alone");
        prop_assert_eq!(Picture::of(&alone), Picture::of(&held[0]));
        let rings: Vec<String> = (0..3).map(|i| trio.shown(i)).collect();
        prop_assert_eq!(&rings[0], &rings[1]);
        prop_assert_eq!(&rings[0], &rings[2]);
    }

    #[test]
    fn no_mop_counts_a_device_twice(mops in prop::collection::vec((0..3usize, 0..40i64), 1..12)) {
        let mut trio = Trio::new();
        mops.iter().for_each(|(who, minute)| trio.mop(*who, *minute));
        trio.meet_all();
        let held = kit::entries(&mut trio.doors[0]);
        let told = trio.clusters(&held);
        prop_assert_eq!(told.iter().map(BTreeSet::len).sum::<usize>(), mops.len());
        for cluster in told {
            let devices: BTreeSet<_> = cluster.iter().map(|key| key.device).collect();
            prop_assert_eq!(devices.len(), cluster.len());
        }
    }

    #[test]
    fn however_many_take_a_mop_back_it_is_one_void(voiders in prop::collection::vec(0..3usize, 1..5), by in 0..3usize) {
        let mut trio = Trio::new();
        trio.mop(0, 60);
        trio.meet_all();
        let mops = |trio: &mut Trio| { let held = kit::entries(&mut trio.doors[by]); trio.clusters(&held).len() };
        let mop = kit::entries(&mut trio.doors[0]).iter().rfind(|entry| kit::kind(entry) == "opened").expect("the door does as told").key;
        for who in voiders {
            trio.now = trio.now.plus(SECOND);
            trio.undo(who, mop);
        }
        trio.meet_all();
        prop_assert_eq!(mops(&mut trio), 0);
        let void = kit::entries(&mut trio.doors[by]).iter().rfind(|entry| kit::kind(entry) == "voided").expect("the door does as told").key;
        trio.now = trio.now.plus(SECOND);
        trio.undo(by, void);
        prop_assert_eq!(mops(&mut trio), 1, "one restoring undoes all of them");
        trio.meet_all();
        prop_assert_eq!(mops(&mut trio), 1);
    }
}
