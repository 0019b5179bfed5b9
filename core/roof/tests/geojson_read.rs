//! A footprint in GeoJSON comes to the ground in true metres, and what is wrong with one is told with its place.

#![cfg(test)]

use proptest::prelude::*;
use roof::{ShapeError, read_outline};
use serde_json::{Value, json};
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf};
use trade::units::{Length, Pitch};
use trade::words::{Language, Words};

/// WGS 84: half the longer axis in metres, and the flattening (NIMA TR8350.2).
const AXIS: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;

/// The longitude and latitude of a place so many metres to the east and north on the plane that touches the ellipsoid: through the frame of
/// the earth's centre, and back by the latitude's own fixed point.
fn on_earth((longitude, latitude): (f64, f64), (east, north): (f64, f64)) -> [f64; 2] {
    let squared = FLATTENING * (2.0 - FLATTENING);
    let (sin_east, cos_east) = longitude.to_radians().sin_cos();
    let (sin, cos) = latitude.to_radians().sin_cos();
    let across = AXIS / (1.0 - squared * sin.powi(2)).sqrt();
    let x = across * cos * cos_east - sin_east * east - sin * cos_east * north;
    let y = across * cos * sin_east + cos_east * east - sin * sin_east * north;
    let z = across * (1.0 - squared) * sin + cos * north;
    let from_axis = x.hypot(y);
    let mut latitude = z.atan2(from_axis * (1.0 - squared));
    for _ in 0..10 {
        let across = AXIS / (1.0 - squared * latitude.sin().powi(2)).sqrt();
        latitude = (z + squared * across * latitude.sin()).atan2(from_axis);
    }
    [y.atan2(x).to_degrees(), latitude.to_degrees()]
}

/// A closed ring of positions round a place, by corners in metres.
fn ring(place: (f64, f64), corners: &[(f64, f64)]) -> Value {
    let mut positions: Vec<[f64; 2]> = corners
        .iter()
        .map(|&corner| on_earth(place, corner))
        .collect();
    positions.push(positions[0]);
    json!(positions)
}

fn polygon(place: (f64, f64), corners: &[(f64, f64)]) -> Value {
    json!({"type": "Polygon", "coordinates": [ring(place, corners)]})
}

fn bodies(file: &Value) -> Vec<Body> {
    match read_outline(&file.to_string(), Some(Pitch::rise(6)), Length::inches(16)) {
        Ok(Drawn::Outlines { bodies }) => bodies,
        other => panic!("{file}: {other:?}"),
    }
}

fn places(body: &Body) -> Vec<(f64, f64)> {
    body.rings
        .iter()
        .flatten()
        .map(|edge| (edge.x.in_metres(), edge.y.in_metres()))
        .collect()
}

const OMAHA: (f64, f64) = (-96.0113, 41.2412);
const HOUSE: [(f64, f64); 4] = [(0.0, 0.0), (12.0, 0.0), (12.0, 8.0), (0.0, 8.0)];
const SHED: [(f64, f64); 4] = [(20.0, 0.0), (24.0, 0.0), (24.0, 3.0), (20.0, 3.0)];

proptest! {
    #[test]
    fn a_footprint_reads_back_within_a_millimetre(
        distances in prop::collection::vec(4.0..50.0_f64, 3..30), longitude in -180.0..180.0_f64, latitude in -70.0..70.0_f64, clockwise: bool,
    ) {
        #[allow(clippy::cast_precision_loss)]
        let even = std::f64::consts::TAU / distances.len() as f64 * if clockwise { -1.0 } else { 1.0 };
        let corners: Vec<(f64, f64)> = distances
            .iter()
            .zip(1_u8..)
            .map(|(_, at)| (f64::from(at) * even).sin_cos())
            .zip(&distances)
            .map(|((sin, cos), distance)| (distance * cos, distance * sin))
            .collect();
        let read = bodies(&polygon((longitude, latitude), &corners));
        let read = places(&read[0]);
        prop_assert_eq!(read.len(), corners.len());
        for (one, truly) in read.iter().zip(&corners) {
            for (other, also) in read.iter().zip(&corners) {
                let (x, y) = (one.0 - other.0, one.1 - other.1);
                let (east, north) = (truly.0 - also.0, truly.1 - also.1);
                prop_assert!((x.hypot(y) - east.hypot(north)).abs() < 1e-3, "{x} {y}, not {east} {north}");
                // North is that of the middle of the outline: at 70° and 50 m it turns by 0.02°.
                prop_assert!((x - east).hypot(y - north) < 0.05, "{x} {y}, not {east} {north}");
            }
        }
    }
}

