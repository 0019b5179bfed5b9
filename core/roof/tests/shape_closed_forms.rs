//! Roofs whose every number follows from a closed form.
#![cfg(test)]

mod shapes;

use shapes::{area_of, body, in_feet, length_of, plan, rectangle, rise};
use trade::roof::LineKind;
use trade::sketch::{EdgeIs, OutlineOf};
use trade::units::Length;

fn near(value: f64, wanted: f64) {
    assert!(
        (value - wanted).abs() <= 1e-6 * wanted.abs().max(1.0),
        "{value} is not {wanted}"
    );
}

/// Gable, 40 ft by 28 ft at 6:12: 1252.2 ft² (arithmetic of the slope factor √(6² + 12²)/12, NAVEDTRA 14044 ch. 2).
#[test]
fn a_gable() {
    let mut outline = body(&rectangle(40.0, 28.0), rise(6));
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    let plan = plan(&[outline]);
    assert_eq!(plan.planes.len(), 2);
    assert_eq!(plan.planes[0].letter, "A");
    near(area_of(&plan), 40.0 * 28.0 * 180.0_f64.sqrt() / 12.0);
    assert!((area_of(&plan) - 1252.2).abs() < 0.05);
    near(length_of(&plan, LineKind::Ridge), 40.0);
    near(length_of(&plan, LineKind::Eave), 80.0);
    near(
        length_of(&plan, LineKind::Rake),
        4.0 * 14.0 * 1.25_f64.sqrt(),
    );
    near(length_of(&plan, LineKind::Hip), 0.0);
    near(plan.height.in_feet(), 7.0);
}

/// Hip, 40 ft by 30 ft at 8:12: each hip 23.45 ft (NAVEDTRA 14044 ch. 2: hip, 8:12, run 15 ft).
#[test]
fn a_hip() {
    let plan = plan(&[body(&rectangle(40.0, 30.0), rise(8))]);
    assert_eq!(plan.planes.len(), 4);
    let hips: Vec<f64> = in_feet(&plan, LineKind::Hip);
    assert_eq!(hips.len(), 4);
    for hip in hips {
        assert!((hip - 23.45).abs() < 0.005, "{hip}");
    }
    near(length_of(&plan, LineKind::Ridge), 10.0);
    near(plan.height.in_feet(), 10.0);
    near(area_of(&plan), 1200.0 * rise(8).slope_factor());
}

/// Common rafter at 7:12 over a span of 16 ft: 111 1/8 in (NAVEDTRA 14044 ch. 2).
#[test]
fn a_common_rafter() {
    let mut outline = body(&rectangle(24.0, 16.0), rise(7));
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    for rake in in_feet(&plan(&[outline]), LineKind::Rake) {
        assert!(
            (rake * 12.0 - 111.125).abs() < 1.0 / 16.0,
            "{}",
            rake * 12.0
        );
    }
}

/// Both slopes together 28 ft up and down, 46 ft long: 1288 ft², 13 squares (Habitat handbook).
#[test]
fn a_roof_measured_up_and_down() {
    let mut outline = body(&rectangle(46.0, 28.0 / 1.25_f64.sqrt()), rise(6));
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    let plan = plan(&[outline]);
    assert!((area_of(&plan) - 1288.0).abs() < 0.01);
    assert!((plan.slope_area().in_squares().ceil() - 13.0).abs() < f64::EPSILON);
}

#[test]
fn a_pyramid() {
    let plan = plan(&[body(&rectangle(20.0, 20.0), rise(12))]);
    assert_eq!(plan.planes.len(), 4);
    near(length_of(&plan, LineKind::Ridge), 0.0);
    near(length_of(&plan, LineKind::Hip), 4.0 * 300.0_f64.sqrt());
    near(plan.height.in_feet(), 10.0);
}

/// Unequal pitches a and b over a span s: the ridge stands s·b/(a + b) from the eave of a, s·a·b/(a + b) high.
#[test]
fn a_gable_of_unequal_pitches() {
    let mut outline = body(&rectangle(40.0, 30.0), rise(6));
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    outline.rings[0][2].pitch = Some(rise(12));
    let plan = plan(&[outline]);
    near(plan.height.in_feet(), 10.0);
    near(plan.planes[0].plan_area.in_square_feet(), 40.0 * 20.0);
    near(plan.planes[1].plan_area.in_square_feet(), 40.0 * 10.0);
    assert_eq!(plan.planes[1].pitch, rise(12));
}

/// Steeper ends: the hip's plan leans by the ratio of the pitches, so the ridge is w − 2·(s/2)·(a/b) long.
#[test]
fn a_hip_with_steeper_ends() {
    let mut outline = body(&rectangle(40.0, 24.0), rise(6));
    outline.rings[0][1].pitch = Some(rise(12));
    outline.rings[0][3].pitch = Some(rise(12));
    let plan = plan(&[outline]);
    near(length_of(&plan, LineKind::Ridge), 40.0 - 2.0 * 6.0);
    near(plan.height.in_feet(), 6.0);
}

