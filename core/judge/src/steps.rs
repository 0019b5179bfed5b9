//! The steps of a verdict, in order of time.

use crate::course::{Decision, Ground, Sight, Water};
use crate::covering::NewCovering;
use crate::faults::Fault;
use crate::rules::{Case, Completed, Found, Rule, against, needed, reason, recover, waits};
use crate::why;
use jiff::{Span, civil::Date};
use std::collections::{BTreeMap, BTreeSet};
use trade::ids::PartId;
use trade::mark::Rung;
use trade::verdict::{
    Course, LicensedTrade, Question, Reason, Source, StandsOn, Step, Strength, Task, When,
};

/// Makes the steps. What the rules found about single parts goes to the step that works on them; what is left comes back.
pub fn steps(
    case: &Case<'_>,
    decision: &Decision,
    found: Vec<Found>,
    today: Date,
) -> (Vec<Step>, Vec<Found>) {
    let make_safe = make_safe(case, decision.course, today);
    let safe = make_safe.is_some();
    let covering = NewCovering::of(case, decision);
    let mut steps: Vec<Step> = make_safe.into_iter().collect();
    match decision.course {
        Course::Leave => steps.push(leave(case, today)),
        Course::LookFirst => steps.push(look_first(case)),
        _ => steps.extend(
            covering
                .as_ref()
                .map(|covering| new_covering(case, decision, covering)),
        ),
    }
    let works_close = case.situation.sight == Sight::Close;
    let installers = case.situation.installer_answers && works_close;
    if installers {
        steps.push(installer(case));
    }
    if works_close && !installers {
        steps.extend(by_time(
            case,
            decision,
            covering.as_ref(),
            Course::Repair,
            safe,
        ));
    }
    if works_close {
        steps.extend(by_time(
            case,
            decision,
            covering.as_ref(),
            Course::Maintain,
            safe,
        ));
    }
    steps.extend(referrals(case, &found));
    let left = share_out(&mut steps, found);
    waits::settle(case, &mut steps);
    for step in &mut steps {
        step.reasons = said_once(std::mem::take(&mut step.reasons));
    }
    steps.sort_by_key(|step| (step.when, rank(step.course)));
    (steps, left)
}

/// Safety first, then whom our work waits for, then the greater work before the lesser.
fn rank(course: Course) -> u8 {
    match course {
        Course::MakeSafe => 0,
        Course::Refer => 1,
        Course::LookFirst => 2,
        Course::TearOff => 3,
        Course::Recover => 4,
        Course::Repair => 5,
        Course::Maintain => 6,
        Course::Leave => 7,
    }
}

/// Cover or seal for weeks, where water comes in, or will, or something may fall. What upkeep puts right at once needs no
/// cover, and where all is sound or small there is nothing to cover.
fn make_safe(case: &Case<'_>, course: Course, today: Date) -> Option<Step> {
    let small = matches!(course, Course::Leave | Course::Maintain);
    let water = case.answers.get(Question::WaterComesIn).is_yes();
    let urgent: Vec<&Fault<'_>> = case
        .faults
        .iter()
        .filter(|fault| fault.is_urgent() || water && fault.lets_water_in())
        .filter(|fault| !fault.is_upkeep())
        .collect();
    let reasons = why::make_safe(case);
    if urgent.is_empty() && (small || reasons.is_empty()) {
        return None;
    }
    let weeks = i64::from(case.as_of.rules.policy.make_safe_weeks);
    Some(Step {
        when: When::Now,
        course: Course::MakeSafe,
        tasks: stopgaps(case, &urgent),
        slopes: Vec::new(),
        until: today.checked_add(Span::new().weeks(weeks)).ok(),
        reasons: if reasons.is_empty() {
            vec![why::urgent(&urgent)]
        } else {
            reasons
        },
    })
}

