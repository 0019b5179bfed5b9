//! Planes and lines as tables: CSV after RFC 4180, one header line, a point before decimals.

use crate::export::{drains_to, letters, to_places};
use trade::roof::RoofPlan;

const PLANES: &str =
    "slope,pitch,drains_to_degrees,plan_area_m2,slope_area_m2,plan_area_sqft,slope_area_sqft";
const LINES: &str =
    "line,slopes,length_m,length_ft,overhang_m,from_x_m,from_y_m,from_z_m,to_x_m,to_y_m,to_z_m";

/// One row a plane.
pub fn planes(plan: &RoofPlan) -> String {
    let rows = plan.planes.iter().map(|plane| {
        vec![
            plane.letter.clone(),
            plane.pitch.to_string(),
            to_places(drains_to(plane), 1),
            to_places(plane.plan_area.in_square_metres(), 4),
            to_places(plane.slope_area.in_square_metres(), 4),
            to_places(plane.plan_area.in_square_feet(), 2),
            to_places(plane.slope_area.in_square_feet(), 2),
        ]
    });
    table(PLANES, rows)
}

/// One row a line. Where it bounds two slopes, both letters stand with a space between.
pub fn lines(plan: &RoofPlan) -> String {
    let rows = plan.lines.iter().map(|line| {
        let overhang = line.overhang.map(|by| to_places(by.in_metres(), 4));
        let mut row = vec![
            line.kind.key().trim_start_matches("line-").to_owned(),
            letters(plan, line).join(" "),
            to_places(line.length.in_metres(), 4),
            to_places(line.length.in_feet(), 3),
            overhang.unwrap_or_default(),
        ];
        row.extend(
            [line.from, line.to]
                .iter()
                .flat_map(|end| [end.x, end.y, end.z].map(|metres| to_places(metres, 4))),
        );
        row
    });
    table(LINES, rows)
}

fn table(header: &str, rows: impl Iterator<Item = Vec<String>>) -> String {
    let mut out = format!("{header}\r\n");
    for row in rows {
        let fields: Vec<String> = row.iter().map(|field| quoted(field)).collect();
        out.push_str(&fields.join(","));
        out.push_str("\r\n");
    }
    out
}

fn quoted(field: &str) -> String {
    if field.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", field.replace('"', "\"\""))
    } else {
        field.to_owned()
    }
}
