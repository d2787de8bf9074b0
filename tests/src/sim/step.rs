//! One thing that happens to one device.

use super::{
    Told, World,
    acts::Making,
    clock::ClockFault,
    device::{PROBE, SENSORS},
    exchange::Way,
    faults::Files,
    picture::Picture,
    world::Backup,
};
use slowbend_core::{
    acts::{Act, Outcome},
    door::SensorReading,
    error::Trouble,
    log::{Entry, EntryKey},
    moment::{MINUTE, SECOND},
    units::Mk,
};

/// What may happen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Happening {
    /// Somebody acts.
    Act,
    /// A probe reads for a while.
    Readings,
    /// The slow part is done.
    Work,
    /// The platform freezes the process.
    Suspend,
    /// The process ends and starts again.
    Restart,
    /// The power fails during an act or a checkpoint.
    PowerCut,
    /// Another device is met.
    Meet,
    /// The crew of another device is joined.
    Join,
    /// Something happens to the clock.
    Clock,
    /// The device boots.
    Reboot,
    /// An entry of a stranger comes.
    Stranger,
    /// A backup is made.
    Backup,
    /// The last backup is put back.
    Restore,
    /// The last backup is put on a new device, which takes this one's place.
    Clone,
}

const WEIGHTS: &[(u64, Happening)] = &[
    (52, Happening::Act),
    (6, Happening::Readings),
    (6, Happening::Work),
    (3, Happening::Suspend),
    (4, Happening::Restart),
    (6, Happening::PowerCut),
    (14, Happening::Meet),
    (1, Happening::Join),
    (4, Happening::Clock),
    (2, Happening::Reboot),
    (4, Happening::Stranger),
    (1, Happening::Backup),
    (1, Happening::Restore),
    (1, Happening::Clone),
];

impl World {
    /// Lets one thing happen to device `who`; answers with a line for the trace.
    ///
    /// # Errors
    /// The law that was broken.
    pub fn happen(&mut self, who: usize) -> Told<String> {
        let what = self.rng.weighed(WEIGHTS);
        let told = match what {
            Happening::Act => self.somebody_acts(who),
            Happening::Readings => self.probe_reads(who),
            Happening::Work => self.work(who),
            Happening::Suspend => self.suspend(who),
            Happening::Restart => self.restart(who),
            Happening::PowerCut => self.power_cut(who),
            Happening::Meet => self.meets(who),
            Happening::Join => self.joins(who),
            Happening::Clock => self.clock_fault(who),
            Happening::Reboot => self.reboot(who),
            Happening::Stranger => self.stranger_comes(who),
            Happening::Backup => self.back_up(who),
            Happening::Restore => self.restore(who, false),
            Happening::Clone => self.restore(who, true),
        };
        told.map(|told| format!("{what:?}: {told}"))
    }

    /// An act that is likely for what the device knows.
    fn any_act(&mut self, who: usize) -> Told<Act> {
        let held = self.devices[who].entries(self.true_ms)?;
        let picture = Picture::of(&held);
        let keys: Vec<EntryKey> = held.iter().map(|entry| entry.key).collect();
        let now = self.devices[who].moment(self.true_ms).utc_ms;
        if let (true, Some(act)) = (self.rng.chance(40), self.rng.pick(&self.offered)) {
            return Ok(act.clone());
        }
        Ok(Making {
            rng: &mut self.rng,
            picture: &picture,
            keys: &keys,
            now,
        }
        .act())
    }

    fn try_act(
        &mut self,
        who: usize,
        act: &Act,
        token: Option<&str>,
    ) -> Told<Result<Outcome, String>> {
        let now = self.true_ms;
        let device = &mut self.devices[who];
        let (viewer, moment) = (device.viewer(now)?, device.moment(now));
        let door = device.door(now)?;
        let answer = match token {
            Some(token) => door.act_once(token, &viewer, act, &moment),
            None => door.act(&viewer, act, &moment),
        };
        match answer {
            Ok(outcome) => Ok(Ok(outcome)),
            Err(Trouble::Refused { reason }) if !reason.trim().is_empty() => Ok(Err(reason)),
            Err(trouble) => Err(format!("law 1: {act:?} met {trouble:?}")),
        }
    }

