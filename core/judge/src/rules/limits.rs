//! How far a verdict reaches: from where the structure was seen, what was not, and what it says of a later covering.

use super::sections::{Irc, document};
use super::{Case, Completed, Rule, reason};
use crate::as_of::AsOf;
use crate::course::{Decision, Sight};
use crate::{installer, profile};
use trade::property::{Part, StructureKind};
use trade::verdict::{Course, Question, Reason, Source, StandsOn, Strength};
use trade::visit::{Scope, WetWhen};
use trade::words::Said;

/// A rule that says how far a verdict reaches.
type Limit = fn(&Case<'_>, &Decision) -> Option<Reason>;

const ALL: [Limit; 12] = [
    seen_from,
    scope,
    slopes_not_seen,
    earlier_look,
    attic_not_seen,
    layers_not_counted,
    layers_differ,
    next_is_tear_off,
    water_not_proved,
    dry_cold,
    warranty,
    sale,
];

/// All that limits a verdict.
pub fn limits(case: &Case<'_>, decision: &Decision) -> Vec<Reason> {
    ALL.iter()
        .filter_map(|limit| limit(case, decision))
        .collect()
}

fn seen_from(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let rule = match case.situation.sight {
        Sight::Nothing => Rule::LimitNothingSeen,
        Sight::Afar => Rule::LimitSeenFromAfar,
        Sight::Close => return None,
    };
    Some(reason(rule, Source::Evidence, Strength::Forbids).on(vec![case.visit()]))
}

fn scope(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let rule = match case.as_of.visit.scope {
        Scope::RequestOnly => Rule::LimitRequestOnly,
        Scope::QuickLook => Rule::LimitQuickLook,
        Scope::WholeRoof => return None,
    };
    (case.situation.sight != Sight::Nothing)
        .then(|| reason(rule, Source::Evidence, Strength::Advises).on(vec![case.visit()]))
}

/// Slopes whose covering nobody saw closely.
fn slopes_not_seen(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let letters: Vec<Said> = case
        .as_of
        .slopes()
        .into_iter()
        .filter(|slope| {
            !case.as_of.standing.iter().any(|standing| {
                standing.part.slope == Some(slope.id)
                    && standing.now
                    && standing.seen.is_close()
                    && case.as_of.is_field(standing.part)
            })
        })
        .map(|slope| Said::verbatim(slope.letter.to_string()))
        .collect();
    (case.situation.sight == Sight::Close && !letters.is_empty()).then(|| {
        reason(
            Rule::LimitSlopesNotSeen,
            Source::Evidence,
            Strength::Advises,
        )
        .with("slopes", letters)
        .on(vec![case.visit()])
    })
}

/// Findings of an earlier visit at parts that were not seen again.
fn earlier_look(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let earlier: Vec<StandsOn> = case
        .faults
        .iter()
        .filter(|fault| fault.mark.visit != case.as_of.visit.id)
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    (!earlier.is_empty())
        .then(|| reason(Rule::LimitEarlierLook, Source::Evidence, Strength::Advises).on(earlier))
}

/// Only a house is taken to have an attic, or a structure of which some part of one is recorded.
fn attic_not_seen(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let as_of = case.as_of;
    let in_attic = |part: &Part| {
        as_of
            .rules
            .catalogue
            .kind(&part.kind)
            .is_some_and(|kind| kind.stop.as_str() == "attic")
    };
    let is_house = as_of
        .history
        .structure(as_of.structure)
        .is_some_and(|structure| structure.kind == StructureKind::House);
    let has_one = is_house || as_of.parts().into_iter().any(in_attic);
    let seen = as_of
        .standing
        .iter()
        .any(|standing| standing.now && in_attic(standing.part));
    (has_one && case.situation.sight == Sight::Close && !seen).then(|| {
        reason(Rule::LimitAtticNotSeen, Source::Evidence, Strength::Advises).on(vec![case.visit()])
    })
}

fn layers_not_counted(case: &Case<'_>, decision: &Decision) -> Option<Reason> {
    let matters = matches!(
        decision.course,
        Course::Repair | Course::Recover | Course::TearOff
    );
    (matters && case.answers.get(Question::TwoLayers).is_unknown()).then(|| {
        reason(
            Rule::LimitLayersNotCounted,
            Source::Evidence,
            Strength::Advises,
        )
    })
}

fn layers_differ(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    let layers = &case.facts.layers;
    let records: Vec<StandsOn> = layers
        .spots
        .iter()
        .map(|spot| StandsOn::Stack(spot.stack))
        .collect();
    (layers.most > layers.least).then(|| {
        reason(Rule::LimitLayersDiffer, Source::Evidence, Strength::Advises)
            .with("least", layers.least)
            .with("most", layers.most)
            .on(records)
    })
}

/// The owner hears that the next covering means tear-off, wherever no more may be laid over what lies there.
fn next_is_tear_off(case: &Case<'_>, decision: &Decision) -> Option<Reason> {
    let adopted = case.as_of.rules.profile;
    if decision.course == Course::TearOff
        || profile::layers_allowed(adopted) != profile::MODEL_LAYERS
    {
        return None;
    }
    let source = if adopted.layers_allowed.is_some() {
        profile::amendment(adopted)
    } else {
        case.code(Irc::RecoverLayers)
    };
    case.because(
        Question::TwoLayers,
        Rule::LimitNextIsTearOff,
        source,
        Strength::Requires,
    )
}

/// Where water gets in is read from what is open; only water or time proves it.
fn water_not_proved(case: &Case<'_>, decision: &Decision) -> Option<Reason> {
    let works = matches!(
        decision.course,
        Course::Repair | Course::Recover | Course::TearOff | Course::Maintain
    );
    works
        .then(|| {
            case.because(
                Question::WaterComesIn,
                Rule::LimitWaterNotProved,
                Source::Practice,
                Strength::Advises,
            )
        })
        .flatten()
}

/// Water that shows only in dry cold is likely breath and steam.
fn dry_cold(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    case.as_of
        .visit
        .request
        .wet_when
        .contains(&WetWhen::DryCold)
        .then(|| {
            reason(Rule::LimitDryCold, Source::Practice, Strength::Advises).on(vec![case.visit()])
        })
}

/// A shingle maker's warranty is not ours to judge.
fn warranty(case: &Case<'_>, _: &Decision) -> Option<Reason> {
    installer::recent(case.as_of, case.faults).map(|recent| {
        reason(Rule::LimitWarranty, Source::Practice, Strength::Advises).on(recent
            .work
            .map(StandsOn::Work)
            .into_iter()
            .collect())
    })
}

/// Some lenders' rule: two years of life left, and no moisture (HUD Handbook 4000.1). Said only where a sale was mentioned.
fn sale(case: &Case<'_>, decision: &Decision) -> Option<Reason> {
    if !case.as_of.visit.request.sale {
        return None;
    }
    let is = |question| case.answers.get(question).is_yes();
    let rule = if decision.course == Course::TearOff
        || is(Question::CoveringDone)
        || is(Question::WaterComesIn)
    {
        Rule::SaleUnderTwoYears
    } else if not_observed(case.as_of) {
        Rule::SaleNotSeen
    } else {
        return None;
    };
    Some(
        reason(
            rule,
            document("HUD Handbook", None, "4000.1"),
            Strength::Advises,
        )
        .on(vec![case.visit()]),
    )
}

fn not_observed(as_of: &AsOf<'_>) -> bool {
    as_of.sight() != Sight::Close
}
