//! What the shells show: plain records with ready-to-show text. A shell renders them and passes back the acts on them.
//!
//! Start at [`pitside()`]. Each screen says until when it is true (`until`, milliseconds since 1970); after that, ask
//! again. Screens are pure functions of what is known, the viewer and the moment: the same three give the same bytes.

mod ahead;
mod begin;
mod buttons;
mod card;
mod cautions;
mod check;
mod cut;
mod cuts;
mod dishes;
mod doubts;
mod fire;
mod fire_out;
mod frame;
mod glance;
mod handover;
mod happened;
mod headline;
mod headline_acts;
mod kinds;
mod kitchen;
mod meant;
mod meat_line;
mod meat_slips;
mod names;
mod night;
mod notices;
mod open_at_end;
mod opening;
mod orphans;
mod piece;
mod pit_line;
mod pits;
mod pitside;
mod probes;
mod readings;
mod records;
mod ring_answers;
mod settings;
mod sheet;
mod slip;
mod stages;
mod start;
mod temp_log;
#[cfg(test)]
mod tests;
mod thermometers;
mod timeline;
mod trouble;
mod undone;
mod verdict_text;
mod viewer_choices;
mod warnings;
mod watch;
mod why;
mod write;
mod zone;

pub use ahead::{AheadCard, AheadChoice};
pub use begin::{BeginLabels, BeginMeat, BeginScreen, NewPit, begin};
pub use card::{CardLabels, CardScreen, card, card_words};
pub use check::check;
pub use cut::cut;
pub use cuts::{cuts, the_cut};
pub use dishes::{DishCard, DishLabels, DishesScreen, dishes};
pub use fire::{FIRES_PAST, FireGroup, FireScreen, FireStep, fire};
pub use fire_out::{FireOutMeat, FireOutScreen, fire_out_screen};
pub use frame::{Frame, frame};
pub use handover::{WatchScreen, watch};
pub use kitchen::{
    KitchenGroup, KitchenLine, KitchenPart, KitchenScreen, KitchenSheet, Last, LastTime, kitchen,
    kitchen_sheet, last_time,
};
pub use night::night;
pub use opening::{OpeningChoice, OpeningDoes, OpeningLabels, OpeningMeat, OpeningScreen, opening};
pub use piece::piece;
pub use pits::{PitCard, PitsLabels, PitsScreen, PlacedMeat, pits};
pub use pitside::{UNDO_SHOWN_MS, pitside};
pub use probes::{
    NearbyProbe, ProbeCard, ProbesNotice, ProbesScreen, RadioFix, RadioTrouble, probes,
};
pub use readings::*;
pub use records::*;
pub(crate) use ring_answers::ring_answers;
pub use settings::settings;
pub(crate) use sheet::sheet_ring;
pub use sheet::{
    HandOutScreen, OtherPlan, PlanLabels, PlanProposal, PlanScreen, PlanTyped, RunSheetScreen,
    SheetDay, SheetFits, SheetLabels, SheetLine, StudentSheet, hand_out, plan, run_sheet,
};
pub use slip::{Slip, SlipField, SlipKind, SlipOption};
pub use start::{StartInput, start};
pub use temp_log::{PROBE_EVERY_MS, ProbeRead, TempLogRow, TempLogScreen, temp_log};
pub use thermometers::*;
pub use timeline::timeline;
pub use trouble::{TroubleCard, TroubleKind, TroubleScreen, trouble};
pub use write::{WriteScreen, write_down};
pub(crate) use zone::zone_why;
