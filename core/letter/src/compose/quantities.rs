//! What a new covering takes, in an owner's words and without what it costs; what comes down for it.

use super::writer::Writer;
use super::{paragraph, plan, sources};
use crate::content::{Block, Row, Table};
use crate::plain::Plain;
use crate::roofed::Roofed;
use trade::takeoff::{Need, Takeoff, TearOff, Untied};
use trade::verdict::Source;
use trade::words::Said;

/// What is ordered and what comes down, where either is to be told.
pub fn blocks(writer: &Writer, roofed: &Roofed) -> Vec<Block> {
    let mut blocks = Vec::new();
    if let Some(takeoff) = roofed.takeoff {
        blocks.extend(ordered(writer, takeoff));
    }
    if let Some(tear_off) = roofed.tear_off {
        blocks.push(paragraph(writer.say(&comes_down(tear_off))));
    }
    blocks
}

/// What a tear-off takes down and hauls away.
pub fn comes_down(tear_off: &TearOff) -> Said {
    let layers = (tear_off.layers.least.into(), tear_off.layers.most.into());
    Said::new("letter-comes-down")
        .with("squares", tear_off.squares.counted(1, "unit-roof-square"))
        .with("layers", counted("letter-layers", layers))
        .with("pounds", tear_off.pounds.counted(0, "unit-pound"))
        .with("yards", tear_off.cubic_yards.counted(0, "unit-cubic-yard"))
        .with(
            "loads",
            counted("letter-loads", (tear_off.loads.least, tear_off.loads.most)),
        )
}

/// "one layer", "2 layers" or "1 to 2 layers".
fn counted(key: &str, (least, most): (u32, u32)) -> Said {
    if least == most {
        return Said::new(format!("{key}-exact")).with("most", most);
    }
    Said::new(key).with("least", least).with("most", most)
}

fn ordered(writer: &Writer, takeoff: &Takeoff) -> Vec<Block> {
    let mut blocks = vec![
        Block::Heading {
            says: writer.text("letter-takes"),
        },
        paragraph(writer.say(&what_is_covered(writer, takeoff))),
    ];
    if !takeoff.needs.is_empty() {
        blocks.push(Block::Table(Table {
            head: plan::head(
                writer,
                [
                    "letter-takes-what",
                    "letter-takes-amount",
                    "letter-takes-order",
                ],
            ),
            rows: takeoff.needs.iter().map(|need| row(writer, need)).collect(),
        }));
    }
    if !takeoff.gaps.is_empty() {
        let items: Vec<Said> = takeoff
            .gaps
            .iter()
            .map(|gap| writer.small(&Said::new(gap.item.key())))
            .collect();
        blocks.push(paragraph(
            writer.say(&Said::new("letter-takes-gaps").with("items", items)),
        ));
    }
    blocks
}

fn what_is_covered(writer: &Writer, takeoff: &Takeoff) -> Said {
    let letters = |planes: &[String]| -> Vec<Said> {
        let mut letters: Vec<&String> = planes.iter().collect();
        letters.sort_by_key(|letter| (letter.len(), *letter));
        let each = letters.into_iter().map(|letter| Plain::new(letter));
        each.map(|letter| Said::verbatim(letter.to_string()))
            .collect()
    };
    let covered = Said::new("letter-takes-covered")
        .with("covering", writer.small(&Said::new(takeoff.covering.key())))
        .with("slopes", letters(&takeoff.planes))
        .with("order", Said::new(takeoff.order_at.key()));
    let left = (!takeoff.planes_left.is_empty())
        .then(|| Said::new("left-out-slopes").with("letters", letters(&takeoff.planes_left)));
    let untied = takeoff.untied.as_ref().map(Untied::says);
    left.into_iter().chain(untied).fold(covered, |told, next| {
        Said::new("letter-two-sentences")
            .with("first", told)
            .with("second", next)
    })
}

fn row(writer: &Writer, need: &Need) -> Row {
    let why = match need.source {
        // What a rule asks for is named with the rule.
        Source::Code(_) | Source::LocalAmendment { .. } => Said::new("letter-takes-why")
            .with("reason", need.reason.clone())
            .with("source", sources::named(&need.source)),
        Source::Evidence | Source::Practice | Source::HousePolicy | Source::Owner => {
            need.reason.clone()
        }
    };
    Row {
        name: writer.sentence(&need.name()),
        note: Some(writer.say(&why)).filter(|why| !why.is_empty()),
        cells: vec![
            writer.say(&need.says_amount()),
            writer.say(&need.says_order()),
        ],
    }
}
