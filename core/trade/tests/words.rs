//! The words that go with the catalogue and the nouns: all there, none over, and plain enough for a letter.
//!
//! What is plain is house style, not a published rule.

use fluent_syntax::ast::{Entry, PatternElement};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use trade::answer::Answer;
use trade::catalogue::{Catalogue, Family};
use trade::doorstep::Tells;
use trade::mark::{Extent, MeasureOf, NotSeen, Rung, Seen};
use trade::outcome::{Because, Came};
use trade::property::{Role, Side, StructureKind};
use trade::stack::{Covering, LayerIs, Learned};
use trade::thread::Became;
use trade::units::Got;
use trade::verdict::{Course, LicensedTrade, Narrowed, Question, When};
use trade::visit::{Reach, SafetyCheck, Scope, Sky, WetWhen};
use trade::words::{Language, Words};
use trade::work::{By, Did, Evidence};

/// A message or attribute (`key` or `key.attribute`) and its text.
type Texts = BTreeMap<String, String>;

fn english() -> PathBuf {
    PathBuf::from("words/en")
}

fn read(file: &Path, into: &mut Texts) {
    let text = std::fs::read_to_string(file).expect("a message file");
    let resource = fluent_syntax::parser::parse(text.as_str()).expect("a whole message file");
    for entry in &resource.body {
        let Entry::Message(message) = entry else {
            continue;
        };
        let mut keep = |key: String, elements: &[PatternElement<&str>]| {
            let text: String = elements
                .iter()
                .map(|element| match element {
                    PatternElement::TextElement { value } => *value,
                    PatternElement::Placeable { .. } => panic!("{key} takes an argument"),
                })
                .collect();
            assert!(
                into.insert(key.clone(), text).is_none(),
                "{key} stands twice"
            );
        };
        if let Some(value) = &message.value {
            keep(message.id.name.to_owned(), &value.elements);
        }
        for attribute in &message.attributes {
            keep(
                format!("{}.{}", message.id.name, attribute.id.name),
                &attribute.value.elements,
            );
        }
    }
}

/// Every message of the files that hold catalogue and nouns.
fn texts() -> Texts {
    let mut texts = Texts::new();
    for file in ["nouns.ftl", "kinds.ftl", "remedies.ftl", "causes.ftl"] {
        read(&english().join(file), &mut texts);
    }
    for file in std::fs::read_dir(english().join("defects")).expect("the folder of defects") {
        read(&file.expect("a file").path(), &mut texts);
    }
    texts
}

/// What must be there: keys, each with its attributes.
fn wanted() -> BTreeSet<String> {
    let mut wanted = BTreeSet::new();
    let mut want = |key: &str, attributes: &[&str]| {
        wanted.insert(key.to_owned());
        wanted.extend(
            attributes
                .iter()
                .map(|attribute| format!("{key}.{attribute}")),
        );
    };
    let catalogue = Catalogue::standard();
    catalogue
        .stops()
        .iter()
        .for_each(|stop| want(&stop.key.message(), &[]));
    catalogue
        .kinds()
        .iter()
        .for_each(|kind| want(&kind.key.message(), &["what", "look"]));
    catalogue
        .remedies()
        .iter()
        .for_each(|remedy| want(&remedy.key.message(), &["what"]));
    for defect in catalogue.defects() {
        want(&defect.key.message(), &["what", "why", "water", "photo"]);
        want(&defect.cause.message(), &[]);
    }
    macro_rules! names {
        ($($noun:ty: [$($attribute:literal),*]),+ $(,)?) => {$(
            for noun in <$noun>::ALL {
                want(noun.key(), &[$($attribute),*]);
            }
        )+};
    }
    names! {
        Rung: ["what"], Seen: ["what"], NotSeen: ["what"], Family: ["what"], When: ["what"], Course: ["what"],
        LicensedTrade: ["who"], Question: ["yes", "no", "ask"], StructureKind: ["the"], Side: ["slope"],
        Scope: ["what"], WetWhen: ["what"], Sky: ["what"], SafetyCheck: ["ask", "stop"], Reach: ["what"],
        Became: ["what"], MeasureOf: ["how"],
        Extent: [], Answer: [], Role: [], By: [], Evidence: [], Covering: [], Learned: [], Got: [], Came: [],
        Because: [], Tells: [],
    }
    Narrowed::ALL
        .iter()
        .filter_map(|narrowed| narrowed.key())
        .for_each(|key| want(key, &[]));
    for layer in [LayerIs::Membrane, LayerIs::Sheathing, LayerIs::Deck] {
        want(layer.key(), &[]);
    }
    for did in [Did::Replaced, Did::Covered, Did::TakenDown, Did::Something] {
        want(&did.message(), &[]);
    }
    // The two conditions of a mark that are no rung.
    want("condition-gone", &[]);
    want("condition-not-seen", &[]);
    wanted
}

#[test]
fn every_key_has_its_words_and_no_words_are_left_over() {
    let there: BTreeSet<_> = texts().into_keys().collect();
    let wanted = wanted();
    let missing: Vec<_> = wanted.difference(&there).collect();
    let orphans: Vec<_> = there.difference(&wanted).collect();
    assert!(missing.is_empty(), "no words for {missing:?}");
    assert!(orphans.is_empty(), "words for nothing: {orphans:?}");
}

