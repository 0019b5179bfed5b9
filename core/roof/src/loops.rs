//! Rims put together from lines that run end to end.

use std::collections::BTreeMap;

/// The rims that lines with their plane to the left make up, each by its nodes.
pub(crate) fn closed(
    nodes: &[[f64; 3]],
    ways: impl IntoIterator<Item = (usize, usize)>,
) -> Vec<Vec<usize>> {
    let mut leaving: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (from, to) in ways {
        leaving.entry(from).or_default().push(to);
    }
    let mut loops = Vec::new();
    while let Some((&start, _)) = leaving.iter().find(|(_, ways)| !ways.is_empty()) {
        let walked = walk(nodes, &mut leaving, start);
        if walked.len() > 2 {
            loops.push(walked);
        }
    }
    loops
}

/// One rim, from a node until it is back.
fn walk(nodes: &[[f64; 3]], leaving: &mut BTreeMap<usize, Vec<usize>>, start: usize) -> Vec<usize> {
    let mut rim = vec![start];
    let mut at = start;
    while let Some(ways) = leaving.get_mut(&at).filter(|ways| !ways.is_empty()) {
        let came = rim.len().checked_sub(2).map(|before| nodes[rim[before]]);
        let chosen = sharpest_left(nodes, came, at, ways);
        at = ways.swap_remove(chosen);
        if at == start {
            break;
        }
        rim.push(at);
    }
    rim
}

/// Of several ways on, the one that turns most to the left: so rims that touch in a node stay apart.
fn sharpest_left(nodes: &[[f64; 3]], came: Option<[f64; 3]>, at: usize, ways: &[usize]) -> usize {
    let Some(came) = came.filter(|_| ways.len() > 1) else {
        return 0;
    };
    let here = nodes[at];
    let turn = |to: usize| {
        let (ux, uy) = (here[0] - came[0], here[1] - came[1]);
        let (vx, vy) = (nodes[to][0] - here[0], nodes[to][1] - here[1]);
        (ux * vy - uy * vx).atan2(ux * vx + uy * vy)
    };
    (0..ways.len())
        .max_by(|&one, &other| turn(ways[one]).total_cmp(&turn(ways[other])))
        .unwrap_or(0)
}
