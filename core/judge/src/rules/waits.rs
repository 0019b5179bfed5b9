//! Our work waits where it depends on another trade's.

use super::{Case, Completed, Rule, reason};
use std::collections::BTreeSet;
use trade::catalogue::CoveredAnew;
use trade::ids::{PartId, SlopeId};
use trade::verdict::{Course, LicensedTrade, Reason, Source, Step, Strength};
use trade::words::Said;

/// Brings each referral forward to the work that waits for it, and says in that work's step for whom it waits.
pub fn settle(case: &Case<'_>, steps: &mut [Step]) {
    let referrals: Vec<(usize, LicensedTrade)> = steps
        .iter()
        .enumerate()
        .filter(|(_, step)| step.course == Course::Refer)
        .filter_map(|(at, step)| Some((at, step.tasks.first()?.trade?)))
        .collect();
    for (at, trade) in referrals {
        let mut earliest = steps[at].when;
        for other in 0..steps.len() {
            if waits(case, &steps[other], &steps[at], trade) {
                earliest = earliest.min(steps[other].when);
                steps[other].reasons.push(waits_for(trade));
            }
        }
        steps[at].when = earliest;
    }
}

fn waits_for(trade: LicensedTrade) -> Reason {
    reason(Rule::WaitsForTrade, Source::Practice, Strength::Requires)
        .with("trade", Said::new(format!("{}.who", trade.key())))
}

/// A cover for weeks waits for nobody; a new covering waits for whoever clears asbestos, vermiculite or the frame.
fn waits(case: &Case<'_>, ours: &Step, theirs: &Step, trade: LicensedTrade) -> bool {
    let covers = matches!(ours.course, Course::Recover | Course::TearOff);
    let works = covers || matches!(ours.course, Course::Repair | Course::Maintain);
    let under_it_all = matches!(trade, LicensedTrade::Asbestos | LicensedTrade::Structural);
    works
        && (covers && under_it_all
            || share_a_place(case, ours, theirs)
            || trade == LicensedTrade::Asbestos && is_among_its_shingles(case, ours, theirs))
}

/// Work among shingles of a slope whose own covering may hold asbestos.
fn is_among_its_shingles(case: &Case<'_>, ours: &Step, theirs: &Step) -> bool {
    let part = |id| case.as_of.history.part(id);
    let suspect: BTreeSet<Option<SlopeId>> = theirs
        .tasks
        .iter()
        .filter_map(|task| part(task.part))
        .filter(|part| case.as_of.is_field(part))
        .map(|part| part.slope)
        .collect();
    ours.tasks
        .iter()
        .filter_map(|task| part(task.part))
        .any(|part| {
            let kind = case.as_of.rules.catalogue.kind(&part.kind);
            suspect.contains(&part.slope)
                && kind.is_some_and(|kind| kind.covered_anew != CoveredAnew::Stays)
        })
}

fn share_a_place(case: &Case<'_>, ours: &Step, theirs: &Step) -> bool {
    ours.tasks.iter().any(|one| {
        theirs.tasks.iter().any(|other| {
            place(case, one.part).is_some() && place(case, one.part) == place(case, other.part)
        })
    })
}

/// A part's slope and its stop on the walk.
fn place<'a>(case: &'a Case<'_>, part: PartId) -> Option<(Option<SlopeId>, &'a str)> {
    let part = case.as_of.history.part(part)?;
    let kind = case.as_of.rules.catalogue.kind(&part.kind)?;
    Some((part.slope, kind.stop.as_str()))
}
