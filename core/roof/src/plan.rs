//! From a sketch to the plan of its roof.

use crate::dormer;
use crate::error::ShapeError;
use crate::outline;
use crate::planes::{self, Raised};
use crate::survey;
use crate::typed;
use trade::roof::RoofPlan;
use trade::sketch::{Body, Drawn, Leg, OutlineOf, Sketch, SketchEdge};
use trade::units::{Got, Length, Pitch};

/// The plan of a roof.
///
/// # Errors
/// Where its measures give no roof; says where.
pub fn plan(sketch: &Sketch) -> Result<RoofPlan, ShapeError> {
    let mut plan = plan_of(&sketch.drawn, sketch.got, sketch.pitch_got)?;
    plan.structure = Some(sketch.structure);
    Ok(plan)
}

/// The plan of what was drawn, from how its lengths and its pitches were got.
///
/// # Errors
/// Where it gives no roof; says where.
pub fn plan_of(drawn: &Drawn, got: Got, pitch_got: Got) -> Result<RoofPlan, ShapeError> {
    let (raised, length_within) = match drawn {
        Drawn::Outlines { bodies } => (of_bodies(bodies.iter())?, got.within()),
        Drawn::Legs {
            legs,
            of,
            pitch,
            overhang,
            standing,
        } => {
            let closed = survey::close(legs, got)?;
            let body = body(legs, &closed, (*of, *pitch, *overhang));
            (
                of_bodies(std::iter::once(&body).chain(standing))?,
                got.within().max(closed.misclosure.share),
            )
        }
        Drawn::Planes { planes } => (typed::planes(planes)?, got.within()),
    };
    let raised = raised.settled().lettered();
    Ok(RoofPlan {
        structure: None,
        got,
        length_within,
        pitch_within: pitch_within(&raised, pitch_got),
        height: raised.height(),
        planes: raised.planes,
        lines: raised.lines,
        outlines: raised.outlines,
        walls: raised.walls,
    })
}

/// The outline of a closed traverse.
fn body(
    legs: &[Leg],
    closed: &survey::Closed,
    (of, pitch, overhang): (OutlineOf, Pitch, Length),
) -> Body {
    let edge = |(leg, &(x, y)): (&Leg, &(Length, Length))| SketchEdge {
        x,
        y,
        is: leg.is,
        pitch: leg.pitch,
        overhang: leg.overhang,
        slope: leg.slope,
    };
    Body {
        rings: vec![legs.iter().zip(&closed.corners).map(edge).collect()],
        of,
        pitch,
        overhang,
        raised: Length::ZERO,
        above_roof: None,
    }
}

fn of_bodies<'a>(bodies: impl Iterator<Item = &'a Body>) -> Result<Raised, ShapeError> {
    let mut all = Raised::default();
    for (number, body) in bodies.enumerate() {
        let outline = outline::ready(number, body)?;
        match body.above_roof {
            None => all.join(planes::raise(&outline)?),
            Some(above) => all = dormer::stand(all, &outline, above, number)?,
        }
    }
    if all.planes.is_empty() {
        return Err(ShapeError::Nothing);
    }
    Ok(all)
}

/// Half-width of the range of the slope factor √(1 + m²), as a share of it: a pitch m that is off by a share of itself moves it by
/// m²/(1 + m²) times that share. The steepest plane tells.
fn pitch_within(raised: &Raised, got: Got) -> f64 {
    let share = |pitch: Pitch| {
        let squared = (pitch.in_twelfths() / 12.0).powi(2);
        squared / (1.0 + squared) * got.within()
    };
    raised
        .planes
        .iter()
        .map(|plane| share(plane.pitch))
        .fold(0.0, f64::max)
}
