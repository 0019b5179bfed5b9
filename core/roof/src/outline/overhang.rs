//! The edge of the roof from the line of the walls: each edge moved out by its own overhang, mitred at the corners.

use super::{GRID, Ready};
use crate::skeleton::Grid;
use trade::sketch::EdgeIs;
use trade::units::Length;

/// A ring with each edge moved out by its own length, or in where that is negative. Where neighbours lie in one line and stand out differently, a short upright edge joins them.
pub(super) fn added(ring: &[Ready], by: impl Fn(&Ready) -> Length) -> Vec<Ready> {
    let count = ring.len();
    let mut grown = Vec::with_capacity(count);
    for (at, edge) in ring.iter().enumerate() {
        let before = &ring[(at + count - 1) % count];
        let (start, end) = (before.from, ring[(at + 1) % count].from);
        let normals = (outward(start, edge.from), outward(edge.from, end));
        let out = (steps(by(before)), steps(by(edge)));
        match mitre(normals, out) {
            Some(off) => grown.push(Ready {
                from: moved(edge.from, off),
                ..*edge
            }),
            None if by(before) == by(edge) => grown.push(Ready {
                from: moved(edge.from, scaled(normals.1, out.1)),
                ..*edge
            }),
            None => grown.extend(jog(edge, normals.1, out)),
        }
    }
    grown
}

#[allow(clippy::cast_precision_loss)]
fn steps(length: Length) -> f64 {
    length.nanometres() as f64 / GRID as f64
}

/// The unit vector to the right of an edge: away from the roof.
#[allow(clippy::cast_precision_loss)]
fn outward(from: Grid, to: Grid) -> (f64, f64) {
    let (x, y) = ((to.0 - from.0) as f64, (to.1 - from.1) as f64);
    let length = x.hypot(y);
    (y / length, -x / length)
}

/// How far the corner between two edges moves; `None` where they lie in one line.
fn mitre((p, q): ((f64, f64), (f64, f64)), out: (f64, f64)) -> Option<(f64, f64)> {
    let turn = p.0 * q.1 - p.1 * q.0;
    (turn.abs() > 1e-9).then(|| {
        (
            (out.0 * q.1 - out.1 * p.1) / turn,
            (out.1 * p.0 - out.0 * q.0) / turn,
        )
    })
}

/// The upright edge between two that lie in one line, and the second of them.
fn jog(edge: &Ready, normal: (f64, f64), out: (f64, f64)) -> [Ready; 2] {
    [
        Ready {
            from: moved(edge.from, scaled(normal, out.0)),
            is: EdgeIs::Gable,
            overhang: Length::ZERO,
            slope: None,
            ..*edge
        },
        Ready {
            from: moved(edge.from, scaled(normal, out.1)),
            ..*edge
        },
    ]
}

fn scaled((x, y): (f64, f64), by: f64) -> (f64, f64) {
    (x * by, y * by)
}

#[allow(clippy::cast_possible_truncation)]
fn moved(from: Grid, (x, y): (f64, f64)) -> Grid {
    (from.0 + x.round() as i64, from.1 + y.round() as i64)
}
