//! Both languages' message files, read message by message.
#![allow(dead_code, reason = "each test file takes what it needs")]

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use trade::words::Language;

/// What one message or attribute consists of.
#[derive(Default)]
pub struct Told {
    /// Its words, with ‹› for what is inserted; variants stand one after another.
    pub text: String,
    /// The text of each variant on its own, or the whole where there are none.
    pub branches: Vec<String>,
    /// The arguments it takes.
    pub takes: BTreeSet<String>,
    /// The arguments that choose between variants.
    pub chooses_by: BTreeSet<String>,
}

/// Messages and attributes (`key` or `key.attribute`) of one file.
pub type File = BTreeMap<String, Told>;

pub fn folder(language: Language) -> PathBuf {
    Path::new("words").join(language.tag())
}

/// The message files of one language, by their names.
pub fn names(language: Language) -> BTreeSet<String> {
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

pub fn source(language: Language, name: &str) -> String {
    std::fs::read_to_string(folder(language).join(name)).expect("a message file")
}

pub fn read(language: Language, name: &str) -> File {
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
pub fn pairs() -> Vec<(String, String, Told, Told)> {
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
pub fn is_catalogue(name: &str) -> bool {
    name.starts_with("defects/")
        || ["nouns.ftl", "kinds.ftl", "remedies.ftl", "causes.ftl"].contains(&name)
}
