//! The planes as water finds them: what it meets next on its way down.

use crate::frame::{Frame, Place};
use crate::laying::shape::{Edge, edges, holes};
use crate::leak::entries::off_length;
use trade::roof::{LineKind, RoofLine, RoofPlan};

/// Closer than a millimetre is the same place.
pub const SAME: f64 = 1e-3;

/// Something upright that water goes round, on one plane: a ring on the plane, clockwise. Where a line of the plan runs along it, as a valley does
/// where a dormer dies into the slope, water meets that line.
#[derive(Clone, Debug)]
pub struct InTheWay {
    ring: Vec<Edge>,
    /// The candidate that it is, by its place in the list; `None` for a hole of the plan.
    pub candidate: Option<usize>,
}

/// One plane.
pub struct Ground {
    /// Its measure.
    pub frame: Frame,
    /// Its rim on the plane, the inside to the left.
    pub rim: Vec<Edge>,
    /// What stands in the way on it.
    pub in_the_way: Vec<InTheWay>,
    /// Its height where nothing is up the slope, and what it gains for a unit up it.
    lowest: f64,
    gains: f64,
}

/// What water meets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Meets {
    /// An edge of the plane, and the line of the plan that it is.
    Edge(Option<usize>),
    /// Something in its way, by its place in the list.
    InTheWay(usize),
}

/// The ground of every plane of a plan, with nothing but its holes in the way.
pub fn grounds(plan: &RoofPlan) -> Vec<Ground> {
    plan.planes
        .iter()
        .enumerate()
        .map(|(place, plane)| {
            let frame = Frame::of(plane);
            let gains = plane.pitch.in_twelfths() / 12.0 / frame.factor();
            let lowest = plane.corners.first().map_or(0.0, |corner| {
                corner.z - frame.on_plane((corner.x, corner.y)).1 * gains
            });
            let in_the_way = holes(plan, place, plane)
                .into_iter()
                .map(|ring| InTheWay {
                    ring,
                    candidate: None,
                })
                .collect();
            Ground {
                frame,
                rim: edges(plan, place, plane),
                in_the_way,
                lowest,
                gains,
            }
        })
        .collect()
}

impl Ground {
    /// Puts a rectangle in the way: its middle on plan, its width along the eave and its depth up the roof on plan, in metres.
    pub fn stand(&mut self, middle: Place, wide: f64, deep: f64, candidate: usize) {
        let (u, v) = self.frame.on_plane(middle);
        let (half_u, half_v) = (wide / 2.0, deep / 2.0 * self.frame.factor());
        let corners = [
            (u - half_u, v - half_v),
            (u - half_u, v + half_v),
            (u + half_u, v + half_v),
            (u + half_u, v - half_v),
        ];
        let ring = (0..4).map(|at| Edge {
            from: corners[at],
            to: corners[(at + 1) % 4],
            line: None,
        });
        self.in_the_way.push(InTheWay {
            ring: ring.collect(),
            candidate: Some(candidate),
        });
    }

    /// Whether a place on the plane lies within its rim, and in no hole of the plan.
    pub fn holds(&self, place: Place) -> bool {
        let crossed = |edge: &Edge| {
            let (a, b) = (edge.from, edge.to);
            (a.1 > place.1) != (b.1 > place.1)
                && place.0 < a.0 + (place.1 - a.1) / (b.1 - a.1) * (b.0 - a.0)
        };
        self.edges().filter(|edge| crossed(edge)).count() % 2 == 1
    }

    /// The edges of its rim and of the holes in it.
    fn edges(&self) -> impl Iterator<Item = &Edge> {
        let holes = self.in_the_way.iter().filter(|it| it.candidate.is_none());
        self.rim.iter().chain(holes.flat_map(|hole| &hole.ring))
    }

    /// How high it lies at a place on plan.
    pub fn height(&self, place: Place) -> f64 {
        self.lowest + self.frame.on_plane(place).1 * self.gains
    }

