//! A plan as GeoJSON (RFC 7946): planes as polygons, lines as line strings, what they are in their properties.

use crate::export::{drains_to, letters};
use serde_json::{Value, json};
use trade::property::Position;
use trade::roof::{Corner, Plane, RoofLine, RoofPlan};

/// WGS 84: half the longer axis in metres, and the square of the eccentricity.
const LONG_AXIS: f64 = 6_378_137.0;
const ECCENTRICITY_SQUARED: f64 = 6.694_379_990_141_317e-3;

/// The plan as a feature collection. With the position of the plan's origin, whose y then runs north, in degrees of WGS 84; without, in metres on
/// the plan, which RFC 7946 does not allow for: the member `localMetres` says so.
pub fn geojson(plan: &RoofPlan, origin: Option<Position>) -> String {
    let place = |corner: &Corner| placed(corner, origin);
    let planes = plan.planes.iter().map(|plane| of_plane(plane, &place));
    let lines = plan.lines.iter().map(|line| of_line(plan, line, &place));
    let features: Vec<Value> = planes.chain(lines).collect();
    let mut collection = json!({ "type": "FeatureCollection", "features": features });
    if origin.is_none() {
        collection["localMetres"] = json!(
            "coordinates are metres on the roof's own plan, x to the right and y away from the street, not longitude and latitude"
        );
    }
    collection.to_string()
}

/// Degrees to the ninth place, metres to the sixth.
fn placed(corner: &Corner, origin: Option<Position>) -> Value {
    let (x, y, places) = match origin {
        None => (corner.x, corner.y, 1e6),
        Some(origin) => {
            let (longitude, latitude) = on_earth(corner, origin);
            (longitude, latitude, 1e9)
        }
    };
    let rounded = |value: f64| (value * places).round() / places;
    json!([rounded(x), rounded(y)])
}

/// On the plane that touches the earth at the origin: by the radii of curvature there. Within a hundred metres it is right to a millimetre.
fn on_earth(corner: &Corner, origin: Position) -> (f64, f64) {
    let latitude = origin.latitude.to_radians();
    let bulge = 1.0 - ECCENTRICITY_SQUARED * latitude.sin().powi(2);
    let across = LONG_AXIS / bulge.sqrt();
    let along = LONG_AXIS * (1.0 - ECCENTRICITY_SQUARED) / bulge.powf(1.5);
    (
        origin.longitude + (corner.x / (across * latitude.cos())).to_degrees(),
        origin.latitude + (corner.y / along).to_degrees(),
    )
}

fn of_plane(plane: &Plane, place: &impl Fn(&Corner) -> Value) -> Value {
    let rings: Vec<Vec<Value>> = std::iter::once(&plane.corners)
        .chain(&plane.holes)
        .map(|ring| ring.iter().chain(ring.first()).map(place).collect())
        .collect();
    let heights: Vec<f64> = plane.corners.iter().map(|corner| corner.z).collect();
    json!({
        "type": "Feature",
        "geometry": { "type": "Polygon", "coordinates": rings },
        "properties": {
            "is": "slope",
            "letter": plane.letter,
            "pitch": plane.pitch,
            "drainsToDegrees": drains_to(plane),
            "planAreaSquareMetres": plane.plan_area.in_square_metres(),
            "slopeAreaSquareMetres": plane.slope_area.in_square_metres(),
            "cornerHeightsMetres": heights,
        },
    })
}

fn of_line(plan: &RoofPlan, line: &RoofLine, place: &impl Fn(&Corner) -> Value) -> Value {
    json!({
        "type": "Feature",
        "geometry": { "type": "LineString", "coordinates": [place(&line.from), place(&line.to)] },
        "properties": {
            "is": line.kind,
            "slopes": letters(plan, line),
            "lengthMetres": line.length.in_metres(),
            "overhangMetres": line.overhang.map(trade::units::Length::in_metres),
            "endHeightsMetres": [line.from.z, line.to.z],
        },
    })
}
