//! Whether what is wrong was built in lately, so that whoever laid the roof answers for it.

use crate::as_of::AsOf;
use crate::faults::Fault;
use trade::ids::WorkId;
use trade::work::{By, Did, Work, WorkOn};

/// The recent roof work behind the faults.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Recent {
    /// The work, where one is recorded; `None` where only the year of building says so.
    pub work: Option<WorkId>,
    /// Whose it was.
    pub by: By,
}

/// The recent work behind the faults, where all that needs more than upkeep was built in. Common practice, no source.
pub fn recent(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> Option<Recent> {
    let mut ours = faults
        .iter()
        .filter(|fault| !fault.is_upkeep() && !fault.is_referred())
        .peekable();
    ours.peek()?;
    ours.all(Fault::is_workmanship)
        .then(|| last_covering(as_of).or_else(|| newly_built(as_of)))
        .flatten()
}

fn last_covering(as_of: &AsOf<'_>) -> Option<Recent> {
    let years = i64::from(as_of.rules.policy.installer_answers_years);
    let since = as_of
        .visit
        .on
        .checked_sub(jiff::Span::new().years(years))
        .ok()?;
    as_of
        .works()
        .iter()
        .filter(|work| is_new_covering(as_of, work) && work.when >= since)
        .max_by_key(|work| (work.when, work.id))
        .map(|work| Recent {
            work: Some(work.id),
            by: work.by,
        })
}

fn is_new_covering(as_of: &AsOf<'_>, work: &Work) -> bool {
    let here = match work.on {
        WorkOn::Structure(structure) => structure == as_of.structure,
        WorkOn::Slope(slope) => as_of
            .history
            .slope(slope)
            .is_some_and(|slope| slope.structure == as_of.structure),
        WorkOn::Part(_) => false,
    };
    here && matches!(work.did, Did::Replaced | Did::Remedy(_)) && as_of.covers(work)
}

fn newly_built(as_of: &AsOf<'_>) -> Option<Recent> {
    let built = as_of.history.property.built?;
    let age = as_of.visit.on.year() - built;
    (0..=i16::from(as_of.rules.policy.installer_answers_years))
        .contains(&age)
        .then_some(Recent {
            work: None,
            by: By::NotUs,
        })
}
