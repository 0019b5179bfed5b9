//! Composing: from the record of a visit to the tree of a letter. Pure.

mod changes;
mod decision;
mod facts;
mod findings;
mod first_page;
mod grounds;
mod head;
mod naming;
mod offer;
mod plan;
mod pricing;
mod quantities;
mod sources;
mod writer;

use crate::Material;
use crate::content::{Block, Content, Labels, Line, Section, SectionIs};
use crate::plain::Plain;
use writer::Writer;

/// Writes the letter of one visit. A part of the record that is missing leaves its place empty; nothing fails.
pub fn compose(material: &Material) -> Content {
    let writer = Writer::new(material);
    Content {
        language: material.language,
        ident: format!(
            "{} {} {}",
            material.visit,
            material.on,
            material.language.tag()
        ),
        title: head::title(&writer),
        on: material.on,
        date: Plain::new(&writer.words.date(material.on)),
        letterhead: head::letterhead(&writer),
        to: head::to(&writer),
        about: head::about(&writer),
        answers: first_page::answers(&writer),
        offered: offer::in_short(&writer),
        sections: sections(&writer),
        footer: head::footer(&writer),
        labels: labels(&writer),
    }
}

/// The sections that have something to say, in order.
fn sections(writer: &Writer) -> Vec<Section> {
    let all = [
        (
            SectionIs::Cautions,
            "letter-cautions",
            grounds::cautions(writer),
        ),
        (
            SectionIs::Changes,
            "letter-changes",
            changes::blocks(writer),
        ),
        (SectionIs::Plan, "letter-plan", plan::blocks(writer)),
        (
            SectionIs::Findings,
            "letter-findings",
            findings::blocks(writer),
        ),
        (SectionIs::Why, "letter-why", grounds::why(writer)),
        (SectionIs::Offer, "letter-offer", offer::blocks(writer)),
        (
            SectionIs::Refused,
            "letter-refused",
            grounds::refused(writer),
        ),
        (
            SectionIs::NextLook,
            "letter-next-look",
            grounds::next_look(writer),
        ),
        (SectionIs::Limits, "letter-limits", grounds::limits(writer)),
        (
            SectionIs::Decision,
            "letter-decision",
            decision::blocks(writer),
        ),
    ];
    all.into_iter()
        .filter(|(_, _, blocks)| !blocks.is_empty())
        .map(|(is, heading, blocks)| Section {
            is,
            heading: writer.text(heading),
            blocks,
        })
        .collect()
}

fn labels(writer: &Writer) -> Labels {
    Labels {
        then: writer.text("letter-then"),
        now: writer.text("letter-now"),
        no_picture: writer.text("letter-no-picture"),
        unprintable: writer.text("letter-unprintable"),
        against: writer.text("letter-against"),
        short_end: writer.text("letter-short-end"),
    }
}

/// A paragraph.
fn paragraph(says: Plain) -> Block {
    Block::Words { says }
}

/// A line without a lead.
fn line(says: Plain) -> Line {
    Line {
        says,
        ..Line::default()
    }
}

/// A line with a lead.
fn led(lead: Plain, says: Plain) -> Line {
    Line {
        lead: Some(lead),
        says,
        price: None,
    }
}
