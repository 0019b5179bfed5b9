//! Spanish beside English: the same things said, with the same arguments, in words of its own.
//!
//! What is plain, how long a name may be and which word stands for which thing is house style (the glossary heads kinds.ftl), not a
//! published rule. That numbers agree is checked against the English, whose numbers are held against their sources in words.rs.

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use jiff::civil::date;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use trade::catalogue::Catalogue;
use trade::words::{Language, Said, Words};

/// What one message or attribute consists of.
#[derive(Default)]
struct Told {
    /// Its words, with ‹› for what is inserted; variants stand one after another.
    text: String,
    /// The text of each variant on its own, or the whole where there are none.
    branches: Vec<String>,
    /// The arguments it takes.
    takes: BTreeSet<String>,
    /// The arguments that choose between variants.
    chooses_by: BTreeSet<String>,
}

/// Messages and attributes (`key` or `key.attribute`) of one file.
type File = BTreeMap<String, Told>;

fn folder(language: Language) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("words")
        .join(language.tag())
}

/// The message files of one language, by their names.
fn names(language: Language) -> BTreeSet<String> {
    let top = folder(language);
    let mut names = BTreeSet::new();
    for inside in ["", "defects"] {
        for entry in std::fs::read_dir(top.join(inside)).expect("the folder of words") {
            let path = entry.expect("a file").path();
            if path.extension().is_some_and(|extension| extension == "ftl") {
                let name = path.strip_prefix(&top).expect("a file below the folder");
                names.insert(name.to_str().expect("a plain file name").to_owned());
            }
        }
    }
    names
}

fn source(language: Language, name: &str) -> String {
    std::fs::read_to_string(folder(language).join(name)).expect("a message file")
}

fn read(language: Language, name: &str) -> File {
    let text = source(language, name);
    let resource = fluent_syntax::parser::parse(text.as_str()).expect("a whole message file");
    let mut file = File::new();
    for entry in &resource.body {
        let Entry::Message(message) = entry else {
            continue;
        };
        let value = message
            .value
            .iter()
            .map(|value| (message.id.name.to_owned(), value));
        let attributes = message.attributes.iter().map(|attribute| {
            let key = format!("{}.{}", message.id.name, attribute.id.name);
            (key, &attribute.value)
        });
        for (key, pattern) in value.chain(attributes) {
            let told = told(pattern);
            assert!(file.insert(key.clone(), told).is_none(), "{key} twice");
        }
    }
    file
}

fn told(pattern: &Pattern<&str>) -> Told {
    let mut told = Told::default();
    gather(pattern, &mut told);
    if told.branches.is_empty() {
        told.branches.push(told.text.clone());
    }
    told
}

fn gather(pattern: &Pattern<&str>, told: &mut Told) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => told.text.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => takes(inline, told),
                Expression::Select { selector, variants } => {
                    let mut chooser = Told::default();
                    takes(selector, &mut chooser);
                    told.takes.extend(chooser.takes.iter().cloned());
                    told.chooses_by.extend(chooser.takes);
                    for variant in variants {
                        let mut branch = Told::default();
                        gather(&variant.value, &mut branch);
                        told.text.push(' ');
                        told.text.push_str(&branch.text);
                        told.takes.extend(branch.takes);
                        told.branches.push(branch.text);
                    }
                }
            },
        }
    }
}

fn takes(inline: &InlineExpression<&str>, told: &mut Told) {
    match inline {
        InlineExpression::VariableReference { id } => {
            told.takes.insert(id.name.to_owned());
            told.text.push_str("‹›");
        }
        _ => panic!("a message here inserts nothing but its arguments"),
    }
}

/// Each message of both languages: file, key, English, Spanish.
fn pairs() -> Vec<(String, String, Told, Told)> {
    let mut pairs = Vec::new();
    for name in names(Language::English) {
        let mut spanish = read(Language::Spanish, &name);
        for (key, english) in read(Language::English, &name) {
            let Some(spanish) = spanish.remove(&key) else {
                continue;
            };
            pairs.push((name.clone(), key, english, spanish));
        }
    }
    pairs
}

/// Whether a file holds the catalogue or the nouns: names for buttons, and what a letter says of them.
fn is_catalogue(name: &str) -> bool {
    name.starts_with("defects/")
        || ["nouns.ftl", "kinds.ftl", "remedies.ftl", "causes.ftl"].contains(&name)
}

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

/// The words of a text, small, without punctuation.
fn words_of(text: &str) -> impl Iterator<Item = String> {
    text.split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
}

/// English's small words: none of them is a Spanish word too.
#[test]
fn no_english_word_slipped_in() {
    let english = [
        "the", "and", "of", "with", "is", "are", "was", "not", "to", "it", "for", "from", "roof",
        "shingle", "shingles", "flashing", "boot", "deck", "vent", "leak",
    ];
    for (name, key, _, spanish) in pairs() {
        for word in words_of(&spanish.text) {
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

#[test]
fn it_is_said_how_water_gets_in_or_that_none_does() {
    for (_, key, _, spanish) in pairs() {
        if key.ends_with(".water") {
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
        "Tapas de cumbrera: se parchó una vez. Causa: un collarín de tubo resecado por el sol."
    );
    assert_eq!(
        patched(3),
        "Tapas de cumbrera: se parchó 3 veces. Causa: un collarín de tubo resecado por el sol."
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
