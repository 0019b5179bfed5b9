//! A plane seen square on: how far along its eave, how far up its slope.

use trade::roof::Plane;

/// A place on a plane or on plan, in metres.
pub type Place = (f64, f64);

/// The measure of one plane: from places on plan to places on the plane and back. Nothing on the plane lies left of 0 or below 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    origin: Place,
    along: Place,
    up: Place,
    factor: f64,
}

impl Frame {
    /// Of a plane. One whose water has no way to run is taken to run towards the street.
    pub fn of(plane: &Plane) -> Self {
        let (x, y) = plane.downhill;
        let length = x.hypot(y);
        let down = if length > 1e-9 {
            (x / length, y / length)
        } else {
            (0.0, -1.0)
        };
        let mut frame = Self {
            origin: (0.0, 0.0),
            along: (-down.1, down.0),
            up: (-down.0, -down.1),
            factor: plane.pitch.slope_factor(),
        };
        let least = plane
            .corners
            .iter()
            .map(|corner| frame.on_plane((corner.x, corner.y)))
            .reduce(|a, b| (a.0.min(b.0), a.1.min(b.1)))
            .unwrap_or((0.0, 0.0));
        frame.origin = frame.on_plan(least);
        frame
    }

    /// Where a place on plan lies on the plane: along the eave and up the slope.
    pub fn on_plane(&self, place: Place) -> Place {
        let from = (place.0 - self.origin.0, place.1 - self.origin.1);
        (dot(from, self.along), dot(from, self.up) * self.factor)
    }

    /// Where a place on the plane lies on plan.
    pub fn on_plan(&self, place: Place) -> Place {
        let up = place.1 / self.factor;
        (
            self.origin.0 + place.0 * self.along.0 + up * self.up.0,
            self.origin.1 + place.0 * self.along.1 + up * self.up.1,
        )
    }

    /// The way along the eave on plan, with the slope to the left.
    pub fn along(&self) -> Place {
        self.along
    }

    /// The way up the slope on plan.
    pub fn up(&self) -> Place {
        self.up
    }

    /// Length on the slope for one unit up it on plan.
    pub fn factor(&self) -> f64 {
        self.factor
    }
}

fn dot(a: Place, b: Place) -> f64 {
    a.0 * b.0 + a.1 * b.1
}
