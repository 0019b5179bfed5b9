//! The roof on plan, its measures, and what a new covering takes.

use super::writer::Writer;
use super::{line, paragraph, quantities};
use crate::content::{Block, Drawn, Row, Table};
use crate::plain::Plain;
use crate::roofed::{Planned, Roofed};
use trade::drawing::{Drawing, Lettering, Shape};
use trade::ids::StructureId;
use trade::roof::{LineKind, Plane, RoofLine, RoofPlan};
use trade::takeoff::{Spread, Unit, amount_said};
use trade::units::{Area, Pitch};
use trade::words::Said;

/// Every roof that was measured or counted.
pub fn blocks(writer: &Writer) -> Vec<Block> {
    let mut blocks = Vec::new();
    for roofed in writer.material.roofs {
        let of_one: Vec<Block> = planned(writer, roofed)
            .into_iter()
            .chain(quantities::blocks(writer, roofed))
            .collect();
        if of_one.is_empty() {
            continue;
        }
        if writer.has_many_structures() {
            blocks.push(Block::Heading {
                says: writer.say(&writer.structure(roofed.structure)),
            });
        }
        blocks.extend(of_one);
    }
    blocks
}

fn planned(writer: &Writer, roofed: &Roofed) -> Vec<Block> {
    let Some(Planned {
        plan,
        drawing,
        left_out,
    }) = roofed.planned
    else {
        return Vec::new();
    };
    let mut blocks = vec![
        Block::Drawing(Drawn {
            drawing: cleaned(drawing),
            title: writer.say(&title(writer, roofed.structure)),
            alt: writer.say(&told(plan)),
        }),
        paragraph(writer.text("letter-plan-how")),
    ];
    if !left_out.is_empty() {
        blocks.push(paragraph(writer.text("letter-plan-left-out")));
        blocks.push(Block::List {
            lines: left_out
                .iter()
                .map(|said| line(writer.sentence(said)))
                .collect(),
        });
    }
    blocks.push(paragraph(writer.say(&extent(plan))));
    blocks.push(paragraph(writer.say(&how_exact(writer, plan))));
    blocks.push(Block::Table(slopes(writer, plan)));
    blocks.push(Block::Table(lines(writer, plan)));
    blocks
}

fn title(writer: &Writer, structure: StructureId) -> Said {
    writer.about_structure(structure, Said::new("letter-plan-title"))
}

/// What the drawing shows, for those who can't see it.
fn told(plan: &RoofPlan) -> Said {
    let slopes: Vec<Said> = by_letter(plan)
        .into_iter()
        .map(|(letter, pitch, _)| {
            Said::new("letter-plan-slope")
                .with("letter", letter)
                .with("pitch", pitch)
        })
        .collect();
    Said::new("letter-plan-alt").with("slopes", slopes)
}

/// The drawing with its words cleaned as all words of a letter are.
fn cleaned(drawing: &Drawing) -> Drawing {
    let clean = |shape: &Shape| match shape {
        Shape::Words(words) => Shape::Words(Lettering {
            text: Plain::new(&words.text).to_string(),
            ..words.clone()
        }),
        other => other.clone(),
    };
    Drawing {
        shapes: drawing.shapes.iter().map(clean).collect(),
        ..drawing.clone()
    }
}

fn extent(plan: &RoofPlan) -> Said {
    let squares = plan.squares();
    Said::new("letter-plan-extent")
        .with("squares", squares.says(1))
        .with("area", area(plan, plan.slope_area()))
}

fn how_exact(writer: &Writer, plan: &RoofPlan) -> Said {
    Said::new("letter-plan-exact")
        .with("got", writer.small(&Said::new(plan.got.key())))
        .with("lengths", per_cent(plan.length_within))
        .with("areas", per_cent(plan.area_within()))
}

/// A share in per cent, to a tenth and never less than it is. A hair over a tenth is that tenth.
fn per_cent(share: f64) -> String {
    trade::takeoff::plain((share * 1000.0 - 1e-6).ceil().max(0.0) / 10.0, 1)
}

fn area(plan: &RoofPlan, area: Area) -> Said {
    amount_said(
        Spread::within(area.in_square_feet(), plan.area_within()),
        Unit::SquareFoot,
    )
}

/// The planes of each letter at each pitch together, in the order of the letters.
fn by_letter(plan: &RoofPlan) -> Vec<(&str, Pitch, Vec<&Plane>)> {
    let mut slopes: Vec<(&str, Pitch, Vec<&Plane>)> = Vec::new();
    for plane in &plan.planes {
        let known = slopes
            .iter_mut()
            .find(|(letter, pitch, _)| (*letter, *pitch) == (plane.letter.as_str(), plane.pitch));
        match known {
            Some((.., planes)) => planes.push(plane),
            None => slopes.push((&plane.letter, plane.pitch, vec![plane])),
        }
    }
    slopes.sort_by_key(|(letter, ..)| (letter.len(), *letter));
    slopes
}

fn slopes(writer: &Writer, plan: &RoofPlan) -> Table {
    let rows = by_letter(plan).into_iter().map(|(letter, pitch, planes)| {
        let covered: Area = planes.iter().map(|plane| plane.slope_area).sum();
        Row {
            name: slope_name(writer, letter, &planes),
            note: None,
            cells: vec![
                writer.say(&Said::new("plan-pitch").with("pitch", pitch)),
                writer.say(&area(plan, covered)),
            ],
        }
    });
    Table {
        head: head(
            writer,
            [
                "letter-plan-slopes",
                "letter-plan-pitch",
                "letter-plan-area",
            ],
        ),
        rows: rows.collect(),
    }
}

/// "Slope B, rear" where the walk knows it, else "Slope B".
fn slope_name(writer: &Writer, letter: &str, planes: &[&Plane]) -> Plain {
    let known = planes
        .iter()
        .find_map(|plane| writer.material.history.slope(plane.slope?));
    let named = match known {
        Some(slope) => {
            Said::new("letter-slope").with("side", writer.small(&Said::new(slope.side.key())))
        }
        None => Said::new("letter-slope-alone"),
    };
    writer.say(&named.with("letter", letter))
}

fn lines(writer: &Writer, plan: &RoofPlan) -> Table {
    let rows = LineKind::ALL.into_iter().filter_map(|kind| {
        let of_kind = plan.lines.iter().filter(|line| line.kind == kind);
        let feet: Spread = of_kind.map(|line| feet(plan, line)).sum();
        (!feet.is_nothing()).then(|| Row {
            name: writer.sentence(&Said::new(kind.key())),
            note: None,
            cells: vec![writer.say(&amount_said(feet, Unit::Foot))],
        })
    });
    Table {
        head: head(writer, ["letter-plan-lines", "letter-plan-length"]),
        rows: rows.collect(),
    }
}

/// A line's length; a sloping one is known no better than its pitch.
fn feet(plan: &RoofPlan, line: &RoofLine) -> Spread {
    let is_level = matches!(
        line.kind,
        LineKind::Eave | LineKind::Ridge | LineKind::Wall | LineKind::PitchChange | LineKind::Top
    );
    let pitch = if is_level { 0.0 } else { plan.pitch_within };
    Spread::within(line.length.in_feet(), plan.length_within + pitch)
}

/// The head of a table by its keys.
pub fn head<const COLUMNS: usize>(writer: &Writer, keys: [&str; COLUMNS]) -> Vec<Plain> {
    keys.map(|key| writer.text(key)).into()
}
