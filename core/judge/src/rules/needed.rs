//! What code asks of a new covering on this roof, as far as it was measured.

use super::sections::Irc;
use super::{Case, Completed, Rule, found, reason, shingles};
use trade::answer::Answer;
use trade::firm::Edition;
use trade::ids::SlopeId;
use trade::mark::MeasureOf;
use trade::property::{Slope, StructureKind};
use trade::units::Length;
use trade::verdict::{Course, Reason, Source, Strength};

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

fn doubled_underlayment<'a>(
    case: &'a Case<'_>,
    slopes: &'a [&Slope],
) -> impl Iterator<Item = Reason> + 'a {
    slopes.iter().filter_map(|slope| {
        let pitch = slope.pitch.as_ref()?.value;
        shingles::needs_doubled_underlayment(pitch).then(|| {
            reason(
                Rule::UnderlaymentDoubled,
                case.code(Irc::Underlayment),
                Strength::Requires,
            )
            .with("slope", slope.letter.to_string())
            .with("pitch", pitch)
        })
    })
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
        _ if detached => Vec::new(),
        Answer::No => Vec::new(),
        Answer::Unknown => vec![reason(
            Rule::IceBarrierUnknown,
            case.code(Irc::IceBarrier),
            Strength::Advises,
        )],
        Answer::Yes => slopes
            .iter()
            .map(|slope| ice_barrier_on(case, slope))
            .collect(),
    }
}

fn ice_barrier_on(case: &Case<'_>, slope: &Slope) -> Reason {
    let source = case.code(Irc::IceBarrier);
    let letter = slope.letter.to_string();
    match (overhang_of(case, slope.id), slope.pitch.as_ref()) {
        (Some(overhang), Some(pitch)) => {
            let edition = case.as_of.rules.profile.edition;
            let reach = shingles::ice_barrier_along_slope(overhang, pitch.value, edition);
            reason(Rule::IceBarrier, source, Strength::Requires)
                .with("slope", letter)
                .with("reach", reach)
        }
        _ => reason(Rule::IceBarrierUnmeasured, source, Strength::Requires)
            .with("slope", letter)
            .with("inside", shingles::ICE_BARRIER_INSIDE),
    }
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
