//! A firm's whole record: an encrypted database and a folder of sealed pictures.

use crate::database;
use crate::error::{BookError, Result};
use crate::folder::{self, Folder};
use crate::header::Header;
use crate::hlc::Clock;
use crate::ink;
use crate::key::{Key, Salt};
use crate::rebuild::{self, Rebuilt};
use crate::records::Records;
use crate::schema;
use crate::seal::{self, Secret};
use crate::writing::Writing;
use jiff::Timestamp;
use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior};
use std::fs::{self, File};
use std::ops::Deref;
use std::path::{Path, PathBuf};
use trade::ids::DeviceId;
use uuid::Uuid;

/// An open book. It reads through [`Records`], to which it derefs, and writes through [`Book::write`]. While it is open no other
/// process can open it.
pub struct Book {
    records: Records,
    clock: Clock,
    // Let go after the database is closed: fields are dropped in this order.
    _lock: File,
}

impl Deref for Book {
    type Target = Records;

    fn deref(&self) -> &Records {
        &self.records
    }
}

impl Book {
    /// Makes a new book in a folder that does not exist or is empty. `device` is who writes here.
    ///
    /// # Errors
    /// [`BookError::NotEmpty`] where something is there; else what the disk says.
    pub fn create(folder: &Path, key: &Key, device: DeviceId, now: Timestamp) -> Result<Self> {
        if !folder::is_free(folder)? {
            return Err(BookError::NotEmpty(folder.to_owned()));
        }
        let part = beside(folder)?;
        folder::make(&part)?;
        let made =
            fill(&Folder::at(&part), key, device, now).and_then(|()| take_place(&part, folder));
        if let Err(error) = made {
            // What was begun holds nothing yet; where it cannot be removed it does no harm.
            let _ = fs::remove_dir_all(&part);
            return Err(error);
        }
        Self::open(folder, key)
    }

    /// Opens a book, and brings it to the form of this program where it is older.
    ///
    /// # Errors
    /// [`BookError::NotABook`], [`BookError::WrongKey`], [`BookError::Locked`], [`BookError::NewerVersion`],
    /// [`BookError::Damaged`], [`BookError::ReadOnly`]; nothing is changed then.
    pub fn open(folder: &Path, key: &Key) -> Result<Self> {
        let folder = Folder::at(folder);
        let header = Header::read(&folder)?;
        let secret = header.unseal(key)?;
        let lock = folder.lock()?;
        if !folder.database().exists() {
            return Err(BookError::damaged("damage-gone"));
        }
        let conn = database::open(&folder.database(), &secret)?;
        schema::upgrade(&conn)?;
        let device = own_device(&conn)?;
        let clock = Clock::after(ink::last_time(&conn)?);
        Ok(Self {
            records: Records {
                conn,
                folder,
                secret,
                device,
            },
            clock,
            _lock: lock,
        })
    }

    /// The salt of a book that is opened with a passphrase; `None` where it is opened with a key file or from a keyring.
    ///
    /// # Errors
    /// [`BookError::NotABook`], [`BookError::Damaged`].
    pub fn salt(folder: &Path) -> Result<Option<Salt>> {
        Header::read(&Folder::at(folder))?.salt()
    }

    /// From now on the book opens with another key. Backups made before still open with the old one.
    ///
    /// # Errors
    /// What the disk says; the old key holds then.
    pub fn change_key(&mut self, key: &Key) -> Result<()> {
        Header::sealing(&self.records.secret, key)?.write(&self.records.folder)
    }

    /// The one door to writing: one act of a person is one transaction. When it returns, all of it is on the disk; when it returns
    /// an error, none of it is.
    ///
    /// # Errors
    /// What the act says, or what the disk says.
    pub fn write<T, E: From<BookError>>(
        &mut self,
        now: Timestamp,
        act: impl FnOnce(&mut Writing<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        let Self { records, clock, .. } = self;
        let transaction = begin(&records.conn)?;
        let mut writing = Writing::new(records, clock, now);
        let done = act(&mut writing)?;
        let doomed = writing.doomed();
        transaction.commit().map_err(BookError::from)?;
        if let Some(doomed) = doomed {
            records.destroy(&doomed);
        }
        Ok(done)
    }

    /// Makes all tables anew from the ink, in one transaction, and tells where they differed.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where a line does not read; the tables stay as they were then.
    pub fn rebuild(&mut self) -> Result<Rebuilt> {
        let transaction = begin(&self.records.conn)?;
        let rebuilt = rebuild::rebuild(&transaction)?;
        transaction.commit().map_err(BookError::from)?;
        Ok(rebuilt)
    }
}

fn begin(conn: &Connection) -> Result<Transaction<'_>> {
    Ok(Transaction::new_unchecked(
        conn,
        TransactionBehavior::Immediate,
    )?)
}

/// Puts a new, empty book into a folder.
fn fill(folder: &Folder, key: &Key, device: DeviceId, now: Timestamp) -> Result<()> {
    let secret = Secret::generate()?;
    Header::sealing(&secret, key)?.write(folder)?;
    let conn = database::create(&folder.database(), &secret)?;
    schema::upgrade(&conn)?;
    set_own_device(&conn, device)?;
    conn.execute(
        "INSERT INTO own VALUES ('made', ?1)",
        [now.as_millisecond()],
    )?;
    conn.close().map_err(|(_, error)| BookError::from(error))?;
    folder::make(&folder.photos())?;
    folder::sync_folder(folder.path())
}

/// A name beside a folder that nothing bears yet.
pub(crate) fn beside(folder: &Path) -> Result<PathBuf> {
    let mut random = [0; 6];
    seal::fill_random(&mut random)?;
    let name = folder.file_name().unwrap_or_default().to_string_lossy();
    Ok(folder.with_file_name(format!(".{name}.{}.part", seal::hex(&random))))
}

/// Gives a finished folder its name.
pub(crate) fn take_place(part: &Path, folder: &Path) -> Result<()> {
    let failed = |error| BookError::io(folder, error);
    if folder.exists() {
        fs::remove_dir(folder).map_err(failed)?;
    }
    fs::rename(part, folder).map_err(failed)?;
    folder::sync_parent(folder)
}

/// Which device this copy of the book writes as.
fn own_device(conn: &Connection) -> Result<DeviceId> {
    conn.query_row("SELECT value FROM own WHERE name = 'device'", [], |row| {
        row.get(0)
    })
    .optional()?
    .map(|bytes| DeviceId(Uuid::from_bytes(bytes)))
    .ok_or_else(|| BookError::damaged("damage-device"))
}

/// Says which device this copy of the book writes as.
pub(crate) fn set_own_device(conn: &Connection, device: DeviceId) -> Result<()> {
    conn.execute(
        "INSERT INTO own VALUES ('device', ?1) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
        [device.0.as_bytes()],
    )?;
    Ok(())
}
