//! The forms, and how what was typed into them is read.

use acts::measure::EdgeAt;
use acts::walk::Spot;
use serde::{Deserialize, Serialize};
use trade::ids::{MarkId, PersonId, PhotoId, PropertyId, StructureId, VisitId};
use trade::verdict::{Course, Narrowed};

/// What a form is for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "form")]
pub enum FormOf {
    /// Find an address.
    Find,
    /// Add a property.
    AddProperty,
    /// The address as it is spelled now.
    Address {
        /// The property.
        property: PropertyId,
    },
    /// Another address of the same place.
    AlsoAt {
        /// The property.
        property: PropertyId,
    },
    /// What holds of the place on every visit.
    About {
        /// The property.
        property: PropertyId,
    },
    /// A person.
    Person {
        /// The property.
        property: PropertyId,
        /// Who; `None` adds one.
        person: Option<PersonId>,
    },
    /// A structure's name, and whether it still stands.
    Structure {
        /// The property.
        property: PropertyId,
        /// The structure.
        structure: StructureId,
    },
    /// Find the same place under another address.
    SamePlace {
        /// The property.
        property: PropertyId,
    },
    /// Destroy all words and pictures of a place.
    Erase {
        /// The property.
        property: PropertyId,
    },
    /// Open a visit: what they ask, how much to look at.
    OpenVisit {
        /// The property.
        property: PropertyId,
    },
    /// How warm it is: tabs are not lifted when they are too cold or too hot to bend.
    Temperature {
        /// The visit.
        visit: VisitId,
    },
    /// Keep words in the tray, or on a part.
    Say {
        /// The visit.
        visit: VisitId,
        /// The part; `None` is the tray.
        spot: Option<Spot>,
        /// The structure and stop to stay at.
        structure: Option<StructureId>,
    },
    /// Add a measure.
    Measure {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
    },
    /// Read the layers at a spot.
    Layers {
        /// The visit.
        visit: VisitId,
        /// The part at which they are read.
        spot: Spot,
    },
    /// Work done between visits.
    Work {
        /// The visit.
        visit: VisitId,
        /// The part.
        spot: Spot,
    },
    /// Add a part.
    AddPart {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
    },
    /// What a picture shows.
    Caption {
        /// The visit.
        visit: VisitId,
        /// The picture.
        photo: PhotoId,
    },
    /// Correct a mark of a closed visit.
    Correct {
        /// The visit.
        visit: VisitId,
        /// The mark.
        mark: MarkId,
    },
    /// What came of the letter.
    Outcome {
        /// The property.
        property: PropertyId,
    },
    /// Something to come back to.
    Remind {
        /// The property.
        property: PropertyId,
    },
    /// A roof over a plain rectangle.
    RoofBox {
        /// The structure.
        structure: StructureId,
    },
    /// A roof by its sides and turns, taped or paced round.
    RoofSides {
        /// The structure.
        structure: StructureId,
    },
    /// A roof from a file: a footprint in GeoJSON, or an outline file.
    RoofFile {
        /// The structure.
        structure: StructureId,
    },
    /// One plane typed in by itself.
    RoofPlane {
        /// The structure.
        structure: StructureId,
    },
    /// Pitch and overhang of one edge of the outline.
    Edge {
        /// The structure.
        structure: StructureId,
        /// The edge.
        at: EdgeAt,
    },
    /// Of which slope of the walk a plane is the measure.
    TiePlane {
        /// The structure.
        structure: StructureId,
    },
    /// Where a part lies on the plan.
    PlacePart {
        /// The structure.
        structure: StructureId,
    },
    /// The pitch of a slope, from readings.
    SlopePitch {
        /// The structure.
        structure: StructureId,
    },
    /// The pitch of a slope, from a rise over a run.
    SlopeRise {
        /// The structure.
        structure: StructureId,
    },
    /// The pitch of a slope, from the length of a rafter over its run.
    SlopeRafter {
        /// The structure.
        structure: StructureId,
    },
    /// A roof that stands on this one.
    Dormer {
        /// The structure.
        structure: StructureId,
    },
    /// How the ladder stands.
    Ladder {
        /// The visit.
        visit: VisitId,
    },
    /// Where water shows inside.
    Stain {
        /// The structure.
        structure: StructureId,
    },
    /// Offer all the same what judgement refuses.
    Nevertheless {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
        /// The course.
        course: Course,
        /// What of it.
        narrowed: Narrowed,
    },
    /// What was counted and chosen for the offer.
    Worksheet {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
    },
    /// The firm's price list.
    PriceList,
    /// The firm.
    Firm,
    /// The code.
    Profile,
    /// The policy.
    Policy,
}