    /// How far a place on plan lies outside the plane, on plan, in metres; nothing where it lies under it.
    pub fn outside(&self, place: Place) -> f64 {
        if self.holds(self.frame.on_plane(place)) {
            return 0.0;
        }
        self.edges()
            .map(|edge| {
                let (from, to) = (self.frame.on_plan(edge.from), self.frame.on_plan(edge.to));
                off_length(from, to, place)
            })
            .fold(f64::INFINITY, f64::min)
    }

    /// Where water from a place on the plane comes to straight down it, and what it meets there.
    pub fn down(&self, from: Place) -> Option<(Place, Meets)> {
        let rim = self.rim.iter().filter_map(|edge| {
            Some((
                crossing(edge.from, edge.to, from, 1.0)?,
                Meets::Edge(edge.line),
            ))
        });
        self.stood(from, 1.0)
            .chain(rim)
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(v, meets)| ((from.0, v), meets))
    }

    /// Where the way straight up from a place on the plane ends, and what is met there.
    pub fn up(&self, from: Place) -> Option<(Place, Meets)> {
        let rim = self.rim.iter().filter_map(|edge| {
            Some((
                crossing(edge.from, edge.to, from, -1.0)?,
                Meets::Edge(edge.line),
            ))
        });
        self.stood(from, -1.0)
            .chain(rim)
            .min_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(v, meets)| ((from.0, v), meets))
    }

    fn stood(&self, from: Place, way: f64) -> impl Iterator<Item = (f64, Meets)> {
        self.in_the_way
            .iter()
            .enumerate()
            .flat_map(move |(at, it)| {
                it.ring.iter().filter_map(move |edge| {
                    let meets = match edge.line {
                        Some(line) => Meets::Edge(Some(line)),
                        None => Meets::InTheWay(at),
                    };
                    Some((crossing(edge.from, edge.to, from, way)?, meets))
                })
            })
    }

    /// How far up the plane something in the way reaches.
    pub fn top_of(&self, in_the_way: usize) -> Option<f64> {
        let ring = &self.in_the_way.get(in_the_way)?.ring;
        ring.iter().map(|edge| edge.from.1).max_by(f64::total_cmp)
    }

    /// The corners of what stands in the way, farthest left and farthest right.
    pub fn corners_of(&self, in_the_way: usize) -> Option<(Place, Place)> {
        let ring = &self.in_the_way.get(in_the_way)?.ring;
        let side = |a: &Place, b: &Place| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1));
        let places = || ring.iter().map(|edge| edge.from);
        let left = places().min_by(side)?;
        let right = places().max_by(side)?;
        Some((left, right))
    }
}

/// Where the upright through a place crosses an edge, below it (`way` 1) or above it (`way` -1), on the edge's upper or lower side: that which
/// keeps the inside of the plane on the place's side.
fn crossing(a: Place, b: Place, from: Place, way: f64) -> Option<f64> {
    let runs = (b.0 - a.0) * way;
    let (low, high) = if a.0 < b.0 { (a.0, b.0) } else { (b.0, a.0) };
    if runs <= 0.0 || from.0 < low || from.0 >= high {
        return None;
    }
    let v = a.1 + (from.0 - a.0) / (b.0 - a.0) * (b.1 - a.1);
    ((from.1 - v) * way > -SAME).then_some(v)
}

/// The highest plane under a place on plan that lies lower than a height there.
pub fn below(grounds: &[Ground], place: Place, height: f64) -> Option<usize> {
    grounds
        .iter()
        .enumerate()
        .filter(|(_, ground)| ground.holds(ground.frame.on_plane(place)))
        .map(|(plane, ground)| (plane, ground.height(place)))
        .filter(|(_, lies)| *lies < height)
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(plane, _)| plane)
}

/// The other plane beside a line.
pub fn beyond(line: &RoofLine, plane: usize) -> Option<usize> {
    line.planes.iter().copied().find(|other| *other != plane)
}

/// The valley that goes on where another ends, at a place on plan.
pub fn valley_on(plan: &RoofPlan, end: Place) -> Option<&RoofLine> {
    plan.lines.iter().find(|line| {
        line.kind == LineKind::Valley
            && line.from.z < line.to.z
            && (line.to.x - end.0).hypot(line.to.y - end.1) < SAME
    })
}
