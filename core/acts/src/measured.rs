//! A roof as it was measured, told in numbers: areas, lengths of its lines, its height, and what rises from each edge of its outline.

use crate::ActError;
use crate::measure::{self, EdgeAt, Rises, Taken};
use serde::Serialize;
use trade::history::History;
use trade::ids::StructureId;
use trade::roof::{LineKind, Plane, RoofPlan};
use trade::sketch::{Drawn, EdgeIs, SketchEdge};
use trade::takeoff::Spread;
use trade::units::{Area, Length, Pitch};
use trade::words::{Said, Words};

/// What was drawn, and the plan that it gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// What was drawn.
    pub drawn: Drawn,
    /// The plan.
    pub plan: RoofPlan,
    /// Which of its planes rises from which edge.
    rises: Rises,
}

/// A length in both units.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LengthTold {
    /// In feet.
    pub feet: f64,
    /// In metres.
    pub metres: f64,
}

impl From<Length> for LengthTold {
    fn from(length: Length) -> Self {
        Self {
            feet: length.in_feet(),
            metres: length.in_metres(),
        }
    }
}

/// An area in both units.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct AreaTold {
    /// In square feet.
    pub square_feet: f64,
    /// In square metres.
    pub square_metres: f64,
}

impl From<Area> for AreaTold {
    fn from(area: Area) -> Self {
        Self {
            square_feet: area.in_square_feet(),
            square_metres: area.in_square_metres(),
        }
    }
}

/// What rises from one edge of an outline.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct EdgeTold {
    /// Which edge.
    #[serde(flatten)]
    pub at: EdgeAt,
    /// Its length.
    pub length: LengthTold,
    /// What stands at it.
    pub is: EdgeIs,
    /// The letter of the plane that rises from it; none at a gable or wall.
    pub plane: Option<String>,
    /// The pitch of that plane.
    pub pitch: Option<Pitch>,
    /// Its area on plan.
    pub plan_area: Option<AreaTold>,
    /// Its area as it is covered.
    pub slope_area: Option<AreaTold>,
}

/// The lengths of one kind of line.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LineTold {
    /// What it is.
    pub kind: LineKind,
    /// All of them together.
    #[serde(flatten)]
    pub length: LengthTold,
}

/// A roof in numbers.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct MeasuredTold {
    /// Its area on plan.
    pub plan_area: AreaTold,
    /// Its area as it is covered.
    pub slope_area: AreaTold,
    /// The same in squares, with what it may be at the least and the most.
    pub squares: Spread,
    /// From the lowest eave to the highest ridge.
    pub height: LengthTold,
    /// Each kind of line and its length, nothing where there is none.
    pub lengths: Vec<LineTold>,
    /// Each edge of the outline, and the plane that rises from it.
    pub edges: Vec<EdgeTold>,
    /// The planes and lines themselves.
    pub plan: RoofPlan,
}

/// A roof that is of no book.
///
/// # Errors
/// Where the measures give no roof.
pub fn alone(taken: Taken) -> Result<Measured, ActError> {
    let plan = measure::plan_of(&taken)?;
    Ok(Measured {
        rises: Rises::of(&taken.drawn)?,
        drawn: taken.drawn,
        plan,
    })
}

/// The roof of a structure by its last measures.
///
/// # Errors
/// Where nobody measured it.
pub fn known(history: &History, structure: StructureId) -> Result<Measured, ActError> {
    let missing = || ActError::not_there("there-plan");
    let sketch = history.sketch_of(structure).ok_or_else(missing)?;
    let plan = measure::plan(history, structure)?.ok_or_else(missing)?;
    Ok(Measured {
        rises: Rises::of(&sketch.drawn)?,
        drawn: sketch.drawn.clone(),
        plan,
    })
}

