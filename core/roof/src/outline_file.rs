//! The plain outline file: what was measured of a roof, as JSON, in feet or metres. `docs/outline-file.md` explains it, its schema is published as
//! `docs/outline-file.schema.json`.

mod drawn;
mod parts;

use crate::error::{FileFault, PlaceUnit, ShapeError};
use crate::json::{At, parse};
use crate::{outline, survey, typed};
pub(crate) use parts::{EDGES, OUTLINES};
use schemars::JsonSchema;
use serde::Serialize;
use trade::sketch::{Drawn, EdgeIs, HighEdge, OutlineOf, SideEdge};
use trade::units::{Got, Length, Pitch};

/// An outline file: one of `outline`, `rings`, `bodies`, `legs` and `planes` says what was measured.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
#[schemars(extend("oneOf" = [
    {"required": ["outline"]}, {"required": ["rings"]}, {"required": ["bodies"]}, {"required": ["legs"]}, {"required": ["planes"]}
]))]
#[schemars(extend("dependentRequired" = {"holes": ["outline"], "edges": ["outline"]}))]
#[schemars(extend("not" = {"required": ["planes", "dormers"]}))]
pub struct OutlineFile {
    /// Where this schema is, for editors that look it up. It is not read.
    #[serde(rename = "$schema", skip_serializing_if = "Option::is_none")]
    pub schema: Option<String>,
    /// In what its bare numbers are.
    pub unit: Unit,
    /// The pitch where an edge has none of its own: "6/12" or "26.6°".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall where an edge does not say; nothing where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
    /// What the corners stand for; the edge of the roof where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub of: Option<OutlineOf>,
    /// One roof by nothing but its corners, `[x, y]` each, in order. It closes by itself; either turn is taken.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub outline: Option<Vec<FileCorner>>,
    /// What is cut out of `outline`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub holes: Option<Vec<Vec<FileCorner>>>,
    /// What is told of each side of `outline`: the first is the one from the first corner to the second.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub edges: Option<Vec<FileSide>>,
    /// One roof under one outline: its rim first, then what is cut out. A ring closes by itself; either turn is taken.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rings: Option<Vec<Vec<FileEdge>>>,
    /// Several roofs, each under its own outline.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bodies: Option<Vec<FileBody>>,
    /// One outline by its sides and turns, taped or paced round, the first along the street to the right.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub legs: Option<Vec<FileLeg>>,
    /// Planes one by one, where no outline was drawn.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub planes: Option<Vec<FilePlane>>,
    /// What stands on the roofs that were told: each on those before it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dormers: Option<Vec<FileDormer>>,
    /// How the lengths were got; as whoever reads the file says where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub got: Option<Got>,
}

/// In what the bare numbers of a file are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum Unit {
    /// Feet.
    #[serde(rename = "ft")]
    Feet,
    /// Metres.
    #[serde(rename = "m")]
    Metres,
    /// Inches.
    #[serde(rename = "in")]
    Inches,
    /// Millimetres.
    #[serde(rename = "mm")]
    Millimetres,
}

impl Unit {
    fn length(self, number: f64) -> Length {
        match self {
            Self::Feet => Length::from_inches(number * 12.0),
            Self::Metres => Length::from_metres(number),
            Self::Inches => Length::from_inches(number),
            Self::Millimetres => Length::from_metres(number / 1000.0),
        }
    }

    fn of_places(self) -> PlaceUnit {
        match self {
            Self::Feet => PlaceUnit::Feet,
            Self::Metres => PlaceUnit::Metres,
            Self::Inches => PlaceUnit::Inches,
            Self::Millimetres => PlaceUnit::Millimetres,
        }
    }
}

/// A length: a number in the file's unit, or as people write it, `"12' 6\""`.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Measure {
    /// In the file's unit.
    Number(f64),
    /// With a unit of its own.
    Written(Length),
}

/// A corner: to the right, seen from the street, and away from the street.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FileCorner(pub Measure, pub Measure);

/// What is told of one side of an outline: `"gable"`, or more.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum FileSide {
    /// What stands at it.
    Is(EdgeIs),
    /// More than that.
    Told(ToldSide),
}

/// What is told of one side of an outline.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ToldSide {
    /// What stands at it; an eave where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub is: Option<EdgeIs>,
    /// The pitch of the plane that rises from it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
}

/// One edge of an outline: from its own corner to the next.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FileEdge {
    /// Where it begins: to the right, seen from the street.
    pub x: Measure,
    /// Where it begins: away from the street.
    pub y: Measure,
    /// What stands at it; an eave where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub is: Option<EdgeIs>,
    /// The pitch of the plane that rises from it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
}

