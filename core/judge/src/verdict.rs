//! What to do with a structure: its steps in order of time, why, what is refused, and how far that reaches.

use crate::as_of::AsOf;
use crate::facts::{Facts, as_the_caller_said};
use crate::next_look::{Walk, next_look};
use crate::rules::{Case, found, limits, safety};
use crate::{Rules, course, faults, refused, situation, steps};
use jiff::civil::Date;
use trade::history::History;
use trade::ids::{StructureId, VisitId};
use trade::verdict::Verdict;

/// Judges one structure as of one visit.
///
/// A visit or structure that is not in the record, or a structure that was taken down, has no steps.
pub fn verdict(
    history: &History,
    structure: StructureId,
    visit: VisitId,
    today: Date,
    rules: &Rules<'_>,
) -> Verdict {
    let stands = history
        .structure(structure)
        .is_some_and(|structure| structure.gone.is_none_or(|gone| gone > today));
    match AsOf::read(history, structure, visit, rules) {
        Some(as_of) if stands => judge(&as_of, today),
        _ => nothing_there(structure, today),
    }
}

fn nothing_there(structure: StructureId, today: Date) -> Verdict {
    Verdict {
        structure,
        on: today,
        steps: Vec::new(),
        refused: Vec::new(),
        unseen: Vec::new(),
        unknown: Vec::new(),
        next_look: None,
        cautions: Vec::new(),
        limits: Vec::new(),
    }
}

fn judge(as_of: &AsOf<'_>, today: Date) -> Verdict {
    let faults = faults::faults(as_of);
    let facts = Facts::gather(as_of, &faults);
    let situation = situation::read(as_of, &faults, &facts);
    let case = Case {
        as_of,
        faults: &faults,
        answers: as_the_caller_said(as_of, facts.answers()),
        facts: &facts,
        situation,
    };
    let decision = course::decide(&case.situation, &case.answers);
    let (steps, left) = steps::steps(&case, &decision, found::about_parts(&case), today);
    let walk = Walk {
        catalogue: as_of.rules.catalogue,
        settled_at: &facts.settled_at,
    };
    let mut limits = limits::limits(&case, &decision);
    limits.extend(left.into_iter().map(|found| found.reason));
    Verdict {
        structure: as_of.structure,
        on: today,
        refused: refused::refused(&case, &decision),
        unseen: as_of.unseen.iter().map(|part| part.id).collect(),
        unknown: decision.owed,
        next_look: next_look(&case.situation, &case.answers, &walk),
        cautions: safety::cautions(&case, &steps),
        steps,
        limits,
    }
}
