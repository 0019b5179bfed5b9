//! Dormers on a gable roof against closed forms: a slope of the rise `m` for each foot, a dormer of the rise `d`, `w` wide, whose walls stand `h` over
//! the slope at its face. Derived by hand from where the planes meet; no source.
#![cfg(test)]
#![allow(clippy::many_single_char_names, reason = "named as in the formulas")]

mod shapes;

use shapes::{area_of, body, in_feet, length_of, rise, try_plan};
use trade::roof::{LineKind, RoofPlan};
use trade::sketch::{Body, EdgeIs, OutlineOf};
use trade::units::{Length, Pitch};

const NEAR: f64 = 1e-3;

/// 40 by 28 feet, the ridge along the street.
fn house(pitch: Pitch) -> Body {
    let mut house = body(&shapes::rectangle(40.0, 28.0), pitch);
    for gable in [1, 3] {
        house.rings[0][gable].is = EdgeIs::Gable;
    }
    house
}

/// A dormer over the street: its left front corner, its width and depth in feet.
fn dormer(
    (x, y): (f64, f64),
    (wide, deep): (f64, f64),
    pitch: Pitch,
    above: f64,
    is: [EdgeIs; 4],
) -> Body {
    let corners = [(x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep)];
    let mut dormer = body(&corners, pitch);
    for (edge, is) in dormer.rings[0].iter_mut().zip(is) {
        edge.is = is;
    }
    dormer.above_roof = Some(Length::from_inches(above * 12.0));
    dormer
}

const GABLED: [EdgeIs; 4] = [EdgeIs::Gable, EdgeIs::Hip, EdgeIs::Gable, EdgeIs::Hip];
const SHED: [EdgeIs; 4] = [EdgeIs::Hip, EdgeIs::Gable, EdgeIs::Gable, EdgeIs::Gable];

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() < NEAR
}

fn walls(plan: &RoofPlan) -> Vec<f64> {
    let mut areas: Vec<f64> = plan
        .walls
        .iter()
        .map(|wall| wall.area.in_square_feet())
        .collect();
    areas.sort_by(f64::total_cmp);
    areas
}

#[test]
fn a_gable_dormer() {
    let (w, h, y) = (8.0, 4.0, 3.0);
    for (main, own) in [(12, 12), (9, 6), (8, 10)] {
        let (m, d) = (f64::from(main) / 12.0, f64::from(own) / 12.0);
        let plan = try_plan(&[
            house(rise(main)),
            dormer((16.0, y), (w, 11.0), rise(own), h, GABLED),
        ])
        .unwrap();
        let cheek = h / m;
        let top = (h + d * w / 2.0) / m;
        // Each cheek runs into the slope where that has risen as high as the wall; each valley from there to the end of the ridge.
        let step = cheek * (1.0 + m * m).sqrt();
        let valley = ((w / 2.0).powi(2) + (top - cheek).powi(2) + (d * w / 2.0).powi(2)).sqrt();
        let plain = try_plan(&[house(rise(main))]).unwrap();
        for (kind, wanted) in [
            (LineKind::Step, 2.0 * step),
            (LineKind::Valley, 2.0 * valley),
            (LineKind::Wall, w),
            (LineKind::Ridge, 40.0 + top),
            (LineKind::Eave, 80.0 + 2.0 * cheek),
        ] {
            let got = length_of(&plan, kind);
            assert!(near(got, wanted), "{kind:?} {got} {wanted} {main} {own}");
        }
        let rakes = 2.0 * (w / 2.0) * (1.0 + d * d).sqrt();
        assert!(near(
            length_of(&plan, LineKind::Rake) - length_of(&plain, LineKind::Rake),
            rakes
        ));
        assert_eq!(in_feet(&plan, LineKind::Valley).len(), 2);
        assert_eq!(in_feet(&plan, LineKind::Step).len(), 2);
        // The face and two triangles.
        let face = w * h + d * w * w / 4.0;
        let wanted = [h * cheek / 2.0, h * cheek / 2.0, face];
        let got = walls(&plan);
        assert!(
            got.len() == 3 && got.iter().zip(wanted).all(|(a, b)| near(*a, b)),
            "{got:?} {wanted:?}"
        );
        // What it cuts out of the slope, and what its own two planes cover.
        let cut = w * cheek + (top - cheek) * w / 2.0;
        let covered = area_of(&plain) - cut * (1.0 + m * m).sqrt() + cut * (1.0 + d * d).sqrt();
        assert!(
            near(area_of(&plan), covered),
            "{} {covered}",
            area_of(&plan)
        );
        assert!(near(plan.plan_area().in_square_feet(), 40.0 * 28.0));
        // Where their pitches are alike, the front slope is the one that is not the dormer's.
        let front = plan
            .planes
            .iter()
            .filter(|plane| plane.downhill.1 < -0.5)
            .map(|plane| plane.plan_area.in_square_feet())
            .sum::<f64>();
        assert!(near(front, 40.0 * 14.0 - cut), "{front}");
    }
}

