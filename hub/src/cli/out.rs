//! Standard output, whose reader may leave before the end. Start at [`print()`].

use std::io::{self, Write};

/// Prints `text`; a reader that is gone is no error.
///
/// # Errors
/// Where standard output cannot be written otherwise.
pub fn print(text: &str) -> io::Result<()> {
    let mut out = Out::to(io::stdout().lock());
    out.write_all(text.as_bytes())?;
    out.flush()
}

/// Writes until the reader at the other end has had enough, as `head` has: that is no error, and what follows is let go.
pub struct Out<W> {
    out: W,
    /// Whether the reader is gone.
    pub is_closed: bool,
}

impl<W: Write> Out<W> {
    /// Around `out`.
    pub const fn to(out: W) -> Self {
        Self {
            out,
            is_closed: false,
        }
    }

    fn quietly<T>(&mut self, done: io::Result<T>, instead: T) -> io::Result<T> {
        match done {
            Err(error) if error.kind() == io::ErrorKind::BrokenPipe => {
                self.is_closed = true;
                Ok(instead)
            }
            done => done,
        }
    }
}

impl<W: Write> Write for Out<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        if self.is_closed {
            return Ok(bytes.len());
        }
        let done = self.out.write(bytes);
        self.quietly(done, bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        if self.is_closed {
            return Ok(());
        }
        let done = self.out.flush();
        self.quietly(done, ())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Takes so many bytes, then is gone.
    struct Pipe(usize);

    impl Write for Pipe {
        fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
            let taken = bytes.len().min(self.0);
            self.0 -= taken;
            match taken {
                0 => Err(io::ErrorKind::BrokenPipe.into()),
                _ => Ok(taken),
            }
        }

        fn flush(&mut self) -> io::Result<()> {
            Ok(())
        }
    }

    #[test]
    fn a_reader_that_has_had_enough_is_no_error() {
        let mut out = Out::to(Pipe(5));
        for _ in 0..3 {
            out.write_all(b"entry\n").unwrap();
        }
        out.flush().unwrap();
        assert!(out.is_closed);
        let mut enough = Out::to(Pipe(100));
        enough.write_all(b"entry\n").unwrap();
        assert!(!enough.is_closed);
    }
}
