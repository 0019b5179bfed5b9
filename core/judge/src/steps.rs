//! The steps of a verdict, in order of time.

use crate::course::{Decision, Ground};
use crate::faults::Fault;
use crate::rules::{Case, against, reason, saying, waits};
use jiff::{Span, civil::Date};
use std::collections::BTreeMap;
use trade::catalogue::RemedySize;
use trade::verdict::{
    Course, LicensedTrade, Question, Reason, Source, StandsOn, Step, Strength, Task, When,
};
use trade::words::Said;

/// Makes the steps.
pub fn steps(case: &Case<'_>, decision: &Decision, today: Date) -> Vec<Step> {
    let make_safe = make_safe(case, decision.course, today);
    let safe = make_safe.is_some();
    let mut steps: Vec<Step> = make_safe.into_iter().collect();
    match decision.course {
        Course::TearOff | Course::Recover => steps.push(new_covering(case, decision)),
        Course::Leave => steps.push(leave(case, today)),
        Course::LookFirst => steps.push(look_first(case)),
        Course::Refer => steps.push(installer(case)),
        Course::Repair | Course::Maintain | Course::MakeSafe => {}
    }
    if decision.course != Course::Refer {
        steps.extend(by_time(case, decision, Course::Repair, safe));
    }
    steps.extend(by_time(case, decision, Course::Maintain, safe));
    steps.extend(referrals(case));
    waits::settle(case, &mut steps);
    steps.sort_by_key(|step| (step.when, rank(step.course)));
    steps
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

/// Cover or seal for weeks, where water comes in, or will, or something may fall. What upkeep puts right at once, and
/// what another trade alone may touch, needs no cover of ours.
fn make_safe(case: &Case<'_>, course: Course, today: Date) -> Option<Step> {
    if matches!(course, Course::Leave | Course::Maintain)
        && !case.answers.get(Question::MayFall).is_yes()
    {
        return None;
    }
    let urgent: Vec<&Fault<'_>> = case
        .faults
        .iter()
        .filter(|fault| fault.is_urgent() && !fault.is_upkeep())
        .collect();
    let reasons: Vec<Reason> = [
        (Question::WaterComesIn, "water-comes-in"),
        (Question::OpenToRain, "open-to-rain"),
        (Question::MayFall, "may-fall"),
    ]
    .into_iter()
    .filter_map(|(question, rule)| {
        case.because(question, rule, Source::Evidence, Strength::Requires)
    })
    .collect();
    if reasons.is_empty() && urgent.is_empty() {
        return None;
    }
    let catalogue = case.as_of.rules.catalogue;
    let tasks = urgent
        .into_iter()
        .map(|fault| Task {
            part: fault.part.id,
            remedy: fault.stopgap(catalogue),
            trade: None,
        })
        .collect();
    Some(Step {
        when: When::Now,
        course: Course::MakeSafe,
        tasks: each_once(tasks),
        until: weeks_on(today, case.as_of.rules.policy.make_safe_weeks),
        reasons: if reasons.is_empty() {
            vec![urgent_faults(case)]
        } else {
            reasons
        },
    })
}

fn urgent_faults(case: &Case<'_>) -> Reason {
    let marks = case
        .faults
        .iter()
        .filter(|fault| fault.is_urgent())
        .map(|fault| StandsOn::Mark(fault.mark.id))
        .collect();
    reason("urgent", Source::Evidence, Strength::Requires, marks)
}

fn new_covering(case: &Case<'_>, decision: &Decision) -> Step {
    let field = case
        .as_of
        .standing
        .iter()
        .map(|standing| standing.part)
        .chain(case.as_of.unseen.iter().copied())
        .filter(|part| {
            case.as_of
                .rules
                .catalogue
                .kind(&part.kind)
                .is_some_and(|kind| kind.clears.contains(&Question::CoveringDone))
        });
    let among = case
        .faults
        .iter()
        .filter(|fault| taken_along(fault))
        .map(|fault| fault.part);
    let tasks = field
        .chain(among)
        .map(|part| Task {
            part: part.id,
            remedy: None,
            trade: None,
        })
        .collect();
    let mut reasons: Vec<Reason> = decision
        .grounds
        .iter()
        .filter_map(|ground| against::ground(case, *ground))
        .collect();
    if decision.course == Course::TearOff {
        reasons.push(reason(
            "deck-judged-bare",
            Source::Practice,
            Strength::Advises,
            Vec::new(),
        ));
    }
    Step {
        when: covering_when(case, decision),
        course: decision.course,
        tasks: each_once(tasks),
        until: None,
        reasons,
    }
}

/// What a new covering renews anyway.
fn taken_along(fault: &Fault<'_>) -> bool {
    fault.size == RemedySize::Covering || fault.is_ours_to_repair() && fault.lifts_shingles()
}

fn covering_when(case: &Case<'_>, decision: &Decision) -> When {
    let soon = case.answers.get(Question::WaterComesIn).is_yes()
        || decision.grounds.iter().any(|ground| {
            matches!(
                ground,
                Ground::Is(Question::CoveringDone | Question::DeckWetBroad)
            )
        })
        || case
            .faults
            .iter()
            .any(|fault| taken_along(fault) && fault.when() <= When::ThisSeason);
    if soon { When::ThisSeason } else { When::Later }
}

fn leave(case: &Case<'_>, today: Date) -> Step {
    let years = case.as_of.rules.policy.look_again_years;
    let fact = case.facts.fact(Question::CoveringDone);
    Step {
        when: When::Later,
        course: Course::Leave,
        tasks: Vec::new(),
        until: today.checked_add(Span::new().years(i64::from(years))).ok(),
        reasons: vec![reason(
            "sound",
            Source::Evidence,
            Strength::Advises,
            fact.stands_on(),
        )],
    }
}

fn look_first(case: &Case<'_>) -> Step {
    use crate::course::Sight;
    let water = case.answers.get(Question::WaterComesIn).is_yes();
    let rule = match case.situation.sight {
        Sight::Nothing => "look-nothing-seen",
        Sight::Afar => "look-seen-from-afar",
        Sight::Close if water => "look-water-unexplained",
        Sight::Close => "look-covering-not-seen",
    };
    Step {
        when: if water { When::Now } else { When::ThisSeason },
        course: Course::LookFirst,
        tasks: Vec::new(),
        until: None,
        reasons: vec![reason(
            rule,
            Source::Evidence,
            Strength::Requires,
            vec![StandsOn::Visit(case.as_of.visit.id)],
        )],
    }
}

fn installer(case: &Case<'_>) -> Step {
    let faults: Vec<&Fault<'_>> = case
        .faults
        .iter()
        .filter(|fault| fault.is_workmanship() && !fault.is_referred())
        .collect();
    Step {
        when: soonest(faults.iter().copied()).max(When::ThisSeason),
        course: Course::Refer,
        tasks: each_once(
            faults
                .iter()
                .map(|fault| Task {
                    part: fault.part.id,
                    remedy: fault.remedy.clone(),
                    trade: None,
                })
                .collect(),
        ),
        until: None,
        reasons: vec![reason(
            "installer-answers",
            Source::Practice,
            Strength::Advises,
            faults
                .iter()
                .map(|fault| StandsOn::Mark(fault.mark.id))
                .collect(),
        )],
    }
}

/// Repair or upkeep, one step for each time. What a new covering renews anyway is left to it.
fn by_time(case: &Case<'_>, decision: &Decision, course: Course, safe: bool) -> Vec<Step> {
    let covered = matches!(decision.course, Course::Recover | Course::TearOff);
    if decision.course == Course::LookFirst && case.situation.sight != crate::course::Sight::Close {
        return Vec::new();
    }
    let mut times: BTreeMap<When, Vec<&Fault<'_>>> = BTreeMap::new();
    for fault in case.faults {
        let ours = match course {
            Course::Repair => fault.is_ours_to_repair() && !(covered && taken_along(fault)),
            _ => fault.is_upkeep() && !(covered && fault.lifts_shingles()),
        };
        if ours {
            times
                .entry(time_of(fault, course, safe))
                .or_default()
                .push(fault);
        }
    }
    if course == Course::Repair && decision.course == Course::Repair && times.is_empty() {
        times.insert(When::ThisSeason, Vec::new());
    }
    times
        .into_iter()
        .map(|(when, faults)| Step {
            when,
            course,
            tasks: each_once(faults.iter().map(|fault| task(fault)).collect()),
            until: None,
            reasons: reasons_for(case, &faults),
        })
        .collect()
}

/// What was made safe now is put right this season.
fn time_of(fault: &Fault<'_>, course: Course, safe: bool) -> When {
    if course == Course::Repair && safe {
        fault.when().max(When::ThisSeason)
    } else {
        fault.when()
    }
}

fn reasons_for(case: &Case<'_>, faults: &[&Fault<'_>]) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = faults.iter().map(|fault| fault_reason(fault)).collect();
    if faults.is_empty() {
        reasons.extend(case.because(
            Question::DeckWet,
            "deck-wet",
            Source::Evidence,
            Strength::Requires,
        ));
    }
    reasons
}

