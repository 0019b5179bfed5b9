//! Words: every sentence that a person reads, in English and Spanish, from the message files beside this crate.
//!
//! A rule or screen says *what* it means as a [`Said`]: a key and its arguments. [`Words`] turns that into a sentence.

use crate::units::{Length, Money, Pitch};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use std::sync::LazyLock;

/// A language that the words are kept in.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
pub enum Language {
    /// English.
    #[default]
    #[serde(rename = "en")]
    English,
    /// Spanish.
    #[serde(rename = "es")]
    Spanish,
}

impl Language {
    /// Both.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// Its BCP 47 tag.
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
}

/// One argument of a message.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is", content = "value")]
pub enum Arg {
    /// A name or somebody's own words, shown as they are.
    Text(String),
    /// A count.
    Count(i64),
    /// A date, written out in the reader's language.
    Date(Date),
    /// A length.
    Length(Length),
    /// A pitch.
    Pitch(Pitch),
    /// An amount of money.
    Money(Money),
    /// Another message.
    Said(Box<Said>),
    /// Several messages, joined as a list: "a, b and c".
    List(Vec<Said>),
}

/// What is meant: a message and its arguments.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Said {
    /// The key in the message files; `key.attribute` for an attribute.
    pub key: String,
    /// The arguments by name.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub args: Vec<(String, Arg)>,
}

impl Said {
    /// A message without arguments.
    pub fn new(key: impl Into<String>) -> Self {
        Self {
            key: key.into(),
            args: Vec::new(),
        }
    }

    /// Somebody's own words, shown as they are.
    pub fn verbatim(text: impl Into<String>) -> Self {
        Self::new("verbatim").with("text", text.into())
    }

    /// The same with one more argument.
    #[must_use]
    pub fn with(mut self, name: &str, arg: impl Into<Arg>) -> Self {
        self.args.push((name.to_owned(), arg.into()));
        self
    }

    /// The sentence in English, for logs and for whoever debugs. A reader gets it in the reader's language, from [`Words::say`].
    pub fn in_english(&self) -> String {
        Words::of(Language::English).say(self)
    }
}

macro_rules! arg_from {
    ($($from:ty => $variant:ident),+ $(,)?) => {$(
        impl From<$from> for Arg {
            fn from(value: $from) -> Self {
                Self::$variant(value.into())
            }
        }
    )+};
}

arg_from! {
    String => Text, &str => Text, i64 => Count, i32 => Count, u32 => Count, u16 => Count, u8 => Count,
    Date => Date, Length => Length, Pitch => Pitch, Money => Money, Said => Said, Vec<Said> => List,
}

/// The same files in each language: a file that one lacks does not compile.
macro_rules! files {
    ($($file:literal),+ $(,)?) => {
        const ENGLISH: &[(&str, &str)] =
            &[$(($file, include_str!(concat!("../words/en/", $file)))),+];
        const SPANISH: &[(&str, &str)] =
            &[$(($file, include_str!(concat!("../words/es/", $file)))),+];
    };
}

files![
    "trade.ftl",
    "nouns.ftl",
    "kinds.ftl",
    "remedies.ftl",
    "causes.ftl",
    "defects/covering.ftl",
    "defects/fastening.ftl",
    "defects/layers.ftl",
    "defects/deck.ftl",
    "defects/edges.ftl",
    "defects/gutters.ftl",
    "defects/valleys.ftl",
    "defects/pipes.ftl",
    "defects/fuel_vents.ftl",
    "defects/chimneys.ftl",
    "defects/flashings.ftl",
    "defects/skylights.ftl",
    "defects/walls.ftl",
    "defects/low_slopes.ftl",
    "defects/ridges.ftl",
    "defects/attachments.ftl",
    "defects/earlier_repairs.ftl",
    "defects/attic.ftl",
    "defects/surroundings.ftl",
    "roof.ftl",
    "laying.ftl",
    "leak.ftl",
    "price.ftl",
    "book.ftl",
    "desk.ftl",
    "judge.ftl",
    "second_look.ftl",
    "letter.ftl",
    "screens.ftl",
    "phone.ftl",
];

static IN_ENGLISH: LazyLock<Words> = LazyLock::new(|| Words::read(Language::English, ENGLISH));
static IN_SPANISH: LazyLock<Words> = LazyLock::new(|| Words::read(Language::Spanish, SPANISH));

/// The words of one language.
pub struct Words {
    language: Language,
    bundle: FluentBundle<FluentResource>,
}

