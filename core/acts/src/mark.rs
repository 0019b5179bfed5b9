//! Marks: every tap records the whole mark anew, as a later line.

use crate::walk::Spot;
use crate::{ActError, Moment, visit};
use book::{Book, Entry, Writing};
use std::collections::BTreeMap;
use trade::answer::Answer;
use trade::catalogue::{Catalogue, DefectKey, Kind, RemedyKey};
use trade::history::History;
use trade::ids::{MarkId, PartId, SlopeId, StructureId, VisitId};
use trade::mark::{Condition, Correction, DefectSeen, Extent, Mark, Measure, NotSeen, Rung, Seen};
use trade::property::Part;
use trade::verdict::{Answered, Question};
use trade::visit::{Reach, Visit};
use trade::words::Said;
use trade::work::Work;

/// The next free part number of each structure.
pub(crate) struct Numbering(BTreeMap<StructureId, u16>);

impl Numbering {
    pub(crate) fn of(history: &History) -> Self {
        let mut next = BTreeMap::new();
        for part in &history.parts {
            let number = next.entry(part.structure).or_insert(0_u16);
            *number = (*number).max(part.number);
        }
        Self(next)
    }

    pub(crate) fn take(&mut self, structure: StructureId) -> u16 {
        let number = self.0.entry(structure).or_insert(0);
        *number = number.saturating_add(1);
        *number
    }
}

/// A mark without anything in it: not seen, for no other reason than that nobody got there yet.
pub(crate) fn blank(visit: VisitId, part: PartId, moment: Moment) -> Mark {
    Mark {
        id: moment.id(),
        visit,
        part,
        at: moment.at,
        condition: Condition::NotSeen {
            why: NotSeen::NotReached,
        },
        defects: Vec::new(),
        advised: Vec::new(),
        answers: Vec::new(),
        measures: Vec::new(),
        photos: Vec::new(),
        words: String::new(),
        corrected: None,
    }
}

/// The part at a spot, born here where it is not known yet.
pub(crate) fn part_at(
    tx: &mut Writing<'_>,
    history: &History,
    numbering: &mut Numbering,
    spot: &Spot,
    moment: Moment,
) -> Result<PartId, ActError> {
    match spot {
        Spot::Known { part } => history
            .part(*part)
            .map(|part| part.id)
            .ok_or_else(|| ActError::not_there("there-part")),
        Spot::Unborn {
            structure,
            slope,
            kind,
            which,
        } => {
            let part = Part {
                id: moment.id(),
                structure: *structure,
                slope: *slope,
                kind: kind.clone(),
                which: which.clone(),
                number: numbering.take(*structure),
                at: None,
            };
            let id = part.id;
            tx.record(Entry::Part(part))?;
            Ok(id)
        }
    }
}

/// Changes the mark of one spot on an open visit, or makes it. Answers the part, which may have been born by it.
///
/// # Errors
/// Where the visit is closed, the part is not in the book, or the book cannot be written.
pub fn change(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    moment: Moment,
    change: impl FnOnce(&mut Mark, Option<Seen>),
) -> Result<PartId, ActError> {
    let (history, open) = visit::find_open(book, visit)?;
    book.write(moment.at, |tx| {
        write(tx, &history, &open, spot, moment, change)
    })
}

/// [`change`] as a piece of a larger act.
pub(crate) fn write(
    tx: &mut Writing<'_>,
    history: &History,
    open: &Visit,
    spot: &Spot,
    moment: Moment,
    change: impl FnOnce(&mut Mark, Option<Seen>),
) -> Result<PartId, ActError> {
    let numbering = &mut Numbering::of(history);
    write_numbered(tx, history, numbering, open, spot, moment, change)
}

/// [`write`] for one of several spots: numbers run on from one to the next.
fn write_numbered(
    tx: &mut Writing<'_>,
    history: &History,
    numbering: &mut Numbering,
    open: &Visit,
    spot: &Spot,
    moment: Moment,
    change: impl FnOnce(&mut Mark, Option<Seen>),
) -> Result<PartId, ActError> {
    let spot = born_meanwhile(history, spot);
    let (structure, _) = place_of(history, &spot)?;
    let part = part_at(tx, history, numbering, &spot, moment)?;
    let mut mark = history
        .mark_on(part, open.id)
        .cloned()
        .unwrap_or_else(|| blank(open.id, part, moment));
    mark.at = moment.at;
    change(&mut mark, usual_seen(open, structure));
    tx.record(Entry::Mark(mark))?;
    Ok(part)
}

