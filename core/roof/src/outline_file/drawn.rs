//! From an outline file to what was drawn.

use super::{
    Facing, FileBody, FileCorner, FileDormer, FileEdge, FileLeg, FilePlane, FileSide, Measure,
    OutlineFile, ToldSide, Unit,
};
use crate::error::{FileFault, ShapeError, Wanted};
use crate::json::At;
use trade::property::Side;
use trade::sketch::{Body, Drawn, EdgeIs, Leg, OutlineOf, SketchEdge, TypedPlane};
use trade::units::{Length, Pitch};

/// What a file says was drawn, with the pitch and overhang that hold where it says none.
pub(super) fn drawn(
    file: &OutlineFile,
    at: &At,
    (pitch, overhang): (Option<Pitch>, Length),
) -> Result<Drawn, ShapeError> {
    if file.outline.is_none() && (file.holes.is_some() || file.edges.is_some()) {
        return Err(at.fault(FileFault::Missing("outline".to_owned())));
    }
    let reader = Reader {
        at,
        unit: file.unit,
        pitch: file.pitch.or(pitch),
        overhang: measured(file.overhang.as_ref(), file.unit).unwrap_or(overhang),
        of: file.of.unwrap_or_default(),
    };
    let mut drawn = match (
        &file.outline,
        &file.rings,
        &file.bodies,
        &file.legs,
        &file.planes,
    ) {
        (Some(outline), None, None, None, None) => {
            let sides = file.edges.as_deref();
            reader.one(reader.cornered(at, outline, sides, file.holes.iter().flatten())?)
        }
        (None, Some(rings), None, None, None) => reader.one(reader.rings(rings)),
        (None, None, Some(bodies), None, None) => reader.bodies(bodies),
        (None, None, None, Some(legs), None) => reader.legs(legs),
        (None, None, None, None, Some(planes)) => reader.planes(planes),
        _ => Err(at.fault(FileFault::OneOf)),
    }?;
    let dormers = reader.dormers(file.dormers.as_deref().unwrap_or_default())?;
    match &mut drawn {
        Drawn::Outlines { bodies } => bodies.extend(dormers),
        Drawn::Legs { standing, .. } => standing.extend(dormers),
        Drawn::Planes { .. } if dormers.is_empty() => {}
        Drawn::Planes { .. } => return Err(at.needed("dormers")?.fault(FileFault::NoOutline)),
    }
    Ok(drawn)
}

fn measured(measure: Option<&Measure>, unit: Unit) -> Option<Length> {
    measure.map(|measure| match measure {
        Measure::Number(number) => unit.length(*number),
        Measure::Written(length) => *length,
    })
}

/// What holds for all of a file.
struct Reader<'a> {
    at: &'a At<'a>,
    unit: Unit,
    pitch: Option<Pitch>,
    overhang: Length,
    of: OutlineOf,
}

