//! A roof hangs on its outline alone: not on where its rings begin, which way they run, or from which side it is seen; even where several events
//! that a weighted skeleton leaves open fall together.
#![cfg(test)]

mod shapes;

use proptest::prelude::*;
use shapes::{body, changed, negative, ring, rise, try_plan};
use trade::roof::{Corner, LineKind, RoofLine, RoofPlan};
use trade::sketch::{Body, EdgeIs};

/// A comb: teeth of whole feet on a bar, so that many edges come into one line at once.
fn comb() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((1_u8..4, 1_u8..4, 2_u8..5), 1..5).prop_map(|teeth| {
        let mut x = 0.0;
        let mut top = vec![(0.0, 4.0)];
        for (gap, width, high) in teeth {
            let (from, to) = (x + 2.0 * f64::from(gap), x + 2.0 * f64::from(gap + width));
            let high = 4.0 + 2.0 * f64::from(high);
            top.extend([(from, 4.0), (from, high), (to, high), (to, 4.0)]);
            x = to;
        }
        let wide = x + 2.0;
        let mut ring = vec![(0.0, 0.0), (wide, 0.0), (wide, 4.0)];
        ring.extend(top.into_iter().rev());
        ring
    })
}

/// A cross: four arms of whole feet, some of them as wide and as long as others.
fn cross() -> impl Strategy<Value = Vec<(f64, f64)>> {
    (prop::array::uniform4(1_u8..4), 1_u8..4, 1_u8..4).prop_map(|(arms, wide, deep)| {
        let [left, front, right, rear] = arms.map(|arm| 2.0 * f64::from(arm));
        let (w, d) = (2.0 * f64::from(wide), 2.0 * f64::from(deep));
        vec![
            (left, 0.0),
            (left + w, 0.0),
            (left + w, front),
            (left + w + right, front),
            (left + w + right, front + d),
            (left + w, front + d),
            (left + w, front + d + rear),
            (left, front + d + rear),
            (left, front + d),
            (0.0, front + d),
            (0.0, front),
            (left, front),
        ]
    })
}

/// A stair of right angles on a bar of whole feet.
fn stair() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((1_u8..6, 2_u8..9), 1..7).prop_map(|bars| {
        let mut x = 0.0;
        let mut top = Vec::new();
        for (width, height) in bars {
            let high = f64::from(height);
            top.push((x, high));
            x += f64::from(width);
            top.push((x, high));
        }
        top.reverse();
        top.dedup();
        let mut ring = vec![(0.0, 0.0), (x, 0.0)];
        ring.extend(top);
        ring
    })
}

/// Few pitches, so that edges of one line have now the same and now another; now and then a gable or a wall.
fn edges() -> impl Strategy<Value = Vec<(u32, EdgeIs)>> {
    let is = prop_oneof![
        6 => Just(EdgeIs::Hip),
        1 => Just(EdgeIs::Gable),
        1 => Just(EdgeIs::Wall),
    ];
    prop::collection::vec((prop_oneof![Just(4_u32), Just(6), Just(12)], is), 24)
}

/// A block with one or two courts of whole feet.
fn courts() -> impl Strategy<Value = Vec<Vec<(f64, f64)>>> {
    let court = |left: f64| {
        (1_u8..4, 1_u8..4, 2_u8..5, 2_u8..5).prop_map(move |(x, y, wide, deep)| {
            let (x, y) = (left + 2.0 * f64::from(x), 2.0 * f64::from(y));
            let (wide, deep) = (2.0 * f64::from(wide), 2.0 * f64::from(deep));
            vec![(x, y), (x, y + deep), (x + wide, y + deep), (x + wide, y)]
        })
    };
    (court(0.0), prop::option::of(court(16.0))).prop_map(|(one, other)| {
        let rim = vec![(0.0, 0.0), (36.0, 0.0), (36.0, 20.0), (0.0, 20.0)];
        [Some(rim), Some(one), other]
            .into_iter()
            .flatten()
            .collect()
    })
}

