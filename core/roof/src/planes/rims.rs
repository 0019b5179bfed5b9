//! The rims of the planes: one for each piece of a face that hangs together.

use super::Standing;
use std::collections::BTreeMap;

/// One piece of a face.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Rim {
    /// The face, by its place in the skeleton.
    pub(crate) face: usize,
    /// Its corners by node, anticlockwise, the eave first.
    pub(crate) nodes: Vec<usize>,
    /// What is cut out of it, clockwise.
    pub(crate) holes: Vec<Vec<usize>>,
    /// Every piece of its rims from node to node, corners in a straight line included.
    pub(crate) steps: Vec<(usize, usize)>,
}

/// How far from a straight line a corner lies that is none, as the sine of its turn.
const STRAIGHT: f64 = 1e-9;

/// All rims of a skeleton.
pub(super) fn of(standing: &Standing) -> Vec<Rim> {
    (0..standing.skeleton.faces.len())
        .flat_map(|face| of_face(standing, face))
        .collect()
}

fn of_face(standing: &Standing, face: usize) -> Vec<Rim> {
    let skeleton = &standing.skeleton;
    let normal = skeleton.faces[face].normal;
    // A step of the grid is level.
    pieces(&skeleton.nodes, &skeleton.faces[face].loops, normal, 1.0)
        .into_iter()
        .map(|piece| Rim { face, ..piece })
        .collect()
}

/// The pieces that the loops of one plane bound. `uphill` on plan tells which edge is the eave, `level` how much that may rise.
pub(crate) fn pieces(
    nodes: &[[f64; 3]],
    loops: &[Vec<usize>],
    uphill: (f64, f64),
    level: f64,
) -> Vec<Rim> {
    let (rims, holes): (Vec<_>, Vec<_>) =
        loops.iter().partition(|rim| doubled_area(nodes, rim) > 0.0);
    let mut rims: Vec<Rim> = rims
        .into_iter()
        .map(|rim| Rim {
            face: 0,
            nodes: eave_first(nodes, uphill, &straightened(nodes, rim), level),
            holes: Vec::new(),
            steps: steps(rim),
        })
        .collect();
    for hole in holes {
        let around = rims.iter().position(|rim| {
            hole.first()
                .is_some_and(|&node| encloses(nodes, &rim.nodes, node))
        });
        if let Some(around) = around {
            rims[around].holes.push(straightened(nodes, hole));
            rims[around].steps.extend(steps(hole));
        }
    }
    rims
}

fn steps(rim: &[usize]) -> Vec<(usize, usize)> {
    let next = rim.iter().cycle().skip(1);
    rim.iter().copied().zip(next.copied()).collect()
}

/// The planes by the pieces of their rims: the face and the piece's ends give the place in `rims`.
pub(crate) fn by_step(rims: &[Rim]) -> BTreeMap<(usize, usize, usize), usize> {
    rims.iter()
        .enumerate()
        .flat_map(|(plane, rim)| {
            rim.steps
                .iter()
                .map(move |&(from, to)| ((rim.face, from, to), plane))
        })
        .collect()
}

fn doubled_area(nodes: &[[f64; 3]], rim: &[usize]) -> f64 {
    steps(rim)
        .into_iter()
        .map(|(p, q)| nodes[p][0] * nodes[q][1] - nodes[q][0] * nodes[p][1])
        .sum()
}

/// The rim without corners in a straight line.
fn straightened(nodes: &[[f64; 3]], rim: &[usize]) -> Vec<usize> {
    let count = rim.len();
    let turns = |at: usize| {
        let [p, q, r] = [
            rim[(at + count - 1) % count],
            rim[at],
            rim[(at + 1) % count],
        ];
        let [p, q, r] = [nodes[p], nodes[q], nodes[r]];
        let (ux, uy, vx, vy) = (q[0] - p[0], q[1] - p[1], r[0] - q[0], r[1] - q[1]);
        let straight = (ux * vy - uy * vx).abs() <= STRAIGHT * ux.hypot(uy) * vx.hypot(vy);
        !straight || ux * vx + uy * vy < 0.0
    };
    (0..count)
        .filter(|&at| turns(at))
        .map(|at| rim[at])
        .collect()
}

/// The rim turned so that it begins with its longest lowest edge: the eave.
fn eave_first(nodes: &[[f64; 3]], (a, b): (f64, f64), rim: &[usize], level: f64) -> Vec<usize> {
    let length = a.hypot(b);
    let lowest = rim
        .iter()
        .map(|&node| nodes[node][2])
        .fold(f64::INFINITY, f64::min);
    let along = |(from, to): (usize, usize)| {
        let (x, y) = (nodes[to][0] - nodes[from][0], nodes[to][1] - nodes[from][1]);
        (x * b - y * a) / length
    };
    let eave = steps(rim)
        .into_iter()
        .enumerate()
        .filter(|(_, (from, to))| nodes[*from][2].max(nodes[*to][2]) < lowest + level)
        .max_by(|(_, one), (_, other)| along(*one).total_cmp(&along(*other)))
        .map_or(0, |(at, _)| at);
    let mut turned = rim.to_vec();
    turned.rotate_left(eave);
    turned
}

/// Whether a rim runs round a node or through it.
fn encloses(nodes: &[[f64; 3]], rim: &[usize], node: usize) -> bool {
    let [x, y, _] = nodes[node];
    let crossings = steps(rim)
        .into_iter()
        .filter(|&(p, q)| {
            let (p, q) = (nodes[p], nodes[q]);
            (p[1] > y) != (q[1] > y) && x < p[0] + (y - p[1]) / (q[1] - p[1]) * (q[0] - p[0])
        })
        .count();
    rim.contains(&node) || crossings % 2 == 1
}
