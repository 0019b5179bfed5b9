//! Measuring: a roof's outline is drawn, its plan computed, its slopes and parts found on it.

mod ties;

pub use ties::tie;
pub(crate) use ties::{Rises, attach};

use crate::{ActError, Moment, arrive};
use book::{Book, Entry};
use roof::draw::{Colours, Marks, Picture, Placed};
use trade::catalogue::{Catalogue, Kind};
use trade::drawing::Drawing;
use trade::history::History;
use trade::ids::{PartId, SketchId, SlopeId, StructureId};
use trade::mark::Rung;
use trade::property::{OnPlan, Part, Position, Side};
use trade::roof::{LineKind, Plane, RoofPlan};
use trade::sketch::{Drawn, EdgeIs, Sketch, SketchEdge};
use trade::units::{Got, Length, Measured, Pitch};
use trade::words::{Said, Words};

/// How a roof was measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// What was drawn.
    pub drawn: Drawn,
    /// How the lengths were got.
    pub got: Got,
    /// How the pitches were got.
    pub pitch_got: Got,
}

/// Records a roof's measures, where they give a plan. Planes find the slopes of the walk that face the same way.
///
/// # Errors
/// Where the structure is not in the book, the measures give no roof, or the book cannot be written; what was measured before still stands.
pub fn draw(
    book: &mut Book,
    structure: StructureId,
    taken: Taken,
    moment: Moment,
) -> Result<SketchId, ActError> {
    let history = of_structure(book, structure)?;
    let mut sketch = Sketch {
        id: moment.id(),
        structure,
        at: moment.at,
        got: taken.got,
        pitch_got: taken.pitch_got,
        drawn: taken.drawn,
        told_area: None,
    };
    attach(&mut sketch, &history)?;
    planned(&sketch, &history)?;
    let id = sketch.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Sketch(sketch))?;
        Ok(id)
    })
}

/// One edge of an outline, by its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
pub struct EdgeAt {
    /// The body.
    pub body: usize,
    /// The ring: the rim first.
    pub ring: usize,
    /// The edge, from its own corner to the next.
    pub edge: usize,
}

/// What is said anew of one edge.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct EdgeTold {
    /// What stands at it.
    pub is: Option<EdgeIs>,
    /// The pitch of its plane.
    pub pitch: Option<Pitch>,
    /// How far the roof stands out.
    pub overhang: Option<Length>,
}

/// Says something anew of one edge of a roof's outline.
///
/// # Errors
/// Where the structure was not drawn by its corners or has no such edge, the outline then gives no roof, or the book cannot be written.
pub fn set_edge(
    book: &mut Book,
    structure: StructureId,
    at: EdgeAt,
    told: EdgeTold,
    moment: Moment,
) -> Result<(), ActError> {
    let history = of_structure(book, structure)?;
    let no_edge = || ActError::not_there("there-edge");
    let mut sketch = history.sketch_of(structure).cloned().ok_or_else(no_edge)?;
    let edge = edge_of(&mut sketch.drawn, at).ok_or_else(no_edge)?;
    edge.is = told.is.unwrap_or(edge.is);
    edge.pitch = told.pitch.or(edge.pitch);
    edge.overhang = told.overhang.or(edge.overhang);
    attach(&mut sketch, &history)?;
    planned(&sketch, &history)?;
    keep_anew(book, sketch, moment)
}

/// Records a sketch that was changed as a new one.
pub(crate) fn keep_anew(
    book: &mut Book,
    mut sketch: Sketch,
    moment: Moment,
) -> Result<(), ActError> {
    sketch.id = moment.id();
    sketch.at = moment.at;
    book.write(moment.at, |tx| {
        tx.record(Entry::Sketch(sketch))?;
        Ok(())
    })
}

fn edge_of(drawn: &mut Drawn, at: EdgeAt) -> Option<&mut SketchEdge> {
    match drawn {
        Drawn::Outlines { bodies } => bodies
            .get_mut(at.body)?
            .rings
            .get_mut(at.ring)?
            .get_mut(at.edge),
        Drawn::Legs { .. } | Drawn::Planes { .. } => None,
    }
}

