//! Laying a new covering over the old one (IRC R908, R907 up to 2012).

use super::sections::{Irc, irc};
use super::{Case, reason, saying};
use crate::course::too_many_to_recover;
use trade::answer::Answer;
use trade::firm::{Edition, Profile};
use trade::stack::Covering;
use trade::verdict::{Question, Reason, Source, Strength};
use trade::words::Said;

/// Layers that the model code lets lie in all.
pub const MODEL_LAYERS: u8 = 2;

/// Layers of covering that may lie in all under a profile.
pub fn layers_allowed(profile: &Profile) -> u8 {
    profile.layers_allowed.unwrap_or(MODEL_LAYERS)
}

/// Whether no covering may be laid over this one: slate, clay, cement, asbestos-cement; up to 2012 wood shake too
/// (seen for 2006; 2009 and 2012 from memory).
pub fn bars_covering_over(top: Covering, edition: Edition) -> Answer {
    match top {
        Covering::Slate | Covering::ClayTile | Covering::CementTile | Covering::AsbestosCement => {
            Answer::Yes
        }
        Covering::WoodShake => (edition <= Edition::E2012).into(),
        Covering::Unclear => Answer::Unknown,
        _ => Answer::No,
    }
}

/// Whether hail exposure bars asphalt shingles over an old covering: 2006 and 2009 only (2009 from memory).
pub fn hail_bars(profile: &Profile) -> Answer {
    if profile.edition <= Edition::E2009 {
        profile.hail
    } else {
        Answer::No
    }
}

/// A rule that forbids a re-cover.
pub type Bar = fn(&Case<'_>) -> Option<Reason>;

/// Every rule that forbids a re-cover.
pub const BARS: [Bar; 6] = [
    no_second_layer,
    layers,
    base,
    over_tile,
    hail,
    shingle_slope,
];

/// A local amendment allows no second layer at all.
pub fn no_second_layer(case: &Case<'_>) -> Option<Reason> {
    let profile = case.as_of.rules.profile;
    (layers_allowed(profile) <= 1).then(|| {
        reason(
            "recover-no-second-layer",
            Source::LocalAmendment {
                place: profile.place.clone(),
            },
            Strength::Forbids,
            Vec::new(),
        )
    })
}

/// Too many layers lie there already.
pub fn layers(case: &Case<'_>) -> Option<Reason> {
    let profile = case.as_of.rules.profile;
    let allowed = layers_allowed(profile);
    if allowed <= 1
        || !too_many_to_recover(allowed, &|question| case.answers.get(question)).is_yes()
    {
        return None;
    }
    let (question, rule) = if allowed == MODEL_LAYERS {
        (Question::TwoLayers, "recover-two-layers")
    } else {
        (Question::ThreeLayers, "recover-three-layers")
    };
    let source = match profile.layers_allowed {
        Some(_) => Source::LocalAmendment {
            place: profile.place.clone(),
        },
        None => irc(Irc::RecoverLayers, profile.edition),
    };
    let layers = case.facts.layers.most.max(allowed);
    let says = Said::new(super::key(rule)).with("layers", layers);
    Some(saying(
        rule,
        says,
        source,
        Strength::Forbids,
        case.facts.fact(question).stands_on(),
    ))
}

/// The base is wet or soft.
pub fn base(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::DeckWet,
        "recover-wet-base",
        irc(Irc::RecoverBase, case.as_of.rules.profile.edition),
        Strength::Forbids,
    )
}

/// The covering is one that no covering may be laid over.
pub fn over_tile(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::BarredBase,
        "recover-barred-base",
        irc(Irc::RecoverOverTile, case.as_of.rules.profile.edition),
        Strength::Forbids,
    )
}

/// Hail exposure, in the editions that name it.
pub fn hail(case: &Case<'_>) -> Option<Reason> {
    let profile = case.as_of.rules.profile;
    hail_bars(profile).is_yes().then(|| {
        reason(
            "recover-hail",
            irc(Irc::RecoverHail, profile.edition),
            Strength::Forbids,
            Vec::new(),
        )
    })
}

/// The slope is too low for shingles, old or new.
pub fn shingle_slope(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::TooLow,
        "recover-too-low",
        irc(Irc::ShingleSlope, case.as_of.rules.profile.edition),
        Strength::Forbids,
    )
}

/// Every reason of judgement against a re-cover that no rule forbids.
pub fn against(case: &Case<'_>) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = [
        (Question::NotFlat, "recover-not-flat"),
        (Question::FlashingStays, "recover-flashing-stays"),
        (Question::FrameWeak, "recover-frame-weak"),
        (Question::MakerRefuses, "recover-maker-refuses"),
        (Question::RebuiltStep, "recover-rebuilt-step"),
    ]
    .into_iter()
    .filter_map(|(question, rule)| {
        case.because(question, rule, Source::Practice, Strength::Advises)
    })
    .collect();
    if !case.situation.allowed.sells_recover {
        reasons.push(reason(
            "recover-not-sold",
            Source::HousePolicy,
            Strength::Forbids,
            Vec::new(),
        ));
    }
    reasons.push(reason(
        "recover-advised-against",
        Source::Practice,
        Strength::Advises,
        Vec::new(),
    ));
    reasons
}
