//! A roof drawn: its plan with letters, pitches, lengths and part numbers, and a covering as it lies. Black on white, readable at phone width.

mod courses;
mod key;
mod leaks;
pub mod lettering;
mod lines;
mod numbers;
mod places;
mod sheet;
mod slopes;

pub use courses::{plane as laid_plane, roof as laid_roof};
pub use leaks::Stained;
pub use places::{Placed, places, places_of_letters};
pub use trade::drawing::svg::{Colours, svg};

use crate::frame::Place;
use sheet::{Margins, SMALL, Sheet, level};
use trade::drawing::{Drawing, Ink, Pen, Shape};
use trade::roof::RoofPlan;
use trade::words::{Said, Words};

/// The width of a phone's page in CSS pixels.
pub const PHONE: f64 = 390.0;

/// What is shown on a plan beside the roof itself.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks {
    /// The parts.
    pub parts: Vec<Placed>,
    /// The plane that is chosen.
    pub chosen: Option<usize>,
    /// A stain on the ceiling below.
    pub stain: Option<Stained>,
    /// Ways of water, their bends in metres on plan.
    pub water: Vec<Vec<Place>>,
    /// What lies below the plan: the street, or south where it came from a map.
    pub below: Option<Said>,
}

/// A drawing, and what it has no room for: to be listed beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// The drawing.
    pub drawing: Drawing,
    /// What is not written on it.
    pub left_out: Vec<Said>,
}

/// The plan of a roof at a width.
pub fn plan(plan: &RoofPlan, marks: &Marks, words: &Words, width: f64) -> Picture {
    let mut sheet = Sheet::of(plan, width, margins(marks));
    choose(&mut sheet, plan, marks.chosen);
    lines::draw(&mut sheet, plan);
    for way in &marks.water {
        leaks::water(&mut sheet, way);
    }
    let placeless = numbers::draw(&mut sheet, plan, &marks.parts);
    let mut left_out: Vec<Said> = placeless.into_iter().map(Said::verbatim).collect();
    if let Some(stain) = marks.stain {
        left_out.extend(leaks::stain(&mut sheet, stain, words));
    }
    left_out.extend(slopes::letters(&mut sheet, plan, marks.chosen));
    left_out.extend(slopes::arrows(&mut sheet, plan, words));
    left_out.extend(lines::label(&mut sheet, plan, words));
    let mut drawing = sheet.drawing;
    if let Some(below) = &marks.below {
        drawing.height += SMALL + 6.0;
        let middle = (width / 2.0, drawing.height - SMALL / 2.0 - 2.0);
        let text = level(words.say(below), middle, SMALL, true);
        drawing.shapes.push(Shape::Words(text));
    }
    key::draw(&mut drawing, plan, !marks.water.is_empty(), words);
    Picture { drawing, left_out }
}

/// Room round the plan for lengths, and at its sides for part numbers where there are any.
fn margins(marks: &Marks) -> Margins {
    const LENGTHS: f64 = 26.0;
    let rows = u32::try_from(marks.parts.len().div_ceil(2) + marks.parts.len() / 5).unwrap_or(0);
    Margins {
        side: if marks.parts.is_empty() {
            LENGTHS
        } else {
            LENGTHS + 38.0
        },
        top: LENGTHS,
        bottom: LENGTHS,
        least: f64::from(rows) * numbers::ROW,
    }
}

/// A thick rim round the chosen plane.
fn choose(sheet: &mut Sheet, plan: &RoofPlan, chosen: Option<usize>) {
    let Some(plane) = chosen.and_then(|at| plan.planes.get(at)) else {
        return;
    };
    let corners = plane.corners.iter().map(|c| sheet.at((c.x, c.y))).collect();
    sheet.drawing.shapes.push(Shape::Rim {
        corners,
        pen: Some(Pen {
            wide: 8.0,
            dash: Vec::new(),
            ink: Ink::Chosen,
        }),
        fill: None,
    });
}
