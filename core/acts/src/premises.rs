//! What stands at an address: its spellings, its people, its dangers; and whether two addresses are one place.

use crate::{ActError, Moment};
use book::{Book, Entry};
use jiff::civil::Date;
use trade::ids::{PersonId, PropertyId, StructureId};
use trade::property::{Address, Person, Position, Property, Role};
use trade::words::Said;

/// A person as somebody told him.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PersonTold {
    /// Name.
    pub name: String,
    /// What they are to the property.
    pub role: Role,
    /// Telephone numbers.
    pub phones: Vec<String>,
    /// Electronic mail.
    pub email: Option<String>,
}

/// What holds of a place on every visit.
#[derive(Clone, Debug, PartialEq)]
pub struct About {
    /// The year it was built, if known.
    pub built: Option<i16>,
    /// Where it stands, if known.
    pub position: Option<Position>,
    /// Dangers that hold on every visit.
    pub dangers: Vec<String>,
}

/// Writes the address as it is spelled now. The old spelling stays, so that the place is found under both.
///
/// # Errors
/// Where the address has no house or street, the property is not in the book, or the book cannot be written.
pub fn readdress(
    book: &mut Book,
    property: PropertyId,
    address: Address,
    moment: Moment,
) -> Result<(), ActError> {
    let address = written(address)?;
    change(book, property, moment, |property| {
        if property.address != address {
            property.also.retain(|also| *also != address);
            let old = std::mem::replace(&mut property.address, address);
            property.also.push(old);
        }
    })
}

/// Adds another address of the same place: the other street of a corner lot, an old name.
///
/// # Errors
/// As [`readdress`].
pub fn also_at(
    book: &mut Book,
    property: PropertyId,
    address: Address,
    moment: Moment,
) -> Result<(), ActError> {
    let address = written(address)?;
    change(book, property, moment, |property| {
        if property.address != address && !property.also.contains(&address) {
            property.also.push(address);
        }
    })
}

/// Adds a person, or writes anew what is known of one.
///
/// # Errors
/// Where nothing is known of them, the property is not in the book, or the book cannot be written.
pub fn set_person(
    book: &mut Book,
    property: PropertyId,
    person: Option<PersonId>,
    told: PersonTold,
    moment: Moment,
) -> Result<(), ActError> {
    if told.name.is_empty() && told.phones.is_empty() && told.email.is_none() {
        return Err(ActError::wrong("name", Said::new("wrong-nobody-named")));
    }
    change(book, property, moment, |property| {
        let known = property
            .people
            .iter_mut()
            .find(|known| Some(known.id) == person);
        let written = |id| Person {
            id,
            name: told.name,
            role: told.role,
            phones: told.phones,
            email: told.email,
        };
        match known {
            Some(known) => *known = written(known.id),
            None => property.people.push(written(moment.id())),
        }
    })
}

/// Writes what holds of a place on every visit.
///
/// # Errors
/// Where the position is not on the earth, the year cannot be, the property is not in the book, or the book cannot be written.
pub fn set_about(
    book: &mut Book,
    property: PropertyId,
    about: About,
    moment: Moment,
) -> Result<(), ActError> {
    if about
        .position
        .is_some_and(|position| !position.is_on_earth())
    {
        return Err(ActError::wrong("position", Said::new("wrong-position")));
    }
    if about
        .built
        .is_some_and(|year| !(1600..=moment.today.year()).contains(&year))
    {
        return Err(ActError::wrong("built", Said::new("wrong-year")));
    }
    change(book, property, moment, |property| {
        property.built = about.built;
        property.position = about.position;
        property.dangers = about.dangers;
    })
}

/// Names a structure, or says that it was taken down.
///
/// # Errors
/// Where it is not in the book, the day lies ahead, or the book cannot be written.
pub fn set_structure(
    book: &mut Book,
    structure: StructureId,
    name: Option<String>,
    gone: Option<Date>,
    moment: Moment,
) -> Result<(), ActError> {
    if gone.is_some_and(|day| day > moment.today) {
        return Err(ActError::wrong("gone", Said::new("wrong-day-ahead")));
    }
    let Some(Entry::Structure(mut known)) = book.get(structure)? else {
        return Err(ActError::not_there("there-structure"));
    };
    known.name = name;
    known.gone = gone;
    book.write(moment.at, |tx| {
        tx.record(Entry::Structure(known))?;
        Ok(())
    })
}

/// Joins two properties that turned out to be one; `kept` leads from then on.
///
/// # Errors
/// Where either is not in the book, they are the same already, or the book cannot be written.
pub fn join(
    book: &mut Book,
    kept: PropertyId,
    other: PropertyId,
    moment: Moment,
) -> Result<(), ActError> {
    if book.leads_to(kept)? == book.leads_to(other)? {
        return Err(ActError::wrong("property", Said::new("wrong-same-already")));
    }
    own_record(book, kept)?;
    own_record(book, other)?;
    book.write(moment.at, |tx| {
        tx.record(Entry::Joined { kept, other })?;
        Ok(())
    })
}

/// Parts a property from the one it was joined with by mistake.
///
/// # Errors
/// Where the book cannot be written.
pub fn part(book: &mut Book, other: PropertyId, moment: Moment) -> Result<(), ActError> {
    book.write(moment.at, |tx| {
        tx.record(Entry::Parted { other })?;
        Ok(())
    })
}

/// The properties that were joined into one, each with its own record.
///
/// # Errors
/// Where the book cannot be read.
pub fn joined(book: &Book, kept: PropertyId) -> Result<Vec<Property>, ActError> {
    book.joined_into(kept)?
        .into_iter()
        .filter(|member| *member != kept)
        .map(|member| own_record(book, member))
        .collect()
}

/// Destroys all words and pictures of a place on the owner's wish, those of everything joined into it too. `typed` must be its address
/// as it stands in the book: this cannot be taken back.
///
/// # Errors
/// Where the address typed is another, the property is not in the book, or the book cannot be written.
pub fn erase(
    book: &mut Book,
    property: PropertyId,
    typed: &str,
    moment: Moment,
) -> Result<(), ActError> {
    let kept = book.leads_to(property)?;
    let known = own_record(book, kept)?;
    if !known.address.line.trim().eq_ignore_ascii_case(typed.trim()) {
        return Err(ActError::wrong("confirm", Said::new("wrong-confirm")));
    }
    let members = book.joined_into(kept)?;
    book.write(moment.at, |tx| {
        for property in members {
            tx.record(Entry::Erased { property })?;
        }
        Ok(())
    })
}

fn written(address: Address) -> Result<Address, ActError> {
    if address.line.trim().is_empty() {
        return Err(ActError::wrong("address", Said::new("wrong-no-street")));
    }
    Ok(address)
}

fn own_record(book: &Book, property: PropertyId) -> Result<Property, ActError> {
    match book.get(property)? {
        Some(Entry::Property(property)) => Ok(property),
        _ => Err(ActError::not_there("there-property")),
    }
}

fn change(
    book: &mut Book,
    property: PropertyId,
    moment: Moment,
    change: impl FnOnce(&mut Property),
) -> Result<(), ActError> {
    let kept = book.leads_to(property)?;
    let mut property = own_record(book, kept)?;
    change(&mut property);
    book.write(moment.at, |tx| {
        tx.record(Entry::Property(property))?;
        Ok(())
    })
}
