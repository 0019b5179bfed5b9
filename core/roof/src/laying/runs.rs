//! One course over a shape: where it runs from and to, and how its upright cuts part what is seen of it.

use crate::frame::Place;
use crate::laying::shape::area;

/// What is thinner than a tenth of a micrometre is rounding, not roof.
const NOTHING: f64 = 1e-7;

/// One edge of a shape, from its lower to its higher end.
#[derive(Clone, Copy, Debug)]
struct Side {
    low: Place,
    high: Place,
    /// What it adds to the count of rings that a place right of it lies in: 1 where the ring runs down along it, -1 where up.
    turns: i8,
}

impl Side {
    fn at(&self, up: f64) -> f64 {
        let share = (up - self.low.1) / (self.high.1 - self.low.1);
        self.low.0 + (self.high.0 - self.low.0) * share.clamp(0.0, 1.0)
    }

    /// How high it crosses another, where it does.
    fn crosses(&self, other: &Self) -> Option<f64> {
        let low = self.low.1.max(other.low.1);
        let high = self.high.1.min(other.high.1);
        if high - low < NOTHING {
            return None;
        }
        let (below, above) = (self.at(low) - other.at(low), self.at(high) - other.at(high));
        (below.min(above) < -NOTHING && below.max(above) > NOTHING)
            .then(|| low + (high - low) * below / (below - above))
    }
}

/// A shape as courses meet it: its edges that are not level, and the heights where they end or cross.
pub struct Outline {
    sides: Vec<Side>,
    levels: Vec<f64>,
}

/// The outline of rings, what is inside to the left of each. Where a ring crosses itself, the part that it runs round the wrong way is outside.
pub fn outline(rings: &[Vec<Place>]) -> Outline {
    let sides: Vec<Side> = rings
        .iter()
        .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)))
        .filter(|(a, b)| (a.1 - b.1).abs() > NOTHING)
        .map(|(a, b)| {
            if a.1 < b.1 {
                Side {
                    low: *a,
                    high: *b,
                    turns: -1,
                }
            } else {
                Side {
                    low: *b,
                    high: *a,
                    turns: 1,
                }
            }
        })
        .collect();
    let crossings = sides.iter().enumerate().flat_map(|(at, side)| {
        let others = sides.iter().skip(at + 1);
        others.filter_map(move |other| side.crosses(other))
    });
    let levels = sides
        .iter()
        .flat_map(|side| [side.low.1, side.high.1])
        .chain(crossings)
        .collect();
    Outline { sides, levels }
}

/// A level part of a course between two edges of the shape.
#[derive(Clone, Copy, Debug)]
struct Slab {
    low: f64,
    high: f64,
    /// The left edge at its low and high end.
    left: (f64, f64),
    /// The right edge at its low and high end.
    right: (f64, f64),
    /// How far the pieces reach left and right, what the next course hides counted.
    reach: (f64, f64),
}

/// What hangs together of one course.
#[derive(Clone, Debug)]
pub struct Run {
    slabs: Vec<Slab>,
    /// From where to where the pieces reach along it.
    pub reach: (f64, f64),
}

/// The runs of the course from `low` to `high`, of pieces `height` high, from left to right.
pub fn runs(outline: &Outline, low: f64, high: f64, height: f64) -> Vec<Run> {
    let mut levels: Vec<f64> = outline
        .levels
        .iter()
        .copied()
        .filter(|level| *level > low + NOTHING && *level < high - NOTHING)
        .chain([low, high])
        .collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|a, b| (*a - *b).abs() < NOTHING);
    let mut runs: Vec<Run> = Vec::new();
    for pair in levels.windows(2) {
        if let [from, to] = pair {
            let hidden_to = if *to > high - NOTHING {
                low + height
            } else {
                *to
            };
            for slab in slabs(&outline.sides, *from, *to, hidden_to) {
                join(&mut runs, slab);
            }
        }
    }
    runs.sort_by(|a, b| a.reach.0.total_cmp(&b.reach.0));
    runs
}

fn slabs(sides: &[Side], low: f64, high: f64, hidden_to: f64) -> Vec<Slab> {
    let middle = f64::midpoint(low, high);
    let mut across: Vec<&Side> = sides
        .iter()
        .filter(|side| side.low.1 < middle && side.high.1 > middle)
        .collect();
    across.sort_by(|a, b| a.at(middle).total_cmp(&b.at(middle)));
    let mut slabs = Vec::new();
    let (mut within, mut left) = (0_i8, None);
    for side in across {
        let before = within;
        within = within.saturating_add(side.turns);
        match left {
            None if before <= 0 && within > 0 => left = Some(side),
            Some(from) if within <= 0 => {
                slabs.push(slab(from, side, (low, high), hidden_to));
                left = None;
            }
            _ => {}
        }
    }
    slabs
}