/// Says where a part lies on the plan of its structure.
///
/// # Errors
/// Where the part is not in the book, or the book cannot be written.
pub fn place(
    book: &mut Book,
    part: PartId,
    at: Option<OnPlan>,
    moment: Moment,
) -> Result<(), ActError> {
    let Some(Entry::Part(mut known)) = book.get(part)? else {
        return Err(ActError::not_there("there-part"));
    };
    known.at = at;
    book.write(moment.at, |tx| {
        tx.record(Entry::Part(known))?;
        Ok(())
    })
}

/// Writes down the pitch of a slope.
///
/// # Errors
/// Where the slope is not in the book, or the book cannot be written.
pub fn set_pitch(
    book: &mut Book,
    slope: SlopeId,
    pitch: Measured<Pitch>,
    moment: Moment,
) -> Result<(), ActError> {
    let Some(Entry::Slope(mut known)) = book.get(slope)? else {
        return Err(ActError::not_there("there-slope"));
    };
    known.pitch = Some(pitch);
    book.write(moment.at, |tx| {
        tx.record(Entry::Slope(known))?;
        Ok(())
    })
}

/// The plan of a structure by its last measures; `None` where nobody measured it.
///
/// # Errors
/// Where the measures give no roof: they were taken in by another program.
pub fn plan(history: &History, structure: StructureId) -> Result<Option<RoofPlan>, ActError> {
    history
        .sketch_of(structure)
        .map(|sketch| planned(sketch, history))
        .transpose()
}

/// The plan of a roof that is of no book.
///
/// # Errors
/// Where the measures give no roof.
pub fn plan_of(taken: &Taken) -> Result<RoofPlan, ActError> {
    Ok(roof::plan_of(&taken.drawn, taken.got, taken.pitch_got)?)
}

/// The whole record of the property that a structure stands on.
///
/// # Errors
/// Where the structure is not in the book, or the book cannot be read.
pub fn of_structure(book: &Book, structure: StructureId) -> Result<History, ActError> {
    let property = book
        .property_of(structure)?
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    arrive::history(book, property)
}

/// The plan of a sketch. A plane that is the measure of a slope bears its letter; the others go on after all letters of the property.
pub(crate) fn planned(sketch: &Sketch, history: &History) -> Result<RoofPlan, ActError> {
    let mut plan = roof::plan(sketch)?;
    let mut free = free_letters(history);
    for plane in &mut plan.planes {
        let slope = plane.slope.and_then(|slope| history.slope(slope));
        plane.letter = match slope {
            Some(slope) => slope.letter.to_string(),
            None => free.next().unwrap_or_default(),
        };
    }
    Ok(plan)
}

fn free_letters(history: &History) -> impl Iterator<Item = String> {
    let taken: Vec<char> = history.slopes.iter().map(|slope| slope.letter).collect();
    ('A'..='Z')
        .chain('a'..='z')
        .filter(move |letter| !taken.contains(letter))
        .map(String::from)
}

/// Where a plane faces, seen from the street, which lies below the plan.
pub fn faces(plane: &Plane) -> Side {
    let (x, y) = plane.downhill;
    match (x.abs() > y.abs(), x > 0.0, y > 0.0) {
        (true, true, _) => Side::Right,
        (true, false, _) => Side::Left,
        (false, _, true) => Side::Rear,
        (false, _, false) => Side::Front,
    }
}

/// The reading of an outline: GeoJSON where it says so, else the plain outline file.
///
/// # Errors
/// Where it is neither, or names no outline: what is wrong and where.
pub fn read(text: &str, pitch: Option<Pitch>, overhang: Length) -> Result<Drawn, ActError> {
    Ok(roof::read_outline(text, pitch, overhang)?)
}

/// How a file says that its lengths were got, where it does.
///
/// # Errors
/// Where it is no outline file.
pub fn got_in(text: &str) -> Result<Option<Got>, ActError> {
    Ok(roof::outline_file::got(text)?)
}

