//! What must ring on this device.

use super::{Slowbend, clock::MOVED_MS};
use crate::{
    acts::{Act, Outcome},
    alarms::{AlarmId, AlarmList, Rings, Rung, Urgency, rings, said, standing},
    error::{Refused, Trouble},
    moment::{HOUR, Moment},
    words::{Viewer, Words},
};

/// What rang longer ago than this is of no concern to any alarm: 14 days, as far ahead as a serving time may lie.
const RUNG_KEPT_MS: i64 = 14 * 24 * HOUR;

impl Slowbend {
    /// The ordered list of what must ring, at most `limit` (1 to 60) long: a shell makes the platform's list equal to it
    /// after each act, each start, and each change of clock or zone.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn alarms(
        &mut self,
        viewer: &Viewer,
        moment: &Moment,
        limit: u32,
    ) -> Result<AlarmList, Trouble> {
        let rings = self.rings(moment, limit)?;
        Ok(said(&self.known(), viewer, &rings, moment))
    }

    /// The same list, before it is put into words.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn rings(&mut self, moment: &Moment, limit: u32) -> Result<Rings, Trouble> {
        self.notice_clock(moment);
        let rung = self.rung(moment);
        let rung = self.heed(rung)?;
        Ok(rings(
            &self.known(),
            &rung,
            moment.utc_ms,
            limit.clamp(1, 60) as usize,
        ))
    }

    /// Of `ids`, those whose ring still stands: what a shell shows for the others is taken away.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn standing(&mut self, ids: &[AlarmId], moment: &Moment) -> Result<Vec<AlarmId>, Trouble> {
        self.notice_clock(moment);
        let rung = self.rung(moment);
        let rung = self.heed(rung)?;
        Ok(standing(&self.known(), &rung, moment.utc_ms, ids))
    }

    /// Records the act of an [`Answer`](crate::alarms::Answer), once for each `token`, at the moment it was given: a shell
    /// may have had to keep it since.
    ///
    /// # Errors
    /// As [`act`](Self::act); [`Trouble::Refused`] also where `act` is not an answer's text.
    pub fn answer(
        &mut self,
        token: &str,
        viewer: &Viewer,
        act: &str,
        moment: &Moment,
    ) -> Result<Outcome, Trouble> {
        let act: Act = serde_json::from_str(act)
            .map_err(|_| Refused::new(Words::of(viewer).text("door-no-answer")))?;
        self.act_once(token, viewer, &act, moment)
    }

    /// Records, durably, that these rang on this device. Names that are not known do no harm.
    ///
    /// # Errors
    /// The disk's trouble; then they will ring again.
    pub fn rang(&mut self, ids: &[AlarmId], moment: &Moment) -> Result<(), Trouble> {
        let listed = self.rings(moment, 60)?;
        let is_call = |id: &AlarmId| {
            listed
                .rings
                .iter()
                .any(|ring| ring.urgency == Urgency::Call && ring.covers.contains(id))
        };
        let (calls, others): (Vec<AlarmId>, Vec<AlarmId>) = ids.iter().partition(|id| is_call(id));
        let store = self.store()?;
        store.put_rung(&bytes(&calls), moment.utc_ms, true)?;
        Ok(store.put_rung(&bytes(&others), moment.utc_ms, false)?)
    }

    /// What rang, as far as the present clock has come. What rang ahead of it rang by a clock that was put back since:
    /// it is forgotten for good, or it would silence its alarm, and hold back every call, until that time comes again.
    fn rung(&mut self, moment: &Moment) -> Result<Rung, Trouble> {
        let ahead = moment.utc_ms.saturating_add(MOVED_MS);
        let store = self.store()?;
        store.forget_rung_after(ahead)?;
        let rung = store.rung_since(moment.utc_ms.saturating_sub(RUNG_KEPT_MS))?;
        Ok(rung
            .into_iter()
            .map(|(id, what)| (AlarmId(id), what))
            .collect())
    }
}

fn bytes(ids: &[AlarmId]) -> Vec<[u8; 16]> {
    ids.iter().map(|id| id.0).collect()
}
