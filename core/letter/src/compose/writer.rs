//! The writer: a letter's material, and how it names the parts, structures and courses it speaks of.

use crate::content::{PartName, Rated, ReasonLine};
use crate::ladder::Ladder;
use crate::plain::Plain;
use crate::{Material, compose::sources};
use trade::answer::Answer;
use trade::catalogue::{Defect, KindKey, StopKey};
use trade::ids::{MarkId, PartId, StructureId};
use trade::mark::{Condition, Mark, Rung};
use trade::property::{Part, Slope, Structure};
use trade::verdict::{Question, Reason, StandsOn};
use trade::visit::Visit;
use trade::words::{Said, Words};

/// Everything that the parts of a letter are written from.
#[derive(Clone, Copy)]
pub struct Writer<'a> {
    /// The material.
    pub material: &'a Material<'a>,
    /// The words of the letter's language.
    pub words: &'static Words,
}

impl<'a> Writer<'a> {
    /// A writer of one letter.
    pub fn new(material: &'a Material<'a>) -> Self {
        Self {
            material,
            words: Words::of(material.language),
        }
    }

    /// What is meant, as text.
    pub fn say(&self, said: &Said) -> Plain {
        Plain::new(&self.words.say(said))
    }

    /// A message without arguments.
    pub fn text(&self, key: &str) -> Plain {
        self.say(&Said::new(key))
    }

    /// A name as it stands in the middle of a sentence: the message files write names as they stand on a button.
    pub fn small(&self, said: &Said) -> Said {
        let said = self.words.say(said);
        let mut letters = said.chars();
        let small = match (letters.next(), letters.next()) {
            (Some(first), Some(second)) if !second.is_uppercase() => {
                first.to_lowercase().chain(said.chars().skip(1)).collect()
            }
            _ => said,
        };
        Said::verbatim(small)
    }

    /// A sentence, its first letter made large.
    pub fn sentence(&self, said: &Said) -> Plain {
        let said = self.words.say(said);
        let mut letters = said.chars();
        let large: String = letters.next().into_iter().flat_map(char::to_uppercase).chain(letters).collect();
        Plain::new(&large)
    }

    /// A message that need not be there.
    pub fn text_if_any(&self, key: &str) -> Option<Plain> {
        self.words.has(key).then(|| self.text(key))
    }

