//! States and ZIP codes: USPS Publication 28, Appendix B and section 22.

use super::table::Table;
use std::sync::LazyLock;

static TABLE: LazyLock<Table> =
    LazyLock::new(|| Table::of_phrases(include_str!("regions.txt"), true));

/// Whether one word names a state, by its letters or its name.
pub(crate) fn is_region(word: &str) -> bool {
    TABLE.get(word).is_some()
}

/// The two letters of a state, however it is written; other regions stay as they are.
pub(crate) fn region(words: &[String]) -> String {
    let written = words.join(" ");
    TABLE
        .get(&written)
        .map_or(written, |entry| entry.form.to_owned())
}

/// The state that closes `words`: its letters and how many words it takes.
pub(crate) fn closing(words: &[String]) -> Option<(&'static str, usize)> {
    TABLE.closing(words).map(|(entry, n)| (entry.form, n))
}

/// Whether a word has the shape of a ZIP code, with its four further digits or without.
pub(crate) fn is_zip(word: &str) -> bool {
    let (five, four) = word.split_once('-').unwrap_or((word, "0000"));
    let digits = |part: &str, n: usize| part.len() == n && part.bytes().all(|b| b.is_ascii_digit());
    digits(five, 5) && digits(four, 4)
}

/// A ZIP code cut to five digits; other postal codes without spaces.
pub(crate) fn postcode(words: &[String]) -> String {
    let whole = words.concat();
    match words.first() {
        Some(first) if is_zip(first) => first[..5].to_owned(),
        _ if is_zip(&whole) => whole[..5].to_owned(),
        _ => nine_digits(&whole).unwrap_or(whole),
    }
}

/// `627041234` and `62704 1234`.
fn nine_digits(whole: &str) -> Option<String> {
    (whole.len() == 9 && whole.bytes().all(|b| b.is_ascii_digit())).then(|| whole[..5].to_owned())
}