#[test]
fn every_kind_of_area_is_read() {
    let (house, shed) = (polygon(OMAHA, &HOUSE), polygon(OMAHA, &SHED));
    let feature =
        |geometry: &Value| json!({"type": "Feature", "properties": null, "geometry": geometry});
    let one = bodies(&house);
    assert_eq!((one.len(), one[0].rings[0].len()), (1, 4));
    assert_eq!(
        (one[0].of, one[0].overhang),
        (OutlineOf::Roof, Length::inches(16))
    );
    assert_eq!(bodies(&feature(&house)), one);
    let multi =
        json!({"type": "MultiPolygon", "coordinates": [house["coordinates"], shed["coordinates"]]});
    let two = bodies(&multi);
    assert_eq!(two.len(), 2);
    assert_eq!(
        bodies(
            &json!({"type": "FeatureCollection", "features": [feature(&house), feature(&shed)]})
        ),
        two
    );
    assert_eq!(
        bodies(&json!({"type": "GeometryCollection", "geometries": [house, shed]})),
        two
    );
}

#[test]
fn holes_heights_and_the_180th_meridian() {
    let hole = [(4.0, 3.0), (8.0, 3.0), (8.0, 5.0), (4.0, 5.0)];
    let holed =
        json!({"type": "Polygon", "coordinates": [ring(OMAHA, &HOUSE), ring(OMAHA, &hole)]});
    assert_eq!(bodies(&holed)[0].rings.len(), 2);
    let mut high = polygon(OMAHA, &HOUSE);
    for position in high["coordinates"][0].as_array_mut().unwrap() {
        position.as_array_mut().unwrap().push(json!(312.5));
    }
    assert_eq!(bodies(&high), bodies(&polygon(OMAHA, &HOUSE)));
    let across = places(&bodies(&polygon((179.999_95, -16.8), &HOUSE))[0]);
    let width = across[1].0 - across[0].0;
    assert!((width - 12.0).abs() < 1e-3, "{width}");
}

#[test]
fn properties_say_more() {
    let told = |properties: Value| {
        bodies(&json!({"type": "Feature", "geometry": polygon(OMAHA, &HOUSE), "properties": properties})).remove(0)
    };
    let body = told(json!({
        "pitch": "8/12", "overhang": "1 ft", "of": "walls", "raised": "9 ft", "name": "house",
        "edges": ["hip", {"is": "gable", "overhang": "6 in"}, {"pitch": "4/12"}, "wall"],
    }));
    assert_eq!(
        (body.pitch, body.overhang, body.raised),
        (Pitch::rise(8), Length::feet(1), Length::feet(9))
    );
    assert_eq!(body.of, OutlineOf::Walls);
    let rim = &body.rings[0];
    assert_eq!(
        rim.iter().map(|edge| edge.is).collect::<Vec<_>>(),
        [EdgeIs::Hip, EdgeIs::Gable, EdgeIs::Hip, EdgeIs::Wall]
    );
    assert_eq!(
        (rim[1].overhang, rim[2].pitch),
        (Some(Length::inches(6)), Some(Pitch::rise(4)))
    );
    let by_ring = told(json!({"edges": [["hip", "gable", "hip", "gable"]]}));
    let by_side = told(json!({"edges": ["hip", "gable", "hip", "gable"]}));
    assert_eq!(by_ring, by_side);
}

