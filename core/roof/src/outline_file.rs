//! The plain outline file: what was measured of a roof, as JSON, in feet or metres. Its schema is published as `docs/outline-file.schema.json`.

use crate::error::{At as Place, FileFault, ShapeError, Wanted};
use crate::json::{At, parse};
use crate::{outline, survey, typed};
use schemars::JsonSchema;
use serde::Serialize;
use trade::property::Side;
use trade::sketch::{
    Body, Drawn, EdgeIs, HighEdge, Leg, OutlineOf, SideEdge, SketchEdge, TypedPlane,
};
use trade::units::{Got, Length, Pitch};

/// An outline file: one of `rings`, `bodies`, `legs` and `planes` says what was measured.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OutlineFile {
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
}

/// A length: a number in the file's unit, or as people write it, `"12' 6\""`.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Measure {
    /// In the file's unit.
    Number(f64),
    /// With a unit of its own.
    Written(String),
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
    pub edge: Option<EdgeIs>,
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
    pub edge: Option<EdgeIs>,
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

/// How an edge is written.
pub(crate) const EDGES: [(&str, EdgeIs); 3] = [
    ("hip", EdgeIs::Hip),
    ("gable", EdgeIs::Gable),
    ("wall", EdgeIs::Wall),
];

/// How what the corners stand for is written.
pub(crate) const OUTLINES: [(&str, OutlineOf); 2] =
    [("walls", OutlineOf::Walls), ("roof", OutlineOf::Roof)];

const HIGH_EDGES: [(&str, HighEdge); 4] = [
    ("ridge", HighEdge::Ridge),
    ("wall", HighEdge::Wall),
    ("pitch-change", HighEdge::PitchChange),
    ("top", HighEdge::Top),
];

const SIDE_EDGES: [(&str, SideEdge); 4] = [
    ("rake", SideEdge::Rake),
    ("hip", SideEdge::Hip),
    ("valley", SideEdge::Valley),
    ("step", SideEdge::Step),
];

const FACINGS: [(&str, Facing); 4] = [
    ("front", Facing::Front),
    ("left", Facing::Left),
    ("rear", Facing::Rear),
    ("right", Facing::Right),
];

/// The published schema.
pub fn schema() -> serde_json::Value {
    schemars::schema_for!(OutlineFile).into()
}

/// What an outline file says was drawn.
///
/// # Errors
/// Where it is no outline file, or bounds no roof: what is wrong and where, places in the file's unit.
pub fn read(text: &str) -> Result<Drawn, ShapeError> {
    read_with(text, None, Length::ZERO)
}

/// The same, with the pitch and overhang that hold where the file says none.
///
/// # Errors
/// As [`read`].
pub fn read_with(
    text: &str,
    pitch: Option<Pitch>,
    overhang: Length,
) -> Result<Drawn, ShapeError> {
    let value = parse(text)?;
    let at = At::root(&value);
    let mut file = file(&at)?;
    file.pitch = file.pitch.or(pitch);
    let reader = Reader {
        unit: file.unit,
        overhang,
        at,
    };
    let drawn = reader.drawn(&file)?;
    checked(&drawn).map_err(|error| match file.unit {
        Unit::Feet => error,
        Unit::Metres => error.placed(Place::in_metres),
    })?;
    Ok(drawn)
}

/// That what was drawn can be made a roof, as far as the file can tell.
fn checked(drawn: &Drawn) -> Result<(), ShapeError> {
    match drawn {
        Drawn::Outlines { bodies } => bodies
            .iter()
            .enumerate()
            .try_for_each(|(number, body)| outline::ready(number, body).map(drop)),
        // How a side was got is not in the file; a wrong one is told by the loosest.
        Drawn::Legs { legs, .. } => survey::close(legs, Got::Paced).map(drop),
        Drawn::Planes { planes } => typed::planes(planes).map(drop),
    }
}

fn file(at: &At) -> Result<OutlineFile, ShapeError> {
    at.only(&[
        "$schema", "unit", "pitch", "overhang", "of", "rings", "bodies", "legs", "planes",
    ])?;
    Ok(OutlineFile {
        unit: unit(&at.needed("unit")?)?,
        pitch: at.member("pitch")?.map(|at| at.pitch()).transpose()?,
        overhang: maybe(at, "overhang", measure)?,
        of: maybe(at, "of", |at| at.word(&OUTLINES))?,
        rings: maybe(at, "rings", rings)?,
        bodies: maybe(at, "bodies", |at| each(at, body))?,
        legs: maybe(at, "legs", |at| each(at, leg))?,
        planes: maybe(at, "planes", |at| each(at, plane))?,
    })
}

