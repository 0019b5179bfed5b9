//! The ink: the append-only journal of everything recorded. A correction is a later line, never an erasure.

use crate::entry::{Entry, Subject};
use crate::error::{BookError, Result};
use crate::hlc::{ClockOdd, HybridTime};
use crate::seal::{self, Secret};
use jiff::Timestamp;
use rusqlite::{Connection, OptionalExtension, Params, Row, params};
use std::fmt;
use trade::ids::{DeviceId, PropertyId, VisitId};
use trade::words::Said;
use uuid::Uuid;

/// Names one line: when it was written and by which device.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LineId {
    /// When.
    pub time: HybridTime,
    /// By which device.
    pub device: DeviceId,
}

impl fmt::Display for LineId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}@{}", self.time, self.device)
    }
}

/// Names all lines written in one transaction: one act of a person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ActId {
    /// The time of its first line.
    pub time: HybridTime,
    /// The device.
    pub device: DeviceId,
}

/// One line of ink.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Its name.
    pub id: LineId,
    /// The act it was written in.
    pub act: ActId,
    /// What the device's clock said.
    pub clock: Timestamp,
    /// Whether that clock was far off.
    pub odd: Option<ClockOdd>,
    /// What it is about.
    pub subject: Subject,
    /// The property it belongs to.
    pub property: Option<PropertyId>,
    /// The visit it belongs to.
    pub visit: Option<VisitId>,
    /// What it says; `None` where its property was erased.
    pub entry: Option<Entry>,
    /// What it says, as it was written down: never written anew from `entry`, so that nothing can change on the way.
    pub(crate) text: Option<String>,
    /// The lines whose place it takes.
    pub supersedes: Vec<LineId>,
    /// The line it undoes.
    pub undoes: Option<LineId>,
}

/// Appends a line, its value sealed under its property's key. `false` where the line is there already.
pub(crate) fn append(conn: &Connection, line: &Line) -> Result<bool> {
    if exists(conn, line.id)? {
        return Ok(false);
    }
    let sealed = match (&line.entry, &line.text, line.property) {
        (None, _, _) => Some(Vec::new()),
        (Some(_), None, _) => None,
        (Some(_), Some(text), None) => Some(text.clone().into_bytes()),
        (Some(_), Some(text), Some(property)) => match property_key(conn, property)? {
            Some(key) => {
                let about = about(line.id, line.subject);
                Some(seal::seal(&key, text.as_bytes(), &about)?)
            }
            // Words that cannot be sealed are refused, never dropped.
            None => return Err(key_is_gone(property)),
        },
    };
    conn.prepare_cached(include_str!("sql/append_line.sql"))?
        .execute(params![
            line.id.time.stored(),
            line.id.device.0.as_bytes(),
            line.act.time.stored(),
            line.clock.as_millisecond(),
            ClockOdd::stored(line.odd),
            line.subject.kind(),
            line.subject.uuid().as_bytes(),
            line.property.as_ref().map(|id| id.0.as_bytes()),
            line.visit.as_ref().map(|id| id.0.as_bytes()),
            sealed,
            line.undoes.map(|undone| undone.time.stored()),
            line.undoes
                .as_ref()
                .map(|undone| undone.device.0.as_bytes()),
        ])?;
    let mut insert = conn.prepare_cached("INSERT INTO supersedes VALUES (?1, ?2, ?3, ?4)")?;
    for older in &line.supersedes {
        insert.execute(params![
            older.time.stored(),
            older.device.0.as_bytes(),
            line.id.time.stored(),
            line.id.device.0.as_bytes(),
        ])?;
    }
    Ok(true)
}

/// What is bound to a sealed value, so that no value can be moved to another line.
fn about(id: LineId, subject: Subject) -> Vec<u8> {
    let mut about = Vec::with_capacity(64);
    about.extend_from_slice(&id.time.stored().to_be_bytes());
    about.extend_from_slice(id.device.0.as_bytes());
    about.extend_from_slice(subject.uuid().as_bytes());
    about.extend_from_slice(subject.kind().as_bytes());
    about
}

fn exists(conn: &Connection, id: LineId) -> Result<bool> {
    Ok(conn
        .prepare_cached("SELECT 1 FROM ink WHERE time = ?1 AND device = ?2")?
        .exists(params![id.time.stored(), id.device.0.as_bytes()])?)
}

/// The time of the last line.
pub(crate) fn last_time(conn: &Connection) -> Result<HybridTime> {
    let last: Option<i64> = conn.query_row("SELECT max(time) FROM ink", [], |row| row.get(0))?;
    Ok(HybridTime::from_stored(last.unwrap_or_default()))
}

