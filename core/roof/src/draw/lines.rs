//! The lines of a roof on its plan: each kind with its own dash, its word and its length written along it.

use crate::draw::lettering::width;
use crate::draw::sheet::{SMALL, Sheet};
use crate::frame::Place;
use trade::drawing::{Ink, Lettering, Pen, Spot};
use trade::roof::{LineKind, RoofLine, RoofPlan};
use trade::units::Length;
use trade::words::{Said, Words};

/// How far the middle of words lies from the line they are written along.
const BESIDE: f64 = 13.0;

/// How a kind of line is drawn. No two kinds are dashed alike.
pub fn pen(kind: LineKind) -> Pen {
    let (wide, dash): (f64, &[f64]) = match kind {
        LineKind::Eave => (3.0, &[]),
        LineKind::Rake => (3.0, &[16.0, 4.0]),
        LineKind::Ridge => (3.0, &[14.0, 4.0, 3.0, 4.0]),
        LineKind::Hip => (2.5, &[7.0, 4.0]),
        LineKind::Valley => (3.0, &[3.0, 4.0]),
        LineKind::Wall => (5.0, &[]),
        LineKind::Step => (5.0, &[8.0, 4.0]),
        LineKind::PitchChange => (2.0, &[2.0, 2.0]),
        LineKind::Top => (3.0, &[14.0, 4.0, 3.0, 4.0, 3.0, 4.0]),
    };
    Pen {
        wide,
        dash: dash.to_vec(),
        ink: Ink::Ink,
    }
}

/// Draws every line.
pub fn draw(sheet: &mut Sheet, plan: &RoofPlan) {
    for line in &plan.lines {
        let (from, to) = (
            sheet.at((line.from.x, line.from.y)),
            sheet.at((line.to.x, line.to.y)),
        );
        sheet.line(from, to, pen(line.kind));
    }
}

/// The word and the length of a line, and its length alone: to the inch.
pub fn says(line: &RoofLine) -> (Said, Said) {
    let length = to_the_inch(line.length);
    let whole = Said::new("plan-line")
        .with("line", Said::new(line.kind.key()))
        .with("length", length);
    (whole, Said::new("plan-length").with("length", length))
}

fn to_the_inch(length: Length) -> Length {
    #[allow(clippy::cast_possible_truncation)]
    let inches = length.in_inches().round() as i64;
    Length::inches(inches)
}

/// Writes what each line is and how long, the longest first. Answers what found no room.
pub fn label(sheet: &mut Sheet, plan: &RoofPlan, words: &Words) -> Vec<Said> {
    let mut lines: Vec<&RoofLine> = plan.lines.iter().collect();
    lines.sort_by_key(|line| std::cmp::Reverse(line.length));
    let middle = middle(plan);
    let mut left_out = Vec::new();
    for line in lines {
        let (whole, length) = says(line);
        let (from, to) = ends(sheet, line);
        let run = (to.0 - from.0).hypot(to.1 - from.1);
        let inner = line.planes.len() > 1;
        let out = outward(sheet, line, sheet.at(middle));
        let (text, short) = (words.say(&whole), words.say(&length));
        let along = |text: &str, spare: f64| beside(text, (from, to), out, inner, spare);
        let fits = |text: &str| width(text, SMALL) <= run + if inner { -6.0 } else { 30.0 };
        let mut places = Vec::new();
        if fits(&text) {
            places.extend(along(&text, run - width(&text, SMALL)));
        }
        if fits(&short) {
            places.extend(along(&short, run - width(&short, SMALL)));
        }
        places.extend(level_beside(&short, (from, to), out, inner));
        if !sheet.write_where_free(places) {
            left_out.push(whole);
        }
    }
    left_out
}

fn middle(plan: &RoofPlan) -> Place {
    let corners = || plan.planes.iter().flat_map(|plane| &plane.corners);
    let count = u32::try_from(corners().count()).unwrap_or(1).max(1);
    let sum = corners().fold((0.0, 0.0), |sum, corner| {
        (sum.0 + corner.x, sum.1 + corner.y)
    });
    (sum.0 / f64::from(count), sum.1 / f64::from(count))
}

fn ends(sheet: &Sheet, line: &RoofLine) -> (Spot, Spot) {
    let (a, b) = (
        sheet.at((line.from.x, line.from.y)),
        sheet.at((line.to.x, line.to.y)),
    );
    // Words read from left to right, upright ones from below.
    let turned = if (a.0 - b.0).abs() > 0.5 {
        a.0 > b.0
    } else {
        a.1 < b.1
    };
    if turned { (b, a) } else { (a, b) }
}

/// The side of a line that words are wanted on, a unit vector across it: off the roof at its edge, else above the line.
fn outward(sheet: &Sheet, line: &RoofLine, middle: Spot) -> (f64, f64) {
    let (from, to) = ends(sheet, line);
    let length = (to.0 - from.0).hypot(to.1 - from.1).max(f64::MIN_POSITIVE);
    let above = ((to.1 - from.1) / length, (from.0 - to.0) / length);
    if line.planes.len() > 1 {
        return above;
    }
    let at = (f64::midpoint(from.0, to.0), f64::midpoint(from.1, to.1));
    let away = (at.0 - middle.0) * above.0 + (at.1 - middle.1) * above.1;
    if away < 0.0 {
        (-above.0, -above.1)
    } else {
        above
    }
}

/// Places along a line for words, the middle first, then towards its ends as far as it is longer than they are.
fn beside(
    text: &str,
    (from, to): (Spot, Spot),
    out: (f64, f64),
    inner: bool,
    spare: f64,
) -> Vec<Lettering> {
    let angle = (to.1 - from.1).atan2(to.0 - from.0).to_degrees();
    let sides: &[f64] = if inner {
        &[1.0, -1.0]
    } else {
        &[1.0, 1.25, -1.0]
    };
    let length = (to.0 - from.0).hypot(to.1 - from.1).max(f64::MIN_POSITIVE);
    let way = ((to.0 - from.0) / length, (to.1 - from.1) / length);
    let reach = spare.max(0.0) / 2.0;
    let mut places = Vec::new();
    for shift in [0.0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 0.95, -0.95] {
        for side in sides {
            let (along, across) = (length / 2.0 + shift * reach, side * BESIDE);
            places.push(Lettering {
                text: text.to_owned(),
                middle: (
                    from.0 + way.0 * along + out.0 * across,
                    from.1 + way.1 * along + out.1 * across,
                ),
                size: SMALL,
                turned: if angle.abs() < 0.5 { 0.0 } else { angle },
                bold: false,
                ink: Ink::Ink,
            });
        }
    }
    places
}

/// Level places beside a line that is too short to write along.
fn level_beside(
    text: &str,
    (from, to): (Spot, Spot),
    out: (f64, f64),
    inner: bool,
) -> Vec<Lettering> {
    let half = (width(text, SMALL) / 2.0, SMALL / 2.0);
    let sides: &[f64] = if inner { &[1.0, -1.0] } else { &[1.0] };
    let mut places = Vec::new();
    for share in [0.5, 0.35, 0.65, 0.2, 0.8] {
        for side in sides {
            let clear = (out.0.abs() * half.0 + out.1.abs() * half.1 + 5.0) * side;
            places.push(crate::draw::sheet::level(
                text,
                (
                    from.0 + (to.0 - from.0) * share + out.0 * clear,
                    from.1 + (to.1 - from.1) * share + out.1 * clear,
                ),
                SMALL,
                false,
            ));
        }
    }
    places
}
