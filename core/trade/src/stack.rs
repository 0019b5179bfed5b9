//! Layers: what lies at one spot from the top down to the deck.

use crate::ids::{SlopeId, StackId, StructureId, VisitId};
use crate::units::{Length, Measured};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Kinds of roof covering that the rules tell apart.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Covering {
    /// Asphalt strip shingles (three tabs).
    AsphaltStrip,
    /// Laminated asphalt shingles.
    AsphaltLaminated,
    /// Mineral-surfaced roll roofing.
    AsphaltRoll,
    /// Sawn wood shingles.
    WoodShingle,
    /// Split wood shakes.
    WoodShake,
    /// Slate.
    Slate,
    /// Clay tile.
    ClayTile,
    /// Cement or concrete tile.
    CementTile,
    /// Asbestos-cement shingle or tile.
    AsbestosCement,
    /// Standing-seam metal.
    MetalSeam,
    /// Lapped metal panels.
    MetalLapped,
    /// Built-up roofing.
    BuiltUp,
    /// Polymer-modified bitumen sheet.
    ModifiedBitumen,
    /// Single-ply membrane.
    SinglePly,
    /// Seen, but nobody could say what it is.
    Unclear,
}

impl Covering {
    /// Every covering, likeliest on a house first.
    pub const ALL: [Self; 15] = [
        Self::AsphaltLaminated,
        Self::AsphaltStrip,
        Self::AsphaltRoll,
        Self::WoodShingle,
        Self::WoodShake,
        Self::Slate,
        Self::ClayTile,
        Self::CementTile,
        Self::AsbestosCement,
        Self::MetalSeam,
        Self::MetalLapped,
        Self::BuiltUp,
        Self::ModifiedBitumen,
        Self::SinglePly,
        Self::Unclear,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::AsphaltStrip => "covering-asphalt-strip",
            Self::AsphaltLaminated => "covering-asphalt-laminated",
            Self::AsphaltRoll => "covering-asphalt-roll",
            Self::WoodShingle => "covering-wood-shingle",
            Self::WoodShake => "covering-wood-shake",
            Self::Slate => "covering-slate",
            Self::ClayTile => "covering-clay-tile",
            Self::CementTile => "covering-cement-tile",
            Self::AsbestosCement => "covering-asbestos-cement",
            Self::MetalSeam => "covering-metal-seam",
            Self::MetalLapped => "covering-metal-lapped",
            Self::BuiltUp => "covering-built-up",
            Self::ModifiedBitumen => "covering-modified-bitumen",
            Self::SinglePly => "covering-single-ply",
            Self::Unclear => "covering-unclear",
        }
    }

    /// Whether it is an asphalt shingle in the sense of IRC R905.2.
    pub fn is_asphalt_shingle(self) -> bool {
        matches!(self, Self::AsphaltStrip | Self::AsphaltLaminated)
    }
}

/// What one layer is.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is", content = "of")]
pub enum LayerIs {
    /// A roof covering: this is what the code counts.
    Covering(Covering),
    /// Underlayment or ice barrier.
    Membrane,
    /// Sheathing laid over an older covering.
    Sheathing,
    /// The deck.
    Deck,
}

impl LayerIs {
    /// Its key in the message files: the covering's own name where it is one.
    pub fn key(self) -> &'static str {
        match self {
            Self::Covering(covering) => covering.key(),
            Self::Membrane => "layer-membrane",
            Self::Sheathing => "layer-sheathing",
            Self::Deck => "layer-deck",
        }
    }
}

/// One layer of a stack.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Layer {
    /// What it is.
    pub is: LayerIs,
    /// Its colour, where that tells layers apart.
    #[serde(default)]
    pub colour: Option<String>,
    /// Its thickness.
    #[serde(default)]
    pub thickness: Option<Measured<Length>>,
}

/// How a stack was learned.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Learned {
    /// Counted at a cut edge.
    CutEdge,
    /// Counted at the rake edge.
    RakeEdge,
    /// A tab was lifted.
    Lifted,
    /// Drilled or cut open.
    Drilled,
    /// The owner said so.
    OwnersWord,
}

impl Learned {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::CutEdge,
        Self::RakeEdge,
        Self::Lifted,
        Self::Drilled,
        Self::OwnersWord,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::CutEdge => "learned-cut-edge",
            Self::RakeEdge => "learned-rake-edge",
            Self::Lifted => "learned-lifted",
            Self::Drilled => "learned-drilled",
            Self::OwnersWord => "learned-owners-word",
        }
    }
}

/// Butt lines measured at a rake edge, upward from the eave.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct EdgeCourses {
    /// The exposure of the top layer.
    pub exposure: Length,
    /// Height of each visible butt line above the eave edge, along the slope.
    pub butts: Vec<Length>,
}

/// What lies at one spot of a slope.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stack {
    /// Identifier.
    pub id: StackId,
    /// The visit it was read on.
    pub visit: VisitId,
    /// The structure.
    pub structure: StructureId,
    /// The slope.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Where on the slope: "left rake, 3 ft up"; a rebuilt area is named as such.
    #[serde(default)]
    pub spot: String,
    /// Whether the spot lies in an area that was rebuilt on its own.
    #[serde(default)]
    pub rebuilt: bool,
    /// From the top down to the deck.
    #[serde(default)]
    pub layers: Vec<Layer>,
    /// Butt lines, where only the edge could be read.
    #[serde(default)]
    pub edge: Option<EdgeCourses>,
    /// How it was learned.
    pub learned: Learned,
}
