//! What stands around every native screen: headings and buttons that belong to no cook. Asked once for each viewer.

use super::{SlipOption, slip::ago_options};
use crate::words::{Viewer, Words};
use serde::{Deserialize, Serialize};

/// The headings and buttons of a shell.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Frame {
    /// Heading of the meats.
    pub meats: String,
    /// Heading of the pits.
    pub pits: String,
    /// Heading of what comes next.
    pub next: String,
    /// Heading of who answers what rings.
    pub watch: String,
    /// Heading of the acts that are always at hand.
    pub at_hand: String,
    /// Heading of the facts of a meat.
    pub facts: String,
    /// Heading of the checks of a meat.
    pub checks: String,
    /// Before the time of the next check.
    pub check_next: String,
    /// The button for the settings.
    pub settings: String,
    /// The button for the probes.
    pub probes: String,
    /// Heading of past cooks.
    pub past: String,
    /// The button for the page before.
    pub earlier: String,
    /// Label of a meat's cut.
    pub cut: String,
    /// No meat in this row.
    pub no_meat: String,
    /// No pit is chosen.
    pub no_pit: String,
    /// The button for one more row.
    pub another_meat: String,
    /// How the serving time is typed.
    pub serve_how: String,
    /// Label of the thermometer.
    pub thermometer: String,
    /// A thermometer that is not listed.
    pub other_thermometer: String,
    /// Label of the switch for a probe that stays in.
    pub left_in: String,
    /// The button that does what was asked about.
    pub go_on: String,
    /// The button that does not.
    pub leave_it: String,
    /// The button to where one came from.
    pub back: String,
    /// The button after a trouble.
    pub again: String,
    /// Heading of a trouble.
    pub stopped: String,
    /// Label of which hand taps.
    pub hand: String,
    /// The right hand.
    pub hand_right: String,
    /// The left hand.
    pub hand_left: String,
    /// Label of how long ago something was done.
    pub when_done: String,
    /// How long ago it may have been: minutes as text, and in words.
    pub ago: Vec<SlipOption>,
    /// Heading of the page that takes a card.
    pub card: String,
    /// How a card is handed in.
    pub card_how: String,
    /// Label of the card's text.
    pub card_text: String,
    /// The button that chooses its file.
    pub card_file: String,
    /// The button that reads it.
    pub card_read: String,
    /// Heading of what else can be said about a meat.
    pub more_of_it: String,
    /// How much a line asks for an eye, for who hears the screen.
    pub weight_wake: String,
    /// The same: it is due.
    pub weight_call: String,
    /// The same: it comes soon.
    pub weight_soon: String,
    /// The same: it is well.
    pub weight_calm: String,
    /// The same: it is over or was taken back.
    pub weight_faint: String,
}

/// The headings and buttons in the viewer's language.
pub fn frame(viewer: &Viewer) -> Frame {
    let say = Words::of(viewer);
    Frame {
        meats: say.text("frame-meats"),
        pits: say.text("frame-pits"),
        next: say.text("frame-next"),
        watch: say.text("frame-watch"),
        at_hand: say.text("frame-at-hand"),
        facts: say.text("frame-facts"),
        checks: say.text("frame-checks"),
        check_next: say.text("frame-check-next"),
        settings: say.text("frame-settings"),
        probes: say.text("hearing-title"),
        past: say.text("frame-past"),
        earlier: say.text("frame-earlier"),
        cut: say.text("frame-cut"),
        no_meat: say.text("frame-no-meat"),
        no_pit: say.text("frame-no-pit"),
        another_meat: say.text("frame-another-meat"),
        serve_how: say.text("frame-serve-how"),
        thermometer: say.text("frame-thermometer"),
        other_thermometer: say.text("frame-other-thermometer"),
        left_in: say.text("frame-left-in"),
        go_on: say.text("frame-go-on"),
        leave_it: say.text("frame-leave-it"),
        back: say.text("frame-back"),
        again: say.text("frame-again"),
        stopped: say.text("frame-stopped"),
        hand: say.text("frame-hand"),
        hand_right: say.text("frame-hand-right"),
        hand_left: say.text("frame-hand-left"),
        when_done: say.text("slip-when-done"),
        ago: ago_options(&say),
        card: say.text("begin-take-title"),
        card_how: say.text("begin-take-lead"),
        card_text: say.text("begin-take-text"),
        card_file: say.text("begin-take-file"),
        card_read: say.text("begin-take"),
        more_of_it: say.text("slip-more-of-it"),
        weight_wake: say.text("frame-weight-wake"),
        weight_call: say.text("frame-weight-call"),
        weight_soon: say.text("frame-weight-soon"),
        weight_calm: say.text("frame-weight-calm"),
        weight_faint: say.text("frame-weight-faint"),
    }
}
