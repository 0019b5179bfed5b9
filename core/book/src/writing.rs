//! One act of a person, being written: every line of it lands, or none.

use crate::content;
use crate::entry::{Belongs, Entry, Subject};
use crate::error::{BookError, Result};
use crate::hlc::{Clock, HybridTime};
use crate::ink::{self, ActId, Line, LineId};
use crate::project;
use crate::records::Records;
use jiff::Timestamp;
use rusqlite::OptionalExtension;
use rusqlite::params;
use std::ops::Deref;
use trade::ids::{PropertyId, VisitId};
use uuid::Uuid;

/// The writing side of an open book, within one transaction. It reads through [`Records`] and sees what it wrote.
pub struct Writing<'b> {
    records: &'b Records,
    clock: &'b mut Clock,
    now: Timestamp,
    act: Option<HybridTime>,
    /// Files to remove once this is written; `None` where nothing was erased.
    doomed: Option<Vec<[u8; 32]>>,
}

impl Deref for Writing<'_> {
    type Target = Records;

    fn deref(&self) -> &Records {
        self.records
    }
}

impl<'b> Writing<'b> {
    pub(crate) fn new(records: &'b Records, clock: &'b mut Clock, now: Timestamp) -> Self {
        Self {
            records,
            clock,
            now,
            act: None,
            doomed: None,
        }
    }

    /// The files that go once this is written; `None` where nothing was erased.
    pub(crate) fn doomed(self) -> Option<Vec<[u8; 32]>> {
        self.doomed
    }

    /// Records something. It takes the place of what was recorded about the same subject before.
    ///
    /// # Errors
    /// [`BookError::Unknown`] where it belongs to something the book does not hold, [`BookError::Erased`] where that was erased,
    /// [`BookError::JoinedWithItself`].
    pub fn record(&mut self, entry: impl Into<Entry>) -> Result<LineId> {
        self.put(entry.into(), None)
    }

    /// Takes a record back; its lines stay.
    ///
    /// # Errors
    /// [`BookError::Unknown`] where there is none.
    pub fn withdraw(&mut self, subject: impl Into<Subject>) -> Result<LineId> {
        self.put(Entry::Withdrawn(subject.into()), None)
    }

    /// Undoes one line by a later line: what stood before it stands again, or nothing where nothing did.
    ///
    /// # Errors
    /// [`BookError::Unknown`] where there is no such line or it cannot be undone: an erasure is for good.
    pub fn undo(&mut self, id: LineId) -> Result<LineId> {
        let unknown = BookError::Unknown { what: "entry" };
        let Some(line) = ink::line(&self.records.conn, id)? else {
            return Err(unknown);
        };
        if matches!(line.subject, Subject::Erasure(_)) || line.entry.is_none() {
            return Err(unknown);
        }
        let before = match self.before(&line)? {
            Some(before) => before,
            None => match line.subject {
                Subject::Joining(other) => Entry::Parted { other },
                subject => Entry::Withdrawn(subject),
            },
        };
        self.put(before, Some(id))
    }

    /// Undoes all lines of an act, the last one first.
    ///
    /// # Errors
    /// As [`Writing::undo`].
    pub fn undo_act(&mut self, act: ActId) -> Result<Vec<LineId>> {
        let lines = ink::of_act(&self.records.conn, act)?;
        lines.iter().rev().map(|line| self.undo(line.id)).collect()
    }

    /// What stood before a line.
    fn before(&self, line: &Line) -> Result<Option<Entry>> {
        let mut earlier = Vec::new();
        for id in &line.supersedes {
            earlier.extend(ink::line(&self.records.conn, *id)?);
        }
        Ok(project::gravest(earlier.iter()).and_then(|line| line.entry.clone()))
    }

    /// Takes in a line that another device wrote. `false` where it is there already. A line of a property that was erased is kept
    /// without its words.
    ///
    /// # Errors
    /// What the disk says.
    pub fn take_in(&mut self, line: &Line) -> Result<bool> {
        let conn = &self.records.conn;
        let mut line = line.clone();
        line.odd = line.odd.or(self.clock.hear(line.id.time, self.now));
        if let Some(property) = line.property {
            if ink::is_erased(conn, property)? {
                (line.entry, line.text) = (None, None);
            } else if line.entry.is_some() {
                ink::ensure_property_key(conn, property)?;
            }
        }
        if !ink::append(conn, &line)? {
            return Ok(false);
        }
        if let Subject::Erasure(property) = line.subject {
            self.destroy_words(property)?;
        }
        project::subject(conn, line.subject)?;
        Ok(true)
    }