/// On which side of a map's outline the street lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Street {
    /// South of it: the plan stands as the map does.
    #[default]
    South,
    /// East of it.
    East,
    /// North of it.
    North,
    /// West of it.
    West,
}

impl Street {
    /// All four.
    pub const ALL: [Self; 4] = [Self::South, Self::East, Self::North, Self::West];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::South => "street-south",
            Self::East => "street-east",
            Self::North => "street-north",
            Self::West => "street-west",
        }
    }
}

/// An outline as it came from a map, turned so that the street lies below it.
#[must_use]
pub fn turned(mut drawn: Drawn, street: Street) -> Drawn {
    let negative = |length: Length| Length::of_nanometres(-length.nanometres());
    let turn = |x: Length, y: Length| match street {
        Street::South => (x, y),
        Street::East => (y, negative(x)),
        Street::North => (negative(x), negative(y)),
        Street::West => (negative(y), x),
    };
    if let Drawn::Outlines { bodies } = &mut drawn {
        for edge in bodies
            .iter_mut()
            .flat_map(|body| body.rings.iter_mut().flatten())
        {
            (edge.x, edge.y) = turn(edge.x, edge.y);
        }
    }
    drawn
}

/// A pitch as it was read: several inclinations in degrees, averaged, or one pitch as people write it.
///
/// # Errors
/// Where one is no inclination of a roof.
pub fn pitch_of_readings(readings: &[&str]) -> Result<Measured<Pitch>, ActError> {
    if let [one] = readings
        && let Ok(value) = one.parse::<Pitch>()
    {
        return Ok(Measured {
            value,
            got: Got::Tape,
            within: Got::Tape.within(),
        });
    }
    Ok(to_tenth(roof::angles::from_readings(&degrees_of(
        readings,
    )?)?))
}

/// A measured pitch to a tenth in twelve: nothing on a roof tells it finer. What that leaves out is within its tolerance.
fn to_tenth(measured: Measured<Pitch>) -> Measured<Pitch> {
    let (exact, value) = (measured.value.in_twelfths(), measured.value.to_tenth());
    let left_out = if exact > 0.0 {
        (value.in_twelfths() - exact).abs() / exact
    } else {
        0.0
    };
    Measured {
        value,
        within: measured.within + left_out,
        ..measured
    }
}

/// Readings in degrees.
pub(crate) fn degrees_of(readings: &[&str]) -> Result<Vec<f64>, ActError> {
    readings
        .iter()
        .map(|reading| {
            let number = reading.trim_end_matches('°').trim();
            number
                .parse()
                .map_err(|_| ActError::wrong("readings", Said::new("wrong-reading")))
        })
        .collect()
}

/// A pitch from a rise over a run, both taped.
///
/// # Errors
/// Where the run is nothing, or no roof is as steep.
pub fn pitch_of_rise(rise: Length, run: Length) -> Result<Measured<Pitch>, ActError> {
    Ok(to_tenth(roof::angles::from_rise(rise, run)?))
}

/// A pitch from the length of a rafter over its run, both taped, the overhang left out on both.
///
/// # Errors
/// Where one is nothing, or the rafter is shorter than its run.
pub fn pitch_of_rafter(rafter: Length, run: Length) -> Result<Measured<Pitch>, ActError> {
    Ok(to_tenth(roof::angles::from_rafter(rafter, run)?))
}

/// The plan of a structure as it is shown: the parts on it that are not sound bear their numbers.
pub fn pictured(
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
    words: &Words,
) -> Picture {
    let parts = history
        .parts_of(structure)
        .filter(|part| is_worn(history, part))
        .filter_map(|part| placed(history, part))
        .collect();
    let marks = Marks {
        parts,
        below: Some(Said::new("roof-street-below")),
        ..Marks::default()
    };
    roof::draw::plan(plan, &marks, words, roof::draw::PHONE)
}

/// The line of a roof that parts of one kind lie along; `None` for one in the field of a slope.
pub(crate) fn near(kind: &Kind) -> Option<LineKind> {
    match kind.stop.as_str() {
        "eave" => Some(LineKind::Eave),
        "rake" => Some(LineKind::Rake),
        "ridge" => Some(LineKind::Ridge),
        "valleys" => Some(LineKind::Valley),
        "walls" => Some(LineKind::Step),
        _ => None,
    }
}

