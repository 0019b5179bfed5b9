//! What stands on a roof.

use crate::action::Action;
use crate::block::Button;
use crate::screens::Context;
use acts::dormer;
use trade::history::History;
use trade::ids::StructureId;
use trade::sketch::Body;
use trade::units::Length;
use trade::words::Said;

/// Each dormer, by its size and pitch; a tap takes it off.
pub(super) fn all(context: &Context<'_>, history: &History, structure: StructureId) -> Vec<Button> {
    dormer::standing(history, structure)
        .into_iter()
        .enumerate()
        .map(|(number, body)| {
            let count = i64::try_from(number + 1).unwrap_or(i64::MAX);
            let label = Said::new("roof-dormer-off").with("number", count);
            let said = Said::new("roof-dormer-told")
                .with("wide", super::length(context, face(body)))
                .with("pitch", body.pitch)
                .with(
                    "above",
                    super::length(context, body.above_roof.unwrap_or(Length::ZERO)),
                );
            Button::new(
                context.say(&label),
                Action::TakeOffDormer { structure, number },
            )
            .note(Some(context.say(&said)))
        })
        .collect()
}

/// The length of the first side of a body's outline: the face of a dormer.
fn face(body: &Body) -> Length {
    match body.rings.first().map(Vec::as_slice) {
        Some([from, to, ..]) => {
            let (x, y) = (
                to.x.in_metres() - from.x.in_metres(),
                to.y.in_metres() - from.y.in_metres(),
            );
            Length::from_metres(x.hypot(y))
        }
        _ => Length::ZERO,
    }
}
