//! A street: directions, name and suffix, told apart by USPS Publication 28, sections 232 to 237.

use super::direction::Direction;
use super::suffix::{Ends, ends_street, suffix};
use super::{name, ordinal, road};

/// A street, in kept form. Any of it may be missing.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Street {
    /// The direction before the name.
    pub before: Option<Direction>,
    /// The name, words parted by single spaces: `SAINT JAMES`, `3RD`, `COUNTY ROAD 12`, `AVENUE A`.
    pub name: String,
    /// The suffix in its standard abbreviation: `ST`; empty where there is none.
    pub suffix: String,
    /// The direction after the suffix.
    pub after: Option<Direction>,
}

impl Street {
    /// Reads a street from its words. What is left of a name is never empty where there was a word: "North St" is a street named North.
    pub(crate) fn read(words: &[String]) -> Self {
        if let Some((name, taken)) = road::read_box(words)
            && taken == words.len()
        {
            return Self {
                name,
                ..Self::default()
            };
        }
        let (before, rest) = direction_before(words);
        let street = match road::read(rest) {
            Some((name, taken)) => numbered_road(name, &rest[taken..]),
            None => named_street(rest),
        };
        Self { before, ..street }
    }

    /// Whether nothing is known of it.
    pub fn is_empty(&self) -> bool {
        self.name.is_empty()
    }
}

impl std::fmt::Display for Street {
    /// As it is written: direction, name, suffix, direction.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let words = [
            self.before.map_or("", Direction::short),
            &self.name,
            &self.suffix,
            self.after.map_or("", Direction::short),
        ];
        let said: Vec<&str> = words.into_iter().filter(|word| !word.is_empty()).collect();
        f.write_str(&said.join(" "))
    }
}

/// The direction that opens `words`, where a name is left after it, and that rest.
pub(crate) fn direction_before(words: &[String]) -> (Option<Direction>, &[String]) {
    if let [first, second, rest @ ..] = words
        && let Some(direction) = Direction::read_opening_pair(first, second)
        && holds_name(rest)
    {
        return (Some(direction), rest);
    }
    match words {
        [first, rest @ ..] if holds_name(rest) => match Direction::read(first) {
            Some(direction) => (Some(direction), rest),
            None => (None, words),
        },
        _ => (None, words),
    }
}

/// Whether a street's name is among `words`: more than a suffix, with or without a direction after it.
pub(crate) fn holds_name(words: &[String]) -> bool {
    match words {
        [] => false,
        [first, rest @ ..] if suffix(first).is_some() && road::read(words).is_none() => {
            rest.iter().any(|word| Direction::read(word).is_none())
        }
        _ => true,
    }
}

/// The direction that closes `words`, where anything is left before it, and that rest.
fn direction_after(words: &[String]) -> (Option<Direction>, &[String]) {
    if let [rest @ .., first, second] = words
        && !rest.is_empty()
        && let Some(direction) = Direction::read_closing_pair(first, second)
    {
        return (Some(direction), rest);
    }
    match words {
        [rest @ .., last] if !rest.is_empty() => match Direction::read(last) {
            Some(direction) => (Some(direction), rest),
            None => (None, words),
        },
        _ => (None, words),
    }
}

/// A numbered road and what follows its number: a direction, `BYP`, `FRONTAGE RD`.
fn numbered_road(road: String, tail: &[String]) -> Street {
    let (after, tail) = match tail {
        [only] if Direction::read(only).is_some() => (Direction::read(only), &tail[1..]),
        _ => direction_after(tail),
    };
    let (words, suffix) = suffix_of_tail(tail);
    let name = std::iter::once(road)
        .chain(name::street(words, !suffix.is_empty()))
        .collect::<Vec<_>>()
        .join(" ");
    Street {
        before: None,
        name,
        suffix,
        after,
    }
}

fn suffix_of_tail(tail: &[String]) -> (&[String], String) {
    match tail {
        [words @ .., last] => match suffix(last) {
            Some(suffix) => (words, suffix.to_owned()),
            None => (tail, String::new()),
        },
        [] => (tail, String::new()),
    }
}

fn named_street(words: &[String]) -> Street {
    let (after, words) = direction_after(words);
    let (words, suffix) = suffix_after(words);
    let road_word_ends = !suffix.is_empty() || words.last().is_some_and(|last| is_suffix(last));
    let mut name = name::street(words, road_word_ends);
    if let [number] = name.as_mut_slice()
        && takes_ending(number, &suffix)
    {
        *number = ordinal::with_ending(number);
    }
    Street {
        before: None,
        name: name.join(" "),
        suffix,
        after,
    }
}

/// The suffix that closes `words`, where a name is left before it. "The Lane" keeps its only noun, "Calle Vista" its second.
fn suffix_after(words: &[String]) -> (&[String], String) {
    let none = (words, String::new());
    let [name @ .., last] = words else {
        return none;
    };
    let kept_whole = match name {
        [] => true,
        [first, ..] if is_spanish_road(first) => ends_street(last) == Some(Ends::Perhaps),
        [only] => only == "THE",
        _ => false,
    };
    match suffix(last) {
        Some(suffix) if !kept_whole => (name, suffix.to_owned()),
        _ => none,
    }
}

fn is_suffix(word: &str) -> bool {
    suffix(word).is_some()
}

/// Spanish words for a road, which stand before its name and are part of it (USPS Publication 28, section 232 and Appendix H).
fn is_spanish_road(word: &str) -> bool {
    matches!(
        word,
        "AVENIDA"
            | "CALLE"
            | "CALLEJON"
            | "CALZADA"
            | "CAMINITO"
            | "CAMINO"
            | "CARRETERA"
            | "CORTE"
            | "PASEO"
            | "VEREDA"
            | "VIA"
    )
}

/// Whether a bare number is a numbered street's: "3 St" is 3rd St, but "9 Hwy" is no 9th of anything.
fn takes_ending(number: &str, suffix: &str) -> bool {
    let digits = !number.is_empty() && number.bytes().all(|b| b.is_ascii_digit());
    let road = ends_street(suffix).is_some_and(|ends| ends != Ends::Perhaps);
    digits && road && !matches!(suffix, "HWY" | "RTE" | "FWY" | "EXPY" | "LOOP" | "TPKE")
}
