//! The taps and forms of Roof and Leak.

use super::Next;
use super::typed::{length, length_of, readings, wrong};
use crate::form::{FormOf, Typed};
use crate::place::{Place, Shows};
use acts::dormer::{self, Dormer};
use acts::measure::{self, EdgeAt, EdgeTold, Street, Taken};
use acts::{ActError, Book, Moment};
use trade::ids::{SlopeId, StructureId};
use trade::property::{OnPlan, Side};
use trade::sketch::{
    Body, Drawn, EdgeIs, HighEdge, Leg, OutlineOf, SideEdge, SketchEdge, TypedPlane,
};
use trade::units::{Got, Length, Pitch, UnitError};
use trade::words::Words;

pub(super) fn set_edge(
    book: &mut Book,
    structure: StructureId,
    at: EdgeAt,
    is: EdgeIs,
    moment: Moment,
) -> Result<Next, ActError> {
    let told = EdgeTold {
        is: Some(is),
        ..EdgeTold::default()
    };
    measure::set_edge(book, structure, at, told, moment)?;
    Ok(Next::at(Place::Roof { structure }))
}

pub(super) fn filled(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let structure = match form {
        FormOf::RoofBox { structure } => {
            drawn(book, *structure, a_box(typed)?, typed, moment)?;
            *structure
        }
        FormOf::RoofSides { structure } => {
            drawn(book, *structure, sides(typed)?, typed, moment)?;
            *structure
        }
        FormOf::RoofFile { structure } => {
            let taken = Taken {
                drawn: file(typed)?,
                got: measure::got_in(typed.text("file"))?.unwrap_or(got(typed)),
                pitch_got: pitch_got(typed),
            };
            measure::draw(book, *structure, taken, moment)?;
            *structure
        }
        FormOf::RoofPlane { structure } => {
            let planes = with_plane(book, *structure, plane(typed)?)?;
            drawn(book, *structure, planes, typed, moment)?;
            *structure
        }
        FormOf::Edge { structure, at } => {
            measure::set_edge(book, *structure, *at, edge(typed)?, moment)?;
            *structure
        }
        FormOf::TiePlane { structure } => {
            let plane = typed.text("plane").parse();
            let plane = plane.map_err(|_| wrong("plane", "wrong-no-plane"))?;
            measure::tie(book, *structure, plane, slope(typed)?, moment)?;
            *structure
        }
        FormOf::PlacePart { structure } => {
            place_part(book, typed, moment)?;
            *structure
        }
        FormOf::SlopePitch { structure } => {
            let measured = measure::pitch_of_readings(&readings(typed.text("readings")))?;
            measure::set_pitch(book, slope(typed)?, measured, moment)?;
            *structure
        }
        FormOf::SlopeRise { structure } => {
            let measured = measure::pitch_of_rise(length(typed, "rise")?, length(typed, "run")?)?;
            measure::set_pitch(book, slope(typed)?, measured, moment)?;
            *structure
        }
        FormOf::SlopeRafter { structure } => {
            let (rafter, run) = (length(typed, "rafter")?, length(typed, "run")?);
            let measured = measure::pitch_of_rafter(rafter, run)?;
            measure::set_pitch(book, slope(typed)?, measured, moment)?;
            *structure
        }
        FormOf::Dormer { structure } => {
            dormer::stand(book, *structure, &a_dormer(typed)?, moment)?;
            *structure
        }
        FormOf::Stain { structure } => {
            return Ok(Next::at(Place::Leak {
                structure: *structure,
                stain: Some(shows(typed)?),
            }));
        }
        _ => return Ok(Next::at(Place::start())),
    };
    Ok(Next::saved(Place::Roof { structure }, words, "saved-roof"))
}

