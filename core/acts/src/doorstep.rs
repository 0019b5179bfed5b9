//! The doorstep: what one address tells before he climbs.

use crate::settings::Going;
use crate::{ActError, Moment, arrive};
use book::Book;
use trade::doorstep::Doorstep;
use trade::history::History;
use trade::ids::PropertyId;
use trade::visit::Request;

/// What one address tells, beside what the caller asks for now. An open visit's own request is taken where none is given.
///
/// # Errors
/// Where the property is not in the book, or the book cannot be read.
pub fn look(
    book: &Book,
    property: PropertyId,
    request: Option<&Request>,
    moment: Moment,
) -> Result<(History, Doorstep), ActError> {
    let history = arrive::history(book, property)?;
    let going = Going::of(book)?;
    let open = history
        .visits
        .iter()
        .rev()
        .find(|visit| visit.closed.is_none());
    let request = request.or(open.map(|visit| &visit.request));
    let doorstep = judge::doorstep(&history, request, moment.today, &going.rules());
    Ok((history, doorstep))
}
