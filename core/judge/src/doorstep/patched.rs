//! How often a cause was patched, how long that lasted, and what one more would be.

use super::named;
use super::record::{Known, Record};
use crate::thread::finding::Finding;
use crate::thread::touch::Touch;
use jiff::Unit;
use jiff::civil::Date;
use trade::doorstep::{Line, Tells};
use trade::thread::Patch;
use trade::verdict::StandsOn;
use trade::words::Said;

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let mut patched: Vec<(&Known<'_>, &Finding, Vec<Patch>)> = record
        .parts
        .iter()
        .filter(|known| known.became.is_open())
        .flat_map(|known| {
            let standing = &known.standing;
            standing.story.open.iter().map(move |open| {
                let cause = &open.finding.cause;
                let patches = standing.story.patches_on(cause, &standing.since);
                (known, &open.finding, patches)
            })
        })
        .filter(|(_, _, patches)| !patches.is_empty())
        .collect();
    patched.sort_by_key(|(known, _, patches)| {
        let asked = record.asks_about(&known.standing.story.part.kind);
        (!asked, std::cmp::Reverse(patches.len()))
    });
    patched
        .into_iter()
        .filter_map(|(known, finding, patches)| line(record, known, finding, &patches))
        .collect()
}

fn line(
    record: &Record<'_>,
    known: &Known<'_>,
    finding: &Finding,
    patches: &[Patch],
) -> Option<Line> {
    let part = named::part(record, known.standing.story.part);
    let count = Said::new("doorstep-patched")
        .with("part", part)
        .with("count", counted(patches.len()))
        .with("cause", Said::new(finding.cause.message()));
    let lasted = lasted(known, finding, patches);
    let lasted = (!lasted.is_empty()).then(|| Said::new("doorstep-lasted").with("each", lasted));
    let says = [
        Some(count),
        lasted,
        one_more(record, known, finding, patches),
        limit(record, patches),
    ];
    Some(Line {
        tells: Tells::Patched,
        says: named::sentences(says.into_iter().flatten())?,
        stands_on: records(known, patches),
    })
}

/// What the caller asks for, where that would be one more patch.
fn one_more(
    record: &Record<'_>,
    known: &Known<'_>,
    finding: &Finding,
    patches: &[Patch],
) -> Option<Said> {
    let story = &known.standing.story;
    let remedies = story.remedies();
    record
        .asks()
        .iter()
        .filter(|ask| ask.kind == story.part.kind)
        .filter_map(|ask| ask.remedy.as_ref())
        .find(|remedy| remedies.treats(finding, remedy) && !remedies.cures_all(finding, remedy))
        .map(|remedy| {
            Said::new("doorstep-one-more")
                .with("remedy", named::remedy(remedy))
                .with("number", counted(patches.len() + 1))
        })
}

fn limit(record: &Record<'_>, patches: &[Patch]) -> Option<Said> {
    let limit = record.rules.policy.patch_limit;
    (patches.len() >= usize::from(limit))
        .then(|| Said::new("doorstep-patch-limit").with("limit", limit))
}

/// How long each patch lasted at most: until the cause was seen again, or the next patch was made. Where neither is known, nothing is said.
fn lasted(known: &Known<'_>, finding: &Finding, patches: &[Patch]) -> Vec<Said> {
    let seen_again = known
        .standing
        .story
        .sightings
        .iter()
        .filter(|sighting| sighting.cause == finding.cause)
        .map(|sighting| sighting.on);
    let ends: Vec<Date> = seen_again
        .chain(patches.iter().map(|patch| patch.when))
        .collect();
    patches
        .iter()
        .filter_map(|patch| {
            let end = ends.iter().copied().filter(|end| *end > patch.when).min()?;
            Some(
                Said::new("doorstep-lasted-one")
                    .with("when", patch.when)
                    .with("months", months(patch.when, end)),
            )
        })
        .collect()
}

/// Whole months from one day to a later one, begun months counted full.
fn months(from: Date, to: Date) -> i64 {
    let Ok(span) = from.until((Unit::Month, to)) else {
        return 1;
    };
    let whole = i64::from(span.get_months());
    (whole + i64::from(span.get_days() > 0)).max(1)
}

fn records(known: &Known<'_>, patches: &[Patch]) -> Vec<StandsOn> {
    known
        .standing
        .story
        .works()
        .filter(|done| matches!(done.touch, Touch::Treats(_) | Touch::Something))
        .filter(|done| patches.iter().any(|patch| patch.when == done.work.when))
        .map(|done| StandsOn::Work(done.work.id))
        .collect()
}

fn counted(count: usize) -> i64 {
    i64::try_from(count).unwrap_or(i64::MAX)
}
