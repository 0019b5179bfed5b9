//! House numbers: with a fraction, a letter, a range, a hyphen as in Queens, a grid reference as in Wisconsin.

use super::direction::Direction;
use super::ordinal;
use super::street::holds_name;
use super::suffix::suffix;
use super::unit::designator;
use std::fmt;

/// A house number in its kept form: `12`, `12A`, `12 1/2`, `12-14`, `112-10`, `N6W23001`.
///
/// Leading zeros, the space or dash before a letter, and the way a range is written do not tell two numbers apart; all else does.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct House(String);

impl House {
    /// Reads the house number that opens `words`: the number, and how many words it takes. `None` where they open with a street's name,
    /// a numbered street's included.
    pub(crate) fn read(words: &[String]) -> Option<(Self, usize)> {
        let (number, taken) = without_fraction(words)?;
        match words.get(taken) {
            Some(fraction) if is_fraction(fraction) && !number.contains(['/', '-']) => {
                Some((Self(format!("{number} {fraction}")), taken + 1))
            }
            _ => Some((Self(number), taken)),
        }
    }

    /// The number as it is kept.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The leading digits as a number, where there are any and they fit.
    pub fn number(&self) -> Option<u64> {
        let digits = self.0.split(|c: char| !c.is_ascii_digit()).next()?;
        digits.parse().ok()
    }

    /// Whether a range, `12-14`, holds another number: on the same side of the street, so that both are even or both odd.
    pub fn covers(&self, other: &Self) -> bool {
        let Some((from, to)) = self.range() else {
            return false;
        };
        other
            .number()
            .is_some_and(|n| is_number(&other.0) && (from..=to).contains(&n) && n % 2 == from % 2)
    }

    /// The two ends of a range. A hyphen whose second number is the lower, or far higher, is no range: Queens, `112-10`.
    fn range(&self) -> Option<(u64, u64)> {
        let (from, to) = self.0.split_once('-')?;
        let (from, to): (u64, u64) = (from.parse().ok()?, to.parse().ok()?);
        (from < to && to - from < 100).then_some((from, to))
    }
}

impl fmt::Display for House {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// The number that opens `words`, without a fraction that stands alone after it, and how many words it takes.
fn without_fraction(words: &[String]) -> Option<(String, usize)> {
    let first = words.first()?;
    if let Some(grid) = grid_of_two(words) {
        return Some((grid, 2));
    }
    if let Some((number, fraction)) = dashed_fraction(first) {
        return Some((format!("{number} {fraction}"), 1));
    }
    let number = one_word(first, &words[1..])?;
    match words.get(1).map(String::as_str) {
        Some("AND") if is_number(&number) && words.get(2).is_some_and(|w| is_number(w)) => {
            Some((format!("{number}-{}", words[2]), 3))
        }
        Some(letter) if is_number(&number) && is_house_letter(letter, &words[2..]) => {
            Some((format!("{number}{letter}"), 2))
        }
        _ => Some((number, 1)),
    }
}

/// The kept form of a number written as one word, if it is one where `after` follows.
fn one_word(word: &str, after: &[String]) -> Option<String> {
    if !word.starts_with(|c: char| c.is_ascii_digit()) {
        let unit_follows = after.first().is_some_and(|next| designator(next).is_some());
        let followed = holds_name(after) && !unit_follows;
        let certain = followed || is_double(word);
        return (is_grid(word) && certain).then(|| word.to_owned());
    }
    if ordinal::number_of(word).is_some() {
        return None;
    }
    // "39.2 Rd" is a street of a grid, not a house on a street without a name.
    if word.contains('.') && after.first().is_some_and(|next| suffix(next).is_some()) {
        return None;
    }
    if is_fraction(word) {
        return Some(word.to_owned());
    }
    Some(join_letter(&trim_zeros(&word.replace('/', "-"))))
}

fn is_number(word: &str) -> bool {
    !word.is_empty() && word.bytes().all(|b| b.is_ascii_digit())
}

/// `1/2`: less than one, in parts that a house is divided into.
fn is_fraction(word: &str) -> bool {
    let Some((over, under)) = word.split_once('/') else {
        return false;
    };
    match (over.parse::<u8>(), under) {
        (Ok(over), "2" | "3" | "4" | "8") => over > 0 && over.to_string().as_str() < under,
        _ => false,
    }
}

/// `12-1/2` as its number and its fraction.
fn dashed_fraction(word: &str) -> Option<(String, &str)> {
    let (number, fraction) = word.split_once('-')?;
    (is_number(number) && is_fraction(fraction)).then(|| (trim_zeros(number), fraction))
}

fn trim_zeros(word: &str) -> String {
    let trimmed = word.trim_start_matches('0');
    let zero = if trimmed.starts_with(|c: char| c.is_ascii_digit()) {
        ""
    } else {
        "0"
    };
    format!("{zero}{trimmed}")
}

/// `100-B` as `100B`, but not `1-ST` as the numbered street `1ST`.
fn join_letter(word: &str) -> String {
    let letters = |text: &str| text.len() <= 2 && text.bytes().all(|b| b.is_ascii_uppercase());
    match word.split_once('-') {
        Some((number, letter)) if is_number(number) && letters(letter) => {
            let joined = format!("{number}{letter}");
            if ordinal::number_of(&joined).is_some() {
                word.to_owned()
            } else {
                joined
            }
        }
        _ => word.to_owned(),
    }
}

/// Whether a letter that stands alone after the number belongs to it: `12 A Elm St`, but not `12 A St`, `12 E Main St` or `12 C R Smith Rd`.
/// Only A to C: further letters more often open a name ("D Angelo", "O Neill").
fn is_house_letter(letter: &str, after: &[String]) -> bool {
    let Some(next) = after.first() else {
        return false;
    };
    let initial = next.len() == 1 && Direction::read(next).is_none();
    // "A St Main" must not turn into "A Saint Main" with another house number.
    let other = initial || next == "SAINT" || suffix(next).is_some() || is_fraction(next);
    matches!(letter, "A" | "B" | "C") && !other
}

/// `W5823`, `N6W23001`.
fn is_grid(word: &str) -> bool {
    let is_compass = |c: char| matches!(c, 'N' | 'S' | 'E' | 'W');
    let Some(rest) = word.strip_prefix(is_compass) else {
        return false;
    };
    let (first, second) = match rest.split_once(is_compass) {
        None => (rest, "0"),
        Some(halves) => halves,
    };
    is_number(first) && is_number(second)
}

/// Whether a grid reference has both its halves, and can be nothing else: `N6W23001`.
fn is_double(grid: &str) -> bool {
    grid.bytes().filter(u8::is_ascii_alphabetic).count() == 2
}

/// `N6 W23001`, the two halves of a grid reference written apart.
fn grid_of_two(words: &[String]) -> Option<String> {
    let [first, second, _, ..] = words else {
        return None;
    };
    let joined = format!("{first}{second}");
    (is_grid(first) && is_grid(second) && is_grid(&joined)).then_some(joined)
}
