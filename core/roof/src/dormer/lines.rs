//! The lines of roofs of which one stands on others.

use super::BySteps;
use super::overlay::{Overlay, lies_on};
use super::seen::{Beside, Over, Seen};
use crate::frame::Place;
use crate::planes::lines::{between, is_level, joined};
use crate::planes::rims::{self, Rim};
use crate::planes::{Raised, line};
use trade::roof::{Corner, LineKind, RoofLine};
use trade::units::Length;

/// All lines, pieces of one line in one.
pub(super) fn of(
    overlay: &Overlay,
    seen: &Seen<'_>,
    pieces: &[Rim],
    (below, above): (&Raised, &Raised),
) -> Vec<RoofLine> {
    let moved = above.lines.iter().cloned().map(|mut line| {
        for plane in &mut line.planes {
            *plane += below.planes.len();
        }
        line
    });
    let old: Vec<RoofLine> = below.lines.iter().cloned().chain(moved).collect();
    let told = Telling {
        overlay,
        seen,
        by_steps: rims::by_step(pieces),
        old: &old,
    };
    joined(
        seen.pieces
            .iter()
            .flat_map(|beside| told.lines(beside))
            .collect(),
    )
}

struct Telling<'a> {
    overlay: &'a Overlay,
    seen: &'a Seen<'a>,
    by_steps: BySteps,
    old: &'a [RoofLine],
}

impl Telling<'_> {
    /// The lines that one piece is: more than one where an overhang hangs over a slope's own edge.
    fn lines(&self, beside: &Beside) -> Vec<RoofLine> {
        let mut open: Vec<usize> = differing(&beside.left, &beside.right)
            .chain(differing(&beside.right, &beside.left))
            .collect();
        let mut lines = Vec::new();
        let dying = open.iter().copied().find_map(|upper| {
            let lower = self
                .seen
                .is_upper(upper)
                .then(|| self.seen.dies_into(beside, upper))??;
            (!open
                .iter()
                .any(|other| *other != upper && self.seen.is_upper(*other)))
            .then_some((upper, lower))
        });
        if let Some((upper, lower)) = dying {
            open.retain(|plane| *plane != upper && *plane != lower);
            lines.extend(self.meeting(beside, upper, lower));
        }
        for old in self.old {
            let present: Vec<usize> = old
                .planes
                .iter()
                .copied()
                .filter(|plane| open.contains(plane))
                .collect();
            if !present.is_empty() && self.still_is(old, &present, beside) {
                open.retain(|plane| !present.contains(plane));
                // Under an overhang a plane goes on past a line that bounds it elsewhere.
                let there = |plane: &usize| {
                    [&beside.left, &beside.right]
                        .iter()
                        .any(|over| over.laid.contains(plane))
                };
                let planes: Vec<usize> = old.planes.iter().copied().filter(there).collect();
                lines.extend(self.line(beside, old.kind, &planes, old.overhang));
            }
        }
        let feet = open.iter().filter(|plane| !self.seen.is_upper(**plane));
        lines.extend(feet.filter_map(|&lower| {
            let (from, to) = self.ends(beside, lower);
            let kind = if is_level(from, to) {
                LineKind::Wall
            } else {
                LineKind::Step
            };
            self.line(beside, kind, &[lower], None)
        }));
        lines
    }

    /// Whether a piece is still what it was as part of an old line: not where a wall stands on it that hides one side.
    fn still_is(&self, old: &RoofLine, present: &[usize], beside: &Beside) -> bool {
        let place = |corner: Corner| -> Place { (corner.x, corner.y) };
        let hidden = beside.left.inside != beside.right.inside
            && present.len() < old.planes.len()
            && present.iter().all(|plane| !self.seen.is_upper(*plane));
        !hidden && lies_on((place(old.from), place(old.to)), beside.middle)
    }

    /// The line in which a plane dies into one below.
    fn meeting(&self, beside: &Beside, upper: usize, lower: usize) -> Option<RoofLine> {
        let (from, to) = self.ends(beside, upper);
        let (way_x, way_y) = (to.x - from.x, to.y - from.y);
        let length = way_x.hypot(way_y);
        let towards_left = |plane: usize| {
            let (x, y) = self.seen.surface(plane).rises;
            (-way_y * x + way_x * y) / length
        };
        let (left, right) = if beside.left.laid.contains(&upper) {
            (upper, lower)
        } else {
            (lower, upper)
        };
        let level = is_level(from, to);
        let kind = between(towards_left(left), towards_left(right), level);
        self.line(beside, kind, &[upper, lower], None)
    }

    fn ends(&self, beside: &Beside, plane: usize) -> (Corner, Corner) {
        let surface = self.seen.surface(plane);
        let corner = |node: usize| {
            let (x, y) = self.overlay.nodes[node];
            let z = surface.height((x, y));
            Corner { x, y, z }
        };
        (corner(beside.ends.0), corner(beside.ends.1))
    }

    fn line(
        &self,
        beside: &Beside,
        kind: LineKind,
        planes: &[usize],
        overhang: Option<Length>,
    ) -> Option<RoofLine> {
        let ends = self.ends(beside, *planes.first()?);
        let mut pieces: Vec<usize> = planes
            .iter()
            .filter_map(|&plane| self.piece(beside, plane))
            .collect();
        pieces.sort_unstable();
        (!pieces.is_empty()).then(|| line(kind, ends, pieces, overhang))
    }

    /// The piece of a plane that ends on a piece of line; where the plane goes on under an overhang, any piece of it that ends on this line elsewhere.
    fn piece(&self, beside: &Beside, plane: usize) -> Option<usize> {
        let (from, to) = beside.ends;
        let at_line = [(plane, from, to), (plane, to, from)]
            .into_iter()
            .find_map(|step| self.by_steps.get(&step).copied());
        at_line.or_else(|| {
            let mut of_plane = self.by_steps.iter().filter(|((of, ..), _)| *of == plane);
            let touching = of_plane
                .clone()
                .find(|((_, a, b), _)| [*a, *b].iter().any(|node| *node == from || *node == to));
            touching
                .or_else(|| of_plane.next())
                .map(|(_, piece)| *piece)
        })
    }
}

/// The planes to be covered on one side that are not on the other.
fn differing<'a>(one: &'a Over, other: &'a Over) -> impl Iterator<Item = usize> + 'a {
    one.laid
        .iter()
        .copied()
        .filter(|plane| !other.laid.contains(plane))
}
