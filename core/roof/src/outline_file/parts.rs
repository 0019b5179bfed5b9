//! The parts of an outline file, read member by member.

use super::{
    Facing, FileBody, FileCorner, FileDormer, FileEdge, FileLeg, FilePlane, FileSide, Measure,
    OutlineFile, ToldSide, Unit,
};
use crate::error::{FileFault, ShapeError, Wanted};
use crate::json::At;
use trade::sketch::{EdgeIs, HighEdge, OutlineOf, SideEdge};
use trade::units::Got;

/// The greatest number that is taken for a length, in whichever unit: a hundred kilometres in millimetres, and far more than any house.
const GREATEST: f64 = 1e8;

/// How an edge is written.
pub(crate) const EDGES: [(&str, EdgeIs); 3] = [
    ("hip", EdgeIs::Hip),
    ("gable", EdgeIs::Gable),
    ("wall", EdgeIs::Wall),
];

/// How what the corners stand for is written.
pub(crate) const OUTLINES: [(&str, OutlineOf); 2] =
    [("walls", OutlineOf::Walls), ("roof", OutlineOf::Roof)];

const GOT: [(&str, Got); 7] = [
    ("tape", Got::Tape),
    ("paced", Got::Paced),
    ("picture", Got::Picture),
    ("footprint", Got::Footprint),
    ("inclination", Got::Inclination),
    ("eye", Got::Eye),
    ("told", Got::Told),
];

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

/// The whole file.
pub(super) fn file(at: &At) -> Result<OutlineFile, ShapeError> {
    at.only(&[
        "$schema", "unit", "pitch", "overhang", "of", "outline", "holes", "edges", "rings",
        "bodies", "legs", "planes", "dormers", "got",
    ])?;
    Ok(OutlineFile {
        schema: maybe(at, "$schema", |at| at.text().map(str::to_owned))?,
        unit: unit(at)?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
        of: maybe(at, "of", |at| at.word(&OUTLINES))?,
        outline: maybe(at, "outline", |at| each(at, corner))?,
        holes: maybe(at, "holes", |at| each(at, |hole| each(hole, corner)))?,
        edges: maybe(at, "edges", |at| each(at, side))?,
        rings: maybe(at, "rings", rings)?,
        bodies: maybe(at, "bodies", |at| each(at, body))?,
        legs: maybe(at, "legs", |at| each(at, leg))?,
        planes: maybe(at, "planes", |at| each(at, plane))?,
        dormers: maybe(at, "dormers", |at| each(at, dormer))?,
        got: maybe(at, "got", |at| at.word(&GOT))?,
    })
}

fn maybe<'a, T>(
    at: &At<'a>,
    name: &str,
    read: impl Fn(&At<'a>) -> Result<T, ShapeError>,
) -> Result<Option<T>, ShapeError> {
    at.member(name)?.map(|at| read(&at)).transpose()
}

fn each<T>(at: &At, read: impl Fn(&At) -> Result<T, ShapeError>) -> Result<Vec<T>, ShapeError> {
    at.items()?.iter().map(read).collect()
}

fn unit(at: &At) -> Result<Unit, ShapeError> {
    let unit = at
        .member("unit")?
        .ok_or_else(|| at.fault(FileFault::NoUnit))?;
    match unit.text()? {
        "ft" => Ok(Unit::Feet),
        "m" => Ok(Unit::Metres),
        "in" => Ok(Unit::Inches),
        "mm" => Ok(Unit::Millimetres),
        other => Err(unit.fault(FileFault::Unit(other.to_owned()))),
    }
}

fn measure(at: &At) -> Result<Measure, ShapeError> {
    if at.is_text() {
        return Ok(Measure::Written(at.length()?));
    }
    let number = at.number()?;
    if number.abs() > GREATEST {
        return Err(at.fault(FileFault::Length(format!("{number:e}"))));
    }
    Ok(Measure::Number(number))
}

fn corner(at: &At) -> Result<FileCorner, ShapeError> {
    match at.items()?.as_slice() {
        [x, y] => Ok(FileCorner(measure(x)?, measure(y)?)),
        _ => Err(at.fault(FileFault::Wants(Wanted::Corner))),
    }
}

fn side(at: &At) -> Result<FileSide, ShapeError> {
    if at.is_text() {
        return Ok(FileSide::Is(at.word(&EDGES)?));
    }
    at.only(&["is", "pitch", "overhang"])?;
    Ok(FileSide::Told(ToldSide {
        is: maybe(at, "is", |at| at.word(&EDGES))?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
    }))
}

fn rings(at: &At) -> Result<Vec<Vec<FileEdge>>, ShapeError> {
    each(at, |ring| each(ring, edge))
}

fn edge(at: &At) -> Result<FileEdge, ShapeError> {
    at.only(&["x", "y", "is", "pitch", "overhang"])?;
    Ok(FileEdge {
        x: measure(&at.needed("x")?)?,
        y: measure(&at.needed("y")?)?,
        is: maybe(at, "is", |at| at.word(&EDGES))?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
    })
}

fn body(at: &At) -> Result<FileBody, ShapeError> {
    at.only(&["rings", "pitch", "overhang", "of", "raised", "above_roof"])?;
    Ok(FileBody {
        rings: rings(&at.needed("rings")?)?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
        of: maybe(at, "of", |at| at.word(&OUTLINES))?,
        raised: maybe(at, "raised", measure)?,
        above_roof: maybe(at, "above_roof", measure)?,
    })
}

fn dormer(at: &At) -> Result<FileDormer, ShapeError> {
    at.only(&["outline", "edges", "above_roof", "pitch", "overhang", "of"])?;
    Ok(FileDormer {
        outline: each(&at.needed("outline")?, corner)?,
        edges: maybe(at, "edges", |at| each(at, side))?,
        above_roof: measure(&at.needed("above_roof")?)?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
        of: maybe(at, "of", |at| at.word(&OUTLINES))?,
    })
}

fn leg(at: &At) -> Result<FileLeg, ShapeError> {
    at.only(&["length", "turn", "is", "pitch", "overhang"])?;
    Ok(FileLeg {
        length: measure(&at.needed("length")?)?,
        turn: at.needed("turn")?.number()?,
        is: maybe(at, "is", |at| at.word(&EDGES))?,
        pitch: maybe(at, "pitch", At::pitch)?,
        overhang: maybe(at, "overhang", measure)?,
    })
}

fn plane(at: &At) -> Result<FilePlane, ShapeError> {
    at.only(&["side", "pitch", "eave", "high", "up", "high_is", "sides"])?;
    Ok(FilePlane {
        side: at.needed("side")?.word(&FACINGS)?,
        pitch: maybe(at, "pitch", At::pitch)?,
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
        _ => Err(at.fault(FileFault::Wants(Wanted::TwoSides))),
    }
}
