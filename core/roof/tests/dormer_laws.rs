//! What holds of any body that stands on others, whatever its outline and theirs.
#![cfg(test)]

mod shapes;

use proptest::prelude::*;
use shapes::{body, rise, try_plan};
use trade::roof::{Corner, LineKind, Plane, RoofPlan, WallOnRoof};
use trade::sketch::{Body, EdgeIs, OutlineOf};
use trade::units::Length;

/// A house: a rectangle or an L, hipped or gabled, on one pitch or two.
fn houses() -> impl Strategy<Value = Body> {
    (any::<bool>(), any::<bool>(), 4_u32..13, 4_u32..13).prop_map(|(ell, gabled, one, other)| {
        let corners: &[(f64, f64)] = if ell {
            &[
                (0.0, 0.0),
                (44.0, 0.0),
                (44.0, 28.0),
                (24.0, 28.0),
                (24.0, 46.0),
                (0.0, 46.0),
            ]
        } else {
            &[(0.0, 0.0), (44.0, 0.0), (44.0, 28.0), (0.0, 28.0)]
        };
        let mut house = body(corners, rise(one));
        house.rings[0][0].pitch = Some(rise(other));
        if gabled {
            house.rings[0][1].is = EdgeIs::Gable;
            if !ell {
                house.rings[0][3].is = EdgeIs::Gable;
            }
        }
        house
    })
}

/// What stands on it: a rectangle or an L to the inch, somewhere on the house and in part beyond, its sides eaves or gables, over walls of any height.
fn standing() -> impl Strategy<Value = Body> {
    let place = (-40_i32..400, -40_i32..300, 48_u32..200, 48_u32..200);
    let is = prop::array::uniform4(prop::bool::weighted(0.4));
    let more = (
        3_u32..15,
        0_u32..90,
        prop_oneof![Just(0_u32), Just(9)],
        any::<bool>(),
    );
    (place, is, more).prop_map(
        |((x, y, wide, deep), gables, (pitch, above, overhang, walls))| {
            let inch = |at: i32| f64::from(at) / 12.0;
            let (x, y) = (inch(x), inch(y));
            let (wide, deep) = (f64::from(wide) / 12.0, f64::from(deep) / 12.0);
            let corners = [(x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep)];
            let mut dormer = body(&corners, rise(pitch));
            for (edge, gable) in dormer.rings[0].iter_mut().zip(gables) {
                edge.is = if gable { EdgeIs::Gable } else { EdgeIs::Hip };
            }
            dormer.above_roof = Some(Length::inches(i64::from(above)));
            dormer.overhang = Length::inches(i64::from(overhang));
            dormer.of = if walls {
                OutlineOf::Walls
            } else {
                OutlineOf::Roof
            };
            dormer
        },
    )
}

fn corners(plane: &Plane) -> impl Iterator<Item = &Corner> {
    plane.corners.iter().chain(plane.holes.iter().flatten())
}

fn height_of(plane: &Plane, x: f64, y: f64) -> f64 {
    let eave = plane.corners[0];
    let up = -(plane.downhill.0 * (x - eave.x) + plane.downhill.1 * (y - eave.y));
    eave.z + up * plane.pitch.in_twelfths() / 12.0
}

fn inside(plane: &Plane, (x, y): (f64, f64)) -> bool {
    let rings = std::iter::once(&plane.corners).chain(&plane.holes);
    rings
        .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)))
        .filter(|(a, b)| (a.y > y) != (b.y > y) && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x))
        .count()
        % 2
        == 1
}

fn level(a: Corner, b: Corner) -> f64 {
    (a.x - b.x).hypot(a.y - b.y)
}

/// Whether a wall stands within a millimetre of an eave or rake.
fn on_the_edge(below: &RoofPlan, wall: &WallOnRoof) -> bool {
    let middle = (
        f64::midpoint(wall.from.x, wall.to.x),
        f64::midpoint(wall.from.y, wall.to.y),
    );
    below
        .lines
        .iter()
        .filter(|line| matches!(line.kind, LineKind::Eave | LineKind::Rake))
        .any(|line| away(middle, line.from, line.to) < 1e-3)
}

