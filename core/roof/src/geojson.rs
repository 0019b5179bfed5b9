//! A footprint in GeoJSON (RFC 7946): a `Polygon` or `MultiPolygon`, a `Feature`, `FeatureCollection` or `GeometryCollection` of them.
//!
//! Longitude and latitude are set down on a plane that touches the WGS 84 ellipsoid in the middle of all outlines, x to the east, y to the north,
//! by the terms up to the second order: `x = N·cos φ·Δλ·(1 − tan φ·Δφ)`, `y = M·Δφ + ½·N·sin φ·cos φ·Δλ²`, with `M` and `N` the radii of
//! curvature at the latitude `φ` of the middle. Within 500 m of it, up to 70° of latitude, lengths are true to one part in a million.
//!
//! A feature's properties may say more: `pitch` (`"6/12"`), `overhang` and `raised` (`"16 in"`), `of` (`"roof"` or `"walls"`), and `edges`, one entry for
//! each side of the outline in the order of its positions: `"hip"`, `"gable"`, `"wall"`, or `{"is": "hip", "pitch": "8/12", "overhang": "1 ft"}`; where
//! holes have any, a list of such lists, one for each ring.

use crate::error::{At as Place, FileFault, PlaceUnit, RingAt, ShapeError, Wanted};
use crate::json::{At, parse};
use crate::outline;
use crate::outline_file::{EDGES, OUTLINES};
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Length, Pitch};

/// What holds where a footprint says nothing.
struct Defaults {
    pitch: Option<Pitch>,
    overhang: Length,
}

/// Semi-major axis of WGS 84 in metres, and its eccentricity squared.
const AXIS: f64 = 6_378_137.0;
const ECCENTRICITY_SQUARED: f64 = 0.006_694_379_990_14;

/// The longest side of the box round all outlines, in metres: no property has buildings farther apart, and the plane is true no farther.
const FARTHEST: f64 = 1000.0;

/// A polygon in longitude and latitude, and the properties that go with it.
struct Footprint<'a> {
    rings: Vec<Vec<(f64, f64)>>,
    at: At<'a>,
    properties: Option<At<'a>>,
}

/// The outlines of a footprint, with the pitch and overhang that hold where it says none.
///
/// # Errors
/// Where it is no GeoJSON of an area, or its outline bounds none: what is wrong and where, places in degrees.
pub fn read(text: &str, pitch: Option<Pitch>, overhang: Length) -> Result<Drawn, ShapeError> {
    let defaults = Defaults { pitch, overhang };
    let value = parse(text)?;
    let mut footprints = Vec::new();
    gather(&At::root(&value), None, &mut footprints)?;
    if footprints.is_empty() {
        return Err(At::root(&value).fault(FileFault::Nothing));
    }
    for (body, footprint) in footprints.iter_mut().enumerate() {
        opened(body, &mut footprint.rings)?;
    }
    let map = Map::around(&mut footprints);
    if footprints.len() > 1 && map.size > FARTHEST {
        return Err(ShapeError::TooFarApart {
            across: Length::from_metres(map.size),
        });
    }
    let bodies = footprints
        .iter()
        .map(|footprint| body(footprint, &map, &defaults))
        .collect::<Result<Vec<Body>, _>>()?;
    for (number, body) in bodies.iter().enumerate() {
        outline::ready(number, body).map_err(|error| error.placed(|place| map.back(place)))?;
    }
    Ok(Drawn::Outlines { bodies })
}

/// All polygons at and below a place.
fn gather<'a>(
    at: &At<'a>,
    properties: Option<&At<'a>>,
    into: &mut Vec<Footprint<'a>>,
) -> Result<(), ShapeError> {
    let kind = at.needed("type")?;
    let mut polygon = |at: At<'a>| -> Result<(), ShapeError> {
        into.push(Footprint {
            rings: rings(&at)?,
            at,
            properties: properties.cloned(),
        });
        Ok(())
    };
    match kind.text()? {
        "Polygon" => polygon(at.needed("coordinates")?),
        "MultiPolygon" => at
            .needed("coordinates")?
            .items()?
            .into_iter()
            .try_for_each(polygon),
        "Feature" => match at.member("geometry")? {
            Some(geometry) => gather(&geometry, at.member("properties")?.as_ref(), into),
            None => Ok(()),
        },
        "FeatureCollection" => at
            .needed("features")?
            .items()?
            .iter()
            .try_for_each(|feature| gather(feature, None, into)),
        "GeometryCollection" => at
            .needed("geometries")?
            .items()?
            .iter()
            .try_for_each(|geometry| gather(geometry, properties, into)),
        other => Err(kind.fault(FileFault::Kind(other.to_owned()))),
    }
}

fn rings(polygon: &At) -> Result<Vec<Vec<(f64, f64)>>, ShapeError> {
    polygon
        .items()?
        .iter()
        .map(|ring| ring.items()?.iter().map(position).collect())
        .collect()
}

