//! What code asks of a new covering on this roof, as far as it was measured.

use super::sections::Irc;
use super::{Case, Completed, Rule, found, reason, shingles};
use std::collections::BTreeMap;
use trade::answer::Answer;
use trade::firm::Edition;
use trade::ids::SlopeId;
use trade::mark::MeasureOf;
use trade::property::{Slope, StructureKind};
use trade::units::{Length, Pitch};
use trade::verdict::{Course, Reason, Source, Strength};
use trade::words::Said;

/// What a new covering needs on some slopes.
pub fn of_covering(case: &Case<'_>, course: Course, slopes: &[&Slope]) -> Vec<Reason> {
    let mut needed = Vec::new();
    if course == Course::TearOff {
        needed.push(reason(
            Rule::AllLayersOff,
            case.code(Irc::Replacement),
            Strength::Requires,
        ));
    }
    needed.extend(doubled_underlayment(case, slopes));
    needed.extend(ice_barrier(case, slopes));
    let edition = case.as_of.rules.profile.edition;
    if edition >= Edition::E2012 {
        needed.push(found::drip_edge(case, edition));
    }
    needed
}

/// One reason for each pitch.
fn doubled_underlayment(case: &Case<'_>, slopes: &[&Slope]) -> Vec<Reason> {
    let mut low: BTreeMap<Pitch, Vec<Said>> = BTreeMap::new();
    for slope in slopes {
        let pitch = slope.pitch.as_ref().map(|pitch| pitch.value);
        if let Some(pitch) = pitch.filter(|pitch| shingles::needs_doubled_underlayment(*pitch)) {
            low.entry(pitch).or_default().push(letter(slope));
        }
    }
    low.into_iter()
        .map(|(pitch, slopes)| {
            reason(
                Rule::UnderlaymentDoubled,
                case.code(Irc::Underlayment),
                Strength::Requires,
            )
            .with("slopes", slopes)
            .with("pitch", pitch)
        })
        .collect()
}

/// Detached structures without heated floor area are excepted (a code handout); whether a detached garage is heated is
/// not recorded, so nothing is said of one.
fn ice_barrier(case: &Case<'_>, slopes: &[&Slope]) -> Vec<Reason> {
    let detached = case
        .as_of
        .history
        .structure(case.as_of.structure)
        .is_some_and(|structure| {
            matches!(
                structure.kind,
                StructureKind::DetachedGarage | StructureKind::Shed
            )
        });
    match case.as_of.rules.profile.ice_barrier {
        Answer::Yes if !detached => ice_barrier_reaches(case, slopes),
        Answer::Unknown if !detached => vec![reason(
            Rule::IceBarrierUnknown,
            case.code(Irc::IceBarrier),
            Strength::Advises,
        )],
        _ => Vec::new(),
    }
}

/// One reason for each reach, and one for the slopes that were not measured.
fn ice_barrier_reaches(case: &Case<'_>, slopes: &[&Slope]) -> Vec<Reason> {
    let mut reaches: BTreeMap<Option<Length>, Vec<Said>> = BTreeMap::new();
    for slope in slopes {
        reaches
            .entry(ice_barrier_on(case, slope))
            .or_default()
            .push(letter(slope));
    }
    let source = case.code(Irc::IceBarrier);
    reaches
        .into_iter()
        .map(|(reach, slopes)| match reach {
            Some(reach) => reason(Rule::IceBarrier, source.clone(), Strength::Requires)
                .with("slopes", slopes)
                .with("reach", reach),
            None => reason(
                Rule::IceBarrierUnmeasured,
                source.clone(),
                Strength::Requires,
            )
            .with("slopes", slopes)
            .with("inside", shingles::ICE_BARRIER_INSIDE),
        })
        .collect()
}

/// How far up a slope it reaches, where overhang and pitch were measured.
fn ice_barrier_on(case: &Case<'_>, slope: &Slope) -> Option<Length> {
    let overhang = overhang_of(case, slope.id)?;
    let pitch = slope.pitch.as_ref()?.value;
    let edition = case.as_of.rules.profile.edition;
    Some(shingles::ice_barrier_along_slope(overhang, pitch, edition))
}

fn letter(slope: &Slope) -> Said {
    Said::verbatim(slope.letter.to_string())
}

fn overhang_of(case: &Case<'_>, slope: SlopeId) -> Option<Length> {
    case.as_of
        .standing
        .iter()
        .filter(|standing| standing.part.slope == Some(slope))
        .filter_map(|standing| standing.mark.measure(MeasureOf::Overhang))
        .map(|overhang| overhang.value)
        .max()
}

/// What speaks for judging the deck only when it is bare.
pub fn deck_judged_bare() -> Reason {
    reason(Rule::DeckJudgedBare, Source::Practice, Strength::Advises)
}
