//! The walk: which stops and parts a visit has to answer. The order advises; every stop is one tap away.

use serde::{Deserialize, Serialize};
use trade::catalogue::{Catalogue, Kind, KindKey, StopKey};
use trade::history::History;
use trade::ids::{MarkId, PartId, SlopeId, StructureId};
use trade::mark::{Condition, Mark, NotSeen};
use trade::property::Part;
use trade::visit::{Scope, Visit};

/// A part that stands, or a place where one of a kind is expected and will be born with its first mark.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Spot {
    /// A part that is known.
    Known {
        /// The part.
        part: PartId,
    },
    /// A part that has no mark yet.
    Unborn {
        /// The structure.
        structure: StructureId,
        /// The slope, where its kind belongs to one.
        slope: Option<SlopeId>,
        /// The kind.
        kind: KindKey,
        /// Which one, where there are several.
        which: Option<String>,
    },
}

/// One thing to look at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// Where.
    pub spot: Spot,
    /// Its kind.
    pub kind: KindKey,
    /// The mark of this visit, if it has one.
    pub mark: Option<MarkId>,
}

/// A stop with what is to be looked at there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlannedStop {
    /// The stop.
    pub stop: StopKey,
    /// What is to be looked at, in order.
    pub spots: Vec<Planned>,
}

impl PlannedStop {
    /// How many are answered.
    pub fn answered(&self) -> usize {
        self.spots
            .iter()
            .filter(|planned| planned.mark.is_some())
            .count()
    }

    /// Whether all are answered.
    pub fn is_done(&self) -> bool {
        self.answered() == self.spots.len()
    }
}

/// The walk over one structure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Walk {
    /// The structure.
    pub structure: StructureId,
    /// The stops in order; those without anything to look at are left out.
    pub stops: Vec<PlannedStop>,
}

/// The walks of a visit, one a structure.
pub fn plan(history: &History, visit: &Visit, catalogue: &Catalogue) -> Vec<Walk> {
    visit
        .structures
        .iter()
        .map(|&structure| Walk {
            structure,
            stops: catalogue
                .stops()
                .iter()
                .map(|stop| PlannedStop {
                    stop: stop.key.clone(),
                    spots: spots(history, visit, structure, &stop.key, catalogue),
                })
                .filter(|stop| !stop.spots.is_empty())
                .collect(),
        })
        .collect()
}

fn spots(
    history: &History,
    visit: &Visit,
    structure: StructureId,
    stop: &StopKey,
    catalogue: &Catalogue,
) -> Vec<Planned> {
    catalogue
        .kinds()
        .iter()
        .filter(|kind| &kind.stop == stop)
        .flat_map(|kind| of_kind(history, visit, structure, kind, catalogue))
        .collect()
}

fn of_kind(
    history: &History,
    visit: &Visit,
    structure: StructureId,
    kind: &Kind,
    catalogue: &Catalogue,
) -> Vec<Planned> {
    let in_scope = in_scope(visit, kind, catalogue);
    let parts: Vec<&Part> = history
        .parts_of(structure)
        .filter(|part| part.kind == kind.key && stands(history, part, visit))
        .collect();
    let mut planned: Vec<Planned> = parts
        .iter()
        .map(|part| Planned {
            spot: Spot::Known { part: part.id },
            kind: kind.key.clone(),
            mark: history
                .mark_on(part.id, visit.id)
                .filter(|mark| is_answer(mark))
                .map(|mark| mark.id),
        })
        .filter(|planned| in_scope || planned.mark.is_some())
        .collect();
    if in_scope && kind.always {
        planned.extend(expected(history, structure, kind, &parts));
    }
    planned
}

fn expected(
    history: &History,
    structure: StructureId,
    kind: &Kind,
    parts: &[&Part],
) -> Vec<Planned> {
    let slopes: Vec<Option<SlopeId>> = if kind.on_slope {
        history
            .slopes
            .iter()
            .filter(|slope| slope.structure == structure)
            .map(|slope| Some(slope.id))
            .collect()
    } else {
        vec![None]
    };
    slopes
        .into_iter()
        .filter(|slope| !parts.iter().any(|part| part.slope == *slope))
        .map(|slope| Planned {
            spot: Spot::Unborn {
                structure,
                slope,
                kind: kind.key.clone(),
                which: None,
            },
            kind: kind.key.clone(),
            mark: None,
        })
        .collect()
}

/// A mark that so far holds only a picture or words answers nothing.
fn is_answer(mark: &Mark) -> bool {
    mark.condition
        != Condition::NotSeen {
            why: NotSeen::NotReached,
        }
}

/// A part that an earlier visit saw to be gone is not looked for again.
fn stands(history: &History, part: &Part, visit: &Visit) -> bool {
    history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part.id && mark.visit != visit.id)
        .is_none_or(|mark| mark.condition != Condition::Gone)
}

fn in_scope(visit: &Visit, kind: &Kind, catalogue: &Catalogue) -> bool {
    match visit.scope {
        Scope::WholeRoof => true,
        Scope::QuickLook => catalogue
            .stops()
            .iter()
            .any(|stop| stop.key == kind.stop && stop.quick),
        Scope::RequestOnly => visit.request.asks.iter().any(|ask| {
            catalogue
                .kind(&ask.kind)
                .is_some_and(|asked| asked.stop == kind.stop)
        }),
    }
}