fn is_worn(history: &History, part: &Part) -> bool {
    history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part.id && mark.is_real())
        .and_then(|mark| mark.condition.rung())
        .is_some_and(|rung| rung != Rung::Sound)
}

fn placed(history: &History, part: &Part) -> Option<Placed> {
    let slope = history.slope(part.slope?)?;
    let kind = Catalogue::standard().kind(&part.kind)?;
    Some(Placed {
        letter: slope.letter.to_string(),
        number: u32::from(part.number),
        at: part.at.map(|at| (at.x.in_metres(), at.y.in_metres())),
        near: near(kind),
        chosen: false,
    })
}

/// A drawing in the colours of the page it stands on.
pub fn svg_of(drawing: &Drawing, title: &str, says: &str) -> String {
    roof::draw::svg(drawing, title, says, Colours::PAGE)
}

/// A file of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlanFile {
    /// The plan as a picture.
    Svg,
    /// The plan for a drawing program.
    Dxf,
    /// Planes and lines for a map.
    Geojson,
    /// Planes as a table.
    PlanesCsv,
    /// Lines as a table.
    LinesCsv,
}

impl PlanFile {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::Svg,
        Self::Dxf,
        Self::Geojson,
        Self::PlanesCsv,
        Self::LinesCsv,
    ];

    /// The name that the file bears.
    pub fn name(self) -> &'static str {
        match self {
            Self::Svg => "plan.svg",
            Self::Dxf => "plan.dxf",
            Self::Geojson => "plan.geojson",
            Self::PlanesCsv => "slopes.csv",
            Self::LinesCsv => "lines.csv",
        }
    }

    /// What a browser calls its kind.
    pub fn media(self) -> &'static str {
        match self {
            Self::Svg => "image/svg+xml",
            Self::Dxf => "image/vnd.dxf",
            Self::Geojson => "application/geo+json",
            Self::PlanesCsv | Self::LinesCsv => "text/csv; charset=utf-8",
        }
    }

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Svg => "roof-file-svg",
            Self::Dxf => "roof-file-dxf",
            Self::Geojson => "roof-file-geojson",
            Self::PlanesCsv => "roof-file-planes",
            Self::LinesCsv => "roof-file-lines",
        }
    }
}

/// A file of the plan of a structure.
///
/// # Errors
/// Where the structure is not in the book or was not measured.
pub fn file(
    book: &Book,
    structure: StructureId,
    file: PlanFile,
    words: &Words,
) -> Result<String, ActError> {
    let history = of_structure(book, structure)?;
    let plan = plan(&history, structure)?.ok_or_else(|| ActError::not_there("there-plan"))?;
    if file == PlanFile::Svg {
        let address = &history.property.address.line;
        let picture = pictured(&history, structure, &plan, words);
        return Ok(roof::draw::svg(
            &picture.drawing,
            address,
            address,
            Colours::SHEET,
        ));
    }
    Ok(file_of(&plan, file, words, history.property.position))
}

/// A file of a plan; `position` is where its origin lies, where that is known.
pub fn file_of(
    plan: &RoofPlan,
    file: PlanFile,
    words: &Words,
    position: Option<Position>,
) -> String {
    match file {
        PlanFile::Svg => {
            let picture = roof::draw::plan(plan, &Marks::default(), words, roof::draw::PHONE);
            let title = words.text("roof-plan-title");
            roof::draw::svg(&picture.drawing, &title, &title, Colours::SHEET)
        }
        PlanFile::Dxf => roof::export::dxf(plan),
        PlanFile::Geojson => roof::export::geojson(plan, position),
        PlanFile::PlanesCsv => roof::export::csv_of_planes(plan),
        PlanFile::LinesCsv => roof::export::csv_of_lines(plan),
    }
}

/// The published shape of an outline file, as a JSON Schema.
pub fn outline_schema() -> String {
    serde_json::to_string_pretty(&roof::outline_file::schema()).unwrap_or_default()
}
