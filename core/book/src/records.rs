//! The reading side of an open book.

use crate::entry::{Entry, Subject};
use crate::error::{BookError, Result};
use crate::folder::Folder;
use crate::history;
use crate::ink::{self, ActId, Line, LineId};
use crate::seal::Secret;
use jiff::Timestamp;
use jiff::civil::Date;
use rusqlite::{Connection, OptionalExtension, params};
use std::collections::BTreeSet;
use trade::catalogue::{DefectKey, KindKey};
use trade::firm::{Firm, HousePolicy, Profile};
use trade::history::History;
use trade::ids::{DeviceId, PropertyId, VisitId};
use trade::outcome::Reminder;
use trade::price_list::PriceList;
use trade::property::{Address, Property};
use trade::stack::Covering;
use uuid::Uuid;

/// The records of an open book. [`crate::Book`] and [`crate::Writing`] deref to it.
pub struct Records {
    pub(crate) conn: Connection,
    pub(crate) folder: Folder,
    pub(crate) secret: Secret,
    pub(crate) device: DeviceId,
}

/// One property as it stands in a list.
#[derive(Clone, Debug, PartialEq)]
pub struct Card {
    /// The property; where it was joined with another, the kept one.
    pub property: PropertyId,
    /// Its address.
    pub address: Address,
    /// The owner's name, if known.
    pub owner: Option<String>,
    /// The day of the last visit.
    pub last_visit: Option<Date>,
}

/// Something to come back to, with where it is.
#[derive(Clone, Debug, PartialEq)]
pub struct Due {
    /// The reminder.
    pub reminder: Reminder,
    /// The property.
    pub card: Card,
}

impl Records {
    /// The device that writes in this copy of the book.
    pub fn device(&self) -> DeviceId {
        self.device
    }

    /// Everything recorded about one property that still counts. Where it was joined with another, the history of both under the kept
    /// one; each record keeps the property it was written for. `None` where there is no such property or it was erased.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where a record does not read.
    pub fn history(&self, property: PropertyId) -> Result<Option<History>> {
        history::of(self, property)
    }

    /// The property that a door leads to: itself, or the kept one where it was joined.
    ///
    /// # Errors
    /// What the disk says.
    pub fn leads_to(&self, property: PropertyId) -> Result<PropertyId> {
        history::leads_to(&self.conn, property)
    }

    /// Every property that was joined into this one, itself first.
    ///
    /// # Errors
    /// What the disk says.
    pub fn joined_into(&self, kept: PropertyId) -> Result<Vec<PropertyId>> {
        history::members(&self.conn, kept)
    }

    /// The moment at which a property was erased, if it was.
    ///
    /// # Errors
    /// What the disk says.
    pub fn erased(&self, property: PropertyId) -> Result<Option<Timestamp>> {
        let clock: Option<i64> = self
            .conn
            .prepare_cached("SELECT clock FROM erased WHERE id = ?1")?
            .query_row([property.0.as_bytes()], |row| row.get(0))
            .optional()?;
        clock
            .map(|clock| {
                Timestamp::from_millisecond(clock)
                    .map_err(|_| BookError::damaged("damage-erasure-day"))
            })
            .transpose()
    }

