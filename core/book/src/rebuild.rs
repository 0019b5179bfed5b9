//! Making all tables anew from the ink, and comparing them with what stood there.

use crate::entry::Subject;
use crate::error::Result;
use crate::project;
use crate::records::Records;
use crate::seal;
use rusqlite::types::ValueRef;
use rusqlite::{Connection, Row};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::fmt;
use trade::words::Said;
use uuid::Uuid;

/// The tables drawn from the ink, and their rows as they are compared. The first column names the subject.
const COMPARED: &[(&str, &str)] = &[
    (
        "record",
        "SELECT id, property, kind, born_time, born_device, time, device, value FROM record",
    ),
    ("joined", "SELECT id, kept FROM joined"),
    ("erased", "SELECT id, clock FROM erased"),
    (
        "content_use",
        "SELECT id, property, sha256 FROM content_use",
    ),
    ("visit", "SELECT id, property, day, open FROM visit"),
    ("due", "SELECT id, property, day FROM due"),
    ("part", "SELECT id, structure, part_kind FROM part"),
    ("defect_seen", "SELECT id, part, defect FROM defect_seen"),
    (
        "top_covering",
        "SELECT id, structure, covering FROM top_covering",
    ),
    (
        "address",
        "SELECT id, place, key, house, street, line, town, region, postcode FROM address",
    ),
    ("person", "SELECT id, place, name FROM person"),
    ("name_word", "SELECT id, place, word FROM name_word"),
    (
        "phone",
        "SELECT id, place, number, digits, last_seven, backwards FROM phone",
    ),
    (
        "position",
        "SELECT id, south, north, west, east, latitude, longitude FROM position",
    ),
    ("position_of", "SELECT id FROM position_of"),
];

/// What one table said of one record before, and what the ink says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Differs {
    /// The table lacked it.
    Lacked,
    /// The table had it and the ink does not.
    Stray,
    /// Both have it and they are not the same.
    Changed,
}

/// One difference between the tables as they stood and the ink.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Difference {
    /// The table.
    pub table: &'static str,
    /// The record.
    pub id: Uuid,
    /// In what way.
    pub differs: Differs,
}

impl Difference {
    /// What to tell the person, as half a sentence.
    pub fn says(&self) -> Said {
        let key = match self.differs {
            Differs::Lacked => "differs-lacked",
            Differs::Stray => "differs-stray",
            Differs::Changed => "differs-changed",
        };
        Said::new(key)
            .with("table", self.table)
            .with("id", self.id.to_string())
    }
}

impl fmt::Display for Difference {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

/// What a rebuild found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rebuilt {
    /// Lines of ink read.
    pub lines: u64,
    /// Records that count now.
    pub records: u64,
    /// Where the tables did not say what the ink says. Empty for a healthy book.
    pub differences: Vec<Difference>,
}

/// Makes all tables anew. The caller owns the transaction.
pub(crate) fn rebuild(conn: &Connection) -> Result<Rebuilt> {
    let stood = fingerprints(conn)?;
    for (table, _) in COMPARED {
        conn.execute(&format!("DELETE FROM {table}"), [])?;
    }
    for subject in subjects(conn)? {
        project::subject(conn, subject)?;
    }
    let made = fingerprints(conn)?;
    Ok(Rebuilt {
        lines: count(conn, "ink")?,
        records: count(conn, "record")?,
        differences: differences(&stood, &made),
    })
}

impl Records {
    /// A digest of all that counts now. Two books with the same ink have the same, in whatever order its lines arrived.
    ///
    /// # Errors
    /// What the disk says.
    pub fn digest(&self) -> Result<String> {
        let mut hash = Sha256::new();
        for ((table, id), sum) in fingerprints(&self.conn)? {
            hash.update(table.as_bytes());
            hash.update(id);
            hash.update(sum.to_be_bytes());
        }
        Ok(seal::hex(&hash.finalize()))
    }
}

fn subjects(conn: &Connection) -> Result<Vec<Subject>> {
    let mut statement = conn.prepare(include_str!("sql/subjects.sql"))?;
    let mut rows = statement.query([])?;
    let mut out = Vec::new();
    while let Some(row) = rows.next()? {
        let kind: String = row.get(0)?;
        out.push(Subject::from_stored(&kind, Uuid::from_bytes(row.get(1)?))?);
    }
    Ok(out)
}

pub(crate) fn count(conn: &Connection, table: &str) -> Result<u64> {
    let count: i64 = conn.query_row(&format!("SELECT count(*) FROM {table}"), [], |row| {
        row.get(0)
    })?;
    Ok(count.unsigned_abs())
}

/// For each table and record the sum of the hashes of its rows: it does not depend on their order.
type Fingerprints = BTreeMap<(&'static str, [u8; 16]), u128>;

fn fingerprints(conn: &Connection) -> Result<Fingerprints> {
    let mut out = Fingerprints::new();
    for (table, select) in COMPARED {
        let mut statement = conn.prepare(select)?;
        let columns = statement.column_count();
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let sum = out.entry((table, row.get(0)?)).or_default();
            *sum = sum.wrapping_add(fingerprint(row, columns)?);
        }
    }
    Ok(out)
}

fn fingerprint(row: &Row, columns: usize) -> Result<u128> {
    let mut hash = Sha256::new();
    for column in 0..columns {
        let (tag, bytes): (u8, &[u8]) = match row.get_ref(column)? {
            ValueRef::Null => (0, &[]),
            ValueRef::Integer(number) => (1, &number.to_be_bytes()),
            ValueRef::Real(number) => (2, &number.to_be_bytes()),
            ValueRef::Text(text) => (3, text),
            ValueRef::Blob(blob) => (4, blob),
        };
        hash.update([tag]);
        hash.update((bytes.len() as u64).to_be_bytes());
        hash.update(bytes);
    }
    let digest: [u8; 32] = hash.finalize().into();
    let (half, _) = digest.split_first_chunk().unwrap_or((&[0; 16], &[]));
    Ok(u128::from_be_bytes(*half))
}

fn differences(stood: &Fingerprints, made: &Fingerprints) -> Vec<Difference> {
    let of = |(table, id): &(&'static str, [u8; 16]), differs| Difference {
        table,
        id: Uuid::from_bytes(*id),
        differs,
    };
    let mut out: Vec<Difference> = stood
        .iter()
        .filter_map(|(key, sum)| match made.get(key) {
            None => Some(of(key, Differs::Stray)),
            Some(now) if now != sum => Some(of(key, Differs::Changed)),
            Some(_) => None,
        })
        .collect();
    let lacked = made.keys().filter(|key| !stood.contains_key(key));
    out.extend(lacked.map(|key| of(key, Differs::Lacked)));
    out
}
