//! Laws that hold for any roof: nothing is lost or laid twice, every place is covered once, joints keep their distance.

#![cfg(test)]

mod laws;
mod roofs;
mod shapes;

use laws::{
    courses_keep_the_rules, every_place_is_covered_once, nothing_is_lost, nothing_overlaps,
};
use proptest::prelude::*;
use roof::laying::{lay, lay_on};
use roofs::{FOOT, ell_planes, gable_planes, hip_planes, hole, plan, tee_planes};
use trade::laid::{Pieces, ValleyIs};
use trade::roof::{LineKind, RoofPlan};
use trade::sketch::{EdgeIs, OutlineOf};
use trade::units::{Length, Pitch};

fn any_roof() -> impl Strategy<Value = RoofPlan> {
    let sizes = (0_u8..4, 24.0..70.0_f64, 18.0..40.0_f64, 2_u32..15);
    let rest = (0.1..0.5_f64, 1.0..5.0_f64, 0.5..7.0_f64, any::<bool>());
    (sizes, rest).prop_map(
        |((shape, long, span, rise), (share, hole_wide, hole_deep, holed))| {
            let (span, pitch) = (span * FOOT, Pitch::rise(rise));
            let wide = span + long * FOOT;
            let mut planes = match shape {
                0 => gable_planes(wide, span, pitch).to_vec(),
                1 => hip_planes(wide, span, pitch).to_vec(),
                2 => ell_planes(wide, wide * 0.9, span * 0.9, pitch).to_vec(),
                _ => {
                    let from = wide * share * 0.5;
                    tee_planes(wide, span, (from, from + span * 0.8), span * share, pitch).to_vec()
                }
            };
            if holed {
                // In the second plane of each shape, clear of its edges: the rear plane, or the right hip end, which is a triangle.
                let (x, y) = match shape {
                    1 => (wide - span * 0.25, span * 0.5),
                    2 => (wide - span * 0.2, span * 0.45),
                    _ => (wide * 0.6, span * 0.75),
                };
                let (half_x, half_y) = (
                    (hole_wide * FOOT / 2.0).min(span * 0.08),
                    (hole_deep * FOOT / 2.0).min(span * 0.08),
                );
                planes[1]
                    .holes
                    .push(hole((x - half_x, y - half_y), (x + half_x, y + half_y)));
            }
            plan(&planes, &[])
        },
    )
}

/// A gable roof 40 by 28 feet with a dormer to the street.
fn dormered((x, y): (f64, f64), wide: f64, above: f64, gabled: bool, out: i64) -> RoofPlan {
    let (hip, gable) = (EdgeIs::Hip, EdgeIs::Gable);
    let mut house = shapes::body(&shapes::rectangle(40.0, 28.0), Pitch::rise(8));
    for (edge, is) in house.rings[0].iter_mut().zip([hip, gable, hip, gable]) {
        edge.is = is;
    }
    let far = 13.0;
    let corners = [(x, y), (x + wide, y), (x + wide, far), (x, far)];
    let mut dormer = shapes::body(&corners, Pitch::rise(if gabled { 8 } else { 2 }));
    let is = if gabled {
        [gable, hip, gable, hip]
    } else {
        [hip, gable, gable, gable]
    };
    for (edge, is) in dormer.rings[0].iter_mut().zip(is) {
        edge.is = is;
    }
    dormer.rings[0][2].overhang = Some(Length::ZERO);
    dormer.of = OutlineOf::Walls;
    dormer.overhang = Length::inches(out);
    dormer.above_roof = Some(Length::from_inches(above * 12.0));
    shapes::plan(&[house, dormer])
}

fn any_pieces() -> impl Strategy<Value = Pieces> {
    prop_oneof![
        Just(Pieces::strip()),
        Just(Pieces::laminated()),
        (40_i64..60, 4_i64..9, 4_i64..8, 0_i64..16).prop_map(
            |(width, exposure, shortest, overhang)| {
                Pieces {
                    width: Length::inches(width),
                    height: Length::inches(exposure * 2 + 1),
                    exposure: Length::inches(exposure),
                    offset: Length::inches(shortest + 1),
                    shortest: Length::inches(shortest),
                    overhang: Length::sixteenths(overhang),
                    ..Pieces::strip()
                }
            }
        ),
    ]
}