    fn put(&mut self, entry: Entry, undoes: Option<LineId>) -> Result<LineId> {
        let conn = &self.records.conn;
        let (property, visit) = self.place(&entry)?;
        if let (Entry::Property(_), Some(property)) = (&entry, property) {
            ink::ensure_property_key(conn, property)?;
        }
        let (text, entry) = entry.written_down()?;
        let (time, odd) = self.clock.tick(self.now);
        let device = self.records.device;
        let id = LineId { time, device };
        let subject = entry.subject();
        let line = Line {
            id,
            act: ActId {
                time: *self.act.get_or_insert(time),
                device,
            },
            clock: self.now,
            odd,
            subject,
            property,
            visit,
            text,
            entry: Some(entry),
            supersedes: ink::heads(conn, subject)?,
            undoes,
        };
        ink::append(conn, &line)?;
        if let Subject::Erasure(property) = subject {
            self.destroy_words(property)?;
        }
        project::stand_alone(conn, &line)?;
        Ok(id)
    }

    /// The property and the visit that an entry belongs to.
    fn place(&self, entry: &Entry) -> Result<(Option<PropertyId>, Option<VisitId>)> {
        if let Entry::Withdrawn(subject) = entry {
            if matches!(subject, Subject::Erasure(_)) {
                return Err(BookError::Erased);
            }
            return self.last_place(*subject);
        }
        if let Entry::Joined { kept, other } = entry {
            self.must_stand(Subject::Property(*kept))?;
            self.must_stand(Subject::Property(*other))?;
            if kept == other {
                return Err(BookError::JoinedWithItself);
            }
        }
        let property = match entry.belongs() {
            Belongs::Firm => None,
            Belongs::Property(id) if matches!(entry, Entry::Property(_)) => {
                self.must_not_be_erased(id)?;
                Some(id)
            }
            Belongs::Property(id) => {
                self.must_not_be_erased(id)?;
                self.must_stand(Subject::Property(id))?;
                Some(id)
            }
            Belongs::With(subject) => self.must_stand(subject)?,
        };
        Ok((property, entry.visit()))
    }

    fn must_not_be_erased(&self, property: PropertyId) -> Result<()> {
        if ink::is_erased(&self.records.conn, property)? {
            return Err(BookError::Erased);
        }
        Ok(())
    }

    /// The property of a record that counts now.
    fn must_stand(&self, subject: Subject) -> Result<Option<PropertyId>> {
        let found: Option<Vec<u8>> = self
            .records
            .conn
            .prepare_cached("SELECT property FROM record WHERE id = ?1 AND kind = ?2")?
            .query_row(params![subject.uuid().as_bytes(), subject.kind()], |row| {
                row.get(0)
            })
            .optional()?;
        let found = found.ok_or(BookError::Unknown {
            what: subject.kind(),
        })?;
        Ok(Uuid::from_slice(&found).ok().map(PropertyId))
    }

    /// The property and visit of the last line about a subject.
    fn last_place(&self, subject: Subject) -> Result<(Option<PropertyId>, Option<VisitId>)> {
        self.records
            .conn
            .prepare_cached(
                "SELECT property, visit FROM ink WHERE subject = ?1 AND kind = ?2 ORDER BY time DESC, device DESC LIMIT 1",
            )?
            .query_row(params![subject.uuid().as_bytes(), subject.kind()], |row| {
                let property: Option<[u8; 16]> = row.get(0)?;
                let visit: Option<[u8; 16]> = row.get(1)?;
                Ok((
                    property.map(|id| PropertyId(Uuid::from_bytes(id))),
                    visit.map(|id| VisitId(Uuid::from_bytes(id))),
                ))
            })
            .optional()?
            .ok_or(BookError::Unknown {
                what: subject.kind(),
            })
    }

    /// Destroys the key of a property and all that is readable of it.
    fn destroy_words(&mut self, property: PropertyId) -> Result<()> {
        let conn = &self.records.conn;
        let id = property.0.as_bytes();
        let used = content::used_only_by(conn, property)?;
        project::forget(conn, property)?;
        for sha256 in &used {
            conn.execute("DELETE FROM content WHERE sha256 = ?1", [sha256])?;
        }
        conn.execute("DELETE FROM draft WHERE property = ?1", [id])?;
        conn.execute("DELETE FROM property_key WHERE property = ?1", [id])?;
        self.doomed.get_or_insert_default().extend(used);
        Ok(())
    }
}
