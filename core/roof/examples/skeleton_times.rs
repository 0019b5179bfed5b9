//! Times our straight skeleton. In: a line for each polygon, `x y x y …` in whole numbers, anticlockwise. Out: a line for each, `corners seconds faces`.
//! The best of so many rounds counts as the first argument says.

use roof::skeleton::{Edge, Skeleton, skeleton};
use std::error::Error;
use std::hint::black_box;
use std::io::{BufRead, Write};
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let rounds: u32 = std::env::args()
        .nth(1)
        .map_or(Ok(5), |given| given.parse())?;
    for line in std::io::stdin().lock().lines() {
        let ring = ring(&line?)?;
        let mut best = f64::INFINITY;
        let mut faces = 0;
        for _ in 0..rounds {
            let begun = Instant::now();
            let answer = black_box(skeleton(black_box(std::slice::from_ref(&ring))));
            best = best.min(begun.elapsed().as_secs_f64());
            faces = answer.map_or(0, |skeleton| seen(&skeleton));
        }
        writeln!(std::io::stdout(), "{} {best} {faces}", ring.len())?;
    }
    Ok(())
}

fn ring(line: &str) -> Result<Vec<Edge>, Box<dyn Error>> {
    let numbers: Vec<i64> = line
        .split_whitespace()
        .map(str::parse)
        .collect::<Result<_, _>>()?;
    Ok(numbers
        .chunks_exact(2)
        .map(|corner| Edge {
            from: (corner[0], corner[1]),
            slope: Some(1.0),
            base: 0.0,
        })
        .collect())
}

/// Edges whose plane is seen: edges in one line share theirs.
fn seen(skeleton: &Skeleton) -> usize {
    skeleton
        .faces
        .iter()
        .filter(|face| !face.loops.is_empty())
        .map(|face| face.edges.len())
        .sum()
}
