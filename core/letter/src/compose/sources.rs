//! What a reason stands on, as the letter names it.

use trade::verdict::{CodeSection, Source};
use trade::words::Said;

/// A source in words: a code by document, edition and section; policy and practice named as such.
pub fn named(source: &Source) -> Said {
    match source {
        Source::Code(section) => code(section),
        Source::LocalAmendment { place } => Said::new("letter-source-amendment").with("place", place.clone()),
        Source::Evidence => Said::new("letter-source-evidence"),
        Source::Practice => Said::new("letter-source-practice"),
        Source::HousePolicy => Said::new("letter-source-policy"),
        Source::Owner => Said::new("letter-source-owner"),
    }
}

fn code(section: &CodeSection) -> Said {
    let said = match section.edition {
        // A year is a name here, not a count: it must not be grouped in thousands.
        Some(edition) => Said::new("letter-source-code-edition").with("edition", edition.to_string()),
        None => Said::new("letter-source-code"),
    };
    said.with("document", section.document.clone()).with("section", section.section.clone())
}