impl Measured {
    /// The roof in numbers.
    pub fn told(&self) -> MeasuredTold {
        let plan = &self.plan;
        MeasuredTold {
            plan_area: plan.plan_area().into(),
            slope_area: plan.slope_area().into(),
            squares: plan.squares(),
            height: plan.height.into(),
            lengths: LineKind::ALL
                .into_iter()
                .map(|kind| LineTold {
                    kind,
                    length: plan.length_of(kind).into(),
                })
                .collect(),
            edges: self.edges(),
            plan: plan.clone(),
        }
    }

    fn edges(&self) -> Vec<EdgeTold> {
        let Drawn::Outlines { bodies } = &self.drawn else {
            return Vec::new();
        };
        let mut told = Vec::new();
        for (body, drawn) in bodies.iter().enumerate() {
            for (ring, edges) in drawn.rings.iter().enumerate() {
                for (edge, from) in edges.iter().enumerate() {
                    let at = EdgeAt { body, ring, edge };
                    let plane = self.largest_from(told.len());
                    told.push(edge_told(at, from, &edges[(edge + 1) % edges.len()], plane));
                }
            }
        }
        told
    }

    /// Of the planes that rise from an edge the largest: a roof that stands on it can cut it in two.
    fn largest_from(&self, edge: usize) -> Option<&Plane> {
        let planes = self
            .rises
            .from(edge)
            .filter_map(|at| self.plan.planes.get(at));
        planes.max_by(|one, other| {
            let area = |plane: &Plane| plane.slope_area.in_square_metres();
            area(one).total_cmp(&area(other))
        })
    }

    /// The numbers a person reads: what each is, and how much.
    pub fn rows(&self, words: &Words) -> Vec<(String, String)> {
        let length = |length: Length| words.say(&length_said(length));
        let plan = &self.plan;
        let mut rows = vec![
            (words.text("roof-area"), words.say(&area_said(plan))),
            (words.text("roof-height"), length(plan.height)),
        ];
        rows.extend(
            plan.planes
                .iter()
                .map(|plane| (plane.letter.clone(), words.say(&plane_said(plane)))),
        );
        rows.extend(lines(plan).map(|(kind, all)| (words.text(kind.key()), length(all))));
        rows
    }
}

/// Each kind of line that a plan has, and how long all of them are together.
pub fn lines(plan: &RoofPlan) -> impl Iterator<Item = (LineKind, Length)> + '_ {
    LineKind::ALL
        .into_iter()
        .filter(|kind| plan.lines.iter().any(|line| line.kind == *kind))
        .map(|kind| (kind, plan.length_of(kind)))
}

/// A length to the inch: no roof is known better.
pub fn length_said(length: Length) -> Said {
    let inches = Length::from_inches(length.in_inches().round());
    Said::new("length-alone").with("length", inches)
}

/// What a plan covers, on the slope and on the level.
pub fn area_said(plan: &RoofPlan) -> Said {
    Said::new("roof-squares")
        .with("squares", plan.squares().says(1))
        .with("plan", format!("{:.0}", plan.plan_area().in_square_feet()))
}

/// The pitch and the area of one plane.
pub fn plane_said(plane: &Plane) -> Said {
    Said::new("roof-plane")
        .with("pitch", plane.pitch)
        .with("area", format!("{:.0}", plane.slope_area.in_square_feet()))
}

fn edge_told(at: EdgeAt, from: &SketchEdge, to: &SketchEdge, plane: Option<&Plane>) -> EdgeTold {
    let across = to.x.in_metres() - from.x.in_metres();
    let away = to.y.in_metres() - from.y.in_metres();
    EdgeTold {
        at,
        length: Length::from_metres(across.hypot(away)).into(),
        is: from.is,
        plane: plane.map(|plane| plane.letter.clone()),
        pitch: plane.map(|plane| plane.pitch),
        plan_area: plane.map(|plane| plane.plan_area.into()),
        slope_area: plane.map(|plane| plane.slope_area.into()),
    }
}
