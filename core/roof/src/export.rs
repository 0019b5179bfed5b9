//! A plan in open formats: GeoJSON for maps, DXF for drawing programs, CSV for tables.

mod csv;
mod dxf;
mod geojson;

pub use csv::{lines as csv_of_lines, planes as csv_of_planes};
pub use dxf::dxf;
pub use geojson::geojson;

use trade::roof::{Plane, RoofLine, RoofPlan};

/// The way a plane drains, in degrees to the right of the plan's way up (north, where the plan came from a map).
fn drains_to(plane: &Plane) -> f64 {
    let (x, y) = plane.downhill;
    x.atan2(y).to_degrees().rem_euclid(360.0)
}

/// The letters of the planes that a line bounds.
fn letters(plan: &RoofPlan, line: &RoofLine) -> Vec<String> {
    line.planes
        .iter()
        .filter_map(|at| plan.planes.get(*at))
        .map(|plane| plane.letter.clone())
        .collect()
}

/// A number to so many places, as it is written.
fn to_places(value: f64, places: usize) -> String {
    let text = format!("{value:.places$}");
    if text
        .trim_start_matches('-')
        .chars()
        .all(|c| matches!(c, '0' | '.'))
    {
        return text.trim_start_matches('-').to_owned();
    }
    text
}