fn any_valley() -> impl Strategy<Value = ValleyIs> {
    prop_oneof![Just(ValleyIs::Open), Just(ValleyIs::ClosedCut)]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_roof_is_laid_by_the_laws(plan in any_roof(), pieces in any_pieces(), valley in any_valley()) {
        let (laid, put) = lay(&plan, &pieces, valley).unwrap();
        nothing_is_lost(&laid, &put)?;
        nothing_overlaps(&plan, &laid, &put)?;
        every_place_is_covered_once(&plan, &put)?;
        courses_keep_the_rules(&pieces, &put)?;
    }

    /// A dormer so small that both of its valleys together are narrower than what runs through them.
    #[test]
    fn small_dormers_are_laid_by_the_laws(wide in 0.2..3.0_f64, rise in 2_u32..15, pieces in any_pieces(), valley in any_valley()) {
        let planes = tee_planes(12.0, 9.0, (4.0, 4.0 + wide), 0.5, Pitch::rise(rise));
        let plan = plan(&planes, &[]);
        let (laid, put) = lay(&plan, &pieces, valley).unwrap();
        nothing_is_lost(&laid, &put)?;
        nothing_overlaps(&plan, &laid, &put)?;
        every_place_is_covered_once(&plan, &put)?;
        courses_keep_the_rules(&pieces, &put)?;
    }

    /// A dormer that stands on a slope: what it hides is not laid, and its valleys are cut on both sides.
    #[test]
    fn standing_dormers_are_laid_by_the_laws(
        at in (2.0..24.0_f64, 1.0..4.0_f64), wide in 4.0..12.0_f64, above in 0.5..4.0_f64, gabled in any::<bool>(), out in 0_i64..14,
        pieces in any_pieces(), valley in any_valley(),
    ) {
        let plan = dormered(at, wide, above, gabled, out);
        let (laid, put) = lay(&plan, &pieces, valley).unwrap();
        nothing_is_lost(&laid, &put)?;
        nothing_overlaps(&plan, &laid, &put)?;
        every_place_is_covered_once(&plan, &put)?;
        courses_keep_the_rules(&pieces, &put)?;
    }

    #[test]
    fn the_cover_is_the_roof_and_its_overhang(plan in any_roof(), pieces in any_pieces()) {
        let bare = Pieces { overhang: Length::ZERO, ..pieces };
        let (laid, _) = lay(&plan, &bare, ValleyIs::ClosedCut).unwrap();
        let (covered, roof) = (laid.covered.in_square_metres(), plan.slope_area().in_square_metres());
        // Two inches seen past the centre on one side of a valley are two inches less on the other: what is left over lies at its ends.
        let valleys = plan.length_of(LineKind::Valley).in_metres();
        prop_assert!((covered - roof).abs() < 1e-6 * roof + if valleys > 0.0 { 0.02 } else { 0.0 }, "{covered} for {roof}");
    }

    #[test]
    fn laying_twice_gives_the_same(plan in any_roof(), pieces in any_pieces(), valley in any_valley()) {
        prop_assert_eq!(lay(&plan, &pieces, valley).unwrap(), lay(&plan, &pieces, valley).unwrap());
    }

    /// Every plane laid alone covers what it covers in the whole; the pieces add up but for what an offcut of one plane fills in another. Lines
    /// that two planes share are dressed with either.
    #[test]
    fn planes_laid_alone_add_up_to_the_whole(plan in any_roof(), pieces in any_pieces(), valley in any_valley()) {
        let (whole, put) = lay(&plan, &pieces, valley).unwrap();
        let (mut covered, mut field, mut starter, mut caps, mut count) = (0.0, 0, 0.0, 0.0, 0);
        for at in 0..plan.planes.len() {
            let (alone, put) = lay_on(&plan, &[at], &pieces, valley).unwrap();
            prop_assert_eq!(alone.planes.len(), 1);
            prop_assert!(put.iter().all(|piece| piece.plane == at));
            covered += alone.covered.in_square_metres();
            field += alone.field;
            starter += alone.starter_length.in_metres();
            caps += alone.cap_length.in_metres();
            count += put.len();
        }
        prop_assert!((covered - whole.covered.in_square_metres()).abs() < 1e-6 * covered);
        prop_assert_eq!(count, put.len());
        prop_assert!(field >= whole.field, "{field} for {}", whole.field);
        let shared: f64 = plan
            .lines
            .iter()
            .filter(|line| matches!(line.kind, LineKind::Ridge | LineKind::Hip))
            .map(|line| line.length.in_metres() * f64::from(u32::try_from(line.planes.len()).unwrap() - 1))
            .sum();
        prop_assert!((starter - whole.starter_length.in_metres()).abs() < 1e-6);
        prop_assert!((caps - shared - whole.cap_length.in_metres()).abs() < 1e-6);
        let all: Vec<usize> = (0..plan.planes.len()).collect();
        prop_assert_eq!(lay_on(&plan, &all, &pieces, valley).unwrap(), (whole, put));
    }
}
