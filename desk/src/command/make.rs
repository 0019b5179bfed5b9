//! What leaves the book: letters, outcomes, reminders.

use super::Common;
use super::answer::{answer, say};
use super::look::{last_visit, property};
use crate::failure::Failure;
use acts::letter::Drawn;
use acts::{Due, letter as letters, outcome as outcomes};
use clap::{Args, ValueEnum};
use jiff::civil::Date;
use serde_json::json;
use std::path::{Path, PathBuf};
use trade::outcome::Came;
use trade::units::Money;
use trade::words::{Language, Words};

/// Writing the letter of the last visit.
#[derive(Args, Debug)]
pub(super) struct Letter {
    /// The address, an owner or a telephone number; or the property's identifier
    #[arg(required = true)]
    property: Vec<String>,
    /// The folder to write letter.pdf, letter.html and letter.txt to
    #[arg(long, value_name = "FOLDER", default_value = ".")]
    out: PathBuf,
    /// Its language; the firm's where it is not given
    #[arg(long, value_enum)]
    language: Option<Tongue>,
    /// Only draw it: keep no letter in the book and set no reminder
    #[arg(long)]
    draft: bool,
}

/// A language to write in.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum Tongue {
    /// English
    En,
    /// Spanish
    Es,
}

impl From<Tongue> for Language {
    fn from(tongue: Tongue) -> Self {
        match tongue {
            Tongue::En => Self::English,
            Tongue::Es => Self::Spanish,
        }
    }
}

/// Recording what came of a letter.
#[derive(Args, Debug)]
pub(super) struct Outcome {
    /// The address, an owner or a telephone number; or the property's identifier
    #[arg(required = true)]
    property: Vec<String>,
    /// What came of it
    #[arg(long, value_enum)]
    came: CameAs,
    /// The day; today where it is not given
    #[arg(long)]
    on: Option<Date>,
    /// What was paid or asked
    #[arg(long)]
    amount: Option<rust_decimal::Decimal>,
    /// Your own words
    #[arg(long, default_value = "")]
    words: String,
}

/// What came of a letter.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum CameAs {
    /// The owner said yes
    Accepted,
    /// Done by us
    DoneByUs,
    /// Done by somebody else
    DoneByOthers,
    /// The owner said no
    Declined,
    /// No answer
    NoAnswer,
}

impl From<CameAs> for Came {
    fn from(came: CameAs) -> Self {
        match came {
            CameAs::Accepted => Self::Accepted,
            CameAs::DoneByUs => Self::DoneByUs,
            CameAs::DoneByOthers => Self::DoneByOthers,
            CameAs::Declined => Self::Declined,
            CameAs::NoAnswer => Self::NoAnswer,
        }
    }
}

/// Listing what to come back to.
#[derive(Args, Debug)]
pub(super) struct Reminders {
    /// Write an iCalendar file instead of a list
    #[arg(long, value_name = "FILE")]
    ics: Option<PathBuf>,
}

pub(super) fn letter(common: &Common, asked: &Letter) -> Result<(), Failure> {
    common.with_book(|mut book, words| {
        let property = property(&book, &asked.property)?;
        let visit = last_visit(&book, property)?;
        let moment = common.clock().now();
        let language = asked.language.map_or(words.language(), Language::from);
        let drawn = if asked.draft {
            letters::draw(&book, visit, language, moment)?.1
        } else {
            letters::make(&mut book, visit, language, moment)?.1
        };
        let written = write(&asked.out, &drawn)?;
        answer(common.json, &json!({ "files": written }), || {
            format!("{}\n{}", written.join("\n"), drawn.text)
        })
    })
}

/// Writes a letter as three files.
pub(super) fn write(folder: &Path, drawn: &Drawn) -> Result<Vec<String>, Failure> {
    std::fs::create_dir_all(folder).map_err(|error| Failure::io(folder, &error))?;
    let files: [(&str, &[u8]); 3] = [
        ("letter.pdf", &drawn.pdf),
        ("letter.html", drawn.html.as_bytes()),
        ("letter.txt", drawn.text.as_bytes()),
    ];
    let mut written = Vec::new();
    for (name, bytes) in files {
        let path = folder.join(name);
        std::fs::write(&path, bytes).map_err(|error| Failure::io(&path, &error))?;
        written.push(path.display().to_string());
    }
    Ok(written)
}

pub(super) fn outcome(common: &Common, asked: &Outcome) -> Result<(), Failure> {
    common.with_book(|mut book, words| {
        let property = property(&book, &asked.property)?;
        let moment = common.clock().now();
        let told = outcomes::Told {
            letter: None,
            came: asked.came.into(),
            on: asked.on.unwrap_or(moment.today),
            amount: asked.amount.map(Money),
            words: asked.words.clone(),
        };
        let id = outcomes::record(&mut book, property, told, moment)?;
        answer(common.json, &json!({ "outcome": id }), || {
            words.text("desk-kept")
        })
    })
}

pub(super) fn reminders(common: &Common, asked: &Reminders) -> Result<(), Failure> {
    common.with_book(|book, words| {
        if let Some(path) = &asked.ics {
            let text = outcomes::calendar(&book, words, common.clock().now())?;
            std::fs::write(path, text).map_err(|error| Failure::io(path, &error))?;
            say(&path.display().to_string());
            return Ok(());
        }
        let due = outcomes::due(&book, Date::MAX)?;
        let reminders: Vec<_> = due.iter().map(|due| &due.reminder).collect();
        answer(common.json, &reminders, || {
            let lines: Vec<String> = due.iter().map(|due| line(due, words)).collect();
            lines.join("\n")
        })
    })
}

/// A reminder in one line; its day first, so that lines sort.
fn line(due: &Due, words: &Words) -> String {
    let because = words.text(due.reminder.because.key());
    format!("{} {} · {because}", due.reminder.on, due.card.address.line)
}
