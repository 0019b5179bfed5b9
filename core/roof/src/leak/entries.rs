//! Where a part lets water in, and the ways from there.

use crate::frame::Place;
use crate::leak::ground::{Ground, beyond};
use crate::leak::water::{Turns, Way, from_valley, from_wall, ways};
use trade::leak::{Candidate, Lies};
use trade::roof::{LineKind, RoofLine, RoofPlan};

/// A part counts as one on a line within this, in metres.
const ON_LINE: f64 = 0.3;
/// Water comes in this far beside what stands through the roof.
const BESIDE: f64 = 0.02;
/// Places along a long part are at most this far apart, in metres.
const APART: f64 = 0.5;
/// Wind pushes water over a ridge from this far below it on plan, in metres. Common practice, no source.
const OVER_RIDGE: f64 = 0.6;
/// What share of it goes over. Common practice, no source.
const SHARE_OVER_RIDGE: f64 = 0.2;
/// How far inside the wall line ice holds water back, on plan: 24 in, as far as IRC R905.1.2 has the ice barrier reach.
const ICE_REACH: f64 = 24.0 * 0.0254;

/// What the weather does to where water comes in.
#[derive(Clone, Copy, Debug)]
pub struct Weather {
    /// Wind drives the rain.
    pub driven: bool,
    /// Ice melts.
    pub thaw: bool,
    /// Where the wind comes from on plan, a unit vector.
    pub wind: Option<Place>,
}

/// A place where water comes in, on plan, with its ways. The shares of all entries of a part add up to about one.
pub struct Entry {
    /// Where.
    pub at: Place,
    /// Its ways.
    pub ways: Vec<Way>,
    /// Whether ice holds water back up to there.
    pub ice: bool,
}

/// All places where a part lets water in.
pub fn entries(
    plan: &RoofPlan,
    grounds: &[Ground],
    part: &Candidate,
    weather: Weather,
) -> Vec<Entry> {
    let mut entries = match part.lies {
        Lies::Spot { at } => vec![entry(plan, grounds, part.plane, at)],
        Lies::Through { at, wide, deep } => round(
            grounds,
            part.plane,
            at,
            (wide.in_metres(), deep.in_metres()),
        )
        .into_iter()
        .map(|at| entry(plan, grounds, part.plane, at))
        .collect(),
        Lies::Along { from, to } => along(plan, grounds, part.plane, (from, to), weather),
    };
    if weather.driven {
        for entry in &mut entries {
            entry.ways.extend(over_ridge(
                plan,
                grounds,
                part.plane,
                entry.at,
                weather.wind,
            ));
        }
    }
    let count = f64::from(u32::try_from(entries.len()).unwrap_or(u32::MAX)).max(1.0);
    for way in entries.iter_mut().flat_map(|entry| &mut entry.ways) {
        way.share /= count;
    }
    entries
}

fn entry(plan: &RoofPlan, grounds: &[Ground], plane: usize, at: Place) -> Entry {
    Entry {
        at,
        ways: ways(plan, grounds, plane, at, Turns::default()),
        ice: false,
    }
}

/// Round what stands through the roof: along its upper edge, where water stands, and down the upper half of its sides.
fn round(grounds: &[Ground], plane: usize, at: Place, size: (f64, f64)) -> Vec<Place> {
    let Some(ground) = grounds.get(plane) else {
        return Vec::new();
    };
    let (u, v) = ground.frame.on_plane(at);
    let (half_u, half_v) = (
        size.0 / 2.0 + BESIDE,
        size.1 / 2.0 * ground.frame.factor() + BESIDE,
    );
    let above = [-0.8, -0.3, 0.3, 0.8].map(|share| (u + share * half_u, v + half_v));
    let sides = [-1.0, 1.0].map(|side| (u + side * half_u, v + half_v / 2.0));
    above
        .into_iter()
        .chain(sides)
        .map(|place| ground.frame.on_plan(place))
        .collect()
}

fn along(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    ends: (Place, Place),
    weather: Weather,
) -> Vec<Entry> {
    let line = line_at(plan, plane, ends);
    places(ends)
        .into_iter()
        .flat_map(|at| match line {
            Some(line) if line.kind == LineKind::Valley => vec![Entry {
                at,
                ways: from_valley(plan, grounds, at, line),
                ice: false,
            }],
            Some(line) if matches!(line.kind, LineKind::Ridge | LineKind::Hip) => {
                vec![both_sides(plan, grounds, plane, line, at)]
            }
            Some(line) if line.kind == LineKind::Eave && weather.thaw => {
                behind_ice(plan, grounds, plane, line, at)
            }
            Some(line) if line.kind == LineKind::Step => {
                vec![beside_wall(plan, grounds, plane, line, at)]
            }
            _ => vec![entry(plan, grounds, plane, at)],
        })
        .collect()
}

/// Places from one end to the other, in the middles of equal lengths.
fn places((from, to): (Place, Place)) -> Vec<Place> {
    let length = (to.0 - from.0).hypot(to.1 - from.1);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = (length / APART).ceil().clamp(1.0, 200.0) as u32;
    (0..count)
        .map(|at| {
            let share = (f64::from(at) + 0.5) / f64::from(count);
            (
                from.0 + (to.0 - from.0) * share,
                from.1 + (to.1 - from.1) * share,
            )
        })
        .collect()
}

