//! What can be recorded: whole trade records as values. A later line about the same subject takes the place of the earlier.

use crate::error::{BookError, Result, record};
use serde::{Deserialize, Serialize};
use trade::firm::{Firm, HousePolicy, Profile};
use trade::ids::{
    LetterId, MarkId, NoteId, OfferId, OutcomeId, PartId, PhotoId, PropertyId, ReminderId,
    SketchId, SlopeId, StackId, StructureId, VisitId, WorkId, WorksheetId,
};
use trade::letter::Letter;
use trade::mark::Mark;
use trade::offer::Offer;
use trade::outcome::{Outcome, Reminder};
use trade::price_list::PriceList;
use trade::property::{Part, Property, Slope, Structure};
use trade::sketch::Sketch;
use trade::stack::Stack;
use trade::visit::{Note, Photo, Visit};
use trade::words::Said;
use trade::work::Work;
use trade::worksheet::Worksheet;
use uuid::Uuid;

macro_rules! entries {
    ($($(#[$doc:meta])* $name:ident($record:ty, $id:ty) = $key:literal),+ $(,)?) => {
        /// One thing to record.
        #[derive(Clone, Debug, PartialEq)]
        pub enum Entry {
            $($(#[$doc])* $name($record),)+
            /// The firm.
            Firm(Firm),
            /// What is adopted where the firm works.
            Profile(Profile),
            /// The firm's own policy.
            Policy(HousePolicy),
            /// The firm's own price list.
            PriceList(Box<PriceList>),
            /// Two properties are the same place; whoever asks for the other is led to the kept one.
            Joined {
                /// The one that is kept.
                kept: PropertyId,
                /// The one that leads to it.
                other: PropertyId,
            },
            /// They are not the same after all.
            Parted {
                /// The one that was led elsewhere.
                other: PropertyId,
            },
            /// A record no longer counts. Its line stays.
            Withdrawn(Subject),
            /// All words and pictures of a property are destroyed on the owner's wish; a stub stays.
            Erased {
                /// The property.
                property: PropertyId,
            },
        }

        /// What a line of ink is about.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Subject {
            $($(#[$doc])* $name($id),)+
            /// The firm.
            Firm,
            /// What is adopted where the firm works.
            Profile,
            /// The firm's own policy.
            Policy,
            /// The firm's own price list.
            PriceList,
            /// Whether one property leads to another.
            Joining(PropertyId),
            /// The erasure of a property.
            Erasure(PropertyId),
        }

        impl Subject {
            /// Every kind of thing, as it is stored.
            pub const KINDS: &'static [&'static str] =
                &[$($key,)+ "firm", "profile", "policy", "price-list", "joining", "erasure"];

            /// What kind of thing it is, as it is stored.
            pub(crate) fn kind(self) -> &'static str {
                match self {
                    $(Self::$name(_) => $key,)+
                    Self::Firm => "firm",
                    Self::Profile => "profile",
                    Self::Policy => "policy",
                    Self::PriceList => "price-list",
                    Self::Joining(_) => "joining",
                    Self::Erasure(_) => "erasure",
                }
            }

            /// Which one, as it is stored; the firm's own have none and bear zeros.
            pub(crate) fn uuid(self) -> Uuid {
                match self {
                    $(Self::$name(id) => id.0,)+
                    Self::Firm | Self::Profile | Self::Policy | Self::PriceList => Uuid::nil(),
                    Self::Joining(id) | Self::Erasure(id) => id.0,
                }
            }

            /// From what is stored.
            pub(crate) fn from_stored(kind: &str, id: Uuid) -> Result<Self> {
                Ok(match kind {
                    $($key => Self::$name(id.into()),)+
                    "firm" => Self::Firm,
                    "profile" => Self::Profile,
                    "policy" => Self::Policy,
                    "price-list" => Self::PriceList,
                    "joining" => Self::Joining(id.into()),
                    "erasure" => Self::Erasure(id.into()),
                    other => {
                        return Err(BookError::damage(
                            Said::new("damage-unknown-kind").with("kind", other),
                        ));
                    }
                })
            }
        }

        impl Entry {
            /// What it is about.
            pub fn subject(&self) -> Subject {
                match self {
                    $(Self::$name(record) => Subject::$name(record.id),)+
                    Self::Firm(_) => Subject::Firm,
                    Self::Profile(_) => Subject::Profile,
                    Self::Policy(_) => Subject::Policy,
                    Self::PriceList(_) => Subject::PriceList,
                    Self::Joined { other, .. } | Self::Parted { other } => Subject::Joining(*other),
                    Self::Withdrawn(subject) => *subject,
                    Self::Erased { property } => Subject::Erasure(*property),
                }
            }

            /// The value as it is stored, `None` for what only takes something back; and the entry as it will be read again: the last
            /// digit of a number may differ, and everything drawn from it must be drawn from the same.
            pub(crate) fn written_down(self) -> Result<(Option<String>, Self)> {
                let written = match &self {
                    $(Self::$name(record) => serde_json::to_string(record),)+
                    Self::Firm(record) => serde_json::to_string(record),
                    Self::Profile(record) => serde_json::to_string(record),
                    Self::Policy(record) => serde_json::to_string(record),
                    Self::PriceList(record) => serde_json::to_string(record),
                    Self::Joined { kept, .. } => serde_json::to_string(&Leads { kept: *kept }),
                    Self::Parted { .. } | Self::Withdrawn(_) | Self::Erased { .. } => {
                        return Ok((None, self));
                    }
                };
                let unwritable = || BookError::Unwritable {
                    what: self.subject().kind(),
                };
                let text = written.map_err(|_| unwritable())?;
                // What could not be read again is not taken in: a number that is none (NaN) is written as nothing.
                let read = Self::from_stored(self.subject(), Some(&text)).map_err(|_| unwritable())?;
                Ok((Some(text), read))
            }

            /// From what is stored.
            pub(crate) fn from_stored(subject: Subject, value: Option<&str>) -> Result<Self> {
                let Some(value) = value else {
                    return Ok(match subject {
                        Subject::Joining(other) => Self::Parted { other },
                        Subject::Erasure(property) => Self::Erased { property },
                        other => Self::Withdrawn(other),
                    });
                };
                let read = match subject {
                    $(Subject::$name(_) => serde_json::from_str(value).map(Self::$name),)+
                    Subject::Firm => serde_json::from_str(value).map(Self::Firm),
                    Subject::Profile => serde_json::from_str(value).map(Self::Profile),
                    Subject::Policy => serde_json::from_str(value).map(Self::Policy),
                    Subject::PriceList => serde_json::from_str(value).map(Self::PriceList),
                    Subject::Joining(other) => serde_json::from_str(value)
                        .map(|Leads { kept }| Self::Joined { kept, other }),
                    Subject::Erasure(property) => return Ok(Self::Erased { property }),
                };
                let entry = read.map_err(|_| {
                    BookError::damage(
                        Said::new("damage-record").with("record", record(subject.kind())),
                    )
                })?;
                if entry.subject() == subject {
                    Ok(entry)
                } else {
                    Err(BookError::damage(
                        Said::new("damage-wrong-name").with("record", record(subject.kind())),
                    ))
                }
            }
        }

        $(impl From<$record> for Entry {
            fn from(record: $record) -> Self {
                Self::$name(record)
            }
        })+

        $(impl From<$id> for Subject {
            fn from(id: $id) -> Self {
                Self::$name(id)
            }
        })+
    };
}

entries! {
    /// A property.
    Property(Property, PropertyId) = "property",
    /// A structure.
    Structure(Structure, StructureId) = "structure",
    /// A slope.
    Slope(Slope, SlopeId) = "slope",
    /// A part.
    Part(Part, PartId) = "part",
    /// A visit.
    Visit(Visit, VisitId) = "visit",
    /// A mark.
    Mark(Mark, MarkId) = "mark",
    /// A reading of layers.
    Stack(Stack, StackId) = "stack",
    /// Work done between visits.
    Work(Work, WorkId) = "work",
    /// A picture.
    Photo(Photo, PhotoId) = "photo",
    /// Words not yet tied to a part.
    Note(Note, NoteId) = "note",
    /// A letter.
    Letter(Letter, LetterId) = "letter",
    /// What came of a letter.
    Outcome(Outcome, OutcomeId) = "outcome",
    /// Something to come back to.
    Reminder(Reminder, ReminderId) = "reminder",
    /// A roof's measures.
    Sketch(Sketch, SketchId) = "sketch",
    /// What was counted and chosen for one structure's offer.
    Worksheet(Worksheet, WorksheetId) = "worksheet",
    /// Priced courses put to the owner.
    Offer(Offer, OfferId) = "offer",
}

#[derive(Serialize, Deserialize)]
struct Leads {
    kept: PropertyId,
}

/// Where an entry belongs: named by the record itself, or by another record that it names.
pub(crate) enum Belongs {
    /// To the firm.
    Firm,
    /// To this property.
    Property(PropertyId),
    /// To the property of this record.
    With(Subject),
}

impl Entry {
    /// Where it belongs.
    pub(crate) fn belongs(&self) -> Belongs {
        match self {
            Self::Property(record) => Belongs::Property(record.id),
            Self::Structure(record) => Belongs::Property(record.property),
            Self::Slope(record) => Belongs::With(record.structure.into()),
            Self::Part(record) => Belongs::With(record.structure.into()),
            Self::Visit(record) => Belongs::Property(record.property),
            Self::Mark(record) => Belongs::With(record.visit.into()),
            Self::Stack(record) => Belongs::With(record.visit.into()),
            Self::Work(record) => Belongs::Property(record.property),
            Self::Photo(record) => Belongs::Property(record.property),
            Self::Note(record) => Belongs::With(record.visit.into()),
            Self::Letter(record) => Belongs::Property(record.property),
            Self::Outcome(record) => Belongs::Property(record.property),
            Self::Reminder(record) => Belongs::Property(record.property),
            Self::Sketch(record) => Belongs::With(record.structure.into()),
            Self::Worksheet(record) => Belongs::With(record.structure.into()),
            Self::Offer(record) => Belongs::With(record.structure.into()),
            Self::Firm(_)
            | Self::Profile(_)
            | Self::Policy(_)
            | Self::PriceList(_)
            | Self::Joined { .. }
            | Self::Parted { .. }
            | Self::Erased { .. } => Belongs::Firm,
            Self::Withdrawn(subject) => match subject {
                Subject::Firm
                | Subject::Profile
                | Subject::Policy
                | Subject::PriceList
                | Subject::Joining(_)
                | Subject::Erasure(_) => Belongs::Firm,
                other => Belongs::With(*other),
            },
        }
    }

    /// The visit it was recorded on, where there is one.
    pub(crate) fn visit(&self) -> Option<VisitId> {
        match self {
            Self::Visit(record) => Some(record.id),
            Self::Mark(record) => Some(record.visit),
            Self::Stack(record) => Some(record.visit),
            Self::Work(record) => record.visit,
            Self::Photo(record) => Some(record.visit),
            Self::Note(record) => Some(record.visit),
            Self::Letter(record) => Some(record.visit),
            Self::Reminder(record) => record.visit,
            _ => None,
        }
    }
}
