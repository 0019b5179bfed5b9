//! Why a structure is past repairing: one reason for each ground.

use super::sections::{Irc, irc};
use super::{Case, reason, saying};
use crate::course::Ground;
use trade::verdict::{Question, Reason, Source, StandsOn, Strength};
use trade::words::Said;

/// The reason that one ground gives.
pub fn ground(case: &Case<'_>, ground: Ground) -> Option<Reason> {
    match ground {
        Ground::Is(question) => fact(case, question),
        Ground::Layers => Some(layers(case)),
        Ground::MustLast => Some(must_last(case)),
        Ground::OnlyACovering => Some(only_a_covering(case)),
    }
}

fn fact(case: &Case<'_>, question: Question) -> Option<Reason> {
    let policy = case.as_of.rules.policy;
    match question {
        Question::TooLow => case.because(
            question,
            "too-low",
            irc(Irc::ShingleSlope, case.as_of.rules.profile.edition),
            Strength::Requires,
        ),
        Question::CoveringDone if case.answers.get(Question::TwoLayers).is_yes() => case.because(
            question,
            "covering-done-over-layers",
            Source::Evidence,
            Strength::Requires,
        ),
        Question::CoveringDone => case.because(
            question,
            "covering-done",
            Source::Evidence,
            Strength::Requires,
        ),
        Question::DeckWetBroad => case.because(
            question,
            "deck-wet-broad",
            Source::Evidence,
            Strength::Requires,
        ),
        Question::RebuiltStep => case.because(
            question,
            "rebuilt-step",
            Source::Practice,
            Strength::Requires,
        ),
        Question::Brittle => {
            case.because(question, "brittle", Source::Practice, Strength::Requires)
        }
        Question::Unmatchable => {
            case.because(question, "unmatchable", Source::Practice, Strength::Advises)
        }
        Question::ManyPlaces => {
            case.because(question, "many-places", Source::Practice, Strength::Advises)
        }
        Question::PatchedOften => {
            let fact = case.facts.fact(question);
            fact.answer.is_yes().then(|| {
                saying(
                    "patched-often",
                    Said::new("reason-patched-often").with("limit", policy.patch_limit),
                    Source::HousePolicy,
                    Strength::Requires,
                    fact.stands_on(),
                )
            })
        }
        _ => None,
    }
}

fn layers(case: &Case<'_>) -> Reason {
    let limit = case.situation.allowed.no_repair_layers;
    let question = if limit >= 3 {
        Question::ThreeLayers
    } else {
        Question::TwoLayers
    };
    saying(
        "layers-no-repair",
        Said::new("reason-layers-no-repair").with("limit", limit),
        Source::HousePolicy,
        Strength::Requires,
        case.facts.fact(question).stands_on(),
    )
}

fn must_last(case: &Case<'_>) -> Reason {
    reason(
        "must-last",
        Source::Owner,
        Strength::Requires,
        vec![StandsOn::Visit(case.as_of.visit.id)],
    )
}

fn only_a_covering(case: &Case<'_>) -> Reason {
    let marks = case
        .faults
        .iter()
        .filter(|fault| fault.only_a_covering_cures())
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    reason(
        "only-a-covering",
        Source::Evidence,
        Strength::Requires,
        marks,
    )
}
