//! The way water takes from where it comes in: down the slope, round what stands there, along valleys and walls, to the eave.

use crate::frame::Place;
use crate::leak::entries::nearest_on;
use crate::leak::ground::{Ground, Meets, beyond, valley_on};
use trade::roof::{LineKind, RoofLine, RoofPlan};

/// No way has more bends than this.
const BENDS: usize = 24;
/// How far beside a corner water comes down, in metres.
const BESIDE: f64 = 0.01;

/// What happened to water on its way.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Turns {
    /// It ran along a valley.
    pub valley: bool,
    /// It ran down along a wall.
    pub wall: bool,
    /// It was blown over the ridge.
    pub over_ridge: bool,
    /// What turned it aside first.
    pub round: Option<Round>,
}

/// What stands in the way of water.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Round {
    /// A part, by its place among the candidates.
    Part(usize),
    /// What a hole of the plan was left for.
    Hole,
}

/// One way of the water.
#[derive(Clone, Debug)]
pub struct Way {
    /// Its bends on plan, from where the water comes in to where it ends.
    pub places: Vec<Place>,
    /// What share of the water takes it.
    pub share: f64,
    /// What happened on it.
    pub turns: Turns,
    /// The planes under which it can be seen, by their place in the plan.
    pub planes: Vec<usize>,
}

impl Way {
    /// Its bends as far as the place on it that is nearest to another, which ends it.
    pub fn as_far_as(&self, place: Place) -> Vec<Place> {
        let nearest = self
            .places
            .windows(2)
            .enumerate()
            .filter_map(|(at, pair)| {
                let [from, to] = pair else { return None };
                let near = nearest_on(*from, *to, place);
                let far = (near.0 - place.0).hypot(near.1 - place.1);
                Some((at, near, far))
            })
            .min_by(|a, b| a.2.total_cmp(&b.2));
        match nearest {
            Some((at, near, _)) => self
                .places
                .iter()
                .take(at + 1)
                .copied()
                .chain([near])
                .collect(),
            None => self.places.clone(),
        }
    }
}

/// Every way of water that comes in at a place of a plane, the place given on plan.
pub fn ways(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    from: Place,
    turns: Turns,
) -> Vec<Way> {
    let start = Way {
        places: vec![from],
        share: 1.0,
        turns,
        planes: vec![plane],
    };
    let Some(ground) = grounds.get(plane) else {
        return Vec::new();
    };
    let mut done = Vec::new();
    let mut open = vec![(start, plane, ground.frame.on_plane(from))];
    while let Some((way, plane, at)) = open.pop() {
        if way.places.len() > BENDS {
            done.push(way);
        } else {
            step(plan, grounds, (way, plane, at), &mut open, &mut done);
        }
    }
    done
}

type Going = (Way, usize, Place);

fn step(
    plan: &RoofPlan,
    grounds: &[Ground],
    going: Going,
    open: &mut Vec<Going>,
    done: &mut Vec<Way>,
) {
    let (mut way, plane, at) = going;
    let Some(ground) = grounds.get(plane) else {
        return done.push(way);
    };
    let Some((met, meets)) = ground.down(at) else {
        return done.push(way);
    };
    way.places.push(ground.frame.on_plan(met));
    match meets {
        Meets::InTheWay(what) => aside(ground, plane, way, what, open),
        Meets::Edge(line) => {
            let Some(line) = line.and_then(|line| plan.lines.get(line)) else {
                return done.push(way);
            };
            match line.kind {
                LineKind::Valley => done.push(down_valleys(plan, way, line)),
                LineKind::Step => {
                    way.turns.wall = true;
                    way.places.push((line.from.x, line.from.y));
                    done.push(way);
                }
                LineKind::PitchChange => match beyond(line, plane) {
                    Some(next) => over(grounds, way, next, open),
                    None => done.push(way),
                },
                _ => done.push(way),
            }
        }
    }
}

/// Half of the water goes round each side of what stands in its way.
fn aside(ground: &Ground, plane: usize, way: Way, what: usize, open: &mut Vec<Going>) {
    let Some((left, right)) = ground.corners_of(what) else {
        return;
    };
    let candidate = ground.in_the_way.get(what).and_then(|it| it.candidate);
    let round = candidate.map_or(Round::Hole, Round::Part);
    for corner in [(left.0 - BESIDE, left.1), (right.0 + BESIDE, right.1)] {
        let mut half = way.clone();
        half.share /= 2.0;
        half.turns.round.get_or_insert(round);
        half.places.push(ground.frame.on_plan(corner));
        open.push((half, plane, corner));
    }
}

/// On over a change of pitch.
fn over(grounds: &[Ground], mut way: Way, next: usize, open: &mut Vec<Going>) {
    if let (Some(ground), Some(last)) = (grounds.get(next), way.places.last()) {
        let (u, v) = ground.frame.on_plane(*last);
        way.planes.push(next);
        open.push((way, next, (u, v - BESIDE)));
    }
}

/// Along a valley to its foot, and along those that go on from there.
fn down_valleys(plan: &RoofPlan, mut way: Way, valley: &RoofLine) -> Way {
    way.turns.valley = true;
    let mut next = Some(valley);
    while let Some(valley) = next.filter(|_| way.places.len() <= BENDS) {
        let foot = (valley.from.x, valley.from.y);
        way.places.push(foot);
        way.planes.extend(&valley.planes);
        next = valley_on(plan, foot);
    }
    way
}

/// The way of water that comes in at a valley itself.
pub fn from_valley(plan: &RoofPlan, from: Place, valley: &RoofLine) -> Way {
    let way = Way {
        places: vec![from],
        share: 1.0,
        turns: Turns::default(),
        planes: Vec::new(),
    };
    let mut way = down_valleys(plan, way, valley);
    way.turns.valley = false;
    way
}
