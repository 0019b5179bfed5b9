//! The projection: tables of what counts now, drawn from the ink. They depend only on which lines there are, never on the order
//! in which these arrived.

use crate::entry::{Entry, Subject};
use crate::error::Result;
use crate::finding;
use crate::ink::{self, Line, LineId};
use rusqlite::{Connection, params};
use std::collections::BTreeSet;
use trade::ids::PropertyId;
use trade::mark::Condition;
use trade::stack::LayerIs;
use uuid::Uuid;

/// The line of a subject that stands, and the first one.
struct Standing<'l> {
    born: LineId,
    line: &'l Line,
}

/// Draws one subject anew from its lines.
pub(crate) fn subject(conn: &Connection, subject: Subject) -> Result<()> {
    draw(conn, subject, &ink::of_subject(conn, subject)?)
}

/// Draws a subject whose newest line takes the place of all others, as every line of this device does.
pub(crate) fn stand_alone(conn: &Connection, line: &Line) -> Result<()> {
    let born = ink::first(conn, line.subject)?.unwrap_or(line.id);
    remove(conn, line.subject)?;
    insert(conn, &Standing { born, line })
}

/// Takes a property's rows out of all tables.
pub(crate) fn forget(conn: &Connection, property: PropertyId) -> Result<()> {
    let mut statement = conn.prepare("SELECT kind, id FROM record WHERE property = ?1")?;
    let mut rows = statement.query([property.0.as_bytes()])?;
    let mut subjects = Vec::new();
    while let Some(row) = rows.next()? {
        let kind: String = row.get(0)?;
        subjects.push(Subject::from_stored(&kind, Uuid::from_bytes(row.get(1)?))?);
    }
    subjects
        .into_iter()
        .try_for_each(|subject| remove(conn, subject))
}

/// Draws one subject anew; `lines` are all its lines in order.
fn draw(conn: &Connection, subject: Subject, lines: &[Line]) -> Result<()> {
    remove(conn, subject)?;
    if let Some(standing) = settle(lines) {
        insert(conn, &standing)?;
    }
    Ok(())
}

/// Which line of a subject stands: of those whose place no other has taken the latest. Of two assessments made apart the worse
/// stands until a person settles it.
fn settle(lines: &[Line]) -> Option<Standing<'_>> {
    let born = lines.first()?.id;
    let superseded: BTreeSet<LineId> = lines
        .iter()
        .flat_map(|line| line.supersedes.iter().copied())
        .collect();
    gravest(lines.iter().filter(|line| !superseded.contains(&line.id)))
        .map(|line| Standing { born, line })
}

/// Of lines about one subject the worst assessment; of equals, and of all other records, the latest.
pub(crate) fn gravest<'l>(lines: impl Iterator<Item = &'l Line>) -> Option<&'l Line> {
    lines.max_by_key(|line| (gravity(line), line.id))
}

/// How bad an assessment is; other records are all alike.
fn gravity(line: &Line) -> u8 {
    match &line.entry {
        Some(Entry::Mark(mark)) => match mark.condition {
            Condition::NotSeen { .. } => 1,
            Condition::Gone => 2,
            Condition::Seen { rung, .. } => 3 + rung as u8,
        },
        _ => 0,
    }
}

fn remove(conn: &Connection, subject: Subject) -> Result<()> {
    let id = *subject.uuid().as_bytes();
    conn.prepare_cached("DELETE FROM record WHERE id = ?1 AND kind = ?2")?
        .execute(params![id, subject.kind()])?;
    if let Subject::Property(_) = subject {
        finding::remove(conn, id)?;
    }
    let tables: &[&str] = match subject {
        Subject::Joining(_) => &["joined"],
        Subject::Erasure(_) => &["erased"],
        Subject::Visit(_) => &["visit"],
        Subject::Reminder(_) => &["due"],
        Subject::Photo(_) | Subject::Letter(_) => &["content_use"],
        Subject::Part(_) => &["part"],
        Subject::Mark(_) => &["defect_seen"],
        Subject::Stack(_) => &["top_covering"],
        _ => &[],
    };
    for table in tables {
        conn.prepare_cached(&format!("DELETE FROM {table} WHERE id = ?1"))?
            .execute([id])?;
    }
    Ok(())
}

