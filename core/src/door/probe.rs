//! Words of Bluetooth probes: decoded here, so that a shell passes bytes and knows nothing of them.

use super::{SensorReading, Slowbend};
use crate::{
    error::{Refused, Trouble},
    moment::Moment,
    probes,
    readings::Told,
};

impl Slowbend {
    /// Takes the value `bytes` of a Bluetooth characteristic that `sensor` of `source` sent, and answers the reading that
    /// was taken of it, as [`readings`](Self::readings) takes it; none where the probe says no temperature. What can be
    /// read and when it was are in [`probes`]; why there is no reading, in the viewer's language, says
    /// [`probes::why_none`].
    ///
    /// # Errors
    /// [`Trouble::Refused`] where the bytes or the names are not sound, or the disk's trouble; then nothing was taken.
    pub fn probe_word(
        &mut self,
        source: &str,
        sensor: &str,
        characteristic: u16,
        bytes: &[u8],
        moment: &Moment,
    ) -> Result<Option<SensorReading>, Trouble> {
        let heard = probes::heard(characteristic, bytes, moment)
            .map_err(|not| Refused::new(not.reason()))?;
        let reading = heard.map(|heard| SensorReading {
            source: source.into(),
            sensor: sensor.into(),
            at: heard.at,
            temp: heard.temp,
        });
        self.readings(reading.as_slice(), moment)?;
        Ok(reading)
    }
}
