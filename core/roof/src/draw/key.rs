//! The key below a plan: how each kind of line on it is drawn.

use crate::draw::lettering::width;
use crate::draw::lines::pen;
use crate::draw::sheet::{SMALL, level};
use trade::drawing::{Drawing, Shape};
use trade::roof::{LineKind, RoofPlan};
use trade::words::Words;

const ROW: f64 = 24.0;
const SAMPLE: f64 = 44.0;
const MARGIN: f64 = 16.0;

/// The kinds of line that a plan has.
fn kinds(plan: &RoofPlan) -> Vec<LineKind> {
    LineKind::ALL
        .into_iter()
        .filter(|kind| plan.lines.iter().any(|line| line.kind == *kind))
        .collect()
}

/// Adds the key below what is drawn, in two columns.
pub fn draw(drawing: &mut Drawing, plan: &RoofPlan, words: &Words) {
    let kinds = kinds(plan);
    let top = drawing.height + 6.0;
    let mut bottom = drawing.height;
    for (at, kind) in kinds.iter().enumerate() {
        let column = if at % 2 == 0 {
            MARGIN
        } else {
            drawing.width / 2.0 + MARGIN / 2.0
        };
        let row = f64::from(u32::try_from(at / 2).unwrap_or(u32::MAX));
        let y = top + row * ROW + ROW / 2.0;
        drawing.shapes.push(Shape::Line {
            places: vec![(column, y), (column + SAMPLE, y)],
            pen: pen(*kind),
        });
        let text = words.text(kind.key());
        let middle = column + SAMPLE + 8.0 + width(&text, SMALL) / 2.0;
        drawing
            .shapes
            .push(Shape::Words(level(text, (middle, y), SMALL, false)));
        bottom = y + ROW / 2.0;
    }
    drawing.height = bottom + 4.0;
}