/// What a form is about: its half-typed words go when that is erased.
pub(crate) enum About {
    /// A property.
    Property(PropertyId),
    /// A visit to one.
    Visit(VisitId),
    /// A structure on one.
    Structure(StructureId),
    /// No place of its own.
    NoPlace,
}

impl FormOf {
    pub(crate) fn about(&self) -> About {
        match self {
            Self::Find
            | Self::AddProperty
            | Self::PriceList
            | Self::Firm
            | Self::Profile
            | Self::Policy => About::NoPlace,
            Self::Address { property }
            | Self::AlsoAt { property }
            | Self::About { property }
            | Self::Person { property, .. }
            | Self::Structure { property, .. }
            | Self::SamePlace { property }
            | Self::Erase { property }
            | Self::OpenVisit { property }
            | Self::Outcome { property }
            | Self::Remind { property } => About::Property(*property),
            Self::Temperature { visit }
            | Self::Ladder { visit }
            | Self::Say { visit, .. }
            | Self::Measure { visit, .. }
            | Self::Layers { visit, .. }
            | Self::Work { visit, .. }
            | Self::AddPart { visit, .. }
            | Self::Caption { visit, .. }
            | Self::Correct { visit, .. }
            | Self::Nevertheless { visit, .. }
            | Self::Worksheet { visit, .. } => About::Visit(*visit),
            Self::RoofBox { structure }
            | Self::RoofSides { structure }
            | Self::RoofFile { structure }
            | Self::RoofPlane { structure }
            | Self::Edge { structure, .. }
            | Self::TiePlane { structure }
            | Self::PlacePart { structure }
            | Self::SlopePitch { structure }
            | Self::SlopeRise { structure }
            | Self::SlopeRafter { structure }
            | Self::Dormer { structure }
            | Self::Stain { structure } => About::Structure(*structure),
        }
    }

    /// The key under which half-typed words of one of its fields are kept.
    pub(crate) fn draft_key(&self, field: &str) -> String {
        let form = serde_json::to_string(self).unwrap_or_default();
        format!("{form}/{field}")
    }
}

/// What was typed into a form, read by field.
pub(crate) struct Typed<'a>(pub &'a [(String, String)]);

impl Typed<'_> {
    /// The text of a field, trimmed; empty where it is not there.
    pub(crate) fn text(&self, name: &str) -> &str {
        self.0
            .iter()
            .find(|(field, _)| field == name)
            .map_or("", |(_, value)| value.trim())
    }

    /// The value chosen in a field, as the type it stands for.
    pub(crate) fn choice<T: serde::de::DeserializeOwned>(&self, name: &str) -> Option<T> {
        let text = self.text(name);
        if text.is_empty() {
            return None;
        }
        serde_json::from_value(serde_json::Value::String(text.to_owned())).ok()
    }

    /// Whether a box was ticked.
    pub(crate) fn ticked(&self, name: &str) -> bool {
        self.text(name) == "yes"
    }
}

/// The text that stands for a choice in a field.
pub(crate) fn value_of<T: Serialize>(choice: &T) -> String {
    match serde_json::to_value(choice) {
        Ok(serde_json::Value::String(text)) => text,
        Ok(other) => other.to_string(),
        Err(_) => String::new(),
    }
}
