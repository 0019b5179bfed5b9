//! What is wrong with a visit file: the place, and the reason.

use serde::Serialize;
use std::fmt;

/// What kind of thing is wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Wrong {
    /// It is no JSON, or not of the published shape.
    NotOfTheShape,
    /// It is of a version that this program does not read.
    UnknownVersion,
    /// The address has no house and street.
    NoAddress,
    /// Two addresses of the property are the same.
    AddressTwice,
    /// The position is not on the earth.
    PositionOffTheEarth,
    /// The year it was built cannot be.
    YearCannotBe,
    /// A telephone number has too few digits.
    NotAPhone,
    /// A mail address has no @.
    NotAMail,
    /// A person has no name and no telephone.
    NobodyNamed,
    /// Nobody is named who came.
    NoVisitor,
    /// The day lies ahead.
    DayAhead,
    /// The day is before anybody kept records.
    DayTooOld,
    /// The temperature cannot be.
    TemperatureCannotBe,
    /// A safety question is answered twice.
    SafetyTwice,
    /// No structure is named.
    NoStructure,
    /// Two structures are the same.
    StructureTwice,
    /// Two slopes have one letter.
    SlopeTwice,
    /// A slope's letter is no capital letter.
    NotASlopeLetter,
    /// A slope is named that the structure does not have.
    NoSuchSlope,
    /// The kind of part is not in the catalogue.
    UnknownKind,
    /// A kind that belongs to one slope has none.
    SlopeNeeded,
    /// Two records of one part.
    PartTwice,
    /// Neither a rung nor a reason why it was not seen.
    NoCondition,
    /// More than one of rung, not seen, gone.
    TwoConditions,
    /// A rung without saying how it was seen.
    HowSeenMissing,
    /// How it was seen, of a part that was not.
    SeenWithoutRung,
    /// A part seen on a structure that was not reached.
    SeenButNotReached,
    /// Seen nearer than the structure was reached.
    SeenNearerThanReached,
    /// Defects, measures or answers on a part that was not seen.
    FindingsUnseen,
    /// A sound part with a defect.
    SoundWithDefect,
    /// The defect is not in the catalogue.
    UnknownDefect,
    /// The defect is not one of such parts.
    DefectOfOtherPart,
    /// A defect is named twice.
    DefectTwice,
    /// The remedy is not in the catalogue.
    UnknownRemedy,
    /// A question is answered twice.
    AnswerTwice,
    /// A question that such a part cannot answer.
    QuestionOfOtherPart,
    /// A length that is nothing or less.
    LengthCannotBe,
    /// One thing is measured twice.
    MeasureTwice,
    /// A reading of layers without layers or butt lines.
    NothingRead,
    /// Butt lines without the exposure.
    ExposureMissing,
    /// Something lies under the deck.
    UnderTheDeck,
    /// Work that names both a remedy and something else, or neither.
    WorkUnclear,
    /// Work that lies after the visit.
    WorkAhead,
    /// A picture cannot be read.
    PictureUnreadable,
    /// A file that is no picture.
    NotAPicture,
    /// A picture outside the folder of the visit file.
    PictureElsewhere,
    /// A visit on that day is in the book already.
    VisitTwice,
    /// A visit to this property is still open.
    VisitOpen,
}

/// One thing that is wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Problem {
    /// Where: a JSON pointer (RFC 6901), or line and column where it is no JSON.
    pub at: String,
    /// What kind of thing.
    pub wrong: Wrong,
    /// The reason, and what to do.
    pub reason: String,
}

impl Problem {
    pub(crate) fn new(at: impl Into<String>, wrong: Wrong, reason: impl Into<String>) -> Self {
        Self {
            at: at.into(),
            wrong,
            reason: reason.into(),
        }
    }

    /// Where the file could not be read as one of the published shape.
    pub(crate) fn unreadable(error: &serde_path_to_error::Error<serde_json::Error>) -> Self {
        let inner = error.inner();
        let at = match inner.classify() {
            serde_json::error::Category::Data => pointer(error.path()),
            _ => format!("line {}, column {}", inner.line(), inner.column()),
        };
        Self::new(at, Wrong::NotOfTheShape, inner.to_string())
    }
}

fn pointer(path: &serde_path_to_error::Path) -> String {
    use serde_path_to_error::Segment;
    path.iter()
        .fold(String::new(), |at, segment| match segment {
            Segment::Seq { index } => format!("{at}/{index}"),
            Segment::Map { key } => format!("{at}/{}", key.replace('~', "~0").replace('/', "~1")),
            Segment::Enum { .. } | Segment::Unknown => at,
        })
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.at, self.reason)
    }
}
