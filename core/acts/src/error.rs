//! Why an act was not carried out. Nothing is half done: what was recorded before still stands.

use book::BookError;
use jiff::civil::Date;
use letter::LetterError;
use trade::words::Said;

/// Why an act was not carried out.
#[derive(Debug, thiserror::Error)]
pub enum ActError {
    /// The book refused it.
    #[error(transparent)]
    Book(#[from] BookError),
    /// The letter could not be drawn.
    #[error(transparent)]
    Letter(#[from] LetterError),
    /// The visit is closed: what it says is corrected, never edited.
    #[error("the visit of {on} is closed; correct the mark instead of editing it")]
    Closed {
        /// Its day.
        on: Date,
    },
    /// A visit to this property is already open.
    #[error("a visit to this property is already open; close it before another is begun")]
    AlreadyOpen,
    /// Something named is not in the book.
    #[error("{what} is not in this book")]
    NotThere {
        /// What was looked for.
        what: &'static str,
    },
    /// Something needed is missing or cannot be read.
    #[error("{field}: {problem}")]
    Wrong {
        /// Which field.
        field: &'static str,
        /// What is wrong with it.
        problem: String,
    },
    /// A question was answered on a part that has no rung.
    #[error("choose the rung first: only what was seen can answer a question")]
    RungFirst,
    /// There is nothing to take back.
    #[error("there is nothing to take back on this visit")]
    NothingToUndo,
    /// A mark made on another visit was meant to be edited.
    #[error("this mark belongs to another visit")]
    OtherVisit,
    /// A visit must be closed before its letter is written.
    #[error("the visit is still open; close it before the letter is written")]
    StillOpen,
}

impl ActError {
    /// What to tell the person.
    pub fn says(&self) -> Said {
        match self {
            Self::Book(error) => Said::new("error-book").with("reason", error.to_string()),
            Self::Letter(error) => Said::new("error-letter").with("reason", error.to_string()),
            Self::Closed { on } => Said::new("error-closed").with("on", *on),
            Self::AlreadyOpen => Said::new("error-already-open"),
            Self::NotThere { what } => Said::new("error-not-there").with("what", *what),
            Self::Wrong { field, problem } => Said::new("error-wrong")
                .with("field", *field)
                .with("problem", problem.clone()),
            Self::RungFirst => Said::new("error-rung-first"),
            Self::NothingToUndo => Said::new("error-nothing-to-undo"),
            Self::OtherVisit => Said::new("error-other-visit"),
            Self::StillOpen => Said::new("error-still-open"),
        }
    }
}
