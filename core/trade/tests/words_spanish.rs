//! Spanish beside English: the same messages, with the same arguments, numbers and ends, and every one can be said.
//!
//! The numbers are held against the English, whose numbers are held against their sources in words.rs.

mod bilingual;

use bilingual::{names, pairs, read, source};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use jiff::civil::date;
use std::collections::BTreeSet;
use trade::words::{Language, Said, Words};

#[test]
fn both_languages_hold_the_same_files_and_keys() {
    assert_eq!(names(Language::English), names(Language::Spanish));
    for name in names(Language::English) {
        let english: BTreeSet<_> = read(Language::English, &name).into_keys().collect();
        let spanish: BTreeSet<_> = read(Language::Spanish, &name).into_keys().collect();
        let missing: Vec<_> = english.difference(&spanish).collect();
        let left_over: Vec<_> = spanish.difference(&english).collect();
        assert!(missing.is_empty(), "{name}: no Spanish for {missing:?}");
        assert!(left_over.is_empty(), "{name}: Spanish alone: {left_over:?}");
    }
}

#[test]
fn all_of_it_is_built_in() {
    let words = Words::of(Language::Spanish);
    assert_eq!(words.language(), Language::Spanish);
    for (name, key, _, spanish) in pairs() {
        assert!(words.has(&key), "{name}: {key} is not built in");
        if spanish.takes.is_empty() {
            assert_eq!(words.text(&key), spanish.text, "{name}: {key}");
        }
    }
}

#[test]
fn each_message_takes_the_same_arguments() {
    for (name, key, english, spanish) in pairs() {
        assert_eq!(english.takes, spanish.takes, "{name}: {key}");
        assert_eq!(english.chooses_by, spanish.chooses_by, "{name}: {key}");
    }
}

/// Messages whose words are the same in both languages, and why.
const SAME: &[(&str, &str)] = &[
    ("answer-no", "no is no"),
    ("letter-no", "no is no"),
    ("letter-decline", "no is no"),
    (
        "language-english",
        "a language is named in itself, so that its speaker finds it",
    ),
    (
        "language-spanish",
        "a language is named in itself, so that its speaker finds it",
    ),
];

#[test]
fn nothing_is_left_in_english() {
    let allowed: BTreeSet<_> = SAME.iter().map(|(key, _)| *key).collect();
    let mut same = BTreeSet::new();
    for (_, key, english, spanish) in pairs() {
        let has_words = english.text.chars().any(char::is_alphabetic);
        if has_words && english.text == spanish.text {
            same.insert(key);
        }
    }
    let same: BTreeSet<_> = same.iter().map(String::as_str).collect();
    assert_eq!(same, allowed);
}

/// The mark a text ends with, if any.
fn end(text: &str) -> Option<char> {
    text.trim_end()
        .chars()
        .last()
        .filter(|last| ['.', '?', ':', '!'].contains(last))
}

#[test]
fn the_marks_are_those_of_spanish_and_end_as_the_english_does() {
    for (name, key, english, spanish) in pairs() {
        let text = &spanish.text;
        assert!(!text.contains('!') && !text.contains('¡'), "{key} shouts");
        assert_eq!(
            text.matches('?').count(),
            text.matches('¿').count(),
            "{name}: {key}: {text}"
        );
        assert_eq!(english.branches.len(), spanish.branches.len(), "{key}");
        for (english, spanish) in english.branches.iter().zip(&spanish.branches) {
            assert!(!spanish.contains("  "), "{name}: {key}: {spanish}");
            assert_eq!(end(english), end(spanish), "{name}: {key}: {spanish}");
        }
    }
}

/// The numbers written in figures, in the order of their size as text.
fn figures(text: &str) -> Vec<&str> {
    let mut figures: Vec<&str> = text
        .split(|letter: char| !letter.is_ascii_digit())
        .filter(|figure| !figure.is_empty())
        .collect();
    figures.sort_unstable();
    figures
}

/// Names where Spanish writes a figure to stay short.
const IN_FIGURES: &[&str] = &["extent-broad"];

#[test]
fn numbers_are_those_of_the_english() {
    let mut held = 0;
    for (name, key, english, spanish) in pairs() {
        if IN_FIGURES.contains(&key.as_str()) {
            continue;
        }
        let wanted = figures(&english.text);
        held += usize::from(!wanted.is_empty());
        assert_eq!(wanted, figures(&spanish.text), "{name}: {key}");
    }
    assert!(held > 30, "only {held} messages hold numbers");
}

