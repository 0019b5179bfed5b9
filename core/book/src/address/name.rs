//! Names of streets and towns, each word brought to one spelling.

use super::direction::Direction;
use super::ordinal;
use super::suffix::suffix;
use super::table::Table;
use super::unit::designator;
use std::sync::LazyLock;

static TABLE: LazyLock<Table> =
    LazyLock::new(|| Table::of_phrases(include_str!("words.txt"), false));

/// A street's name, spelled out: `ST JAMES` as `SAINT JAMES`, `PARK AVE` before a suffix as `PARK AVENUE`, `3TH` as `3RD`. With
/// `road_word_ends` the last word may be one for a road, which is spelled out too.
pub(crate) fn street(words: &[String], road_word_ends: bool) -> Vec<String> {
    let last = words.len().saturating_sub(1);
    words
        .iter()
        .enumerate()
        .map(|(at, word)| {
            let ends_name = at == last && road_word_ends;
            match Direction::read(word) {
                Some(direction) if ends_name && at > 0 => direction.word().to_owned(),
                _ if is_saint(&words[at..]) => "SAINT".to_owned(),
                _ => spelled_out(word, ends_name),
            }
        })
        .collect()
}

/// A town's name, spelled out: `ST PAUL` as `SAINT PAUL`, `N MIAMI` as `NORTH MIAMI`, `FT WORTH` as `FORT WORTH`.
pub(crate) fn town(words: &[String]) -> String {
    let mut kept: Vec<String> = Vec::new();
    for (at, word) in words.iter().enumerate() {
        let last = at + 1 == words.len();
        kept.push(match Direction::read(word) {
            Some(direction) if at == 0 && !last => direction.word().to_owned(),
            _ if is_saint(&words[at..]) => "SAINT".to_owned(),
            _ => spelled_out(word, false),
        });
    }
    kept.join(" ")
}

/// Whether `words` open with a saint: `ST` before a word that means nothing else in an address.
pub(crate) fn is_saint(words: &[String]) -> bool {
    let names_saint = |word: &String| {
        !matches!(word.as_str(), "SAINT" | "SAINTE")
            && word.chars().count() > 1
            && !word.contains(|c: char| c.is_ascii_digit())
            && suffix(word).is_none()
            && Direction::read(word).is_none()
            && designator(word).is_none()
    };
    matches!(words, [st, name, ..] if st == "ST" && names_saint(name))
}

/// Words with what takes several of them brought to its kept form: `TWENTY FIRST` as `21ST`, `DR M L KING JR` as `MARTIN LUTHER KING`.
/// Done before anything is told apart, so that the number of words does not depend on the spelling.
pub(crate) fn joined(words: &[String]) -> Vec<String> {
    let kept = joined_once(words);
    if kept == words { kept } else { joined(&kept) }
}

fn joined_once(words: &[String]) -> Vec<String> {
    let mut kept = Vec::new();
    let mut rest = words;
    while let [word, after @ ..] = rest {
        let phrase = TABLE
            .opening(rest)
            .filter(|(entry, _)| entry.form.contains(' '));
        if let Some((number, taken)) = ordinal::read(rest) {
            kept.push(ordinal::with_ending(&number.to_string()));
            rest = &rest[taken..];
        } else if let Some((entry, taken)) = phrase {
            kept.extend(entry.form.split(' ').map(str::to_owned));
            rest = &rest[taken..];
        } else {
            kept.push(word.clone());
            rest = after;
        }
    }
    kept
}

/// Every other way a word of a kept name is written.
pub(crate) fn other_spellings(word: &str) -> Vec<&'static str> {
    let mut spellings: Vec<&str> = TABLE
        .all()
        .filter(|(_, entry)| entry.form == word)
        .map(|(spelling, _)| spelling)
        .collect();
    if word == "SAINT" {
        spellings.push("ST");
    }
    spellings
}

/// A word of a street's name, spelled out.
fn spelled_out(word: &str, ends_name: bool) -> String {
    if let Some(number) = ordinal::number_of(word) {
        return ordinal::with_ending(number);
    }
    match TABLE.get(word) {
        Some(entry) if entry.mark == ' ' || ends_name => entry.form.to_owned(),
        _ => word.to_owned(),
    }
}
