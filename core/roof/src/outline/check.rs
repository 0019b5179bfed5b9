//! Whether rings bound one area: exactly, on the grid.

use crate::skeleton::Grid;

/// What is wrong, by ring and number of the edges or corners.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fault {
    TooFew(usize),
    NoLength(Edge),
    Spike(Edge),
    Same(Edge, Edge),
    Crossing(Edge, Edge),
    Outside(usize),
    InHole(usize, usize),
}

/// An edge, or the corner in which it begins: its ring and its number.
pub(super) type Edge = (usize, usize);

/// The first fault of a rim and its holes.
pub(super) fn fault(rings: &[Vec<Grid>]) -> Option<Fault> {
    rings
        .iter()
        .enumerate()
        .find_map(|(number, ring)| fault_of_ring(number, ring))
        .or_else(|| crossing(rings))
        .or_else(|| misplaced(rings))
}

fn fault_of_ring(number: usize, ring: &[Grid]) -> Option<Fault> {
    let count = ring.len();
    let at = |edge: usize| ring[edge % count];
    if count < 3 {
        return Some(Fault::TooFew(number));
    }
    let no_length = (0..count).find(|&edge| at(edge) == at(edge + 1));
    let spike = || (0..count).find(|&edge| runs_back(at(edge + count - 1), at(edge), at(edge + 1)));
    no_length
        .map(|edge| Fault::NoLength((number, edge)))
        .or_else(|| same(number, ring))
        .or_else(|| spike().map(|edge| Fault::Spike((number, edge))))
}

/// Two corners of a ring in one place.
fn same(number: usize, ring: &[Grid]) -> Option<Fault> {
    let mut by_place: Vec<usize> = (0..ring.len()).collect();
    by_place.sort_unstable_by_key(|&corner| (ring[corner], corner));
    by_place
        .windows(2)
        .filter_map(|pair| <[usize; 2]>::try_from(pair).ok())
        .find(|[one, other]| ring[*one] == ring[*other])
        .map(|[one, other]| Fault::Same((number, one), (number, other)))
}

fn runs_back(before: Grid, tip: Grid, after: Grid) -> bool {
    cross(before, tip, after) == 0
        && (tip.0 - before.0) * (after.0 - tip.0) + (tip.1 - before.1) * (after.1 - tip.1) < 0
}

/// Twice the area of a triangle: positive where it runs anticlockwise.
pub(super) fn cross(p: Grid, q: Grid, r: Grid) -> i64 {
    (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0)
}

/// Two edges, not neighbours, that cross or touch. They are swept from left to right.
fn crossing(rings: &[Vec<Grid>]) -> Option<Fault> {
    let mut edges: Vec<(Edge, Grid, Grid)> = rings
        .iter()
        .enumerate()
        .flat_map(|(ring, corners)| {
            (0..corners.len()).map(move |edge| {
                let (from, to) = (corners[edge], corners[(edge + 1) % corners.len()]);
                ((ring, edge), from, to)
            })
        })
        .collect();
    edges.sort_unstable_by_key(|(_, from, to)| from.0.min(to.0));
    for (at, &(one, from, to)) in edges.iter().enumerate() {
        let right = from.0.max(to.0);
        let reached = edges[at + 1..]
            .iter()
            .take_while(|(_, from, to)| from.0.min(to.0) <= right);
        for &(other, other_from, other_to) in reached {
            if !neighbours(one, other, rings) && meet((from, to), (other_from, other_to)) {
                return Some(Fault::Crossing(one.min(other), one.max(other)));
            }
        }
    }
    None
}

fn neighbours(one: Edge, other: Edge, rings: &[Vec<Grid>]) -> bool {
    let count = rings[one.0].len();
    one.0 == other.0 && ((one.1 + 1) % count == other.1 || (other.1 + 1) % count == one.1)
}

/// Whether two edges have a point in common.
fn meet(one: (Grid, Grid), other: (Grid, Grid)) -> bool {
    let sides = |line: (Grid, Grid), ends: (Grid, Grid)| {
        (
            cross(line.0, line.1, ends.0).signum(),
            cross(line.0, line.1, ends.1).signum(),
        )
    };
    let overlap =
        |a: (i64, i64), b: (i64, i64)| a.0.min(a.1) <= b.0.max(b.1) && b.0.min(b.1) <= a.0.max(a.1);
    let (of_other, of_one) = (sides(one, other), sides(other, one));
    overlap((one.0.0, one.1.0), (other.0.0, other.1.0))
        && overlap((one.0.1, one.1.1), (other.0.1, other.1.1))
        && of_other.0 * of_other.1 <= 0
        && of_one.0 * of_one.1 <= 0
}

/// A hole outside of the rim or in another hole. No two rings cross here, so one corner tells.
fn misplaced(rings: &[Vec<Grid>]) -> Option<Fault> {
    let (rim, holes) = rings.split_first()?;
    holes.iter().enumerate().find_map(|(hole, corners)| {
        let corner = *corners.first()?;
        if !encloses(rim, corner) {
            return Some(Fault::Outside(hole + 1));
        }
        let around = holes
            .iter()
            .enumerate()
            .find(|(other, around)| *other != hole && encloses(around, corner));
        around.map(|(other, _)| Fault::InHole(hole + 1, other + 1))
    })
}

/// Whether a ring runs round a point that does not lie on it.
fn encloses(ring: &[Grid], point: Grid) -> bool {
    let mut inside = false;
    for (at, &from) in ring.iter().enumerate() {
        let to = ring[(at + 1) % ring.len()];
        if (from.1 > point.1) != (to.1 > point.1) {
            let left = cross(from, to, point) > 0;
            if left == (to.1 > from.1) {
                inside = !inside;
            }
        }
    }
    inside
}

/// Twice the area of a ring, positive where it runs anticlockwise.
pub(super) fn doubled_area(ring: &[Grid]) -> i128 {
    ring.iter()
        .enumerate()
        .map(|(at, from)| {
            let to = ring[(at + 1) % ring.len()];
            i128::from(from.0) * i128::from(to.1) - i128::from(to.0) * i128::from(from.1)
        })
        .sum()
}

/// Where two edges meet, or nearly.
#[allow(clippy::cast_precision_loss)]
pub(super) fn meeting(one: (Grid, Grid), other: (Grid, Grid)) -> (f64, f64) {
    let (from, to) = one;
    let away = cross(other.0, other.1, from) as f64;
    let run = away - cross(other.0, other.1, to) as f64;
    let share = if run == 0.0 { 0.0 } else { away / run };
    (
        from.0 as f64 + share * (to.0 - from.0) as f64,
        from.1 as f64 + share * (to.1 - from.1) as f64,
    )
}