/// Every message of one language, as the program builds them, with errors told.
fn bundle(language: Language) -> FluentBundle<FluentResource> {
    let tag = language.tag().parse().expect("a language tag");
    let mut bundle = FluentBundle::new(vec![tag]);
    bundle.set_use_isolating(false);
    for name in names(language) {
        let resource = FluentResource::try_new(source(language, &name)).expect("a whole file");
        bundle.add_resource(resource).expect("keys that stand once");
    }
    bundle
}

/// Each message is said with every count that chooses between its variants, and with words for the rest.
#[test]
fn every_message_is_said_without_errors() {
    let bundle = bundle(Language::Spanish);
    for (name, key, english, _) in pairs() {
        let (message, attribute) = key.split_once('.').unwrap_or((&key, ""));
        let message = bundle.get_message(message).expect("a message");
        let pattern = if attribute.is_empty() {
            message.value().expect("a value")
        } else {
            message
                .get_attribute(attribute)
                .expect("an attribute")
                .value()
        };
        for count in [0, 1, 2, 3, 5, 21] {
            let mut args = FluentArgs::new();
            for argument in &english.takes {
                let value = if english.chooses_by.contains(argument) {
                    FluentValue::from(count)
                } else {
                    FluentValue::from(format!("‹{argument}›"))
                };
                args.set(argument.clone(), value);
            }
            let mut errors = Vec::new();
            let said = bundle.format_pattern(pattern, Some(&args), &mut errors);
            assert!(errors.is_empty(), "{name}: {key}: {errors:?}");
            assert!(!said.contains(['{', '}']), "{name}: {key}: {said}");
            assert!(!said.trim().is_empty(), "{name}: {key} says nothing");
            for argument in english.takes.difference(&english.chooses_by) {
                let whole = english.branches.len() == 1;
                assert!(
                    !whole || said.contains(&format!("‹{argument}›")),
                    "{name}: {key} leaves out {argument}: {said}"
                );
            }
        }
    }
}

#[test]
fn dates_and_lists_are_written_as_in_spanish() {
    let words = Words::of(Language::Spanish);
    assert_eq!(words.date(date(2023, 6, 9)), "9 de junio de 2023");
    assert_eq!(words.date(date(2024, 12, 31)), "31 de diciembre de 2024");
    let things = ["Canaleta", "Bajante", "Valle"].map(Said::verbatim);
    assert_eq!(words.list(&things[..1]), "Canaleta");
    assert_eq!(words.list(&things[..2]), "Canaleta y Bajante");
    assert_eq!(words.list(&things), "Canaleta, Bajante y Valle");
}

/// Whole sentences as they are put together, one for each way a name, date, list or count is inserted.
#[test]
fn sentences_read_as_spanish_when_put_together() {
    let words = Words::of(Language::Spanish);
    let patched = |count: i64| {
        let said = Said::new("doorstep-patched")
            .with("part", Said::new("kind-ridge-cap"))
            .with("cause", Said::new("cause-boot-perished"))
            .with("count", count);
        words.say(&said)
    };
    assert_eq!(
        patched(1),
        "Tapas de cumbrera: un parche hasta ahora. Causa: un collarín de tubo resecado por el sol."
    );
    assert_eq!(
        patched(3),
        "Tapas de cumbrera: 3 parches hasta ahora. Causa: un collarín de tubo resecado por el sol."
    );
    let then = Said::new("doorstep-then-defects")
        .with("rung", Said::new("rung-failing"))
        .with("on", date(2021, 3, 2))
        .with(
            "defects",
            vec![
                Said::new("defect-boot-split"),
                Said::new("defect-boot-smeared"),
            ],
        );
    assert_eq!(
        words.say(&then),
        "Con fallas el 2 de marzo de 2021: Bota rajada y Bota embarrada de sellador."
    );
    let waits =
        Said::new("reason-waits-for-trade").with("trade", Said::new("trade-electrician.who"));
    assert_eq!(
        words.say(&waits),
        "Nuestro trabajo aquí espera a que venga un electricista con licencia o la compañía de luz."
    );
    let look = Said::new("letter-look-if")
        .with("ask", Said::new("question-two-layers.ask"))
        .with("state", Said::new("question-two-layers.yes"));
    assert_eq!(
        words.say(&look),
        "Cuente las capas en el borde inclinado o en un borde cortado de cada vertiente. Cambia si hay dos capas de cubierta o más."
    );
}
