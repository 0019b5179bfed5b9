//! A visit from its opening to its close.

use crate::walk::{self, Spot};
use crate::{ActError, Moment, arrive, mark};
use book::{Book, Entry};
use trade::answer::Answer;
use trade::catalogue::Catalogue;
use trade::history::History;
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::mark::{Condition, NotSeen};
use trade::property::{Side, StructureKind};
use trade::visit::{Reach, Reached, Request, SafetyAnswer, SafetyCheck, Scope, Visit, Weather};

/// What a visit is opened with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Opening {
    /// Who comes.
    pub by: String,
    /// Why.
    pub request: Request,
    /// What it sets out to do.
    pub scope: Scope,
}

/// Opens a visit to all structures that stand.
///
/// # Errors
/// Where the property is not in the book, a visit to it is open already, or the book cannot be written.
pub fn open(
    book: &mut Book,
    property: PropertyId,
    opening: Opening,
    moment: Moment,
) -> Result<VisitId, ActError> {
    let history = arrive::history(book, property)?;
    if history.visits.iter().any(|visit| visit.closed.is_none()) {
        return Err(ActError::AlreadyOpen);
    }
    let visit = Visit {
        id: moment.id(),
        property,
        on: moment.today,
        by: opening.by,
        request: opening.request,
        scope: opening.scope,
        structures: history
            .structures
            .iter()
            .filter(|structure| structure.gone.is_none())
            .map(|structure| structure.id)
            .collect(),
        weather: Weather::default(),
        safety: Vec::new(),
        reached: Vec::new(),
        ladder: None,
        closed: None,
    };
    let id = visit.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Visit(visit))?;
        Ok(id)
    })
}

/// A visit and the record of its property.
///
/// # Errors
/// Where it is not in the book, or the book cannot be read.
pub fn find(book: &Book, visit: VisitId) -> Result<(History, Visit), ActError> {
    let missing = ActError::not_there("there-visit");
    let Some(property) = book.property_of(visit)? else {
        return Err(missing);
    };
    let history = arrive::history(book, property)?;
    let visit = history.visit(visit).cloned().ok_or(missing)?;
    Ok((history, visit))
}

/// Changes a visit that is still open.
///
/// # Errors
/// Where the visit is closed or not in the book, or the book cannot be written.
pub fn change(
    book: &mut Book,
    visit: VisitId,
    moment: Moment,
    change: impl FnOnce(&mut Visit),
) -> Result<(), ActError> {
    let (_, mut visit) = find_open(book, visit)?;
    change(&mut visit);
    book.write(moment.at, |tx| {
        tx.record(Entry::Visit(visit))?;
        Ok(())
    })
}

/// A visit that is still open, and the record of its property.
///
/// # Errors
/// Where it is closed or not in the book, or the book cannot be read.
pub fn find_open(book: &Book, visit: VisitId) -> Result<(History, Visit), ActError> {
    let (history, visit) = find(book, visit)?;
    if visit.closed.is_some() {
        return Err(ActError::Closed { on: visit.on });
    }
    Ok((history, visit))
}

/// Answers one safety question.
///
/// # Errors
/// As [`change`].
pub fn answer_safety(
    book: &mut Book,
    visit: VisitId,
    check: SafetyCheck,
    holds: Answer,
    moment: Moment,
) -> Result<(), ActError> {
    change(book, visit, moment, |visit| {
        visit.safety.retain(|answer| answer.check != check);
        visit.safety.push(SafetyAnswer { check, holds });
    })
}

/// Says how a structure is reached.
///
/// # Errors
/// As [`change`].
pub fn set_reach(
    book: &mut Book,
    visit: VisitId,
    structure: StructureId,
    how: Reach,
    moment: Moment,
) -> Result<(), ActError> {
    change(book, visit, moment, |visit| {
        visit
            .reached
            .retain(|reached| reached.structure != structure);
        visit.reached.push(Reached { structure, how });
    })
}

/// Adds a structure that was met on a visit: it is looked at from now on.
///
/// # Errors
/// As [`change`].
pub fn add_structure(
    book: &mut Book,
    visit: VisitId,
    kind: StructureKind,
    moment: Moment,
) -> Result<StructureId, ActError> {
    let (history, mut open) = find_open(book, visit)?;
    book.write(moment.at, |tx| {
        let structure = arrive::write_structure(tx, &history, kind, moment)?;
        open.structures.push(structure);
        tx.record(Entry::Visit(open))?;
        Ok(structure)
    })
}

/// Adds a slope that was met on a visit. The visit is recorded with it, so that an undo on this visit finds it.
///
/// # Errors
/// Where the structure is not in the book; else as [`change`].
pub fn add_slope(
    book: &mut Book,
    visit: VisitId,
    structure: StructureId,
    side: Side,
    moment: Moment,
) -> Result<(), ActError> {
    let (history, open) = find_open(book, visit)?;
    book.write(moment.at, |tx| {
        arrive::write_slope(tx, &history, structure, side, moment)?;
        tx.record(Entry::Visit(open))?;
        Ok(())
    })
}

/// What closing a visit did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Closing {
    /// Parts that were closed as not seen.
    pub not_seen: usize,
}

/// Closes a visit: every part in scope that has no mark is closed with the reason given, never as sound.
///
/// # Errors
/// Where the visit is closed or not in the book, or the book cannot be written.
pub fn close(
    book: &mut Book,
    visit: VisitId,
    rest: NotSeen,
    moment: Moment,
) -> Result<Closing, ActError> {
    let (history, mut open) = find_open(book, visit)?;
    let spots = unanswered(&history, &open);
    open.closed = Some(moment.at);
    book.write(moment.at, |tx| {
        let mut numbering = mark::Numbering::of(&history);
        for spot in &spots {
            let part = mark::part_at(tx, &history, &mut numbering, spot, moment)?;
            let mut mark = history
                .mark_on(part, visit)
                .cloned()
                .unwrap_or_else(|| mark::blank(visit, part, moment));
            mark.condition = Condition::NotSeen { why: rest };
            tx.record(Entry::Mark(mark))?;
        }
        tx.record(Entry::Visit(open))?;
        Ok(Closing {
            not_seen: spots.len(),
        })
    })
}

/// What a visit has to answer and has not.
pub(crate) fn unanswered(history: &History, visit: &Visit) -> Vec<Spot> {
    walk::plan(history, visit, Catalogue::standard())
        .into_iter()
        .flat_map(|walk| walk.stops)
        .flat_map(|stop| stop.spots)
        .filter(|planned| planned.mark.is_none())
        .map(|planned| planned.spot)
        .collect()
}
