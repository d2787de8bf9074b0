//! What a shell knows of its radio and of the probes around it. It says so; what that means to a person is said by
//! [`screens::probes`](crate::screens::probes()).

use crate::moment::Moment;
use serde::{Deserialize, Serialize};

/// Whether probes can be looked for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum RadioState {
    /// They can be.
    #[default]
    Ready,
    /// The device has no Bluetooth Low Energy.
    Missing,
    /// The person did not allow Bluetooth.
    Refused,
    /// Finding needs the permission for the location here, and the person did not give it.
    LocationRefused,
    /// Finding needs the location switched on here, and it is off.
    LocationOff,
    /// Bluetooth is off.
    Off,
}

/// How far a shell has come with an instrument.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Reach {
    /// It was found and is not kept.
    Nearby,
    /// It is kept, and not reached yet or no longer.
    Reaching,
    /// It is linked and may speak.
    Linked,
    /// It was reached and has no sensor of the two services that says its temperature on its own.
    Foreign,
}

/// One instrument that a shell found, or keeps to be heard again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct HeardSource {
    /// Its name in readings: the same on every device of the crew, 1 to 80 characters.
    pub source: String,
    /// What it calls itself; empty where it does not say.
    pub name: String,
    /// How far the shell has come with it.
    pub reach: Reach,
    /// Its sensors, as far as they are known.
    pub sensors: Vec<String>,
    /// What was wrong with its last word, as `probe_words` said.
    pub trouble: Option<String>,
}

/// All that a shell knows of its radio.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Hearing {
    /// Whether probes can be looked for.
    pub radio: RadioState,
    /// The person was asked and the platform asks no more: only its settings help.
    pub asked_in_vain: bool,
    /// Whether they are being looked for.
    pub looking: bool,
    /// What was found and what is kept, each once.
    pub sources: Vec<HeardSource>,
}

/// What a sensor sent, as it was heard.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct HeardWord {
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// The 16-bit number of the characteristic.
    pub characteristic: u16,
    /// Its value.
    pub bytes: Vec<u8>,
    /// When it was heard.
    pub heard: Moment,
}
