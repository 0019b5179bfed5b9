//! A sketch: what was measured of a roof, as it was measured. The plan is computed from it, so that a better measure gives a better plan.

use crate::ids::{SketchId, SlopeId, StructureId};
use crate::property::Side;
use crate::units::{Area, Got, Length, Pitch};
use jiff::Timestamp;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What stands at one edge of an outline.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum EdgeIs {
    /// A plane rises from it: an eave.
    #[default]
    Hip,
    /// The roof ends here above an upright gable.
    Gable,
    /// The roof ends here against a higher wall.
    Wall,
}

impl EdgeIs {
    /// All three, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::Hip, Self::Gable, Self::Wall];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Hip => "edge-hip",
            Self::Gable => "edge-gable",
            Self::Wall => "edge-wall",
        }
    }
}

/// One edge of an outline: from its own corner to the next.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SketchEdge {
    /// Where it begins: to the right, seen from the street.
    pub x: Length,
    /// Where it begins: away from the street.
    pub y: Length,
    /// What stands at it.
    #[serde(default)]
    pub is: EdgeIs,
    /// The pitch of the plane that rises from it; `None` takes the outline's.
    #[serde(default)]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall; `None` takes the outline's.
    #[serde(default)]
    pub overhang: Option<Length>,
    /// The slope of the walk that rises from it.
    #[serde(default)]
    pub slope: Option<SlopeId>,
}

/// What the corners of an outline stand for.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum OutlineOf {
    /// The outer faces of the walls: the overhangs are added.
    Walls,
    /// The edge of the roof: the overhangs lie inside.
    #[default]
    Roof,
}

/// One roof under one outline.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Body {
    /// Its rings: the rim first, then what is cut out. Either turn is taken.
    pub rings: Vec<Vec<SketchEdge>>,
    /// What the corners stand for.
    #[serde(default)]
    pub of: OutlineOf,
    /// The pitch where an edge has none of its own.
    pub pitch: Pitch,
    /// The overhang where an edge has none of its own.
    #[serde(default)]
    pub overhang: Length,
    /// How high its eaves stand above those of the lowest body, where it stands on the ground.
    #[serde(default)]
    pub raised: Length,
    /// Where it stands on the roofs of the bodies before it, as a dormer does: how high its lowest eave lies above the slope at the lowest place of
    /// its walls. It is then drawn where it stands on them.
    #[serde(default)]
    pub above_roof: Option<Length>,
}

/// One side of an outline as it was taped or paced: how long, and the turn to the next side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Leg {
    /// Its length.
    pub length: Length,
    /// The turn at its end, in degrees to the left; to the right where negative.
    pub turn: f64,
    /// What stands at it.
    #[serde(default)]
    pub is: EdgeIs,
    /// The pitch of the plane that rises from it; `None` takes the outline's.
    #[serde(default)]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall; `None` takes the outline's.
    #[serde(default)]
    pub overhang: Option<Length>,
    /// The slope of the walk that rises from it.
    #[serde(default)]
    pub slope: Option<SlopeId>,
}

/// A plane typed in by itself, where no outline was drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TypedPlane {
    /// Where it faces.
    pub side: Side,
    /// The slope of the walk that it is the measure of.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Its pitch.
    pub pitch: Pitch,
    /// Its eave.
    pub eave: Length,
    /// Its high edge: as long as the eave for a gable, nothing for a hip end.
    pub high: Length,
    /// Up the slope from eave to high edge.
    pub up: Length,
    /// What its high edge is.
    #[serde(default)]
    pub high_is: HighEdge,
    /// What each sloping edge is, left and right seen from below.
    #[serde(default)]
    pub sides: (SideEdge, SideEdge),
}

/// What a typed plane's high edge is.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum HighEdge {
    /// A ridge.
    #[default]
    Ridge,
    /// A wall.
    Wall,
    /// Another pitch goes on.
    PitchChange,
    /// A free edge.
    Top,
}

/// What a typed plane's sloping edge is.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SideEdge {
    /// A rake.
    #[default]
    Rake,
    /// A hip.
    Hip,
    /// A valley.
    Valley,
    /// A wall.
    Step,
}

/// What was drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Drawn {
    /// Outlines by their corners.
    Outlines {
        /// One for each body.
        bodies: Vec<Body>,
    },
    /// An outline by its sides and turns, taped or paced round.
    Legs {
        /// The sides in order, the first running to the right along the street.
        legs: Vec<Leg>,
        /// What they stand for.
        #[serde(default)]
        of: OutlineOf,
        /// The pitch where a side has none of its own.
        pitch: Pitch,
        /// The overhang where a side has none of its own.
        #[serde(default)]
        overhang: Length,
        /// What stands on it, in order: its dormers. Their corners are told from where the first side begins.
        #[serde(default)]
        standing: Vec<Body>,
    },
    /// Planes one by one.
    Planes {
        /// The planes.
        planes: Vec<TypedPlane>,
    },
}

/// A roof's measures as they were taken.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sketch {
    /// Identifier.
    pub id: SketchId,
    /// The structure.
    pub structure: StructureId,
    /// When it was drawn.
    pub at: Timestamp,
    /// How the lengths were got.
    pub got: Got,
    /// How the pitches were got.
    pub pitch_got: Got,
    /// What was drawn.
    pub drawn: Drawn,
    /// The area of the covering where the roof was measured by somebody else, to compare with.
    #[serde(default)]
    pub told_area: Option<Area>,
}
