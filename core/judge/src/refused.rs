//! The courses that are not offered: forbidden by a rule, or refused by judgement, each narrowed where it is.

use crate::course::{Decision, Ground};
use crate::faults::Fault;
use crate::rules::{Case, Completed, Rule, against, flashing, reason, recover};
use trade::catalogue::{Effect, Months, RemedyKey};
use trade::verdict::{Course, Narrowed, Reason, Refused, Source, StandsOn, Strength};
use trade::words::Said;

/// The remedy that is sold as a repair and is none.
const SEALANT: &str = "sealant";
/// The remedy that lays a new covering over the old one.
const RECOVER: &str = "recover";

/// All that is not offered.
pub fn refused(case: &Case<'_>, decision: &Decision) -> Vec<Refused> {
    [
        repair(case, decision),
        recover_whole(case, decision),
        old_flashings(case, decision),
        sealant_alone(case, decision),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// A repair, where something calls for one and it would not work. Code does not bar it: judgement or house policy does.
fn repair(case: &Case<'_>, decision: &Decision) -> Option<Refused> {
    let covered = matches!(decision.course, Course::Recover | Course::TearOff);
    if !covered {
        return None;
    }
    let narrowed = if decision.grounds.contains(&Ground::Layers) {
        Narrowed::BeyondMakingSafe
    } else {
        Narrowed::Whole
    };
    Some(Refused {
        course: Course::Repair,
        narrowed,
        forbidden: false,
        reasons: decision
            .grounds
            .iter()
            .filter_map(|ground| against::ground(case, *ground))
            .collect(),
    })
}

/// A re-cover: where a new covering is due, where the caller asked for it, or where a repair is done on as many layers as
/// may lie.
fn recover_whole(case: &Case<'_>, decision: &Decision) -> Option<Refused> {
    let asked = case.as_of.visit.request.asks.iter().any(|ask| {
        ask.remedy
            .as_ref()
            .is_some_and(|remedy| remedy.as_str() == RECOVER)
    });
    let due = decision.course == Course::TearOff;
    let over_layers = decision.course == Course::Repair && recover::layers(case).is_some();
    if decision.course == Course::Recover || !(due || asked || over_layers) {
        return None;
    }
    let bars = recover::forbidden(case);
    let forbidden = !bars.is_empty();
    Some(Refused {
        course: Course::Recover,
        narrowed: Narrowed::Whole,
        forbidden,
        reasons: if forbidden {
            bars
        } else {
            recover::against(case)
        },
    })
}

/// A re-cover that keeps the old flashings: barred by code where they are spoilt, by judgement where they are not.
fn old_flashings(case: &Case<'_>, decision: &Decision) -> Option<Refused> {
    (decision.course == Course::Recover).then(|| {
        let why = flashing::not_reused(case);
        Refused {
            course: Course::Recover,
            narrowed: Narrowed::OldFlashings,
            forbidden: why.strength == Strength::Forbids,
            reasons: vec![why],
        }
    })
}

/// Sealant where a leak needs more, and whatever the caller asked for that does not cure.
fn sealant_alone(case: &Case<'_>, decision: &Decision) -> Option<Refused> {
    if decision.course == Course::LookFirst {
        return None;
    }
    let mut reasons: Vec<Reason> = asked(case);
    let held_off: Vec<StandsOn> = case
        .faults
        .iter()
        .filter(|fault| fault.is_ours_to_repair() && fault.lets_water_in())
        .filter(|fault| effect(fault, &RemedyKey::from(SEALANT)).is_some_and(is_no_cure))
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    if !held_off.is_empty() {
        reasons.push(reason(Rule::SealantAlone, Source::Practice, Strength::Advises).on(held_off));
    }
    (!reasons.is_empty()).then_some(Refused {
        course: Course::Repair,
        narrowed: Narrowed::SealantAlone,
        forbidden: false,
        reasons,
    })
}

/// What the caller asked for by name, where it does not cure what was found.
fn asked(case: &Case<'_>) -> Vec<Reason> {
    let asks = &case.as_of.visit.request.asks;
    asks.iter()
        .filter_map(|ask| Some((ask, ask.remedy.as_ref()?)))
        .flat_map(|(ask, remedy)| {
            case.faults
                .iter()
                .filter(move |fault| fault.part.kind == ask.kind)
                .filter_map(move |fault| asked_for(case, fault, remedy))
        })
        .collect()
}

fn asked_for(case: &Case<'_>, fault: &Fault<'_>, remedy: &RemedyKey) -> Option<Reason> {
    let said = match effect(fault, remedy)? {
        Effect::Cures => return None,
        Effect::BuysTime { months, .. } => buys_time(*months),
        Effect::Worsens => reason(Rule::AskedMakesWorse, Source::Practice, Strength::Advises),
    };
    Some(
        said.with("remedy", Said::new(remedy.message()))
            .on(vec![case.visit(), StandsOn::Mark(fault.mark.id)]),
    )
}

fn buys_time(months: Months) -> Reason {
    reason(Rule::AskedDoesNotCure, Source::Practice, Strength::Advises)
        .with("least", months.least)
        .with("most", months.most)
}

fn effect<'a>(fault: &Fault<'a>, remedy: &RemedyKey) -> Option<&'a Effect> {
    fault.defect?.effect_on(&fault.part.kind, remedy)
}

fn is_no_cure(effect: &Effect) -> bool {
    *effect != Effect::Cures
}
