//! How the Spanish is written: plain, short, in one word for one thing, and to somebody addressed as "usted".
//!
//! All of it is house style (the glossary heads words/es/kinds.ftl), not a published rule.

mod bilingual;

use bilingual::{is_catalogue, pairs};
use std::collections::BTreeSet;
use trade::catalogue::Catalogue;
use trade::words::{Language, Words};

/// The words of a text, small, without punctuation.
fn words_of(text: &str) -> impl Iterator<Item = String> {
    text.split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
}

/// A text without what stands in straight quotes: the names of a visit file's members are no Spanish.
fn without_names(text: &str) -> String {
    text.split('"').step_by(2).collect()
}

/// English's small words: none of them is a Spanish word too.
#[test]
fn no_english_word_slipped_in() {
    let english = [
        "the", "and", "of", "with", "is", "are", "was", "not", "to", "it", "for", "from", "roof",
        "shingle", "shingles", "flashing", "boot", "deck", "vent", "leak",
    ];
    for (name, key, _, spanish) in pairs() {
        for word in words_of(&without_names(&spanish.text)) {
            assert!(
                !english.contains(&word.as_str()),
                "{name}: {key}: {word} in {}",
                spanish.text
            );
        }
    }
}

/// Owner and roofer are addressed as "usted".
#[test]
fn everybody_is_addressed_as_usted() {
    let familiar = [
        "tú", "tu", "tus", "te", "ti", "contigo", "vos", "vosotros", "os", "vuestro", "vuestra",
    ];
    for (name, key, _, spanish) in pairs() {
        for word in words_of(&spanish.text) {
            assert!(
                !familiar.contains(&word.as_str()),
                "{name}: {key}: {word} in {}",
                spanish.text
            );
        }
    }
}

/// One word for one thing: these are other words for what the glossary at the head of kinds.ftl names.
#[test]
fn the_glossary_is_kept() {
    let others = [
        "limahoya",
        "canalón",
        "sumidero",
        "caballete",
        "claraboya",
        "hilada",
        "desarmador",
        "chapopote",
        "alquitrán",
        "tejado",
        "faldón",
        "tapajunta ",
        "ventila ",
        "entretecho",
        "desván",
        "entablado",
        "contrapiso",
        "cornisa",
        "fontanero",
        "rehacer",
        "parapeto",
        "sófito",
        "la bajante",
        "una bajante",
        "los tragaluz ",
    ];
    for (name, key, _, spanish) in pairs() {
        let lower = format!("{} ", spanish.text.to_lowercase());
        for word in others {
            assert!(!lower.contains(word), "{name}: {key}: {word} in {lower}");
        }
    }
}

/// Whether a key of the catalogue names something that goes on a button.
fn is_button(key: &str) -> bool {
    !key.contains('.')
        && !["cause-", "question-", "narrowed-"]
            .iter()
            .any(|start| key.starts_with(start))
}

