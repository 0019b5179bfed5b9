//! What is wrong with a visit file: the place, and the reason.

use super::shape;
use serde::Serialize;
use std::fmt;
use trade::words::{Arg, Said, Words};

macro_rules! wrongs {
    ($($(#[$doc:meta])* $name:ident = $key:literal),+ $(,)?) => {
        /// What kind of thing is wrong.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Wrong {
            $($(#[$doc])* $name,)+
        }

        impl Wrong {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];

            /// What another program knows it by. Its reason is the message `file-` and this.
            pub fn name(self) -> &'static str {
                match self {
                    $(Self::$name => $key,)+
                }
            }
        }
    };
}

wrongs! {
    /// It is no JSON, or not of the published shape.
    NotOfTheShape = "not-of-the-shape",
    /// It is of a version that this program does not read.
    UnknownVersion = "unknown-version",
    /// The address has no house and street.
    NoAddress = "no-address",
    /// Two addresses of the property are the same.
    AddressTwice = "address-twice",
    /// The position is not on the earth.
    PositionOffTheEarth = "position-off-the-earth",
    /// The year it was built cannot be.
    YearCannotBe = "year-cannot-be",
    /// A telephone number has too few digits.
    NotAPhone = "not-a-phone",
    /// A mail address has no @.
    NotAMail = "not-a-mail",
    /// A person has no name and no telephone.
    NobodyNamed = "nobody-named",
    /// Nobody is named who came.
    NoVisitor = "no-visitor",
    /// The day lies ahead.
    DayAhead = "day-ahead",
    /// The day is before anybody kept records.
    DayTooOld = "day-too-old",
    /// The temperature cannot be.
    TemperatureCannotBe = "temperature-cannot-be",
    /// A safety question is answered twice.
    SafetyTwice = "safety-twice",
    /// No structure is named.
    NoStructure = "no-structure",
    /// Two structures are the same.
    StructureTwice = "structure-twice",
    /// Two slopes have one letter.
    SlopeTwice = "slope-twice",
    /// A slope's letter is no capital letter.
    NotASlopeLetter = "not-a-slope-letter",
    /// A slope is named that the structure does not have.
    NoSuchSlope = "no-such-slope",
    /// The kind of part is not in the catalogue.
    UnknownKind = "unknown-kind",
    /// A kind that belongs to one slope has none.
    SlopeNeeded = "slope-needed",
    /// Two records of one part.
    PartTwice = "part-twice",
    /// Neither a rung nor a reason why it was not seen.
    NoCondition = "no-condition",
    /// More than one of rung, not seen, gone.
    TwoConditions = "two-conditions",
    /// A rung without saying how it was seen.
    HowSeenMissing = "how-seen-missing",
    /// How it was seen, of a part that was not.
    SeenWithoutRung = "seen-without-rung",
    /// A part seen on a structure that was not reached.
    SeenButNotReached = "seen-but-not-reached",
    /// Seen nearer than the structure was reached.
    SeenNearerThanReached = "seen-nearer-than-reached",
    /// Defects, measures or answers on a part that was not seen.
    FindingsUnseen = "findings-unseen",
    /// A sound part with a defect.
    SoundWithDefect = "sound-with-defect",
    /// The defect is not in the catalogue.
    UnknownDefect = "unknown-defect",
    /// The defect is not one of such parts.
    DefectOfOtherPart = "defect-of-other-part",
    /// A defect is named twice.
    DefectTwice = "defect-twice",
    /// The remedy is not in the catalogue.
    UnknownRemedy = "unknown-remedy",
    /// A question is answered twice.
    AnswerTwice = "answer-twice",
    /// A question that such a part cannot answer.
    QuestionOfOtherPart = "question-of-other-part",
    /// A length that is nothing or less.
    LengthCannotBe = "length-cannot-be",
    /// One thing is measured twice.
    MeasureTwice = "measure-twice",
    /// A reading of layers without layers or butt lines.
    NothingRead = "nothing-read",
    /// Butt lines without the exposure.
    ExposureMissing = "exposure-missing",
    /// Something lies under the deck.
    UnderTheDeck = "under-the-deck",
    /// Work that names both a remedy and something else, or neither.
    WorkUnclear = "work-unclear",
    /// Work that lies after the visit.
    WorkAhead = "work-ahead",
    /// A picture cannot be read.
    PictureUnreadable = "picture-unreadable",
    /// A file that is no picture.
    NotAPicture = "not-a-picture",
    /// A picture outside the folder of the visit file.
    PictureElsewhere = "picture-elsewhere",
    /// A visit on that day is in the book already.
    VisitTwice = "visit-twice",
    /// A visit to this property is still open.
    VisitOpen = "visit-open",
}

/// Where something is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum At {
    /// At a member of the file: a JSON pointer (RFC 6901).
    Member(String),
    /// Where the file stops being JSON, both counted from 1 (the column may be 0 where a line has nothing).
    Text {
        /// The line.
        line: usize,
        /// The column.
        column: usize,
    },
}

