//! Marks: what was recorded about one part on one visit, as one whole.

use crate::catalogue::{DefectKey, RemedyKey};
use crate::ids::{MarkId, PartId, PhotoId, VisitId};
use crate::units::{Length, Measured};
use crate::verdict::Answered;
use jiff::{Timestamp, civil::Date};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The four conditions of a part, best first: a greater rung is a worse one.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Rung {
    /// Does its work and will go on doing it.
    Sound,
    /// Worn, still does its work.
    Ageing,
    /// Will let water in before long, or does at times.
    Failing,
    /// Does not do its work.
    Failed,
}

impl Rung {
    /// All four, best first.
    pub const ALL: [Self; 4] = [Self::Sound, Self::Ageing, Self::Failing, Self::Failed];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Sound => "rung-sound",
            Self::Ageing => "rung-ageing",
            Self::Failing => "rung-failing",
            Self::Failed => "rung-failed",
        }
    }
}

/// How something was seen, surest first.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Seen {
    /// Hand on it.
    Touched,
    /// Within arm's reach or a few feet.
    Near,
    /// Through a lens from the ladder or a pole.
    Zoomed,
    /// From the ground.
    Afar,
    /// Somebody said so.
    Told,
    /// Concluded from something else.
    Inferred,
}

impl Seen {
    /// Every way of seeing, surest first.
    pub const ALL: [Self; 6] = [
        Self::Touched,
        Self::Near,
        Self::Zoomed,
        Self::Afar,
        Self::Told,
        Self::Inferred,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Touched => "seen-touched",
            Self::Near => "seen-near",
            Self::Zoomed => "seen-zoomed",
            Self::Afar => "seen-afar",
            Self::Told => "seen-told",
            Self::Inferred => "seen-inferred",
        }
    }

    /// Whether a good answer may stand on it: what is seen from afar, told or inferred supports no "leave".
    pub fn is_close(self) -> bool {
        self <= Self::Zoomed
    }
}

/// Why a part was not seen.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum NotSeen {
    /// Covered by something, so that it cannot be judged.
    Hidden,
    /// The way to it was not safe.
    Unsafe,
    /// Too steep.
    TooSteep,
    /// Wet, frosted or under snow.
    Wet,
    /// Behind a locked gate, door or hatch.
    Locked,
    /// Out of reach of ladder and lens.
    OutOfReach,
    /// Too cold or too hot to lift a tab.
    TooColdOrHot,
    /// Outside the scope of the visit.
    OutsideScope,
    /// The visit was closed before it was reached.
    NotReached,
}

impl NotSeen {
    /// Every reason, in the order it is offered.
    pub const ALL: [Self; 9] = [
        Self::OutOfReach,
        Self::TooSteep,
        Self::Wet,
        Self::Locked,
        Self::Hidden,
        Self::Unsafe,
        Self::TooColdOrHot,
        Self::OutsideScope,
        Self::NotReached,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Hidden => "not-seen-hidden",
            Self::Unsafe => "not-seen-unsafe",
            Self::TooSteep => "not-seen-too-steep",
            Self::Wet => "not-seen-wet",
            Self::Locked => "not-seen-locked",
            Self::OutOfReach => "not-seen-out-of-reach",
            Self::TooColdOrHot => "not-seen-too-cold-or-hot",
            Self::OutsideScope => "not-seen-outside-scope",
            Self::NotReached => "not-seen-not-reached",
        }
    }
}

/// The condition of a part on one visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Condition {
    /// It was seen and stands on a rung.
    Seen {
        /// The rung.
        rung: Rung,
        /// How it was seen.
        seen: Seen,
    },
    /// It was not seen. This is no rung.
    NotSeen {
        /// Why not.
        why: NotSeen,
    },
    /// It was taken down and nothing stands in its place.
    Gone,
}

impl Condition {
    /// The rung, where there is one.
    pub fn rung(self) -> Option<Rung> {
        match self {
            Self::Seen { rung, .. } => Some(rung),
            Self::NotSeen { .. } | Self::Gone => None,
        }
    }

    /// How it was seen, where it was.
    pub fn seen(self) -> Option<Seen> {
        match self {
            Self::Seen { seen, .. } => Some(seen),
            Self::NotSeen { .. } | Self::Gone => None,
        }
    }