fn maybe<T>(
    at: &At,
    name: &str,
    read: impl Fn(&At) -> Result<T, ShapeError>,
) -> Result<Option<T>, ShapeError> {
    at.member(name)?.map(|at| read(&at)).transpose()
}

fn each<T>(at: &At, read: impl Fn(&At) -> Result<T, ShapeError>) -> Result<Vec<T>, ShapeError> {
    at.items()?.iter().map(read).collect()
}

fn unit(at: &At) -> Result<Unit, ShapeError> {
    match at.text()? {
        "ft" => Ok(Unit::Feet),
        "m" => Ok(Unit::Metres),
        other => Err(at.fault(FileFault::Unit(other.to_owned()))),
    }
}

fn measure(at: &At) -> Result<Measure, ShapeError> {
    if at.is_text() {
        at.length()?;
        return Ok(Measure::Written(at.text()?.to_owned()));
    }
    Ok(Measure::Number(at.number()?))
}

fn rings(at: &At) -> Result<Vec<Vec<FileEdge>>, ShapeError> {
    each(at, |ring| each(ring, edge))
}

fn edge(at: &At) -> Result<FileEdge, ShapeError> {
    at.only(&["x", "y", "edge", "pitch", "overhang"])?;
    Ok(FileEdge {
        x: measure(&at.needed("x")?)?,
        y: measure(&at.needed("y")?)?,
        edge: maybe(at, "edge", |at| at.word(&EDGES))?,
        pitch: maybe(at, "pitch", |at| at.pitch())?,
        overhang: maybe(at, "overhang", measure)?,
    })
}

fn body(at: &At) -> Result<FileBody, ShapeError> {
    at.only(&["rings", "pitch", "overhang", "of", "raised"])?;
    Ok(FileBody {
        rings: rings(&at.needed("rings")?)?,
        pitch: maybe(at, "pitch", |at| at.pitch())?,
        overhang: maybe(at, "overhang", measure)?,
        of: maybe(at, "of", |at| at.word(&OUTLINES))?,
        raised: maybe(at, "raised", measure)?,
    })
}

fn leg(at: &At) -> Result<FileLeg, ShapeError> {
    at.only(&["length", "turn", "edge", "pitch", "overhang"])?;
    Ok(FileLeg {
        length: measure(&at.needed("length")?)?,
        turn: at.needed("turn")?.number()?,
        edge: maybe(at, "edge", |at| at.word(&EDGES))?,
        pitch: maybe(at, "pitch", |at| at.pitch())?,
        overhang: maybe(at, "overhang", measure)?,
    })
}

fn plane(at: &At) -> Result<FilePlane, ShapeError> {
    at.only(&["side", "pitch", "eave", "high", "up", "high_is", "sides"])?;
    Ok(FilePlane {
        side: at.needed("side")?.word(&FACINGS)?,
        pitch: maybe(at, "pitch", |at| at.pitch())?,
        eave: measure(&at.needed("eave")?)?,
        high: measure(&at.needed("high")?)?,
        up: measure(&at.needed("up")?)?,
        high_is: maybe(at, "high_is", |at| at.word(&HIGH_EDGES))?,
        sides: maybe(at, "sides", sides)?,
    })
}

fn sides(at: &At) -> Result<(SideEdge, SideEdge), ShapeError> {
    match at.items()?.as_slice() {
        [left, right] => Ok((left.word(&SIDE_EDGES)?, right.word(&SIDE_EDGES)?)),
        _ => Err(at.fault(FileFault::Wants(Wanted::List))),
    }
}

/// A file being turned into what was drawn.
struct Reader<'a> {
    unit: Unit,
    overhang: Length,
    at: At<'a>,
}

