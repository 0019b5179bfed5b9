//! Which plane of a plan is the measure of which slope of the walk: said by the edge that the plane rises from.

use super::{faces, keep_anew, of_structure};
use crate::{ActError, Moment};
use book::Book;
use trade::history::History;
use trade::ids::{SlopeId, StructureId};
use trade::roof::Plane;
use trade::sketch::{Drawn, Sketch, SketchEdge};
use trade::units::Got;
use uuid::Uuid;

/// Says of which slope of the walk a plane is the measure. Several planes may be of one slope.
///
/// # Errors
/// Where the structure has no plan, no such plane or no such slope, or the book cannot be written.
pub fn tie(
    book: &mut Book,
    structure: StructureId,
    plane: usize,
    slope: SlopeId,
    moment: Moment,
) -> Result<(), ActError> {
    let history = of_structure(book, structure)?;
    let known = history
        .slope(slope)
        .filter(|slope| slope.structure == structure)
        .ok_or_else(|| ActError::not_there("there-slope"))?;
    let no_plan = || ActError::not_there("there-plan");
    let mut sketch = history.sketch_of(structure).cloned().ok_or_else(no_plan)?;
    let rises = Rises::of(&sketch.drawn)?;
    if !rises.tie(&mut sketch.drawn, plane, known.id) {
        return Err(ActError::not_there("there-plane"));
    }
    keep_anew(book, sketch, moment)
}

/// Ties planes to slopes: of those that face one way the largest, where none was tied by hand.
///
/// # Errors
/// Where the sketch gives no roof.
pub(crate) fn attach(sketch: &mut Sketch, history: &History) -> Result<(), ActError> {
    let planes = roof::plan(sketch)?.planes;
    let rises = Rises::of(&sketch.drawn)?;
    let mut largest: Vec<(usize, &Plane)> = planes.iter().enumerate().collect();
    largest.sort_by(|(_, one), (_, other)| {
        let area = |plane: &Plane| plane.slope_area.in_square_metres();
        area(other).total_cmp(&area(one))
    });
    let mut taken: Vec<SlopeId> = planes.iter().filter_map(|plane| plane.slope).collect();
    for (number, plane) in largest {
        let slope = history.slopes.iter().find(|slope| {
            slope.structure == sketch.structure
                && slope.side == faces(plane)
                && !taken.contains(&slope.id)
        });
        if let Some(slope) = slope
            && !rises.is_tied(&mut sketch.drawn, number)
            && rises.tie(&mut sketch.drawn, number, slope.id)
        {
            taken.push(slope.id);
        }
    }
    Ok(())
}

/// The edges that the planes of a plan rise from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Rises(Vec<Vec<usize>>);

impl Rises {
    /// An edge hands its slope on to the plane that rises from it, and nothing else of the plan hangs on it. So each edge is given a slope of
    /// its own, and the planes tell from which they rise; where edges in one line carry one plane it names the first, and the others the next time.
    ///
    /// # Errors
    /// Where what was drawn gives no roof.
    pub(crate) fn of(drawn: &Drawn) -> Result<Self, ActError> {
        let mut drawn = drawn.clone();
        let mut rises = Vec::new();
        let mut open: Vec<bool> = vec![true; slopes_of(&mut drawn).len()];
        loop {
            for (edge, slope) in slopes_of(&mut drawn).into_iter().enumerate() {
                *slope = open[edge].then(|| name_of(edge));
            }
            let planes = roof::plan_of(&drawn, Got::Tape, Got::Tape)?.planes;
            rises.resize(planes.len(), Vec::new());
            let mut found = false;
            for (plane, edges) in planes.iter().zip(&mut rises) {
                if let Some(edge) = plane.slope.and_then(edge_named) {
                    edges.push(edge);
                    found |= std::mem::take(&mut open[edge]);
                }
            }
            if !found {
                return Ok(Self(rises));
            }
        }
    }

    /// The planes that rise from an edge, in the order of the plan: the edges are counted as they were drawn, ring by ring.
    pub(crate) fn from(&self, edge: usize) -> impl Iterator<Item = usize> + '_ {
        (0..self.0.len()).filter(move |plane| self.0[*plane].contains(&edge))
    }

    /// Whether a plane is the measure of a slope.
    fn is_tied(&self, drawn: &mut Drawn, plane: usize) -> bool {
        let slopes = slopes_of(drawn);
        self.0[plane].iter().any(|edge| slopes[*edge].is_some())
    }

    /// Makes a plane the measure of a slope. Whether there is such a plane.
    fn tie(&self, drawn: &mut Drawn, plane: usize, slope: SlopeId) -> bool {
        let Some(edges) = self.0.get(plane).filter(|edges| !edges.is_empty()) else {
            return false;
        };
        for (edge, of) in slopes_of(drawn).into_iter().enumerate() {
            if edges.contains(&edge) {
                *of = Some(slope);
            }
        }
        true
    }
}

/// The slope of each edge that was drawn, or of each plane that was typed in.
fn slopes_of(drawn: &mut Drawn) -> Vec<&mut Option<SlopeId>> {
    fn of_edge(edge: &mut SketchEdge) -> &mut Option<SlopeId> {
        &mut edge.slope
    }
    match drawn {
        Drawn::Outlines { bodies } => {
            let rings = bodies.iter_mut().flat_map(|body| &mut body.rings);
            rings.flatten().map(of_edge).collect()
        }
        Drawn::Legs { legs, standing, .. } => {
            let rings = standing.iter_mut().flat_map(|body| &mut body.rings);
            let legs = legs.iter_mut().map(|leg| &mut leg.slope);
            legs.chain(rings.flatten().map(of_edge)).collect()
        }
        Drawn::Planes { planes } => planes.iter_mut().map(|plane| &mut plane.slope).collect(),
    }
}

fn name_of(edge: usize) -> SlopeId {
    SlopeId(Uuid::from_u128(edge as u128))
}

fn edge_named(slope: SlopeId) -> Option<usize> {
    usize::try_from(slope.0.as_u128()).ok()
}
