//! The letter as a short text to send.

use crate::content::{Answer, Asks, Content, Line};

/// The most characters a short text holds.
pub const LONGEST: usize = 900;
/// What is told, each with the most characters it may take; advice first, because a phone may show no more.
const TOLD: [(Asks, usize); 4] = [
    (Asks::Advice, 350),
    (Asks::Leaking, 160),
    (Asks::Wrong, 140),
    (Asks::NotSeen, 95),
];
/// The same where something is offered: that stands after the advice.
const TOLD_WITH_OFFER: [(Asks, usize); 4] = [
    (Asks::Advice, 280),
    (Asks::Leaking, 105),
    (Asks::Wrong, 80),
    (Asks::NotSeen, 59),
];
/// The most characters that what is offered may take.
const OFFERED: usize = 220;
const HEAD: usize = 90;
const END: usize = 60;
const CUT: &str = "…";

/// The letter in short: what it is about, what is advised and at what price until when, whether it leaks, what is wrong, what was not seen.
///
/// Never longer than [`LONGEST`]. It leaves out whole lines where it can; where anything was left out, "…" stands.
pub fn text(content: &Content) -> String {
    let head = format!(
        "{}, {}: {}",
        content.letterhead.firm, content.date, content.title
    );
    let end = format!("{} {}", content.labels.short_end, content.letterhead.phone);
    let mut lines = vec![clipped(&head, HEAD)];
    let offered = offered(content);
    let (all, mut spare) = match &offered {
        Some(offered) => (TOLD_WITH_OFFER, OFFERED - length(offered)),
        None => (TOLD, 0),
    };
    for (asks, most) in all {
        if let Some(answer) = content.answer(asks) {
            let said = told(answer, most + spare);
            // What one answer leaves, the next may take.
            spare = most + spare - length(&said);
            lines.push(said);
        }
        if asks == Asks::Advice {
            lines.extend(offered.clone());
        }
    }
    lines.push(clipped(end.trim(), END));
    lines.join("\n")
}

/// What is offered until when, in one line: as many whole courses as fit, so that no price is cut in two.
fn offered(content: &Content) -> Option<String> {
    let mut said = String::new();
    for offer in &content.offered {
        for (at, course) in offer.courses.iter().enumerate() {
            let longer = match (said.as_str(), at) {
                ("", _) => format!("{} {course}", offer.until),
                (_, 0) => format!("{said}. {} {course}", offer.until),
                _ => format!("{said}; {course}"),
            };
            // Room is kept for the sign that something was left out.
            if length(&longer) + 2 > OFFERED {
                return Some(format!("{said} {CUT}").trim_start().to_owned());
            }
            said = longer;
        }
    }
    (!said.is_empty()).then_some(said)
}

/// The question, and as many lines of its answer as fit, the first one at least in part.
fn told(answer: &Answer, most: usize) -> String {
    let mut said = answer.question.to_string();
    for (at, line) in answer.says.iter().enumerate() {
        let longer = format!("{said}\n{}", flat(line));
        let whole = at + 1 == answer.says.len();
        // Where more follows, room is kept for the sign that it was left out.
        let room = if whole { most } else { most - 2 };
        if length(&longer) > room {
            return if at == 0 {
                clipped(&longer, most)
            } else {
                format!("{said} {CUT}")
            };
        }
        said = longer;
    }
    said
}

fn flat(line: &Line) -> String {
    match &line.lead {
        Some(lead) => format!("{lead} {}", line.says),
        None => line.says.to_string(),
    }
}

fn length(text: &str) -> usize {
    text.chars().count()
}

/// At most so many characters, cut between words where there are any.
fn clipped(text: &str, most: usize) -> String {
    if length(text) <= most {
        return text.to_owned();
    }
    let kept: String = text.chars().take(most - 1).collect();
    let end = kept
        .rfind(' ')
        .filter(|&end| end > kept.len() / 2)
        .unwrap_or(kept.len());
    format!("{}{CUT}", kept[..end].trim_end())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_parts_together_are_never_too_long() {
        let most = |told: [(Asks, usize); 4]| -> usize { told.iter().map(|(_, most)| most).sum() };
        let breaks = TOLD.len() + 1;
        assert!(HEAD + most(TOLD) + END + breaks <= LONGEST);
        assert!(HEAD + most(TOLD_WITH_OFFER) + OFFERED + END + breaks < LONGEST);
    }

    #[test]
    fn words_are_cut_between_words() {
        assert_eq!(clipped("one two three", 13), "one two three");
        assert_eq!(clipped("one two three", 12), "one two…");
        assert_eq!(clipped("ééééééééé", 5), "éééé…");
    }
}
