//! Recording a visit file that was found to be right.

use super::file::{
    PartPart, PropertyPart, SlopePart, StackPart, StructurePart, VisitFile, WorkPart,
};
use super::problem::{Problem, Wrong};
use super::{NotTaken, PictureFiles, Taken};
use crate::mark::{self, Numbering};
use crate::{ActError, Moment, visit};
use book::{Book, BookError, Entry, Writing};
use std::collections::BTreeMap;
use trade::history::History;
use trade::ids::{PartId, PhotoId, PropertyId, SlopeId, StructureId, VisitId};
use trade::mark::{Condition, Mark, Measure, NotSeen, Seen};
use trade::property::{Part, Person, Property, Slope, Structure};
use trade::stack::{EdgeCourses, Layer, Stack};
use trade::units::{Got, Measured};
use trade::visit::{Photo, Reached, Visit};
use trade::work::{Work, WorkOn};

/// The bytes of each picture that a visit file names.
pub(super) type Bytes = BTreeMap<String, Vec<u8>>;

/// The property that a visit file means, if it is in the book.
pub(super) fn find(book: &Book, property: &PropertyPart) -> Result<Option<History>, ActError> {
    for address in std::iter::once(&property.address).chain(&property.also) {
        if let Some(id) = book.at_address(address)?.first() {
            return Ok(book.history(*id)?);
        }
    }
    Ok(None)
}

/// What the book says against a visit file.
pub(super) fn against_the_book(file: &VisitFile, known: Option<&History>) -> Vec<Problem> {
    let Some(history) = known else {
        return Vec::new();
    };
    let mut problems = Vec::new();
    if history.visits.iter().any(|visit| visit.on == file.visit.on) {
        problems.push(Problem::new("/visit/on", Wrong::VisitTwice));
    }
    if history.visits.iter().any(|visit| visit.closed.is_none()) {
        problems.push(Problem::new("/visit", Wrong::VisitOpen));
    }
    problems
}

/// Reads the pictures that a visit file names; what cannot be read is a problem at its place.
pub(super) fn pictures(
    file: &VisitFile,
    source: &dyn PictureFiles,
    problems: &mut Vec<Problem>,
) -> Bytes {
    let mut bytes = Bytes::new();
    for (s, structure) in file.structures.iter().enumerate() {
        for (p, part) in structure.parts.iter().enumerate() {
            for (n, photo) in part.photos.iter().enumerate() {
                let at = format!("/structures/{s}/parts/{p}/photos/{n}/file");
                if problems.iter().any(|problem| problem.is_at(&at)) {
                    continue;
                }
                match source.read(&photo.file) {
                    Ok(read) if book::is_picture(&read) => {
                        bytes.insert(photo.file.clone(), read);
                    }
                    Ok(_) => problems.push(Problem::new(at, Wrong::NotAPicture)),
                    Err(why) => problems.push(
                        Problem::new(at, Wrong::PictureUnreadable)
                            .with("file", photo.file.as_str())
                            .with("why", why),
                    ),
                }
            }
        }
    }
    bytes
}

/// Records all of it as one act.
pub(super) fn write(
    book: &mut Book,
    file: &VisitFile,
    known: Option<History>,
    bytes: &Bytes,
    moment: Moment,
) -> Result<Taken, NotTaken> {
    book.write(moment.at, |tx| {
        let new = known.is_none();
        let history = match known {
            Some(history) => history,
            None => History::of(new_property(file, moment)),
        };
        let property = amended(&history.property, &file.property, moment);
        if new || property != history.property {
            tx.record(Entry::Property(property))?;
        }
        let mut writer = Writer {
            numbering: Numbering::of(&history),
            property: history.property.id,
            visit: moment.id(),
            history,
            file,
            bytes,
            moment,
            marks: 0,
            photos: 0,
        };
        writer.all(tx)?;
        Ok(Taken {
            property: writer.property,
            new,
            visit: writer.visit,
            marks: writer.marks,
            photos: writer.photos,
        })
    })
}

fn new_property(file: &VisitFile, moment: Moment) -> Property {
    Property {
        id: moment.id(),
        address: file.property.address.clone(),
        also: Vec::new(),
        position: None,
        people: Vec::new(),
        built: None,
        dangers: Vec::new(),
        since: file.visit.on,
    }
}

