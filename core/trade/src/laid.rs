//! A covering as it is laid: what goes onto the roof, what is cut off, what is left.

use crate::stack::Covering;
use crate::takeoff::plain;
use crate::units::{Area, Length};
use crate::words::Said;
use serde::{Deserialize, Serialize};

/// A covering that comes in pieces and is laid in courses.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Pieces {
    /// What covering it is.
    pub covering: Covering,
    /// Length of one piece along the course.
    pub width: Length,
    /// Height of one piece, butt to top.
    pub height: Length,
    /// What of it is seen: the courses repeat at it.
    pub exposure: Length,
    /// How far the joints of a course stand off from those of the course below.
    pub offset: Length,
    /// The shortest piece that is laid.
    pub shortest: Length,
    /// Pieces in a bundle.
    pub bundle: u32,
    /// How far the pieces stand out over the eave and rake edge.
    pub overhang: Length,
}

impl Pieces {
    /// Three-tab strips, 36 in by 12 in at 5 in, 27 to the bundle (NAVEDTRA 14044); offset by half a tab, 3/8 in over the edge (the same).
    pub fn strip() -> Self {
        Self {
            covering: Covering::AsphaltStrip,
            width: Length::inches(36),
            height: Length::inches(12),
            exposure: Length::inches(5),
            offset: Length::inches(6),
            shortest: Length::inches(6),
            bundle: 27,
            overhang: Length::sixteenths(6),
        }
    }

    /// Metric laminated shingles, 39 3/8 in by 13 1/4 in at 5 5/8 in, 22 to the bundle. Common practice, no source but the arithmetic of 65 to the square.
    pub fn laminated() -> Self {
        Self {
            covering: Covering::AsphaltLaminated,
            width: Length::sixteenths(630),
            height: Length::sixteenths(212),
            exposure: Length::sixteenths(90),
            offset: Length::inches(10),
            shortest: Length::inches(4),
            bundle: 22,
            overhang: Length::sixteenths(6),
        }
    }
}

impl Pieces {
    /// Whether starter and caps are cut from the same pieces: a strip has tabs to cut them at, a laminated shingle has none (common practice, no source).
    pub fn give_starter_and_caps(&self) -> bool {
        self.covering == Covering::AsphaltStrip
    }

    /// How many of them cover a square of 100 square feet, nothing cut.
    pub fn per_square(&self) -> f64 {
        14_400.0 / (self.width.in_inches() * self.exposure.in_inches())
    }

    /// What one of them covers: its width by its exposure.
    pub fn cover(&self) -> Area {
        Area::square_metres(self.width.in_metres() * self.exposure.in_metres())
    }
}

/// How a valley is made.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum ValleyIs {
    /// A lining is left bare between two cut edges.
    #[default]
    Open,
    /// One side runs through, the other is cut along the line.
    ClosedCut,
}

impl ValleyIs {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Open, Self::ClosedCut];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Open => "valley-open",
            Self::ClosedCut => "valley-closed-cut",
        }
    }
}

/// Where the starter course goes.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum StarterAt {
    /// Along the eaves.
    #[default]
    Eaves,
    /// Along the eaves and up the rakes.
    EavesAndRakes,
}

impl StarterAt {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Eaves, Self::EavesAndRakes];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Eaves => "starter-eaves",
            Self::EavesAndRakes => "starter-eaves-and-rakes",
        }
    }
}

/// What the roofer chooses in laying.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Practice {
    /// How valleys are made.
    pub valleys: ValleyIs,
    /// Where the starter course goes.
    pub starter: StarterAt,
}

impl From<ValleyIs> for Practice {
    fn from(valleys: ValleyIs) -> Self {
        Self {
            valleys,
            ..Self::default()
        }
    }
}

/// What a laid piece was before it was laid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CutFrom {
    /// A whole piece, laid whole.
    Whole,
    /// A whole piece that was cut.
    Piece,
    /// What was left of another piece.
    Offcut,
}

/// One piece as it lies: for the drawing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LaidPiece {
    /// The plane, by its place in the plan.
    pub plane: usize,
    /// The course, 0 at the eave.
    pub course: u32,
    /// From where to where it reaches along the course, in metres along the eave; what the next course hides counts.
    pub along: (f64, f64),
    /// What is seen of it: rims in metres on the plane, along the eave and up the slope. More than one where something stands through it.
    pub seen: Vec<Vec<(f64, f64)>>,
    /// What it was cut from.
    pub from: CutFrom,
}

/// What one plane took.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LaidPlane {
    /// The plane, by its place in the plan.
    pub plane: usize,
    /// Courses.
    pub courses: u32,
    /// Whole pieces opened for it.
    pub opened: u32,
    /// Places filled from an offcut.
    pub reused: u32,
    /// What is covered, the overhang of the pieces included.
    pub covered: Area,
    /// What runs through a closed valley and lies hidden under the other side.
    pub lapped: Area,
}

/// A covering laid over a roof.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Laid {
    /// What was laid.
    pub pieces: Pieces,
    /// How its valleys are made.
    pub valleys: ValleyIs,
    /// Plane by plane.
    pub planes: Vec<LaidPlane>,
    /// Whole pieces opened for the field.
    pub field: u32,
    /// Whole pieces that the starter course is long.
    pub starter: u32,
    /// Length of the starter course.
    pub starter_length: Length,
    /// Whole pieces that hip and ridge caps make up.
    pub cap: u32,
    /// Length of hips and ridges to be capped.
    pub cap_length: Length,
    /// Single caps.
    pub caps: u32,
    /// Bundles of the field, and of starter and caps where the pieces give them, rounded up.
    pub bundles: u32,
    /// What the field covers, the overhang of the pieces included.
    pub covered: Area,
    /// What runs through closed valleys and lies hidden under the other side.
    pub lapped: Area,
    /// What of the opened field pieces' cover ended on the ground: `covered`, `lapped` and this make up all that was opened.
    pub dropped: Area,
    /// The same as a share of what was opened for the field.
    pub waste: f64,
    /// What was opened for the field beyond the area of the roof, as a share of that area: what books call waste.
    pub extra: f64,
    /// Least extra in books for a roof like this one, and most where they name one, to compare with `extra`.
    pub handbook: (f64, Option<f64>),
}

impl Laid {
    /// What books add for a roof like this one: a range, or so much or more.
    pub fn says_handbook(&self) -> Said {
        let per_cent = |share: f64| plain(share * 100.0, 1);
        let (least, most) = self.handbook;
        match most {
            Some(most) => Said::new("laid-books-range")
                .with("least", per_cent(least))
                .with("most", per_cent(most)),
            None => Said::new("laid-books-more").with("least", per_cent(least)),
        }
    }
}
