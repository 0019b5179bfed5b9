//! Directions before and after a street's name: USPS Publication 28, section 233.

use std::fmt;

/// A compass direction in an address.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Direction {
    /// North.
    N,
    /// North-east.
    NE,
    /// East.
    E,
    /// South-east.
    SE,
    /// South.
    S,
    /// South-west.
    SW,
    /// West.
    W,
    /// North-west.
    NW,
}

impl Direction {
    /// All eight, clockwise.
    pub const ALL: [Self; 8] = [
        Self::N,
        Self::NE,
        Self::E,
        Self::SE,
        Self::S,
        Self::SW,
        Self::W,
        Self::NW,
    ];

    /// Its standard abbreviation.
    pub fn short(self) -> &'static str {
        match self {
            Self::N => "N",
            Self::NE => "NE",
            Self::E => "E",
            Self::SE => "SE",
            Self::S => "S",
            Self::SW => "SW",
            Self::W => "W",
            Self::NW => "NW",
        }
    }

    /// Its word.
    pub fn word(self) -> &'static str {
        match self {
            Self::N => "NORTH",
            Self::NE => "NORTHEAST",
            Self::E => "EAST",
            Self::SE => "SOUTHEAST",
            Self::S => "SOUTH",
            Self::SW => "SOUTHWEST",
            Self::W => "WEST",
            Self::NW => "NORTHWEST",
        }
    }

    /// Reads one word in capitals, written out, abbreviated, or with a dash: `N`, `NORTH`, `NW`, `NORTH-WEST`.
    pub fn read(word: &str) -> Option<Self> {
        if let Some((first, second)) = word.split_once('-') {
            return Self::between(Self::read(first)?, Self::read(second)?);
        }
        Self::ALL
            .into_iter()
            .find(|direction| word == direction.short() || word == direction.word())
    }

    /// Reads the two words that open a street and together name one direction: `NORTH WEST`, `N W`. In `S WEST` the second is the name.
    pub(crate) fn read_opening_pair(first: &str, second: &str) -> Option<Self> {
        let name_follows = first.len() == 1 && second.len() > 1;
        (!name_follows)
            .then(|| Self::read_closing_pair(first, second))
            .flatten()
    }

    /// Reads the two words that close a street and together name one direction: `SOUTH WEST`, `S W`.
    pub(crate) fn read_closing_pair(first: &str, second: &str) -> Option<Self> {
        Self::between(Self::read(first)?, Self::read(second)?)
    }

    fn between(first: Self, second: Self) -> Option<Self> {
        Some(match (first, second) {
            (Self::N, Self::E) => Self::NE,
            (Self::N, Self::W) => Self::NW,
            (Self::S, Self::E) => Self::SE,
            (Self::S, Self::W) => Self::SW,
            _ => return None,
        })
    }
}

impl fmt::Display for Direction {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.short())
    }
}

/// A direction's standard abbreviation; any other word as it is.
pub(crate) fn short_form(word: &str) -> &str {
    match Direction::read(word) {
        Some(direction) => direction.short(),
        None => word,
    }
}
