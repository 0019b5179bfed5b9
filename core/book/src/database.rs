//! The encrypted database: how it is opened, and with which settings.

use crate::error::{BookError, Result};
use crate::seal::{self, Secret};
use rusqlite::{Connection, OpenFlags};
use std::path::Path;
use std::sync::{Mutex, PoisonError};
use trade::words::Said;
use zeroize::Zeroizing;

/// Settings for each opening. WAL with FULL waits at each commit until the log is on the disk, so that what was acknowledged is
/// there after a loss of power; a roll-back journal would wait twice as often. One process holds the book, so it holds the file
/// too, and no shared-memory file is needed. Deleted words are overwritten. Nothing is ever put into a temporary file.
const SETTINGS: &str = "
    PRAGMA locking_mode = EXCLUSIVE;
    PRAGMA journal_mode = WAL;
    PRAGMA synchronous = FULL;
    PRAGMA fullfsync = ON;
    PRAGMA checkpoint_fullfsync = ON;
    PRAGMA secure_delete = ON;
    PRAGMA temp_store = MEMORY;
    PRAGMA trusted_schema = OFF;
    PRAGMA cache_size = -16000;
";
const STATEMENTS_KEPT: usize = 128;

/// Opens a database that is there.
pub(crate) fn open(path: &Path, secret: &Secret) -> Result<Connection> {
    let conn = connect(path, secret, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
    // The first page is read here, before anything is written, so that damage shows at once. An empty file would pass for a new database.
    let version: i64 = conn.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if version == 0 {
        return Err(BookError::damaged("damage-empty"));
    }
    conn.execute_batch(SETTINGS)?;
    Ok(conn)
}

/// Makes a new one.
pub(crate) fn create(path: &Path, secret: &Secret) -> Result<Connection> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE;
    let conn = connect(path, secret, flags)?;
    conn.execute_batch(SETTINGS)?;
    Ok(conn)
}

/// Makes one that another is copied into, as a single file.
pub(crate) fn create_copy(path: &Path, secret: &Secret) -> Result<Connection> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE;
    connect(path, secret, flags)
}

/// One key is set at a time: the library sets itself up with the first, and was once seen to refuse a second that came meanwhile.
static KEYING: Mutex<()> = Mutex::new(());

fn connect(path: &Path, secret: &Secret, flags: OpenFlags) -> Result<Connection> {
    let conn = Connection::open_with_flags(path, flags | OpenFlags::SQLITE_OPEN_NO_MUTEX)?;
    // What goes wrong is told in our own errors, not on the terminal.
    conn.execute_batch("PRAGMA cipher_log_level = NONE")?;
    let key = Zeroizing::new(seal::hex(secret.bytes()));
    let pragma = Zeroizing::new(format!("PRAGMA key = \"x'{}'\"", key.as_str()));
    {
        let _turn = KEYING.lock().unwrap_or_else(PoisonError::into_inner);
        conn.execute_batch(&pragma)?;
    }
    conn.set_prepared_statement_cache_capacity(STATEMENTS_KEPT);
    if cipher_version(&conn).is_none() {
        return Err(BookError::NoKey(Said::new("key-no-encryption")));
    }
    Ok(conn)
}

/// The version of SQLCipher; `None` where plain SQLite was built in, which would write in the clear.
fn cipher_version(conn: &Connection) -> Option<String> {
    conn.query_row("PRAGMA cipher_version", [], |row| row.get(0))
        .ok()
}