fn drawn(
    book: &mut Book,
    structure: StructureId,
    drawn: Drawn,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<(), ActError> {
    let taken = Taken {
        drawn,
        got: got(typed),
        pitch_got: pitch_got(typed),
    };
    measure::draw(book, structure, taken, moment)?;
    Ok(())
}

fn got(typed: &Typed<'_>) -> Got {
    typed.choice("got").unwrap_or(Got::Tape)
}

fn pitch_got(typed: &Typed<'_>) -> Got {
    typed.choice("pitch-got").unwrap_or(Got::Inclination)
}

fn pitch(typed: &Typed<'_>, field: &'static str) -> Result<Pitch, ActError> {
    pitch_of(typed.text(field), field)
}

fn pitch_of(text: &str, field: &'static str) -> Result<Pitch, ActError> {
    text.parse()
        .map_err(|error: UnitError| ActError::wrong(field, error.says()))
}

/// Nothing typed is no overhang.
fn overhang(typed: &Typed<'_>) -> Result<Length, ActError> {
    match typed.text("overhang") {
        "" => Ok(Length::ZERO),
        text => length_of(text, "overhang"),
    }
}

/// A rectangle with its front along the street: hipped all round, or with gables at two ends.
fn a_box(typed: &Typed<'_>) -> Result<Drawn, ActError> {
    let (across, deep) = (length(typed, "across")?, length(typed, "deep")?);
    let [front, right] = match typed.text("ends") {
        "gable-sides" => [EdgeIs::Hip, EdgeIs::Gable],
        "gable-front" => [EdgeIs::Gable, EdgeIs::Hip],
        _ => [EdgeIs::Hip, EdgeIs::Hip],
    };
    let zero = Length::ZERO;
    let corners = [
        (zero, zero, front),
        (across, zero, right),
        (across, deep, front),
        (zero, deep, right),
    ];
    let rim = corners
        .into_iter()
        .map(|(x, y, is)| SketchEdge {
            x,
            y,
            is,
            pitch: None,
            overhang: None,
            slope: None,
        })
        .collect();
    Ok(Drawn::Outlines {
        bodies: vec![Body {
            rings: vec![rim],
            of: typed.choice("of").unwrap_or(OutlineOf::Walls),
            pitch: pitch(typed, "pitch")?,
            overhang: overhang(typed)?,
            raised: zero,
            above_roof: None,
        }],
    })
}

/// Sides in order, one a line: `40 ft L`, `12' 6" R gable`, `28 ft L45 8/12`.
fn sides(typed: &Typed<'_>) -> Result<Drawn, ActError> {
    let legs = typed
        .text("sides")
        .lines()
        .filter(|line| !line.trim().is_empty())
        .map(leg)
        .collect::<Result<Vec<_>, _>>()?;
    Ok(Drawn::Legs {
        legs,
        of: typed.choice("of").unwrap_or(OutlineOf::Walls),
        pitch: pitch(typed, "pitch")?,
        overhang: overhang(typed)?,
        standing: Vec::new(),
    })
}

fn leg(line: &str) -> Result<Leg, ActError> {
    let words: Vec<&str> = line.split_whitespace().collect();
    let turned = words
        .iter()
        .position(|word| turn(word).is_some())
        .ok_or_else(|| wrong("sides", "wrong-side"))?;
    let (measured, rest) = words.split_at(turned);
    let mut leg = Leg {
        length: length_of(&measured.join(" "), "sides")?,
        turn: turn(rest[0]).unwrap_or(90.0),
        is: EdgeIs::Hip,
        pitch: None,
        overhang: None,
        slope: None,
    };
    for word in &rest[1..] {
        match word.to_lowercase().as_str() {
            "gable" | "hastial" => leg.is = EdgeIs::Gable,
            "wall" | "pared" => leg.is = EdgeIs::Wall,
            "hip" | "eave" | "alero" => leg.is = EdgeIs::Hip,
            pitch => leg.pitch = Some(pitch_of(pitch, "sides")?),
        }
    }
    Ok(leg)
}

/// `L` and `R` are square turns, to the left and to the right (`I` and `D` in Spanish); a number behind them is the turn in degrees.
fn turn(word: &str) -> Option<f64> {
    let first = word.chars().next()?;
    let way = match first.to_ascii_uppercase() {
        'L' | 'I' => 1.0,
        'R' | 'D' => -1.0,
        _ => return None,
    };
    match &word[first.len_utf8()..] {
        "" => Some(way * 90.0),
        degrees => degrees
            .parse::<f64>()
            .ok()
            .filter(|degrees| (0.0..180.0).contains(degrees))
            .map(|degrees| way * degrees),
    }
}

fn file(typed: &Typed<'_>) -> Result<Drawn, ActError> {
    let pitch = match typed.text("pitch") {
        "" => None,
        text => Some(pitch_of(text, "pitch")?),
    };
    let drawn = measure::read(typed.text("file"), pitch, overhang(typed)?)?;
    let street = typed.choice("street").unwrap_or(Street::South);
    Ok(measure::turned(drawn, street))
}

fn with_plane(book: &Book, structure: StructureId, plane: TypedPlane) -> Result<Drawn, ActError> {
    let history = measure::of_structure(book, structure)?;
    let mut planes = match history.sketch_of(structure).map(|sketch| &sketch.drawn) {
        Some(Drawn::Planes { planes }) => planes.clone(),
        _ => Vec::new(),
    };
    planes.push(plane);
    Ok(Drawn::Planes { planes })
}

fn plane(typed: &Typed<'_>) -> Result<TypedPlane, ActError> {
    let high = match typed.text("high") {
        "" => Length::ZERO,
        text => length_of(text, "high")?,
    };
    let side = |field| typed.choice(field).unwrap_or(SideEdge::Rake);
    Ok(TypedPlane {
        side: typed.choice("side").unwrap_or(Side::Front),
        slope: None,
        pitch: pitch(typed, "pitch")?,
        eave: length(typed, "eave")?,
        high,
        up: length(typed, "up")?,
        high_is: typed.choice("high-is").unwrap_or(HighEdge::Ridge),
        sides: (side("left"), side("right")),
    })
}

fn edge(typed: &Typed<'_>) -> Result<EdgeTold, ActError> {
    let pitch = match typed.text("pitch") {
        "" => None,
        text => Some(pitch_of(text, "pitch")?),
    };
    let overhang = match typed.text("overhang") {
        "" => None,
        text => Some(length_of(text, "overhang")?),
    };
    Ok(EdgeTold {
        is: typed.choice("is"),
        pitch,
        overhang,
    })
}

fn place_part(book: &mut Book, typed: &Typed<'_>, moment: Moment) -> Result<(), ActError> {
    let part = typed
        .text("part")
        .parse()
        .map_err(|_| wrong("part", "wrong-no-part"))?;
    let at = OnPlan {
        x: length(typed, "x")?,
        y: length(typed, "y")?,
    };
    measure::place(book, part, Some(at), moment)
}

fn slope(typed: &Typed<'_>) -> Result<SlopeId, ActError> {
    typed
        .text("slope")
        .parse()
        .map_err(|_| wrong("slope", "wrong-no-slope"))
}

fn a_dormer(typed: &Typed<'_>) -> Result<Dormer, ActError> {
    let deep = match typed.text("deep") {
        "" => None,
        text => Some(length_of(text, "deep")?),
    };
    Ok(Dormer {
        faces: typed.choice("faces").unwrap_or(Side::Front),
        shape: typed.choice("shape").unwrap_or_default(),
        x: length(typed, "x")?,
        y: length(typed, "y")?,
        wide: length(typed, "wide")?,
        deep,
        above: length(typed, "above")?,
        pitch: pitch(typed, "pitch")?,
        overhang: overhang(typed)?,
    })
}

fn shows(typed: &Typed<'_>) -> Result<Shows, ActError> {
    let within = match typed.text("within") {
        "" => Length::feet(2),
        text => length_of(text, "within")?,
    };
    Ok(Shows {
        x: length(typed, "x")?,
        y: length(typed, "y")?,
        within,
        when: typed.choice("when"),
        wind_from: typed.text("wind").parse().ok(),
    })
}
