//! What each line of a roof is.

use super::rims::{self, Rim};
use super::{Standing, to_metres};
use crate::outline::Ready;
use crate::skeleton::{Arc, Side};
use trade::roof::{Corner, LineKind, RoofLine};
use trade::sketch::EdgeIs;
use trade::units::Length;

/// How much a level line may rise, in metres and as a share of its length.
pub(crate) const LEVEL: (f64, f64) = (1e-6, 1e-4);
/// The sine of the angle between lines that are one.
const STRAIGHT: f64 = 1e-7;

/// All lines of a skeleton, pieces of one line in one.
pub(super) fn of(standing: &Standing, rims: &[Rim]) -> Vec<RoofLine> {
    let by_step = rims::by_step(rims);
    let plane = |side: Side, from: usize, to: usize| match side {
        Side::Face(face) => by_step.get(&(face, from, to)).copied(),
        Side::Outside | Side::Upright(_) => None,
    };
    let mut lines = Vec::new();
    for arc in &standing.skeleton.arcs {
        let planes: Vec<usize> = [
            plane(arc.left, arc.from, arc.to),
            plane(arc.right, arc.to, arc.from),
        ]
        .into_iter()
        .flatten()
        .collect();
        if planes.is_empty() {
            continue;
        }
        let (kind, overhang) = standing.kind(arc);
        lines.push(line(
            kind,
            (standing.corner(arc.from), standing.corner(arc.to)),
            planes,
            overhang,
        ));
    }
    joined(lines)
}

/// A line with its lower end first.
pub(crate) fn line(
    kind: LineKind,
    (one, other): (Corner, Corner),
    planes: Vec<usize>,
    overhang: Option<Length>,
) -> RoofLine {
    let (from, to) = if other.z < one.z {
        (other, one)
    } else {
        (one, other)
    };
    RoofLine {
        kind,
        from,
        to,
        length: Length::from_metres(distance(from, to)),
        planes,
        overhang,
    }
}

/// What a line is in which two planes meet, from how each rises towards the line's left.
pub(crate) fn between(left: f64, right: f64, level: bool) -> LineKind {
    // Both planes are in one height on the line. To its left the lower of the two is seen on a hip, the higher in a valley.
    match (level, left < right) {
        (false, true) => LineKind::Hip,
        (false, false) => LineKind::Valley,
        (true, _) if left < 0.0 && right > 0.0 => LineKind::Ridge,
        (true, _) if left > 0.0 && right < 0.0 => LineKind::Valley,
        (true, _) => LineKind::PitchChange,
    }
}

/// Whether a line between two corners is level.
pub(crate) fn is_level(from: Corner, to: Corner) -> bool {
    (to.z - from.z).abs() <= LEVEL.0 + LEVEL.1 * distance(from, to)
}

fn distance(p: Corner, q: Corner) -> f64 {
    ((p.x - q.x).powi(2) + (p.y - q.y).powi(2) + (p.z - q.z).powi(2)).sqrt()
}

