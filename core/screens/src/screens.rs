//! The door of this room: show a place, carry out an action, take a picture in.

use crate::action::Action;
use crate::block::{Onto, Shutter};
use crate::place::Place;
use crate::show::doorstep::Doorstep;
use crate::show::{self, Screen};
use crate::{Next, act};
use acts::measure::PlanFile;
use acts::settings::Going;
use acts::{ActError, Book, Moment, outcome, tray};
use trade::ids::{LetterId, PhotoId, PropertyId, StructureId};
use trade::visit::Request;
use trade::words::{Said, Words};

/// A book behind its screens.
pub struct Screens {
    book: Book,
}

/// Why a screen could not be shown or a tap not carried out, in the firm's language.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{says}")]
pub struct Trouble {
    /// What happened, what was kept, what to do.
    pub says: String,
}

/// What a room inside needs to show or do something.
pub(crate) struct Context<'a> {
    pub(crate) book: &'a Book,
    pub(crate) going: Going,
    pub(crate) words: &'static Words,
    pub(crate) moment: Moment,
}

impl Context<'_> {
    pub(crate) fn text(&self, key: &str) -> String {
        self.words.text(key)
    }

    pub(crate) fn say(&self, said: &Said) -> String {
        self.words.say(said)
    }
}

impl Screens {
    /// The screens of an open book.
    pub fn of(book: Book) -> Self {
        Self { book }
    }

    /// The book, to read from.
    pub fn book(&self) -> &Book {
        &self.book
    }

    /// The state of a place, ready to draw.
    ///
    /// # Errors
    /// Where something it names is not in the book, or the book cannot be read.
    pub fn show(&self, place: &Place, moment: Moment) -> Result<Screen, Trouble> {
        let context = self.context(moment)?;
        show::show(&context, place).map_err(|error| trouble(context.words, &error))
    }

    /// The Doorstep as a call finds it: what is asked now beside what was said then, before any visit is opened.
    ///
    /// # Errors
    /// Where the property is not in the book, or the book cannot be read.
    pub fn doorstep(
        &self,
        property: PropertyId,
        request: Option<&Request>,
        moment: Moment,
    ) -> Result<Doorstep, Trouble> {
        let context = self.context(moment)?;
        show::doorstep::show(&context, property, request)
            .map_err(|error| trouble(context.words, &error))
    }

    /// The book again, without its screens.
    pub fn into_book(self) -> Book {
        self.book
    }

    /// Carries out a tap. What it records is durable when this answers.
    ///
    /// # Errors
    /// Where it was refused; nothing is half done, and half-typed words are kept.
    pub fn act(&mut self, action: &Action, moment: Moment) -> Result<Next, Trouble> {
        let words = self.context(moment)?.words;
        act::act(&mut self.book, action, words, moment).map_err(|error| trouble(words, &error))
    }

    /// Takes a picture in, as the shutter says.
    ///
    /// # Errors
    /// Where the visit is closed, the bytes are no picture, or the book cannot be written; then nothing is kept.
    pub fn shoot(
        &mut self,
        shutter: &Shutter,
        bytes: &[u8],
        moment: Moment,
    ) -> Result<PhotoId, Trouble> {
        self.shoot_onto(&shutter.onto, bytes, moment)
    }

    /// Takes a picture in, onto what a shutter named.
    ///
    /// # Errors
    /// As [`Screens::shoot`].
    pub fn shoot_onto(
        &mut self,
        onto: &Onto,
        bytes: &[u8],
        moment: Moment,
    ) -> Result<PhotoId, Trouble> {
        self.write(|book| match onto {
            Onto::Part { visit, spot } => tray::shoot(book, *visit, Some(spot), bytes, moment),
            Onto::Tray { visit } => tray::shoot(book, *visit, None, bytes, moment),
            Onto::Outcome { property, outcome } => {
                outcome::shoot(book, *property, *outcome, bytes, moment)
            }
        })
    }

    /// A small upright picture for a list; the original where this program cannot make one.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn thumbnail(&self, photo: PhotoId) -> Result<Vec<u8>, Trouble> {
        self.read(|book| tray::thumbnail(book, photo))
    }

    /// A picture as it was taken.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn original(&self, photo: PhotoId) -> Result<Vec<u8>, Trouble> {
        self.read(|book| tray::original(book, photo))
    }

    /// The PDF of a letter as it was made.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn paper(&self, letter: LetterId) -> Result<Vec<u8>, Trouble> {
        self.read(|book| acts::letter::pdf(book, letter))
    }

    /// A file of the plan of a structure.
    ///
    /// # Errors
    /// Where the structure is not in the book or was not measured.
    pub fn plan_file(&self, structure: StructureId, file: PlanFile) -> Result<String, Trouble> {
        let (words, _) = self.context_words()?;
        self.read(|book| acts::measure::file(book, structure, file, words))
    }

    /// Open reminders as an iCalendar file.
    ///
    /// # Errors
    /// Where the book cannot be read.
    pub fn calendar(&self, moment: Moment) -> Result<String, Trouble> {
        let words = self.words()?;
        self.read(|book| acts::outcome::calendar(book, words, moment))
    }

    pub(crate) fn write<T>(
        &mut self,
        write: impl FnOnce(&mut Book) -> Result<T, ActError>,
    ) -> Result<T, Trouble> {
        let words = self.words()?;
        write(&mut self.book).map_err(|error| trouble(words, &error))
    }

    pub(crate) fn read<T>(
        &self,
        read: impl FnOnce(&Book) -> Result<T, ActError>,
    ) -> Result<T, Trouble> {
        let (words, _) = self.context_words()?;
        read(&self.book).map_err(|error| trouble(words, &error))
    }

    /// The words of the firm's language.
    ///
    /// # Errors
    /// Where the book cannot be read.
    pub fn words(&self) -> Result<&'static Words, Trouble> {
        Ok(self.context_words()?.0)
    }

    fn context_words(&self) -> Result<(&'static Words, Going), Trouble> {
        let going = Going::of(&self.book)
            .map_err(|error| trouble(Words::of(trade::words::Language::English), &error))?;
        Ok((Words::of(going.firm.language), going))
    }

    fn context(&self, moment: Moment) -> Result<Context<'_>, Trouble> {
        let (words, going) = self.context_words()?;
        Ok(Context {
            book: &self.book,
            going,
            words,
            moment,
        })
    }
}

fn trouble(words: &Words, error: &ActError) -> Trouble {
    Trouble {
        says: words.say(&error.says()),
    }
}