/// What holds each part for weeks; a part whose other fault has a stopgap needs no more.
fn stopgaps(case: &Case<'_>, urgent: &[&Fault<'_>]) -> Vec<Task> {
    let catalogue = case.as_of.rules.catalogue;
    let tasks: Vec<Task> = urgent
        .iter()
        .map(|fault| Task {
            part: fault.part.id,
            remedy: fault.stopgap(catalogue),
            trade: None,
        })
        .collect();
    let held = |part: PartId| {
        tasks
            .iter()
            .any(|task| task.part == part && task.remedy.is_some())
    };
    let needed = tasks
        .iter()
        .filter(|task| task.remedy.is_some() || !held(task.part))
        .cloned()
        .collect();
    each_once(needed)
}

fn new_covering(case: &Case<'_>, decision: &Decision, covering: &NewCovering<'_>) -> Step {
    let mut reasons: Vec<Reason> = decision
        .grounds
        .iter()
        .filter_map(|ground| against::ground(case, *ground))
        .collect();
    reasons.extend(why::some_slopes_only(covering));
    match covering.course {
        Course::Recover => reasons.extend(recover::allowed(case)),
        _ => reasons.push(needed::deck_judged_bare()),
    }
    reasons.extend(needed::of_covering(case, covering.course, &covering.slopes));
    Step {
        when: covering_when(case, decision, covering),
        course: covering.course,
        tasks: covering_tasks(case, covering),
        slopes: covering.named(),
        until: None,
        reasons,
    }
}

/// The fields, and what is wrong among them that the covering renews.
fn covering_tasks(case: &Case<'_>, covering: &NewCovering<'_>) -> Vec<Task> {
    let seen = case.as_of.standing.iter().map(|standing| standing.part);
    let fields = seen
        .chain(case.as_of.unseen.iter().copied())
        .filter(|part| {
            covering.reaches(part)
                && case
                    .as_of
                    .rules
                    .catalogue
                    .kind(&part.kind)
                    .is_some_and(|kind| kind.clears.contains(&Question::CoveringDone))
        });
    let along = case
        .faults
        .iter()
        .filter(|fault| covering.takes_along(fault))
        .map(|fault| fault.part);
    let tasks = fields
        .chain(along)
        .map(|part| Task {
            part: part.id,
            remedy: None,
            trade: None,
        })
        .collect();
    each_once(tasks)
}

fn covering_when(case: &Case<'_>, decision: &Decision, covering: &NewCovering<'_>) -> When {
    let urgent_ground = decision.grounds.iter().any(|ground| {
        matches!(
            ground,
            Ground::Is(Question::CoveringDone | Question::DeckWetBroad)
        )
    });
    let urgent_fault = case
        .faults
        .iter()
        .any(|fault| covering.takes_along(fault) && fault.when() <= When::ThisSeason);
    if urgent_ground || urgent_fault || case.answers.get(Question::WaterComesIn).is_yes() {
        When::ThisSeason
    } else {
        When::Later
    }
}

/// Sound: the next look by age. An ageing roof is looked at again in half the time (common practice, no source).
fn leave(case: &Case<'_>, today: Date) -> Step {
    let ageing = case
        .as_of
        .standing
        .iter()
        .any(|standing| standing.rung >= Rung::Ageing);
    let years = i64::from(case.as_of.rules.policy.look_again_years);
    let months = if ageing { years * 6 } else { years * 12 };
    let rule = if ageing {
        Rule::SoundAgeing
    } else {
        Rule::Sound
    };
    let fact = case.facts.fact(Question::CoveringDone);
    Step {
        when: When::Later,
        course: Course::Leave,
        tasks: Vec::new(),
        slopes: Vec::new(),
        until: today.checked_add(Span::new().months(months)).ok(),
        reasons: vec![reason(rule, Source::Evidence, Strength::Advises).on(fact.stands_on())],
    }
}

fn look_first(case: &Case<'_>) -> Step {
    let water = case.answers.get(Question::WaterComesIn).is_yes();
    let traces: Vec<Task> = case
        .faults
        .iter()
        .filter(|fault| fault.is_trace())
        .map(task)
        .collect();
    let unexplained = match case.situation.water {
        Water::WayInFound => false,
        Water::Traced => true,
        Water::NothingFound => water,
    };
    let rule = match case.situation.sight {
        Sight::Nothing => Rule::LookNothingSeen,
        Sight::Afar => Rule::LookSeenFromAfar,
        Sight::Close if unexplained => Rule::LookWaterUnexplained,
        Sight::Close => Rule::LookCoveringNotSeen,
    };
    Step {
        when: if water { When::Now } else { When::ThisSeason },
        course: Course::LookFirst,
        tasks: each_once(traces),
        slopes: Vec::new(),
        until: None,
        reasons: vec![reason(rule, Source::Evidence, Strength::Requires).on(vec![case.visit()])],
    }
}

