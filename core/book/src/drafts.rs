//! Half-typed words: kept through a call, a dead battery and a killed program. They are no records and leave no ink.

use crate::book::Book;
use crate::error::Result;
use crate::records::Records;
use crate::writing::Writing;
use rusqlite::{OptionalExtension, params};
use trade::ids::PropertyId;

impl Records {
    /// The half-typed words under a key.
    ///
    /// # Errors
    /// What the disk says.
    pub fn draft(&self, key: &str) -> Result<Option<String>> {
        Ok(self
            .conn
            .prepare_cached("SELECT text FROM draft WHERE key = ?1")?
            .query_row([key], |row| row.get(0))
            .optional()?)
    }

    fn write_draft(&self, key: &str, property: Option<PropertyId>, text: &str) -> Result<()> {
        self.conn
            .prepare_cached("INSERT OR REPLACE INTO draft VALUES (?1, ?2, ?3)")?
            .execute(params![
                key,
                property.as_ref().map(|id| id.0.as_bytes()),
                text
            ])?;
        Ok(())
    }

    fn remove_draft(&self, key: &str) -> Result<()> {
        self.conn
            .prepare_cached("DELETE FROM draft WHERE key = ?1")?
            .execute([key])?;
        Ok(())
    }
}

impl Book {
    /// Keeps half-typed words. `property` is what they are about: they go with its erasure. On the disk when this returns.
    ///
    /// # Errors
    /// What the disk says.
    pub fn set_draft(&mut self, key: &str, property: Option<PropertyId>, text: &str) -> Result<()> {
        self.write_draft(key, property, text)
    }

    /// Lets half-typed words go.
    ///
    /// # Errors
    /// What the disk says.
    pub fn clear_draft(&mut self, key: &str) -> Result<()> {
        self.remove_draft(key)
    }
}

impl Writing<'_> {
    /// Keeps half-typed words as part of this act.
    ///
    /// # Errors
    /// What the disk says.
    pub fn set_draft(&mut self, key: &str, property: Option<PropertyId>, text: &str) -> Result<()> {
        self.write_draft(key, property, text)
    }

    /// Lets half-typed words go as part of this act: they have become a record.
    ///
    /// # Errors
    /// What the disk says.
    pub fn clear_draft(&mut self, key: &str) -> Result<()> {
        self.remove_draft(key)
    }
}
