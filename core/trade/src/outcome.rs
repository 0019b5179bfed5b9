//! What came of a letter, and what to come back to.

use crate::ids::{LetterId, OutcomeId, PhotoId, PropertyId, ReminderId, VisitId};
use crate::units::Money;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

/// What came of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Came {
    /// The owner said yes; the work is ahead.
    Accepted,
    /// Done by this firm.
    DoneByUs,
    /// Done by somebody else.
    DoneByOthers,
    /// The owner said no.
    Declined,
    /// No answer.
    NoAnswer,
}

impl Came {
    /// All, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::Accepted,
        Self::DoneByUs,
        Self::DoneByOthers,
        Self::Declined,
        Self::NoAnswer,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Accepted => "came-accepted",
            Self::DoneByUs => "came-done-by-us",
            Self::DoneByOthers => "came-done-by-others",
            Self::Declined => "came-declined",
            Self::NoAnswer => "came-no-answer",
        }
    }
}

/// What came of a letter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Outcome {
    /// Identifier.
    pub id: OutcomeId,
    /// The property.
    pub property: PropertyId,
    /// The letter it answers.
    #[serde(default)]
    pub letter: Option<LetterId>,
    /// What came of it.
    pub came: Came,
    /// The day.
    pub on: Date,
    /// What was paid or asked, if that is recorded.
    #[serde(default)]
    pub amount: Option<Money>,
    /// His own words.
    #[serde(default)]
    pub words: String,
    /// Pictures of the finished work.
    #[serde(default)]
    pub photos: Vec<PhotoId>,
}

/// Why to come back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Because {
    /// The owner has not answered.
    AskForAnswer,
    /// A temporary cover runs out.
    CoverRunsOut,
    /// A look was promised.
    LookPromised,
    /// Something was not seen.
    NotSeenYet,
}

impl Because {
    /// All of them.
    pub const ALL: [Self; 4] = [
        Self::AskForAnswer,
        Self::CoverRunsOut,
        Self::LookPromised,
        Self::NotSeenYet,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::AskForAnswer => "because-ask-for-answer",
            Self::CoverRunsOut => "because-cover-runs-out",
            Self::LookPromised => "because-look-promised",
            Self::NotSeenYet => "because-not-seen-yet",
        }
    }
}

/// Something to come back to on a date.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reminder {
    /// Identifier.
    pub id: ReminderId,
    /// The property.
    pub property: PropertyId,
    /// The visit it came from, if any.
    #[serde(default)]
    pub visit: Option<VisitId>,
    /// The day.
    pub on: Date,
    /// Why.
    pub because: Because,
    /// His own words.
    #[serde(default)]
    pub words: String,
    /// The day it was done with.
    #[serde(default)]
    pub done: Option<Date>,
}
