//! What can go wrong with a book, in words that say what happened, what is safe and what to do.

use rusqlite::ErrorCode;
use std::io;
use std::path::{Path, PathBuf};

/// What went wrong with the book.
#[derive(Debug, thiserror::Error)]
pub enum BookError {
    /// The folder holds no book.
    #[error("there is no book in {}. Nothing was touched. Choose the folder that holds book.toml and book.db, or make a new book", .0.display())]
    NotABook(PathBuf),
    /// The folder already holds something.
    #[error("{} already holds something. Nothing was overwritten. Choose an empty or a new folder", .0.display())]
    NotEmpty(PathBuf),
    /// The key is not the key of this book.
    #[error(
        "this key does not open this book. The book is whole as far as that can be told, and nothing was touched. Try the passphrase or key file once more"
    )]
    WrongKey,
    /// The book was written by a later program.
    #[error(
        "this book was written by a newer Ladderbook (form {found}; this one reads up to {known}). Nothing was touched. Bring this program up to date"
    )]
    NewerVersion {
        /// The form the book is in.
        found: i64,
        /// The latest form this program knows.
        known: i64,
    },
    /// Something in the book does not read as it was written.
    #[error(
        "the book is damaged: {what}. Nothing was deleted or changed. Copy the whole folder to a safe place first, then restore the last backup beside it"
    )]
    Damaged {
        /// What does not read.
        what: String,
    },
    /// Another program holds the book.
    #[error(
        "the book is open in another program. Nothing was touched. Close Ladderbook there, then try again"
    )]
    Locked,
    /// There is no room left on the disk.
    #[error(
        "the disk is full. What was saved before is safe; the last entry was not saved. Make room, then enter it again"
    )]
    DiskFull,
    /// The book cannot be written to.
    #[error(
        "the book may only be read here: the folder, card or disk is write-protected. What was saved before is safe; the last entry was not saved"
    )]
    ReadOnly,
    /// Reading or writing a file failed.
    #[error("{} could not be read or written ({source}). What was saved before is safe; the last entry was not saved", path.display())]
    Io {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// A record names another that the book does not hold.
    #[error("the {what} that this belongs to is not in the book. Nothing was saved")]
    Unknown {
        /// What is missing.
        what: &'static str,
    },
    /// A record holds something that could not be read again.
    #[error("this {what} holds a number that cannot be written down. Nothing was saved")]
    Unwritable {
        /// What kind of record it is.
        what: &'static str,
    },
    /// The property was erased.
    #[error("this property was erased on the owner's wish. Nothing was saved")]
    Erased,
    /// Two properties cannot be joined.
    #[error("a property cannot be joined with itself. Nothing was saved")]
    JoinedWithItself,
    /// The bytes are no picture.
    #[error("this file is not a picture that can be kept (JPEG, PNG or HEIC). Nothing was saved")]
    NotAPicture,
    /// The picture is too large.
    #[error(
        "this picture is too large: {megabytes} MB, and at most {most} MB are kept. Nothing was saved; the file itself was not touched"
    )]
    TooLarge {
        /// Its size.
        megabytes: u64,
        /// The most that is kept.
        most: u64,
    },
    /// A stored picture or letter is gone or no longer what it was.
    #[error(
        "the picture or letter {sha256} is missing from the book's folder or damaged. Everything else is safe. Put its file back from a backup"
    )]
    FileDamaged {
        /// SHA-256 of what it was.
        sha256: String,
    },
    /// A backup is not whole.
    #[error(
        "this backup is not whole: {what}. Nothing was restored and nothing was touched. Use another backup"
    )]
    BadBackup {
        /// What is wrong with it.
        what: String,
    },
    /// The key could not be read or made.
    #[error("the key could not be had: {0}. Nothing was touched")]
    NoKey(String),
    /// The database refused for a reason that none of the above covers.
    #[error(
        "the book's database refused ({0}). What was saved before is safe; the last entry was not saved"
    )]
    Refused(rusqlite::Error),
}

/// What a call to the book comes to.
pub type Result<T, E = BookError> = std::result::Result<T, E>;

impl BookError {
    /// A reading or writing failure of one file, sorted by what the system said.
    pub(crate) fn io(path: &Path, source: io::Error) -> Self {
        match source.kind() {
            io::ErrorKind::StorageFull
            | io::ErrorKind::QuotaExceeded
            | io::ErrorKind::FileTooLarge => Self::DiskFull,
            io::ErrorKind::ReadOnlyFilesystem | io::ErrorKind::PermissionDenied => Self::ReadOnly,
            _ => Self::Io {
                path: path.to_owned(),
                source,
            },
        }
    }

    /// Something that does not read as it was written.
    pub(crate) fn damaged(what: impl Into<String>) -> Self {
        Self::Damaged { what: what.into() }
    }
}

impl From<rusqlite::Error> for BookError {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(ErrorCode::NotADatabase) => {
                Self::damaged("the beginning of book.db is not what was written there")
            }
            Some(ErrorCode::DatabaseCorrupt) => {
                Self::damaged("a page of book.db is not what was written there")
            }
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Locked,
            Some(ErrorCode::DiskFull) => Self::DiskFull,
            Some(ErrorCode::ReadOnly | ErrorCode::CannotOpen | ErrorCode::PermissionDenied) => {
                Self::ReadOnly
            }
            Some(ErrorCode::SystemIoFailure) => Self::Io {
                path: PathBuf::from("book.db"),
                source: io::Error::other(error),
            },
            _ => Self::Refused(error),
        }
    }
}
