//! What changed since the last look, thread by thread: ours or not ours, never who.

use super::writer::Writer;
use super::{findings, paragraph};
use crate::content::{Block, Change, Picture};
use crate::plain::Plain;
use jiff::civil::Date;
use std::cmp::Reverse;
use trade::ids::MarkId;
use trade::mark::{Condition, Mark};
use trade::thread::{Became, Patch, Thread};
use trade::words::Said;

/// The threads that the last looks left, the ones still open first. Nothing where nothing was looked at before.
pub fn blocks(writer: &Writer) -> Vec<Block> {
    let threads = writer.material.threads;
    let Some(since) = threads
        .iter()
        .filter_map(|thread| looked_on(writer, thread.earlier?))
        .max()
    else {
        return Vec::new();
    };
    let mut told: Vec<&Thread> = threads.iter().filter(|thread| is_told(thread)).collect();
    told.sort_by_key(|thread| weight(thread));
    let mut blocks = vec![paragraph(
        writer.say(&Said::new("letter-changes-since").with("date", since)),
    )];
    blocks.extend(
        told.into_iter()
            .filter_map(|thread| change(writer, thread, since))
            .map(Block::Change),
    );
    blocks.extend(in_a_line(writer, threads));
    blocks
}

/// Quiet threads and new parts are counted, not told one by one.
fn is_told(thread: &Thread) -> bool {
    thread.earlier.is_some() && !matches!(thread.became, Became::Quiet | Became::New)
}

/// Callbacks first, then what is open, then the worst.
fn weight(thread: &Thread) -> impl Ord + use<> {
    let rung = thread.rung_now.or(thread.rung_then);
    (
        thread.callback.is_none(),
        !thread.became.is_open(),
        Reverse(rung),
        thread.became,
        thread.part,
    )
}

fn looked_on(writer: &Writer, mark: MarkId) -> Option<Date> {
    let visit = writer.mark(mark)?.visit;
    writer.material.history.visit(visit).map(|visit| visit.on)
}

fn change(writer: &Writer, thread: &Thread, since: Date) -> Option<Change> {
    let part = writer.material.history.part(thread.part)?;
    let now = thread
        .now
        .and_then(|mark| writer.mark(mark))
        .map(|mark| mark.condition);
    Some(Change {
        part: writer.name(part),
        then: writer.rated_rung(thread.rung_then),
        now: match now {
            Some(condition) => writer.rated(condition),
            None => writer.rated_rung(thread.rung_now),
        },
        became: writer.text(thread.became.key()),
        says: says(writer, thread, since),
        pictures: then_and_now(writer, thread),
    })
}

fn says(writer: &Writer, thread: &Thread, since: Date) -> Vec<Plain> {
    let mut says = vec![writer.text(&format!("{}.what", thread.became.key()))];
    if let Some(earlier) = thread.earlier.and_then(|mark| writer.mark(mark)) {
        says.extend(found_then(writer, earlier, since));
    }
    if let Some(by) = thread.by {
        says.push(
            writer.say(
                &Said::new("letter-work-since").with("by", writer.small(&Said::new(by.key()))),
            ),
        );
    }
    says.extend(patched(writer, &thread.patches));
    if let Some(by) = thread.callback {
        let key = match by {
            trade::work::By::Us => "letter-callback-us",
            trade::work::By::NotUs => "letter-callback-not-us",
            trade::work::By::Unknown => "letter-callback-unknown",
        };
        says.push(writer.text(key));
    }
    says.extend(why_not_seen(writer, thread));
    says
}

/// What was found then; the day is told only where it is not that of the whole section.
fn found_then(writer: &Writer, earlier: &Mark, since: Date) -> Option<Plain> {
    let defects: Vec<Said> = earlier
        .defects
        .iter()
        .map(|seen| writer.small(&Said::new(seen.defect.message())))
        .collect();
    let on = writer
        .material
        .history
        .visit(earlier.visit)
        .map(|visit| visit.on);
    match (defects.is_empty(), on.filter(|&on| on != since)) {
        (true, None) => None,
        (true, Some(on)) => Some(writer.say(&Said::new("letter-then-on").with("date", on))),
        (false, None) => Some(writer.say(&Said::new("letter-then-found").with("defects", defects))),
        (false, Some(on)) => Some(
            writer.say(
                &Said::new("letter-then-found-on")
                    .with("defects", defects)
                    .with("date", on),
            ),
        ),
    }
}

/// How many patches this cause has had, each with its day and whose it was, and how long such a patch usually holds.
fn patched(writer: &Writer, patches: &[Patch]) -> Vec<Plain> {
    let Some(last) = patches.last() else {
        return Vec::new();
    };
    let each: Vec<Said> = patches
        .iter()
        .map(|patch| one_patch(writer, patch))
        .collect();
    let count = i64::try_from(patches.len()).unwrap_or(i64::MAX);
    let mut says = vec![
        writer.say(
            &Said::new("letter-patches")
                .with("count", count)
                .with("each", each),
        ),
    ];
    if let Some(usual) = last.usual {
        says.push(
            writer.say(&Said::new("letter-patch-usual").with("months", findings::months(usual))),
        );
    }
    says
}

fn one_patch(writer: &Writer, patch: &Patch) -> Said {
    let what = match &patch.remedy {
        Some(remedy) => writer.small(&Said::new(remedy.message())),
        None => Said::new("letter-patch-something"),
    };
    let by = writer.small(&Said::new(patch.by.key()));
    Said::new("letter-patch-one")
        .with("what", what)
        .with("date", patch.when)
        .with("by", by)
}

fn why_not_seen(writer: &Writer, thread: &Thread) -> Option<Plain> {
    match thread.now.and_then(|mark| writer.mark(mark))?.condition {
        Condition::NotSeen { why } => Some(
            writer.say(
                &Said::new("letter-not-seen-because")
                    .with("why", Said::new(format!("{}.what", why.key()))),
            ),
        ),
        Condition::Seen { .. } | Condition::Gone => None,
    }
}

/// The first picture of then beside the first of now.
fn then_and_now(writer: &Writer, thread: &Thread) -> Vec<Picture> {
    let of = |mark: Option<MarkId>, key| {
        let mark = writer.mark(mark?)?;
        let on = looked_on(writer, mark.id)?;
        findings::picture(
            writer,
            mark,
            *mark.photos.first()?,
            Some(Said::new(key).with("date", on)),
        )
    };
    match (
        of(thread.earlier, "letter-picture-then"),
        of(thread.now, "letter-picture-now"),
    ) {
        (Some(then), Some(now)) => vec![then, now],
        _ => Vec::new(),
    }
}

/// How many parts were sound then and now, and how many were seen for the first time.
fn in_a_line(writer: &Writer, threads: &[Thread]) -> Vec<Block> {
    let lines = [(Became::Quiet, "letter-quiet"), (Became::New, "letter-new")];
    lines
        .into_iter()
        .filter_map(|(became, key)| {
            let count = threads
                .iter()
                .filter(|thread| thread.became == became)
                .count();
            let count = i64::try_from(count).ok().filter(|&count| count > 0)?;
            Some(paragraph(writer.say(&Said::new(key).with("count", count))))
        })
        .collect()
}
