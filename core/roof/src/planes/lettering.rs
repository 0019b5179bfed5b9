//! Letters for the planes: from the street side on, as one walks round.

use super::Raised;
use trade::roof::Plane;

/// Sorts the planes and gives each its letter.
pub(super) fn letter(raised: &mut Raised) {
    let mut order: Vec<usize> = (0..raised.planes.len()).collect();
    order.sort_by(|&one, &other| before(&raised.planes[one], &raised.planes[other]));
    let mut new = vec![0; order.len()];
    for (place, &old) in order.iter().enumerate() {
        new[old] = place;
    }
    let mut planes: Vec<(usize, Plane)> = std::mem::take(&mut raised.planes)
        .into_iter()
        .enumerate()
        .map(|(old, plane)| (new[old], plane))
        .collect();
    planes.sort_by_key(|(place, _)| *place);
    raised.planes = planes
        .into_iter()
        .map(|(place, plane)| Plane {
            letter: letters(place),
            ..plane
        })
        .collect();
    for plane in raised.lines.iter_mut().flat_map(|line| &mut line.planes) {
        *plane = new[*plane];
    }
}

/// Front, left, rear, right; on one side the nearer to the street first, then from the left.
fn before(one: &Plane, other: &Plane) -> std::cmp::Ordering {
    let least = |plane: &Plane, of: fn(&trade::roof::Corner) -> f64| {
        // To the millimetre: what is level with its neighbour stays so when the plan is drawn elsewhere.
        let least = plane.corners.iter().map(of).fold(f64::INFINITY, f64::min);
        (least * 1000.0).round()
    };
    side(one)
        .cmp(&side(other))
        .then_with(|| least(one, |c| c.y).total_cmp(&least(other, |c| c.y)))
        .then_with(|| least(one, |c| c.x).total_cmp(&least(other, |c| c.x)))
        .then_with(|| least(one, |c| c.z).total_cmp(&least(other, |c| c.z)))
}

/// The side that a plane faces, in the order of [`trade::property::Side::ALL`].
fn side(plane: &Plane) -> u8 {
    let (x, y) = plane.downhill;
    match (x.abs() > y.abs() + 1e-9, x > 0.0, y > 0.0) {
        (false, _, false) => 0,
        (true, false, _) => 1,
        (false, _, true) => 2,
        (true, true, _) => 3,
    }
}

/// A, B, …, Z, AA, AB, …
fn letters(mut place: usize) -> String {
    let mut letters = Vec::new();
    loop {
        letters.push(char::from(b'A' + u8::try_from(place % 26).unwrap_or(0)));
        if place < 26 {
            break;
        }
        place = place / 26 - 1;
    }
    letters.iter().rev().collect()
}
