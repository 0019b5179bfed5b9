//! The slopes on a plan: the letter of each, and an arrow that points downhill with the pitch beside it.

use crate::draw::lettering::{Turned, width};
use crate::draw::places::roomiest;
use crate::draw::sheet::{SMALL, Sheet, level};
use trade::drawing::{Ink, Lettering, Pen, Shape, Spot};
use trade::roof::{Plane, RoofPlan};
use trade::words::{Said, Words};

/// Size of a slope's letter, and where there is little room.
const LETTER: f64 = 26.0;
const SMALL_LETTER: f64 = 18.0;
/// Length of an arrow, and of its head.
const ARROW: f64 = 30.0;
const HEAD: f64 = 9.0;

/// Writes the letter of each slope. Answers the letters that found no room.
pub fn letters(sheet: &mut Sheet, plan: &RoofPlan, chosen: Option<usize>) -> Vec<Said> {
    let mut left_out = Vec::new();
    for (at, plane) in plan.planes.iter().enumerate() {
        let (room, free) = roomiest(plane);
        let free = free * sheet.scale;
        let down = down(plane);
        // A little uphill, so that the arrow has room below.
        let lift = (free - LETTER / 2.0).clamp(0.0, 20.0);
        let middle = sheet.at(room);
        let middle = (middle.0 - down.0 * lift, middle.1 - down.1 * lift);
        let size = if free > LETTER * 0.6 {
            LETTER
        } else {
            SMALL_LETTER
        };
        let nudged = nudges(free);
        let written = sheet.write_where_free(nudged.into_iter().map(|by| Lettering {
            ink: if chosen == Some(at) {
                Ink::Chosen
            } else {
                Ink::Ink
            },
            ..level(
                plane.letter.clone(),
                (middle.0 + by.0, middle.1 + by.1),
                size,
                true,
            )
        }));
        if !written {
            left_out.push(Said::verbatim(plane.letter.clone()));
        }
    }
    left_out
}

/// How far a letter may stand from where it is wanted, nearest first.
fn nudges(free: f64) -> Vec<(f64, f64)> {
    let mut nudges: Vec<(f64, f64)> = (-4..=4)
        .flat_map(|x| (-4..=4).map(move |y| (f64::from(x) * 8.0, f64::from(y) * 8.0)))
        .filter(|by| by.0.hypot(by.1) < free.max(10.0))
        .collect();
    nudges.sort_by(|a, b| a.0.hypot(a.1).total_cmp(&b.0.hypot(b.1)));
    nudges
}

/// The way down a plane on the sheet.
fn down(plane: &Plane) -> (f64, f64) {
    (plane.downhill.0, -plane.downhill.1)
}

/// Draws an arrow down each slope, its pitch beside it. Answers the slopes and pitches that found no room.
pub fn arrows(sheet: &mut Sheet, plan: &RoofPlan, words: &Words) -> Vec<Said> {
    let mut left_out = Vec::new();
    for plane in &plan.planes {
        let pitch = Said::new("plan-pitch").with("pitch", plane.pitch);
        let text = words.say(&pitch);
        let placed = ways(sheet, plane, &text)
            .into_iter()
            .enumerate()
            .filter_map(|(later, way)| Some((later, sheet_cost(sheet, &way)?, way)))
            .min_by(|a, b| (as_f64(a.0) + a.1).total_cmp(&(as_f64(b.0) + b.1)))
            .map(|(.., way)| way);
        match placed {
            Some(((tail, tip), words)) => {
                arrow(sheet, tail, tip);
                sheet.write(words);
            }
            None => left_out.push(
                Said::new("plan-slope-pitch")
                    .with("slope", plane.letter.clone())
                    .with("pitch", plane.pitch),
            ),
        }
    }
    left_out
}

type Arrow = (Spot, Spot);

/// What an arrow and its pitch cross; `None` where they would cover something.
fn sheet_cost(sheet: &Sheet, (arrow, words): &(Arrow, Lettering)) -> Option<f64> {
    let (arrow, words) = (
        Turned::line(arrow.0, arrow.1, HEAD + 2.0),
        Turned::of(words),
    );
    let free = sheet.is_free(&arrow) && sheet.is_free(&words) && !arrow.meets(&words);
    free.then(|| sheet.crossed(&arrow) + sheet.crossed(&words))
}

fn as_f64(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::from(u32::MAX), f64::from)
}

/// Places for an arrow and its pitch on a plane, those below the letter first.
fn ways(sheet: &Sheet, plane: &Plane, text: &str) -> Vec<(Arrow, Lettering)> {
    let (room, free) = roomiest(plane);
    let middle = sheet.at(room);
    let free = free * sheet.scale;
    let (down, across) = (down(plane), (-down(plane).1, down(plane).0));
    let half = width(text, SMALL) / 2.0 + 2.0;
    // How far the pitch stands off the arrow: half its width where the arrow runs up or down the sheet, half its height where across.
    let beside = across.0.abs() * half + across.1.abs() * SMALL * 0.6 + HEAD * 0.7;
    let mut ways = Vec::new();
    for length in [ARROW, ARROW * 0.7] {
        for aside in [0.0, 24.0, -24.0, 40.0, -40.0, 60.0, -60.0] {
            for forward in [2.0, 10.0, -6.0, -length / 2.0, -length] {
                if forward + length > free + 4.0 && aside == 0.0 {
                    continue;
                }
                for side in [1.0, -1.0] {
                    let at = |along: f64, off: f64| {
                        (
                            middle.0 + down.0 * along + across.0 * off,
                            middle.1 + down.1 * along + across.1 * off,
                        )
                    };
                    let arrow = (at(forward, aside), at(forward + length, aside));
                    let words = level(
                        text,
                        at(forward + length / 2.0, aside + side * beside),
                        SMALL,
                        false,
                    );
                    let ends = [arrow.0, arrow.1, words.middle];
                    if ends.iter().all(|end| sheet.is_over(plane, *end, 3.0)) {
                        ways.push((arrow, words));
                    }
                }
            }
        }
    }
    ways
}

/// Draws an arrow and keeps words off it.
fn arrow(sheet: &mut Sheet, tail: Spot, tip: Spot) {
    let length = (tip.0 - tail.0)
        .hypot(tip.1 - tail.1)
        .max(f64::MIN_POSITIVE);
    let way = ((tip.0 - tail.0) / length, (tip.1 - tail.1) / length);
    let neck = (tip.0 - way.0 * HEAD, tip.1 - way.1 * HEAD);
    let wing = (-way.1 * HEAD * 0.5, way.0 * HEAD * 0.5);
    sheet.drawing.shapes.push(Shape::Line {
        places: vec![tail, neck],
        pen: Pen::solid(2.0),
    });
    sheet.filled(
        vec![
            tip,
            (neck.0 + wing.0, neck.1 + wing.1),
            (neck.0 - wing.0, neck.1 - wing.1),
        ],
        Ink::Ink,
    );
    sheet.take(Turned::line(tail, tip, HEAD + 2.0));
}