    fn somebody_acts(&mut self, who: usize) -> Told<String> {
        let act = self.any_act(who)?;
        let token = format!("form {}", self.rng.any());
        let token = self.rng.chance(20).then_some(token.as_str());
        let outcome = match self.try_act(who, &act, token)? {
            Ok(outcome) => outcome,
            Err(reason) => return Ok(format!("{act:?} is refused: {reason}")),
        };
        self.taken += 1;
        if let Act::Erase { targets } = &act {
            self.erased.extend(targets);
        }
        let recorded = self.note_recorded(who, &outcome.entries)?;
        if recorded != outcome.entries.len() {
            return Err(format!(
                "law 1: {act:?} answered with entries that are not there"
            ));
        }
        if token.is_some() {
            self.posted_twice(who, &act, token, &outcome)?;
        }
        Ok(format!(
            "{act:?} is {} in {} entries",
            outcome.said, recorded
        ))
    }

    /// The same form a second time: the same answer, nothing added.
    fn posted_twice(
        &mut self,
        who: usize,
        act: &Act,
        token: Option<&str>,
        first: &Outcome,
    ) -> Told<()> {
        let count = self.devices[who].entries(self.true_ms)?.len();
        let again = self.try_act(who, act, token)?;
        let same = Outcome {
            repeated: true,
            ..first.clone()
        };
        match again == Ok(same) && self.devices[who].entries(self.true_ms)?.len() == count {
            true => Ok(()),
            false => Err(format!(
                "law 6: the form of {act:?} counted twice: {again:?}"
            )),
        }
    }

    /// Remembers those of `keys` that the device holds as told; answers with how many.
    fn note_recorded(&mut self, who: usize, keys: &[EntryKey]) -> Told<usize> {
        let device = &mut self.devices[who];
        let held: Vec<Entry> = device.entries(self.true_ms)?;
        let found = held.into_iter().filter(|entry| keys.contains(&entry.key));
        let before = device.acked.len();
        device.acked.extend(found.map(|entry| (entry.key, entry)));
        Ok(device.acked.len() - before)
    }

    /// Own entries that no act of a person wrote: sealings, joinings.
    fn note_all(&mut self, who: usize) -> Told<()> {
        let device = &mut self.devices[who];
        for entry in device.entries(self.true_ms)? {
            device.acked.entry(entry.key).or_insert(entry);
        }
        Ok(())
    }

    fn batch(&mut self) -> Vec<SensorReading> {
        let count = self.rng.from_to(1, 60);
        let every = self.rng.from_to(1, 120) * SECOND;
        let sensor = SENSORS[usize::from(self.rng.chance(20))];
        (0..count)
            .map(|i| SensorReading {
                source: PROBE.into(),
                sensor: sensor.into(),
                at: self.true_ms - i * every,
                temp: Mk::from_f(self.rng.from_to(210, 290)),
            })
            .collect()
    }

    fn probe_reads(&mut self, who: usize) -> Told<String> {
        let batch = self.batch();
        let device = &mut self.devices[who];
        device.door(self.true_ms)?;
        match device.hear(&batch, self.true_ms) {
            Ok(()) => Ok(format!("{} readings", batch.len())),
            Err(Trouble::Refused { reason }) if !device.clock.is_right() => {
                Ok(format!("refused: {reason}"))
            }
            Err(trouble) => Err(format!("law 1: readings met {trouble:?}")),
        }
    }

    fn work(&mut self, who: usize) -> Told<String> {
        let steps = self.rng.from_to(1, 5) as u32;
        let device = &mut self.devices[who];
        let moment = device.moment(self.true_ms);
        let more = device.door(self.true_ms)?.work(&moment, steps);
        let more = more.map_err(|trouble| format!("law 1: work met {trouble:?}"))?;
        self.note_all(who)?;
        Ok(format!("{steps} steps, more: {more}"))
    }

    fn suspend(&mut self, who: usize) -> Told<String> {
        let suspended = self.devices[who].door(self.true_ms)?.suspend();
        suspended.map_err(|trouble| format!("law 1: suspending met {trouble:?}"))?;
        Ok("lets go".into())
    }

    fn restart(&mut self, who: usize) -> Told<String> {
        self.devices[who].stop();
        Ok("ends and starts".into())
    }

    fn reboot(&mut self, who: usize) -> Told<String> {
        self.devices[who].stop();
        self.devices[who].clock.reboot(self.true_ms);
        Ok("boots".into())
    }

    fn clock_fault(&mut self, who: usize) -> Told<String> {
        use ClockFault::{Drift, Flight, Jump, Mended, Year1970, Year2099};
        let fault = self.rng.weighed(&[
            (4, Jump),
            (2, Drift),
            (2, Year2099),
            (1, Year1970),
            (4, Mended),
            (2, Flight),
        ]);
        self.devices[who]
            .clock
            .suffer(fault, self.true_ms, &mut self.rng);
        Ok(format!("{fault:?}"))
    }

