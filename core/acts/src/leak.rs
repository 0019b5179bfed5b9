//! Where water that is seen inside comes in: the known parts of a structure, traced on its plan.

use crate::{ActError, measure};
use roof::draw::{Marks, Picture, Stained};
use trade::catalogue::{Catalogue, Kind};
use trade::history::History;
use trade::ids::StructureId;
use trade::leak::{Candidate, LetsIn, Lies, Stain, Suspected};
use trade::mark::{Mark, MeasureOf};
use trade::property::Part;
use trade::roof::{LineKind, Plane, RoofPlan};
use trade::units::Length;
use trade::words::{Said, Words};

/// How wide and deep what stands through a roof is taken to be where nobody measured it. Common practice, no source.
const ACROSS: Length = Length::inches(24);

/// The suspects for a stain under one structure, the likeliest first.
///
/// # Errors
/// Where the structure was not measured, or the stain is not under its roof.
pub fn suspects(
    history: &History,
    structure: StructureId,
    stain: &Stain,
) -> Result<Vec<Suspected>, ActError> {
    let plan =
        measure::plan(history, structure)?.ok_or_else(|| ActError::not_there("there-plan"))?;
    let candidates = candidates(history, structure, &plan);
    Ok(roof::leak::suspects(&plan, stain, &candidates)?)
}

/// The parts of a structure that stand on a plane of its plan. One whose slope was not measured cannot be traced.
fn candidates(history: &History, structure: StructureId, plan: &RoofPlan) -> Vec<Candidate> {
    history
        .parts_of(structure)
        .filter_map(|part| candidate(history, plan, part))
        .collect()
}

fn candidate(history: &History, plan: &RoofPlan, part: &Part) -> Option<Candidate> {
    let kind = Catalogue::standard().kind(&part.kind)?;
    let mark = history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part.id && mark.is_real());
    let plane = plan
        .planes
        .iter()
        .position(|plane| plane.slope.is_some() && plane.slope == part.slope)?;
    Some(Candidate {
        part: part.id,
        name: Said::new(part.kind.message()),
        stop: kind.stop.clone(),
        plane,
        lies: lies(plan, plane, kind, part, mark),
        rung: mark.and_then(|mark| mark.condition.rung()),
        lets_in: lets_in(kind),
    })
}

/// In which weather a part of one kind lets water in, where it is not whole. Common practice, no source.
fn lets_in(kind: &Kind) -> LetsIn {
    match kind.stop.as_str() {
        "eave" => LetsIn {
            thaw: true,
            ..LetsIn::default()
        },
        "ridge" | "rake" => LetsIn {
            rain: false,
            driven: true,
            thaw: false,
        },
        _ => LetsIn::default(),
    }
}

/// How a part lies: where somebody put it, else along the line that its stop is about, else in the middle of its slope.
fn lies(plan: &RoofPlan, at: usize, kind: &Kind, part: &Part, mark: Option<&Mark>) -> Lies {
    let plane = &plan.planes[at];
    let placed = part.at.map(|at| (at.x.in_metres(), at.y.in_metres()));
    let measure = |of| mark.and_then(|mark| mark.measure(of)).map(|one| one.value);
    if is_through(kind) {
        return Lies::Through {
            at: placed.unwrap_or_else(|| middle(plane)),
            wide: measure(MeasureOf::Width).unwrap_or(ACROSS),
            deep: ACROSS,
        };
    }
    match (placed, along(plan, at, kind)) {
        (Some(at), _) => Lies::Spot { at },
        (None, Some((from, to))) => Lies::Along { from, to },
        (None, None) => Lies::Spot { at: middle(plane) },
    }
}

fn is_through(kind: &Kind) -> bool {
    matches!(kind.stop.as_str(), "chimneys" | "skylights")
}

/// The longest line of a plane that parts of one kind lie along.
fn along(plan: &RoofPlan, plane: usize, kind: &Kind) -> Option<((f64, f64), (f64, f64))> {
    let wanted = measure::near(kind)?;
    let or_else = match wanted {
        LineKind::Ridge => LineKind::Hip,
        LineKind::Step => LineKind::Wall,
        other => other,
    };
    plan.lines
        .iter()
        .filter(|line| line.planes.contains(&plane) && [wanted, or_else].contains(&line.kind))
        .max_by_key(|line| line.length)
        .map(|line| ((line.from.x, line.from.y), (line.to.x, line.to.y)))
}

#[allow(clippy::cast_precision_loss, reason = "a roof has few corners")]
fn middle(plane: &Plane) -> (f64, f64) {
    let count = plane.corners.len().max(1) as f64;
    let sum = plane.corners.iter().fold((0.0, 0.0), |sum, corner| {
        (sum.0 + corner.x, sum.1 + corner.y)
    });
    (sum.0 / count, sum.1 / count)
}

/// The ways of how many suspects are drawn: more of them hide the roof.
pub const SHOWN: usize = 3;

/// The plan with a stain and the ways of the water from its first suspects.
///
/// # Errors
/// Where the structure was not measured.
pub fn pictured(
    history: &History,
    structure: StructureId,
    stain: &Stain,
    suspects: &[Suspected],
    words: &Words,
) -> Result<Picture, ActError> {
    let plan =
        measure::plan(history, structure)?.ok_or_else(|| ActError::not_there("there-plan"))?;
    let marks = Marks {
        stain: Some(Stained {
            at: stain.at,
            within: stain.within.in_metres(),
        }),
        water: suspects
            .iter()
            .take(SHOWN)
            .map(|one| one.way.clone())
            .collect(),
        below: Some(Said::new("roof-street-below")),
        ..Marks::default()
    };
    Ok(roof::draw::plan(&plan, &marks, words, roof::draw::PHONE))
}
