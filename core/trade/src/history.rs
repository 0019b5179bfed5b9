//! A property's whole record, as the rooms that judge and write need it.

use crate::ids::{MarkId, PartId, SlopeId, StructureId, VisitId};
use crate::letter::Letter;
use crate::mark::Mark;
use crate::offer::Offer;
use crate::outcome::{Outcome, Reminder};
use crate::property::{Part, Property, Slope, Structure};
use crate::sketch::Sketch;
use crate::stack::Stack;
use crate::visit::{Note, Photo, Visit};
use crate::work::Work;
use crate::worksheet::Worksheet;
use serde::{Deserialize, Serialize};

/// Everything recorded about one property that still counts: withdrawn records are left out, corrected ones stand corrected.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct History {
    /// The property.
    pub property: Property,
    /// Its structures.
    pub structures: Vec<Structure>,
    /// Their slopes, by letter.
    pub slopes: Vec<Slope>,
    /// Their parts, by number.
    pub parts: Vec<Part>,
    /// The visits, oldest first.
    pub visits: Vec<Visit>,
    /// The marks, oldest first. Of two of one part on one visit the later one counts.
    pub marks: Vec<Mark>,
    /// Readings of layers, oldest first.
    pub stacks: Vec<Stack>,
    /// Work done between visits, oldest first.
    pub works: Vec<Work>,
    /// Pictures, oldest first.
    pub photos: Vec<Photo>,
    /// Words not yet tied to a part, oldest first.
    pub notes: Vec<Note>,
    /// Letters, oldest first.
    pub letters: Vec<Letter>,
    /// What came of them, oldest first.
    pub outcomes: Vec<Outcome>,
    /// What to come back to, by date.
    pub reminders: Vec<Reminder>,
    /// Roofs as they were measured, oldest first. Of two of one structure the later one counts.
    #[serde(default)]
    pub sketches: Vec<Sketch>,
    /// What was counted and chosen for offers, oldest first. Of two of one structure the later one counts.
    #[serde(default)]
    pub worksheets: Vec<Worksheet>,
    /// Offers, oldest first.
    #[serde(default)]
    pub offers: Vec<Offer>,
}

impl History {
    /// A property of which nothing is recorded yet.
    pub fn of(property: Property) -> Self {
        Self {
            property,
            structures: Vec::new(),
            slopes: Vec::new(),
            parts: Vec::new(),
            visits: Vec::new(),
            marks: Vec::new(),
            stacks: Vec::new(),
            works: Vec::new(),
            photos: Vec::new(),
            notes: Vec::new(),
            letters: Vec::new(),
            outcomes: Vec::new(),
            reminders: Vec::new(),
            sketches: Vec::new(),
            worksheets: Vec::new(),
            offers: Vec::new(),
        }
    }

    /// One structure.
    pub fn structure(&self, id: StructureId) -> Option<&Structure> {
        self.structures.iter().find(|structure| structure.id == id)
    }

    /// One slope.
    pub fn slope(&self, id: SlopeId) -> Option<&Slope> {
        self.slopes.iter().find(|slope| slope.id == id)
    }

    /// One part.
    pub fn part(&self, id: PartId) -> Option<&Part> {
        self.parts.iter().find(|part| part.id == id)
    }

    /// One visit.
    pub fn visit(&self, id: VisitId) -> Option<&Visit> {
        self.visits.iter().find(|visit| visit.id == id)
    }

    /// One mark.
    pub fn mark(&self, id: MarkId) -> Option<&Mark> {
        self.marks.iter().find(|mark| mark.id == id)
    }

    /// The parts of one structure.
    pub fn parts_of(&self, structure: StructureId) -> impl Iterator<Item = &Part> {
        self.parts
            .iter()
            .filter(move |part| part.structure == structure)
    }

    /// The mark of a part that counts on one visit: the last one.
    pub fn mark_on(&self, part: PartId, visit: VisitId) -> Option<&Mark> {
        self.marks
            .iter()
            .rev()
            .find(|mark| mark.part == part && mark.visit == visit)
    }

    /// The measures of a structure that count: the last ones taken.
    pub fn sketch_of(&self, structure: StructureId) -> Option<&Sketch> {
        self.sketches
            .iter()
            .rev()
            .find(|sketch| sketch.structure == structure)
    }

    /// What was counted and chosen for the offer of a structure, where anything was.
    pub fn worksheet_of(&self, structure: StructureId) -> Option<&Worksheet> {
        self.worksheets
            .iter()
            .rev()
            .find(|sheet| sheet.structure == structure)
    }

    /// Where a visit stands in the order of visits.
    pub fn place_of(&self, visit: VisitId) -> Option<usize> {
        self.visits.iter().position(|known| known.id == visit)
    }
}
