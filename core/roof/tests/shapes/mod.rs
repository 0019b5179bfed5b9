//! Outlines in feet, and what is read off their plans.
#![allow(dead_code)]

use trade::roof::{LineKind, RoofPlan};
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Got, Length, Pitch};

pub fn rise(rise: u32) -> Pitch {
    Pitch::rise(rise)
}

pub fn ring(corners: &[(f64, f64)]) -> Vec<SketchEdge> {
    corners
        .iter()
        .map(|&(x, y)| SketchEdge {
            x: Length::from_inches(x * 12.0),
            y: Length::from_inches(y * 12.0),
            is: EdgeIs::Hip,
            pitch: None,
            overhang: None,
            slope: None,
        })
        .collect()
}

pub fn body(corners: &[(f64, f64)], pitch: Pitch) -> Body {
    Body {
        rings: vec![ring(corners)],
        of: OutlineOf::Roof,
        pitch,
        overhang: Length::ZERO,
        raised: Length::ZERO,
        above_roof: None,
    }
}

pub fn rectangle(width: f64, depth: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth)]
}

pub fn try_plan(bodies: &[Body]) -> Result<RoofPlan, roof::ShapeError> {
    let drawn = Drawn::Outlines {
        bodies: bodies.to_vec(),
    };
    roof::plan_of(&drawn, Got::Tape, Got::Tape)
}

pub fn plan(bodies: &[Body]) -> RoofPlan {
    try_plan(bodies).unwrap()
}

/// The covered area in square feet.
pub fn area_of(plan: &RoofPlan) -> f64 {
    plan.slope_area().in_square_feet()
}

/// The length of all lines of a kind in feet.
pub fn length_of(plan: &RoofPlan, kind: LineKind) -> f64 {
    plan.length_of(kind).in_feet()
}

/// The length of each line of a kind in feet.
pub fn in_feet(plan: &RoofPlan, kind: LineKind) -> Vec<f64> {
    plan.lines
        .iter()
        .filter(|line| line.kind == kind)
        .map(|line| line.length.in_feet())
        .collect()
}

/// A body with its corners put elsewhere.
pub fn changed(body: &Body, change: impl Fn(&SketchEdge) -> (Length, Length)) -> Body {
    let mut changed = body.clone();
    for edge in changed.rings.iter_mut().flatten() {
        (edge.x, edge.y) = change(edge);
    }
    changed
}

pub fn negative(length: Length) -> Length {
    Length::of_nanometres(-length.nanometres())
}
