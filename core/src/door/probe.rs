//! Words of Bluetooth probes: decoded here, so that a shell passes bytes and knows nothing of them.

use super::{SensorReading, Slowbend};
use crate::{
    error::{Refused, Trouble},
    moment::Moment,
    probes::{self, HeardWord},
    readings::Told,
    words::Viewer,
};
use serde::{Deserialize, Serialize};

/// What became of one word of a sensor.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct WordTaken {
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// The reading that was taken, if one was.
    pub reading: Option<SensorReading>,
    /// Why none was taken and what to do, in the viewer's language; none where one was.
    pub why_none: Option<String>,
}

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

    /// Takes many words of sensors, each as heard at its own moment, and answers what became of each. A word that is not
    /// sound takes nothing from the others.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where a name is not sound, or the disk's trouble; then nothing was taken.
    pub fn probe_words(
        &mut self,
        viewer: &Viewer,
        words: &[HeardWord],
        moment: &Moment,
    ) -> Result<Vec<WordTaken>, Trouble> {
        let taken: Vec<_> = words.iter().map(|word| take(viewer, word)).collect();
        let batch: Vec<_> = taken.iter().filter_map(|one| one.reading.clone()).collect();
        self.readings(&batch, moment)?;
        Ok(taken)
    }
}

fn take(viewer: &Viewer, word: &HeardWord) -> WordTaken {
    let heard = probes::heard(word.characteristic, &word.bytes, &word.heard);
    let reading = heard.ok().flatten().map(|heard| SensorReading {
        source: word.source.clone(),
        sensor: word.sensor.clone(),
        at: heard.at,
        temp: heard.temp,
    });
    let why = || probes::why_none(viewer, word.characteristic, &word.bytes, &word.heard);
    WordTaken {
        source: word.source.clone(),
        sensor: word.sensor.clone(),
        why_none: reading.is_none().then(why).flatten(),
        reading,
    }
}
