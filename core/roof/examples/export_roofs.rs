//! Writes a few roofs by closed forms in every open format into a folder, each beside the plan itself: for the outside checks.

#[path = "../tests/roofs/mod.rs"]
mod roofs;

use roof::export::{csv_of_lines, csv_of_planes, dxf, geojson};
use roofs::{FOOT, ell, gable_planes, hip, hole, tee};
use std::path::Path;
use trade::property::Position;
use trade::roof::RoofPlan;
use trade::units::Pitch;

fn main() -> std::io::Result<()> {
    let folder = std::env::args().nth(1).unwrap_or_else(|| ".".to_owned());
    let folder = Path::new(&folder);
    let mut holed = gable_planes(46.0 * FOOT, 28.0 * FOOT, Pitch::rise(6));
    holed[0].holes.push(hole((6.0, 1.8), (7.2, 2.9)));
    let wing = (8.0 * FOOT, 26.0 * FOOT);
    let roofs: Vec<(&str, RoofPlan)> = vec![
        ("hip", hip(60.0 * FOOT, 50.0 * FOOT, Pitch::rise(8))),
        (
            "ell",
            ell(50.0 * FOOT, 60.0 * FOOT, 24.0 * FOOT, Pitch::rise(5)),
        ),
        (
            "tee",
            tee(50.0 * FOOT, 30.0 * FOOT, wing, 10.0 * FOOT, Pitch::rise(6)),
        ),
        ("holed", roofs::plan(&holed, &[])),
    ];
    let origin = Position {
        latitude: 41.2412,
        longitude: -96.0113,
    };
    for (name, plan) in &roofs {
        let keep =
            |end: &str, text: String| std::fs::write(folder.join(format!("{name}.{end}")), text);
        keep("json", serde_json::to_string(plan)?)?;
        keep("local.geojson", geojson(plan, None))?;
        keep("earth.geojson", geojson(plan, Some(origin)))?;
        keep("dxf", dxf(plan))?;
        keep("planes.csv", csv_of_planes(plan))?;
        keep("lines.csv", csv_of_lines(plan))?;
    }
    Ok(())
}