    fn meets(&mut self, who: usize) -> Told<String> {
        let other = self.rng.below(self.devices.len());
        let way = if self.rng.chance(60) {
            Way::Rough
        } else {
            Way::Whole
        };
        let told = self.give(other, who, way)?;
        Ok(format!("{way:?} of device {other}: {told}"))
    }

    fn joins(&mut self, who: usize) -> Told<String> {
        let (now, other) = (self.true_ms, self.rng.below(self.devices.len()));
        let log = self.devices[other]
            .door(now)?
            .log()
            .map_err(|trouble| trouble.to_string())?;
        let device = &mut self.devices[who];
        let moment = device.moment(now);
        let joined = device.door(now)?.join_crew(log, &moment);
        joined.map_err(|trouble| format!("law 1: joining met {trouble:?}"))?;
        self.note_all(who)?;
        Ok(format!("the crew of device {other}"))
    }

    fn stranger_comes(&mut self, who: usize) -> Told<String> {
        let held = self.devices[who].entries(self.true_ms)?;
        let keys: Vec<EntryKey> = held.iter().map(|entry| entry.key).collect();
        let odd = self
            .stranger
            .write(&Picture::of(&held), &keys, self.true_ms, &mut self.rng);
        let device = &mut self.devices[who];
        let moment = device.moment(self.true_ms);
        let told = device
            .door(self.true_ms)?
            .absorb(std::slice::from_ref(&odd.entry), &moment);
        let told = told.map_err(|trouble| format!("law 6: {} met {trouble:?}", odd.what))?;
        if (told.fresh == 1) != odd.sound || (told.refused == 1) == odd.sound {
            return Err(format!("law 6: {} was told {told:?}", odd.what));
        }
        if odd.sound {
            device.acked.insert(odd.entry.key, odd.entry);
        }
        Ok(odd.what.into())
    }

    /// An act or some work is under way when the power fails; what had been told before is all there.
    fn power_cut(&mut self, who: usize) -> Told<String> {
        self.devices[who].door(self.true_ms)?;
        let act = self.any_act(who)?;
        let before = Files::of(&self.devices[who].folder());
        let working = self.rng.chance(30);
        let under_way = match working {
            true => self.work_untold(who)?,
            false => self
                .try_act(who, &act, None)?
                .map(|outcome| outcome.entries)
                .unwrap_or_default(),
        };
        let after = Files::of(&self.devices[who].folder());
        let torn = before.torn(&after, &mut self.rng);
        self.devices[who].move_house(|folder| torn.put(folder));
        let there = self.note_recorded(who, &under_way)?;
        if there != 0 && there != under_way.len() {
            return Err(format!(
                "law 1: of {act:?}, cut short, {there} of {} entries are there",
                under_way.len()
            ));
        }
        if let (Act::Erase { targets }, true) = (&act, there > 0) {
            self.erased.extend(targets);
        }
        self.note_all(who)?;
        sound(&self.devices[who].file())?;
        let what = if working {
            "work".into()
        } else {
            format!("{act:?}")
        };
        Ok(format!(
            "during {what}; {there} of {} entries are there",
            under_way.len()
        ))
    }

    fn work_untold(&mut self, who: usize) -> Told<Vec<EntryKey>> {
        let device = &mut self.devices[who];
        let moment = device.moment(self.true_ms + MINUTE);
        let worked = device.door(self.true_ms)?.work(&moment, 3);
        worked.map_err(|trouble| format!("law 1: work met {trouble:?}"))?;
        Ok(vec![])
    }

    fn back_up(&mut self, who: usize) -> Told<String> {
        self.note_all(who)?;
        let device = &self.devices[who];
        let backup = Backup {
            files: Files::of(&device.folder()),
            acked: device.acked.clone(),
        };
        self.backups.insert(who, backup);
        Ok("is made".into())
    }

    /// The device goes on from its backup, as itself or, as a new installation, under a new name.
    fn restore(&mut self, who: usize, as_new: bool) -> Told<String> {
        let Some(backup) = self.backups.get(&who).cloned() else {
            return Ok("has no backup".into());
        };
        let device = &mut self.devices[who];
        device.move_house(|folder| backup.files.put(folder));
        device.acked = backup.acked;
        device.ordinals.clear();
        if as_new {
            device.install.push('+');
        }
        self.forked |= !as_new;
        Ok("from its backup".into())
    }
}

fn sound(file: &std::path::Path) -> Told<()> {
    let look = || {
        let conn = rusqlite::Connection::open(file)?;
        conn.query_row("PRAGMA integrity_check", [], |row| row.get::<_, String>(0))
    };
    match look() {
        Ok(said) if said == "ok" => Ok(()),
        other => Err(format!(
            "law 1: the file is not sound after a power cut: {other:?}"
        )),
    }
}
