//! A property's history, put together from its records and those of the properties that were joined into it.

use crate::entry::{Entry, Subject};
use crate::error::Result;
use crate::hlc::HybridTime;
use crate::ink::LineId;
use crate::records::Records;
use jiff::civil::Date;
use rusqlite::{Connection, OptionalExtension};
use std::collections::{BTreeMap, BTreeSet};
use trade::history::History;
use trade::ids::{DeviceId, PropertyId, StructureId, VisitId};
use trade::property::Property;
use uuid::Uuid;

/// Where a door leads. Two devices may have joined a and b both ways round: then the lower identifier is kept.
pub(crate) fn leads_to(conn: &Connection, property: PropertyId) -> Result<PropertyId> {
    let mut way = vec![property];
    loop {
        let here = way[way.len() - 1];
        let Some(next) = next_door(conn, here)? else {
            return Ok(here);
        };
        if let Some(start) = way.iter().position(|passed| *passed == next) {
            return Ok(way[start..].iter().copied().min().unwrap_or(here));
        }
        way.push(next);
    }
}

fn next_door(conn: &Connection, property: PropertyId) -> Result<Option<PropertyId>> {
    Ok(conn
        .prepare_cached("SELECT kept FROM joined WHERE id = ?1")?
        .query_row([property.0.as_bytes()], |row| row.get(0))
        .optional()?
        .map(|id| PropertyId(Uuid::from_bytes(id))))
}

/// A property and all that lead to it.
pub(crate) fn members(conn: &Connection, kept: PropertyId) -> Result<Vec<PropertyId>> {
    let mut statement = conn.prepare_cached("SELECT id FROM joined WHERE kept = ?1 ORDER BY id")?;
    let mut out = vec![kept];
    let mut at = 0;
    while let Some(here) = out.get(at).copied() {
        let rows = statement.query_map([here.0.as_bytes()], |row| row.get(0))?;
        for id in rows {
            let id = PropertyId(Uuid::from_bytes(id?));
            if !out.contains(&id) {
                out.push(id);
            }
        }
        at += 1;
    }
    Ok(out)
}

/// The history of a property.
pub(crate) fn of(records: &Records, property: PropertyId) -> Result<Option<History>> {
    let kept = leads_to(&records.conn, property)?;
    let mut gathered = Gathered::default();
    for member in members(&records.conn, kept)? {
        gathered.read(&records.conn, member)?;
    }
    Ok(gathered.into_history(kept))
}

/// Records as they were read, each with its first line for the order.
#[derive(Default)]
struct Gathered {
    entries: Vec<(LineId, Entry)>,
}

impl Gathered {
    fn read(&mut self, conn: &Connection, property: PropertyId) -> Result<()> {
        let mut statement = conn.prepare_cached(include_str!("sql/records_of.sql"))?;
        let mut rows = statement.query([property.0.as_bytes()])?;
        while let Some(row) = rows.next()? {
            let kind = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
            let subject = Subject::from_stored(kind, Uuid::from_bytes(row.get(1)?))?;
            let value = row.get_ref(2)?.as_str().map_err(rusqlite::Error::from)?;
            let born = LineId {
                time: HybridTime::from_stored(row.get(3)?),
                device: DeviceId(Uuid::from_bytes(row.get(4)?)),
            };
            self.entries
                .push((born, Entry::from_stored(subject, Some(value))?));
        }
        Ok(())
    }

    /// Sorts all into their places. What belongs to a visit or structure that was taken back is left out with it.
    fn into_history(mut self, kept: PropertyId) -> Option<History> {
        self.entries.sort_by_key(|(born, _)| *born);
        let (properties, rest): (Vec<_>, Vec<_>) = self
            .entries
            .into_iter()
            .map(|(_, entry)| entry)
            .partition(|entry| matches!(entry, Entry::Property(_)));
        let mut history = History::of(one_property(properties, kept)?);
        for entry in rest {
            sort_in(&mut history, entry);
        }
        leave_out(&mut history);
        put_in_order(&mut history);
        Some(history)
    }
}

/// The kept property, with the addresses, people and dangers of those that lead to it.
fn one_property(entries: Vec<Entry>, kept: PropertyId) -> Option<Property> {
    let (mut found, others): (Vec<Property>, Vec<Property>) = entries
        .into_iter()
        .filter_map(|entry| match entry {
            Entry::Property(property) => Some(property),
            _ => None,
        })
        .partition(|property| property.id == kept);
    let mut property = found.pop()?;
    for other in others {
        add_missing(&mut property.also, std::iter::once(other.address));
        add_missing(&mut property.also, other.also);
        add_missing(&mut property.people, other.people);
        add_missing(&mut property.dangers, other.dangers);
        property.position = property.position.or(other.position);
        property.built = property.built.or(other.built);
        property.since = property.since.min(other.since);
    }
    Some(property)
}

