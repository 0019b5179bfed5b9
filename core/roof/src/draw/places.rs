//! Where a part lies on plan, and where a plane has most room.

use crate::frame::{Frame, Place};
use crate::leak::off_length;
use trade::roof::{LineKind, Plane, RoofLine, RoofPlan};

/// A part to be shown on a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// The letter of the plane it is on.
    pub letter: String,
    /// Its number on that slope.
    pub number: u32,
    /// Where it is on plan, in metres, where somebody placed it.
    pub at: Option<Place>,
    /// The line that its kind lives on, where nobody did; `None` for one in the field.
    pub near: Option<LineKind>,
    /// Whether it is chosen.
    pub chosen: bool,
}

/// Where each part lies on plan, in metres: where it was placed; else along the line that its kind lives on, or in the field of its plane, side by
/// side with the others there. `None` where the plan has no plane of its letter.
pub fn places(plan: &RoofPlan, parts: &[Placed]) -> Vec<Option<Place>> {
    parts
        .iter()
        .enumerate()
        .map(|(at, part)| {
            part.at.or_else(|| {
                let alike = |other: &&Placed| {
                    other.at.is_none() && other.letter == part.letter && other.near == part.near
                };
                let all = parts.iter().filter(alike).count();
                let before = parts.iter().take(at).filter(alike).count();
                let share = (as_f64(before) + 1.0) / (as_f64(all) + 1.0);
                by_kind(plan, &part.letter, part.near, share)
            })
        })
        .collect()
}

fn as_f64(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::from(u32::MAX), f64::from)
}

/// `share` of the way along the line, or across the field.
fn by_kind(plan: &RoofPlan, letter: &str, near: Option<LineKind>, share: f64) -> Option<Place> {
    let (place, plane) = plan
        .planes
        .iter()
        .enumerate()
        .filter(|(_, plane)| plane.letter == letter)
        .max_by(|a, b| {
            let area = |plane: &Plane| plane.plan_area.in_square_metres();
            area(a.1).total_cmp(&area(b.1))
        })?;
    let longest = |kind: LineKind| {
        plan.lines
            .iter()
            .filter(|line| line.kind == kind && line.planes.contains(&place))
            .max_by_key(|line| line.length)
    };
    let on_line = near.and_then(longest).map(|line| along(line, share));
    Some(on_line.unwrap_or_else(|| in_field(plane, share)))
}

fn along(line: &RoofLine, share: f64) -> Place {
    (
        line.from.x + (line.to.x - line.from.x) * share,
        line.from.y + (line.to.y - line.from.y) * share,
    )
}

/// Across a plane, a little below where it is roomiest: there stands its letter.
fn in_field(plane: &Plane, share: f64) -> Place {
    let (room, reach) = roomiest(plane);
    let frame = Frame::of(plane);
    let (along, up) = (frame.along(), frame.up());
    let off = (share - 0.5) * 2.0 * reach * 0.8;
    let below = reach * 0.4;
    (
        room.0 + along.0 * off - up.0 * below,
        room.1 + along.1 * off - up.1 * below,
    )
}

/// The letter of each plane and where it is roomiest, on plan.
pub fn places_of_letters(plan: &RoofPlan) -> impl Iterator<Item = (String, Place)> {
    plan.planes
        .iter()
        .map(|plane| (plane.letter.clone(), roomiest(plane).0))
}

/// The place on plan that lies farthest from every edge of a plane, and how far. Found on a grid of 24 by 24, then on a finer one round the best.
pub fn roomiest(plane: &Plane) -> (Place, f64) {
    let corners = || plane.corners.iter().map(|corner| (corner.x, corner.y));
    let least = corners().fold((f64::INFINITY, f64::INFINITY), |a, b| {
        (a.0.min(b.0), a.1.min(b.1))
    });
    let most = corners().fold((f64::NEG_INFINITY, f64::NEG_INFINITY), |a, b| {
        (a.0.max(b.0), a.1.max(b.1))
    });
    let size = (most.0 - least.0, most.1 - least.1);
    let coarse = best(plane, least, size);
    let cell = (size.0 / 12.0, size.1 / 12.0);
    let fine = best(
        plane,
        (coarse.0.0 - cell.0 / 2.0, coarse.0.1 - cell.1 / 2.0),
        cell,
    );
    if fine.1 > coarse.1 { fine } else { coarse }
}

fn best(plane: &Plane, least: Place, size: (f64, f64)) -> (Place, f64) {
    const CELLS: u32 = 24;
    let middle = (least.0 + size.0 / 2.0, least.1 + size.1 / 2.0);
    let mut found = (middle, room(plane, middle));
    for row in 0..CELLS {
        for column in 0..CELLS {
            let share = |at: u32| (f64::from(at) + 0.5) / f64::from(CELLS);
            let place = (
                least.0 + size.0 * share(column),
                least.1 + size.1 * share(row),
            );
            let free = room(plane, place);
            // A hair more is no reason to leave the middle.
            if free > found.1 + 1e-9 {
                found = (place, free);
            }
        }
    }
    found
}

/// How far a place lies from the nearest edge of a plane; negative outside it.
pub fn room(plane: &Plane, place: Place) -> f64 {
    let mut inside = false;
    let mut nearest = f64::INFINITY;
    for ring in std::iter::once(&plane.corners).chain(&plane.holes) {
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            if (a.y > place.1) != (b.y > place.1)
                && place.0 < a.x + (place.1 - a.y) / (b.y - a.y) * (b.x - a.x)
            {
                inside = !inside;
            }
            nearest = nearest.min(off_length((a.x, a.y), (b.x, b.y), place));
        }
    }
    if inside { nearest } else { -nearest }
}
