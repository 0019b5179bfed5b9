//! The sheet a plan is drawn on: its scale, what is taken up already, and what is drawn.

use crate::draw::lettering::Turned;
use crate::draw::places::room;
use crate::frame::Place;
use trade::drawing::{Drawing, Ink, Lettering, Pen, Shape, Spot};
use trade::roof::{Plane, RoofPlan};

/// The smallest words, in CSS pixels.
pub const SMALL: f64 = 15.0;
/// A line that words cross counts as much as this many places farther from where they are wanted.
const CROSSED: f64 = 6.0;

/// A sheet.
pub struct Sheet {
    /// Pixels to the metre.
    pub scale: f64,
    /// Where the plan's left and farthest corner comes to.
    origin: Spot,
    left_and_far: Place,
    /// What is drawn.
    pub drawing: Drawing,
    /// What words may not cover.
    taken: Vec<Turned>,
    /// What words had better not cover.
    lines: Vec<Turned>,
}

/// What is left free round a plan.
#[derive(Clone, Copy, Debug)]
pub struct Margins {
    /// Left and right.
    pub side: f64,
    /// Above.
    pub top: f64,
    /// Below.
    pub bottom: f64,
    /// The least height that the plan takes up.
    pub least: f64,
}

impl Sheet {
    /// A sheet of a width with a plan in its middle, as large as it can be and no higher than half as much again as it is wide.
    pub fn of(plan: &RoofPlan, width: f64, margins: Margins) -> Self {
        let corners = || plan.planes.iter().flat_map(|plane| &plane.corners);
        let least = corners().fold((f64::INFINITY, f64::INFINITY), |least, corner| {
            (least.0.min(corner.x), least.1.min(corner.y))
        });
        let most = corners().fold((f64::NEG_INFINITY, f64::NEG_INFINITY), |most, corner| {
            (most.0.max(corner.x), most.1.max(corner.y))
        });
        let size = ((most.0 - least.0).max(1e-6), (most.1 - least.1).max(1e-6));
        let free = width - 2.0 * margins.side;
        let scale = if plan.planes.is_empty() {
            1.0
        } else {
            (free / size.0).min(width * 1.5 / size.1)
        };
        let (wide, high) = if plan.planes.is_empty() {
            (0.0, 0.0)
        } else {
            (size.0 * scale, size.1 * scale)
        };
        let tall = high.max(margins.least);
        Self {
            scale,
            origin: ((width - wide) / 2.0, margins.top + (tall - high) / 2.0),
            left_and_far: (least.0, most.1),
            drawing: Drawing {
                width,
                height: margins.top + tall + margins.bottom,
                shapes: Vec::new(),
            },
            taken: Vec::new(),
            lines: Vec::new(),
        }
    }

    /// Where a place on plan comes to.
    pub fn at(&self, place: Place) -> Spot {
        (
            self.origin.0 + (place.0 - self.left_and_far.0) * self.scale,
            self.origin.1 + (self.left_and_far.1 - place.1) * self.scale,
        )
    }

    /// Whether a spot lies on a plane, at least `clear` pixels from its edges.
    pub fn is_over(&self, plane: &Plane, spot: Spot, clear: f64) -> bool {
        let place = (
            self.left_and_far.0 + (spot.0 - self.origin.0) / self.scale,
            self.left_and_far.1 - (spot.1 - self.origin.1) / self.scale,
        );
        room(plane, place) * self.scale >= clear
    }

    /// Draws a line that words had better not cover.
    pub fn line(&mut self, from: Spot, to: Spot, pen: Pen) {
        self.lines.push(Turned::line(from, to, pen.wide));
        self.drawing.shapes.push(Shape::Line {
            places: vec![from, to],
            pen,
        });
    }

    /// Draws a filled rim that words may not cover.
    pub fn filled(&mut self, corners: Vec<Spot>, ink: Ink) {
        self.drawing.shapes.push(Shape::Rim {
            corners,
            pen: None,
            fill: Some(ink),
        });
    }

    /// Keeps words off a box.
    pub fn take(&mut self, taken: Turned) {
        self.taken.push(taken);
    }

    /// Whether nothing is in a box that words may not cover.
    pub fn is_free(&self, wanted: &Turned) -> bool {
        wanted.within(self.drawing.width, self.drawing.height)
            && !self.taken.iter().any(|taken| taken.meets(wanted))
    }

    /// How much it costs that a box covers lines.
    pub fn crossed(&self, wanted: &Turned) -> f64 {
        let crossed = self.lines.iter().filter(|line| line.meets(wanted)).count();
        f64::from(u32::try_from(crossed).unwrap_or(u32::MAX)) * CROSSED
    }

    /// Writes words as they are.
    pub fn write(&mut self, words: Lettering) {
        self.taken.push(Turned::of(&words));
        self.drawing.shapes.push(Shape::Words(words));
    }

    /// Writes words in the best of the places they may take, wanted most first; answers whether there was one.
    pub fn write_where_free(&mut self, places: impl IntoIterator<Item = Lettering>) -> bool {
        let best = places
            .into_iter()
            .enumerate()
            .map(|(at, words)| (at, Turned::of(&words), words))
            .filter(|(_, wanted, _)| self.is_free(wanted))
            .map(|(at, wanted, words)| {
                let later = f64::from(u32::try_from(at).unwrap_or(u32::MAX));
                (later + self.crossed(&wanted), words)
            })
            .min_by(|a, b| a.0.total_cmp(&b.0));
        match best {
            Some((_, words)) => {
                self.write(words);
                true
            }
            None => false,
        }
    }
}

/// Level words in the page's ink.
pub fn level(text: impl Into<String>, middle: Spot, size: f64, bold: bool) -> Lettering {
    Lettering {
        text: text.into(),
        middle,
        size,
        turned: 0.0,
        bold,
        ink: Ink::Ink,
    }
}