fn add_missing<T: PartialEq>(to: &mut Vec<T>, from: impl IntoIterator<Item = T>) {
    for item in from {
        if !to.contains(&item) {
            to.push(item);
        }
    }
}

fn sort_in(history: &mut History, entry: Entry) {
    match entry {
        Entry::Structure(record) => history.structures.push(record),
        Entry::Slope(record) => history.slopes.push(record),
        Entry::Part(record) => history.parts.push(record),
        Entry::Visit(record) => history.visits.push(record),
        Entry::Mark(record) => history.marks.push(record),
        Entry::Stack(record) => history.stacks.push(record),
        Entry::Work(record) => history.works.push(record),
        Entry::Photo(record) => history.photos.push(record),
        Entry::Note(record) => history.notes.push(record),
        Entry::Letter(record) => history.letters.push(record),
        Entry::Outcome(record) => history.outcomes.push(record),
        Entry::Reminder(record) => history.reminders.push(record),
        Entry::Sketch(record) => history.sketches.push(record),
        Entry::Worksheet(record) => history.worksheets.push(record),
        Entry::Offer(record) => history.offers.push(record),
        Entry::Property(_)
        | Entry::Firm(_)
        | Entry::Profile(_)
        | Entry::Policy(_)
        | Entry::PriceList(_)
        | Entry::Joined { .. }
        | Entry::Parted { .. }
        | Entry::Withdrawn(_)
        | Entry::Erased { .. } => {}
    }
}

fn leave_out(history: &mut History) {
    let visits: BTreeSet<VisitId> = history.visits.iter().map(|visit| visit.id).collect();
    let structures: BTreeSet<_> = history.structures.iter().map(|one| one.id).collect();
    history
        .slopes
        .retain(|slope| structures.contains(&slope.structure));
    history
        .parts
        .retain(|part| structures.contains(&part.structure));
    let parts: BTreeSet<_> = history.parts.iter().map(|part| part.id).collect();
    history
        .marks
        .retain(|mark| visits.contains(&mark.visit) && parts.contains(&mark.part));
    history
        .stacks
        .retain(|stack| visits.contains(&stack.visit) && structures.contains(&stack.structure));
    history
        .sketches
        .retain(|sketch| structures.contains(&sketch.structure));
    history
        .worksheets
        .retain(|sheet| structures.contains(&sheet.structure));
    history
        .offers
        .retain(|offer| structures.contains(&offer.structure));
    history.photos.retain(|photo| visits.contains(&photo.visit));
    history.notes.retain(|note| visits.contains(&note.visit));
}

/// All sorts are stable: what is alike stays in the order in which it was first recorded, which no clock can upset.
fn put_in_order(history: &mut History) {
    history.visits.sort_by_key(|visit| visit.on);
    let places: BTreeMap<VisitId, usize> = history
        .visits
        .iter()
        .enumerate()
        .map(|(place, visit)| (visit.id, place))
        .collect();
    let place = |visit: &VisitId| places.get(visit).copied();
    // Structures by their place, not by their identifier: of two made in one moment either may have the lower one.
    let structures: BTreeMap<StructureId, usize> = history
        .structures
        .iter()
        .enumerate()
        .map(|(place, structure)| (structure.id, place))
        .collect();
    let stands = |structure: &StructureId| structures.get(structure).copied();
    history
        .slopes
        .sort_by_key(|slope| (stands(&slope.structure), slope.letter));
    history
        .parts
        .sort_by_key(|part| (stands(&part.structure), part.number));
    history.marks.sort_by_key(|mark| place(&mark.visit));
    history.stacks.sort_by_key(|stack| place(&stack.visit));
    history.works.sort_by_key(|work| work.when);
    history.photos.sort_by_key(|photo| photo.taken);
    history.notes.sort_by_key(|note| place(&note.visit));
    history
        .letters
        .sort_by_key(|letter| (letter.on, letter.made));
    history.sketches.sort_by_key(|sketch| sketch.at);
    history.worksheets.sort_by_key(|sheet| sheet.at);
    history.offers.sort_by_key(|offer| offer.on);
    history.outcomes.sort_by_key(|outcome| outcome.on);
    history
        .reminders
        .sort_by_key(|reminder: &trade::outcome::Reminder| -> Date { reminder.on });
}
