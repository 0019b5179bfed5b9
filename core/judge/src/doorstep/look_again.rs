//! What to look at again, worst first.

use super::named;
use super::record::{Known, Record};
use std::cmp::Reverse;
use trade::doorstep::LookAgain;
use trade::mark::{NotSeen, Rung};
use trade::thread::Became;
use trade::verdict::When;
use trade::words::Said;

/// The parts that were found bad, patched or never seen, the worst first; of two alike the more urgent.
pub(super) fn parts(record: &Record<'_>) -> Vec<LookAgain> {
    let mut again: Vec<&Known<'_>> = record.parts.iter().filter(|known| is_owed(known)).collect();
    // Stable: what is alike stays in the order of the record, in which an identifier says nothing.
    again.sort_by_key(|known| {
        let story = &known.standing.story;
        (
            Reverse(story.rung()),
            urgency(record, known),
            story.part.number,
        )
    });
    again.into_iter().map(|known| one(record, known)).collect()
}

fn is_owed(known: &Known<'_>) -> bool {
    let story = &known.standing.story;
    let was_bad = story.rung() > Some(Rung::Sound) || !story.open.is_empty();
    match known.became {
        Became::New => true,
        Became::Replaced => known.standing.since.replaced.is_some(),
        became => became.is_open() && was_bad,
    }
}

/// How soon the worst of what stands open wanted an answer.
fn urgency(record: &Record<'_>, known: &Known<'_>) -> When {
    known
        .standing
        .story
        .open
        .iter()
        .flat_map(|open| &open.finding.defects)
        .filter_map(|seen| record.rules.catalogue.defect(&seen.defect))
        .map(|defect| defect.urgency)
        .min()
        .unwrap_or(When::Later)
}

fn one(record: &Record<'_>, known: &Known<'_>) -> LookAgain {
    let says = [then(known), since(known), unseen(known)];
    LookAgain {
        part: known.standing.story.part.id,
        rung: known.standing.story.rung(),
        says: named::sentences(says.into_iter().flatten())
            .unwrap_or_else(|| named::part(record, known.standing.story.part)),
    }
}

/// What was found then.
fn then(known: &Known<'_>) -> Option<Said> {
    let story = &known.standing.story;
    let last = story.last?;
    let rung = story.rung()?;
    let defects: Vec<Said> = story
        .open
        .iter()
        .flat_map(|open| &open.finding.defects)
        .map(|seen| named::defect(&seen.defect))
        .collect();
    let key = match (defects.is_empty(), rung) {
        (true, _) => "doorstep-then",
        // Sound over a cause that nobody has cured.
        (false, Rung::Sound) => "doorstep-then-patched",
        (false, _) => "doorstep-then-defects",
    };
    Some(
        Said::new(key)
            .with("on", last.visit.on)
            .with("rung", Said::new(rung.key()))
            .with("defects", defects),
    )
}

/// What was done since.
fn since(known: &Known<'_>) -> Option<Said> {
    let works: Vec<Said> = known
        .standing
        .since
        .all
        .iter()
        .map(|done| named::work(done.work))
        .collect();
    let told = named::sentences(works)?;
    Some(Said::new("doorstep-since").with("works", told))
}

/// That it was not seen the last time, or never.
fn unseen(known: &Known<'_>) -> Option<Said> {
    let why = known
        .standing
        .last_mark
        .mark
        .condition
        .not_seen()
        .unwrap_or(NotSeen::NotReached);
    let key = match known.became {
        Became::New => "doorstep-look-never",
        Became::NotSeenAgain => "doorstep-look-not-again",
        Became::Hidden => return Some(Said::new("doorstep-look-covered")),
        _ => return None,
    };
    Some(
        Said::new(key)
            .with("on", known.standing.last_mark.visit.on)
            .with("why", Said::new(format!("{}.what", why.key()))),
    )
}
