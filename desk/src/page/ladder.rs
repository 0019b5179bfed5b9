//! The picture of a condition: a small ladder, drawn with lines so that it prints and shows in the sun.

use maud::{Markup, PreEscaped, html};
use screens::Ladder;

/// Width to height of the ladder.
const SLIM: f64 = 0.62;

/// Draws a ladder of a height in pixels. The word always stands beside it, so it is hidden from readers.
pub(crate) fn draw(ladder: Ladder, height: f64) -> Markup {
    let width = height * SLIM;
    let (left, right) = (height * 0.1, width - height * 0.1);
    let rails = format!(
        "M{left:.1} 2V{:.1}M{right:.1} 2V{:.1}",
        height - 2.0,
        height - 2.0
    );
    let rungs: String = rungs(ladder)
        .into_iter()
        .zip([0.2, 0.5, 0.8])
        .map(|(rung, at)| path(rung, at * height, height, left, right))
        .collect();
    let dots = format!("1 {:.1}", height * 0.17);
    let rail_dash = (ladder == Ladder::NotSeen).then_some(dots);
    html! {
        svg class="ladder" width=(format!("{width:.0}")) height=(format!("{height:.0}"))
            viewBox=(format!("0 0 {width:.1} {height:.1}")) aria-hidden="true" {
            g stroke="currentColor" fill="none" stroke-linecap="round"
                stroke-width=(format!("{:.1}", height * 0.09)) {
                path d=(rails) stroke-dasharray=[rail_dash] {}
                (PreEscaped(format!("<path d=\"{rungs}\"/>")))
            }
        }
    }
}

#[derive(Clone, Copy)]
enum Bar {
    Whole,
    Sagging,
    Snapped,
    Gone,
}

fn rungs(ladder: Ladder) -> [Bar; 3] {
    match ladder {
        Ladder::Sound => [Bar::Whole; 3],
        Ladder::Ageing => [Bar::Whole, Bar::Sagging, Bar::Whole],
        Ladder::Failing => [Bar::Whole, Bar::Snapped, Bar::Whole],
        Ladder::Failed => [Bar::Snapped, Bar::Snapped, Bar::Gone],
        Ladder::NotSeen => [Bar::Gone; 3],
    }
}

fn path(bar: Bar, y: f64, height: f64, left: f64, right: f64) -> String {
    let width = height * SLIM;
    match bar {
        Bar::Whole => format!("M{left:.1} {y:.1}H{right:.1}"),
        Bar::Sagging => {
            format!(
                "M{left:.1} {y:.1}Q{:.1} {:.1} {right:.1} {y:.1}",
                width / 2.0,
                y + height * 0.17
            )
        }
        Bar::Snapped => format!(
            "M{left:.1} {y:.1}L{:.1} {:.1}M{right:.1} {y:.1}L{:.1} {:.1}",
            width * 0.36,
            y + height * 0.07,
            width * 0.7,
            y + height * 0.1
        ),
        Bar::Gone => String::new(),
    }
}
