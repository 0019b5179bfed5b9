//! The weighted straight skeleton of an outline: where the planes that rise from its edges meet.
//!
//! # What it is
//!
//! From each edge of the outline a plane rises inward at its own slope; from an upright edge, a gable or a wall, none does. Cut the growing roof at
//! the height `z`: the cut is the outline shrunk inward, its edges moved parallel to themselves, fast where the roof is shallow and not
//! at all where it is upright. That shrinking outline is the *wavefront*, `z` is its time, and the paths of its corners are the hips, valleys
//! and ridges (O. Aichholzer, F. Aurenhammer, D. Alberts, B. Gärtner, "A Novel Type of Skeleton for Polygons", 1995; O. Aichholzer,
//! F. Aurenhammer, "Straight Skeletons for General Polygonal Figures in the Plane", 1996).
//!
//! # How it is found
//!
//! The wavefront is followed from event to event (`wavefront`). Two things happen to it:
//!
//! - an edge *collapses*: its ends meet, it vanishes, and its neighbours meet;
//! - a reflex corner *strikes* an edge: the edge is cut in two there, and a loop becomes two, or two loops become one.
//!
//! As P. Felkel and Š. Obdržálek ("Straight Skeleton Implementation", 1998) do, each corner keeps its next event. Unlike there, whether a corner really
//! strikes an edge is asked at the moment of the event and of the edge as it then is, not of how it set out. With `n` corners of which `r` are reflex this costs
//! `O(n·(n + r))` steps of a few multiplications; better bounds exist (D. Eppstein, J. Erickson, "Raising Roofs, Crashing Cycles, and Playing Pool",
//! 1999), but a roof has tens of corners and the constant counts.
//!
//! # Why it does not go wrong
//!
//! Positions never decide anything. A corner of the wavefront is two planes, an event is three planes that meet, and each question is the
//! sign of a determinant of the planes' numbers, computed exactly where it is close (`support`, `exact`). So events at the same moment are known to be so, and
//! edges of no length too. Simultaneous events are then taken one by one in any order: a collapse at this very moment is an edge of no length
//! that shrinks, and one that grows is left alone. Several reflex corners that meet in one point are strikes at the end of an edge, and the
//! edges of no length that these leave behind collapse in the same moment.
//!
//! What has no path of its own is settled at once (`settle`):
//!
//! - two edges of *one plane* become neighbours: they are one edge from now on;
//! - two edges that face each other come to lie on each other: the level *ridge* between them runs to the nearer end at once;
//! - two edges that run the same way at *different* speed come to lie in one line: the slower, which is the steeper plane, goes on over the faster
//!   one; but where the slower stands upright, the plane goes on over it. Weighted skeletons leave this case open (T. Biedl, M. Held, S. Huber, D. Kaaser,
//!   P. Palfrader, "Weighted Straight Skeletons in the Plane", 2015; see G. Eder, M. Held, "Computing positively weighted straight skeletons of
//!   simple polygons based on a bisector arrangement", 2018, and G. Eder, M. Held, P. Palfrader on their implementation). As we decide it, a
//!   shallow porch runs up to the main roof's eave line and the main roof goes on above it, and water flows together again above a shaft's walls.
//!   [`Skeleton::choices`] counts how often this was decided.
//!
//! What comes of several such cases in one place can hang on which is taken first. So an outline is always looked at from the same corner and the same
//! side, chosen by its own numbers (`seen`): however its rings were written down, one outline has one roof.
//!
//! Neighbouring edges of one line but of different slope are parted from the start by an upright *step* across the line, so that each
//! keeps its slope.

mod exact;
mod faces;
mod seen;
mod settle;
mod support;
mod wavefront;
mod whole;

use support::{Support, SupportId, Supports};

/// A point of an outline in whole units.
pub type Grid = (i64, i64);

/// The greatest coordinate taken, either way: half of 2²⁹.
pub const FARTHEST: i64 = 1 << 28;

