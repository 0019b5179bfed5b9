//! What holds for every roof, whatever its outline: areas, heights, meeting lines, and that it doesn't matter how the outline is written down.
#![cfg(test)]
#![allow(
    clippy::cast_precision_loss,
    clippy::float_cmp,
    reason = "counts are small, and where nothing is meant exactly nothing is"
)]

mod shapes;

use proptest::prelude::*;
use shapes::{body, changed, negative, ring, rise, try_plan};
use trade::roof::{Corner, LineKind, Plane, RoofPlan};
use trade::sketch::{Body, EdgeIs, OutlineOf, SketchEdge};
use trade::units::Length;

/// A ring round a middle: at each of some turns a distance, in feet to the half inch.
fn star() -> impl Strategy<Value = Vec<(f64, f64)>> {
    let steps = prop::collection::vec((0.05..1.0_f64, 200_u32..1000), 3..16);
    let rings = steps.prop_map(|steps: Vec<(f64, u32)>| {
        let whole: f64 = steps.iter().map(|(turn, _)| turn).sum();
        let mut turned = 0.0;
        steps
            .iter()
            .map(|(turn, distance)| {
                turned += turn / whole * std::f64::consts::TAU;
                let (sin, cos) = turned.sin_cos();
                let half_inches = |at: f64| (at * f64::from(*distance)).round() / 24.0;
                (half_inches(cos), half_inches(sin))
            })
            .collect::<Vec<(f64, f64)>>()
    });
    rings.prop_filter("the ring crosses itself", |corners| {
        try_plan(&[body(corners, rise(6))]).is_ok()
    })
}

/// A stair of right angles: wings of whole feet, so that much happens at one moment.
fn wings() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((1_u8..9, 5_u8..9, any::<bool>()), 1..8).prop_map(|bars| {
        let mut x = 0.0;
        let mut top = Vec::new();
        for (at, (width, height, tall)) in bars.iter().enumerate() {
            let height = f64::from(*height) + if *tall { 8.0 } else { 0.0 } + at as f64 / 64.0;
            top.push((x, height));
            x += f64::from(*width);
            top.push((x, height));
        }
        top.reverse();
        let mut ring = vec![(0.0, 0.0), (x, 0.0)];
        ring.extend(top);
        ring
    })
}

fn edges() -> impl Strategy<Value = Vec<(u32, bool)>> {
    prop::collection::vec((3_u32..15, prop::bool::weighted(0.15)), 16)
}

/// An outline; unequal pitches, and now and then a gable.
fn any_body() -> impl Strategy<Value = Body> {
    of_many_pitches(prop_oneof![star(), wings()])
}

fn of_many_pitches(corners: impl Strategy<Value = Vec<(f64, f64)>>) -> impl Strategy<Value = Body> {
    (corners, edges()).prop_map(|(corners, edges)| {
        let mut body = body(&corners, rise(6));
        for (edge, (pitch, gable)) in body.rings[0].iter_mut().zip(edges.iter().cycle()) {
            edge.pitch = Some(rise(*pitch));
            edge.is = if *gable { EdgeIs::Gable } else { EdgeIs::Hip };
        }
        body
    })
}

/// An outline of one pitch all round.
fn even_body() -> impl Strategy<Value = Body> {
    prop_oneof![star(), wings()].prop_map(|corners| body(&corners, rise(6)))
}

fn outline_area(body: &Body) -> f64 {
    let area = |ring: &[SketchEdge]| -> f64 {
        let next = ring.iter().cycle().skip(1);
        let doubled: f64 = ring
            .iter()
            .zip(next)
            .map(|(p, q)| p.x.in_metres() * q.y.in_metres() - q.x.in_metres() * p.y.in_metres())
            .sum();
        doubled.abs() / 2.0
    };
    let holes: f64 = body.rings.iter().skip(1).map(|hole| area(hole)).sum();
    area(&body.rings[0]) - holes
}