/// Documented for the owner, who is advised to call whoever laid it.
fn installer(case: &Case<'_>) -> Step {
    let faults: Vec<&Fault<'_>> = case
        .faults
        .iter()
        .filter(|fault| fault.is_workmanship() && !fault.is_referred())
        .collect();
    let mut reasons = vec![
        reason(Rule::InstallerAnswers, Source::Practice, Strength::Advises).on(records(&faults)),
    ];
    reasons.extend(faults.iter().map(|fault| why::fault(fault)));
    Step {
        when: soonest(&faults).max(When::ThisSeason),
        course: Course::Refer,
        tasks: each_once(faults.iter().map(|fault| task(fault)).collect()),
        slopes: Vec::new(),
        until: None,
        reasons,
    }
}

/// Repair or upkeep, one step for each time. What a new covering takes along is left to it.
fn by_time(
    case: &Case<'_>,
    decision: &Decision,
    covering: Option<&NewCovering<'_>>,
    course: Course,
    safe: bool,
) -> Vec<Step> {
    let mut times: BTreeMap<When, Vec<&Fault<'_>>> = BTreeMap::new();
    for fault in case.faults {
        let taken_along = covering.is_some_and(|covering| covering.takes_along(fault));
        if belongs(fault, course, decision.course) && !taken_along {
            times
                .entry(time_of(fault, course, safe))
                .or_default()
                .push(fault);
        }
    }
    // A wet deck that was only answered, with no defect named, is repaired all the same.
    if course == Course::Repair && decision.course == Course::Repair && times.is_empty() {
        times.insert(When::ThisSeason, Vec::new());
    }
    times
        .into_iter()
        .map(|(when, faults)| Step {
            when,
            course,
            tasks: each_once(faults.iter().map(|fault| task(fault)).collect()),
            slopes: Vec::new(),
            until: None,
            reasons: match course {
                Course::Repair => why::repair(case, decision, &faults),
                _ => faults.iter().map(|fault| why::fault(fault)).collect(),
            },
        })
        .collect()
}

/// Whether a fault is put right by the steps of one course. A fresh trace of water is followed up with the work on its way
/// in; where that was not found, the look comes first.
fn belongs(fault: &Fault<'_>, course: Course, main: Course) -> bool {
    if fault.is_fresh_trace() || fault.is_trace() && main == Course::LookFirst {
        return !fault.is_referred() && course == main;
    }
    match course {
        Course::Repair => fault.is_ours_to_repair(),
        _ => fault.is_upkeep(),
    }
}

/// What was made safe now is put right this season.
fn time_of(fault: &Fault<'_>, course: Course, safe: bool) -> When {
    if course == Course::Repair && safe {
        fault.when().max(When::ThisSeason)
    } else {
        fault.when()
    }
}

/// One step for each trade that must do work here: what is wrong, what rules found low, and what stops our work.
fn referrals(case: &Case<'_>, found: &[Found]) -> Vec<Step> {
    let mut trades: BTreeMap<Option<LicensedTrade>, Step> = BTreeMap::new();
    for fault in case.faults.iter().filter(|fault| fault.is_referred()) {
        let step = trades
            .entry(fault.trade)
            .or_insert_with(|| refer(fault.when()));
        step.when = step.when.min(fault.when());
        step.tasks.push(task(fault));
        step.reasons.push(why::fault(fault));
    }
    for (trade, part) in too_low(case, found) {
        let step = trades
            .entry(Some(trade))
            .or_insert_with(|| refer(When::Later));
        if step.tasks.iter().all(|task| task.part != part) {
            step.tasks.push(for_trade(part, trade));
        }
    }
    for (question, trade) in STOPPED_BY {
        let Some(why) = why::stopped(case, question) else {
            continue;
        };
        let step = trades
            .entry(Some(trade))
            .or_insert_with(|| refer(When::ThisSeason));
        for part in parts_of(case, question) {
            if step.tasks.iter().all(|task| task.part != part) {
                step.tasks.push(for_trade(part, trade));
            }
        }
        step.reasons.push(why);
    }
    trades
        .into_values()
        .map(|step| Step {
            tasks: each_once(step.tasks),
            ..step
        })
        .collect()
}

