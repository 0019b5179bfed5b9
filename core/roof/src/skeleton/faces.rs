//! From the paths of the wavefront's corners to the faces that they bound.

use super::support::SupportId;
use super::wavefront::{Trace, Traced};
use super::{Arc, Carried, Face, NeverCloses, Side, Skeleton};
use crate::loops;
use std::collections::BTreeMap;

/// Nodes nearer to each other than this, in units of the grid, are one.
const ONE_PLACE: f64 = 1.0 / 16.0;

/// The skeleton from what the wavefront left behind.
pub(super) fn gather(carried: &Carried, traced: Traced) -> Result<Skeleton, NeverCloses> {
    let edges = edges_of(carried);
    if !traced.open.is_empty() {
        return Err(never_closes(&edges, &traced.open));
    }
    // A level ridge runs at once past whatever ends on it in the same moment. Other lines pass a node only where a plane went on over an edge that it
    // came into line with; only there can nothing of a plane be left between two lines.
    let mut traces = Vec::with_capacity(2 * traced.traces.len());
    for trace in outline(carried).into_iter().chain(traced.traces) {
        if traced.choices > 0 || is_level(&traced.nodes, trace) {
            traces.extend(cut(&traced.nodes, trace));
        } else {
            traces.push(trace);
        }
    }
    let mut arcs = contracted(&traced.nodes, &traces);
    if traced.choices > 0 {
        arcs = without_slivers(arcs);
    }
    let ways = ways_round(&arcs, carried.supports.len());
    let faces = (1..carried.supports.len())
        .map(|support| {
            let plane = carried.supports.get(support);
            Face {
                edges: edges[support].clone(),
                normal: plane.normal(),
                loops: if plane.is_upright() {
                    Vec::new()
                } else {
                    loops::closed(&traced.nodes, ways[support].iter().copied())
                },
            }
        })
        .collect();
    let side = |support: SupportId| match support {
        OUTSIDE => Side::Outside,
        support if carried.supports.get(support).is_upright() => Side::Upright(support - 1),
        support => Side::Face(support - 1),
    };
    let arcs = arcs
        .iter()
        .map(|trace| Arc {
            from: trace.from,
            to: trace.to,
            left: side(trace.left),
            right: side(trace.right),
        })
        .collect();
    Ok(Skeleton {
        choices: traced.choices,
        ..renumbered(traced.nodes, arcs, faces)
    })
}

/// Beyond the outline: no edge carries the floor.
const OUTSIDE: SupportId = super::support::FLOOR;

/// The edges that carry each plane.
fn edges_of(carried: &Carried) -> Vec<Vec<(usize, usize)>> {
    let mut edges = vec![Vec::new(); carried.supports.len()];
    for carrying in carried.rings.iter().flatten() {
        if let Some(edge) = carrying.edge {
            edges[carrying.first].push(edge);
        }
    }
    for start in &carried.starts {
        let waiting = edges[start.waiting].clone();
        edges[start.later].extend(waiting);
    }
    edges
}

fn never_closes(edges: &[Vec<(usize, usize)>], open: &[SupportId]) -> NeverCloses {
    let mut left: Vec<(usize, usize)> = open
        .iter()
        .flat_map(|&support| edges[support].iter().copied())
        .collect();
    left.sort_unstable();
    left.dedup();
    NeverCloses(left)
}

/// The edges of the outline as lines between its nodes, which are numbered ring by ring.
fn outline(carried: &Carried) -> Vec<Trace> {
    let mut traces = Vec::new();
    let mut begun = 0;
    for ring in &carried.rings {
        let edges: Vec<SupportId> = ring
            .iter()
            .filter(|carrying| carrying.edge.is_some())
            .map(|carrying| carrying.first)
            .collect();
        for (at, &support) in edges.iter().enumerate() {
            traces.push(Trace {
                from: begun + at,
                to: begun + (at + 1) % edges.len(),
                left: support,
                right: OUTSIDE,
            });
        }
        begun += edges.len();
    }
    traces
}

/// The lines that have a length, between nodes that are apart.
fn contracted(nodes: &[[f64; 3]], traces: &[Trace]) -> Vec<Trace> {
    let same = in_one_place(nodes);
    traces
        .iter()
        .map(|trace| Trace {
            from: root(&same, trace.from),
            to: root(&same, trace.to),
            ..*trace
        })
        .filter(|trace| trace.from != trace.to)
        .collect()
}

/// The lines without those that nothing of a plane lies between.
fn without_slivers(arcs: Vec<Trace>) -> Vec<Trace> {
    let mut lines = BTreeMap::new();
    for arc in arcs {
        lay_down(&mut lines, upward(arc));
    }
    lines.into_values().flatten().collect()
}

/// Whether a line inside of the outline is level.
fn is_level(nodes: &[[f64; 3]], trace: Trace) -> bool {
    trace.right != OUTSIDE && (nodes[trace.from][2] - nodes[trace.to][2]).abs() < ONE_PLACE
}

