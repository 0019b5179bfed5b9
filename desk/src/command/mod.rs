//! The command line.

mod answer;
mod demo;
mod keep;
mod ladder;
mod look;
mod make;
mod record;
mod roof;
mod serve;

use crate::clock::Clock;
use crate::failure::Failure;
use crate::keys::KeyFrom;
use crate::tongue;
use acts::Book;
use clap::{Parser, Subcommand};
use jiff::civil::Date;
use screens::Screens;
use std::path::PathBuf;
use trade::words::Words;

/// A roofer's book: what you said about each roof, what became of it, and what to do next.
#[derive(Parser, Debug)]
#[command(name = "ladderbook", version, about, max_term_width = 100)]
pub struct Ladderbook {
    #[command(flatten)]
    common: Common,
    #[command(subcommand)]
    command: Command,
}

/// What every command may be told.
#[derive(clap::Args, Clone, Debug)]
struct Common {
    /// The folder of the book
    #[arg(
        long,
        global = true,
        env = "LADDERBOOK_BOOK",
        value_name = "FOLDER",
        default_value = "ladderbook"
    )]
    book: PathBuf,
    #[command(flatten)]
    key: KeyFrom,
    /// Answer in JSON, for other programs
    #[arg(long, global = true)]
    json: bool,
    /// The day it is to be, as 2024-05-31; today where it is not given
    #[arg(long, global = true, value_name = "DAY")]
    today: Option<Date>,
}

#[derive(Subcommand, Debug)]
enum Command {
    /// Make the demo book, show its main story, write its letter, and open its page
    Demo(demo::Demo),
    /// Make a new, empty book
    New,
    /// Open the book's screens as a page on this computer
    Serve(serve::Serve),
    /// Find an address by any spelling, an owner or a telephone number
    Find(look::Find),
    /// What an address tells before you climb
    Doorstep(look::At),
    /// Take in a visit that was written down as a file
    Record(record::Record),
    /// The published shape of a visit file, or the keys it may use
    Schema(record::Schema),
    /// What became of every part since it was last seen
    SecondLook(look::At),
    /// What to do with each structure, and why
    Verdict(look::At),
    /// Write the owner's letter: PDF, page and short text
    Letter(make::Letter),
    /// Record what came of a letter
    Outcome(make::Outcome),
    /// What to come back to, as an iCalendar file
    Reminders(make::Reminders),
    /// The plan of a roof: its slopes, lines and areas, from a file or as the book has it
    Roof(roof::Roof),
    /// What a new covering takes, what comes down, what the roof carries
    Takeoff(roof::AtStructure),
    /// What each course costs, in order of time
    Offer(roof::Offer),
    /// What is counted and chosen for an offer: how long a repair lasts, lengths, the attic's vents
    Worksheet(roof::Worksheet),
    /// Where water that shows inside comes in
    Leak(roof::Leak),
    /// What the rule says of how a ladder stands
    Ladder(ladder::Ladder),
    /// Take in the firm's price list, or write the one in the book
    Prices(roof::Prices),
    /// Make the book's tables anew from its ink, and compare
    Rebuild,
    /// Read every line and picture of the book, and say what is damaged
    Check,
    /// Copy the book to another folder, whole and checked
    Backup(keep::Backup),
    /// Make a book from a backup
    Restore(keep::Restore),
}

/// The words of this computer, where no book is asked.
fn words_of_computer() -> &'static Words {
    Words::of(tongue::of_environment())
}

/// The words of a book's firm.
fn words_of(book: &Book) -> Result<&'static Words, Failure> {
    Ok(Words::of(book.firm()?.language))
}

impl Common {
    fn clock(&self) -> Clock {
        Clock { today: self.today }
    }

    /// Opens the book and does something with it. From here on the firm's language is spoken.
    fn with_book<T>(
        &self,
        run: impl FnOnce(Book, &'static Words) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        let book = Book::open(&self.book, &self.key.key(&self.book)?)?;
        let words = words_of(&book)?;
        run(book, words).map_err(|failure| failure.in_language(words.language()))
    }

    /// The same with the screens of the book.
    fn with_screens<T>(
        &self,
        run: impl FnOnce(Screens) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        self.with_book(|book, _| run(Screens::of(book)))
    }
}

/// Carries a command out.
///
/// # Errors
/// What went wrong, in words.
pub fn run(asked: Ladderbook) -> Result<(), Failure> {
    let Ladderbook { common, command } = asked;
    match command {
        Command::Demo(demo) => demo::run(&common, &demo),
        Command::New => keep::new(&common),
        Command::Serve(serve) => serve::run(&common, &serve),
        Command::Find(find) => look::find(&common, &find),
        Command::Doorstep(at) => look::doorstep(&common, &at),
        Command::Record(record) => record::run(&common, &record),
        Command::Schema(schema) => record::schema(&schema),
        Command::SecondLook(at) => look::second_look(&common, &at),
        Command::Verdict(at) => look::verdict(&common, &at),
        Command::Letter(letter) => make::letter(&common, &letter),
        Command::Outcome(outcome) => make::outcome(&common, &outcome),
        Command::Reminders(reminders) => make::reminders(&common, &reminders),
        Command::Roof(roof) => roof::roof(&common, &roof),
        Command::Takeoff(at) => roof::takeoff(&common, &at),
        Command::Offer(offer) => roof::offer(&common, &offer),
        Command::Worksheet(worksheet) => roof::worksheet(&common, &worksheet),
        Command::Leak(leak) => roof::leak(&common, &leak),
        Command::Ladder(asked) => ladder::ladder(&common, &asked),
        Command::Prices(prices) => roof::prices(&common, &prices),
        Command::Rebuild => keep::rebuild(&common),
        Command::Check => keep::check(&common),
        Command::Backup(backup) => keep::backup(&common, &backup),
        Command::Restore(restore) => keep::restore(&common, &restore),
    }
}
