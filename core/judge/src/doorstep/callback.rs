//! Our own callbacks: a cure of ours that came back, or that the caller may be calling about.

use super::named;
use super::record::{Known, Record};
use crate::thread::story::within_callback;
use trade::doorstep::{Line, Tells};
use trade::verdict::StandsOn;
use trade::words::Said;
use trade::work::{By, Work};

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    record
        .parts
        .iter()
        .filter_map(|known| came_back(record, known).or_else(|| may_be(record, known)))
        .collect()
}

/// A cure of ours that showed the same cause at the last look, with nothing put right since.
fn came_back(record: &Record<'_>, known: &Known<'_>) -> Option<Line> {
    let story = &known.standing.story;
    let work = story.callback.filter(|work| work.by == By::Us)?;
    let last = story.last.filter(|_| known.became.is_open())?;
    Some(Line {
        tells: Tells::Callback,
        says: about(record, known, work, "doorstep-callback").with("seen", last.visit.on),
        stands_on: vec![StandsOn::Work(work.id), StandsOn::Mark(last.mark.id)],
    })
}

/// A cure of ours within the years that house policy gives it, on a part that the caller may mean.
fn may_be(record: &Record<'_>, known: &Known<'_>) -> Option<Line> {
    let story = &known.standing.story;
    let leaking = record
        .request
        .is_some_and(|request| request.leaking.is_yes());
    let meant = if record.asks().is_empty() {
        leaking
    } else {
        record.asks_about(&story.part.kind)
    };
    if !meant {
        return None;
    }
    let mut cures = story.cures.clone();
    cures.extend(story.cures_in(&known.standing.since));
    let work = cures
        .into_iter()
        .map(|(_, work)| work)
        .filter(|work| work.by == By::Us)
        .filter(|work| within_callback(work.when, record.today(), record.rules))
        .max_by_key(|work| (work.when, work.id))?;
    Some(Line {
        tells: Tells::Callback,
        says: about(record, known, work, "doorstep-may-be-callback")
            .with("years", record.rules.policy.callback_years),
        stands_on: vec![StandsOn::Work(work.id)],
    })
}

fn about(record: &Record<'_>, known: &Known<'_>, work: &Work, key: &str) -> Said {
    Said::new(key)
        .with("part", named::part(record, known.standing.story.part))
        .with("what", named::did(&work.did))
        .with("when", work.when)
}
