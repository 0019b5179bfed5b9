//! A stain on a plan, and the ways that water takes to it.

use crate::draw::lettering::{Turned, width};
use crate::draw::sheet::{SMALL, Sheet, level};
use crate::frame::Place;
use trade::drawing::{Ink, Pen, Shape, Spot};
use trade::words::{Said, Words};

/// The smallest ring that a stain is shown by, its radius in pixels.
const LEAST: f64 = 9.0;

/// How the way of water is drawn.
pub fn pen() -> Pen {
    Pen {
        wide: 4.0,
        dash: vec![4.0, 3.0],
        ink: Ink::Chosen,
    }
}

/// A stain on plan, in metres: its middle, and how far off that may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stained {
    /// Its middle.
    pub at: Place,
    /// How far off it may be.
    pub within: f64,
}

/// Draws a ring of dashes round the stain. Answers what found no room.
pub fn stain(sheet: &mut Sheet, stain: Stained, words: &Words) -> Vec<Said> {
    let middle = sheet.at(stain.at);
    let radius = (stain.within * sheet.scale).max(LEAST);
    let ring = (0..32_u8)
        .map(|step| {
            let angle = f64::from(step) * std::f64::consts::TAU / 32.0;
            (
                middle.0 + radius * angle.cos(),
                middle.1 + radius * angle.sin(),
            )
        })
        .collect();
    sheet.drawing.shapes.push(Shape::Rim {
        corners: ring,
        pen: Some(Pen {
            wide: 2.5,
            dash: vec![4.0, 3.0],
            ink: Ink::Chosen,
        }),
        fill: None,
    });
    let across = (middle.0 - radius, middle.1);
    sheet.take(Turned::line(
        across,
        (middle.0 + radius, middle.1),
        2.0 * radius,
    ));
    let said = Said::new("plan-stain");
    let text = words.say(&said);
    let beside = radius + width(&text, SMALL) / 2.0 + 5.0;
    let above = radius + SMALL * 0.7 + 2.0;
    let places = [
        (0.0, above),
        (beside, 0.0),
        (-beside, 0.0),
        (0.0, -above),
        (beside, above),
        (-beside, above),
    ];
    let written = sheet.write_where_free(places.map(|by| {
        level(
            text.clone(),
            (middle.0 + by.0, middle.1 + by.1),
            SMALL,
            true,
        )
    }));
    if written { Vec::new() } else { vec![said] }
}

/// Draws the way of water, bend by bend.
pub fn water(sheet: &mut Sheet, way: &[Place]) {
    let places: Vec<Spot> = way.iter().map(|place| sheet.at(*place)).collect();
    for pair in places.windows(2) {
        if let [from, to] = pair {
            sheet.line(*from, *to, pen());
        }
    }
}
