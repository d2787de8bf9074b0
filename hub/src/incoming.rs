//! What comes with a form that has a file in it. The file goes to the disk as it comes, under no name, so that the system
//! lets it go with the program whatever happens. Start at [`Sent::of`].

use crate::{forms::file::ROWS_BYTES_MAX, home::Home, once, typed::Typed};
use axum::{
    Form,
    extract::{FromRequest, Multipart, Request, multipart::Field},
    http::header,
};
use std::{
    collections::VecDeque,
    fs::File,
    io::{self, Read, Seek, Write},
    path::Path,
    sync::{Mutex, PoisonError},
};

/// How many wait for the answer to what they left open.
const WAITING: usize = 4;

/// A file that came.
#[derive(Debug)]
pub struct Incoming {
    /// What it was called where it came from.
    pub name: String,
    /// How long it is.
    pub bytes: u64,
    file: File,
}

impl Incoming {
    fn empty(name: &str, folder: &Path) -> io::Result<Self> {
        Ok(Self {
            name: name.to_owned(),
            bytes: 0,
            file: tempfile::tempfile_in(folder)?,
        })
    }

    fn take(&mut self, part: &[u8]) -> io::Result<()> {
        self.bytes += part.len() as u64;
        self.file.write_all(part)
    }

    /// Its first `most` bytes; afterwards it stands at its beginning again.
    ///
    /// # Errors
    /// The disk's.
    pub fn head(&mut self, most: usize) -> io::Result<Vec<u8>> {
        self.file.rewind()?;
        let mut head = vec![];
        (&mut self.file).take(most as u64).read_to_end(&mut head)?;
        self.file.rewind()?;
        Ok(head)
    }

    /// What it is called without its ending.
    pub fn stem(&self) -> &str {
        self.name
            .rsplit_once('.')
            .map_or(&self.name, |(stem, _)| stem)
    }

    /// The file, to be read from its beginning.
    pub fn into_file(self) -> File {
        self.file
    }
}

/// A form with what came with it.
pub struct Sent {
    /// Its fields.
    pub typed: Typed,
    /// Its file, if one was chosen.
    pub file: Option<Incoming>,
}

impl Sent {
    /// Reads a form, with a file or without.
    ///
    /// # Errors
    /// What went wrong on the way, in the words of whatever noticed.
    pub async fn of(home: &Home, request: Request) -> Result<Self, String> {
        let kind = request.headers().get(header::CONTENT_TYPE);
        let parted = kind.is_some_and(|kind| kind.as_bytes().starts_with(b"multipart/"));
        if parted {
            let parts = Multipart::from_request(request, &()).await;
            return Self::parted(home, parts.map_err(|error| error.to_string())?).await;
        }
        let form = Form::<Vec<(String, String)>>::from_request(request, &()).await;
        let Form(fields) = form.map_err(|error| error.to_string())?;
        Ok(Self {
            typed: fields.into(),
            file: None,
        })
    }

    async fn parted(home: &Home, mut parts: Multipart) -> Result<Self, String> {
        let (mut fields, mut file) = (vec![], None);
        while let Some(part) = parts
            .next_field()
            .await
            .map_err(|error| error.body_text())?
        {
            let name = part.name().unwrap_or_default().to_owned();
            match part.file_name().map(str::to_owned) {
                Some(called) => file = store(home, part, &called).await?.or(file),
                None => fields.push((name, text(part).await?)),
            }
        }
        Ok(Self {
            typed: fields.into(),
            file,
        })
    }
}

/// A file that is empty was not chosen.
async fn store(home: &Home, mut part: Field<'_>, name: &str) -> Result<Option<Incoming>, String> {
    let mut file = Incoming::empty(name, &home.data).map_err(|error| error.to_string())?;
    while let Some(bytes) = part.chunk().await.map_err(|error| error.body_text())? {
        file.take(&bytes).map_err(|error| error.to_string())?;
    }
    Ok((file.bytes > 0).then_some(file))
}

/// What was typed; more than may be pasted is cut, and the file it is will not be one.
async fn text(mut part: Field<'_>) -> Result<String, String> {
    let mut all = vec![];
    while let Some(bytes) = part.chunk().await.map_err(|error| error.body_text())? {
        let room = ROWS_BYTES_MAX.saturating_sub(all.len());
        all.extend_from_slice(&bytes[..bytes.len().min(room)]);
    }
    Ok(String::from_utf8_lossy(&all).into_owned())
}

/// Files whose form came back with a question: they need not be sent again.
#[derive(Default)]
pub struct Waiting(Mutex<VecDeque<(String, Incoming)>>);

impl Waiting {
    /// Keeps a file under the token of its form.
    pub fn keep(&self, token: &str, file: Incoming) {
        if !once::is_token(token) {
            return;
        }
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        kept.push_back((token.to_owned(), file));
        if kept.len() > WAITING {
            kept.pop_front();
        }
    }

    /// The file that was kept under that token, which is then kept no more.
    pub fn take(&self, token: &str) -> Option<Incoming> {
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let index = kept.iter().position(|(known, _)| known == token)?;
        kept.remove(index).map(|(_, file)| file)
    }
}
