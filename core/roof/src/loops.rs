//! Rims put together from lines that run end to end.

/// The rims that lines with their plane to the left make up, each by its nodes.
pub(crate) fn closed(
    nodes: &[[f64; 3]],
    ways: impl IntoIterator<Item = (usize, usize)>,
) -> Vec<Vec<usize>> {
    let mut left: Vec<(usize, usize)> = ways.into_iter().collect();
    left.sort_by_key(|&(from, _)| from);
    let mut loops = Vec::new();
    while let Some(&(start, _)) = left.first() {
        let walked = walk(nodes, &mut left, start);
        if walked.len() > 2 {
            loops.push(walked);
        }
    }
    loops
}

/// One rim, from a node until it is back. It takes its lines out of those that are left, which are in order of the nodes where they begin.
fn walk(nodes: &[[f64; 3]], left: &mut Vec<(usize, usize)>, start: usize) -> Vec<usize> {
    let mut rim = Vec::with_capacity(left.len());
    rim.push(start);
    let mut at = start;
    loop {
        let first = left.partition_point(|&(from, _)| from < at);
        let ways = left[first..].partition_point(|&(from, _)| from == at);
        if ways == 0 {
            return rim;
        }
        let came = rim.len().checked_sub(2).map(|before| nodes[rim[before]]);
        let chosen = sharpest_left(nodes, came, at, &left[first..first + ways]);
        (_, at) = left.remove(first + chosen);
        if at == start {
            return rim;
        }
        rim.push(at);
    }
}

/// Of several ways on, the one that turns most to the left: so rims that touch in a node stay apart.
fn sharpest_left(
    nodes: &[[f64; 3]],
    came: Option<[f64; 3]>,
    at: usize,
    ways: &[(usize, usize)],
) -> usize {
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
        .max_by(|&one, &other| turn(ways[one].1).total_cmp(&turn(ways[other].1)))
        .unwrap_or(0)
}