fn slab(left: &Side, right: &Side, (low, high): (f64, f64), hidden_to: f64) -> Slab {
    let hidden = |side: &Side| side.at(hidden_to.min(side.high.1).max(high));
    Slab {
        low,
        high,
        left: (left.at(low), left.at(high)),
        right: (right.at(low), right.at(high)),
        reach: (
            left.at(low).min(left.at(high)).min(hidden(left)),
            right.at(low).max(right.at(high)).max(hidden(right)),
        ),
    }
}

/// Adds a slab to the run below it that it touches, and makes one of the runs that it ties together.
fn join(runs: &mut Vec<Run>, slab: Slab) {
    let mut joined = Run {
        slabs: vec![slab],
        reach: slab.reach,
    };
    runs.retain_mut(|run| {
        let touches = run.slabs.iter().any(|below| {
            (below.high - slab.low).abs() < NOTHING
                && below.left.1.max(slab.left.0) < below.right.1.min(slab.right.0) - NOTHING
        });
        if touches {
            joined.slabs.append(&mut run.slabs);
            joined.reach.0 = joined.reach.0.min(run.reach.0);
            joined.reach.1 = joined.reach.1.max(run.reach.1);
        }
        !touches
    });
    joined.slabs.sort_by(|a, b| a.low.total_cmp(&b.low));
    runs.push(joined);
}

impl Run {
    /// What is seen of the piece from `from` to `to`: rims, anticlockwise.
    pub fn seen(&self, from: f64, to: f64) -> Vec<Vec<Place>> {
        let mut rims: Vec<Vec<Place>> = Vec::new();
        for slab in &self.slabs {
            let rim = slab.cut(from, to);
            if rim.len() < 3 || area(&rim) < NOTHING * NOTHING {
                continue;
            }
            let below = rims
                .iter()
                .enumerate()
                .find_map(|(at, below)| Some((at, stacked(below, &rim)?)));
            match below {
                Some((at, whole)) => rims[at] = whole,
                None => rims.push(rim),
            }
        }
        rims
    }
}

impl Slab {
    /// Its rim, anticlockwise, cut upright at `from` and `to`.
    fn cut(&self, from: f64, to: f64) -> Vec<Place> {
        let rim = vec![
            (self.left.0, self.low),
            (self.right.0, self.low),
            (self.right.1, self.high),
            (self.left.1, self.high),
        ];
        let rim = keep(&rim, |place| place.0 - from);
        let mut rim = keep(&rim, |place| to - place.0);
        rim.dedup_by(|a, b| same(*a, *b));
        if rim.len() > 1 && same(rim[0], rim[rim.len() - 1]) {
            rim.pop();
        }
        rim
    }
}

/// The part of a convex rim where `inside` is not negative.
fn keep(rim: &[Place], inside: impl Fn(&Place) -> f64) -> Vec<Place> {
    let mut kept = Vec::with_capacity(rim.len() + 1);
    for (a, b) in rim.iter().zip(rim.iter().cycle().skip(1)) {
        let (da, db) = (inside(a), inside(b));
        if da >= 0.0 {
            kept.push(*a);
        }
        if (da > 0.0 && db < 0.0) || (da < 0.0 && db > 0.0) {
            let share = da / (da - db);
            kept.push((a.0 + (b.0 - a.0) * share, a.1 + (b.1 - a.1) * share));
        }
    }
    kept
}

/// One rim of two where the upper stands on the whole top edge of the lower.
fn stacked(below: &[Place], above: &[Place]) -> Option<Vec<Place>> {
    let top = (0..below.len()).find_map(|at| {
        let next = (at + 1) % below.len();
        let foot = (0..above.len()).find(|foot| {
            let after = (foot + 1) % above.len();
            same(above[*foot], below[next]) && same(above[after], below[at])
        })?;
        Some((at, foot))
    });
    let (at, foot) = top?;
    // Up to the lower end of the shared edge, round the upper rim, then on.
    let mut whole: Vec<Place> = below[..=at].to_vec();
    let round = (2..above.len()).map(|step| above[(foot + step) % above.len()]);
    whole.extend(round);
    whole.extend_from_slice(&below[at + 1..]);
    whole.dedup_by(|a, b| same(*a, *b));
    Some(whole)
}

fn same(a: Place, b: Place) -> bool {
    (a.0 - b.0).abs() < NOTHING && (a.1 - b.1).abs() < NOTHING
}
