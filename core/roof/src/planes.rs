//! From the skeleton of each outline to the roof's planes and lines.

mod lettering;
pub(crate) mod lines;
pub(crate) mod rims;

pub(crate) use lines::line;

use crate::error::{EdgeAt, ShapeError};
use crate::outline::{GRID, Outline, Ready};
use crate::skeleton::{Edge, FARTHEST, NeverCloses, Skeleton, skeleton};
use trade::roof::{Corner, Plane, RoofLine, WallOnRoof};
use trade::sketch::EdgeIs;
use trade::units::{Area, Length};

/// Planes, lines and outlines of a roof before they are lettered.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Raised {
    pub(crate) planes: Vec<Plane>,
    pub(crate) lines: Vec<RoofLine>,
    pub(crate) outlines: Vec<Vec<Vec<Corner>>>,
    pub(crate) walls: Vec<WallOnRoof>,
}

impl Raised {
    /// Puts in what another outline gave.
    pub(crate) fn join(&mut self, other: Self) {
        let before = self.planes.len();
        self.planes.extend(other.planes);
        self.outlines.extend(other.outlines);
        self.walls.extend(other.walls);
        self.lines.extend(other.lines.into_iter().map(|mut line| {
            for plane in &mut line.planes {
                *plane += before;
            }
            line
        }));
    }

    /// Sorts and letters the planes: from the street side on as one walks round.
    pub(crate) fn lettered(mut self) -> Self {
        lettering::letter(&mut self);
        self
    }

    /// The same with nothing below the lowest eave.
    pub(crate) fn settled(self) -> Self {
        let lowest = self.heights().fold(f64::INFINITY, f64::min);
        self.lifted(if lowest.is_finite() { -lowest } else { 0.0 })
    }

    /// The same so many metres higher.
    pub(crate) fn lifted(mut self, by: f64) -> Self {
        self.each_corner(|corner| corner.z += by);
        self
    }

    fn heights(&self) -> impl Iterator<Item = f64> {
        self.planes
            .iter()
            .flat_map(|plane| &plane.corners)
            .map(|corner| corner.z)
    }

    fn each_corner(&mut self, mut change: impl FnMut(&mut Corner)) {
        for plane in &mut self.planes {
            plane.corners.iter_mut().for_each(&mut change);
            plane.holes.iter_mut().flatten().for_each(&mut change);
        }
        for line in &mut self.lines {
            change(&mut line.from);
            change(&mut line.to);
        }
        for wall in &mut self.walls {
            change(&mut wall.from);
            change(&mut wall.to);
        }
        self.outlines
            .iter_mut()
            .flatten()
            .flatten()
            .for_each(change);
    }

    /// From the lowest eave to the highest ridge.
    pub(crate) fn height(&self) -> Length {
        Length::from_metres(self.heights().fold(0.0, f64::max))
    }
}

/// An outline with its skeleton, and the way from the skeleton's units to metres.
pub(crate) struct Standing<'a> {
    outline: &'a Outline,
    skeleton: Skeleton,
    /// Metres of height for one unit of the skeleton's.
    rise: f64,
}

/// The planes over one outline.
///
/// # Errors
/// Where the roof never closes.
pub(crate) fn raise(outline: &Outline) -> Result<Raised, ShapeError> {
    let gentlest = gentlest(outline);
    let rings = edges(outline, gentlest)?;
    let skeleton = skeleton(&rings).map_err(|never| never_closes(outline, &never))?;
    let standing = Standing {
        outline,
        skeleton,
        rise: to_metres(1.0) * gentlest / 12.0,
    };
    let rims = rims::of(&standing);
    let planes = rims.iter().map(|rim| standing.plane(rim)).collect();
    Ok(Raised {
        planes,
        lines: lines::of(&standing, &rims),
        outlines: vec![standing.outlines()],
        walls: Vec::new(),
    })
}

/// The least rise over twelve that a plane has. The skeleton is built with slopes in units of it: equal pitches are then exactly 1.
fn gentlest(outline: &Outline) -> f64 {
    let least = rising(outline)
        .map(|edge| edge.pitch.in_twelfths())
        .fold(f64::INFINITY, f64::min);
    if least.is_finite() { least } else { 12.0 }
}

fn rising(outline: &Outline) -> impl Iterator<Item = &Ready> {
    outline
        .rings
        .iter()
        .flatten()
        .filter(|edge| edge.is == EdgeIs::Hip)
}