/// One edge of an outline, from its own corner to that of the next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// Where it begins.
    pub from: Grid,
    /// Rise over run of the plane that it carries; `None` where it stands upright.
    pub slope: Option<f64>,
    /// How high the plane begins, at least 0; the lowest begins at 0.
    pub base: f64,
}

/// What lies on one side of an arc.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// Beyond the outline.
    Outside,
    /// A plane, by its place in [`Skeleton::faces`].
    Face(usize),
    /// An upright edge, by its place in [`Skeleton::faces`].
    Upright(usize),
}

/// A line of the skeleton or of the outline, between two of its nodes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Arc {
    /// Where it begins, by its place in [`Skeleton::nodes`].
    pub from: usize,
    /// Where it ends.
    pub to: usize,
    /// What lies to the left.
    pub left: Side,
    /// What lies to the right.
    pub right: Side,
}

/// All edges of one plane, and what of the roof it covers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Face {
    /// The edges that carry it, each as ring and number; none for a step between two slopes.
    pub edges: Vec<(usize, usize)>,
    /// Inward normal of its line, not of unit length.
    pub normal: (f64, f64),
    /// Its rims by nodes, anticlockwise; what is cut out of it, clockwise. None where it is upright or nothing of it is seen.
    pub loops: Vec<Vec<usize>>,
}

/// The skeleton of an outline.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Skeleton {
    /// Where lines end: `x` and `y` in the outline's units, `z` in the same above the lowest base.
    pub nodes: Vec<[f64; 3]>,
    /// The lines.
    pub arcs: Vec<Arc>,
    /// The planes, upright ones among them.
    pub faces: Vec<Face>,
    /// How often edges of different slope came into one line, where a weighted skeleton is open and a choice was made.
    pub choices: usize,
}

/// The wavefront stands still and has not closed: what is left of it is bounded by these edges, each as ring and number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NeverCloses(pub Vec<(usize, usize)>);

/// The skeleton of an outline: its rim first, anticlockwise, then its holes, clockwise.
///
/// The rings are simple, do not touch, and have at least three corners each within [`FARTHEST`]; slopes are positive and finite.
///
/// # Errors
/// Where too little of the outline moves for the roof to close.
pub fn skeleton(rings: &[Vec<Edge>]) -> Result<Skeleton, NeverCloses> {
    let seen = seen::Seen::first(rings);
    let carried = Carried::by(&seen.of(rings));
    let traced = wavefront::Wavefront::set_out(&carried).run();
    match faces::gather(&carried, traced) {
        Ok(skeleton) => Ok(seen.turned_back(skeleton)),
        Err(NeverCloses(edges)) => Err(NeverCloses(seen.back(&edges))),
    }
}

/// An edge of the wavefront as it sets out, and the plane that it carries.
#[derive(Clone, Copy, Debug)]
struct Carrying {
    /// Where it begins.
    from: Grid,
    /// Its plane at the lowest base.
    first: SupportId,
    /// The edge of the outline, as ring and number; none for a step, which has no length yet.
    edge: Option<(usize, usize)>,
}

/// An upright edge that begins to rise.
#[derive(Clone, Copy, Debug)]
struct Start {
    /// At which height.
    at: f64,
    /// The upright plane.
    waiting: SupportId,
    /// The plane that takes over.
    later: SupportId,
}

/// The planes of an outline, and which edge carries which.
#[derive(Debug)]
struct Carried {
    supports: Supports,
    /// The wavefront as it sets out, ring by ring.
    rings: Vec<Vec<Carrying>>,
    /// Edges that begin to rise later, the lowest first.
    starts: Vec<Start>,
    /// Steps, each with the same turned about.
    steps: Vec<(SupportId, SupportId)>,
}

impl Carried {
    fn by(rings: &[Vec<Edge>]) -> Self {
        let mut carried = Self {
            supports: Supports::new(),
            rings: Vec::with_capacity(rings.len()),
            starts: Vec::new(),
            steps: Vec::new(),
        };
        for (number, ring) in rings.iter().enumerate() {
            let carrying = carried.ring(number, ring);
            carried.rings.push(carrying);
        }
        carried
            .starts
            .sort_by(|one, other| one.at.total_cmp(&other.at));
        carried
    }

