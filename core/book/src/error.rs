//! What can go wrong with a book, in words that say what happened, what is safe and what to do.

use rusqlite::ErrorCode;
use std::fmt;
use std::io;
use std::path::{Path, PathBuf};
use trade::words::Said;

/// What went wrong with the book.
#[derive(Debug, thiserror::Error)]
pub enum BookError {
    /// The folder holds no book.
    NotABook(PathBuf),
    /// The folder already holds something.
    NotEmpty(PathBuf),
    /// The key is not the key of this book.
    WrongKey,
    /// The book was written by a later program.
    NewerVersion {
        /// The form the book is in.
        found: i64,
        /// The latest form this program knows.
        known: i64,
    },
    /// Something in the book does not read as it was written.
    Damaged {
        /// What does not read, a `damage-…` message.
        what: Said,
    },
    /// Another program holds the book.
    Locked,
    /// There is no room left on the disk.
    DiskFull,
    /// The book cannot be written to.
    ReadOnly,
    /// Reading or writing a file failed.
    Io {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// A record names another that the book does not hold.
    Unknown {
        /// What kind of record is missing, as it is stored.
        what: &'static str,
    },
    /// A record holds something that could not be read again.
    Unwritable {
        /// What kind of record it is, as it is stored.
        what: &'static str,
    },
    /// The property was erased.
    Erased,
    /// Two properties cannot be joined.
    JoinedWithItself,
    /// The bytes are no picture.
    NotAPicture,
    /// The picture is too large.
    TooLarge {
        /// Its size.
        megabytes: u64,
        /// The most that is kept.
        most: u64,
    },
    /// A stored picture or letter is gone or no longer what it was.
    FileDamaged {
        /// SHA-256 of what it was.
        sha256: String,
    },
    /// A backup is not whole.
    BadBackup {
        /// What is wrong with it, a `backup-…` message.
        what: Said,
    },
    /// The key could not be read or made: why, a `key-…` message.
    NoKey(Said),
    /// The database refused for a reason that none of the above covers.
    Refused(rusqlite::Error),
}

/// What a call to the book comes to.
pub type Result<T, E = BookError> = std::result::Result<T, E>;

impl BookError {
    /// What to tell the person: what happened, what is safe, what to do.
    pub fn says(&self) -> Said {
        match self {
            Self::NotABook(folder) => Said::new("book-none").with("folder", shown(folder)),
            Self::NotEmpty(folder) => Said::new("book-not-empty").with("folder", shown(folder)),
            Self::WrongKey => Said::new("book-wrong-key"),
            Self::NewerVersion { found, known } => Said::new("book-newer")
                .with("found", *found)
                .with("known", *known),
            Self::Damaged { what } => Said::new("book-damaged").with("what", what.clone()),
            Self::Locked => Said::new("book-locked"),
            Self::DiskFull => Said::new("book-disk-full"),
            Self::ReadOnly => Said::new("book-read-only"),
            Self::Io { path, source } => Said::new("book-io")
                .with("file", shown(path))
                .with("why", system(source)),
            Self::Unknown { what } => Said::new("book-unknown").with("what", record(what)),
            Self::Unwritable { what } => Said::new("book-unwritable").with("what", record(what)),
            Self::Erased => Said::new("book-erased"),
            Self::JoinedWithItself => Said::new("book-joined-with-itself"),
            Self::NotAPicture => Said::new("book-not-a-picture"),
            Self::TooLarge { megabytes, most } => Said::new("book-too-large")
                .with("megabytes", megabytes.to_string())
                .with("most", most.to_string()),
            Self::FileDamaged { sha256 } => {
                Said::new("book-file-damaged").with("sha256", sha256.as_str())
            }
            Self::BadBackup { what } => Said::new("book-bad-backup").with("what", what.clone()),
            Self::NoKey(why) => Said::new("book-no-key").with("why", why.clone()),
            Self::Refused(error) => Said::new("book-refused").with("detail", error.to_string()),
        }
    }

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

    /// Something that does not read as it was written, by the key of what it is.
    pub(crate) fn damaged(what: &str) -> Self {
        Self::damage(Said::new(what))
    }

    /// The same with arguments.
    pub(crate) fn damage(what: Said) -> Self {
        Self::Damaged { what }
    }
}

impl fmt::Display for BookError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

/// What the system said of a file or a port, as half a sentence. What it says seldom is quoted as it came.
pub fn system(error: &io::Error) -> Said {
    let key = match error.kind() {
        io::ErrorKind::NotFound => "system-not-found",
        io::ErrorKind::PermissionDenied => "system-not-permitted",
        io::ErrorKind::AlreadyExists => "system-exists",
        io::ErrorKind::NotADirectory => "system-not-a-folder",
        io::ErrorKind::IsADirectory => "system-a-folder",
        io::ErrorKind::DirectoryNotEmpty => "system-not-empty",
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded | io::ErrorKind::FileTooLarge => {
            "system-full"
        }
        io::ErrorKind::ReadOnlyFilesystem => "system-read-only",
        io::ErrorKind::InvalidData => "system-not-text",
        io::ErrorKind::AddrInUse => "system-port-taken",
        _ => return Said::new("system-other").with("detail", error.to_string()),
    };
    Said::new(key)
}

/// A kind of record by the name it is stored under.
pub(crate) fn record(kind: &str) -> Said {
    Said::new(format!("record-{kind}"))
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

impl From<rusqlite::Error> for BookError {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(ErrorCode::NotADatabase) => Self::damaged("damage-beginning"),
            Some(ErrorCode::DatabaseCorrupt) => Self::damaged("damage-page"),
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
