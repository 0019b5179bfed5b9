//! The writer: a letter's material, its words, and the marks it tells of. How it names things, what it reads from a mark
//! and how it gives reasons stand in files of their own.

use crate::Material;
use crate::plain::Plain;
use trade::ids::{MarkId, StructureId};
use trade::mark::Mark;
use trade::property::{Part, Structure};
use trade::visit::Visit;
use trade::words::{Said, Words};

/// Everything that the parts of a letter are written from.
pub struct Writer<'a> {
    /// The material.
    pub material: &'a Material<'a>,
    /// The words of the letter's language.
    pub words: &'static Words,
    /// The structures the letter tells of: those with a verdict first, in its order, then others with marks of this visit.
    pub structures: Vec<&'a Structure>,
}

impl<'a> Writer<'a> {
    /// A writer of one letter.
    pub fn new(material: &'a Material<'a>) -> Self {
        Self {
            material,
            words: Words::of(material.language),
            structures: structures(material),
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

    /// A name as it stands in the middle of a sentence, as text.
    pub fn small_text(&self, key: &str) -> Plain {
        self.say(&self.small(&Said::new(key)))
    }

    /// A sentence, its first letter made large.
    pub fn sentence(&self, said: &Said) -> Plain {
        let said = self.words.say(said);
        let mut letters = said.chars();
        let large: String = letters
            .next()
            .into_iter()
            .flat_map(char::to_uppercase)
            .chain(letters)
            .collect();
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

    /// The parts with the mark of this visit that counts, on one structure, in the order of slope letter and number.
    pub fn marks_on(
        &self,
        structure: StructureId,
    ) -> impl Iterator<Item = (&'a Part, &'a Mark)> + use<'a> {
        let history = self.material.history;
        let visit = self.material.visit;
        let mut parts: Vec<&Part> = history.parts_of(structure).collect();
        parts.sort_by_key(|part| (self.letter(part).unwrap_or('~'), part.number, part.id));
        parts
            .into_iter()
            .filter_map(move |part| history.mark_on(part.id, visit).map(|mark| (part, mark)))
    }

    /// The same over all structures the letter tells of.
    pub fn marks(&self) -> Vec<(&'a Part, &'a Mark)> {
        self.structures
            .iter()
            .flat_map(|structure| self.marks_on(structure.id))
            .collect()
    }
}

fn structures<'a>(material: &Material<'a>) -> Vec<&'a Structure> {
    let history = material.history;
    let judged = material.verdicts.iter();
    let mut structures: Vec<&Structure> = judged
        .filter_map(|verdict| history.structure(verdict.structure))
        .collect();
    for structure in &history.structures {
        let told = structures.iter().any(|known| known.id == structure.id);
        let mut parts = history.parts_of(structure.id);
        if !told && parts.any(|part| history.mark_on(part.id, material.visit).is_some()) {
            structures.push(structure);
        }
    }
    structures
}
