//! `slowbend export`: every entry as JSON lines.

use super::{end::End, open::open, out::Out};
use std::{
    fs::File,
    io::{self, BufWriter, Write},
    path::{Path, PathBuf},
};

/// Writes all entries to `to`, or to standard output.
///
/// # Errors
/// Where the database cannot be read, the file is there already, or it cannot be written.
pub fn run(data: Option<PathBuf>, to: Option<PathBuf>) -> Result<(), End> {
    let mut opened = open(data)?;
    let count = match to.filter(|to| to.as_os_str() != "-") {
        Some(to) => {
            let file = File::create_new(&to).map_err(|error| cannot_make(&to, &error))?;
            let mut out = BufWriter::new(file);
            let count = opened.door.export(&mut out)?;
            let file = out
                .into_inner()
                .map_err(|error| cannot_write(error.error()))?;
            file.sync_all().map_err(|error| cannot_write(&error))?;
            count
        }
        None => {
            let mut out = Out::to(BufWriter::new(io::stdout().lock()));
            let count = opened.door.export(&mut out)?;
            out.flush().map_err(|error| cannot_write(&error))?;
            if out.is_closed {
                return Ok(());
            }
            count
        }
    };
    eprintln!("Exported {count} entries.");
    Ok(())
}

fn cannot_make(to: &Path, error: &io::Error) -> End {
    End::refused(match error.kind() {
        io::ErrorKind::AlreadyExists => {
            format!(
                "{} is there already. Choose another name, or move it away first.",
                to.display()
            )
        }
        _ => format!(
            "{} cannot be made ({error}). Choose another file.",
            to.display()
        ),
    })
}

fn cannot_write(error: &io::Error) -> End {
    End::refused(format!(
        "The export could not be written to its end ({error}). Make room and export again."
    ))
}
