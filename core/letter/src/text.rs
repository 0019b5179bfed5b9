//! The letter as a short text to send.

use crate::content::{Answer, Asks, Content};

/// The most characters a short text holds.
pub const LONGEST: usize = 900;
/// What is told, each with the most characters it may take; advice first, because a phone may show no more.
const TOLD: [(Asks, usize); 4] = [(Asks::Advice, 330), (Asks::Leaking, 170), (Asks::Wrong, 130), (Asks::NotSeen, 100)];

/// The letter in short: what it is about, what is advised, whether it leaks, what is wrong, what was not seen.
///
/// Never longer than [`LONGEST`]; what had to be left out ends in "…".
pub fn text(content: &Content) -> String {
    let mut lines = vec![clipped(&format!("{}: {}, {}", content.letterhead.firm, content.title, content.date), 110)];
    for (asks, most) in TOLD {
        if let Some(answer) = content.answer(asks) {
            lines.push(told(answer, most));
        }
    }
    let phone = content.letterhead.phone.as_str();
    let end = [content.labels.short_end.as_str(), phone].join(" ");
    lines.push(clipped(end.trim(), LONGEST - 850));
    lines.join("\n")
}

fn told(answer: &Answer, most: usize) -> String {
    let mut said = answer.question.to_string();
    for line in &answer.says {
        if let Some(lead) = &line.lead {
            said.push(' ');
            said.push_str(lead.as_str());
        }
        said.push(' ');
        said.push_str(line.says.as_str());
    }
    clipped(&said, most)
}

/// At most so many characters, cut between words where there are any.
fn clipped(text: &str, most: usize) -> String {
    if text.chars().count() <= most {
        return text.to_owned();
    }
    let kept: String = text.chars().take(most - 1).collect();
    let end = kept.rfind(' ').filter(|&end| end > kept.len() / 2).unwrap_or(kept.len());
    format!("{}…", kept[..end].trim_end())
}
