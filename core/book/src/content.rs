//! Pictures and letters on the disk: each lies once under a name made of its SHA-256, sealed under a key of its own, and is never altered.

use crate::error::{BookError, Result};
use crate::folder::{self, Folder};
use crate::records::Records;
use crate::seal::{self, Secret};
use rusqlite::{Connection, OptionalExtension, params};
use sha2::{Digest, Sha256};
use std::fs;
use std::path::PathBuf;
use trade::ids::PropertyId;

/// The largest picture or letter that is kept, in bytes. A phone's picture has 3 to 15 MB.
pub const MOST_BYTES: u64 = 64_000_000;

impl Records {
    /// Keeps bytes and gives their SHA-256 in lower-case hexadecimal. They are on the disk when this returns; bytes that are there
    /// already are not written again.
    pub(crate) fn keep(&self, bytes: &[u8]) -> Result<String> {
        if bytes.len() as u64 > MOST_BYTES {
            return Err(BookError::TooLarge {
                megabytes: (bytes.len() as u64).div_ceil(1_000_000),
                most: MOST_BYTES / 1_000_000,
            });
        }
        let sha256: [u8; 32] = Sha256::digest(bytes).into();
        if self.kept(&sha256)?.is_none() || !self.content_path(&sha256).exists() {
            self.write_content(&sha256, bytes)?;
        }
        Ok(seal::hex(&sha256))
    }

    fn write_content(&self, sha256: &[u8; 32], bytes: &[u8]) -> Result<()> {
        let key = match self.kept(sha256)? {
            Some(key) => key,
            None => Secret::generate()?,
        };
        let sealed = seal::seal(&key, bytes, sha256)?;
        folder::put(&self.content_path(sha256), &sealed)?;
        let size = i64::try_from(bytes.len()).unwrap_or(i64::MAX);
        self.conn
            .prepare_cached("INSERT OR IGNORE INTO content VALUES (?1, ?2, ?3)")?
            .execute(params![sha256, key.bytes(), size])?;
        Ok(())
    }

    /// The bytes of a picture or letter as they came.
    ///
    /// # Errors
    /// [`BookError::FileDamaged`] where the file is gone or no longer what it was, or nothing of that name was ever kept.
    pub fn content(&self, sha256: &str) -> Result<Vec<u8>> {
        let damaged = || BookError::FileDamaged {
            sha256: sha256.to_owned(),
        };
        let name = seal::unhex::<32>(sha256).ok_or_else(damaged)?;
        let key = self.kept(&name)?.ok_or_else(damaged)?;
        let path = self.content_path(&name);
        let sealed = match fs::read(&path) {
            Ok(sealed) => sealed,
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Err(damaged()),
            Err(source) => return Err(BookError::Io { path, source }),
        };
        let bytes = seal::unseal(&key, &sealed, &name).ok_or_else(damaged)?;
        if seal::sha256(&bytes) == sha256 {
            Ok(bytes)
        } else {
            Err(damaged())
        }
    }

    /// The key of something that is kept.
    pub(crate) fn kept(&self, sha256: &[u8; 32]) -> Result<Option<Secret>> {
        let key: Option<[u8; 32]> = self
            .conn
            .prepare_cached("SELECT key FROM content WHERE sha256 = ?1")?
            .query_row([sha256], |row| row.get(0))
            .optional()?;
        Ok(key.map(Secret::new))
    }

    /// Where something lies. The name is a keyed hash, so that nobody without the key can ask whether a certain picture is there.
    pub(crate) fn content_path(&self, sha256: &[u8; 32]) -> PathBuf {
        Folder::place(&self.folder.photos(), &self.content_name(sha256))
    }

    pub(crate) fn content_name(&self, sha256: &[u8; 32]) -> String {
        seal::hex(&self.secret.derived("content name").digest(sha256))
    }

    /// Removes what an erasure left without a key, and empties the database's log of the pages of before. The keys are gone already: a
    /// file that cannot be removed now can no longer be read, and the log is emptied when the book is closed at the latest.
    pub(crate) fn destroy(&self, doomed: &[[u8; 32]]) {
        for sha256 in doomed {
            let _ = folder::remove(&self.content_path(sha256));
            let _ = folder::remove(&self.thumbnail_path(sha256));
        }
        let _ = self
            .conn
            .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()));
    }
}

/// What a property uses and no other does.
pub(crate) fn used_only_by(conn: &Connection, property: PropertyId) -> Result<Vec<[u8; 32]>> {
    let mut statement = conn.prepare(include_str!("sql/used_only_by.sql"))?;
    let rows = statement.query_map([property.0.as_bytes()], |row| row.get(0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}