impl Reader<'_> {
    fn one(&self, rings: Vec<Vec<SketchEdge>>) -> Result<Drawn, ShapeError> {
        let body = Body {
            of: self.of,
            pitch: self.pitch_for(&rings)?,
            overhang: self.overhang,
            raised: Length::ZERO,
            above_roof: None,
            rings,
        };
        Ok(Drawn::Outlines { bodies: vec![body] })
    }

    fn bodies(&self, bodies: &[FileBody]) -> Result<Drawn, ShapeError> {
        let bodies = bodies
            .iter()
            .map(|body| self.body(body))
            .collect::<Result<_, _>>()?;
        Ok(Drawn::Outlines { bodies })
    }

    fn body(&self, body: &FileBody) -> Result<Body, ShapeError> {
        let rings = self.rings(&body.rings);
        Ok(Body {
            of: body.of.unwrap_or(self.of),
            pitch: body.pitch.map_or_else(|| self.pitch_for(&rings), Ok)?,
            overhang: self.length_or(body.overhang.as_ref(), self.overhang),
            raised: self.length_or(body.raised.as_ref(), Length::ZERO),
            above_roof: measured(body.above_roof.as_ref(), self.unit),
            rings,
        })
    }

    fn dormers(&self, dormers: &[FileDormer]) -> Result<Vec<Body>, ShapeError> {
        if dormers.is_empty() {
            return Ok(Vec::new());
        }
        let places = self.at.needed("dormers")?.items()?;
        dormers
            .iter()
            .zip(&places)
            .map(|(dormer, at)| self.dormer(dormer, at))
            .collect()
    }

    fn dormer(&self, dormer: &FileDormer, at: &At) -> Result<Body, ShapeError> {
        let rings = self.cornered(
            at,
            &dormer.outline,
            dormer.edges.as_deref(),
            std::iter::empty(),
        )?;
        Ok(Body {
            of: dormer.of.unwrap_or(self.of),
            pitch: dormer.pitch.map_or_else(|| self.pitch_for(&rings), Ok)?,
            overhang: self.length_or(dormer.overhang.as_ref(), self.overhang),
            raised: Length::ZERO,
            above_roof: Some(self.length(&dormer.above_roof)),
            rings,
        })
    }

    fn legs(&self, legs: &[FileLeg]) -> Result<Drawn, ShapeError> {
        let own = || {
            all_own(
                legs.iter()
                    .map(|leg| (leg.is.unwrap_or_default(), leg.pitch)),
            )
        };
        Ok(Drawn::Legs {
            legs: legs.iter().map(|leg| self.leg(leg)).collect(),
            of: self.of,
            pitch: self.pitch.or_else(own).ok_or_else(|| self.no_pitch())?,
            overhang: self.overhang,
            standing: Vec::new(),
        })
    }

    fn planes(&self, planes: &[FilePlane]) -> Result<Drawn, ShapeError> {
        let planes = planes
            .iter()
            .map(|plane| self.plane(plane))
            .collect::<Result<_, _>>()?;
        Ok(Drawn::Planes { planes })
    }

    fn no_pitch(&self) -> ShapeError {
        self.at.fault(FileFault::NoPitch)
    }

    /// The pitch where an edge has none of its own.
    fn pitch_for(&self, rings: &[Vec<SketchEdge>]) -> Result<Pitch, ShapeError> {
        self.pitch
            .or_else(|| all_own(rings.iter().flatten().map(|edge| (edge.is, edge.pitch))))
            .ok_or_else(|| self.no_pitch())
    }

    fn length(&self, measure: &Measure) -> Length {
        self.length_or(Some(measure), Length::ZERO)
    }

    fn length_or(&self, measure: Option<&Measure>, default: Length) -> Length {
        measured(measure, self.unit).unwrap_or(default)
    }

    fn rings(&self, rings: &[Vec<FileEdge>]) -> Vec<Vec<SketchEdge>> {
        rings
            .iter()
            .map(|ring| opened(ring.iter().map(|edge| self.edge(edge)).collect()))
            .collect()
    }

    /// The rings of an outline by its corners: the rim with what is told of its sides, then the holes.
    fn cornered<'c>(
        &self,
        at: &At,
        outline: &[FileCorner],
        sides: Option<&[FileSide]>,
        holes: impl Iterator<Item = &'c Vec<FileCorner>>,
    ) -> Result<Vec<Vec<SketchEdge>>, ShapeError> {
        let ring = |corners: &[FileCorner]| {
            opened(corners.iter().map(|corner| self.corner(corner)).collect())
        };
        let mut rim = ring(outline);
        if let Some(sides) = sides {
            if sides.len() != rim.len() {
                let edges = at.needed("edges")?;
                return Err(edges.fault(FileFault::Wants(Wanted::AsManyAsEdges)));
            }
            for (edge, side) in rim.iter_mut().zip(sides) {
                self.tell(edge, side);
            }
        }
        Ok(std::iter::once(rim)
            .chain(holes.map(|hole| ring(hole)))
            .collect())
    }

    fn corner(&self, FileCorner(x, y): &FileCorner) -> SketchEdge {
        SketchEdge {
            x: self.length(x),
            y: self.length(y),
            is: EdgeIs::default(),
            pitch: None,
            overhang: None,
            slope: None,
        }
    }

    fn tell(&self, edge: &mut SketchEdge, side: &FileSide) {
        match side {
            FileSide::Is(is) => edge.is = *is,
            FileSide::Told(ToldSide {
                is,
                pitch,
                overhang,
            }) => {
                edge.is = is.unwrap_or_default();
                edge.pitch = *pitch;
                edge.overhang = measured(overhang.as_ref(), self.unit);
            }
        }
    }

    fn edge(&self, edge: &FileEdge) -> SketchEdge {
        SketchEdge {
            x: self.length(&edge.x),
            y: self.length(&edge.y),
            is: edge.is.unwrap_or_default(),
            pitch: edge.pitch,
            overhang: measured(edge.overhang.as_ref(), self.unit),
            slope: None,
        }
    }

    fn leg(&self, leg: &FileLeg) -> Leg {
        Leg {
            length: self.length(&leg.length),
            turn: leg.turn,
            is: leg.is.unwrap_or_default(),
            pitch: leg.pitch,
            overhang: measured(leg.overhang.as_ref(), self.unit),
            slope: None,
        }
    }

    fn plane(&self, plane: &FilePlane) -> Result<TypedPlane, ShapeError> {
        Ok(TypedPlane {
            side: match plane.side {
                Facing::Front => Side::Front,
                Facing::Left => Side::Left,
                Facing::Rear => Side::Rear,
                Facing::Right => Side::Right,
            },
            slope: None,
            pitch: plane.pitch.or(self.pitch).ok_or_else(|| self.no_pitch())?,
            eave: self.length(&plane.eave),
            high: self.length(&plane.high),
            up: self.length(&plane.up),
            high_is: plane.high_is.unwrap_or_default(),
            sides: plane.sides.unwrap_or_default(),
        })
    }
}

/// A ring whose last corner, where it repeats the first, is left out.
fn opened(mut ring: Vec<SketchEdge>) -> Vec<SketchEdge> {
    let repeats = match (ring.first(), ring.last()) {
        (Some(first), Some(last)) => (first.x, first.y) == (last.x, last.y),
        _ => false,
    };
    if ring.len() > 1 && repeats {
        ring.pop();
    }
    ring
}

/// A pitch that stands for all, where every side that a plane rises from has its own: then it is never asked for.
fn all_own(sides: impl Iterator<Item = (EdgeIs, Option<Pitch>)>) -> Option<Pitch> {
    let mut rising = sides.filter(|(is, _)| *is == EdgeIs::Hip);
    let (_, first) = rising.next()?;
    first.filter(|_| rising.all(|(_, pitch)| pitch.is_some()))
}
