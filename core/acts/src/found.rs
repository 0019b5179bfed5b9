//! What was found at a part beside its mark: the layers that lie there, and what was done to it. The mark and what was found are one act.

use crate::walk::Spot;
use crate::{ActError, Moment, mark, visit};
use book::{Book, Entry};
use jiff::civil::Date;
use trade::ids::{PartId, VisitId};
use trade::mark::{Condition, Rung, Seen};
use trade::stack::{EdgeCourses, Layer, Learned, Stack};
use trade::words::Said;
use trade::work::{By, Did, Evidence, Work, WorkOn};

/// Layers as they were read.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// Where on the slope.
    pub place: String,
    /// Whether that spot was rebuilt on its own.
    pub rebuilt: bool,
    /// From the top down to the deck.
    pub layers: Vec<Layer>,
    /// The butt lines at the edge, where only they could be read.
    pub edge: Option<EdgeCourses>,
    /// How it was learned.
    pub learned: Learned,
}

/// Work as he found it or was told of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Done {
    /// What was done.
    pub did: Did,
    /// Whose work it was.
    pub by: By,
    /// The day, where it is known.
    pub when: Option<Date>,
    /// Whether it was that day, and not only that day at the latest.
    pub exact: bool,
    /// How it is known.
    pub evidence: Evidence,
}

/// Records the layers read at a part. Who read them saw the part: where it had no rung yet, it is sound.
///
/// # Errors
/// Where the visit is closed, nothing was read, or the book cannot be written; nothing is kept then.
pub fn layers(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    reading: Reading,
    moment: Moment,
) -> Result<PartId, ActError> {
    if reading.layers.is_empty() && reading.edge.is_none() {
        return Err(ActError::wrong("layers", Said::new("wrong-no-layer")));
    }
    let (history, open) = visit::find_open(book, visit)?;
    let (structure, slope) = mark::place_of(&history, spot)?;
    let stack = Stack {
        id: moment.id(),
        visit,
        structure,
        slope,
        spot: reading.place,
        rebuilt: reading.rebuilt,
        layers: reading.layers,
        edge: reading.edge,
        learned: reading.learned,
    };
    book.write(moment.at, |tx| {
        let part = mark::write(tx, &history, &open, spot, moment, |mark, usual| {
            if mark.condition.rung().is_none() {
                let seen = usual.unwrap_or(Seen::Near);
                mark.condition = Condition::Seen {
                    rung: Rung::Sound,
                    seen,
                };
            }
        })?;
        tx.record(Entry::Stack(stack))?;
        Ok(part)
    })
}

/// Records work that was done to a part before this visit. Where the day is not known, the visit's is the latest that it can have been.
///
/// # Errors
/// Where the visit is closed, the day lies ahead, or the book cannot be written; nothing is kept then.
pub fn work(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    done: Done,
    moment: Moment,
) -> Result<PartId, ActError> {
    let (history, open) = visit::find_open(book, visit)?;
    let work = |part| Work {
        id: moment.id(),
        property: open.property,
        visit: Some(visit),
        on: WorkOn::Part(part),
        did: done.did,
        by: done.by,
        when: done.when.unwrap_or(open.on),
        exact: done.exact && done.when.is_some(),
        evidence: done.evidence,
    };
    book.write(moment.at, |tx| {
        let part = mark::write(tx, &history, &open, spot, moment, |_, _| {})?;
        let work = work(part);
        mark::must_be_past(&work, moment)?;
        tx.record(Entry::Work(work))?;
        Ok(part)
    })
}
