//! Accept or decline: a box for each step, lines to sign on, and the place for the firm's own contract and notices.

use super::writer::Writer;
use super::{first_page, led, offer, paragraph};
use crate::content::{Block, Line};
use crate::plain::Plain;
use trade::verdict::{Course, Step, Verdict};
use trade::words::Said;

/// The page to decide on.
pub fn blocks(writer: &Writer) -> Vec<Block> {
    let firm = writer.material.firm;
    let contract = Plain::paragraphs(&firm.contract);
    let notices = Plain::paragraphs(&firm.notices);
    let mut blocks = Vec::new();
    if contract.is_empty() {
        let key = if writer.priced().is_empty() {
            "letter-no-contract"
        } else {
            "letter-no-contract-offered"
        };
        blocks.push(paragraph(writer.text(key)));
    }
    blocks.push(paragraph(writer.text("letter-choose")));
    blocks.push(Block::Choices {
        choices: choices(writer),
    });
    blocks.push(Block::Signatures {
        who: vec![writer.text("letter-sign-owner"), signed_by(writer)],
        date: writer.text("letter-sign-date"),
    });
    if !contract.is_empty() {
        blocks.push(Block::Heading {
            says: writer.text("letter-contract"),
        });
        blocks.push(Block::Own {
            paragraphs: contract,
        });
    }
    blocks.push(Block::Heading {
        says: writer.text("letter-notices"),
    });
    if notices.is_empty() {
        blocks.push(paragraph(writer.text("letter-no-notices")));
    } else {
        blocks.push(Block::Own {
            paragraphs: notices,
        });
    }
    blocks
}

/// A box for each step that is ours to do, one for each course offered against advice, and one to decline.
fn choices(writer: &Writer) -> Vec<Line> {
    let steps = writer.material.verdicts.iter().flat_map(|verdict| {
        let ours = verdict
            .steps
            .iter()
            .filter(|step| !matches!(step.course, Course::Leave | Course::Refer));
        ours.map(move |step| choice(writer, verdict, step))
    });
    let mut choices: Vec<Line> = steps.collect();
    choices.extend(offer::against_advice(writer));
    choices.push(led(
        writer.text("letter-decline"),
        writer.text("letter-decline-says"),
    ));
    choices
}

/// A step with its price and until when that holds.
fn choice(writer: &Writer, verdict: &Verdict, step: &Step) -> Line {
    let offered = writer.offered_for(verdict, step);
    Line {
        price: offered.and_then(|(offer, course)| writer.price_until(offer, course)),
        ..first_page::step_told(writer, verdict, step)
    }
}

fn signed_by(writer: &Writer) -> Plain {
    let firm = &writer.material.firm.name;
    if firm.trim().is_empty() {
        return writer.text("letter-sign-firm");
    }
    writer.say(&Said::new("letter-sign-for").with("firm", firm.clone()))
}
