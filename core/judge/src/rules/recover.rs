//! Laying a new covering over the old one (IRC R908, R907 up to 2012).

use super::sections::{Irc, document};
use super::{Case, Completed, Rule, reason};
use crate::course::{RECOVER_NEEDS_NO, too_many_to_recover};
use crate::profile;
use trade::firm::Edition;
use trade::verdict::{Question, Reason, Source, Strength};
use trade::words::Said;

/// A rule that forbids a re-cover.
pub type Bar = fn(&Case<'_>) -> Option<Reason>;

/// Every rule that forbids a re-cover.
pub const BARS: [Bar; 6] = [
    no_second_layer,
    layers,
    wet_base,
    barred_base,
    hail,
    shingle_slope,
];

/// The reasons that forbid a re-cover here.
pub fn forbidden(case: &Case<'_>) -> Vec<Reason> {
    let mut bars: Vec<Reason> = BARS.iter().filter_map(|bar| bar(case)).collect();
    if !bars.is_empty() {
        bars.extend(other_ways(case));
        bars.extend(adopted_text(case));
    }
    bars
}

/// A local amendment allows no second layer at all.
pub fn no_second_layer(case: &Case<'_>) -> Option<Reason> {
    let profile = case.as_of.rules.profile;
    (profile::layers_allowed(profile) <= 1).then(|| {
        reason(
            Rule::RecoverNoSecondLayer,
            profile::amendment(profile),
            Strength::Forbids,
        )
    })
}

/// As many layers lie there already as may lie in all (item 3).
pub fn layers(case: &Case<'_>) -> Option<Reason> {
    let profile = case.as_of.rules.profile;
    let allowed = profile::layers_allowed(profile);
    let barred = too_many_to_recover(allowed, &|question| case.answers.get(question));
    if allowed <= 1 || !barred.is_yes() {
        return None;
    }
    let by_amendment = profile.layers_allowed.is_some();
    let question = if allowed == profile::MODEL_LAYERS {
        Question::TwoLayers
    } else {
        Question::ThreeLayers
    };
    let stands_on = case.facts.fact(question).stands_on();
    Some(if by_amendment {
        reason(
            Rule::RecoverLayersHere,
            profile::amendment(profile),
            Strength::Forbids,
        )
        .with("allowed", allowed)
        .on(stands_on)
    } else {
        reason(
            Rule::RecoverTwoLayers,
            case.code(Irc::RecoverLayers),
            Strength::Forbids,
        )
        .with("layers", case.facts.layers.most.max(allowed))
        .on(stands_on)
    })
}

/// The base is wet or soft (item 1).
pub fn wet_base(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::DeckWet,
        Rule::RecoverWetBase,
        case.code(Irc::RecoverBase),
        Strength::Forbids,
    )
}

/// The covering is one that no covering may be laid over (item 2).
pub fn barred_base(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::BarredBase,
        Rule::RecoverBarredBase,
        case.code(Irc::RecoverOverTile),
        Strength::Forbids,
    )
}

/// Hail exposure (item 4), in the editions that have it.
pub fn hail(case: &Case<'_>) -> Option<Reason> {
    profile::hail_bars(case.as_of.rules.profile)
        .is_yes()
        .then(|| {
            reason(
                Rule::RecoverHail,
                case.code(Irc::RecoverHail),
                Strength::Forbids,
            )
        })
}

/// The slope is too low for shingles, old or new.
pub fn shingle_slope(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::TooLow,
        Rule::RecoverTooLow,
        case.too_low_by(),
        Strength::Forbids,
    )
}

/// What judgement holds against a re-cover that no rule forbids.
pub fn against(case: &Case<'_>) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = [
        (Question::NotFlat, Rule::RecoverNotFlat),
        (Question::FlashingStays, Rule::RecoverFlashingStays),
        (Question::FrameWeak, Rule::RecoverFrameWeak),
        (Question::MakerRefuses, Rule::RecoverMakerRefuses),
        (Question::RebuiltStep, Rule::RecoverRebuiltStep),
    ]
    .into_iter()
    .filter_map(|(question, rule)| {
        case.because(question, rule, Source::Practice, Strength::Advises)
    })
    .collect();
    reasons.extend(super::policy::sells_no_recover(case));
    reasons.extend(not_known(case));
    reasons.push(advised_against());
    reasons.extend(adopted_text(case));
    reasons
}

/// What must be known before a re-cover and is not.
fn not_known(case: &Case<'_>) -> Option<Reason> {
    let allowed = case.situation.allowed;
    let layers = if allowed.layers >= 3 {
        Question::ThreeLayers
    } else {
        Question::TwoLayers
    };
    let unknown: Vec<Said> = std::iter::once(layers)
        .chain(RECOVER_NEEDS_NO)
        .filter(|question| case.answers.get(*question).is_unknown())
        .map(|question| Said::new(format!("{}.yes", question.key())))
        .collect();
    (allowed.sells_recover && !unknown.is_empty()).then(|| {
        reason(Rule::RecoverNotKnown, Source::Evidence, Strength::Advises)
            .with("questions", unknown)
    })
}

/// Most roofers advise against it even where code allows it. Common practice, no source.
pub fn advised_against() -> Reason {
    reason(
        Rule::RecoverAdvisedAgainst,
        Source::Practice,
        Strength::Advises,
    )
}

/// What lets a re-cover be sold: code allows it and every condition is known to hold.
pub fn allowed(case: &Case<'_>) -> Vec<Reason> {
    let mut reasons = vec![
        reason(
            Rule::RecoverAllowed,
            case.code(Irc::RecoverAllowed),
            Strength::Advises,
        ),
        // A second layer of at most 3 psf over one layer.
        reason(
            Rule::RecoverFrameExcepted,
            document("IEBC", None, "706.2 exception 2"),
            Strength::Advises,
        ),
        advised_against(),
    ];
    reasons.extend(adopted_text(case));
    reasons
}

/// The edition of 2024 changed the section, and its text was not to be had.
pub fn adopted_text(case: &Case<'_>) -> Option<Reason> {
    let edition = case.as_of.rules.profile.edition;
    profile::text_not_seen(edition).then(|| {
        reason(
            Rule::CheckAdoptedText,
            case.code(Irc::RecoverAllowed),
            Strength::Advises,
        )
    })
}

/// Where layers alone bar it: what the bar does not reach (R908.3.1 of 2021).
pub fn other_ways(case: &Case<'_>) -> Option<Reason> {
    (case.as_of.rules.profile.edition >= Edition::E2021 && layers(case).is_some()).then(|| {
        reason(
            Rule::RecoverOtherWays,
            case.code(Irc::RecoverAllowed),
            Strength::Advises,
        )
    })
}