/// How high a plane stands over a place, from its eave.
fn height_of(plane: &Plane, x: f64, y: f64) -> f64 {
    let eave = plane.corners[0];
    let up = -(plane.downhill.0 * (x - eave.x) + plane.downhill.1 * (y - eave.y));
    eave.z + up * plane.pitch.in_twelfths() / 12.0
}

fn corners(plane: &Plane) -> impl Iterator<Item = &Corner> {
    plane.corners.iter().chain(plane.holes.iter().flatten())
}

fn near(one: Corner, other: Corner) -> bool {
    (one.x - other.x).hypot(one.y - other.y) < 1e-4 && (one.z - other.z).abs() < 1e-3
}

fn total(plan: &RoofPlan, kind: LineKind) -> f64 {
    plan.length_of(kind).in_metres()
}

fn same_numbers(one: &RoofPlan, other: &RoofPlan, scale: f64) -> Result<(), TestCaseError> {
    // A line of a few millimetres may be level once and not quite the other time.
    let close = |a: f64, b: f64| (a - b).abs() <= 0.02 + 1e-5 * a.abs().max(b.abs());
    prop_assert_eq!(one.planes.len(), other.planes.len());
    prop_assert!(close(
        one.height.in_metres() * scale,
        other.height.in_metres()
    ));
    prop_assert!(close(
        one.slope_area().in_square_metres() * scale * scale,
        other.slope_area().in_square_metres()
    ));
    for kind in LineKind::ALL {
        prop_assert!(
            close(total(one, kind) * scale, total(other, kind)),
            "{:?}",
            kind
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn the_planes_cover_the_outline_once(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let (covered, outline) = (plan.plan_area().in_square_metres(), outline_area(&body));
        prop_assert!((covered - outline).abs() <= 1e-6 * outline, "{covered} of {outline}");
    }

    #[test]
    fn every_corner_lies_on_its_plane_and_none_below_its_eave(body in any_body()) {
        let Ok(plan) = try_plan(&[body]) else { return Ok(()) };
        for plane in &plan.planes {
            for corner in corners(plane) {
                prop_assert!((height_of(plane, corner.x, corner.y) - corner.z).abs() < 1e-4);
                prop_assert!(corner.z > -1e-6 && corner.z >= plane.corners[0].z - 1e-4);
            }
        }
    }

    /// Water runs down its own plane to an edge that takes it: an eave, a valley, or a plane below.
    #[test]
    fn every_plane_drains(body in any_body()) {
        let Ok(plan) = try_plan(&[body]) else { return Ok(()) };
        for (number, plane) in plan.planes.iter().enumerate() {
            let low = plan.lines.iter().any(|line| {
                line.planes.contains(&number)
                    && matches!(line.kind, LineKind::Eave | LineKind::Valley | LineKind::PitchChange)
            });
            prop_assert!(low, "{}", plane.letter);
        }
    }

    /// On one pitch all round every plane rises from an eave of its own, and from no point of it does water leave it before the eave.
    #[test]
    fn an_even_roof_drains_to_its_own_eaves(body in even_body()) {
        let plan = try_plan(&[body]).unwrap();
        for number in 0..plan.planes.len() {
            let has_eave = plan.lines.iter().any(|line| line.kind == LineKind::Eave && line.planes == [number]);
            prop_assert!(has_eave);
        }
        prop_assert_eq!(total(&plan, LineKind::Rake), 0.0);
        prop_assert_eq!(total(&plan, LineKind::Step), 0.0);
    }

    /// A ridge, hip or valley parts two planes and ends where other lines end, or at another's middle where that one goes straight on.
    #[test]
    fn lines_meet_at_their_ends(body in any_body()) {
        let Ok(plan) = try_plan(&[body]) else { return Ok(()) };
        for (at, line) in plan.lines.iter().enumerate() {
            let between = matches!(line.kind, LineKind::Ridge | LineKind::Hip | LineKind::Valley | LineKind::PitchChange);
            if !between {
                prop_assert_eq!(line.planes.len(), 1);
                continue;
            }
            prop_assert_eq!(line.planes.len(), 2);
            for end in [line.from, line.to] {
                let met = plan.lines.iter().enumerate().any(|(other, with)| {
                    other != at && (near(with.from, end) || near(with.to, end) || on(with.from, with.to, end))
                });
                prop_assert!(met, "{:?} at {:?}", line.kind, end);
            }
        }
    }

    /// Every edge of every plane is one of the lines, so the lines' plan lengths sum up to the planes' rims.
    #[test]
    fn lines_are_the_rims_of_the_planes(body in any_body()) {
        let Ok(plan) = try_plan(&[body]) else { return Ok(()) };
        let around = |ring: &[Corner]| -> f64 {
            let next = ring.iter().cycle().skip(1);
            ring.iter().zip(next).map(|(p, q)| (p.x - q.x).hypot(p.y - q.y)).sum()
        };
        for (number, plane) in plan.planes.iter().enumerate() {
            let rims = around(&plane.corners) + plane.holes.iter().map(|hole| around(hole)).sum::<f64>();
            let lines: f64 = plan.lines.iter()
                .filter(|line| line.planes.contains(&number))
                .map(|line| (line.from.x - line.to.x).hypot(line.from.y - line.to.y))
                .sum();
            prop_assert!((rims - lines).abs() < 1e-3 + 1e-6 * rims, "{rims} {lines}");
        }
    }

    #[test]
    fn it_does_not_matter_where_a_ring_begins(body in any_body(), by in 0_usize..16) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mut turned = body;
        let count = turned.rings[0].len();
        turned.rings[0].rotate_left(by % count);
        same_numbers(&plan, &try_plan(&[turned]).unwrap(), 1.0)?;
    }

    #[test]
    fn it_does_not_matter_which_way_a_ring_runs(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mut reversed = body;
        let places: Vec<_> = reversed.rings[0].iter().map(|edge| (edge.x, edge.y)).collect();
        let count = places.len();
        for (at, edge) in reversed.rings[0].iter_mut().enumerate() {
            (edge.x, edge.y) = places[(at + 1) % count];
        }
        reversed.rings[0].reverse();
        same_numbers(&plan, &try_plan(&[reversed]).unwrap(), 1.0)?;
    }

    #[test]
    fn a_quarter_turn_changes_nothing(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let turned = changed(&body, |edge| (negative(edge.y), edge.x));
        same_numbers(&plan, &try_plan(&[turned]).unwrap(), 1.0)?;
    }

    #[test]
    fn a_mirror_changes_nothing(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mirrored = changed(&body, |edge| (negative(edge.x), edge.y));
        same_numbers(&plan, &try_plan(&[mirrored]).unwrap(), 1.0)?;
    }

    #[test]
    fn twice_the_size_is_twice_the_roof(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let doubled = changed(&body, |edge| (edge.x.scaled(2.0), edge.y.scaled(2.0)));
        same_numbers(&plan, &try_plan(&[doubled]).unwrap(), 2.0)?;
    }

    #[test]
    fn twice_the_pitch_is_twice_the_height(body in even_body()) {
        let plan = try_plan(std::slice::from_ref(&body)).unwrap();
        let mut steep = body;
        steep.pitch = rise(12);
        let steep = try_plan(&[steep]).unwrap();
        prop_assert!((steep.height.in_metres() - 2.0 * plan.height.in_metres()).abs() < 1e-6);
        prop_assert!((steep.plan_area().in_square_metres() - plan.plan_area().in_square_metres()).abs() < 1e-6);
    }

    /// Over walls each plane passes through the wall's line, whatever overhangs and pitches are.
    #[test]
    fn planes_pass_through_the_walls(corners in star(), edges in edges(), out in 1_u8..5) {
        let mut body = body(&corners, rise(6));
        body.of = OutlineOf::Walls;
        body.overhang = Length::inches(i64::from(out));
        for (edge, (pitch, _)) in body.rings[0].iter_mut().zip(edges.iter().cycle()) {
            edge.pitch = Some(rise(*pitch));
        }
        let Ok(plan) = try_plan(&[body]) else { return Ok(()) };
        let eaves = plan.lines.iter().filter(|line| line.kind == LineKind::Eave);
        let over_plate: Vec<f64> = eaves.map(|eave| {
            let plane = &plan.planes[eave.planes[0]];
            eave.from.z + f64::from(out) * 0.0254 * plane.pitch.in_twelfths() / 12.0
        }).collect();
        for height in &over_plate {
            prop_assert!((height - over_plate[0]).abs() < 1e-4, "{over_plate:?}");
        }
    }

    /// No outline, however wrong, breaks the program: it gives a roof or says what is wrong.
    #[test]
    fn any_corners_give_a_roof_or_a_reason(
        rings in prop::collection::vec(prop::collection::vec((-12_i8..12, -12_i8..12, 0_u8..4, 0_u32..61), 0..14), 0..3),
        walls in any::<bool>(),
    ) {
        let mut outline = body(&[], rise(6));
        outline.rings = rings.iter().map(|corners| {
            let places: Vec<(f64, f64)> = corners.iter().map(|c| (f64::from(c.0), f64::from(c.1))).collect();
            let mut edges = ring(&places);
            for (edge, (_, _, is, pitch)) in edges.iter_mut().zip(corners) {
                edge.is = EdgeIs::ALL[usize::from(*is) % 3];
                edge.pitch = Some(rise(*pitch));
            }
            edges
        }).collect();
        outline.of = if walls { OutlineOf::Walls } else { OutlineOf::Roof };
        outline.overhang = Length::inches(7);
        match try_plan(std::slice::from_ref(&outline)) {
            Ok(plan) => {
                let finite = plan.planes.iter().flat_map(corners).all(|c| c.x.is_finite() && c.y.is_finite() && c.z.is_finite());
                prop_assert!(finite);
                if !walls {
                    let outline = outline_area(&outline);
                    prop_assert!((plan.plan_area().in_square_metres() - outline).abs() < 1e-6 * outline + 1e-9);
                }
            }
            Err(error) => prop_assert!(!error.says().key.is_empty()),
        }
    }
}

/// Whether a corner lies between two others.
fn on(from: Corner, to: Corner, corner: Corner) -> bool {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = dx.hypot(dy);
    let along = ((corner.x - from.x) * dx + (corner.y - from.y) * dy) / length;
    let aside = ((corner.x - from.x) * dy - (corner.y - from.y) * dx) / length;
    length > 0.0 && aside.abs() < 1e-4 && (0.0..=length).contains(&along)
}

/// Two hundred corners at any angle: the planes cover the outline once.
#[test]
fn two_hundred_corners() {
    for seed in 0..20_u64 {
        let mut state = seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1;
        let mut chance = || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 11) as f64 / (1_u64 << 53) as f64
        };
        let corners: Vec<(f64, f64)> = (0..200)
            .map(|at| {
                let (sin, cos) = (f64::from(at) / 200.0 * std::f64::consts::TAU).sin_cos();
                let far = 60.0 + 120.0 * chance();
                (far * cos, far * sin)
            })
            .collect();
        let mut outline = body(&corners, rise(6));
        for edge in &mut outline.rings[0] {
            edge.pitch = Some(rise(if chance() < 0.5 { 6 } else { 9 }));
        }
        let plan = try_plan(std::slice::from_ref(&outline)).unwrap();
        let (covered, outline) = (plan.plan_area().in_square_metres(), outline_area(&outline));
        assert!(
            (covered - outline).abs() < 1e-6 * outline,
            "{covered} of {outline}"
        );
    }
}
