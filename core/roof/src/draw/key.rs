//! The key below a plan: how each kind of line on it is drawn.

use crate::draw::leaks;
use crate::draw::lettering::width;
use crate::draw::lines::pen;
use crate::draw::sheet::{SMALL, level};
use trade::drawing::{Drawing, Pen, Shape};
use trade::roof::{LineKind, RoofPlan};
use trade::words::Words;

const ROW: f64 = 24.0;
const SAMPLE: f64 = 44.0;
/// From the start of a sample to its word.
const BEFORE_TEXT: f64 = SAMPLE + 8.0;
const MARGIN: f64 = 16.0;

/// How the lines of a plan are drawn, each with its word: those kinds that it has, and water where it runs.
fn samples(plan: &RoofPlan, water: bool, words: &Words) -> Vec<(Pen, String)> {
    LineKind::ALL
        .into_iter()
        .filter(|kind| plan.lines.iter().any(|line| line.kind == *kind))
        .map(|kind| (pen(kind), words.text(kind.key())))
        .chain(water.then(|| (leaks::pen(), words.text("plan-water"))))
        .collect()
}

/// Adds the key below what is drawn, in two columns; what is too wide for one has a row to itself.
pub fn draw(drawing: &mut Drawing, plan: &RoofPlan, water: bool, words: &Words) {
    let top = drawing.height + 6.0;
    let half = drawing.width / 2.0;
    let mut cell = 0_u32;
    for (pen, text) in samples(plan, water, words) {
        let taken = BEFORE_TEXT + width(&text, SMALL) + MARGIN / 2.0;
        let cells = if MARGIN + taken > half { 2 } else { 1 };
        // A wide one begins a row.
        cell = cell.next_multiple_of(cells);
        let column = if cell.is_multiple_of(2) {
            MARGIN
        } else {
            half + MARGIN / 2.0
        };
        let y = top + (f64::from(cell / 2) + 0.5) * ROW;
        drawing.shapes.push(Shape::Line {
            places: vec![(column, y), (column + SAMPLE, y)],
            pen,
        });
        let middle = column + BEFORE_TEXT + width(&text, SMALL) / 2.0;
        drawing
            .shapes
            .push(Shape::Words(level(text, (middle, y), SMALL, false)));
        cell += cells;
    }
    drawing.height = top + f64::from(cell.div_ceil(2)) * ROW + 4.0;
}
