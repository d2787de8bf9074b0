//! What the shells show: plain records with ready-to-show text. A shell renders them and passes back the acts on them.
//!
//! Each screen says until when it is true (`until`, milliseconds since 1970); after that, ask again. Screens are pure
//! functions of what is known, the viewer and the moment: the same three give the same bytes.

mod records;

pub use records::*;
