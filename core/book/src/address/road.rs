//! Numbered and lettered roads: USPS Publication 28, Appendix F; boxes and rural routes: sections 24, 25 and 28.

use super::direction::short_form;
use super::ordinal;
use super::region::is_region;
use super::suffix::suffix;
use super::table::Table;
use super::unit::is_mark;
use std::sync::LazyLock;

static TABLE: LazyLock<Table> =
    LazyLock::new(|| Table::of_phrases(include_str!("roads.txt"), true));

/// Reads the numbered road that opens `words`: `CR 12`, `OLD HWY 9`, `AVENUE A`. Returns its kept name and how many words it takes.
pub(crate) fn read(words: &[String]) -> Option<(String, usize)> {
    if let Some(split) = words.first().and_then(|word| glued(word)) {
        let rest: Vec<String> = split
            .into_iter()
            .chain(words[1..].iter().cloned())
            .collect();
        return read(&rest).map(|(name, taken)| (name, taken - 1));
    }
    let opening = words.iter().take_while(|word| may_precede(word)).count();
    (0..=opening).find_map(|at| {
        let (entry, n) = TABLE.opening(&spelled_out(&words[at..]))?;
        // "Highway North" and "Highway N" are one.
        let number = short_form(words.get(at + n)?);
        let lettered = entry.mark == '*' && is_letter_name(number);
        if !is_road_number(number) && !lettered {
            return None;
        }
        let mut name: Vec<&str> = words[..at].iter().map(String::as_str).collect();
        name.extend([entry.form, number]);
        Some((name.join(" "), at + n + 1))
    })
}

/// The words that may name a kind of road, those for a road in full.
fn spelled_out(words: &[String]) -> Vec<String> {
    let full = |word: &String| match suffix(word) {
        Some("AVE") => "AVENUE".to_owned(),
        Some("EXPY") => "EXPRESSWAY".to_owned(),
        Some("HWY") => "HIGHWAY".to_owned(),
        Some("LOOP") => "LOOP".to_owned(),
        Some("RD") => "ROAD".to_owned(),
        Some("RTE") => "ROUTE".to_owned(),
        _ => word.clone(),
    };
    words.iter().take(TABLE.longest()).map(full).collect()
}

/// What may stand before the kind of road: `OLD HWY 9`, `CA COUNTY RD 150`.
fn may_precede(word: &str) -> bool {
    matches!(word, "OLD" | "NEW" | "HISTORIC" | "BUSINESS") || is_region(word)
}

/// `12`, `9W`, `60E`, `A1A`, `39.2`.
fn is_road_number(word: &str) -> bool {
    let digits = word.contains(|c: char| c.is_ascii_digit());
    let ordinal = ordinal::number_of(word).is_some();
    digits && !ordinal && word.len() <= 6 && word.is_ascii()
}

/// `A`, `AA`: one letter, once or twice.
fn is_letter_name(word: &str) -> bool {
    match word.as_bytes() {
        [a] => a.is_ascii_uppercase(),
        [a, b] => a == b && a.is_ascii_uppercase(),
        _ => false,
    }
}

/// `CR12`, `HWY9`, `I95`, `US41`: the kind of road and its number in one word.
fn glued(word: &str) -> Option<[String; 2]> {
    let at = word.find(|c: char| c.is_ascii_digit())?;
    let (kind, number) = word.split_at(at);
    let known = matches!(
        kind,
        "CR" | "CTH"
            | "FM"
            | "HWY"
            | "I"
            | "IH"
            | "RM"
            | "RT"
            | "RTE"
            | "SH"
            | "SR"
            | "STH"
            | "US"
            | "USH"
    );
    known.then(|| [kind.to_owned(), number.to_owned()])
}

/// Reads the post-office box or rural route that opens `words`: `PO BOX 4`, `RR 2 BOX 18`. Returns its kept name and how many words it takes.
pub(crate) fn read_box(words: &[String]) -> Option<(String, usize)> {
    if let Some((kind, n)) = opening(words, &ROUTES) {
        let (route, taken) = number(&words[n..])?;
        let at = n + taken;
        let (_, m) = opening(&words[at..], &[("BOX", &["BOX"])])?;
        let (held, taken) = number(&words[at + m..])?;
        return Some((format!("{kind} {route} BOX {held}"), at + m + taken));
    }
    read_po_box(words)
}

/// Reads the post-office box that opens `words`.
pub(crate) fn read_po_box(words: &[String]) -> Option<(String, usize)> {
    let (kept, n) = opening(words, &BOXES)?;
    let (held, taken) = number(&words[n..])?;
    Some((format!("{kept} {held}"), n + taken))
}

type Spellings = [(&'static str, &'static [&'static str])];

const ROUTES: [(&str, &[&str]); 2] = [
    (
        "RR",
        &["RURAL ROUTE", "RURAL RTE", "RFD ROUTE", "RFD", "RR", "RD"],
    ),
    (
        "HC",
        &[
            "HIGHWAY CONTRACT ROUTE",
            "HIGHWAY CONTRACT",
            "STAR ROUTE",
            "HC",
        ],
    ),
];

const BOXES: [(&str, &[&str]); 1] = [(
    "PO BOX",
    &[
        "POST OFFICE BOX",
        "PO BOX",
        "P O BOX",
        "POB",
        "PO DRAWER",
        "LOCKBOX",
        "BOX",
    ],
)];

fn opening(words: &[String], known: &Spellings) -> Option<(&'static str, usize)> {
    known.iter().find_map(|(kept, spellings)| {
        spellings.iter().find_map(|spelling| {
            let n = spelling.split(' ').count();
            (words.get(..n)?.join(" ") == *spelling).then_some((*kept, n))
        })
    })
}

/// The number of a box or route, without `#`, `NO` and leading zeros.
fn number(words: &[String]) -> Option<(String, usize)> {
    let skipped = usize::from(words.first().is_some_and(|word| is_mark(word)));
    let word = words.get(skipped)?;
    let digits = word.contains(|c: char| c.is_ascii_digit());
    let ordinal = ordinal::number_of(word).is_some();
    let trimmed = word.trim_start_matches('0');
    (digits && !ordinal && !trimmed.is_empty()).then(|| (trimmed.to_owned(), skipped + 1))
}
