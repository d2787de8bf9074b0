//! The records of the screen of probes. Text is ready to show.

use crate::screens::{Button, Line};
use serde::{Deserialize, Serialize};

macro_rules! records {
    ($($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident : $kind:ty),* $(,)? })*) => { $(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(feature = "ffi", derive(uniffi::Record))]
        pub struct $name { $($(#[$field_doc])* pub $field: $kind),* }
    )* };
}

/// What mends a radio.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum RadioFix {
    /// Ask the person for the permission.
    Allow,
    /// Open the permissions of Slowbend in the settings of the platform.
    OpenPermissions,
    /// Open the settings of the location.
    OpenLocation,
    /// Open the settings of Bluetooth.
    SwitchOn,
}

records! {
    /// Probes: which are known, where they sit, what they said last, and how to find more.
    ProbesScreen {
        /** Heading. */ title: String,
        /** Which probes can be heard. */ lead: String,
        /** What keeps probes from being found or heard, if anything does. */ trouble: Option<RadioTrouble>,
        /** The label that begins to look for probes, or stops it. */ look: String,
        /** The known sensors, those that ask for an eye first. */ probes: Vec<ProbeCard>,
        /** Heading of what was found. */ nearby_heading: String,
        /** What was found and is not kept. */ nearby: Vec<NearbyProbe>,
        /** What to say while nothing is found, if so. */ nearby_none: Option<String>,
        /** What a shell keeps in sight of the person while it listens. */ notice: ProbesNotice,
        /** Whether a cook is under way, so that probes are to be heard. */ listen: bool,
        /** When the next probe will have fallen silent if it says nothing more, milliseconds since 1970. */ silent_at: Option<i64>,
        /** Until when this is true. */ until: i64,
    }
    /// What keeps probes from being found or heard.
    RadioTrouble { /** What it is. */ text: String, /** What mends it, if anything does. */ fix: Option<RadioFix>, /** The label of that. */ label: String }
    /// One known sensor.
    ProbeCard {
        /** The instrument. */ source: String,
        /** Its channel; empty as long as it was not reached. */ sensor: String,
        /** Where it sits, what it said last and how long ago, what is wrong. */ line: Line,
        /** The question to the places. */ ask: String,
        /** Where it can sit, each with the act that says so; the place where it sits is not among them. */ places: Vec<Button>,
        /** The label that lets the device forget the instrument; none where it does not keep it. */ forget: Option<String>,
    }
    /// One instrument that was found.
    NearbyProbe { /** Its name in readings. */ source: String, /** What it calls itself. */ name: String, /** The rest of it. */ detail: String, /** The label that keeps it. */ keep: String }
    /// A notice in few words, with times of the clock, so that it stays true while nobody writes it anew.
    ProbesNotice { /** The sum of it. */ title: String, /** One line for each sensor, and for what keeps them from being heard. */ lines: Vec<String> }
}
