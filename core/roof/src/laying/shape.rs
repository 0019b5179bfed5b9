//! What the pieces of one plane must cover: the plane, out over eave and rake, and cut back from or run through its valleys.

use crate::frame::{Frame, Place};
use trade::laid::ValleyIs;
use trade::roof::{Corner, LineKind, Plane, RoofPlan};

/// A line of the plan counts as one of a plane's edges within a millimetre.
const NEAR: f64 = 1e-3;
const INCH: f64 = 0.0254;
/// How far the side that runs through a closed valley goes on past its centre. Common practice, no source.
pub const RUN_THROUGH: f64 = 12.0 * INCH;
/// How far short of the centre the other side is cut. Common practice, no source.
pub const CUT_SHORT: f64 = 2.0 * INCH;
/// Half of what an open valley leaves bare at its top. Common practice, no source.
const BARE_AT_TOP: f64 = 3.0 * INCH;
/// What half of the bare strip gains for each unit downward: half of 1/8 in to the foot. From memory, no source seen.
const BARE_GAIN: f64 = 0.5 * 0.125 / 12.0;

/// One edge of a plane, on the plane, its inside to the left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// Where it begins.
    pub from: Place,
    /// Where it ends.
    pub to: Place,
    /// The line of the plan that it is; `None` at a hole that the plan names no line for.
    pub line: Option<usize>,
}

/// The shape of the cover of one plane.
pub struct Cover {
    /// Its rings on the plane: the rim, then what stands through it.
    pub rings: Vec<Vec<Place>>,
    /// Area that runs through a closed valley and lies hidden under the other side, in square metres.
    pub lapped: f64,
}

/// The cover of one plane, with pieces that stand out by `overhang` metres over eave and rake.
pub fn cover(
    plan: &RoofPlan,
    place: usize,
    plane: &Plane,
    overhang: f64,
    valleys: ValleyIs,
) -> Cover {
    let by = |edge: &Edge, through: f64| outward(plan, place, edge, overhang, valleys, through);
    let moved = |ring: &[Edge], through: f64| displaced(ring, |edge| by(edge, through));
    let rings: Vec<Vec<Edge>> = std::iter::once(edges(plan, place, plane))
        .chain(holes(plan, place, plane))
        .collect();
    let through: Vec<Vec<Place>> = rings.iter().map(|ring| moved(ring, RUN_THROUGH)).collect();
    let seen = rings.iter().map(|ring| area(&moved(ring, CUT_SHORT)));
    Cover {
        lapped: through.iter().map(|ring| area(ring)).sum::<f64>() - seen.sum::<f64>(),
        rings: through,
    }
}

/// The edges of a plane's rim, parted where a line of the plan ends.
pub fn edges(plan: &RoofPlan, place: usize, plane: &Plane) -> Vec<Edge> {
    ring_of(plan, place, plane, &plane.corners)
}

/// The same of what is cut out of a plane: the plane lies to the left of each edge.
pub fn holes(plan: &RoofPlan, place: usize, plane: &Plane) -> Vec<Vec<Edge>> {
    let ring = |hole: &Vec<Corner>| ring_of(plan, place, plane, hole);
    plane.holes.iter().map(ring).collect()
}

fn ring_of(plan: &RoofPlan, place: usize, plane: &Plane, ring: &[Corner]) -> Vec<Edge> {
    let frame = Frame::of(plane);
    let corners: Vec<Place> = ring.iter().map(|c| (c.x, c.y)).collect();
    let lines: Vec<(usize, Place, Place)> = plan
        .lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.planes.contains(&place))
        .map(|(at, line)| (at, (line.from.x, line.from.y), (line.to.x, line.to.y)))
        .collect();
    let next = corners.iter().cycle().skip(1);
    corners
        .iter()
        .zip(next)
        .flat_map(|(&from, &to)| parted(from, to, &lines))
        .map(|edge| Edge {
            from: frame.on_plane(edge.from),
            to: frame.on_plane(edge.to),
            line: edge.line,
        })
        .collect()
}

fn parted(from: Place, to: Place, lines: &[(usize, Place, Place)]) -> Vec<Edge> {
    let mut cuts: Vec<f64> = lines
        .iter()
        .flat_map(|(_, a, b)| [*a, *b])
        .filter_map(|end| along(from, to, end))
        .filter(|share| (1e-6..1.0 - 1e-6).contains(share))
        .collect();
    cuts.push(0.0);
    cuts.push(1.0);
    cuts.sort_by(f64::total_cmp);
    cuts.dedup_by(|a, b| (*a - *b) * distance(from, to) < NEAR);
    cuts.windows(2)
        .filter_map(|pair| {
            let [a, b] = pair else { return None };
            let (from, to, middle) = (
                between(from, to, *a),
                between(from, to, *b),
                between(from, to, f64::midpoint(*a, *b)),
            );
            let line = lines
                .iter()
                .find(|(_, a, b)| along(*a, *b, middle).is_some())
                .map(|(at, ..)| *at);
            Some(Edge { from, to, line })
        })
        .collect()
}

/// Where `place` lies from `from` (0) to `to` (1), where it lies between them at all.
fn along(from: Place, to: Place, place: Place) -> Option<f64> {
    let length = distance(from, to);
    if length < NEAR {
        return None;
    }
    let way = ((to.0 - from.0) / length, (to.1 - from.1) / length);
    let off = (place.0 - from.0, place.1 - from.1);
    let forward = off.0 * way.0 + off.1 * way.1;
    let aside = off.0 * way.1 - off.1 * way.0;
    (aside.abs() < NEAR && forward > -NEAR && forward < length + NEAR).then_some(forward / length)
}