/// One roof under one outline.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FileBody {
    /// Its rings: the rim first, then what is cut out.
    pub rings: Vec<Vec<FileEdge>>,
    /// The pitch where an edge has none of its own; that of the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// The overhang where an edge does not say; that of the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
    /// What the corners stand for; as in the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub of: Option<OutlineOf>,
    /// How high its eaves stand above those of the lowest body.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub raised: Option<Measure>,
    /// Where it stands on the roofs of the bodies before it: how high its lowest eave lies above the slope at the lowest place of its walls.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub above_roof: Option<Measure>,
}

/// A roof that stands on those before it: a dormer, a storey above.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FileDormer {
    /// Its corners, `[x, y]` each, in order. What of it lies below the slopes is not seen, so it may reach back as far as its roof could.
    pub outline: Vec<FileCorner>,
    /// What is told of each side, the first from the first corner to the second.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub edges: Option<Vec<FileSide>>,
    /// How high its lowest eave lies above the slope at the lowest place of its walls.
    pub above_roof: Measure,
    /// The pitch where a side has none of its own; that of the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// The overhang where a side does not say; that of the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
    /// What the corners stand for; as in the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub of: Option<OutlineOf>,
}

/// One side of a taped outline.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FileLeg {
    /// How long it is.
    pub length: Measure,
    /// The turn at its end, in degrees to the left; to the right where negative.
    pub turn: f64,
    /// What stands at it; an eave where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub is: Option<EdgeIs>,
    /// The pitch of the plane that rises from it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// How far the roof stands out beyond the wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Measure>,
}

/// One plane by itself.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FilePlane {
    /// Where it faces: `front`, `left`, `rear` or `right`.
    pub side: Facing,
    /// Its pitch; that of the file where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// Its eave.
    pub eave: Measure,
    /// Its high edge: as long as the eave for a gable, 0 for a hip end.
    pub high: Measure,
    /// Up the slope from eave to high edge.
    pub up: Measure,
    /// What its high edge is; a ridge where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub high_is: Option<HighEdge>,
    /// What its sloping edges are, left and right seen from below; rakes where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sides: Option<(SideEdge, SideEdge)>,
}

/// The side that a plane faces, seen from the street.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Facing {
    /// Toward the street.
    Front,
    /// To the left.
    Left,
    /// Away from the street.
    Rear,
    /// To the right.
    Right,
}

/// The published schema.
pub fn schema() -> serde_json::Value {
    schemars::schema_for!(OutlineFile).into()
}

/// What an outline file says was drawn, with the pitch and overhang that hold where the file says none.
///
/// # Errors
/// Where it is no outline file, or bounds no roof: what is wrong and where, places in the file's unit.
pub fn read(text: &str, pitch: Option<Pitch>, overhang: Length) -> Result<Drawn, ShapeError> {
    let value = parse(text)?;
    let at = At::root(&value);
    let file = parts::file(&at)?;
    let drawn = drawn::drawn(&file, &at, (pitch, overhang))?;
    checked(&drawn)
        .map_err(|error| error.placed(|place| place.written_in(file.unit.of_places())))?;
    Ok(drawn)
}

/// How an outline file says that its lengths were got, where it does; nothing for GeoJSON, which has no place for it.
///
/// # Errors
/// Where it is no outline file: what is wrong and where.
pub fn got(text: &str) -> Result<Option<Got>, ShapeError> {
    let value = parse(text)?;
    let at = At::root(&value);
    if at.member("type")?.is_some() {
        return Ok(None);
    }
    Ok(parts::file(&at)?.got)
}

/// That what was drawn can be made a roof, as far as the file can tell.
fn checked(drawn: &Drawn) -> Result<(), ShapeError> {
    match drawn {
        Drawn::Outlines { bodies } if bodies.is_empty() => Err(nothing()),
        Drawn::Outlines { bodies } => bodies
            .iter()
            .enumerate()
            .try_for_each(|(number, body)| outline::ready(number, body).map(drop)),
        // How a side was got is not in the file; a wrong one is told by the loosest.
        Drawn::Legs { legs, standing, .. } => {
            survey::close(legs, Got::Paced)?;
            standing
                .iter()
                .enumerate()
                .try_for_each(|(number, body)| outline::ready(number + 1, body).map(drop))
        }
        Drawn::Planes { planes } if planes.is_empty() => Err(nothing()),
        Drawn::Planes { planes } => typed::planes(planes).map(drop),
    }
}

fn nothing() -> ShapeError {
    ShapeError::File {
        path: String::new(),
        fault: FileFault::Nothing,
    }
}
