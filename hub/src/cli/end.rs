//! How a command ends when it could not do as asked: a sentence on standard error, and a code that scripts can tell apart.

use slowbend_core::error::{Refused, Trouble};
use std::process::ExitCode;

/// The exit codes, for the help.
pub const CODES: &str = "Exit codes: 0 done; 1 refused, and the sentence says what to do instead; 2 the command line itself; \
                         3 the database is in use; 4 it cannot be written; 5 a newer Slowbend wrote it; 6 it cannot be read.";

const IN_USE: &str = "Slowbend is already running on this database, or another program has it open. Use the page that is \
                      open (it also takes files of readings, under “Write down”), or stop the other one with Ctrl-C and do \
                      this again. To run a second one beside it: slowbend --data OTHER-FOLDER --port 7411";

/// Why a command ended early.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum End {
    /// Something in the command or its input.
    Refused(String),
    /// The database.
    Trouble(Trouble),
}

impl End {
    /// A refusal that reads `reason`.
    pub fn refused(reason: impl Into<String>) -> Self {
        Self::Refused(reason.into())
    }

    /// The sentence to show. What uses the database is most often the home post itself, so that is said first.
    pub fn reason(&self) -> &str {
        match self {
            Self::Refused(reason) => reason,
            Self::Trouble(Trouble::InUse { .. }) => IN_USE,
            Self::Trouble(trouble) => trouble.reason(),
        }
    }

    /// The exit code.
    pub fn code(&self) -> ExitCode {
        ExitCode::from(self.number())
    }

    const fn number(&self) -> u8 {
        match self {
            Self::Refused(_) | Self::Trouble(Trouble::Refused { .. }) => 1,
            Self::Trouble(Trouble::InUse { .. }) => 3,
            Self::Trouble(Trouble::CannotWrite { .. }) => 4,
            Self::Trouble(Trouble::Newer { .. }) => 5,
            Self::Trouble(Trouble::Unreadable { .. }) => 6,
        }
    }
}

impl From<std::io::Error> for End {
    fn from(error: std::io::Error) -> Self {
        Self::Refused(format!(
            "The answer could not be written ({error}). Make room, or send it elsewhere."
        ))
    }
}

impl From<Trouble> for End {
    fn from(trouble: Trouble) -> Self {
        Self::Trouble(trouble)
    }
}

impl From<Refused> for End {
    fn from(refused: Refused) -> Self {
        Self::Refused(refused.reason)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_of_trouble_has_the_code_that_the_help_names() {
        let reason = String::from("why");
        let of = |trouble| End::from(trouble).number();
        assert_eq!(End::refused("why").number(), 1);
        assert_eq!(
            of(Trouble::Refused {
                reason: reason.clone()
            }),
            1
        );
        assert_eq!(
            of(Trouble::InUse {
                reason: reason.clone()
            }),
            3
        );
        assert_eq!(
            of(Trouble::CannotWrite {
                reason: reason.clone()
            }),
            4
        );
        assert_eq!(
            of(Trouble::Newer {
                reason: reason.clone()
            }),
            5
        );
        assert_eq!(of(Trouble::Unreadable { reason }), 6);
        for code in 0..=6 {
            assert!(CODES.contains(&format!("{code} ")), "{code}");
        }
    }
}
