//! Books that the tests begin with.

use crate::hand::Hand;
use acts::{Book, Key, Moment};
use fixtures::play::{Call, Player};
use fixtures::{Demo, Story};
use jiff::{Timestamp, civil::Date, tz::Offset};
use screens::{Place, Screens};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::PathBuf;
use tempfile::TempDir;
use trade::history::History;
use trade::ids::{PropertyId, VisitId};
use trade::visit::Scope;

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

/// The visit to a property that is open.
pub fn open_visit(book: &Book, property: PropertyId) -> VisitId {
    let history = history(book, property);
    let open = history.visits.iter().find(|visit| visit.closed.is_none());
    open.expect("a visit is open").id
}

/// The walk over the first structure of a visit.
pub fn walk(book: &Book, visit: VisitId) -> Place {
    let (_, record) = acts::visit::find(book, visit).expect("the visit is in the book");
    let structure = *record.structures.first().expect("there is a structure");
    Place::Walk {
        visit,
        structure,
        stop: None,
    }
}

/// A book with one property, which nobody saw yet, and a visit of some scope that is open.
pub fn first_visit(scene: &Scene, scope: Scope) -> (Hand, PropertyId, VisitId) {
    let moment = after_noon(fixtures::TODAY, 0);
    let book = Book::create(&scene.book(), &scene.key, moment.device(), moment.at)
        .expect("the book is made");
    let mut hand = Hand::new(Screens::of(book), fixtures::TODAY);
    let search = hand.arrive().search;
    hand.send(&search, &[("find", "7 Tidewaiter Row")]);
    let add = hand
        .arrive()
        .add
        .expect("an address that is not there can be added");
    hand.send(&add, &[("town", "Merrow Bight"), ("owner", "Barnaby Fisk")]);
    let Place::Doorstep { property } = hand.at else {
        panic!("{} comes after adding", hand.at);
    };
    let open = hand.doorstep().open.expect("a visit can be opened");
    let gutter = hand.text("kind-gutter");
    let scope = hand.text(scope.key());
    hand.send(&open, &[("kind", &gutter), ("scope", &scope)]);
    let visit = open_visit(hand.screens.book(), property);
    (hand, property, visit)
}

/// The ink of a property, oldest line first, as text.
pub fn ink_of(book: &Book, property: PropertyId) -> Vec<String> {
    let lines = book.lines_of(Some(property)).expect("the ink reads");
    lines.iter().map(|line| format!("{line:?}")).collect()
}

/// A number that stands for some lines of ink. Both sides of a comparison are built alike, so the standard library's own will do.
pub fn digest(ink: &[String]) -> u64 {
    let mut hasher = DefaultHasher::new();
    ink.hash(&mut hasher);
    hasher.finish()
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
