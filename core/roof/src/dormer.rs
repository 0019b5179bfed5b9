//! A body that stands on the roofs of others, as a dormer does: a roof of its own over walls that come up out of the slopes below.
//!
//! Its planes are seen where they lie above the slopes, and end in them along valleys or, where both run one way, along a change of pitch. Under its
//! walls nothing of the slopes is left to be covered; under its overhangs they go on to the foot of the walls. Where a wall stands on a slope, the
//! slope ends against it: level at the face, sloping along a cheek.
//!
//! All lines that may matter (the rims of both roofs, the walls, the lines in which planes of the two meet) are laid over each other and cut where they
//! cross ([`overlay`]). What lies on each side of a piece is then asked of a place beside its middle ([`seen`]); from the pieces with something
//! else on either side the planes are put together again, and their lines told.

mod lines;
mod overlay;
mod seen;
mod surface;
mod top;
mod walls;

use crate::error::ShapeError;
use crate::frame::Place;
use crate::loops;
use crate::outline::{GRID, Outline};
use crate::planes::rims::{self, Rim};
use crate::planes::{self, Raised, area};
use overlay::Overlay;
use seen::Seen;
use std::collections::BTreeMap;
use surface::Surface;
use trade::roof::{Corner, Plane};
use trade::units::{Area, Length};

pub use top::back_to_the_top;

/// How far two heights may be apart, in metres, that meet.
const TOUCHES: f64 = 1e-5;
/// Less than this of a plane, in square metres, is rounding.
const NOTHING: f64 = 1e-6;

/// The roofs below with a body that stands on them. `above` is how high its lowest eave lies over the slope at the lowest place of its walls.
///
/// # Errors
/// Where none of its walls stands on the roofs below, nothing of it is seen, or its planes do not close.
pub(crate) fn stand(
    below: Raised,
    outline: &Outline,
    above: Length,
    number: usize,
) -> Result<Raised, ShapeError> {
    let walls = in_metres(outline);
    let lower: Vec<Surface> = below.planes.iter().map(Surface::of).collect();
    let foot = walls::foot(&walls, &lower).ok_or(ShapeError::NotOnRoof(number))?;
    let dormer = planes::raise(outline)?.lifted(foot + above.in_metres());
    let upper: Vec<Surface> = dormer.planes.iter().map(Surface::of).collect();
    let overlay = Overlay::of(&overlay::segments(&lower, &upper, &walls));
    let seen = Seen::new(&overlay, &lower, &upper, &walls);
    let old: Vec<&Plane> = below.planes.iter().chain(&dormer.planes).collect();
    let (pieces, made) = pieces(&overlay, &seen, &old);
    let is_seen = pieces.iter().any(|piece| piece.face >= lower.len());
    if !is_seen {
        return Err(ShapeError::Buried(number));
    }
    let lines = lines::of(&overlay, &seen, &pieces, (&below, &dormer));
    let mut standing = walls::standing(&walls, &overlay, &seen);
    standing.splice(0..0, below.walls);
    let outlines = below.outlines.into_iter().chain(dormer.outlines).collect();
    Ok(Raised {
        planes: made,
        lines,
        outlines,
        walls: standing,
    })
}

/// The faces of the walls on plan.
#[allow(
    clippy::cast_precision_loss,
    reason = "no coordinate of the grid is as great as that"
)]
fn in_metres(outline: &Outline) -> Vec<Vec<Place>> {
    let (left, front) = outline.origin;
    let step = GRID as f64 * 1e-9;
    outline
        .walls
        .iter()
        .map(|ring| {
            let place = |&(x, y): &(i64, i64)| {
                (
                    left.in_metres() + x as f64 * step,
                    front.in_metres() + y as f64 * step,
                )
            };
            ring.iter().map(place).collect()
        })
        .collect()
}

/// What is left of each plane: its rims, whose face is its old number, and the planes themselves.
fn pieces(overlay: &Overlay, seen: &Seen<'_>, old: &[&Plane]) -> (Vec<Rim>, Vec<Plane>) {
    let mut pieces = Vec::new();
    let mut made = Vec::new();
    for (number, plane) in old.iter().enumerate() {
        let surface = seen.surface(number);
        let nodes: Vec<[f64; 3]> = overlay
            .nodes
            .iter()
            .map(|&(x, y)| [x, y, surface.height((x, y))])
            .collect();
        let loops = loops::closed(&nodes, seen.round(number));
        let uphill = (-plane.downhill.0, -plane.downhill.1);
        for rim in rims::pieces(&nodes, &loops, uphill, TOUCHES) {
            let piece = piece_of(plane, &nodes, &rim);
            if piece.plan_area.in_square_metres() > NOTHING {
                pieces.push(Rim {
                    face: number,
                    ..rim
                });
                made.push(piece);
            }
        }
    }
    (pieces, made)
}

fn piece_of(plane: &Plane, nodes: &[[f64; 3]], rim: &Rim) -> Plane {
    let corner = |&node: &usize| {
        let [x, y, z] = nodes[node];
        Corner { x, y, z }
    };
    let corners: Vec<Corner> = rim.nodes.iter().map(corner).collect();
    let holes: Vec<Vec<Corner>> = rim
        .holes
        .iter()
        .map(|hole| hole.iter().map(corner).collect())
        .collect();
    let on_plan = area(&corners) + holes.iter().map(|hole| area(hole)).sum::<f64>();
    let plan_area = Area::square_metres(on_plan);
    Plane {
        slope_area: plan_area.scaled(plane.pitch.slope_factor()),
        plan_area,
        corners,
        holes,
        ..plane.clone()
    }
}

/// The pieces by the steps of their rims.
type BySteps = BTreeMap<(usize, usize, usize), usize>;