/// The parts that a fact speaks of; where a reading of layers gave it, the fields there.
fn parts_of(case: &Case<'_>, question: Question) -> BTreeSet<PartId> {
    let fact = case.facts.fact(question);
    let named = fact.parts();
    if !named.is_empty() {
        return named;
    }
    let slopes = fact.slopes();
    case.as_of
        .parts()
        .into_iter()
        .filter(|part| case.as_of.is_field(part))
        .filter(|part| slopes.is_empty() || part.slope.is_some_and(|slope| slopes.contains(&slope)))
        .map(|part| part.id)
        .collect()
}

/// What is so, and the trade that must clear it.
const STOPPED_BY: [(Question, LicensedTrade); 3] = [
    (Question::Asbestos, LicensedTrade::Asbestos),
    (Question::Vermiculite, LicensedTrade::Asbestos),
    (Question::FrameWeak, LicensedTrade::Structural),
];

/// Chimneys and vents that do not stand high enough, where no fault refers them already.
fn too_low(case: &Case<'_>, found: &[Found]) -> Vec<(LicensedTrade, PartId)> {
    found
        .iter()
        .filter(|found| {
            [Rule::ChimneyLow, Rule::GasVentLow, Rule::GasVentNotInTable]
                .iter()
                .any(|rule| rule.name() == found.reason.rule)
        })
        .filter_map(|found| {
            let part = case.as_of.history.part(found.part)?;
            let kind = case.as_of.rules.catalogue.kind(&part.kind)?;
            Some((kind.refer?, part.id))
        })
        .collect()
}

fn refer(when: When) -> Step {
    Step {
        when,
        course: Course::Refer,
        tasks: Vec::new(),
        slopes: Vec::new(),
        until: None,
        reasons: Vec::new(),
    }
}

/// Gives each finding to the first step that works on its part.
fn share_out(steps: &mut [Step], found: Vec<Found>) -> Vec<Found> {
    let mut left = Vec::new();
    for one in found {
        let step = steps.iter_mut().find(|step| {
            step.course != Course::MakeSafe && step.tasks.iter().any(|task| task.part == one.part)
        });
        match step {
            Some(step) => step.reasons.push(one.reason),
            None => left.push(one),
        }
    }
    left
}

fn task(fault: &Fault<'_>) -> Task {
    Task {
        part: fault.part.id,
        remedy: fault.remedy.clone(),
        trade: fault.trade,
    }
}

fn for_trade(part: PartId, trade: LicensedTrade) -> Task {
    Task {
        part,
        remedy: None,
        trade: Some(trade),
    }
}

fn soonest(faults: &[&Fault<'_>]) -> When {
    faults
        .iter()
        .map(|fault| fault.when())
        .min()
        .unwrap_or(When::ThisSeason)
}

fn records(faults: &[&Fault<'_>]) -> Vec<StandsOn> {
    faults
        .iter()
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect()
}

/// Reasons that say the same become one, which stands on the records of all.
fn said_once(reasons: Vec<Reason>) -> Vec<Reason> {
    let mut kept: Vec<Reason> = Vec::new();
    for one in reasons {
        let same = kept.iter_mut().find(|known| {
            (&known.says, &known.source, known.strength) == (&one.says, &one.source, one.strength)
        });
        match same {
            Some(known) => {
                let all = known.stands_on.iter().chain(&one.stands_on).copied();
                *known = known.clone().on(all.collect());
            }
            None => kept.push(one),
        }
    }
    kept
}

fn each_once(tasks: Vec<Task>) -> Vec<Task> {
    let mut kept: Vec<Task> = Vec::new();
    for task in tasks {
        if !kept.contains(&task) {
            kept.push(task);
        }
    }
    kept
}