/// A second tap on a place whose part was born by the first must find that part.
fn born_meanwhile(history: &History, spot: &Spot) -> Spot {
    let Spot::Unborn {
        structure,
        slope,
        kind,
        which,
    } = spot
    else {
        return spot.clone();
    };
    history
        .parts_of(*structure)
        .find(|part| &part.kind == kind && &part.slope == slope && &part.which == which)
        .map_or_else(|| spot.clone(), |part| Spot::Known { part: part.id })
}

/// The structure and the slope that a spot is on.
pub(crate) fn place_of(
    history: &History,
    spot: &Spot,
) -> Result<(StructureId, Option<SlopeId>), ActError> {
    match spot {
        Spot::Known { part } => history
            .part(*part)
            .map(|part| (part.structure, part.slope))
            .ok_or_else(|| ActError::not_there("there-part")),
        Spot::Unborn {
            structure, slope, ..
        } => history
            .structure(*structure)
            .map(|structure| (structure.id, *slope))
            .ok_or_else(|| ActError::not_there("there-structure")),
    }
}

/// How parts of a structure are seen where nothing else is said: as near as it was reached.
pub fn usual_seen(visit: &Visit, structure: StructureId) -> Option<Seen> {
    match visit.reach(structure)? {
        Reach::OnRoof | Reach::Ladder | Reach::Inside => Some(Seen::Near),
        Reach::Pole => Some(Seen::Zoomed),
        Reach::Ground => Some(Seen::Afar),
        Reach::NotReached => None,
    }
}

fn put_on(mark: &mut Mark, rung: Rung, usual: Option<Seen>) {
    let seen = mark.condition.seen().or(usual).unwrap_or(Seen::Afar);
    mark.condition = Condition::Seen { rung, seen };
}

/// Sound, in one tap: no defects.
///
/// # Errors
/// As [`change`].
pub fn sound(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, usual| {
        mark.defects.clear();
        put_on(mark, Rung::Sound, usual);
    })
}

/// Puts a part on a rung.
///
/// # Errors
/// As [`change`].
pub fn set_rung(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    rung: Rung,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, usual| {
        put_on(mark, rung, usual);
    })
}

/// Says how a part was seen. A part that stood as not seen needs a rung first.
///
/// # Errors
/// As [`change`].
pub fn set_seen(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    seen: Seen,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        if let Condition::Seen { rung, .. } = mark.condition {
            mark.condition = Condition::Seen { rung, seen };
        }
    })
}

/// Says that a part was not seen, and why. Defects named before are dropped: what was not seen has none.
///
/// # Errors
/// As [`change`].
pub fn not_seen(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    why: NotSeen,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| put_unseen(mark, why))
}

fn put_unseen(mark: &mut Mark, why: NotSeen) {
    mark.condition = Condition::NotSeen { why };
    mark.defects.clear();
    mark.answers.clear();
}

/// Says of several parts at once that they were not seen, and why: one act, taken back by one undo.
///
/// # Errors
/// As [`change`].
pub fn all_not_seen(
    book: &mut Book,
    visit: VisitId,
    spots: &[Spot],
    why: NotSeen,
    moment: Moment,
) -> Result<(), ActError> {
    let (history, open) = visit::find_open(book, visit)?;
    book.write(moment.at, |tx| {
        let mut numbering = Numbering::of(&history);
        for spot in spots {
            let say = |mark: &mut Mark, _| put_unseen(mark, why);
            write_numbered(tx, &history, &mut numbering, &open, spot, moment, say)?;
        }
        Ok(())
    })
}

/// Says that a part is gone with nothing in its place.
///
/// # Errors
/// As [`change`].
pub fn gone(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        mark.condition = Condition::Gone;
        mark.defects.clear();
        mark.answers.clear();
    })
}

/// Names a defect, or takes it off again. The worst defect presets the rung; a worse rung chosen by hand stays.
///
/// # Errors
/// As [`change`].
pub fn toggle_defect(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    defect: &DefectKey,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, usual| {
        let named = mark.defects.iter().position(|seen| &seen.defect == defect);
        if let Some(at) = named {
            mark.defects.remove(at);
        } else {
            mark.defects.push(DefectSeen {
                defect: defect.clone(),
                extent: Extent::Spot,
            });
            let preset = preset_rung(&mark.defects);
            let rung = mark
                .condition
                .rung()
                .map_or(preset, |rung| rung.max(preset));
            put_on(mark, rung, usual);
        }
    })
}

/// The rung that the worst of some defects presets.
fn preset_rung(defects: &[DefectSeen]) -> Rung {
    defects
        .iter()
        .filter_map(|seen| Catalogue::standard().defect(&seen.defect))
        .map(|defect| defect.rung)
        .max()
        .unwrap_or(Rung::Sound)
}

