//! What to do with a structure: its steps in order of time, why, what is refused, and how far that reaches.

use crate::as_of::AsOf;
use crate::course::{self, Decision, Sight};
use crate::facts::Facts;
use crate::rules::sections::{Irc, irc};
use crate::rules::{Case, reason, recover};
use crate::{Rules, faults, next_look, situation, steps};
use jiff::civil::Date;
use trade::history::History;
use trade::ids::{StructureId, VisitId};
use trade::verdict::{
    Course, Narrowed, Question, Reason, Refused, Source, StandsOn, Strength, Verdict,
};

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
        answers: facts.answers(),
        facts: &facts,
        situation,
    };
    let decision = course::decide(&case.situation, &case.answers);
    Verdict {
        structure: as_of.structure,
        on: today,
        steps: steps::steps(&case, &decision, today),
        refused: refused(&case, &decision),
        unseen: as_of.unseen.iter().map(|part| part.id).collect(),
        unknown: decision.owed.clone(),
        next_look: next_look::next_look(&case.situation, &case.answers, as_of.rules.catalogue),
        cautions: Vec::new(),
        limits: limits(&case, &decision),
    }
}

fn refused(case: &Case<'_>, decision: &Decision) -> Vec<Refused> {
    let mut refused = Vec::new();
    if matches!(decision.course, Course::Repair | Course::TearOff) {
        refused.extend(recover_refused(case, decision));
    }
    refused
}

fn recover_refused(case: &Case<'_>, decision: &Decision) -> Option<Refused> {
    let bars: Vec<Reason> = recover::BARS.iter().filter_map(|bar| bar(case)).collect();
    let forbidden = !bars.is_empty();
    if !forbidden && decision.course != Course::TearOff {
        return None;
    }
    Some(Refused {
        course: Course::Recover,
        narrowed: Narrowed::Whole,
        forbidden,
        reasons: if forbidden {
            bars
        } else {
            recover::against(case)
        },
    })
}

fn limits(case: &Case<'_>, decision: &Decision) -> Vec<Reason> {
    let mut limits = Vec::new();
    let seen_from = match case.situation.sight {
        Sight::Nothing => Some("limit-nothing-seen"),
        Sight::Afar => Some("limit-seen-from-afar"),
        Sight::Close => None,
    };
    limits.extend(seen_from.map(|rule| {
        reason(
            rule,
            Source::Evidence,
            Strength::Forbids,
            vec![StandsOn::Visit(case.as_of.visit.id)],
        )
    }));
    if decision.course != Course::TearOff {
        limits.extend(case.because(
            Question::TwoLayers,
            "limit-next-is-tear-off",
            irc(Irc::RecoverLayers, case.as_of.rules.profile.edition),
            Strength::Requires,
        ));
    }
    limits
}