fn refused(file: &Value) -> (ShapeError, String) {
    let error = read_outline(&file.to_string(), None, Length::ZERO).expect_err(&file.to_string());
    let told = Words::of(Language::English).say(&error.says());
    (error, told)
}

#[test]
fn what_is_wrong_is_told_with_its_place() {
    let mut no_number = polygon(OMAHA, &HOUSE);
    no_number["coordinates"][0][2][1] = json!("41");
    let mut off_the_earth = polygon(OMAHA, &HOUSE);
    off_the_earth["coordinates"][0][1] = json!([-96.0, 91.0]);
    let mut projected = polygon(OMAHA, &HOUSE);
    projected["coordinates"][0][0] = json!([500_000.0, 4_500_000.0]);
    let mut short = polygon(OMAHA, &HOUSE);
    short["coordinates"][0][3] = json!([-96.0]);
    let mut open = polygon(OMAHA, &HOUSE);
    open["coordinates"][0].as_array_mut().unwrap().pop();
    let feature = |properties: Value| json!({"type": "Feature", "geometry": polygon(OMAHA, &HOUSE), "properties": properties});
    let in_collection = |geometry: &Value| json!({"type": "FeatureCollection", "features": [{"type": "Feature", "properties": {"pitch": "6/12"}, "geometry": geometry}]});
    let cases = [
        ("coordinates[0][2][1]: A number", no_number.clone()),
        (
            "features[0].geometry.coordinates[0][2][1]: A number",
            in_collection(&no_number),
        ),
        ("coordinates[0][1]: This is no longitude", off_the_earth),
        ("coordinates[0][0]: This is no longitude", projected),
        ("coordinates[0][3]: A position", short),
        (
            "The outline is open: it ends at (-96.0113, 41.241272)",
            open,
        ),
        (
            "The outline has 2 corners",
            in_collection(&polygon(OMAHA, &HOUSE[..2])),
        ),
        (
            "The outline has 0 corners",
            json!({"type": "Polygon", "coordinates": [[]]}),
        ),
        (
            "No outline is in this file",
            json!({"type": "FeatureCollection", "features": []}),
        ),
        ("No outline is in this file", in_collection(&Value::Null)),
        (
            "A “Point” has no area",
            json!({"type": "Point", "coordinates": [-96.0, 41.0]}),
        ),
        (
            "At features[0].geometry.type: A “LineString”",
            in_collection(&json!({"type": "LineString", "coordinates": []})),
        ),
        ("“coordinates” is missing", json!({"type": "Polygon"})),
        ("The pitch is missing", polygon(OMAHA, &HOUSE)),
        ("At properties.pitch: “12”", feature(json!({"pitch": "12"}))),
        (
            "At properties.edges: There must be one entry",
            feature(json!({"pitch": "6/12", "edges": ["hip"]})),
        ),
        (
            "Known are: is, pitch, overhang",
            feature(json!({"pitch": "6/12", "edges": [{"edge": "hip"}, {}, {}, {}]})),
        ),
        (
            "no house is that large",
            in_collection(&polygon(OMAHA, &[(0.0, 0.0), (1200.0, 0.0), (1200.0, 8.0)])),
        ),
        (
            "cross or touch at (-96.01",
            in_collection(&polygon(
                OMAHA,
                &[(0.0, 0.0), (12.0, 0.0), (0.0, 8.0), (12.0, 8.0)],
            )),
        ),
    ];
    for (wanted, file) in cases {
        let (_, told) = refused(&file);
        assert!(told.contains(wanted), "{file}: {told}");
    }
}

#[test]
fn buildings_of_different_places_are_refused() {
    let far = json!({"type": "GeometryCollection", "geometries": [polygon(OMAHA, &HOUSE), polygon((-95.999, 41.2412), &HOUSE)]});
    let error = read_outline(&far.to_string(), Some(Pitch::rise(6)), Length::ZERO).unwrap_err();
    assert!(
        matches!(error, ShapeError::TooFarApart { across } if (1030.0..1050.0).contains(&across.in_metres())),
        "{error:?}"
    );
}
