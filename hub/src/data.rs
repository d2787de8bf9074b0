//! Where things are kept: the data folder, and apart from it the name of this installation.

use directories::ProjectDirs;
use std::{
    fs, io,
    io::Write,
    path::{Path, PathBuf},
};

/// The folders of one installation.
pub struct Folders {
    /// The database and what lies beside it; may be backed up and copied.
    pub data: PathBuf,
    /// What must not be copied with it: which installation this is.
    pub state: PathBuf,
}

/// The folders to use; `data` is the person's own choice.
///
/// # Errors
/// Where the person has no home folder and chose none.
pub fn folders(data: Option<PathBuf>) -> Result<Folders, String> {
    let own = ProjectDirs::from("", "", "slowbend");
    let state = own.as_ref().map(|own| {
        own.state_dir()
            .unwrap_or_else(|| own.data_local_dir())
            .join("installs")
    });
    let data = data.or_else(|| own.map(|own| own.data_dir().to_owned()));
    let data = data.ok_or("No home folder was found. Choose a folder with --data DIR.")?;
    let state = state.unwrap_or_else(|| data.join("installs"));
    Ok(Folders { data, state })
}

impl Folders {
    /// A file that belongs to this installation in this data folder, and must not be copied with it.
    pub fn own_file(&self, name: &str) -> PathBuf {
        let place = self
            .data
            .canonicalize()
            .unwrap_or_else(|_| self.data.clone());
        self.state.join(format!("{}.{name}", file_name(&place)))
    }
}

/// Reads a file that only its owner may read; none where it is not there yet.
///
/// # Errors
/// A sentence, where it cannot be read.
pub fn read_private(file: &Path) -> Result<Option<Vec<u8>>, String> {
    match fs::read(file) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(unusable(file, &error)),
    }
}

/// Writes a file that only its owner may read, whole or not at all.
///
/// # Errors
/// A sentence, where it cannot be written.
pub fn write_private(file: &Path, bytes: &[u8]) -> Result<(), String> {
    let fresh = file.with_added_extension("new");
    write_for_owner(&fresh, bytes)
        .and_then(|()| fs::rename(&fresh, file))
        .map_err(|error| unusable(file, &error))
}

fn unusable(file: &Path, error: &io::Error) -> String {
    format!(
        "The file {} cannot be used ({error}). Change its permissions, or choose another folder with --data DIR.",
        file.display()
    )
}

/// The random name of this installation in this folder, made at first use. It lies outside the data folder, so that a
/// database that was copied, or restored elsewhere, is seen to be a copy.
///
/// # Errors
/// A sentence, where it can be neither read nor written.
pub fn install_id(folders: &Folders) -> Result<String, String> {
    let told = |error: io::Error| {
        format!(
            "The folder {} cannot be used ({error}). Change its permissions, or choose another with --data DIR.",
            folders.state.display()
        )
    };
    fs::create_dir_all(&folders.data).map_err(|error| {
        format!(
            "The folder {} cannot be made ({error}). Choose another with --data DIR.",
            folders.data.display()
        )
    })?;
    let place = folders.data.canonicalize().map_err(told)?;
    let file = folders.state.join(file_name(&place));
    match fs::read_to_string(&file) {
        Ok(id) if id.trim().len() == 64 => Ok(id.trim().to_owned()),
        Ok(_) => make(&file).map_err(told),
        Err(error) if error.kind() == io::ErrorKind::NotFound => make(&file).map_err(told),
        Err(error) => Err(told(error)),
    }
}

/// One file a data folder: a copied folder has another path, so it is another installation.
fn file_name(place: &Path) -> String {
    let hash = blake3::hash(place.as_os_str().as_encoded_bytes());
    hash.to_hex()[..32].to_owned()
}

fn make(file: &Path) -> io::Result<String> {
    let id: String = entropy().iter().map(|byte| format!("{byte:02x}")).collect();
    write_for_owner(file, id.as_bytes())?;
    Ok(id)
}

fn write_for_owner(file: &Path, bytes: &[u8]) -> io::Result<()> {
    if let Some(folder) = file.parent() {
        fs::create_dir_all(folder)?;
    }
    let mut options = fs::File::options();
    options.write(true).create(true).truncate(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut out = options.open(file)?;
    out.write_all(bytes)?;
    out.sync_all()
}

/// 32 fresh random bytes.
pub fn entropy() -> [u8; 32] {
    let mut bytes = [0; 32];
    getrandom::fill(&mut bytes).expect("every system this runs on has a source of randomness");
    bytes
}

/// Folders for a test, both in `place`.
#[cfg(test)]
pub fn folders_in(place: &Path) -> Folders {
    Folders {
        data: place.join("data"),
        state: place.join("state"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_keeps_its_name_and_its_copy_gets_another() {
        let temp = tempfile::tempdir().unwrap();
        let at = |name: &str| Folders {
            data: temp.path().join(name),
            state: temp.path().join("state"),
        };
        let first = install_id(&at("one")).unwrap();
        assert_eq!(first, install_id(&at("one")).unwrap());
        assert_ne!(first, install_id(&at("copy")).unwrap());
        assert!(
            fs::read_dir(temp.path().join("one"))
                .unwrap()
                .next()
                .is_none()
        );
    }

    #[cfg(unix)]
    #[test]
    fn only_its_owner_reads_it() {
        use std::os::unix::fs::PermissionsExt;
        let temp = tempfile::tempdir().unwrap();
        let folders = Folders {
            data: temp.path().join("data"),
            state: temp.path().join("state"),
        };
        install_id(&folders).unwrap();
        let file = fs::read_dir(&folders.state)
            .unwrap()
            .next()
            .unwrap()
            .unwrap();
        assert_eq!(file.metadata().unwrap().permissions().mode() & 0o777, 0o600);
    }
}
