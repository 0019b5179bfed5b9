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

/// Adds the key below what is drawn, in two columns.
pub fn draw(drawing: &mut Drawing, plan: &RoofPlan, water: bool, words: &Words) {
    let top = drawing.height + 6.0;
    let mut bottom = drawing.height;
    for (at, (pen, text)) in samples(plan, water, words).into_iter().enumerate() {
        let column = if at % 2 == 0 {
            MARGIN
        } else {
            drawing.width / 2.0 + MARGIN / 2.0
        };
        let row = f64::from(u32::try_from(at / 2).unwrap_or(u32::MAX));
        let y = top + row * ROW + ROW / 2.0;
        drawing.shapes.push(Shape::Line {
            places: vec![(column, y), (column + SAMPLE, y)],
            pen,
        });
        let middle = column + SAMPLE + 8.0 + width(&text, SMALL) / 2.0;
        drawing
            .shapes
            .push(Shape::Words(level(text, (middle, y), SMALL, false)));
        bottom = y + ROW / 2.0;
    }
    drawing.height = bottom + 4.0;
}
