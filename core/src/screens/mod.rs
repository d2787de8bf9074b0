//! What the shells show: plain records with ready-to-show text. A shell renders them and passes back the acts on them.
//!
//! Start at [`pitside()`]. Each screen says until when it is true (`until`, milliseconds since 1970); after that, ask
//! again. Screens are pure functions of what is known, the viewer and the moment: the same three give the same bytes.

mod begin;
mod buttons;
mod card;
mod cautions;
mod check;
mod cut;
mod cuts;
mod frame;
mod glance;
mod happened;
mod headline;
mod headline_acts;
mod kinds;
mod meant;
mod meat_line;
mod names;
mod night;
mod notices;
mod orphans;
mod piece;
mod pit_line;
mod pitside;
mod probes;
mod readings;
mod records;
mod ring_answers;
mod settings;
mod stages;
mod start;
#[cfg(test)]
mod tests;
mod thermometers;
mod timeline;
mod verdict_text;
mod viewer_choices;
mod warnings;
mod watch;
mod why;

pub use begin::{BeginMeat, BeginScreen, NewPit, begin};
pub use card::{CardScreen, card, card_words};
pub use check::check;
pub use cut::cut;
pub use cuts::{cuts, the_cut};
pub use frame::{Frame, frame};
pub use night::night;
pub use piece::piece;
pub use pitside::{UNDO_SHOWN_MS, pitside};
pub use probes::{
    NearbyProbe, ProbeCard, ProbesNotice, ProbesScreen, RadioFix, RadioTrouble, probes,
};
pub use readings::*;
pub use records::*;
pub(crate) use ring_answers::ring_answers;
pub use settings::settings;
pub use start::{StartInput, start};
pub use thermometers::*;
pub use timeline::timeline;