#[test]
fn a_shed_dormer() {
    let (w, h, y) = (10.0, 5.0, 2.0);
    let (m, d) = (8.0 / 12.0, 2.0 / 12.0);
    let plan = try_plan(&[
        house(rise(8)),
        dormer((12.0, y), (w, 11.9), rise(2), h, SHED),
    ])
    .unwrap();
    // Its plane runs into the slope along a level line, where both have risen alike.
    let deep = h / (m - d);
    assert!(near(length_of(&plan, LineKind::PitchChange), w));
    assert!(near(
        length_of(&plan, LineKind::Step),
        2.0 * deep * (1.0 + m * m).sqrt()
    ));
    assert!(near(length_of(&plan, LineKind::Wall), w));
    assert!(near(length_of(&plan, LineKind::Valley), 0.0));
    let cheek = h * deep / 2.0;
    let got = walls(&plan);
    assert!(
        got.iter()
            .zip([cheek, cheek, w * h])
            .all(|(a, b)| near(*a, b)),
        "{got:?}"
    );
    let cut = w * deep;
    let plain = area_of(&try_plan(&[house(rise(8))]).unwrap());
    let covered = plain - cut * (1.0 + m * m).sqrt() + cut * (1.0 + d * d).sqrt();
    assert!(near(area_of(&plan), covered));
    assert_eq!(plan.planes.len(), 3);
}

/// Overhangs hang over the slope: that goes on under them to the foot of the walls.
#[test]
fn a_gable_dormer_with_overhangs() {
    let (w, h, y, out, m) = (8.0, 3.0, 3.0, 1.0, 8.0 / 12.0);
    let mut upper = dormer((16.0, y), (w, 9.5), rise(8), h, GABLED);
    upper.of = OutlineOf::Walls;
    upper.overhang = Length::feet(1);
    let plan = try_plan(&[house(rise(8)), upper]).unwrap();
    // Walls reach to the planes, which lie at the eaves h over the slope and higher inside.
    let cheek = (h + m * out) / m;
    assert!(near(
        length_of(&plan, LineKind::Step),
        2.0 * cheek * (1.0 + m * m).sqrt()
    ));
    assert!(near(length_of(&plan, LineKind::Wall), w));
    // The eaves run from the front overhang to where the slope comes up to them.
    assert!(near(
        length_of(&plan, LineKind::Eave),
        80.0 + 2.0 * (out + h / m)
    ));
    // The valleys begin there, out under the eaves' own corners.
    let half = w / 2.0 + out;
    let wanted = (half * half + half * half + (m * half).powi(2)).sqrt();
    assert!(near(length_of(&plan, LineKind::Valley), 2.0 * wanted));
    assert_eq!(in_feet(&plan, LineKind::Valley).len(), 2);
    // Seen twice on plan is what hangs over the slope.
    let top = (h + m * half) / m;
    let seen = (2.0 * half) * (h / m + out) + half * (top - h / m);
    let cut = w * cheek + (top - cheek) * w / 2.0;
    assert!(near(
        plan.plan_area().in_square_feet(),
        40.0 * 28.0 - cut + seen
    ));
}