/// Says how far a defect reaches.
///
/// # Errors
/// As [`change`].
pub fn set_extent(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    defect: &DefectKey,
    extent: Extent,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        for seen in mark
            .defects
            .iter_mut()
            .filter(|seen| &seen.defect == defect)
        {
            seen.extent = extent;
        }
    })
}

/// Answers a question on the spot. Only a part that was seen can answer one, so it needs its rung first.
///
/// # Errors
/// Where the part has no rung yet; else as [`change`].
pub fn answer(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    question: Question,
    answer: Answer,
    moment: Moment,
) -> Result<PartId, ActError> {
    let (history, _) = visit::find_open(book, visit)?;
    let Spot::Known { part } = born_meanwhile(&history, spot) else {
        return Err(ActError::RungFirst);
    };
    if history
        .mark_on(part, visit)
        .is_none_or(|mark| mark.condition.rung().is_none())
    {
        return Err(ActError::RungFirst);
    }
    change(book, visit, spot, moment, |mark, _| {
        mark.answers
            .retain(|answered| answered.question != question);
        if !answer.is_unknown() {
            mark.answers.push(Answered { question, answer });
        }
    })
}

/// The questions that a part of one kind is asked: its own, and of a covering also what only its maker can answer.
pub fn asked_of(kind: &Kind) -> impl Iterator<Item = Question> + '_ {
    let makers = (kind.key.as_str() == "covering").then_some(Question::MakerRefuses);
    kind.asks.iter().copied().chain(makers)
}

/// Advises a remedy for what is named on a part, or no longer. Where none is advised, the catalogue's cure is meant.
///
/// # Errors
/// As [`change`].
pub fn toggle_advised(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    remedy: &RemedyKey,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        if mark.advised.contains(remedy) {
            mark.advised.retain(|advised| advised != remedy);
        } else {
            mark.advised.push(remedy.clone());
        }
    })
}

/// Adds a measure.
///
/// # Errors
/// As [`change`].
pub fn add_measure(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    measure: Measure,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        mark.measures.retain(|known| known.of != measure.of);
        mark.measures.push(measure);
    })
}

/// Sets his own words about a part.
///
/// # Errors
/// As [`change`].
pub fn set_words(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    words: &str,
    moment: Moment,
) -> Result<PartId, ActError> {
    change(book, visit, spot, moment, |mark, _| {
        words.trim().clone_into(&mut mark.words);
    })
}

/// Records work that was done between visits.
///
/// # Errors
/// Where the property is not in the book, the day lies ahead, or the book cannot be written.
pub fn add_work(book: &mut Book, work: Work, moment: Moment) -> Result<(), ActError> {
    crate::arrive::history(book, work.property)?;
    must_be_past(&work, moment)?;
    book.write(moment.at, |tx| {
        tx.record(Entry::Work(work))?;
        Ok(())
    })
}

/// Work that was done cannot lie ahead.
pub(crate) fn must_be_past(work: &Work, moment: Moment) -> Result<(), ActError> {
    if work.when > moment.today {
        return Err(ActError::wrong("date", Said::new("wrong-work-ahead")));
    }
    Ok(())
}

/// Corrects a mark of a closed visit by a later, visible line; letters that told of it are marked out of date.
///
/// # Errors
/// Where the mark is not in the book, no reason is given, or the book cannot be written.
pub fn correct(
    book: &mut Book,
    visit: VisitId,
    mark: MarkId,
    why: &str,
    moment: Moment,
    change: impl FnOnce(&mut Mark),
) -> Result<(), ActError> {
    if why.trim().is_empty() {
        return Err(ActError::wrong("why", Said::new("wrong-no-reason")));
    }
    let (history, _) = visit::find(book, visit)?;
    let mut mark = history
        .mark(mark)
        .cloned()
        .ok_or_else(|| ActError::not_there("there-mark"))?;
    if mark.visit != visit {
        return Err(ActError::OtherVisit);
    }
    change(&mut mark);
    mark.corrected = Some(Correction {
        on: moment.today,
        why: why.trim().to_owned(),
    });
    let overtaken: Vec<_> = history
        .letters
        .iter()
        .filter(|letter| letter.out_of_date.is_none() && tells_of(&history, letter, &mark))
        .cloned()
        .collect();
    book.write(moment.at, |tx| {
        tx.record(Entry::Mark(mark))?;
        for mut letter in overtaken {
            letter.out_of_date = Some(moment.today);
            tx.record(Entry::Letter(letter))?;
        }
        Ok(())
    })
}

/// A letter tells of a mark when it was made for that visit or a later one.
fn tells_of(history: &History, letter: &trade::letter::Letter, mark: &Mark) -> bool {
    history.place_of(letter.visit) >= history.place_of(mark.visit)
}
