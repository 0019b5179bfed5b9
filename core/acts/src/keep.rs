//! Keeping the book: check, rebuild, back up, restore.

use crate::ActError;
use book::{Backup, Book, Checked, Key, Rebuilt};
use std::path::Path;

/// Reads every line and every picture, and says what is damaged.
///
/// # Errors
/// Where the book cannot be read at all.
pub fn check(book: &Book) -> Result<Checked, ActError> {
    Ok(book.check()?)
}

/// Makes the tables anew from the ink and compares.
///
/// # Errors
/// Where the book cannot be read or written.
pub fn rebuild(book: &mut Book) -> Result<Rebuilt, ActError> {
    Ok(book.rebuild()?)
}

/// Copies the book to a new folder, whole and checked.
///
/// # Errors
/// Where the folder exists already, or cannot be written.
pub fn backup(book: &Book, to: &Path) -> Result<Backup, ActError> {
    Ok(book.backup(to)?)
}

/// Makes a book from a backup. Never writes over one that is there.
///
/// # Errors
/// Where the backup is damaged, the key is wrong, or a book stands there already.
pub fn restore(from: &Path, to: &Path, key: &Key) -> Result<Book, ActError> {
    Ok(Book::restore(from, to, key)?)
}