/// A line in pieces, from each node that lies on it to the next.
fn cut(nodes: &[[f64; 3]], trace: Trace) -> impl Iterator<Item = Trace> + use<> {
    let (from, to) = (nodes[trace.from], nodes[trace.to]);
    let mut stops: Vec<(f64, usize)> = (0..nodes.len())
        .filter(|&node| {
            distance(from, nodes[node]) > ONE_PLACE && distance(nodes[node], to) > ONE_PLACE
        })
        .filter_map(|node| Some((share_of_way(from, to, nodes[node])?, node)))
        .collect();
    stops.sort_unstable_by(|one, other| one.0.total_cmp(&other.0));
    let mut at = trace.from;
    let ends = stops.into_iter().map(|(_, node)| node).chain([trace.to]);
    ends.map(move |to| {
        let from = std::mem::replace(&mut at, to);
        Trace { from, to, ..trace }
    })
}

/// How far along a line a point lies on it, as a share; `None` where it lies aside or beyond its ends.
fn share_of_way(from: [f64; 3], to: [f64; 3], point: [f64; 3]) -> Option<f64> {
    let way = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    let gone = [point[0] - from[0], point[1] - from[1], point[2] - from[2]];
    let dot = |p: [f64; 3], q: [f64; 3]| p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
    let share = dot(way, gone) / dot(way, way);
    let foot = [0, 1, 2].map(|axis| from[axis] + share * way[axis]);
    ((0.0..=1.0).contains(&share) && distance(foot, point) < ONE_PLACE).then_some(share)
}

/// A line from its first node to its later one.
fn upward(trace: Trace) -> Trace {
    if trace.from < trace.to {
        return trace;
    }
    Trace {
        from: trace.to,
        to: trace.from,
        left: trace.right,
        right: trace.left,
    }
}

/// Puts a line to those between the same nodes. Where it has one plane on its left and another such line has that plane on its right, nothing of
/// the plane lies between them: they are one line.
fn lay_down(lines: &mut BTreeMap<(usize, usize), Vec<Trace>>, trace: Trace) {
    let beside = lines.entry((trace.from, trace.to)).or_default();
    let sliver = beside
        .iter()
        .position(|other| other.left == trace.right || other.right == trace.left);
    match sliver.map(|at| beside.swap_remove(at)) {
        None => beside.push(trace),
        Some(other) => {
            let (left, right) = if other.left == trace.right {
                (trace.left, other.right)
            } else {
                (other.left, trace.right)
            };
            beside.extend((left != right).then_some(Trace {
                left,
                right,
                ..trace
            }));
        }
    }
}

/// For each node one that is in the same place, and in the end the first of them.
fn in_one_place(nodes: &[[f64; 3]]) -> Vec<usize> {
    let mut by_x: Vec<usize> = (0..nodes.len()).collect();
    by_x.sort_unstable_by(|&one, &other| nodes[one][0].total_cmp(&nodes[other][0]));
    let mut same: Vec<usize> = (0..nodes.len()).collect();
    for (at, &one) in by_x.iter().enumerate() {
        let near = by_x[at + 1..]
            .iter()
            .take_while(|&&other| nodes[other][0] - nodes[one][0] < ONE_PLACE);
        for &other in near {
            if distance(nodes[one], nodes[other]) < ONE_PLACE {
                let (one, other) = (root(&same, one), root(&same, other));
                same[one.max(other)] = one.min(other);
            }
        }
    }
    same
}

fn root(same: &[usize], mut node: usize) -> usize {
    while same[node] != node {
        node = same[node];
    }
    node
}

fn distance(p: [f64; 3], q: [f64; 3]) -> f64 {
    ((p[0] - q[0]).powi(2) + (p[1] - q[1]).powi(2) + (p[2] - q[2]).powi(2)).sqrt()
}

/// For each plane its lines, each with the plane to its left.
fn ways_round(traces: &[Trace], planes: usize) -> Vec<Vec<(usize, usize)>> {
    let mut ways = vec![Vec::new(); planes];
    for trace in traces {
        ways[trace.left].push((trace.from, trace.to));
        ways[trace.right].push((trace.to, trace.from));
    }
    ways
}

/// The same with only the nodes that a line ends in.
fn renumbered(nodes: Vec<[f64; 3]>, mut arcs: Vec<Arc>, mut faces: Vec<Face>) -> Skeleton {
    let mut number: Vec<Option<usize>> = vec![None; nodes.len()];
    for arc in &arcs {
        number[arc.from] = Some(0);
        number[arc.to] = Some(0);
    }
    let mut kept = Vec::new();
    for (node, number) in nodes.into_iter().zip(&mut number) {
        if number.is_some() {
            *number = Some(kept.len());
            kept.push(node);
        }
    }
    let new = |node: usize| number[node].unwrap_or_default();
    for arc in &mut arcs {
        (arc.from, arc.to) = (new(arc.from), new(arc.to));
    }
    for node in faces.iter_mut().flat_map(|face| &mut face.loops).flatten() {
        *node = new(*node);
    }
    Skeleton {
        nodes: kept,
        arcs,
        faces,
        choices: 0,
    }
}