impl Reader<'_> {
    fn drawn(&self, file: &OutlineFile) -> Result<Drawn, ShapeError> {
        let no_pitch = || self.at.fault(FileFault::NoPitch);
        let of = file.of.unwrap_or_default();
        let overhang = self.length_or(file.overhang.as_ref(), self.overhang);
        match (&file.rings, &file.bodies, &file.legs, &file.planes) {
            (Some(rings), None, None, None) => Ok(Drawn::Outlines {
                bodies: vec![Body {
                    rings: self.rings(rings),
                    of,
                    pitch: file.pitch.or_else(|| common(rings)).ok_or_else(no_pitch)?,
                    overhang,
                    raised: Length::ZERO,
                }],
            }),
            (None, Some(bodies), None, None) => Ok(Drawn::Outlines {
                bodies: bodies
                    .iter()
                    .map(|body| {
                        Ok(Body {
                            rings: self.rings(&body.rings),
                            of: body.of.unwrap_or(of),
                            pitch: body
                                .pitch
                                .or(file.pitch)
                                .or_else(|| common(&body.rings))
                                .ok_or_else(no_pitch)?,
                            overhang: self.length_or(body.overhang.as_ref(), overhang),
                            raised: self.length_or(body.raised.as_ref(), Length::ZERO),
                        })
                    })
                    .collect::<Result<_, ShapeError>>()?,
            }),
            (None, None, Some(legs), None) => Ok(Drawn::Legs {
                legs: legs.iter().map(|leg| self.leg(leg)).collect(),
                of,
                pitch: file
                    .pitch
                    .or_else(|| legs.iter().find_map(|leg| leg.pitch))
                    .ok_or_else(no_pitch)?,
                overhang,
            }),
            (None, None, None, Some(planes)) => Ok(Drawn::Planes {
                planes: planes
                    .iter()
                    .map(|plane| self.plane(plane, file.pitch).ok_or_else(no_pitch))
                    .collect::<Result<_, _>>()?,
            }),
            _ => Err(self.at.fault(FileFault::OneOf)),
        }
    }

    fn length(&self, measure: &Measure) -> Length {
        match (measure, self.unit) {
            (Measure::Number(feet), Unit::Feet) => Length::from_inches(feet * 12.0),
            (Measure::Number(metres), Unit::Metres) => Length::from_metres(*metres),
            (Measure::Written(text), _) => text.parse().unwrap_or(Length::ZERO),
        }
    }

    fn length_or(&self, measure: Option<&Measure>, default: Length) -> Length {
        measure.map_or(default, |measure| self.length(measure))
    }

    /// The rings; a last corner that repeats the first is left out.
    fn rings(&self, rings: &[Vec<FileEdge>]) -> Vec<Vec<SketchEdge>> {
        rings
            .iter()
            .map(|ring| {
                let mut edges: Vec<SketchEdge> = ring.iter().map(|edge| self.edge(edge)).collect();
                let repeats = match (edges.first(), edges.last()) {
                    (Some(first), Some(last)) => (first.x, first.y) == (last.x, last.y),
                    _ => false,
                };
                if edges.len() > 1 && repeats {
                    edges.pop();
                }
                edges
            })
            .collect()
    }

    fn edge(&self, edge: &FileEdge) -> SketchEdge {
        SketchEdge {
            x: self.length(&edge.x),
            y: self.length(&edge.y),
            is: edge.edge.unwrap_or_default(),
            pitch: edge.pitch,
            overhang: edge.overhang.as_ref().map(|overhang| self.length(overhang)),
            slope: None,
        }
    }

    fn leg(&self, leg: &FileLeg) -> Leg {
        Leg {
            length: self.length(&leg.length),
            turn: leg.turn,
            is: leg.edge.unwrap_or_default(),
            pitch: leg.pitch,
            overhang: leg.overhang.as_ref().map(|overhang| self.length(overhang)),
            slope: None,
        }
    }

    fn plane(&self, plane: &FilePlane, pitch: Option<Pitch>) -> Option<TypedPlane> {
        Some(TypedPlane {
            side: match plane.side {
                Facing::Front => Side::Front,
                Facing::Left => Side::Left,
                Facing::Rear => Side::Rear,
                Facing::Right => Side::Right,
            },
            slope: None,
            pitch: plane.pitch.or(pitch)?,
            eave: self.length(&plane.eave),
            high: self.length(&plane.high),
            up: self.length(&plane.up),
            high_is: plane.high_is.unwrap_or_default(),
            sides: plane.sides.unwrap_or_default(),
        })
    }
}

/// A pitch for all, where every edge that a plane rises from has its own.
fn common(rings: &[Vec<FileEdge>]) -> Option<Pitch> {
    let mut rising = rings
        .iter()
        .flatten()
        .filter(|edge| edge.edge.unwrap_or_default() == EdgeIs::Hip);
    let first = rising.next()?.pitch?;
    rising.all(|edge| edge.pitch.is_some()).then_some(first)
}