#[test]
fn names_fit_on_a_button() {
    for (name, key, _, spanish) in pairs() {
        if !is_catalogue(&name) || !is_button(&key) {
            continue;
        }
        let text = spanish.text;
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

/// What stands on the buttons of the screens.
#[test]
fn the_buttons_of_the_screens_are_short() {
    let ends = ["-button", "-keep", "-title", "-open", "-mark", "-more"];
    let whole = [
        "undo",
        "shutter",
        "say-it",
        "doorstep-safety",
        "safety-up",
        "safety-from-ground",
        "back-doorstep",
        "back-walk",
        "walk-close",
        "walk-add-part",
        "mark-take-off",
        "letter-write-english",
        "letter-write-spanish",
        "reminder-done",
        "verdict-letter",
    ];
    let mut seen = 0;
    for (name, key, _, spanish) in pairs() {
        let is_button = ends.iter().any(|end| key.ends_with(end)) || whole.contains(&key.as_str());
        if name != "screens.ftl" || !is_button || key.starts_with("error-") {
            continue;
        }
        seen += 1;
        let count = spanish.text.chars().count();
        assert!(count <= 28, "{key}: {}", spanish.text);
    }
    assert!(seen >= whole.len(), "the buttons are there");
}

/// "y" becomes "e" before the sound of an i; no name that may end a list begins with it.
#[test]
fn no_name_begins_with_the_sound_of_an_i() {
    let named = [
        "kind-",
        "defect-",
        "remedy-",
        "cause-",
        "question-",
        "wet-when-",
        "narrowed-",
    ];
    for (_, key, _, spanish) in pairs() {
        if named.iter().any(|start| key.starts_with(start)) && !is_sentence(&key) {
            let lower = spanish.text.trim_start_matches('¿').to_lowercase();
            let sound = lower.strip_prefix('h').unwrap_or(&lower);
            let mut letters = sound.chars();
            let is_i = matches!(letters.next(), Some('i' | 'í'));
            // "hielo" begins with another sound, and keeps its "y".
            let glides = matches!(letters.next(), Some('a' | 'e' | 'o'));
            assert!(!is_i || glides, "{key}: {lower}");
        }
    }
}

#[test]
fn no_two_things_of_one_kind_bear_the_same_name() {
    let words = Words::of(Language::Spanish);
    let catalogue = Catalogue::standard();
    for kind in catalogue.kinds() {
        let mut names = BTreeSet::new();
        for defect in catalogue.defects_of(&kind.key) {
            let name = words.text(&defect.key.message());
            assert!(
                names.insert(name.clone()),
                "{name}: {} on {}",
                defect.key,
                kind.key
            );
        }
    }
    let mut kinds = BTreeSet::new();
    for kind in catalogue.kinds() {
        assert!(
            kinds.insert(words.text(&kind.key.message())),
            "{}",
            kind.key
        );
    }
    let mut remedies = BTreeSet::new();
    for remedy in catalogue.remedies() {
        let name = words.text(&remedy.key.message());
        assert!(remedies.insert(name.clone()), "{}: {name}", remedy.key);
    }
}

/// Attributes of the catalogue and the nouns that are whole sentences.
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
    text.split_inclusive([' '])
        .scan((0, false), |(at, _), word| {
            let start = *at;
            *at += word.len();
            Some((start, word))
        })
        .filter(|(_, word)| word.ends_with(". ") || word.ends_with("? "))
        .map(|(start, word)| start + word.len())
        .chain(std::iter::once(text.len()))
        .scan(0, |from, to| {
            let sentence = &text[*from..to];
            *from = to;
            Some(sentence.trim())
        })
        .filter(|sentence| !sentence.is_empty())
}

/// Spanish takes more words than English: 30 where English keeps to 26.
#[test]
fn sentences_are_whole_and_short() {
    for (name, key, _, spanish) in pairs() {
        if !is_catalogue(&name) || !is_sentence(&key) {
            continue;
        }
        let text = spanish.text;
        assert!(text.ends_with(['.', '?']), "{key}: {text}");
        for sentence in sentences(&text) {
            let first = sentence.trim_start_matches('¿').chars().next();
            assert!(
                first.is_some_and(|first| first.is_uppercase() || first.is_ascii_digit()),
                "{key}: {sentence}"
            );
            let count = sentence.split_whitespace().count();
            assert!(count <= 30, "{key}: {count} words: {sentence}");
        }
        assert!(sentences(&text).count() <= 3, "{key} says too much: {text}");
    }
}

#[test]
fn it_is_said_how_water_gets_in_or_that_none_does() {
    for (_, key, _, spanish) in pairs() {
        if key
            .split_once('.')
            .is_some_and(|(_, attribute)| attribute == "water")
        {
            let lower = spanish.text.to_lowercase();
            let named = ["agua", "lluvia", "nieve", "húmed", "humedad"]
                .iter()
                .any(|word| lower.contains(word));
            assert!(named, "{key}: {lower}");
        }
    }
}

/// A letter states facts; it does not frighten.
#[test]
fn no_scare_talk() {
    let scare = [
        "desastre",
        "catástrof",
        "catastróf",
        "pesadilla",
        "urgente",
        "devastad",
        "mortal",
        "en cualquier momento",
        "miles de dólares",
        "grave",
        "terrible",
    ];
    for (name, key, _, spanish) in pairs() {
        let lower = spanish.text.to_lowercase();
        for word in scare {
            assert!(!lower.contains(word), "{name}: {key}: {word} in {lower}");
        }
    }
}

/// Words that a homeowner has no use for; each has a plain one.
#[test]
fn no_jargon() {
    let jargon = [
        "delamina",
        "eflorescencia",
        "sustrato",
        "encharcamiento",
        "filtraciones",
        "intrusión",
        "remediación",
        "mitiga",
        "deterior",
        "térmic",
        "hermetic",
        "estanqueidad",
        "perforante",
    ];
    for (name, key, _, spanish) in pairs() {
        let lower = spanish.text.to_lowercase();
        for word in jargon {
            assert!(!lower.contains(word), "{name}: {key}: {word} in {lower}");
        }
    }
}
