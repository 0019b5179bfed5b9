//! Units within a house: USPS Publication 28, Appendix C2.

use super::direction::{Direction, short_form};
use super::region::is_zip;
use super::suffix::suffix;
use super::table::Table;
use super::{ordinal, road};
use std::sync::LazyLock;

static TABLE: LazyLock<Table> = LazyLock::new(|| Table::of_words(include_str!("units.txt"), 0));

/// The standard abbreviation of a unit designator, whichever of its spellings is given in capitals.
pub fn designator(word: &str) -> Option<&'static str> {
    TABLE.get(word).map(|entry| entry.form)
}

/// Whether a word only says that a number follows: `#`, `NO`.
pub(crate) fn is_mark(word: &str) -> bool {
    designator(word) == Some("#")
}

/// Every spelling that is read as a designator, with its standard abbreviation, in the order of the alphabet.
pub fn designators() -> Vec<(&'static str, &'static str)> {
    let mut all: Vec<_> = TABLE
        .all()
        .map(|(word, entry)| (word, entry.form))
        .collect();
    all.sort_unstable();
    all
}

/// How the words before a unit end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Before {
    /// With the end of the street, or a comma: any designator may follow.
    StreetEnd,
    /// Within what may be the street's name: only a designator that is part of no name may follow.
    Name,
}

/// Reads the units that open `words`: `APT 4`, `BLDG 2 APT 4B`, `REAR`, a post-office box beside a street address. Returns their kept form and how many words they take;
/// nothing and 0 where none opens them.
pub(crate) fn read(words: &[String], before: Before) -> (String, usize) {
    let mut kept: Vec<String> = Vec::new();
    let mut taken = 0;
    let mut place = before;
    while let Some((unit, n)) = read_one(&words[taken..], place) {
        kept.push(unit);
        taken += n;
        place = Before::StreetEnd;
    }
    (kept.join(" "), taken)
}

fn read_one(words: &[String], before: Before) -> Option<(String, usize)> {
    let first = words.first()?;
    if let Some(held) = road::read_po_box(words) {
        return Some(held);
    }
    if let Some(floor) = numbered_floor(words) {
        return (before == Before::StreetEnd).then_some((floor, 2));
    }
    if let Some(glued) = glued(first) {
        return Some((glued, 1));
    }
    let entry = TABLE.get(first)?;
    let sure = entry.mark == '+';
    if !sure && before == Before::Name {
        return None;
    }
    let marked = !is_mark(first) && words.get(1).is_some_and(|word| is_mark(word));
    let skipped = usize::from(marked);
    if let Some((number, n)) = number(&words[1 + skipped..]) {
        // "FL 33601" is in Florida: no house has so many floors.
        if entry.form == "FL" && is_zip(&number) {
            return None;
        }
        return Some((format!("{} {number}", entry.form), 1 + skipped + n));
    }
    (entry.mark == '!').then(|| (entry.form.to_owned(), 1))
}

/// The number of a unit: a word with a digit in it, a letter or two, a direction, or a digit and a letter written apart.
fn number(words: &[String]) -> Option<(String, usize)> {
    let first = words.first()?;
    if let Some(direction) = words
        .get(1)
        .and_then(|second| Direction::read_closing_pair(first, second))
    {
        return Some((direction.short().to_owned(), 2));
    }
    if let Some(direction) = Direction::read(first) {
        return Some((direction.short().to_owned(), 1));
    }
    let plain = kept_number(first);
    let digits = plain.contains(|c: char| c.is_ascii_digit());
    let ordinal = ordinal::number_of(first).is_some();
    let lettered = is_lettered(first) && road::read_po_box(words).is_none();
    if !(digits && !ordinal || lettered) {
        return None;
    }
    match words.get(1) {
        Some(second) if is_other_half(&plain, short_form(second)) => {
            Some((format!("{plain}{}", short_form(second)), 2))
        }
        _ => Some((plain, 1)),
    }
}

/// One letter, or two that mean nothing else in an address.
fn is_lettered(word: &str) -> bool {
    let letters = word.bytes().all(|b| b.is_ascii_uppercase());
    let other = || TABLE.get(word).is_some() || suffix(word).is_some();
    letters && (word.len() == 1 || word.len() == 2 && !other())
}

/// A dash between a digit and a letter tells no two units apart: `4-B`, `4B`.
fn kept_number(word: &str) -> String {
    match word.split_once('-') {
        Some((a, b)) if is_digits(a) != is_digits(b) && !b.contains('-') => format!("{a}{b}"),
        _ => word.to_owned(),
    }
}

fn is_digits(word: &str) -> bool {
    !word.is_empty() && word.bytes().all(|b| b.is_ascii_digit())
}

/// `4 B` and `B 4` are one number.
fn is_other_half(first: &str, second: &str) -> bool {
    let letter = |word: &str| word.len() == 1 && word.bytes().all(|b| b.is_ascii_uppercase());
    (is_digits(first) && letter(second)) || (letter(first) && is_digits(second))
}

/// `APT4`, `STE12B`: a designator and its number in one word.
fn glued(word: &str) -> Option<String> {
    let at = word.find(|c: char| c.is_ascii_digit())?;
    let (name, number) = word.split_at(at);
    let entry = TABLE.get(name.trim_end_matches('-'))?;
    let whole = matches!(entry.form, "APT" | "STE" | "UNIT" | "BLDG" | "TRLR" | "LOT");
    whole.then(|| format!("{} {}", entry.form, kept_number(number)))
}

/// `2ND FLOOR`.
fn numbered_floor(words: &[String]) -> Option<String> {
    let number = match ordinal::read(&words[..1]) {
        Some((n, _)) => n.to_string(),
        None => ordinal::number_of(&words[0])?.to_owned(),
    };
    (designator(words.get(1)?)? == "FL").then(|| format!("FL {number}"))
}