    /// The visit that the letter tells of.
    pub fn visit(&self) -> Option<&'a Visit> {
        self.material.history.visit(self.material.visit)
    }

    /// A mark.
    pub fn mark(&self, id: MarkId) -> Option<&'a Mark> {
        self.material.history.mark(id)
    }

    /// The structures the letter tells of: those with a verdict first, in its order, then others with marks of this visit.
    pub fn structures(&self) -> Vec<&'a Structure> {
        let history = self.material.history;
        let judged = self.material.verdicts.iter().filter_map(|verdict| history.structure(verdict.structure));
        let mut structures: Vec<&Structure> = judged.collect();
        for structure in &history.structures {
            let told = structures.iter().any(|known| known.id == structure.id);
            if !told && self.marks_on(structure.id).next().is_some() {
                structures.push(structure);
            }
        }
        structures
    }

    /// The parts with the mark of this visit that counts, on one structure, in the order of slope letter and number.
    pub fn marks_on(&self, structure: StructureId) -> impl Iterator<Item = (&'a Part, &'a Mark)> + use<'a> {
        let history = self.material.history;
        let visit = self.material.visit;
        let mut parts: Vec<&Part> = history.parts_of(structure).collect();
        parts.sort_by_key(|part| (self.letter(part).unwrap_or('~'), part.number, part.id));
        parts.into_iter().filter_map(move |part| history.mark_on(part.id, visit).map(|mark| (part, mark)))
    }

    /// The same over all structures the letter tells of.
    pub fn marks(&self) -> Vec<(&'a Part, &'a Mark)> {
        self.structures().into_iter().flat_map(|structure| self.marks_on(structure.id)).collect()
    }

    fn slope(&self, part: &Part) -> Option<&'a Slope> {
        self.material.history.slope(part.slope?)
    }

    fn letter(&self, part: &Part) -> Option<char> {
        self.slope(part).map(|slope| slope.letter)
    }

    /// Whether the letter tells of more than one structure, so that each must be named.
    pub fn has_many_structures(&self) -> bool {
        self.structures().len() > 1
    }

    /// A structure's name: its own, or that of its kind.
    pub fn structure(&self, id: StructureId) -> Said {
        match self.material.history.structure(id) {
            Some(structure) => own_name(structure).unwrap_or_else(|| Said::new(structure.kind.key())),
            None => Said::new("letter-structure-unknown"),
        }
    }

    /// A slope's name: "Slope B, rear, 6:12".
    pub fn slope_heading(&self, slope: &Slope) -> Plain {
        let named = Said::new("letter-slope")
            .with("letter", slope.letter.to_string())
            .with("side", self.small(&Said::new(slope.side.key())));
        match slope.pitch {
            Some(pitch) => self.say(&Said::new("letter-slope-pitch").with("slope", named).with("pitch", pitch.value)),
            None => self.say(&named),
        }
    }

    /// A part's address: "B 3"; its number alone where it belongs to no one slope.
    pub fn address(&self, part: &Part) -> Plain {
        match self.letter(part) {
            Some(letter) => Plain::new(&format!("{letter} {}", part.number)),
            None => Plain::new(&part.number.to_string()),
        }
    }

    /// What a part is and which one.
    pub fn kind(&self, part: &Part) -> Said {
        let kind = Said::new(part.kind.message());
        match part.which.as_deref().map(Plain::new).filter(|which| !which.is_empty()) {
            Some(which) => Said::new("letter-part-which").with("kind", kind).with("which", which.to_string()),
            None => kind,
        }
    }

    /// A part as it heads a block.
    pub fn name(&self, part: &Part) -> PartName {
        PartName {
            address: self.address(part),
            name: self.say(&self.kind(part)),
        }
    }

    /// A part as a sentence names it: "chimney flashing (B 3)", with its structure where there are several.
    pub fn named(&self, part: &Part) -> Said {
        let address = self.address(part).to_string();
        let kind = self.small(&self.kind(part));
        if self.has_many_structures() {
            Said::new("letter-part-in-structure")
                .with("kind", kind)
                .with("address", address)
                .with("structure", self.small_structure(part.structure))
        } else {
            Said::new("letter-part").with("kind", kind).with("address", address)
        }
    }

    /// A structure in the middle of a sentence; a name of its own stays as it is.
    pub fn small_structure(&self, id: StructureId) -> Said {
        let own = self.material.history.structure(id).and_then(own_name);
        own.unwrap_or_else(|| self.small(&self.structure(id)))
    }

    /// The same by its identifier.
    pub fn named_by_id(&self, id: PartId) -> Option<Said> {
        self.material.history.part(id).map(|part| self.named(part))
    }

    /// Something small, with its structure behind it where there are several.
    pub fn on_structure(&self, id: StructureId, what: Said) -> Said {
        if self.has_many_structures() {
            Said::new("letter-on-structure").with("what", what).with("structure", self.small_structure(id))
        } else {
            what
        }
    }

    /// A line that is led by its structure's name where there are several.
    pub fn about_structure(&self, id: StructureId, says: Said) -> Said {
        if self.has_many_structures() {
            Said::new("letter-of-structure").with("structure", self.structure(id)).with("says", says)
        } else {
            says
        }
    }

    /// A name as it stands in the middle of a sentence, as text.
    pub fn small_text(&self, key: &str) -> Plain {
        self.say(&self.small(&Said::new(key)))
    }

    /// A ladder and its word for a condition.
    pub fn rated(&self, condition: Condition) -> Rated {
        let word = match condition {
            Condition::Seen { rung, .. } => rung.key(),
            Condition::NotSeen { .. } => "condition-not-seen",
            Condition::Gone => "condition-gone",
        };
        Rated {
            ladder: condition.into(),
            word: self.small_text(word),
        }
    }

    /// A ladder and its word for a rung; dotted where there is none.
    pub fn rated_rung(&self, rung: Option<Rung>) -> Rated {
        match rung {
            Some(rung) => Rated {
                ladder: rung.into(),
                word: self.small_text(rung.key()),
            },
            None => Rated {
                ladder: Ladder::NotSeen,
                word: self.small_text("condition-not-seen"),
            },
        }
    }

    /// The catalogue's entries for the defects of a mark, the one that weighs most first.
    pub fn defects<'m>(&self, mark: &'m Mark) -> impl Iterator<Item = &'a Defect> + use<'a, 'm> {
        let catalogue = self.material.catalogue;
        mark.defects.iter().filter_map(move |seen| catalogue.defect(&seen.defect))
    }

    /// The stop at which a kind of part is looked at.
    pub fn stop_of(&self, kind: &KindKey) -> Option<&'a StopKey> {
        self.material.catalogue.kind(kind).map(|kind| &kind.stop)
    }

    /// Whether a part is looked at from inside, so that water shows there but doesn't come in there.
    pub fn is_inside(&self, part: &Part) -> bool {
        self.stop_of(&part.kind).is_some_and(|stop| stop.as_str() == "attic")
    }

    /// What one mark answers to a question: on the spot, by its defects, or by a close look that found nothing.
    pub fn answers(&self, part: &Part, mark: &Mark, question: Question) -> Answer {
        let said = mark.answers.iter().rev().find(|answered| answered.question == question);
        if let Some(answered) = said.filter(|answered| !answered.answer.is_unknown()) {
            return answered.answer;
        }
        if self.defects(mark).any(|defect| defect.signs.contains(&question)) {
            return Answer::Yes;
        }
        let clears = self.material.catalogue.kind(&part.kind).is_some_and(|kind| kind.clears.contains(&question));
        let close = mark.condition.seen().is_some_and(trade::mark::Seen::is_close);
        if clears && close { Answer::No } else { Answer::Unknown }
    }

    /// A reason with what it stands on.
    pub fn reason(&self, reason: &Reason) -> ReasonLine {
        ReasonLine {
            says: self.say(&reason.says),
            source: self.say(&sources::named(&reason.source)),
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
            let StandsOn::Mark(mark) = stands_on else { continue };
            let part = history.mark(*mark).and_then(|mark| history.part(mark.part));
            let Some(address) = part.map(|part| self.address(part)) else { continue };
            if !parts.contains(&address) {
                parts.push(address);
            }
        }
        parts
    }
}

fn own_name(structure: &Structure) -> Option<Said> {
    let name = Plain::new(structure.name.as_deref()?);
    (!name.is_empty()).then(|| Said::verbatim(name.to_string()))
}