/// What a visit file adds to what is known of a property; it takes nothing away.
fn amended(known: &Property, part: &PropertyPart, moment: Moment) -> Property {
    let mut property = known.clone();
    for address in std::iter::once(&part.address).chain(&part.also) {
        if *address != property.address && !property.also.contains(address) {
            property.also.push(address.clone());
        }
    }
    for person in &part.people {
        let known = property
            .people
            .iter_mut()
            .find(|known| known.name == person.name);
        match known {
            Some(known) => {
                for phone in &person.phones {
                    if !known.phones.contains(phone) {
                        known.phones.push(phone.clone());
                    }
                }
                known.role = person.role;
                known.email = person.email.clone().or(known.email.take());
            }
            None => property.people.push(Person {
                id: moment.id(),
                name: person.name.clone(),
                role: person.role,
                phones: person.phones.clone(),
                email: person.email.clone(),
            }),
        }
    }
    for danger in &part.dangers {
        if !property.dangers.contains(danger) {
            property.dangers.push(danger.clone());
        }
    }
    property.position = part.position.or(property.position);
    property.built = part.built.or(property.built);
    property
}

struct Writer<'a> {
    history: History,
    numbering: Numbering,
    property: PropertyId,
    visit: VisitId,
    file: &'a VisitFile,
    bytes: &'a Bytes,
    moment: Moment,
    marks: usize,
    photos: usize,
}