const L: [(f64, f64); 6] = [
    (0.0, 0.0),
    (40.0, 0.0),
    (40.0, 20.0),
    (20.0, 20.0),
    (20.0, 40.0),
    (0.0, 40.0),
];

#[test]
fn an_l() {
    let plan = plan(&[body(&L, rise(12))]);
    assert_eq!(plan.planes.len(), 6);
    near(area_of(&plan), 1200.0 * 2.0_f64.sqrt());
    near(length_of(&plan, LineKind::Valley), 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Hip), 5.0 * 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Ridge), 40.0);
    near(length_of(&plan, LineKind::Eave), 160.0);
}

/// A T of one width: two valleys meet at the ridge.
#[test]
fn a_t() {
    let t = [
        (0.0, 0.0),
        (60.0, 0.0),
        (60.0, 20.0),
        (40.0, 20.0),
        (40.0, 50.0),
        (20.0, 50.0),
        (20.0, 20.0),
        (0.0, 20.0),
    ];
    let plan = plan(&[body(&t, rise(12))]);
    near(area_of(&plan), 1800.0 * 2.0_f64.sqrt());
    near(length_of(&plan, LineKind::Valley), 2.0 * 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Hip), 6.0 * 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Ridge), 40.0 + 30.0);
    // The two eaves of the bar beside the stem lie in one line, but their planes do not meet.
    assert_eq!(plan.planes.len(), 8);
}

/// A U of one width, 60 ft by 40 ft round a yard of 20 ft by 20 ft.
#[test]
fn a_u() {
    let u = [
        (0.0, 0.0),
        (60.0, 0.0),
        (60.0, 40.0),
        (40.0, 40.0),
        (40.0, 20.0),
        (20.0, 20.0),
        (20.0, 40.0),
        (0.0, 40.0),
    ];
    let plan = plan(&[body(&u, rise(12))]);
    near(area_of(&plan), 2000.0 * 2.0_f64.sqrt());
    near(length_of(&plan, LineKind::Valley), 2.0 * 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Hip), 6.0 * 300.0_f64.sqrt());
    near(length_of(&plan, LineKind::Ridge), 40.0 + 2.0 * 20.0);
}

/// A plus of one width: four valleys meet in the middle, where all four ridges do.
#[test]
fn a_plus() {
    let plus = [
        (10.0, 0.0),
        (20.0, 0.0),
        (20.0, 10.0),
        (30.0, 10.0),
        (30.0, 20.0),
        (20.0, 20.0),
        (20.0, 30.0),
        (10.0, 30.0),
        (10.0, 20.0),
        (0.0, 20.0),
        (0.0, 10.0),
        (10.0, 10.0),
    ];
    let plan = plan(&[body(&plus, rise(12))]);
    assert_eq!(plan.planes.len(), 12);
    near(area_of(&plan), 500.0 * 2.0_f64.sqrt());
    near(length_of(&plan, LineKind::Valley), 4.0 * 75.0_f64.sqrt());
    near(length_of(&plan, LineKind::Hip), 8.0 * 75.0_f64.sqrt());
    near(length_of(&plan, LineKind::Ridge), 4.0 * 10.0);
}

/// A yard in the middle: the ridge runs round it, hips outside, valleys inside.
#[test]
fn a_courtyard() {
    let mut outline = body(&rectangle(90.0, 90.0), rise(12));
    let yard = [(30.0, 30.0), (60.0, 30.0), (60.0, 60.0), (30.0, 60.0)];
    outline.rings.push(shapes::ring(&yard));
    let plan = plan(&[outline]);
    assert_eq!(plan.planes.len(), 8);
    near(area_of(&plan), (8100.0 - 900.0) * 2.0_f64.sqrt());
    near(length_of(&plan, LineKind::Ridge), 240.0);
    near(length_of(&plan, LineKind::Hip), 4.0 * 675.0_f64.sqrt());
    near(length_of(&plan, LineKind::Valley), 4.0 * 675.0_f64.sqrt());
    near(plan.height.in_feet(), 15.0);
}

/// A lean-to: one plane up to a wall, along walls at its sides.
#[test]
fn a_lean_to_between_walls() {
    let mut outline = body(&rectangle(20.0, 12.0), rise(4));
    for edge in 1..4 {
        outline.rings[0][edge].is = EdgeIs::Wall;
    }
    let plan = plan(&[outline]);
    assert_eq!(plan.planes.len(), 1);
    near(plan.height.in_feet(), 4.0);
    near(length_of(&plan, LineKind::Wall), 20.0);
    near(length_of(&plan, LineKind::Step), 2.0 * 160.0_f64.sqrt());
}