/// How far a place is from a line, seen from above.
fn away((x, y): (f64, f64), from: Corner, to: Corner) -> f64 {
    let (run_x, run_y) = (to.x - from.x, to.y - from.y);
    let along = ((x - from.x) * run_x + (y - from.y) * run_y) / (run_x * run_x + run_y * run_y);
    let along = along.clamp(0.0, 1.0);
    (x - from.x - along * run_x).hypot(y - from.y - along * run_y)
}

/// Places spread evenly over a plan.
fn places(plan: &RoofPlan) -> Vec<(f64, f64)> {
    let all = || plan.planes.iter().flat_map(corners);
    let least = all().fold((f64::MAX, f64::MAX), |m, c| (m.0.min(c.x), m.1.min(c.y)));
    let most = all().fold((f64::MIN, f64::MIN), |m, c| (m.0.max(c.x), m.1.max(c.y)));
    (0..300)
        .map(|step| {
            let n = f64::from(step) + 0.5;
            (
                least.0 + (n * 0.754_877_666).fract() * (most.0 - least.0),
                least.1 + (n * 0.569_840_291).fract() * (most.1 - least.1),
            )
        })
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    /// From above one sees at every place the higher of the two roofs, and nowhere a hole.
    #[test]
    fn the_higher_roof_is_seen(house in houses(), dormer in standing()) {
        let bodies = [house.clone(), dormer.clone()];
        let Ok(plan) = try_plan(&bodies) else { return Ok(()) };
        let below = try_plan(&[house]).unwrap();
        let mut alone = dormer;
        alone.above_roof = None;
        let alone = try_plan(&[alone]).unwrap();
        // How high it was set, read off any plane of its own that is left.
        let own = plan.planes.iter().find_map(|plane| {
            alone.planes.iter().find(|other| other.downhill == plane.downhill && other.pitch == plane.pitch
                && corners(plane).all(|c| {
                    let up = height_of(plane, c.x, c.y) - height_of(other, c.x, c.y);
                    let first = height_of(plane, other.corners[0].x, other.corners[0].y) - other.corners[0].z;
                    (up - first).abs() < 1e-6
                })
                && below.planes.iter().all(|b| b.downhill != plane.downhill || b.pitch != plane.pitch))
                .map(|other| height_of(plane, other.corners[0].x, other.corners[0].y) - other.corners[0].z)
        });
        let Some(lift) = own else { return Ok(()) };
        let lowest = plan.planes.iter().flat_map(corners).map(|c| c.z).fold(f64::MAX, f64::min);
        prop_assert!(lowest.abs() < 1e-9);
        let highest = |planes: &[Plane], place: (f64, f64)| planes.iter()
            .filter(|plane| inside(plane, place))
            .map(|plane| height_of(plane, place.0, place.1))
            .max_by(f64::total_cmp);
        // The lower roof may have been lifted too, where the dormer hangs lower than its eaves.
        let same = below.planes.iter().find_map(|old| plan.planes.iter().find(|new| {
            new.pitch == old.pitch && new.downhill == old.downhill
                && alone.planes.iter().all(|a| a.downhill != new.downhill || a.pitch != new.pitch)
        }).map(|new| new.corners[0].z - height_of(old, new.corners[0].x, new.corners[0].y)));
        let Some(settled) = same else { return Ok(()) };
        for place in places(&plan) {
            let seen = highest(&plan.planes, place);
            let lower = highest(&below.planes, place).map(|z| z + settled);
            let upper = highest(&alone.planes, place).map(|z| z + lift);
            let wanted = match (lower, upper) {
                (Some(lower), Some(upper)) => Some(lower.max(upper)),
                (lower, upper) => lower.or(upper),
            };
            match (seen, wanted) {
                (Some(seen), Some(wanted)) => prop_assert!((seen - wanted).abs() < 1e-4, "{place:?} {seen} {wanted}"),
                (None, None) => {}
                (seen, wanted) => {
                    // On a rim either may be right.
                    let on_rim = plan.planes.iter().any(|plane| [(1e-4, 0.0), (-1e-4, 0.0), (0.0, 1e-4), (0.0, -1e-4)].iter()
                        .any(|by| inside(plane, (place.0 + by.0, place.1 + by.1)) != inside(plane, place)));
                    prop_assert!(on_rim, "{place:?} {seen:?} {wanted:?}");
                }
            }
        }
    }

    #[test]
    fn every_corner_lies_on_its_plane(house in houses(), dormer in standing()) {
        let Ok(plan) = try_plan(&[house, dormer]) else { return Ok(()) };
        for plane in &plan.planes {
            for corner in corners(plane) {
                prop_assert!((height_of(plane, corner.x, corner.y) - corner.z).abs() < 1e-4);
            }
        }
    }

    /// Every edge of every plane is one of the lines, but for the part of a valley that runs on under an overhang.
    #[test]
    fn lines_are_the_rims_of_the_planes(house in houses(), dormer in standing()) {
        let Ok(plan) = try_plan(&[house, dormer]) else { return Ok(()) };
        let around = |ring: &[Corner]| -> f64 {
            ring.iter().zip(ring.iter().cycle().skip(1)).map(|(p, q)| (p.x - q.x).hypot(p.y - q.y)).sum()
        };
        for (number, plane) in plan.planes.iter().enumerate() {
            let rims = around(&plane.corners) + plane.holes.iter().map(|hole| around(hole)).sum::<f64>();
            let lines: f64 = plan.lines.iter()
                .filter(|line| line.planes.contains(&number))
                .map(|line| (line.from.x - line.to.x).hypot(line.from.y - line.to.y))
                .sum();
            prop_assert!(lines > rims - 1e-3 - 1e-5 * rims, "{} {rims} {lines}", plane.letter);
            let hangs = plan.lines.iter().filter(|line| line.planes.contains(&number) && line.planes.len() > 1)
                .map(|line| (line.from.x - line.to.x).hypot(line.from.y - line.to.y)).sum::<f64>();
            prop_assert!(lines < rims + hangs + 1e-3, "{} {rims} {lines}", plane.letter);
        }
    }

    /// Walls stand where step and level wall lines are, and nowhere else but flush with the edge of the roof below, where its own eave or rake runs.
    #[test]
    fn walls_stand_on_wall_lines(house in houses(), dormer in standing()) {
        let Ok(plan) = try_plan(&[house.clone(), dormer]) else { return Ok(()) };
        let below = try_plan(&[house]).unwrap();
        let (flush, within): (Vec<_>, Vec<_>) = plan.walls.iter().partition(|wall| on_the_edge(&below, wall));
        let run = |walls: &[&WallOnRoof]| walls.iter().map(|wall| level(wall.from, wall.to)).sum::<f64>();
        let lines: f64 = plan.lines.iter()
            .filter(|line| matches!(line.kind, LineKind::Wall | LineKind::Step))
            .map(|line| level(line.from, line.to))
            .sum();
        prop_assert!(lines > run(&within) - 1e-2, "{} {lines}", run(&within));
        prop_assert!(lines < run(&within) + run(&flush) + 1e-2, "{} {} {lines}", run(&within), run(&flush));
        prop_assert!(plan.walls.iter().all(|wall| wall.area.in_square_metres() > 0.0));
    }

    #[test]
    fn it_does_not_matter_where_the_ring_begins(house in houses(), dormer in standing(), by in 1_usize..4) {
        let Ok(plan) = try_plan(&[house.clone(), dormer.clone()]) else { return Ok(()) };
        let mut turned = dormer;
        turned.rings[0].rotate_left(by);
        let other = try_plan(&[house, turned]).unwrap();
        prop_assert_eq!(plan.planes.len(), other.planes.len());
        for kind in LineKind::ALL {
            let apart = plan.length_of(kind).in_metres() - other.length_of(kind).in_metres();
            prop_assert!(apart.abs() < 1e-3, "{:?}", kind);
        }
        prop_assert!((plan.wall_area().in_square_metres() - other.wall_area().in_square_metres()).abs() < 1e-3);
    }
}
