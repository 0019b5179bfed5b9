//! Undo: a later line of ink that restores what stood before, never an erasure.

use crate::{ActError, Moment, visit};
use book::{Book, Line, Subject};
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
    if book
        .lines_of_act(line.act)?
        .iter()
        .any(|line| opens(line, visit))
    {
        return Err(ActError::NothingToUndo);
    }
    book.write(moment.at, |tx| {
        tx.undo_act(line.act)?;
        Ok(())
    })
}

/// Whether a line opened the visit: that is no tap on it, and taking it back would take the visit away under his feet.
fn opens(line: &Line, visit: VisitId) -> bool {
    line.subject == Subject::Visit(visit) && line.supersedes.is_empty()
}
