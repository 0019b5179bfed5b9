//! What stands on a roof: a dormer told by its face, put on the roof as it is drawn or taken off it again.

use crate::{ActError, Moment, measure, measured};
use book::Book;
use trade::history::History;
use trade::ids::StructureId;
use trade::property::Side;
use trade::roof::RoofPlan;
use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
use trade::units::{Length, Pitch};
use trade::words::Said;

/// What roof a dormer has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shape {
    /// A gable over its face.
    #[default]
    Gable,
    /// One plane that falls to its face.
    Shed,
    /// Hipped over its face.
    Hip,
}

impl Shape {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Gable, Self::Shed, Self::Hip];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Gable => "dormer-gable",
            Self::Shed => "dormer-shed",
            Self::Hip => "dormer-hip",
        }
    }

    /// What stands at its face, its right side, its back and its left side.
    fn edges(self) -> [EdgeIs; 4] {
        let (eave, gable) = (EdgeIs::Hip, EdgeIs::Gable);
        match self {
            Self::Gable => [gable, eave, gable, eave],
            Self::Shed => [eave, gable, gable, gable],
            Self::Hip => [eave, eave, gable, eave],
        }
    }
}

/// A dormer as it is told.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dormer {
    /// Where its face looks.
    pub faces: Side,
    /// Its roof.
    pub shape: Shape,
    /// The middle of its face: to the right of the plan's left front corner.
    pub x: Length,
    /// The middle of its face: away from the street.
    pub y: Length,
    /// Along its face, from wall to wall.
    pub wide: Length,
    /// How far back it runs from its face; `None` where it runs back into the slope.
    pub deep: Option<Length>,
    /// How high its eaves lie above the slope at its face.
    pub above: Length,
    /// The pitch of its roof.
    pub pitch: Pitch,
    /// How far its roof stands out.
    pub overhang: Length,
}

/// Puts a dormer on a roof.
///
/// # Errors
/// Where the roof was not drawn by an outline, the dormer stands on none of its slopes, is not seen above them or runs through to the other side, or
/// the book cannot be written; what was measured before still stands.
pub fn stand(
    book: &mut Book,
    structure: StructureId,
    dormer: &Dormer,
    moment: Moment,
) -> Result<(), ActError> {
    redrawn(book, structure, moment, |drawn, plan| {
        let body = body(dormer, plan)?;
        match drawn {
            Drawn::Outlines { bodies } => bodies.push(body),
            Drawn::Legs { standing, .. } => standing.push(body),
            Drawn::Planes { .. } => return Err(ActError::not_there("there-outline")),
        }
        Ok(())
    })
}

/// Takes a dormer off a roof, by its place among those that [`standing`] gives.
///
/// # Errors
/// Where there is none, another stands on it, or the book cannot be written.
pub fn take_off(
    book: &mut Book,
    structure: StructureId,
    number: usize,
    moment: Moment,
) -> Result<(), ActError> {
    redrawn(book, structure, moment, |drawn, _| {
        let bodies = match drawn {
            Drawn::Outlines { bodies } => bodies,
            Drawn::Legs { standing, .. } => standing,
            Drawn::Planes { .. } => return Err(ActError::not_there("there-dormer")),
        };
        let mut on_roof = (0..bodies.len()).filter(|&at| bodies[at].above_roof.is_some());
        let at = on_roof
            .nth(number)
            .ok_or_else(|| ActError::not_there("there-dormer"))?;
        bodies.remove(at);
        Ok(())
    })
}

/// What stands on a roof, in the order in which it was drawn.
pub fn standing(history: &History, structure: StructureId) -> Vec<&Body> {
    let bodies = match history.sketch_of(structure).map(|sketch| &sketch.drawn) {
        Some(Drawn::Outlines { bodies }) => bodies.as_slice(),
        Some(Drawn::Legs { standing, .. }) => standing.as_slice(),
        _ => &[],
    };
    bodies
        .iter()
        .filter(|body| body.above_roof.is_some())
        .collect()
}

/// Draws a roof anew, changed.
fn redrawn(
    book: &mut Book,
    structure: StructureId,
    moment: Moment,
    change: impl FnOnce(&mut Drawn, &RoofPlan) -> Result<(), ActError>,
) -> Result<(), ActError> {
    let history = measure::of_structure(book, structure)?;
    let no_plan = || ActError::not_there("there-plan");
    let mut sketch = history.sketch_of(structure).cloned().ok_or_else(no_plan)?;
    let plan = measure::planned(&sketch, &history)?;
    change(&mut sketch.drawn, &plan)?;
    measure::attach(&mut sketch, &history)?;
    measure::planned(&sketch, &history)?;
    measure::keep_anew(book, sketch, moment)
}

/// A depth may be so much more than what was found back to the top, in metres: the top is found in steps of 2 cm.
const GIVE: f64 = 0.025;

/// The outline of a dormer: its face first, then round against the clock.
fn body(dormer: &Dormer, plan: &RoofPlan) -> Result<Body, ActError> {
    let (x, y) = (dormer.x.in_metres(), dormer.y.in_metres());
    let out: (f64, f64) = match dormer.faces {
        Side::Front => (0.0, -1.0),
        Side::Right => (1.0, 0.0),
        Side::Rear => (0.0, 1.0),
        Side::Left => (-1.0, 0.0),
    };
    let along = (-out.1, out.0);
    let half = dormer.wide.in_metres() / 2.0;
    let top = roof::back_to_the_top(plan, (x, y), out);
    let deep = dormer.deep.map_or(top, Length::in_metres);
    if top > 0.0 && deep > top + GIVE {
        let top = measured::length_said(Length::from_metres(top));
        let problem = Said::new("wrong-too-deep").with("top", top);
        return Err(ActError::wrong("deep", problem));
    }
    let corner = |aside: f64, back: f64| {
        (
            x + along.0 * aside - out.0 * back,
            y + along.1 * aside - out.1 * back,
        )
    };
    let corners = [
        corner(-half, 0.0),
        corner(half, 0.0),
        corner(half, deep),
        corner(-half, deep),
    ];
    let back = 2;
    let edges = corners.into_iter().zip(dormer.shape.edges());
    let rim = edges
        .enumerate()
        .map(|(at, ((x, y), is))| SketchEdge {
            x: Length::from_metres(x),
            y: Length::from_metres(y),
            is,
            pitch: None,
            // Its back ends in the slope: nothing stands out there.
            overhang: (at == back).then_some(Length::ZERO),
            slope: None,
        })
        .collect();
    Ok(Body {
        rings: vec![rim],
        of: OutlineOf::Walls,
        pitch: dormer.pitch,
        overhang: dormer.overhang,
        raised: Length::ZERO,
        above_roof: Some(dormer.above),
    })
}
