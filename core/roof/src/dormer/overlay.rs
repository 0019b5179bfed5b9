//! Lines laid over each other and cut where they cross.

use super::surface::{Surface, edges};
use crate::frame::Place;
use std::collections::BTreeSet;

/// Places nearer to each other than a micrometre are one.
const SAME: f64 = 1e-6;
/// Planes whose rise differs by less, metre for metre, run side by side.
const ALIKE: f64 = 1e-9;

/// The pieces of lines, each between two nodes and each once.
pub(super) struct Overlay {
    /// Where pieces end.
    pub(super) nodes: Vec<Place>,
    /// The pieces, from the node with the lower number.
    pub(super) pieces: Vec<(usize, usize)>,
}

/// All lines that may matter where one roof stands on others.
pub(super) fn segments(
    lower: &[Surface],
    upper: &[Surface],
    walls: &[Vec<Place>],
) -> Vec<(Place, Place)> {
    let rims = lower.iter().chain(upper).flat_map(Surface::edges);
    let meetings = upper
        .iter()
        .flat_map(|one| lower.iter().filter_map(|other| meeting(one, other)));
    rims.chain(edges(walls)).chain(meetings).collect()
}

/// The line in which two planes meet, as far as it crosses the box round the first.
fn meeting(one: &Surface, other: &Surface) -> Option<(Place, Place)> {
    let across = (one.rises.0 - other.rises.0, one.rises.1 - other.rises.1);
    let squared = across.0 * across.0 + across.1 * across.1;
    if squared < ALIKE * ALIKE {
        return None;
    }
    let corners: Vec<Place> = one.edges().map(|(from, _)| from).collect();
    let first = *corners.first()?;
    let apart = one.height(first) - other.height(first);
    let on_line = (
        first.0 - across.0 * apart / squared,
        first.1 - across.1 * apart / squared,
    );
    let length = squared.sqrt();
    let way = (-across.1 / length, across.0 / length);
    let along = |place: &Place| (place.0 - on_line.0) * way.0 + (place.1 - on_line.1) * way.1;
    let least = corners.iter().map(along).fold(f64::INFINITY, f64::min);
    let most = corners.iter().map(along).fold(f64::NEG_INFINITY, f64::max);
    let at = |along: f64| (on_line.0 + way.0 * along, on_line.1 + way.1 * along);
    Some((at(least - 1.0), at(most + 1.0)))
}

impl Overlay {
    pub(super) fn of(segments: &[(Place, Place)]) -> Self {
        let mut overlay = Self {
            nodes: Vec::new(),
            pieces: Vec::new(),
        };
        let ends: Vec<(usize, usize)> = segments
            .iter()
            .map(|&(from, to)| (overlay.node(from), overlay.node(to)))
            .collect();
        let mut pieces = BTreeSet::new();
        for (at, &segment) in segments.iter().enumerate() {
            let mut stops: Vec<Place> = segments
                .iter()
                .filter_map(|&other| crossing(segment, other))
                .collect();
            let on_it = segments.iter().flat_map(|&(from, to)| [from, to]);
            stops.extend(on_it.filter(|&end| lies_on(segment, end)));
            stops.sort_by(|one, other| share(segment, *one).total_cmp(&share(segment, *other)));
            let (from, to) = ends[at];
            let stops = stops.into_iter().map(|stop| overlay.node(stop));
            let nodes: Vec<usize> = std::iter::once(from).chain(stops).chain([to]).collect();
            pieces.extend(
                nodes
                    .windows(2)
                    .filter(|pair| pair[0] != pair[1])
                    .map(|pair| (pair[0].min(pair[1]), pair[0].max(pair[1]))),
            );
        }
        overlay.pieces = pieces.into_iter().collect();
        overlay
    }

    /// The node at a place.
    fn node(&mut self, place: Place) -> usize {
        let known = self
            .nodes
            .iter()
            .position(|node| (node.0 - place.0).hypot(node.1 - place.1) < SAME);
        known.unwrap_or_else(|| {
            self.nodes.push(place);
            self.nodes.len() - 1
        })
    }
}

/// Where two segments cross each other between their ends.
pub(super) fn crossing(one: (Place, Place), other: (Place, Place)) -> Option<Place> {
    let way = (one.1.0 - one.0.0, one.1.1 - one.0.1);
    let others = (other.1.0 - other.0.0, other.1.1 - other.0.1);
    let turn = way.0 * others.1 - way.1 * others.0;
    // Segments that run side by side have their ends on each other, or do not meet.
    if turn.abs() < ALIKE * way.0.hypot(way.1) * others.0.hypot(others.1) {
        return None;
    }
    let off = (other.0.0 - one.0.0, other.0.1 - one.0.1);
    let share = (off.0 * others.1 - off.1 * others.0) / turn;
    let of_other = (off.0 * way.1 - off.1 * way.0) / turn;
    ((0.0..=1.0).contains(&share) && (0.0..=1.0).contains(&of_other))
        .then_some((one.0.0 + way.0 * share, one.0.1 + way.1 * share))
}

/// How far along a segment a place lies, as a share of it.
fn share((from, to): (Place, Place), place: Place) -> f64 {
    let way = (to.0 - from.0, to.1 - from.1);
    let squared = (way.0 * way.0 + way.1 * way.1).max(f64::MIN_POSITIVE);
    ((place.0 - from.0) * way.0 + (place.1 - from.1) * way.1) / squared
}

/// Whether a place lies on a segment.
pub(super) fn lies_on(segment: (Place, Place), place: Place) -> bool {
    let share = share(segment, place).clamp(0.0, 1.0);
    let (from, to) = segment;
    let foot = (
        from.0 + (to.0 - from.0) * share,
        from.1 + (to.1 - from.1) * share,
    );
    (place.0 - foot.0).hypot(place.1 - foot.1) < SAME
}
