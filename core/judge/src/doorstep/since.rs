//! Work since: ours, not ours, or nobody knows whose; never a guess at who.

use super::named;
use super::record::Record;
use trade::doorstep::{Line, Tells};
use trade::verdict::StandsOn;
use trade::words::Said;
use trade::work::{Evidence, Work};

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    record
        .timeline
        .works()
        .iter()
        .filter(|work| is_news(record, work))
        .filter_map(|work| line(record, work))
        .collect()
}

/// Work that no look has seen yet, or that came after the last visit.
fn is_news(record: &Record<'_>, work: &Work) -> bool {
    let unseen = record.parts.iter().any(|known| {
        let since = &known.standing.since;
        since.all.iter().any(|done| done.work.id == work.id)
    });
    unseen || record.last_visit().is_none_or(|visit| work.when > visit.on)
}

fn line(record: &Record<'_>, work: &Work) -> Option<Line> {
    let told = Said::new("doorstep-work-since")
        .with("where", named::place(record, work.on)?)
        .with("work", named::work(work));
    let hearsay = (work.evidence == Evidence::Told).then(|| Said::new("doorstep-so-told"));
    Some(Line {
        tells: Tells::WorkSince,
        says: named::sentences([Some(told), hearsay].into_iter().flatten())?,
        stands_on: vec![StandsOn::Work(work.id)],
    })
}
