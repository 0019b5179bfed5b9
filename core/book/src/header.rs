//! `book.toml`: what is needed to open a book with its key. It holds no personal data.
//!
//! The book's own secret never changes; it lies here sealed under the key. So a wrong key is told from a damaged book, and a
//! passphrase can be changed without writing the book anew.

use crate::error::{BookError, Result};
use crate::folder::{self, Folder};
use crate::key::{Key, Salt};
use crate::seal::{self, Secret};
use serde::Deserialize;
use std::fs;
use std::path::Path;

/// The form of the folder. Greater forms are refused.
const FORM: i64 = 1;
const ABOUT: &[u8] = b"ladderbook book secret 1";
const PREFACE: &str = "# A Ladderbook book. This file is needed to open it and holds no personal data.\n\
                       # Keep it with book.db and the folder photos; book.spare.toml is a copy of it.\n";

#[derive(Debug, Deserialize)]
pub(crate) struct Header {
    form: i64,
    /// Where the key comes from a passphrase: its salt.
    salt: Option<String>,
    /// The book's secret, sealed under the key.
    secret: String,
    /// Over what stands above, so that a damaged file is told from a wrong key.
    sum: String,
}

impl Header {
    /// For a new book or a new key.
    pub(crate) fn sealing(secret: &Secret, key: &Key) -> Result<Self> {
        let sealed = seal::seal(&key.secret, secret.bytes(), ABOUT)?;
        let mut header = Self {
            form: FORM,
            salt: key.salt.map(|salt| seal::hex(&salt.0)),
            secret: seal::hex(&sealed),
            sum: String::new(),
        };
        header.sum = header.summed();
        Ok(header)
    }

    fn summed(&self) -> String {
        let salt = self.salt.as_deref().unwrap_or_default();
        seal::sha256(format!("{}\n{salt}\n{}", self.form, self.secret).as_bytes())
    }

    /// Reads it, or its spare where it is gone or does not read.
    pub(crate) fn read(folder: &Folder) -> Result<Self> {
        match read_one(&folder.header()) {
            Err(BookError::Damaged { .. } | BookError::NotABook(_)) => {
                read_one(&folder.spare_header()).map_err(|error| match error {
                    BookError::NotABook(_) if folder.database().exists() => {
                        BookError::damaged("damage-header-gone")
                    }
                    BookError::NotABook(_) => BookError::NotABook(folder.path().to_owned()),
                    other => other,
                })
            }
            read => read,
        }
    }

    /// Writes both copies, one after the other, so that one of them is whole at any time.
    pub(crate) fn write(&self, folder: &Folder) -> Result<()> {
        let text = self.text();
        folder::put(&folder.spare_header(), text.as_bytes())?;
        folder::put(&folder.header(), text.as_bytes())
    }

    /// All values are numbers or hexadecimal, so that nothing needs to be escaped.
    fn text(&self) -> String {
        let Self {
            form, secret, sum, ..
        } = self;
        let salt = match &self.salt {
            Some(salt) => format!("salt = \"{salt}\"\n"),
            None => String::new(),
        };
        format!("{PREFACE}form = {form}\n{salt}secret = \"{secret}\"\nsum = \"{sum}\"\n")
    }

    /// The salt, where the key comes from a passphrase.
    pub(crate) fn salt(&self) -> Result<Option<Salt>> {
        let Some(text) = &self.salt else {
            return Ok(None);
        };
        let bytes = seal::unhex(text).ok_or_else(|| BookError::damaged("damage-salt"))?;
        Ok(Some(Salt(bytes)))
    }

    /// The book's secret.
    pub(crate) fn unseal(&self, key: &Key) -> Result<Secret> {
        // Nonce, secret, tag.
        let sealed = seal::unhex::<{ 24 + 32 + 16 }>(&self.secret)
            .ok_or_else(|| BookError::damaged("damage-secret"))?;
        seal::unseal(&key.secret, &sealed, ABOUT)
            .and_then(|bytes| Secret::from_slice(&zeroize::Zeroizing::new(bytes)))
            .ok_or(BookError::WrongKey)
    }
}

#[derive(Deserialize)]
struct Form {
    form: i64,
}

fn read_one(path: &Path) -> Result<Header> {
    let text = match fs::read_to_string(path) {
        Ok(text) => text,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => {
            return Err(BookError::NotABook(path.to_owned()));
        }
        Err(error) if error.kind() == std::io::ErrorKind::InvalidData => {
            return Err(BookError::damaged("damage-header"));
        }
        Err(source) => {
            return Err(BookError::Io {
                path: path.to_owned(),
                source,
            });
        }
    };
    let unread = |_| BookError::damaged("damage-header");
    let Form { form } = toml::from_str(&text).map_err(unread)?;
    if form > FORM {
        return Err(BookError::NewerVersion {
            found: form,
            known: FORM,
        });
    }
    let header: Header = toml::from_str(&text).map_err(unread)?;
    if header.sum != header.summed() {
        return Err(BookError::damaged("damage-header-changed"));
    }
    Ok(header)
}
