//! What the rules find about single parts, from their measures and their defects.

use super::sections::Irc;
use super::{Case, Completed, Found, Rule, chimney, flashing, reason, vents};
use crate::faults::Fault;
use trade::firm::Edition;
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

/// What code says of a defect that was built in, by its cause.
fn by_cause(case: &Case<'_>, fault: &Fault<'_>) -> Option<Found> {
    let edition = case.as_of.rules.profile.edition;
    let defect = fault.defect?;
    let reason = match defect.cause.as_str() {
        "kickout" => kick_out(case, edition),
        "edge-metal-missing" => drip_edge(case, edition),
        "nailing" => reason(Rule::Nails, case.code(Irc::NailCount), Strength::Requires)
            .with("nails", super::shingles::NAILS_A_SHINGLE),
        "flashing-missing" | "sealant-in-place-of-flashing" | "flashing-does-not-lap"
            if fault.part.kind.as_str() == "sidewall-flashing" =>
        {
            sidewall(case, edition)
        }
        _ => return None,
    };
    Some(Found {
        part: fault.part.id,
        reason: reason.on(vec![StandsOn::Mark(fault.mark.id)]),
    })
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
