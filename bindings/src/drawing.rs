//! A drawing as lines, areas and words at their places: a phone draws what the page and the letter draw.

use crate::cross::{Cross, mirror};

/// In what something is drawn. Nothing is told by it alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Enum)]
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

impl Cross<Ink> for trade::drawing::Ink {
    fn cross(self) -> Ink {
        match self {
            Self::Ink => Ink::Ink,
            Self::Paper => Ink::Paper,
            Self::Chosen => Ink::Chosen,
            Self::Wash => Ink::Wash,
        }
    }
}

/// A place on a drawing: to the right and down from its upper left corner.
#[derive(Clone, Copy, Debug, PartialEq, uniffi::Record)]
pub struct At {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl Cross<At> for (f64, f64) {
    fn cross(self) -> At {
        let (x, y) = self;
        At { x, y }
    }
}

/// One thing that is drawn.
#[derive(Clone, Debug, uniffi::Enum)]
pub enum Shape {
    /// A line through places.
    Line {
        /// The places.
        places: Vec<At>,
        /// How.
        pen: Pen,
    },
    /// A closed rim.
    Rim {
        /// Its corners.
        corners: Vec<At>,
        /// Its outline, where it has one.
        pen: Option<Pen>,
        /// Its filling, where it has one.
        fill: Option<Ink>,
    },
    /// Words.
    Words {
        /// What, where and how.
        lettering: Lettering,
    },
}

impl Cross<Shape> for trade::drawing::Shape {
    fn cross(self) -> Shape {
        match self {
            Self::Line { places, pen } => Shape::Line {
                places: places.cross(),
                pen: pen.cross(),
            },
            Self::Rim { corners, pen, fill } => Shape::Rim {
                corners: corners.cross(),
                pen: pen.cross(),
                fill: fill.cross(),
            },
            Self::Words(lettering) => Shape::Words {
                lettering: lettering.cross(),
            },
        }
    }
}

mirror! {
    /// How a line is drawn.
    Pen of trade::drawing::Pen {
        /// Its width.
        wide: f64,
        /// Lengths drawn and left out by turns; empty for a solid line.
        dash: Vec<f64>,
        /// Its ink.
        ink: Ink,
    }

    /// Words of a drawing, in one line.
    Lettering of trade::drawing::Lettering {
        /// The words.
        text: String,
        /// The middle of them, both ways.
        middle: At,
        /// Their size: the em.
        size: f64,
        /// How far they are turned to the right, in degrees.
        turned: f64,
        /// Whether they are bold.
        bold: bool,
        /// Their ink.
        ink: Ink,
    }

    /// A drawing: what comes later lies on top.
    Drawing of trade::drawing::Drawing {
        /// Its width.
        width: f64,
        /// Its height.
        height: f64,
        /// What is drawn.
        shapes: Vec<Shape>,
    }
}