/// The line of the plan that a long part lies on.
pub fn line_at(plan: &RoofPlan, plane: usize, (from, to): (Place, Place)) -> Option<&RoofLine> {
    plan.lines.iter().find(|line| {
        line.planes.contains(&plane)
            && off(line, from) < ON_LINE
            && off(line, to) < ON_LINE
            && !is_across(line, from, to)
    })
}

/// A short part across a line lies on no line.
fn is_across(line: &RoofLine, from: Place, to: Place) -> bool {
    let a = (line.to.x - line.from.x, line.to.y - line.from.y);
    let b = (to.0 - from.0, to.1 - from.1);
    (a.0 * b.0 + a.1 * b.1).abs() < 0.7 * a.0.hypot(a.1) * b.0.hypot(b.1)
}

/// How far a place lies from a line, on plan.
pub fn off(line: &RoofLine, place: Place) -> f64 {
    off_length((line.from.x, line.from.y), (line.to.x, line.to.y), place)
}

/// How far a place lies from the straight length between two others.
pub fn off_length(a: Place, b: Place, place: Place) -> f64 {
    let near = nearest_on(a, b, place);
    (place.0 - near.0).hypot(place.1 - near.1)
}

/// The place on the straight length between two others that lies nearest to a place.
pub fn nearest_on(a: Place, b: Place, place: Place) -> Place {
    let way = (b.0 - a.0, b.1 - a.1);
    let square = (way.0 * way.0 + way.1 * way.1).max(f64::MIN_POSITIVE);
    let share = ((place.0 - a.0) * way.0 + (place.1 - a.1) * way.1) / square;
    let share = share.clamp(0.0, 1.0);
    (a.0 + share * way.0, a.1 + share * way.1)
}

/// A place on plan moved a little down a plane.
fn down(grounds: &[Ground], plane: usize, at: Place, by: f64) -> Option<Place> {
    let ground = grounds.get(plane)?;
    let up = ground.frame.up();
    Some((at.0 - up.0 * by, at.1 - up.1 * by))
}

/// Water that comes in on a ridge or hip runs down on both sides.
fn both_sides(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    line: &RoofLine,
    at: Place,
) -> Entry {
    let mut found = Vec::new();
    for side in [Some(plane), beyond(line, plane)].into_iter().flatten() {
        if let Some(start) = down(grounds, side, at, BESIDE) {
            found.extend(ways(plan, grounds, side, start, Turns::default()));
        }
    }
    for way in &mut found {
        way.share /= 2.0;
    }
    Entry {
        at,
        ways: found,
        ice: false,
    }
}

/// Water that comes in behind step flashing runs down along the wall, or down the slope where that leads away from it.
fn beside_wall(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    line: &RoofLine,
    at: Place,
) -> Entry {
    let along = from_wall(plan, grounds, plane, at, line);
    let straight = ways(plan, grounds, plane, at, Turns::default());
    let mut found: Vec<Way> = along.into_iter().chain(straight).collect();
    for way in &mut found {
        way.share *= 0.5;
    }
    Entry {
        at,
        ways: found,
        ice: false,
    }
}

/// Water that ice holds back comes in anywhere from the wall line up to where it stands.
fn behind_ice(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    line: &RoofLine,
    at: Place,
) -> Vec<Entry> {
    let overhang = line.overhang.map_or(0.0, trade::units::Length::in_metres);
    [0.0, 0.5, 1.0]
        .into_iter()
        .filter_map(|share| down(grounds, plane, at, -(overhang + share * ICE_REACH)))
        .map(|at| Entry {
            ice: true,
            ..entry(plan, grounds, plane, at)
        })
        .collect()
}

/// The ways of water that the wind pushes over the ridge near a place, if it can.
fn over_ridge(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    at: Place,
    wind: Option<Place>,
) -> Vec<Way> {
    let Some(ground) = grounds.get(plane) else {
        return Vec::new();
    };
    let up = ground.frame.up();
    // Wind from below the slope pushes up it.
    let pushes = wind.is_some_and(|from| -(from.0 * up.0 + from.1 * up.1) > 0.5);
    let ridge = plan.lines.iter().find(|line| {
        line.kind == LineKind::Ridge && line.planes.contains(&plane) && off(line, at) < OVER_RIDGE
    });
    let Some(other) = ridge
        .filter(|_| pushes)
        .and_then(|line| beyond(line, plane))
    else {
        return Vec::new();
    };
    let turns = Turns {
        over_ridge: true,
        ..Turns::default()
    };
    let beyond_ridge = ridge.map_or(0.0, |line| off(line, at)) + BESIDE;
    let start = (at.0 + up.0 * beyond_ridge, at.1 + up.1 * beyond_ridge);
    let mut found = ways(plan, grounds, other, start, turns);
    for way in &mut found {
        way.share *= SHARE_OVER_RIDGE;
    }
    found
}
