//! The walls that stand on a slope.

use super::overlay::{Overlay, crossing, lies_on};
use super::seen::Seen;
use super::surface::{Surface, edges};
use super::{NOTHING, TOUCHES};
use crate::frame::Place;
use trade::roof::{Corner, WallOnRoof};
use trade::units::Area;

/// A wall counts as over a slope within a millimetre of its edge.
const NEAR: f64 = 1e-3;

/// The lowest height of the slopes below along the walls; `None` where none of them stands on a slope.
pub(super) fn foot(walls: &[Vec<Place>], lower: &[Surface]) -> Option<f64> {
    let corners = walls.iter().flatten().copied();
    let crossings = edges(walls).flat_map(|wall| {
        let rims = lower.iter().flat_map(Surface::edges);
        rims.filter_map(move |rim| crossing(wall, rim))
    });
    corners
        .chain(crossings)
        .filter_map(|place| ground(lower, place))
        .min_by(f64::total_cmp)
}

/// How high the highest slope lies at a place.
fn ground(lower: &[Surface], place: Place) -> Option<f64> {
    lower
        .iter()
        .filter(|surface| {
            surface.holds(place) || surface.edges().any(|edge| off(edge, place) < NEAR)
        })
        .map(|surface| surface.height(place))
        .max_by(f64::total_cmp)
}

fn off((from, to): (Place, Place), place: Place) -> f64 {
    crate::leak::off_length(from, to, place)
}

/// Every wall as far as it stands on one slope, from its foot up to the roof over it.
pub(super) fn standing(
    walls: &[Vec<Place>],
    overlay: &Overlay,
    seen: &Seen<'_>,
) -> Vec<WallOnRoof> {
    edges(walls)
        .flat_map(|wall| along(wall, overlay, seen))
        .filter(|wall| wall.area.in_square_metres() > NOTHING)
        .collect()
}

/// One wall, slope by slope.
fn along(wall: (Place, Place), overlay: &Overlay, seen: &Seen<'_>) -> Vec<WallOnRoof> {
    let gone = |node: usize| {
        let place = overlay.nodes[node];
        (place.0 - wall.0.0).hypot(place.1 - wall.0.1)
    };
    let mut feet: Vec<(usize, usize, usize, f64)> = seen
        .pieces
        .iter()
        .filter(|beside| lies_on(wall, beside.middle))
        .filter_map(|beside| {
            let (outside, inside) = if beside.left.inside {
                (&beside.right, &beside.left)
            } else {
                (&beside.left, &beside.right)
            };
            let (lower, upper) = (outside.lower?, inside.upper.filter(|_| inside.inside)?);
            let high = |node: usize| {
                let place = overlay.nodes[node];
                seen.surface(upper).height(place) - seen.surface(lower).height(place)
            };
            let (a, b) = beside.ends;
            let (from, to) = if gone(a) < gone(b) { (a, b) } else { (b, a) };
            let area =
                (gone(to) - gone(from)) * f64::midpoint(high(from).max(0.0), high(to).max(0.0));
            (high(from).max(high(to)) > TOUCHES).then_some((lower, from, to, area))
        })
        .collect();
    feet.sort_by(|one, other| gone(one.1).total_cmp(&gone(other.1)));
    let mut found: Vec<(usize, usize, usize, f64)> = Vec::new();
    for foot in feet {
        match found.last_mut() {
            Some(last) if last.0 == foot.0 && last.2 == foot.1 => {
                last.2 = foot.2;
                last.3 += foot.3;
            }
            _ => found.push(foot),
        }
    }
    found
        .into_iter()
        .map(|(lower, from, to, area)| {
            let corner = |node: usize| {
                let (x, y) = overlay.nodes[node];
                let z = seen.surface(lower).height((x, y));
                Corner { x, y, z }
            };
            WallOnRoof {
                from: corner(from),
                to: corner(to),
                area: Area::square_metres(area),
            }
        })
        .collect()
}
