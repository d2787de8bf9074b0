//! Who is let in: a secret that is shown on this machine, and the cookie it is exchanged for. Start at [`Keys`].
//!
//! The secret that invites lives as long as the program. The key that cookies are made with is kept beside the name of the
//! installation, outside what is backed up, so that phones stay in when the program starts anew; making a new key sends all
//! of them away. Nothing is remembered of a guest: a cookie is a random word and its keyed BLAKE3.

use crate::data::{self, Folders};
use std::{
    path::PathBuf,
    sync::{Mutex, PoisonError},
};

/// The cookie of a guest.
pub const COOKIE: &str = "slowbend-guest";
/// How long a guest stays in, seconds: 30 days. Common practice, no source.
const STAYS_S: u32 = 30 * 24 * 3600;
/// Hexadecimal digits of 128 random bits.
const WORD: usize = 32;

/// The secrets of one home.
#[derive(Debug)]
pub struct Keys {
    file: PathBuf,
    key: Mutex<[u8; 32]>,
    invitation: Mutex<String>,
}

impl Keys {
    /// The keys that are kept, or new ones.
    ///
    /// # Errors
    /// A sentence, where they can be neither read nor written.
    pub fn kept(folders: &Folders) -> Result<Self, String> {
        let file = folders.own_file("lan.key");
        let key = match data::read_private(&file)?.and_then(|bytes| bytes.try_into().ok()) {
            Some(key) => key,
            None => fresh_key(&file)?,
        };
        Ok(Self {
            file,
            key: Mutex::new(key),
            invitation: Mutex::new(word()),
        })
    }

    /// The secret that lets a phone in.
    pub fn invitation(&self) -> String {
        locked(&self.invitation).clone()
    }

    /// Makes the code that was shown worthless, and a new one.
    pub fn invite_anew(&self) {
        *locked(&self.invitation) = word();
    }

    /// Sends every guest away, and makes a new code.
    ///
    /// # Errors
    /// A sentence, where the new key cannot be kept; then everybody stays.
    pub fn send_away(&self) -> Result<(), String> {
        let fresh = fresh_key(&self.file)?;
        *locked(&self.key) = fresh;
        self.invite_anew();
        Ok(())
    }

    /// A cookie for whoever knows the secret; none for who does not.
    pub fn admit(&self, secret: &str) -> Option<String> {
        // Equal in constant time, so that nobody finds it out letter by letter.
        let same = blake3::hash(secret.as_bytes()) == blake3::hash(self.invitation().as_bytes());
        same.then(|| {
            let guest = word();
            let sign = self.sign(&guest);
            format!("{COOKIE}={guest}.{sign}; Path=/; Max-Age={STAYS_S}; SameSite=Strict; HttpOnly; Secure")
        })
    }

    /// Whether a cookie's value was given out with the key of now.
    pub fn knows(&self, value: &str) -> bool {
        let Some((guest, sign)) = value.split_once('.') else {
            return false;
        };
        guest.len() == WORD
            && blake3::Hash::from_hex(sign).is_ok_and(|sign| sign == self.sign(guest))
    }

    fn sign(&self, guest: &str) -> blake3::Hash {
        blake3::keyed_hash(&locked(&self.key), guest.as_bytes())
    }
}

fn locked<T>(mutex: &Mutex<T>) -> std::sync::MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn fresh_key(file: &std::path::Path) -> Result<[u8; 32], String> {
    let key = data::entropy();
    data::write_private(file, &key)?;
    Ok(key)
}

fn word() -> String {
    crate::once::token()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn keys() -> (tempfile::TempDir, Folders, Keys) {
        let temp = tempfile::tempdir().unwrap();
        let folders = data::folders_in(temp.path());
        let keys = Keys::kept(&folders).unwrap();
        (temp, folders, keys)
    }

    fn value(cookie: &str) -> &str {
        cookie.split(';').next().unwrap().split_once('=').unwrap().1
    }

    #[test]
    fn the_secret_lets_in_and_nothing_else_does() {
        let (_temp, _, keys) = keys();
        let cookie = keys.admit(&keys.invitation()).unwrap();
        assert!(keys.knows(value(&cookie)));
        for attribute in ["SameSite=Strict", "HttpOnly", "Secure", "Path=/"] {
            assert!(cookie.contains(attribute), "{cookie}");
        }
        assert_eq!(keys.admit(""), None);
        assert_eq!(keys.admit(&word()), None);
        let (guest, sign) = value(&cookie).split_once('.').unwrap();
        for forged in [
            "",
            ".",
            guest,
            sign,
            &format!("{}.{sign}", word()),
            &format!("{guest}.{guest}"),
        ] {
            assert!(!keys.knows(forged), "{forged}");
        }
    }

    #[test]
    fn a_guest_stays_when_the_program_starts_anew_and_the_code_does_not() {
        let (_temp, folders, keys) = keys();
        let cookie = keys.admit(&keys.invitation()).unwrap();
        let again = Keys::kept(&folders).unwrap();
        assert!(again.knows(value(&cookie)));
        assert_eq!(again.admit(&keys.invitation()), None);
    }

    #[test]
    fn who_was_sent_away_stays_away_also_when_the_program_starts_anew() {
        let (_temp, folders, keys) = keys();
        let shown = keys.invitation();
        let cookie = keys.admit(&shown).unwrap();
        keys.send_away().unwrap();
        assert!(!keys.knows(value(&cookie)));
        assert_eq!(keys.admit(&shown), None);
        assert!(!Keys::kept(&folders).unwrap().knows(value(&cookie)));
    }

    #[test]
    fn a_new_code_lets_those_in_stay() {
        let (_temp, _, keys) = keys();
        let shown = keys.invitation();
        let cookie = keys.admit(&shown).unwrap();
        keys.invite_anew();
        assert!(keys.knows(value(&cookie)));
        assert_eq!(keys.admit(&shown), None);
    }
}
