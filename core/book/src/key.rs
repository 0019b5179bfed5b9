//! The key of a book: from a passphrase, from a key file, or made afresh for the system's keyring.

use crate::error::{BookError, Result, system};
use crate::folder;
use crate::seal::{self, Secret};
use argon2::{Algorithm, Argon2, Params, Version};
use std::fs;
use std::path::Path;
use trade::words::Said;
use zeroize::Zeroizing;

/// Memory, passes and lanes of Argon2id: the second recommended option of RFC 9106, section 4.
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;
const LANES: u32 = 4;

/// What is mixed into a passphrase so that two books with one passphrase have two keys. It is no secret.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Salt(pub(crate) [u8; 16]);

impl Salt {
    /// A fresh one for a new book.
    ///
    /// # Errors
    /// Where the system gives no random numbers.
    pub fn generate() -> Result<Self> {
        let mut bytes = [0; 16];
        seal::fill_random(&mut bytes)?;
        Ok(Self(bytes))
    }
}

/// The key that opens a book. It is wiped from memory when let go, and printing it shows nothing.
#[derive(Clone, Debug)]
pub struct Key {
    pub(crate) secret: Secret,
    pub(crate) salt: Option<Salt>,
}

impl Key {
    /// From a passphrase and the book's salt ([`crate::Book::salt`]); a new book takes a fresh [`Salt`]. Takes a noticeable moment, on purpose.
    ///
    /// # Errors
    /// Where the passphrase is empty.
    pub fn from_passphrase(passphrase: &str, salt: &Salt) -> Result<Self> {
        if passphrase.is_empty() {
            return Err(BookError::NoKey(Said::new("key-passphrase-empty")));
        }
        let refused = |error: argon2::Error| {
            BookError::NoKey(Said::new("key-refused").with("detail", error.to_string()))
        };
        let params = Params::new(MEMORY_KIB, PASSES, LANES, Some(32)).map_err(refused)?;
        let mut bytes = Zeroizing::new([0; 32]);
        Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
            .hash_password_into(passphrase.as_bytes(), &salt.0, bytes.as_mut_slice())
            .map_err(refused)?;
        Ok(Self {
            secret: Secret::new(*bytes),
            salt: Some(*salt),
        })
    }

    /// From a key file: sixty-four hexadecimal digits.
    ///
    /// # Errors
    /// Where the file cannot be read or holds no key.
    pub fn from_file(path: &Path) -> Result<Self> {
        let about = |key: &str| Said::new(key).with("file", path.display().to_string());
        let text = fs::read_to_string(path).map_err(|error| {
            BookError::NoKey(about("key-file-unread").with("why", system(&error)))
        })?;
        Self::from_text(&Zeroizing::new(text)).map_err(|_| BookError::NoKey(about("key-file-none")))
    }

    /// From the text that [`Key::to_text`] gave, as a keyring or a key file holds it.
    ///
    /// # Errors
    /// Where it is not sixty-four hexadecimal digits.
    pub fn from_text(text: &str) -> Result<Self> {
        let bytes = seal::unhex::<32>(text.trim())
            .ok_or_else(|| BookError::NoKey(Said::new("key-text-none")))?;
        Ok(Self {
            secret: Secret::new(bytes),
            salt: None,
        })
    }

    /// A new one from the system's random source.
    ///
    /// # Errors
    /// Where the system gives no random numbers.
    pub fn generate() -> Result<Self> {
        Ok(Self {
            secret: Secret::generate()?,
            salt: None,
        })
    }

    /// The key as text, for a keyring: sixty-four hexadecimal digits. Wiped when let go.
    pub fn to_text(&self) -> Zeroizing<String> {
        Zeroizing::new(seal::hex(self.secret.bytes()))
    }

    /// Writes a key file that only its owner may read. A file that is there is never overwritten.
    ///
    /// # Errors
    /// Where the file exists or cannot be written.
    pub fn write_file(&self, path: &Path) -> Result<()> {
        let mut text = self.to_text();
        text.push('\n');
        folder::write_new(path, text.as_bytes())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_passphrase_and_salt_give_one_key_another_salt_another() {
        let (salt, other) = (Salt::generate().unwrap(), Salt::generate().unwrap());
        let key = Key::from_passphrase("eleven rungs", &salt).unwrap();
        let again = Key::from_passphrase("eleven rungs", &salt).unwrap();
        assert_eq!(key.to_text(), again.to_text());
        let elsewhere = Key::from_passphrase("eleven rungs", &other).unwrap();
        assert_ne!(key.to_text(), elsewhere.to_text());
        assert!(Key::from_passphrase("", &salt).is_err());
    }

    #[test]
    fn a_key_file_comes_back_and_is_never_overwritten() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.key");
        let key = Key::generate().unwrap();
        key.write_file(&path).unwrap();
        assert_eq!(Key::from_file(&path).unwrap().to_text(), key.to_text());
        assert!(Key::generate().unwrap().write_file(&path).is_err());
        assert_eq!(Key::from_file(&path).unwrap().to_text(), key.to_text());
    }

    #[test]
    fn what_is_no_key_file_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.key");
        assert!(matches!(Key::from_file(&path), Err(BookError::NoKey(_))));
        fs::write(&path, "not a key").unwrap();
        assert!(matches!(Key::from_file(&path), Err(BookError::NoKey(_))));
    }

    #[test]
    fn a_key_does_not_print_itself() {
        let key = Key::generate().unwrap();
        assert!(!format!("{key:?}").contains(&key.to_text()[..8]));
    }

    #[cfg(unix)]
    #[test]
    fn only_its_owner_may_read_a_key_file() {
        use std::os::unix::fs::PermissionsExt;
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.key");
        Key::generate().unwrap().write_file(&path).unwrap();
        let mode = fs::metadata(&path).unwrap().permissions().mode();
        assert_eq!(mode & 0o077, 0);
    }
}
