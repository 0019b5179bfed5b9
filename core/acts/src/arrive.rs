//! Arriving: find the address by any spelling, by owner or phone, by where the phone stands; or add it.

use crate::{ActError, Moment};
use book::{Book, Entry, Found, Writing};
use trade::history::History;
use trade::ids::{PropertyId, StructureId};
use trade::property::{
    Address, Person, Position, Property, Role, Side, Slope, Structure, StructureKind,
};
use trade::words::Said;

/// What is known of a property when it is first heard of.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NewProperty {
    /// Its address.
    pub address: Address,
    /// The owner's name, if known.
    pub owner: String,
    /// The owner's telephone, if known.
    pub phone: String,
    /// Where the phone stands, if it stands there.
    pub position: Option<Position>,
}

/// How far from where the phone stands a property is still near, in metres: a phone is some 10 m off, and a lot some 60 m long.
const NEAR: f64 = 150.0;

/// The properties that a text may mean, likeliest first; a position, as `41.2412, -96.0113`, finds what stands near it.
///
/// # Errors
/// Where the book cannot be read.
pub fn find(book: &Book, text: &str) -> Result<Vec<Found>, ActError> {
    Ok(match Position::read(text) {
        Some(here) => book.near(here, NEAR)?,
        None => book.find(text)?,
    })
}

/// The whole record of one property.
///
/// # Errors
/// Where it is not in the book, or the book cannot be read.
pub fn history(book: &Book, property: PropertyId) -> Result<History, ActError> {
    book.history(property)?
        .ok_or_else(|| ActError::not_there("there-property"))
}

/// Adds a property with a house that has a front and a rear slope; more are added on the walk.
///
/// # Errors
/// Where the address has no house or street, or the book cannot be written.
pub fn add(book: &mut Book, new: NewProperty, moment: Moment) -> Result<PropertyId, ActError> {
    if new.address.line.trim().is_empty() {
        return Err(ActError::wrong("address", Said::new("wrong-no-street")));
    }
    let property = property_of(new, moment);
    let id = property.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Property(property))?;
        write_with_slopes(tx, id, StructureKind::House, None, moment)?;
        Ok(id)
    })
}

fn property_of(new: NewProperty, moment: Moment) -> Property {
    let people = if new.owner.trim().is_empty() && new.phone.trim().is_empty() {
        Vec::new()
    } else {
        vec![Person {
            id: moment.id(),
            name: new.owner.trim().to_owned(),
            role: Role::Owner,
            phones: Some(new.phone.trim().to_owned())
                .filter(|phone| !phone.is_empty())
                .into_iter()
                .collect(),
            email: None,
        }]
    };
    Property {
        id: moment.id(),
        address: new.address,
        also: Vec::new(),
        position: new.position,
        people,
        built: None,
        dangers: Vec::new(),
        since: moment.today,
    }
}

/// Adds a structure to a property, with a front and a rear slope.
///
/// # Errors
/// Where the property is not in the book, or the book cannot be written.
pub fn add_structure(
    book: &mut Book,
    property: PropertyId,
    kind: StructureKind,
    moment: Moment,
) -> Result<StructureId, ActError> {
    let history = history(book, property)?;
    book.write(moment.at, |tx| write_structure(tx, &history, kind, moment))
}

/// [`add_structure`] as a piece of a larger act.
pub(crate) fn write_structure(
    tx: &mut Writing<'_>,
    history: &History,
    kind: StructureKind,
    moment: Moment,
) -> Result<StructureId, ActError> {
    let taken = history.slopes.iter().map(|slope| slope.letter).max();
    write_with_slopes(tx, history.property.id, kind, taken, moment)
}

/// A structure with a front and a rear slope, whose letters follow the last one `taken`.
fn write_with_slopes(
    tx: &mut Writing<'_>,
    property: PropertyId,
    kind: StructureKind,
    taken: Option<char>,
    moment: Moment,
) -> Result<StructureId, ActError> {
    let structure = Structure {
        id: moment.id(),
        property,
        kind,
        name: None,
        gone: None,
    };
    let id = structure.id;
    tx.record(Entry::Structure(structure))?;
    let first = next_letter(taken);
    let second = next_letter(Some(first));
    write_lettered(tx, id, Side::Front, first, moment)?;
    write_lettered(tx, id, Side::Rear, second, moment)?;
    Ok(id)
}

/// Adds a slope to a structure, as a piece of a larger act.
pub(crate) fn write_slope(
    tx: &mut Writing<'_>,
    history: &History,
    structure: StructureId,
    side: Side,
    moment: Moment,
) -> Result<(), ActError> {
    history
        .structure(structure)
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    let taken = history.slopes.iter().map(|slope| slope.letter).max();
    write_lettered(tx, structure, side, next_letter(taken), moment)
}

fn write_lettered(
    tx: &mut Writing<'_>,
    structure: StructureId,
    side: Side,
    letter: char,
    moment: Moment,
) -> Result<(), ActError> {
    tx.record(Entry::Slope(Slope {
        id: moment.id(),
        structure,
        side,
        letter,
        pitch: None,
    }))?;
    Ok(())
}

/// Letters run on over all structures of a property, so that one names one slope. After Z come the small ones; a property with more than
/// 52 slopes has some without a letter of their own, which bear the last.
fn next_letter(taken: Option<char>) -> char {
    match taken {
        None => 'A',
        Some('Z') => 'a',
        Some('z') => 'z',
        Some(letter) => char::from_u32(u32::from(letter) + 1).unwrap_or('z'),
    }
}
