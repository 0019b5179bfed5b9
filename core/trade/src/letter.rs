//! The record that a letter was made: what it said is kept with it, word for word.

use crate::ids::{LetterId, PropertyId, VisitId};
use crate::verdict::Verdict;
use crate::words::Language;
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};

/// A letter that was made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Letter {
    /// Identifier.
    pub id: LetterId,
    /// The property.
    pub property: PropertyId,
    /// The visit it tells of.
    pub visit: VisitId,
    /// When it was made.
    pub made: Timestamp,
    /// The day it bears.
    pub on: Date,
    /// Its language.
    pub language: Language,
    /// The verdicts it gave, one a structure.
    pub verdicts: Vec<Verdict>,
    /// SHA-256 of the PDF, lower-case hexadecimal.
    pub sha256: String,
    /// The short text that was sent with it.
    pub text: String,
    /// The day on which a correction overtook it.
    #[serde(default)]
    pub out_of_date: Option<Date>,
}