fn insert(conn: &Connection, standing: &Standing) -> Result<()> {
    let line = standing.line;
    let Some(entry) = &line.entry else {
        return Ok(());
    };
    if let Entry::Erased { property } = entry {
        conn.prepare_cached("INSERT INTO erased VALUES (?1, ?2)")?
            .execute(params![property.0.as_bytes(), line.clock.as_millisecond()])?;
    }
    let Some(text) = &line.text else {
        return Ok(());
    };
    let property = line.property.map(|id| id.0.into_bytes());
    let property = property.as_ref().map_or(&[][..], |bytes| &bytes[..]);
    conn.prepare_cached("INSERT INTO record VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)")?
        .execute(params![
            property,
            line.subject.kind(),
            line.subject.uuid().as_bytes(),
            standing.born.time.stored(),
            standing.born.device.0.as_bytes(),
            line.id.time.stored(),
            line.id.device.0.as_bytes(),
            text,
        ])?;
    index(conn, property, entry)
}

/// The rows by which a record is found.
fn index(conn: &Connection, property: &[u8], entry: &Entry) -> Result<()> {
    match entry {
        Entry::Property(record) => {
            finding::insert(conn, record)?;
            0
        }
        Entry::Joined { kept, other } => conn
            .prepare_cached("INSERT INTO joined VALUES (?1, ?2)")?
            .execute(params![other.0.as_bytes(), kept.0.as_bytes()])?,
        Entry::Visit(visit) => conn
            .prepare_cached("INSERT INTO visit VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![
                visit.id.0.as_bytes(),
                property,
                visit.on.to_string(),
                visit.closed.is_none(),
            ])?,
        Entry::Reminder(reminder) if reminder.done.is_none() => conn
            .prepare_cached("INSERT INTO due VALUES (?1, ?2, ?3)")?
            .execute(params![
                reminder.id.0.as_bytes(),
                property,
                reminder.on.to_string(),
            ])?,
        Entry::Photo(photo) => content_use(conn, photo.id.0.as_bytes(), property, &photo.sha256)?,
        Entry::Letter(letter) => {
            content_use(conn, letter.id.0.as_bytes(), property, &letter.sha256)?
        }
        Entry::Part(part) => conn
            .prepare_cached("INSERT INTO part VALUES (?1, ?2, ?3)")?
            .execute(params![
                part.id.0.as_bytes(),
                part.structure.0.as_bytes(),
                part.kind.as_str(),
            ])?,
        Entry::Mark(mark) => {
            let mut insert =
                conn.prepare_cached("INSERT OR IGNORE INTO defect_seen VALUES (?1, ?2, ?3)")?;
            for seen in &mark.defects {
                insert.execute(params![
                    mark.id.0.as_bytes(),
                    mark.part.0.as_bytes(),
                    seen.defect.as_str(),
                ])?;
            }
            0
        }
        Entry::Stack(stack) => match stack.layers.first().map(|layer| layer.is) {
            Some(LayerIs::Covering(covering)) => conn
                .prepare_cached("INSERT INTO top_covering VALUES (?1, ?2, ?3)")?
                .execute(params![
                    stack.id.0.as_bytes(),
                    stack.structure.0.as_bytes(),
                    covering.key(),
                ])?,
            _ => 0,
        },
        _ => 0,
    };
    Ok(())
}

fn content_use(conn: &Connection, id: &[u8], property: &[u8], sha256: &str) -> Result<usize> {
    let Some(sha256) = crate::seal::unhex::<32>(sha256) else {
        return Ok(0);
    };
    Ok(conn
        .prepare_cached("INSERT INTO content_use VALUES (?1, ?2, ?3)")?
        .execute(params![id, property, sha256])?)
}