fn any_body() -> impl Strategy<Value = Body> {
    let one = prop_oneof![comb(), cross(), stair()].prop_map(|rim| vec![rim]);
    (prop_oneof![3 => one, 1 => courts()], edges()).prop_map(|(rings, edges)| {
        let mut outline = body(&[], rise(6));
        outline.rings = rings.iter().map(|corners| ring(corners)).collect();
        let all = outline.rings.iter_mut().flatten();
        for (edge, (pitch, is)) in all.zip(edges) {
            edge.pitch = Some(rise(pitch));
            edge.is = is;
        }
        outline
    })
}

/// The very same planes and lines in the same places.
fn same_places(one: &RoofPlan, other: &RoofPlan) -> Result<(), TestCaseError> {
    same(one, other)?;
    let near = |a: &RoofLine, b: &RoofLine| {
        let ends = [(a.from, b.from), (a.to, b.to)];
        let turned = [(a.from, b.to), (a.to, b.from)];
        let close = |(a, b): &(Corner, Corner)| {
            (a.x - b.x).abs() + (a.y - b.y).abs() + (a.z - b.z).abs() < 1e-3
        };
        a.kind == b.kind && (ends.iter().all(close) || turned.iter().all(close))
    };
    for line in &one.lines {
        let there = other.lines.iter().any(|other| near(line, other));
        prop_assert!(there, "{line:?}");
    }
    Ok(())
}

fn same(one: &RoofPlan, other: &RoofPlan) -> Result<(), TestCaseError> {
    let near = |a: f64, b: f64| (a - b).abs() < 1e-3;
    prop_assert_eq!(one.planes.len(), other.planes.len());
    prop_assert!(near(one.height.in_metres(), other.height.in_metres()));
    for kind in LineKind::ALL {
        let (a, b) = (
            one.length_of(kind).in_metres(),
            other.length_of(kind).in_metres(),
        );
        prop_assert!(near(a, b), "{kind:?} {a} {b}");
    }
    let areas = |plan: &RoofPlan| {
        let mut areas: Vec<f64> = plan
            .planes
            .iter()
            .map(|plane| plane.slope_area.in_square_metres())
            .collect();
        areas.sort_by(f64::total_cmp);
        areas
    };
    for (a, b) in areas(one).into_iter().zip(areas(other)) {
        prop_assert!(near(a, b), "{a} {b}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn it_does_not_matter_where_a_ring_begins(body in any_body(), by in 1_usize..24) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mut turned = body;
        for ring in &mut turned.rings {
            let count = ring.len();
            ring.rotate_left(by % count);
        }
        turned.rings[1..].reverse();
        same_places(&plan, &try_plan(&[turned]).unwrap())?;
    }

    #[test]
    fn it_does_not_matter_which_way_a_ring_runs(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mut reversed = body;
        for ring in &mut reversed.rings {
            let places: Vec<_> = ring.iter().map(|edge| (edge.x, edge.y)).collect();
            let count = places.len();
            for (at, edge) in ring.iter_mut().enumerate() {
                (edge.x, edge.y) = places[(at + 1) % count];
            }
            ring.reverse();
        }
        same_places(&plan, &try_plan(&[reversed]).unwrap())?;
    }

    #[test]
    fn a_mirror_changes_nothing(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let mirrored = changed(&body, |edge| (negative(edge.x), edge.y));
        same(&plan, &try_plan(&[mirrored]).unwrap())?;
    }

    #[test]
    fn a_quarter_turn_changes_nothing(body in any_body()) {
        let Ok(plan) = try_plan(std::slice::from_ref(&body)) else { return Ok(()) };
        let turned = changed(&body, |edge| (negative(edge.y), edge.x));
        same(&plan, &try_plan(&[turned]).unwrap())?;
    }
}
