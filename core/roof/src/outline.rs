//! An outline made ready for its planes: set on a grid, checked, turned the right way round, its overhangs added.

mod check;
mod overhang;

use crate::error::{At, EdgeAt, RingAt, ShapeError};
use crate::skeleton::Grid;
use check::Fault;
use trade::ids::SlopeId;
use trade::sketch::{Body, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Length, Pitch};

/// The grid's unit in nanometres: the greatest of which both 1/64 in and 0.1 mm are whole multiples.
pub(crate) const GRID: i64 = 3_125;
/// The longest side of the box round an outline, in metres. No house reaches it; degrees read as metres, or millimetres as metres, do.
const LARGEST: f64 = 1000.0;
/// The shortest. Degrees read as metres fall below it.
const SMALLEST: f64 = 0.5;
/// The widest overhang.
const WIDEST: Length = Length::feet(20);

/// One edge made ready.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Ready {
    /// Where it begins, in units of the grid from [`Outline::origin`].
    pub(crate) from: Grid,
    /// What stands at it.
    pub(crate) is: EdgeIs,
    /// The pitch of the plane that rises from it.
    pub(crate) pitch: Pitch,
    /// How far it stands out beyond the wall.
    pub(crate) overhang: Length,
    /// The slope of the walk.
    pub(crate) slope: Option<SlopeId>,
    /// Which edge of the sketch it is.
    pub(crate) source: EdgeAt,
}

/// A body made ready: its rim first, anticlockwise, then its holes, clockwise.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Outline {
    /// The grid's origin on plan.
    pub(crate) origin: (Length, Length),
    /// Its rings.
    pub(crate) rings: Vec<Vec<Ready>>,
    /// Whether its planes pass through the wall's line, so that eaves lie lower where they stand out farther or are steeper.
    pub(crate) from_walls: bool,
    /// How high its lowest eave stands above that of the lowest body.
    pub(crate) raised: Length,
    /// The outer faces of its walls, ring by ring, where it stands on a roof.
    pub(crate) walls: Vec<Vec<Grid>>,
}

/// A body made ready.
///
/// # Errors
/// Where its outline is none; says where.
pub(crate) fn ready(number: usize, body: &Body) -> Result<Outline, ShapeError> {
    if body.rings.is_empty() {
        return Err(ShapeError::Nothing);
    }
    let origin = origin(body)?;
    let rings: Vec<Vec<Ready>> = body
        .rings
        .iter()
        .enumerate()
        .map(|(ring, edges)| {
            let of = RingAt { body: number, ring };
            (0..edges.len())
                .map(|edge| ready_edge(body, &edges[edge], EdgeAt { of, edge }, origin))
                .collect()
        })
        .collect::<Result<_, _>>()?;
    if let Some(fault) = check::fault(&corners(&rings)) {
        return Err(error(fault, &rings, origin, number));
    }
    let mut outline = Outline {
        origin,
        rings,
        from_walls: body.of == OutlineOf::Walls,
        raised: body.raised,
        walls: Vec::new(),
    };
    outline.turn();
    if body.above_roof.is_some() {
        outline.walls = outline.faces_of_walls(number)?;
    }
    if outline.from_walls {
        outline.rings = outline.moved(number, |edge| edge.overhang)?;
    }
    Ok(outline)
}

fn ready_edge(
    body: &Body,
    edge: &SketchEdge,
    source: EdgeAt,
    origin: (Length, Length),
) -> Result<Ready, ShapeError> {
    let pitch = edge.pitch.unwrap_or(body.pitch);
    if edge.is == EdgeIs::Hip && pitch.in_twelfths() <= 0.0 {
        return Err(ShapeError::Flat { edge: source });
    }
    let overhang = match edge.is {
        EdgeIs::Wall => Length::ZERO,
        EdgeIs::Hip | EdgeIs::Gable => edge.overhang.unwrap_or(body.overhang),
    };
    if overhang < Length::ZERO || overhang > WIDEST {
        return Err(ShapeError::Overhang { edge: source });
    }
    Ok(Ready {
        from: (to_grid(edge.x, origin.0), to_grid(edge.y, origin.1)),
        is: edge.is,
        pitch,
        overhang,
        slope: edge.slope,
        source,
    })
}

/// The middle of the box round a body, on the grid of its first corner.
fn origin(body: &Body) -> Result<(Length, Length), ShapeError> {
    let all = || body.rings.iter().flatten();
    let first = all().next().ok_or(ShapeError::TooFewCorners {
        ring: RingAt::default(),
        corners: 0,
    })?;
    let middle = |of: fn(&SketchEdge) -> Length, first: Length| {
        let (least, most) = all().map(of).fold((first, first), |(least, most), value| {
            (least.min(value), most.max(value))
        });
        let (least, most) = (least.nanometres(), most.nanometres());
        let steps = (i64::midpoint(least, most) - first.nanometres()) / GRID;
        (most - least, first.nanometres() + steps * GRID)
    };
    let (width, x) = middle(|edge| edge.x, first.x);
    let (depth, y) = middle(|edge| edge.y, first.y);
    let across = Length::of_nanometres(width.max(depth));
    if across.in_metres() > LARGEST {
        return Err(ShapeError::TooLarge { across });
    }
    if across.in_metres() < SMALLEST && all().count() > 2 && across > Length::ZERO {
        return Err(ShapeError::TooSmall { across });
    }
    Ok((Length::of_nanometres(x), Length::of_nanometres(y)))
}

