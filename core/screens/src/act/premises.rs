//! The taps and forms of the Property screen.

use super::Next;
use super::typed::day;
use crate::form::{FormOf, Typed};
use crate::place::Place;
use acts::premises::{self, About, PersonTold};
use acts::{ActError, Book, Moment};
use trade::ids::PropertyId;
use trade::property::{Address, Position, Role};
use trade::words::{Said, Words};

pub(super) fn join(
    book: &mut Book,
    kept: PropertyId,
    other: PropertyId,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    premises::join(book, kept, other, moment)?;
    Ok(Next::saved(at(kept), words, "saved-joined"))
}

pub(super) fn part(
    book: &mut Book,
    kept: PropertyId,
    other: PropertyId,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    premises::part(book, other, moment)?;
    Ok(Next::saved(at(kept), words, "saved-parted"))
}

pub(super) fn filled(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let property = match form {
        FormOf::Address { property } => {
            premises::readdress(book, *property, address(typed), moment)?;
            *property
        }
        FormOf::AlsoAt { property } => {
            premises::also_at(book, *property, address(typed), moment)?;
            *property
        }
        FormOf::About { property } => {
            premises::set_about(book, *property, about(typed)?, moment)?;
            *property
        }
        FormOf::Person {
            property,
            person: id,
        } => {
            premises::set_person(book, *property, *id, person(typed), moment)?;
            *property
        }
        FormOf::Structure {
            property,
            structure,
        } => {
            let gone = day(typed, "gone")?;
            premises::set_structure(book, *structure, filled_in(typed, "name"), gone, moment)?;
            *property
        }
        FormOf::SamePlace { property } => {
            return Ok(Next::at(Place::Property {
                property: *property,
                like: typed.text("like").to_owned(),
            }));
        }
        FormOf::Erase { property } => {
            premises::erase(book, *property, typed.text("confirm"), moment)?;
            return Ok(Next::saved(Place::start(), words, "saved-erased"));
        }
        _ => return Ok(Next::at(Place::start())),
    };
    Ok(Next::saved(at(property), words, "saved"))
}

fn at(property: PropertyId) -> Place {
    Place::Property {
        property,
        like: String::new(),
    }
}

/// The four fields of an address.
pub(super) fn address(typed: &Typed<'_>) -> Address {
    Address {
        line: typed.text("line").to_owned(),
        town: typed.text("town").to_owned(),
        region: typed.text("region").to_owned(),
        postcode: typed.text("postcode").to_owned(),
    }
}

fn about(typed: &Typed<'_>) -> Result<About, ActError> {
    Ok(About {
        built: filled_in(typed, "built")
            .map(|year| {
                year.parse()
                    .map_err(|_| ActError::wrong("built", Said::new("wrong-year")))
            })
            .transpose()?,
        position: filled_in(typed, "position")
            .map(|text| {
                Position::read(&text)
                    .ok_or_else(|| ActError::wrong("position", Said::new("wrong-position")))
            })
            .transpose()?,
        dangers: lines(typed.text("dangers")),
    })
}

fn person(typed: &Typed<'_>) -> PersonTold {
    PersonTold {
        name: typed.text("name").to_owned(),
        role: typed.choice("role").unwrap_or(Role::Owner),
        phones: lines(typed.text("phones")),
        email: filled_in(typed, "email"),
    }
}

fn filled_in(typed: &Typed<'_>, field: &str) -> Option<String> {
    Some(typed.text(field).to_owned()).filter(|text| !text.is_empty())
}

fn lines(text: &str) -> Vec<String> {
    text.lines()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .map(str::to_owned)
        .collect()
}
