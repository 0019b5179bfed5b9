//! What the rules find about single parts, from their measures and their defects.

use super::sections::Irc;
use super::{Case, Completed, Found, Rule, chimney, flashing, reason, vents};
use crate::faults::Fault;
use trade::firm::Edition;
use trade::mark::MeasureOf;
use trade::verdict::{Reason, Source, StandsOn, Strength};

/// Everything found, by part and rule.
pub fn about_parts(case: &Case<'_>) -> Vec<Found> {
    let mut found = chimney::crickets_missing(case);
    found.extend(chimney::too_low(case));
    found.extend(vents::too_low(case));
    found.extend(flashing::too_thin(case));
    found.extend(flashing::valley_narrow(case));
    found.extend(case.faults.iter().filter_map(|fault| by_cause(case, fault)));
    found.sort_by(|one, other| (one.part, &one.reason.rule).cmp(&(other.part, &other.reason.rule)));
    found.dedup();
    found
}

/// What code says of a defect, by its cause. What a measure of the same part says already is not said twice.
fn by_cause(case: &Case<'_>, fault: &Fault<'_>) -> Option<Found> {
    let edition = case.as_of.rules.profile.edition;
    let requires = |rule, section| reason(rule, case.code(section), Strength::Requires);
    let kind = fault.part.kind.as_str();
    let reason = match (fault.defect?.cause.as_str(), kind) {
        ("kickout", _) => kick_out(case, edition),
        ("edge-metal-missing", _) => drip_edge(case, edition),
        ("nailing", _) => {
            requires(Rule::Nails, Irc::NailCount).with("nails", super::shingles::NAILS_A_SHINGLE)
        }
        (
            "flashing-missing" | "sealant-in-place-of-flashing" | "does-not-lap",
            "sidewall-flashing",
        ) => sidewall(case, edition),
        ("cricket", _) => requires(Rule::CricketWanted, Irc::Cricket),
        ("vent-height", "masonry-chimney" | "prefab-chimney")
            if !was_measured(fault, MeasureOf::Height) =>
        {
            requires(Rule::ChimneyHeight, Irc::ChimneyHeight)
                .with("least", chimney::LEAST_HEIGHT)
                .with("above", chimney::ABOVE_NEAR)
                .with("near", chimney::NEAR)
        }
        ("air-in" | "air-out", _) => requires(Rule::AtticAir, Irc::VentArea),
        ("intake-closed", _) => {
            requires(Rule::AirSpace, Irc::AirSpace).with("space", super::ventilation::AIR_SPACE)
        }
        ("membrane-single", _) => requires(Rule::UnderlaymentLow, Irc::Underlayment),
        ("ice-barrier", _) if case.as_of.rules.profile.ice_barrier.is_yes() => {
            requires(Rule::IceBarrierMissing, Irc::IceBarrier)
                .with("inside", super::shingles::ICE_BARRIER_INSIDE)
        }
        _ => return None,
    };
    Some(Found {
        part: fault.part.id,
        reason: reason.on(vec![StandsOn::Mark(fault.mark.id)]),
    })
}

fn was_measured(fault: &Fault<'_>, of: MeasureOf) -> bool {
    fault.mark.measure(of).is_some()
}

/// Step flashing only up to 2009, step or continuous after.
fn sidewall(case: &Case<'_>, edition: Edition) -> Reason {
    let rule = if edition <= Edition::E2009 {
        Rule::SidewallStep
    } else {
        Rule::SidewallFlashing
    };
    reason(rule, case.code(Irc::SidewallFlashing), Strength::Requires)
        .with("size", flashing::SIDEWALL)
}

/// In the code from 2012, in the trade before that.
pub(super) fn drip_edge(case: &Case<'_>, edition: Edition) -> Reason {
    if edition >= Edition::E2012 {
        reason(Rule::DripEdge, case.code(Irc::DripEdge), Strength::Requires)
    } else {
        reason(Rule::DripEdgePractice, Source::Practice, Strength::Advises)
    }
}

/// In the code from 2012, in the trade before that.
fn kick_out(case: &Case<'_>, edition: Edition) -> Reason {
    if edition >= Edition::E2012 {
        reason(Rule::KickOut, case.code(Irc::KickOut), Strength::Requires)
    } else {
        reason(Rule::KickOut, Source::Practice, Strength::Advises)
    }
}
