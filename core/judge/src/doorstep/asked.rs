//! The request beside what was advised last.

use super::advice::{self, Advice};
use super::named;
use super::record::Record;
use super::stance::{self, Stance};
use trade::doorstep::{Line, Tells, ThenAndNow};
use trade::verdict::{Reason, StandsOn};
use trade::visit::Ask;
use trade::words::Said;

/// How many reasons are told at the door.
const REASONS: usize = 3;

/// One thing asked for, beside the advice that it stands against.
pub(super) struct Against<'a> {
    ask: &'a Ask,
    advice: usize,
    stance: Stance<'a>,
}

/// The advice of old and how each thing asked for stands to it.
pub(super) struct Case<'a> {
    /// The advice on each structure that the request may be about.
    advice: Vec<Advice<'a>>,
    asked: Vec<Against<'a>>,
}

/// Sets the request beside the advice on the structures where such parts were to be worked on; where none was, on those that have such parts;
/// or on all.
pub(super) fn against<'a>(record: &Record<'a>) -> Case<'a> {
    let mut advice = advice::all(record);
    let meant = |one: &Advice<'_>| {
        record
            .history
            .parts_of(one.structure)
            .any(|part| record.asks_about(&part.kind))
    };
    let speaks = |one: &Advice<'_>| meant(one) && advice::speaks_of_what_is_asked(record, one);
    if advice.iter().any(speaks) {
        advice.retain(speaks);
    } else if advice.iter().any(meant) {
        advice.retain(meant);
    }
    let asked = record
        .asks()
        .iter()
        .filter_map(|ask| strongest(record, ask, &advice))
        .collect();
    Case { advice, asked }
}

/// Of several structures, the one whose advice the request goes against; else the first of which something was said.
fn strongest<'a>(record: &Record<'a>, ask: &'a Ask, advice: &[Advice<'a>]) -> Option<Against<'a>> {
    advice
        .iter()
        .enumerate()
        .map(|(at, one)| Against {
            ask,
            advice: at,
            stance: stance::of(record, ask, one),
        })
        .min_by_key(|against| {
            let silent = matches!(against.stance, Stance::Silent);
            (!against.stance.contradicts(record.today()), silent)
        })
}

pub(super) fn lines(record: &Record<'_>, case: &Case<'_>) -> Vec<Line> {
    case.asked
        .iter()
        .filter_map(|against| {
            let advice = case.advice.get(against.advice)?;
            Some(Line {
                tells: Tells::Request,
                says: says(record, against, advice)?,
                stands_on: vec![StandsOn::Visit(advice.visit)],
            })
        })
        .collect()
}

/// The request beside the last advice; `None` where nobody asked or nothing was advised.
pub(super) fn then_and_now(record: &Record<'_>, case: &Case<'_>) -> Option<ThenAndNow> {
    record.request?;
    let last = case.advice.iter().max_by_key(|advice| advice.on)?;
    let contradicts = case
        .asked
        .iter()
        .any(|against| against.stance.contradicts(record.today()));
    Some(ThenAndNow {
        on: last.on,
        said: said(record, &case.advice)?,
        why: why(record, case),
        contradicts,
    })
}

/// What was advised, structure by structure where there are several.
fn said(record: &Record<'_>, advice: &[Advice<'_>]) -> Option<Said> {
    named::sentences(advice.iter().map(|one| {
        if record.has_several_structures() {
            Said::new("doorstep-of-structure")
                .with("structure", named::structure_by_id(record, one.structure))
                .with("said", one.said.clone())
        } else {
            one.said.clone()
        }
    }))
}

/// The reasons that answer the request. Where none does, those of the main course.
fn why(record: &Record<'_>, case: &Case<'_>) -> Vec<Said> {
    let refused = case
        .asked
        .iter()
        .filter_map(|against| match against.stance {
            Stance::Refused(refused) => Some(refused.reasons.iter()),
            _ => None,
        });
    let main = case.advice.iter().flat_map(|advice| {
        advice
            .steps
            .iter()
            .filter(|step| Some(step.course) == advice.main)
            .flat_map(|step| step.reasons)
    });
    let main: Vec<&Reason> = main.collect();
    let asked = main
        .iter()
        .copied()
        .filter(|one| is_of_the_asked(record, one));
    let mut reasons = each_once(refused.flatten().chain(asked));
    if reasons.is_empty() {
        reasons = each_once(main.into_iter());
    }
    reasons
        .into_iter()
        .take(REASONS)
        .map(|reason| reason.says.clone())
        .collect()
}

/// Whether a reason stands on a mark of such a part as is asked about.
fn is_of_the_asked(record: &Record<'_>, reason: &Reason) -> bool {
    reason.stands_on.iter().any(|on| match on {
        StandsOn::Mark(mark) => record
            .history
            .mark(*mark)
            .and_then(|mark| record.history.part(mark.part))
            .is_some_and(|part| record.asks_about(&part.kind)),
        _ => false,
    })
}

fn each_once<'a>(reasons: impl Iterator<Item = &'a Reason>) -> Vec<&'a Reason> {
    let mut kept: Vec<&Reason> = Vec::new();
    for reason in reasons {
        if !kept.iter().any(|told| told.says == reason.says) {
            kept.push(reason);
        }
    }
    kept
}

fn says(record: &Record<'_>, against: &Against<'_>, advice: &Advice<'_>) -> Option<Said> {
    let key = key(&against.stance, record)?;
    let asked = match &against.ask.remedy {
        Some(remedy) => named::remedy(remedy),
        None => Said::new(against.ask.kind.message()),
    };
    let said = Said::new(key).with("asked", asked).with("on", advice.on);
    let said = match advice.main {
        Some(main) => said.with("course", named::course(main)),
        None => said,
    };
    Some(match &against.stance {
        Stance::Worsens(seen) => said.with("defect", named::defect(&seen.defect)),
        Stance::BuysTime(seen, months) => said
            .with("defect", named::defect(&seen.defect))
            .with("least", months.least)
            .with("most", months.most),
        Stance::Referred(trade) => said.with("who", Said::new(format!("{}.who", trade.key()))),
        Stance::FirstStep(Some(until)) => said.with("until", *until),
        Stance::For(remedies) => said.with(
            "remedies",
            remedies.iter().map(named::remedy).collect::<Vec<_>>(),
        ),
        _ => said,
    })
}

fn key(stance: &Stance<'_>, record: &Record<'_>) -> Option<&'static str> {
    Some(match stance {
        Stance::Done => "doorstep-asked-done",
        Stance::Refused(refused) if refused.forbidden => "doorstep-asked-forbidden",
        Stance::Refused(_) => "doorstep-asked-refused",
        Stance::Worsens(_) => "doorstep-asked-worsens",
        Stance::Referred(_) => "doorstep-asked-referred",
        Stance::BuysTime(..) => "doorstep-asked-buys-time",
        Stance::FirstStep(Some(until)) if *until < record.today() => "doorstep-asked-step-over",
        Stance::FirstStep(_) => "doorstep-asked-first-step",
        Stance::Smaller => "doorstep-asked-smaller",
        Stance::Larger => "doorstep-asked-larger",
        Stance::Agrees => "doorstep-asked-agrees",
        Stance::For(_) => "doorstep-asked-for",
        Stance::LookFirst => "doorstep-asked-look-first",
        Stance::Silent => return None,
    })
}