fn position(at: &At) -> Result<(f64, f64), ShapeError> {
    let numbers = at.items()?;
    let [x, y, ..] = numbers.as_slice() else {
        return Err(at.fault(FileFault::Wants(Wanted::Position)));
    };
    let (x, y) = (x.number()?, y.number()?);
    if x.abs() > 180.0 || y.abs() > 90.0 {
        return Err(at.fault(FileFault::Wants(Wanted::Degrees)));
    }
    Ok((x, y))
}

/// Takes the last position of each ring away, which repeats the first.
fn opened(body: usize, rings: &mut [Vec<(f64, f64)>]) -> Result<(), ShapeError> {
    for (number, ring) in rings.iter_mut().enumerate() {
        let of = RingAt { body, ring: number };
        let (Some(first), Some(last)) = (ring.first().copied(), ring.last().copied()) else {
            return Err(ShapeError::TooFewCorners {
                ring: of,
                corners: 0,
            });
        };
        if first != last {
            return Err(ShapeError::Open {
                ring: of,
                end: in_degrees(last),
            });
        }
        ring.pop();
    }
    Ok(())
}

fn in_degrees((x, y): (f64, f64)) -> Place {
    Place {
        x,
        y,
        unit: PlaceUnit::Degrees,
    }
}

fn body(footprint: &Footprint, map: &Map, defaults: &Defaults) -> Result<Body, ShapeError> {
    let said = |name: &str| match &footprint.properties {
        Some(properties) => properties.member(name),
        None => Ok(None),
    };
    let pitch = match said("pitch")? {
        Some(pitch) => pitch.pitch()?,
        None => defaults
            .pitch
            .ok_or_else(|| footprint.at.fault(FileFault::NoPitch))?,
    };
    let length = |name: &str, default: Length| said(name)?.map_or(Ok(default), |at| at.length());
    let of = said("of")?.map_or(Ok(OutlineOf::default()), |of| of.word(&OUTLINES))?;
    let mut rings: Vec<Vec<SketchEdge>> = footprint
        .rings
        .iter()
        .map(|ring| ring.iter().map(|&place| edge(map.there(place))).collect())
        .collect();
    if let Some(edges) = said("edges")? {
        tell_edges(&edges, &mut rings)?;
    }
    Ok(Body {
        rings,
        of,
        pitch,
        overhang: length("overhang", defaults.overhang)?,
        raised: length("raised", Length::ZERO)?,
        above_roof: None,
    })
}

fn edge((x, y): (f64, f64)) -> SketchEdge {
    SketchEdge {
        x: Length::from_metres(x),
        y: Length::from_metres(y),
        is: EdgeIs::default(),
        pitch: None,
        overhang: None,
        slope: None,
    }
}

/// Puts in what the properties say of each edge.
fn tell_edges(told: &At, rings: &mut [Vec<SketchEdge>]) -> Result<(), ShapeError> {
    let as_many = |at: &At| at.fault(FileFault::Wants(Wanted::AsManyAsEdges));
    let told_of = told.items()?;
    let lists = if told_of.first().is_some_and(At::is_list) {
        told_of
    } else {
        vec![told.clone()]
    };
    if lists.len() > rings.len() {
        return Err(as_many(told));
    }
    for (list, ring) in lists.iter().zip(rings) {
        let items = list.items()?;
        if items.len() != ring.len() {
            return Err(as_many(list));
        }
        for (item, edge) in items.iter().zip(ring) {
            tell_edge(item, edge)?;
        }
    }
    Ok(())
}

fn tell_edge(told: &At, edge: &mut SketchEdge) -> Result<(), ShapeError> {
    if told.is_text() {
        edge.is = told.word(&EDGES)?;
        return Ok(());
    }
    told.only(&["is", "pitch", "overhang"])?;
    if let Some(is) = told.member("is")? {
        edge.is = is.word(&EDGES)?;
    }
    edge.pitch = told.member("pitch")?.map(|at| at.pitch()).transpose()?;
    edge.overhang = told.member("overhang")?.map(|at| at.length()).transpose()?;
    Ok(())
}

/// A plane that touches the earth in the middle of some outlines.
struct Map {
    longitude: f64,
    latitude: f64,
    /// Radii of curvature there: along the meridian, and across it.
    along: f64,
    across: f64,
    /// The longer side of the box round the outlines, in metres.
    size: f64,
}

