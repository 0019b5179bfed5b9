//! Laws of laying: nothing is lost or laid twice, every place is covered once, joints keep their distance.

#![cfg(test)]

use proptest::prelude::*;
use roof::frame::{Frame, Place};
use roof::laying::shape;
use std::collections::BTreeMap;
use trade::laid::{Laid, LaidPiece, Pieces};
use trade::roof::{LineKind, RoofPlan};

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

pub fn nothing_is_lost(laid: &Laid, pieces: &[LaidPiece]) -> Result<(), TestCaseError> {
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

/// What is seen of the pieces of a plane is as much as the shape that they must cover: with every place covered, nothing is covered twice.
pub fn nothing_overlaps(
    plan: &RoofPlan,
    laid: &Laid,
    pieces: &[LaidPiece],
) -> Result<(), TestCaseError> {
    let overhang = laid.pieces.overhang.in_metres();
    for (at, plane) in plan.planes.iter().enumerate() {
        let cover = shape::cover(plan, at, plane, overhang, laid.valleys);
        let whole = swept(&cover.rings);
        let seen: f64 = pieces
            .iter()
            .filter(|piece| piece.plane == at)
            .map(area_seen)
            .sum();
        prop_assert!(
            (seen - whole).abs() < 2e-3 * whole + 1e-3,
            "{seen} of {whole} on {}",
            plane.letter
        );
    }
    Ok(())
}

/// The area that rings run round anticlockwise, along 4000 level lines. What is cut back from a valley can be wider than the plane: then its rim
/// crosses itself, and a loop that it runs the other way is no part of the cover.
fn swept(rings: &[Vec<Place>]) -> f64 {
    const LINES: u32 = 4000;
    let edges: Vec<(Place, Place)> = rings
        .iter()
        .flat_map(|ring| {
            ring.iter()
                .copied()
                .zip(ring.iter().copied().cycle().skip(1))
        })
        .collect();
    let heights = || edges.iter().map(|edge| edge.0.1);
    let (low, high) = (
        heights().fold(f64::INFINITY, f64::min),
        heights().fold(f64::NEG_INFINITY, f64::max),
    );
    if high <= low {
        return 0.0;
    }
    let step = (high - low) / f64::from(LINES);
    let width = |line: u32| {
        let up = low + (f64::from(line) + 0.5) * step;
        let mut met: Vec<(f64, i32)> = edges
            .iter()
            .filter(|(a, b)| (a.1 > up) != (b.1 > up))
            .map(|(a, b)| {
                (
                    a.0 + (up - a.1) / (b.1 - a.1) * (b.0 - a.0),
                    if a.1 > b.1 { 1 } else { -1 },
                )
            })
            .collect();
        met.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut round = 0;
        met.windows(2)
            .map(|pair| {
                round += pair[0].1;
                if round > 0 {
                    pair[1].0 - pair[0].0
                } else {
                    0.0
                }
            })
            .sum::<f64>()
    };
    (0..LINES).map(width).sum::<f64>() * step
}

/// Places on a plane, some 200, and how many pieces cover each.
pub fn every_place_is_covered_once(
    plan: &RoofPlan,
    pieces: &[LaidPiece],
) -> Result<(), TestCaseError> {
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

/// How far a place lies from the line through two others: a valley's cut edge runs on past its foot to the eave.
fn off(a: Place, b: Place, place: Place) -> f64 {
    let way = (b.0 - a.0, b.1 - a.1);
    ((place.0 - a.0) * way.1 - (place.1 - a.1) * way.0).abs() / way.0.hypot(way.1)
}

pub fn courses_keep_the_rules(pieces: &Pieces, laid: &[LaidPiece]) -> Result<(), TestCaseError> {
    let (width, shortest) = (pieces.width.in_metres(), pieces.shortest.in_metres());
    let courses = by_course(laid);
    for ((plane, number), course) in &courses {
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
