//! How far a dormer can reach back.

use super::surface::Surface;
use crate::frame::Place;
use trade::roof::RoofPlan;

/// How finely the way back into the slope is followed, and how far at most, in metres.
const STEP: f64 = 0.02;
/// See [`STEP`].
const FARTHEST: f64 = 30.0;

/// What two heights that are told apart differ by at least, in metres. A dormer that stands on the way goes on level along its ridge; that is not yet the top.
const LEVEL: f64 = 1e-4;

/// How far in metres it is from a place on plan straight back to where the roof is highest: no dormer that dies into the slope reaches farther.
/// `out` is one metre the way that its face looks.
pub fn back_to_the_top(plan: &RoofPlan, from: Place, out: Place) -> f64 {
    let surfaces: Vec<Surface> = plan.planes.iter().map(Surface::of).collect();
    let mut highest = (0.0, f64::NEG_INFINITY);
    let mut back = STEP;
    while back < FARTHEST {
        let place = (from.0 - out.0 * back, from.1 - out.1 * back);
        let height = surfaces
            .iter()
            .filter(|surface| surface.holds(place))
            .map(|surface| surface.height(place))
            .max_by(f64::total_cmp);
        match height {
            Some(height) if height > highest.1 + LEVEL => highest = (back, height),
            Some(height) if height > highest.1 - LEVEL => {}
            _ if highest.1.is_finite() => break,
            _ => {}
        }
        back += STEP;
    }
    highest.0
}