fn fault_reason(fault: &Fault<'_>) -> Reason {
    let part = Said::new(fault.part.kind.message());
    let says = match fault.defect {
        Some(defect) => Said::new("reason-fault")
            .with("part", part)
            .with("defect", Said::new(defect.key.message())),
        None => Said::new("reason-fault-unnamed")
            .with("part", part)
            .with("rung", Said::new(fault.rung.key())),
    };
    saying(
        "fault",
        says,
        Source::Evidence,
        Strength::Requires,
        vec![StandsOn::Mark(fault.mark.id)],
    )
}

/// One step for each trade that must do work here.
fn referrals(case: &Case<'_>) -> Vec<Step> {
    let mut trades: BTreeMap<Option<LicensedTrade>, Vec<&Fault<'_>>> = BTreeMap::new();
    for fault in case.faults.iter().filter(|fault| fault.is_referred()) {
        trades.entry(fault.trade).or_default().push(fault);
    }
    trades
        .into_iter()
        .map(|(trade, faults)| Step {
            when: soonest(faults.iter().copied()),
            course: Course::Refer,
            tasks: each_once(
                faults
                    .iter()
                    .map(|fault| Task {
                        trade,
                        ..task(fault)
                    })
                    .collect(),
            ),
            until: None,
            reasons: faults.iter().map(|fault| fault_reason(fault)).collect(),
        })
        .collect()
}

fn task(fault: &Fault<'_>) -> Task {
    Task {
        part: fault.part.id,
        remedy: fault.remedy.clone(),
        trade: fault.trade,
    }
}

fn soonest<'a>(faults: impl Iterator<Item = &'a Fault<'a>>) -> When {
    faults.map(Fault::when).min().unwrap_or(When::ThisSeason)
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

fn weeks_on(today: Date, weeks: u8) -> Option<Date> {
    today.checked_add(Span::new().weeks(i64::from(weeks))).ok()
}
