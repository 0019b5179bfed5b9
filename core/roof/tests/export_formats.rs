//! The open formats read back: GeoJSON by the crate `geojson`, CSV by the crate `csv`, DXF group by group. tests/outside reads them with other
//! people's programs.

#![cfg(test)]

mod roofs;

use geojson::{FeatureCollection, GeometryValue};
use roof::export::{csv_of_lines, csv_of_planes, dxf, geojson};
use roofs::{FOOT, gable, gable_planes, hole, plan, tee};
use trade::property::Position;
use trade::roof::RoofPlan;
use trade::units::Pitch;

fn house() -> RoofPlan {
    tee(
        50.0 * FOOT,
        30.0 * FOOT,
        (8.0 * FOOT, 26.0 * FOOT),
        10.0 * FOOT,
        Pitch::rise(6),
    )
}

fn read(text: &str) -> FeatureCollection {
    text.parse::<geojson::GeoJson>()
        .unwrap()
        .try_into()
        .unwrap()
}

fn area(ring: &[geojson::Position]) -> f64 {
    ring.windows(2)
        .map(|pair| pair[0][0] * pair[1][1] - pair[1][0] * pair[0][1])
        .sum::<f64>()
        / 2.0
}

#[test]
fn geojson_in_metres_says_so_and_keeps_areas_and_lengths() {
    let plan = house();
    let read = read(&geojson(&plan, None));
    assert!(
        read.foreign_members
            .as_ref()
            .unwrap()
            .contains_key("localMetres")
    );
    assert_eq!(read.features.len(), plan.planes.len() + plan.lines.len());
    for (feature, plane) in read.features.iter().zip(&plan.planes) {
        let GeometryValue::Polygon { coordinates } = &feature.geometry.as_ref().unwrap().value
        else {
            panic!("a slope is a polygon")
        };
        assert_eq!(coordinates[0].first(), coordinates[0].last());
        assert!((area(&coordinates[0]) - plane.plan_area.in_square_metres()).abs() < 1e-4);
        assert_eq!(feature.property("letter").unwrap(), &plane.letter);
        assert_eq!(feature.property("pitch").unwrap(), "6:12");
    }
    for (feature, line) in read
        .features
        .iter()
        .skip(plan.planes.len())
        .zip(&plan.lines)
    {
        assert_eq!(
            feature.property("is").unwrap(),
            &serde_json::to_value(line.kind).unwrap()
        );
        let length = feature.property("lengthMetres").unwrap().as_f64().unwrap();
        assert!((length - line.length.in_metres()).abs() < 1e-9);
    }
    let facing: Vec<f64> = read
        .features
        .iter()
        .filter_map(|feature| feature.property("drainsToDegrees")?.as_f64())
        .collect();
    assert_eq!(
        facing
            .iter()
            .map(|degrees| degrees.round())
            .collect::<Vec<_>>(),
        [180.0, 0.0, 270.0, 90.0]
    );
}

/// Holes run clockwise and rims anticlockwise (RFC 7946, 3.1.6).
#[test]
fn rings_run_as_the_rfc_wants_them() {
    let mut planes = gable_planes(12.0, 9.0, Pitch::rise(6));
    planes[0].holes.push(hole((4.0, 1.0), (5.0, 2.0)));
    let read = read(&geojson(&plan(&planes, &[]), None));
    let GeometryValue::Polygon { coordinates } = &read.features[0].geometry.as_ref().unwrap().value
    else {
        panic!("a polygon")
    };
    assert!(area(&coordinates[0]) > 0.0 && area(&coordinates[1]) < 0.0);
}

/// At 45° a minute of latitude is 1852.2 m and one of longitude 1314.2 m on WGS 84 (geodesy tables, from memory; tests/outside holds it to PROJ).
#[test]
fn geojson_on_the_earth_lies_where_its_origin_is() {
    let plan = gable(1314.2, 2.0 * 1852.2, Pitch::rise(0));
    let origin = Position {
        latitude: 45.0,
        longitude: -96.0,
    };
    let read = read(&geojson(&plan, Some(origin)));
    assert!(read.foreign_members.is_none());
    let GeometryValue::Polygon { coordinates } = &read.features[0].geometry.as_ref().unwrap().value
    else {
        panic!("a polygon")
    };
    let far = &coordinates[0][2];
    assert!((far[0] - -96.0 - 1.0 / 60.0).abs() < 3e-6, "{far:?}");
    assert!((far[1] - 45.0 - 1.0 / 60.0).abs() < 3e-6, "{far:?}");
}

#[test]
fn tables_hold_every_plane_and_line() {
    let mut plan = house();
    plan.planes[0].letter = "A, \"front\"".to_owned();
    let rows = |text: &str| -> Vec<Vec<String>> {
        csv::Reader::from_reader(text.as_bytes())
            .records()
            .map(|row| row.unwrap().iter().map(str::to_owned).collect())
            .collect()
    };
    let planes = rows(&csv_of_planes(&plan));
    assert_eq!(planes.len(), plan.planes.len());
    assert_eq!(planes[0][0], "A, \"front\"");
    assert_eq!(planes[1][1..3], ["6:12", "0.0"]);
    let feet: f64 = planes
        .iter()
        .map(|row| row[6].parse::<f64>().unwrap())
        .sum();
    assert!((feet - plan.slope_area().in_square_feet()).abs() < 0.05);
    let lines = rows(&csv_of_lines(&plan));
    assert_eq!(lines.len(), plan.lines.len());
    let valleys: Vec<_> = lines.iter().filter(|row| row[0] == "valley").collect();
    assert_eq!(valleys.len(), 2);
    assert_eq!(valleys[0][1], "A, \"front\" C");
    // Run 9 ft along and 9 ft up the plan, rise 4 1/2 ft: 13.5 ft.
    assert_eq!(valleys[0][3], "13.500");
}

/// The groups of a DXF file: code and value.
fn groups(text: &str) -> Vec<(u16, &str)> {
    let lines: Vec<&str> = text.split("\r\n").collect();
    lines
        .chunks_exact(2)
        .map(|pair| (pair[0].trim().parse().unwrap(), pair[1]))
        .collect()
}

#[test]
fn dxf_holds_every_line_on_the_layer_of_its_kind() {
    let plan = house();
    let text = dxf(&plan);
    assert!(text.is_ascii());
    let groups = groups(&text);
    assert_eq!(groups.last(), Some(&(0, "EOF")));
    let count = |entity: &str| groups.iter().filter(|group| **group == (0, entity)).count();
    assert_eq!(count("SECTION"), count("ENDSEC"));
    assert_eq!(count("LINE"), plan.lines.len());
    assert_eq!(count("POLYLINE"), plan.planes.len());
    assert_eq!(count("SEQEND"), plan.planes.len());
    assert_eq!(
        count("VERTEX"),
        plan.planes
            .iter()
            .map(|plane| plane.corners.len())
            .sum::<usize>()
    );
    let layers: Vec<&str> = groups
        .windows(2)
        .filter(|pair| pair[0] == (0, "LINE"))
        .map(|pair| pair[1].1)
        .collect();
    let due: Vec<String> = plan
        .lines
        .iter()
        .map(|line| line.kind.key().trim_start_matches("line-").to_uppercase())
        .collect();
    assert_eq!(layers, due);
}
