//! Books that the tests begin with.

use acts::{Book, Key, Moment};
use fixtures::play::{Call, Player};
use fixtures::{Demo, Story};
use jiff::{Timestamp, civil::Date, tz::Offset};
use std::path::PathBuf;
use tempfile::TempDir;
use trade::history::History;
use trade::ids::PropertyId;

/// A book in a folder of its own, which goes with it.
pub struct Scene {
    /// The folder.
    pub folder: TempDir,
    /// The key.
    pub key: Key,
}

impl Scene {
    /// A folder and a key; no book yet.
    pub fn new() -> Self {
        Self {
            folder: TempDir::new().expect("a folder can be made"),
            key: Key::generate().expect("the system gives random numbers"),
        }
    }

    /// Where the book lies.
    pub fn book(&self) -> PathBuf {
        self.folder.path().join("book")
    }

    /// The book, opened.
    pub fn open(&self) -> Book {
        Book::open(&self.book(), &self.key).expect("the book opens")
    }

    /// Makes the book of a demo, plays it up to the call of its main story, and leaves the rest to `player`.
    pub fn until_call(&self, player: &mut Player<'_>) -> (Book, Call) {
        let mut book = player
            .new_book(&self.book(), &self.key)
            .expect("the book is made");
        let call = player.until_call(&mut book).expect("the demo plays");
        (book, call)
    }

    /// Makes the book of a demo and plays all of it.
    pub fn all_of(&self, demo: &Demo) -> (Book, Call) {
        let mut player = Player::new(demo);
        let (mut book, call) = self.until_call(&mut player);
        player.rest(&mut book).expect("the demo plays to its end");
        (book, call)
    }
}

impl Default for Scene {
    fn default() -> Self {
        Self::new()
    }
}

/// The demo with its main story alone: enough where breadth is not the question.
pub fn main_story_alone() -> Demo {
    let mut demo = fixtures::demo();
    demo.others.clear();
    demo.stories.retain(|story| story.main);
    demo
}

/// The main story of a demo.
pub fn main_story(demo: &Demo) -> &Story {
    demo.stories
        .iter()
        .find(|story| story.main)
        .expect("the demo has a main story")
}

/// Some seconds after noon of a day.
pub fn after_noon(day: Date, seconds: i64) -> Moment {
    let noon = Offset::UTC
        .to_timestamp(day.at(12, 0, 0, 0))
        .expect("noon is an instant");
    let at = Timestamp::from_second(noon.as_second() + seconds).expect("the instant is near noon");
    Moment::new(at, Offset::UTC)
}

/// The record of a property.
pub fn history(book: &Book, property: PropertyId) -> History {
    book.history(property)
        .expect("the book reads")
        .expect("the property is in the book")
}

/// How many lines of ink a book holds.
pub fn ink(book: &Book) -> usize {
    let of = |property| book.lines_of(property).expect("the ink reads").len();
    let properties = book.ever_recorded().expect("the ink reads");
    properties
        .into_iter()
        .map(|property| of(Some(property)))
        .sum::<usize>()
        + of(None)
}
