//! Street suffixes: USPS Publication 28, Appendix C1.

use super::table::Table;
use std::sync::LazyLock;

static TABLE: LazyLock<Table> = LazyLock::new(|| Table::of_words(include_str!("suffixes.txt"), 1));

/// The standard abbreviation of a suffix, whichever of its spellings is given in capitals.
pub fn suffix(word: &str) -> Option<&'static str> {
    TABLE.get(word).map(|entry| entry.form)
}

/// How surely a suffix word ends a street's name where a town may follow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ends {
    /// Everyday words for a road, which no town's name holds: street, avenue.
    Surely,
    /// Other words for a road: court, way.
    Likely,
    /// Words that also open or close a town's name: park, lake.
    Perhaps,
}

/// How surely a word ends a street's name; `None` where it is no suffix.
pub(crate) fn ends_street(word: &str) -> Option<Ends> {
    TABLE.get(word).map(|entry| match entry.mark {
        // An old abbreviation of Lane, and an everyday word of Spanish names.
        _ if word == "LA" => Ends::Perhaps,
        '+' => Ends::Surely,
        '-' => Ends::Likely,
        _ => Ends::Perhaps,
    })
}

/// Every spelling that is read as a suffix, with its standard abbreviation, in the order of the alphabet.
pub fn suffixes() -> Vec<(&'static str, &'static str)> {
    let mut all: Vec<_> = TABLE
        .all()
        .map(|(word, entry)| (word, entry.form))
        .collect();
    all.sort_unstable();
    all
}
