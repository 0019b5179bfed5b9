//! Why a repair is not enough: one reason for each ground.

use super::{Case, Completed, Rule, policy, reason};
use crate::course::Ground;
use crate::faults::Fault;
use trade::verdict::{Question, Reason, Source, StandsOn, Strength};

/// The reason that one ground gives.
pub fn ground(case: &Case<'_>, ground: Ground) -> Option<Reason> {
    match ground {
        Ground::Is(question) => fact(case, question),
        Ground::Layers => Some(policy::layers_no_repair(case)),
        Ground::MustLast => {
            Some(reason(Rule::MustLast, Source::Owner, Strength::Requires).on(vec![case.visit()]))
        }
        Ground::OnlyACovering => Some(only_a_covering(case)),
    }
}

fn fact(case: &Case<'_>, question: Question) -> Option<Reason> {
    let because = |rule, source, strength| case.because(question, rule, source, strength);
    match question {
        Question::TooLow => because(Rule::TooLow, case.too_low_by(), Strength::Requires),
        Question::CoveringDone if case.answers.get(Question::TwoLayers).is_yes() => because(
            Rule::CoveringDoneOverLayers,
            Source::Evidence,
            Strength::Requires,
        ),
        Question::CoveringDone => because(Rule::CoveringDone, Source::Evidence, Strength::Requires),
        Question::DeckWetBroad => because(Rule::DeckWetBroad, Source::Evidence, Strength::Requires),
        Question::RebuiltStep => because(Rule::RebuiltStep, Source::Practice, Strength::Requires),
        Question::Brittle => because(Rule::Brittle, Source::Practice, Strength::Requires),
        Question::Unmatchable => because(Rule::Unmatchable, Source::Practice, Strength::Advises),
        Question::ManyPlaces => because(Rule::ManyPlaces, Source::Practice, Strength::Advises),
        Question::PatchedOften => policy::patched_often(case),
        _ => None,
    }
}

fn only_a_covering(case: &Case<'_>) -> Reason {
    let marks = case
        .faults
        .iter()
        .filter(|fault| Fault::only_a_covering_cures(fault))
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    reason(Rule::OnlyACovering, Source::Evidence, Strength::Requires).on(marks)
}