impl Map {
    /// Around all outlines. One that lies across the 180th meridian is brought together first.
    fn around(footprints: &mut [Footprint]) -> Self {
        let mut places = footprints
            .iter_mut()
            .flat_map(|footprint| footprint.rings.iter_mut().flatten());
        let mut bounds: Option<[f64; 4]> = None;
        for place in &mut places {
            let [west, east, south, north] = bounds.unwrap_or([place.0, place.0, place.1, place.1]);
            if place.0 - west > 180.0 {
                place.0 -= 360.0;
            } else if west - place.0 > 180.0 {
                place.0 += 360.0;
            }
            bounds = Some([
                west.min(place.0),
                east.max(place.0),
                south.min(place.1),
                north.max(place.1),
            ]);
        }
        let [west, east, south, north] = bounds.unwrap_or_default();
        let mut map = Self::at(f64::midpoint(west, east), f64::midpoint(south, north));
        let width = map.across * map.latitude.to_radians().cos() * (east - west).to_radians();
        map.size = width.max(map.along * (north - south).to_radians());
        map
    }

    fn at(longitude: f64, latitude: f64) -> Self {
        let sin = latitude.to_radians().sin();
        let flat = 1.0 - ECCENTRICITY_SQUARED * sin * sin;
        Self {
            longitude,
            latitude,
            along: AXIS * (1.0 - ECCENTRICITY_SQUARED) / flat.powf(1.5),
            across: AXIS / flat.sqrt(),
            size: 0.0,
        }
    }

    /// A place in metres to the east and north.
    fn there(&self, (longitude, latitude): (f64, f64)) -> (f64, f64) {
        let (sin, cos) = self.latitude.to_radians().sin_cos();
        let east = (longitude - self.longitude).to_radians();
        let north = (latitude - self.latitude).to_radians();
        (
            self.across * east * (cos - sin * north),
            self.along * north + 0.5 * self.across * sin * cos * east * east,
        )
    }

    /// A place in degrees, near enough to find it.
    fn back(&self, place: Place) -> Place {
        let place = place.written_in(PlaceUnit::Metres);
        let (sin, cos) = self.latitude.to_radians().sin_cos();
        let mut east = place.x / (self.across * cos);
        let mut north = place.y / self.along;
        for _ in 0..3 {
            east = place.x / (self.across * (cos - sin * north));
            north = (place.y - 0.5 * self.across * sin * cos * east * east) / self.along;
        }
        in_degrees((
            self.longitude + east.to_degrees(),
            self.latitude + north.to_degrees(),
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The same place in the frame of the earth's centre (the ellipsoid's own equations), seen from the middle: metres east, north and up.
    fn seen_from(middle: (f64, f64), place: (f64, f64)) -> (f64, f64, f64) {
        let centred = |(longitude, latitude): (f64, f64)| {
            let (l, p) = (longitude.to_radians(), latitude.to_radians());
            let n = AXIS / (1.0 - ECCENTRICITY_SQUARED * p.sin().powi(2)).sqrt();
            (
                n * p.cos() * l.cos(),
                n * p.cos() * l.sin(),
                n * (1.0 - ECCENTRICITY_SQUARED) * p.sin(),
            )
        };
        let (a, b) = (centred(middle), centred(place));
        let (dx, dy, dz) = (b.0 - a.0, b.1 - a.1, b.2 - a.2);
        let (l, p) = (middle.0.to_radians(), middle.1.to_radians());
        (
            -l.sin() * dx + l.cos() * dy,
            -p.sin() * l.cos() * dx - p.sin() * l.sin() * dy + p.cos() * dz,
            p.cos() * l.cos() * dx + p.cos() * l.sin() * dy + p.sin() * dz,
        )
    }

    proptest! {
        #[test]
        fn lengths_on_the_plane_are_true_to_a_millionth(
            longitude in -180.0..180.0_f64, latitude in -70.0..70.0_f64,
            one in (-0.003..0.003_f64, -0.003..0.003_f64), other in (-0.003..0.003_f64, -0.003..0.003_f64),
        ) {
            let map = Map::at(longitude, latitude);
            let place = |by: (f64, f64)| (longitude + by.0, latitude + by.1);
            let (p, q) = (map.there(place(one)), map.there(place(other)));
            let flat = (p.0 - q.0).hypot(p.1 - q.1);
            let (p, q) = (seen_from((longitude, latitude), place(one)), seen_from((longitude, latitude), place(other)));
            let true_length = ((p.0 - q.0).powi(2) + (p.1 - q.1).powi(2) + (p.2 - q.2).powi(2)).sqrt();
            prop_assert!((flat - true_length).abs() <= 1e-6 * true_length.max(1.0), "{flat} {true_length}");
        }

        #[test]
        fn a_place_is_found_again(longitude in -180.0..180.0_f64, latitude in -70.0..70.0_f64, by in (-0.003..0.003_f64, -0.003..0.003_f64)) {
            let map = Map::at(longitude, latitude);
            let (x, y) = map.there((longitude + by.0, latitude + by.1));
            let back = map.back(Place { x, y, unit: PlaceUnit::Metres });
            prop_assert!((back.x - longitude - by.0).abs() < 1e-9 && (back.y - latitude - by.1).abs() < 1e-9);
        }
    }
}
