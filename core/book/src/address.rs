//! Addresses as somebody wrote them, brought to one form by USPS Publication 28, so that the same house is found under any spelling.
//!
//! Nothing here is shown or kept in place of what was written: a [`Normal`] serves to compare. Two spellings of one house come to the
//! same [`Normal::key`]; two houses never do.
//!
//! Where to start: [`normalise`] for an address in fields, [`normalise_text`] for one line of text, [`Query`] for what is typed into a
//! search, [`Query::likeness`] for how near an address is to it.

mod direction;
mod fold;
mod house;
mod likeness;
mod line;
mod name;
mod ordinal;
mod place;
mod query;
mod region;
mod road;
mod street;
mod suffix;
mod table;
mod text;
mod unit;

#[cfg(test)]
mod tests;

pub use direction::Direction;
pub use fold::words as folded_words;
pub use house::House;
pub use likeness::{HouseAgrees, Likeness, StreetAgrees};
pub use query::{Query, Reading};
pub use street::Street;
pub use suffix::{suffix, suffixes};
pub use text::normalise_text;
pub use unit::{designator, designators};

use line::Line;
use std::fmt;
use trade::property::Address;

/// An address in the one form that all its spellings come to, in capitals. Any of it may be missing.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Normal {
    /// The house number.
    pub house: Option<House>,
    /// The street.
    pub street: Street,
    /// The unit: `APT 4B`, `BLDG 2 APT 4`, `REAR`; empty where there is none.
    pub unit: String,
    /// Town, spelled out.
    pub town: String,
    /// State in its two letters, or another region as written.
    pub region: String,
    /// ZIP code in five digits, or another postal code without spaces.
    pub postcode: String,
}

/// The parts of a key stand in this order so that what is typed first comes first: house, name; a missing direction does not part two keys early.
const PART: char = '|';

impl Normal {
    /// The house number; `None` where there is none.
    pub fn house(&self) -> Option<&House> {
        self.house.as_ref()
    }

    /// What two spellings of one address have in common and two addresses have not:
    /// `house|name|suffix|before|after|unit|town|region|postcode`.
    pub fn key(&self) -> String {
        let parts = [
            self.line_key(),
            self.unit.clone(),
            self.town.clone(),
            self.region.clone(),
            self.postcode.clone(),
        ];
        parts.join(&PART.to_string())
    }

    /// House and street without unit and town: `house|name|suffix|before|after`. It opens every key of that house.
    pub fn line_key(&self) -> String {
        let house = self.house.as_ref().map_or("", House::as_str);
        format!("{house}{PART}{}", self.street_key())
    }

    /// The street alone: `name|suffix|before|after`.
    pub fn street_key(&self) -> String {
        let Street {
            before,
            name,
            suffix,
            after,
        } = &self.street;
        let short = |direction: &Option<Direction>| direction.map_or("", Direction::short);
        [name, suffix, short(before), short(after)].join(&PART.to_string())
    }

    /// The keys from (included) and until (excluded) which an address lies that has this house number and a street's name that begins like
    /// this one. In the order of bytes, as `SQLite` compares text.
    pub fn range(&self) -> (String, String) {
        let house = self.house.as_ref().map_or("", House::as_str);
        let from = format!("{house}{PART}{}", self.street.name);
        let until = format!("{from}{}", char::MAX);
        (from, until)
    }

    /// The same address in fields, from which the same form is read again.
    pub fn address(&self) -> Address {
        Address {
            line: self.line(),
            town: self.town.clone(),
            region: self.region.clone(),
            postcode: self.postcode.clone(),
        }
    }

    /// House, street and, after a comma, unit.
    pub fn line(&self) -> String {
        let house = self.house.as_ref().map_or("", House::as_str).to_owned();
        let door = said(" ", [house, self.street.to_string()]);
        said(", ", [door, self.unit.clone()])
    }

    /// Whether nothing is known.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

impl fmt::Display for Normal {
    /// In one line with commas: `123 N MAIN ST, APT 4, SAINT PAUL, MN, 55101`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let place = [
            self.town.clone(),
            self.region.clone(),
            self.postcode.clone(),
        ];
        f.write_str(&said(", ", [self.line(), said(", ", place)]))
    }
}

/// What is not empty, with `between` between.
fn said<const N: usize>(between: &str, parts: [String; N]) -> String {
    let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    said.join(between)
}

/// The one form of an address in fields. A line that holds the whole address, its fields empty, is read as [`normalise_text`] does.
pub fn normalise(address: &Address) -> Normal {
    let town = name::town(&fold::words(&address.town));
    let region = region::region(&fold::words(&address.region));
    let postcode = region::postcode(&fold::words(&address.postcode));
    if town.is_empty() && region.is_empty() && postcode.is_empty() {
        return normalise_text(&address.line);
    }
    let place = Normal {
        town,
        region,
        postcode,
        ..Normal::default()
    };
    in_fields(fold::parts(&address.line), place)
}

/// A line whose town is known: what a comma sets off is a unit, unless it says the town again.
fn in_fields(parts: Vec<Vec<String>>, place: Normal) -> Normal {
    let (line, extra) = text::line_and_extra(parts);
    let units: Vec<Vec<String>> = extra
        .into_iter()
        .filter(|part| !says_again(part, &place))
        .collect();
    let Line {
        house,
        street,
        unit,
    } = Line::read(&line);
    Normal {
        house,
        street,
        unit: text::with_units(unit, &units.concat()),
        ..place
    }
}

fn says_again(part: &[String], place: &Normal) -> bool {
    let again = text::last_line(part);
    !again.is_empty()
        && [
            (&again.town, &place.town),
            (&again.region, &place.region),
            (&again.postcode, &place.postcode),
        ]
        .into_iter()
        .all(|(said, known)| said.is_empty() || said == known)
}