/// How far the cover goes beyond an edge at its two ends, in metres; back from it where negative.
fn outward(
    plan: &RoofPlan,
    place: usize,
    edge: &Edge,
    overhang: f64,
    valleys: ValleyIs,
    through: f64,
) -> (f64, f64) {
    let Some(line) = edge.line.and_then(|at| plan.lines.get(at)) else {
        return (0.0, 0.0);
    };
    let both = |by| (by, by);
    match (line.kind, valleys) {
        (LineKind::Eave | LineKind::Rake, _) => both(overhang),
        (LineKind::Valley, ValleyIs::Open) => bare(edge),
        (LineKind::Valley, ValleyIs::ClosedCut) if runs_through(plan, place, &line.planes) => {
            both(through)
        }
        (LineKind::Valley, ValleyIs::ClosedCut) => both(-CUT_SHORT),
        _ => both(0.0),
    }
}

fn bare(edge: &Edge) -> (f64, f64) {
    let gained = distance(edge.from, edge.to) * BARE_GAIN;
    if edge.from.1 > edge.to.1 {
        (-BARE_AT_TOP, -BARE_AT_TOP - gained)
    } else {
        (-BARE_AT_TOP - gained, -BARE_AT_TOP)
    }
}

/// Whether a plane is the one that is laid first and runs through: the flatter one, of two alike the smaller. Common practice, no source.
fn runs_through(plan: &RoofPlan, place: usize, beside: &[usize]) -> bool {
    let rank = |at: usize| {
        plan.planes
            .get(at)
            .map(|plane| (plane.pitch, plane.slope_area.in_square_metres(), at))
    };
    let Some(mine) = rank(place) else {
        return false;
    };
    beside.iter().filter(|at| **at != place).all(|at| {
        rank(*at).is_none_or(|other| {
            mine.0
                .cmp(&other.0)
                .then(mine.1.total_cmp(&other.1))
                .then(mine.2.cmp(&other.2))
                .is_lt()
        })
    })
}

/// A ring with each edge moved outward, away from the plane, by what `by` gives for its two ends. An edge that the move swallows is left out; where it
/// swallows the whole ring, nothing is left.
pub fn displaced(edges: &[Edge], by: impl Fn(&Edge) -> (f64, f64)) -> Vec<Place> {
    let places: Vec<Place> = edges.iter().map(|edge| edge.from).collect();
    let turn = area(&places).signum();
    let mut moved: Vec<(Edge, Edge)> = edges
        .iter()
        .map(|edge| (*edge, shifted(edge, by(edge))))
        .collect();
    loop {
        let corners: Vec<(Place, Place)> = (0..moved.len())
            .map(|at| {
                let before = &moved[(at + moved.len() - 1) % moved.len()].1;
                corner(before, &moved[at].1)
            })
            .collect();
        let kept = |at: usize| {
            let edge = &moved[at].0;
            let (from, to) = (corners[at].1, corners[(at + 1) % corners.len()].0);
            (to.0 - from.0) * (edge.to.0 - edge.from.0)
                + (to.1 - from.1) * (edge.to.1 - edge.from.1)
        };
        let swallowed = (0..moved.len())
            .map(|at| (at, kept(at)))
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .filter(|(_, forward)| *forward < 0.0);
        match swallowed {
            Some((at, _)) if moved.len() > 3 => {
                moved.remove(at);
            }
            _ => {
                let mut rim: Vec<Place> = corners.into_iter().flat_map(|(a, b)| [a, b]).collect();
                rim.dedup_by(|a, b| distance(*a, *b) < 1e-9);
                return if area(&rim) * turn > 0.0 {
                    rim
                } else {
                    Vec::new()
                };
            }
        }
    }
}

fn shifted(edge: &Edge, by: (f64, f64)) -> Edge {
    let length = distance(edge.from, edge.to).max(f64::MIN_POSITIVE);
    let out = (
        (edge.to.1 - edge.from.1) / length,
        (edge.from.0 - edge.to.0) / length,
    );
    Edge {
        from: (edge.from.0 + out.0 * by.0, edge.from.1 + out.1 * by.0),
        to: (edge.to.0 + out.0 * by.1, edge.to.1 + out.1 * by.1),
        line: edge.line,
    }
}

/// Where two moved edges meet: one place, or a jog from the end of one to the start of the next where they run on in one line.
fn corner(before: &Edge, after: &Edge) -> (Place, Place) {
    let a = (before.to.0 - before.from.0, before.to.1 - before.from.1);
    let b = (after.to.0 - after.from.0, after.to.1 - after.from.1);
    let cross = a.0 * b.1 - a.1 * b.0;
    let straight = cross.abs() <= 0.05 * a.0.hypot(a.1) * b.0.hypot(b.1);
    if straight {
        return (before.to, after.from);
    }
    let off = (after.from.0 - before.from.0, after.from.1 - before.from.1);
    let share = (off.0 * b.1 - off.1 * b.0) / cross;
    let meet = (before.from.0 + share * a.0, before.from.1 + share * a.1);
    (meet, meet)
}

/// The area within a ring, positive where it runs anticlockwise, in square metres.
pub fn area(ring: &[Place]) -> f64 {
    let next = ring.iter().cycle().skip(1);
    ring.iter()
        .zip(next)
        .map(|(a, b)| a.0 * b.1 - b.0 * a.1)
        .sum::<f64>()
        / 2.0
}

fn between(from: Place, to: Place, share: f64) -> Place {
    (
        from.0 + (to.0 - from.0) * share,
        from.1 + (to.1 - from.1) * share,
    )
}

fn distance(a: Place, b: Place) -> f64 {
    (b.0 - a.0).hypot(b.1 - a.1)
}
