//! The records of an opening.

use crate::{
    ids::{CookId, PieceId, PitId},
    screens::{Caution, Line, Link, TestForm, ThermometerChoice, Weight, records::records},
};
use serde::{Deserialize, Serialize};

/// What can be done to a meat while its pit is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum OpeningDoes {
    /// Mop or spritz it.
    Wet,
    /// Mop it with a mop and bowl that touch nothing else.
    WetApart,
    /// Turn it.
    Turn,
    /// Glaze it.
    Glaze,
    /// A fingertip came away clean.
    RubSet,
    /// It did not. One of this and the one before.
    RubNotYet,
}

records! {
    /// One opening of a pit: every meat on it, what is due chosen already, confirmed once.
    OpeningScreen {
        /** Which pit. */ pit: PitId,
        /** The cook it is seen from. */ cook: CookId,
        /** Heading. */ title: String,
        /** How the pit stands. */ state: Line,
        /** What this opening does, in one sentence. */ lead: String,
        /** What to do in which order, so that the lid is off for the shortest time. */ order: Vec<String>,
        /** What comes next at this pit, if anything does. */ after: Option<String>,
        /** The meats, in the order to do them. */ meats: Vec<OpeningMeat>,
        /** Thermometers to choose from. */ thermometers: Vec<ThermometerChoice>,
        /** The labels of the form. */ labels: OpeningLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One meat in an opening.
    OpeningMeat {
        /** Which one. */ piece: PieceId,
        /** What it is called. */ name: String,
        /** What is due of it, in words. */ state: String,
        /** Where it sits, how warm it was last. */ detail: String,
        /** How much it asks for an eye. */ weight: Weight,
        /** What can be done to it. */ choices: Vec<OpeningChoice>,
        /** Its tests, the same as on the screen of its check. */ tests: Vec<TestForm>,
        /** Whether a check of it is due. */ tests_due: bool,
    }
    /// Something to choose for a meat.
    OpeningChoice {
        /** What. */ does: OpeningDoes,
        /** What it says. */ label: String,
        /** Whether it is chosen already, because it is due. */ chosen: bool,
    }
    /// The labels of the form of an opening.
    OpeningLabels {
        /** Heading of the order. */ order: String,
        /** What opens the tests of a meat. */ tests: String,
        /** Label of a note on a meat. */ note: String,
        /** Label of the thermometer. */ thermometer: String,
        /** A thermometer that is not listed. */ other_thermometer: String,
        /** Label of the switch for a probe that stays in. */ left_in: String,
        /** The button that records all of it. */ submit: String,
    }
}
