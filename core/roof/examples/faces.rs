//! Straight skeletons for a check from outside: reads outlines as JSON from standard input, writes their faces as JSON.
//!
//! In: a list of `{"rings": [[[x, y], …], …], "angles": [[degrees, …], …]}`, coordinates in whole numbers, the rim anticlockwise, holes clockwise,
//! an angle for each edge, 90 where it stands upright. Out: for each outline `{"choices": n, "faces": [{"edges": [[ring, edge], …], "loops": [[[x, y, z], …], …]}, …]}`,
//! or `null` where the roof never closes; `choices` counts the events that a weighted skeleton leaves open.

use roof::skeleton::{Edge, Skeleton, skeleton};
use serde_json::{Value, json};
use std::error::Error;
use std::io::{Read, Write};

fn main() -> Result<(), Box<dyn Error>> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    let outlines: Vec<Value> = serde_json::from_str(&text)?;
    let answers = outlines
        .iter()
        .map(|outline| rings(outline).map(|rings| answer(&rings)))
        .collect::<Option<Vec<Value>>>()
        .ok_or("each outline has rings and angles")?;
    writeln!(std::io::stdout(), "{}", Value::from(answers))?;
    Ok(())
}

fn rings(outline: &Value) -> Option<Vec<Vec<Edge>>> {
    let corners = outline["rings"].as_array()?;
    let angles = outline["angles"].as_array()?;
    corners
        .iter()
        .zip(angles)
        .map(|(corners, angles)| {
            corners
                .as_array()?
                .iter()
                .zip(angles.as_array()?)
                .map(|(corner, angle)| edge(corner, angle.as_f64()?))
                .collect()
        })
        .collect()
}

fn edge(corner: &Value, degrees: f64) -> Option<Edge> {
    let upright = (degrees - 90.0).abs() < 1e-9;
    Some(Edge {
        from: (corner[0].as_i64()?, corner[1].as_i64()?),
        slope: (!upright).then(|| degrees.to_radians().tan()),
        base: 0.0,
    })
}

fn answer(rings: &[Vec<Edge>]) -> Value {
    skeleton(rings).map_or(
        Value::Null,
        |skeleton| json!({ "choices": skeleton.choices, "faces": faces(&skeleton) }),
    )
}

fn faces(skeleton: &Skeleton) -> Value {
    skeleton
        .faces
        .iter()
        .map(|face| {
            let loops: Vec<Vec<[f64; 3]>> = face
                .loops
                .iter()
                .map(|rim| rim.iter().map(|&node| skeleton.nodes[node]).collect())
                .collect();
            json!({ "edges": face.edges, "loops": loops })
        })
        .collect()
}