#[test]
fn the_words_built_in_are_those_in_the_files() {
    let words = Words::of(Language::English);
    for (key, text) in texts() {
        assert!(words.has(&key), "{key} is not built in");
        assert_eq!(words.text(&key), text, "{key}");
    }
}

/// Whether a key names something that goes on a button.
fn is_button(key: &str) -> bool {
    !key.contains('.')
        && !key.starts_with("cause-")
        && !key.starts_with("question-")
        && !key.starts_with("narrowed-")
}

#[test]
fn names_fit_on_a_button() {
    for (key, text) in texts() {
        if !is_button(&key) {
            continue;
        }
        let limit = if key.starts_with("remedy-") || key.starts_with("extent-") {
            46
        } else {
            34
        };
        assert!(text.chars().count() <= limit, "{key}: {text}");
        assert!(!text.ends_with('.'), "{key}: {text}");
        assert!(text.starts_with(char::is_uppercase), "{key}: {text}");
        let second = text.chars().nth(1);
        assert!(
            second.is_some_and(|second| second.is_lowercase() || second == ' '),
            "{key} cannot stand in a sentence: {text}"
        );
    }
}

#[test]
fn no_two_defects_of_one_part_bear_the_same_name() {
    let texts = texts();
    for kind in Catalogue::standard().kinds() {
        let mut names = BTreeSet::new();
        for defect in Catalogue::standard().defects_of(&kind.key) {
            assert!(
                names.insert(&texts[&defect.key.message()]),
                "{} on {}",
                defect.key,
                kind.key
            );
        }
    }
}

/// Attributes that are whole sentences.
fn is_sentence(key: &str) -> bool {
    let Some((message, attribute)) = key.split_once('.') else {
        return false;
    };
    match attribute {
        "what" => !["when-", "not-seen-", "scope-"]
            .iter()
            .any(|phrase| message.starts_with(phrase)),
        "why" | "water" | "photo" | "look" | "how" => true,
        "ask" => message.starts_with("safety-"),
        _ => false,
    }
}

fn sentences(text: &str) -> impl Iterator<Item = &str> {
    text.split_inclusive(". ")
        .map(|sentence| sentence.trim().trim_end_matches(['.', '?']))
}

#[test]
fn sentences_are_whole_and_short() {
    for (key, text) in texts() {
        assert!(!text.contains("  ") && text.trim() == text, "{key}: {text}");
        assert!(!text.contains('!'), "{key} shouts: {text}");
        if !is_sentence(&key) {
            continue;
        }
        assert!(text.ends_with(['.', '?']), "{key}: {text}");
        for sentence in sentences(&text) {
            assert!(
                sentence.starts_with(|first: char| first.is_uppercase() || first.is_ascii_digit()),
                "{key}: {sentence}"
            );
            let words = sentence.split_whitespace().count();
            assert!(
                words <= 26,
                "{key} has a sentence of {words} words: {sentence}"
            );
        }
        assert!(sentences(&text).count() <= 3, "{key} says too much: {text}");
    }
}

/// A word that begins with a capital inside a sentence is a proper name; the only ones here are listed, so no brand can slip in.
#[test]
fn no_brand_is_named() {
    let allowed = ["Type", "B"];
    for (key, text) in texts() {
        for sentence in text.split(['.', ':', '?']) {
            for word in sentence.split_whitespace().skip(1) {
                let word = word.trim_matches(|mark: char| !mark.is_alphanumeric());
                if word.starts_with(char::is_uppercase) {
                    assert!(
                        allowed.contains(&word),
                        "{key}: {word} in \u{201c}{text}\u{201d}"
                    );
                }
            }
        }
    }
}

/// Words that a homeowner has no use for; each has a plain one.
#[test]
fn no_jargon() {
    let jargon = [
        "substrate",
        "penetration",
        "membrane",
        "counterflashing",
        "counter-flashing",
        "delaminat",
        "ponding",
        "efflorescence",
        "spall",
        "wythe",
        "selvage",
        "granule loss",
        "remediat",
        "mitigat",
        "compromised",
        "deteriorat",
        "ingress",
        "intrusion",
        "thermal",
        "adhesion",
        "weathertight",
    ];
    for (key, text) in texts() {
        let lower = text.to_lowercase();
        for word in jargon {
            assert!(!lower.contains(word), "{key} says {word}: {text}");
        }
    }
}

/// A roofer says course, an owner says row; what goes into a letter says row.
#[test]
fn an_owner_reads_rows_and_not_courses() {
    for (key, text) in texts() {
        let (message, attribute) = key.split_once('.').unwrap_or((&key, ""));
        let noun = ["defect-", "remedy-", "kind-"]
            .iter()
            .any(|prefix| message.starts_with(prefix));
        if noun && ["what", "why", "water"].contains(&attribute) {
            assert!(!text.to_lowercase().contains("course"), "{key}: {text}");
        }
    }
}

