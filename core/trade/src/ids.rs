//! One identifier type for each thing that is recorded, so that two cannot be mixed up.

use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use uuid::Uuid;

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident),+ $(,)?) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }

        impl FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, Self::Err> {
                Uuid::parse_str(text).map(Self)
            }
        }

        impl From<Uuid> for $name {
            fn from(id: Uuid) -> Self {
                Self(id)
            }
        }
    )+};
}

ids! {
    /// A property: one plot with one owner's roofs on it.
    PropertyId,
    /// A person tied to a property.
    PersonId,
    /// A structure: house, garage, porch.
    StructureId,
    /// A slope of a structure.
    SlopeId,
    /// A part on a structure.
    PartId,
    /// A visit.
    VisitId,
    /// A mark.
    MarkId,
    /// A reading of the layers at one spot.
    StackId,
    /// A piece of work done between visits.
    WorkId,
    /// A picture as it was taken at one property.
    PhotoId,
    /// Words taken first and not yet tied to a part.
    NoteId,
    /// A letter to the owner.
    LetterId,
    /// A roof's measures as they were taken.
    SketchId,
    /// What was counted and chosen for one structure's offer.
    WorksheetId,
    /// A priced course put to the owner.
    OfferId,
    /// What came of a letter.
    OutcomeId,
    /// Something to come back to on a date.
    ReminderId,
    /// A device that writes ink.
    DeviceId,
}