impl Writer<'_> {
    fn all(&mut self, tx: &mut Writing<'_>) -> Result<(), ActError> {
        let structures = self.structures(tx)?;
        let mut visit = self.new_visit(&structures);
        tx.record(Entry::Visit(visit.clone()))?;
        for (part, id) in self.file.structures.iter().zip(structures) {
            self.structure(tx, part, id)?;
        }
        if self.file.visit.closed {
            self.close_rest(tx, &visit)?;
            visit.closed = Some(self.moment.at);
            tx.record(Entry::Visit(visit))?;
        }
        Ok(())
    }

    fn structures(&self, tx: &mut Writing<'_>) -> Result<Vec<StructureId>, BookError> {
        let mut ids = Vec::new();
        for part in &self.file.structures {
            let known = self
                .history
                .structures
                .iter()
                .find(|known| known.kind == part.kind && known.name == part.name);
            let id = if let Some(known) = known {
                known.id
            } else {
                let id = self.moment.id();
                tx.record(Entry::Structure(Structure {
                    id,
                    property: self.property,
                    kind: part.kind,
                    name: part.name.clone(),
                    gone: None,
                }))?;
                id
            };
            ids.push(id);
        }
        Ok(ids)
    }

    fn new_visit(&self, structures: &[StructureId]) -> Visit {
        let part = &self.file.visit;
        Visit {
            id: self.visit,
            property: self.property,
            on: part.on,
            by: part.by.trim().to_owned(),
            request: part.request.clone(),
            scope: part.scope,
            structures: structures.to_vec(),
            weather: part.weather,
            safety: part.safety.clone(),
            reached: structures
                .iter()
                .zip(&self.file.structures)
                .map(|(&structure, part)| Reached {
                    structure,
                    how: part.reached,
                })
                .collect(),
            ladder: None,
            closed: None,
        }
    }

    fn structure(
        &mut self,
        tx: &mut Writing<'_>,
        part: &StructurePart,
        id: StructureId,
    ) -> Result<(), BookError> {
        self.works(tx, &part.work, WorkOn::Structure(id))?;
        let mut slopes = BTreeMap::new();
        for slope in &part.slopes {
            let slope_id = self.slope(tx, slope, id)?;
            self.works(tx, &slope.work, WorkOn::Slope(slope_id))?;
            slopes.insert(slope.letter, slope_id);
        }
        for stack in &part.layers {
            self.stack(tx, stack, id, &slopes)?;
        }
        for record in &part.parts {
            self.part(tx, record, id, &slopes)?;
        }
        Ok(())
    }

    fn slope(
        &self,
        tx: &mut Writing<'_>,
        part: &SlopePart,
        structure: StructureId,
    ) -> Result<SlopeId, BookError> {
        let known = self
            .history
            .slopes
            .iter()
            .find(|known| known.structure == structure && known.letter == part.letter);
        let pitch = part.pitch.map(|value| {
            let got = part.pitch_got.unwrap_or(Got::Eye);
            Measured {
                value,
                got,
                within: got.within(),
            }
        });
        let slope = Slope {
            id: known.map_or_else(|| self.moment.id(), |known| known.id),
            structure,
            side: part.side,
            letter: part.letter,
            pitch: pitch.or(known.and_then(|known| known.pitch)),
        };
        let id = slope.id;
        if known != Some(&slope) {
            tx.record(Entry::Slope(slope))?;
        }
        Ok(id)
    }

    fn stack(
        &self,
        tx: &mut Writing<'_>,
        part: &StackPart,
        structure: StructureId,
        slopes: &BTreeMap<char, SlopeId>,
    ) -> Result<(), BookError> {
        let got = Got::Tape;
        tx.record(Entry::Stack(Stack {
            id: self.moment.id(),
            visit: self.visit,
            structure,
            slope: part.slope.and_then(|letter| slopes.get(&letter).copied()),
            spot: part.spot.clone(),
            rebuilt: part.rebuilt,
            layers: part
                .layers
                .iter()
                .map(|layer| Layer {
                    is: layer.layer,
                    colour: layer.colour.clone(),
                    thickness: layer.thickness.map(|value| Measured {
                        value,
                        got,
                        within: got.within(),
                    }),
                })
                .collect(),
            edge: part
                .exposure
                .filter(|_| !part.butts.is_empty())
                .map(|exposure| EdgeCourses {
                    exposure,
                    butts: part.butts.clone(),
                }),
            learned: part.learned,
        }))?;
        Ok(())
    }

    fn part(
        &mut self,
        tx: &mut Writing<'_>,
        part: &PartPart,
        structure: StructureId,
        slopes: &BTreeMap<char, SlopeId>,
    ) -> Result<(), BookError> {
        let slope = part.slope.and_then(|letter| slopes.get(&letter).copied());
        let id = self.part_id(tx, part, structure, slope)?;
        self.works(tx, &part.work, WorkOn::Part(id))?;
        let mut photos = Vec::new();
        for photo in &part.photos {
            photos.extend(self.photo(tx, &photo.file, &photo.caption)?);
        }
        tx.record(Entry::Mark(self.mark(part, id, photos)))?;
        self.marks += 1;
        Ok(())
    }

    fn part_id(
        &mut self,
        tx: &mut Writing<'_>,
        part: &PartPart,
        structure: StructureId,
        slope: Option<SlopeId>,
    ) -> Result<PartId, BookError> {
        let known = self.history.parts.iter().find(|known| {
            known.structure == structure
                && known.slope == slope
                && known.kind == part.kind
                && known.which == part.which
        });
        if let Some(known) = known {
            return Ok(known.id);
        }
        let id = self.moment.id();
        tx.record(Entry::Part(Part {
            id,
            structure,
            slope,
            kind: part.kind.clone(),
            which: part.which.clone(),
            number: self.numbering.take(structure),
            at: None,
        }))?;
        Ok(id)
    }

    fn mark(&self, part: &PartPart, id: PartId, photos: Vec<PhotoId>) -> Mark {
        let condition = match (part.rung, part.not_seen) {
            (Some(rung), _) => Condition::Seen {
                rung,
                seen: part.seen.unwrap_or(Seen::Afar),
            },
            (None, Some(why)) => Condition::NotSeen { why },
            (None, None) => Condition::Gone,
        };
        Mark {
            condition,
            defects: part.defects.clone(),
            advised: part.advised.clone(),
            answers: part.answers.clone(),
            measures: part
                .measures
                .iter()
                .map(|measure| Measure {
                    of: measure.of,
                    value: Measured {
                        value: measure.value,
                        got: measure.got,
                        within: measure.got.within(),
                    },
                })
                .collect(),
            photos,
            words: part.words.trim().to_owned(),
            ..mark::blank(self.visit, id, self.moment)
        }
    }

    fn photo(
        &mut self,
        tx: &mut Writing<'_>,
        file: &str,
        caption: &str,
    ) -> Result<Option<PhotoId>, BookError> {
        let Some(bytes) = self.bytes.get(file) else {
            return Ok(None);
        };
        let kept = tx.put_photo(bytes)?;
        let id = self.moment.id();
        tx.record(Entry::Photo(Photo {
            id,
            property: self.property,
            visit: self.visit,
            sha256: kept.sha256,
            taken: kept
                .facts
                .taken
                .and_then(|taken| taken.at(self.moment.offset))
                .unwrap_or(self.moment.at),
            position: kept.facts.position,
            direction: kept.facts.direction,
            orientation: kept.facts.orientation,
            caption: caption.trim().to_owned(),
        }))?;
        self.photos += 1;
        Ok(Some(id))
    }

    fn works(&self, tx: &mut Writing<'_>, works: &[WorkPart], on: WorkOn) -> Result<(), BookError> {
        for work in works {
            tx.record(Entry::Work(Work {
                id: self.moment.id(),
                property: self.property,
                visit: Some(self.visit),
                on,
                did: work.done(),
                by: work.by,
                when: work.when,
                exact: work.exact,
                evidence: work.evidence,
            }))?;
        }
        Ok(())
    }

    /// What was in scope and has no record is closed as not reached, never as sound.
    fn close_rest(&mut self, tx: &mut Writing<'_>, visit: &Visit) -> Result<(), ActError> {
        let Some(history) = tx.history(self.property)? else {
            return Ok(());
        };
        let open = visit::unanswered(&history, visit);
        for spot in &open {
            let part = mark::part_at(tx, &history, &mut self.numbering, spot, self.moment)?;
            let mut mark = mark::blank(self.visit, part, self.moment);
            mark.condition = Condition::NotSeen {
                why: NotSeen::NotReached,
            };
            tx.record(Entry::Mark(mark))?;
            self.marks += 1;
        }
        Ok(())
    }
}
