//! Undo: a later line of ink that restores what stood before, never an erasure.

use crate::{ActError, Moment, visit};
use book::Book;
use trade::ids::VisitId;

/// Takes back the last thing recorded on an open visit.
///
/// # Errors
/// Where the visit is closed, nothing is left to take back, or the book cannot be written.
pub fn last(book: &mut Book, visit: VisitId, moment: Moment) -> Result<(), ActError> {
    visit::find_open(book, visit)?;
    let Some(line) = book.last_line(visit)? else {
        return Err(ActError::NothingToUndo);
    };
    book.write(moment.at, |tx| {
        tx.undo_act(line.act)?;
        Ok(())
    })
}
