//! A delivery line: house number, street, unit.

use super::house::House;
use super::place;
use super::street::{Street, direction_before};
use super::suffix::suffix;
use super::unit::{self, Before};
use super::{direction::Direction, road};

/// What a delivery line says.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Line {
    pub house: Option<House>,
    pub street: Street,
    /// The units in kept form, parted by spaces.
    pub unit: String,
}

impl Line {
    /// Reads a line that holds nothing but house, street and unit.
    pub fn read(words: &[String]) -> Self {
        let (unit_before, words) = unit_before_house(words);
        let (house, words) = house_before_street(words);
        let end = unit_start(words, house.is_some());
        let unit = units(&words[end..]).unwrap_or_default();
        Self {
            house,
            street: Street::read(&words[..end]),
            unit: join([unit_before, unit]),
        }
    }

    /// Reads a line that a town may follow without a comma; returns what follows, too.
    pub fn read_first(words: &[String]) -> (Self, &[String]) {
        let (unit_before, words) = unit_before_house(words);
        let (house, words) = house_before_street(words);
        let end = match place::street_end(words) {
            all if all == words.len() => unit_start(words, house.is_some()),
            end => end,
        };
        let (unit, taken) = unit::read(&words[end..], Before::StreetEnd);
        let line = Self {
            house,
            street: Street::read(&words[..end]),
            unit: join([unit_before, unit]),
        };
        (line, &words[end + taken..])
    }
}

/// The kept form of words that are units and nothing else.
pub(crate) fn units(words: &[String]) -> Option<String> {
    let (unit, taken) = unit::read(words, Before::StreetEnd);
    (taken == words.len()).then_some(unit)
}

/// The words before the unit that closes a line, and those of the unit.
pub(crate) fn split_unit(words: &[String]) -> (&[String], &[String]) {
    let (_, rest) = unit_before_house(words);
    let (house, rest) = house_before_street(rest);
    let before = words.len() - rest.len();
    words.split_at(before + unit_start(rest, house.is_some()))
}

fn join(units: [String; 2]) -> String {
    let said: Vec<String> = units.into_iter().filter(|unit| !unit.is_empty()).collect();
    said.join(" ")
}

/// "Apt 4, 123 Main St" and "Lot 5 Oak Rd": a unit that opens the line. "#12 Main St" opens with a house number.
fn unit_before_house(words: &[String]) -> (String, &[String]) {
    let none = (String::new(), words);
    let (unit, taken) = unit::read(words, Before::StreetEnd);
    let rest = &words[taken..];
    let with_number = unit.contains(|c: char| c.is_ascii_digit());
    let house_follows = House::read(rest).is_some();
    let marked = words.first().is_some_and(|word| unit::is_mark(word));
    let street_follows = rest.len() > 1 || rest.first().is_some_and(|word| suffix(word).is_none());
    match taken {
        0 => none,
        _ if road::read_po_box(words).is_some() => none,
        _ if marked && !house_follows => (String::new(), without_marks(words)),
        _ if with_number && (rest.is_empty() || house_follows || street_follows) => (unit, rest),
        _ => none,
    }
}

/// The words after those that only say that a number follows.
fn without_marks(words: &[String]) -> &[String] {
    let marks = words.iter().take_while(|word| unit::is_mark(word)).count();
    &words[marks..]
}

fn house_before_street(words: &[String]) -> (Option<House>, &[String]) {
    match House::read(words) {
        Some((house, taken)) => (Some(house), &words[taken..]),
        None => (None, words),
    }
}

/// Where the unit begins that closes the line; the line's length where there is none.
fn unit_start(words: &[String], after_house: bool) -> usize {
    if is_box(words) {
        return words.len();
    }
    let first = usize::from(!after_house);
    (first..words.len())
        .find(|at| {
            let before = if street_ends_before(words, *at) {
                Before::StreetEnd
            } else {
                Before::Name
            };
            let rest = &words[*at..];
            let (_, taken) = unit::read(rest, before);
            taken == rest.len() && (*at > 0 || names_no_street(rest))
        })
        .unwrap_or(words.len())
}

/// Whether the words before `at` make a whole street: they end with a suffix, a direction or a road's number.
fn street_ends_before(words: &[String], at: usize) -> bool {
    let before = &words[..at];
    let (_, named) = direction_before(before);
    let numbered = road::read(named).is_some_and(|(_, taken)| taken == named.len());
    numbered
        || at > 1
            && before
                .last()
                .is_some_and(|last| suffix(last).is_some() || Direction::read(last).is_some())
}

/// Right after a house number, only a designator with a digit is a unit: "123 # 4", but "123 Rear St".
fn names_no_street(unit: &[String]) -> bool {
    let sure = matches!(
        unit[0].as_str(),
        "#" | "APT" | "APARTMENT" | "UNIT" | "STE" | "SUITE"
    );
    sure && unit
        .get(1)
        .is_some_and(|word| word.contains(|c: char| c.is_ascii_digit()))
}

/// A post-office box beside a street address.
fn is_box(words: &[String]) -> bool {
    road::read_box(words).is_some_and(|(_, taken)| taken == words.len())
}
