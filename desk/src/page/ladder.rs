//! The picture of a condition: a small ladder, drawn with lines so that it prints and shows in the sun.

use maud::{Markup, html};
use trade::ladder::{HEIGHT, Ladder, Stroke, WEIGHT, WIDTH};

/// Draws a ladder of a height in pixels. The word always stands beside it, so it is hidden from readers.
pub(crate) fn draw(ladder: Ladder, height: f64) -> Markup {
    let width = height * WIDTH / HEIGHT;
    let way: String = ladder.strokes().iter().map(path).collect();
    html! {
        svg class="ladder" width=(format!("{width:.0}")) height=(format!("{height:.0}"))
            viewBox=(format!("0 0 {WIDTH} {HEIGHT}")) aria-hidden="true" {
            path d=(way) stroke="currentColor" fill="none" stroke-linecap="round" stroke-width=(WEIGHT) {}
        }
    }
}

fn path(stroke: &Stroke) -> String {
    let ([from_x, from_y], [to_x, to_y]) = (stroke.from, stroke.to);
    match stroke.by {
        Some([x, y]) => format!("M{from_x} {from_y}Q{x} {y} {to_x} {to_y}"),
        None => format!("M{from_x} {from_y}L{to_x} {to_y}"),
    }
}