    /// What counts now of one subject.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn get(&self, subject: impl Into<Subject>) -> Result<Option<Entry>> {
        let subject = subject.into();
        let value: Option<String> = self
            .conn
            .prepare_cached("SELECT value FROM record WHERE id = ?1 AND kind = ?2")?
            .query_row(params![subject.uuid().as_bytes(), subject.kind()], |row| {
                row.get(0)
            })
            .optional()?;
        value
            .map(|value| Entry::from_stored(subject, Some(&value)))
            .transpose()
    }

    /// The property that a record belongs to.
    ///
    /// # Errors
    /// What the disk says.
    pub fn property_of(&self, subject: impl Into<Subject>) -> Result<Option<PropertyId>> {
        let subject = subject.into();
        let found: Option<Vec<u8>> = self
            .conn
            .prepare_cached("SELECT property FROM record WHERE id = ?1 AND kind = ?2")?
            .query_row(params![subject.uuid().as_bytes(), subject.kind()], |row| {
                row.get(0)
            })
            .optional()?;
        Ok(found
            .and_then(|id| Uuid::from_slice(&id).ok())
            .map(PropertyId))
    }

    /// The firm; a blank one where none was recorded.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn firm(&self) -> Result<Firm> {
        Ok(match self.get(Subject::Firm)? {
            Some(Entry::Firm(firm)) => firm,
            _ => Firm::default(),
        })
    }

    /// What is adopted where the firm works; the model code where nothing was recorded.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn profile(&self) -> Result<Profile> {
        Ok(match self.get(Subject::Profile)? {
            Some(Entry::Profile(profile)) => profile,
            _ => Profile::default(),
        })
    }

    /// The firm's own policy; the starting points where nothing was recorded.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn policy(&self) -> Result<HousePolicy> {
        Ok(match self.get(Subject::Policy)? {
            Some(Entry::Policy(policy)) => policy,
            _ => HousePolicy::default(),
        })
    }

    /// The firm's own price list, where it has put one in.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn price_list(&self) -> Result<Option<PriceList>> {
        Ok(match self.get(Subject::PriceList)? {
            Some(Entry::PriceList(list)) => Some(*list),
            _ => None,
        })
    }

    /// Every property that counts and leads nowhere else, oldest in the book first.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where one does not read.
    pub fn properties(&self) -> Result<Vec<Property>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT id, value FROM record WHERE kind = 'property' AND id NOT IN (SELECT id FROM joined) ORDER BY born_time, born_device",
        )?;
        let mut rows = statement.query([])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let subject = Subject::Property(PropertyId(Uuid::from_bytes(row.get(0)?)));
            let value: String = row.get(1)?;
            if let Entry::Property(property) = Entry::from_stored(subject, Some(&value))? {
                out.push(property);
            }
        }
        Ok(out)
    }

    /// One property as it stands in a list; `None` where there is none.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn card(&self, property: PropertyId) -> Result<Option<Card>> {
        let kept = self.leads_to(property)?;
        let Some(Entry::Property(found)) = self.get(kept)? else {
            return Ok(None);
        };
        let mut last_visit = None;
        for member in self.joined_into(kept)? {
            last_visit = last_visit.max(self.last_visit(member)?);
        }
        Ok(Some(Card {
            property: kept,
            owner: owner(&found),
            address: found.address,
            last_visit,
        }))
    }

    fn last_visit(&self, property: PropertyId) -> Result<Option<Date>> {
        let day: Option<String> = self
            .conn
            .prepare_cached("SELECT max(day) FROM visit WHERE property = ?1")?
            .query_row([property.0.as_bytes()], |row| row.get(0))?;
        day.map(|day| day.parse().map_err(|_| unread_day()))
            .transpose()
    }

    /// The properties of which something was recorded last, latest first, at most `most`.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where one does not read.
    pub fn recent(&self, most: usize) -> Result<Vec<Card>> {
        let mut statement = self.conn.prepare_cached(include_str!("sql/touched.sql"))?;
        let mut rows = statement.query([])?;
        let mut seen = BTreeSet::new();
        let mut out = Vec::new();
        while out.len() < most {
            let Some(row) = rows.next()? else { break };
            let touched = PropertyId(Uuid::from_bytes(row.get(0)?));
            if !seen.insert(touched) {
                continue;
            }
            let kept = self.leads_to(touched)?;
            if kept != touched && !seen.insert(kept) {
                continue;
            }
            out.extend(self.card(kept)?);
        }
        Ok(out)
    }

    /// The reminders that are not done and fall on a day or before it, oldest first.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where one does not read.
    pub fn due(&self, by: Date) -> Result<Vec<Due>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT id FROM due WHERE day <= ?1 ORDER BY day, id")?;
        let mut rows = statement.query([by.to_string()])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let id = trade::ids::ReminderId(Uuid::from_bytes(row.get(0)?));
            let Some(Entry::Reminder(reminder)) = self.get(id)? else {
                continue;
            };
            if let Some(card) = self.card(reminder.property)? {
                out.push(Due { reminder, card });
            }
        }
        Ok(out)
    }

    /// The visits that are not closed, latest day first, with where they are.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where one does not read.
    pub fn open_visits(&self) -> Result<Vec<(VisitId, Card)>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT id, property FROM visit WHERE open ORDER BY day DESC, id DESC",
        )?;
        let mut rows = statement.query([])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let visit = VisitId(Uuid::from_bytes(row.get(0)?));
            let property = PropertyId(Uuid::from_bytes(row.get(1)?));
            out.extend(self.card(property)?.map(|card| (visit, card)));
        }
        Ok(out)
    }

    /// How often each defect was recorded on a kind of part, most often first; under one covering where that is given.
    ///
    /// # Errors
    /// What the disk says.
    pub fn defect_counts(
        &self,
        kind: &KindKey,
        covering: Option<Covering>,
    ) -> Result<Vec<(DefectKey, u32)>> {
        let mut statement = self
            .conn
            .prepare_cached(include_str!("sql/defect_counts.sql"))?;
        let rows = statement
            .query_map(params![kind.as_str(), covering.map(Covering::key)], |row| {
                Ok((DefectKey(row.get(0)?), row.get(1)?))
            })?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// The latest line of a visit that is no undoing and was not undone.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn last_line(&self, visit: VisitId) -> Result<Option<Line>> {
        match ink::last_of_visit(&self.conn, visit)? {
            Some(id) => ink::line(&self.conn, id),
            None => Ok(None),
        }
    }

    /// One line of ink.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where it does not read.
    pub fn line(&self, id: LineId) -> Result<Option<Line>> {
        ink::line(&self.conn, id)
    }

    /// The lines written in one act, in order.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where one does not read.
    pub fn lines_of_act(&self, act: ActId) -> Result<Vec<Line>> {
        ink::of_act(&self.conn, act)
    }

    /// Everything ever written about one subject, in order.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where a line does not read.
    pub fn lines_about(&self, subject: impl Into<Subject>) -> Result<Vec<Line>> {
        ink::of_subject(&self.conn, subject.into())
    }

    /// Everything ever written about one property, or the firm's own lines, in order.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where a line does not read.
    pub fn lines_of(&self, property: Option<PropertyId>) -> Result<Vec<Line>> {
        ink::of_property(&self.conn, property)
    }

    /// Every property that any line belongs to, erased and withdrawn ones too.
    ///
    /// # Errors
    /// What the disk says.
    pub fn ever_recorded(&self) -> Result<Vec<PropertyId>> {
        ink::properties(&self.conn)
    }
}

/// Who owns a property, as far as is known.
fn owner(property: &Property) -> Option<String> {
    property
        .people
        .iter()
        .find(|person| person.role == trade::property::Role::Owner)
        .map(|person| person.name.clone())
}

fn unread_day() -> BookError {
    BookError::damaged("damage-visit-day")
}