/// The first line about a subject.
pub(crate) fn first(conn: &Connection, subject: Subject) -> Result<Option<LineId>> {
    Ok(conn
        .prepare_cached(
            "SELECT time, device FROM ink WHERE subject = ?1 AND kind = ?2 ORDER BY time, device LIMIT 1",
        )?
        .query_row(params![subject.uuid().as_bytes(), subject.kind()], read_line_id)
        .optional()?)
}

/// The lines of a subject whose place no other line has taken, in order.
pub(crate) fn heads(conn: &Connection, subject: Subject) -> Result<Vec<LineId>> {
    let mut statement = conn.prepare_cached(include_str!("sql/heads.sql"))?;
    let rows = statement.query_map(
        params![subject.uuid().as_bytes(), subject.kind()],
        read_line_id,
    )?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// The latest line of a visit that is no undoing and was not undone.
pub(crate) fn last_of_visit(conn: &Connection, visit: VisitId) -> Result<Option<LineId>> {
    Ok(conn
        .prepare_cached(include_str!("sql/last_line_of_visit.sql"))?
        .query_row([visit.0.as_bytes()], read_line_id)
        .optional()?)
}

/// One line.
pub(crate) fn line(conn: &Connection, id: LineId) -> Result<Option<Line>> {
    let found = lines(
        conn,
        "WHERE time = ?1 AND device = ?2",
        params![id.time.stored(), id.device.0.as_bytes()],
    )?;
    Ok(found.into_iter().next())
}

/// The lines of one act, in order.
pub(crate) fn of_act(conn: &Connection, act: ActId) -> Result<Vec<Line>> {
    lines(
        conn,
        "WHERE act = ?1 AND device = ?2 ORDER BY time",
        params![act.time.stored(), act.device.0.as_bytes()],
    )
}

/// The lines about one subject, in order.
pub(crate) fn of_subject(conn: &Connection, subject: Subject) -> Result<Vec<Line>> {
    lines(
        conn,
        "WHERE subject = ?1 AND kind = ?2 ORDER BY time, device",
        params![subject.uuid().as_bytes(), subject.kind()],
    )
}

/// The lines of one property, or the firm's own, in order.
pub(crate) fn of_property(conn: &Connection, property: Option<PropertyId>) -> Result<Vec<Line>> {
    lines(
        conn,
        "WHERE property IS ?1 ORDER BY time, device",
        params![property.as_ref().map(|id| id.0.as_bytes())],
    )
}

/// The properties that any line belongs to.
pub(crate) fn properties(conn: &Connection) -> Result<Vec<PropertyId>> {
    let mut statement =
        conn.prepare("SELECT DISTINCT property FROM ink WHERE property IS NOT NULL")?;
    let rows = statement.query_map([], |row| row.get(0).map(Uuid::from_bytes))?;
    Ok(rows
        .map(|row| row.map(PropertyId))
        .collect::<rusqlite::Result<_>>()?)
}

fn lines(conn: &Connection, which: &str, params: impl Params) -> Result<Vec<Line>> {
    let sql = format!("{}{which}", include_str!("sql/lines.sql"));
    let mut statement = conn.prepare_cached(&sql)?;
    let mut rows = statement.query(params)?;
    let mut keys = Keys::new(conn);
    let mut out = Vec::new();
    while let Some(row) = rows.next()? {
        out.push(read_line(conn, row, &mut keys)?);
    }
    Ok(out)
}

fn read_line(conn: &Connection, row: &Row, keys: &mut Keys) -> Result<Line> {
    let id = read_line_id(row)?;
    let kind: String = row.get(5)?;
    let subject = Subject::from_stored(&kind, Uuid::from_bytes(row.get(6)?))?;
    let property = row
        .get::<_, Option<[u8; 16]>>(7)?
        .map(|bytes| PropertyId(Uuid::from_bytes(bytes)));
    let value: Option<Vec<u8>> = row.get(9)?;
    let (entry, text) = match unsealed(value, id, subject, property, keys)? {
        Value::TakesBack => (Some(Entry::from_stored(subject, None)?), None),
        Value::Says(text) => (Some(Entry::from_stored(subject, Some(&text))?), Some(text)),
        Value::Erased => (None, None),
    };
    Ok(Line {
        id,
        act: ActId {
            time: HybridTime::from_stored(row.get(2)?),
            device: id.device,
        },
        clock: Timestamp::from_millisecond(row.get(3)?)
            .map_err(|_| damaged_line("damage-line-time", id))?,
        odd: ClockOdd::from_stored(row.get(4)?),
        subject,
        property,
        visit: row
            .get::<_, Option<[u8; 16]>>(8)?
            .map(|bytes| VisitId(Uuid::from_bytes(bytes))),
        entry,
        text,
        supersedes: superseded_by(conn, id)?,
        undoes: undone_by(row)?,
    })
}

/// The value of a line, once it is unsealed.
enum Value {
    /// None: the subject is taken back.
    TakesBack,
    /// What was written down.
    Says(String),
    /// Its property was erased.
    Erased,
}

fn unsealed(
    value: Option<Vec<u8>>,
    id: LineId,
    subject: Subject,
    property: Option<PropertyId>,
    keys: &mut Keys,
) -> Result<Value> {
    let changed = || damaged_line("damage-line-changed", id);
    let plain = match (value, property) {
        (None, _) => return Ok(Value::TakesBack),
        (Some(nothing), Some(_)) if nothing.is_empty() => return Ok(Value::Erased),
        (Some(plain), None) => plain,
        (Some(sealed), Some(property)) => {
            let conn = keys.conn;
            match keys.of(property)? {
                Some(key) => seal::unseal(key, &sealed, &about(id, subject)).ok_or_else(changed)?,
                None if is_erased(conn, property)? => return Ok(Value::Erased),
                None => return Err(key_is_gone(property)),
            }
        }
    };
    String::from_utf8(plain)
        .map(Value::Says)
        .map_err(|_| changed())
}

fn key_is_gone(property: PropertyId) -> BookError {
    damaged_key("damage-key-gone", property)
}

fn damaged_line(what: &str, id: LineId) -> BookError {
    BookError::damage(Said::new(what).with("line", id.to_string()))
}

fn damaged_key(what: &str, property: PropertyId) -> BookError {
    BookError::damage(Said::new(what).with("property", property.to_string()))
}

fn read_line_id(row: &Row) -> rusqlite::Result<LineId> {
    Ok(LineId {
        time: HybridTime::from_stored(row.get(0)?),
        device: DeviceId(Uuid::from_bytes(row.get(1)?)),
    })
}

fn undone_by(row: &Row) -> Result<Option<LineId>> {
    let (time, device): (Option<i64>, Option<[u8; 16]>) = (row.get(10)?, row.get(11)?);
    Ok(time.zip(device).map(|(time, device)| LineId {
        time: HybridTime::from_stored(time),
        device: DeviceId(Uuid::from_bytes(device)),
    }))
}

fn superseded_by(conn: &Connection, id: LineId) -> Result<Vec<LineId>> {
    let mut statement = conn.prepare_cached(
        "SELECT older_time, older_device FROM supersedes WHERE time = ?1 AND device = ?2 ORDER BY older_time, older_device",
    )?;
    let rows = statement.query_map(
        params![id.time.stored(), id.device.0.as_bytes()],
        read_line_id,
    )?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// The key of a property, where it has one.
pub(crate) fn property_key(conn: &Connection, property: PropertyId) -> Result<Option<Secret>> {
    let bytes: Option<Vec<u8>> = conn
        .prepare_cached("SELECT key FROM property_key WHERE property = ?1")?
        .query_row([property.0.as_bytes()], |row| row.get(0))
        .optional()?;
    bytes
        .map(|bytes| {
            Secret::from_slice(&zeroize::Zeroizing::new(bytes))
                .ok_or_else(|| damaged_key("damage-key-unread", property))
        })
        .transpose()
}

/// Gives a property a key, where it has none.
pub(crate) fn ensure_property_key(conn: &Connection, property: PropertyId) -> Result<()> {
    if property_key(conn, property)?.is_none() {
        conn.prepare_cached("INSERT INTO property_key VALUES (?1, ?2)")?
            .execute(params![property.0.as_bytes(), Secret::generate()?.bytes()])?;
    }
    Ok(())
}

/// Whether the ink says that a property was erased.
pub(crate) fn is_erased(conn: &Connection, property: PropertyId) -> Result<bool> {
    Ok(conn
        .prepare_cached("SELECT 1 FROM ink WHERE subject = ?1 AND kind = 'erasure'")?
        .exists([property.0.as_bytes()])?)
}

/// Keys while many lines of one property are read: the last one is kept at hand.
struct Keys<'c> {
    conn: &'c Connection,
    last: Option<(PropertyId, Option<Secret>)>,
}

impl<'c> Keys<'c> {
    fn new(conn: &'c Connection) -> Self {
        Self { conn, last: None }
    }

    fn of(&mut self, property: PropertyId) -> Result<Option<&Secret>> {
        if self.last.as_ref().is_none_or(|(of, _)| *of != property) {
            self.last = Some((property, property_key(self.conn, property)?));
        }
        Ok(self.last.as_ref().and_then(|(_, key)| key.as_ref()))
    }
}