    /// Why it was not seen, where it was not.
    pub fn not_seen(self) -> Option<NotSeen> {
        match self {
            Self::NotSeen { why } => Some(why),
            Self::Seen { .. } | Self::Gone => None,
        }
    }
}

/// How far a defect reaches over its part.
#[derive(
    JsonSchema,
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Extent {
    /// One place.
    #[default]
    Spot,
    /// Two or three places.
    Several,
    /// A quarter of the slope, four places, or more.
    Broad,
}

impl Extent {
    /// All three, smallest first.
    pub const ALL: [Self; 3] = [Self::Spot, Self::Several, Self::Broad];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Spot => "extent-spot",
            Self::Several => "extent-several",
            Self::Broad => "extent-broad",
        }
    }
}

/// A defect seen on a part.
#[derive(JsonSchema, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct DefectSeen {
    /// Which defect.
    pub defect: DefectKey,
    /// How far it reaches.
    #[serde(default)]
    pub extent: Extent,
}

/// What a measure is of.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MeasureOf {
    /// Width parallel to the ridge.
    Width,
    /// Height above the roof.
    Height,
    /// Distance in plan to the ridge, or to whatever stands higher.
    Distance,
    /// Drop from the ridge or the higher thing to where this part leaves the roof.
    Drop,
    /// Exposure of the courses.
    Exposure,
    /// A length along an edge.
    Run,
    /// Diameter.
    Diameter,
    /// Thickness of metal or sheet.
    Thickness,
    /// Overhang of the eave, in plan, from the outer face of the wall.
    Overhang,
}

impl MeasureOf {
    /// Every measure, in the order it is offered.
    pub const ALL: [Self; 9] = [
        Self::Width,
        Self::Height,
        Self::Distance,
        Self::Drop,
        Self::Exposure,
        Self::Run,
        Self::Diameter,
        Self::Thickness,
        Self::Overhang,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Width => "measure-width",
            Self::Height => "measure-height",
            Self::Distance => "measure-distance",
            Self::Drop => "measure-drop",
            Self::Exposure => "measure-exposure",
            Self::Run => "measure-run",
            Self::Diameter => "measure-diameter",
            Self::Thickness => "measure-thickness",
            Self::Overhang => "measure-overhang",
        }
    }
}

/// A measured length of a part.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Measure {
    /// What was measured.
    pub of: MeasureOf,
    /// How long it is, how that was got, how exact it is.
    pub value: Measured<Length>,
}

/// A later, visible correction of a mark.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Correction {
    /// The day it was made.
    pub on: Date,
    /// Why.
    pub why: String,
}

/// What was recorded about one part on one visit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Mark {
    /// Identifier.
    pub id: MarkId,
    /// The visit.
    pub visit: VisitId,
    /// The part.
    pub part: PartId,
    /// When it was recorded.
    pub at: Timestamp,
    /// The condition.
    pub condition: Condition,
    /// The defects, the one that weighs most first.
    #[serde(default)]
    pub defects: Vec<DefectSeen>,
    /// The remedies advised; empty where the catalogue's cures are meant.
    #[serde(default)]
    pub advised: Vec<RemedyKey>,
    /// Questions answered on the spot: do the tabs bend, is the deck dry.
    #[serde(default)]
    pub answers: Vec<Answered>,
    /// The measures.
    #[serde(default)]
    pub measures: Vec<Measure>,
    /// The pictures.
    #[serde(default)]
    pub photos: Vec<PhotoId>,
    /// His own words.
    #[serde(default)]
    pub words: String,
    /// Set where this record was corrected after its visit was closed.
    #[serde(default)]
    pub corrected: Option<Correction>,
}

impl Mark {
    /// Whether this is a real look: a part seen on a rung, or seen to be gone.
    pub fn is_real(&self) -> bool {
        !matches!(self.condition, Condition::NotSeen { .. })
    }

    /// The measure of one kind, the last one taken.
    pub fn measure(&self, of: MeasureOf) -> Option<&Measured<Length>> {
        self.measures
            .iter()
            .rev()
            .find(|measure| measure.of == of)
            .map(|measure| &measure.value)
    }
}