impl At {
    /// What to tell the person.
    pub fn says(&self) -> Said {
        match self {
            Self::Member(pointer) => Said::verbatim(pointer.as_str()),
            Self::Text { line, column } => Said::new("file-at-line")
                .with("line", line.to_string())
                .with("column", column.to_string()),
        }
    }
}

impl fmt::Display for At {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

/// One thing that is wrong.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// Where.
    pub at: At,
    /// What kind of thing.
    pub wrong: Wrong,
    /// The reason and what to do, as half a sentence that stands behind the place.
    pub reason: Said,
}

/// A problem told to another program, and to whoever reads over its shoulder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Told {
    /// A JSON pointer, or line and column where the file is no JSON.
    pub at: String,
    /// What kind of thing: [`Wrong::name`].
    pub wrong: &'static str,
    /// The reason in the reader's language.
    pub reason: String,
}

impl Problem {
    /// Something wrong with a member of the file.
    pub(crate) fn new(at: impl Into<String>, wrong: Wrong) -> Self {
        let reason = Said::new(format!("file-{}", wrong.name()));
        Self {
            at: At::Member(at.into()),
            wrong,
            reason,
        }
    }

    /// The same with an argument of its reason.
    pub(crate) fn with(mut self, name: &str, arg: impl Into<Arg>) -> Self {
        self.reason = self.reason.with(name, arg);
        self
    }

    /// Where the file could not be read as one of the published shape.
    pub(crate) fn unreadable(
        json: &str,
        error: &serde_path_to_error::Error<serde_json::Error>,
    ) -> Self {
        let inner = error.inner();
        match inner.classify() {
            serde_json::error::Category::Data => {
                let at = pointer(error.path());
                let why = shape::why(json, &at, inner);
                Self::new(at, Wrong::NotOfTheShape).with("why", why)
            }
            _ => Self::no_json(inner),
        }
    }

    /// Where the file is no JSON.
    pub(crate) fn no_json(error: &serde_json::Error) -> Self {
        Self {
            at: At::Text {
                line: error.line(),
                column: error.column(),
            },
            ..Self::new("", Wrong::NotOfTheShape).with("why", shape::no_json(error))
        }
    }

    /// Whether it is something wrong with this member.
    pub(crate) fn is_at(&self, member: &str) -> bool {
        matches!(&self.at, At::Member(at) if at == member)
    }

    /// What to tell the person.
    pub fn says(&self) -> Said {
        Said::new("file-problem")
            .with("at", self.at.says())
            .with("reason", self.reason.clone())
    }

    /// What to tell another program, with the reason in the reader's language.
    pub fn told(&self, words: &Words) -> Told {
        Told {
            at: self.at.to_string(),
            wrong: self.wrong.name(),
            reason: words.say(&self.reason),
        }
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
        f.write_str(&self.says().in_english())
    }
}
