//! Roofs raised from outlines of any shape, laid, drawn and exported.

#![cfg(test)]

mod laws;

use laws::{
    courses_keep_the_rules, every_place_is_covered_once, nothing_is_lost, nothing_overlaps,
};
use proptest::prelude::*;
use roof::draw::{Marks, PHONE, lettering::Turned, plan as drawn_plan};
use roof::export::geojson;
use roof::laying::lay;
use roof::leak::suspects;
use roof::plan_of;
use trade::laid::{Pieces, ValleyIs};
use trade::leak::Stain;
use trade::roof::RoofPlan;
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Got, Length, Pitch};
use trade::words::{Language, Words};

/// A ring round a middle: each corner farther round than the last, so that it crosses nowhere.
fn any_ring() -> impl Strategy<Value = Vec<(f64, f64, bool, u32)>> {
    let corner = (
        0.6..1.0_f64,
        3.0..10.0_f64,
        prop::bool::weighted(0.15),
        3_u32..12,
    );
    prop::collection::vec(corner, 4..16).prop_map(|corners| {
        let whole: f64 = corners.iter().map(|corner| corner.0).sum();
        let mut angle = 0.0;
        corners
            .into_iter()
            .map(|(step, far, gable, rise)| {
                angle += step / whole * std::f64::consts::TAU;
                (
                    10.0 + far * angle.cos(),
                    10.0 + far * angle.sin(),
                    gable,
                    rise,
                )
            })
            .collect()
    })
}

fn body(ring: &[(f64, f64, bool, u32)], one_pitch: bool) -> Body {
    let edge = |&(x, y, gable, rise): &(f64, f64, bool, u32)| SketchEdge {
        x: Length::from_metres(x),
        y: Length::from_metres(y),
        is: if gable { EdgeIs::Gable } else { EdgeIs::Hip },
        pitch: (!one_pitch).then(|| Pitch::rise(rise)),
        overhang: None,
        slope: None,
    };
    Body {
        rings: vec![ring.iter().map(edge).collect()],
        of: OutlineOf::Roof,
        pitch: Pitch::rise(6),
        overhang: Length::ZERO,
        raised: Length::ZERO,
        above_roof: None,
    }
}

fn raised(ring: &[(f64, f64, bool, u32)], one_pitch: bool) -> Option<RoofPlan> {
    let bodies = vec![body(ring, one_pitch)];
    plan_of(&Drawn::Outlines { bodies }, Got::Tape, Got::Tape).ok()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_roof_is_laid_by_the_laws(ring in any_ring(), one_pitch in any::<bool>(), closed in any::<bool>()) {
        let Some(plan) = raised(&ring, one_pitch) else { return Ok(()) };
        let valley = if closed { ValleyIs::ClosedCut } else { ValleyIs::Open };
        let (laid, put) = lay(&plan, &Pieces::laminated(), valley).unwrap();
        nothing_is_lost(&laid, &put)?;
        nothing_overlaps(&plan, &laid, &put)?;
        every_place_is_covered_once(&plan, &put)?;
        courses_keep_the_rules(&laid.pieces, &put)?;
    }

    #[test]
    fn any_roof_is_drawn_traced_and_handed_over(ring in any_ring(), one_pitch in any::<bool>(), at in (2.0..18.0_f64, 2.0..18.0_f64)) {
        let Some(plan) = raised(&ring, one_pitch) else { return Ok(()) };
        let drawing = drawn_plan(&plan, &Marks::default(), Words::of(Language::English), PHONE).drawing;
        let boxes: Vec<Turned> = drawing.words().map(Turned::of).collect();
        for (at, one) in boxes.iter().enumerate() {
            prop_assert!(one.within(drawing.width, drawing.height));
            prop_assert!(boxes.iter().skip(at + 1).all(|other| !one.meets(other)));
        }
        let stain = Stain { at, within: Length::feet(1), when: None, wind_from: None };
        // Under the roof there is always something to look at.
        let over = plan.planes.iter().any(|plane| {
            let corners = &plane.corners;
            corners.iter().zip(corners.iter().cycle().skip(1)).filter(|(a, b)| {
                (a.y > at.1) != (b.y > at.1) && at.0 < a.x + (at.1 - a.y) / (b.y - a.y) * (b.x - a.x)
            }).count() % 2 == 1
        });
        let found = suspects(&plan, &stain, &[]);
        prop_assert!(!over || !found.unwrap().is_empty());
        prop_assert!(geojson(&plan, None).parse::<::geojson::GeoJson>().is_ok());
    }
}

/// The measure of how many of the outlines above give a roof at all: the laws are not held by nothing.
#[test]
fn most_outlines_give_a_roof() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let raised_of_100 = (0..100)
        .filter(|at| {
            let ring = any_ring().new_tree(&mut runner).unwrap().current();
            raised(&ring, at % 2 == 0).is_some()
        })
        .count();
    println!("{raised_of_100} of 100 outlines give a roof");
    assert!(raised_of_100 >= 80);
}