/// The same standing free: its high edge is free, its sides are rakes.
#[test]
fn a_shed_roof() {
    let mut outline = body(&rectangle(20.0, 12.0), rise(4));
    for edge in 1..4 {
        outline.rings[0][edge].is = EdgeIs::Gable;
    }
    let plan = plan(&[outline]);
    near(length_of(&plan, LineKind::Top), 20.0);
    near(length_of(&plan, LineKind::Rake), 2.0 * 160.0_f64.sqrt());
    near(length_of(&plan, LineKind::Eave), 20.0);
}

/// A chimney's own walls cut through a plane; the plane goes on above it.
#[test]
fn a_shaft_through_a_plane() {
    let mut outline = body(&rectangle(40.0, 28.0), rise(6));
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    let mut shaft = shapes::ring(&[(10.0, 4.0), (14.0, 4.0), (14.0, 7.0), (10.0, 7.0)]);
    for edge in &mut shaft {
        edge.is = EdgeIs::Wall;
    }
    outline.rings.push(shaft);
    let plan = plan(&[outline]);
    assert_eq!(plan.planes.len(), 2);
    assert_eq!(plan.planes[0].holes.len(), 1);
    near(plan.plan_area().in_square_feet(), 40.0 * 28.0 - 12.0);
    near(
        length_of(&plan, LineKind::Step),
        2.0 * 3.0 * 1.25_f64.sqrt(),
    );
    near(length_of(&plan, LineKind::Wall), 4.0);
    near(length_of(&plan, LineKind::Ridge), 40.0);
}

/// Overhangs of 1 ft round walls of 38 ft by 26 ft give the roof of 40 ft by 28 ft; the height counts from the eaves.
#[test]
fn walls_with_overhangs() {
    let mut outline = body(&rectangle(38.0, 26.0), rise(6));
    outline.of = OutlineOf::Walls;
    outline.overhang = Length::feet(1);
    let walls = plan(&[outline]);
    let roof = plan(&[body(&rectangle(40.0, 28.0), rise(6))]);
    near(area_of(&walls), area_of(&roof));
    near(walls.height.in_feet(), 7.0);
    let eave = walls.lines.iter().find(|line| line.kind == LineKind::Eave);
    assert_eq!(eave.unwrap().overhang, Some(Length::feet(1)));
}

/// Unequal pitches over one plate: the planes pass through the wall's line, so the steeper eave hangs lower, by overhang × (difference of the pitches).
#[test]
fn a_steeper_plane_hangs_lower() {
    let mut outline = body(&rectangle(40.0, 30.0), rise(6));
    outline.of = OutlineOf::Walls;
    outline.overhang = Length::feet(2);
    outline.rings[0][1].is = EdgeIs::Gable;
    outline.rings[0][3].is = EdgeIs::Gable;
    outline.rings[0][2].pitch = Some(rise(12));
    let plan = plan(&[outline]);
    // Over the plate the ridge stands as without overhangs, 10 ft; the lower eave lies 2 ft below the plate, the other 1 ft.
    near(plan.height.in_feet(), 12.0);
    let eave = |plane: usize| plan.planes[plane].corners[0].z / 0.3048;
    near(eave(0), 1.0);
    near(eave(1), 0.0);
    near(plan.plan_area().in_square_feet(), 44.0 * 34.0);
}

/// Neighbours of one line and different pitch: a step across parts them, and each keeps its pitch.
#[test]
fn a_change_of_pitch_along_an_eave() {
    let corners = [
        (0.0, 0.0),
        (20.0, 0.0),
        (40.0, 0.0),
        (40.0, 28.0),
        (0.0, 28.0),
    ];
    let mut outline = body(&corners, rise(12));
    outline.rings[0][1].pitch = Some(rise(6));
    outline.rings[0][2].is = EdgeIs::Gable;
    outline.rings[0][4].is = EdgeIs::Gable;
    let plan = plan(&[outline]);
    assert_eq!(plan.planes.len(), 3);
    near(plan.plan_area().in_square_feet(), 40.0 * 28.0);
    assert!(plan.length_of(LineKind::Step) > Length::ZERO);
}

/// Two bodies: the porch leans on the house's wall, lower by 3 ft.
#[test]
fn a_porch_beside_a_house() {
    let mut house = body(&rectangle(40.0, 28.0), rise(6));
    house.raised = Length::feet(3);
    let mut porch = body(
        &[(10.0, -8.0), (30.0, -8.0), (30.0, 0.0), (10.0, 0.0)],
        rise(3),
    );
    porch.rings[0][1].is = EdgeIs::Gable;
    porch.rings[0][2].is = EdgeIs::Wall;
    porch.rings[0][3].is = EdgeIs::Gable;
    let plan = plan(&[house, porch]);
    assert_eq!(plan.planes.len(), 5);
    assert_eq!(plan.outlines.len(), 2);
    near(plan.height.in_feet(), 10.0);
    near(length_of(&plan, LineKind::Wall), 20.0);
    assert_eq!(plan.planes[0].pitch, rise(3), "nearest to the street");
}
