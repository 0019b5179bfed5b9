//! Why an act was not carried out. Nothing is half done: what was recorded before still stands.

use book::BookError;
use jiff::civil::Date;
use letter::LetterError;
use std::borrow::Cow;
use std::fmt;
use trade::words::Said;

/// Why an act was not carried out.
#[derive(Debug, thiserror::Error)]
pub enum ActError {
    /// The book refused it.
    Book(#[from] BookError),
    /// The letter could not be drawn.
    Letter(#[from] LetterError),
    /// What was measured gives no roof.
    Shape(#[from] roof::ShapeError),
    /// An angle cannot be told.
    Angle(#[from] roof::angles::AngleError),
    /// A covering cannot be laid as it is described.
    Laying(#[from] roof::laying::LayingError),
    /// A stain cannot be traced.
    Leak(#[from] roof::leak::LeakError),
    /// What a roof takes cannot be counted.
    Takeoff(#[from] price::TakeoffError),
    /// The price list does not read.
    PriceList(#[from] price::PriceListErrors),
    /// An offer cannot be made.
    Offer(#[from] price::OfferError),
    /// The visit is closed: what it says is corrected, never edited.
    Closed {
        /// Its day.
        on: Date,
    },
    /// A visit to this property is already open.
    AlreadyOpen,
    /// Something named is not in the book.
    NotThere {
        /// What was looked for: "the part".
        what: Said,
    },
    /// Something needed is missing or cannot be read.
    Wrong {
        /// Which field.
        field: Cow<'static, str>,
        /// What is wrong with it and what to write instead, without a full stop: the sentence goes on behind it.
        problem: Said,
    },
    /// A question was answered on a part that has no rung.
    RungFirst,
    /// There is nothing to take back.
    NothingToUndo,
    /// A mark made on another visit was meant to be edited.
    OtherVisit,
    /// A visit must be closed before its letter is written.
    StillOpen,
}

impl ActError {
    /// Something needed that is missing or cannot be read: `ActError::wrong("on", Said::new("wrong-no-day"))`. The keys are in `book.ftl`.
    pub fn wrong(field: impl Into<Cow<'static, str>>, problem: Said) -> Self {
        Self::Wrong {
            field: field.into(),
            problem,
        }
    }

    /// Something named that is not in the book, by its key: `ActError::not_there("there-part")`. The keys are in `book.ftl`.
    pub fn not_there(what: &'static str) -> Self {
        Self::NotThere {
            what: Said::new(what),
        }
    }

    /// What to tell the person.
    pub fn says(&self) -> Said {
        match self {
            Self::Book(error) => error.says(),
            Self::Letter(error) => error.says(),
            Self::Shape(error) => unchanged(error.says()),
            Self::Angle(error) => unchanged(error.says()),
            Self::Laying(error) => unchanged(error.says()),
            Self::Leak(error) => unchanged(error.says()),
            Self::Takeoff(error) => unchanged(error.says()),
            Self::PriceList(errors) => price_list(&errors.says()),
            Self::Offer(error) => unchanged(error.says()),
            Self::Closed { on } => Said::new("error-closed").with("on", *on),
            Self::AlreadyOpen => Said::new("error-already-open"),
            Self::NotThere { what } => Said::new("error-not-there").with("what", what.clone()),
            Self::Wrong { problem, .. } => {
                Said::new("error-wrong").with("problem", problem.clone())
            }
            Self::RungFirst => Said::new("error-rung-first"),
            Self::NothingToUndo => Said::new("error-nothing-to-undo"),
            Self::OtherVisit => Said::new("error-other-visit"),
            Self::StillOpen => Said::new("error-still-open"),
        }
    }
}

/// What is wrong, and that nothing was changed by it.
fn unchanged(problem: Said) -> Said {
    Said::new("error-unchanged").with("problem", problem)
}

/// How many mistakes of a price list are told at once: the rest is told once these are mended.
const MISTAKES: usize = 8;

fn price_list(mistakes: &[Said]) -> Said {
    let more = i64::try_from(mistakes.len().saturating_sub(MISTAKES)).unwrap_or(i64::MAX);
    let told: Vec<Said> = mistakes.iter().take(MISTAKES).cloned().collect();
    if more == 0 {
        return Said::new("error-price-list").with("mistakes", told);
    }
    Said::new("error-price-list-more")
        .with("mistakes", told)
        .with("more", more)
}

impl fmt::Display for ActError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}
