//! A drawing: lines, areas and words at their places, so that screen and letter show the same.

pub mod svg;

use serde::{Deserialize, Serialize};

/// A place on a drawing: to the right and down from its upper left corner, in units of one CSS pixel.
pub type Spot = (f64, f64);

/// In what something is drawn. Nothing is told by it alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ink {
    /// The ink of the page: black on white.
    Ink,
    /// The paper itself.
    Paper,
    /// What is chosen.
    Chosen,
    /// A light wash of areas.
    Wash,
}

/// How a line is drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Pen {
    /// Its width.
    pub wide: f64,
    /// Lengths drawn and left out by turns; empty for a solid line.
    pub dash: Vec<f64>,
    /// Its ink.
    pub ink: Ink,
}

impl Pen {
    /// A solid line in the page's ink.
    pub const fn solid(wide: f64) -> Self {
        Self {
            wide,
            dash: Vec::new(),
            ink: Ink::Ink,
        }
    }
}

/// Words of a drawing, in one line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lettering {
    /// The words.
    pub text: String,
    /// The middle of them, both ways.
    pub middle: Spot,
    /// Their size: the em.
    pub size: f64,
    /// How far they are turned to the right, in degrees.
    pub turned: f64,
    /// Whether they are bold.
    pub bold: bool,
    /// Their ink.
    pub ink: Ink,
}

/// One thing that is drawn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Shape {
    /// A line through places.
    Line {
        /// The places.
        places: Vec<Spot>,
        /// How.
        pen: Pen,
    },
    /// A closed rim.
    Rim {
        /// Its corners.
        corners: Vec<Spot>,
        /// Its outline, where it has one.
        pen: Option<Pen>,
        /// Its filling, where it has one.
        fill: Option<Ink>,
    },
    /// Words.
    Words(Lettering),
}

/// A drawing: what comes later lies on top.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Drawing {
    /// Its width.
    pub width: f64,
    /// Its height.
    pub height: f64,
    /// What is drawn.
    pub shapes: Vec<Shape>,
}

impl Drawing {
    /// All its words.
    pub fn words(&self) -> impl Iterator<Item = &Lettering> {
        self.shapes.iter().filter_map(|shape| match shape {
            Shape::Words(words) => Some(words),
            _ => None,
        })
    }
}
