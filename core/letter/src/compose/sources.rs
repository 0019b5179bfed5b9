//! Reasons, and what each stands on, as the letter names it.

use super::writer::Writer;
use crate::content::ReasonLine;
use crate::plain::Plain;
use trade::verdict::{CodeSection, Reason, Source, StandsOn};
use trade::words::Said;

impl Writer<'_> {
    /// A reason with what it stands on.
    fn reason(&self, reason: &Reason) -> ReasonLine {
        ReasonLine {
            says: self.say(&reason.says),
            source: self.say(&named(&reason.source)),
            parts: self.parts_behind(reason),
        }
    }

    /// Reasons, each said once.
    pub fn reasons<'r>(&self, reasons: impl IntoIterator<Item = &'r Reason>) -> Vec<ReasonLine> {
        let mut lines: Vec<ReasonLine> = Vec::new();
        for line in reasons.into_iter().map(|reason| self.reason(reason)) {
            if !lines.contains(&line) {
                lines.push(line);
            }
        }
        lines
    }

    fn parts_behind(&self, reason: &Reason) -> Vec<Plain> {
        let history = self.material.history;
        let mut parts: Vec<Plain> = Vec::new();
        for stands_on in &reason.stands_on {
            let StandsOn::Mark(mark) = stands_on else {
                continue;
            };
            let part = history.mark(*mark).and_then(|mark| history.part(mark.part));
            let Some(address) = part.map(|part| self.address(part)) else {
                continue;
            };
            if !parts.contains(&address) {
                parts.push(address);
            }
        }
        parts
    }
}

/// A source in words: a code by document, edition and section; policy and practice named as such.
pub fn named(source: &Source) -> Said {
    match source {
        Source::Code(section) => code(section),
        Source::LocalAmendment { place } => {
            Said::new("letter-source-amendment").with("place", place.clone())
        }
        Source::Evidence => Said::new("letter-source-evidence"),
        Source::Practice => Said::new("letter-source-practice"),
        Source::HousePolicy => Said::new("letter-source-policy"),
        Source::Owner => Said::new("letter-source-owner"),
    }
}

fn code(section: &CodeSection) -> Said {
    let said = match section.edition {
        // A year is a name here, not a count: it must not be grouped in thousands.
        Some(edition) => {
            Said::new("letter-source-code-edition").with("edition", edition.to_string())
        }
        None => Said::new("letter-source-code"),
    };
    said.with("document", section.document.clone())
        .with("section", section.section.clone())
}
