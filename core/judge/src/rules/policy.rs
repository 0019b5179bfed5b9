//! The firm's own policy: a source of its own, named as such, never put forward as code.

use super::{Case, Completed, Rule, reason};
use trade::verdict::{Question, Reason, Source, Strength};

/// The firm sells no re-cover.
pub fn sells_no_recover(case: &Case<'_>) -> Option<Reason> {
    (!case.situation.allowed.sells_recover)
        .then(|| reason(Rule::RecoverNotSold, Source::HousePolicy, Strength::Forbids))
}

/// So many layers that the firm makes safe and repairs no more.
pub fn layers_no_repair(case: &Case<'_>) -> Reason {
    let limit = case.situation.allowed.no_repair_layers;
    let question = if limit >= 3 {
        Question::ThreeLayers
    } else {
        Question::TwoLayers
    };
    reason(
        Rule::LayersNoRepair,
        Source::HousePolicy,
        Strength::Requires,
    )
    .with("limit", limit)
    .on(case.facts.fact(question).stands_on())
}

/// One cause was patched as often as the firm will.
pub fn patched_often(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::PatchedOften,
        Rule::PatchedOften,
        Source::HousePolicy,
        Strength::Requires,
    )
    .map(|reason| reason.with("limit", case.as_of.rules.policy.patch_limit))
}

/// Code does not forbid repairing over two layers; the firm does it, and says that others would not.
pub fn two_layers_repair(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::TwoLayers,
        Rule::TwoLayersRepair,
        Source::HousePolicy,
        Strength::Advises,
    )
}
