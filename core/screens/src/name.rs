//! How parts, spots and structures are called on a screen.

use crate::block::Choice;
use acts::walk::Spot;
use trade::catalogue::KindKey;
use trade::history::History;
use trade::ids::{PartId, SlopeId, StructureId};
use trade::property::{Part, Side, Structure};
use trade::words::{Said, Words};

/// A structure's name.
pub(crate) fn structure(words: &Words, history: &History, id: StructureId) -> String {
    history
        .structure(id)
        .map(|structure| of_structure(words, structure))
        .unwrap_or_default()
}

/// The address and a structure's name: what stands small over a heading.
pub(crate) fn under(words: &Words, history: &History, id: StructureId) -> String {
    words.say(
        &Said::new("verdict-under")
            .with("address", history.property.address.line.clone())
            .with("structure", structure(words, history, id)),
    )
}

fn of_structure(words: &Words, structure: &Structure) -> String {
    structure
        .name
        .clone()
        .unwrap_or_else(|| words.text(structure.kind.key()))
}

/// A slope's name: its letter and the side it faces.
pub(crate) fn slope(words: &Words, letter: impl ToString, side: Side) -> String {
    words.say(
        &Said::new("slope-name")
            .with("letter", letter.to_string())
            .with("side", Said::new(side.key())),
    )
}

/// The slopes of a structure to choose from.
pub(crate) fn slopes(words: &Words, history: &History, structure: StructureId) -> Vec<Choice> {
    history
        .slopes
        .iter()
        .filter(|one| one.structure == structure)
        .map(|one| Choice {
            value: one.id.to_string(),
            label: slope(words, one.letter, one.side),
        })
        .collect()
}

/// A part's name: its kind, and which one or on which slope.
pub(crate) fn part(words: &Words, history: &History, id: PartId) -> String {
    history.part(id).map_or_else(String::new, |part| {
        let which = part.which.as_deref();
        let slope = part
            .slope
            .filter(|_| which.is_none() || has_twin(history, part));
        compose(words, history, &part.kind, slope, which)
    })
}

/// A spot's name.
pub(crate) fn spot(words: &Words, history: &History, spot: &Spot) -> String {
    match spot {
        Spot::Known { part: id } => part(words, history, *id),
        Spot::Unborn {
            kind, slope, which, ..
        } => compose(words, history, kind, *slope, which.as_deref()),
    }
}

/// Whether another part of the structure is called the same, on another slope.
fn has_twin(history: &History, part: &Part) -> bool {
    history
        .parts_of(part.structure)
        .any(|twin| twin.id != part.id && twin.kind == part.kind && twin.which == part.which)
}

fn compose(
    words: &Words,
    history: &History,
    kind: &KindKey,
    slope: Option<SlopeId>,
    which: Option<&str>,
) -> String {
    let kind = words.text(&kind.message());
    let side = slope
        .and_then(|slope| history.slope(slope))
        .map(|slope| words.text(slope.side.key()));
    match (which, side) {
        (Some(which), Some(side)) => words.say(
            &Said::new("part-which-side")
                .with("kind", kind)
                .with("which", which)
                .with("side", side),
        ),
        (Some(which), None) => words.say(
            &Said::new("part-which")
                .with("kind", kind)
                .with("which", which),
        ),
        (None, Some(side)) => {
            words.say(&Said::new("part-side").with("kind", kind).with("side", side))
        }
        (None, None) => kind,
    }
}