/// The outline's edges as the skeleton takes them.
fn edges(outline: &Outline, gentlest: f64) -> Result<Vec<Vec<Edge>>, ShapeError> {
    let drop = |edge: &Ready| {
        if outline.from_walls {
            grid_steps(edge.overhang) * edge.pitch.in_twelfths() / gentlest
        } else {
            0.0
        }
    };
    let deepest = rising(outline).map(drop).fold(0.0, f64::max);
    let too_large = || ShapeError::TooLarge {
        across: Length::from_metres(to_metres(2.0 * f64::from(1 << 28))),
    };
    let edge = |edge: &Ready| {
        let (x, y) = edge.from;
        let near = x.abs() <= FARTHEST && y.abs() <= FARTHEST;
        near.then(|| Edge {
            from: edge.from,
            slope: (edge.is == EdgeIs::Hip).then(|| edge.pitch.in_twelfths() / gentlest),
            base: deepest - drop(edge),
        })
        .ok_or_else(too_large)
    };
    outline
        .rings
        .iter()
        .map(|ring| ring.iter().map(edge).collect())
        .collect()
}

#[allow(clippy::cast_precision_loss)]
fn grid_steps(length: Length) -> f64 {
    length.nanometres() as f64 / GRID as f64
}

#[allow(clippy::cast_precision_loss)]
fn to_metres(steps: f64) -> f64 {
    steps * (GRID as f64 * 1e-9)
}

fn never_closes(outline: &Outline, NeverCloses(edges): &NeverCloses) -> ShapeError {
    let mut sources: Vec<EdgeAt> = edges
        .iter()
        .map(|&(ring, edge)| outline.rings[ring][edge].source)
        .collect();
    sources.sort_unstable();
    sources.dedup();
    ShapeError::NeverCloses(sources)
}

impl Standing<'_> {
    /// A node in metres.
    fn corner(&self, node: usize) -> Corner {
        let [x, y, z] = self.skeleton.nodes[node];
        self.place(x, y, z * self.rise)
    }

    /// A place of the grid in metres, at a height above the outline's lowest eave in metres.
    fn place(&self, x: f64, y: f64, z: f64) -> Corner {
        let (left, front) = self.outline.origin;
        Corner {
            x: left.in_metres() + to_metres(x),
            y: front.in_metres() + to_metres(y),
            z: self.outline.raised.in_metres() + z,
        }
    }

    /// The edges that carry a face.
    fn edges(&self, face: usize) -> impl Iterator<Item = &Ready> {
        self.skeleton.faces[face]
            .edges
            .iter()
            .map(|&(ring, edge)| &self.outline.rings[ring][edge])
    }

    fn plane(&self, rim: &rims::Rim) -> Plane {
        let face = &self.skeleton.faces[rim.face];
        let length = face.normal.0.hypot(face.normal.1);
        let corners: Vec<Corner> = rim.nodes.iter().map(|&node| self.corner(node)).collect();
        let holes: Vec<Vec<Corner>> = rim
            .holes
            .iter()
            .map(|hole| hole.iter().map(|&node| self.corner(node)).collect())
            .collect();
        let pitch = self.edges(rim.face).next().map(|edge| edge.pitch);
        let pitch = pitch.unwrap_or(trade::units::Pitch::rise(0));
        let plan_area =
            Area::square_metres(area(&corners) + holes.iter().map(|hole| area(hole)).sum::<f64>());
        Plane {
            letter: String::new(),
            slope: self.edges(rim.face).find_map(|edge| edge.slope),
            pitch,
            downhill: (-face.normal.0 / length, -face.normal.1 / length),
            corners,
            holes,
            plan_area,
            slope_area: plan_area.scaled(pitch.slope_factor()),
        }
    }

    #[allow(clippy::cast_precision_loss)]
    fn outlines(&self) -> Vec<Vec<Corner>> {
        let ring = |ring: &Vec<Ready>| {
            ring.iter()
                .map(|edge| self.place(edge.from.0 as f64, edge.from.1 as f64, 0.0))
                .collect()
        };
        self.outline.rings.iter().map(ring).collect()
    }
}

/// The area of a ring, positive where it runs anticlockwise.
pub(crate) fn area(ring: &[Corner]) -> f64 {
    let Some(first) = ring.first() else {
        return 0.0;
    };
    let next = ring.iter().cycle().skip(1);
    let doubled: f64 = ring
        .iter()
        .zip(next)
        .map(|(p, q)| (p.x - first.x) * (q.y - first.y) - (q.x - first.x) * (p.y - first.y))
        .sum();
    doubled / 2.0
}
