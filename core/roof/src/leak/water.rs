//! The way water takes from where it comes in: down the slope, round what stands there, along valleys and walls, to the eave.

use crate::frame::Place;
use crate::leak::entries::nearest_on;
use crate::leak::ground::{Ground, Meets, below, beyond, valley_on};
use trade::roof::{LineKind, RoofLine, RoofPlan};

/// No way has more bends than this.
const BENDS: usize = 24;
/// How far beside a corner water comes down, in metres.
const BESIDE: f64 = 0.01;
/// How far out from an eave water lands on a roof below, on plan, in metres.
const OUT: f64 = 0.05;
/// What share of the water that comes to such an eave gets in under the roof below. Common practice, no source: the rest stays outside.
const SHARE_BELOW: f64 = 0.5;

/// What happened to water on its way.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[allow(
    clippy::struct_excessive_bools,
    reason = "each is a thing that may happen to water, whatever else does"
)]
pub struct Turns {
    /// It ran along a valley.
    pub valley: bool,
    /// It ran down along a wall.
    pub wall: bool,
    /// It was blown over the ridge.
    pub over_ridge: bool,
    /// It ran off one roof onto a lower one.
    pub onto_lower: bool,
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
    match grounds.get(plane) {
        Some(ground) => {
            let at = ground.frame.on_plane(from);
            run(plan, grounds, vec![(start, plane, at)])
        }
        None => Vec::new(),
    }
}

/// Follows ways to their ends.
fn run(plan: &RoofPlan, grounds: &[Ground], mut open: Vec<Going>) -> Vec<Way> {
    let mut done = Vec::new();
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
                LineKind::Valley => {
                    let way = down_valleys(plan, way, line);
                    from_foot(grounds, way, open, done);
                }
                LineKind::Step => {
                    way.turns.wall = true;
                    way.places.push((line.from.x, line.from.y));
                    past_wall(ground, plane, way, open, done);
                }
                LineKind::PitchChange => match beyond(line, plane) {
                    Some(next) => over(grounds, way, next, open),
                    None => done.push(way),
                },
                LineKind::Eave => off_eave(grounds, plane, way, open, done),
                _ => done.push(way),
            }
        }
    }
}

/// Off an eave: half of the water runs on under a roof that lies below it, where one does.
fn off_eave(
    grounds: &[Ground],
    plane: usize,
    mut way: Way,
    open: &mut Vec<Going>,
    done: &mut Vec<Way>,
) {
    let landing = grounds
        .get(plane)
        .zip(way.places.last())
        .and_then(|(ground, last)| {
            let up = ground.frame.up();
            let out = (last.0 - up.0 * OUT, last.1 - up.1 * OUT);
            Some((below(grounds, out, ground.height(*last))?, out))
        });
    if let Some((lower, out)) = landing {
        let mut on = way.clone();
        on.share *= SHARE_BELOW;
        way.share *= 1.0 - SHARE_BELOW;
        on.turns.onto_lower = true;
        on.places.push(out);
        on.planes.push(lower);
        open.push((on, lower, grounds[lower].frame.on_plane(out)));
    }
    done.push(way);
}

/// On from the foot of a valley that ends in the midst of a slope, as a dormer's does.
fn from_foot(grounds: &[Ground], mut way: Way, open: &mut Vec<Going>, done: &mut Vec<Way>) {
    let [.., before, foot] = way.places.as_slice() else {
        return done.push(way);
    };
    let run = (foot.0 - before.0, foot.1 - before.1);
    let length = run.0.hypot(run.1).max(f64::MIN_POSITIVE);
    let past = (
        foot.0 + run.0 / length * BESIDE,
        foot.1 + run.1 / length * BESIDE,
    );
    let height = way
        .planes
        .iter()
        .filter_map(|plane| grounds.get(*plane))
        .map(|ground| ground.height(*foot))
        .fold(f64::NEG_INFINITY, f64::max);
    match below(grounds, past, height + BESIDE) {
        Some(plane) => {
            way.places.push(past);
            way.planes.push(plane);
            open.push((way, plane, grounds[plane].frame.on_plane(past)));
        }
        None => done.push(way),
    }
}

/// On from the foot of a wall that ends in the midst of a slope.
fn past_wall(ground: &Ground, plane: usize, way: Way, open: &mut Vec<Going>, done: &mut Vec<Way>) {
    let past = way.places.last().and_then(|foot| {
        let (u, v) = ground.frame.on_plane(*foot);
        [-BESIDE, BESIDE]
            .into_iter()
            .map(|aside| (u + aside, v - BESIDE))
            .find(|place| ground.holds(*place))
    });
    match past {
        Some(place) => open.push((way, plane, place)),
        None => done.push(way),
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

/// The ways of water that comes in at a valley itself.
pub fn from_valley(
    plan: &RoofPlan,
    grounds: &[Ground],
    from: Place,
    valley: &RoofLine,
) -> Vec<Way> {
    let way = Way {
        places: vec![from],
        share: 1.0,
        turns: Turns::default(),
        planes: Vec::new(),
    };
    let mut way = down_valleys(plan, way, valley);
    way.turns.valley = false;
    let (mut open, mut done) = (Vec::new(), Vec::new());
    from_foot(grounds, way, &mut open, &mut done);
    done.extend(run(plan, grounds, open));
    done
}

/// The ways of water that runs down along a wall from a place on it.
pub fn from_wall(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    from: Place,
    wall: &RoofLine,
) -> Vec<Way> {
    let Some(ground) = grounds.get(plane) else {
        return Vec::new();
    };
    let way = Way {
        places: vec![from, (wall.from.x, wall.from.y)],
        share: 1.0,
        turns: Turns {
            wall: true,
            ..Turns::default()
        },
        planes: vec![plane],
    };
    let (mut open, mut done) = (Vec::new(), Vec::new());
    past_wall(ground, plane, way, &mut open, &mut done);
    done.extend(run(plan, grounds, open));
    done
}
