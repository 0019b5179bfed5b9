//! What must be said for safety beside a verdict: what stops work, and what the work must heed.

use super::sections::document;
use super::{Case, Completed, Rule, reason};
use crate::safety::tabs_not_lifted;
use trade::answer::Answer;
use trade::units::Pitch;
use trade::verdict::{Course, LicensedTrade, Question, Reason, Source, StandsOn, Step, Strength};
use trade::visit::SafetyCheck;

/// Steeper than this a roof is steep (29 CFR 1926.500(b)).
pub const STEEP_OVER: Pitch = Pitch::rise(4);
/// Paint older than this may hold lead (40 CFR 745.83).
pub const LEAD_PAINT_BEFORE: i16 = 1978;

const FLUES: &[&str] = &["fuel-vent", "prefab-chimney", "masonry-chimney"];
const PAINTED: &[&str] = &["fascia", "soffit", "wall-above"];

/// Everything that must be said, what stops work first.
pub fn cautions(case: &Case<'_>, steps: &[Step]) -> Vec<Reason> {
    let mut cautions: Vec<Reason> = [
        asbestos(case),
        vermiculite(case),
        fuel_vents(case, steps),
        keep_clear(case),
        soft_underfoot(case),
        power_line(case),
        lead_paint(case, steps),
        tie_off(case, steps),
        tabs(case),
    ]
    .into_iter()
    .flatten()
    .collect();
    cautions.sort_by_key(|caution| caution.strength);
    cautions
}

/// Suspect asbestos is not cut, drilled or broken: tested first.
fn asbestos(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::Asbestos,
        Rule::Asbestos,
        Source::Practice,
        Strength::Forbids,
    )
}

/// Vermiculite is taken to hold asbestos and not disturbed (EPA and ATSDR).
fn vermiculite(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::Vermiculite,
        Rule::Vermiculite,
        Source::Practice,
        Strength::Forbids,
    )
}

/// A vent of an appliance is the licensed trade's: where one is at fault, or a new covering comes near one.
fn fuel_vents(case: &Case<'_>, steps: &[Step]) -> Option<Reason> {
    let at_fault = case
        .faults
        .iter()
        .filter(|fault| fault.trade == Some(LicensedTrade::FuelVent))
        .map(|fault| StandsOn::Mark(fault.mark.id));
    let near = case
        .looks_at(FLUES)
        .filter(|_| covers(steps))
        .map(|standing| StandsOn::Mark(standing.mark.id));
    let records: Vec<StandsOn> = at_fault.chain(near).collect();
    let unseen = covers(steps)
        && case
            .as_of
            .unseen
            .iter()
            .any(|part| FLUES.contains(&part.kind.as_str()));
    (!records.is_empty() || unseen)
        .then(|| reason(Rule::FuelVents, Source::Practice, Strength::Forbids).on(records))
}

fn keep_clear(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::MayFall,
        Rule::KeepClear,
        Source::Practice,
        Strength::Requires,
    )
}

fn soft_underfoot(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::DeckWet,
        Rule::SoftUnderfoot,
        Source::Practice,
        Strength::Requires,
    )
}

/// A line that was found near the ladder or the way, or that is at fault.
fn power_line(case: &Case<'_>) -> Option<Reason> {
    let answered = case
        .as_of
        .visit
        .safety
        .iter()
        .any(|answer| answer.check == SafetyCheck::LinesClear && answer.holds == Answer::No);
    let at_fault: Vec<StandsOn> = case
        .faults
        .iter()
        .filter(|fault| fault.part.kind.as_str() == "service-line")
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    let said = answered.then(|| case.visit());
    let records: Vec<StandsOn> = at_fault.into_iter().chain(said).collect();
    (!records.is_empty()).then(|| {
        reason(
            Rule::PowerLine,
            document("29 CFR", None, "1926.1053(b)(12)"),
            Strength::Requires,
        )
        .with("distance", crate::safety::FROM_LINES)
        .on(records)
    })
}

/// Work on painted wood of a house of before 1978.
fn lead_paint(case: &Case<'_>, steps: &[Step]) -> Option<Reason> {
    let built = case.as_of.history.property.built?;
    let painted = steps
        .iter()
        .flat_map(|step| &step.tasks)
        .filter_map(|task| case.as_of.history.part(task.part))
        .any(|part| PAINTED.contains(&part.kind.as_str()));
    (built < LEAD_PAINT_BEFORE && painted).then(|| {
        reason(
            Rule::LeadPaint,
            document("40 CFR", None, "745.83"),
            Strength::Requires,
        )
        .with("built", built.to_string())
    })
}

/// Roofing work is tied off at 6 ft; said where the roof is steep and the work is ours.
fn tie_off(case: &Case<'_>, steps: &[Step]) -> Option<Reason> {
    let works = steps.iter().any(|step| {
        matches!(
            step.course,
            Course::MakeSafe | Course::Repair | Course::Recover | Course::TearOff
        )
    });
    let steepest = case
        .as_of
        .slopes()
        .iter()
        .filter_map(|slope| slope.pitch.as_ref())
        .map(|pitch| pitch.value)
        .max()?;
    (works && steepest > STEEP_OVER).then(|| {
        reason(
            Rule::TieOff,
            document("29 CFR", None, "1926.501(b)(13)"),
            Strength::Requires,
        )
        .with("pitch", steepest)
    })
}

/// Tabs that crack, or that were too cold or hot to try.
fn tabs(case: &Case<'_>) -> Option<Reason> {
    case.because(
        Question::Brittle,
        Rule::TabsNotLifted,
        Source::Practice,
        Strength::Advises,
    )
    .or_else(|| tabs_not_lifted(case.as_of.visit, case.as_of.rules))
}

fn covers(steps: &[Step]) -> bool {
    steps
        .iter()
        .any(|step| matches!(step.course, Course::Recover | Course::TearOff))
}
