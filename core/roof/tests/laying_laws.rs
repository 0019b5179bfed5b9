//! Laws that hold for any roof: nothing is lost or laid twice, every place is covered once, joints keep their distance.

#![cfg(test)]

mod roofs;

use proptest::prelude::*;
use roof::frame::{Frame, Place};
use roof::laying::{lay, shape};
use roofs::{FOOT, ell_planes, gable_planes, hip_planes, hole, plan, tee_planes};
use std::collections::BTreeMap;
use trade::laid::{Laid, LaidPiece, Pieces, ValleyIs};
use trade::roof::{LineKind, RoofPlan};
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

fn area_seen(piece: &LaidPiece) -> f64 {
    piece.seen.iter().map(|rim| shape::area(rim)).sum()
}

/// Inside by the crossing number.
fn inside(rim: &[Place], place: Place) -> bool {
    rim.iter()
        .zip(rim.iter().cycle().skip(1))
        .filter(|(a, b)| {
            (a.1 > place.1) != (b.1 > place.1)
                && place.0 < a.0 + (place.1 - a.1) / (b.1 - a.1) * (b.0 - a.0)
        })
        .count()
        % 2
        == 1
}

fn by_course(pieces: &[LaidPiece]) -> BTreeMap<(usize, u32), Vec<&LaidPiece>> {
    let mut courses: BTreeMap<_, Vec<&LaidPiece>> = BTreeMap::new();
    for piece in pieces {
        courses
            .entry((piece.plane, piece.course))
            .or_default()
            .push(piece);
    }
    for course in courses.values_mut() {
        course.sort_by(|a, b| a.along.0.total_cmp(&b.along.0));
    }
    courses
}

/// Places where two pieces of a course meet in what is seen of them.
fn joints(course: &[&LaidPiece]) -> Vec<f64> {
    let touches = |piece: &LaidPiece, at: f64| {
        piece
            .seen
            .iter()
            .flatten()
            .any(|place| (place.0 - at).abs() < 1e-7)
    };
    course
        .windows(2)
        .map(|pair| (pair[0], pair[1], pair[0].along.1))
        .filter(|(left, right, at)| touches(left, *at) && touches(right, *at))
        .map(|(_, _, at)| at)
        .collect()
}

fn nothing_is_lost(laid: &Laid, pieces: &[LaidPiece]) -> Result<(), TestCaseError> {
    let opened = laid.pieces.cover().in_square_metres() * f64::from(laid.field);
    let whole = [laid.covered, laid.lapped, laid.dropped]
        .iter()
        .map(|area| area.in_square_metres())
        .sum::<f64>();
    prop_assert!(
        (whole - opened).abs() < 1e-9 * opened,
        "{whole} of {opened}"
    );
    let seen: f64 = pieces.iter().map(area_seen).sum();
    let kept = (laid.covered + laid.lapped).in_square_metres();
    prop_assert!((seen - kept).abs() < 1e-9 * kept);
    let reused: u32 = laid.planes.iter().map(|plane| plane.reused).sum();
    prop_assert_eq!(pieces.len(), (laid.field + reused) as usize);
    prop_assert!(laid.dropped.in_square_metres() >= -1e-9);
    Ok(())
}

/// Places on a plane, some 200, and how many pieces cover each.
fn every_place_is_covered_once(plan: &RoofPlan, pieces: &[LaidPiece]) -> Result<(), TestCaseError> {
    for (at, plane) in plan.planes.iter().enumerate() {
        let frame = Frame::of(plane);
        let ring = |corners: &[trade::roof::Corner]| -> Vec<Place> {
            corners.iter().map(|c| frame.on_plane((c.x, c.y))).collect()
        };
        let rim = ring(&plane.corners);
        let holes: Vec<Vec<Place>> = plane.holes.iter().map(|hole| ring(hole)).collect();
        let top = rim.iter().fold((0.0_f64, 0.0_f64), |top, p| {
            (top.0.max(p.0), top.1.max(p.1))
        });
        let valleys: Vec<(Place, Place)> = plan
            .lines
            .iter()
            .filter(|line| line.kind == LineKind::Valley && line.planes.contains(&at))
            .map(|line| {
                (
                    frame.on_plane((line.from.x, line.from.y)),
                    frame.on_plane((line.to.x, line.to.y)),
                )
            })
            .collect();
        for step in 0..200_u32 {
            // Additive recurrence by the plastic number: places spread evenly over the plane.
            let n = f64::from(step) + 0.5;
            let place = (
                (n * 0.754_877_666).fract() * top.0,
                (n * 0.569_840_291).fract() * top.1,
            );
            let on_it = inside(&rim, place) && !holes.iter().any(|hole| inside(hole, place));
            let in_valley = valleys.iter().any(|(a, b)| off(*a, *b, place) < 0.35);
            if !on_it || in_valley {
                continue;
            }
            let covering = pieces
                .iter()
                .filter(|piece| piece.plane == at)
                .filter(|piece| piece.seen.iter().any(|rim| inside(rim, place)))
                .count();
            prop_assert_eq!(covering, 1, "{:?} on {}", place, plane.letter);
        }
    }
    Ok(())
}

fn off(a: Place, b: Place, place: Place) -> f64 {
    let way = (b.0 - a.0, b.1 - a.1);
    let share =
        ((place.0 - a.0) * way.0 + (place.1 - a.1) * way.1) / (way.0 * way.0 + way.1 * way.1);
    let share = share.clamp(0.0, 1.0);
    (place.0 - a.0 - share * way.0).hypot(place.1 - a.1 - share * way.1)
}

fn courses_keep_the_rules(pieces: &Pieces, laid: &[LaidPiece]) -> Result<(), TestCaseError> {
    let (width, shortest) = (pieces.width.in_metres(), pieces.shortest.in_metres());
    let courses = by_course(laid);
    for ((plane, number), course) in &courses {
        for pair in course.windows(2) {
            prop_assert!(
                pair[0].along.1 <= pair[1].along.0 + 1e-6,
                "pieces of a course overlap"
            );
        }
        let here = joints(course);
        for piece in course {
            let length = piece.along.1 - piece.along.0;
            prop_assert!(length <= width + 1e-5);
            let alone = !here
                .iter()
                .any(|j| (j - piece.along.0).abs() < 1e-9 || (j - piece.along.1).abs() < 1e-9);
            prop_assert!(alone || length >= shortest - 1e-5, "a piece of {length}");
        }
        let below = number
            .checked_sub(1)
            .and_then(|n| courses.get(&(*plane, n)));
        for joint in below.map(|course| joints(course)).unwrap_or_default() {
            for mine in &here {
                prop_assert!(
                    (mine - joint).abs() >= shortest - 1e-5,
                    "joints {} apart",
                    (mine - joint).abs()
                );
            }
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_roof_is_laid_by_the_laws(plan in any_roof(), pieces in any_pieces(), valley in any_valley()) {
        let (laid, put) = lay(&plan, &pieces, valley).unwrap();
        nothing_is_lost(&laid, &put)?;
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
}
