//! Why a command failed.

use crate::tongue;
use acts::{ActError, BookError};
use fixtures::play::PlayError;
use screens::Trouble;
use std::io;
use std::path::Path;
use trade::words::{Language, Said, Words};

/// Why a command failed: what to tell, and in which language.
#[derive(Debug)]
pub struct Failure {
    says: Said,
    /// The firm's, once a book is open; this computer's until then.
    language: Option<Language>,
}

impl Failure {
    /// With this message.
    pub fn new(says: Said) -> Self {
        Self {
            says,
            language: None,
        }
    }

    /// With the message of this key.
    pub fn of(key: &str) -> Self {
        Self::new(Said::new(key))
    }

    /// A file that could not be read or written.
    pub fn io(path: &Path, error: &io::Error) -> Self {
        Self::new(
            Said::new("desk-file")
                .with("file", path.display().to_string())
                .with("why", acts::system(error)),
        )
    }

    /// The same, told in the language of an open book.
    #[must_use]
    pub fn in_language(self, language: Language) -> Self {
        Self {
            language: Some(language),
            ..self
        }
    }

    /// The sentence for the person.
    pub fn told(&self) -> String {
        Words::of(self.language.unwrap_or_else(tongue::of_environment)).say(&self.says)
    }
}

macro_rules! says_itself {
    ($($error:ty),+ $(,)?) => {$(
        impl From<$error> for Failure {
            fn from(error: $error) -> Self {
                Self::new(error.says())
            }
        }
    )+};
}

says_itself!(ActError, BookError, PlayError);

impl From<Trouble> for Failure {
    /// A screen's trouble is told in the firm's language already.
    fn from(trouble: Trouble) -> Self {
        Self::new(Said::verbatim(trouble.says))
    }
}

impl From<serde_json::Error> for Failure {
    fn from(error: serde_json::Error) -> Self {
        Self::new(Said::new("desk-answer-unwritable").with("detail", error.to_string()))
    }
}