fn to_grid(value: Length, origin: Length) -> i64 {
    let from = value.nanometres() - origin.nanometres();
    (2 * from + GRID).div_euclid(2 * GRID)
}

fn corners(rings: &[Vec<Ready>]) -> Vec<Vec<Grid>> {
    rings
        .iter()
        .map(|ring| ring.iter().map(|edge| edge.from).collect())
        .collect()
}

impl Outline {
    /// The rim anticlockwise, the holes clockwise.
    fn turn(&mut self) {
        for (number, ring) in self.rings.iter_mut().enumerate() {
            let corners: Vec<Grid> = ring.iter().map(|edge| edge.from).collect();
            if (check::doubled_area(&corners) > 0) != (number == 0) {
                reverse(ring);
            }
        }
    }

    /// The outer faces of its walls.
    fn faces_of_walls(&self, number: usize) -> Result<Vec<Vec<Grid>>, ShapeError> {
        if self.from_walls {
            return Ok(corners(&self.rings));
        }
        let inward = |edge: &Ready| edge.overhang.scaled(-1.0);
        Ok(corners(&self.moved(number, inward)?))
    }

    /// Its rings with each edge moved out.
    fn moved(
        &self,
        number: usize,
        by: impl Fn(&Ready) -> Length,
    ) -> Result<Vec<Vec<Ready>>, ShapeError> {
        let within = corners(&self.rings);
        let rings: Vec<Vec<Ready>> = self
            .rings
            .iter()
            .map(|ring| overhang::added(ring, &by))
            .collect();
        let moved = corners(&rings);
        let turned = moved.iter().zip(&within).any(|(moved, within)| {
            (check::doubled_area(moved) > 0) != (check::doubled_area(within) > 0)
        });
        match check::fault(&moved) {
            None if !turned => Ok(rings),
            fault => Err(self.overhangs_meet(&rings, fault, number)),
        }
    }

    fn overhangs_meet(
        &self,
        rings: &[Vec<Ready>],
        fault: Option<Fault>,
        number: usize,
    ) -> ShapeError {
        let (one, other) = match fault {
            Some(Fault::Crossing(one, other) | Fault::Same(one, other)) => (one, other),
            Some(Fault::NoLength(edge) | Fault::Spike(edge)) => (edge, edge),
            Some(Fault::TooFew(ring) | Fault::Outside(ring) | Fault::InHole(ring, _)) => {
                ((ring, 0), (ring, 0))
            }
            None => ((0, 0), (0, 0)),
        };
        let source = |(ring, edge): check::Edge| rings[ring][edge].source;
        let at = match error(Fault::Crossing(one, other), rings, self.origin, number) {
            ShapeError::Crossing { at, .. } => at,
            _ => At::of(self.origin.0, self.origin.1),
        };
        ShapeError::OverhangsMeet {
            one: source(one),
            other: source(other),
            at,
        }
    }
}

/// The same ring the other way round: each edge keeps what stands at it, and begins where it ended.
fn reverse(ring: &mut [Ready]) {
    let ends: Vec<Grid> = (0..ring.len())
        .map(|at| ring[(at + 1) % ring.len()].from)
        .collect();
    for (edge, end) in ring.iter_mut().zip(ends) {
        edge.from = end;
    }
    ring.reverse();
}

/// A fault of the rings as the reader is told it.
#[allow(clippy::cast_precision_loss)]
fn error(fault: Fault, rings: &[Vec<Ready>], origin: (Length, Length), body: usize) -> ShapeError {
    let ring = |ring: usize| RingAt { body, ring };
    let edge = |(number, edge): check::Edge| EdgeAt {
        of: ring(number),
        edge,
    };
    let place = |(x, y): (f64, f64)| {
        let away = |steps: f64, from: Length| {
            Length::from_metres(steps * GRID as f64 * 1e-9)
                .plus(from)
                .unwrap_or(from)
        };
        At::of(away(x, origin.0), away(y, origin.1))
    };
    let corner = |(number, edge): check::Edge| {
        let (x, y) = rings[number][edge].from;
        place((x as f64, y as f64))
    };
    let ends = |(number, edge): check::Edge| {
        let ring = &rings[number];
        (ring[edge].from, ring[(edge + 1) % ring.len()].from)
    };
    match fault {
        Fault::TooFew(number) => ShapeError::TooFewCorners {
            ring: ring(number),
            corners: rings[number].len(),
        },
        Fault::NoLength(at) => ShapeError::NoLength {
            edge: edge(at),
            at: corner(at),
        },
        Fault::Spike(at) => ShapeError::Spike {
            edge: edge(at),
            at: corner(at),
        },
        Fault::Same(one, other) => ShapeError::SameCorner {
            one: edge(one),
            other: edge(other),
            at: corner(one),
        },
        Fault::Crossing(one, other) => ShapeError::Crossing {
            one: edge(one),
            other: edge(other),
            at: place(check::meeting(ends(one), ends(other))),
        },
        Fault::Outside(hole) => ShapeError::HoleOutside {
            hole: ring(hole),
            at: corner((hole, 0)),
        },
        Fault::InHole(hole, within) => ShapeError::HoleInHole {
            hole: ring(hole),
            within: ring(within),
            at: corner((hole, 0)),
        },
    }
}
