//! Why each step is taken.

use crate::course::Decision;
use crate::covering::NewCovering;
use crate::faults::Fault;
use crate::installer;
use crate::rules::{Case, Completed, Rule, policy, reason};
use trade::thread::Thread;
use trade::verdict::{Course, Question, Reason, Source, StandsOn, Strength};
use trade::words::Said;
use trade::work::By;

/// Why something is made safe now.
pub fn make_safe(case: &Case<'_>) -> Vec<Reason> {
    [
        (Question::WaterComesIn, Rule::WaterComesIn),
        (Question::OpenToRain, Rule::OpenToRain),
        (Question::MayFall, Rule::MayFall),
    ]
    .into_iter()
    .filter_map(|(question, rule)| {
        case.because(question, rule, Source::Evidence, Strength::Requires)
    })
    .collect()
}

/// Something that cannot wait, though nothing is open yet.
pub fn urgent(faults: &[&Fault<'_>]) -> Reason {
    let records = faults
        .iter()
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    reason(Rule::Urgent, Source::Evidence, Strength::Requires).on(records)
}

/// What is wrong with one part.
pub fn fault(fault: &Fault<'_>) -> Reason {
    let part = Said::new(fault.part.kind.message());
    let says = match fault.defect {
        Some(defect) => reason(Rule::Fault, Source::Evidence, Strength::Requires)
            .with("part", part)
            .with("defect", Said::new(defect.key.message())),
        None => reason(Rule::FaultUnnamed, Source::Evidence, Strength::Requires)
            .with("part", part)
            .with("rung", Said::new(fault.rung.key())),
    };
    says.on(vec![StandsOn::Mark(fault.mark.id)])
}

/// Why a repair, and what to know of it.
pub fn repair(case: &Case<'_>, decision: &Decision, faults: &[&Fault<'_>]) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = faults.iter().map(|one| fault(one)).collect();
    if faults.is_empty() || faults.iter().any(|fault| fault.signs(Question::DeckWet)) {
        reasons.extend(case.because(
            Question::DeckWet,
            Rule::DeckWet,
            Source::Evidence,
            Strength::Requires,
        ));
    }
    reasons.extend(faults.iter().filter_map(|fault| patched(case, fault)));
    reasons.extend(faults.iter().filter_map(|fault| callback(case, fault)));
    if decision.course == Course::Repair {
        reasons.extend(local(case));
        reasons.extend(policy::two_layers_repair(case));
        reasons.extend(we_laid_it(case));
    }
    reasons
}

/// The field around has years left, as far as it was seen closely.
fn local(case: &Case<'_>) -> Option<Reason> {
    let fact = case.facts.fact(Question::CoveringDone);
    fact.answer.is_no().then(|| {
        reason(Rule::RepairLocal, Source::Evidence, Strength::Advises).on(fact.stands_on())
    })
}

fn thread<'a>(case: &'a Case<'_>, fault: &Fault<'_>) -> Option<&'a Thread> {
    let thread = case.as_of.thread(fault.part)?;
    let same = fault
        .defect
        .is_some_and(|defect| thread.cause.as_ref() == Some(&defect.cause));
    same.then_some(thread)
}

/// The cause was patched before and is still there.
fn patched(case: &Case<'_>, fault: &Fault<'_>) -> Option<Reason> {
    let patches = thread(case, fault)?.patches.len();
    let times = u32::try_from(patches).ok().filter(|times| *times > 0)?;
    Some(
        reason(Rule::PatchedBefore, Source::Evidence, Strength::Advises)
            .with("part", Said::new(fault.part.kind.message()))
            .with("times", times)
            .on(vec![StandsOn::Mark(fault.mark.id)]),
    )
}

/// A cure that came back as the same fault: ours if it was ours, and said so.
fn callback(case: &Case<'_>, fault: &Fault<'_>) -> Option<Reason> {
    let rule = match case.as_of.thread(fault.part)?.callback? {
        By::Us => Rule::OurCallback,
        By::NotUs => Rule::TheirCallback,
        By::Unknown => return None,
    };
    Some(
        reason(rule, Source::Evidence, Strength::Requires)
            .with("part", Said::new(fault.part.kind.message()))
            .on(vec![StandsOn::Mark(fault.mark.id)]),
    )
}

/// A recent roof of our own with faults that were built in is ours to answer for.
fn we_laid_it(case: &Case<'_>) -> Option<Reason> {
    installer::recent(case.as_of, case.faults)
        .filter(|recent| recent.by == By::Us)
        .map(|recent| {
            reason(Rule::WeLaidIt, Source::Evidence, Strength::Requires).on(recent
                .work
                .map(StandsOn::Work)
                .into_iter()
                .collect())
        })
}

/// Some slopes are covered anew and others are not.
pub fn some_slopes_only(covering: &NewCovering<'_>) -> Option<Reason> {
    covering.some_only.then(|| {
        let letters: Vec<Said> = covering
            .slopes
            .iter()
            .map(|slope| Said::verbatim(slope.letter.to_string()))
            .collect();
        reason(Rule::SomeSlopesOnly, Source::Practice, Strength::Advises).with("slopes", letters)
    })
}

/// Why our work stops until another trade has been.
pub fn stopped(case: &Case<'_>, question: Question) -> Option<Reason> {
    let rule = match question {
        Question::Asbestos => Rule::Asbestos,
        Question::Vermiculite => Rule::Vermiculite,
        _ => Rule::FrameWeak,
    };
    case.because(question, rule, Source::Practice, Strength::Requires)
}