/// A letter states facts; it does not frighten.
#[test]
fn no_scare_talk() {
    let scare = [
        "disaster",
        "catastroph",
        "nightmare",
        "urgent",
        "immediately",
        "devastat",
        "deadly",
        "kill",
        "at any moment",
        "thousands of dollars",
        "beware",
    ];
    for (key, text) in texts() {
        let lower = text.to_lowercase();
        for word in scare {
            assert!(!lower.contains(word), "{key} says {word}: {text}");
        }
    }
}

#[test]
fn it_is_said_how_water_gets_in_or_that_none_does() {
    for (key, text) in texts() {
        if key
            .split_once('.')
            .is_some_and(|(_, attribute)| attribute == "water")
        {
            let lower = text.to_lowercase();
            let named = ["water", "rain", "snow", "damp"]
                .iter()
                .any(|word| lower.contains(word));
            assert!(named, "{key}: {text}");
        }
    }
}

/// Where a message takes its number or rule from: the message, what it must say, the source.
const SOURCES: &[(&str, &str, &str)] = &[
    (
        "defect-nails-too-short.what",
        "at least 3/4 inch",
        "IRC R905.2.5",
    ),
    (
        "defect-nails-wrong-kind.what",
        "12 gauge, which is 0.105 inch, or have heads smaller than 3/8 inch",
        "IRC R905.2.5",
    ),
    (
        "defect-nails-too-few.what",
        "at least four",
        "IRC R905.2.6 (2018)",
    ),
    (
        "defect-slope-too-low.what",
        "at least 2 inches of rise in 12",
        "IRC R905.2.2",
    ),
    (
        "defect-low-slope-shingled.why",
        "at least 2 inches of rise in 12",
        "IRC R905.2.2",
    ),
    (
        "defect-underlayment-single-low.what",
        "Between 2 and 4 inches of rise in 12",
        "IRC R905.2.2, R905.1.1",
    ),
    (
        "defect-ice-barrier-short.what",
        "at least 24 inches inside",
        "IRC R905.1.2",
    ),
    (
        "remedy-new-ice-barrier.what",
        "at least 24 inches inside",
        "IRC R905.1.2",
    ),
    (
        "defect-valley-lining-narrow.what",
        "24 inches",
        "IRC R905.2.8.2",
    ),
    (
        "defect-step-flashing-short.what",
        "4 inches up the wall or 4 inches onto the roof",
        "IRC R905.2.8.3",
    ),
    (
        "defect-drip-edge-short.what",
        "less than 2 inches up the deck",
        "IRC R905.2.8.5 (2012 and later)",
    ),
    (
        "defect-drip-edge-wrong-side.what",
        "under the sheet, at the sloping edge over it",
        "IRC R905.2.8.5 (2012 and later)",
    ),
    (
        "defect-eave-overhang-short.what",
        "1/4 to 3/8 inch",
        "NAVEDTRA 14044 ch. 3",
    ),
    (
        "remedy-trim-edge.what",
        "1/4 to 3/8 inch",
        "NAVEDTRA 14044 ch. 3",
    ),
    (
        "defect-cricket-missing.what",
        "wider than 30 inches",
        "IRC R903.2.2, R1003.20",
    ),
    (
        "defect-chimney-too-low.what",
        "2 feet above anything within 10 feet, and 3 feet above",
        "IRC R1003.9",
    ),
    ("defect-second-layer.why", "no third", "IRC R908.3.1.1"),
    (
        "defect-flashing-rusted.why",
        "may not be used again",
        "IRC R908.5",
    ),
    (
        "defect-baffles-missing.what",
        "At least 1 inch",
        "IRC R806.3",
    ),
    (
        "defect-vent-wrong-kind.what",
        "for gas only",
        "common practice with the vent's label",
    ),
    (
        "defect-vent-too-low.why",
        "carbon monoxide",
        "common practice",
    ),
    (
        "defect-suspect-vermiculite.why",
        "leave it alone",
        "EPA/ATSDR on vermiculite",
    ),
    (
        "defect-suspect-asbestos-covering.what",
        "Only a test can tell",
        "40 CFR 61 subpart M",
    ),
    (
        "defect-fascia-paint-failed.why",
        "before 1978 may hold lead",
        "40 CFR 745",
    ),
    (
        "defect-wall-paint-failed.why",
        "before 1978 may hold lead",
        "40 CFR 745",
    ),
    ("sky-thunder.what", "30 minutes", "OSHA/NOAA FS-3863"),
    (
        "safety-ladder-stands.ask",
        "a quarter of the working length, three feet above",
        "29 CFR 1926.1053(b)(5)(i), (b)(1)",
    ),
    (
        "safety-lines-clear.ask",
        "ten feet",
        "29 CFR 1910.269 and utilities' advice",
    ),
    (
        "safety-pitch-safe.ask",
        "6 feet",
        "29 CFR 1926.501(b)(13), as advice",
    ),
];

#[test]
fn numbers_agree_with_their_sources() {
    let texts = texts();
    for (key, says, source) in SOURCES {
        assert!(
            texts[*key].contains(says),
            "{key}: {source}: {}",
            texts[*key]
        );
    }
}
