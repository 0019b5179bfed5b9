//! What is wrong? Is the wood bad? What did you not see?

use super::{answered, few, line};
use crate::compose::led;
use crate::compose::writer::Writer;
use crate::content::Line;
use std::collections::BTreeMap;
use trade::answer::Answer;
use trade::mark::{Mark, NotSeen, Rung};
use trade::property::Part;
use trade::verdict::Question;
use trade::words::Said;

/// Findings that page one names; the rest follows part by part.
const FINDINGS_NAMED: usize = 4;
/// Parts that page one names for one reason.
const PARTS_NAMED: usize = 4;

/// The findings that weigh most, worst first.
pub fn wrong(writer: &Writer) -> Vec<Line> {
    let mut found: Vec<(&Part, &Mark)> = writer
        .marks()
        .into_iter()
        .filter(|(_, mark)| mark.condition.rung() > Some(Rung::Sound))
        .collect();
    found.sort_by_key(|&(part, mark)| {
        let urgency = writer.defects(mark).map(|defect| defect.urgency).min();
        (
            std::cmp::Reverse(mark.condition.rung()),
            urgency.is_none(),
            urgency,
            writer.is_inside(part),
        )
    });
    if found.is_empty() {
        return vec![line(writer.text("letter-wrong-nothing"))];
    }
    let more = found.len().saturating_sub(FINDINGS_NAMED);
    let mut lines: Vec<Line> = found
        .iter()
        .take(FINDINGS_NAMED)
        .map(|(part, mark)| finding(writer, part, mark))
        .collect();
    if more > 0 {
        let more = i64::try_from(more).unwrap_or(i64::MAX);
        lines.push(line(
            writer.say(&Said::new("letter-wrong-more").with("more", more)),
        ));
    }
    lines
}

fn finding(writer: &Writer, part: &Part, mark: &Mark) -> Line {
    let rated = Said::new("letter-wrong-part")
        .with("part", writer.named(part))
        .with("rung", writer.rated(mark.condition).word.to_string());
    let defects: Vec<Said> = mark
        .defects
        .iter()
        .map(|seen| writer.small(&Said::new(seen.defect.message())))
        .collect();
    led(
        writer.sentence(&rated),
        writer.say(&Said::new("letter-list").with("each", defects)),
    )
}

/// What is known of the deck.
pub fn wood(writer: &Writer) -> Vec<Line> {
    let marks = writer.marks();
    let answer = |part: &Part, mark: &Mark| {
        writer
            .answers(part, mark, Question::DeckWet)
            .or(writer.answers(part, mark, Question::DeckWetBroad))
    };
    let with = |wanted: Answer| -> Vec<Said> {
        let so = marks
            .iter()
            .filter(|(part, mark)| answer(part, mark) == wanted);
        so.map(|(part, _)| writer.named(part)).collect()
    };
    let (bad, good) = (with(Answer::Yes), with(Answer::No));
    let mut lines = Vec::new();
    if !bad.is_empty() {
        lines.push(answered(
            writer,
            "letter-yes",
            &Said::new("letter-wood-bad").with("parts", few(bad, PARTS_NAMED)),
        ));
    } else if good.is_empty() {
        lines.push(answered(
            writer,
            "letter-unknown",
            &Said::new("letter-wood-unknown"),
        ));
    } else {
        lines.push(answered(
            writer,
            "letter-no",
            &Said::new("letter-wood-good").with("parts", few(good, PARTS_NAMED)),
        ));
    }
    lines.push(line(writer.text("letter-wood-bare")));
    lines
}

/// The parts not seen, by reason, and those seen only from afar or on somebody's word.
pub fn not_seen(writer: &Writer) -> Vec<Line> {
    let mut by_reason: BTreeMap<usize, Vec<Said>> = BTreeMap::new();
    let mut not_close = Vec::new();
    for (part, mark) in writer.marks() {
        if let Some(why) = mark.condition.not_seen() {
            let place = NotSeen::ALL
                .iter()
                .position(|&known| known == why)
                .unwrap_or(NotSeen::ALL.len());
            by_reason.entry(place).or_default().push(writer.named(part));
        } else if mark.condition.seen().is_some_and(|seen| !seen.is_close()) {
            not_close.push(writer.named(part));
        }
    }
    let unmarked = unmarked(writer);
    let mut lines: Vec<Line> = by_reason
        .into_iter()
        .filter_map(|(place, parts)| {
            let why = NotSeen::ALL.get(place)?;
            let lead = writer.say(&Said::new("letter-reason").with("why", Said::new(why.key())));
            Some(led(lead, writer.say(&few(parts, PARTS_NAMED))))
        })
        .collect();
    if !unmarked.is_empty() {
        lines.push(led(
            writer.text("letter-unmarked"),
            writer.say(&few(unmarked, PARTS_NAMED)),
        ));
    }
    if !not_close.is_empty() {
        lines.push(led(
            writer.text("letter-not-close"),
            writer.say(&few(not_close, PARTS_NAMED)),
        ));
    }
    if lines.is_empty() {
        lines.push(line(writer.text("letter-all-seen")));
    }
    lines
}

/// Parts that a verdict counts as unseen and that bear no mark of this visit.
fn unmarked(writer: &Writer) -> Vec<Said> {
    let history = writer.material.history;
    let unseen = writer
        .material
        .verdicts
        .iter()
        .flat_map(|verdict| &verdict.unseen);
    unseen
        .filter(|&&part| history.mark_on(part, writer.material.visit).is_none())
        .filter_map(|&part| writer.named_by_id(part))
        .collect()
}