impl Words {
    /// The words of one language. Built once.
    pub fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &IN_ENGLISH,
            Language::Spanish => &IN_SPANISH,
        }
    }

    fn read(language: Language, files: &[(&str, &str)]) -> Self {
        let tag = match language {
            Language::English => unic_langid::langid!("en"),
            Language::Spanish => unic_langid::langid!("es"),
        };
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        bundle.set_use_isolating(false);
        for (file, text) in files {
            let resource = FluentResource::try_new((*text).to_owned())
                .unwrap_or_else(|(_, errors)| panic!("{file} built in is damaged: {errors:?}"));
            bundle
                .add_resource(resource)
                .unwrap_or_else(|errors| panic!("{file} built in is damaged: {errors:?}"));
        }
        Self { language, bundle }
    }

    /// The language.
    pub fn language(&self) -> Language {
        self.language
    }

    /// Whether a message or attribute is there.
    pub fn has(&self, key: &str) -> bool {
        self.pattern(key).is_some()
    }

    /// The text of a message without arguments.
    pub fn text(&self, key: &str) -> String {
        self.say(&Said::new(key))
    }

    /// The sentence for what is meant. A key that is not there is shown as it is, in brackets, so that the rest stays readable.
    pub fn say(&self, said: &Said) -> String {
        let Some(pattern) = self.pattern(&said.key) else {
            return format!("[{}]", said.key);
        };
        let mut args = FluentArgs::new();
        for (name, arg) in &said.args {
            args.set(name.clone(), self.value(arg));
        }
        let mut errors = Vec::new();
        self.bundle
            .format_pattern(pattern, Some(&args), &mut errors)
            .into_owned()
    }

    fn pattern(&self, key: &str) -> Option<&ast::Pattern<&str>> {
        let (message, attribute) = match key.split_once('.') {
            Some((message, attribute)) => (message, Some(attribute)),
            None => (key, None),
        };
        let message = self.bundle.get_message(message)?;
        match attribute {
            Some(attribute) => message.get_attribute(attribute).map(|found| found.value()),
            None => message.value(),
        }
    }

    fn value(&self, arg: &Arg) -> FluentValue<'static> {
        match arg {
            Arg::Text(text) => text.clone().into(),
            Arg::Count(count) => (*count).into(),
            Arg::Date(date) => self.date(*date).into(),
            Arg::Length(length) => length.imperial().into(),
            Arg::Pitch(pitch) => pitch.to_string().into(),
            Arg::Money(money) => in_thousands(&money.to_string()).into(),
            Arg::Said(said) => self.say(said).into(),
            Arg::List(list) => self.list(list).into(),
        }
    }

    /// A date written out: "9 June 2023".
    pub fn date(&self, date: Date) -> String {
        let month = self.text(&format!("month-{}", date.month()));
        self.say(
            &Said::new("date-long")
                .with("day", date.day().to_string())
                .with("month", month)
                .with("year", date.year().to_string()),
        )
    }

    /// Several things joined: "a, b and c".
    pub fn list(&self, things: &[Said]) -> String {
        let items: Vec<String> = things.iter().map(|said| self.say(said)).collect();
        match items.as_slice() {
            [] => String::new(),
            [one] => one.clone(),
            [most @ .., last] => self.say(
                &Said::new("list-and")
                    .with("most", most.join(", "))
                    .with("last", last.clone()),
            ),
        }
    }
}

/// An amount with a comma before each three digits of its whole part: in English, and in Spanish as it is written in the United States and Mexico.
fn in_thousands(amount: &str) -> String {
    let (whole, cents) = amount.split_once('.').unwrap_or((amount, ""));
    let digits = whole.trim_start_matches('-').len();
    let mut out = String::with_capacity(amount.len() + digits / 3);
    for (at, c) in whole.chars().enumerate() {
        let left = whole.len() - at;
        if c.is_ascii_digit() && left < digits && left.is_multiple_of(3) {
            out.push(',');
        }
        out.push(c);
    }
    if !cents.is_empty() {
        out.push('.');
        out.push_str(cents);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::in_thousands;

    #[test]
    fn amounts_are_written_in_thousands() {
        let cases = [
            ("0.00", "0.00"),
            ("999.50", "999.50"),
            ("1000.00", "1,000.00"),
            ("11840.25", "11,840.25"),
            ("1234567.00", "1,234,567.00"),
            ("-999.00", "-999.00"),
            ("-1000.00", "-1,000.00"),
            ("100000", "100,000"),
        ];
        for (amount, written) in cases {
            assert_eq!(in_thousands(amount), written);
        }
    }
}