impl Standing<'_> {
    /// What an arc is, and how far the roof stands out there.
    fn kind(&self, arc: &Arc) -> (LineKind, Option<Length>) {
        match (arc.left, arc.right) {
            (Side::Face(left), Side::Face(right)) => (self.between(arc, left, right), None),
            (Side::Face(face), Side::Outside) | (Side::Outside, Side::Face(face)) => {
                (LineKind::Eave, self.overhang(face, arc))
            }
            (Side::Face(face), Side::Upright(upright)) => self.at_upright(arc, face, upright, 1.0),
            (Side::Upright(upright), Side::Face(face)) => self.at_upright(arc, face, upright, -1.0),
            _ => (LineKind::Rake, None),
        }
    }

    /// Where two planes meet.
    fn between(&self, arc: &Arc, left: usize, right: usize) -> LineKind {
        between(
            self.beside(arc, left),
            self.beside(arc, right),
            self.is_level(arc),
        )
    }

    /// Where a plane ends at an upright edge. `side` is 1 where the plane lies to the left of the arc, -1 where it lies to the right.
    fn at_upright(
        &self,
        arc: &Arc,
        face: usize,
        upright: usize,
        side: f64,
    ) -> (LineKind, Option<Length>) {
        let falls_away = self.beside(arc, face) * side < 0.0;
        let level = self.is_level(arc);
        if level && !falls_away {
            return (LineKind::Eave, self.overhang(face, arc));
        }
        let inside = self.to_left(arc, self.skeleton.faces[upright].normal) * side > 0.0;
        let edge = self.nearest(upright, arc);
        let against_wall = !inside || edge.is_some_and(|edge| edge.is == EdgeIs::Wall);
        match (against_wall, level) {
            (true, true) => (LineKind::Wall, None),
            (true, false) => (LineKind::Step, None),
            (false, true) => (LineKind::Top, edge.map(|edge| edge.overhang)),
            (false, false) => (LineKind::Rake, edge.map(|edge| edge.overhang)),
        }
    }

    /// How a plane rises to the left of an arc, for a unit of run on plan.
    fn beside(&self, arc: &Arc, face: usize) -> f64 {
        let (a, b) = self.skeleton.faces[face].normal;
        let slope = self
            .edges(face)
            .next()
            .map_or(1.0, |edge| edge.pitch.in_twelfths());
        let length = a.hypot(b);
        self.to_left(arc, (a / length * slope, b / length * slope))
    }

    /// How far a vector points to the left of an arc.
    fn to_left(&self, arc: &Arc, (x, y): (f64, f64)) -> f64 {
        let (from, to) = (self.skeleton.nodes[arc.from], self.skeleton.nodes[arc.to]);
        let (along, across) = (to[0] - from[0], to[1] - from[1]);
        let length = along.hypot(across);
        (-across * x + along * y) / length
    }

    fn is_level(&self, arc: &Arc) -> bool {
        is_level(self.corner(arc.from), self.corner(arc.to))
    }

    fn overhang(&self, face: usize, arc: &Arc) -> Option<Length> {
        self.nearest(face, arc).map(|edge| edge.overhang)
    }

    /// Of the edges that carry a face the one nearest to the middle of an arc; of several as near a wall before a gable, for it takes flashing, and
    /// the one that stands out least.
    fn nearest(&self, face: usize, arc: &Arc) -> Option<&Ready> {
        let (from, to) = (self.skeleton.nodes[arc.from], self.skeleton.nodes[arc.to]);
        let middle = (f64::midpoint(from[0], to[0]), f64::midpoint(from[1], to[1]));
        self.skeleton.faces[face]
            .edges
            .iter()
            .map(|&(ring, edge)| {
                let ring = &self.outline.rings[ring];
                let far = from_edge(middle, ring[edge].from, ring[(edge + 1) % ring.len()].from);
                ((far / LEVEL.0).round(), &ring[edge])
            })
            .min_by(|(one, edge), (other, beside)| {
                let wall_first = |edge: &Ready| (edge.is != EdgeIs::Wall, edge.overhang);
                one.total_cmp(other)
                    .then(wall_first(edge).cmp(&wall_first(beside)))
            })
            .map(|(_, edge)| edge)
    }
}

/// How far a place lies from an edge.
#[allow(clippy::cast_precision_loss)]
fn from_edge(place: (f64, f64), from: (i64, i64), to: (i64, i64)) -> f64 {
    let (x, y) = ((to.0 - from.0) as f64, (to.1 - from.1) as f64);
    let (px, py) = (place.0 - from.0 as f64, place.1 - from.1 as f64);
    let share = ((px * x + py * y) / (x * x + y * y)).clamp(0.0, 1.0);
    to_metres((px - share * x).hypot(py - share * y))
}

/// Pieces of one line put together: of one kind, between the same planes, end to end and straight.
pub(crate) fn joined(mut lines: Vec<RoofLine>) -> Vec<RoofLine> {
    let mut done = Vec::with_capacity(lines.len());
    while let Some(mut one) = lines.pop() {
        while let Some((at, longer)) = lines
            .iter()
            .enumerate()
            .find_map(|(at, other)| Some((at, together(&one, other)?)))
        {
            lines.swap_remove(at);
            one = longer;
        }
        done.push(one);
    }
    done.reverse();
    done
}

fn together(one: &RoofLine, other: &RoofLine) -> Option<RoofLine> {
    let alike = one.kind == other.kind
        && one.overhang == other.overhang
        && same_planes(&one.planes, &other.planes);
    if !alike {
        return None;
    }
    let ends = |line: &RoofLine| [(line.from, line.to), (line.to, line.from)];
    ends(one)
        .into_iter()
        .flat_map(|(far, near)| ends(other).map(|(start, end)| (far, near, start, end)))
        .find(|&(far, near, start, end)| distance(near, start) == 0.0 && straight(far, near, end))
        .map(|(far, _, _, end)| line(one.kind, (far, end), one.planes.clone(), one.overhang))
}

fn same_planes(one: &[usize], other: &[usize]) -> bool {
    one.len() == other.len() && one.iter().all(|plane| other.contains(plane))
}

fn straight(p: Corner, q: Corner, r: Corner) -> bool {
    let whole = distance(p, q) + distance(q, r);
    let (ux, uy, vx, vy) = (q.x - p.x, q.y - p.y, r.x - q.x, r.y - q.y);
    (ux * vy - uy * vx).abs() <= STRAIGHT * whole * whole && ux * vx + uy * vy > 0.0
}
