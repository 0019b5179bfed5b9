//! The shape of a roof: its planes, and the lines where they begin, end and meet.

use crate::ids::{SlopeId, StructureId};
use crate::takeoff::Spread;
use crate::units::{Area, Got, Length, Pitch};
use serde::{Deserialize, Serialize};

/// A place on a roof, in metres: `x` to the right and `y` away from the street on plan, `z` above the lowest eave.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Corner {
    /// To the right, seen from the street; east where the plan came from a map.
    pub x: f64,
    /// Away from the street; north where the plan came from a map.
    pub y: f64,
    /// Above the lowest eave of the plan.
    pub z: f64,
}

/// What a line of a roof is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LineKind {
    /// The low edge that water runs off.
    Eave,
    /// The sloping free edge at a gable.
    Rake,
    /// Level, where two planes meet at their high edges.
    Ridge,
    /// Sloping, where two planes meet and water runs away from the line.
    Hip,
    /// Where two planes meet and water runs to the line.
    Valley,
    /// Level, where a plane ends against a wall.
    Wall,
    /// Sloping, where a plane runs along a wall: step flashing goes there.
    Step,
    /// Level, where a plane goes on at another pitch.
    PitchChange,
    /// Level, the free high edge of a roof of one plane.
    Top,
}

impl LineKind {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Eave,
        Self::Rake,
        Self::Ridge,
        Self::Hip,
        Self::Valley,
        Self::Wall,
        Self::Step,
        Self::PitchChange,
        Self::Top,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Eave => "line-eave",
            Self::Rake => "line-rake",
            Self::Ridge => "line-ridge",
            Self::Hip => "line-hip",
            Self::Valley => "line-valley",
            Self::Wall => "line-wall",
            Self::Step => "line-step",
            Self::PitchChange => "line-pitch-change",
            Self::Top => "line-top",
        }
    }
}

/// One plane of a roof.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Plane {
    /// Its letter on the plan: that of the slope where it has one.
    pub letter: String,
    /// The slope of the walk that it is the measure of.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// Its pitch.
    pub pitch: Pitch,
    /// The way that water runs on plan, a unit vector.
    pub downhill: (f64, f64),
    /// Its rim, anticlockwise seen from above. The eave that it drains to comes first.
    pub corners: Vec<Corner>,
    /// What is cut out of it, each clockwise.
    #[serde(default)]
    pub holes: Vec<Vec<Corner>>,
    /// Its area on plan, overhangs included.
    pub plan_area: Area,
    /// Its area as it is covered.
    pub slope_area: Area,
}

/// One line of a roof, from end to end.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct RoofLine {
    /// What it is.
    pub kind: LineKind,
    /// One end, the lower where one is lower.
    pub from: Corner,
    /// The other end.
    pub to: Corner,
    /// Its true length.
    pub length: Length,
    /// The planes that it bounds, by their place in the plan: two, or one at a free edge or wall.
    pub planes: Vec<usize>,
    /// How far the roof stands out here beyond the wall's outer face, on plan: at eaves and rakes.
    #[serde(default)]
    pub overhang: Option<Length>,
}

/// A wall that stands on a roof: a cheek or the face of a dormer, or a storey above. Counted from the slope up to the roof over it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WallOnRoof {
    /// Where it begins on the slope.
    pub from: Corner,
    /// Where it ends on the slope.
    pub to: Corner,
    /// Its area, upright.
    pub area: Area,
}

/// A roof as it was measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct RoofPlan {
    /// The structure, where it is one of the book's.
    #[serde(default)]
    pub structure: Option<StructureId>,
    /// How it was measured.
    pub got: Got,
    /// Half-width of the range that any of its lengths on plan lies in, as a share.
    pub length_within: f64,
    /// Half-width of the range that any of its slope factors lies in, as a share.
    pub pitch_within: f64,
    /// The planes.
    pub planes: Vec<Plane>,
    /// The lines.
    pub lines: Vec<RoofLine>,
    /// The outlines on plan, overhangs included, one for each body: the rim first, anticlockwise, then what is cut out, clockwise.
    pub outlines: Vec<Vec<Vec<Corner>>>,
    /// The walls that stand on it.
    #[serde(default)]
    pub walls: Vec<WallOnRoof>,
    /// From the lowest eave to the highest ridge.
    pub height: Length,
}

impl RoofPlan {
    /// Its area on plan.
    pub fn plan_area(&self) -> Area {
        self.planes.iter().map(|plane| plane.plan_area).sum()
    }

    /// Its area as it is covered.
    pub fn slope_area(&self) -> Area {
        self.planes.iter().map(|plane| plane.slope_area).sum()
    }

    /// Its covered area in squares, as exactly as it was measured.
    pub fn squares(&self) -> Spread {
        Spread::within(self.slope_area().in_squares(), self.area_within())
    }

    /// The length of all lines of one kind.
    pub fn length_of(&self, kind: LineKind) -> Length {
        self.lines
            .iter()
            .filter(|line| line.kind == kind)
            .fold(Length::ZERO, |sum, line| {
                sum.plus(line.length).unwrap_or(sum)
            })
    }

    /// The area of all walls that stand on it.
    pub fn wall_area(&self) -> Area {
        self.walls.iter().map(|wall| wall.area).sum()
    }

    /// Half-width of the range that its covered area lies in, as a share: both lengths and the slope factor count.
    pub fn area_within(&self) -> f64 {
        2.0 * self.length_within + self.pitch_within
    }
}
