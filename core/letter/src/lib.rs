//! The owner's letter, from the nouns of the trade.
//!
//! [`compose`] makes one tree of typed blocks, [`content::Content`]; [`pdf`], [`html`] and [`text`] draw it, so that all
//! three say the same. Composing is pure: the day and the record are handed in. Pictures come one at a time through
//! [`Pictures`], are turned upright, shrunk to the size they are shown at, and written anew without any of the data that
//! came with them, position included.

mod compose;
pub mod content;
mod html;
mod pdf;
mod picture;
pub mod plain;
mod roofed;
mod text;

pub use compose::compose;
pub use content::Content;
pub use html::html;
pub use pdf::pdf;
pub use roofed::{Planned, Roofed};
pub use text::{LONGEST, text};

use jiff::civil::Date;
use std::fmt;
use trade::catalogue::Catalogue;
use trade::firm::{Firm, Profile};
use trade::history::History;
use trade::ids::{PhotoId, VisitId};
use trade::thread::Thread;
use trade::verdict::Verdict;
use trade::words::{Language, Said};

/// What a letter is written from.
#[derive(Clone, Copy, Debug)]
pub struct Material<'a> {
    /// The firm that writes it.
    pub firm: &'a Firm,
    /// The code as it is adopted where the property stands.
    pub profile: &'a Profile,
    /// The property's whole record.
    pub history: &'a History,
    /// The visit it tells of.
    pub visit: VisitId,
    /// What became of each part, as of that visit.
    pub threads: &'a [Thread],
    /// What to do with each structure.
    pub verdicts: &'a [Verdict],
    /// What was measured, counted and offered of each structure.
    pub roofs: &'a [Roofed<'a>],
    /// Kinds of part, defects and remedies.
    pub catalogue: &'a Catalogue,
    /// The language to write in.
    pub language: Language,
    /// The day it bears.
    pub on: Date,
}

/// Where a letter's pictures come from.
pub trait Pictures {
    /// A picture's bytes as they were taken, or `None` where they are not to be had. Asked for one at a time.
    fn original(&self, photo: PhotoId) -> Option<Vec<u8>>;
}

/// Why a letter could not be drawn. Nothing of the record is touched by it.
#[derive(Debug, thiserror::Error)]
pub enum LetterError {
    /// The page layout refused the letter, with these words.
    Layout(String),
    /// The file format's rules refused the letter, with these words.
    Export(String),
}

impl LetterError {
    /// What to tell the person: what happened, what is safe, what still works.
    pub fn says(&self) -> Said {
        let (key, detail) = match self {
            Self::Layout(detail) => ("error-letter-layout", detail),
            Self::Export(detail) => ("error-letter-export", detail),
        };
        Said::new(key).with("detail", detail.as_str())
    }
}

impl fmt::Display for LetterError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}
