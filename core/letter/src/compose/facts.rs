//! What the letter reads from a mark by the catalogue.

use super::writer::Writer;
use trade::answer::Answer;
use trade::catalogue::Defect;
use trade::mark::{Mark, Seen};
use trade::property::Part;
use trade::verdict::Question;

/// The stop from which a roof is seen from below.
const INSIDE: &str = "attic";

impl<'a> Writer<'a> {
    /// The catalogue's entries for the defects of a mark, the one that weighs most first.
    pub fn defects<'m>(&self, mark: &'m Mark) -> impl Iterator<Item = &'a Defect> + use<'a, 'm> {
        let catalogue = self.material.catalogue;
        mark.defects
            .iter()
            .filter_map(move |seen| catalogue.defect(&seen.defect))
    }

    /// Whether a part is looked at from inside, so that water shows there but doesn't come in there.
    pub fn is_inside(&self, part: &Part) -> bool {
        let kind = self.material.catalogue.kind(&part.kind);
        kind.is_some_and(|kind| kind.stop.as_str() == INSIDE)
    }

    /// What one mark answers to a question: on the spot, by its defects, or by a close look that found nothing.
    pub fn answers(&self, part: &Part, mark: &Mark, question: Question) -> Answer {
        let said = mark
            .answers
            .iter()
            .rev()
            .find(|answered| answered.question == question);
        if let Some(answered) = said.filter(|answered| !answered.answer.is_unknown()) {
            return answered.answer;
        }
        if self
            .defects(mark)
            .any(|defect| defect.signs.contains(&question))
        {
            return Answer::Yes;
        }
        let clears = self
            .material
            .catalogue
            .kind(&part.kind)
            .is_some_and(|kind| kind.clears.contains(&question));
        let close = mark.condition.seen().is_some_and(Seen::is_close);
        if clears && close {
            Answer::No
        } else {
            Answer::Unknown
        }
    }
}