    fn ring(&mut self, number: usize, ring: &[Edge]) -> Vec<Carrying> {
        let firsts: Vec<SupportId> = (0..ring.len()).map(|at| self.first(ring, at)).collect();
        let mut carrying = Vec::with_capacity(ring.len());
        for (at, &first) in firsts.iter().enumerate() {
            let before = (at + ring.len() - 1) % ring.len();
            let from = ring[at].from;
            if let Some(step) = self.step((firsts[before], &ring[before]), (first, &ring[at])) {
                carrying.push(Carrying {
                    from,
                    first: step,
                    edge: None,
                });
            }
            carrying.push(Carrying {
                from,
                first,
                edge: Some((number, at)),
            });
        }
        carrying
    }

    /// The plane with which an edge sets out: upright where it begins to rise above the lowest base.
    fn first(&mut self, ring: &[Edge], at: usize) -> SupportId {
        let edge = ring[at];
        let (normal, c) = line(edge.from, ring[(at + 1) % ring.len()].from);
        let upright = Support::over(normal, c, None, 0.0);
        let Some(slope) = edge.slope else {
            return self.supports.take(upright);
        };
        if edge.base <= 0.0 {
            return self
                .supports
                .take(Support::over(normal, c, Some(slope), 0.0));
        }
        let later = self
            .supports
            .take(Support::over(normal, c, Some(slope), edge.base));
        let waiting = self.supports.take(upright.becoming(later));
        if !self.starts.iter().any(|start| start.waiting == waiting) {
            self.starts.push(Start {
                at: edge.base,
                waiting,
                later,
            });
        }
        waiting
    }

    /// The upright step that parts neighbours of one line whose planes differ. It runs inward where the second gets ahead of the first.
    fn step(&mut self, before: (SupportId, &Edge), after: (SupportId, &Edge)) -> Option<SupportId> {
        if before.0 == after.0
            || self.supports.turn(before.0, after.0).is_ne()
            || !self.supports.run_alike(before.0, after.0)
        {
            return None;
        }
        let (a, b) = self.supports.get(after.0).whole_normal();
        let (x, y) = after.1.from;
        let mut across = |(a, b): Grid| {
            self.supports
                .take(Support::over((a, b), -(a * x + b * y), None, 0.0))
        };
        let (inward, outward) = (across((-b, a)), across((b, -a)));
        self.steps.extend([(inward, outward), (outward, inward)]);
        Some(if gets_ahead(after.1, before.1) {
            inward
        } else {
            outward
        })
    }

    /// The same step turned about, where a plane is one.
    fn turned(&self, step: SupportId) -> Option<SupportId> {
        self.steps
            .iter()
            .find(|(known, _)| *known == step)
            .map(|(_, turned)| *turned)
    }
}

/// Whether one edge gets ahead of another in the same line: it begins to rise earlier, or at once and is shallower.
fn gets_ahead(one: &Edge, other: &Edge) -> bool {
    match (one.slope, other.slope) {
        (None, _) => false,
        (Some(_), None) => true,
        (Some(slope), Some(others)) => (one.base, slope) < (other.base, others),
    }
}

/// The inward normal of the line from one point to another, without a common divisor, and the constant of the line.
fn line(from: Grid, to: Grid) -> (Grid, i64) {
    let (dx, dy) = (to.0 - from.0, to.1 - from.1);
    let divisor = greatest_common_divisor(dx.unsigned_abs(), dy.unsigned_abs()).max(1);
    let (a, b) = (-dy / divisor, dx / divisor);
    ((a, b), -(a * from.0 + b * from.1))
}

#[allow(clippy::cast_possible_wrap)]
fn greatest_common_divisor(mut a: u64, mut b: u64) -> i64 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a as i64
}