/// One that comes up flush with the wall below takes a piece out of the eave.
#[test]
fn a_dormer_in_the_wall_below() {
    let (w, h, m) = (6.0, 3.0, 1.0);
    let plan = try_plan(&[
        house(rise(12)),
        dormer((17.0, 0.0), (w, 12.0), rise(12), h, GABLED),
    ])
    .unwrap();
    let cheek = h / m;
    assert!(near(
        length_of(&plan, LineKind::Eave),
        80.0 - w + 2.0 * cheek
    ));
    assert!(near(length_of(&plan, LineKind::Wall), 0.0));
    assert!(near(plan.plan_area().in_square_feet(), 40.0 * 28.0));
    let got = walls(&plan);
    assert!(got.iter().all(|area| near(*area, h * cheek / 2.0)) && got.len() == 2);
}

/// A box that stands through the ridge: it cuts both slopes and the ridge, and stands on them with four walls.
#[test]
fn a_cupola_astride_the_ridge() {
    let plan = try_plan(&[
        house(rise(6)),
        dormer((18.0, 12.0), (4.0, 4.0), rise(12), 3.0, [EdgeIs::Hip; 4]),
    ])
    .unwrap();
    assert!(near(length_of(&plan, LineKind::Ridge), 36.0));
    assert!(near(length_of(&plan, LineKind::Wall), 8.0));
    assert!(near(
        length_of(&plan, LineKind::Step),
        8.0 * 1.25_f64.sqrt()
    ));
    let got: f64 = walls(&plan).iter().sum();
    // Two walls 3 ft high, two with the ridge a foot up in their middle.
    assert!(near(got, 2.0 * 12.0 + 2.0 * (12.0 - 2.0)), "{got}");
    assert!(near(plan.plan_area().in_square_feet(), 40.0 * 28.0));
}

#[test]
fn what_stands_nowhere_or_is_not_seen_is_refused() {
    let beside = dormer((60.0, 3.0), (8.0, 8.0), rise(6), 4.0, GABLED);
    let error = try_plan(&[house(rise(6)), beside]).unwrap_err();
    assert_eq!(error, roof::ShapeError::NotOnRoof(1));
    let mut sunk = dormer((16.0, 3.0), (8.0, 8.0), rise(1), 0.0, SHED);
    sunk.above_roof = Some(Length::ZERO);
    let error = try_plan(&[house(rise(6)), sunk]).unwrap_err();
    assert_eq!(error, roof::ShapeError::Buried(1));
    let alone = dormer((16.0, 3.0), (8.0, 8.0), rise(6), 4.0, GABLED);
    assert_eq!(
        try_plan(&[alone]).unwrap_err(),
        roof::ShapeError::NotOnRoof(0)
    );
}

/// The ridge of the house lies 14 ft back from its eave. A gable dormer on the way is level along its own ridge for the 6 ft until it dies into the slope.
#[test]
fn a_dormer_on_the_way_is_not_the_top() {
    let feet = |feet: f64| Length::from_inches(feet * 12.0).in_metres();
    let behind = dormer((16.0, 6.0), (8.0, 6.0), Pitch::rise(6), 1.0, GABLED);
    let alone = try_plan(&[house(Pitch::rise(6))]).expect("a gable roof");
    let plan = try_plan(&[house(Pitch::rise(6)), behind]).expect("with a dormer");
    for across in [20.0, 18.0, 30.0] {
        let from = (feet(across), feet(2.0));
        for plan in [&alone, &plan] {
            let back = roof::back_to_the_top(plan, from, (0.0, -1.0));
            assert!(
                (back - feet(12.0)).abs() < 0.021,
                "{across} ft across: {back} m"
            );
        }
    }
}
