//! The parts on a plan: slope letter and number at the plan's edge, tied to the place by a thin line. No pins, no balloons.

use crate::draw::lettering::Turned;
use crate::draw::places::{Placed, places};
use crate::draw::sheet::{Sheet, level};
use trade::drawing::{Ink, Lettering, Pen, Shape, Spot};
use trade::roof::RoofPlan;

/// Size of a part's address, and what one takes up of the edge from top to bottom.
const SIZE: f64 = 16.0;
pub const ROW: f64 = 22.0;
/// How far the middle of an address stands from the side of the sheet.
const FROM_SIDE: f64 = 19.0;
/// Where the thin line begins.
const LINE_FROM: f64 = 38.0;

struct Tied {
    text: String,
    place: Spot,
    chosen: bool,
    /// Height of its address on the sheet.
    high: f64,
}

/// Writes the address of each part at the nearer side and ties it to its place. Answers the addresses of those that have none.
pub fn draw(sheet: &mut Sheet, plan: &RoofPlan, parts: &[Placed]) -> Vec<String> {
    let width = sheet.drawing.width;
    let mut tied = Vec::new();
    let mut placeless = Vec::new();
    for (part, place) in parts.iter().zip(places(plan, parts)) {
        let text = format!("{}{}", part.letter, part.number);
        match place {
            Some(place) => {
                let place = sheet.at(place);
                tied.push(Tied {
                    text,
                    place,
                    chosen: part.chosen,
                    high: place.1,
                });
            }
            None => placeless.push(text),
        }
    }
    let (left, right) = shared(tied, width / 2.0);
    for (mut side, address, line) in [
        (left, FROM_SIDE, LINE_FROM),
        (right, width - FROM_SIDE, width - LINE_FROM),
    ] {
        spread(&mut side, sheet.drawing.height);
        uncross(&mut side, line);
        for part in side {
            tie(sheet, &part, address, line);
        }
    }
    placeless
}

/// To the nearer side; where one would hold over half as much again as the other, those nearest the middle go over.
fn shared(mut tied: Vec<Tied>, middle: f64) -> (Vec<Tied>, Vec<Tied>) {
    tied.sort_by(|a, b| a.place.0.total_cmp(&b.place.0));
    let left = tied.iter().filter(|part| part.place.0 < middle).count();
    let (least, most) = (tied.len() * 2 / 5, (tied.len() * 3).div_ceil(5));
    let right = tied.split_off(left.clamp(least, most).min(tied.len()));
    (tied, right)
}

/// Sets the addresses of one side one below another, each as near to the height of its place as the others let it be.
fn spread(side: &mut [Tied], height: f64) {
    side.sort_by(|a, b| a.place.1.total_cmp(&b.place.1));
    let mut above = 0.0;
    for part in side.iter_mut() {
        part.high = part.high.max(above + ROW / 2.0);
        above = part.high + ROW / 2.0;
    }
    let mut below = height;
    for part in side.iter_mut().rev() {
        part.high = part.high.min(below - ROW / 2.0);
        below = part.high - ROW / 2.0;
    }
}

/// Changes places between addresses whose lines cross. Each change makes the lines shorter, so it comes to an end.
fn uncross(side: &mut [Tied], line: f64) {
    let ways = |side: &[Tied], a: usize, b: usize| {
        let far = |place: Spot, high: f64| (place.0 - line).hypot(place.1 - high);
        let now = far(side[a].place, side[a].high) + far(side[b].place, side[b].high);
        let then = far(side[a].place, side[b].high) + far(side[b].place, side[a].high);
        then < now - 1e-6
    };
    let mut changed = true;
    while changed {
        changed = false;
        for a in 0..side.len() {
            for b in a + 1..side.len() {
                if ways(side, a, b) {
                    let high = side[a].high;
                    side[a].high = side[b].high;
                    side[b].high = high;
                    changed = true;
                }
            }
        }
    }
}

fn tie(sheet: &mut Sheet, part: &Tied, address: f64, line: f64) {
    let ink = if part.chosen { Ink::Chosen } else { Ink::Ink };
    let start = (line, part.high);
    sheet.line(
        start,
        part.place,
        Pen {
            wide: if part.chosen { 2.0 } else { 1.0 },
            dash: Vec::new(),
            ink,
        },
    );
    let (x, y) = part.place;
    let half = 3.0;
    let mark = vec![(x - half, y), (x, y - half), (x + half, y), (x, y + half)];
    sheet.drawing.shapes.push(Shape::Rim {
        corners: mark,
        pen: None,
        fill: Some(ink),
    });
    sheet.take(Turned::line((x - 5.0, y), (x + 5.0, y), 10.0));
    sheet.write(Lettering {
        ink,
        ..level(part.text.clone(), (address, part.high), SIZE, true)
    });
}
