//! The steps of the schema, forward only. A new book takes them all; an older one takes those it lacks, in one transaction.

use crate::error::{BookError, Result};
use crate::rebuild;
use rusqlite::{Connection, Transaction, TransactionBehavior};

/// The steps, oldest first. A step that has been in a book is never edited; the next one is added below it.
const STEPS: &[&str] = &[
    include_str!("schema/001_ink.sql"),
    include_str!("schema/002_records.sql"),
    include_str!("schema/003_search.sql"),
];

/// The version this program writes.
pub(crate) fn latest() -> i64 {
    i64::try_from(STEPS.len()).unwrap_or(i64::MAX)
}

/// The version a database is in.
pub(crate) fn version(conn: &Connection) -> Result<i64> {
    Ok(conn.pragma_query_value(None, "user_version", |row| row.get(0))?)
}

/// Brings a database to the latest version. Either all of it happens or nothing.
///
/// # Errors
/// [`BookError::NewerVersion`] where a later program wrote it; damage where its tables cannot be made anew.
pub(crate) fn upgrade(conn: &Connection) -> Result<()> {
    upgrade_to(conn, STEPS.len())
}

fn upgrade_to(conn: &Connection, steps: usize) -> Result<()> {
    let found = version(conn)?;
    let known = latest();
    let done = usize::try_from(found)
        .map_err(|_| BookError::damaged("the version of book.db does not read"))?;
    if done > STEPS.len() {
        return Err(BookError::NewerVersion { found, known });
    }
    let missing = STEPS.get(done..steps).unwrap_or_default();
    if missing.is_empty() {
        return Ok(());
    }
    let transaction = Transaction::new_unchecked(conn, TransactionBehavior::Exclusive)?;
    for step in missing {
        transaction.execute_batch(step)?;
    }
    transaction.pragma_update(None, "user_version", i64::try_from(steps).unwrap_or(known))?;
    if done > 0 && steps == STEPS.len() {
        rebuild::rebuild(&transaction)?;
    }
    transaction.commit()?;
    Ok(())
}
