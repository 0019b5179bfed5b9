//! Whatever is refused is said in the reader's language: no sentence stands in the code, no message is missing or left over.

use acts::{ActError, BookError};
use jiff::civil::date;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use trade::firm::{Edition, UnknownEdition};
use trade::units::{Length, Pitch};
use trade::words::{Arg, Language, Said, Words};

/// One of each but those of the letter, the laying, the leak, the takeoff and the offer, which their own rooms hold. The match does not compile when a kind is added and not named here.
fn errors() -> Vec<ActError> {
    let all = vec![
        ActError::Book(BookError::WrongKey),
        ActError::Closed {
            on: date(2025, 5, 6),
        },
        acts::measure::read("{", None, Length::ZERO).expect_err("it is no JSON"),
        acts::measure::pitch_of_readings(&["89"]).expect_err("it is a wall"),
        ActError::AlreadyOpen,
        ActError::not_there("there-part"),
        ActError::wrong("on", Said::new("wrong-no-day")),
        ActError::RungFirst,
        ActError::NothingToUndo,
        ActError::OtherVisit,
        ActError::StillOpen,
    ];
    for error in &all {
        match error {
            ActError::Book(_)
            | ActError::Letter(_)
            | ActError::Shape(_)
            | ActError::Angle(_)
            | ActError::Laying(_)
            | ActError::Leak(_)
            | ActError::Takeoff(_)
            | ActError::PriceList(_)
            | ActError::Offer(_)
            | ActError::Closed { .. }
            | ActError::AlreadyOpen
            | ActError::NotThere { .. }
            | ActError::Wrong { .. }
            | ActError::RungFirst
            | ActError::NothingToUndo
            | ActError::OtherVisit
            | ActError::StillOpen => {}
        }
    }
    all
}

#[test]
fn every_refusal_is_said_in_both_languages() {
    for error in errors() {
        let [english, _] = in_both(&error.says());
        assert_eq!(error.to_string(), english, "logs say the English");
    }
}

#[test]
fn what_cannot_be_read_as_a_measure_is_said_in_both_languages() {
    let length = "wide".parse::<Length>().expect_err("it is no length");
    let pitch = "steep".parse::<Pitch>().expect_err("it is no pitch");
    let range = "-1/12".parse::<Pitch>().expect_err("it is no pitch");
    for error in [length, pitch, range] {
        in_both(&error.says());
    }
    let UnknownEdition(year) = Edition::try_from(1999).expect_err("there is none");
    let sentences = in_both(&UnknownEdition(year).says());
    assert!(sentences.iter().all(|said| said.contains("1999")));
}

/// The sentence in English and in Spanish, each with no key or placeholder left in it.
pub fn in_both(said: &Said) -> [String; 2] {
    let sentences = Language::ALL.map(|language| {
        let words = Words::of(language);
        all_there(words, said);
        let sentence = words.say(said);
        assert!(
            !sentence.contains("{$"),
            "an argument is missing: {sentence}"
        );
        sentence
    });
    assert_ne!(
        sentences[0], sentences[1],
        "one of the two is not translated"
    );
    sentences
}

/// Whether the message and all messages in it are there.
fn all_there(words: &Words, said: &Said) {
    assert!(words.has(&said.key), "{} is not there", said.key);
    for (_, arg) in &said.args {
        if let Arg::Said(inner) = arg {
            all_there(words, inner);
        }
    }
}

/// How the names of the messages begin that say what went wrong, and of all that the program says.
const BEGINNINGS: [&str; 15] = [
    "there-",
    "wrong-",
    "error-",
    "book-",
    "damage-",
    "problem-",
    "differs-",
    "backup-",
    "key-",
    "system-",
    "shape-",
    "unit-not-",
    "unit-pitch-",
    "code-no-",
    "desk-",
];

/// Where the code stands that names them.
const ROOMS: [&str; 7] = [
    "core/trade/src",
    "core/book/src",
    "core/letter/src",
    "core/acts/src",
    "core/screens/src",
    "desk/src",
    "fixtures/src",
];

#[test]
fn every_message_that_the_code_names_is_there_and_none_is_left_over() {
    let top = Path::new("../..");
    let mut named = BTreeSet::new();
    for room in ROOMS {
        for file in files_below(&top.join(room), "rs") {
            let text = std::fs::read_to_string(&file).expect("a source file");
            named.extend(
                text.split('"')
                    .filter(|text| is_key(text))
                    .map(str::to_owned),
            );
        }
    }
    for key in &named {
        for language in Language::ALL {
            assert!(Words::of(language).has(key), "{key} in {language:?}");
        }
    }
    let mut there = BTreeSet::new();
    for file in files_below(&top.join("core/trade/words/en"), "ftl") {
        let text = std::fs::read_to_string(&file).expect("a message file");
        let keys = text.lines().filter_map(|line| line.split_once(" ="));
        there.extend(
            keys.map(|(key, _)| key.to_owned())
                .filter(|key| is_key(key)),
        );
    }
    let left_over: Vec<_> = there.difference(&named).collect();
    assert!(left_over.is_empty(), "nothing names {left_over:?}");
    assert!(named.len() > 150, "the code was read: {}", named.len());
}

fn is_key(text: &str) -> bool {
    let plain =
        |letter: char| letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-';
    BEGINNINGS
        .iter()
        .any(|start| text.starts_with(start) && text.len() > start.len())
        && text.chars().all(plain)
}

fn files_below(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).expect("a folder of the project") {
        let path = entry.expect("a file").path();
        if path.is_dir() {
            files.extend(files_below(&path, ending));
        } else if path.extension().is_some_and(|found| found == ending) {
            files.push(path);
        }
    }
    files
}
