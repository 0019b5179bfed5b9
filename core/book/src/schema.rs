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
    let done = usize::try_from(found).map_err(|_| BookError::damaged("damage-version"))?;
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::Entry;
    use crate::hlc::HybridTime;
    use crate::ink::{self, ActId, Line, LineId};
    use crate::rebuild::rebuild;
    use jiff::Timestamp;
    use jiff::civil::date;
    use trade::ids::{DeviceId, PersonId, PropertyId};
    use trade::property::{Address, Person, Property, Role};
    use uuid::Uuid;

    /// A database as an earlier program left it, with some lines of ink.
    fn at_version(steps: usize) -> Connection {
        let conn = Connection::open_in_memory().unwrap();
        upgrade_to(&conn, steps).unwrap();
        assert_eq!(version(&conn).unwrap(), i64::try_from(steps).unwrap());
        for number in 1..4 {
            let property = property(number);
            ink::ensure_property_key(&conn, property.id).unwrap();
            ink::append(&conn, &line(number, property)).unwrap();
        }
        conn
    }

    fn property(number: u128) -> Property {
        Property {
            id: PropertyId(Uuid::from_u128(number)),
            address: Address {
                line: format!("{number} Larkspur Hollow Rd"),
                ..Address::default()
            },
            also: Vec::new(),
            position: None,
            people: vec![Person {
                id: PersonId(Uuid::from_u128(number)),
                name: "Winifred Quillfeather".to_owned(),
                role: Role::Owner,
                phones: vec!["320-555-0142".to_owned()],
                email: None,
            }],
            built: None,
            dangers: Vec::new(),
            since: date(2023, 11, 14),
        }
    }

    fn line(number: u128, property: Property) -> Line {
        let time = HybridTime::from_stored(i64::try_from(number).unwrap() << 20);
        let device = DeviceId(Uuid::from_u128(0xd1));
        let id = property.id;
        let (text, entry) = Entry::Property(property).written_down().unwrap();
        Line {
            id: LineId { time, device },
            act: ActId { time, device },
            clock: Timestamp::UNIX_EPOCH,
            odd: None,
            subject: entry.subject(),
            property: Some(id),
            visit: None,
            text,
            entry: Some(entry),
            supersedes: Vec::new(),
            undoes: None,
        }
    }

    fn shape(conn: &Connection) -> Vec<String> {
        let mut statement = conn
            .prepare("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name")
            .unwrap();
        let rows = statement.query_map([], |row| row.get(0)).unwrap();
        rows.map(|row| row.unwrap()).collect()
    }

    fn table(conn: &Connection, select: &str) -> Vec<Vec<rusqlite::types::Value>> {
        let mut statement = conn.prepare(select).unwrap();
        let columns = statement.column_count();
        let rows = statement
            .query_map([], |row| (0..columns).map(|at| row.get(at)).collect())
            .unwrap();
        rows.map(|row| row.unwrap()).collect()
    }

    #[test]
    fn from_every_version_a_book_comes_to_the_shape_and_content_of_a_new_one() {
        let fresh = at_version(STEPS.len());
        rebuild(&fresh).unwrap();
        for steps in 1..STEPS.len() {
            let old = at_version(steps);
            upgrade(&old).unwrap();
            assert_eq!(version(&old).unwrap(), latest());
            assert_eq!(shape(&old), shape(&fresh), "from version {steps}");
            for select in [
                "SELECT property, kind, id, value FROM record ORDER BY id",
                "SELECT id, key, street FROM address ORDER BY id",
                "SELECT id, digits FROM phone ORDER BY id",
                "SELECT word, times FROM known_word ORDER BY word",
            ] {
                assert_eq!(table(&old, select), table(&fresh, select), "{select}");
            }
            assert_eq!(table(&old, "SELECT id FROM record").len(), 3);
        }
    }

    #[test]
    fn an_upgrade_happens_whole_or_not_at_all() {
        let old = at_version(1);
        // Something stands where a later step wants to put its table.
        old.execute_batch("CREATE TABLE phone (number TEXT)")
            .unwrap();
        let before = shape(&old);
        assert!(upgrade(&old).is_err());
        assert_eq!(version(&old).unwrap(), 1);
        assert_eq!(shape(&old), before);
    }

    #[test]
    fn a_newer_book_is_refused_untouched() {
        let newer = at_version(STEPS.len());
        newer
            .pragma_update(None, "user_version", latest() + 1)
            .unwrap();
        let before = shape(&newer);
        assert!(matches!(
            upgrade(&newer),
            Err(BookError::NewerVersion { found, known }) if found == known + 1
        ));
        assert_eq!(shape(&newer), before);
    }

    #[test]
    fn ink_is_neither_changed_nor_removed() {
        let conn = at_version(STEPS.len());
        conn.execute_batch("INSERT INTO supersedes VALUES (1, x'01', 2, x'01')")
            .unwrap();
        for sql in [
            "UPDATE ink SET value = NULL",
            "DELETE FROM ink",
            "INSERT OR REPLACE INTO ink SELECT * FROM ink",
            "UPDATE supersedes SET time = 0",
            "DELETE FROM supersedes",
        ] {
            assert!(conn.execute(sql, []).is_err(), "{sql}");
        }
        assert_eq!(table(&conn, "SELECT value FROM ink").len(), 3);
    }
}
