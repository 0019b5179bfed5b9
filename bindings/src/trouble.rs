//! Why something was not done. A kind of its own only where a phone does something different; the rest is a sentence to show.

use acts::{ActError, BookError};
use trade::words::{Said, Words};

/// Why something was not done, in the firm's language.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum Trouble {
    /// It was refused. Nothing is half done, and half-typed words are kept.
    #[error("{says}")]
    Refused {
        /// What happened, what was kept, what to do.
        says: String,
    },
    /// The key on this phone does not open the book, or there is none: it is to be brought from where a copy is kept.
    #[error("{says}")]
    NoKey {
        /// What happened, what was kept, what to do.
        says: String,
    },
    /// The core broke in the middle. The book is whole; the next tap works.
    #[error("{says}")]
    Broke {
        /// What happened, what was kept, what to do.
        says: String,
    },
}

impl Trouble {
    pub(crate) fn refused(words: &Words, said: &Said) -> Self {
        Self::Refused {
            says: words.say(said),
        }
    }

    pub(crate) fn broke(words: &Words) -> Self {
        Self::Broke {
            says: words.text("phone-broke"),
        }
    }

    pub(crate) fn of_act(words: &Words, error: &ActError) -> Self {
        match error {
            ActError::Book(error) => Self::of_book(words, error),
            _ => Self::refused(words, &error.says()),
        }
    }

    pub(crate) fn of_book(words: &Words, error: &BookError) -> Self {
        let says = words.say(&error.says());
        match error {
            BookError::NoKey(_) | BookError::WrongKey => Self::NoKey { says },
            _ => Self::Refused { says },
        }
    }
}

impl From<screens::Trouble> for Trouble {
    fn from(trouble: screens::Trouble) -> Self {
        Self::Refused { says: trouble.says }
    }
}
