//! The records of the temperature log.

use crate::{
    ids::CookId,
    screens::{Link, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// The temperatures that were read in a cook, and what was done about them, to be printed or kept as a file.
    TempLogScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** The cook, when it was, whose limits hold, what is left out. */ about: Vec<String>,
        /** Time, item, temperature, thermometer, who, corrective action. */ columns: Vec<String>,
        /** The rows, oldest first. */ rows: Vec<TempLogRow>,
        /** That nothing was read; empty where something was. */ none: String,
        /** Lines to be signed on paper. */ sign: Vec<String>,
        /** How it is printed. */ print: String,
        /** The link to the file. */ download: String,
        /** What the file is called. */ file_name: String,
        /** The file: comma-separated values with a heading row (RFC 4180). */ csv: String,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// One line of the log.
    TempLogRow {
        /** When, milliseconds since 1970. */ at: i64,
        /** When, in the viewer's zone. */ when: String,
        /** What was read, and where in it. */ item: String,
        /** How hot; empty where nothing was read. */ temperature: String,
        /** By what, and whether that was checked. */ thermometer: String,
        /** Who. */ who: String,
        /** What was done; empty where it was only read. */ action: String,
    }
}

impl TempLogRow {
    /// What stands under the columns, in their order.
    pub fn cells(&self) -> [&str; 6] {
        [
            &self.when,
            &self.item,
            &self.temperature,
            &self.thermometer,
            &self.who,
            &self.action,
        ]
    }
}
