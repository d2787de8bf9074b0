//! The slow part, in bounded steps, for the shell's background executor.

use super::Slowbend;
use crate::{error::Trouble, moment::Moment, store::Group};

/// A group is cached again after so many entries.
const CACHE_EVERY: i64 = 32;

impl Slowbend {
    /// Does up to `steps` steps; answers whether there is more to do.
    ///
    /// A step is one of: writing waiting readings, sealing a series, caching a group, a checkpoint, a step of a forecast.
    /// Between two steps everything is as durable as before the first. A step of a forecast is the heaviest, some tens of
    /// milliseconds: it comes last, and it ends the call, so that others may use the door before the next.
    ///
    /// # Errors
    /// The disk's trouble; what was done before it stays done.
    pub fn work(&mut self, moment: &Moment, steps: u32) -> Result<bool, Trouble> {
        let more = self.do_work(moment, steps);
        self.heed(more)
    }

    fn do_work(&mut self, moment: &Moment, steps: u32) -> Result<bool, Trouble> {
        self.store()?;
        self.notice_clock(moment);
        self.flush_readings()?;
        for _ in 0..steps {
            if !self.step(moment)? {
                return self.last_step(moment);
            }
        }
        Ok(true)
    }

    fn last_step(&mut self, moment: &Moment) -> Result<bool, Trouble> {
        let more = self.forecast_one(moment)?;
        if !more {
            self.store()?.checkpoint()?;
        }
        Ok(more)
    }

    fn step(&mut self, moment: &Moment) -> Result<bool, Trouble> {
        Ok(self.seal_one(moment)? || self.cache_one()?)
    }

    fn cache_one(&mut self) -> Result<bool, Trouble> {
        let stale = self
            .marks
            .iter()
            .find(|(_, mark)| mark.since_cached >= CACHE_EVERY);
        let Some((&group, &mark)) = stale else {
            return Ok(false);
        };
        let store = self.store.as_ref().expect("work opened it");
        match group {
            Group::Crew => store.put_cached(group, mark.seq, &(&self.crew, mark.last))?,
            Group::Cook(id) => {
                if let Some(cook) = self.cooks.get(&id) {
                    store.put_cached(group, mark.seq, &(cook, mark.last))?;
                }
            }
        }
        self.marks.entry(group).or_default().since_cached = 0;
        Ok(true)
    }
}
