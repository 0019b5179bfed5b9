//! A plane of a roof as a height over every place on plan.

use crate::frame::Place;
use trade::roof::{Corner, Plane};

/// A plane, and where on plan it lies.
pub(super) struct Surface {
    rings: Vec<Vec<Place>>,
    at: Corner,
    /// How much it rises for a metre to the right, and away from the street.
    pub(super) rises: (f64, f64),
}

impl Surface {
    pub(super) fn of(plane: &Plane) -> Self {
        let rise = plane.pitch.in_twelfths() / 12.0;
        let places = |ring: &Vec<Corner>| ring.iter().map(|corner| (corner.x, corner.y)).collect();
        let level = Corner {
            x: 0.0,
            y: 0.0,
            z: 0.0,
        };
        Self {
            rings: std::iter::once(&plane.corners)
                .chain(&plane.holes)
                .map(places)
                .collect(),
            at: plane.corners.first().copied().unwrap_or(level),
            rises: (-plane.downhill.0 * rise, -plane.downhill.1 * rise),
        }
    }

    /// Its height over a place, whether it lies there or would if it went on.
    pub(super) fn height(&self, (x, y): Place) -> f64 {
        self.at.z + (x - self.at.x) * self.rises.0 + (y - self.at.y) * self.rises.1
    }

    /// Whether it lies over a place.
    pub(super) fn holds(&self, place: Place) -> bool {
        holds(&self.rings, place)
    }

    /// The edges of its rims.
    pub(super) fn edges(&self) -> impl Iterator<Item = (Place, Place)> + '_ {
        edges(&self.rings)
    }
}

/// Whether a place lies within rings: the rim, and outside what is cut out of it.
pub(super) fn holds(rings: &[Vec<Place>], place: Place) -> bool {
    let crossed = |(a, b): &(Place, Place)| {
        (a.1 > place.1) != (b.1 > place.1)
            && place.0 < a.0 + (place.1 - a.1) / (b.1 - a.1) * (b.0 - a.0)
    };
    edges(rings).filter(crossed).count() % 2 == 1
}

/// The edges of rings.
pub(super) fn edges(rings: &[Vec<Place>]) -> impl Iterator<Item = (Place, Place)> + '_ {
    rings.iter().flat_map(|ring| {
        ring.iter()
            .copied()
            .zip(ring.iter().copied().cycle().skip(1))
    })
}
